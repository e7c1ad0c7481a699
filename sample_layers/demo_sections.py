"""Draws the demo's two sections, one of them bent, and holds them against the formulas behind the sample area."""

import geology
import numpy as np

SCALE = 20_000
DISTANCE = 600.0
DRAWN_KINDS = "('bedding', 'cleavage')"
# The lava's level flows are younger than the fold, and are not to be carried along its axis.
DRAWN = f'"kind" IN {DRAWN_KINDS} AND "status" <> \'rejected\' AND "dip" > 0'
# Contacts of the sample map are contours over cells of 25 m: metres off the formulas' surfaces, at most.
CONTACT_OFF = 1.0
# Readings are whole degrees: half of the beds, all of them.
HALF_OFF, ALL_OFF = 0.5, 1.0


def sections(runner, out, sample, angles, attitudes):
    """Draw the sections and check them.

    Parameters
    ----------
    runner : demo.Runner
    out : pathlib.Path
        Folder for the figure and the package.
    sample : pathlib.Path
        Folder with the sample layers.
    angles : pathlib.Path
        Layer with the norths at the sheet's corners and centre.
    attitudes : list of pathlib.Path
        Corrected layers.

    Raises
    ------
    OSError
        If the sections do not show what the formulas have.
    """
    store, converg = sample / "vellamoor.gpkg", convergence(angles)
    beds = merged(runner, sample, attitudes)
    shared = {
        "SECTION": f"{store}|layername=section_lines",
        "NAME_FIELD": "name",
        "DEM": str(sample / "vellamoor_heights.tif"),
    }
    carried = {
        "ATTITUDES": beds,
        "DISTANCE": DISTANCE,
        "RULE": "along_axis",
        "AXIS_TREND": geology.AXIS_TREND + converg,  # the formulas count from grid north
        "AXIS_PLUNGE": geology.AXIS_PLUNGE,
    }
    figure, package = out / "vellamoor_sections.pdf", out / "vellamoor_sections.gpkg"
    result = runner.run(
        "agonic:draw_section",
        **shared,
        **carried,
        UNITS=f"{store}|layername=units",
        UNIT_FIELD="unit",
        CONTACTS=f"{store}|layername=contacts",
        FAULTS=f"{store}|layername=faults",
        FAULT_FIELD="name",
        SCALE=SCALE,
        FIGURE=str(figure),
        PACKAGE=str(package),
    )
    if (result["READ"], result["DONE"], result["REJECTED"]) != (2, 2, 0):
        message = f"agonic:draw_section did not draw both sections: {result}"
        raise OSError(message)
    print(f"sections: {check_contacts(runner, sample, store, shared)}")
    print(f"  {check_beds(runner, sample, shared | carried, converg)}")
    print(f"  figure  {figure}\n  package {package}")


def convergence(angles):
    """Return the azimuth of grid north from true north at the sheet's centre. Degrees."""
    return next(row["converg"] for _, _, _, row in places(angles) if row["corner"] == "centre")


def merged(runner, sample, attitudes):
    """Put the beds and cleavages of the corrected layers into one layer. Returns its path."""
    both = runner.run(
        "native:mergevectorlayers", LAYERS=[str(path) for path in attitudes], OUTPUT=str(sample / "attitudes.gpkg")
    )["OUTPUT"]
    return runner.run(
        "native:extractbyexpression",
        INPUT=both,
        EXPRESSION=DRAWN,
        OUTPUT=str(sample / "attitudes_drawn.gpkg"),
    )["OUTPUT"]


def check_contacts(runner, sample, store, shared):
    """Check that contacts cross the sections where the formulas have them. Returns a sentence."""
    path = sample / "crossings.gpkg"
    runner.run(
        "agonic:section_crossings",
        **shared,
        LAYER=f"{store}|layername=contacts",
        LABEL_FIELD="name",
        OUTPUT_SECTION=str(sample / "crossings_flat.gpkg"),
        OUTPUT_MAP=str(path),
    )
    tops = {bed[0]: bed[3] for bed in geology.BEDS}
    off = []
    for x, y, z, row in places(path):
        if row["above"] == geology.LAVA[0]:
            off.append(abs(z - geology.LAVA_BASE))
        else:
            off.append(abs(float(geology.rocks([x, y, z]).height) - tops[row["below"]]))
    if not off or max(off) > CONTACT_OFF:
        message = f"contacts lie up to {max(off, default=0):.1f} m off their surfaces, not {CONTACT_OFF:.0f}."
        raise OSError(message)
    return f"{len(off)} contacts cross at the height the formulas give, within {max(off):.1f} m"


def check_beds(runner, sample, parameters, converg):
    """Check that beds carried along the fold axis dip as the formulas' section does. Returns a sentence."""
    path = sample / "carried.gpkg"
    result = runner.run(
        "agonic:section_attitudes",
        **parameters,
        OUTPUT_SECTION=str(sample / "carried_flat.gpkg"),
        OUTPUT_MAP=str(path),
        REPORT=str(sample.parent / "vellamoor_sections_report.html"),
    )
    if result["READ"] != result["DONE"] + result["REJECTED"] + result["OUTSIDE"]:
        message = f"agonic:section_attitudes: the counts do not add up: {result}"
        raise OSError(message)
    off = []
    for x, y, z, row in places(path):
        if row["kind"] == "bedding":
            normal = geology.rocks([x, y, z]).bedding
            # From grid north, as the formulas count; the section's azimuth is from true north.
            ahead = np.radians(row["leg_azim"] - converg)
            along = normal[0] * np.sin(ahead) + normal[1] * np.cos(ahead)
            exact = np.degrees(np.arctan2(along * np.sign(normal[2]), abs(normal[2])))
            apart = abs(row["app_dip"] - exact)
            off.append(min(apart, 180.0 - apart))
    if np.median(off) > HALF_OFF or max(off) > ALL_OFF:
        message = f"apparent dips are {np.median(off):.1f} degrees off in the middle and up to {max(off):.1f}."
        raise OSError(message)
    return (
        f"{len(off)} beds carried along the fold axis dip as the formulas' section does: half of them within "
        f"{np.median(off):.1f} degrees, all within {max(off):.1f}; {result['OUTSIDE']} of {result['READ']} attitudes "
        "are too far from both sections"
    )


def places(path):
    """Yield the middle of each feature, its height 0 where it has none, with its attributes."""
    from osgeo import ogr  # noqa: PLC0415  (only now: without QGIS the demo should say so, not fail here)

    ogr.UseExceptions()
    store = ogr.Open(str(path))
    for feature in store.GetLayer(0):
        geometry = feature.GetGeometryRef()
        if geometry is not None and not geometry.IsEmpty():
            middle = np.array([[*point, 0.0][:3] for point in geometry.GetPoints()]).mean(axis=0)
            yield *middle, feature.items()
