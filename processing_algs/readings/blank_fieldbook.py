"""For the days in the field: an empty layer with forms, a project that opens it, and a page for the pencil."""

from pathlib import Path

from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core.errors import FieldDataError
from ..core.geomagnetism import load
from ..core.north_diagram import drawn_angles, norths_of_sheet
from ..core.notation import NOTATIONS
from ..drawing.book_page import PAPERS, book_page
from ..drawing.north_words import norths_sentences
from ..drawing.sheet import write_sheet
from ..gis import wording
from ..gis.i18n import day, tr
from ..gis.pages import page_of, place_page
from ..parameters import (
    choice,
    compass_letters,
    crs,
    date,
    extent,
    field_models,
    file,
    number,
    place,
    rule,
    text,
)
from .blank_book import make_book, write_project


class BlankFieldbook(AgonicAlgorithm):
    """An empty notebook for the field, and a page for the pencil."""

    ID, GROUP = "blank_fieldbook", "readings"
    FIRST = ("PLACE", "EXTENT", "CRS", "DATE", "NOTATION", "RING_SET", "COMPASS", "OBSERVER", "PAPER")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Blank notebook for the field")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Makes what goes into the field. OUTPUT is a GeoPackage with an empty layer of readings whose form has "
            "value lists for kinds and norths, ranges for angles, today's date, and repeats the last ring setting, "
            "compass and observer. PROJECT opens it, on a desktop or a mobile QGIS. PAGE is a page to be printed for "
            "the pencil, with a card that says the day's declination, its uncertainty and yearly change, the "
            "convergence, and how to set the ring.\n\n"
            "Turning the ring clockwise for an east declination is common practice and true of dials on which E and W "
            "stand reversed; so the card says as well what the ring must then read along the needle: 010 for 10 E, 350 "
            "for 10 W.\n\n"
            "A notebook that is already there is never replaced. Afterwards the layer goes through the correction, "
            "with the same notation. Magnetic readings fail near iron, power lines and in magnetic storms."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            place("PLACE", tr("Place"), tr("Where the readings will be taken. Give this or an extent.")),
            extent("EXTENT", tr("Extent of the area"), tr("The card is for its centre. Give this or a place.")),
            crs("CRS", tr("CRS of the layer"), tr("Left empty: that of the place or the extent.")),
            date("DATE", tr("Date of the card"), tr("There is no silent today."), optional=False),
            *field_models(),
            number(
                "HEIGHT", tr("Height"), tr("Above sea level; it hardly matters."), default=0.0, unit="m", advanced=True
            ),
            choice(
                "NOTATION",
                tr("Notation: how you will write readings"),
                tr("It decides the columns and their names."),
                wording.worded(NOTATIONS, wording.notations()),
                default="strike_right",
            ),
            compass_letters(advanced=True),
            number(
                "RING_SET",
                tr("First ring setting"),
                tr("What the compass will have dialled in, east positive; the form repeats the last one."),
                unit="°",
                least=-180.0,
                most=180.0,
            ),
            text("COMPASS", tr("First compass"), tr("Name or number; the form repeats the last one.")),
            text("OBSERVER", tr("First observer"), tr("The form repeats the last one.")),
            choice(
                "PAPER",
                tr("Paper of the page"),
                tr("Printed at its full size."),
                wording.worded(PAPERS, {"a5": "A5", "a4": "A4"}),
                default="a5",
            ),
            file("OUTPUT", tr("Notebook"), tr("A GeoPackage that is not there yet."), tr("GeoPackage files (*.gpkg)")),
            file(
                "PROJECT",
                tr("Project"),
                tr("Opens the notebook; it finds it from its own place, so carry both together."),
                ";;".join((tr("QGIS projects (*.qgz)"), tr("QGIS projects (*.qgs)"))),
                optional=True,
            ),
            file(
                "PAGE",
                tr("Page for the pencil"),
                tr("The ending of the name says which: .pdf, .svg or .png."),
                ";;".join((tr("PDF files (*.pdf)"), tr("SVG files (*.svg)"), tr("PNG files (*.png)"))),
                optional=True,
            ),
            rule(_refusal),
        ]

    def results(self):
        """Further numbers it returns."""
        return {
            "DECLINATION": tr("Declination"),
            "CONVERGENCE": tr("Convergence"),
            "SIGMA": tr("Uncertainty of the declination"),
            "YEARLY": tr("Yearly change of the declination"),
        }

    def work(self, said, run):
        """Run."""
        context = run.context.transformContext()
        if said.PLACE is not None:
            page = place_page(said.PLACE, said.CRS, context)
        else:
            page = page_of(said.EXTENT, said.EXTENT.crs(), said.CRS, context)
        model = load(said.MODEL)
        try:
            found = norths_of_sheet(model, said.DATE, said.HEIGHT, page.projection, page.box, page.own, page.wgs84)
        except FieldDataError as error:
            raise QgsProcessingException(_told(error, model)) from error
        drawn = drawn_angles(found.decl.centre, found.converg.centre)
        sentences = norths_sentences(found, said.DATE, model.name, drawn)
        for sentence in sentences:
            run.say(sentence)
        first = {"ring_set": said.RING_SET, "compass": said.COMPASS, "observer": said.OBSERVER}
        layer = make_book(Path(run.file(said.OUTPUT)), said.NOTATION, page.crs, said.COMPASS_LETTERS, first)
        if said.PROJECT:
            write_project(layer, Path(said.PROJECT.place), Path(run.file(said.PROJECT)), Path(said.OUTPUT.place))
        del layer
        if said.PAGE:
            card = [*sentences, _dials(), _caution()]
            blanks = [tr("Observer"), tr("Compass"), tr("Day"), tr("Ring set to")]
            title = tr("Readings, {day}").format(day=day(said.DATE))
            write_sheet(book_page(said.PAPER, drawn, title, blanks, card, said.NOTATION), run.file(said.PAGE))
        return {
            "DECLINATION": found.decl.centre,
            "CONVERGENCE": found.converg.centre,
            "SIGMA": found.sigma,
            "YEARLY": found.yearly,
            "READ": 1,
            "DONE": 1,
            "WARNED": int(found.caution),
            "REJECTED": 0,
        }


