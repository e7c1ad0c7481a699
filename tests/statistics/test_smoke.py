import numpy as np
import pytest
from agonic.tests.statistics.conftest import beds, folded, spots


def test_all(attitudes, run, tmp_path):
    draw = np.random.default_rng(1)
    rows = beds(folded(draw, 60, 60, 20, 5), spots(draw, 60)) + beds(folded(draw, 40, 120, 30, 5), spots(draw, 40, 502000.0), area="B")
    layer = attitudes(rows)
    r = run("mean_orientations", {"INPUT": layer, "GROUP_FIELD": "area", "CONES": "TEMPORARY_OUTPUT", "REPORT": str(tmp_path / "m.html")})
    print(r["warnings"], r["READ"], layer.featureCount(), r["LEFT_OUT"]); print(r["rows"][0], {k: v for k, v in r.items() if k not in ("rows",)})
    r = run("fold_axis", {"INPUT": layer, "GROUP_FIELD": "area", "REPORT": str(tmp_path / "f.html")})
    print(r["rows"])
    r = run("structural_domains", {"INPUT": layer, "READINGS": "TEMPORARY_OUTPUT", "REPORT": str(tmp_path / "d.html")})
    print(r)
    import processing
    r = processing.run("agonic:orientation_net", {"INPUT": layer, "GROUP_FIELD": "area", "MEAN": True, "GIRDLE": True, "SECTION_AZIMUTH": 30, "SMALL_CIRCLES": "120 30 20", "OUTPUT": "/tmp/onet.png", "MAP": "TEMPORARY_OUTPUT", "REPORT": "/tmp/onet.html"})
    print(r)
    r = processing.run("agonic:rose_diagram", {"INPUT": layer, "GROUP_FIELD": "area", "OUTPUT": "/tmp/orose.svg", "MAP": "TEMPORARY_OUTPUT", "REPORT": "/tmp/orose.html"})
    print(r)
