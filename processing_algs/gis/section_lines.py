"""Section lines of a layer: their names, and how they run on the ground."""

import re
from dataclasses import dataclass

import numpy as np
from qgis.core import Qgis, QgsCoordinateReferenceSystem, QgsGeometry, QgsVariantUtils, QgsWkbTypes

from ..core import norths, section_names, sections
from ..core.errors import FieldDataError
from .columns import chunks
from .places import Locator
from .remarks import Notes

# The shortest line on the ground and the straight line on the map may differ by this before it is said. Units: metres.
BULGE = 5.0
_SPACE = (
    'ENGCRS["Section space",EDATUM["Section datum"],CS[Cartesian,2],'
    'AXIS["distance (x)",east,ORDER[1]],AXIS["elevation (y)",north,ORDER[2]],LENGTHUNIT["metre",1]]'
)
# A-A', C-D and the like: what stands at either end.
_TWO_ENDS = re.compile(r"\s*(\S{1,4}?)\s*[-\u2010-\u2014]\s*(\S{1,4})\s*")
_ONE_LETTER = re.compile(r"[A-Za-z]{1,2}|\d{1,2}")
PRIME = "\u2032"


def section_space():
    """The coordinate reference system of section space: x the distance, y the height times exaggeration, metres."""
    return QgsCoordinateReferenceSystem.fromWkt(_SPACE)


@dataclass(frozen=True)
class SectionLine:
    """One section line.

    Attributes
    ----------
    id : int
        Feature id of the line.
    row : int
        Place in the layer, from 0.
    name : str
        Key: unlike the name of any other section of the run, and no longer than a field holds.
    title : str
        The name as the layer has it, whole.
    ends : tuple of str
        Letters of the first and the last point.
    section : core.sections.Section
    attributes : list
        Attributes of the line, as QGIS gives them.
    """

    id: int
    row: int
    name: str
    title: str
    ends: tuple
    section: sections.Section
    attributes: list


@dataclass(frozen=True)
class SectionLines:
    """The section lines of a layer.

    Attributes
    ----------
    lines : list of SectionLine
        Those that lead somewhere.
    ids : list of int
        Feature ids of all rows.
    attributes : list of list
        Attributes of all rows.
    notes : Notes
        What was noticed about each row; those without a line are rejected.
    bulge : float
        Greatest distance between a line as the map draws it and as it runs on the ground. Units: metres.
    """

    lines: list
    ids: list
    attributes: list
    notes: Notes
    bulge: float


def read_section_lines(source, name_field, feedback):
    """Read section lines.

    Parameters
    ----------
    source : QgsFeatureSource
        Lines, with a CRS.
    name_field : str or None
        Field with their names. Lines without a name, and all where there is no field, are lettered A, B, C in order.
    feedback : QgsProcessingFeedback

    Returns
    -------
    SectionLines
    """
    locator = Locator(source.sourceCrs())
    features = [feature for chunk in chunks(source, feedback, stop=0.0) for feature in chunk.features]
    notes, found, bulge = Notes(len(features)), {}, 0.0
    for row, feature in enumerate(features):
        try:
            x, y = _vertices(feature.geometry())
            if locator.projection is None:
                raise FieldDataError("no CRS", code="no_position")
            lon, lat = norths.wgs84_lonlat(locator.projection, x, y)
            found[row] = sections.lay_out(lon, lat)
        except FieldDataError as error:
            notes.add(row, error.code, rejects=True, **error.values)
        else:
            bulge = max(bulge, _bulge(locator.projection, x, y))
    index = source.fields().lookupField(name_field) if name_field else -1
    titles = _titles([features[row].attributes()[index] if index >= 0 else None for row in found])
    attributes = [feature.attributes() for feature in features]
    lines = [
        SectionLine(features[row].id(), row, name, title, ends_of(title, number), section, attributes[row])
        for number, (name, title, (row, section)) in enumerate(zip(section_names.keys(titles), titles, found.items()))
    ]
    return SectionLines(lines, [feature.id() for feature in features], attributes, notes, bulge)


def _vertices(geometry):
    """Coordinates of a line's vertices; parts that go on where the one before ends are one line."""
    if geometry.isEmpty():
        raise FieldDataError("no geometry", code="no_position")
    if QgsWkbTypes.isCurvedType(geometry.wkbType()):
        geometry = QgsGeometry(geometry.constGet().segmentize())
    if QgsWkbTypes.geometryType(geometry.wkbType()) != Qgis.GeometryType.Line:
        raise FieldDataError("no line", code="no_position")
    parts = geometry.asMultiPolyline() if geometry.isMultipart() else [geometry.asPolyline()]
    line = []
    for part in parts:
        if line and part and line[-1] != part[0]:
            raise FieldDataError("several parts", code="section_parts", value=len(parts))
        line += part
    points = np.array([(point.x(), point.y()) for point in line], dtype=float).reshape(-1, 2)
    return points[:, 0], points[:, 1]


def _bulge(crs, x, y):
    """Distance between the straight line of the map and the shortest line on the ground, at the middle of each leg."""
    lon, lat = norths.wgs84_lonlat(crs, x, y)
    middle = norths.wgs84_lonlat(crs, (x[:-1] + x[1:]) / 2.0, (y[:-1] + y[1:]) / 2.0)
    off = []
    for leg in range(len(x) - 1):
        if (x[leg], y[leg]) == (x[leg + 1], y[leg + 1]):
            continue
        section = sections.lay_out(lon[leg : leg + 2], lat[leg : leg + 2])
        here = sections.place(section, section.length / 2.0)
        off.append(abs(sections.beside(here.lon, here.lat, here.azimuth, *(part[leg : leg + 1] for part in middle))[1]))
    return float(np.nanmax(off)) if off else 0.0


def _titles(values):
    """Names of sections as the layer has them; letters in their order for those that have none."""
    names = ["" if QgsVariantUtils.isNull(value) else str(value).strip() for value in values]
    return [name or sections.letters(number) for number, name in enumerate(names)]


def ends_of(name, number):
    """Letters of the two ends of a section.

    Parameters
    ----------
    name : str
        Such as ``A-A'``, ``C-D`` or ``B``; any other name gives no letters.
    number : int
        Place of the section among those of the run, from 0: its letter where the name gives none.

    Returns
    -------
    tuple of str
    """
    two = _TWO_ENDS.fullmatch(name)
    if two:
        return tuple(end.replace("'", PRIME).replace("\u2019", PRIME) for end in two.groups())
    letter = name if _ONE_LETTER.fullmatch(name) else sections.letters(number)
    return letter, letter + PRIME
