"""The plain names of the symbols, in the user's language."""

from ..core.map_lines import OTHER_TYPE
from ..gis.i18n import tr
from .lines import NUMBERED


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
        "ag.dip": tr("Inclined bedding, arrow down the dip"),
        "ag.dip_t": tr("Inclined bedding, top direction known, arrow down the dip"),
        "ag.dip_o": tr("Overturned bedding, arrow down the dip"),
        "ag.dip_a": tr("Inclined bedding, approximate, arrow down the dip"),
        "ag.dip_ta": tr("Inclined bedding, top direction known, approximate, arrow down the dip"),
        "ag.dip_oa": tr("Overturned bedding, approximate, arrow down the dip"),
        "ag.cleav_h": tr("Horizontal cleavage"),
        "07.02": tr("Inclined cleavage"),
        "ag.cleav_v": tr("Vertical cleavage"),
        "07.14": tr("Inclined spaced cleavage"),
        "07.20": tr("Inclined crenulation cleavage"),
        "08.03.01": tr("Horizontal foliation"),
        "08.03.02": tr("Inclined foliation"),
        "08.03.03": tr("Vertical foliation"),
        "08.01.02": tr("Inclined foliation, origin not told"),
        "ag.igneous_h": tr("Horizontal igneous foliation"),
        "08.02.03": tr("Inclined igneous foliation"),
        "ag.igneous_v": tr("Vertical igneous foliation"),
        "04.03.01": tr("Horizontal joint"),
        "04.03.02": tr("Inclined joint"),
        "04.03.03": tr("Vertical joint"),
        "04.03.08": tr("Inclined platy parting"),
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
        "09.002": tr("Plunging lineation, second set"),
        "09.009": tr("Plunging parting lineation"),
        "09.025": tr("Plunging lineation of aligned objects"),
        "ag.lin_v": tr("Vertical lineation"),
        "ag.slick_h": tr("Horizontal slickenline"),
        "09.017": tr("Plunging slickenline"),
        "09.018": tr("Plunging slickenline, second set"),
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


def line_names():
    """Name every line as a map's explanation does.

    Returns
    -------
    dict of str to str
        One name for each key of ``lines.NUMBERED``.
    """
    types = {
        "contact": tr("Contact"),
        "internal_contact": tr("Internal contact"),
        "gradational_contact": tr("Gradational contact"),
        "unconformity": tr("Unconformity"),
        "fault": tr("Fault"),
        "normal_fault": tr("Normal fault, ball and bar on the side that dropped"),
        "low_angle_normal_fault": tr("Low-angle normal fault, half circles on the side that dropped"),
        "reverse_fault": tr("Reverse fault, boxes on the side that rose"),
        "right_lateral_fault": tr("Strike-slip fault, right-lateral"),
        "left_lateral_fault": tr("Strike-slip fault, left-lateral"),
        "thrust_fault": tr("Thrust fault, teeth on the upper plate"),
        "detachment_fault": tr("Detachment fault, ticks on the upper plate"),
        "anticline": tr("Axis of an anticline"),
        "antiform": tr("Axis of an antiform"),
        "syncline": tr("Axis of a syncline"),
        "synform": tr("Axis of a synform"),
        "monocline": tr("Axis of a monocline, arrow down the steep limb"),
        "map_boundary": tr("Boundary of the map"),
        "scratch_boundary": tr("Scratch boundary, not drawn"),
        OTHER_TYPE: tr("Line of a type that is not in this list"),
    }
    locations = {
        "accurate": "{line}",
        "approximate": tr("{line}; approximately located"),
        "inferred": tr("{line}; inferred"),
        "concealed": tr("{line}; concealed"),
    }
    names = {}
    for number, (kind, location, doubt) in NUMBERED.items():
        name = locations[location].format(line=types[kind])
        names[number] = tr("{line}; identity or existence questionable").format(line=name) if doubt else name
    return names
