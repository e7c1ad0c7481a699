"""What was noticed about rows: codes for machines, sentences for people, counts for the run."""

import numpy as np

from ..core import noticed
from ..core.noticed import OK, REJECTED, WARNING
from .i18n import tr

__all__ = ["LONGEST", "OK", "REJECTED", "WARNING", "Notes", "Tally", "run_sentences", "run_warning", "sentences"]

LONGEST = 254  # characters of a remark: what a Shapefile holds


def sentences():
    """The sentence of every code, with the values it names in braces.

    Returns
    -------
    dict
        Code to translated sentence.
    """
    return {
        "null_value": tr("No reading in the {column}: it is empty, or a number that stands for none."),
        "azimuth_range": tr("Azimuth {value} is outside 0 to {limit}. {unit_hint}"),
        "quadrant_range": tr("Quadrant bearing {value}: the angle is over 90. {suggestion}"),
        "dip_range": tr("Dip or plunge {value} is outside 0 to 90."),
        "rake_range": tr("Rake {value} is outside 0 to {limit}."),
        "rake_no_strike": tr("Rake {value} has no strike to be counted from, since the plane is horizontal."),
        "rake_unused": tr("Rake {value} was not used, since the row is a plane."),
        "letter_along_strike": tr(
            "The letter {letter} lies along the strike {azimuth}, so it does not tell the side of the dip; the nearest "
            "valid readings are {first} and {second}."
        ),
        "letter_conflict": tr(
            "The row says two things: {written} is written where {expected} is expected. {left_hand}"
        ),
        "no_side": tr('"{value}" does not say to which side the plane dips.'),
        "unreadable": tr('The {column} "{value}" cannot be read.'),
        "other_letters": tr(
            '"{value}" has compass letters of another language; the choices {choices} of COMPASS_LETTERS would read it.'
        ),
        "pair_undefined": tr(
            'In the pair "{value}" nothing tells which number is the azimuth, or what the azimuth means.'
        ),
        "comma_unclear": tr('The comma in "{value}" may be decimal or may part two numbers.'),
        "kind_conflict": tr("The kind is a plane but the reading is a line, or the other way round ({value})."),
        "axis_not_direction": tr("{value} is a line with two ends; a bearing, trend or dip direction has one."),
        "kind_unknown": tr('The kind "{value}" is not known; read as {used}.'),
        "polarity_unknown": tr('The polarity "{value}" is not known; taken as unknown.'),
        "quality_unreadable": tr('The quality "{value}" is no number of degrees; the reading is taken as good.'),
        "type_unknown": tr('The type "{value}" is not known; the line is drawn as one of no known type.'),
        "type_unlisted": tr('The type "{value}" is not known; it is kept as written, and its definition is missing.'),
        "rejected_before": tr("The row was rejected by the run that made it, so it is left out."),
        "convention_unknown": tr(
            'The Glossary does not say what Azimuth means for "{value}", and no convention was chosen for that case.'
        ),
        "unit_none": tr("No unit is named for this area."),
        "unit_unknown": tr('The unit "{value}" is not in the table of units.'),
        "location_unknown": tr('"{value}" does not say how well the line is located; drawn as approximate.'),
        "width_unknown": tr("How far the line may lie off is not known; drawn as approximate."),
        "concealed_unknown": tr('"{value}" does not say whether the line is concealed; taken as no.'),
        "confidence_unknown": tr('The confidence "{value}" is not known; drawn as questionable.'),
        "no_date": tr("No date, so the declination is not known."),
        "check_other_ring": tr(
            "The ring was set to {value} here, and to something else when the compass was checked; its index error may "
            "be another."
        ),
        "check_ring_unset": tr(
            "Nobody stated the ring setting when the compass was checked, so its index error may hold the ring setting "
            "too."
        ),
        "date_ambiguous": tr(
            "Date {value} can be read in more than one way; write it like 2026-06-01, or state the order of day and "
            "month and write all four digits of the year."
        ),
        "date_serial": tr(
            "Date {value} looks like the day number of a spreadsheet; if it is one, choose serial as the order of "
            "numeric dates."
        ),
        "date_unreadable": tr('The date "{value}" cannot be read.'),
        "date_partial": tr("Date {value} is only a year or a month; its middle, {used}, was used."),
        "date_outside_model": tr("Date {value} is outside {first} to {last}, the years of {model}."),
        "old_model": tr("Before 1945 the field was less well known; the stated uncertainty is optimistic."),
        "weak_field": tr(
            "The horizontal field is weak here ({h} nT); a needle is sluggish and declination uncertain. Azimuths by "
            "the sun or by satellite, read as true, do not depend on it."
        ),
        "no_field": tr(
            "The horizontal field is too weak here ({h} nT) for a compass. What helps are azimuths by the sun or by "
            "satellite, read as true; or give the declination yourself."
        ),
        "no_position": tr(
            "No position on Earth: the row has no point, or the layer no coordinate reference system. Nothing that "
            "depends on the place is known."
        ),
        "no_declination": tr("No declination is given for this row."),
        "declination_nine": tr(
            "The declination -9 was taken as one; without a date nothing tells whether it stands for none."
        ),
        "declination_null": tr("The declination {value} stands for none; it was taken as not given."),
        "declination_range": tr(
            "Declination {value} is no number of degrees from -180 to 180; east is positive, west negative."
        ),
        "ring_range": tr(
            "Ring setting {value} is no number of degrees from -180 to 180; east is positive, west negative."
        ),
        "ring_far": tr("Ring setting {value} is far from the declination {decl} and from its opposite; check it."),
        "far_place": tr(
            "This place lies {distance} km from its third-nearest neighbour, far from all the rest: a digit lost, or "
            "easting and northing swapped?"
        ),
        "outside_area": tr("This place lies outside the area for which {crs} is meant. Is it the right one?"),
        "ring_assumed": tr("The ring setting is blank; {value}, stated before for this compass, was taken."),
        "ring_blank": tr(
            "The ring setting is blank, while other rows of this compass have one. Does it mean as above, or 0? Say so "
            "in RING_BLANK, or state it in RINGS."
        ),
        "height_range": tr("Height {value} is no height on land in metres; {used} was used."),
        "needle_unknown": tr('The end of the needle "{value}" is not known as north or south.'),
        "north_unknown": tr('The north "{value}" is not known as magnetic, true or grid.'),
        "no_grid": tr("{grid} has no grid north here. Which grid was the azimuth counted from? Say so in GRID_CRS."),
        "grade_cut": tr("After {value} m the DEM has no height; the line ends there."),
        "no_grade": tr("Around the station no direction near the bearing rises by {value} degrees."),
        "no_field_then": tr("{model} has no declination here at that time, so the reading of a compass is not known."),
        "no_time": tr("No time is given."),
        "no_zone": tr('The time "{value}" has no zone, so it is not known when it was; write it like 14:05+02:00.'),
        "sun_behind": tr("The ground of the DEM stands before the sun, whose altitude is {value} degrees."),
        "sun_down": tr("The sun is below the horizon ({value})."),
        "sun_high": tr("The sun stands {value} degrees high; over 60 its azimuth is hard to read."),
        "sun_low": tr("The sun stands {value} degrees high; below 5 it is hardly sighted over a level horizon."),
        "height_open": tr(
            "The object is {value} m high, but how well that is known is not: a sight one sigma off meets no ground."
        ),
        "top_below": tr("The top lies below the foot: the height is {value} m."),
        "attraction_far": tr(
            'The station "{value}" for which local attraction is known lies over 100 m away; nothing was added.'
        ),
        "attraction_near": tr("For local attraction {value} degrees were added, known {away} m away."),
        "station_apart": tr("Findings of this station lie {value} m apart."),
        "mag_ground": tr("The reading was taken {value} m from ground marked as magnetic (0: within it)."),
        "sun_word": tr('"{value}" is not known: a side of the sun is centre, left or right, a shadow yes or no.'),
        "sun_years": tr("The sun's place is known from 1900 to 2100, not in {value}."),
        "time_skipped": tr('The time "{value}" did not exist that day: the clocks were put forward.'),
        "time_twice": tr('The time "{value}" exists twice that day: the clocks were put back. Write its offset.'),
        "time_unreadable": tr('The time "{value}" cannot be read.'),
        "dem_gap": tr("The DEM has no height here, or not all along."),
        "no_coordinate": tr('The coordinate "{value}" in {column_name} cannot be read, so there is no place.'),
        "no_such_height": tr("Height {value} cannot be: heights here lie from {low} to {high} m."),
        "no_height": tr("No height is given for this row, and there is no DEM to take it from."),
        "few_points": tr("A plane needs 3 points of known place and height; there are {count}."),
        "collinear": tr(
            "The points spread across one line by only {across} m in all; with their errors {needed} m are needed."
        ),
        "thin_points": tr("The points are nearly on one line (thinness {value}), so the plane may turn about it."),
        "wide_dip": tr("The dip is hardly known: {low} to {high} degrees."),
        "rough_points": tr(
            "The points lie {value} m off the plane, more than their errors explain: a wrong height, or no one plane. "
            "The ranges were widened."
        ),
        "points_left_out": tr("Points without a place or a height were left out, ids {ids}."),
        "no_group": tr("These points do not say to which plane they belong."),
        "not_a_plane": tr("The row is a line, not a plane."),
        "sigma_range": tr("The uncertainty {value} is outside 0 to 90; {used} was used."),
        "dem_part": tr("The DEM covers only a part of the ground within the radius; lines end or are unknown there."),
        "no_outcrop": tr("The plane does not meet the ground within the radius."),
        "no_edge": tr("One edge of the band lies nowhere within the radius."),
        "no_frame": tr("The DEM's coordinate reference system has an edge within the radius."),
        "no_contours": tr("A horizontal plane has no contours, and those of a vertical one lie upon each other."),
        "many_contours": tr("The plane would have {count} contours; {most} is the most. Is the interval meant?"),
        "no_level": tr("No multiple of {interval} m lies within the reach of the plane over {radius} m."),
        "no_attitude": tr("No attitude lies within {distance} m of the line."),
        "no_mean": tr("The {count} attitudes around have no mean: none of their directions stands out."),
        "top_below_base": tr(
            "The line ends on the lower side of the bedding: overturned beds, or drawn from top to base, or a wrong "
            "dip."
        ),
        "plane_hardly_known": tr("The dip of its plane, {plane}, is hardly known: {low} to {high} degrees."),
        "plane_rough": tr("The pole of its plane, {plane}, is known to {value} degrees only (1-sigma)."),
        "plane_in_doubt": tr("Its plane, {plane}, is itself in doubt: {codes}."),
        "depth_uncertain": tr("The depth of {depth} m is known to {value} m only (1-sigma), over {share} % of it."),
        "above_ground": tr("The plane is {value} m above ground here; a hole does not meet it."),
        "vertical_plane": tr("The plane is vertical; a vertical hole does not meet it."),
        "no_plane": tr('No plane has the group "{value}".'),
        "bad_geometry": tr("The geometry is not valid: a line without length, or an outline that crosses itself."),
        "no_length": tr("The line has no length: it needs two different vertices."),
        "section_parts": tr("The line has {value} parts that do not follow one another."),
        "parallel": tr("The strike, or the direction of carrying, lies within 1 degree of the section's leg {leg}."),
        "end_on": tr("The line runs at right angles to the section's leg {leg} and would show as a point."),
        "arc_ends": tr("Arcs about a centre here cannot go on beyond it; beds meet in a kink."),
        "arrives_elsewhere": tr(
            "The contact {name}, followed from {place} m, arrives {value} m from where it was mapped."
        ),
        "axial_cross": tr(
            "Axial surfaces cross one another: the relief is steeper than they are. Do not trust the draft."
        ),
        "axis_along": tr("The section runs along the fold axis: the folds cannot be shown on it."),
        "beyond_arc": tr("A dip of {value} degrees lies beyond the arc of its neighbours and was not used."),
        "contacts_cross": tr("The contacts {one} and {two}, each down its own dip, cross here."),
        "contradict": tr("Two dips at one place contradict each other: {one} and {two} degrees in the section."),
        "deep": tr("The draft goes {depth} m down, but its dips are spread over {spread} m only."),
        "domain_ends": tr("The domain that dips {value} degrees ends here between its neighbours."),
        "fault_vertical": tr("The dip of {name} is not known; it was taken as vertical."),
        "along_plane": tr("The hole would meet its plane at {value} degrees only; {least} are the least."),
        "hole_long": tr("No ground is met, or known, within the longest hole of {most} m."),
        "in_section": tr("The plane of {name} lies in the section; it is not drawn."),
        "intrusive": tr("The contact {name} is intrusive; it is not drafted."),
        "no_dip": tr("No dip of the same block and sequence is near: {names} not drafted."),
        "oblique": tr(
            "The section lies {value} degrees off the mean dip direction, {most} is the most; give the fold axis."
        ),
        "one_dip": tr("A single dip is known here; beds were drawn straight."),
        "scattered": tr("The dips near {name} scatter more than their errors explain (1-sigma {sigma} degrees)."),
        "tangent": tr("The section only grazes {name}: its contacts lie where the map is least sure of them."),
        "thickness_differs": tr(
            "The thickness of {unit} is {least} to {most} m: it was not constant, or a dip is wrong."
        ),
        "unit_missing": tr("At the contact {name} the units {units} are missing: a fault, or not mapped?"),
        "across_fault": tr("At {count} places a fault lies between; nothing was carried across it."),
        "no_axis": tr("No fold axis holds here: the place lies in none of the areas of AXES."),
        "at_bend": tr("Beside a bend of the section, square to neither leg; carried to the vertex, {value} m away."),
        "point_unknown": tr('No known point is called "{value}".'),
        "point_twice": tr('More than one known point is called "{value}", at different places.'),
        "same_point": tr("Both ends of the line are the same point."),
        "rough_line": tr(
            "The line is {length} m long, so that its own azimuth is known to {sigma} degrees only; longer lines tell "
            "more."
        ),
        "reversed_reading": tr(
            "Off by {value} degrees, about half a turn: a reversed reading (wrong end of the needle, or ends swapped) "
            "is suspected. Nothing was changed; it was left out of the index error."
        ),
        "near_declination": tr(
            "Off by {value} degrees, about the declination {decl}: was it left out at one end, or applied already? "
            "Nothing was changed."
        ),
        "near_twice": tr(
            "Off by {value} degrees, about twice the declination {decl}: was it applied the wrong way? Nothing was "
            "changed."
        ),
        "stands_out": tr(
            "Lies {value} degrees from the other readings of this compass; they scatter by {sigma} degrees."
        ),
        "no_compass": tr("The row does not say with which compass it was read; such rows are taken as one compass."),
        "few_readings": tr("Readings used: {count}. Three or more along different lines tell an index error."),
        "drifts": tr("Its error changes by {value} degrees a year, more than the readings' uncertainty explains."),
        "index_found": tr(
            "Its error of {value} degrees is more than its uncertainty explains: to allow for it, subtract it from the "
            "ring setting."
        ),
        "no_hit": tr(
            "The ray meets no ground: it ends {value} m away, at the edge of the DEM or at the longest range."
        ),
        "grazing": tr(
            "The ray grazes the ground, so its range is hardly known: from {low} m to {high} for angles one sigma "
            "lower and higher."
        ),
        "near_hit": tr(
            "The ray meets the ground only {value} m away, within two cells of the DEM, which may show the station's "
            "own slope wrongly. Does something near hide the target?"
        ),
        "below_ground": tr(
            "The eye would be {value} m below the ground of the DEM. Is the station's height or place wrong?"
        ),
        "height_off_dem": tr("The height lies {value} m off the ground of the DEM. {guess}"),
        "no_station": tr("The leg does not say from which station it goes to which."),
        "same_station": tr("The leg ends at the station where it starts."),
        "no_distance": tr('The distance "{value}" is no length.'),
        "slope_range": tr('The vertical angle "{value}" is outside {low} to {high}. {fits}'),
        "no_slope": tr("No vertical angle: the leg was taken as level."),
        "opposed": tr(
            "Fore and back bearing differ by {value} degrees from being opposite; near 180 one of them is reversed. "
            "Which is not known, so neither was used."
        ),
        "strong_attraction": tr(
            "Fore and back bearing differ by {value} degrees from being opposite; local attraction is seldom so "
            "strong. Was one misread?"
        ),
        "fore_back": tr(
            "Fore and back bearing still differ by {value} degrees after the corrections for local attraction."
        ),
        "no_clean_line": tr(
            "No line free of local attraction leads here; the mean of fore bearing and back bearing was taken."
        ),
        "one_way": tr("Read one way only, at a station whose local attraction is not known."),
        "not_connected": tr("No chain of good legs leads here from the start."),
        "one_ray": tr("A place needs 2 rays at least."),
        "parallel_rays": tr("The rays run along one another within their errors and meet nowhere."),
        "behind": tr("The lines of the rays meet where the rays do not go: behind a station, or behind the observer."),
        "reversed_ray": tr(
            "All rays but that of row {ray} agree, and that one points the opposite way: a reversed reading is "
            "suspected. Nothing was changed."
        ),
        "danger_circle": tr(
            "Observer and landmarks lie near one circle, or the landmarks near one direction, so the turn cannot be "
            "told. The compass was trusted."
        ),
        "narrow_crossing": tr("The rays cross at {value} degrees only; under 30 the place is drawn out along them."),
        "rough_rays": tr(
            "The bearings disagree by {value} degrees, more than their errors explain, turned or not: a misread "
            "bearing, a wrong place or iron. The ellipse was widened."
        ),
        "weak_turn": tr("The turn is known to {sigma} degrees only (1-sigma), so the place is poor too."),
        "turn_found": tr(
            "The bearings agree only if {value} degrees are added to all of them (1-sigma {sigma}): the compass or the "
            "declination is off by as much. The place allows for it."
        ),
        "common_turn": tr(
            "The bearings agree much better if {value} degrees are added to all of them (1-sigma {sigma}): compass, "
            "ring or declination may be off by as much. The place would then lie {moved} m away, at {lat}, {lon}; it "
            "was not moved."
        ),
        "turn_unchecked": tr("With three bearings nothing is left over to check the turn by."),
        "rays_left_out": tr("Sights without a bearing or a known end were left out, ids {ids}."),
        "no_ray_group": tr("The sight does not say to which place it belongs."),
        "no_ray_height": tr("No sight has both a vertical angle and a known end of known height, so there is none."),
        "no_own_group": tr("The row names no group."),
        "outside_zones": tr("The reading lies in none of the zones."),
        "not_a_line": tr("The row is a plane, not a line."),
        "no_readings": tr("No reading of this group can be used."),
        "one_reading": tr("There is one reading only; it is given as it is, and nothing says how sure it is."),
        "few_in_group": tr("There are {count} readings; how sure a mean is needs {least}."),
        "no_group_mean": tr("None of the directions of these {count} readings stands out, so they have no mean."),
        "all_alike": tr("All {count} readings are alike, so nothing says how sure their mean is."),
        "like_uniform": tr(
            "Nothing tells these readings from an even spread (probability {value}); their mean says nothing."
        ),
        "girdle_mean": tr("The readings lie along a girdle, as those of folded beds do; their mean says little."),
        "no_girdle": tr("The poles of these {count} beds form no girdle, so there is no fold axis."),
        "wide_axis": tr("The axis is known to {value} degrees only (95 per cent)."),
        "conical": tr(
            "The poles want a cone, not a girdle (probability of a girdle {value}): one axis does not carry it far."
        ),
        "cone_undetermined": tr(
            "The poles are no girdle, but what cone they lie on is not determined; the axis is that of the girdle."
        ),
        "no_limbs": tr("The beds are no two limbs, so there is neither an interlimb angle nor a bisecting plane."),
        "facing_unknown": tr(
            "Which way up the beds of both limbs are is not known, so the interlimb angle is either of two."
        ),
        "round_fold": tr(
            "The limbs do not stand apart: the fold is rounded, and its limbs are two halves of its beds."
        ),
        "no_cleavage": tr("The group has no {kind}, or its mean is not defined."),
        "planes_parallel": tr("The planes meet at {value} degrees only; where they meet is hardly known."),
        "no_domain": tr("No fold axis fits here: the reading belongs to no domain."),
        "off_domain": tr("The reading lies {value} degrees off the girdle of its domain."),
        "narrow_parts": tr("The two lie {value} degrees apart only; under {least} what they give is hardly known."),
        "near_strike": tr(
            "The face lies {value} degrees from the strike only; under {least} an apparent dip says little."
        ),
        "parts_parallel": tr("The two are one line on the map, or parallel: they give nothing."),
        "part_missing": tr("One of the two parts is missing."),
        "near_trace": tr(
            "The slip lies {value} degrees from the trace of the marker on the fault; under {least} it says nothing "
            "about the slip."
        ),
        "sense_against": tr("The separation is that of the other sense than {value}. Was one of them misread?"),
        "no_sense": tr("No sense is given that the slip line can have; it was taken from the sign of the separation."),
        "line_off_plane": tr(
            "The slip line lies {value} degrees off the fault plane; it was carried onto it squarely."
        ),
        "place_empty": tr("Nothing says where the row is. {value}"),
        "place_unreadable": tr('The place "{value}" cannot be read.'),
        "place_range": tr(
            'The place "{value}" is outside its limits; packed degrees are read only where PACKED says so.'
        ),
        "place_unclear": tr('The place "{value}" can be read in more than one way, or contradicts itself.'),
        "place_outside": tr("The place {value} has no counterpart in the CRS of the output."),
        "place_coarse": tr("The place is known to a square of {size} m; its middle was taken."),
        "place_swapped": tr("The place {value} lies among the others if its two coordinates are changed about."),
        "place_sign": tr("The place {value} lies among the others with another sign: was a letter or a minus lost?"),
        "grid_swapped": tr('Easting and northing of "{value}" look swapped.'),
        "zone_unclear": tr(
            'The letter of the zone in "{value}" may be a band or a hemisphere; say which with ZONE_LETTER.'
        ),
        "zone_band": tr('The place "{value}" does not lie in the zone and band that it names.'),
        "grid_letters": tr('There is no square of 100 km with the letters of "{value}".'),
        "station_unknown": tr('The station "{value}" is not among the stations.'),
        "station_twice": tr('The station "{value}" stands for more than one place.'),
        "station_zeros": tr('The station "{value}" was found as "{used}".'),
        "header_again": tr("The row repeats the header: {value}"),
        "row_long": tr("The row has more than {columns} cells; beyond them stands {value}"),
        "text_after_rows": tr("The row is no reading: {value}"),
        "formula_error": tr('The column {column} holds the error of a formula, "{value}".'),
        "parts_differ": tr("The cells of the row hold different numbers of readings: {value}"),
        "suspect": tr("A blunder is suspected: {value}"),
        "row_twice": tr("Place, kind and reading are those of row {value} as well: was the row entered twice?"),
        "angle_unused": tr('The vertical angle "{value}" is outside {low} to {high}; it was not used. {fits}'),
    }


