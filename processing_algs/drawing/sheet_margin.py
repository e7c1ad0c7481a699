"""The margin of a sheet: scale, norths, where it lies, what it was made of, and cautions."""

from dataclasses import dataclass

from ..gis.i18n import tr
from ..gis.report import cautions
from .north_figure import north_figure
from .section_drawing import nice_below
from .sheet_items import COLUMN, SMALL, Item, Part, heading, paragraph, text_item
from .type import SERIF, Look

RATIO = Look(10.0, bold=True, families=SERIF)
TITLES = [Look(size, bold=True, families=SERIF) for size in (24.0, 20.0, 17.0, 14.0, 12.0)]
SUBTITLE, AUTHORS = Look(10.0, italic=True, families=SERIF), Look(8.0)
BAR_MM = 50.0  # length of the scale bar, at most
LOCATOR = (COLUMN, 38.0)  # Units: mm


@dataclass(frozen=True)
class Facts:
    """What the margin says about a sheet.

    Attributes
    ----------
    crs : str
        Name and code of the CRS.
    datum : str
        Of the horizontal datum.
    vertical : str
        Of the heights; empty where there are none.
    interval : float
        Of the contours, metres; 0 for none.
    grid : bool
        Whether the CRS has a grid.
    sources, methods : str
        Empty for none.
    notes : list of str
        Further sentences.
    """

    crs: str
    datum: str
    vertical: str
    interval: float
    grid: bool
    sources: str
    methods: str
    notes: list


def title(text, under, authors, date, wide):
    """Set what stands across the top of a sheet.

    Parameters
    ----------
    text, under : str
        Title and subtitle; empty for none.
    authors : list of str
    date : str
    wide : float
        Units: mm.

    Returns
    -------
    items : list of Item
    height : float
        Units: mm.
    """
    items, y = [], 0.0
    look = next((one for one in TITLES if one.width_mm(text) <= wide), TITLES[-1])
    for set_in, words in ((look, text), (SUBTITLE, under), (AUTHORS, ". ".join(filter(None, [*authors, date])))):
        if words:
            items.append(text_item(set_in, words, 0.0, y, wide))
            y += items[-1].height + 0.5
    return items, y + 3.0


def spaced(number):
    """Write a whole number with thin spaces between its thousands."""
    return f"{round(number):,}".replace(",", "\u2009")


def scale_part(scale, facts):
    """Make the scale: ratio, bar, contour interval, datums.

    Parameters
    ----------
    scale : float
        Denominator.
    facts : Facts

    Returns
    -------
    Part
    """
    items = [text_item(RATIO, f"1:{spaced(scale)}", 0.0, 1.0, COLUMN)]
    y = items[0].height + 2.0
    metres = nice_below(BAR_MM * scale / 1000.0 / 2.0)
    items.append(Item("bar", 0.0, y, 2 * metres * 1000.0 / scale + 16.0, 7.5, metres))
    y += 9.0
    told = []
    if facts.interval:
        told.append(tr("Contour interval {interval:g} metres.").format(interval=facts.interval))
    if facts.vertical:
        told.append(facts.vertical)
    told.append(tr("Projection and grid: {crs}.").format(crs=facts.crs) if facts.grid else facts.crs + ".")
    told.append(tr("Horizontal datum: {datum}.").format(datum=facts.datum))
    text = text_item(SMALL, "\n".join(told), 0.0, y, COLUMN)
    items.append(text)
    return Part("scale", y + text.height, items)


def norths_part(drawn, title, sentences):
    """Make the diagram of the norths with its words."""
    figure = north_figure(drawn, title, sentences, wide=COLUMN - 3.0)
    return Part("norths", figure.height, [Item("picture", 0.0, 0.0, figure.width, figure.height, figure.svg)])


def locator_parts(places):
    """Make the small map that shows where the sheet lies.

    Parameters
    ----------
    places : str
        Its centre in words.

    Returns
    -------
    list of Part
    """
    words = text_item(SMALL, places, 0.0, LOCATOR[1] + 1.0, COLUMN)
    part = Part("locator", LOCATOR[1] + 1.0 + words.height, [Item("locator", 0.0, 0.0, *LOCATOR), words])
    return [heading("locator heading", tr("Location")), part]


def note_parts(facts):
    """Make the notes: sources, methods, cautions."""
    parts = []
    for name, title, text in (
        ("sources", tr("Sources of data"), facts.sources),
        ("methods", tr("Methods"), " ".join(filter(None, [facts.methods, *facts.notes]))),
        ("cautions", tr("Cautions"), cautions()),
    ):
        if text:
            parts.append(heading(f"{name} heading", title))
            lines = [line for line in text.split("\n") if line.strip()]
            parts += [paragraph(f"{name} {number}", line) for number, line in enumerate(lines)]
    return parts
