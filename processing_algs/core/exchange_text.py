"""Plain files of attitudes as text: CSV with its metadata, KML, DXF. Everything is given as arrays and lists.

References
----------
.. [CSVW2015] World Wide Web Consortium, 2015, Metadata Vocabulary for Tabular Data.
.. [KML2015] Open Geospatial Consortium, 2015, OGC KML 2.3: 12-007r2.
"""

from __future__ import annotations

import csv
import io
import json
import math
from collections.abc import Iterable, Mapping, Sequence
from html import escape
from typing import Any, Final, NamedTuple

import numpy as np
import numpy.typing as npt

from .printable import printable

DXF_MARK: Final = "999\nAgonic\n"
KML_MARK: Final = "<!-- Agonic -->"
Points = npt.NDArray[np.float64]


class Outline(NamedTuple):
    """A part of a symbol as a line through points.

    Attributes
    ----------
    points : ndarray, shape (n, 2)
        x to the right, y up, the place of measurement at (0, 0).
    closed, solid : bool
        Whether the last point leads back to the first, and whether the inside is filled.
    """

    points: Points
    closed: bool
    solid: bool


class Column(NamedTuple):
    """A column of a table and what it means.

    Attributes
    ----------
    name, datatype, description : str
        Datatype as CSVW names it: ``string``, ``number``, ``date``.
    unit : str
        Such as degree; empty for none.
    """

    name: str
    datatype: str
    description: str
    unit: str = ""


def turned(points: Points, azimuth: float) -> Points:
    """Points of a symbol, turned so that its up points along an azimuth.

    Parameters
    ----------
    points : ndarray, shape (n, 2)
    azimuth : float
        Clockwise from up. Units: degrees.
    """
    angle = math.radians(azimuth)
    across, along = points[:, 0], points[:, 1]
    return np.stack(
        [
            across * math.cos(angle) + along * math.sin(angle),
            along * math.cos(angle) - across * math.sin(angle),
        ],
        axis=1,
    )


# -- CSV ---------------------------------------------------------------------------------------------------------------


