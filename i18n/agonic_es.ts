<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
  <context>
    <name>Agonic</name>
    <message>
      <location filename="../plugin/plugin.py" />
      <source>Correct compass readings…</source>
      <translation>Corregir lecturas de brújula…</translation>
    </message>
    <message>
      <location filename="../plugin/plugin.py" />
      <source>Help</source>
      <translation>Ayuda</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>North</source>
      <translation>Norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Readings</source>
      <translation>Lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows read</source>
      <translation>Filas leídas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows done, with or without a warning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows done with a warning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows rejected</source>
      <translation>Filas rechazadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>The input's field {old} is called {new} in the output.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>There is no parameter {key}. Was {near} meant?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>There is no parameter {key}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key}: the layer has no field {name}. It has: {names}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal bedding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical bedding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, approximate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical bedding, approximate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known, approximate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding, approximate</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal bedding, upside down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal cleavage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined cleavage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical cleavage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal igneous foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined igneous foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical igneous foliation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal joint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined joint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical joint</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal fault plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined fault plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical fault plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal vein</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined vein</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical vein</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal dike or sill</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined dike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical dike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal contact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined contact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical contact</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal axial plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined axial plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical axial plane</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal plane of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined plane of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical plane of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal lineation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging lineation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical lineation</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal slickenline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging slickenline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical slickenline</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal axis of a small fold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging axis of a small fold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical axis of a small fold</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal line of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging line of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical line of another kind</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>No reading: row rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Symbol not in this list, or direction missing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Date of the readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Used for rows without a date of their own. There is no silent today.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Date of each row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>A date field, or text such as 2026-06-01, 1 Jun 2026, 2026-06 or 1987.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Order of numeric dates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>iso: year first. dmy: day, month, year. mdy: month, day, year. With iso, 1/6/2026 is ambiguous and rejected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>igrf14: 1900 to 2030, the one for old and new readings alike. wmm2025 and wmmhr2025: 2025 to 2030, the second with the field of the crust in finer detail.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>given: you state the declination.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>Model of the magnetic field</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>North the readings are counted from</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>magnetic: read with a compass. true: already corrected, as by many phones. grid: taken off a map's grid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>North of each row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with magnetic, true or grid (or m, t, g) for each row. Empty rows use the north chosen above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Your words for the norths</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Such as: compass=magnetic;phone=true;sheet=grid</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Grid of the grid readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>CRS whose grid north the grid readings are counted from. Left empty: the layer's own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Ring setting of the compass</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Declination already dialled into the compass, in degrees, east positive. 0: the ring is not set, the compass shows magnetic azimuths.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Ring setting of each row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with the ring setting. Empty rows use the ring setting above.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Given declination</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Degrees, east positive; used for all magnetic rows when the model is given.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Given declination of each row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with the declination, east positive. A row that has one uses it, whatever the model; others use the model.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Uncertainty of a given declination</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>1-sigma, degrees.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Height of each row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Metres above sea level; it hardly matters for declination. Empty rows use 0.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>MODEL is given, so DECLINATION or DECLINATION_FIELD is needed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>DECLINATION is used only when MODEL is given; choose one of the two.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>NORTH_WORDS: {entry} is none of {allowed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>The declination changes from year to year, so the readings need a date: give DATE or DATE_FIELD, or set MODEL to given and state the declination. No row has a date.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No reading: the {column} is empty or a number that stands for none ({value}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Azimuth {value} is outside 0 to {limit}. {unit_hint}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Quadrant bearing {value}: the angle is over 90. {suggestion}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Dip or plunge {value} is outside 0 to 90.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} is outside 0 to {limit}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} has no strike to be counted from, since the plane is horizontal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} was not used, since the row is a plane.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The letter {letter} lies along the strike {azimuth}, so it does not tell the side of the dip; the nearest valid readings are {first} and {second}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row says two things: {written} is written where {expected} is expected. {left_hand}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{value} does not say to which side the plane dips.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The {column} {value} cannot be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The pair {value} cannot be told: which number is the azimuth, or what it means.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The comma in {value} may be decimal or may part two numbers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The kind is a plane but the reading is a line, or the other way round ({value}).</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{value} is a line with two ends; a trend or dip direction has one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Kind {value} is not known; read as {used}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Polarity {value} is not known; taken as unknown.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No date, so the declination is not known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value}: day and month cannot be told apart; state the order of the dates.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} cannot be read.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} is only a year or a month; its middle, {used}, was used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} is outside {first} to {last}, the years of {model}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Before 1945 the field was less well known; the stated uncertainty is optimistic.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The horizontal field is weak here ({h} nT); a needle is sluggish and declination uncertain.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The horizontal field is too weak here ({h} nT) for a compass; give the declination yourself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No position, so nothing that depends on the place is known.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No declination is given for this row.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Declination {value} is outside -180 to 180.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Ring setting {value} is outside -180 to 180.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Ring setting {value} is far from the declination {decl} and from its opposite; check it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Height {value} is no height on land in metres; 0 was used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>North {value} is not known as magnetic, true or grid.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The grid has no north here.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>All {rows} directions lie within 0 to 90. Are these quadrant bearings (N45W) read as azimuths?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{agree} of {rows} magnetic readings end in the same odd fraction ({residue} modulo a half). Hand readings sit on whole and half degrees: has a declination been applied already?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>In {count} of {rows} rows the given declination is far from the model's for that place and date; at worst {given} was given where the model says {model}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>In {count} of {rows} rows the given declination is about the opposite of the model's ({given} where the model says {model}): was west meant?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The declination given for {count} rows was not checked against a model: they have no dates or places.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>azimuth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>dip or plunge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>dip letter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>attitude</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>rake</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Is the unit {value}?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Was {value} meant?</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>It is the dip direction of a strike with the dip to its left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{code}: {count} rows, first ids {ids}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{read} rows read: {done} done, {warned} of them with a warning, {rejected} rejected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/report.py" />
      <source>The report could not be written: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/report.py" />
      <source>These results support, and do not replace, licensed professional judgement and local codes. Magnetic readings fail near iron, vehicles, power lines and some rocks, and during magnetic storms; no model of the Earth's field knows of them. Check readings against a second sight before anything is drilled, dug or built on them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/schema.py" />
      <source>The output cannot hold the field {name}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>Rows could not be written to {place}: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>the file refused them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/gis/styling.py" />
      <source>The style could not be stored: {reason}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>North angles at points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>For every point and date: declination (true to magnetic north), inclination, horizontal and total intensity, yearly change and uncertainty of the declination, meridian convergence (true to grid north) and the angle from grid north to magnetic north. All angles are in degrees, east positive.

