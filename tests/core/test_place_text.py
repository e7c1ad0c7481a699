"""Places as texts, against printed examples and against pyproj's own grids."""

import math

import pyproj
import pytest
from agonic.processing_algs.core.errors import FieldDataError
from agonic.processing_algs.core.grid_text import BANDS, read_grid, read_grids, to_degrees
from agonic.processing_algs.core.place_text import read_angle, read_angles, read_pair
from hypothesis import given
from hypothesis import strategies as st

WGS84 = pyproj.CRS("EPSG:4326").ellipsoid

# One place in five writings, and one more: C. Karney, GeographicLib 2.1.2, manual page GeoConvert(1), which prints
# 33d18'00"N 044d24'00"E and 10d20'30"N 020d30'40"E for them. Those without letters have latitude first there.
PAIRS = [
    ("33.3 44.4", "latitude_first", 33.3, 44.4),
    ("E44.4 N33.3", "unsaid", 33.3, 44.4),
    ("33d18'N 44d24'E", "unsaid", 33.3, 44.4),
    ("44d24 33d18N", "unsaid", 33.3, 44.4),
    ("33:18 +44:24", "latitude_first", 33.3, 44.4),
    ("10d20'30\" 20d30'40\"", "latitude_first", 10 + 20.5 / 60, 20 + 30 / 60 + 40 / 3600),
]


@pytest.mark.parametrize(("text", "order", "lat", "lon"), PAIRS)
def test_printed_pairs_are_read(text, order, lat, lon):
    assert read_pair(text, order=order) == pytest.approx((lon, lat), abs=1e-12)


# Invented; the answers are counted by hand: 45 + 30/60 + 12/3600, and so on.
@pytest.mark.parametrize(
    ("text", "lat", "lon"),
    [
        ("45°30'12\"N 7°15'W", 45.50333333333333, -7.25),
        ("45º30’12”N, 7º15’W", 45.50333333333333, -7.25),
        ("N45 30.2 W007 15.3", 45.50333333333333, -7.255),
        ("W007 15.3 / N45 30.2", 45.50333333333333, -7.255),
        ("45.503N 7.25E", 45.503, 7.25),
        ("45,503N 7,25E", 45.503, 7.25),
        ("S 12 30 E 131 15 36", -12.5, 131.26),
        ("12 30 00 S; 131 15 36 E", -12.5, 131.26),
        ("45N7E", 45.0, 7.0),
        ("-45.5 -120.25", -45.5, -120.25),  # only the second can be a longitude
        ("-120.25, 45.5", 45.5, -120.25),
        ("lat 45.5 lon -7.25", 45.5, -7.25),
        ("45 deg 30 min 12 sec N 7 deg 15 min E", 45.50333333333333, 7.25),
    ],
)
def test_angles_are_read_in_every_usual_writing(text, lat, lon):
    assert read_pair(text) == pytest.approx((lon, lat), abs=1e-12)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("45.5 7.25", "place_unclear"),  # which is the latitude?
        ("45 30 7 15", "place_unclear"),
        ("45 N 7", "place_unclear"),  # 45 N and 7, or 45 and N 7
        ("45N 7N", "place_unclear"),
        ("-45N 7E", "place_unclear"),  # a sign and a letter
        ("45.5", "place_unreadable"),
        ("45°61'N 7°E", "place_unreadable"),
        ("45.5°30'N 7°E", "place_unreadable"),
        ("91N 7E", "place_range"),
        ("45N 181E", "place_range"),
        ("4530N 715E", "place_range"),  # packed, and nobody said so
        ("45N 7E 300", "place_unreadable"),
        ("near the ford", "place_unreadable"),
    ],
)
def test_what_a_text_does_not_say_is_refused(text, code):
    with pytest.raises(FieldDataError) as error:
        read_pair(text)
    assert error.value.code == code
    assert error.value.values["value"] == text


def test_letters_of_other_languages_are_read_only_as_chosen():
    assert read_pair("45N 7O", letters="NESO") == (-7.0, 45.0)
    assert read_pair("45N 7O", letters="NOSW") == (7.0, 45.0)
    assert read_pair("45N 7L", letters="NLSO") == (7.0, 45.0)
    with pytest.raises(FieldDataError) as error:
        read_pair("45N 7O")
    assert error.value.code == "other_letters"
    assert error.value.values["choices"] == "NESO, NLSO, NOSW"


def test_packed_angles_are_read_only_where_they_are_said_to_be_packed():
    assert read_angle("4530.2N", "latitude", packed="minutes") == pytest.approx(45 + 30.2 / 60, abs=1e-12)
    assert read_angle("00715.3 W", "longitude", packed="minutes") == pytest.approx(-(7 + 15.3 / 60), abs=1e-12)
    assert read_angle("453012.5", "latitude", packed="seconds") == pytest.approx(45 + 30 / 60 + 12.5 / 3600, abs=1e-12)
    assert read_pair("N453012 W0071500", packed="seconds") == pytest.approx((-7.25, 45.50333333333333), abs=1e-12)
    for text, packed in (("4530.2", "none"), ("4560.0", "minutes"), ("30.2", "minutes")):
        with pytest.raises(FieldDataError):
            read_angle(text, "latitude", packed=packed)


