"""Thinning through Processing: the distance rule, the order of importance, the style that heeds it."""

import numpy as np
import pyproj
import pytest
from agonic.processing_algs.drawing.layer_style import style_attitudes
from agonic.processing_algs.symbols.thin_attitudes import read_kind_order, read_scales
from qgis.core import QgsProcessingException, QgsVectorLayer
from scipy.spatial import cKDTree

SCALES = [10_000, 25_000, 50_000]
FIELDS = ["kind:string", "symbol:string(12)", "strike:double", "label:string(8)", "status:string(10)", "rank:double"]


def scattered(count=600, seed=3):
    """Rows in UTM zone 33: coordinates, kind, symbol, strike, label, status, rank."""
    chance = np.random.default_rng(seed)
    x, y = 500000 + chance.uniform(0, 5000, count), 5.4e6 + chance.uniform(0, 5000, count)
    kinds = [("bedding", "06.02"), ("joint", "04.03.02"), ("lineation", "09.001")]
    rows = []
    for number in range(count):
        kind, symbol = kinds[number % 3]
        rows.append((x[number], y[number], kind, symbol, float(number % 360), "35", "ok", float(number % 4)))
    return rows


def moved(rows, crs):
    to = pyproj.Transformer.from_crs("EPSG:32633", crs, always_xy=True)
    return [(*to.transform(x, y), *rest) for x, y, *rest in rows]


@pytest.mark.parametrize("crs", ["EPSG:32633", "EPSG:3857", "EPSG:4326", "EPSG:3035", "EPSG:32632"])
def test_no_two_printed_symbols_are_nearer_than_allowed_in_any_crs(crs, make_points, run):
    rows = scattered()
    result = run("thin_attitudes", {"INPUT": make_points(FIELDS, moved(rows, crs), crs), "SCALES": SCALES})
    scale = np.array([row["plot_scale"] for row in result["rows"]])
    metres = np.array([row[:2] for row in rows])
    for denominator in SCALES:
        shown = (scale == 0) | (scale >= denominator)
        tree = cKDTree(metres[shown])
        assert tree.query(tree.data, k=2)[0][:, 1].min() >= 0.006 * denominator
        assert cKDTree(metres[shown]).query(metres[~shown])[0].max() < 0.006 * denominator * 1.002
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (600, 600, 0)
    assert [row["strike"] for row in result["rows"]] == [row[4] for row in rows]


def test_the_order_of_the_rows_does_not_matter(make_points, run):
    rows = scattered(200)
    rows += [(*row[:2], row[2], row[3], 99.0, "12", "ok", row[7]) for row in rows[:20]]  # twice at one place
    mixed = [rows[number] for number in np.random.default_rng(5).permutation(len(rows))]
    answers = []
    for order in (rows, mixed):
        result = run("thin_attitudes", {"INPUT": make_points(FIELDS, order), "SCALES": SCALES})
        answers.append(
            {(*row[:2], row[4]): found["plot_scale"] for row, found in zip(order, result["rows"], strict=True)}
        )
    assert answers[0] == answers[1]


def test_kinds_and_priorities_come_in_their_order(make_points, run):
    """Four readings at one outcrop: one is printed on the maps."""
    spot = [
        (500000.0, 5.4e6, "joint", "04.03.02", 1.0, "35", "ok", 1.0),
        (500001.0, 5.4e6, "bedding", "06.02", 2.0, "35", "ok", 1.0),
        (500002.0, 5.4e6, "lineation", "09.001", 3.0, "35", "ok", 2.0),
        (500003.0, 5.4e6, "bedding", "06.02", 4.0, "35", "rejected", 5.0),
    ]
    layer = make_points(FIELDS, spot)

    def first(**parameters):
        rows = run("thin_attitudes", {"INPUT": layer, "SCALES": SCALES, **parameters})["rows"]
        printed = [row["strike"] for row in rows if row["plot_scale"] >= 10_000]
        assert len(printed) == 1
        return printed[0]

    assert first() == 2.0
    assert first(KIND_ORDER="joint;bedding") == 1.0
    assert first(KIND_ORDER="Lineations, joint") == 3.0
    assert first(PRIORITY_FIELD="rank") == 3.0