def run_sentences():
    """The sentence of every code about a run as a whole.

    Returns
    -------
    dict
        Code to translated sentence.
    """
    return {
        "quadrants_as_azimuths": tr(
            "All {rows} directions lie within 0 to 90. Are these quadrant bearings (N45W) read as azimuths?"
        ),
        "quadrant_letters": tr(
            "Letters of quadrants stand beside the numbers, in the fields {north} and {east} ({count} rows), and were "
            "not read: with them N 45 W is 315, not 45. Put the three together into one text."
        ),
        "looks_corrected": tr(
            "{agree} of {rows} magnetic readings end in the same odd fraction ({residue} modulo a half). Hand readings "
            "sit on whole and half degrees: has a declination been applied already?"
        ),
        "declination_far": tr(
            "In {count} of {rows} rows the given declination is far from the model's for that place and date; at worst "
            "{given} was given where the model says {model}."
        ),
        "declination_sign": tr(
            "In {count} of {rows} rows the given declination is about the opposite of the model's ({given} where the "
            "model says {model}): was west meant?"
        ),
        "declination_not_checked": tr(
            "The declination given for {count} rows was not checked against a model: they have no dates or places."
        ),
        "second_area": tr(
            "{count} rows lie together in two or three places far from all others: a second area, or wrong coordinates?"
        ),
        "zero_dips": tr("{count} of {rows} planes that have a strike have a dip of 0. Is 0 written for not measured?"),
        "turn_unseen": tr(
            "The stations of {count} places ({names}) are so placed that a turn common to all bearings would show in "
            "nothing but the place. Their ellipses hold one of {sigma} degrees at most (1-sigma), as declination and "
            "ring let expect."
        ),
        "traverse_open": tr(
            "The traverse neither returns to a station nor ends at a known point, so nothing checks its legs."
        ),
        "closure_large": tr(
            "The traverse misses by {gap} m over {around} m where it closes with the leg from {start} to {end}, more "
            "than the errors of its legs explain. Is a leg misread?"
        ),
        "back_turned": tr(
            "{count} of {rows} back bearings point the same way as their fore bearings: were they turned round before "
            "they were written down? Nothing was changed."
        ),
        "columns_swapped": tr(
            "Hardly any of {rows} places lies where its CRS is meant for, and nearly all would with easting and "
            "northing changed about: are the two columns swapped?"
        ),
        "encoding_assumed": tr(
            'The file is no UTF-8 (line {line}: "{text}"); it was read as {encoding}. If that is wrong, name its '
            "ENCODING."
        ),
        "separator_found": tr("The cells of the file are parted by: {separator}."),
        "header_second_row": tr('The header was found on line {line}, below "{text}".'),
        "header_blank": tr("Columns without a name were called {columns}."),
        "header_repeated": tr("The column name {name} stands there twice; the second is called {renamed}."),
        "blank_rows": tr("{count} empty lines were passed over, the first on line {line}."),
        "rows_short": tr("{count} rows have fewer cells than the header, the first on line {line}."),
        "decimal_comma": tr("A comma was read as the decimal sign in {columns}."),
        "packed_minutes": tr(
            "The decimals of {rows} azimuths end below .60, at most at {largest}: are they minutes (45.30 for 45 "
            "degrees 30 minutes)?"
        ),
        "digits_by_ten": tr(
            "{tens} of {rows} azimuths are whole tens: they were guessed to ten degrees rather than read, which adds "
            "{sigma} degrees to their uncertainty."
        ),
        "sentinel_pair": tr("{rows} rows have azimuth {azimuth} and dip {dip}: do they stand for no reading?"),
        "duplicated_rows": tr("{rows} rows repeat an earlier one: same place, kind and reading."),
        "no_back_bearings": tr("There are no back bearings, so local attraction was not looked for."),
    }


