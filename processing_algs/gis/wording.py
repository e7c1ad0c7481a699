"""Plain words for the tokens of choices: what a person reads where a script writes the token."""

from .i18n import tr


def worded(tokens, words):
    """Tokens of a choice with their words; a token that has none yet stands for itself.

    Parameters
    ----------
    tokens : iterable of str
    words : dict of str to str

    Returns
    -------
    dict of str to str
    """
    return {token: words.get(token, token) for token in tokens}


def norths():
    """Words for the norths an azimuth may be counted from."""
    return {
        "magnetic": tr("magnetic north, read with a compass"),
        "true": tr("true north"),
        "grid": tr("grid north"),
    }


def needle_ends():
    """Words for the ends of the needle."""
    return {"north": tr("north end"), "south": tr("south end")}


def date_orders():
    """Words for the orders of numeric dates."""
    return {
        "iso": tr("year, month, day"),
        "dmy": tr("day, month, year"),
        "mdy": tr("month, day, year"),
        "serial": tr("day numbers of a spreadsheet, from 1900"),
        "serial_1904": tr("day numbers of a spreadsheet, from 1904"),
    }


def field_models():
    """Words for the models of the magnetic field that come with the plugin, and for a declination that is given."""
    return {
        "igrf14": tr("IGRF-14, 1900 to 2030"),
        "wmm2025": tr("WMM2025, 2025 to 2030"),
        "wmmhr2025": tr("WMMHR2025, 2025 to 2030"),
        "given": tr("none, the declination is given"),
    }


def height_units():
    """Words for units of height."""
    return {
        "file": tr("as the file says"),
        "metre": tr("metre"),
        "foot": tr("international foot, 0.3048 m"),
        "us_foot": tr("US survey foot, 1200/3937 m"),
    }


def ring_blanks():
    """Words for what a blank ring setting means among others."""
    return {
        "reject": tr("not known: the row is rejected"),
        "as_before": tr("as above: the last one stated for this compass"),
        "parameter": tr("the ring setting of the run"),
    }


def angle_units():
    """Words for units of angle."""
    return {
        "degree": tr("degree"),
        "gon": tr("gon"),
        "mil6400": tr("mil of 6400"),
    }


def notations():
    """Words for the ways an attitude is written."""
    return {
        "strike_right": tr("strike, dip on its right"),
        "strike_left": tr("strike, dip on its left"),
        "strike_letter": tr("strike, dip and a letter for its side"),
        "dip_direction": tr("dip direction and dip"),
        "line": tr("trend and plunge of lines"),
        "text": tr("all in one text, such as N45E/30SE"),
    }


def written_notations():
    """Words for the ways in which an attitude can be written."""
    return {
        "strike_right": tr("045/30, strike with the dip on its right"),
        "strike_left": tr("225/30, strike with the dip on its left"),
        "strike_letter": tr("045/30SE, strike, dip and letter"),
        "dip_direction": tr("135/30, dip direction and dip"),
        "quadrant": tr("N45E/30SE, quadrant bearing, dip and letter"),
    }


def rake_meanings():
    """Words for how a rake is counted."""
    return {
        "from_strike": tr("0 to 180 from the strike that has the dip to its right"),
        "with_letter": tr("0 to 90 and a letter"),
    }


def kinds():
    """Words for the kinds of structure."""
    return {
        "bedding": tr("bedding"),
        "cleavage": tr("cleavage"),
        "foliation": tr("foliation"),
        "joint": tr("joint"),
        "fault": tr("fault"),
        "vein": tr("vein"),
        "dike": tr("dike"),
        "contact": tr("contact"),
        "axial_plane": tr("axial plane"),
        "other_plane": tr("other plane"),
        "lineation": tr("lineation"),
        "slickenline": tr("slickenline"),
        "fold_axis": tr("fold axis"),
        "other_line": tr("other line"),
    }


def polarities():
    """Words for which way up a bed is."""
    return {
        "upright": tr("upright"),
        "overturned": tr("overturned"),
        "unknown": tr("unknown"),
    }


def closer_kinds():
    """Words for closer kinds of structure, each with a symbol of its own."""
    return {
        "spaced_cleavage": tr("spaced cleavage"),
        "crenulation_cleavage": tr("crenulation cleavage"),
        "general_foliation": tr("foliation, origin not told"),
        "igneous_foliation": tr("igneous foliation"),
        "platy_parting": tr("platy parting"),
        "second_lineation": tr("second lineation"),
        "parting_lineation": tr("parting lineation"),
        "object_lineation": tr("lineation of objects"),
        "second_slickenline": tr("second slickenline"),
    }


