"""Compass traverses: freed of local attraction, laid from a known start, closed."""

from dataclasses import dataclass

import numpy as np
from qgis.core import (
    Qgis,
    QgsGeometry,
    QgsProcessingException,
    QgsProcessingOutputNumber,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterNumber,
    QgsProcessingParameterPoint,
    QgsProcessingParameterString,
)

from ..base import DONE, READ, REJECTED, WARNED, AgonicAlgorithm
from ..core import compass_check, norths, rays, traverse
from ..core.angles import difference, wrap360
from ..core.bearings import read_vertical_angles
from ..core.blunders import Finding
from ..core.cells import is_empty, text_of
from ..core.places import places_at
from ..gis.columns import Chunk, chunks, column_or_empty, numbers, output_rows, value_rows
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.north_block import NorthBlock, north_refusal
from ..gis.places import Locator
from ..gis.remarks import REJECTED as REJECTED_STATUS
from ..gis.remarks import WARNING, Notes, Tally, run_warning
from ..gis.schema import output_fields
from ..gis.sight_columns import BearingReader, add_bearing_notation, bearing_refusal
from ..gis.sinks import Writer, is_shapefile
from ..gis.survey import key_is_unique
from ..parameters import norths as north_entries
from .traverse_report import write_report

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
    "status",
    "code",
    "remark",
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
    "status",
    "code",
    "remark",
]
SLOPE, HORIZONTAL = "slope", "horizontal"
STRONG = 10.0  # residual from which on a misreading is likelier than attraction. Units: degrees
TURNED, MOST, ENOUGH = (
    170.0,
    0.8,
    3,
)  # residual, share and number of legs that look as if back bearings were turned round
LARGE_GAP = 3.03  # gap, in sigmas, that one traverse in a hundred has by chance


@dataclass
class Legs:
    """The legs as read; every array has shape (n,).

    Attributes
    ----------
    chunk : Chunk
    names : list of str
        Of the stations, in the order in which they first come, shape (m,).
    start, end : ndarray of int
        Numbers of the stations; -1 where the row does not name them.
    fore, back : ndarray
        As read, NaN for none. Units: degrees.
    length, rise : ndarray
        Horizontal, and upward from start to end; NaN where not known. Units: metres.
    rise_variance : ndarray
        Units: square metres.
    """

    chunk: Chunk
    names: list
    start: np.ndarray
    end: np.ndarray
    fore: np.ndarray
    back: np.ndarray
    length: np.ndarray
    rise: np.ndarray
    rise_variance: np.ndarray


@dataclass
class Solved:
    """A traverse laid out in the local frame of its start.

    Attributes
    ----------
    corrected : Corrected
        The norths at the legs' starts.
    correction_at_end : ndarray, shape (n,)
        What takes a bearing read at the leg's end to true north. Units: degrees.
    decl : ndarray, shape (n,)
        Declination at the legs' starts, also of rows that use none; NaN where it is not known. Units: degrees.
    turn : ndarray, shape (n,)
        True north at each leg's start, from the north of the frame. Units: degrees.
    attraction : traverse.Attraction
    step : ndarray, shape (n, 2)
        Legs before the adjustment, NaN where not used. Units: metres.
    places : traverse.Adjusted
    heights : traverse.Adjusted
    sigma : ndarray, shape (m,)
        1-sigma of the places. Units: metres.
    lon, lat : ndarray, shape (m,)
        WGS 84, NaN where not connected.
    """

    corrected: object
    correction_at_end: np.ndarray
    decl: np.ndarray
    turn: np.ndarray
    attraction: traverse.Attraction
    step: np.ndarray
    places: traverse.Adjusted
    heights: traverse.Adjusted
    sigma: np.ndarray
    lon: np.ndarray
    lat: np.ndarray


