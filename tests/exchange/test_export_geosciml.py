"""GeoSciML Lite, written and opened again by GDAL alone."""

import re

import numpy as np
import pytest
from agonic.processing_algs.core import geosciml
from osgeo import gdal
from qgis.core import QgsProcessingException

gdal.UseExceptions()
BASE = "https://example.org/vellamoor/"
COUNTS = {"SiteObservationView": 84, "GeologicUnitView": 7}


@pytest.fixture(scope="module")
def exported(whole_map, tmp_path_factory):
    import processing

    folder = tmp_path_factory.mktemp("geosciml")
    for form in ("gpkg", "gml"):
        processing.run(
            "agonic:export_geosciml",
            {**whole_map, "BASE_URI": BASE, "FORMAT": form, "OUTPUT": str(folder / form),
             "REPORT": str(folder / f"{form}.html")},
        )  # fmt: skip
    return folder


def rows(exported, form, view):
    path = exported / form / ("geosciml_lite.gpkg" if form == "gpkg" else f"{view}.gml")
    data = gdal.OpenEx(str(path), gdal.OF_VECTOR)
    return list(data.GetLayerByName(view) if form == "gpkg" else data.GetLayer(0)), data


@pytest.mark.parametrize("form", ["gpkg", "gml"])
@pytest.mark.parametrize("view", geosciml.VIEWS)
def test_views_open_again_with_the_schemas_properties(exported, form, view):
    found, _data = rows(exported, form, view)
    assert found
    assert len(found) == COUNTS.get(view, len(found))
    names = [found[0].GetFieldDefnRef(number).GetName() for number in range(found[0].GetFieldCount())]
    if form == "gpkg":
        assert names == [*geosciml.VIEWS[view], *geosciml.EXTRA.get(view, {})]
    else:
        assert set(names) - {"gml_id"} <= set(geosciml.VIEWS[view])
    identifiers = [row["identifier"] for row in found]
    assert len(set(identifiers)) == len(identifiers)
    assert all(one.startswith(BASE) for one in identifiers)
    places = np.array([row.GetGeometryRef().Centroid().GetPoint_2D() for row in found])
    assert (places[:, 0] > 677000).all()
    assert (places[:, 0] < 682400).all()
    assert (places[:, 1] > 6254000).all()
    assert (places[:, 1] < 6258800).all()


def test_every_uri_is_a_published_term_or_a_nil(exported):
    known = {geosciml.TERMS + word for word in geosciml.terms()} | {geosciml.UNKNOWN_URI, geosciml.MISSING_URI}
    seen = set()
    for view in geosciml.VIEWS:
        for row in rows(exported, "gpkg", view)[0]:
            for name, value in row.items().items():
                if name.endswith("_uri") and value is not None:
                    assert value in known
                    seen.add(value)
    assert geosciml.TERMS + "planarpolaritycode/overturned" in seen
    assert geosciml.TERMS + "faulttype/normal_fault" in seen


def test_gml_keeps_the_order_of_the_schema(exported):
    text = (exported / "gml" / "SiteObservationView.gml").read_text(encoding="utf-8")
    order = list(geosciml.VIEWS["SiteObservationView"])
    for member in re.findall(r"<gsmlp:SiteObservationView .*?</gsmlp:SiteObservationView>", text, re.DOTALL):
        names = re.findall(r"<gsmlp:(\w+)>", member)
        assert names[-1] == "shape"
        assert [order.index(name) for name in names[:-1]] == sorted(order.index(name) for name in names[:-1])


def test_observations_say_what_was_measured(exported, attitudes):
    data = gdal.OpenEx(attitudes, gdal.OF_VECTOR)
    went = {row["id"].replace("-", "_"): row.items() for row in data.GetLayer(0) if row["status"] != "rejected"}
    found, _data = rows(exported, "gpkg", "SiteObservationView")
    for row in found:
        own = went[row["observationName"].removeprefix("ORP")]
        azimuth = own["strike"] if own["strike"] is not None else own["trend"]
        dip = own["dip"] if own["dip"] is not None else own["plunge"]
        assert row["dip"] == pytest.approx(dip)
        assert (row["azimuth"] is None) == (azimuth is None)
        if azimuth is not None:
            assert row["azimuth"] == pytest.approx(azimuth)
            assert row["symbolRotation"] == round(azimuth) % 360


def test_what_is_left_out_is_said(exported):
    page = (exported / "gml.html").read_text(encoding="utf-8")
    assert "CartographicLines: 2 rows left out" in page
    assert "left out of GML" in page


def test_identifiers_need_a_uri(whole_map, tmp_path):
    import processing

    with pytest.raises(QgsProcessingException, match="no absolute URI"):
        processing.run("agonic:export_geosciml", {**whole_map, "BASE_URI": "mine", "OUTPUT": str(tmp_path / "x")})
