"""What nets and roses are told alike: where the figure goes, and small ones on the map."""

from pathlib import Path

import numpy as np
from qgis.core import Qgis, QgsGeometry

from ..drawing.map_pictures import style_pictures
from ..drawing.sheet import FORMATS, write_sheet
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..parameters import file, number, report, rule, sink
from .reading import middles

MAP_FIELDS = ["group", "n_used"]
MOST_ON_MAP = 200


def figure_outputs():
    """OUTPUT, the figure; COLUMNS, DPI; MAP with MAP_SIZE; REPORT."""
    return [
        number(
            "COLUMNS",
            tr("Figures side by side"),
            tr("Each is 85 mm wide. 0: about as many as there are rows."),
            default=0,
            least=0,
            most=20,
            whole=True,
        ),
        number(
            "DPI",
            tr("Dots to the inch of a PNG"),
            tr("SVG and PDF do not need it."),
            default=300,
            least=1,
            most=2400,
            whole=True,
            advanced=True,
        ),
        file(
            "OUTPUT",
            tr("Figure"),
            tr("The ending of the name says which: .svg, .pdf or .png."),
            ";;".join((tr("SVG files (*.svg)"), tr("PDF files (*.pdf)"), tr("PNG files (*.png)"))),
        ),
        number(
            "MAP_SIZE",
            tr("Size of the small figures on the map"),
            tr("Printed at this width whatever the scale."),
            default=15.0,
            unit="mm",
            least=4.0,
            most=100.0,
            advanced=True,
        ),
        sink(
            "MAP",
            tr("Small figures on the map"),
            tr("A point in the middle of each group, drawn as a small figure."),
            kind=Qgis.ProcessingSourceType.VectorPoint,
            optional=True,
            create=False,
        ),
        report(tr("The figure, a table of the groups, and what was noticed.")),
        rule(_refusal),
    ]


def _refusal(said):
    if Path(said.OUTPUT.place).suffix.lower() not in FORMATS:
        return tr("OUTPUT: the name must end in one of {endings}.").format(endings=", ".join(FORMATS))
    return None


def write_figure(sheet, said, run):
    """Write the figure."""
    write_sheet(sheet, run.file(said.OUTPUT), said.DPI)


def write_map(pictures, readings, said, run):
    """Write the layer of small figures.

    Parameters
    ----------
    pictures : list of str
        SVG documents, one a group.
    readings : Readings
    said : Said
    run : Run
    """
    if not said.MAP:
        return
    if len(pictures) > MOST_ON_MAP:
        run.warn(
            tr("Of {count} groups the first {most} have a small figure on the map.").format(
                count=len(pictures), most=MOST_ON_MAP
            )
        )
        pictures = pictures[:MOST_ON_MAP]
    shapes, (lon, lat) = MapShapes(said.INPUT.crs), middles(readings)
    places = [
        QgsGeometry() if np.isnan(x) else shapes.point(x, y, 0.0)
        for x, y in zip(lon[: len(pictures)].tolist(), lat.tolist())
    ]
    counts = np.bincount(readings.group, minlength=readings.groups)[: len(pictures)]
    names = [name or "" for name in readings.names[: len(pictures)]]
    with run.output(said.MAP, said.INPUT.crs, MAP_FIELDS, geometry=Qgis.WkbType.PointZ) as out:
        out.add_columns(places, {"group": names, "n_used": counts.tolist()})
    run.style(out, lambda layer: style_pictures(layer, dict(zip(names, pictures)), said.MAP_SIZE))