def _dials():
    """What the turning rule is true of, and how to check it."""
    return tr(
        "The turning rule is common practice and true of dials on which E and W stand reversed. Check it: sighting "
        "along the needle, the ring must read 010 for 10 E, 350 for 10 W."
    )


def _caution():
    return tr("Keep away from iron, vehicles and power lines; no model knows of them.")


def _refusal(said):
    """Why what was said cannot run together: a sentence, or None."""
    if (said.PLACE is None) == (said.EXTENT is None):
        return tr("Give either PLACE or EXTENT.")
    for destination, endings in ((said.OUTPUT, (".gpkg",)), (said.PROJECT, (".qgz", ".qgs"))):
        if destination and Path(destination.place).suffix.lower() not in endings:
            return tr("{key}: the name must end in one of {endings}.").format(
                key=destination.key, endings=", ".join(endings)
            )
    if said.PAGE and Path(said.PAGE.place).suffix.lower() not in (".pdf", ".svg", ".png"):
        return tr("{key}: the name must end in one of {endings}.").format(key="PAGE", endings=".pdf, .svg, .png")
    if Path(said.OUTPUT.place).exists():
        return tr("OUTPUT: {name} is there already, and a blank notebook never replaces one.").format(
            name=Path(said.OUTPUT.place).name
        )
    return None


def _told(error, model):
    if error.code == "date_outside_model":
        return tr("The date is outside {model}, which holds from {first:g} to {last:g}.").format(
            model=model.name, first=model.first, last=model.last
        )
    return tr("The centre of the extent is no place of the coordinate reference system.")
