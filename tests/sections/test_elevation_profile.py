"""Ticks in QGIS's own elevation profile: they lie where the section has them."""

import numpy as np
import pytest
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProfilePlotRenderer,
    QgsProfileRequest,
    QgsUnitTypes,  # noqa: F401  (loads the units the renderer asks for)
)
from qgis.PyQt.QtGui import QImage

WIDTH, HEIGHT = 1000, 600  # pixels of the plot
LOW, HIGH = 300.0, 900.0  # heights of its lower and upper edge. Units: metres


def level(east, north):
    """Ground at 600 m."""
    return 600.0 + 0.0 * east * north


def ink(image):
    """Rows and columns of what is drawn."""
    image = image.convertToFormat(QImage.Format.Format_ARGB32)
    pixels = np.frombuffer(image.constBits().asstring(image.sizeInBytes()), dtype=np.uint8)
    alpha = pixels.reshape(image.height(), image.bytesPerLine())[:, : 4 * image.width()][:, 3::4]
    return np.nonzero(alpha > 60)


@pytest.mark.parametrize(("strike", "dip", "line"), [
    (0.0, 30.0, [(-500, 0), (500, 0)]),
    (180.0, 60.0, [(-500, 0), (500, 0)]),
    (90.0, 40.0, [(0, 500), (0, -500)]),
    (20.0, 35.0, [(-300, -400), (300, 400)]),
])  # fmt: skip
def test_ticks_lie_in_qgis_s_own_profile_where_the_section_has_them(
    strike, dip, line, make_lines, make_attitudes, make_dem, run_section
):
    sections = make_lines([(line, "A")], "EPSG:32633")
    place = (0.3 * line[0][0] + 0.7 * line[1][0] + 25.0, 0.3 * line[0][1] + 0.7 * line[1][1] - 30.0)
    found = run_section(
        "section_attitudes",
        SECTION=sections,
        ATTITUDES=make_attitudes([(*place, strike, dip)]),
        DEM=make_dem(level),
        TICK=200,
    )
    (row,) = found["rows"]
    ticks = found["OUTPUT_MAP"]
    curve = next(sections.getFeatures()).geometry().constGet().clone()
    request = QgsProfileRequest(curve)
    request.setCrs(QgsCoordinateReferenceSystem("EPSG:32633"))
    request.setTolerance(2.0)
    plot = QgsProfilePlotRenderer([ticks], request)
    plot.startGeneration()
    plot.waitForFinished()
    image = plot.renderToImage(WIDTH, HEIGHT, 0.0, curve.length(), LOW, HIGH)
    rows, columns = ink(image)
    assert len(rows) > 20
    # Metres of the profile: grid distance along the line, 0.07 % longer than the ground here, and height.
    distance = (columns + 0.5) * curve.length() / WIDTH
    elev = HIGH - (rows + 0.5) * (HIGH - LOW) / HEIGHT
    # The mark's middle within a pixel and a half; its slope within a degree.
    assert (distance.min() + distance.max()) / 2 == pytest.approx(row["distance"], abs=2.0)
    assert (elev.min() + elev.max()) / 2 == pytest.approx(row["elev"], abs=2.0)
    spread = np.linalg.eigh(np.cov(distance, elev))[1][:, -1]
    assert np.degrees(np.arctan(-spread[1] / spread[0])) == pytest.approx(row["app_dip"], abs=1.0)
