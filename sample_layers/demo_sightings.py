"""Sights a bed in a cliff across the valley from two stations, and solves its plane from the three places."""

import os
import subprocess
import sys
from pathlib import Path

import geology
import numpy as np

DAY = "2026-06-20"
BED = "base of Ossick Mudstone"
EYE = 1.6
# Where three sights from two stations meet the base of the Ossick Mudstone, a wall that nobody climbs: station and
# place, grid metres. The notebook gets them as bearing and vertical angle, to half a degree.
SIGHTS = [
    ("V1", (681150.0, 6256150.0), (681662.5, 6255923.2)),
    ("V2", (681950.0, 6256150.0), (681462.5, 6256223.8)),
    ("V2", (681950.0, 6256150.0), (681271.7, 6256287.5)),
]
HALF_DEGREE = 0.5
# What half a degree does at half a kilometre: of places and of heights, metres.
PLACE_SIGMA, HEIGHT_SIGMA = 6.0, 4.0
MARGIN = 350.0


def sightings(runner, out, sample, angles):
    """Follow the sights, solve the bed, put it on a section and on a map, and check it against the formulas.

    Parameters
    ----------
    runner : demo.Runner
    out : pathlib.Path
        Folder for the map and the figure.
    sample : pathlib.Path
        Folder with the sample layers.
    angles : pathlib.Path
        Layer with the norths at the sheet's corners and centre.

    Raises
    ------
    OSError
        If the plane is not the formulas'.
    """
    heights = str(sample / "vellamoor_heights.tif")
    dem = {"DEM": heights, "HEIGHT_UNIT": "file"}
    hits = runner.run(
        "agonic:sight_to_terrain",
        INPUT=str(write_sights(sample)),
        BEARING_FIELD="bearing",
        ANGLE_FIELD="clino",
        ANGLE_MEANS="degrees_up",
        DATE=DAY,
        EYE_HEIGHT=EYE,
        **dem,
        OUTPUT=str(out / "cliff_points.gpkg"),
        RAYS=str(out / "cliff_rays.gpkg"),
    )
    if (hits["READ"], hits["DONE"]) != (3, 3):
        message = f"agonic:sight_to_terrain did not find all three places: {hits}"
        raise OSError(message)
    plane = runner.run(
        "agonic:planes_from_points",
        INPUT=hits["OUTPUT"],
        HEIGHT_FROM="z",
        HEIGHT_UNIT="metre",
        POINT_SIGMA=PLACE_SIGMA,
        HEIGHT_SIGMA=HEIGHT_SIGMA,
        KIND_DEFAULT="bedding",
        OUTPUT=str(out / "cliff_plane.gpkg"),
    )["OUTPUT"]
    print(f"cliff bed from three sights: {check(out, angles)}")
    runner.run(
        "agonic:draw_section",
        SECTION=f"{sample / 'vellamoor.gpkg'}|layername=section_lines",
        NAME_FIELD="name",
        **dem,
        ATTITUDES=plane,
        DISTANCE=600.0,
        UNITS=f"{sample / 'vellamoor.gpkg'}|layername=units",
        UNIT_FIELD="unit",
        SCALE=20_000,
        FIGURE=str(out / "cliff_section.pdf"),
    )
    picture = out / "vellamoor_cliff.png"
    subprocess.run([sys.executable, __file__, str(out), str(sample)], check=True, env=os.environ)  # noqa: S603
    for path in (picture, out / "cliff_section.pdf"):
        if not path.is_file():
            message = f"{path} was not written."
            raise OSError(message)
    print(f"  map     {picture}\n  section {out / 'cliff_section.pdf'}")


def write_sights(sample):
    """Go backward from the places to what the notebook holds. Returns the layer's path."""
    import agonic.processing_algs.gis.crs  # noqa: F401, PLC0415  (shows pyproj its data folder)
    from agonic.processing_algs.core import geomagnetism, norths, rays  # noqa: PLC0415
    from osgeo import ogr, osr  # noqa: PLC0415  (only now: without QGIS the demo should say so, not fail here)

    ogr.UseExceptions()
    ground, path = geology.Ground(), sample / "sights.gpkg"
    path.unlink(missing_ok=True)
    made = ogr.GetDriverByName("GPKG").CreateDataSource(str(path))
    crs = osr.SpatialReference()
    crs.SetFromUserInput(geology.CRS)
    layer = made.CreateLayer("sights", crs, ogr.wkbPoint)
    for name, kind in (("station", ogr.OFTString), ("bearing", ogr.OFTReal), ("clino", ogr.OFTReal)):
        layer.CreateField(ogr.FieldDefn(name, kind))
    for station, here, there in SIGHTS:
        lon, lat = norths.wgs84_lonlat(geology.CRS, *here)
        grid = np.degrees(np.arctan2(there[0] - here[0], there[1] - here[1]))
        declination = geomagnetism.synthesise("igrf14", lat, lon, 0.0, 2026.468).decl
        magnetic = norths.true_azimuth(geology.CRS, lon, lat, grid) - declination
        away = np.hypot(there[0] - here[0], there[1] - here[1])
        climb = ground(*there) - ground(*here) - EYE - rays.curvature_and_refraction(away)
        feature = ogr.Feature(layer.GetLayerDefn())
        feature["station"] = station
        feature["bearing"] = half_degrees(magnetic % 360)
        feature["clino"] = half_degrees(np.degrees(np.arctan2(climb, away)))
        feature.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT ({here[0]} {here[1]})"))
        layer.CreateFeature(feature)
    return path


