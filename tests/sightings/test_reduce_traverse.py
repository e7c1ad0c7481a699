"""Compass traverses, through Processing."""

import numpy as np
import pytest
from agonic.processing_algs.core import geomagnetism
from agonic.processing_algs.core.norths import from_local, own_lonlat, true_azimuth
from pyproj import Geod, Transformer
from qgis.core import QgsProcessingException, QgsVariantUtils, QgsVectorLayer

GEOD = Geod(ellps="WGS84")
FIELDS = ["at:string", "to:string", "fore:double", "back:double", "dist:double"]
LEG_FIELDS = {
    "FROM_FIELD": "at",
    "TO_FIELD": "to",
    "FORE_FIELD": "fore",
    "BACK_FIELD": "back",
    "DISTANCE_FIELD": "dist",
}

USUAL = {"DISTANCE_MEANS": "horizontal", "NORTH": "true", "START": "500000,6100000", "CRS": "EPSG:25832"}


def rows_of(layer):
    return [
        {
            name: None if QgsVariantUtils.isNull(value) else value
            for name, value in zip(layer.fields().names(), row.attributes(), strict=True)
        }
        | {"geometry": row.geometry()}
        for row in layer.getFeatures()
    ]


def table(make_points, rows, fields=FIELDS):
    return make_points(fields, [(None, None, *row) for row in rows], geometry="None")


def reduce(run, layer, **more):
    """Run it, by default on horizontal distances and bearings that are true already."""
    result = run("reduce_traverse", {"INPUT": layer, "LEGS": "TEMPORARY_OUTPUT", **LEG_FIELDS, **USUAL, **more})
    result["legs"] = rows_of(result["LEGS"])
    stations = result["OUTPUT"]
    stations = QgsVectorLayer(stations, "stations", "ogr") if isinstance(stations, str) else stations
    result["stations"] = {row["station"]: row for row in rows_of(stations)}
    return result


def lonlat(result, station):
    point = result["stations"][station]["geometry"].asPoint()
    crs = result["OUTPUT"].crs().authid()
    return Transformer.from_crs(crs, "EPSG:4326", always_xy=True).transform(point.x(), point.y())


class Truth:
    """An invented traverse whose places are known: A to E around a quarry, E back to A, and a spur from C to F."""

    PLACES = {"A": (0, 0), "B": (310, 420), "C": (900, 510), "D": (1250, -60), "E": (520, -380), "F": (1180, 990)}
    LEGS = ("AB", "BC", "CD", "DE", "EA", "CF")

    def __init__(self, lon=9.3, lat=55.0, off=(0.0, 0.0)):
        self.places = {
            name: tuple(map(float, from_local(east + off[0], north + off[1], lon, lat)))
            for name, (east, north) in self.PLACES.items()
        }

    def rows(self, wrong=None, north=None):
        """Rows as a perfect compass reads them, each station's readings turned by what attracts it."""
        wrong, north = wrong or {}, north or dict.fromkeys(self.PLACES, 0.0).get
        rows = []
        for start, end in self.LEGS:
            fore, back, length = GEOD.inv(*self.places[start], *self.places[end])
            fore, back = fore - north(start) + wrong.get(start, 0.0), back - north(end) + wrong.get(end, 0.0)
            rows.append((start, end, fore % 360, back % 360, length))
        return rows

    def magnetic(self, year):
        """What a needle is off true north at a station."""

        def north(name):
            lon, lat = self.places[name]
            return float(geomagnetism.synthesise("igrf14", lat, lon, 0.0, year).decl)

        return north

    def start(self, crs, name="A"):
        x, y = Transformer.from_crs("EPSG:4326", crs, always_xy=True).transform(*self.places[name])
        return f"{x},{y} [{crs}]"


@pytest.mark.parametrize(
    ("crs", "lon", "lat"),
    [
        ("EPSG:25832", 11.7, 55.0),
        ("EPSG:3857", 9.3, 66.0),
        ("EPSG:4326", 9.3, -38.0),
        ("EPSG:3035", -8.0, 41.0),
        ("EPSG:3995", 20.0, 81.0),
    ],
)
def test_places_are_found_from_magnetic_bearings_whatever_the_crs(make_points, run, crs, lon, lat):
    truth = Truth(lon, lat)
    layer = table(make_points, truth.rows(north=truth.magnetic(2024 + 182 / 366)))
    start = truth.start(crs)
    result = reduce(run, layer, START=start, CRS=None, NORTH="magnetic", DATE="2024-07-01")
    assert result["OUTPUT"].crs().authid() == crs
    for name, place in truth.places.items():
        # To the rounding of degrees that are written to 15 digits, and the frame's own millimetre.
        assert GEOD.inv(*place, *lonlat(result, name))[2] < 0.02
    assert result["CLOSURE"] < 0.02
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (6, 6, 0)