def test_a_column_keeps_its_rows():
    angles = read_angles(["45,5", None, 46.25, "7E", "47°N"], "latitude")
    assert angles.value[[0, 2, 4]].tolist() == [45.5, 46.25, 47.0]
    assert math.isnan(angles.value[1])
    assert math.isnan(angles.value[3])
    assert [(problem.row, problem.code) for problem in angles.problems] == [(3, "place_unclear")]


@given(
    seconds=st.integers(-90 * 3600, 90 * 3600),
    form=st.sampled_from(["{d}°{m}'{s}\"{h}", "{h}{d} {m} {s}", "{d}:{m}:{s} {h}", "{sign}{d} {m} {s}"]),
)
def test_every_latitude_comes_back_from_every_form(seconds, form):
    d, rest = divmod(abs(seconds), 3600)
    m, s = divmod(rest, 60)
    south = seconds < 0
    text = form.format(d=d, m=m, s=s, h="S" if south else "N", sign="-" if south else "")
    assert read_angle(text, "latitude") == pytest.approx(seconds / 3600, abs=1e-9)


# Columns: MGRS text, latitude and longitude printed, what is printed, tolerance in degrees.
MGRS = [
    # GeographicLib 2.1.2, manual page GeoConvert(1): the middle of the square, printed to five decimals.
    ("38SMB4488", 33.33424, 44.40363, "middle", 6e-6),
    # Palantir Foundry documentation, mgrsToGeoPoint: south-west corners. It agrees with GeoConvert to 1e-9 degrees.
    ("4QFJ1234567890", 21.409796671597924, -157.91608117421092, "corner", 2e-9),
    ("4QFJ16", 21.338665624760598, -157.93921670599434, "corner", 2e-9),
    ("4QFJ123678", 21.40898645576642, -157.91652127483704, "corner", 2e-9),
    ("ZAF0193788990", 88.99999659707431, 0.9996456505181999, "corner", 2e-9),
    # Recomputed with GeoConvert 2.1.2 from the degrees; five digits cut to whole metres, so half a metre and a bit.
    ("18SUJ2348606483", 38.8895, -77.0352, "middle", 1e-5),
    ("30UYC0821407233", 51.47788, -0.00148, "middle", 1e-5),
    ("56HLH3490052288", -33.8568, 151.2153, "middle", 1e-5),
    ("32VKN9723000510", 60.39, 5.32, "middle", 1.2e-5),
    ("33XWG1369680760", 78.2, 15.6, "middle", 4e-5),
    ("17NQA7827600011", 0.0001, -78.5, "middle", 1e-5),
    ("ZAA0000088918", 84.5, 0.0, "middle", 1e-4),
    ("BBY8355540992", -80.5, 10.0, "middle", 5e-5),
    ("37QFD0361955678", 21.3, 39.999, "middle", 1e-5),
    ("23KLQ3662500218", -23.5, -46.6, "middle", 1e-5),
    # GeoConvert's manual page: three names of one square by Svalbard's opposite, of which the polar one here.
    ("BBZ1917", -79.90236637, 6.1037361, "middle", 2e-8),
]


@pytest.mark.parametrize(("text", "lat", "lon", "what", "tolerance"), MGRS)
def test_mgrs_matches_printed_places(text, lat, lon, what, tolerance):
    place = read_grid(text)
    shift = place.size / 2 if what == "corner" else 0.0
    found_lon, found_lat = to_degrees([place.east - shift], [place.north - shift], place.zone, place.south, WGS84)
    assert found_lat[0] == pytest.approx(lat, abs=tolerance)
    assert found_lon[0] == pytest.approx(lon, abs=tolerance)


