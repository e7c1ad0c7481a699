"""What each of our fields means: the one table behind aliases, metadata, comments and the manual.

An entry a line, sorted; a field of ``schema.DICTIONARY`` that is not here fails a test.
"""

# ruff: noqa: E501  (an entry a line, so that many can add theirs)

from typing import NamedTuple

from .i18n import tr


class Meaning(NamedTuple):
    """What a field holds.

    Attributes
    ----------
    alias : str
        Its name as a person reads it.
    unit : str
        Empty where it has none.
    text : str
        What it is, its sign and zero direction where it has one, and when it is empty.
    """

    alias: str
    unit: str
    text: str

    @property
    def heading(self):
        """Alias with the unit, as it stands above a column."""
        return f"{self.alias}, {self.unit}" if self.unit else self.alias

    @property
    def sentence(self):
        """The meaning with the unit."""
        return tr("{text} Unit: {unit}.").format(text=self.text, unit=self.unit) if self.unit else self.text


def field_meanings():
    """Meanings of our fields, in the user's language.

    Returns
    -------
    dict of str to Meaning
        By name.
    """
    # fmt: off
    return {
        "agonic": Meaning(tr("Is the agonic line"), "", tr("1 where the line is one of declination 0, else 0.")),
        "app_dip": Meaning(tr("Apparent dip"), "°", tr("Dip as the section shows it, -90 to 90, positive where the bed goes down in the direction of drawing.")),
        "app_dip_ve": Meaning(tr("Apparent dip as drawn"), "°", tr("Apparent dip with the vertical exaggeration of the section, same sign.")),
        "as_written": Meaning(tr("As written"), "", tr("The attitude as the notebook has it.")),
        "attr_corr": Meaning(tr("Correction for attraction"), "°", tr("What was added to readings at this station for local attraction; clockwise positive.")),
        "attr_from": Meaning(tr("Attraction known from"), "", tr("clean: an end of a line free of attraction; carried: carried on from one; none: not known.")),
        "away": Meaning(tr("Distance off"), "m", tr("How far off the section the datum was measured; 0 or more.")),
        "axis_plun": Meaning(tr("Plunge of the axis"), "°", tr("Plunge of the fold axis, 0 to 90, downward.")),
        "axis_trend": Meaning(tr("Trend of the axis"), "°", tr("Azimuth of the fold axis from true north, toward its downward end.")),
        "az_known": Meaning(tr("Known azimuth"), "°", tr("Azimuth of the line between its known ends, from true north, 0 to 360.")),
        "azim_adj": Meaning(tr("Azimuth, adjusted"), "°", tr("Azimuth of the leg after the traverse was closed, from true north.")),
        "azim_leg": Meaning(tr("Azimuth of the leg"), "°", tr("Azimuth before closing, from true north, freed of local attraction.")),
        "azim_map": Meaning(tr("Azimuth on the page"), "°", tr("Azimuth of strike or trend on the page of the layer's CRS, clockwise from the top.")),
        "azim_read": Meaning(tr("Azimuth as read"), "°", tr("As read off the compass, 0 to 360, before any correction.")),
        "azim_true": Meaning(tr("True azimuth"), "°", tr("Azimuth of the sight from true north, 0 to 360.")),
        "back_corr": Meaning(tr("Back bearing, corrected"), "°", tr("From true north, freed of local attraction.")),
        "back_read": Meaning(tr("Back bearing as read"), "°", tr("As read, 0 to 360.")),
        "book_part": Meaning(tr("Part of the row"), "", tr("Which attitude of the notebook's row this is, counted from 1.")),
        "book_row": Meaning(tr("Row of the notebook"), "", tr("Row of the table that came in, counted from 1.")),
        "code": Meaning(tr("Codes"), "", tr("What was noticed, for machines: codes with ; between them; empty where nothing was.")),
        "collar_el": Meaning(tr("Height of the collar"), "m", tr("Height of the mouth of the hole above sea level.")),
        "compass": Meaning(tr("Compass"), "", tr("Name of the compass.")),
        "conv_azim": Meaning(tr("Azimuth, converted"), "°", tr("The azimuth in the notation asked for, rounded.")),
        "conv_dip": Meaning(tr("Dip, converted"), "°", tr("Dip or plunge in the notation asked for, rounded.")),
        "conv_side": Meaning(tr("Letter, converted"), "", tr("Letter for the side of the dip, where the notation has one.")),
        "conv_text": Meaning(tr("Attitude, converted"), "", tr("The whole attitude in the notation asked for.")),
        "converg": Meaning(tr("Meridian convergence"), "°", tr("Azimuth of grid north from true north in the layer's CRS, east positive.")),
        "correction": Meaning(tr("Correction"), "°", tr("What was added to the reading to reach true north, clockwise positive: D - S, and what compass and attraction add.")),
        "cross_name": Meaning(tr("Name"), "", tr("Name of the contact, fault or unit that is met.")),
        "crossing": Meaning(tr("Crossing angle"), "°", tr("Angle at which the rays cross best, 0 to 90.")),
        "curv_refr": Meaning(tr("Curvature and refraction"), "m", tr("Share of the Earth's curvature and of refraction in the height; positive raises it.")),
        "d_azim": Meaning(tr("Change of azimuth"), "°", tr("What closing added to the azimuth of the leg.")),
        "d_length": Meaning(tr("Change of length"), "m", tr("What closing added to the length of the leg.")),
        "dd_half": Meaning(tr("Range of dip direction, half"), "°", tr("Half of the 95 percent range of the dip direction.")),
        "decl": Meaning(tr("Declination"), "°", tr("Azimuth of magnetic north from true north at the place and date, east positive.")),
        "decl_from": Meaning(tr("Declination from"), "", tr("IGRF-14, WMM2025 and so on: the model; given; none where none was needed.")),
        "decl_year": Meaning(tr("Change of declination"), tr("° a year"), tr("Yearly change of the declination, eastward positive.")),
        "depth": Meaning(tr("Depth"), "m", tr("Depth of the plane straight below the ground; negative where it is above ground.")),
        "dip": Meaning(tr("Dip"), "°", tr("Dip of the plane, 0 to 90, downward.")),
        "dip_away": Meaning(tr("Distance to the attitude"), "m", tr("How far from the crossing its attitude was measured.")),
        "dip_dir": Meaning(tr("Dip direction"), "°", tr("Azimuth toward which the plane dips, from true north; empty for a level plane.")),
        "dip_from": Meaning(tr("Attitude from"), "", tr("own: of the contact itself; named: nearest of the same name; nearest: nearest of all.")),
        "dip_hi": Meaning(tr("Dip, upper bound"), "°", tr("Upper end of the 95 percent range of the dip.")),
        "dip_lo": Meaning(tr("Dip, lower bound"), "°", tr("Lower end of the 95 percent range of the dip.")),
        "distance": Meaning(tr("Distance along the section"), "m", tr("Ground distance from the beginning of the section.")),
        "drift": Meaning(tr("Drift"), tr("° a year"), tr("Yearly change of the index error, positive where more has to be added each year.")),
        "element": Meaning(tr("Element"), "", tr("Which quantity of the magnetic field the line is of.")),
        "elev": Meaning(tr("Height"), "m", tr("Height above sea level, never exaggerated.")),
        "elev_ang": Meaning(tr("Vertical angle"), "°", tr("Angle of the sight above the horizon; negative below.")),
        "elev_max": Meaning(tr("Greatest height"), "m", tr("Of the ground along the line, above sea level.")),
        "elev_min": Meaning(tr("Least height"), "m", tr("Of the ground along the line, above sea level.")),
        "ell_azim": Meaning(tr("Azimuth of the ellipse"), "°", tr("Azimuth of the long axis from true north, 0 to 180.")),
        "evid_text": Meaning(tr("Evidence in words"), "", tr("What speaks for the suspicion, in words.")),
        "evidence": Meaning(tr("Evidence"), "", tr("How many times likelier the best repair is than the row as it stands, at most a million.")),
        "f_nt": Meaning(tr("Total intensity"), "nT", tr("Strength of the magnetic field.")),
        "fault_name": Meaning(tr("Fault"), "", tr("Name of the fault that cuts the contact off.")),
        "first_date": Meaning(tr("First date"), "", tr("First day that was read.")),
        "fore_corr": Meaning(tr("Fore bearing, corrected"), "°", tr("From true north, freed of local attraction.")),
        "fore_read": Meaning(tr("Fore bearing as read"), "°", tr("As read, 0 to 360.")),
        "from_m": Meaning(tr("From"), "m", tr("Where the stretch begins, along the line.")),
        "grade": Meaning(tr("Grade"), tr("%"), tr("Rise over run along the line; upward positive.")),
        "grid_mag": Meaning(tr("Grid magnetic angle"), "°", tr("What is added to a magnetic azimuth to plot it on the grid: declination minus convergence, east positive.")),
        "group": Meaning(tr("Group"), "", tr("Name of the points or sights that belong together.")),
        "h_below": Meaning(tr("Below"), "nT", tr("The horizontal field is weaker than this in the area.")),
        "h_nt": Meaning(tr("Horizontal intensity"), "nT", tr("Strength of the magnetic field along the horizon, which turns the needle.")),
        "half_band": Meaning(tr("Half of the band"), "m", tr("Half of the width within which the construction is uncertain, 1-sigma.")),
        "hole": Meaning(tr("Hole"), "", tr("Name of the borehole.")),
        "hole_angle": Meaning(tr("Angle at the plane"), "°", tr("Angle between the hole and the plane, 0 to 90.")),
        "hole_len": Meaning(tr("Length of the hole"), "m", tr("Length along the hole from its mouth.")),
        "in_air": Meaning(tr("Above ground"), "", tr("1 where the construction lies above the ground, else 0.")),
        "incl": Meaning(tr("Inclination"), "°", tr("Dip of the magnetic field below the horizon; downward positive.")),
        "incl_down": Meaning(tr("Inclination of the hole"), "°", tr("Angle of the hole below the horizon, 0 to 90.")),
        "index_err": Meaning(tr("Index error"), "°", tr("What must be added to the readings of the compass, clockwise positive.")),
        "kind": Meaning(tr("Kind"), "", tr("Kind of structure, as the data dictionary spells it.")),
        "label": Meaning(tr("Label"), "", tr("Dip or plunge as printed beside the symbol; empty at 0 and 90, whose symbols say it.")),
        "last_date": Meaning(tr("Last date"), "", tr("Last day that was read.")),
        "leg": Meaning(tr("Leg"), "", tr("Number of the leg of the section, counted from 1.")),
        "leg_azim": Meaning(tr("Azimuth of the leg"), "°", tr("Azimuth in which the section is drawn at this place, from true north.")),
        "length": Meaning(tr("Length"), "m", tr("Horizontal length on the ground.")),
        "length_adj": Meaning(tr("Length, adjusted"), "m", tr("Horizontal length of the leg after the traverse was closed.")),
        "line": Meaning(tr("Line"), "", tr("best: the trace itself; plus and minus: the bounds that the uncertainty leaves.")),
        "line_az": Meaning(tr("Azimuth of the line"), "°", tr("Azimuth from base to top, from true north.")),
        "line_end": Meaning(tr("Why the line ends"), "", tr("What ended the line: its length, the DEM, or ground that is too gentle.")),
        "map_width": Meaning(tr("Width on the map"), "m", tr("Horizontal distance from base to top.")),
        "method": Meaning(tr("Method"), "", tr("How the attitude was had: compass, points_dem, trace_dem, sighting.")),
        "moved": Meaning(tr("Moved by closing"), "m", tr("How far the station was moved when the traverse was closed.")),
        "n_legs": Meaning(tr("Legs"), "", tr("Number of legs at the station.")),
        "n_planes": Meaning(tr("Attitudes used"), "", tr("Number of attitudes the mean was taken of.")),
        "n_points": Meaning(tr("Points"), "", tr("Number of points the plane was laid through.")),
        "n_rays": Meaning(tr("Rays"), "", tr("Number of bearings the place was fixed from.")),
        "n_read": Meaning(tr("Readings"), "", tr("Number of readings of the compass.")),
        "n_sun": Meaning(tr("Sights of the sun"), "", tr("Number of the readings used that are of the sun.")),
        "n_used": Meaning(tr("Readings used"), "", tr("Number of readings the index error was taken from.")),
        "off_index": Meaning(tr("Off the index error"), "°", tr("What would have to be added to the reading beside the index error.")),
        "offset": Meaning(tr("Offset"), "m", tr("How far the datum was carried; positive from the right of the section.")),
        "plane_away": Meaning(tr("Distance to the plane"), "m", tr("How far from here the plane was measured.")),
        "plane_elev": Meaning(tr("Height of the plane"), "m", tr("Height of the plane above sea level at this place.")),
        "plane_name": Meaning(tr("Name of the plane"), "", tr("Name of the plane that was used.")),
        "plane_row": Meaning(tr("Row of the plane"), "", tr("Id of the row of the plane that was used.")),
        "plot_scale": Meaning(tr("Smallest scale"), "", tr("Denominator of the smallest scale at which the row is printed; 0 and empty: always.")),
        "plunge": Meaning(tr("Plunge"), "°", tr("Plunge of the line, 0 to 90, downward.")),
        "polarity": Meaning(tr("Polarity"), "", tr("upright, overturned or unknown.")),
        "range": Meaning(tr("Range"), "m", tr("Horizontal distance to where the sight meets the ground.")),
        "range_hi": Meaning(tr("Range, angle one sigma higher"), "m", tr("Empty where such a sight meets no ground.")),
        "range_lo": Meaning(tr("Range, angle one sigma lower"), "m", tr("Empty where such a sight meets no ground.")),
        "read_date": Meaning(tr("Date"), "", tr("Date that was used for the reading.")),
        "remark": Meaning(tr("Remark"), "", tr("What was noticed, in sentences.")),
        "res_after": Meaning(tr("Residual, corrected"), "°", tr("Back bearing minus fore bearing minus 180, after the corrections for attraction.")),
        "res_before": Meaning(tr("Residual as read"), "°", tr("Back bearing minus fore bearing minus 180, as read.")),
        "residual": Meaning(tr("Residual"), "°", tr("What would have to be added to the bearing to meet the place.")),
        "ring_set": Meaning(tr("Ring setting"), "°", tr("Declination dialled into the compass, east positive; empty where the reading is not magnetic.")),
        "rise": Meaning(tr("Rise"), "m", tr("Height of the end of the leg above its start.")),
        "rms": Meaning(tr("Root mean square"), tr("m or °"), tr("Spread about the fit: metres for points about a plane, degrees for bearings.")),
        "rule": Meaning(tr("Rule of carrying"), "", tr("perpendicular, along_strike or along_axis.")),
        "section": Meaning(tr("Section"), "", tr("Name of the section.")),
        "semi_major": Meaning(tr("Long half axis"), "m", tr("Of the ellipse that holds the place with 95 percent probability.")),
        "semi_minor": Meaning(tr("Short half axis"), "m", tr("Of the ellipse that holds the place with 95 percent probability.")),
        "sig_across": Meaning(tr("Uncertainty sideways"), "m", tr("1-sigma that the bearing leaves, across the sight.")),
        "sig_add": Meaning(tr("Uncertainty of what to add"), "°", tr("1-sigma of to_add.")),
        "sig_attr": Meaning(tr("Uncertainty of the attraction"), "°", tr("1-sigma of attr_corr.")),
        "sig_az": Meaning(tr("Uncertainty of the azimuth"), "°", tr("1-sigma of the true azimuth.")),
        "sig_clock": Meaning(tr("Uncertainty by the clock"), "°", tr("What the clock's error adds, 1-sigma.")),
        "sig_decl": Meaning(tr("Uncertainty of the declination"), "°", tr("1-sigma of the declination.")),
        "sig_depth": Meaning(tr("Uncertainty of the depth"), "m", tr("1-sigma of the depth.")),
        "sig_drift": Meaning(tr("Uncertainty of the drift"), tr("° a year"), tr("1-sigma of the drift.")),
        "sig_elev": Meaning(tr("Uncertainty of the height"), "m", tr("1-sigma of the height.")),
        "sig_hole": Meaning(tr("Uncertainty along the hole"), "m", tr("1-sigma of the length at which the hole meets the plane.")),
        "sig_index": Meaning(tr("Uncertainty of the index error"), "°", tr("1-sigma of the index error.")),
        "sig_meet": Meaning(tr("Uncertainty of the meeting"), "m", tr("1-sigma of the place where the hole meets the plane.")),
        "sig_pole": Meaning(tr("Uncertainty of the pole"), "°", tr("1-sigma of the direction of the pole, or of the line.")),
        "sig_pos": Meaning(tr("Uncertainty of the place"), "m", tr("1-sigma in easting and in northing.")),
        "sig_thick": Meaning(tr("Uncertainty of the thickness"), "m", tr("1-sigma of the thickness.")),
        "sig_turn": Meaning(tr("Uncertainty of the turn"), "°", tr("1-sigma of the turn.")),
        "sig_used": Meaning(tr("Uncertainty used"), "°", tr("1-sigma of the pole that the bounds were drawn with.")),
        "slope": Meaning(tr("Slope"), "°", tr("Slope from base to top; upward positive.")),
        "spread": Meaning(tr("Scatter of a reading"), "°", tr("1-sigma of one reading of the compass.")),
        "station": Meaning(tr("Station"), "", tr("Name of the station.")),
        "status": Meaning(tr("Status"), "", tr("ok, warning or rejected.")),
        "strike": Meaning(tr("Strike"), "°", tr("Azimuth from true north with the dip to the right, 0 to 360; empty for a level plane.")),
        "sun_alt": Meaning(tr("Height of the sun"), "°", tr("Angle above the horizon as seen, lifted by the air.")),
        "sun_azim": Meaning(tr("Azimuth of the sun"), "°", tr("Azimuth of the sun's centre from true north, 0 to 360.")),
        "sun_local": Meaning(tr("Local time"), "", tr("Time on the clock, with its zone.")),
        "sun_rate": Meaning(tr("Rate of the azimuth"), tr("° a minute"), tr("How fast the sun's azimuth grows.")),
        "sun_read": Meaning(tr("Reading due"), "°", tr("What a sound compass shows toward the sun.")),
        "sun_shadow": Meaning(tr("Azimuth of the shadow"), "°", tr("Azimuth of a shadow from true north, 0 to 360.")),
        "sun_utc": Meaning(tr("Universal time"), "", tr("Time in UTC.")),
        "suspicion": Meaning(tr("Suspicion"), "", tr("The slips that are suspected, with ; between them; empty where none is.")),
        "symbol": Meaning(tr("Symbol"), "", tr("FGDC reference number of the symbol; those that begin with ag. are our own.")),
        "target": Meaning(tr("Sighted"), "", tr("Whether the reading is along a known line or of the sun: line, sun.")),
        "target_el": Meaning(tr("Height of the target"), "m", tr("Height of the place where the hole meets the plane, above sea level.")),
        "thickness": Meaning(tr("True thickness"), "m", tr("At right angles to the bedding.")),
        "thinness": Meaning(tr("Thinness"), "", tr("Second over first singular value of the points: 1 for a round group, 0 for a line.")),
        "tick": Meaning(tr("Kind of tick"), "", tr("inclined, overturned, vertical or line.")),
        "to_add": Meaning(tr("To be added"), "°", tr("What must be added to the reading to reach the known azimuth, clockwise positive.")),
        "to_dist": Meaning(tr("To, along the section"), "m", tr("Where the stretch ends; for points the same as distance.")),
        "to_m": Meaning(tr("To"), "m", tr("Where the stretch ends, along the line.")),
        "trend": Meaning(tr("Trend"), "°", tr("Azimuth of the line from true north, toward its downward end; empty for a vertical line.")),
        "turn": Meaning(tr("Turn"), "°", tr("What must be added to all bearings to make them agree, clockwise positive.")),
        "unit": Meaning(tr("Unit"), "", tr("Code of the map unit.")),
        "unit_color": Meaning(tr("Colour of the unit"), "", tr("Colour on the map, as #rrggbb.")),
        "unit_name": Meaning(tr("Name of the unit"), "", tr("Name of the map unit.")),
        "unit_order": Meaning(tr("Order of the unit"), "", tr("Place in the sequence, 1 for the youngest unit on the map.")),
        "value": Meaning(tr("Value"), tr("as element"), tr("Value of the element along the line; of the declination in degrees, east positive.")),
        "value_text": Meaning(tr("Value as printed"), "", tr("The value as it stands beside the line.")),
        "ve": Meaning(tr("Vertical exaggeration"), "", tr("Height scale over length scale of the section.")),
        "what": Meaning(tr("What it is"), "", tr("What the line or area is: ground, contact, fault, unit, hole or axis.")),
        "where": Meaning(tr("Where"), "", tr("below_ground: still in the ground; above_ground: worn away.")),
        "zone": Meaning(tr("Zone"), "", tr("blackout: a compass fails; caution: a needle is sluggish.")),
    }
    # fmt: on