class ReduceTraverse(AgonicAlgorithm):
    """Places of the stations of a compass traverse."""

    ID, GROUP = "reduce_traverse", "sightings"
    INPUT, OUTPUT, LEGS, REPORT = "INPUT", "OUTPUT", "LEGS", "REPORT"
    FROM_FIELD, TO_FIELD, FORE_FIELD, BACK_FIELD = "FROM_FIELD", "TO_FIELD", "FORE_FIELD", "BACK_FIELD"
    DISTANCE_FIELD, DISTANCE_MEANS, METRES_PER_UNIT = "DISTANCE_FIELD", "DISTANCE_MEANS", "METRES_PER_UNIT"
    ANGLE_FIELD, ANGLE_MEANS, REFRACTION = "ANGLE_FIELD", "ANGLE_MEANS", "REFRACTION"
    START, START_STATION, START_HEIGHT, CRS = "START", "START_STATION", "START_HEIGHT", "CRS"
    END, END_STATION = "END", "END_STATION"
    CLEAN_WITHIN, SIGMA_BEARING = "CLEAN_WITHIN", "SIGMA_BEARING"
    SIGMA_DISTANCE, SIGMA_ANGLE = "SIGMA_DISTANCE", "SIGMA_ANGLE"
    CLOSURE, CLOSURE_LENGTH = "CLOSURE", "CLOSURE_LENGTH"

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

    def initAlgorithm(self, configuration=None):  # noqa: ARG002
        """Declare parameters and outputs."""
        self.add(
            QgsProcessingParameterFeatureSource(self.INPUT, tr("Legs"), [Qgis.ProcessingSourceType.Vector]),
            tr("A table, one row a leg, in any order."),
        )
        self._column(self.FROM_FIELD, tr("From station"), tr("Name of the station where the leg starts."))
        self._column(self.TO_FIELD, tr("To station"), tr("Name of the station where the leg ends."))
        self._column(self.FORE_FIELD, tr("Fore bearing"), tr("Read at the start toward the end, a number or N45W."))
        self._column(
            self.BACK_FIELD,
            tr("Back bearing"),
            tr("Read at the end toward the start. Without back bearings local attraction cannot be found."),
        )
        self._column(self.DISTANCE_FIELD, tr("Distance"), tr("Length of the leg."))
        self._choice(
            self.DISTANCE_MEANS,
            tr("What the distance is (choose one)"),
            (SLOPE, HORIZONTAL),
            tr("slope: along the line of sight, needs the vertical angle. horizontal: already level."),
        )
        self._number(
            self.METRES_PER_UNIT,
            tr("Metres in one unit of the distances"),
            1.0,
            tr("0.3048 for feet; the length of your pace if you counted paces."),
            least=1e-6,
        )
        self._column(
            self.ANGLE_FIELD, tr("Vertical angle"), tr("Read at the start toward the end, at eye height there.")
        )
        self._choice(
            self.ANGLE_MEANS,
            tr("What the vertical angle is"),
            rays.ANGLE_MEANS,
            tr(
                "degrees_up: degrees above the horizon, negative below. zenith: degrees from straight up. percent: "
                "rise over run. Needed with vertical angles."
            ),
        )
        self._add_known()
        self.declare(north_entries())
        add_bearing_notation(self)
        self._add_errors()
        self.add(
            QgsProcessingParameterFeatureSink(
                self.OUTPUT, tr("Stations of the traverse"), Qgis.ProcessingSourceType.VectorPoint
            ),
            tr(
                "A point for each station, with the correction for its local attraction and its uncertainty; with a "
                "third coordinate where all heights are known."
            ),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                self.LEGS, tr("Legs of the traverse"), Qgis.ProcessingSourceType.VectorLine, optional=True
            ),
            tr("The input's rows as lines, with residuals before and after and what the adjustment changed."),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                self.REPORT, tr("Report"), tr("HTML files (*.html)"), optional=True, createByDefault=False
            ),
            tr("Closure, stations, residuals, and how it was done."),
        )
        self.add_counts()
        self.addOutput(QgsProcessingOutputNumber(self.CLOSURE, tr("Largest gap where the traverse closes, metres")))
        self.addOutput(QgsProcessingOutputNumber(self.CLOSURE_LENGTH, tr("Length around that closure, metres")))

    def _add_known(self):
        self.add(
            QgsProcessingParameterPoint(self.START, tr("Start point")),
            tr("Where the traverse starts, in the CRS below unless it names its own."),
        )
        self.add(
            QgsProcessingParameterString(self.START_STATION, tr("Name of the start station"), optional=True),
            tr("Left empty: the station where the first row starts."),
        )
        self._number(
            self.START_HEIGHT,
            tr("Height of the start station"),
            None,
            tr("Metres above sea level. Left empty: no heights are worked out."),
        )
        self.add(
            QgsProcessingParameterCrs(self.CRS, tr("CRS of the stations"), optional=True),
            tr("Left empty: the one the start point names, else the layer's own."),
        )
        self.add(
            QgsProcessingParameterPoint(self.END, tr("Second known point"), optional=True),
            tr("Where the traverse ends, if it ends at another known point; it closes there."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(
                self.END_STATION, tr("Name of the station at the second point"), optional=True
            ),
            tr("Needed with the second known point."),
            advanced=True,
        )

    def _add_errors(self):
        self._number(
            self.CLEAN_WITHIN,
            tr("Fore and back bearing agree within"),
            1.0,
            tr(
                "Degrees. Legs whose residual is no greater are taken as free of local attraction. About twice what "
                "the compass can be read to."
            ),
            least=0.0,
        )
        self._number(
            self.SIGMA_BEARING,
            tr("Uncertainty of a reading"),
            1.0,
            tr("1-sigma, degrees. 1 is usual for a sighted bearing with a hand-held compass."),
            least=0.0,
            advanced=True,
        )
        self._number(
            self.SIGMA_DISTANCE,
            tr("Uncertainty of a distance"),
            1.0,
            tr("1-sigma, percent of the distance: 0.2 with a tape on rough ground, 2 or more by pacing."),
            least=0.0,
            advanced=True,
        )
        self._number(
            self.SIGMA_ANGLE,
            tr("Uncertainty of a vertical angle"),
            0.5,
            tr("1-sigma, degrees."),
            least=0.0,
            advanced=True,
        )
        self._number(
            self.REFRACTION,
            tr("Refraction"),
            rays.REFRACTION,
            tr("Curvature of a ray of light over that of the Earth; it matters for heights over long legs."),
            least=-5.0,
            advanced=True,
        )

    def _column(self, key, label, help_text):
        self.add(QgsProcessingParameterField(key, label, None, self.INPUT, optional=True), help_text)

    def _choice(self, key, label, words, help_text):
        self.add(QgsProcessingParameterEnum(key, label, list(words), usesStaticStrings=True, optional=True), help_text)

    def _number(self, key, label, default, help_text, *, least=None, advanced=False):
        kind = Qgis.ProcessingNumberParameterType.Double
        limit = {} if least is None else {"minValue": least}
        self.add(
            QgsProcessingParameterNumber(key, label, kind, default, default is None, **limit),
            help_text,
            advanced=advanced,
        )

    def refusal(self, parameters, context):
        """Why these parameters cannot run together: a sentence, or None."""
        return (
            self._fields_refusal(parameters, context)
            or self._known_refusal(parameters, context)
            or bearing_refusal(self, parameters, context)
            or north_refusal(self.said(parameters, context, north_entries()))
        )

    def _fields_refusal(self, parameters, context):
        for key in (self.FROM_FIELD, self.TO_FIELD, self.FORE_FIELD, self.DISTANCE_FIELD):
            if not self.given(parameters, key):
                return tr("{key} is needed.").format(key=key)
        means = self.word(parameters, self.DISTANCE_MEANS, context)
        if means is None:
            return tr("Say what the distance is: DISTANCE_MEANS is slope or horizontal.")
        if means == SLOPE and not self.given(parameters, self.ANGLE_FIELD):
            return tr("Slope distances need vertical angles: give ANGLE_FIELD.")
        if self.given(parameters, self.ANGLE_FIELD) and not self.given(parameters, self.ANGLE_MEANS):
            return tr("ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.")
        if self.given(parameters, self.START_HEIGHT) and not self.given(parameters, self.ANGLE_FIELD):
            return tr("Heights need vertical angles: give ANGLE_FIELD, or leave START_HEIGHT empty.")
        return None

    def _known_refusal(self, parameters, context):
        if self.given(parameters, self.END) != self.given(parameters, self.END_STATION):
            return tr("END and END_STATION are needed together.")
        if Locator(self._crs(parameters, context)).projection is None:
            return tr("{key}: there is no coordinate reference system that leads to places on Earth.").format(
                key=self.CRS
            )
        return None

    def _crs(self, parameters, context):
        if self.given(parameters, self.CRS):
            return self.parameterAsCrs(parameters, self.CRS, context)
        value = parameters.get(self.START)
        if hasattr(value, "crs") or (isinstance(value, str) and "[" in value):
            return self.parameterAsPointCrs(parameters, self.START, context)
        return self.source(parameters, self.INPUT, context).sourceCrs()

    # -- the run ------------------------------------------------------------------------------------------------------

    def work(self, parameters, context, feedback):
        """Run."""
        source = self.source(parameters, self.INPUT, context)
        crs = self._crs(parameters, context)
        locator, shapes = Locator(crs), MapShapes(crs)
        features = [feature for chunk in chunks(source, feedback, stop=30.0) for feature in chunk.features]
        if feedback.isCanceled():
            return {}
        if not features:
            raise QgsProcessingException(tr("There is no leg in the table."))
        notes = Notes(len(features))
        legs = self._legs(Chunk(features, source.fields()), parameters, context, notes)
        known, centre = self._known(parameters, context, legs, locator, crs)
        north = NorthBlock(self.said(parameters, context, north_entries()), locator)
        north.survey(legs.chunk)
        north.refuse_undated()
        fields, renamed = output_fields(
            source.fields(),
            LEG_FIELDS,
            short_names=is_shapefile(self.destination(parameters, self.LEGS)),
            key_is_unique=key_is_unique(source, self.parameterAsVectorLayer(parameters, self.INPUT, context), feedback),
        )
        if self.given(parameters, self.LEGS):
            self.report_renamed(renamed, feedback)
        solved = self._solve(legs, parameters, context, north, locator, known, centre, notes)
        self._note(legs, solved, parameters, context, notes)
        lone = Notes(len(legs.names))
        lone.add_where(np.isnan(solved.lon), "not_connected", rejects=True)
        stations = self._station_columns(legs, solved) | lone.columns()
        feedback.setProgress(60.0)

        result = self._write_stations(parameters, context, feedback, solved, shapes, crs, stations)
        tally = Tally()
        tally.add(legs.chunk.ids, notes)
        if self.given(parameters, self.LEGS) and not feedback.isCanceled():
            result |= self._write_legs(parameters, context, feedback, legs, solved, shapes, crs, fields, notes)
        warnings = [*self._warnings(parameters, legs, solved), *north.warnings()]
        tally.report(feedback)
        for _, sentence in warnings:
            feedback.pushWarning(sentence)
        report = self.parameterAsFileOutput(parameters, self.REPORT, context)
        if report and not feedback.isCanceled():
            write_report(self.run_outputs.file(report), tally, warnings, stations, legs, solved, north)
        gaps = np.hypot(*solved.places.gap.T)
        worst = int(np.argmax(gaps)) if gaps.size else None
        return result | {
            self.REPORT: report or None,
            READ: tally.read,
            DONE: tally.done,
            WARNED: tally.status[WARNING],
            REJECTED: tally.status[REJECTED_STATUS],
            self.CLOSURE: None if worst is None else float(gaps[worst]),
            self.CLOSURE_LENGTH: None if worst is None else float(solved.places.around[worst]),
        }

    # -- reading ------------------------------------------------------------------------------------------------------

    def _legs(self, chunk, parameters, context, notes):
        """Read the legs; rows that are none are rejected."""
        names = {}
        ends = [
            np.array(
                [
                    -1 if is_empty(cell) else names.setdefault(text_of(cell), len(names))
                    for cell in column_or_empty(chunk, self.field(parameters, key, context))
                ],
                dtype=np.intp,
            )
            for key in (self.FROM_FIELD, self.TO_FIELD)
        ]
        start, end = ends
        notes.add_where((start < 0) | (end < 0), "no_station", rejects=True)
        notes.add_where((start == end) & ~notes.rejected, "same_station", rejects=True)
        reader = BearingReader(self, parameters, context)
        fore, back = (
            reader.read(chunk, self.field(parameters, key, context), notes, may_be_empty=True)
            for key in (self.FORE_FIELD, self.BACK_FIELD)
        )
        for row in np.flatnonzero(np.isnan(fore) & np.isnan(back) & ~notes.rejected):
            notes.add(row, "null_value", rejects=True, column="azimuth")
        length, rise, variance = self._lengths(chunk, parameters, context, notes)
        return Legs(chunk, list(names), start, end, fore, back, length, rise, variance)

    def _lengths(self, chunk, parameters, context, notes):
        """Horizontal length and rise of the legs."""
        count = len(chunk)
        field = self.field(parameters, self.DISTANCE_FIELD, context)
        distance, _ = numbers(chunk.column(field), count)
        notes.add_where(~(distance > 0.0), "no_distance", rejects=True, value=_written(chunk, field))
        distance = np.where(distance > 0.0, distance, np.nan) * self.number(parameters, self.METRES_PER_UNIT, context)
        field = self.field(parameters, self.ANGLE_FIELD, context)
        if not field:
            return distance, np.full(count, np.nan), np.full(count, np.nan)
        up = read_vertical_angles(chunk.column(field), self.word(parameters, self.ANGLE_MEANS, context), notes)
        slope = self.word(parameters, self.DISTANCE_MEANS, context) == SLOPE
        if slope:
            notes.add_where(np.isnan(up) & ~notes.rejected, "no_slope", rejects=False)
        tilt = np.radians(np.nan_to_num(up))
        length = distance * np.cos(tilt) if slope else distance
        share = self.number(parameters, self.SIGMA_DISTANCE, context) / 100.0
        of_angle = length * np.radians(self.number(parameters, self.SIGMA_ANGLE, context)) / np.cos(tilt) ** 2
        variance = of_angle**2 + (share * length * np.tan(tilt)) ** 2
        return length, rays.rise(length, up, self.number(parameters, self.REFRACTION, context)), variance

    def _known(self, parameters, context, legs, locator, crs):
        """Known places in the local frame, NaN elsewhere, with the number of the start, and the frame's centre."""
        known, first = np.full((len(legs.names), 2), np.nan), None
        centre = None
        for point, word in ((self.START, self.START_STATION), (self.END, self.END_STATION)):
            if not self.given(parameters, point):
                continue
            name = self.parameterAsString(parameters, word, context).strip()
            if not name and first is None:
                good = np.flatnonzero(legs.start >= 0)
                name = legs.names[legs.start[good[0]]] if good.size else ""
            if name not in legs.names:
                raise QgsProcessingException(
                    tr('{key}: no leg starts or ends at a station "{name}".').format(key=word, name=name)
                )
            place = self.parameterAsPoint(parameters, point, context, crs)
            x, y = np.array([place.x()]), np.array([place.y()])
            lon, lat = norths.wgs84_lonlat(locator.projection, x, y)
            if np.isnan(lon[0]):
                raise QgsProcessingException(tr("{key} is no place on Earth in the CRS.").format(key=point))
            if centre is None:
                centre, first = (float(lon[0]), float(lat[0])), legs.names.index(name)
            elif legs.names.index(name) == first:
                raise QgsProcessingException(tr("START_STATION and END_STATION are the same station."))
            known[legs.names.index(name)] = np.ravel(norths.to_local(lon, lat, *centre))
        return (known, first), centre

    # -- solving ------------------------------------------------------------------------------------------------------

    def _solve(self, legs, parameters, context, north, locator, known, centre, notes):
        """Lay the traverse out: once as if all readings were taken at the start, then each at its own station."""
        rough_north, rough_notes = (
            NorthBlock(self.said(parameters, context, north_entries()), locator),
            Notes(len(legs.chunk)),
        )
        rough_notes.rejected |= notes.rejected
        at_start = np.full(len(legs.names), centre[0]), np.full(len(legs.names), centre[1])
        rough = self._lay(legs, parameters, context, rough_north, locator, known, centre, at_start, rough_notes)
        lost = np.isnan(rough.lon)
        nearer = np.where(lost, centre[0], rough.lon), np.where(lost, centre[1], rough.lat)
        return self._lay(legs, parameters, context, north, locator, known, centre, nearer, notes)

    def _lay(self, legs, parameters, context, north, locator, known, centre, stations, notes):
        """Lay the traverse out, with the norths of stations about whose places something is known."""
        at, to = np.maximum(legs.start, 0), np.maximum(legs.end, 0)
        used = np.where(notes.rejected, np.nan, 1.0)
        turns = traverse.meridian_turn(*stations, *centre)
        shapes = MapShapes(self._crs(parameters, context))
        places = [places_at(locator.projection, *shapes.xy(stations[0][ends], stations[1][ends])) for ends in (at, to)]
        # What is wrong with a row's north is wrong at both of its ends: it is noted and counted for the first.
        again, unsaid = NorthBlock(self.said(parameters, context, north_entries()), locator), Notes(len(legs.chunk))
        fore = np.where(np.isnan(legs.fore), wrap360(legs.back + 180.0), legs.fore)
        back = np.where(np.isnan(legs.back), wrap360(legs.fore + 180.0), legs.back)
        corrected = north.correct(legs.chunk, places[0], fore, ~notes.rejected, notes)
        at_end = again.correct(legs.chunk, places[1], back, ~notes.rejected, unsaid)
        fore = wrap360(legs.fore + corrected.correction - turns[at]) * used
        back = wrap360(legs.back + at_end.correction - turns[to]) * used
        clean_within, sigma, share = (
            self.number(parameters, key, context)
            for key in (self.CLEAN_WITHIN, self.SIGMA_BEARING, self.SIGMA_DISTANCE)
        )
        attraction = traverse.local_attraction(at, to, fore, back, len(legs.names), clean_within, sigma)
        step, variance = traverse.leg_steps(
            attraction.azimuth, legs.length, attraction.sigma, share / 100 * legs.length
        )
        fixed, first = known
        laid = traverse.adjust(at, to, step, legs.length, fixed, variance)
        height = np.full((len(legs.names), 1), np.nan)
        if self.given(parameters, self.START_HEIGHT):
            height[first] = self.number(parameters, self.START_HEIGHT, context)
        rise = np.where(np.isnan(step[:, 0]), np.nan, legs.rise)[:, np.newaxis]
        heights = traverse.adjust(at, to, rise, legs.length, height, legs.rise_variance[:, np.newaxis])
        there = np.isfinite(step[:, 0])
        common = float(np.mean(corrected.sigma[there])) if there.any() else 0.0
        offset = laid.after - fixed[np.maximum(laid.origin, 0)]
        return Solved(
            corrected,
            at_end.correction,
            north.known_declination(legs.chunk, places[0], corrected.decl),
            turns[at],
            attraction,
            step,
            laid,
            heights,
            traverse.position_sigma(laid.variance, offset, common),
            *norths.from_local(laid.after[:, 0], laid.after[:, 1], *centre),
        )

    def _note(self, legs, solved, parameters, context, notes):
        """Note what is wrong with legs, and what is remarkable."""
        found, good = solved.attraction, ~notes.rejected
        notes.add_where(found.opposed & good, "opposed", rejects=True, value=np.round(found.before, 1))
        good = ~notes.rejected
        notes.add_where(good & np.isnan(solved.lon[np.maximum(legs.start, 0)]), "not_connected", rejects=True)
        good = ~notes.rejected
        both = good & ~np.isnan(found.before)
        sigma, within = (self.number(parameters, key, context) for key in (self.SIGMA_BEARING, self.CLEAN_WITHIN))
        allowed = max(within, 2.0 * np.sqrt(2.0) * sigma)
        strong = both & (np.abs(found.before) > STRONG)
        notes.add_where(strong, "strong_attraction", rejects=False, value=np.round(found.before, 1))
        slips = compass_check.hypotheses(found.before, solved.decl, np.sqrt(2.0) * sigma)
        for slip in (compass_check.ONE_DECLINATION, compass_check.TWO_DECLINATIONS):
            value, decl = np.round(found.before, 1), np.round(solved.decl, 1)
            notes.add_where(both & (slips == slip), slip, rejects=False, value=value, decl=decl)
        left = both & (np.abs(found.after) > allowed)
        notes.add_where(left, "fore_back", rejects=False, value=np.round(found.after, 1))
        notes.add_where(both & ~found.free, "no_clean_line", rejects=False)
        if self.given(parameters, self.BACK_FIELD):
            notes.add_where(good & ~both & ~found.free, "one_way", rejects=False)

    def _warnings(self, parameters, legs, solved):
        """What was noticed about the traverse as a whole, as (code, sentence)."""
        found = []
        if not self.given(parameters, self.BACK_FIELD):
            found.append(Finding("no_back_bearings", {}))
        before = solved.attraction.before[~np.isnan(solved.attraction.before)]
        turned = int(np.sum(np.abs(before) > TURNED))
        if turned >= max(ENOUGH, MOST * len(before)):
            found.append(Finding("back_turned", {"count": turned, "rows": len(before)}))
        laid = solved.places
        if not laid.closing.size:
            found.append(Finding("traverse_open", {}))
        sizes = traverse.gap_in_sigmas(laid.gap, laid.gap_variance)
        for row in np.flatnonzero(sizes > LARGE_GAP):
            leg = laid.closing[row]
            values = {"gap": f"{np.hypot(*laid.gap[row]):.1f}", "around": f"{laid.around[row]:.0f}"}
            values |= {"start": legs.names[legs.start[leg]], "end": legs.names[legs.end[leg]]}
            found.append(Finding("closure_large", values))
        return [run_warning(one) for one in found]

    # -- writing ------------------------------------------------------------------------------------------------------

    @staticmethod
    def _station_columns(legs, solved):
        used = np.isfinite(solved.step[:, 0])
        ends = np.concatenate([legs.start[used], legs.end[used]])
        laid, heights = solved.places, solved.heights
        return {
            "station": legs.names,
            "n_legs": np.bincount(ends, minlength=len(legs.names)).tolist(),
            "attr_corr": solved.attraction.correction,
            "sig_attr": np.sqrt(solved.attraction.variance),
            "attr_from": solved.attraction.source.tolist(),
            "elev": heights.after[:, 0],
            "sig_elev": np.sqrt(heights.variance[:, 0]),
            "moved": np.hypot(*(laid.after - laid.before).T),
            "sig_pos": solved.sigma,
        }

    def _write_stations(self, parameters, context, feedback, solved, shapes, crs, columns):
        fields, _ = output_fields([], STATION_FIELDS, short_names=False, key_is_unique=True)
        flat = _is_flat(solved)
        kind = Qgis.WkbType.Point if flat else Qgis.WkbType.PointZ
        writer = Writer(self, parameters, self.OUTPUT, context, feedback, fields, kind, crs)
        with writer:
            places = zip(solved.lon, solved.lat, solved.heights.after[:, 0], strict=True)
            points = [QgsGeometry() if np.isnan(lon) else shapes.point(lon, lat, z) for lon, lat, z in places]
            writer.add([_flat(point) if flat else point for point in points], value_rows(STATION_FIELDS, columns))
        return {self.OUTPUT: writer.destination}

    def _write_legs(self, parameters, context, feedback, legs, solved, shapes, crs, fields, notes):
        flat = _is_flat(solved)
        kind = Qgis.WkbType.LineString if flat else Qgis.WkbType.LineStringZ
        heights, lines = solved.heights.after[:, 0], []
        for row in range(len(legs.chunk)):
            ends = [legs.start[row], legs.end[row]]
            line = QgsGeometry()
            if not notes.rejected[row]:
                line = shapes.line(solved.lon[ends], solved.lat[ends], heights[ends])
            lines.append(_flat(line) if flat else line)
        writer = Writer(self, parameters, self.LEGS, context, feedback, fields, kind, crs)
        with writer:
            columns = self._leg_columns(legs, solved, notes) | notes.columns()
            writer.add(lines, output_rows(legs.chunk, LEG_FIELDS, columns))
        return {self.LEGS: writer.destination}

    @staticmethod
    def _leg_columns(legs, solved, notes):
        found, corrected = solved.attraction, solved.corrected
        at, to = np.maximum(legs.start, 0), np.maximum(legs.end, 0)
        east, north = (solved.step + solved.places.change).T
        leg = wrap360(found.azimuth + solved.turn)
        adjusted, length = wrap360(np.degrees(np.arctan2(east, north)) + solved.turn), np.hypot(east, north)
        columns = {
            "fore_read": legs.fore,
            "back_read": legs.back,
            "decl": corrected.decl,
            "ring_set": corrected.ring_set,
            "correction": corrected.correction,
            "fore_corr": wrap360(legs.fore + corrected.correction + np.nan_to_num(found.correction[at])),
            "back_corr": wrap360(legs.back + solved.correction_at_end + np.nan_to_num(found.correction[to])),
            "res_before": found.before,
            "res_after": found.after,
            "azim_leg": leg,
            "sig_az": np.hypot(found.sigma, corrected.sigma),
            "length": legs.length,
            "rise": legs.rise,
            "azim_adj": adjusted,
            "length_adj": length,
            "d_azim": difference(adjusted, leg),
            "d_length": length - legs.length,
        }
        known = np.where(notes.rejected, np.nan, 1.0)
        columns = {name: column * known for name, column in columns.items()}
        return columns | {
            "decl_from": notes.kept(corrected.decl_from),
            "read_date": notes.kept(corrected.read_date),
        }


def _written(chunk, field):
    """A column as it was written, for remarks."""
    cells = np.full(len(chunk), "", dtype=object)
    cells[:] = ["" if is_empty(cell) else text_of(cell) for cell in column_or_empty(chunk, field)]
    return cells


def _is_flat(solved):
    """Whether some place has no height: a layer with heights for some of its points is refused by many files."""
    return bool(np.isnan(solved.heights.after[~np.isnan(solved.lon), 0]).any())


def _flat(geometry):
    """A geometry without heights."""
    if not geometry.isEmpty():
        geometry.get().dropZValue()
    return geometry