grid_mag is what you add to a magnetic azimuth to plot it on the grid of the layer's CRS, exact where the projection keeps angles. Positions come from the geometry. Rows without a date, a position or a field strong enough for a compass come out with status rejected and the reason in remark.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Points</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Any point layer. Positions are taken from the geometry, in the layer's CRS.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Metres above sea level, for rows without a height of their own.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Metres above sea level.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>North angles</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>The points with decl, incl, h_nt, f_nt, decl_year, sig_decl, converg, grid_mag and where they are from.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>The layer has no coordinate reference system that leads to places on Earth.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>No row has a date: give DATE or DATE_FIELD. There is no silent today.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Correct compass readings</source>
      <translation>Corregir lecturas de brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Carries readings of a needle compass to true attitudes: reads the notation you wrote, takes the declination of each place and date, allows for the setting of the compass ring, and draws strike-and-dip symbols that point the right way in the map's own projection.

Say first how the readings are written (notation) and which fields hold them. true = reading + (D - S), where D is the declination and S the ring setting, both east positive.

Every row comes out. A row that cannot be used keeps its place and its attributes, has empty results, its own mark on the map, and the reason in the field remark. The report counts them and gives a sentence for the methods section of a paper.

Results support, and do not replace, licensed professional judgement. Magnetic readings fail near iron, power lines and in magnetic storms.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Stations with readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Point layer, one row a reading. Positions are taken from the geometry.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Attitudes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>The input's fields, then true strike, dip, trend, plunge, uncertainties, symbol and what was noticed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Report</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>HTML files (*.html)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Counts, declinations, ring settings, rejected rows and a sentence for the methods section.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Least declination used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Greatest declination used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Notation: how the readings are written</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>strike_right: strike with the dip to the right. strike_left: strike with the dip to the left. strike_letter: strike, dip and a letter such as SE for the side of the dip. dip_direction: azimuth of the dip, and dip. line: trend and plunge. text: the whole attitude in one field, such as N45E/30SE.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Azimuth</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Strike, dip direction or trend as read: a number, or text such as N45W.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Dip or plunge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>0 to 90, a number, or text with a letter such as 30SE.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Dip letter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Side of the dip: N, NE, E and so on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Attitude as text</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>For the notation text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>What a bare pair such as 045/30 means</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Needed only where text rows give two numbers and no letter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Kind of structure</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Such as bedding, joint, lineation.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Your words for the kinds</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Your word = kind, such as S0=bedding;S1=cleavage;L1=lineation. Kinds: {kinds}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Kind of rows that do not say</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Used where the field is empty.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Polarity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>upright or overturned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Your words for polarity</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Such as: ok=upright;inv=overturned</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Dips over 90 mean overturned</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Reads 110 as a dip of 70 toward the other side, overturned. Otherwise such rows are rejected.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Rake (pitch)</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Of lines measured in a plane; azimuth and dip of the row are then the plane.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>How the rake is counted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>from_strike: 0 to 180 from the strike that has the dip to its right. with_letter: 0 to 90 and the letter of the end it is counted from, such as 65NE.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Unit of the azimuths</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>degree, gon (400 to the circle) or mil6400 (6400 to the circle). Dips are in degrees.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Numbers that mean no reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Only for azimuth and dip.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Uncertainty of a reading</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>1-sigma, degrees. 2 is usual for a hand-held compass on a natural surface.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Go on although the azimuths look corrected already</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>A layer that this tool wrote holds true azimuths; correcting them again doubles the correction.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Say how the readings are written: NOTATION is one of {words}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Notation {notation} needs {key}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>RAKE_FIELD is given, so RAKE_MEANS must say how the rake is counted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>{key}: {entry} does not end in one of {allowed}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>NULL_VALUES: {entry} is no number.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Rows that do not say their kind are read as {kind}, since the notation is line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>The field {name} of this layer was already corrected to true north (the layer has azim_read and correction). Use azim_read, set NORTH to true, or set FORCE to go on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Compass readings corrected to true north</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>For the methods section</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Renamed fields</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>These fields of the input have names of the output; their values are unchanged.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>in the input</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>in the output</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>status</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>ok</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>warning</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>rejected</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>read in all</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Look at this first</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>code</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>what was noticed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>What was noticed, row by row</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>first row ids</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>for example</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Declination</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>rows by source of their declination</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>declination used, east positive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>dates</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>ring setting of the compass, east positive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>grid of the grid readings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>what</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>value</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>none</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{low}° to {high}°</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>none used</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{first} to {last}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>ring taken as 0 in {count} rows, since nobody set it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{setting}° in {count} rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>no magnetic rows</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Of {read} field readings (notation {notation}), {done} were reduced to true north.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Declinations at each place and date ({dates}) are from {model} and run from {span}.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{count} readings use a declination given by the mapper.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>The compass ring was taken as set to 0 unless noted otherwise.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>A reading's uncertainty is taken as {sigma}° (1-sigma); {rejected} readings were rejected.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
