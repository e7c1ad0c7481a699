"""The diagram of the three norths for a sheet's margin."""

from pathlib import Path

from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core.angles import compass_point
from ..core.errors import FieldDataError
from ..core.geomagnetism import load
from ..core.north_diagram import conversion_table, conversions, drawn_angles, norths_of_sheet
from ..core.notation_write import three_digits
from ..drawing.north_figure import north_figure
from ..drawing.north_words import conversion_words, norths_sentences
from ..drawing.sheet import FORMATS, write_sheet
from ..gis.i18n import day, language, languages, tr
from ..gis.pages import page_of, place_page
from ..parameters import choice, crs, date, extent, field_models, file, flag, number, place, report, rule


class NorthDiagram(AgonicAlgorithm):
    """The diagram of the three norths for a sheet's margin."""

    ID, GROUP = "north_diagram", "north"

    def displayName(self):
        """Name in the toolbox."""
        return tr("North diagram of a sheet")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws how true, grid and magnetic north lie at a place, or at the centre of a sheet, on a date: a star "
            "for true north, a plain line for grid north, half an arrow for magnetic north. Norths less than 3 degrees "
            "apart are drawn farther apart, and the figure says so.\n\n"
            "Beside the diagram it says in words: the angles with their uncertainty and yearly change, their range "
            "over the sheet where it is over half a degree, which way to turn the ring of a compass and what the "
            "compass must then read along its own needle, and until when the angles hold. The report has the "
            "conversions between the norths and a table of azimuths.\n\n"
            "Turning the ring clockwise for an east declination is true of dials on which E and W stand reversed."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            place("PLACE", tr("Place"), tr("A point on the map. Give this or an extent.")),
            extent(
                "EXTENT", tr("Extent of the sheet"), tr("The norths are those of its centre. Give this or a place.")
            ),
            crs("CRS", tr("Grid"), tr("CRS whose grid north is meant. Left empty: that of the place or the extent.")),
            date(
                "DATE", tr("Date"), tr("For which magnetic north is drawn. There is no silent today."), optional=False
            ),
            *field_models(),
            number(
                "HEIGHT", tr("Height"), tr("Above sea level; it hardly matters."), default=0.0, unit="m", advanced=True
            ),
            flag(
                "EXAGGERATE",
                tr("Draw small angles larger"),
                tr("Norths less than 3 degrees apart are drawn 8 degrees apart, and the figure says so."),
                default=True,
            ),
            language_choice(),
            number(
                "DPI",
                tr("Dots to the inch of a PNG"),
                tr("SVG and PDF do not need it."),
                default=300,
                least=50,
                most=2400,
                whole=True,
                advanced=True,
            ),
            file(
                "OUTPUT",
                tr("Diagram"),
                tr("The ending of the name says which: .svg, .pdf or .png."),
                ";;".join((tr("SVG files (*.svg)"), tr("PDF files (*.pdf)"), tr("PNG files (*.png)"))),
            ),
            report(tr("The same in words, with the conversions between the norths and a table of azimuths.")),
            rule(_refusal),
        ]

    def results(self):
        """Further numbers it returns."""
        return {
            "DECLINATION": tr("Declination"),
            "CONVERGENCE": tr("Convergence"),
            "GRID_MAGNETIC": tr("Magnetic north from grid north"),
            "SIGMA": tr("Uncertainty of the declination"),
            "YEARLY": tr("Yearly change of the declination"),
        }

    def work(self, said, run):
        """Run."""
        page = _page(said, run.context.transformContext())
        model = load(said.MODEL)
        try:
            found = norths_of_sheet(model, said.DATE, said.HEIGHT, page.projection, page.box, page.own, page.wgs84)
        except FieldDataError as error:
            raise QgsProcessingException(_told(error, model)) from error
        drawn = drawn_angles(found.decl.centre, found.converg.centre, exaggerate=said.EXAGGERATE)
        with language(said.LANGUAGE):
            sentences = norths_sentences(found, said.DATE, model.name, drawn)
            heading = tr("Norths, {day}").format(day=day(said.DATE))
            write_sheet(north_figure(drawn, heading, sentences), run.file(said.OUTPUT), said.DPI)
            _report(run, said, page, found, sentences)
        for sentence in sentences:
            run.say(sentence)
        if found.no_compass or found.caution:
            run.warn(tr("The horizontal field is only {h:.0f} nT somewhere on the sheet.").format(h=found.weakest))
        if found.conformal > 0.05:
            run.warn(_not_conformal(found))
        return {
            "DECLINATION": found.decl.centre,
            "CONVERGENCE": found.converg.centre,
            "GRID_MAGNETIC": found.grid_mag.centre,
            "SIGMA": found.sigma,
            "YEARLY": found.yearly,
            "READ": 1,
            "DONE": 1,
            "WARNED": int(found.caution),
            "REJECTED": 0,
        }