def test_a_layer_of_kinds_alone_is_thinned_by_kind(make_points, run):
    layer = make_points(["kind:string"], [(0.0, 5e6, "joint"), (1.0, 5e6, "Bedding"), (2.0, 5e6, "what?")])
    rows = run("thin_attitudes", {"INPUT": layer, "SCALES": [10_000]})["rows"]
    assert np.argmax([row["plot_scale"] for row in rows]) == 1


def test_rows_without_a_place_come_out_and_are_counted(make_points, run):
    rows = [*scattered(5), (None, None, "bedding", "06.02", 1.0, "35", "ok", 1.0)]
    result = run("thin_attitudes", {"INPUT": make_points(FIELDS, rows), "SCALES": SCALES})
    assert [row["plot_scale"] is None for row in result["rows"]] == [False] * 5 + [True]
    assert (result["READ"], result["DONE"], result["REJECTED"]) == (6, 5, 1)


# Columns: as given, denominators.
WRITTEN = [
    ("10000,25000", [10000, 25000]),
    ([10000, "25 000"], [10000, 25000]),
    (["1:10000", "1 : 25'000"], [10000, 25000]),
]


@pytest.mark.parametrize(("given", "scales"), WRITTEN)
def test_scales_as_they_are_written(given, scales, make_points, run):
    cells = given.split(",") if isinstance(given, str) else given
    assert read_scales(cells) == (scales, None)
    rows = run("thin_attitudes", {"INPUT": make_points(FIELDS, scattered(3)), "SCALES": given})["rows"]
    assert max(row["plot_scale"] for row in rows) == max(scales)


REFUSED = [
    ({"SCALES": []}, "SCALES"),
    ({"SCALES": [""]}, "SCALES: give"),
    ({"SCALES": ["many"]}, "SCALES: many"),
    ({"SCALES": [0]}, "SCALES: 0"),
    ({"SCALES": [-25000]}, "SCALES: -25000"),
    ({"KIND_ORDER": "bedding;stratum"}, "stratum is no kind"),
    ({"KIND_ORDER": "bedding;Bedding"}, "comes twice"),
    ({"PRIORITY_FIELD": "nothing"}, "no field nothing"),
]


@pytest.mark.parametrize(("parameters", "message"), REFUSED)
def test_what_cannot_go_well_is_refused_by_name(parameters, message, make_points, run):
    with pytest.raises(QgsProcessingException, match=message):
        run("thin_attitudes", {"INPUT": make_points(FIELDS, scattered(3)), "SCALES": SCALES, **parameters})


def test_a_layer_without_a_crs_is_refused(make_points, run):
    with pytest.raises(QgsProcessingException, match="no coordinate reference system"):
        run("thin_attitudes", {"INPUT": make_points(FIELDS, scattered(3), ""), "SCALES": SCALES})


def test_the_order_of_kinds_is_read_in_any_form():
    assert read_kind_order("fold axes; Bedding\njoints") == ({"fold_axis": 0, "bedding": 1, "joint": 2}, None)
    assert read_kind_order(None) == ({}, None)


def test_the_symbols_keep_their_size(make_points, run, tmp_path):
    layer = make_points(FIELDS, scattered(30))
    style_attitudes(layer, bar_mm=3.5, anchor="middle")
    path = tmp_path / "thin.gpkg"
    run("thin_attitudes", {"INPUT": layer, "SCALES": SCALES, "OUTPUT": str(path)})
    opened = QgsVectorLayer(str(path), "thin", "ogr")
    paths = []
    for shown in (opened, layer):
        categories = shown.renderer().categories()  # kept: QGIS crashes on a symbol whose category is gone
        paths.append([category.symbol().symbolLayer(0).path() for category in categories])
    assert paths[0] == paths[1]
    assert "plot_scale" in opened.labeling().settings().fieldName
