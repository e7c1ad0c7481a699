"""Parameters about drafts, the same where a draft is made and where a section is drawn with one."""

from qgis.core import QgsProcessing

from ..core.drafts import CONSTRUCTIONS
from ..gis import wording
from ..gis.i18n import tr
from ..parameters import TABLE, choice, layer, number, text
from .attitude_block import KEYS

NONE = "none"


def constructions():
    """Words of the constructions, by token."""
    return wording.worded(
        CONSTRUCTIONS,
        {
            "straight": tr("straight, each contact down its own dip"),
            "kink": tr("kinks between domains of constant dip"),
            "arcs": tr("concentric arcs"),
            "between": tr("dips interpolated between the readings"),
        },
    )


def order_entries():
    """Order, sequences and table of the units."""
    return [
        text(
            "UNIT_ORDER",
            tr("Order of the units, oldest first"),
            tr("Codes between commas, such as: Ru, Pe, Cw, Th. Without it, the table of units says the order."),
        ),
        layer(
            "UNIT_TABLE",
            tr("Table of units"),
            tr("Its order, names and colours are used."),
            TABLE,
            optional=True,
            advanced=True,
        ),
        text(
            "UNCONFORMABLE",
            tr("Units that lie unconformably on older ones"),
            tr(
                "Codes between commas. Each begins a sequence: its dips do not bend what is older, which ends at its "
                "base."
            ),
        ),
        text(
            "INTRUSIVE",
            tr("Intrusive units"),
            tr("Codes between commas. Their contacts do not follow bedding and are not drafted."),
            advanced=True,
        ),
    ]


def depth_entry():
    """Depth of a draft, DEPTH."""
    return number(
        "DEPTH",
        tr("Depth"),
        tr("Below the lowest ground of each section. Nothing is drawn deeper."),
        default=500.0,
        unit="m",
        least=1.0,
    )


def angle_entry():
    """Angle of a domain, DOMAIN_ANGLE."""
    return number(
        "DOMAIN_ANGLE",
        tr("Angle of a domain"),
        tr("Neighbouring dips that differ by no more are taken together. Good dips on arcs want 2 or less."),
        default=10.0,
        unit="°",
        least=0.0,
        most=90.0,
        advanced=True,
    )


def drawn_entries():
    """What a drawn section asks about a draft on it: DRAFT, the order of the units, the depth."""
    return [
        choice(
            "DRAFT",
            tr("Draft below the ground"),
            tr("Constructed from the attitudes and units; it is marked as a draft on the figure and in the layers."),
            {NONE: tr("none"), **constructions()},
            default=NONE,
        ),
        *order_entries(),
        depth_entry(),
        angle_entry(),
    ]


def draft_step(said, shared):
    """Parameters for the algorithm that makes the draft of a drawn section.

    Parameters
    ----------
    said : Said
        Of the drawn section.
    shared : dict
        Section lines, DEM and exaggeration, as all steps have them.
    """
    keys = [key for key in KEYS if key not in ("RULE", "AXIS_TREND", "AXIS_PLUNGE", "LEGS")]
    keys += [
        "UNITS",
        "UNIT_FIELD",
        "UNIT_ORDER",
        "UNIT_TABLE",
        "UNCONFORMABLE",
        "INTRUSIVE",
        "CONTACTS",
        "CONTACT_FIELD",
    ]
    keys += ["FAULTS", "FAULT_FIELD", "DEPTH", "DOMAIN_ANGLE"]
    if said.RULE == "along_axis":
        keys += ["AXIS_TREND", "AXIS_PLUNGE"]
    areas = {"AREAS_SECTION": QgsProcessing.TEMPORARY_OUTPUT} if said.UNITS else {}
    return {**shared, **said.handed(*keys), "CONSTRUCTION": said.DRAFT, **areas}
