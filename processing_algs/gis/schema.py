"""Fields of an output: the input's own first, then ours, no two alike, none lost.

The data dictionary is here: each of our fields has one name and one type wherever it appears.
"""

from qgis.core import QgsField, QgsFields, QgsProcessingException
from qgis.PyQt.QtCore import QMetaType

from .field_meanings import field_meanings
from .i18n import tr

NAME_LENGTH = 10  # of a Shapefile's field. Units: bytes
DOUBLE, TEXT, DATE = QMetaType.Type.Double, QMetaType.Type.QString, QMetaType.Type.QDate
WHOLE = QMetaType.Type.Int
WHOLE_NUMBERS = (QMetaType.Type.Int, QMetaType.Type.UInt, QMetaType.Type.LongLong, QMetaType.Type.ULongLong)

# Name, type and length of text (254: the most a Shapefile holds).
DICTIONARY = {
    "kind": (TEXT, 20),
    "polarity": (TEXT, 12),
    "azim_read": (DOUBLE, 0),
    "decl": (DOUBLE, 0),
    "incl": (DOUBLE, 0),
    "h_nt": (DOUBLE, 0),
    "f_nt": (DOUBLE, 0),
    "decl_year": (DOUBLE, 0),
    "sig_decl": (DOUBLE, 0),
    "ring_set": (DOUBLE, 0),
    "correction": (DOUBLE, 0),
    "strike": (DOUBLE, 0),
    "dip": (DOUBLE, 0),
    "dip_dir": (DOUBLE, 0),
    "trend": (DOUBLE, 0),
    "plunge": (DOUBLE, 0),
    "converg": (DOUBLE, 0),
    "grid_mag": (DOUBLE, 0),
    "azim_map": (DOUBLE, 0),
    "sig_az": (DOUBLE, 0),
    "sig_pole": (DOUBLE, 0),
    "decl_from": (TEXT, 20),
    "read_date": (DATE, 0),
    "method": (TEXT, 20),
    "symbol": (TEXT, 12),
    "label": (TEXT, 8),
    "plot_scale": (WHOLE, 0),
    "group": (TEXT, 80),
    "from_m": (DOUBLE, 0),
    "to_m": (DOUBLE, 0),
    "n_points": (WHOLE, 0),
    "n_planes": (WHOLE, 0),
    "rms": (DOUBLE, 0),
    "thinness": (DOUBLE, 0),
    "dip_lo": (DOUBLE, 0),
    "dip_hi": (DOUBLE, 0),
    "dd_half": (DOUBLE, 0),
    "line": (TEXT, 8),
    "sig_used": (DOUBLE, 0),
    "where": (TEXT, 16),
    "thickness": (DOUBLE, 0),
    "sig_thick": (DOUBLE, 0),
    "map_width": (DOUBLE, 0),
    "slope": (DOUBLE, 0),
    "line_az": (DOUBLE, 0),
    "plane_row": (DOUBLE, 0),
    "plane_name": (TEXT, 80),
    "plane_away": (DOUBLE, 0),
    "plane_elev": (DOUBLE, 0),
    "depth": (DOUBLE, 0),
    "sig_depth": (DOUBLE, 0),
    "section": (TEXT, 80),
    "leg": (WHOLE, 0),
    "leg_azim": (DOUBLE, 0),
    "distance": (DOUBLE, 0),
    "cross_name": (TEXT, 254),
    "to_dist": (DOUBLE, 0),
    "length": (DOUBLE, 0),
    "elev": (DOUBLE, 0),
    "elev_min": (DOUBLE, 0),
    "elev_max": (DOUBLE, 0),
    "offset": (DOUBLE, 0),
    "app_dip": (DOUBLE, 0),
    "app_dip_ve": (DOUBLE, 0),
    "rule": (TEXT, 16),
    "tick": (TEXT, 12),
    "ve": (DOUBLE, 0),
    "dip_from": (TEXT, 12),
    "dip_away": (DOUBLE, 0),
    "compass": (TEXT, 80),
    "az_known": (DOUBLE, 0),
    "to_add": (DOUBLE, 0),
    "sig_add": (DOUBLE, 0),
    "off_index": (DOUBLE, 0),
    "n_read": (WHOLE, 0),
    "n_used": (WHOLE, 0),
    "index_err": (DOUBLE, 0),
    "sig_index": (DOUBLE, 0),
    "spread": (DOUBLE, 0),
    "drift": (DOUBLE, 0),
    "sig_drift": (DOUBLE, 0),
    "first_date": (DATE, 0),
    "last_date": (DATE, 0),
    "station": (TEXT, 80),
    "n_legs": (WHOLE, 0),
    "attr_corr": (DOUBLE, 0),
    "sig_attr": (DOUBLE, 0),
    "attr_from": (TEXT, 12),
    "moved": (DOUBLE, 0),
    "sig_pos": (DOUBLE, 0),
    "sig_elev": (DOUBLE, 0),
    "fore_read": (DOUBLE, 0),
    "back_read": (DOUBLE, 0),
    "fore_corr": (DOUBLE, 0),
    "back_corr": (DOUBLE, 0),
    "res_before": (DOUBLE, 0),
    "res_after": (DOUBLE, 0),
    "azim_leg": (DOUBLE, 0),
    "rise": (DOUBLE, 0),
    "azim_adj": (DOUBLE, 0),
    "length_adj": (DOUBLE, 0),
    "d_azim": (DOUBLE, 0),
    "d_length": (DOUBLE, 0),
    "n_rays": (WHOLE, 0),
    "crossing": (DOUBLE, 0),
    "semi_major": (DOUBLE, 0),
    "semi_minor": (DOUBLE, 0),
    "ell_azim": (DOUBLE, 0),
    "turn": (DOUBLE, 0),
    "sig_turn": (DOUBLE, 0),
    "residual": (DOUBLE, 0),
    "azim_true": (DOUBLE, 0),
    "elev_ang": (DOUBLE, 0),
    "range": (DOUBLE, 0),
    "range_lo": (DOUBLE, 0),
    "range_hi": (DOUBLE, 0),
    "sig_across": (DOUBLE, 0),
    "curv_refr": (DOUBLE, 0),
    "element": (TEXT, 20),
    "value": (DOUBLE, 0),
    "value_text": (TEXT, 20),
    "agonic": (WHOLE, 0),
    "zone": (TEXT, 12),
    "r_length": (DOUBLE, 0),
    "kappa": (DOUBLE, 0),
    "cone": (DOUBLE, 0),
    "cone_min": (DOUBLE, 0),
    "eig_1": (DOUBLE, 0),
    "eig_2": (DOUBLE, 0),
    "eig_3": (DOUBLE, 0),
    "bing_k2": (DOUBLE, 0),
    "bing_k3": (DOUBLE, 0),
    "shape": (DOUBLE, 0),
    "strength": (DOUBLE, 0),
    "p_uniform": (DOUBLE, 0),
    "scatter": (DOUBLE, 0),
    "mean_az": (DOUBLE, 0),
    "unit": (TEXT, 20),
    "what": (TEXT, 20),
    "fault_name": (TEXT, 80),
    "axis_trend": (DOUBLE, 0),
    "axis_plun": (DOUBLE, 0),
    "axis_half": (DOUBLE, 0),
    "axis_least": (DOUBLE, 0),
    "axis_boot": (DOUBLE, 0),
    "fold_shape": (TEXT, 12),
    "p_cone": (DOUBLE, 0),
    "cone_rad": (DOUBLE, 0),
    "cone_half": (DOUBLE, 0),
    "n_limb1": (WHOLE, 0),
    "n_limb2": (WHOLE, 0),
    "interlimb": (DOUBLE, 0),
    "interlim2": (DOUBLE, 0),
    "bis_strike": (DOUBLE, 0),
    "bis_dip": (DOUBLE, 0),
    "bis2_strik": (DOUBLE, 0),
    "bis2_dip": (DOUBLE, 0),
    "bis_from": (TEXT, 12),
    "axis_from": (TEXT, 12),
    "domain": (WHOLE, 0),
    "misfit": (DOUBLE, 0),
    "parts_deg": (DOUBLE, 0),
    "net_slip": (DOUBLE, 0),
    "sig_net": (DOUBLE, 0),
    "slip_rake": (DOUBLE, 0),
    "strike_slp": (DOUBLE, 0),
    "sig_strslp": (DOUBLE, 0),
    "dip_slip": (DOUBLE, 0),
    "sig_dipslp": (DOUBLE, 0),
    "throw": (DOUBLE, 0),
    "sig_throw": (DOUBLE, 0),
    "heave": (DOUBLE, 0),
    "sig_heave": (DOUBLE, 0),
    "from_trace": (DOUBLE, 0),
    "in_air": (WHOLE, 0),
    "away": (DOUBLE, 0),
    "half_band": (DOUBLE, 0),
    "hole": (TEXT, 80),
    "incl_down": (DOUBLE, 0),
    "hole_len": (DOUBLE, 0),
    "hole_angle": (DOUBLE, 0),
    "sig_hole": (DOUBLE, 0),
    "sig_meet": (DOUBLE, 0),
    "collar_el": (DOUBLE, 0),
    "target_el": (DOUBLE, 0),
    "unit_name": (TEXT, 254),
    "unit_order": (WHOLE, 0),
    "unit_color": (TEXT, 7),
    "h_below": (DOUBLE, 0),
    "sun_alt": (DOUBLE, 0),
    "sun_azim": (DOUBLE, 0),
    "sun_local": (TEXT, 30),
    "sun_rate": (DOUBLE, 0),
    "sun_read": (DOUBLE, 0),
    "sun_shadow": (DOUBLE, 0),
    "sun_utc": (TEXT, 24),
    "obj_height": (DOUBLE, 0),
    "sig_height": (DOUBLE, 0),
    "top_ang": (DOUBLE, 0),
    "n": (WHOLE, 0),
    "target": (TEXT, 8),
    "n_sun": (WHOLE, 0),
    "sig_clock": (DOUBLE, 0),
    "book_row": (WHOLE, 0),
    "book_part": (WHOLE, 0),
    "as_written": (TEXT, 254),
    "conv_text": (TEXT, 40),
    "conv_azim": (DOUBLE, 0),
    "conv_dip": (DOUBLE, 0),
    "conv_side": (TEXT, 4),
    "suspicion": (TEXT, 80),
    "evidence": (DOUBLE, 0),
    "evid_text": (TEXT, 254),
    "grade": (DOUBLE, 0),
    "line_end": (TEXT, 12),
    "status": (TEXT, 10),
    "code": (TEXT, 120),
    "remark": (TEXT, 254),
}