def language_choice():
    """Language of what is drawn, LANGUAGE; reads itself as a code, or None for the user's own."""
    return choice(
        "LANGUAGE",
        tr("Language of the figure"),
        tr("Left empty: QGIS's own."),
        {code: {"en": "English", "es": "español"}.get(code, code) for code in languages()},
        optional=True,
        advanced=True,
    )


def _refusal(said):
    """Why what was said cannot run together: a sentence, or None."""
    if (said.PLACE is None) == (said.EXTENT is None):
        return tr("Give either PLACE or EXTENT.")
    output = said.OUTPUT.place
    if output != "TEMPORARY_OUTPUT" and Path(output).suffix.lower() not in FORMATS:
        return tr("OUTPUT: the name must end in one of {endings}.").format(endings=", ".join(FORMATS))
    return None


def _page(said, context):
    if said.PLACE is not None:
        return place_page(said.PLACE, said.CRS, context)
    return page_of(said.EXTENT, said.EXTENT.crs(), said.CRS, context)


def _told(error, model):
    if error.code == "date_outside_model":
        return tr("The date is outside {model}, which holds from {first:g} to {last:g}.").format(
            model=model.name, first=model.first, last=model.last
        )
    return tr("The centre of the extent is no place of the coordinate reference system.")


def _not_conformal(found):
    return tr(
        "This projection does not keep angles: conversions to and from the grid are off by up to {off:.1f}° for some "
        "directions. Use the table of azimuths."
    ).format(off=found.conformal)


def _report(run, said, page, found, sentences):
    """Write the words, the conversions and the table."""
    with run.report(said.REPORT, tr("Norths of a sheet")) as html:
        html.paragraph(
            tr("Centre: {lat:.5f}° latitude, {lon:.5f}° longitude (WGS 84). Grid: {crs}.").format(
                lat=found.lat, lon=found.lon, crs=page.crs.userFriendlyIdentifier()
            )
        )
        for sentence in sentences:
            html.paragraph(sentence)
        html.heading(tr("From one north to another"))
        ways = conversions(found.decl.centre, found.converg.centre)
        html.table([tr("Azimuth"), tr("Add")], [(conversion_words(way), f"{way.add:+.2f}°") for way in ways])
        if found.conformal > 0.05:
            html.paragraph(_not_conformal(found))
        html.heading(tr("Azimuths side by side"))
        own = page.own(*page.middle)
        rows = conversion_table(page.projection, (float(own[0]), float(own[1])), found.decl.centre)
        html.table(
            [tr("Magnetic"), tr("True"), tr("Grid"), tr("Point")],
            [(*(three_digits(angle, 1) for angle in row), str(compass_point(row[1]))) for row in rows],
        )
        html.paragraph(
            tr(
                "The ring goes clockwise for an east declination and counter-clockwise for a west one: common "
                "practice, true of dials on which E and W stand reversed."
            )
        )
        html.cautions()