def run_warning(finding):
    """A warning about a run as a whole.

    Parameters
    ----------
    finding : blunders.Finding

    Returns
    -------
    tuple of (str, str)
        Code and sentence.
    """
    return finding.code, run_sentences()[finding.code].format_map(_Shown(finding.values))


class Notes(noticed.Notes):
    """What was noticed in one chunk of rows, and the sentences for it.

    Parameters
    ----------
    length : int
        Number of rows.
    noticed : iterable of Noticed
        What is known about them already.
    """

    def columns(self):
        """Status, codes and remarks of every row.

        Returns
        -------
        dict
            Columns ``status``, ``code`` and ``remark``: lists of length n. Code and remark are None where nothing was
            noticed.
        """
        remark, words = [None] * len(self), sentences() if self.found else {}
        for row, found in self.found.items():
            text = " ".join(_sentence(one, words) for one in found.values())
            remark[row] = text if len(text) <= LONGEST else text[: LONGEST - 3] + "..."
        return {"status": self.status(), "code": self.codes(), "remark": remark}


def _sentence(one, words):
    return words[one.code].format_map(_Shown(one.values)).strip()


class _Shown(dict):
    """Values as a geologist reads them: 95, not 95.0; a column by its name; a hint as a sentence of its own."""

    def __getitem__(self, key):
        value = super().__getitem__(key)
        if key == "column":
            return _column_names()[value]
        if key == "fits":
            return _fits(value)
        if key == "guess":
            return _guesses().get(value, "")
        if key in ("unit_hint", "suggestion", "left_hand"):
            return _hint(key).format(value=value) if value else ""
        return f"{float(value):.6g}" if isinstance(value, (float, np.floating)) else value