# The data dictionary of an attitude, as every layer of attitudes has it.
ATTITUDE = [
    "kind",
    "polarity",
    "azim_read",
    "decl",
    "ring_set",
    "correction",
    "strike",
    "dip",
    "dip_dir",
    "trend",
    "plunge",
    "converg",
    "azim_map",
    "sig_az",
    "sig_pole",
    "decl_from",
    "read_date",
    "method",
    "symbol",
    "label",
]
# What was noticed about a row, at the end of every layer.
NOTICED = ["status", "code", "remark"]


def _field(name, meaning):
    """One of our fields, with its meaning where the place of the output keeps it."""
    kind, length = DICTIONARY[name]
    field = QgsField(name, kind, len=length)
    if meaning:
        field.setComment(meaning.sentence)
    return field


def output_fields(inputs, added, *, short_names, key_is_unique, comments=False):
    """Fields of an output layer and what had to be renamed. A field of maps, which no file holds, becomes one of text.

    Parameters
    ----------
    inputs : QgsFields
        The input's fields; all are kept, in order.
    added : list of str
        Names from the data dictionary, in order.
    short_names : bool
        Whether the output cuts names at 10 characters: longer ones are cut here, and so without two becoming one.
    key_is_unique : bool
        Whether a whole-number field ``fid`` of the input has no value twice. If it has, it cannot be the key of a
        GeoPackage, and as a key it would cost rows: it is kept as data under another name.
    comments : bool
        Whether our fields bring their meanings as comments, which a database keeps. QGIS warns about each where the
        place of the output does not.

    Returns
    -------
    fields : QgsFields
    renamed : dict
        Old name to new name of the input's fields that had to give way.

    Raises
    ------
    QgsProcessingException
        If a field is refused all the same.
    """
    used = set(added)
    taken = {field.name().lower() for field in inputs} | used
    fields, renamed = QgsFields(), {}
    for source in inputs:
        name, is_map = source.name(), source.type() == QMetaType.Type.QVariantMap
        field = QgsField(name, TEXT) if is_map else QgsField(source)
        spoils_key = name.lower() == "fid" and not (field.type() in WHOLE_NUMBERS and key_is_unique)
        new = _cut(name) if short_names else name
        if new.lower() in used or spoils_key:
            new = free_name(name, taken)
        if new != name:
            renamed[name] = new
            field.setName(new)
        used.add(new.lower())
        taken.add(new.lower())
        _append(fields, field)
    meanings = field_meanings() if comments else {}
    for name in added:
        _append(fields, _field(name, meanings.get(name)))
    return fields, renamed


def free_name(name, taken):
    """``in_`` and as much of the name as ten characters hold, with a number at the end where that is taken."""
    candidate, number = _cut(f"in_{name}"), 1
    while candidate.lower() in taken:
        number += 1
        candidate = _cut(f"in_{name}", NAME_LENGTH - len(str(number))) + str(number)
    return candidate


def _cut(name, length=NAME_LENGTH):
    """The beginning of a name; a Shapefile counts bytes."""
    return name.encode()[:length].decode(errors="ignore")


def _append(fields, field):
    """Append, loudly: a field whose name is taken is refused without a word, and all attributes shift."""
    if not fields.append(field):
        raise QgsProcessingException(tr("The output cannot hold the field {name}.").format(name=field.name()))
