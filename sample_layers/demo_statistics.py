"""Finds the demo's fold axis from its beds, draws net and rose, and a section by the axis that was found."""

import demo_sections
import geology
import numpy as np

SCALE = 20_000
DISTANCE = 600.0


def statistics(runner, out, sample, angles):
    """Find the fold's axis and limbs, and hold them against the formulas.

    Parameters
    ----------
    runner : demo.Runner
    out : pathlib.Path
        Folder for layers and figures.
    sample : pathlib.Path
        Folder with the sample layers, and the beds that the sections were drawn from.
    angles : pathlib.Path
        Layer with the norths at the sheet's corners and centre.

    Raises
    ------
    OSError
        If the axis is not the formulas', or the limbs are not told apart.
    """
    converg = demo_sections.convergence(angles)
    beds = str(sample / "attitudes_drawn.gpkg")
    axes, report = out / "vellamoor_axes.gpkg", out / "vellamoor_axes.html"
    told = {"INPUT": beds, "KIND": ["bedding"]}
    runner.run("agonic:fold_axis", **told, OUTPUT=str(axes), REPORT=str(report))
    row = _only_row(axes)
    found, true = (
        geology.direction(trend, plunge)
        for trend, plunge in (
            (row["trend"], row["plunge"]),
            (geology.AXIS_TREND + converg, geology.AXIS_PLUNGE),  # the formulas count from grid north
        )
    )
    off = float(np.degrees(np.arccos(np.clip(abs(found @ true), 0.0, 1.0))))
    if off > row["axis_half"]:
        message = f"The fold axis is {off:.2f} degrees off, outside its region of {row['axis_half']:.2f}."
        raise OSError(message)
    if not row["n_limb1"] or not row["n_limb2"] or row["interlim2"] is not None:
        message = "The two limbs of the fold are not told apart."
        raise OSError(message)
    net, rose = out / "vellamoor_net.pdf", out / "vellamoor_rose.pdf"
    runner.run("agonic:orientation_net", INPUT=beds, KIND=["bedding"], GIRDLE=True, OUTPUT=str(net))
    runner.run("agonic:rose_diagram", INPUT=beds, KIND=["bedding"], OUTPUT=str(rose))
    figure = out / "vellamoor_section_by_axes.pdf"
    result = runner.run(
        "agonic:draw_section",
        SECTION=f"{sample / 'vellamoor.gpkg'}|layername=section_lines",
        NAME_FIELD="name",
        DEM=str(sample / "vellamoor_heights.tif"),
        ATTITUDES=beds,
        DISTANCE=DISTANCE,
        RULE="along_axis",
        AXES=str(axes),
        SCALE=SCALE,
        FIGURE=str(figure),
    )
    if result["DONE"] != result["READ"]:
        message = f"agonic:draw_section did not draw every section along the axes: {result}"
        raise OSError(message)
    print(
        f"fold axis {row['trend']:05.1f}/{row['plunge']:04.1f}, known to {row['axis_half']:.2f} degrees (95 %); "
        f"{off:.2f} off the formulas' own; limbs of {row['n_limb1']} and {row['n_limb2']} beds, "
        f"{row['interlimb']:.0f} degrees between them ({row['fold_shape']})"
    )
    print(f"  axes    {axes}\n  net     {net}\n  rose    {rose}\n  section {figure}")


def _only_row(path):
    """The attributes of a layer of one row."""
    from osgeo import ogr  # noqa: PLC0415  (only now: without QGIS the demo should say so, not fail here)

    ogr.UseExceptions()
    store = ogr.Open(str(path))
    return store.GetLayer(0).GetNextFeature().items()