def half_degrees(angle):
    """Round as a compass is read."""
    return float(np.round(angle / HALF_DEGREE) * HALF_DEGREE)


def check(out, angles):
    """Check the plane against the formulas. Returns a sentence."""
    from demo_sections import convergence  # noqa: PLC0415
    from osgeo import ogr  # noqa: PLC0415

    ground = geology.Ground()
    places = np.array([[*there, float(ground(*there))] for _, _, there in SIGHTS])
    strike, dip = geology.attitude_of_plane(geology.rocks(places).bedding.mean(axis=0))
    strike = (strike + convergence(angles)) % 360  # the formulas count from grid north
    store = ogr.Open(str(out / "cliff_plane.gpkg"))
    row = store.GetLayer(0).GetNextFeature().items()
    off = abs((row["strike"] - strike + 180) % 360 - 180)
    if not (row["dip_lo"] <= dip <= row["dip_hi"] and off <= row["dd_half"]):
        message = (
            f"the bed came out as {row['strike']:.1f}/{row['dip']:.1f} (dip {row['dip_lo']:.1f} to "
            f"{row['dip_hi']:.1f}, direction within {row['dd_half']:.1f}), not {strike:.1f}/{dip:.1f}."
        )
        raise OSError(message)
    hits = ogr.Open(str(out / "cliff_points.gpkg"))
    ranges = [feature["range"] for feature in hits.GetLayer(0)]
    return (
        f"{row['strike']:03.0f}/{row['dip']:.0f} (95 percent: dip {row['dip_lo']:.0f} to {row['dip_hi']:.0f}, dip "
        f"direction within {row['dd_half']:.0f}), the formulas have {strike:03.0f}/{dip:.0f}; sights of "
        f"{min(ranges):.0f} to {max(ranges):.0f} m"
    )


def draw(out, sample):
    """Print the map of the sights and the bed. In a process of its own: QGIS starts and ends once in each."""
    from qgis.core import (  # noqa: PLC0415
        QgsApplication,
        QgsBilinearRasterResampler,
        QgsHillshadeRenderer,
        QgsLineSymbol,
        QgsMapRendererSequentialJob,
        QgsMapSettings,
        QgsRasterLayer,
        QgsSingleSymbolRenderer,
        QgsVectorLayer,
    )
    from qgis.PyQt.QtCore import QSize  # noqa: PLC0415
    from qgis.PyQt.QtGui import QColor  # noqa: PLC0415

    application = QgsApplication([], True)
    application.initQgis()
    layers = [
        QgsVectorLayer(str(out / f"{name}.gpkg"), name, "ogr") for name in ("cliff_plane", "cliff_points", "cliff_rays")
    ]
    heights = QgsRasterLayer(str(sample / "vellamoor_heights.tif"), "heights")
    shade = QgsHillshadeRenderer(heights.dataProvider(), 1, 315, 45)
    shade.setOpacity(0.45)
    heights.setRenderer(shade)
    heights.resampleFilter().setZoomedInResampler(QgsBilinearRasterResampler())
    contacts = QgsVectorLayer(f"{sample / 'vellamoor.gpkg'}|layername=contacts", "contacts", "ogr")
    contacts.setSubsetString(f"name = '{BED}'")
    line = {"line_color": "#9a6b3f", "line_width": "0.5"}
    contacts.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(line)))
    layers.append(contacts)
    settings = QgsMapSettings()
    settings.setLayers([*layers, heights])
    settings.setDestinationCrs(heights.crs())
    settings.setBackgroundColor(QColor("white"))
    settings.setExtent(layers[2].extent().buffered(MARGIN))
    settings.setOutputSize(QSize(1400, 1000))
    settings.setOutputDpi(200)
    job = QgsMapRendererSequentialJob(settings)
    job.start()
    job.waitForFinished()
    job.renderedImage().save(str(out / "vellamoor_cliff.png"))
    del job, layers, contacts, heights
    application.exitQgis()


if __name__ == "__main__":
    sys.path[:0] = [str(Path(__file__).parent), str(Path(__file__).parent.parent / "build" / "plugins")]
    draw(Path(sys.argv[1]), Path(sys.argv[2]))