def test_local_attraction_is_found_and_its_bearings_freed(make_points, run):
    truth = Truth()
    wrong = {"A": -1.5, "D": 6.0, "F": -8.0}  # B and C are free: their leg is the clean one
    result = reduce(run, table(make_points, truth.rows(wrong)), START=truth.start("EPSG:25832"))
    for name in "ABCDF":
        station = result["stations"][name]
        assert station["attr_corr"] == pytest.approx(-wrong.get(name, 0.0), abs=0.02)  # meridians converge a little
        assert station["attr_from"] == ("clean" if name in "BC" else "carried")
        assert GEOD.inv(*truth.places[name], *lonlat(result, name))[2] < 0.3
    before = [leg["res_before"] for leg in result["legs"]]
    assert before == pytest.approx([1.5, 0.0, 6.0, -6.0, -1.5, -8.0], abs=0.02)
    assert [leg["res_after"] for leg in result["legs"]] == pytest.approx([0.0] * 6, abs=0.02)
    for leg, row in zip(result["legs"], truth.rows(), strict=True):
        assert leg["azim_leg"] == pytest.approx(row[2], abs=0.03)
        assert leg["fore_corr"] == pytest.approx(row[2], abs=0.03)


# A closed compass traverse from a surveying course (classic exercise, quoted at askfilo.com; observations as printed,
# corrections computed by hand, closing exactly): fore and back bearing, degrees and minutes; corrections in minutes. It
# has no lengths; equal ones are given. Whole minutes, hence a tolerance of a hundredth of a minute; on a place whose
# meridians are parallel to that: the legs are a metre long.
CLASSIC = [
    ("A", "B", 75 + 5 / 60, 254 + 20 / 60, 1.0),
    ("B", "C", 115 + 20 / 60, 296 + 35 / 60, 1.0),
    ("C", "D", 165 + 35 / 60, 345 + 35 / 60, 1.0),
    ("D", "E", 224 + 50 / 60, 44 + 5 / 60, 1.0),
    ("E", "A", 304 + 50 / 60, 125 + 5 / 60, 1.0),
]


def test_a_published_traverse_has_its_published_corrections(make_points, run):
    result = reduce(run, table(make_points, CLASSIC), CLEAN_WITHIN=0.1, METRES_PER_UNIT=1.0)
    corrections = [result["stations"][name]["attr_corr"] * 60 for name in "ABCDE"]
    assert corrections == pytest.approx([30, 75, 0, 0, 45], abs=0.01)
    corrected = [75 + 35 / 60, 116 + 35 / 60, 165 + 35 / 60, 224 + 50 / 60, 305 + 35 / 60]
    assert [leg["azim_leg"] for leg in result["legs"]] == pytest.approx(corrected, abs=1e-4)


def test_a_ring_is_closed_in_proportion_to_leg_length(make_points, run):
    """By hand: 106, 200, 100, 200 m that miss the start by 6 m north, on the equator, where meridians are parallel."""
    rows = [("P", "Q", 0, 180, 106), ("Q", "R", 90, 270, 200), ("R", "S", 180, 0, 100), ("S", "P", 270, 90, 200)]
    result = reduce(run, table(make_points, rows), START="500000,0")
    assert result["CLOSURE"] == pytest.approx(6.0, abs=1e-3)
    assert result["CLOSURE_LENGTH"] == pytest.approx(606.0)
    moved = np.array([0, 106, 306, 406]) / 606 * 6
    assert [result["stations"][name]["moved"] for name in "PQRS"] == pytest.approx(moved, abs=1e-3)
    first, second = result["legs"][:2]
    assert first["d_length"] == pytest.approx(-6 * 106 / 606, abs=1e-3)
    assert second["d_azim"] == pytest.approx(np.degrees(np.arctan(6 * 200 / 606 / 200)), abs=1e-3)
    assert second["azim_leg"] == pytest.approx(90.0, abs=1e-3)


