"""The rows of a drafted section: lines, areas, cut-offs and problems, in section space and on the map."""

import numpy as np
from qgis.core import QgsGeometry, QgsPointXY, QgsPolygon

from ..core import sections
from ..core.cutting import height_of
from ..core.drafts import unit_at
from ..gis.remarks import Notes
from .shared import flat_line

METHOD = "draft"
LINE_FIELDS = ["section", "what", "cross_name", "in_air", "away", "half_band", "rule", "method", "ve"]
AREA_FIELDS = ["section", "unit", "rule", "method", "ve"]
POINT_FIELDS = ["section", "cross_name", "fault_name", "distance", "elev", "rule", "method", "ve"]
PROBLEM_FIELDS = ["section", "distance", "elev", "rule", "method", "ve", "status", "code", "remark"]

PIECE = 250.0  # metres between vertices of a line on the map, whose section is no straight line there
_OVER = 0.02  # metres by which lines are drawn over one another before areas are made between them
_UNDER = 0.5  # metres below the ground at which the unit of an area is looked up


def line_rows(line, found, said, on_map):
    """Geometries and columns of the lines of a draft.

    Parameters
    ----------
    line : SectionLine
    found : core.draft_parts.Draft
    said : Said
    on_map : OnMap or None
        None: in section space.

    Returns
    -------
    geometries : list of QgsGeometry
    columns : dict of str to list
    """
    kept = [one for one in found.lines if one.what != "join"]
    columns = {
        **_alike(line.name, said.CONSTRUCTION, said.VE, len(kept)),
        "what": [one.what for one in kept],
        "cross_name": [one.name or None for one in kept],
        "in_air": [int(one.air) for one in kept],
        "away": [one.away for one in kept],
        "half_band": [one.half for one in kept],
    }
    paths = [one.path for one in kept]
    return (lines_on_map(paths, line.section, on_map) if on_map else flat_lines(paths, said.VE)), columns


def area_rows(line, faces, said, on_map):
    """Geometries and columns of areas of units; parameters as of `line_rows`, ``faces`` as of `areas_of`."""
    columns = {
        **_alike(line.name, said.CONSTRUCTION, said.VE, len(faces)),
        "unit": [unit for unit, _ in faces],
    }
    made = [area_on_map(face, line.section, on_map) if on_map else flat_area(face, said.VE) for _, face in faces]
    return made, columns


def _alike(name, rule, ve, count):
    """Columns that are the same in all rows of a section."""
    return {"section": [name] * count, "rule": [rule] * count, "method": [METHOD] * count, "ve": [ve] * count}


def flat_lines(paths, ve):
    """Lines in section space."""
    return [flat_line(path[:, 0], path[:, 1] * ve) for path in paths]


def lines_on_map(paths, section, on_map):
    """The same lines on the map, with true heights."""
    made = []
    for path in paths:
        x, z = along_bends(path, section)
        there = sections.place(section, x)
        made.append(on_map.line(there.lon, there.lat, z))
    return made


