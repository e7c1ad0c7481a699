"""Compass traverses: freed of local attraction, laid from a known start, closed."""

import numpy as np
from qgis.core import Qgis, QgsGeometry, QgsProcessingException

from ..base import AgonicAlgorithm
from ..gis.columns import Chunk
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock
from ..gis.places import Locator
from ..gis.remarks import Notes, Tally
from ..gis.schema import NOTICED
from ..gis.sight_columns import BearingReader
from ..parameters import TABLE, bearing_notation, choice, column, crs, layer, norths, number, place, report, sink, text
from .shared import angle_means, nowhere, refraction, sigma_angle, sigma_bearing
from .traverse_legs import HORIZONTAL, SLOPE, known_places, read_legs
from .traverse_report import write_report
from .traverse_solving import crs_of, leg_columns, note, solve, station_columns, warnings_of

STATION_FIELDS = [
    "station",
    "n_legs",
    "attr_corr",
    "sig_attr",
    "attr_from",
    "elev",
    "sig_elev",
    "moved",
    "sig_pos",
    *NOTICED,
]
LEG_FIELDS = [
    "fore_read",
    "back_read",
    "decl",
    "ring_set",
    "correction",
    "fore_corr",
    "back_corr",
    "res_before",
    "res_after",
    "azim_leg",
    "sig_az",
    "length",
    "rise",
    "azim_adj",
    "length_adj",
    "d_azim",
    "d_length",
    "decl_from",
    "read_date",
    *NOTICED,
]


