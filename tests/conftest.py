"""What all tests share."""

import gc
import os
import sys
from pathlib import Path

import pytest
from agonic.processing_algs.core.proj_data import find_proj_data
from hypothesis import settings

find_proj_data()  # as the plugin does when it is loaded; the tests of the science load none

_verdict = []


def pytest_sessionfinish(exitstatus):
    """Keep the verdict of the tests."""
    _verdict.append(int(exitstatus))


@pytest.hookimpl(trylast=True)
def pytest_unconfigure():
    """Leave with the verdict of the tests: QGIS may crash while Python takes it down, when all is told already."""
    if "qgis.core" in sys.modules and _verdict:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(_verdict[-1])


# The tests of the science are run often, so by hand they try few examples, new ones each time; continuous integration
# tries many, the same ones each time, so that its verdict is on the change. A loaded machine is no bug: no deadline.
settings.register_profile("quick", deadline=None, max_examples=15)
settings.register_profile("thorough", deadline=None, max_examples=100, derandomize=True)
settings.load_profile("thorough" if os.environ.get("CI") else "quick")


@pytest.fixture(scope="session")
def agonic(qgis_processing):
    """The plugin as QGIS without a window has it: its algorithms and QGIS's own are there for `processing.run`."""
    from agonic import classFactory
    from qgis.PyQt.QtCore import QLocale

    QLocale.setDefault(QLocale("en"))  # the messages tests read are the English ones, whatever the machine speaks
    plugin = classFactory(None)
    plugin.initProcessing()
    yield plugin
    gc.collect()  # errors that tests looked at keep layers alive, which would outlive QGIS and crash it
    plugin.unload()


@pytest.fixture
def make_points(qgis_app):
    """A function that makes a memory layer of points: fields as in a layer's definition, rows as (x, y, values...)."""
    from qgis.core import QgsFeature, QgsGeometry, QgsPointXY, QgsVectorLayer

    def make(fields, rows, crs="EPSG:32633", geometry="Point"):
        definition = "&".join([f"{geometry}?crs={crs}", *(f"field={field}" for field in fields)])
        layer = QgsVectorLayer(definition, "readings", "memory")
        features = []
        for x, y, *values in rows:
            feature = QgsFeature(layer.fields())
            feature.setAttributes(list(values))
            if x is not None:
                feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x, y)))
            features.append(feature)
        done, _ = layer.dataProvider().addFeatures(features)
        assert done
        return layer

    return make


@pytest.fixture
def run(agonic):
    """A function that runs an algorithm of ours and gives its results, the rows of OUTPUT as dicts under "rows"."""
    import processing
    from qgis.core import QgsProcessingFeedback, QgsVariantUtils, QgsVectorLayer

    class Log(QgsProcessingFeedback):
        def __init__(self):
            super().__init__(False)
            self.warnings = []

        def pushWarning(self, warning):
            self.warnings.append(warning)

    def run(algorithm, parameters):
        log = Log()
        result = processing.run(f"agonic:{algorithm}", {"OUTPUT": "TEMPORARY_OUTPUT", **parameters}, feedback=log)
        layer = result["OUTPUT"]
        if not isinstance(layer, QgsVectorLayer):
            layer = QgsVectorLayer(layer, "output", "ogr")
        result["rows"] = [
            {
                name: None if QgsVariantUtils.isNull(value) else value
                for name, value in zip(layer.fields().names(), feature.attributes())
            }
            for feature in layer.getFeatures()
        ]
        result["warnings"] = log.warnings
        return result

    return run


@pytest.fixture
def standing():
    """A function that puts a real file of the kind its name says at a path, and gives its bytes: it may be replaced."""
    from osgeo import gdal, ogr

    def stand(path):
        path = Path(path)
        if path.suffix == ".png":
            path.write_bytes(b"\x89PNG here before")
            return path.read_bytes()
        data = gdal.GetDriverByName({".gpkg": "GPKG", ".geojson": "GeoJSON", ".shp": "ESRI Shapefile"}[path.suffix])
        data = data.Create(str(path), 0, 0, 0, gdal.GDT_Unknown)
        layer = data.CreateLayer(path.stem, None, ogr.wkbPoint)
        layer.CreateField(ogr.FieldDefn("note", ogr.OFTString))
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("note", "here before")
        feature.SetGeometry(ogr.CreateGeometryFromWkt("POINT (1 2)"))
        layer.CreateFeature(feature)
        del feature, layer, data
        return path.read_bytes()

    return stand


@pytest.fixture(scope="session")
def postgis():
    """A function that runs SQL on a PostgreSQL server with PostGIS; see ``servers.postgis_server``."""
    sys.path.insert(0, str(Path(__file__).parent))
    from servers import postgis_server

    yield from postgis_server()
