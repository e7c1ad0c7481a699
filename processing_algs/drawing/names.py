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
        "ag.bed_over": tr("Horizontal bedding, upside down"),
        "ag.cleav_h": tr("Horizontal cleavage"),
        "07.02": tr("Inclined cleavage"),
        "ag.cleav_v": tr("Vertical cleavage"),
        "08.03.01": tr("Horizontal foliation"),
        "08.03.02": tr("Inclined foliation"),
        "08.03.03": tr("Vertical foliation"),
        "ag.igneous_h": tr("Horizontal igneous foliation"),
        "08.02.03": tr("Inclined igneous foliation"),
        "ag.igneous_v": tr("Vertical igneous foliation"),
        "04.03.01": tr("Horizontal joint"),
        "04.03.02": tr("Inclined joint"),
        "04.03.03": tr("Vertical joint"),
        "ag.fault_h": tr("Horizontal fault plane"),
        "ag.fault_i": tr("Inclined fault plane"),
        "ag.fault_v": tr("Vertical fault plane"),
        "ag.vein_h": tr("Horizontal vein"),
        "ag.vein_i": tr("Inclined vein"),
        "ag.vein_v": tr("Vertical vein"),
        "ag.dike_h": tr("Horizontal dike or sill"),
        "01.04.01": tr("Inclined dike"),
        "ag.dike_v": tr("Vertical dike"),
        "ag.contact_h": tr("Horizontal contact"),
        "ag.contact_i": tr("Inclined contact"),
        "ag.contact_v": tr("Vertical contact"),
        "ag.axial_h": tr("Horizontal axial plane"),
        "ag.axial_i": tr("Inclined axial plane"),
        "ag.axial_v": tr("Vertical axial plane"),
        "ag.plane_h": tr("Horizontal plane of another kind"),
        "ag.plane_i": tr("Inclined plane of another kind"),
        "ag.plane_v": tr("Vertical plane of another kind"),
        "ag.lin_h": tr("Horizontal lineation"),
        "09.001": tr("Plunging lineation"),
        "ag.lin_v": tr("Vertical lineation"),
        "ag.slick_h": tr("Horizontal slickenline"),
        "09.017": tr("Plunging slickenline"),
        "ag.slick_v": tr("Vertical slickenline"),
        "ag.fold_h": tr("Horizontal axis of a small fold"),
        "09.097": tr("Plunging axis of a small fold"),
        "ag.fold_v": tr("Vertical axis of a small fold"),
        "ag.line_h": tr("Horizontal line of another kind"),
        "ag.line_i": tr("Plunging line of another kind"),
        "ag.line_v": tr("Vertical line of another kind"),
        "ag.no_read": tr("No reading: row rejected"),
        "ag.other": tr("Symbol not in this list, or direction missing"),
    }