class ReduceTraverse(AgonicAlgorithm):
    """Places of the stations of a compass traverse."""

    ID, GROUP = "reduce_traverse", "sightings"
    FIRST = (
        "INPUT",
        "FROM_FIELD",
        "TO_FIELD",
        "FORE_FIELD",
        "BACK_FIELD",
        "DISTANCE_FIELD",
        "DISTANCE_MEANS",
        "START",
        "DATE",
    )

    def displayName(self):
        """Name in the toolbox."""
        return tr("Reduce a compass traverse")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "From a table of legs (from, to, fore bearing, back bearing, distance, vertical angle) and one known point "
            "to the places of all stations.\n\n"
            "Iron and magnetic rock turn all readings at a station alike. A leg whose fore and back bearing agree is "
            "taken as free of it, and from there each station's correction is carried on, leg by leg. Where no such "
            "leg leads, the mean of fore bearing and back bearing turned round is taken, and the row says so. A "
            "residual is back bearing minus fore bearing minus 180; it is given before and after.\n\n"
            "Where the traverse returns to a station, or ends at a second known point, what it misses by is spread "
            "over the legs in proportion to their length. Loops and branches may be mixed, in any order of rows. Each "
            "place has an uncertainty. Distances may be taped, paced or read by range finder."
        )

    # -- parameters ---------------------------------------------------------------------------------------------------

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Legs"), tr("A table, one row a leg, in any order."), TABLE),
            *self._legs(),
            *self._known(),
            *norths(attraction=False),
            *bearing_notation(),
            number(
                "CLEAN_WITHIN",
                tr("Fore and back bearing agree within"),
                tr(
                    "Legs whose residual is no greater are taken as free of local attraction. About twice what the "
                    "compass can be read to."
                ),
                default=1.0,
                unit="°",
                least=0.0,
            ),
            sigma_bearing(tr("Uncertainty of a reading")),
            number(
                "SIGMA_DISTANCE",
                tr("Uncertainty of a distance"),
                tr("1-sigma, of the distance: 0.2 with a tape on rough ground, 2 or more by pacing."),
                default=1.0,
                unit=tr("percent"),
                least=0.0,
                advanced=True,
            ),
            sigma_angle(),
            refraction(
                tr("Curvature of a ray of light over that of the Earth; it matters for heights over long legs."),
                least=-5.0,
            ),
            sink(
                "OUTPUT",
                tr("Stations of the traverse"),
                tr(
                    "A point for each station, with the correction for its local attraction and its uncertainty; with "
                    "a third coordinate where all heights are known."
                ),
                kind=Qgis.ProcessingSourceType.VectorPoint,
            ),
            sink(
                "LEGS",
                tr("Legs of the traverse"),
                tr("The input's rows as lines, with residuals before and after and what the adjustment changed."),
                kind=Qgis.ProcessingSourceType.VectorLine,
                optional=True,
            ),
            report(tr("Closure, stations, residuals, and how it was done.")),
        ]

    @staticmethod
    def _legs():
        return [
            column(
                "FROM_FIELD",
                tr("From station"),
                tr("Name of the station where the leg starts."),
                role="from_station",
            ),
            column("TO_FIELD", tr("To station"), tr("Name of the station where the leg ends."), role="to_station"),
            column(
                "FORE_FIELD",
                tr("Fore bearing"),
                tr("Read at the start toward the end, a number or N45W."),
                role="fore",
            ),
            column(
                "BACK_FIELD",
                tr("Back bearing"),
                tr("Read at the end toward the start. Without back bearings local attraction cannot be found."),
                role="back",
                optional=True,
                fill=True,
            ),
            column("DISTANCE_FIELD", tr("Distance"), tr("Length of the leg."), role="distance"),
            choice(
                "DISTANCE_MEANS",
                tr("What the distance is (choose one)"),
                tr("Along the line of sight needs the vertical angle."),
                {
                    SLOPE: tr("along the line of sight"),
                    HORIZONTAL: tr("level already"),
                },
            ),
            number(
                "METRES_PER_UNIT",
                tr("Metres in one unit of the distances"),
                tr("0.3048 for feet; the length of your pace if you counted paces."),
                default=1.0,
                least=1e-6,
            ),
            column(
                "ANGLE_FIELD",
                tr("Vertical angle"),
                tr("Read at the start toward the end, at eye height there."),
                role="slope",
                optional=True,
                fill=True,
            ),
            angle_means(tr("What the vertical angle is"), tr("Needed with vertical angles."), optional=True),
        ]

    @staticmethod
    def _known():
        return [
            place(
                "START",
                tr("Start point"),
                tr("Where the traverse starts, in the CRS below unless it names its own."),
                optional=False,
            ),
            text(
                "START_STATION",
                tr("Name of the start station"),
                tr("Left empty: the station where the first row starts."),
            ),
            number(
                "START_HEIGHT",
                tr("Height of the start station"),
                tr("Above sea level. Left empty: no heights are worked out."),
                unit="m",
            ),
            crs(
                "CRS",
                tr("CRS of the stations"),
                tr("Left empty: the one the start point names, else the layer's own."),
            ),
            place(
                "END",
                tr("Second known point"),
                tr("Where the traverse ends, if it ends at another known point; it closes there."),
                advanced=True,
            ),
            text(
                "END_STATION",
                tr("Name of the station at the second point"),
                tr("Needed with the second known point."),
                advanced=True,
            ),
        ]

    def results(self):
        """Further numbers it returns."""
        return {
            "CLOSURE": tr("Largest gap where the traverse closes, metres"),
            "CLOSURE_LENGTH": tr("Length around that closure, metres"),
        }

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if said.DISTANCE_MEANS == SLOPE and not said.ANGLE_FIELD:
            return tr("Slope distances need vertical angles: give ANGLE_FIELD.")
        if said.ANGLE_FIELD and said.ANGLE_MEANS is None:
            return tr("ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.")
        if said.START_HEIGHT is not None and not said.ANGLE_FIELD:
            return tr("Heights need vertical angles: give ANGLE_FIELD, or leave START_HEIGHT empty.")
        if (said.END is None) != (not said.END_STATION):
            return tr("END and END_STATION are needed together.")
        return nowhere("CRS", crs_of(said))

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, said, run):
        """Run."""
        source, on = run.source(said.INPUT), crs_of(said)
        locator, shapes = Locator(on), MapShapes(on)
        features = [feature for chunk in run.chunks(source, stop=30.0) for feature in chunk.features]
        if run.is_cancelled:
            return {}
        if not features:
            raise QgsProcessingException(tr("There is no leg in the table."))
        notes = Notes(len(features))
        north = NorthBlock(said, locator)
        reader = BearingReader(said, north)
        legs = read_legs(Chunk(features, source.fields()), reader, said, notes)
        known, centre = known_places(said, run, legs, locator, on)
        north.survey(legs.chunk)
        north.refuse_undated()
        solved = solve(legs, said, north, locator, known, centre, notes)
        note(legs, solved, said, notes)
        lone = Notes(len(legs.names))
        lone.add_where(np.isnan(solved.lon), "not_connected", rejects=True)
        stations = station_columns(legs, solved) | lone.columns()
        run.feedback.setProgress(60.0)

        tally, flat = Tally(), _is_flat(solved)
        tally.add(legs.chunk.ids, notes)
        kind = Qgis.WkbType.Point if flat else Qgis.WkbType.PointZ
        with run.output(said.OUTPUT, on, STATION_FIELDS, geometry=kind, tally=tally) as out:
            out.add_columns(_points(solved, shapes, flat), stations)
        if said.LEGS and not run.is_cancelled:
            kind = Qgis.WkbType.LineString if flat else Qgis.WkbType.LineStringZ
            with run.output(said.LEGS, source, LEG_FIELDS, geometry=kind, crs=on) as lines:
                columns = leg_columns(legs, solved, notes)
                lines.add(legs.chunk, columns, notes, _lines(legs, solved, shapes, notes, flat))
        warnings = [*warnings_of(legs, solved, said), *reader.warnings(), *north.warnings()]
        run.say(north.line())
        for _, sentence in warnings:
            run.warn(sentence)
        if said.REPORT and not run.is_cancelled:
            with run.report(said.REPORT, tr("Compass traverse")) as page:
                write_report(page, tally, warnings, stations, legs, solved, north)
        gaps = np.hypot(*solved.places.gap.T)
        worst = int(np.argmax(gaps)) if gaps.size else None
        return {
            **out.counts,
            "CLOSURE": None if worst is None else float(gaps[worst]),
            "CLOSURE_LENGTH": None if worst is None else float(solved.places.around[worst]),
        }


def _points(solved, shapes, flat):
    """Points of the stations."""
    places = zip(solved.lon, solved.lat, solved.heights.after[:, 0])
    points = [QgsGeometry() if np.isnan(lon) else shapes.point(lon, lat, z) for lon, lat, z in places]
    return [_flat(point) for point in points] if flat else points


def _lines(legs, solved, shapes, notes, flat):
    """Lines of the legs."""
    heights, lines = solved.heights.after[:, 0], []
    for row in range(len(legs.chunk)):
        ends = [legs.start[row], legs.end[row]]
        line = QgsGeometry()
        if not notes.rejected[row]:
            line = shapes.line(solved.lon[ends], solved.lat[ends], heights[ends])
        lines.append(_flat(line) if flat else line)
    return lines


def _is_flat(solved):
    """Whether some place has no height: a layer with heights for some of its points is refused by many files."""
    return bool(np.isnan(solved.heights.after[~np.isnan(solved.lon), 0]).any())


def _flat(geometry):
    """A geometry without heights."""
    if not geometry.isEmpty():
        geometry.get().dropZValue()
    return geometry
