"""Functions for the field calculator, labels and styles: norths, notation and apparent dips, a row at a time.

They compute with the same code as the tools. What would have to be warned of, or would need the whole table to be read
rightly, is for the tools; an expression can only give a value, NULL, or an error.
"""

from html import escape

from qgis.core import QgsExpression, QgsExpressionFunction, QgsVariantUtils

from ..processing_algs.core.errors import FieldDataError
from ..processing_algs.core.letters import DEFAULT_LETTERS, LETTERS
from ..processing_algs.core.notation import PAIR_MEANS
from ..processing_algs.core.notation_write import PLANE_NOTATIONS
from ..processing_algs.gis.i18n import tr
from . import expression_values as values

GROUP = "Agonic"


class Function(QgsExpressionFunction):
    """One function of ours.

    Parameters
    ----------
    name : str
    work : callable
        Takes the context and the values by position; returns a number, a text or None.
    arguments : list of str or tuple
        Names; a name with its default where the argument may be left out.
    about : str
        What it does, in plain words.
    example : str
        A call and what comes out.
    """

    def __init__(self, name, work, arguments, about, example):
        takes = [
            self.Parameter(one[0], True, one[1]) if isinstance(one, tuple) else self.Parameter(one) for one in arguments
        ]
        shown = ", ".join(f"[{one[0]}]" if isinstance(one, tuple) else one for one in arguments)
        text = f"<h3>{name}({escape(shown)})</h3><p>{escape(about)}</p><p><code>{escape(example)}</code></p>"
        # NULL is handed on: some arguments may be NULL, and a level plane has no strike.
        super().__init__(name, takes, GROUP, text, False, True, False)
        self.work = work

    def func(self, given, context, parent, node):  # noqa: ARG002
        """Work it out."""
        try:
            return self.work(context, *(None if QgsVariantUtils.isNull(value) else value for value in given))
        except values.WrongValueError as error:
            parent.setEvalErrorString(str(error))
        except FieldDataError as error:  # a word that is none of those allowed; what rows hold is noted instead
            parent.setEvalErrorString(tr("This cannot be used: {reason}").format(reason=error))
        return None


def functions():
    """Make the functions, in the language of now."""
    crs = ("crs", None)
    reading = ["text", ("pair_means", None), ("letters", DEFAULT_LETTERS)]
    crs_words = tr("The coordinates are the layer's, unless crs names others.")
    read_words = tr(
        "The text is a plane as written in the field, such as N45E/30SE or 045/30SE; azimuths stay as they were read, "
        "nothing is corrected. A pair without letters (045/30) needs pair_means: {means}. letters is {letters}. A text "
        "that can be read in two ways is an error."
    ).format(means=", ".join(PAIR_MEANS), letters=", ".join(LETTERS))
    return [
        Function(
            "agonic_declination",
            values.declination,
            ["geometry", "date", ("height", 0.0), ("model", "igrf14"), crs],
            tr(
                "Magnetic declination at a point and date, east positive, in degrees. Height in metres above sea "
                "level. NULL without a place or date; an error for a date outside the model, and where the field is "
                "too weak for a needle."
            )
            + " "
            + crs_words,
            'agonic_declination(@geometry, "read_date") → 2.71',
        ),
        Function(
            "agonic_convergence",
            values.convergence,
            ["geometry", crs],
            tr("Meridian convergence at a point: azimuth of grid north from true north, east positive, in degrees.")
            + " "
            + crs_words,
            "agonic_convergence(make_point(600000, 5300000), 'EPSG:32632') → 0.99",
        ),
        Function(
            "agonic_true_to_grid",
            values.true_to_grid,
            ["azimuth", "geometry", crs],
            tr("Azimuth on the page of a true azimuth at a point, clockwise from the page's up, exact in every grid.")
            + " "
            + crs_words,
            'agonic_true_to_grid("strike", @geometry) → 44.0',
        ),
        Function(
            "agonic_grid_to_true",
            values.grid_to_true,
            ["azimuth", "geometry", crs],
            tr("True azimuth of an azimuth measured on the page at a point, exact in every grid.") + " " + crs_words,
            'agonic_grid_to_true("azimuth", @geometry) → 46.0',
        ),
        Function(
            "agonic_apparent_dip",
            values.apparent_dip,
            ["dip", "dip_dir", "azimuth"],
            tr(
                "Dip of a plane as seen on a vertical section drawn in an azimuth: positive where the plane goes down "
                "in the direction of drawing. All azimuths from the same north. NULL for a vertical plane along its "
                "own strike."
            ),
            "agonic_apparent_dip(45, 90, 45) → 35.26",
        ),
        Function(
            "agonic_strike",
            values.strike,
            reading,
            tr("Strike of a plane as written, with the dip to its right; NULL for a level plane.") + " " + read_words,
            "agonic_strike('N45E/30NW') → 225",
        ),
        Function(
            "agonic_dip",
            values.dip,
            reading,
            tr("Dip of a plane as written.") + " " + read_words,
            "agonic_dip('N45E/30NW') → 30",
        ),
        Function(
            "agonic_dip_dir",
            values.dip_dir,
            reading,
            tr("Dip direction of a plane as written; NULL for a level plane.") + " " + read_words,
            "agonic_dip_dir('N45E/30NW') → 315",
        ),
        Function(
            "agonic_plane_text",
            values.plane_text,
            ["strike", "dip", ("notation", "strike_letter"), ("letters", DEFAULT_LETTERS), ("decimals", 0)],
            tr(
                "A plane as text, from its strike with the dip to the right and its dip. notation is {notations}; "
                "letters is {letters}."
            ).format(notations=", ".join(PLANE_NOTATIONS), letters=", ".join(LETTERS)),
            "agonic_plane_text(225, 30, 'quadrant') → N45E/30NW",
        ),
    ]


class Functions:
    """The functions while the plugin is switched on; QGIS holds no reference to them."""

    def __init__(self):
        self.held = []

    def register(self):
        """Let expressions have them."""
        for function in functions():
            if QgsExpression.isFunctionName(function.name()):
                QgsExpression.unregisterFunction(function.name())
            if QgsExpression.registerFunction(function):
                self.held.append(function)

    def remove(self):
        """Take them away."""
        for function in self.held:
            QgsExpression.unregisterFunction(function.name())
        self.held = []
