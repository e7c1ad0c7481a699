"""The plain names of the symbols, in the user's language."""

from ..gis.i18n import tr


def symbol_names():
    """Name every symbol as a map's explanation does.

    Returns
    -------
    dict of str to str
        One name for each key of ``symbols.SYMBOLS``.
    """
    return {
        "06.01": tr("Horizontal bedding"),
        "06.02": tr("Inclined bedding"),
        "06.03": tr("Vertical bedding"),
        "06.13": tr("Inclined bedding, top direction known"),
        "06.15": tr("Overturned bedding"),
        "06.33": tr("Inclined bedding, approximate"),
        "06.34": tr("Vertical bedding, approximate"),
        "06.36": tr("Inclined bedding, top direction known, approximate"),
        "06.38": tr("Overturned bedding, approximate"),
        "ag.bedding_horizontal_overturned": tr("Horizontal bedding, upside down"),
        "ag.cleavage_horizontal": tr("Horizontal cleavage"),
        "07.02": tr("Inclined cleavage"),
        "ag.cleavage_vertical": tr("Vertical cleavage"),
        "08.03.01": tr("Horizontal foliation"),
        "08.03.02": tr("Inclined foliation"),
        "08.03.03": tr("Vertical foliation"),
        "ag.igneous_foliation_horizontal": tr("Horizontal igneous foliation"),
        "08.02.03": tr("Inclined igneous foliation"),
        "ag.igneous_foliation_vertical": tr("Vertical igneous foliation"),
        "04.03.01": tr("Horizontal joint"),
        "04.03.02": tr("Inclined joint"),
        "04.03.03": tr("Vertical joint"),
        "ag.fault_horizontal": tr("Horizontal fault plane"),
        "ag.fault_inclined": tr("Inclined fault plane"),
        "ag.fault_vertical": tr("Vertical fault plane"),
        "ag.vein_horizontal": tr("Horizontal vein"),
        "ag.vein_inclined": tr("Inclined vein"),
        "ag.vein_vertical": tr("Vertical vein"),
        "ag.dike_horizontal": tr("Horizontal dike or sill"),
        "01.04.01": tr("Inclined dike"),
        "ag.dike_vertical": tr("Vertical dike"),
        "ag.contact_horizontal": tr("Horizontal contact"),
        "ag.contact_inclined": tr("Inclined contact"),
        "ag.contact_vertical": tr("Vertical contact"),
        "ag.axial_plane_horizontal": tr("Horizontal axial plane"),
        "ag.axial_plane_inclined": tr("Inclined axial plane"),
        "ag.axial_plane_vertical": tr("Vertical axial plane"),
        "ag.other_plane_horizontal": tr("Horizontal plane of another kind"),
        "ag.other_plane_inclined": tr("Inclined plane of another kind"),
        "ag.other_plane_vertical": tr("Vertical plane of another kind"),
        "ag.lineation_horizontal": tr("Horizontal lineation"),
        "09.001": tr("Plunging lineation"),
        "ag.lineation_vertical": tr("Vertical lineation"),
        "ag.slickenline_horizontal": tr("Horizontal slickenline"),
        "09.017": tr("Plunging slickenline"),
        "ag.slickenline_vertical": tr("Vertical slickenline"),
        "ag.fold_axis_horizontal": tr("Horizontal axis of a small fold"),
        "09.097": tr("Plunging axis of a small fold"),
        "ag.fold_axis_vertical": tr("Vertical axis of a small fold"),
        "ag.other_line_horizontal": tr("Horizontal line of another kind"),
        "ag.other_line_inclined": tr("Plunging line of another kind"),
        "ag.other_line_vertical": tr("Vertical line of another kind"),
        "ag.no_reading": tr("No reading: row rejected"),
        "ag.other": tr("Symbol not in this list, or direction missing"),
    }
