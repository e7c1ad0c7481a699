"""The algorithms that do the steps of a drawn section."""

from qgis.core import QgsProcessing, QgsProcessingMultiStepFeedback

from .attitude_block import KEYS
from .draft_block import NONE, draft_step
from .draft_section import DraftSection
from .section_attitudes import SectionAttitudes
from .section_crossings import SectionCrossings
from .section_profile import SectionProfile

MOST_STEPS = 7  # ground, units, contacts, faults, attitudes, draft, and drawing


def steps_of(said, scale):
    """Algorithms to run, with their parameters, and what each is for."""
    shared = said.handed("SECTION", "NAME_FIELD", "DEM", "BAND", "HEIGHT_UNIT", "VE")
    shared["OUTPUT_SECTION"] = QgsProcessing.TEMPORARY_OUTPUT
    found = [(SectionProfile(), shared | said.handed("STEP"), "ground")]
    for key, field_key in (("UNITS", "UNIT_FIELD"), ("CONTACTS", "CONTACT_FIELD"), ("FAULTS", "FAULT_FIELD")):
        if said[key]:
            label = {"LABEL_FIELD": said[field_key]} if said[field_key] else {}
            found.append((SectionCrossings(), shared | {"LAYER": said.handed(key)[key]} | label, key.lower()))
    if said.ATTITUDES:
        tick = said.TICK * scale / 1000.0
        found.append((SectionAttitudes(), shared | said.handed(*KEYS) | {"TICK": tick}, "attitudes"))
    if said.DRAFT != NONE:
        found.append((DraftSection(), draft_step(said, shared), "draft"))
    for algorithm, _, _ in found:
        algorithm.initAlgorithm()
    return found


class Steps(QgsProcessingMultiStepFeedback):
    """What the steps say, without saying the same about the section lines in each."""

    def __init__(self, count, feedback):
        super().__init__(count, feedback)
        self._said = set()

    def pushWarning(self, warning):
        """Pass a warning on, once."""
        if warning not in self._said:
            self._said.add(warning)
            super().pushWarning(warning)