def csv_text(columns: Sequence[Column], rows: Iterable[Sequence[Any]]) -> str:
    """Rows as comma-separated text with a head (RFC 4180); nothing for None and NaN."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([column.name for column in columns])
    for row in rows:
        writer.writerow(["" if _nothing(value) else value for value in row])
    return out.getvalue()


def _nothing(value: Any) -> bool:
    return value is None or (isinstance(value, float) and math.isnan(value))


def csvw_text(file: str, columns: Sequence[Column], about: Mapping[str, Any]) -> str:
    """Metadata of a table, as CSVW asks: what each column holds, in which unit.

    Parameters
    ----------
    file : str
        Name of the table's file, beside which the metadata lie.
    columns : sequence of Column
    about : mapping
        What is said of the whole table, by property such as ``dc:description``.
    """
    described = []
    for column in columns:
        one = {"name": column.name, "titles": column.name, "datatype": column.datatype, "null": ""}
        one["dc:description"] = column.description
        if column.unit:
            one["schema:unitText"] = column.unit
        described.append(one)
    content = {
        "@context": "http://www.w3.org/ns/csvw",
        "url": file,
        **about,
        "dialect": {"encoding": "utf-8", "delimiter": ",", "header": True, "lineTerminators": ["\r\n"]},
        "tableSchema": {"columns": described},
    }
    return json.dumps(content, ensure_ascii=False, indent=2) + "\n"


# -- KML ---------------------------------------------------------------------------------------------------------------


class Mark(NamedTuple):
    """One attitude on a globe.

    Attributes
    ----------
    name : str
    lon, lat : float
        WGS 84. Units: degrees.
    lines : list of ndarray, shape (n, 2)
        Lines of its symbol, longitude and latitude.
    data : mapping of str to object
        What is told of it; None is left out.
    """

    name: str
    lon: float
    lat: float
    lines: list[Points]
    data: Mapping[str, Any]


def kml_text(title: str, note: str, marks: Iterable[Mark]) -> str:
    """Attitudes as KML: each a point and the lines of its symbol, which lie on the ground."""
    parts = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        KML_MARK,
        '<kml xmlns="http://www.opengis.net/kml/2.2">',
        "<Document>",
        f"<name>{_xml(title)}</name>",
        f"<description>{_xml(note)}</description>",
        '<Style id="attitude"><IconStyle><scale>0</scale></IconStyle><LabelStyle><scale>0.7</scale></LabelStyle>'
        "<LineStyle><color>ff000000</color><width>2</width></LineStyle></Style>",
    ]
    for mark in marks:
        parts.append("<Placemark>")
        parts.append(f"<name>{_xml(mark.name)}</name><styleUrl>#attitude</styleUrl>")
        told = [(name, value) for name, value in mark.data.items() if not _nothing(value)]
        cells = "".join(f'<Data name="{_xml(name)}"><value>{_xml(value)}</value></Data>' for name, value in told)
        parts.append(f"<ExtendedData>{cells}</ExtendedData>")
        parts.append(f"<MultiGeometry><Point><coordinates>{mark.lon:.9f},{mark.lat:.9f}</coordinates></Point>")
        for line in mark.lines:
            places = " ".join(f"{lon:.9f},{lat:.9f}" for lon, lat in line)
            parts.append(f"<LineString><tessellate>1</tessellate><coordinates>{places}</coordinates></LineString>")
        parts.append("</MultiGeometry></Placemark>")
    parts += ["</Document>", "</kml>", ""]
    return "\n".join(parts)


def _xml(value: Any) -> str:
    return escape(printable(str(value)))


# -- DXF ---------------------------------------------------------------------------------------------------------------


class Insert(NamedTuple):
    """A symbol in a drawing.

    Attributes
    ----------
    block : str
        Name of its block.
    layer : str
    x, y : float
        Place of measurement. Units: those of the map.
    azimuth : float
        On the page, clockwise from up. Units: degrees.
    label : str
        Number beside it; empty for none.
    label_x, label_y : float
        Middle of the number.
    """

    block: str
    layer: str
    x: float
    y: float
    azimuth: float
    label: str
    label_x: float
    label_y: float


def dxf_text(blocks: Mapping[str, Sequence[Outline]], inserts: Sequence[Insert], height: float) -> str:
    """Symbols as a drawing: a block for each kind of symbol, an insertion for each attitude (DXF, release 12).

    Parameters
    ----------
    blocks : mapping of str to sequence of Outline
        In the units of the map, for the scale that is chosen.
    inserts : sequence of Insert
    height : float
        Of the numbers. Units: those of the map.
    """
    layers = sorted({insert.layer for insert in inserts})
    out = [DXF_MARK.rstrip("\n")]
    out += _pairs((0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (0, "ENDSEC"))
    out += _pairs((0, "SECTION"), (2, "TABLES"), (0, "TABLE"), (2, "LAYER"), (70, len(layers)))
    for layer in layers:
        out += _pairs((0, "LAYER"), (2, _name(layer)), (70, 0), (62, 7), (6, "CONTINUOUS"))
    out += _pairs((0, "ENDTAB"), (0, "ENDSEC"), (0, "SECTION"), (2, "BLOCKS"))
    for name, outlines in blocks.items():
        out += _pairs((0, "BLOCK"), (8, "0"), (2, _name(name)), (70, 0), (10, 0.0), (20, 0.0), (30, 0.0))
        for outline in outlines:
            out += _outline(outline)
        out += _pairs((0, "ENDBLK"), (8, "0"))
    out += _pairs((0, "ENDSEC"), (0, "SECTION"), (2, "ENTITIES"))
    for one in inserts:
        layer = _name(one.layer)
        # Angles of a drawing count counter-clockwise; a block's up is the azimuth of its attitude.
        out += _pairs((0, "INSERT"), (8, layer), (2, _name(one.block)), (10, one.x), (20, one.y), (30, 0.0))
        out += _pairs((50, -one.azimuth % 360.0))
        if one.label:
            out += _pairs((0, "TEXT"), (8, layer), (10, one.label_x), (20, one.label_y), (30, 0.0), (40, height))
            out += _pairs((1, _letters(one.label)), (72, 1), (73, 2), (11, one.label_x), (21, one.label_y), (31, 0.0))
    out += _pairs((0, "ENDSEC"), (0, "EOF"))
    return "\n".join(out) + "\n"


def _outline(outline: Outline) -> list[str]:
    out = _pairs((0, "POLYLINE"), (8, "0"), (66, 1), (70, int(outline.closed)))
    for x, y in outline.points.tolist():
        out += _pairs((0, "VERTEX"), (8, "0"), (10, x), (20, y), (30, 0.0))
    out += _pairs((0, "SEQEND"), (8, "0"))
    if outline.solid:
        middle = outline.points.mean(axis=0).tolist()
        for one, other in zip(outline.points.tolist(), np.roll(outline.points, -1, axis=0).tolist()):
            corners = (middle, one, other, other)
            out += _pairs((0, "SOLID"), (8, "0"))
            for number, (x, y) in enumerate(corners):
                out += _pairs((10 + number, x), (20 + number, y), (30 + number, 0.0))
    return out


def _pairs(*pairs: tuple[int, Any]) -> list[str]:
    out = []
    for code, value in pairs:
        out += [str(code), f"{value:.6f}" if isinstance(value, float) else str(value)]
    return out


def _name(text: str) -> str:
    """Name of a block or layer: capitals, digits and underscores, at most 31."""
    plain = "".join(sign if sign.isascii() and sign.isalnum() else "_" for sign in text.upper())
    return plain[:31] or "_"


def _letters(text: str) -> str:
    """Text in one line; letters beyond ASCII by their numbers."""
    plain = " ".join(printable(text).split())
    return "".join(sign if sign.isascii() else f"\\U+{ord(sign):04X}" for sign in plain)