def written_mgrs(lon, lat, digits):
    """A second way: from degrees through pyproj's own UTM and the letters counted out one by one."""
    zone = int((lon + 180) // 6) + 1
    crs = pyproj.CRS.from_epsg((32600 if lat >= 0 else 32700) + zone)
    east, north = pyproj.Transformer.from_crs(4326, crs, always_xy=True).transform(lon, lat)
    column = "ABCDEFGHJKLMNPQRSTUVWXYZ"[8 * ((zone - 1) % 3) + int(east // 100_000) - 1]
    row = "ABCDEFGHJKLMNPQRSTUV"[(int(north // 100_000) + (5 if zone % 2 == 0 else 0)) % 20]
    step = 10 ** (5 - digits)
    cut = [f"{int(part % 100_000) // step:0{digits}d}" if digits else "" for part in (east, north)]
    return f"{zone}{BANDS[int((lat + 80) // 8)]} {column}{row} {' '.join(cut)}".strip()


@given(lon=st.floats(-179.9, 179.9), lat=st.floats(-79.9, 55.9), digits=st.integers(1, 5))
def test_mgrs_comes_back_from_its_letters_everywhere(lon, lat, digits):
    """Up to 56 north: beyond, Norway's wide zones make the simple zone of the second way wrong."""
    found = read_grids([written_mgrs(lon, lat, digits)])
    assert found.problems == []
    away = pyproj.Geod(ellps="WGS84").inv(lon, lat, found.lon[0], found.lat[0])[2]
    # The middle of the square is at most half its diagonal away; the grid's scale adds under a thousandth.
    assert away <= found.size[0] * math.sqrt(0.5) * 1.003
    assert found.size[0] == 10 ** (5 - digits)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("32T IQ 01234 98765", "grid_letters"),  # I and O are never used
        ("32T PW 01234 98765", "grid_letters"),  # rows end at V
        ("32T AQ 01234 98765", "grid_letters"),  # zone 32 has the columns J to R
        ("32I PQ 01234 98765", "zone_band"),
        ("34X MG 13696 80760", "zone_band"),  # no such zone so far north
        ("61T PQ 01234 98765", "place_range"),
        ("32T PQ 0123 98765", "place_unreadable"),
        ("32T PQ 012345 987654", "place_unreadable"),
        ("32U PQ 01234 38765", "zone_band"),  # that square lies in band T
        ("ZDA 00000 88918", "grid_letters"),  # polar columns leave D out
        ("YAA 00000 88918", "grid_letters"),
    ],
)
def test_letters_that_no_square_has_are_refused(text, code):
    assert [problem.code for problem in read_grids([text]).problems] == [code]


# GeographicLib 2.1.2, manual page GeoConvert(1), and recomputed with it (tenths of a metre).
UTM = [
    ("31s 500000 9889470", "hemisphere", -1.0, 3.0),
    ("18N 323486.7 4306483.0", "hemisphere", 38.8895, -77.0352),
    ("56S 334900,6 6252288,8", "hemisphere", -33.8568, 151.2153),
    ("23S 336625.1 7400218.9", "hemisphere", -23.5, -46.6),
    ("33X 513696.9 8680760.1", "unsaid", 78.2, 15.6),
    ("37Q 603619.9mE 2355678.2mN", "unsaid", 21.3, 39.999),
]


@pytest.mark.parametrize(("text", "letter", "lat", "lon"), UTM)
def test_utm_matches_printed_places(text, letter, lat, lon):
    found = read_grids([text], zone_letter=letter)
    assert found.lat[0] == pytest.approx(lat, abs=5e-6)  # a tenth of a metre is 1e-6 degrees, a whole one 1e-5
    assert found.lon[0] == pytest.approx(lon, abs=5e-6)


def test_an_s_that_the_northing_does_not_decide_is_refused():
    """38S 444500 3688500 is the printed 33.334 N if a band, and a place in the far south if a hemisphere."""
    text = "38S 444500 3688500"
    assert read_grids([text]).problems[0].code == "zone_unclear"
    assert read_grids([text], zone_letter="band").lat[0] == pytest.approx(33.33424, abs=5e-5)
    assert read_grids([text], zone_letter="hemisphere").lat[0] < -50
    # Sydney's northing lies in no band S, so it decides.
    assert read_grids(["56S 334901 6252289"]).lat[0] == pytest.approx(-33.8568, abs=1e-5)


@pytest.mark.parametrize(
    ("text", "letter", "code"),
    [
        ("32 501234 5098765", "unsaid", "zone_unclear"),
        ("32T 5098765 501234", "unsaid", "grid_swapped"),
        ("32T 50123 5098765", "unsaid", "place_range"),
        ("32N 501234 5098765", "band", "zone_band"),  # band N is 0 to 8 north
        ("32T 501234 5098765", "hemisphere", "zone_band"),
        ("32S 501234 6098765", "band", "zone_band"),
        ("32K 501234 5098765", "unsaid", "zone_band"),
        ("32T 501234", "unsaid", "place_unreadable"),
    ],
)
def test_utm_that_contradicts_itself_is_refused(text, letter, code):
    assert [problem.code for problem in read_grids([text], zone_letter=letter).problems] == [code]


def test_old_ellipsoids_have_their_own_letters_of_rows():
    """From memory: on Bessel's and Clarke's ellipsoids the rows begin ten letters further on."""
    clarke = pyproj.CRS("EPSG:4267").ellipsoid
    new, old = read_grids(["18S UJ 23486 06483"]), read_grids(["18S UU 23486 06483"], ellipsoid=clarke)
    assert old.problems == []
    # The same grid coordinates on another ellipsoid are a couple of hundred metres apart.
    assert old.lat[0] == pytest.approx(new.lat[0], abs=0.005)


def test_a_place_outside_its_zone_is_refused():
    assert read_grids(["32T 999000 5098765"]).problems[0].code == "zone_band"
    assert read_grids(["32T 760000 5098765"]).problems == []  # 20 km over the edge: neighbours overlap