def test_a_second_known_point_closes_the_traverse(make_points, run):
    truth = Truth()
    rows = [(*row[:4], row[4] * 1.01) for row in truth.rows()[:3]]
    start, end = truth.start("EPSG:25832"), truth.start("EPSG:25832", "D")
    result = reduce(run, table(make_points, rows), START=start, END=end, END_STATION="D")
    assert GEOD.inv(*truth.places["D"], *lonlat(result, "D"))[2] < 1e-3
    assert result["stations"]["D"]["sig_pos"] == pytest.approx(0.0, abs=1e-9)
    assert (
        result["stations"]["B"]["sig_pos"]
        < reduce(run, table(make_points, rows), START=start)["stations"]["B"]["sig_pos"]
    )
    east, north = np.subtract(truth.PLACES["D"], truth.PLACES["A"])
    assert result["CLOSURE"] == pytest.approx(0.01 * np.hypot(east, north), rel=0.01)


def test_slope_distances_and_vertical_angles_give_length_and_height(make_points, run):
    # 306.68 m along +12 degrees are 300 m level and 63.77 m up; curvature and refraction at 300 m add 0.006 m.
    fields = [*FIELDS, "vert:double"]
    rows = [("A", "B", 40, 220, 306.68, 12.0), ("B", "C", 130, 310, 50.0, -20.0)]
    common = {"DISTANCE_MEANS": "slope", "ANGLE_FIELD": "vert", "START_HEIGHT": 100.0}
    result = reduce(run, table(make_points, rows, fields), ANGLE_MEANS="degrees_up", **common)
    assert [leg["length"] for leg in result["legs"]] == pytest.approx([299.98, 46.98], abs=0.01)
    height = result["stations"]["B"]["elev"]
    assert height == pytest.approx(100 + 306.68 * np.sin(np.radians(12)) + 0.0062, abs=1e-3)
    assert result["stations"]["C"]["elev"] == pytest.approx(height - 50 * np.sin(np.radians(20)), abs=1e-3)
    assert result["stations"]["B"]["geometry"].get().z() == pytest.approx(height)
    # Half a degree over 300 m, by the slope of the tangent; and one percent of the distance.
    expected = np.hypot(299.98 * np.radians(0.5) / np.cos(np.radians(12)) ** 2, 0.01 * 299.98 * np.tan(np.radians(12)))
    assert result["stations"]["B"]["sig_elev"] == pytest.approx(expected, rel=1e-3)
    rows = [(*row[:5], 90 - row[5]) for row in rows]
    again = reduce(run, table(make_points, rows, fields), ANGLE_MEANS="zenith", **common)
    assert again["stations"]["B"]["elev"] == pytest.approx(height)


@pytest.mark.parametrize("kind", ["shp", "gpkg"])
def test_a_leg_without_its_vertical_angle_is_taken_as_level_and_ends_without_a_height(make_points, run, tmp_path, kind):
    fields = [*FIELDS, "vert:double"]
    rows = [("A", "B", 40, 220, 306.68, 12.0), ("C", "D", 90, 270, 10.0, 95.0), ("B", "C", 90, 270, 10.0, None)]
    common = {"DISTANCE_MEANS": "slope", "ANGLE_FIELD": "vert", "ANGLE_MEANS": "degrees_up", "START_HEIGHT": 100.0}
    files = {key: str(tmp_path / f"{key}.{kind}") for key in ("OUTPUT", "LEGS")}
    result = run(
        "reduce_traverse", {"INPUT": table(make_points, rows, fields), **LEG_FIELDS, **USUAL, **common, **files}
    )
    stations = {row["station"]: row for row in result["rows"]}
    assert stations["B"]["elev"] > 160.0
    assert stations["C"]["elev"] is None
    assert stations["C"]["status"] == "ok"
    assert result["DONE"] == 2
    legs = rows_of(QgsVectorLayer(result["LEGS"], "legs", "ogr"))
    assert [leg["code"] for leg in legs] == [None, "slope_range", "no_slope"]
    assert legs[2]["length"] == pytest.approx(10.0)


def test_without_the_height_of_the_start_there_are_no_heights(make_points, run):
    result = reduce(run, table(make_points, CLASSIC))
    assert {row["elev"] for row in result["stations"].values()} == {None}
    assert not result["stations"]["A"]["geometry"].get().is3D()