def along_bends(path, section):
    """Vertices of a path, with more of them at the section's bends and along its legs."""
    x, z = [path[:1, 0]], [path[:1, 1]]
    for one, two in zip(path[:-1], path[1:]):
        low, high = sorted((one[0], two[0]))
        bends = section.start[(section.start > low) & (section.start < high)]
        count = int(abs(two[0] - one[0]) // PIECE)
        between = np.unique(np.concatenate([bends, np.linspace(low, high, count + 2)[1:-1]]))
        between = between if two[0] >= one[0] else between[::-1]
        at = np.append(between, two[0])
        share = (at - one[0]) / (two[0] - one[0]) if two[0] != one[0] else np.ones(len(at))
        x.append(at)
        z.append(one[1] + share * (two[1] - one[1]))
    return np.concatenate(x), np.concatenate(z)


def areas_of(setting, found, stretches):
    """Areas between the lines of a draft, each with its unit; those whose unit is not known are left out.

    Parameters
    ----------
    setting : core.draft_parts.Setting
    found : core.draft_parts.Draft
    stretches : list of (str, float, float)
        Units along the ground.

    Returns
    -------
    list of (str, QgsGeometry)
        In section space, not exaggerated.
    """
    ground = setting.ground[np.isfinite(setting.ground).all(axis=1)]
    if len(ground) < 2:
        return []
    left, right, bottom = float(ground[0, 0]), float(ground[-1, 0]), setting.bottom
    frame = [ground, np.array([[left, ground[0, 1]], [left, bottom], [right, bottom], [right, ground[-1, 1]]])]
    frame += [np.array([[leg.start, bottom - 1.0], [leg.start, setting.top + 1.0]]) for leg in setting.legs[1:]]
    drawn = [line.path for line in found.lines if line.what in ("contact", "misfit", "join", "fault") and not line.air]
    edges = [flat_line(*line.T) for line in [*frame, *(_longer(path) for path in drawn if len(path) > 1)]]
    noded = QgsGeometry.unaryUnion(edges)
    parts = [QgsGeometry(part.clone()) for part in noded.constGet()] if noded.isMultipart() else [noded]
    faces = QgsGeometry.polygonize(parts)
    areas = []
    for face in faces.asGeometryCollection():
        inside = face.pointOnSurface().asPoint()
        ground_there = height_of(ground, np.array([inside.x()]))[0]
        if face.area() < 1.0 or not np.isfinite(ground_there) or inside.y() > ground_there:
            continue
        unit = _unit_of(face, setting, found, stretches, ground, np.array([inside.x(), inside.y()]))
        if unit:
            areas.append((unit, face))
    return areas


def _unit_of(face, setting, found, stretches, ground, inside):
    """Unit of a face: that which it has at the ground; deeper down, that of its level. Empty where neither is known."""
    seen = set()
    for code, start, stop in stretches:
        for share in (0.25, 0.5, 0.75):
            x = start + share * (stop - start)
            z = height_of(ground, np.array([x]))[0]
            if np.isfinite(z) and face.contains(QgsPointXY(x, z - _UNDER)):
                seen.add(code)
                break
    if len(seen) == 1:
        return seen.pop()
    if seen:
        return ""
    return unit_at(found, setting.faults, inside)


def _longer(path):
    """A path drawn over its ends, so that what it meets there it surely meets."""
    first, last = path[0] - path[1], path[-1] - path[-2]
    first, last = (step / max(float(np.hypot(*step)), 1e-9) * _OVER for step in (first, last))
    return np.concatenate([[path[0] + first], path, [path[-1] + last]])


def flat_area(face, ve):
    """An area in section space."""
    ring = face.asPolygon() or face.asMultiPolygon()[0]
    return QgsGeometry.fromPolygonXY([[QgsPointXY(point.x(), point.y() * ve) for point in part] for part in ring])


def area_on_map(face, section, on_map):
    """An area as an upright polygon on the map."""
    made = QgsPolygon()
    for number, ring in enumerate(face.asPolygon()):
        points = np.array([(point.x(), point.y()) for point in ring])
        x, z = along_bends(points, section)
        there = sections.place(section, x)
        line = on_map.line(there.lon, there.lat, z)
        (made.addInteriorRing if number else made.setExteriorRing)(line.constGet().clone())
    return QgsGeometry(made)


def problem_rows(name, found, rule, ve):
    """Places, columns and sentences of what does not fit.

    Returns
    -------
    geometries : list of QgsGeometry
    columns : dict of str to list
    """
    notes = Notes(len(found.problems))
    for number, problem in enumerate(found.problems):
        notes.add(number, problem.code, rejects=False, **problem.values)
    count = len(found.problems)
    columns = {
        **_alike(name, rule, ve, count),
        "distance": [problem.x for problem in found.problems],
        "elev": [problem.z for problem in found.problems],
        **notes.columns(),
    }
    points = [QgsGeometry.fromPointXY(QgsPointXY(problem.x, problem.z * ve)) for problem in found.problems]
    return points, columns


def cut_off_rows(name, found, rule, ve):
    """Places and columns of where contacts end at faults."""
    count = len(found.cut_offs)
    columns = {
        **_alike(name, rule, ve, count),
        "cross_name": [contact for contact, *_ in found.cut_offs],
        "fault_name": [fault for _, fault, *_ in found.cut_offs],
        "distance": [x for *_, x, _ in found.cut_offs],
        "elev": [z for *_, z in found.cut_offs],
    }
    return [QgsGeometry.fromPointXY(QgsPointXY(x, z * ve)) for *_, x, z in found.cut_offs], columns
