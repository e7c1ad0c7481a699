"""Lines of equal declination, inclination, intensity or yearly change."""

from contextlib import contextmanager

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsLineString, QgsPoint, QgsPolygon, QgsProcessingException
from qgis.PyQt.QtCore import QDate

from ..base import AgonicAlgorithm
from ..core import isogonic
from ..core.dates import decimal_year
from ..core.errors import FieldDataError
from ..core.geomagnetism import BLACKOUT_H, CAUTION_H, load
from ..drawing.isogonic_style import style_isolines, style_zones
from ..gis.i18n import tr
from ..gis.pages import page_of
from ..parameters import choice, crs, date, extent, field_models, number, sink

FIELDS = ["element", "value", "value_text", "agonic", "decl_from", "read_date"]
ZONE_FIELDS = ["zone", "h_below", "decl_from", "read_date"]
ZONES = (("caution", CAUTION_H), ("blackout", BLACKOUT_H))
MOST_LINES = 2000


class IsogonicLines(AgonicAlgorithm):
    """Lines of equal declination, inclination, intensity or yearly change."""

    ID, GROUP = "isogonic_lines", "north"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Isogonic lines")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws lines along which the declination is the same (isogonic lines), or the inclination, the total "
            "intensity or the yearly change of the declination, over an extent on a date. The agonic line, along which "
            "magnetic north is true north, is marked.\n\n"
            "Every point of a line has the line's value by the model itself. Lines are drawn on the page of the CRS, "
            "so they cross the antimeridian and the poles like any other place; lines of declination end at the "
            "magnetic poles, where the horizontal field is under 2000 nT and no compass works. That zone, and the one "
            "under 6000 nT, come out as areas.\n\n"
            "The lines are those of the model: ore, dikes, iron and magnetic storms are not in it."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        named = {
            "declination": tr("declination"),
            "inclination": tr("inclination"),
            "total_intensity": tr("total intensity"),
            "yearly_change": tr("yearly change of the declination"),
        }
        return [
            extent(
                "EXTENT",
                tr("Extent"),
                tr("In degrees it may pass 180, as in 160,220,-60,10 [EPSG:4326]."),
                optional=False,
            ),
            crs("CRS", tr("CRS of the lines"), tr("Left empty: that of the extent.")),
            choice(
                "ELEMENT",
                tr("Lines of equal"),
                "",
                {element: named[element] for element in isogonic.ELEMENTS},
                default="declination",
            ),
            date("DATE", tr("Date"), tr("For which lines are drawn. There is no silent today."), optional=False),
            *field_models(),
            number(
                "INTERVAL",
                tr("Interval"),
                tr("Degrees, nT, or degrees a year. Left empty: chosen so that about nine lines cross the extent."),
                least=0.0,
            ),
            number("HEIGHT", tr("Height"), tr("Above sea level."), default=0.0, unit="m", advanced=True),
            sink("OUTPUT", tr("Isogonic lines"), tr("Lines with their value; agonic is 1 on the agonic line.")),
            sink(
                "ZONES",
                tr("Zones where a compass fails"),
                tr("Areas with a horizontal field under 2000 nT (blackout) and under 6000 nT (caution)."),
                optional=True,
                create=False,
            ),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"INTERVAL": tr("Interval"), "LINES": tr("Lines"), "AREAS": tr("Zones where a compass fails")}

    def work(self, said, run):
        """Run."""
        page = page_of(said.EXTENT, said.EXTENT.crs(), said.CRS, run.context.transformContext())
        model, year = load(said.MODEL), decimal_year(said.DATE)
        if not model.first <= year <= model.last:
            raise QgsProcessingException(
                tr("The date is outside {model}, which holds from {first:g} to {last:g}.").format(
                    model=model.name, first=model.first, last=model.last
                )
            )
        source = isogonic.Source(model, year, said.HEIGHT, page.wgs84)
        with _told():
            lattice = isogonic.survey(source, page.box)
        interval = said.INTERVAL or isogonic.choose_interval(said.ELEMENT, lattice)
        if not interval > 0.0:
            raise QgsProcessingException(tr("No interval gives a line over this extent."))
        values = isogonic.levels(said.ELEMENT, interval, lattice)
        if len(values) > MOST_LINES:
            raise QgsProcessingException(
                tr("An interval of {interval:g} gives {count} values: too many.").format(
                    interval=interval, count=len(values)
                )
            )
        run.feedback.setProgress(20.0)
        stamp = {"decl_from": model.name, "read_date": QDate(said.DATE.year, said.DATE.month, said.DATE.day)}
        lines = self._write_lines(said, run, page, lattice, source, values, interval, stamp)
        areas = self._write_zones(said, run, page, lattice, source, stamp) if said.ZONES else 0
        if not lines and not run.is_cancelled:
            run.warn(tr("No line crosses the extent; try a smaller interval."))
        run.say(tr("{count} lines, every {interval:g}.").format(count=lines, interval=interval))
        return {
            "INTERVAL": interval,
            "LINES": lines,
            "AREAS": areas,
            "READ": lines + areas,
            "DONE": lines + areas,
            "WARNED": 0,
            "REJECTED": 0,
        }

    def _write_lines(self, said, run, page, lattice, source, values, interval, stamp):
        count = 0
        with run.output(said.OUTPUT, page.crs, FIELDS, geometry=Qgis.WkbType.LineString) as out:
            for number_, value in enumerate(values):
                if run.is_cancelled:
                    break
                found = isogonic.isolines(said.ELEMENT, [value], lattice, source)
                agonic = int(abs(value) < interval * 1e-6 and said.ELEMENT == "declination")
                row = {
                    "element": said.ELEMENT,
                    "value": float(value),
                    "value_text": isogonic.label(said.ELEMENT, value, interval),
                    "agonic": agonic,
                    **stamp,
                }
                out.add_columns(
                    [QgsGeometry(QgsLineString(line.x, line.y)) for line in found],
                    {name: [row[name]] * len(found) for name in FIELDS},
                )
                count += len(found)
                run.feedback.setProgress(20.0 + 60.0 * (number_ + 1) / len(values))
        run.style(out, style_isolines)
        return count

    def _write_zones(self, said, run, page, lattice, source, stamp):
        count = 0
        with run.output(said.ZONES, page.crs, ZONE_FIELDS, geometry=Qgis.WkbType.Polygon) as out:
            for zone, limit in ZONES:
                areas = isogonic.weak_areas(limit, lattice, source)
                row = {"zone": zone, "h_below": limit, **stamp}
                out.add_columns(
                    [_polygon(area) for area in areas], {name: [row[name]] * len(areas) for name in ZONE_FIELDS}
                )
                count += len(areas)
        run.style(out, style_zones)
        return count


def _polygon(area):
    polygon = QgsPolygon()
    polygon.setExteriorRing(_ring(area.outline))
    for hole in area.holes:
        polygon.addInteriorRing(_ring(hole))
    return QgsGeometry(polygon)


def _ring(points):
    return QgsLineString([QgsPoint(float(x), float(y)) for x, y in np.asarray(points)])


@contextmanager
def _told():
    """Say what is wrong with an extent."""
    try:
        yield
    except FieldDataError as error:
        message = {
            "extent_empty": tr("The extent has no area."),
            "extent_nowhere": tr("The extent shows no place on Earth."),
        }
        raise QgsProcessingException(message.get(error.code, str(error))) from error