def test_grid_bearings_are_counted_from_the_grid(make_points, run):
    """On a Lambert grid with a convergence of several degrees, a leg along grid north must run along grid north."""
    crs = "EPSG:2154"
    layer = table(make_points, [("A", "B", 0.0, 180.0, 1000.0), ("B", "C", 75.0, 255.0, 600.0)])
    result = reduce(run, layer, START="1200000,6900000", CRS=crs, NORTH="grid")
    place = {name: result["stations"][name]["geometry"].asPoint() for name in "ABC"}
    assert place["B"].x() - place["A"].x() == pytest.approx(0.0, abs=0.05)
    turn = np.degrees(np.arctan2(place["C"].x() - place["B"].x(), place["C"].y() - place["B"].y()))
    assert turn == pytest.approx(75.0, abs=0.01)
    lon, lat = own_lonlat(crs, place["A"].x(), place["A"].y())
    assert result["legs"][0]["azim_leg"] == pytest.approx(float(true_azimuth(crs, lon, lat, 0.0)), abs=0.01)
    assert 2.0 < result["legs"][0]["azim_leg"] < 10.0


def test_places_far_from_the_start_are_less_certain_and_the_declination_counts(make_points, run):
    truth = Truth()
    start, layer = truth.start("EPSG:25832"), table(make_points, truth.rows())
    sigma = {name: row["sig_pos"] for name, row in reduce(run, layer, START=start)["stations"].items()}
    assert sigma["A"] == 0.0
    assert sigma["B"] < sigma["C"] < sigma["F"]
    unsure = reduce(run, layer, START=start, NORTH="magnetic", MODEL="given", DECLINATION=0.0, SIGMA_DECLINATION=2.0)
    turned = np.hypot(1180, 990) * np.radians(2.0)
    assert unsure["stations"]["F"]["sig_pos"] > turned > sigma["F"]


def test_without_a_clean_line_the_mean_is_taken_and_said(make_points, run):
    result = reduce(run, table(make_points, [("A", "B", 355.0, 179.0, 100.0)]))
    leg = result["legs"][0]
    assert (leg["status"], leg["code"]) == ("warning", "no_clean_line")
    assert leg["azim_leg"] == pytest.approx(357.0, abs=1e-3)
    assert leg["res_before"] == pytest.approx(4.0, abs=1e-3)
    assert leg["res_after"] is None
    assert result["stations"]["A"]["attr_from"] == "none"
    assert "traverse neither returns" in " ".join(result["warnings"])


def test_rows_that_cannot_be_used_come_out_with_the_reason(make_points, run):
    rows = [
        ("A", "B", 40, 220, 100),
        ("B", "B", 40, 220, 100),
        ("B", None, 40, 220, 100),
        ("B", "C", None, None, 100),
        ("B", "C", 40, 220, None),
        ("B", "C", 40, 220, -5),
        ("B", "C", 400, 220, 100),
        ("B", "C", 60, 59, 100),
        ("X", "Y", 40, 220, 100),
        ("B", "D", 30, 225, 100),
        ("D", "G", 30, None, 100),
        ("A", "B", 51, 220, 100),
    ]
    result = reduce(run, table(make_points, rows))
    codes = [leg["code"] for leg in result["legs"]]
    assert codes[:9] == [
        None,
        "same_station",
        "no_station",
        "null_value",
        "no_distance",
        "no_distance",
        "azimuth_range",
        "opposed",
        "not_connected",
    ]
    assert {leg["status"] for leg in result["legs"][1:9]} == {"rejected"}
    assert {leg["azim_adj"] for leg in result["legs"][1:9]} == {None}
    assert codes[9:11] == ["strong_attraction", None]
    assert "strong_attraction" in codes[11]
    assert "fore_back" in codes[11]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (12, 4, 8)
    assert result["stations"]["C"]["status"] == "rejected"
    assert result["stations"]["C"]["geometry"].isEmpty()


def test_a_leg_read_one_way_from_a_station_not_known_is_marked(make_points, run):
    result = reduce(run, table(make_points, [("A", "B", 40, None, 100), ("B", "C", None, 200, 50)]))
    assert [leg["code"] for leg in result["legs"]] == ["one_way", "one_way"]
    assert [leg["azim_leg"] for leg in result["legs"]] == pytest.approx([40.0, 20.0], abs=1e-3)
    layer = table(make_points, [("A", "B", 40, None, 100)])
    result = reduce(run, layer, BACK_FIELD=None)
    assert result["legs"][0]["code"] is None
    assert "no back bearings" in " ".join(result["warnings"])