def _column_names():
    return {
        "azimuth": tr("azimuth"),
        "dip": tr("dip or plunge"),
        "side": tr("dip letter"),
        "text": tr("attitude"),
        "rake": tr("rake"),
        "angle": tr("vertical angle"),
        "ring": tr("ring setting"),
        "declination": tr("declination"),
        "distance": tr("distance"),
        "height": tr("height"),
    }


def _fits(means):
    """As what a number may be meant that is no vertical angle as stated."""
    words = {"degrees_up": tr("degrees up"), "zenith": tr("a zenith angle"), "percent": tr("a percentage")}
    named = [words[one] for one in means.split(";") if one]
    return tr("Is it {what}?").format(what=tr(" or ").join(named)) if named else ""


def _guesses():
    """What a height that is far from the ground may be instead."""
    return {
        "feet": tr("It fits if it was written in feet: set POINT_HEIGHT_UNIT."),
        "metres": tr("It fits if it was written in metres: set POINT_HEIGHT_UNIT."),
        "depth": tr("Is it a depth below the ground, written as a height?"),
        "null": tr("Does this number stand for no height? HEIGHT_NULLS would say so."),
        "": tr("Is the height wrong, or the place?"),
    }


def _hint(key):
    return {
        "unit_hint": tr("Is the unit {value}?"),
        "suggestion": tr("Was {value} meant?"),
        "left_hand": tr("It is the dip direction of a strike with the dip to its left."),
    }[key]