def line_types():
    """Words for the types of mapped lines."""
    return {
        "contact": tr("contact"),
        "internal_contact": tr("internal contact"),
        "gradational_contact": tr("gradational contact"),
        "unconformity": tr("unconformity"),
        "fault": tr("fault"),
        "normal_fault": tr("normal fault"),
        "low_angle_normal_fault": tr("low-angle normal fault"),
        "reverse_fault": tr("reverse fault"),
        "right_lateral_fault": tr("right-lateral fault"),
        "left_lateral_fault": tr("left-lateral fault"),
        "thrust_fault": tr("thrust fault"),
        "detachment_fault": tr("detachment fault"),
        "anticline": tr("anticline"),
        "antiform": tr("antiform"),
        "syncline": tr("syncline"),
        "synform": tr("synform"),
        "monocline": tr("monocline"),
        "map_boundary": tr("boundary of the map"),
        "scratch_boundary": tr("scratch boundary, not drawn"),
    }


def azimuth_read():
    """Words for what was read off the compass."""
    return {
        "either": tr("not known: strike or dip direction"),
        "strike": tr("the strike"),
        "dip_direction": tr("the dip direction"),
    }


def compass_letters():
    """Words for the letters of the compass points."""
    return {
        "NESW": tr("N, E, S, W (English)"),
        "NESO": tr("N, E, S, O: O is west (Spanish, French, Italian)"),
        "NLSO": tr("N, L, S, O: L is east, O is west (Portuguese)"),
        "NOSW": tr("N, O, S, W: O is east (German)"),
    }


def azimuth_meanings():
    """Words for what an azimuth of an attitude means."""
    return {
        "strike_right": tr("strike, dip on its right"),
        "strike_left": tr("strike, dip on its left"),
        "dip_direction": tr("dip direction"),
        "trend": tr("trend, all rows are lines"),
    }


def bedding_symbols():
    """Words for the symbols of inclined bedding."""
    return {
        "bar": tr("strike bar with a tick down the dip"),
        "arrow": tr("arrow down the dip, number at its tip"),
    }


def arrow_anchors():
    """Words for the part of a line's arrow that lies on its place."""
    return {
        "tail": tr("tail"),
        "middle": tr("middle"),
        "tip": tr("tip"),
    }


def place_orders():
    """Words for the order of two angles without letters."""
    return {
        "unsaid": tr("not said"),
        "latitude_first": tr("latitude first"),
        "longitude_first": tr("longitude first"),
    }


def packed_degrees():
    """Words for packed degrees."""
    return {
        "none": tr("not packed"),
        "minutes": tr("degrees and minutes, such as 4530.2"),
        "seconds": tr("degrees, minutes and seconds, such as 453012"),
    }


def zone_letters():
    """Words for the letter behind a UTM zone."""
    return {
        "unsaid": tr("not said: the northing decides"),
        "band": tr("latitude band, C to X"),
        "hemisphere": tr("hemisphere, N or S"),
    }


def separators():
    """Words for what parts the cells of a text file."""
    return {
        "comma": tr("comma"),
        "semicolon": tr("semicolon"),
        "tab": tr("tabulator"),
        "bar": tr("vertical bar"),
    }


def place_ways():
    """Words for how a table says where its rows are."""
    return {
        "degrees": tr("longitude and latitude"),
        "numbers": tr("easting and northing"),
        "grid": tr("grid reference"),
        "place": tr("whole place"),
        "station": tr("station"),
    }


def roles():
    """Words for what a column of a notebook holds."""
    return {
        "azimuth": tr("azimuth"),
        "dip": tr("dip or plunge"),
        "side": tr("dip letter"),
        "text": tr("attitude as text"),
        "rake": tr("rake"),
        "kind": tr("kind"),
        "polarity": tr("polarity"),
        "north": tr("north of each row"),
        "ring": tr("ring setting"),
        "date": tr("date"),
        "declination": tr("declination"),
        "height": tr("height"),
        "compass": tr("compass"),
    }


def vertical_angles():
    """Words for what a vertical angle is."""
    return {
        "degrees_up": tr("degrees above the horizon, negative below"),
        "zenith": tr("degrees from straight up"),
        "percent": tr("percent, rise over run"),
    }