def test_a_residual_near_the_declination_is_suspected_of_a_correction_at_one_end(make_points, run):
    rows = [("A", "B", 40, 220, 100), ("B", "C", 60, 252, 100), ("C", "D", 75, 231, 100), ("D", "E", 20, 205, 100)]
    given = {"NORTH": "magnetic", "MODEL": "given", "DECLINATION": 12.0}
    result = reduce(run, table(make_points, rows), **given)
    assert [leg["code"] for leg in result["legs"]] == [
        None,
        "strong_attraction;near_declination",
        "strong_attraction;near_twice",
        None,
    ]
    assert result["legs"][1]["res_before"] == pytest.approx(12.0, abs=0.01)  # meridians converge
    assert "Nothing was changed" in result["legs"][1]["remark"]


def test_back_bearings_written_turned_round_are_suspected_not_used(make_points, run):
    rows = [("A", "B", 40, 41, 100), ("B", "C", 60, 60, 100), ("C", "D", 75, 74, 100)]
    result = reduce(run, table(make_points, rows))
    assert {leg["code"] for leg in result["legs"]} == {"opposed"}
    assert "3 of 3 back bearings point the same way" in " ".join(result["warnings"])


def test_the_start_may_name_a_crs_of_its_own(make_points, run):
    truth = Truth()
    layer = table(make_points, truth.rows())
    result = reduce(run, layer, START=truth.start("EPSG:4326"), CRS="EPSG:25832")
    assert result["OUTPUT"].crs().authid() == "EPSG:25832"
    assert GEOD.inv(*truth.places["D"], *lonlat(result, "D"))[2] < 0.02


def test_a_blunder_that_breaks_the_closure_is_told(make_points, run):
    truth = Truth()
    rows = truth.rows()
    rows[1] = (*rows[1][:4], rows[1][4] + 100.0)
    result = reduce(run, table(make_points, rows), START=truth.start("EPSG:25832"))
    assert "Is a leg misread?" in " ".join(result["warnings"])
    assert result["CLOSURE"] == pytest.approx(100.0, rel=0.01)


def test_paces_and_text_bearings_and_fields_of_the_input(make_points, run):
    fields = ["at:integer", "to:integer", "fore:string", "back:string", "dist:integer", "rise:string"]
    layer = table(make_points, [(1, 2, "N40E", "S40W", 200, "kept")], fields)
    result = reduce(run, layer, METRES_PER_UNIT=0.75)
    leg = result["legs"][0]
    assert leg["length"] == pytest.approx(150.0)
    assert leg["azim_leg"] == pytest.approx(40.0, abs=1e-3)
    assert leg["in_rise"] == "kept"
    assert set(result["stations"]) == {"1", "2"}


def test_the_report_tells_closure_stations_and_method(make_points, run, tmp_path):
    report = tmp_path / "report.html"
    rows = [("<P>", "Q", 0, 180, 106), ("Q", "R", 90, 270, 200), ("R", "S", 180, 0, 100), ("S", "<P>", 270, 90, 200)]
    reduce(run, table(make_points, rows), REPORT=str(report), START="500000,0")
    text = report.read_text(encoding="utf-8")
    assert "S - &lt;P&gt;" in text
    assert "<td>6.00</td><td>606.0</td><td>101</td>" in text
    assert "in proportion to their length" in text


def test_a_table_without_legs_is_refused_and_leaves_what_is_there(make_points, run, tmp_path):
    old = tmp_path / "stations.gpkg"
    reduce(run, table(make_points, CLASSIC), OUTPUT=str(old))
    before = old.read_bytes()
    with pytest.raises(QgsProcessingException, match="no leg"):
        reduce(run, table(make_points, []), OUTPUT=str(old))
    assert old.read_bytes() == before


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"TO_FIELD": None}, "TO_FIELD is needed"),
        ({"DISTANCE_MEANS": None}, "DISTANCE_MEANS is one of slope, horizontal"),
        ({"DISTANCE_MEANS": "slope"}, "need vertical angles"),
        ({"ANGLE_FIELD": "dist"}, "ANGLE_MEANS must say"),
        ({"END_STATION": "B"}, "needed together"),
        ({"END": "500000,6100100", "END_STATION": "A"}, "are the same station"),
        ({"START_STATION": "Z"}, 'at a station "Z"'),
        ({"START_HEIGHT": 10.0}, "Heights need vertical angles"),
        ({"CRS": None}, "no coordinate reference system"),
        ({"NORTH": "magnetic"}, "need a date"),
    ],
)
def test_what_cannot_run_is_refused_with_the_reason(make_points, run, change, message):
    layer = table(make_points, CLASSIC)
    layer.setCrs(layer.crs().__class__())
    with pytest.raises(QgsProcessingException, match=message):
        reduce(run, layer, **change)