MOST_LISTED = 500  # rows that a report lists one by one


class Tally(noticed.Tally):
    """Counts over a whole run, by status and by code, and the lines that say them.

    Attributes
    ----------
    listed : list of (int, str, str, str)
        Id, status, codes and remark of the first rows that were rejected or warned.
    """

    def __init__(self):
        super().__init__()
        self.listed, self._names = [], {}

    def add(self, ids, notes, name_of=None):
        """Count the rows of a table.

        Parameters
        ----------
        ids : array_like of int, shape (n,)
        notes : Notes or Reduced
        name_of : callable, optional
            Takes a row's index and gives the name its reader knows it by, or None.
        """
        super().add(ids, notes)
        found = {}
        for one in notes.noticed:
            found.setdefault(one.row, []).append(one)
        texts = sentences() if found and len(self.listed) < MOST_LISTED else {}
        for row, said in sorted(found.items()):
            number = int(ids[row])
            if name_of is not None and (len(self.listed) < MOST_LISTED or number in self._first_ids()):
                name = name_of(row)
                if name:
                    self._names[number] = name
            if len(self.listed) < MOST_LISTED:
                status = REJECTED if notes.rejected[row] else WARNING
                codes = ";".join(dict.fromkeys(one.code for one in said))
                remark = " ".join(dict.fromkeys(_sentence(one, texts) for one in said))
                self.listed.append((number, status, codes, remark))

    def _first_ids(self):
        return {number for first in self.first.values() for number in first}

    def shown(self, number):
        """A row as its reader knows it: ``station 41 (row 4)``, or its number alone."""
        name = self._names.get(number)
        return str(number) if name is None else tr("{name} (row {number})").format(name=name, number=number)

    def sentence(self, code):
        """What was noticed by this code in the row with the least id, as a sentence."""
        return _sentence(self.example[code][1], sentences())

    def lines(self):
        """One line a code: how many rows and which come first.

        Returns
        -------
        list of str
        """
        return [
            tr("{code}: {count} rows, first ids {ids}").format(
                code=code, count=count, ids=", ".join(map(self.shown, self.first[code]))
            )
            for code, count in self.codes.most_common()
        ]

    def report(self, feedback):
        """Say the counts and the codes in the log.

        Parameters
        ----------
        feedback : QgsProcessingFeedback
        """
        feedback.pushInfo(
            tr("{read} rows read: {done} done, {warned} of them with a warning, {rejected} rejected.").format(
                read=self.read, done=self.done, warned=self.status[WARNING], rejected=self.status[REJECTED]
            )
        )
        for line in self.lines():
            feedback.pushWarning(line)
