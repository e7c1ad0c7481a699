"""What the steps found, section by section, ready to be drawn."""

import numpy as np
from qgis.core import QgsVariantUtils

from ..core import sections
from ..core.crossings import crossings
from ..core.norths import WGS84
from ..drawing.section_drawing import Content, DraftPath, Mark, Tick
from ..gis.remarks import REJECTED

PIECE = 200.0  # metres


def contents(lines, layers, ve):
    """Sort what the steps found by section.

    Parameters
    ----------
    lines : list of SectionLine
    layers : dict of str to QgsVectorLayer
        Outputs in section space: ``ground``, and where they were wanted ``units``, ``contacts``, ``faults`` and
        ``attitudes``.
    ve : float
        Vertical exaggeration of these outputs.

    Returns
    -------
    dict of str to Content
        By name of the section.
    """
    found = {line.name: _empty(line) for line in lines}
    for row in _good(layers, "ground", found):
        found[row["section"]].ground.append(_points(row.geometry()) / (1.0, ve))
    for row in _good(layers, "units", found):
        found[row["section"]].units.append((_text(row["cross_name"]), _points(row.geometry()) / (1.0, ve)))
    for what in ("contacts", "faults"):
        for row in _good(layers, what, found):
            mark = Mark(
                row["distance"], row["elev"], _text(row["cross_name"]), _number(row["app_dip"]), what == "faults"
            )
            found[row["section"]].marks.append(mark)
    for row in _good(layers, "attitudes", found):
        x, y = _points(row.geometry()).T
        label = "" if row["tick"] == "vertical" else f"{abs(row['app_dip']):.0f}"
        found[row["section"]].ticks.append(Tick(tuple(x), tuple(y), label, row["tick"] != "inclined"))
    _add_draft(found, layers, ve)
    _add_meets(found, lines)
    for content in found.values():
        content.ground.sort(key=lambda points: points[0, 0])
        content.units.sort(key=lambda unit: unit[1][0, 0])
        content.marks.sort(key=lambda mark: mark.distance)
    return found


def _add_draft(found, layers, ve):
    """Sort the lines and areas of a draft by section."""
    for row in layers["draft"].getFeatures() if "draft" in layers else ():
        path = DraftPath(
            row["what"], _text(row["cross_name"]), row["in_air"] == 1, _number(row["away"]),
            _points(row.geometry()) / (1.0, ve),
        )  # fmt: skip
        found[row["section"]].draft.append(path)
    for row in layers["draft_areas"].getFeatures() if "draft_areas" in layers else ():
        ring = row.geometry().asPolygon()[0]
        found[row["section"]].draft_areas.append(
            (row["unit"], np.array([(point.x(), point.y()) for point in ring]) / (1.0, ve))
        )


def _add_meets(found, lines):
    """Note where sections cross one another, on both."""
    for line in lines:
        for other in lines:
            if other is line:
                continue
            # Between vertices the other one is a line on the ground too: close vertices make it straight on any map.
            way = sections.place(
                other.section, sections.stations(other.section, max(PIECE, other.section.length / 1000))
            )
            met = crossings(line.section, WGS84, way.lon, way.lat, np.zeros(len(way.lon)))
            letters = "\u2013".join(other.ends)
            found[line.name].meets.extend((float(distance), letters) for distance in met.stations.distance)


def _empty(line):
    section = line.section
    # One azimuth a leg: what is printed on either side of a bend and at the ends agrees with what the legs are said to
    # run toward.
    toward = sections.middle_azimuth(section)
    bends = [
        (float(section.start[leg + 1]), float(toward[leg]), float(toward[leg + 1])) for leg in range(section.legs - 1)
    ]
    azimuths = float(toward[0]), float(toward[-1])
    return Content(line.ends, section.length, bends, azimuths, [], [], [], [])


def _good(layers, what, found):
    """Rows of an output that have a result on a known section."""
    layer = layers.get(what)
    if layer is None:
        return
    for row in layer.getFeatures():
        if row["status"] != REJECTED and row["section"] in found and not row.geometry().isEmpty():
            yield row


def _points(geometry):
    return np.array([(point.x(), point.y()) for point in geometry.asPolyline()])


def _text(value):
    return "" if QgsVariantUtils.isNull(value) else str(value)


def _number(value):
    return np.nan if QgsVariantUtils.isNull(value) else float(value)
