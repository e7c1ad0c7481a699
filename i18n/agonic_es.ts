<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
  <context>
    <name>Agonic</name>
    <message>
      <location filename="../plugin/after_run.py" />
      <source>Show rejected</source>
      <translation>Mostrar rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/after_run.py" />
      <location filename="../processing_algs/entries.py" />
      <source>Report</source>
      <translation>Informe</translation>
    </message>
    <message>
      <location filename="../plugin/after_run.py" />
      <source>{done} done, {rejected} rejected</source>
      <translation>{done} hechas, {rejected} rechazadas</translation>
    </message>
    <message>
      <location filename="../plugin/after_run.py" />
      <source>, {warned} of those done with a warning</source>
      <translation>, {warned} de las hechas con advertencia</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>{name}: {value} is no number.</source>
      <translation>{name}: {value} no es un número.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>{name}: {value} is outside 0 to 90.</source>
      <translation>{name}: {value} está fuera de 0 a 90.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>{name}: {value} is none of {allowed}.</source>
      <translation>{name}: {value} no es ninguno de {allowed}.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>Whose coordinates are these? Name their coordinate reference system, such as crs:='EPSG:25832'.</source>
      <translation>¿De qué sistema son estas coordenadas? Indique su sistema de referencia de coordenadas, por ejemplo crs:='EPSG:25832'.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>There is no coordinate reference system {name}.</source>
      <translation>No existe el sistema de referencia de coordenadas {name}.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>{name} leads to no places on Earth.</source>
      <translation>{name} no lleva a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>The place is no geometry; use @geometry, $geometry or make_point(x, y).</source>
      <translation>El lugar no es una geometría; use @geometry, $geometry o make_point(x, y).</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>The place is no point; a point of a line or an area is centroid(@geometry).</source>
      <translation>El lugar no es un punto; un punto de una línea o de un área es centroid(@geometry).</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>The point lies outside what its coordinate reference system can show.</source>
      <translation>El punto queda fuera de lo que su sistema de referencia de coordenadas puede representar.</translation>
    </message>
    <message>
      <location filename="../plugin/expression_values.py" />
      <source>"{value}" is a line, not a plane.</source>
      <translation>«{value}» es una línea, no un plano.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>This cannot be used: {reason}</source>
      <translation>Esto no se puede usar: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>The coordinates are the layer's, unless crs names others.</source>
      <translation>Las coordenadas son las de la capa, salvo que crs indique otras.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>The text is a plane as written in the field, such as N45E/30SE or 045/30SE; azimuths stay as they were read, nothing is corrected. A pair without letters (045/30) needs pair_means: {means}. letters is {letters}. A text that can be read in two ways is an error.</source>
      <translation>El texto es un plano como se anota en el campo, por ejemplo N45E/30SE o 045/30SE; los azimutes quedan como se leyeron, nada se corrige. Un par sin letras (045/30) necesita pair_means: {means}. letters es {letters}. Un texto que admite dos lecturas es un error.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Magnetic declination at a point and date, east positive, in degrees. Height in metres above sea level. NULL without a place or date; an error for a date outside the model, and where the field is too weak for a needle.</source>
      <translation>Declinación magnética en un punto y una fecha, positiva al este, en grados. Altura en metros sobre el nivel del mar. NULL sin lugar o sin fecha; un error para una fecha fuera del modelo y donde el campo es demasiado débil para una aguja.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Meridian convergence at a point: azimuth of grid north from true north, east positive, in degrees.</source>
      <translation>Convergencia de meridianos en un punto: azimut del norte de cuadrícula desde el norte verdadero, positiva al este, en grados.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Azimuth on the page of a true azimuth at a point, clockwise from the page's up, exact in every grid.</source>
      <translation>Azimut en la hoja de un azimut verdadero en un punto, en sentido horario desde arriba de la hoja, exacto en cualquier cuadrícula.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>True azimuth of an azimuth measured on the page at a point, exact in every grid.</source>
      <translation>Azimut verdadero de un azimut medido en la hoja en un punto, exacto en cualquier cuadrícula.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Dip of a plane as seen on a vertical section drawn in an azimuth: positive where the plane goes down in the direction of drawing. All azimuths from the same north. NULL for a vertical plane along its own strike.</source>
      <translation>Buzamiento de un plano visto en un corte vertical dibujado según un azimut: positivo donde el plano baja en el sentido del dibujo. Todos los azimutes desde el mismo norte. NULL para un plano vertical según su propio rumbo.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Strike of a plane as written, with the dip to its right; NULL for a level plane.</source>
      <translation>Rumbo de un plano tal como está escrito, con el buzamiento a su derecha; NULL para un plano horizontal.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Dip of a plane as written.</source>
      <translation>Buzamiento de un plano tal como está escrito.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>Dip direction of a plane as written; NULL for a level plane.</source>
      <translation>Dirección de buzamiento de un plano tal como está escrito; NULL para un plano horizontal.</translation>
    </message>
    <message>
      <location filename="../plugin/expressions.py" />
      <source>A plane as text, from its strike with the dip to the right and its dip. notation is {notations}; letters is {letters}.</source>
      <translation>Un plano como texto, a partir de su rumbo con el buzamiento a la derecha y de su buzamiento. notation es {notations}; letters es {letters}.</translation>
    </message>
    <message>
      <location filename="../plugin/menu.py" />
      <source>Correct compass readings…</source>
      <translation>Corregir lecturas de brújula…</translation>
    </message>
    <message>
      <location filename="../plugin/menu.py" />
      <source>Open the sample area…</source>
      <translation>Abrir el área de ejemplo…</translation>
    </message>
    <message>
      <location filename="../plugin/menu.py" />
      <source>Help</source>
      <translation>Ayuda</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Folder for a copy of the sample area</source>
      <translation>Carpeta para una copia del área de ejemplo</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>The sample area could not be copied: {reason}</source>
      <translation>No se pudo copiar el área de ejemplo: {reason}</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>The sample area is in {folder}. It is invented.</source>
      <translation>El área de ejemplo está en {folder}. Es inventada.</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Units</source>
      <translation>Unidades</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Contacts</source>
      <translation>Contactos</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_faults.py" />
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Faults</source>
      <translation>Fallas</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Streams</source>
      <translation>Arroyos</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sections/shared.py" />
      <source>Section lines</source>
      <translation>Líneas de corte</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Compass readings, as written</source>
      <translation>Lecturas de brújula, tal como se escribieron</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Heights of the ground</source>
      <translation>Cotas del terreno</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>A second notebook</source>
      <translation>Una segunda libreta</translation>
    </message>
    <message>
      <location filename="../plugin/sample.py" />
      <source>Agonic: the sample area</source>
      <translation>Agonic: el área de ejemplo</translation>
    </message>
    <message>
      <location filename="../plugin/widgets.py" />
      <source>{title} (taken: {taken})</source>
      <translation>{title} (se toma: {taken})</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>North</source>
      <translation>Norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Readings</source>
      <translation>Lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Map symbols</source>
      <translation>Símbolos de mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Planes and terrain</source>
      <translation>Planos y terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/package.py" />
      <source>Sections</source>
      <translation>Cortes geológicos</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Sightings</source>
      <translation>Visuales</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Orientation statistics</source>
      <translation>Estadística de orientaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Sheet</source>
      <translation>Hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Exchange</source>
      <translation>Intercambio</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows read</source>
      <translation>Filas leídas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows done, with or without a warning</source>
      <translation>Filas resueltas, con o sin aviso</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows done with a warning</source>
      <translation>Filas resueltas con aviso</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>Rows rejected</source>
      <translation>Filas rechazadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key} is needed: name the field ({label}).</source>
      <translation>Hace falta {key}: nombre el campo ({label}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key} is needed: {label}. {key} is one of {tokens}.</source>
      <translation>Hace falta {key}: {label}. {key} es uno de {tokens}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key} is needed: {label}.</source>
      <translation>Hace falta {key}: {label}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>There is no parameter {key}. Was {near} meant?</source>
      <translation>No existe el parámetro {key}. ¿Quiso decir {near}?</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>There is no parameter {key}.</source>
      <translation>No existe el parámetro {key}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key}: {value} is no number.</source>
      <translation>{key}: {value} no es un número.</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <source>{key}: the layer holds {found}, not {wanted}.</source>
      <translation>{key}: la geometría de la capa es {found}, no {wanted}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/base.py" />
      <location filename="../processing_algs/entries.py" />
      <source>{key}: the layer has no field {name}. It has: {names}.</source>
      <translation>{key}: la capa no tiene el campo {name}. Tiene: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Strike</source>
      <translation>Rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Dip</source>
      <translation>Buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <source>Side</source>
      <translation>Lado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <source>Dip dir.</source>
      <translation>Dir. buz.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Trend</source>
      <translation>Dirección</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Plunge</source>
      <translation>Inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/drawing/section_layers.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Attitude</source>
      <translation>Orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Station</source>
      <translation>Estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Place</source>
      <translation>Lugar</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Kind</source>
      <translation>Clase</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <source>Ring</source>
      <translation>Limbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/book_page.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Notes</source>
      <translation>Notas</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/domain_style.py" />
      <source>fits its domain</source>
      <translation>encaja en su dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/domain_style.py" />
      <source>lies off the girdle of its domain</source>
      <translation>se aparta de la guirnalda de su dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/domain_style.py" />
      <source>fits no domain</source>
      <translation>no encaja en ningún dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Contact, drafted</source>
      <translation>Contacto, en borrador</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Contact, drafted, eroded</source>
      <translation>Contacto, en borrador, erosionado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Axial surface, drafted</source>
      <translation>Superficie axial, en borrador</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Axial surface, drafted, eroded</source>
      <translation>Superficie axial, en borrador, erosionada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Fault, straight on</source>
      <translation>Falla, en línea recta</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Does not fit: the contact arrives here</source>
      <translation>No encaja: aquí llega el contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>Does not fit, eroded</source>
      <translation>No encaja, erosionado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>95 % band of a contact</source>
      <translation>Banda del 95 % de un contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>95 % band, eroded</source>
      <translation>Banda del 95 %, erosionada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/draft_layers.py" />
      <source>{name}, drafted</source>
      <translation>{name}, en borrador</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/fence_layers.py" />
      <source>Seen toward {azimuth}, {altitude} degrees down; heights {ve} times.</source>
      <translation>Vista hacia {azimuth}, {altitude} grados hacia abajo; alturas {ve} veces.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/fence_layers.py" />
      <source>Pale, with dashed rims: DRAFT, constructed and not measured.</source>
      <translation>Pálido, con bordes a trazos: BORRADOR, construido y no medido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <source>{name}: planned, not drilled</source>
      <translation>{name}: planeado, no perforado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>vertical</source>
      <translation>vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <source>azimuth {azimuth}, {down} below the horizon</source>
      <translation>azimut {azimuth}, {down} bajo el horizonte</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <source>{length} m, meets the plane at {angle} degrees; depth 1-sigma {sigma} m</source>
      <translation>{length} m, corta el plano a {angle} grados; 1-sigma de la profundidad {sigma} m</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <location filename="../processing_algs/drawing/section_drawing.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>{value} m</source>
      <translation>{value} m</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/hole_figure.py" />
      <source>Red: the plane; dashed: its 95 % band</source>
      <translation>Rojo: el plano; a trazos: su banda del 95 %</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/isogonic_style.py" />
      <source>Agonic line</source>
      <translation>Línea agónica</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/isogonic_style.py" />
      <source>Line of equal value</source>
      <translation>Línea de igual valor</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/isogonic_style.py" />
      <source>No compass works: horizontal field under 2000 nT</source>
      <translation>No funciona ninguna brújula: campo horizontal menor de 2000 nT</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/isogonic_style.py" />
      <source>Compass with caution: horizontal field under 6000 nT</source>
      <translation>Brújula con cautela: campo horizontal menor de 6000 nT</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/map_style.py" />
      <source>Height contour, every {step:g} m</source>
      <translation>Curva de nivel, cada {step:g} m</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal bedding</source>
      <translation>Estratificación horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding</source>
      <translation>Estratificación inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical bedding</source>
      <translation>Estratificación vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known</source>
      <translation>Estratificación inclinada, polaridad conocida</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding</source>
      <translation>Estratificación invertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, approximate</source>
      <translation>Estratificación inclinada, aproximada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical bedding, approximate</source>
      <translation>Estratificación vertical, aproximada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known, approximate</source>
      <translation>Estratificación inclinada, polaridad conocida, aproximada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding, approximate</source>
      <translation>Estratificación invertida, aproximada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal bedding, upside down</source>
      <translation>Estratificación horizontal, invertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, arrow down the dip</source>
      <translation>Estratificación inclinada, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known, arrow down the dip</source>
      <translation>Estratificación inclinada, polaridad conocida, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding, arrow down the dip</source>
      <translation>Estratificación invertida, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, approximate, arrow down the dip</source>
      <translation>Estratificación inclinada, aproximada, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined bedding, top direction known, approximate, arrow down the dip</source>
      <translation>Estratificación inclinada, polaridad conocida, aproximada, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Overturned bedding, approximate, arrow down the dip</source>
      <translation>Estratificación invertida, aproximada, flecha según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal cleavage</source>
      <translation>Clivaje horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined cleavage</source>
      <translation>Clivaje inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical cleavage</source>
      <translation>Clivaje vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined spaced cleavage</source>
      <translation>Clivaje espaciado inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined crenulation cleavage</source>
      <translation>Clivaje de crenulación inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal foliation</source>
      <translation>Foliación horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined foliation</source>
      <translation>Foliación inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical foliation</source>
      <translation>Foliación vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined foliation, origin not told</source>
      <translation>Foliación inclinada, origen no indicado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal igneous foliation</source>
      <translation>Foliación ígnea horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined igneous foliation</source>
      <translation>Foliación ígnea inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical igneous foliation</source>
      <translation>Foliación ígnea vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal joint</source>
      <translation>Diaclasa horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined joint</source>
      <translation>Diaclasa inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical joint</source>
      <translation>Diaclasa vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined platy parting</source>
      <translation>Disyunción en lajas inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal fault plane</source>
      <translation>Plano de falla horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined fault plane</source>
      <translation>Plano de falla inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical fault plane</source>
      <translation>Plano de falla vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal vein</source>
      <translation>Vena horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined vein</source>
      <translation>Vena inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical vein</source>
      <translation>Vena vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal dike or sill</source>
      <translation>Dique horizontal o sill</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined dike</source>
      <translation>Dique inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical dike</source>
      <translation>Dique vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal contact</source>
      <translation>Contacto horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined contact</source>
      <translation>Contacto inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical contact</source>
      <translation>Contacto vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal axial plane</source>
      <translation>Plano axial horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined axial plane</source>
      <translation>Plano axial inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical axial plane</source>
      <translation>Plano axial vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal plane of another kind</source>
      <translation>Plano horizontal de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Inclined plane of another kind</source>
      <translation>Plano inclinado de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical plane of another kind</source>
      <translation>Plano vertical de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal lineation</source>
      <translation>Lineación horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging lineation</source>
      <translation>Lineación inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging lineation, second set</source>
      <translation>Lineación inclinada, segunda familia</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging parting lineation</source>
      <translation>Lineación de partición inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging lineation of aligned objects</source>
      <translation>Lineación inclinada de objetos alineados</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical lineation</source>
      <translation>Lineación vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal slickenline</source>
      <translation>Estría de falla horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging slickenline</source>
      <translation>Estría de falla inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging slickenline, second set</source>
      <translation>Estría de falla inclinada, segunda familia</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical slickenline</source>
      <translation>Estría de falla vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal axis of a small fold</source>
      <translation>Eje horizontal de pliegue menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging axis of a small fold</source>
      <translation>Eje inclinado de pliegue menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical axis of a small fold</source>
      <translation>Eje vertical de pliegue menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Horizontal line of another kind</source>
      <translation>Línea horizontal de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Plunging line of another kind</source>
      <translation>Línea inclinada de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Vertical line of another kind</source>
      <translation>Línea vertical de otro tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>No reading: row rejected</source>
      <translation>Sin lectura: fila rechazada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Symbol not in this list, or direction missing</source>
      <translation>Símbolo fuera de esta lista, o sin dirección</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Contact</source>
      <translation>Contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Internal contact</source>
      <translation>Contacto interno</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Gradational contact</source>
      <translation>Contacto gradual</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Unconformity</source>
      <translation>Discordancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <location filename="../processing_algs/drawing/section_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Fault</source>
      <translation>Falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Normal fault, ball and bar on the side that dropped</source>
      <translation>Falla normal, bola y barra en el bloque hundido</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Low-angle normal fault, half circles on the side that dropped</source>
      <translation>Falla normal de bajo ángulo, semicírculos en el bloque hundido</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Reverse fault, boxes on the side that rose</source>
      <translation>Falla inversa, recuadros en el bloque levantado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Strike-slip fault, right-lateral</source>
      <translation>Falla de desgarre dextral</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Strike-slip fault, left-lateral</source>
      <translation>Falla de desgarre sinistral</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Thrust fault, teeth on the upper plate</source>
      <translation>Cabalgamiento, dientes en el bloque superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Detachment fault, ticks on the upper plate</source>
      <translation>Falla de despegue, trazos en el bloque superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Axis of an anticline</source>
      <translation>Eje de anticlinal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Axis of an antiform</source>
      <translation>Eje de antiforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Axis of a syncline</source>
      <translation>Eje de sinclinal</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Axis of a synform</source>
      <translation>Eje de sinforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Axis of a monocline, arrow down the steep limb</source>
      <translation>Eje de monoclinal, flecha hacia abajo por el flanco más inclinado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Boundary of the map</source>
      <translation>Límite del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Scratch boundary, not drawn</source>
      <translation>Límite convencional, no se dibuja</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>Line of a type that is not in this list</source>
      <translation>Línea de un tipo que no está en esta lista</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>{line}; approximately located</source>
      <translation>{line}; situación aproximada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>{line}; inferred</source>
      <translation>{line}; situación inferida</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>{line}; concealed</source>
      <translation>{line}; traza cubierta</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/names.py" />
      <source>{line}; identity or existence questionable</source>
      <translation>{line}; identidad o existencia dudosa</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>equal-area net, lower hemisphere</source>
      <translation>red equiareal, hemisferio inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>equal-area net, upper hemisphere</source>
      <translation>red equiareal, hemisferio superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>equal-angle net, lower hemisphere</source>
      <translation>red conforme, hemisferio inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>equal-angle net, upper hemisphere</source>
      <translation>red conforme, hemisferio superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>n = {count}; {kind}</source>
      <translation>n = {count}; {kind}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>each dot: the readings of its cell, by its area</source>
      <translation>cada punto: las lecturas de su celda, según su área</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <location filename="../processing_algs/drawing/rose.py" />
      <location filename="../processing_algs/drawing/section_layout.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>N</source>
      <translation>N</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/net.py" />
      <source>times as dense as an even spread</source>
      <translation>veces más denso que un reparto uniforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_figure.py" />
      <source>TN</source>
      <translation>NV</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_figure.py" />
      <source>MN</source>
      <translation>NM</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_figure.py" />
      <source>GN</source>
      <translation>NC</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>E</source>
      <translation>E</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>W</source>
      <translation>O</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>Magnetic north is {decl} of true north at the centre of the sheet on {day} ({model}, 1-sigma {sigma:.1f}°), moving {yearly} a year.</source>
      <translation>El norte magnético está a {decl} del norte verdadero en el centro de la hoja el {day} ({model}, 1 sigma {sigma:.1f}°) y se mueve {yearly} al año.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>Grid north is {converg} of true north; magnetic north is {grid_mag} of grid north.</source>
      <translation>El norte de cuadrícula está a {converg} del norte verdadero; el norte magnético está a {grid_mag} del de cuadrícula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>declination</source>
      <translation>declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>convergence</source>
      <translation>convergencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>magnetic from grid north</source>
      <translation>norte magnético desde el de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>{what} {low} to {high}</source>
      <translation>{what} de {low} a {high}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>Over the sheet: {parts}.</source>
      <translation>En la hoja: {parts}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The angles of the diagram are to scale.</source>
      <translation>Los ángulos del diagrama están a escala.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The angles of the diagram are exaggerated: use the numbers.</source>
      <translation>Los ángulos del diagrama están exagerados: use los números.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The horizontal field is too weak for a compass on this sheet (blackout zone).</source>
      <translation>En esta hoja el campo horizontal es demasiado débil para una brújula (zona ciega).</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The horizontal field is weak on this sheet: use a compass with caution.</source>
      <translation>En esta hoja el campo horizontal es débil: use la brújula con cautela.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The ring of a compass stays at zero.</source>
      <translation>El limbo de la brújula queda en cero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>To read true azimuths turn the ring of the compass clockwise by {angle:.1f}°; sighting along the needle it must then read {check}.</source>
      <translation>Para leer acimutes verdaderos gire el limbo de la brújula {angle:.1f}° en sentido horario; al visar a lo largo de la aguja debe leer entonces {check}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>To read true azimuths turn the ring of the compass counter-clockwise by {angle:.1f}°; sighting along the needle it must then read {check}.</source>
      <translation>Para leer acimutes verdaderos gire el limbo de la brújula {angle:.1f}° en sentido antihorario; al visar a lo largo de la aguja debe leer entonces {check}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>The declination changes by {change:g}° not before the end of {model}, {end:.0f}.</source>
      <translation>La declinación no cambia {change:g}° antes del fin de {model}, {end:.0f}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>By {day} the declination will have changed by {change:g}°: these angles hold until then.</source>
      <translation>El {day} la declinación habrá cambiado {change:g}°: estos ángulos valen hasta entonces.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/gis/north_words.py" />
      <source>magnetic</source>
      <translation>magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/gis/north_words.py" />
      <source>true</source>
      <translation>verdadero</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <location filename="../processing_algs/gis/north_words.py" />
      <source>grid</source>
      <translation>de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>{start} to {end}: add {angle:.1f}°</source>
      <translation>De {start} a {end}: sume {angle:.1f}°</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/north_words.py" />
      <source>{start} to {end}: subtract {angle:.1f}°</source>
      <translation>De {start} a {end}: reste {angle:.1f}°</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>predicted outcrop</source>
      <translation>afloramiento previsto</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>edge of the band, upper side</source>
      <translation>borde de la franja, lado superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>edge of the band, lower side</source>
      <translation>borde de la franja, lado inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>below ground</source>
      <translation>bajo el terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>above ground, worn away</source>
      <translation>sobre el terreno, erosionado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/plane_layers.py" />
      <source>ground not known</source>
      <translation>terreno desconocido</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/rose.py" />
      <source>n = {count}; lines without a sense, each in two opposite petals</source>
      <translation>n = {count}; líneas sin sentido, cada una en dos pétalos opuestos</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/rose.py" />
      <source>n = {count}; directions</source>
      <translation>n = {count}; direcciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/rose.py" />
      <source>petals of {width:g} degrees, areas as numbers; the outer circle is {count:g}</source>
      <translation>pétalos de {width:g} grados, áreas según los números; el círculo exterior es {count:g}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/rose.py" />
      <source>mean {mean:03.0f}, range of 95 % confidence {half:.0f} degrees either way</source>
      <translation>media {mean:03.0f}, rango de 95 % de confianza {half:.0f} grados a cada lado</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/rose.py" />
      <source>mean {mean:03.0f}; how sure it is cannot be said</source>
      <translation>media {mean:03.0f}; no se puede decir cuán segura es</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_drawing.py" />
      <source>bend: {before} to {after}</source>
      <translation>quiebre: de {before} a {after}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_drawing.py" />
      <source>{name} ({off} m off)</source>
      <translation>{name} (a {off} m)</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <location filename="../processing_algs/gis/copies.py" />
      <location filename="../processing_algs/gis/sinks.py" />
      <location filename="../processing_algs/sheet/profiles.py" />
      <source>Rows could not be written to {place}: {reason}</source>
      <translation>No se pudieron escribir filas en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <location filename="../processing_algs/gis/copies.py" />
      <source>The layer {name} of {place} cannot be read.</source>
      <translation>No se puede leer la capa {name} de {place}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Unit without a name</source>
      <translation>Unidad sin nombre</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Other attitude</source>
      <translation>Otra orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Bedding or contact</source>
      <translation>Estratificación o contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Cleavage or foliation</source>
      <translation>Clivaje o foliación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Joint or vein</source>
      <translation>Diaclasa o vena</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Fault plane or dike</source>
      <translation>Plano de falla o dique</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Other plane</source>
      <translation>Otro plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>Line, projected</source>
      <translation>Línea proyectada</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>, overturned</source>
      <translation>, con polaridad invertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <source>, vertical</source>
      <translation>, vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layout.py" />
      <location filename="../processing_algs/drawing/sheet.py" />
      <location filename="../processing_algs/drawing/sheet_print.py" />
      <source>The figure could not be written to {place}: {reason}</source>
      <translation>No se pudo escribir la figura en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet.py" />
      <source>the image was not saved</source>
      <translation>no se guardó la imagen</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet.py" />
      <source>the file cannot be opened</source>
      <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Description of map units</source>
      <translation>Descripción de las unidades del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Correlation of map units</source>
      <translation>Correlación de las unidades del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Surficial</source>
      <translation>Superficiales</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Sedimentary</source>
      <translation>Sedimentarias</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Volcanic</source>
      <translation>Volcánicas</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Intrusive</source>
      <translation>Intrusivas</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <source>Metamorphic</source>
      <translation>Metamórficas</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_explanation.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Explanation of map symbols</source>
      <translation>Explicación de los símbolos del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <source>Contour interval {interval:g} metres.</source>
      <translation>Equidistancia de las curvas de nivel {interval:g} metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <source>Projection and grid: {crs}.</source>
      <translation>Proyección y cuadrícula: {crs}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <source>Horizontal datum: {datum}.</source>
      <translation>Datum horizontal: {datum}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Location</source>
      <translation>Situación</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Sources of data</source>
      <translation>Fuentes de los datos</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Methods</source>
      <translation>Métodos</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet_margin.py" />
      <source>Cautions</source>
      <translation>Precauciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/unit_style.py" />
      <source>No unit</source>
      <translation>Sin unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/entries.py" />
      <source>In scripts: {tokens}.</source>
      <translation>En los guiones: {tokens}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/entries.py" />
      <source>{key}: {entry} does not end in one of {allowed}.</source>
      <translation>{key}: {entry} no acaba en ninguno de estos valores: {allowed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/entries.py" />
      <source>Numbers that mean no reading</source>
      <translation>Números que significan «sin lectura»</translation>
    </message>
    <message>
      <location filename="../processing_algs/entries.py" />
      <source>{key}: {entry} is no number.</source>
      <translation>{key}: {entry} no es un número.</translation>
    </message>
    <message>
      <location filename="../processing_algs/entries.py" />
      <source>HTML files (*.html)</source>
      <translation>Archivos HTML (*.html)</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Export attitudes</source>
      <translation>Exportar actitudes</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Writes attitudes to a plain file. CSV: a table, and beside it its metadata (CSVW, of the World Wide Web Consortium), which state unit, convention, north and model of each column. KML and KMZ: for a globe, each symbol as lines on the ground, turned by its true azimuth. DXF: each symbol as a block in its true size for the scale, turned by its azimuth on the map's grid, with its number.

KML and DXF keep the look and lose much of the data; the log says what. Rejected rows are counted and left out.</source>
      <translation>Escribe actitudes en un archivo sencillo. CSV: una tabla y, al lado, sus metadatos (CSVW, del World Wide Web Consortium), que dicen unidad, convención, norte y modelo de cada columna. KML y KMZ: para un globo, cada símbolo como líneas sobre el terreno, girado por su azimut verdadero. DXF: cada símbolo como bloque en su tamaño verdadero para la escala, girado por su azimut en la cuadrícula del mapa, con su número.

KML y DXF conservan el aspecto y pierden muchos datos; el registro dice cuáles. Las filas rechazadas se cuentan y se omiten.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/exchange/import_gems.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <location filename="../processing_algs/planes/true_thickness.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/readings/convert_notation.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/package.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Attitudes</source>
      <translation>Orientaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Points with true strike and dip, trend and plunge.</source>
      <translation>Puntos con rumbo y buzamiento, dirección e inmersión verdaderos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Name of each reading</source>
      <translation>Nombre de cada lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Left empty: its number in the layer.</source>
      <translation>Vacío: su número en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Format</source>
      <translation>Formato</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>The file's name must end accordingly.</source>
      <translation>El nombre del archivo debe terminar de acuerdo con él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>CSV with metadata</source>
      <translation>CSV con metadatos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Scale of the map (denominator)</source>
      <translation>Escala del mapa (denominador)</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Symbols have their size on paper at this scale. For KML and DXF.</source>
      <translation>Los símbolos tienen su tamaño en papel a esta escala. Para KML y DXF.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>CRS of x and y, and of the drawing</source>
      <translation>SRC de x e y, y del dibujo</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Left empty: the layer's own.</source>
      <translation>Vacío: el propio de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>File</source>
      <translation>Archivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>Ends in .csv, .kml, .kmz or .dxf, as the format.</source>
      <translation>Termina en .csv, .kml, .kmz o .dxf, según el formato.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>OUTPUT: the name must end in {ending}.</source>
      <translation>OUTPUT: el nombre debe terminar en {ending}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>{key}: the layer has no coordinate reference system.</source>
      <translation>{key}: la capa no tiene sistema de referencia de coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>A drawing needs a CRS in metres or feet, so that symbols have a size: choose CRS.</source>
      <translation>Un dibujo necesita un SRC en metros o pies, para que los símbolos tengan tamaño: elija CRS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>INPUT: the layer has neither strike and dip nor trend and plunge.</source>
      <translation>INPUT: la capa no tiene ni rumbo y buzamiento ni dirección e inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/north/north_angles.py" />
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>The layer has no coordinate reference system that leads to places on Earth.</source>
      <translation>La capa no tiene un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <location filename="../processing_algs/exchange/gems_points.py" />
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Fields used: {fields}</source>
      <translation>Campos usados: {fields}</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>KML drops: x, y, the CRS of the layer, fields of the layer beside those of attitudes, units.</source>
      <translation>KML pierde: x, y, el SRC de la capa, los campos de la capa que no son de actitudes, las unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_attitudes.py" />
      <source>DXF drops: the CRS, every field but kind (the layer) and the number beside the symbol, line widths.</source>
      <translation>DXF pierde: el SRC, todo campo salvo la clase (la capa) y el número junto al símbolo, los grosores de línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Export to GeMS</source>
      <translation>Exportar a GeMS</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Writes the layers of a map as a GeMS database (US Geological Survey, Techniques and Methods 11-B10, 2020) into a new folder: a file geodatabase, a GeoPackage or a set of Shapefiles, with the standard's tables, fields and nulls.

Azimuth is the strike with the dip to the right, or the trend, from true north; each Type has its row in the Glossary, which says so in words. Polarity goes into the Type. OrientationConfidenceDegrees is 2.45 times sig_pole. -9 stands for what is not known; the Azimuth of horizontal planes and vertical lines is 0. Rows that were rejected, or have no place, are counted and not exported.

Keys follow from the parameter and each row's number in its layer or ID_FIELD, so they stay the same when other rows are edited.

The report lists table by table what the standard wants and the data lack, and what was found against each of its three levels. CorrelationOfMapUnits, symbols and metadata are not written.</source>
      <translation>Escribe las capas de un mapa como una base de datos GeMS (US Geological Survey, Techniques and Methods 11-B10, 2020) en una carpeta nueva: una geodatabase de archivos, un GeoPackage o un juego de Shapefiles, con las tablas, los campos y los nulos del estándar.

Azimuth es el rumbo con el buzamiento a la derecha, o la dirección de la línea, desde el norte verdadero; cada Type tiene su fila en el Glossary, que lo dice en palabras. La polaridad va en el Type. OrientationConfidenceDegrees es 2.45 veces sig_pole. -9 es lo que no se sabe; el Azimuth de planos horizontales y líneas verticales es 0. Las filas rechazadas, o sin lugar, se cuentan y no se exportan.

Las claves resultan del parámetro y del número de cada fila en su capa o de ID_FIELD, así que quedan iguales cuando se editan otras filas.

El informe enumera tabla por tabla lo que el estándar pide y a los datos les falta, y lo hallado frente a cada uno de sus tres niveles. CorrelationOfMapUnits, símbolos y metadatos no se escriben.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Tables of drawn sections</source>
      <translation>Tablas de cortes dibujados</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Named as GeMS does, such as CSAContactsAndFaults; drawn sections have them on request.</source>
      <translation>Nombradas como en GeMS, como CSAContactsAndFaults; los cortes dibujados las tienen si se piden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>How the map is cited</source>
      <translation>Cómo se cita el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Goes into DataSources as the note of DAS1, this report.</source>
      <translation>Va a DataSources como nota de DAS1, este informe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>CRS of the database</source>
      <translation>SRC de la base de datos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Left empty: that of the map units, else of the first layer.</source>
      <translation>Vacío: el de las unidades, o el de la primera capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>The standard asks for a file geodatabase with an open copy beside it.</source>
      <translation>El estándar pide una geodatabase de archivos con una copia abierta al lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>file geodatabase</source>
      <translation>geodatabase de archivos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>GeoPackage</source>
      <translation>GeoPackage</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Shapefiles</source>
      <translation>Shapefiles</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Name of the database</source>
      <translation>Nombre de la base de datos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Letters, digits and underscores.</source>
      <translation>Letras, cifras y guiones bajos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Folder</source>
      <translation>Carpeta</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>A new or empty folder.</source>
      <translation>Una carpeta nueva o vacía.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>What was written, what it lacks, and what was found against the standard's levels.</source>
      <translation>Qué se escribió, qué le falta, y qué se halló frente a los niveles del estándar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Findings against level {level}</source>
      <translation>Hallazgos frente al nivel {level}</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>NAME: {name} is no name of a database; use letters, digits and underscores.</source>
      <translation>NAME: {name} no es nombre de una base de datos; use letras, cifras y guiones bajos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>SECTIONS: {name} is no table of a section as GeMS names it.</source>
      <translation>SECTIONS: {name} no es una tabla de un corte como la nombra GeMS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Stations not written: no layer of stations was given, so StationsID is null.</source>
      <translation>Stations no se escribió: no se dio una capa de estaciones, así que StationsID es nulo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>CorrelationOfMapUnits not written. Symbols (a style) and FGDC metadata not written.</source>
      <translation>CorrelationOfMapUnits no se escribió. Los símbolos (un estilo) y los metadatos FGDC no se escribieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>GeMS database</source>
      <translation>Base de datos GeMS</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Level {level}: nothing found against it.</source>
      <translation>Nivel {level}: nada hallado en contra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Level {level}: {line}</source>
      <translation>Nivel {level}: {line}</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>Level {level}: {count} more findings.</source>
      <translation>Nivel {level}: {count} hallazgos más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_gems.py" />
      <source>{table}.{field}: the texts of {rows} rows were cut; they are whole in the file of long texts.</source>
      <translation>{table}.{field}: se cortaron los textos de {rows} filas; están enteros en el archivo de textos largos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Export to GeoSciML</source>
      <translation>Exportar a GeoSciML</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Writes the layers of a map as the views of GeoSciML 4.1 Lite (OGC 16-008): contacts, faults and map units, and each attitude as one SiteObservationView, with the URIs of the CGI vocabularies for types, polarity, convention and method. What is not known is the nil of the OGC, never a guess.

Strikes have the dip to the right; azimuths and symbolRotation count clockwise from true north. A GeoPackage has azimuth, dip, polarity, convention and method as columns of their own behind those of the view; GML has the schema's properties only. Folds, section lines and stations have no view and are left out; the report says what was.</source>
      <translation>Escribe las capas de un mapa como las vistas de GeoSciML 4.1 Lite (OGC 16-008): contactos, fallas y unidades, y cada actitud como una SiteObservationView, con los URI de los vocabularios de la CGI para tipos, polaridad, convención y método. Lo que no se sabe es el nil del OGC, nunca una suposición.

Los rumbos tienen el buzamiento a la derecha; los azimuts y symbolRotation se cuentan en sentido horario desde el norte verdadero. Un GeoPackage tiene azimut, buzamiento, polaridad, convención y método como columnas propias detrás de las de la vista; el GML solo tiene las propiedades del esquema. Pliegues, líneas de corte y estaciones no tienen vista y se omiten; el informe dice qué se omitió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>What identifiers begin with</source>
      <translation>Con qué comienzan los identificadores</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>An absolute URI of yours, such as https://example.org/map/; the key of each row follows.</source>
      <translation>Un URI absoluto suyo, como https://example.org/map/; le sigue la clave de cada fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>CRS</source>
      <translation>SRC</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>One table or one file for each view.</source>
      <translation>Una tabla o un archivo por vista.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>GML 3.1.1</source>
      <translation>GML 3.1.1</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>What was written and what was left out.</source>
      <translation>Qué se escribió y qué se omitió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>BASE_URI: {uri} is no absolute URI.</source>
      <translation>BASE_URI: {uri} no es un URI absoluto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>GML names its CRS by a number of the EPSG; choose CRS, or a GeoPackage.</source>
      <translation>El GML nombra su SRC por un número de la EPSG; elija CRS, o un GeoPackage.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>GeoSciML Lite</source>
      <translation>GeoSciML Lite</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Written</source>
      <translation>Escrito</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>view</source>
      <translation>vista</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <location filename="../processing_algs/exchange/gems_report.py" />
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>rows</source>
      <translation>filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>noticed</source>
      <translation>notado</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>such as</source>
      <translation>por ejemplo</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Left out</source>
      <translation>Omitido</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>{what}: {count} rows left out, since Lite has no view for them.</source>
      <translation>{what}: {count} filas omitidas, pues Lite no tiene vista para ellas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Uncertainties of attitudes, numeric ages and confidences are left out, since Lite has no place for them.</source>
      <translation>Las incertidumbres de las actitudes, las edades numéricas y las confianzas se omiten, pues Lite no tiene lugar para ellas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/export_geosciml.py" />
      <source>Polarity, convention and method as URIs are left out of GML; a GeoPackage has them.</source>
      <translation>La polaridad, la convención y el método como URI se omiten en el GML; un GeoPackage los tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_files.py" />
      <location filename="../processing_algs/exchange/geosciml_files.py" />
      <location filename="../processing_algs/gis/placing.py" />
      <location filename="../processing_algs/gis/proof.py" />
      <source>Nothing was written to {place}: {reason}</source>
      <translation>No se escribió nada en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_files.py" />
      <source>The GDAL of this QGIS cannot write {driver}; choose another FORMAT.</source>
      <translation>El GDAL de este QGIS no puede escribir {driver}; elija otro FORMAT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_files.py" />
      <location filename="../processing_algs/exchange/geosciml_files.py" />
      <location filename="../processing_algs/gis/placing.py" />
      <location filename="../processing_algs/gis/proof.py" />
      <location filename="../processing_algs/gis/server.py" />
      <source>of {rows} rows, {found} are there</source>
      <translation>de {rows} filas hay {found}</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_points.py" />
      <source>Stations that attitudes name and the layer of stations lacks, so that StationsID is null: {names}.</source>
      <translation>Estaciones que las actitudes nombran y que faltan en la capa de estaciones, de modo que StationsID es nulo: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The table is missing.</source>
      <translation>Falta la tabla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The table has no rows.</source>
      <translation>La tabla no tiene filas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The field may not be null.</source>
      <translation>El campo no puede ser nulo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Blank texts.</source>
      <translation>Textos en blanco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Texts longer than the field's usual length: {value}.</source>
      <translation>Textos más largos que lo usual en el campo: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The key {value} is there more than once.</source>
      <translation>La clave {value} está más de una vez.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The Glossary lacks "{value}".</source>
      <translation>En el Glossary falta "{value}".</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The Glossary has "{value}", which nothing uses.</source>
      <translation>El Glossary tiene "{value}", que nada usa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The Glossary has "{value}" more than once.</source>
      <translation>El Glossary tiene "{value}" más de una vez.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>DataSources lacks {value}.</source>
      <translation>En DataSources falta {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>DataSources has {value}, which nothing uses.</source>
      <translation>DataSources tiene {value}, que nada usa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>DescriptionOfMapUnits lacks {value}.</source>
      <translation>En DescriptionOfMapUnits falta {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>DescriptionOfMapUnits has {value}, which is not on the map.</source>
      <translation>DescriptionOfMapUnits tiene {value}, que no está en el mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>DescriptionOfMapUnits has {value} more than once.</source>
      <translation>DescriptionOfMapUnits tiene {value} más de una vez.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Not given for: {value}.</source>
      <translation>No dado para: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The table is not as the standard prints it.</source>
      <translation>La tabla no es como la imprime el estándar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>"{value}" is no term of GeoMaterialDict.</source>
      <translation>"{value}" no es un término de GeoMaterialDict.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Stations lacks {value}.</source>
      <translation>En Stations falta {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Two stations are called "{value}"; attitudes were linked to the first.</source>
      <translation>Dos estaciones se llaman "{value}"; las actitudes se enlazaron con la primera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>"{value}" is no key of numbers parted by dashes.</source>
      <translation>"{value}" no es una clave de números separados por guiones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The parts of the key "{value}" are not as long as the others.</source>
      <translation>Las partes de la clave "{value}" no son tan largas como las demás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The key "{value}" is there more than once.</source>
      <translation>La clave "{value}" está más de una vez.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The key "{value}" sorts before the one above it.</source>
      <translation>La clave "{value}" se ordena antes que la anterior.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>The key "{value}" is more than one step deeper than the one above it.</source>
      <translation>La clave "{value}" está más de un nivel por debajo de la anterior.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Areas overlap: {value}.</source>
      <translation>Áreas que se traslapan: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>A gap between areas: {value}.</source>
      <translation>Un hueco entre áreas: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Boundaries of areas that no line of ContactsAndFaults covers: {value}.</source>
      <translation>Límites de áreas que ninguna línea de ContactsAndFaults cubre: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Line {value} crosses or touches itself.</source>
      <translation>La línea {value} se cruza o se toca a sí misma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Lines lie on each other: {value}.</source>
      <translation>Líneas que yacen una sobre otra: {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>table</source>
      <translation>tabla</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>{read} rows of the layers were read: {done} were written, {rejected} were rejected and are not in it.</source>
      <translation>Se leyeron {read} filas de las capas: {done} se escribieron, {rejected} se rechazaron y no están en ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>What the standard wants and the data lack</source>
      <translation>Lo que el estándar pide y a los datos les falta</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>GeoMaterial is left null where the rock is no term of the list. A word of its name suggests:</source>
      <translation>GeoMaterial queda nulo donde la roca no es un término de la lista. Una palabra de su nombre sugiere:</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>unit</source>
      <translation>unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>rock</source>
      <translation>roca</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>A Shapefile holds 254 bytes of a text; these were cut, and are whole in the file of long texts:</source>
      <translation>Un Shapefile guarda 254 bytes de un texto; estos se cortaron, y están enteros en el archivo de textos largos:</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>field</source>
      <translation>campo</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>row</source>
      <translation>fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Against the three levels</source>
      <translation>Frente a los tres niveles</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>A level includes those before it. This list does not say that the database is of a level: a review of its geologic names, which levels 2 and 3 ask for, and its metadata are not looked at.</source>
      <translation>Un nivel incluye los anteriores. Esta lista no dice que la base de datos sea de un nivel: la revisión de sus nombres geológicos, que piden los niveles 2 y 3, y sus metadatos no se examinan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>Level {level}: {count} findings.</source>
      <translation>Nivel {level}: {count} hallazgos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>rule</source>
      <translation>regla</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>found</source>
      <translation>hallado</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/gems_report.py" />
      <source>{count} more are not listed.</source>
      <translation>{count} más no se enumeran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Import from GeMS</source>
      <translation>Importar de GeMS</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Reads the OrientationPoints of a GeMS database as attitudes, ready for symbols and sections: true north, nothing added to the azimuths, no ring setting; -9 and null texts become NULL.

What Azimuth means is read from each Type's definition in the Glossary. Where the Glossary says nothing, or two things, planes are rejected unless CONVENTION says what to take. Kind and polarity come from the Type; Types that are not known are listed and read as a plane or line of no closer kind. sig_pole is OrientationConfidenceDegrees / 2.45.</source>
      <translation>Lee los OrientationPoints de una base de datos GeMS como actitudes, listas para símbolos y cortes: norte verdadero, nada sumado a los azimuts, sin ajuste del limbo; -9 y los textos nulos pasan a NULL.

Qué significa Azimuth se lee de la definición de cada Type en el Glossary. Donde el Glossary no dice nada, o dice dos cosas, los planos se rechazan salvo que CONVENTION diga qué tomar. La clase y la polaridad vienen del Type; los Types desconocidos se enumeran y se leen como plano o línea sin clase más precisa. sig_pole es OrientationConfidenceDegrees / 2.45.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>reject the row</source>
      <translation>rechazar la fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>strike, dip to the right</source>
      <translation>rumbo, buzamiento a la derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>strike, dip to the left</source>
      <translation>rumbo, buzamiento a la izquierda</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>dip direction</source>
      <translation>dirección de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Orientation points</source>
      <translation>Puntos de orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Table OrientationPoints of the database, also as a Shapefile.</source>
      <translation>Tabla OrientationPoints de la base de datos, también como Shapefile.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Glossary</source>
      <translation>Glosario</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Left empty: the table Glossary of the same database.</source>
      <translation>Vacío: la tabla Glossary de la misma base de datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Stations</source>
      <translation>Estaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>For the names of stations. Left empty: the table Stations of the same database, if it has one.</source>
      <translation>Para los nombres de las estaciones. Vacío: la tabla Stations de la misma base de datos, si la tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Planes whose convention the Glossary does not state</source>
      <translation>Planos cuya convención no declara el Glossary</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Ask whoever made the database. The standard means the strike with the dip to the right.</source>
      <translation>Pregunte a quien hizo la base de datos. El estándar entiende el rumbo con el buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>The table's own fields, then kind, polarity, strike, dip, dip_dir, trend, plunge and sig_pole.</source>
      <translation>Los campos propios de la tabla, luego kind, polarity, strike, dip, dip_dir, trend, plunge y sig_pole.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>INPUT: the layer has no field {names}; it is no table OrientationPoints.</source>
      <translation>INPUT: la capa no tiene el campo {names}; no es una tabla OrientationPoints.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>There is no Glossary, so nothing says what Azimuth means.</source>
      <translation>No hay Glossary, así que nada dice qué significa Azimuth.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/import_gems.py" />
      <source>Type "{word}" is not known: {count} rows.</source>
      <translation>El Type "{word}" no se conoce: {count} filas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Points with true strike and dip, trend and plunge, such as corrected readings.</source>
      <translation>Puntos con rumbo y buzamiento, dirección e inmersión verdaderos, como lecturas corregidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Points.</source>
      <translation>Puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Name of each station</source>
      <translation>Nombre de cada estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>How far points may lie off</source>
      <translation>Cuánto pueden estar desplazados los puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Radius, where the layer has no LocationConfidenceMeters. Left empty: -9, not known.</source>
      <translation>Radio, donde la capa no tiene LocationConfidenceMeters. Vacío: -9, desconocido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Folds and other lines</source>
      <translation>Pliegues y otras líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Your words for the types</source>
      <translation>Sus palabras para los tipos</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Your word = type, such as F1=normal_fault;K=contact. Types: {types}.</source>
      <translation>Su palabra = tipo, por ejemplo F1=normal_fault;K=contact. Tipos: {types}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/package.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Map units</source>
      <translation>Unidades cartográficas</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Polygons.</source>
      <translation>Polígonos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Unit</source>
      <translation>Unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Field with the code of each area's unit.</source>
      <translation>Campo con el código de la unidad de cada área.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sections/draft_block.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Table of units</source>
      <translation>Tabla de unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>As for the style of units: code, name, order, description, color, rock, group.</source>
      <translation>Como para el estilo de unidades: code, name, order, description, color, rock, group.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Age in words</source>
      <translation>Edad en palabras</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>They go into CartographicLines.</source>
      <translation>Van a CartographicLines.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Name of each section</source>
      <translation>Nombre de cada corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>No layer is given.</source>
      <translation>No se dio ninguna capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>UNIT_FIELD is needed: name the field with the units.</source>
      <translation>Se necesita UNIT_FIELD: nombre el campo con las unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>UNIT_TABLE: the table has no column code.</source>
      <translation>UNIT_TABLE: la tabla no tiene la columna code.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Units of the table that are not on the map, left out: {codes}.</source>
      <translation>Unidades de la tabla que no están en el mapa, omitidas: {codes}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Left empty: none.</source>
      <translation>Vacío: ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Left empty: the field of this name.</source>
      <translation>Vacío: el campo de este nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Keys are made from it. Left empty: from the row's number in the layer.</source>
      <translation>De él se hacen las claves. Vacío: del número de la fila en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Station of each reading</source>
      <translation>Estación de cada lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Links to the name of a station.</source>
      <translation>Enlaza con el nombre de una estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Strike, dip to the right</source>
      <translation>Rumbo, buzamiento a la derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/true_thickness.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Polarity</source>
      <translation>Polaridad</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Uncertainty of the attitude</source>
      <translation>Incertidumbre de la actitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>1-sigma of the pole or line, in degrees.</source>
      <translation>1 sigma del polo o de la línea, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Smallest scale to plot at</source>
      <translation>Menor escala a la que se dibuja</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Denominator; 0 is all scales.</source>
      <translation>Denominador; 0 es todas las escalas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Lines. IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters, symbol and Notes are taken where the layer has fields of these names.</source>
      <translation>Líneas. Se toman IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters, symbol y Notes donde la capa tiene campos de estos nombres.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Type of each line</source>
      <translation>Tipo de cada línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <source>Such as contact, or a GeMS type.</source>
      <translation>Como contact, o un tipo de GeMS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Type of lines that do not say</source>
      <translation>Tipo de las líneas que no lo indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/exchange/map_layers.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Used where there is no field, or it is empty.</source>
      <translation>Se usa donde no hay campo o está vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/attraction.py" />
      <source>ATTRACTION: the layer has no field {names}; it is the one that the tool for local attraction writes.</source>
      <translation>ATTRACTION: la capa no tiene el campo {names}; es la que escribe la herramienta de atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>The plane has been worn away here; check its attitude and its distance if you expected it below.</source>
      <translation>El plano se ha erosionado aquí; compruebe su actitud y su distancia si lo esperaba abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Judge whether the attitude still holds across the fault; take an attitude from the near side.</source>
      <translation>Juzgue si la actitud vale aún al otro lado de la falla; tome una actitud del lado cercano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look whether one reading was copied; more readings tell how sure the mean is.</source>
      <translation>Mire si se copió una lectura; más lecturas dicen cuán segura es la media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Plan a hole that meets the plane more squarely.</source>
      <translation>Planee un sondeo que corte el plano más en perpendicular.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the vertical angle, or say in ANGLE_MEANS what it is; the place has no height from this row.</source>
      <translation>Corrija el ángulo vertical, o diga en ANGLE_MEANS qué es; el lugar no toma altura de esta fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do: a draft ends its arcs at their centre.</source>
      <translation>Nada que hacer: un boceto termina sus arcos en su centro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a fault, a wrong dip or a wrong contact between the two places.</source>
      <translation>Busque una falla, un buzamiento o un contacto equivocado entre los dos lugares.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look at the section there: the datum is drawn at the vertex, not where it was measured.</source>
      <translation>Mire la sección ahí: el dato se dibuja en el vértice, no donde se midió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the name of the station, or its place.</source>
      <translation>Compruebe el nombre de la estación o su lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check that the rock is the same, or name the station.</source>
      <translation>Compruebe que la roca es la misma o nombre la estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draft less deep, or with another rule.</source>
      <translation>Dibuje el boceto menos profundo, o con otra regla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw a section across the folds.</source>
      <translation>Trace una sección a través de los pliegues.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write which end is meant, such as N or 000.</source>
      <translation>Escriba qué extremo se quiere, como N o 000.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the reading; if it is in gon or mil, say so in ANGLE_UNIT.</source>
      <translation>Corrija la lectura; si está en gon o mil, dígalo en ANGLE_UNIT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>If back bearings were written down turned round, turn them back before the run.</source>
      <translation>Si los rumbos inversos se anotaron ya girados, devuélvalos antes de la corrida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Repair the geometry (Fix geometries), or draw the row again.</source>
      <translation>Repare la geometría, o dibuje la fila de nuevo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a reading from the wrong end of the needle, or a wrong landmark.</source>
      <translation>Busque una lectura del extremo equivocado de la aguja, o un punto de referencia equivocado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the height, its unit and the place of the station.</source>
      <translation>Compruebe la altura, su unidad y el lugar de la estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the dip; use another rule if it is right.</source>
      <translation>Compruebe el buzamiento; use otra regla si es correcto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the rows were meant to be blank.</source>
      <translation>Nada que hacer si las filas debían estar vacías.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the compass again with the ring as it is set now.</source>
      <translation>Compruebe de nuevo la brújula con el anillo como está ahora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>State the ring setting of the reading, or check the compass again.</source>
      <translation>Diga el ajuste del anillo de la lectura, o compruebe la brújula de nuevo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a misread leg, a wrong distance or a station with the wrong name.</source>
      <translation>Busque un tramo mal leído, una distancia equivocada o una estación con otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take points farther to the side, or a fault of one line as no plane.</source>
      <translation>Tome puntos más al lado, o acepte que una línea no da un plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look whether easting and northing, or latitude and longitude, stand in each other's column; nothing was changed.</source>
      <translation>Mire si X e Y, o latitud y longitud, están una en la columna de la otra; no se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the number with a point.</source>
      <translation>Escriba el número con un punto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where the value is needed, warns in fields of heights.</source>
      <translation>Rechaza donde el valor hace falta, avisa en campos de alturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out what the compass or the declination is off by.</source>
      <translation>Averigüe en qué yerra la brújula o la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write Y or N.</source>
      <translation>Escriba Y o N.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure beds between the limbs, near the hinge.</source>
      <translation>Mida capas entre los flancos, cerca de la charnela.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write certain or questionable.</source>
      <translation>Escriba certain o questionable.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Cut the fold into shorter stretches, or carry beds along no axis.</source>
      <translation>Divida el pliegue en tramos más cortos, o no lleve capas a lo largo de ningún eje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the dips of the two contacts.</source>
      <translation>Compruebe los buzamientos de los dos contactos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the two readings; one may belong to another structure.</source>
      <translation>Compruebe las dos lecturas; una puede ser de otra estructura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose CONVENTION, after asking whoever made the database.</source>
      <translation>Elija CONVENTION, después de preguntar a quien hizo la base de datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight a landmark in another direction, or one outside the circle.</source>
      <translation>Vise un punto de referencia en otra dirección, o uno fuera del círculo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the date like 2026-06-01, or state the order in DATE_ORDER.</source>
      <translation>Escriba la fecha como 2026-06-01, o diga el orden en DATE_ORDER.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose a model of those years, or give the declination.</source>
      <translation>Elija un modelo de esos años, o dé la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the day if it is known; the uncertainty holds the change over the period.</source>
      <translation>Escriba el día si se conoce; la incertidumbre contiene el cambio en el período.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the date, or say in DATE_ORDER that it is a spreadsheet's day number.</source>
      <translation>Escriba la fecha, o diga en DATE_ORDER que es un número de día de hoja de cálculo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the date like 2026-06-01.</source>
      <translation>Escriba la fecha como 2026-06-01.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if commas are decimal in this file.</source>
      <translation>Nada que hacer si las comas son decimales en este archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the declination, its year and its sheet against the model's.</source>
      <translation>Compruebe la declinación, su año y su hoja con la del modelo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct it if -9 means no declination.</source>
      <translation>Corríjala si -9 quiere decir que no hay declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give dates and places, so that it can be checked.</source>
      <translation>Dé fechas y lugares, para que se pueda comprobar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the number stands for no declination.</source>
      <translation>Nada que hacer si el número quiere decir que no hay declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write degrees, east positive and west negative.</source>
      <translation>Escriba grados, positivos al este y negativos al oeste.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>West is negative: turn the sign if west was meant.</source>
      <translation>El oeste es negativo: cambie el signo si se quería oeste.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draft less deep, or measure over a wider stretch.</source>
      <translation>Dibuje el boceto menos profundo, o mida en un trecho más ancho.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use a DEM that covers the place.</source>
      <translation>Use un MDE que cubra el lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where the height is needed, warns where a part is known.</source>
      <translation>Rechaza donde la altura hace falta, avisa donde se conoce una parte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use a DEM that covers the ground within the radius, or a smaller radius.</source>
      <translation>Use un MDE que cubra el terreno dentro del radio, o un radio menor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure the plane nearer to the hole before anything is drilled.</source>
      <translation>Mida el plano más cerca del sondeo antes de perforar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out whether somebody rounded to ten degrees; the uncertainty is then larger.</source>
      <translation>Averigüe si alguien redondeó a diez grados; la incertidumbre es entonces mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the dip; for dips over 90 that mean overturned beds set OVER_90.</source>
      <translation>Corrija el buzamiento; para buzamientos de más de 90 que indican capas invertidas ponga OVER_90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do: the neighbours meet below it.</source>
      <translation>Nada que hacer: los vecinos se juntan debajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Have the compass checked again; use index errors of the time of the readings.</source>
      <translation>Haga comprobar de nuevo la brújula; use errores de índice del tiempo de las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out which copies are meant and delete the others.</source>
      <translation>Averigüe qué copias valen y borre las demás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose the encoding if letters look wrong.</source>
      <translation>Elija la codificación si las letras se ven mal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw another section, or take another line.</source>
      <translation>Trace otra sección, o tome otra línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Note which way up the beds of both limbs are.</source>
      <translation>Anote la polaridad de las capas de ambos flancos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the coordinates, their order and their CRS.</source>
      <translation>Compruebe las coordenadas, su orden y su SRC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the dip of the fault.</source>
      <translation>Dé el buzamiento de la falla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure more, or join groups.</source>
      <translation>Mida más, o una grupos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give three points at least, each with a place and a height.</source>
      <translation>Dé al menos tres puntos, cada uno con lugar y altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take three readings at least, along different lines.</source>
      <translation>Haga al menos tres lecturas, a lo largo de líneas distintas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where none is left, warns with one or two.</source>
      <translation>Rechaza donde no queda ninguna, avisa con una o dos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Read the leg again if you can.</source>
      <translation>Lea el tramo de nuevo si puede.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Mend the spreadsheet, and save it again.</source>
      <translation>Arregle la hoja de cálculo y guárdela de nuevo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use the fold axis tool; the mean of folded beds says little.</source>
      <translation>Use la herramienta de eje de pliegue; la media de capas plegadas dice poco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use a DEM that covers the ground farther on.</source>
      <translation>Use un MDE que cubra el terreno más adelante.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight the place from elsewhere.</source>
      <translation>Vise el lugar desde otro sitio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the letters of the grid square.</source>
      <translation>Corrija las letras del cuadrado de la cuadrícula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write easting before northing, or say the order.</source>
      <translation>Escriba el este antes que el norte, o diga el orden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do: a repeated header is no row of data.</source>
      <translation>Nada que hacer: un encabezado repetido no es una fila de datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Name the columns in the file.</source>
      <translation>Nombre las columnas en el archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give each column a name of its own.</source>
      <translation>Dé a cada columna un nombre propio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the second row holds units.</source>
      <translation>Nada que hacer si la segunda fila contiene unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the unit and the datum of the height.</source>
      <translation>Compruebe la unidad y el datum de la altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure the distance to the foot, or sight it from another place.</source>
      <translation>Mida la distancia al pie, o víselo desde otro lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the height; its unit may be feet.</source>
      <translation>Corrija la altura; su unidad puede ser el pie.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Plan from another place, or allow a longer hole.</source>
      <translation>Planee desde otro lugar, o permita un sondeo más largo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw another section across the plane.</source>
      <translation>Trace otra sección a través del plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Subtract the index error from the ring setting, or give the table of compasses.</source>
      <translation>Reste el error de índice del ajuste del anillo, o dé la tabla de brújulas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw the contact yourself: its course at depth follows no rule.</source>
      <translation>Dibuje usted el contacto: su curso en profundidad no sigue regla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the kind, or put the reading where lines or planes are read.</source>
      <translation>Corrija la clase, o ponga la lectura donde se leen líneas o planos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say what the word means in KIND_WORDS.</source>
      <translation>Diga en KIND_WORDS qué quiere decir la palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look the letter up in the notebook.</source>
      <translation>Busque la letra en la libreta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look in the notebook which of the two is right.</source>
      <translation>Mire en la libreta cuál de las dos vale.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look whether readings of several kinds or folds are mixed in one group.</source>
      <translation>Mire si en un grupo se mezclan lecturas de varios tipos o pliegues.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check both readings; a slip line lies in its fault.</source>
      <translation>Revise ambas lecturas; una línea de desplazamiento está en su falla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say what the word means in ACCURACY_WORDS.</source>
      <translation>Diga en ACCURACY_WORDS qué quiere decir la palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>If a declination was applied before, set NORTH to true.</source>
      <translation>Si ya se aplicó una declinación, ponga NORTH en true.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the reading against the sun or a known line, or read again farther off.</source>
      <translation>Compruebe la lectura con el sol o una línea conocida, o lea de nuevo más lejos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take a larger interval.</source>
      <translation>Tome un intervalo mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight the place from another direction.</source>
      <translation>Vise el lugar desde otra dirección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a second face or line at a larger angle to the first.</source>
      <translation>Busque una segunda cara o línea a mayor ángulo de la primera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out whether a declination was left out or applied twice.</source>
      <translation>Averigüe si se omitió una declinación o se aplicó dos veces.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the height of the station, and what stands near.</source>
      <translation>Compruebe la altura de la estación, y qué hay cerca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a face more across the strike.</source>
      <translation>Busque una cara más transversal al rumbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use a marker of another attitude.</source>
      <translation>Use un marcador de otra orientación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out whether a declination was applied the wrong way.</source>
      <translation>Averigüe si se aplicó una declinación al revés.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write north or south.</source>
      <translation>Escriba north o south.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a larger distance, or measure nearer.</source>
      <translation>Dé una distancia mayor, o mida más cerca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a fold axis for this place.</source>
      <translation>Dé un eje de pliegue para este lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Read back bearings, so that local attraction can be found.</source>
      <translation>Lea rumbos inversos, para que se pueda hallar la atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Read a line that is free of iron and leads here.</source>
      <translation>Lea una línea libre de hierro que lleve aquí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Add readings of the cleavage, or name its kind.</source>
      <translation>Añada lecturas del clivaje, o nombre su tipo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write which compass it was.</source>
      <translation>Escriba qué brújula era.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>A level or vertical plane has no contours: nothing to do.</source>
      <translation>Un plano horizontal o vertical no tiene curvas: nada que hacer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give both coordinates.</source>
      <translation>Dé ambas coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the date, or give DATE for rows without one.</source>
      <translation>Escriba la fecha, o dé DATE para las filas sin ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the declination of the row, or DECLINATION.</source>
      <translation>Dé la declinación de la fila, o DECLINATION.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure a dip of the same block and sequence near the section.</source>
      <translation>Mida un buzamiento del mismo bloque y secuencia cerca de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the length of the leg.</source>
      <translation>Escriba la longitud del tramo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look whether a fault lies here, or whether the reading is wrong; more readings help.</source>
      <translation>Mire si aquí hay una falla o si la lectura es errónea; ayudan más lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>The band leaves the radius there: take a larger radius.</source>
      <translation>La banda sale del radio ahí: tome un radio mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>A compass fails here: take the azimuth from the sun, or give the declination.</source>
      <translation>Una brújula falla aquí: tome el azimut del sol, o dé la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose a model of that year if the declination is needed.</source>
      <translation>Elija un modelo de ese año si hace falta la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use a DEM in another CRS.</source>
      <translation>Use un MDE en otro SRC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure beds of both limbs; one limb has no axis.</source>
      <translation>Mida capas de ambos flancos; un solo flanco no tiene eje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take a gentler grade, or start from another place.</source>
      <translation>Tome una pendiente más suave, o empiece en otro lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Name the grid in GRID_CRS.</source>
      <translation>Nombre la cuadrícula en GRID_CRS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write to which plane the points belong.</source>
      <translation>Escriba a qué plano pertenecen los puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look whether the group mixes different things.</source>
      <translation>Mire si el grupo mezcla cosas distintas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a DEM, or a field of heights.</source>
      <translation>Dé un MDE, o un campo de alturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check bearing and angle; use a DEM that reaches farther, or a longer range.</source>
      <translation>Compruebe rumbo y ángulo; use un MDE que llegue más lejos, o un alcance mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw the line again with two different vertices.</source>
      <translation>Dibuje la línea de nuevo con dos vértices distintos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take a smaller interval or a larger radius.</source>
      <translation>Tome un intervalo menor o un radio mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure more beds of either limb.</source>
      <translation>Mida más capas de cada flanco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Average fewer or more alike attitudes.</source>
      <translation>Promedie menos actitudes, o más parecidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>The plane stays below or above the ground: take a larger radius.</source>
      <translation>El plano queda bajo el terreno o sobre él: tome un radio mayor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the row a group, or leave GROUP_FIELD empty.</source>
      <translation>Dé un grupo a la fila, o deje GROUP_FIELD vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a plane of that group, or correct its name.</source>
      <translation>Dé un plano de ese grupo, o corrija su nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the row a point, and the layer its CRS.</source>
      <translation>Dé a la fila un punto, y a la capa su SRC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where the place is needed, warns where it is not.</source>
      <translation>Rechaza donde el lugar hace falta, avisa donde no.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write to which place the sight belongs.</source>
      <translation>Escriba a qué lugar pertenece la visual.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a vertical angle and a known height for one sight.</source>
      <translation>Dé un ángulo vertical y una altura conocida para una visual.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the readings of this group; the report says what is wrong with them.</source>
      <translation>Corrija las lecturas de este grupo; el informe dice qué tienen de malo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>State the sense of the slip.</source>
      <translation>Indique el sentido del desplazamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the side of the dip; it is not needed at 0 and 90.</source>
      <translation>Escriba el lado del buzamiento; no hace falta en 0 y 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the vertical angle if the leg was not level.</source>
      <translation>Escriba el ángulo vertical si el tramo no era horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write both ends of the leg.</source>
      <translation>Escriba ambos extremos del tramo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the height or its unit; say UNDERGROUND for a mine.</source>
      <translation>Corrija la altura o su unidad; ponga UNDERGROUND para una mina.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where the height is needed, warns where it is not.</source>
      <translation>Rechaza donde la altura hace falta, avisa donde no.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the time of day.</source>
      <translation>Escriba la hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>State the time zone.</source>
      <translation>Diga la zona horaria.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write magnetic, true or grid, or say what the word means in NORTH_WORDS.</source>
      <translation>Escriba magnetic, true o grid, o diga en NORTH_WORDS qué quiere decir la palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose planes in AVERAGE, or only lines in KIND.</source>
      <translation>Elija planos en AVERAGE, o solo líneas en KIND.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Leave lines out, or name the fields of the plane.</source>
      <translation>Deje fuera las líneas, o nombre los campos del plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the leg that joins the station to the others.</source>
      <translation>Dé el tramo que une la estación con las demás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the reading; nothing to do where none was made.</source>
      <translation>Escriba la lectura; nada que hacer donde no se hizo ninguna.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw the section across the folds, or give the fold axis.</source>
      <translation>Trace la sección a través de los pliegues, o dé el eje del pliegue.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the reading; a fault or another fold may be near.</source>
      <translation>Revise la lectura; puede haber cerca una falla u otro pliegue.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Allow for a larger uncertainty before 1945.</source>
      <translation>Cuente con una incertidumbre mayor antes de 1945.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure more dips along the section.</source>
      <translation>Mida más buzamientos a lo largo de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight the place from a second station.</source>
      <translation>Vise el lugar desde una segunda estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Read the leg from the other end too.</source>
      <translation>Lea el tramo también desde el otro extremo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out which of the two bearings is reversed.</source>
      <translation>Averigüe cuál de los dos rumbos está al revés.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose the language of the letters in COMPASS_LETTERS.</source>
      <translation>Elija el idioma de las letras en COMPASS_LETTERS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the CRS, and the coordinates.</source>
      <translation>Compruebe el SRC, y las coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the reading is none of the zones' own; else draw the zone wider.</source>
      <translation>Nada que hacer si la lectura no es de ninguna zona; si no, dibuje la zona más ancha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>If the digits after the point are minutes, convert them.</source>
      <translation>Si las cifras tras el punto son minutos, conviértalas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say in PAIR_MEANS what such a pair means.</source>
      <translation>Diga en PAIR_MEANS qué quiere decir tal par.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw another section across the strike.</source>
      <translation>Trace otra sección a través del rumbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects attitudes and carried rows, warns at contacts.</source>
      <translation>Rechaza actitudes y filas llevadas, avisa en contactos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the missing value.</source>
      <translation>Dé el valor que falta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write as many readings in each cell of the row.</source>
      <translation>Escriba tantas lecturas en cada celda de la fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take two parts that differ.</source>
      <translation>Tome dos partes que difieran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the place more exactly if you can.</source>
      <translation>Dé el lugar con más exactitud si puede.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the place of the row.</source>
      <translation>Dé el lugar de la fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check zone, order and sign of the coordinates.</source>
      <translation>Compruebe zona, orden y signo de las coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the coordinates and their unit.</source>
      <translation>Compruebe las coordenadas y su unidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the sign or the letter of the coordinate.</source>
      <translation>Compruebe el signo o la letra de la coordenada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the order of latitude and longitude.</source>
      <translation>Compruebe el orden de latitud y longitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the coordinates in one way, with their letters.</source>
      <translation>Escriba las coordenadas de un solo modo, con sus letras.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the place as coordinates.</source>
      <translation>Escriba el lugar como coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure the plane better before its depth is used.</source>
      <translation>Mida mejor el plano antes de usar su profundidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>See what was noticed about the plane itself.</source>
      <translation>Vea qué se notó del plano mismo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure the plane better, or nearer.</source>
      <translation>Mida el plano mejor, o más cerca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take the axis from the girdle of the beds instead.</source>
      <translation>Tome mejor el eje de la guirnalda de las capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give each known point a name of its own.</source>
      <translation>Dé a cada punto conocido un nombre propio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Add the known point, or correct its name.</source>
      <translation>Añada el punto conocido, o corrija su nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give these points a place and a height.</source>
      <translation>Dé a estos puntos un lugar y una altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say what the word means in POLARITY_WORDS.</source>
      <translation>Diga en POLARITY_WORDS qué quiere decir la palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Put letters and numbers together into one text, such as N45W, and read that.</source>
      <translation>Junte letras y números en un solo texto, como N45W, y lea ese.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the bearing: the angle in a quadrant is 0 to 90.</source>
      <translation>Corrija el rumbo: el ángulo en un cuadrante es de 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>If they are quadrant bearings, write them with their letters.</source>
      <translation>Si son rumbos por cuadrantes, escríbalos con sus letras.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the quality as degrees.</source>
      <translation>Escriba la calidad en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give the trend of a line on a level plane.</source>
      <translation>Dé la dirección de una línea en un plano horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the rake.</source>
      <translation>Corrija el cabeceo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do, or make the row a line.</source>
      <translation>Nada que hacer, o haga de la fila una línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct these sights, and run again.</source>
      <translation>Corrija estas visuales y corra de nuevo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the row where it was rejected first, and run that step again.</source>
      <translation>Corrija la fila donde se rechazó primero, y repita ese paso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look in the notebook whether that reading is reversed.</source>
      <translation>Mire en la libreta si esa lectura está al revés.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look in the notebook whether the reading is reversed.</source>
      <translation>Mire en la libreta si la lectura está al revés.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the ring setting in the row.</source>
      <translation>Escriba el ajuste del anillo en la fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the ring setting, or say in RING_BLANK what a blank means.</source>
      <translation>Escriba el ajuste del anillo, o diga en RING_BLANK qué quiere decir un vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the ring setting and its sign.</source>
      <translation>Compruebe el ajuste del anillo y su signo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Use longer lines.</source>
      <translation>Use líneas más largas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a wrong height, or for two planes in one group.</source>
      <translation>Busque una altura equivocada, o dos planos en un grupo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a wrong landmark, a misread bearing or iron.</source>
      <translation>Busque un punto de referencia equivocado, un rumbo mal leído o hierro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do: rounded folds have no distinct limbs.</source>
      <translation>Nada que hacer: los pliegues redondeados no tienen flancos distintos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Quote the cell that holds the separator.</source>
      <translation>Ponga entre comillas la celda que contiene el separador.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Delete the copy if it is one.</source>
      <translation>Borre la copia si lo es.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the last columns are meant to be empty.</source>
      <translation>Nada que hacer si las últimas columnas debían estar vacías.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the names of the two ends.</source>
      <translation>Corrija los nombres de los dos extremos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a fold or a fault between the readings.</source>
      <translation>Busque un pliegue o una falla entre las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the places: two areas far apart, or a wrong zone.</source>
      <translation>Compruebe los lugares: dos áreas muy apartadas, o una zona equivocada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw each section as one line.</source>
      <translation>Dibuje cada sección como una sola línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the sense and the sign of the separation.</source>
      <translation>Revise el sentido y el signo de la separación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Name the number in the null values if it means no reading.</source>
      <translation>Nombre el número entre los valores nulos si quiere decir que no hay lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do if the columns look right.</source>
      <translation>Nada que hacer si las columnas se ven bien.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the uncertainty.</source>
      <translation>Corrija la incertidumbre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the vertical angle, or say in ANGLE_MEANS what it is.</source>
      <translation>Corrija el ángulo vertical, o diga en ANGLE_MEANS qué es.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a misreading or iron nearby.</source>
      <translation>Busque una mala lectura o hierro cerca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the names: two stations may share one.</source>
      <translation>Compruebe los nombres: puede que dos estaciones compartan uno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give each station a name of its own.</source>
      <translation>Dé a cada estación un nombre propio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Add the station, or correct its name.</source>
      <translation>Añada la estación, o corrija su nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check that the number with other zeros is the same station.</source>
      <translation>Compruebe que el número con otros ceros es la misma estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look for a misreading; move away from iron.</source>
      <translation>Busque una mala lectura; aléjese del hierro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the ground: the sun may stand behind it.</source>
      <translation>Compruebe el terreno: el sol puede estar detrás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose another time.</source>
      <translation>Elija otra hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects sights of the sun, and where no time of the day will do; warns for a stated time.</source>
      <translation>Rechaza visuales al sol, y cuando no sirve ninguna hora del día; avisa con una hora dada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose a time with a lower sun.</source>
      <translation>Elija una hora con el sol más bajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Choose a time with a higher sun.</source>
      <translation>Elija una hora con el sol más alto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write centre, left or right for the side of the sun, yes or no for a shadow.</source>
      <translation>Escriba centre, left o right para el lado del sol, yes o no para una sombra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Give a date of the years the formulas hold for.</source>
      <translation>Dé una fecha de los años en que valen las fórmulas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Look at the notebook again; nothing was changed.</source>
      <translation>Mire de nuevo la libreta; no se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw another section, or trust the contacts there the less.</source>
      <translation>Trace otra sección, o fíese menos de los contactos ahí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Nothing to do: text below the table is no row of data.</source>
      <translation>Nada que hacer: el texto bajo la tabla no es una fila de datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check the dips; a unit may also change its thickness.</source>
      <translation>Compruebe los buzamientos; una unidad también puede cambiar de potencia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take points farther to the side.</source>
      <translation>Tome puntos más al lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the time with its zone: the clock skipped this hour.</source>
      <translation>Escriba la hora con su zona: el reloj saltó esta hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the time with its zone: the clock showed this hour twice.</source>
      <translation>Escriba la hora con su zona: el reloj mostró esta hora dos veces.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the time like 14:30.</source>
      <translation>Escriba la hora como 14:30.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Check that foot and top are not exchanged.</source>
      <translation>Compruebe que pie y cima no están intercambiados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Draw from base to top, or say that the beds are overturned.</source>
      <translation>Dibuje de la base al techo, o diga que las capas están invertidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Return to a station, or end at a known point.</source>
      <translation>Vuelva a una estación, o termine en un punto conocido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight a fourth landmark, which checks the turn.</source>
      <translation>Vise un cuarto punto de referencia, que comprueba el giro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight three landmarks at least, so that a turn can be seen.</source>
      <translation>Vise al menos tres puntos de referencia, para que se vea un giro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say what the word means in TYPE_WORDS.</source>
      <translation>Diga en TYPE_WORDS qué quiere decir la palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Say in TYPE_WORDS what the word means, or write its definition into the Glossary.</source>
      <translation>Diga en TYPE_WORDS qué significa la palabra, o escriba su definición en el Glossary.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Map a fault there, or the units that are missing.</source>
      <translation>Cartografíe ahí una falla, o las unidades que faltan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Name the unit of the area.</source>
      <translation>Nombre la unidad del área.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Rejects where the area goes to an archive, warns where it is styled.</source>
      <translation>Rechaza donde el área va a un archivo, avisa donde se le da estilo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Add the unit to the table of units, or correct its code.</source>
      <translation>Añada la unidad a la tabla de unidades, o corrija su código.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write it as the notation asks for.</source>
      <translation>Escríbalo como pide la notación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Plan an inclined hole.</source>
      <translation>Planee un sondeo inclinado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take the azimuth from the sun as well.</source>
      <translation>Tome también el azimut del sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Sight landmarks in other directions.</source>
      <translation>Vise puntos de referencia en otras direcciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Measure more beds, above all of both limbs.</source>
      <translation>Mida más capas, sobre todo de ambos flancos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Take points with more relief, or measure more exactly.</source>
      <translation>Tome puntos con más relieve, o mida con más exactitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Write the half-width in metres.</source>
      <translation>Escriba el semiancho en metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Find out whether 0 means a level bed or no reading.</source>
      <translation>Averigüe si 0 quiere decir capa horizontal o ninguna lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>Correct the zone or the band.</source>
      <translation>Corrija la zona o la banda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/code_meanings.py" />
      <source>State the zone.</source>
      <translation>Diga la zona.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/compasses.py" />
      <source>COMPASSES: the table has no field {names}; it is the one that the check of compasses writes.</source>
      <translation>COMPASSES: la tabla no tiene el campo {names}; es la que escribe la comprobación de brújulas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/copies.py" />
      <location filename="../processing_algs/gis/outputs.py" />
      <location filename="../processing_algs/gis/styling.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/sections/package.py" />
      <source>The style could not be stored: {reason}</source>
      <translation>No se pudo guardar el estilo: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/databases.py" />
      <source>another program keeps it locked</source>
      <translation>otro programa la mantiene bloqueada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM cannot be read.</source>
      <translation>No se puede leer el MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM has no band {band}; it has {count}.</source>
      <translation>El MDE no tiene la banda {band}; tiene {count}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM has no coordinate reference system that leads to places on Earth.</source>
      <translation>El MDE no tiene un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM holds {values}, which stands for no height, and does not declare it: these cells were taken as cells without data. Set the value as the layer's no-data value.</source>
      <translation>El MDE contiene {values}, que significa sin altura, y no lo declara: esas celdas se tomaron como celdas sin datos. Declare ese valor como valor sin datos de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM could not be read: {reason}</source>
      <translation>No se pudo leer el MDE: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM does not say how many cells it has.</source>
      <translation>El MDE no indica cuántas celdas tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>An output cannot be where it is to go: {reason}.</source>
      <translation>Una salida no puede estar donde debe ir: {reason}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: no file can be written at {place}.</source>
      <translation>{key}: no se puede escribir ningún archivo en {place}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: {place} is there already; choose a new or empty folder.</source>
      <translation>{key}: {place} ya existe; elija una carpeta nueva o vacía.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: {file} is protected against writing.</source>
      <translation>{key}: {file} está protegido contra escritura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: QGIS cannot open a database again that has {part} in its path; choose another name.</source>
      <translation>{key}: QGIS no puede volver a abrir una base de datos que tiene {part} en su ruta; elija otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: rows cannot be added to a layer that is there already; choose a new one.</source>
      <translation>{key}: no se pueden añadir filas a una capa que ya existe; elija una nueva.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: name a layer in a GeoPackage as {form}.</source>
      <translation>{key}: nombre la capa de un GeoPackage en la forma {form}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: outputs go to files, to tables of a GeoPackage or to PostGIS.</source>
      <translation>{key}: las salidas van a archivos, a tablas de un GeoPackage o a PostGIS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: the name of the file holds characters that no file can have.</source>
      <translation>{key}: el nombre del archivo tiene caracteres que ningún archivo puede tener.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{one} and {other} would go to the same place.</source>
      <translation>{one} y {other} irían al mismo sitio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>Outputs of one run can go to one database of a server only.</source>
      <translation>Las salidas de una ejecución solo pueden ir a una base de datos de un servidor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key} would overwrite the layer of {input}; choose another place.</source>
      <translation>{key} sobrescribiría la capa de {input}; elija otro sitio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: {file} is there already and belongs to another layer; choose another name.</source>
      <translation>{key}: {file} ya existe y pertenece a otra capa; elija otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key}: the layer {layer} has edits that are not saved; save or discard them first.</source>
      <translation>{key}: la capa {layer} tiene ediciones sin guardar; guárdelas o descártelas primero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/faults.py" />
      <source>This is a fault of Agonic: {kind}: {reason} ({file}, line {line}). Nothing was written.</source>
      <translation>Es un fallo de Agonic: {kind}: {reason} ({file}, línea {line}). No se escribió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>{text} Unit: {unit}.</source>
      <translation>{text} Unidad: {unit}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Is the agonic line</source>
      <translation>Es la línea ágona</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1 where the line is one of declination 0, else 0.</source>
      <translation>1 donde la línea es de declinación 0; si no, 0.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Apparent dip</source>
      <translation>Buzamiento aparente</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip as the section shows it, -90 to 90, positive where the bed goes down in the direction of drawing.</source>
      <translation>Buzamiento como lo muestra la sección, -90 a 90, positivo donde la capa baja en el sentido del dibujo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Apparent dip as drawn</source>
      <translation>Buzamiento aparente como se dibuja</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Apparent dip with the vertical exaggeration of the section, same sign.</source>
      <translation>Buzamiento aparente con la exageración vertical de la sección, con el mismo signo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>As written</source>
      <translation>Como está escrito</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The attitude as the notebook has it.</source>
      <translation>La actitud como está en la libreta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Correction for attraction</source>
      <translation>Corrección por atracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What was added to readings at this station for local attraction; clockwise positive.</source>
      <translation>Lo que se sumó a las lecturas en esta estación por atracción local; positivo en sentido horario.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Attraction known from</source>
      <translation>La atracción se conoce por</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>clean: an end of a line free of attraction; carried: carried on from one; none: not known; checks, traverse, pairs, several: what was put together.</source>
      <translation>clean: extremo de una línea libre de atracción; carried: llevado desde uno; none: no se conoce; checks, traverse, pairs, several: qué se reunió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Distance off</source>
      <translation>Distancia a la sección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How far off the section the datum was measured; 0 or more.</source>
      <translation>A qué distancia de la sección se midió el dato; 0 o más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Bootstrap of the axis</source>
      <translation>Remuestreo del eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Half angle of the 95 per cent cone about the axis or mean by a bootstrap; empty below 30 readings.</source>
      <translation>Semiángulo del cono del 95 por ciento en torno al eje o la media por remuestreo; vacío con menos de 30 lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Axis from</source>
      <translation>Origen del eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>girdle: of the poles of the beds; cleavage: where bedding meets cleavage.</source>
      <translation>girdle: de los polos de las capas; cleavage: donde la estratificación corta al clivaje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Region of the axis</source>
      <translation>Región del eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Longer half angle of the 95 per cent region of the axis, at most 90.</source>
      <translation>Semiángulo mayor de la región del 95 por ciento del eje, 90 como mucho.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Region of the axis, least</source>
      <translation>Región del eje, menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Shorter half angle of the 95 per cent region of the axis, at most 90.</source>
      <translation>Semiángulo menor de la región del 95 por ciento del eje, 90 como mucho.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Plunge of the axis</source>
      <translation>Inmersión del eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Plunge of the fold axis, 0 to 90, downward.</source>
      <translation>Inmersión del eje del pliegue, 0 a 90, hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Trend of the axis</source>
      <translation>Dirección del eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the fold axis from true north, toward its downward end.</source>
      <translation>Azimut del eje del pliegue desde el norte verdadero, hacia el extremo que baja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Known azimuth</source>
      <translation>Azimut conocido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the line between its known ends, from true north, 0 to 360.</source>
      <translation>Azimut de la línea entre sus extremos conocidos, desde el norte verdadero, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth, adjusted</source>
      <translation>Azimut, ajustado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the leg after the traverse was closed, from true north.</source>
      <translation>Azimut del tramo después de cerrar la poligonal, desde el norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the leg</source>
      <translation>Azimut del tramo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth before closing, from true north, freed of local attraction.</source>
      <translation>Azimut antes del cierre, desde el norte verdadero, libre de atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth on the page</source>
      <translation>Azimut en la página</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of strike or trend on the page of the layer's CRS, clockwise from the top.</source>
      <translation>Azimut del rumbo o de la dirección en la página del SRC de la capa, en sentido horario desde arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth as read</source>
      <translation>Azimut leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>As read off the compass, 0 to 360, before any correction.</source>
      <translation>Como se leyó en la brújula, 0 a 360, antes de toda corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>True azimuth</source>
      <translation>Azimut verdadero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the sight from true north, 0 to 360.</source>
      <translation>Azimut de la visual desde el norte verdadero, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Back bearing, corrected</source>
      <translation>Rumbo inverso, corregido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>From true north, freed of local attraction.</source>
      <translation>Desde el norte verdadero, libre de atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Back bearing as read</source>
      <translation>Rumbo inverso leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>As read, 0 to 360.</source>
      <translation>Como se leyó, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Bingham k2</source>
      <translation>k2 de Bingham</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Second parameter of the Bingham distribution of largest likelihood; the first is 0, none is above 0.</source>
      <translation>Segundo parámetro de la distribución de Bingham de máxima verosimilitud; el primero es 0, ninguno es mayor que 0.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Bingham k3</source>
      <translation>k3 de Bingham</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Third parameter of the Bingham distribution of largest likelihood, the smallest.</source>
      <translation>Tercer parámetro de la distribución de Bingham de máxima verosimilitud, el menor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the other plane</source>
      <translation>Buzamiento del otro plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the plane that bisects the other angle between the limbs; empty where polarity tells which.</source>
      <translation>Buzamiento del plano que biseca el otro ángulo entre los flancos; vacío donde la polaridad dice cuál.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strike of the other plane</source>
      <translation>Rumbo del otro plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strike of the plane that bisects the other angle between the limbs, dip to the right.</source>
      <translation>Rumbo del plano que biseca el otro ángulo entre los flancos, buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the bisecting plane</source>
      <translation>Buzamiento del plano bisector</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the plane that bisects the interlimb angle, or of the axial plane, as bis_from says.</source>
      <translation>Buzamiento del plano que biseca el ángulo entre flancos, o del plano axial, según bis_from.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What plane it is</source>
      <translation>Qué plano es</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>bisecting: between the limbs; axial_trace or cleavage: an axial plane, by what was mapped.</source>
      <translation>bisecting: entre los flancos; axial_trace o cleavage: un plano axial, por lo cartografiado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strike of the bisecting plane</source>
      <translation>Rumbo del plano bisector</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strike with the dip to the right, from true north.</source>
      <translation>Rumbo con el buzamiento a la derecha, desde el norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Part of the row</source>
      <translation>Parte de la fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Which attitude of the notebook's row this is, counted from 1.</source>
      <translation>Qué actitud de la fila de la libreta es esta, contada desde 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Row of the notebook</source>
      <translation>Fila de la libreta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Row of the table that came in, counted from 1.</source>
      <translation>Fila de la tabla de entrada, contada desde 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Codes</source>
      <translation>Códigos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What was noticed, for machines: codes with ; between them; empty where nothing was.</source>
      <translation>Lo que se notó, para máquinas: códigos con ; entre ellos; vacío donde no hubo nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the collar</source>
      <translation>Altura de la boca</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the mouth of the hole above sea level.</source>
      <translation>Altura de la boca del sondeo sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Compass</source>
      <translation>Brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the compass.</source>
      <translation>Nombre de la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Cone of confidence</source>
      <translation>Cono de confianza</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Half angle of the 95 per cent cone or, of axes, longer half angle of the region; of azimuths half of the range.</source>
      <translation>Semiángulo del cono del 95 por ciento o, de ejes, semiángulo mayor de la región; de azimutes, la mitad del rango.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Region of the cone's axis</source>
      <translation>Región del eje del cono</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Longer half angle of the 95 per cent region of the axis of a conical fold.</source>
      <translation>Semiángulo mayor de la región del 95 por ciento del eje de un pliegue cónico.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Cone of confidence, least</source>
      <translation>Cono de confianza, menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Shorter half angle of the 95 per cent region of a mean axis.</source>
      <translation>Semiángulo menor de la región del 95 por ciento de un eje medio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Radius of the cone</source>
      <translation>Radio del cono</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the axis of a conical fold and its poles, 0 to 90.</source>
      <translation>Ángulo entre el eje de un pliegue cónico y sus polos, 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth, converted</source>
      <translation>Azimut, convertido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The azimuth in the notation asked for, rounded.</source>
      <translation>El azimut en la notación pedida, redondeado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip, converted</source>
      <translation>Buzamiento, convertido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip or plunge in the notation asked for, rounded.</source>
      <translation>Buzamiento o inmersión en la notación pedida, redondeado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Letter, converted</source>
      <translation>Letra, convertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Letter for the side of the dip, where the notation has one.</source>
      <translation>Letra del lado del buzamiento, donde la notación tiene una.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Attitude, converted</source>
      <translation>Actitud, convertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The whole attitude in the notation asked for.</source>
      <translation>La actitud entera en la notación pedida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Meridian convergence</source>
      <translation>Convergencia de meridianos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of grid north from true north in the layer's CRS, east positive.</source>
      <translation>Azimut del norte de cuadrícula desde el norte verdadero en el SRC de la capa, positivo al este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Correction</source>
      <translation>Corrección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What was added to the reading to reach true north, clockwise positive: D - S, and what compass and attraction add.</source>
      <translation>Lo que se sumó a la lectura para llegar al norte verdadero, positivo en sentido horario: D - S, y lo que suman la brújula y la atracción.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Name</source>
      <translation>Nombre</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the contact, fault or unit that is met.</source>
      <translation>Nombre del contacto, la falla o la unidad que se encuentra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Crossing angle</source>
      <translation>Ángulo de cruce</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle at which the rays cross best, 0 to 90.</source>
      <translation>Ángulo con que mejor se cruzan las visuales, 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Curvature and refraction</source>
      <translation>Curvatura y refracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Share of the Earth's curvature and of refraction in the height; positive raises it.</source>
      <translation>Parte de la curvatura de la Tierra y de la refracción en la altura; positiva la eleva.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Change of azimuth</source>
      <translation>Cambio de azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What closing added to the azimuth of the leg.</source>
      <translation>Lo que el cierre sumó al azimut del tramo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Change of length</source>
      <translation>Cambio de longitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What closing added to the length of the leg.</source>
      <translation>Lo que el cierre sumó a la longitud del tramo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Range of dip direction, half</source>
      <translation>Intervalo de la dirección, mitad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Half of the 95 percent range of the dip direction.</source>
      <translation>Mitad del intervalo del 95 por ciento de la dirección de buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Declination</source>
      <translation>Declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of magnetic north from true north at the place and date, east positive.</source>
      <translation>Azimut del norte magnético desde el norte verdadero en el lugar y la fecha, positivo al este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Declination from</source>
      <translation>Declinación de</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>IGRF-14, WMM2025 and so on: the model; given; none where none was needed.</source>
      <translation>IGRF-14, WMM2025 y demás: el modelo; given: dada; none donde no hizo falta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Change of declination</source>
      <translation>Cambio de declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>° a year</source>
      <translation>° por año</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Yearly change of the declination, eastward positive.</source>
      <translation>Cambio anual de la declinación, positivo hacia el este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Depth</source>
      <translation>Profundidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Depth of the plane straight below the ground; negative where it is above ground.</source>
      <translation>Profundidad del plano en la vertical bajo el terreno; negativa donde está sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the plane, 0 to 90, downward.</source>
      <translation>Buzamiento del plano, 0 a 90, hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Distance to the attitude</source>
      <translation>Distancia a la actitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How far from the crossing its attitude was measured.</source>
      <translation>A qué distancia del cruce se midió su actitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Dip direction</source>
      <translation>Dirección de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth toward which the plane dips, from true north; empty for a level plane.</source>
      <translation>Azimut hacia el que buza el plano, desde el norte verdadero; vacío para un plano horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Attitude from</source>
      <translation>Actitud de</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>own: of the contact itself; named: nearest of the same name; nearest: nearest of all.</source>
      <translation>own: del contacto mismo; named: la más cercana del mismo nombre; nearest: la más cercana de todas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip, upper bound</source>
      <translation>Buzamiento, límite superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Upper end of the 95 percent range of the dip.</source>
      <translation>Extremo superior del intervalo del 95 por ciento del buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip, lower bound</source>
      <translation>Buzamiento, límite inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Lower end of the 95 percent range of the dip.</source>
      <translation>Extremo inferior del intervalo del 95 por ciento del buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip slip</source>
      <translation>Desplazamiento según buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Part of the slip down the dip of the fault; positive normal, negative reverse.</source>
      <translation>Componente del desplazamiento buzamiento abajo de la falla; positiva normal, negativa inversa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Distance along the section</source>
      <translation>Distancia a lo largo de la sección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Ground distance from the beginning of the section.</source>
      <translation>Distancia sobre el terreno desde el comienzo de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Domain</source>
      <translation>Dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of the structural domain, 1 for the one with most readings; empty outside all.</source>
      <translation>Número del dominio estructural, 1 para el que tiene más lecturas; vacío fuera de todos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Drift</source>
      <translation>Deriva</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Yearly change of the index error, positive where more has to be added each year.</source>
      <translation>Cambio anual del error de índice, positivo donde cada año hay que sumar más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Eigenvalue 1</source>
      <translation>Autovalor 1</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Largest eigenvalue of the orientation tensor; the three add up to 1.</source>
      <translation>Mayor autovalor del tensor de orientación; los tres suman 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Eigenvalue 2</source>
      <translation>Autovalor 2</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Second eigenvalue of the orientation tensor.</source>
      <translation>Segundo autovalor del tensor de orientación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Eigenvalue 3</source>
      <translation>Autovalor 3</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Smallest eigenvalue of the orientation tensor.</source>
      <translation>Menor autovalor del tensor de orientación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Element</source>
      <translation>Elemento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Which quantity of the magnetic field the line is of.</source>
      <translation>De qué magnitud del campo magnético es la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/north/north_angles.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Height</source>
      <translation>Cota</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height above sea level, never exaggerated.</source>
      <translation>Altura sobre el nivel del mar, nunca exagerada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Vertical angle</source>
      <translation>Ángulo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle of the sight above the horizon; negative below.</source>
      <translation>Ángulo de la visual sobre el horizonte; negativo debajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Greatest height</source>
      <translation>Altura máxima</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Of the ground along the line, above sea level.</source>
      <translation>Del terreno a lo largo de la línea, sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Least height</source>
      <translation>Altura mínima</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the ellipse</source>
      <translation>Azimut de la elipse</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the long axis from true north, 0 to 180.</source>
      <translation>Azimut del eje mayor desde el norte verdadero, 0 a 180.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Evidence in words</source>
      <translation>Indicio en palabras</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What speaks for the suspicion, in words.</source>
      <translation>Lo que apoya la sospecha, en palabras.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Evidence</source>
      <translation>Indicio</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How many times likelier the best repair is than the row as it stands, at most a million.</source>
      <translation>Cuántas veces más verosímil es el mejor arreglo que la fila como está, un millón como máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Total intensity</source>
      <translation>Intensidad total</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strength of the magnetic field.</source>
      <translation>Fuerza del campo magnético.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the fault that cuts the contact off.</source>
      <translation>Nombre de la falla que corta el contacto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>First date</source>
      <translation>Primera fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>First day that was read.</source>
      <translation>Primer día que se leyó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Shape of the fold</source>
      <translation>Forma del pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>cylinder, cone or undetermined, as the poles want it.</source>
      <translation>cylinder (cilindro), cone (cono) o undetermined (indeterminada), según piden los polos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Fore bearing, corrected</source>
      <translation>Rumbo directo, corregido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Fore bearing as read</source>
      <translation>Rumbo directo leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>From</source>
      <translation>Desde</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Where the stretch begins, along the line.</source>
      <translation>Dónde empieza el trecho, a lo largo de la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Slip from the marker's trace</source>
      <translation>Desplazamiento y traza del marcador</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the slip line and the trace of the marker on the fault, 0 to 90; under 10 nothing is known.</source>
      <translation>Ángulo entre la línea de desplazamiento y la traza del marcador en la falla, 0 a 90; por debajo de 10 no se sabe nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Grade</source>
      <translation>Pendiente</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>%</source>
      <translation>%</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Rise over run along the line; upward positive.</source>
      <translation>Subida sobre avance a lo largo de la línea; positiva hacia arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Grid magnetic angle</source>
      <translation>Ángulo de cuadrícula a magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What is added to a magnetic azimuth to plot it on the grid: declination minus convergence, east positive.</source>
      <translation>Lo que se suma a un azimut magnético para llevarlo a la cuadrícula: declinación menos convergencia, positivo al este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Group</source>
      <translation>Grupo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the points or sights that belong together.</source>
      <translation>Nombre de los puntos o visuales que van juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Below</source>
      <translation>Por debajo de</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The horizontal field is weaker than this in the area.</source>
      <translation>El campo horizontal es más débil que esto en el área.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Horizontal intensity</source>
      <translation>Intensidad horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strength of the magnetic field along the horizon, which turns the needle.</source>
      <translation>Fuerza del campo magnético en el horizonte, la que gira la aguja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Half of the band</source>
      <translation>Mitad de la banda</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Half of the width within which the construction is uncertain, 1-sigma.</source>
      <translation>Mitad del ancho en que la construcción es incierta, 1 sigma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Heave</source>
      <translation>Rechazo horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Level part of the dip slip; positive normal.</source>
      <translation>Parte horizontal del desplazamiento según buzamiento; positiva normal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Hole</source>
      <translation>Sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the borehole.</source>
      <translation>Nombre del sondeo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle at the plane</source>
      <translation>Ángulo con el plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the hole and the plane, 0 to 90.</source>
      <translation>Ángulo entre el sondeo y el plano, 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length of the hole</source>
      <translation>Longitud del sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length along the hole from its mouth.</source>
      <translation>Longitud a lo largo del sondeo desde su boca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Above ground</source>
      <translation>Sobre el terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1 where the construction lies above the ground, else 0.</source>
      <translation>1 donde la construcción queda sobre el terreno; si no, 0.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Inclination</source>
      <translation>Inclinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip of the magnetic field below the horizon; downward positive.</source>
      <translation>Inclinación del campo magnético bajo el horizonte; positiva hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Inclination of the hole</source>
      <translation>Inclinación del sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle of the hole below the horizon, 0 to 90.</source>
      <translation>Ángulo del sondeo bajo el horizonte, 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Index error</source>
      <translation>Error de índice</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What must be added to the readings of the compass, clockwise positive.</source>
      <translation>Lo que hay que sumar a las lecturas de la brújula, positivo en sentido horario.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Other interlimb angle</source>
      <translation>Otro ángulo entre flancos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The other angle the limbs may have; empty where polarity tells which.</source>
      <translation>El otro ángulo que pueden tener los flancos; vacío donde la polaridad dice cuál.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Interlimb angle</source>
      <translation>Ángulo entre flancos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the limbs, 0 to 180.</source>
      <translation>Ángulo entre los flancos, 0 a 180.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Concentration</source>
      <translation>Concentración</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Fisher's kappa, or of azimuths that of the von Mises distribution; larger is tighter.</source>
      <translation>kappa de Fisher o, de azimutes, la de la distribución de von Mises; mayor es más apretado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Kind of structure, as the data dictionary spells it.</source>
      <translation>Clase de estructura, como la escribe el diccionario de datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Label</source>
      <translation>Rótulo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Dip or plunge as printed beside the symbol; empty at 0 and 90, whose symbols say it.</source>
      <translation>Buzamiento o inmersión como se imprime junto al símbolo; vacío en 0 y 90, cuyos símbolos lo dicen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Last date</source>
      <translation>Última fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Last day that was read.</source>
      <translation>Último día que se leyó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Leg</source>
      <translation>Tramo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of the leg of the section, counted from 1.</source>
      <translation>Número del tramo de la sección, contado desde 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth in which the section is drawn at this place, from true north.</source>
      <translation>Azimut en que se dibuja la sección en este lugar, desde el norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length</source>
      <translation>Longitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Horizontal length on the ground.</source>
      <translation>Longitud horizontal sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length, adjusted</source>
      <translation>Longitud, ajustada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Horizontal length of the leg after the traverse was closed.</source>
      <translation>Longitud horizontal del tramo después de cerrar la poligonal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Line</source>
      <translation>Línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>best: the trace itself; plus and minus: the bounds that the uncertainty leaves.</source>
      <translation>best: la traza misma; plus y minus: los límites que deja la incertidumbre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the line</source>
      <translation>Azimut de la línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth from base to top, from true north.</source>
      <translation>Azimut de la base al techo, desde el norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Why the line ends</source>
      <translation>Por qué termina la línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What ended the line: its length, the DEM, or ground that is too gentle.</source>
      <translation>Lo que terminó la línea: su longitud, el MDE o un terreno demasiado suave.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Width on the map</source>
      <translation>Ancho en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Horizontal distance from base to top.</source>
      <translation>Distancia horizontal de la base al techo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Mean azimuth</source>
      <translation>Azimut medio</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Mean of azimuths alone, from true north, 0 to 360.</source>
      <translation>Media de azimutes solos, desde el norte verdadero, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Method</source>
      <translation>Método</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How the attitude was had: compass, points_dem, trace_dem, sighting.</source>
      <translation>Cómo se obtuvo la actitud: compass, points_dem, trace_dem, sighting.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Misfit</source>
      <translation>Desajuste</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle of the pole off the girdle of its domain.</source>
      <translation>Ángulo del polo respecto de la guirnalda de su dominio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Moved by closing</source>
      <translation>Movida por el cierre</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How far the station was moved when the traverse was closed.</source>
      <translation>Cuánto se movió la estación al cerrar la poligonal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Findings</source>
      <translation>Resultados</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of findings that were put together.</source>
      <translation>Número de resultados que se reunieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Legs</source>
      <translation>Lados</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of legs at the station.</source>
      <translation>Número de tramos en la estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Beds of the first limb</source>
      <translation>Capas del primer flanco</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of beds in the limb that has more.</source>
      <translation>Número de capas en el flanco que tiene más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Beds of the second limb</source>
      <translation>Capas del segundo flanco</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of beds in the other limb.</source>
      <translation>Número de capas en el otro flanco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Attitudes used</source>
      <translation>Actitudes usadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of attitudes the mean was taken of.</source>
      <translation>Número de actitudes de las que se tomó la media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Points</source>
      <translation>Puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of points the plane was laid through.</source>
      <translation>Número de puntos por los que pasa el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Rays</source>
      <translation>Líneas de las visuales</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of bearings the place was fixed from.</source>
      <translation>Número de rumbos con que se fijó el lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of readings of the compass.</source>
      <translation>Número de lecturas de la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Sights of the sun</source>
      <translation>Visuales al sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of the readings used that are of the sun.</source>
      <translation>Número de lecturas usadas que son del sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Readings used</source>
      <translation>Lecturas usadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Number of readings the index error was taken from.</source>
      <translation>Número de lecturas de las que se tomó el error de índice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Net slip</source>
      <translation>Desplazamiento neto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length of the slip, 0 or more.</source>
      <translation>Longitud del desplazamiento, 0 o más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the object</source>
      <translation>Altura del objeto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>m</source>
      <translation>m</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>From the foot that was sighted to the top.</source>
      <translation>Desde el pie visado hasta la cima.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Off the index error</source>
      <translation>Aparte del error de índice</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What would have to be added to the reading beside the index error.</source>
      <translation>Lo que habría que sumar a la lectura además del error de índice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Offset</source>
      <translation>Traslado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How far the datum was carried; positive from the right of the section.</source>
      <translation>Cuánto se llevó el dato; positivo desde la derecha de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Chance of a girdle</source>
      <translation>Probabilidad de una guirnalda</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Probability that poles on a girdle would look so much like a cone, 0 to 1; small means a cone.</source>
      <translation>Probabilidad de que polos en una guirnalda parecieran tanto un cono, 0 a 1; pequeña significa un cono.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Chance of an even spread</source>
      <translation>Probabilidad de un reparto uniforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Probability of such readings if they were spread evenly, 0 to 1; empty below 5 readings.</source>
      <translation>Probabilidad de tales lecturas si estuvieran repartidas por igual, 0 a 1; vacía con menos de 5 lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the parts</source>
      <translation>Ángulo entre las partes</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle between the two parts an attitude was put together from, 0 to 90.</source>
      <translation>Ángulo entre las dos partes de que se compuso una orientación, 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Distance to the plane</source>
      <translation>Distancia al plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How far from here the plane was measured.</source>
      <translation>A qué distancia de aquí se midió el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the plane</source>
      <translation>Altura del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the plane above sea level at this place.</source>
      <translation>Altura del plano sobre el nivel del mar en este lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the plane</source>
      <translation>Nombre del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the plane that was used.</source>
      <translation>Nombre del plano que se usó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Row of the plane</source>
      <translation>Fila del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Id of the row of the plane that was used.</source>
      <translation>Identificador de la fila del plano que se usó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Smallest scale</source>
      <translation>Escala más pequeña</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Denominator of the smallest scale at which the row is printed; 0 and empty: always.</source>
      <translation>Denominador de la escala más pequeña a la que se imprime la fila; 0 y vacío: siempre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Plunge of the line, 0 to 90, downward.</source>
      <translation>Inmersión de la línea, 0 a 90, hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>upright, overturned or unknown.</source>
      <translation>upright, overturned o unknown.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Length R</source>
      <translation>Longitud R</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Length of the vector sum of the readings, 0 to n; of azimuths alone over n, 0 to 1.</source>
      <translation>Longitud de la suma vectorial de las lecturas, 0 a n; de azimutes solos, dividida por n, 0 a 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Range</source>
      <translation>Alcance</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Horizontal distance to where the sight meets the ground.</source>
      <translation>Distancia horizontal hasta donde la visual toca el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Range, angle one sigma higher</source>
      <translation>Alcance, ángulo un sigma mayor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Empty where such a sight meets no ground.</source>
      <translation>Vacío donde tal visual no toca terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Range, angle one sigma lower</source>
      <translation>Alcance, ángulo un sigma menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Date</source>
      <translation>Fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Date that was used for the reading.</source>
      <translation>Fecha que se usó para la lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Remark</source>
      <translation>Observación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What was noticed, in sentences.</source>
      <translation>Lo que se notó, en frases.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Residual, corrected</source>
      <translation>Residuo, corregido</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Back bearing minus fore bearing minus 180, after the corrections for attraction.</source>
      <translation>Rumbo inverso menos rumbo directo menos 180, después de corregir la atracción.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Residual as read</source>
      <translation>Residuo leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Back bearing minus fore bearing minus 180, as read.</source>
      <translation>Rumbo inverso menos rumbo directo menos 180, como se leyeron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Residual</source>
      <translation>Residuo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What would have to be added to the bearing to meet the place.</source>
      <translation>Lo que habría que sumar al rumbo para dar en el lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Ring setting</source>
      <translation>Ajuste del anillo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Declination dialled into the compass, east positive; empty where the reading is not magnetic.</source>
      <translation>Declinación puesta en la brújula, positiva al este; vacía donde la lectura no es magnética.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Rise</source>
      <translation>Desnivel</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the end of the leg above its start.</source>
      <translation>Altura del final del tramo sobre su comienzo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Root mean square</source>
      <translation>Raíz cuadrática media</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>m or °</source>
      <translation>m o °</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Spread about the fit: metres for points about a plane, degrees for bearings.</source>
      <translation>Dispersión en torno al ajuste: metros para puntos en torno a un plano, grados para rumbos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Rule of carrying</source>
      <translation>Regla de proyección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>perpendicular, along_strike or along_axis.</source>
      <translation>perpendicular, along_strike o along_axis.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Scatter</source>
      <translation>Dispersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the rock's own scatter, in each direction; of folds off the girdle.</source>
      <translation>1-sigma de la dispersión propia de la roca, en cada dirección; de pliegues, respecto de la guirnalda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Section</source>
      <translation>Sección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the section.</source>
      <translation>Nombre de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Long half axis</source>
      <translation>Semieje mayor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Of the ellipse that holds the place with 95 percent probability.</source>
      <translation>De la elipse que contiene el lugar con 95 por ciento de probabilidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Short half axis</source>
      <translation>Semieje menor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Shape K</source>
      <translation>Forma K</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Woodcock's K: above 1 a cluster, below 1 a girdle.</source>
      <translation>K de Woodcock: más de 1, un conjunto; menos de 1, una guirnalda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty sideways</source>
      <translation>Incertidumbre lateral</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma that the bearing leaves, across the sight.</source>
      <translation>1 sigma que deja el rumbo, a través de la visual.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of what to add</source>
      <translation>Incertidumbre de lo que se suma</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of to_add.</source>
      <translation>1 sigma de to_add.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the attraction</source>
      <translation>Incertidumbre de la atracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of attr_corr.</source>
      <translation>1 sigma de attr_corr.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the azimuth</source>
      <translation>Incertidumbre del azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the true azimuth.</source>
      <translation>1 sigma del azimut verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty by the clock</source>
      <translation>Incertidumbre por el reloj</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What the clock's error adds, 1-sigma.</source>
      <translation>Lo que añade el error del reloj, 1 sigma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Uncertainty of the declination</source>
      <translation>Incertidumbre de la declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the declination.</source>
      <translation>1 sigma de la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the depth</source>
      <translation>Incertidumbre de la profundidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the depth.</source>
      <translation>1 sigma de la profundidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the dip slip</source>
      <translation>Incertidumbre según buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the dip slip.</source>
      <translation>1-sigma del desplazamiento según buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the drift</source>
      <translation>Incertidumbre de la deriva</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the drift.</source>
      <translation>1 sigma de la deriva.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the height</source>
      <translation>Incertidumbre de la altura</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the height.</source>
      <translation>1 sigma de la altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the heave</source>
      <translation>Incertidumbre del rechazo horiz.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the heave.</source>
      <translation>1-sigma del rechazo horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the height of the object.</source>
      <translation>1 sigma de la altura del objeto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty along the hole</source>
      <translation>Incertidumbre a lo largo del sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the length at which the hole meets the plane.</source>
      <translation>1 sigma de la longitud a la que el sondeo corta el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the index error</source>
      <translation>Incertidumbre del error de índice</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the index error.</source>
      <translation>1 sigma del error de índice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the meeting</source>
      <translation>Incertidumbre del corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the place where the hole meets the plane.</source>
      <translation>1 sigma del lugar donde el sondeo corta el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the net slip</source>
      <translation>Incertidumbre del despl. neto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the net slip.</source>
      <translation>1-sigma del desplazamiento neto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the pole</source>
      <translation>Incertidumbre del polo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the direction of the pole, or of the line.</source>
      <translation>1 sigma de la dirección del polo, o de la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the place</source>
      <translation>Incertidumbre del lugar</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma in easting and in northing.</source>
      <translation>1 sigma en este y en norte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the strike slip</source>
      <translation>Incertidumbre según rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the strike slip.</source>
      <translation>1-sigma del desplazamiento según rumbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the thickness</source>
      <translation>Incertidumbre de la potencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the thickness.</source>
      <translation>1 sigma de la potencia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the throw</source>
      <translation>Incertidumbre del rechazo vert.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the throw.</source>
      <translation>1-sigma del rechazo vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty of the turn</source>
      <translation>Incertidumbre del giro</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the turn.</source>
      <translation>1 sigma del giro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Uncertainty used</source>
      <translation>Incertidumbre usada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of the pole that the bounds were drawn with.</source>
      <translation>1 sigma del polo con que se trazaron los límites.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Rake of the slip</source>
      <translation>Cabeceo del desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Way of the hanging wall from the strike, -180 to 180: 0 sinistral, 90 normal, 180 dextral, -90 reverse.</source>
      <translation>Dirección del bloque de techo desde el rumbo, -180 a 180: 0 sinistral, 90 normal, 180 dextral, -90 inversa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Slope</source>
      <translation>Pendiente</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Slope from base to top; upward positive.</source>
      <translation>Pendiente de la base al techo; positiva hacia arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Scatter of a reading</source>
      <translation>Dispersión de una lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>1-sigma of one reading of the compass.</source>
      <translation>1 sigma de una lectura de la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the station.</source>
      <translation>Nombre de la estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Status</source>
      <translation>Estado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>ok, warning or rejected.</source>
      <translation>ok, warning o rejected.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strength C</source>
      <translation>Intensidad C</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Woodcock's C, ln(S1/S3): larger is tighter.</source>
      <translation>C de Woodcock, ln(S1/S3): mayor es más apretado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth from true north with the dip to the right, 0 to 360; empty for a level plane.</source>
      <translation>Azimut desde el norte verdadero con el buzamiento a la derecha, 0 a 360; vacío para un plano horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Strike slip</source>
      <translation>Desplazamiento según rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Part of the slip along the strike; positive sinistral, negative dextral.</source>
      <translation>Componente del desplazamiento a lo largo del rumbo; positiva sinistral, negativa dextral.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the sun</source>
      <translation>Altura del sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle above the horizon as seen, lifted by the air.</source>
      <translation>Ángulo sobre el horizonte como se ve, elevado por el aire.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the sun</source>
      <translation>Azimut del sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the sun's centre from true north, 0 to 360.</source>
      <translation>Azimut del centro del sol desde el norte verdadero, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Local time</source>
      <translation>Hora local</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Time on the clock, with its zone.</source>
      <translation>Hora del reloj, con su zona.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Rate of the azimuth</source>
      <translation>Variación del azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>° a minute</source>
      <translation>° por minuto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>How fast the sun's azimuth grows.</source>
      <translation>Con qué rapidez crece el azimut del sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Reading due</source>
      <translation>Lectura debida</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What a sound compass shows toward the sun.</source>
      <translation>Lo que muestra una brújula sana hacia el sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the shadow</source>
      <translation>Azimut de la sombra</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of a shadow from true north, 0 to 360.</source>
      <translation>Azimut de una sombra desde el norte verdadero, 0 a 360.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Universal time</source>
      <translation>Hora universal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Time in UTC.</source>
      <translation>Hora en UTC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Suspicion</source>
      <translation>Sospecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The slips that are suspected, with ; between them; empty where none is.</source>
      <translation>Los errores que se sospechan, con ; entre ellos; vacío donde no hay ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Symbol</source>
      <translation>Símbolo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>FGDC reference number of the symbol; those that begin with ag. are our own.</source>
      <translation>Número de referencia FGDC del símbolo; los que empiezan con ag. son propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Sighted</source>
      <translation>Visado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Whether the reading is along a known line or of the sun: line, sun.</source>
      <translation>Si la lectura es de una línea conocida o del sol: line, sun.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the target</source>
      <translation>Altura del objetivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height of the place where the hole meets the plane, above sea level.</source>
      <translation>Altura del lugar donde el sondeo corta el plano, sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>True thickness</source>
      <translation>Potencia verdadera</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>At right angles to the bedding.</source>
      <translation>Perpendicular a la estratificación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Thinness</source>
      <translation>Delgadez</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Second over first singular value of the points: 1 for a round group, 0 for a line.</source>
      <translation>Segundo valor singular de los puntos sobre el primero: 1 para un grupo redondo, 0 para una línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Throw</source>
      <translation>Rechazo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Vertical part of the slip; positive where the hanging wall went down.</source>
      <translation>Parte vertical del desplazamiento; positiva donde bajó el bloque de techo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Kind of tick</source>
      <translation>Clase de marca</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>inclined, overturned, vertical or line.</source>
      <translation>inclined, overturned, vertical o line.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>To be added</source>
      <translation>Por sumar</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What must be added to the reading to reach the known azimuth, clockwise positive.</source>
      <translation>Lo que hay que sumar a la lectura para llegar al azimut conocido, positivo en sentido horario.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>To, along the section</source>
      <translation>Hasta, a lo largo de la sección</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Where the stretch ends; for points the same as distance.</source>
      <translation>Dónde termina el trecho; en los puntos, lo mismo que distance.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>To</source>
      <translation>Hasta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Where the stretch ends, along the line.</source>
      <translation>Dónde termina el trecho, a lo largo de la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Angle to the top</source>
      <translation>Ángulo a la cima</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Elevation angle to the top of the object, positive upward.</source>
      <translation>Ángulo de elevación a la cima del objeto, positivo hacia arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Azimuth of the line from true north, toward its downward end; empty for a vertical line.</source>
      <translation>Azimut de la línea desde el norte verdadero, hacia el extremo que baja; vacío para una línea vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Turn</source>
      <translation>Giro</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What must be added to all bearings to make them agree, clockwise positive.</source>
      <translation>Lo que hay que sumar a todos los rumbos para que concuerden, positivo en sentido horario.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Code of the map unit.</source>
      <translation>Código de la unidad cartográfica.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Colour of the unit</source>
      <translation>Color de la unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Colour on the map, as #rrggbb.</source>
      <translation>Color en el mapa, como #rrggbb.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the unit</source>
      <translation>Nombre de la unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Name of the map unit.</source>
      <translation>Nombre de la unidad cartográfica.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Order of the unit</source>
      <translation>Orden de la unidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Place in the sequence, 1 for the youngest unit on the map.</source>
      <translation>Lugar en la secuencia, 1 para la unidad más joven del mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Value</source>
      <translation>Valor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>as element</source>
      <translation>como el elemento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Value of the element along the line; of the declination in degrees, east positive.</source>
      <translation>Valor del elemento a lo largo de la línea; de la declinación en grados, positivo al este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Value as printed</source>
      <translation>Valor impreso</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>The value as it stands beside the line.</source>
      <translation>El valor como está junto a la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <location filename="../processing_algs/sections/shared.py" />
      <source>Vertical exaggeration</source>
      <translation>Exageración vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Height scale over length scale of the section.</source>
      <translation>Escala de alturas sobre escala de longitudes de la sección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What it is</source>
      <translation>Qué es</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>What the line or area is: ground, contact, fault, unit, hole or axis.</source>
      <translation>Qué es la línea o el área: terreno, contacto, falla, unidad, sondeo o eje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Where</source>
      <translation>Dónde</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>below_ground: still in the ground; above_ground: worn away.</source>
      <translation>below_ground: aún bajo el terreno; above_ground: erosionado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>Zone</source>
      <translation>Zona</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_meanings.py" />
      <source>blackout: a compass fails; caution: a needle is sluggish.</source>
      <translation>blackout: la brújula falla; caution: la aguja es perezosa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/formats.py" />
      <source>{file}: this kind of file holds no rows without geometry; choose .gpkg or .csv.</source>
      <translation>{file}: este tipo de archivo no admite filas sin geometría; elija .gpkg o .csv.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/formats.py" />
      <source>{file}: this kind of file cannot hold the raw bytes in {fields}; choose .gpkg.</source>
      <translation>{file}: este tipo de archivo no admite los bytes de {fields}; elija .gpkg.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/formats.py" />
      <location filename="../processing_algs/run.py" />
      <source>The input's field {old} is called {new} in the output.</source>
      <translation>El campo {old} de la entrada se llama {new} en la salida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {file} is there already and is no report of Agonic; choose another name.</source>
      <translation>{key}: {file} ya existe y no es un informe de Agonic; elija otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {file} cannot be read: {reason}</source>
      <translation>{key}: no se puede leer {file}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {file} holds {others} already. To add a table to it, give the output as {form}; else choose another file.</source>
      <translation>{key}: {file} ya contiene {others}. Para añadirle una tabla, indique la salida como {form}; si no, elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {name} in {file} is no table of rows and is not replaced.</source>
      <translation>{key}: {name} en {file} no es una tabla de filas y no se reemplaza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {name} is a name that the database needs itself.</source>
      <translation>{key}: {name} es un nombre que la propia base de datos necesita.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {file} holds the layers {others}; choose another file.</source>
      <translation>{key}: {file} contiene las capas {others}; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/kinds.py" />
      <source>{key}: {file} is there already and is a file of another kind; choose another name.</source>
      <translation>{key}: {file} ya existe y es un archivo de otro tipo; elija otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>MODEL is given, so DECLINATION or DECLINATION_FIELD is needed.</source>
      <translation>MODEL es given: hace falta DECLINATION o DECLINATION_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>DECLINATION is used only when MODEL is given; choose one of the two.</source>
      <translation>DECLINATION solo se usa cuando MODEL es given; elija una de las dos cosas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>GRID_CRS: {grid} has no grid from whose north azimuths could be counted.</source>
      <translation>GRID_CRS: {grid} no tiene una cuadrícula a cuyo norte puedan referirse los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>The declination changes from year to year, so the readings need a date: give DATE or DATE_FIELD, or set MODEL to given and state the declination. No row has a date.</source>
      <translation>La declinación cambia de un año a otro, así que las lecturas necesitan fecha: indique DATE o DATE_FIELD, o ponga MODEL en given y dé la declinación. Ninguna fila tiene fecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{signed}° ({plain})</source>
      <translation>{signed}° ({plain})</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{size} E</source>
      <translation>{size} E</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{size} W</source>
      <translation>{size} O</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{low} to {high}</source>
      <translation>{low} a {high}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>none used</source>
      <translation>no se usó ninguna</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{first} to {last}</source>
      <translation>de {first} a {last}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>none</source>
      <translation>no hay</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>ring taken as 0 in {count} rows, since nobody set it</source>
      <translation>limbo tomado como 0 en {count} filas, porque nadie indicó su ajuste</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{setting}° in {count} rows</source>
      <translation>{setting}° en {count} fila(s)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>no magnetic rows</source>
      <translation>no hay filas magnéticas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>their own rows</source>
      <translation>sus propias filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>RINGS</source>
      <translation>RINGS</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>the check of the compass</source>
      <translation>la comprobación de la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>the rows before, since theirs was blank</source>
      <translation>las filas anteriores, porque la suya estaba en blanco</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>the setting of the run</source>
      <translation>el ajuste de la ejecución</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>Bearings by north: {counts}</source>
      <translation>Rumbos por norte: {counts}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>grid: {name}</source>
      <translation>cuadrícula: {name}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>declination {span} from {sources}</source>
      <translation>declinación {span} de {sources}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>ring setting: {rings}</source>
      <translation>ajuste del limbo: {rings}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{error}° in {count} rows</source>
      <translation>{error}° en {count} filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>added for the compass: {added}</source>
      <translation>sumado por la brújula: {added}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>corrected for local attraction: {count}</source>
      <translation>corregidas de atracción local: {count}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>read at the south end of the needle, 180° added: {count}</source>
      <translation>leídas en el extremo sur de la aguja, 180° sumados: {count}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>Norths</source>
      <translation>Nortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>rows by the north they were read from</source>
      <translation>filas según el norte al que se refieren</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>rows by source of their declination</source>
      <translation>filas según la procedencia de su declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>level or upright: they need no north</source>
      <translation>horizontales o verticales: no necesitan norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>declination used, east positive</source>
      <translation>declinación usada, positiva al este</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>dates</source>
      <translation>fechas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>ring setting of the compass, east positive</source>
      <translation>ajuste del limbo de la brújula, positivo al este</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>ring settings by who stated them</source>
      <translation>ajustes del limbo según quién los indicó</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>added for the check of the compass</source>
      <translation>sumado por la comprobación de la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>declination of the checks</source>
      <translation>declinación de las comprobaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>corrected for local attraction</source>
      <translation>corregidas de atracción local</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>read at the south end of the needle, 180° added</source>
      <translation>leídas en el extremo sur de la aguja, 180° sumados</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>grid of the grid readings</source>
      <translation>cuadrícula de las lecturas de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <location filename="../processing_algs/gis/run_table.py" />
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>what</source>
      <translation>dato</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <location filename="../processing_algs/gis/run_table.py" />
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>value</source>
      <translation>valor</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings were magnetic; their declinations run from {span}.</source>
      <translation>{count} lecturas eran magnéticas; sus declinaciones van de {span}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings were magnetic.</source>
      <translation>{count} lecturas eran magnéticas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>For {count} of them the declination at place and date ({dates}) is from {model}.</source>
      <translation>Para {count} de ellas la declinación del lugar y la fecha ({dates}) es de {model}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>For {count} of them it was given by the mapper.</source>
      <translation>Para {count} de ellas la dio el geólogo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>For {count} of them nobody stated a ring setting, and it was taken as 0.</source>
      <translation>Para {count} de ellas nadie indicó el ajuste del limbo, y se tomó como 0.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>For {count} of them the ring setting was allowed for ({rings}; stated by: {sources}).</source>
      <translation>Para {count} de ellas se tuvo en cuenta el ajuste del limbo ({rings}; indicado por: {sources}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{error}° in {count}</source>
      <translation>{error}° en {count}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>What a check of the compass had found was added to the readings: {added}.</source>
      <translation>Se sumó a las lecturas lo que había hallado una comprobación de la brújula: {added}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings were counted from true north already.</source>
      <translation>{count} lecturas estaban ya referidas al norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings were counted from the north of the grid {grid}.</source>
      <translation>{count} lecturas estaban referidas al norte de la cuadrícula {grid}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>To {count} readings was added what is known of local attraction at their stations.</source>
      <translation>A {count} lecturas se sumó lo que se sabe de la atracción local en sus estaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings were taken at the south end of the needle; 180° was added.</source>
      <translation>{count} lecturas se tomaron en el extremo sur de la aguja; se sumaron 180°.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{count} readings are level or upright and need no north.</source>
      <translation>{count} lecturas son horizontales o verticales y no necesitan norte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_words.py" />
      <source>{setting}° in {count}</source>
      <translation>{setting}° en {count}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Rows</source>
      <translation>Filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>status</source>
      <translation>estado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>ok</source>
      <translation>sin observaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>warning</source>
      <translation>aviso</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>rejected</source>
      <translation>rechazo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>read in all</source>
      <translation>leídas en total</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <source>Look at this first</source>
      <translation>Mire esto primero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>code</source>
      <translation>código</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <source>what was noticed</source>
      <translation>qué se observó</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>What was noticed, row by row</source>
      <translation>Qué se observó, fila por fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>first rows</source>
      <translation>primeras filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>for example</source>
      <translation>por ejemplo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <source>Rejected rows and rows with a warning</source>
      <translation>Filas rechazadas y filas con advertencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <source>The first {count} of {total} rows; the output layer has them all, in status, code and remark.</source>
      <translation>Las primeras {count} de {total} filas; la capa de salida las tiene todas, en status, code y remark.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/noticed.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/sightings/compass_report.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>remark</source>
      <translation>observación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/outputs.py" />
      <source>Nothing can be written at {place}: {reason}</source>
      <translation>No se puede escribir nada en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/outputs.py" />
      <source>{reason} What was there before could not be put back; it is kept in: {folders}.</source>
      <translation>{reason} Lo que había antes no se pudo devolver a su lugar; se conserva en: {folders}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/pages.py" />
      <location filename="../processing_algs/sheet/frame.py" />
      <source>There is no coordinate reference system that leads to places on Earth.</source>
      <translation>No hay un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/pages.py" />
      <source>The extent cannot be brought into {crs}: {reason}</source>
      <translation>La extensión no se puede llevar a {crs}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/pages.py" />
      <source>The place has no coordinate reference system.</source>
      <translation>El lugar no tiene sistema de referencia de coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/places.py" />
      <location filename="../processing_algs/sections/axes.py" />
      <location filename="../processing_algs/sections/borehole_block.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>{key}: the layer has no coordinate reference system that leads to places on Earth.</source>
      <translation>{key}: la capa no tiene un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/placing.py" />
      <source>the database refused it</source>
      <translation>la base de datos lo rechazó</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/point_rows.py" />
      <source>{count} rows lie far from all others: wrong coordinates?</source>
      <translation>{count} filas están lejos de todas las demás: ¿coordenadas erróneas?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/point_rows.py" />
      <source>row {number}</source>
      <translation>fila {number}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/point_rows.py" />
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{name} (row {number})</source>
      <translation>{name} (fila {number})</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/proof.py" />
      <source>the folder is empty</source>
      <translation>la carpeta está vacía</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/proof.py" />
      <source>the file is not there</source>
      <translation>el archivo no está</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/proof.py" />
      <source>the database is still open</source>
      <translation>la base de datos sigue abierta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/proof.py" />
      <source>it cannot be opened again</source>
      <translation>no se puede abrir de nuevo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/provenance.py" />
      <location filename="../processing_algs/gis/run_table.py" />
      <source>tool</source>
      <translation>herramienta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/provenance.py" />
      <source>version</source>
      <translation>versión</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/provenance.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>date</source>
      <translation>fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/provenance.py" />
      <source>This run</source>
      <translation>Esta ejecución</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/provenance.py" />
      <source>(selected rows)</source>
      <translation>(filas seleccionadas)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/relief.py" />
      <source>The contours could not be drawn: {reason}</source>
      <translation>No se pudieron dibujar las curvas de nivel: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/relief.py" />
      <source>The DEM cannot be read: {reason}</source>
      <translation>No se puede leer el MDE: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/relief.py" />
      <location filename="../processing_algs/gis/sinks.py" />
      <source>Cancelled before anything was written.</source>
      <translation>Cancelado antes de escribir nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No reading in the {column}: it is empty, or a number that stands for none.</source>
      <translation>Sin lectura ({column}): el dato está vacío o es un número que significa «sin lectura».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Azimuth {value} is outside 0 to {limit}. {unit_hint}</source>
      <translation>El azimut {value} está fuera del intervalo de 0 a {limit}. {unit_hint}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Quadrant bearing {value}: the angle is over 90. {suggestion}</source>
      <translation>Rumbo cuadrantal {value}: el ángulo pasa de 90. {suggestion}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Dip or plunge {value} is outside 0 to 90.</source>
      <translation>El buzamiento o inmersión {value} está fuera del intervalo de 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} is outside 0 to {limit}.</source>
      <translation>El cabeceo {value} está fuera del intervalo de 0 a {limit}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} has no strike to be counted from, since the plane is horizontal.</source>
      <translation>El cabeceo {value} no tiene rumbo desde el que contarse, porque el plano es horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Rake {value} was not used, since the row is a plane.</source>
      <translation>El cabeceo {value} no se usó, porque la fila es un plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The letter {letter} lies along the strike {azimuth}, so it does not tell the side of the dip; the nearest valid readings are {first} and {second}.</source>
      <translation>La letra {letter} coincide con la línea de rumbo {azimuth} y no indica el lado del buzamiento; las lecturas válidas más próximas son {first} y {second}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row says two things: {written} is written where {expected} is expected. {left_hand}</source>
      <translation>La fila se contradice: pone {written} donde se espera {expected}. {left_hand}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>"{value}" does not say to which side the plane dips.</source>
      <translation>«{value}» no indica hacia qué lado buza el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The {column} "{value}" cannot be read.</source>
      <translation>No se puede interpretar «{value}» ({column}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>"{value}" has compass letters of another language; the choices {choices} of COMPASS_LETTERS would read it.</source>
      <translation>«{value}» tiene letras de la brújula de otro idioma; la leerían las opciones {choices} de COMPASS_LETTERS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>In the pair "{value}" nothing tells which number is the azimuth, or what the azimuth means.</source>
      <translation>En el par «{value}» nada indica qué número es el azimut, o qué significa el azimut.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The comma in "{value}" may be decimal or may part two numbers.</source>
      <translation>La coma de «{value}» puede ser decimal o separar dos números.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The kind is a plane but the reading is a line, or the other way round ({value}).</source>
      <translation>El tipo es un plano pero la lectura es una línea, o al revés ({value}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{value} is a line with two ends; a bearing, trend or dip direction has one.</source>
      <translation>{value} es una línea con dos extremos; un rumbo, un azimut de inmersión o una dirección de buzamiento tiene uno solo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The kind "{value}" is not known; read as {used}.</source>
      <translation>No se conoce el tipo «{value}»; se leyó como {used}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The polarity "{value}" is not known; taken as unknown.</source>
      <translation>No se conoce la polaridad «{value}»; se tomó como unknown (desconocida).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The quality "{value}" is no number of degrees; the reading is taken as good.</source>
      <translation>La calidad «{value}» no es un número de grados; la lectura se toma como buena.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The type "{value}" is not known; the line is drawn as one of no known type.</source>
      <translation>No se conoce el tipo «{value}»; la línea se dibuja como de tipo desconocido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The type "{value}" is not known; it is kept as written, and its definition is missing.</source>
      <translation>El tipo "{value}" no se conoce; se conserva como está escrito, y falta su definición.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row was rejected by the run that made it, so it is left out.</source>
      <translation>La fila fue rechazada por el proceso que la hizo, así que se omite.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The Glossary does not say what Azimuth means for "{value}", and no convention was chosen for that case.</source>
      <translation>El Glossary no dice qué significa Azimuth para "{value}", y no se eligió convención para ese caso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No unit is named for this area.</source>
      <translation>No se nombra ninguna unidad para esta área.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The unit "{value}" is not in the table of units.</source>
      <translation>La unidad "{value}" no está en la tabla de unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>"{value}" does not say how well the line is located; drawn as approximate.</source>
      <translation>«{value}» no indica con qué exactitud está situada la línea; se dibuja como aproximada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>How far the line may lie off is not known; drawn as approximate.</source>
      <translation>No se sabe cuánto puede apartarse la línea de su sitio; se dibuja como aproximada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>"{value}" does not say whether the line is concealed; taken as no.</source>
      <translation>«{value}» no indica si la línea está cubierta; se toma como no.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The confidence "{value}" is not known; drawn as questionable.</source>
      <translation>No se conoce la confianza «{value}»; se dibuja como dudosa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No date, so the declination is not known.</source>
      <translation>Sin fecha: no se conoce la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ring was set to {value} here, and to something else when the compass was checked; its index error may be another.</source>
      <translation>Aquí el limbo estaba en {value}, y en otro valor cuando se comprobó la brújula; su error de índice puede ser otro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Nobody stated the ring setting when the compass was checked, so its index error may hold the ring setting too.</source>
      <translation>Nadie indicó el ajuste del limbo al comprobar la brújula, así que su error de índice puede incluirlo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} can be read in more than one way; write it like 2026-06-01, or state the order of day and month and write all four digits of the year.</source>
      <translation>La fecha {value} se puede leer de varias maneras; escríbala como 2026-06-01, o indique el orden de día y mes y ponga las cuatro cifras del año.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} looks like the day number of a spreadsheet; if it is one, choose serial as the order of numeric dates.</source>
      <translation>La fecha {value} parece el número de día de una hoja de cálculo; si lo es, elija serial como orden de las fechas numéricas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The date "{value}" cannot be read.</source>
      <translation>No se puede interpretar la fecha «{value}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} is only a year or a month; its middle, {used}, was used.</source>
      <translation>La fecha {value} es solo un año o un mes; se usó su punto medio, {used}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Date {value} is outside {first} to {last}, the years of {model}.</source>
      <translation>La fecha {value} está fuera del periodo de {model}, de {first} a {last}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Before 1945 the field was less well known; the stated uncertainty is optimistic.</source>
      <translation>Antes de 1945 el campo magnético se conocía peor; la incertidumbre indicada es optimista.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The horizontal field is weak here ({h} nT); a needle is sluggish and declination uncertain. Azimuths by the sun or by satellite, read as true, do not depend on it.</source>
      <translation>El campo horizontal es débil aquí ({h} nT); la aguja es perezosa y la declinación incierta. Los azimuts por el sol o por satélite, leídos como verdaderos, no dependen de él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The horizontal field is too weak here ({h} nT) for a compass. What helps are azimuths by the sun or by satellite, read as true; or give the declination yourself.</source>
      <translation>El campo horizontal es demasiado débil aquí ({h} nT) para una brújula. Ayudan los azimuts por el sol o por satélite, leídos como verdaderos; o dé usted la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No position on Earth: the row has no point, or the layer no coordinate reference system. Nothing that depends on the place is known.</source>
      <translation>Sin posición en la Tierra: la fila no tiene punto o la capa no tiene sistema de referencia de coordenadas. No se conoce nada de lo que depende del lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No declination is given for this row.</source>
      <translation>Esta fila no tiene declinación dada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The declination -9 was taken as one; without a date nothing tells whether it stands for none.</source>
      <translation>La declinación -9 se tomó como tal; sin fecha nada dice si significa ninguna.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The declination {value} stands for none; it was taken as not given.</source>
      <translation>La declinación {value} significa ninguna; se tomó como no dada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Declination {value} is no number of degrees from -180 to 180; east is positive, west negative.</source>
      <translation>La declinación {value} no es un número de grados entre -180 y 180; el este es positivo y el oeste negativo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Ring setting {value} is no number of degrees from -180 to 180; east is positive, west negative.</source>
      <translation>El ajuste del limbo {value} no es un número de grados entre -180 y 180; el este es positivo y el oeste negativo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Ring setting {value} is far from the declination {decl} and from its opposite; check it.</source>
      <translation>El ajuste del limbo {value} queda lejos de la declinación {decl} y de su opuesta; revíselo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>This place lies {distance} km from its third-nearest neighbour, far from all the rest: a digit lost, or easting and northing swapped?</source>
      <translation>Este lugar está a {distance} km de su tercer vecino más cercano, lejos de todos los demás: ¿una cifra perdida, o este y norte cambiados?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>This place lies outside the area for which {crs} is meant. Is it the right one?</source>
      <translation>Este lugar está fuera del área para la que sirve {crs}. ¿Es el correcto?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ring setting is blank; {value}, stated before for this compass, was taken.</source>
      <translation>El ajuste del limbo está en blanco; se tomó {value}, indicado antes para esta brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ring setting is blank, while other rows of this compass have one. Does it mean as above, or 0? Say so in RING_BLANK, or state it in RINGS.</source>
      <translation>El ajuste del limbo está en blanco, mientras otras filas de esta brújula lo tienen. ¿Significa como arriba, o 0? Dígalo en RING_BLANK, o indíquelo en RINGS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Height {value} is no height on land in metres; {used} was used.</source>
      <translation>La cota {value} no es posible en tierra firme, en metros; se usó {used}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The end of the needle "{value}" is not known as north or south.</source>
      <translation>El extremo de la aguja «{value}» no se conoce como north o south.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The north "{value}" is not known as magnetic, true or grid.</source>
      <translation>El norte «{value}» no corresponde a magnetic, true ni grid.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{grid} has no grid north here. Which grid was the azimuth counted from? Say so in GRID_CRS.</source>
      <translation>{grid} no tiene norte de cuadrícula aquí. ¿A qué cuadrícula se refiere el azimut? Indíquelo en GRID_CRS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>After {value} m the DEM has no height; the line ends there.</source>
      <translation>Tras {value} m el MDE no tiene altura; la línea acaba allí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Around the station no direction near the bearing rises by {value} degrees.</source>
      <translation>Alrededor de la estación ninguna dirección cercana al rumbo sube {value} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{model} has no declination here at that time, so the reading of a compass is not known.</source>
      <translation>{model} no tiene declinación aquí a esa hora, así que no se conoce la lectura de una brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No time is given.</source>
      <translation>No se da ninguna hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The time "{value}" has no zone, so it is not known when it was; write it like 14:05+02:00.</source>
      <translation>La hora "{value}" no tiene huso, así que no se sabe cuándo fue; escríbala como 14:05+02:00.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ground of the DEM stands before the sun, whose altitude is {value} degrees.</source>
      <translation>El terreno del MDE está delante del sol, cuya altura es de {value} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The sun is below the horizon ({value}).</source>
      <translation>El sol está bajo el horizonte ({value}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The sun stands {value} degrees high; over 60 its azimuth is hard to read.</source>
      <translation>El sol está a {value} grados de altura; por encima de 60 su acimut es difícil de leer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The sun stands {value} degrees high; below 5 it is hardly sighted over a level horizon.</source>
      <translation>El sol está a {value} grados de altura; por debajo de 5 apenas se visa sobre un horizonte llano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The object is {value} m high, but how well that is known is not: a sight one sigma off meets no ground.</source>
      <translation>El objeto mide {value} m de alto, pero no se sabe con qué exactitud: una visual desviada en 1 sigma no encuentra terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The top lies below the foot: the height is {value} m.</source>
      <translation>La cima está por debajo del pie: la altura es de {value} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The station "{value}" for which local attraction is known lies over 100 m away; nothing was added.</source>
      <translation>La estación «{value}», de la que se conoce la atracción local, está a más de 100 m; no se sumó nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>For local attraction {value} degrees were added, known {away} m away.</source>
      <translation>Por atracción local se sumaron {value} grados, conocidos a {away} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Findings of this station lie {value} m apart.</source>
      <translation>Los resultados de esta estación distan {value} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The reading was taken {value} m from ground marked as magnetic (0: within it).</source>
      <translation>La lectura se tomó a {value} m de terreno marcado como magnético (0: dentro).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>"{value}" is not known: a side of the sun is centre, left or right, a shadow yes or no.</source>
      <translation>«{value}» no se conoce: un lado del sol es centre, left o right; una sombra, yes o no.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The sun's place is known from 1900 to 2100, not in {value}.</source>
      <translation>La posición del sol se conoce de 1900 a 2100, no en {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The time "{value}" did not exist that day: the clocks were put forward.</source>
      <translation>La hora "{value}" no existió ese día: se adelantaron los relojes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The time "{value}" exists twice that day: the clocks were put back. Write its offset.</source>
      <translation>La hora "{value}" existe dos veces ese día: se atrasaron los relojes. Escriba su desfase.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The time "{value}" cannot be read.</source>
      <translation>La hora "{value}" no se puede leer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The DEM has no height here, or not all along.</source>
      <translation>El MDE no tiene cota aquí, o le falta en parte del recorrido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The coordinate "{value}" in {column_name} cannot be read, so there is no place.</source>
      <translation>La coordenada "{value}" en {column_name} no se puede leer, así que no hay lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Height {value} cannot be: heights here lie from {low} to {high} m.</source>
      <translation>La altura {value} no puede ser: aquí las alturas van de {low} a {high} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No height is given for this row, and there is no DEM to take it from.</source>
      <translation>Esta fila no tiene cota y no hay MDE del que tomarla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A plane needs 3 points of known place and height; there are {count}.</source>
      <translation>Un plano necesita 3 puntos de posición y cota conocidas; hay {count}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The points spread across one line by only {across} m in all; with their errors {needed} m are needed.</source>
      <translation>Los puntos solo se apartan en total {across} m de una recta; con sus errores hacen falta {needed} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The points are nearly on one line (thinness {value}), so the plane may turn about it.</source>
      <translation>Los puntos están casi alineados (relación ancho/largo {value}), así que el plano puede girar en torno a esa línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The dip is hardly known: {low} to {high} degrees.</source>
      <translation>El buzamiento apenas se conoce: de {low} a {high} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The points lie {value} m off the plane, more than their errors explain: a wrong height, or no one plane. The ranges were widened.</source>
      <translation>Los puntos se apartan {value} m del plano, más de lo que explican sus errores: una cota errónea, o no es un solo plano. Se ampliaron los intervalos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Points without a place or a height were left out, ids {ids}.</source>
      <translation>Se dejaron fuera puntos sin posición o sin cota, identificadores: {ids}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>These points do not say to which plane they belong.</source>
      <translation>Estos puntos no indican a qué plano pertenecen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row is a line, not a plane.</source>
      <translation>La fila es una línea, no un plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The uncertainty {value} is outside 0 to 90; {used} was used.</source>
      <translation>La incertidumbre {value} está fuera del intervalo de 0 a 90; se usó {used}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The DEM covers only a part of the ground within the radius; lines end or are unknown there.</source>
      <translation>El MDE cubre solo una parte del terreno dentro del radio; allí las líneas se interrumpen o no se conocen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The plane does not meet the ground within the radius.</source>
      <translation>El plano no corta el terreno dentro del radio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>One edge of the band lies nowhere within the radius.</source>
      <translation>Un borde de la franja no aparece dentro del radio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The DEM's coordinate reference system has an edge within the radius.</source>
      <translation>El sistema de referencia de coordenadas del MDE tiene un borde dentro del radio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A horizontal plane has no contours, and those of a vertical one lie upon each other.</source>
      <translation>Un plano horizontal no tiene contornos, y los de uno vertical se superponen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The plane would have {count} contours; {most} is the most. Is the interval meant?</source>
      <translation>El plano tendría {count} contornos; el máximo es {most}. ¿Es correcta la equidistancia?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No multiple of {interval} m lies within the reach of the plane over {radius} m.</source>
      <translation>Ningún múltiplo de {interval} m queda entre las cotas que alcanza el plano en {radius} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No attitude lies within {distance} m of the line.</source>
      <translation>No hay ninguna orientación a menos de {distance} m de la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The {count} attitudes around have no mean: none of their directions stands out.</source>
      <translation>Las {count} orientaciones del entorno no tienen media: ninguna dirección predomina.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The line ends on the lower side of the bedding: overturned beds, or drawn from top to base, or a wrong dip.</source>
      <translation>La línea acaba en el lado inferior de la estratificación: capas invertidas, línea dibujada de techo a base o buzamiento erróneo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The dip of its plane, {plane}, is hardly known: {low} to {high} degrees.</source>
      <translation>El buzamiento de su plano, {plane}, apenas se conoce: {low} a {high} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The pole of its plane, {plane}, is known to {value} degrees only (1-sigma).</source>
      <translation>El polo de su plano, {plane}, se conoce solo a {value} grados (1 sigma).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Its plane, {plane}, is itself in doubt: {codes}.</source>
      <translation>Su plano, {plane}, está él mismo en duda: {codes}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The depth of {depth} m is known to {value} m only (1-sigma), over {share} % of it.</source>
      <translation>La profundidad de {depth} m se conoce solo a {value} m (1 sigma), más del {share} % de ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The plane is {value} m above ground here; a hole does not meet it.</source>
      <translation>El plano queda aquí {value} m sobre el terreno; un sondeo no lo corta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The plane is vertical; a vertical hole does not meet it.</source>
      <translation>El plano es vertical; un sondeo vertical no lo corta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No plane has the group "{value}".</source>
      <translation>Ningún plano tiene el grupo «{value}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The geometry is not valid: a line without length, or an outline that crosses itself.</source>
      <translation>La geometría no es válida: una línea sin longitud o un contorno que se cruza a sí mismo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The line has no length: it needs two different vertices.</source>
      <translation>La línea no tiene longitud: necesita dos vértices distintos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The line has {value} parts that do not follow one another.</source>
      <translation>La línea tiene {value} partes que no son continuas entre sí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The strike, or the direction of carrying, lies within 1 degree of the section's leg {leg}.</source>
      <translation>El rumbo, o la dirección de proyección, se aparta menos de 1 grado del tramo {leg} del corte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The line runs at right angles to the section's leg {leg} and would show as a point.</source>
      <translation>La línea es perpendicular al tramo {leg} del corte y se vería como un punto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Arcs about a centre here cannot go on beyond it; beds meet in a kink.</source>
      <translation>Los arcos en torno a un centro de aquí no pueden seguir más allá; las capas se encuentran en un kink.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The contact {name}, followed from {place} m, arrives {value} m from where it was mapped.</source>
      <translation>El contacto {name}, seguido desde {place} m, llega a {value} m de donde se cartografió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Axial surfaces cross one another: the relief is steeper than they are. Do not trust the draft.</source>
      <translation>Las superficies axiales se cruzan: el relieve es más abrupto que ellas. No se fíe del borrador.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The section runs along the fold axis: the folds cannot be shown on it.</source>
      <translation>El corte va a lo largo del eje de pliegue: los pliegues no se pueden mostrar en él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A dip of {value} degrees lies beyond the arc of its neighbours and was not used.</source>
      <translation>Un buzamiento de {value} grados queda más allá del arco de sus vecinos y no se usó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The contacts {one} and {two}, each down its own dip, cross here.</source>
      <translation>Los contactos {one} y {two}, cada uno según su propio buzamiento, se cruzan aquí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Two dips at one place contradict each other: {one} and {two} degrees in the section.</source>
      <translation>Dos buzamientos en un mismo lugar se contradicen: {one} y {two} grados en el corte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The draft goes {depth} m down, but its dips are spread over {spread} m only.</source>
      <translation>El borrador baja {depth} m, pero sus buzamientos se reparten solo en {spread} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The domain that dips {value} degrees ends here between its neighbours.</source>
      <translation>El dominio que buza {value} grados termina aquí entre sus vecinos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The dip of {name} is not known; it was taken as vertical.</source>
      <translation>El buzamiento de {name} no se conoce; se tomó como vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The hole would meet its plane at {value} degrees only; {least} are the least.</source>
      <translation>El sondeo cortaría su plano a solo {value} grados; el mínimo son {least}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No ground is met, or known, within the longest hole of {most} m.</source>
      <translation>No se encuentra terreno, o no se conoce, dentro del sondeo más largo de {most} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The plane of {name} lies in the section; it is not drawn.</source>
      <translation>El plano de {name} está en el corte; no se dibuja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The contact {name} is intrusive; it is not drafted.</source>
      <translation>El contacto {name} es intrusivo; no se traza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No dip of the same block and sequence is near: {names} not drafted.</source>
      <translation>No hay cerca ningún buzamiento del mismo bloque y secuencia: {names} sin trazar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The section lies {value} degrees off the mean dip direction, {most} is the most; give the fold axis.</source>
      <translation>El corte se aparta {value} grados de la dirección media de buzamiento, el máximo es {most}; indique el eje de pliegue.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A single dip is known here; beds were drawn straight.</source>
      <translation>Aquí se conoce un solo buzamiento; las capas se dibujaron rectas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The dips near {name} scatter more than their errors explain (1-sigma {sigma} degrees).</source>
      <translation>Los buzamientos cerca de {name} se dispersan más de lo que explican sus errores (1-sigma {sigma} grados).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The section only grazes {name}: its contacts lie where the map is least sure of them.</source>
      <translation>El corte solo roza {name}: sus contactos están donde el mapa es menos seguro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The thickness of {unit} is {least} to {most} m: it was not constant, or a dip is wrong.</source>
      <translation>El espesor de {unit} es de {least} a {most} m: no era constante, o un buzamiento está mal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>At the contact {name} the units {units} are missing: a fault, or not mapped?</source>
      <translation>En el contacto {name} faltan las unidades {units}: ¿una falla, o sin cartografiar?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>At {count} places a fault lies between; nothing was carried across it.</source>
      <translation>En {count} lugares hay una falla de por medio; nada se trasladó a través de ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No fold axis holds here: the place lies in none of the areas of AXES.</source>
      <translation>Aquí no vale ningún eje de pliegue: el lugar no está en ninguna de las áreas de AXES.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Beside a bend of the section, square to neither leg; carried to the vertex, {value} m away.</source>
      <translation>Queda junto a un quiebre del corte, sin perpendicular a ninguno de los dos tramos; se proyectó al vértice, a {value} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No known point is called "{value}".</source>
      <translation>Ningún punto conocido se llama «{value}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>More than one known point is called "{value}", at different places.</source>
      <translation>Hay más de un punto conocido llamado «{value}», en lugares distintos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Both ends of the line are the same point.</source>
      <translation>Los dos extremos de la línea son el mismo punto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The line is {length} m long, so that its own azimuth is known to {sigma} degrees only; longer lines tell more.</source>
      <translation>La línea mide {length} m, así que su propio azimut solo se conoce con {sigma} grados de incertidumbre; las líneas más largas dicen más.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Off by {value} degrees, about half a turn: a reversed reading (wrong end of the needle, or ends swapped) is suspected. Nothing was changed; it was left out of the index error.</source>
      <translation>Difiere en {value} grados, casi media vuelta: se sospecha una lectura invertida (extremo equivocado de la aguja, o puntos intercambiados). No se cambió nada; se dejó fuera del error de índice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Off by {value} degrees, about the declination {decl}: was it left out at one end, or applied already? Nothing was changed.</source>
      <translation>Difiere en {value} grados, casi la declinación {decl}: ¿se omitió en una parte, o ya estaba aplicada? No se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Off by {value} degrees, about twice the declination {decl}: was it applied the wrong way? Nothing was changed.</source>
      <translation>Difiere en {value} grados, casi el doble de la declinación {decl}: ¿se aplicó con el signo contrario? No se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Lies {value} degrees from the other readings of this compass; they scatter by {sigma} degrees.</source>
      <translation>Se aparta {value} grados de las demás lecturas de esta brújula, cuya dispersión es de {sigma} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row does not say with which compass it was read; such rows are taken as one compass.</source>
      <translation>La fila no indica con qué brújula se leyó; las filas así se toman como de una sola brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Readings used: {count}. Three or more along different lines tell an index error.</source>
      <translation>Lecturas usadas: {count}. Hacen falta tres o más, en líneas distintas, para conocer el error de índice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Its error changes by {value} degrees a year, more than the readings' uncertainty explains.</source>
      <translation>Su error cambia {value} grados al año, más de lo que explica la incertidumbre de las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Its error of {value} degrees is more than its uncertainty explains: to allow for it, subtract it from the ring setting.</source>
      <translation>Su error de {value} grados es mayor de lo que explica su incertidumbre: para compensarlo, réstelo del ajuste del limbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ray meets no ground: it ends {value} m away, at the edge of the DEM or at the longest range.</source>
      <translation>La visual no corta el terreno: acaba a {value} m, en el borde del MDE o en el alcance máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ray grazes the ground, so its range is hardly known: from {low} m to {high} for angles one sigma lower and higher.</source>
      <translation>La visual roza el terreno, así que su alcance apenas se conoce: de {low} m a {high} para ángulos una sigma menores y mayores.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The ray meets the ground only {value} m away, within two cells of the DEM, which may show the station's own slope wrongly. Does something near hide the target?</source>
      <translation>La visual corta el terreno a solo {value} m, a menos de dos celdas del MDE, que puede representar mal la ladera de la propia estación. ¿Algo cercano tapa el objetivo?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The eye would be {value} m below the ground of the DEM. Is the station's height or place wrong?</source>
      <translation>El ojo quedaría {value} m por debajo del terreno del MDE. ¿Es errónea la cota o la posición de la estación?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The height lies {value} m off the ground of the DEM. {guess}</source>
      <translation>La altura está a {value} m del terreno del MDE. {guess}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The leg does not say from which station it goes to which.</source>
      <translation>El lado no indica de qué estación a qué estación va.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The leg ends at the station where it starts.</source>
      <translation>El lado acaba en la misma estación en la que empieza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The distance "{value}" is no length.</source>
      <translation>La distancia «{value}» no es una longitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The vertical angle "{value}" is outside {low} to {high}. {fits}</source>
      <translation>El ángulo vertical "{value}" está fuera de {low} a {high}. {fits}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No vertical angle: the leg was taken as level.</source>
      <translation>Sin ángulo vertical: el lado se tomó como horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Fore and back bearing differ by {value} degrees from being opposite; near 180 one of them is reversed. Which is not known, so neither was used.</source>
      <translation>Los azimutes directo e inverso difieren en {value} grados de ser opuestos; cerca de 180, uno de los dos está invertido. No se sabe cuál, así que no se usó ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Fore and back bearing differ by {value} degrees from being opposite; local attraction is seldom so strong. Was one misread?</source>
      <translation>Los azimutes directo e inverso difieren en {value} grados de ser opuestos; la atracción local rara vez es tan fuerte. ¿Se leyó mal alguno?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Fore and back bearing still differ by {value} degrees after the corrections for local attraction.</source>
      <translation>Los azimutes directo e inverso aún difieren en {value} grados tras las correcciones por atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No line free of local attraction leads here; the mean of fore bearing and back bearing was taken.</source>
      <translation>Ninguna línea libre de atracción local llega hasta aquí; se tomó la media de los azimutes directo e inverso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Read one way only, at a station whose local attraction is not known.</source>
      <translation>Leído en un solo sentido, en una estación cuya atracción local no se conoce.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No chain of good legs leads here from the start.</source>
      <translation>Ninguna cadena de lados buenos lleva desde el inicio hasta aquí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A place needs 2 rays at least.</source>
      <translation>Una posición necesita al menos 2 visuales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The rays run along one another within their errors and meet nowhere.</source>
      <translation>Las visuales son paralelas dentro de sus errores y no se cortan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The lines of the rays meet where the rays do not go: behind a station, or behind the observer.</source>
      <translation>Las rectas de las visuales se cortan donde estas no van: detrás de una estación o detrás del observador.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>All rays but that of row {ray} agree, and that one points the opposite way: a reversed reading is suspected. Nothing was changed.</source>
      <translation>Todas las visuales concuerdan salvo la de la fila {ray}, que apunta en sentido opuesto: se sospecha una lectura invertida. No se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Observer and landmarks lie near one circle, or the landmarks near one direction, so the turn cannot be told. The compass was trusted.</source>
      <translation>El observador y las referencias están casi en una circunferencia (círculo peligroso), o las referencias casi en una misma dirección, así que no se puede hallar el giro. Se dio por buena la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The rays cross at {value} degrees only; under 30 the place is drawn out along them.</source>
      <translation>Las visuales se cortan a solo {value} grados; por debajo de 30 la posición se alarga en su dirección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The bearings disagree by {value} degrees, more than their errors explain, turned or not: a misread bearing, a wrong place or iron. The ellipse was widened.</source>
      <translation>Los rumbos discrepan en {value} grados, más de lo que explican sus errores, girados o no: un rumbo mal leído, un lugar erróneo o hierro. La elipse se ensanchó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The turn is known to {sigma} degrees only (1-sigma), so the place is poor too.</source>
      <translation>El giro solo se conoce con {sigma} grados de incertidumbre (1 sigma), así que la posición también es mala.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The bearings agree only if {value} degrees are added to all of them (1-sigma {sigma}): the compass or the declination is off by as much. The place allows for it.</source>
      <translation>Los azimutes solo concuerdan si se suman {value} grados a todos (1 sigma {sigma}): en eso yerra la brújula o la declinación. La posición lo tiene en cuenta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The bearings agree much better if {value} degrees are added to all of them (1-sigma {sigma}): compass, ring or declination may be off by as much. The place would then lie {moved} m away, at {lat}, {lon}; it was not moved.</source>
      <translation>Los rumbos concuerdan mucho mejor si se suman {value} grados a todos (1 sigma {sigma}): la brújula, el limbo o la declinación pueden estar desviados otro tanto. El lugar estaría entonces a {moved} m, en {lat}, {lon}; no se movió.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>With three bearings nothing is left over to check the turn by.</source>
      <translation>Con tres rumbos no queda nada con que comprobar el giro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Sights without a bearing or a known end were left out, ids {ids}.</source>
      <translation>Se dejaron fuera visuales sin azimut o sin extremo conocido, identificadores: {ids}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The sight does not say to which place it belongs.</source>
      <translation>La visual no indica a qué posición pertenece.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No sight has both a vertical angle and a known end of known height, so there is none.</source>
      <translation>Ninguna visual tiene a la vez ángulo vertical y un extremo conocido con cota conocida, así que no hay cota.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row names no group.</source>
      <translation>La fila no nombra ningún grupo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The reading lies in none of the zones.</source>
      <translation>La lectura no está en ninguna de las zonas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row is a plane, not a line.</source>
      <translation>La fila es un plano, no una línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No reading of this group can be used.</source>
      <translation>Ninguna lectura de este grupo se puede usar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>There is one reading only; it is given as it is, and nothing says how sure it is.</source>
      <translation>Hay una sola lectura; se da como está, y nada dice cuán segura es.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>There are {count} readings; how sure a mean is needs {least}.</source>
      <translation>Hay {count} lecturas; para saber cuán segura es una media hacen falta {least}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>None of the directions of these {count} readings stands out, so they have no mean.</source>
      <translation>Ninguna de las direcciones de estas {count} lecturas destaca, así que no tienen media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>All {count} readings are alike, so nothing says how sure their mean is.</source>
      <translation>Las {count} lecturas son iguales, así que nada dice cuán segura es su media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Nothing tells these readings from an even spread (probability {value}); their mean says nothing.</source>
      <translation>Nada distingue estas lecturas de un reparto uniforme (probabilidad {value}); su media no dice nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The readings lie along a girdle, as those of folded beds do; their mean says little.</source>
      <translation>Las lecturas forman una guirnalda, como las de capas plegadas; su media dice poco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The poles of these {count} beds form no girdle, so there is no fold axis.</source>
      <translation>Los polos de estas {count} capas no forman guirnalda, así que no hay eje de pliegue.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The axis is known to {value} degrees only (95 per cent).</source>
      <translation>El eje se conoce solo dentro de {value} grados (95 por ciento).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The poles want a cone, not a girdle (probability of a girdle {value}): one axis does not carry it far.</source>
      <translation>Los polos piden un cono, no una guirnalda (probabilidad de una guirnalda {value}): un solo eje no lo lleva lejos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The poles are no girdle, but what cone they lie on is not determined; the axis is that of the girdle.</source>
      <translation>Los polos no son guirnalda, pero no se determina en qué cono están; el eje es el de la guirnalda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The beds are no two limbs, so there is neither an interlimb angle nor a bisecting plane.</source>
      <translation>Las capas no forman dos flancos, así que no hay ni ángulo entre flancos ni plano bisector.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Which way up the beds of both limbs are is not known, so the interlimb angle is either of two.</source>
      <translation>No se sabe la polaridad de las capas de ambos flancos, así que el ángulo entre flancos es uno de dos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The limbs do not stand apart: the fold is rounded, and its limbs are two halves of its beds.</source>
      <translation>Los flancos no se separan: el pliegue es redondeado, y sus flancos son dos mitades de sus capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The group has no {kind}, or its mean is not defined.</source>
      <translation>El grupo no tiene {kind}, o su media no está definida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The planes meet at {value} degrees only; where they meet is hardly known.</source>
      <translation>Los planos se cortan a solo {value} grados; apenas se sabe dónde se cortan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No fold axis fits here: the reading belongs to no domain.</source>
      <translation>Aquí no encaja ningún eje de pliegue: la lectura no pertenece a ningún dominio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The reading lies {value} degrees off the girdle of its domain.</source>
      <translation>La lectura se aparta {value} grados de la guirnalda de su dominio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The two lie {value} degrees apart only; under {least} what they give is hardly known.</source>
      <translation>Las dos están a solo {value} grados; por debajo de {least} apenas se conoce lo que dan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The face lies {value} degrees from the strike only; under {least} an apparent dip says little.</source>
      <translation>La cara está a solo {value} grados del rumbo; por debajo de {least} un buzamiento aparente dice poco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The two are one line on the map, or parallel: they give nothing.</source>
      <translation>Las dos son una misma línea en el mapa, o paralelas: no dan nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>One of the two parts is missing.</source>
      <translation>Falta una de las dos partes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The slip lies {value} degrees from the trace of the marker on the fault; under {least} it says nothing about the slip.</source>
      <translation>El desplazamiento está a {value} grados de la traza del marcador en la falla; por debajo de {least} no dice nada sobre el desplazamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The separation is that of the other sense than {value}. Was one of them misread?</source>
      <translation>La separación es la del otro sentido que {value}. ¿Se leyó mal uno de ellos?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>No sense is given that the slip line can have; it was taken from the sign of the separation.</source>
      <translation>No se da un sentido que la línea de desplazamiento pueda tener; se tomó del signo de la separación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The slip line lies {value} degrees off the fault plane; it was carried onto it squarely.</source>
      <translation>La línea de desplazamiento se aparta {value} grados del plano de falla; se llevó a él en perpendicular.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Nothing says where the row is. {value}</source>
      <translation>Nada dice dónde está la fila. {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place "{value}" cannot be read.</source>
      <translation>El lugar «{value}» no se puede leer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place "{value}" is outside its limits; packed degrees are read only where PACKED says so.</source>
      <translation>El lugar «{value}» está fuera de sus límites; los grados empaquetados solo se leen donde PACKED lo dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place "{value}" can be read in more than one way, or contradicts itself.</source>
      <translation>El lugar «{value}» se puede leer de más de una manera, o se contradice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place {value} has no counterpart in the CRS of the output.</source>
      <translation>El lugar {value} no tiene equivalente en el SRC de la salida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place is known to a square of {size} m; its middle was taken.</source>
      <translation>El lugar se conoce con un cuadrado de {size} m; se tomó su centro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place {value} lies among the others if its two coordinates are changed about.</source>
      <translation>El lugar {value} queda entre los demás si se intercambian sus dos coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place {value} lies among the others with another sign: was a letter or a minus lost?</source>
      <translation>El lugar {value} queda entre los demás con otro signo: ¿se perdió una letra o un menos?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Easting and northing of "{value}" look swapped.</source>
      <translation>Las coordenadas este y norte de «{value}» parecen intercambiadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The letter of the zone in "{value}" may be a band or a hemisphere; say which with ZONE_LETTER.</source>
      <translation>La letra del huso en «{value}» puede ser una banda o un hemisferio; diga cuál con ZONE_LETTER.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The place "{value}" does not lie in the zone and band that it names.</source>
      <translation>El lugar «{value}» no está en el huso y la banda que nombra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>There is no square of 100 km with the letters of "{value}".</source>
      <translation>No hay ningún cuadrado de 100 km con las letras de «{value}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The station "{value}" is not among the stations.</source>
      <translation>La estación «{value}» no está entre las estaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The station "{value}" stands for more than one place.</source>
      <translation>La estación «{value}» designa más de un lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The station "{value}" was found as "{used}".</source>
      <translation>La estación «{value}» se encontró como «{used}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row repeats the header: {value}</source>
      <translation>La fila repite el encabezado: {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row has more than {columns} cells; beyond them stands {value}</source>
      <translation>La fila tiene más de {columns} celdas; más allá está {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The row is no reading: {value}</source>
      <translation>La fila no es una lectura: {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The column {column} holds the error of a formula, "{value}".</source>
      <translation>La columna {column} contiene el error de una fórmula, «{value}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The cells of the row hold different numbers of readings: {value}</source>
      <translation>Las celdas de la fila tienen distinto número de lecturas: {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A blunder is suspected: {value}</source>
      <translation>Se sospecha un error: {value}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Place, kind and reading are those of row {value} as well: was the row entered twice?</source>
      <translation>Lugar, tipo y lectura son también los de la fila {value}: ¿se anotó la fila dos veces?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The vertical angle "{value}" is outside {low} to {high}; it was not used. {fits}</source>
      <translation>El ángulo vertical "{value}" está fuera de {low} a {high}; no se usó. {fits}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>All {rows} directions lie within 0 to 90. Are these quadrant bearings (N45W) read as azimuths?</source>
      <translation>Las {rows} direcciones están todas entre 0 y 90. ¿Son rumbos cuadrantales (N45W) leídos como azimutes?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Letters of quadrants stand beside the numbers, in the fields {north} and {east} ({count} rows), and were not read: with them N 45 W is 315, not 45. Put the three together into one text.</source>
      <translation>Junto a los números hay letras de cuadrantes, en los campos {north} y {east} ({count} filas), y no se leyeron: con ellas N 45 O es 315, no 45. Junte los tres en un solo texto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{agree} of {rows} magnetic readings end in the same odd fraction ({residue} modulo a half). Hand readings sit on whole and half degrees: has a declination been applied already?</source>
      <translation>{agree} de {rows} lecturas magnéticas acaban en la misma fracción poco habitual ({residue} módulo medio grado). Las lecturas a mano caen en grados y medios grados: ¿se aplicó ya una declinación?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>In {count} of {rows} rows the given declination is far from the model's for that place and date; at worst {given} was given where the model says {model}.</source>
      <translation>En {count} de {rows} filas la declinación dada se aleja de la del modelo para ese lugar y esa fecha; en el peor caso se dio {given} y el modelo indica {model}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>In {count} of {rows} rows the given declination is about the opposite of the model's ({given} where the model says {model}): was west meant?</source>
      <translation>En {count} de {rows} filas la declinación dada es casi la opuesta a la del modelo ({given} donde el modelo indica {model}): ¿se quería decir oeste?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The declination given for {count} rows was not checked against a model: they have no dates or places.</source>
      <translation>La declinación dada en {count} filas no se comprobó con ningún modelo: les falta la fecha o el lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{count} rows lie together in two or three places far from all others: a second area, or wrong coordinates?</source>
      <translation>{count} filas están juntas en dos o tres lugares lejos de todas las demás: ¿una segunda área, o coordenadas erróneas?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{count} of {rows} planes that have a strike have a dip of 0. Is 0 written for not measured?</source>
      <translation>{count} de {rows} planos que tienen rumbo tienen buzamiento 0. ¿Se escribió 0 por no medido?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The stations of {count} places ({names}) are so placed that a turn common to all bearings would show in nothing but the place. Their ellipses hold one of {sigma} degrees at most (1-sigma), as declination and ring let expect.</source>
      <translation>Las estaciones de {count} lugares ({names}) están situadas de modo que un giro común a todos los rumbos no se notaría más que en el lugar. Sus elipses abarcan uno de {sigma} grados como mucho (1 sigma), según permiten esperar la declinación y el limbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The traverse neither returns to a station nor ends at a known point, so nothing checks its legs.</source>
      <translation>La poligonal no vuelve a ninguna estación ni acaba en un punto conocido, así que nada comprueba sus lados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The traverse misses by {gap} m over {around} m where it closes with the leg from {start} to {end}, more than the errors of its legs explain. Is a leg misread?</source>
      <translation>La poligonal tiene un error de cierre de {gap} m en {around} m, donde cierra con el lado de {start} a {end}; es más de lo que explican los errores de sus lados. ¿Hay algún lado mal leído?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{count} of {rows} back bearings point the same way as their fore bearings: were they turned round before they were written down? Nothing was changed.</source>
      <translation>{count} de {rows} azimutes inversos tienen el mismo sentido que los directos: ¿se les sumaron 180 grados antes de anotarlos? No se cambió nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Hardly any of {rows} places lies where its CRS is meant for, and nearly all would with easting and northing changed about: are the two columns swapped?</source>
      <translation>Casi ninguno de los {rows} lugares queda donde su SRC está pensado, y casi todos quedarían con las coordenadas este y norte intercambiadas: ¿están cambiadas las dos columnas?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The file is no UTF-8 (line {line}: "{text}"); it was read as {encoding}. If that is wrong, name its ENCODING.</source>
      <translation>El archivo no es UTF-8 (línea {line}: «{text}»); se leyó como {encoding}. Si no es así, indique su ENCODING.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The cells of the file are parted by: {separator}.</source>
      <translation>Las celdas del archivo se separan con: {separator}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The header was found on line {line}, below "{text}".</source>
      <translation>El encabezado se encontró en la línea {line}, debajo de «{text}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Columns without a name were called {columns}.</source>
      <translation>Las columnas sin nombre se llamaron {columns}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The column name {name} stands there twice; the second is called {renamed}.</source>
      <translation>El nombre de columna {name} aparece dos veces; la segunda se llama {renamed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{count} empty lines were passed over, the first on line {line}.</source>
      <translation>Se saltaron {count} líneas vacías, la primera en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{count} rows have fewer cells than the header, the first on line {line}.</source>
      <translation>{count} filas tienen menos celdas que el encabezado, la primera en la línea {line}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>A comma was read as the decimal sign in {columns}.</source>
      <translation>La coma se leyó como signo decimal en {columns}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The decimals of {rows} azimuths end below .60, at most at {largest}: are they minutes (45.30 for 45 degrees 30 minutes)?</source>
      <translation>Los decimales de {rows} acimutes no llegan a .60, el mayor es {largest}: ¿son minutos (45.30 por 45 grados 30 minutos)?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{tens} of {rows} azimuths are whole tens: they were guessed to ten degrees rather than read, which adds {sigma} degrees to their uncertainty.</source>
      <translation>{tens} de {rows} acimutes son decenas enteras: se estimaron a diez grados más que leerse, lo que añade {sigma} grados a su incertidumbre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{rows} rows have azimuth {azimuth} and dip {dip}: do they stand for no reading?</source>
      <translation>{rows} filas tienen acimut {azimuth} y buzamiento {dip}: ¿significan que no hay lectura?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{rows} rows repeat an earlier one: same place, kind and reading.</source>
      <translation>{rows} filas repiten una anterior: mismo lugar, tipo y lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>There are no back bearings, so local attraction was not looked for.</source>
      <translation>No hay azimutes inversos, así que no se buscó atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>azimuth</source>
      <translation>azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>dip or plunge</source>
      <translation>buzamiento o inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>dip letter</source>
      <translation>letra del buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>attitude</source>
      <translation>orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>rake</source>
      <translation>cabeceo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>vertical angle</source>
      <translation>ángulo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>ring setting</source>
      <translation>ajuste del limbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>distance</source>
      <translation>distancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/gis/wording.py" />
      <source>height</source>
      <translation>altura</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>degrees up</source>
      <translation>grados hacia arriba</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>a zenith angle</source>
      <translation>un ángulo cenital</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>a percentage</source>
      <translation>un porcentaje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Is it {what}?</source>
      <translation>¿Es {what}?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source> or </source>
      <translation> o </translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>It fits if it was written in feet: set POINT_HEIGHT_UNIT.</source>
      <translation>Encaja si se escribió en pies: ponga POINT_HEIGHT_UNIT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>It fits if it was written in metres: set POINT_HEIGHT_UNIT.</source>
      <translation>Encaja si se escribió en metros: ponga POINT_HEIGHT_UNIT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Is it a depth below the ground, written as a height?</source>
      <translation>¿Es una profundidad bajo el terreno, escrita como altura?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Does this number stand for no height? HEIGHT_NULLS would say so.</source>
      <translation>¿Significa este número sin altura? HEIGHT_NULLS lo diría.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Is the height wrong, or the place?</source>
      <translation>¿Está mal la altura, o el lugar?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Is the unit {value}?</source>
      <translation>¿La unidad es {value}?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>Was {value} meant?</source>
      <translation>¿Se quería decir {value}?</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>It is the dip direction of a strike with the dip to its left.</source>
      <translation>Es la dirección de buzamiento de un rumbo con el buzamiento a su izquierda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{code}: {count} rows, first ids {ids}</source>
      <translation>{code}: {count} fila(s), primeros identificadores: {ids}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>{read} rows read: {done} done, {warned} of them with a warning, {rejected} rejected.</source>
      <translation>{read} filas leídas: {done} resueltas, {warned} de ellas con aviso; {rejected} rechazadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/report.py" />
      <source>The report could not be written: {reason}</source>
      <translation>No se pudo escribir el informe: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/report.py" />
      <source>These results support, and do not replace, licensed professional judgement and local codes. Magnetic readings fail near iron, vehicles, power lines and some rocks, and during magnetic storms; no model of the Earth's field knows of them. Check readings against a second sight before anything is drilled, dug or built on them.</source>
      <translation>Estos resultados apoyan, pero no sustituyen, el criterio de un profesional habilitado ni las normas locales. Las lecturas magnéticas fallan cerca de hierro, vehículos, líneas eléctricas y algunas rocas, y durante las tormentas magnéticas; ningún modelo del campo terrestre las tiene en cuenta. Compruebe las lecturas con una segunda visual antes de perforar, excavar o construir a partir de ellas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/run_table.py" />
      <source>date of the run</source>
      <translation>fecha de la ejecución</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/run_table.py" />
      <source>versions</source>
      <translation>versiones</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/schema.py" />
      <source>The output cannot hold the field {name}.</source>
      <translation>La salida no admite el campo {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/server.py" />
      <source>{table} is there already and is no table of rows; choose another name.</source>
      <translation>{table} ya existe y no es una tabla de filas; elija otro nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/server.py" />
      <source>the table cannot be opened</source>
      <translation>la tabla no se puede abrir</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/server.py" />
      <location filename="../processing_algs/gis/styling.py" />
      <source>the table layer_styles took nothing</source>
      <translation>la tabla layer_styles no guardó nada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/server.py" />
      <source>Nothing was written to the table {table}: {reason}</source>
      <translation>No se escribió nada en la tabla {table}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>Names were too long for their field and were cut in: {fields}.</source>
      <translation>Había nombres demasiado largos para su campo y se cortaron en: {fields}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>A Shapefile holds {most} characters of a text, so texts were cut in: {fields}.</source>
      <translation>Un Shapefile admite {most} caracteres por texto, así que se recortaron textos en: {fields}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>the file refused them</source>
      <translation>el archivo las rechazó</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/styling.py" />
      <source>The meanings of the fields could not be stored: {reason}</source>
      <translation>No se pudieron guardar los significados de los campos: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/styling.py" />
      <source>the output is gone</source>
      <translation>la salida ya no existe</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>line {line} is no text in the encoding {encoding}: name the file's ENCODING.</source>
      <translation>la línea {line} no es texto en la codificación {encoding}: indique la ENCODING del archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>the encoding {value} is not known.</source>
      <translation>la codificación {value} no se conoce.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>the cells may be parted by {value}: say it with SEPARATOR.</source>
      <translation>las celdas pueden separarse con {value}: dígalo con SEPARATOR.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>a quote that opens on line {line} never closes.</source>
      <translation>una comilla que se abre en la línea {line} no se cierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>the table is empty.</source>
      <translation>la tabla está vacía.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>there is no row below the header.</source>
      <translation>no hay ninguna fila debajo del encabezado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>{file} cannot be opened.</source>
      <translation>{file} no se puede abrir.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>{file} has no sheet {name}.</source>
      <translation>{file} no tiene la hoja {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/table_files.py" />
      <source>The table cannot hold the column {name}.</source>
      <translation>La tabla no admite la columna {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>has no code</source>
      <translation>no tiene código</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>has the code {value} a second time and is left out</source>
      <translation>repite el código {value} y se omite</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>has the colour {value}, which is none</source>
      <translation>tiene el color {value}, que no lo es</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>has the age {value}, which cannot be</source>
      <translation>tiene la edad {value}, que no puede ser</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>has the sort {value}, which is not known</source>
      <translation>tiene la clase {value}, que no se conoce</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>Table of units: row {row} {what}.</source>
      <translation>Tabla de unidades: la fila {row} {what}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>The table of units does not have: {codes}.</source>
      <translation>La tabla de unidades no tiene: {codes}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/units.py" />
      <source>{one} and {other} touch on the map, and their colours are only {distance:.0f} apart (15 is enough).</source>
      <translation>{one} y {other} se tocan en el mapa y sus colores distan solo {distance:.0f} (con 15 basta).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>magnetic north, read with a compass</source>
      <translation>norte magnético, leído con brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>true north</source>
      <translation>norte verdadero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>grid north</source>
      <translation>norte de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>north end</source>
      <translation>extremo norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>south end</source>
      <translation>extremo sur</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>year, month, day</source>
      <translation>año, mes, día</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>day, month, year</source>
      <translation>día, mes, año</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>month, day, year</source>
      <translation>mes, día, año</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>day numbers of a spreadsheet, from 1900</source>
      <translation>números de día de hoja de cálculo, desde 1900</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>day numbers of a spreadsheet, from 1904</source>
      <translation>números de día de hoja de cálculo, desde 1904</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>IGRF-14, 1900 to 2030</source>
      <translation>IGRF-14, de 1900 a 2030</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>WMM2025, 2025 to 2030</source>
      <translation>WMM2025, de 2025 a 2030</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>WMMHR2025, 2025 to 2030</source>
      <translation>WMMHR2025, de 2025 a 2030</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>none, the declination is given</source>
      <translation>ninguno, la declinación es dada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>as the file says</source>
      <translation>como dice el archivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>metre</source>
      <translation>metro</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>international foot, 0.3048 m</source>
      <translation>pie internacional, 0,3048 m</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>US survey foot, 1200/3937 m</source>
      <translation>pie topográfico de EE. UU., 1200/3937 m</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>not known: the row is rejected</source>
      <translation>no se sabe: la fila se rechaza</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>as above: the last one stated for this compass</source>
      <translation>como arriba: el último indicado para esta brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>the ring setting of the run</source>
      <translation>el ajuste del limbo de la ejecución</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>degree</source>
      <translation>grado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>gon</source>
      <translation>gon</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>mil of 6400</source>
      <translation>mil de 6400</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>strike, dip on its right</source>
      <translation>rumbo, buzamiento a su derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>strike, dip on its left</source>
      <translation>rumbo, buzamiento a su izquierda</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>strike, dip and a letter for its side</source>
      <translation>rumbo, buzamiento y una letra para su lado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>dip direction and dip</source>
      <translation>dirección de buzamiento y buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>trend and plunge of lines</source>
      <translation>dirección e inmersión de líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>all in one text, such as N45E/30SE</source>
      <translation>todo en un texto, como N45E/30SE</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>045/30, strike with the dip on its right</source>
      <translation>045/30, rumbo con el buzamiento a su derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>225/30, strike with the dip on its left</source>
      <translation>225/30, rumbo con el buzamiento a su izquierda</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>045/30SE, strike, dip and letter</source>
      <translation>045/30SE, rumbo, buzamiento y letra</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>135/30, dip direction and dip</source>
      <translation>135/30, dirección de buzamiento y buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>N45E/30SE, quadrant bearing, dip and letter</source>
      <translation>N45E/30SE, rumbo por cuadrantes, buzamiento y letra</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>0 to 180 from the strike that has the dip to its right</source>
      <translation>0 a 180 desde el rumbo que tiene el buzamiento a su derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>0 to 90 and a letter</source>
      <translation>0 a 90 y una letra</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>bedding</source>
      <translation>estratificación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>cleavage</source>
      <translation>clivaje</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>foliation</source>
      <translation>foliación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>joint</source>
      <translation>diaclasa</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>fault</source>
      <translation>falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>vein</source>
      <translation>veta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>dike</source>
      <translation>dique</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>contact</source>
      <translation>contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>axial plane</source>
      <translation>plano axial</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>other plane</source>
      <translation>otro plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>lineation</source>
      <translation>lineación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>slickenline</source>
      <translation>estría de falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>fold axis</source>
      <translation>eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>other line</source>
      <translation>otra línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>upright</source>
      <translation>normal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>overturned</source>
      <translation>invertida</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>unknown</source>
      <translation>desconocida</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>spaced cleavage</source>
      <translation>clivaje espaciado</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>crenulation cleavage</source>
      <translation>clivaje de crenulación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>foliation, origin not told</source>
      <translation>foliación, sin decir su origen</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>igneous foliation</source>
      <translation>foliación ígnea</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>platy parting</source>
      <translation>partición en lajas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>second lineation</source>
      <translation>segunda lineación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>parting lineation</source>
      <translation>lineación de partición</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>lineation of objects</source>
      <translation>lineación de objetos</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>second slickenline</source>
      <translation>segunda estría</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>internal contact</source>
      <translation>contacto interno</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>gradational contact</source>
      <translation>contacto gradual</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>unconformity</source>
      <translation>discordancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>normal fault</source>
      <translation>falla normal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>low-angle normal fault</source>
      <translation>falla normal de bajo ángulo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>reverse fault</source>
      <translation>falla inversa</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>right-lateral fault</source>
      <translation>falla dextral</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>left-lateral fault</source>
      <translation>falla sinistral</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>thrust fault</source>
      <translation>cabalgamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>detachment fault</source>
      <translation>falla de despegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>anticline</source>
      <translation>anticlinal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>antiform</source>
      <translation>antiforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>syncline</source>
      <translation>sinclinal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>synform</source>
      <translation>sinforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>monocline</source>
      <translation>monoclinal</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>boundary of the map</source>
      <translation>límite del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>scratch boundary, not drawn</source>
      <translation>límite auxiliar, no se dibuja</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>not known: strike or dip direction</source>
      <translation>no se sabe: rumbo o dirección de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>the strike</source>
      <translation>el rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>the dip direction</source>
      <translation>la dirección de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>N, E, S, W (English)</source>
      <translation>N, E, S, W (inglés)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>N, E, S, O: O is west (Spanish, French, Italian)</source>
      <translation>N, E, S, O: O es oeste (español, francés, italiano)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>N, L, S, O: L is east, O is west (Portuguese)</source>
      <translation>N, L, S, O: L es este, O es oeste (portugués)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>N, O, S, W: O is east (German)</source>
      <translation>N, O, S, W: O es este (alemán)</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>trend, all rows are lines</source>
      <translation>dirección, todas las filas son líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>strike bar with a tick down the dip</source>
      <translation>barra de rumbo con una marca según el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>arrow down the dip, number at its tip</source>
      <translation>flecha según el buzamiento, con el número en la punta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>tail</source>
      <translation>cola</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>middle</source>
      <translation>mitad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>tip</source>
      <translation>punta</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>not said</source>
      <translation>no se dice</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>latitude first</source>
      <translation>la latitud primero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>longitude first</source>
      <translation>la longitud primero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>not packed</source>
      <translation>sin empaquetar</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>degrees and minutes, such as 4530.2</source>
      <translation>grados y minutos, como 4530.2</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>degrees, minutes and seconds, such as 453012</source>
      <translation>grados, minutos y segundos, como 453012</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>not said: the northing decides</source>
      <translation>no se dice: decide la coordenada norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>latitude band, C to X</source>
      <translation>banda de latitud, de C a X</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>hemisphere, N or S</source>
      <translation>hemisferio, N o S</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>comma</source>
      <translation>coma</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>semicolon</source>
      <translation>punto y coma</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>tabulator</source>
      <translation>tabulador</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>vertical bar</source>
      <translation>barra vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>longitude and latitude</source>
      <translation>longitud y latitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>easting and northing</source>
      <translation>coordenadas este y norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>grid reference</source>
      <translation>referencia de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>whole place</source>
      <translation>lugar entero</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>station</source>
      <translation>estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>attitude as text</source>
      <translation>orientación como texto</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>kind</source>
      <translation>tipo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>polarity</source>
      <translation>polaridad</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>north of each row</source>
      <translation>norte de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>compass</source>
      <translation>brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>degrees above the horizon, negative below</source>
      <translation>grados sobre el horizonte, negativos debajo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>degrees from straight up</source>
      <translation>grados desde la vertical hacia arriba</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/wording.py" />
      <source>percent, rise over run</source>
      <translation>por ciento, subida sobre avance</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Isogonic lines</source>
      <translation>Líneas isógonas</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Draws lines along which the declination is the same (isogonic lines), or the inclination, the total intensity or the yearly change of the declination, over an extent on a date. The agonic line, along which magnetic north is true north, is marked.

Every point of a line has the line's value by the model itself. Lines are drawn on the page of the CRS, so they cross the antimeridian and the poles like any other place; lines of declination end at the magnetic poles, where the horizontal field is under 2000 nT and no compass works. That zone, and the one under 6000 nT, come out as areas.

The lines are those of the model: ore, dikes, iron and magnetic storms are not in it.</source>
      <translation>Dibuja líneas en las que la declinación es la misma (líneas isógonas), o la inclinación, la intensidad total o el cambio anual de la declinación, sobre una extensión en una fecha. Se marca la línea agónica, en la que el norte magnético es el verdadero.

Cada punto de una línea tiene el valor de la línea según el propio modelo. Las líneas se dibujan en la página del SRC, así que cruzan el antimeridiano y los polos como cualquier otro lugar; las de declinación acaban en los polos magnéticos, donde el campo horizontal es menor de 2000 nT y no funciona ninguna brújula. Esa zona, y la de menos de 6000 nT, salen como áreas.

Las líneas son las del modelo: menas, diques, hierro y tormentas magnéticas no están en él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>inclination</source>
      <translation>inclinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>total intensity</source>
      <translation>intensidad total</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>yearly change of the declination</source>
      <translation>cambio anual de la declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Extent</source>
      <translation>Extensión</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>In degrees it may pass 180, as in 160,220,-60,10 [EPSG:4326].</source>
      <translation>En grados puede pasar de 180, como en 160,220,-60,10 [EPSG:4326].</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>CRS of the lines</source>
      <translation>SRC de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Left empty: that of the extent.</source>
      <translation>Si se deja vacío: el de la extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Lines of equal</source>
      <translation>Líneas de igual</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>For which lines are drawn. There is no silent today.</source>
      <translation>Para la que se dibujan las líneas. La fecha de hoy nunca se supone.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Interval</source>
      <translation>Intervalo</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Degrees, nT, or degrees a year. Left empty: chosen so that about nine lines cross the extent.</source>
      <translation>Grados, nT o grados al año. Si se deja vacío: se elige para que unas nueve líneas crucen la extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Above sea level.</source>
      <translation>Sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Lines with their value; agonic is 1 on the agonic line.</source>
      <translation>Líneas con su valor; agonic es 1 en la línea agónica.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Zones where a compass fails</source>
      <translation>Zonas donde falla la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Areas with a horizontal field under 2000 nT (blackout) and under 6000 nT (caution).</source>
      <translation>Áreas con un campo horizontal menor de 2000 nT (blackout) y menor de 6000 nT (caution).</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>Lines</source>
      <translation>Líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>The date is outside {model}, which holds from {first:g} to {last:g}.</source>
      <translation>La fecha queda fuera de {model}, que vale de {first:g} a {last:g}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>No interval gives a line over this extent.</source>
      <translation>Ningún intervalo da una línea en esta extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>An interval of {interval:g} gives {count} values: too many.</source>
      <translation>Un intervalo de {interval:g} da {count} valores: demasiados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>No line crosses the extent; try a smaller interval.</source>
      <translation>Ninguna línea cruza la extensión; pruebe un intervalo menor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>{count} lines, every {interval:g}.</source>
      <translation>{count} líneas, cada {interval:g}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>The extent has no area.</source>
      <translation>La extensión no tiene superficie.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/isogonic_lines.py" />
      <source>The extent shows no place on Earth.</source>
      <translation>La extensión no muestra ningún lugar de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>North angles at points</source>
      <translation>Ángulos entre nortes en puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>For every point and date: declination (true to magnetic north), inclination, horizontal and total intensity, yearly change and uncertainty of the declination, meridian convergence (true to grid north) and the angle from grid north to magnetic north. All angles are in degrees, east positive.

grid_mag is what you add to a magnetic azimuth to plot it on the grid of the layer's CRS, exact where the projection keeps angles. Positions come from the geometry. Rows without a date, a position or a field strong enough for a compass come out with status rejected and the reason in remark.</source>
      <translation>Para cada punto y fecha: declinación (del norte verdadero al magnético), inclinación, intensidad horizontal y total, variación anual e incertidumbre de la declinación, convergencia de meridianos (del norte verdadero al de cuadrícula) y ángulo del norte de cuadrícula al magnético. Todos los ángulos van en grados, positivos al este.

grid_mag es lo que se suma a un azimut magnético para trazarlo sobre la cuadrícula del SRC de la capa; es exacto si la proyección conserva los ángulos. Las posiciones se toman de la geometría. Las filas sin fecha, sin posición o sin un campo magnético suficiente para una brújula salen con status rejected y el motivo en remark.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Any point layer. Positions are taken from the geometry, in the layer's CRS.</source>
      <translation>Cualquier capa de puntos. Las posiciones se toman de la geometría, en el SRC de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Above sea level, for rows without a height of their own.</source>
      <translation>Sobre el nivel del mar, para filas sin altura propia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Height of each row</source>
      <translation>Cota de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Metres above sea level.</source>
      <translation>Metros sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Convergence alone</source>
      <translation>Solo la convergencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Needs no dates; everything about the magnetic field stays empty.</source>
      <translation>No necesita fechas; todo lo del campo magnético queda vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>North angles</source>
      <translation>Ángulos entre nortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>The points with decl, incl, h_nt, f_nt, decl_year, sig_decl, converg, grid_mag and their sources.</source>
      <translation>Los puntos con decl, incl, h_nt, f_nt, decl_year, sig_decl, converg y grid_mag, y su procedencia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>No row has a date: give DATE or DATE_FIELD. There is no silent today.</source>
      <translation>Ninguna fila tiene fecha: indique DATE o DATE_FIELD. Nunca se supone la fecha de hoy.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>North diagram of a sheet</source>
      <translation>Diagrama de nortes de una hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Draws how true, grid and magnetic north lie at a place, or at the centre of a sheet, on a date: a star for true north, a plain line for grid north, half an arrow for magnetic north. Norths less than 3 degrees apart are drawn farther apart, and the figure says so.

Beside the diagram it says in words: the angles with their uncertainty and yearly change, their range over the sheet where it is over half a degree, which way to turn the ring of a compass and what the compass must then read along its own needle, and until when the angles hold. The report has the conversions between the norths and a table of azimuths.

Turning the ring clockwise for an east declination is true of dials on which E and W stand reversed.</source>
      <translation>Dibuja cómo están el norte verdadero, el de cuadrícula y el magnético en un lugar, o en el centro de una hoja, en una fecha: una estrella para el verdadero, una línea simple para el de cuadrícula, media flecha para el magnético. Los nortes a menos de 3 grados se dibujan más separados, y la figura lo dice.

Junto al diagrama dice en palabras: los ángulos con su incertidumbre y cambio anual, su intervalo en la hoja donde pasa de medio grado, hacia dónde girar el limbo de la brújula y qué debe leer entonces a lo largo de su propia aguja, y hasta cuándo valen los ángulos. El informe tiene las conversiones entre los nortes y una tabla de acimutes.

Girar el limbo en sentido horario para una declinación este vale para limbos con la E y la O invertidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>A point on the map. Give this or an extent.</source>
      <translation>Un punto del mapa. Dé este o una extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Extent of the sheet</source>
      <translation>Extensión de la hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>The norths are those of its centre. Give this or a place.</source>
      <translation>Los nortes son los de su centro. Dé esta o un lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Grid</source>
      <translation>Cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>CRS whose grid north is meant. Left empty: that of the place or the extent.</source>
      <translation>SRC cuyo norte de cuadrícula se quiere. Si se deja vacío: el del lugar o la extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>For which magnetic north is drawn. There is no silent today.</source>
      <translation>Para la que se dibuja el norte magnético. La fecha de hoy nunca se supone.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Above sea level; it hardly matters.</source>
      <translation>Sobre el nivel del mar; apenas importa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Draw small angles larger</source>
      <translation>Dibujar mayores los ángulos pequeños</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Norths less than 3 degrees apart are drawn 8 degrees apart, and the figure says so.</source>
      <translation>Los nortes a menos de 3 grados se dibujan a 8 grados, y la figura lo dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Dots to the inch of a PNG</source>
      <translation>Puntos por pulgada de un PNG</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>SVG and PDF do not need it.</source>
      <translation>SVG y PDF no lo necesitan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Diagram</source>
      <translation>Diagrama</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>The ending of the name says which: .svg, .pdf or .png.</source>
      <translation>La extensión del nombre dice cuál: .svg, .pdf o .png.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>SVG files (*.svg)</source>
      <translation>Archivos SVG (*.svg)</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>PNG files (*.png)</source>
      <translation>Archivos PNG (*.png)</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>The same in words, with the conversions between the norths and a table of azimuths.</source>
      <translation>Lo mismo en palabras, con las conversiones entre los nortes y una tabla de acimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Convergence</source>
      <translation>Convergencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Magnetic north from grid north</source>
      <translation>Norte magnético desde el de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Yearly change of the declination</source>
      <translation>Cambio anual de la declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Norths, {day}</source>
      <translation>Nortes, {day}</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>The horizontal field is only {h:.0f} nT somewhere on the sheet.</source>
      <translation>En algún lugar de la hoja el campo horizontal es de solo {h:.0f} nT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Language of the figure</source>
      <translation>Idioma de la figura</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: QGIS's own.</source>
      <translation>Si se deja vacío: el de QGIS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Give either PLACE or EXTENT.</source>
      <translation>Dé PLACE o EXTENT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>OUTPUT: the name must end in one of {endings}.</source>
      <translation>OUTPUT: el nombre debe acabar en una de estas extensiones: {endings}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>The centre of the extent is no place of the coordinate reference system.</source>
      <translation>El centro de la extensión no es un lugar del sistema de referencia de coordenadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>This projection does not keep angles: conversions to and from the grid are off by up to {off:.1f}° for some directions. Use the table of azimuths.</source>
      <translation>Esta proyección no conserva los ángulos: las conversiones hacia y desde la cuadrícula yerran hasta {off:.1f}° en algunas direcciones. Use la tabla de acimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Norths of a sheet</source>
      <translation>Nortes de una hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Centre: {lat:.5f}° latitude, {lon:.5f}° longitude (WGS 84). Grid: {crs}.</source>
      <translation>Centro: {lat:.5f}° de latitud, {lon:.5f}° de longitud (WGS 84). Cuadrícula: {crs}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>From one north to another</source>
      <translation>De un norte a otro</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Azimuth</source>
      <translation>Azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Add</source>
      <translation>Sumar</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Azimuths side by side</source>
      <translation>Acimutes lado a lado</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Magnetic</source>
      <translation>Magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>True</source>
      <translation>Verdadero</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>Point</source>
      <translation>Rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_diagram.py" />
      <source>The ring goes clockwise for an east declination and counter-clockwise for a west one: common practice, true of dials on which E and W stand reversed.</source>
      <translation>El limbo gira en sentido horario para una declinación este y antihorario para una oeste: práctica común, válida para limbos con la E y la O invertidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Sun azimuths</source>
      <translation>Acimutes del sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Where the sun stands: its true azimuth and altitude, the azimuth of a shadow, how fast they turn, and what a compass with a given ring setting should read. A second north where rock or iron turns the needle.

At each row's own time; or through the days in steps, as a table for the notebook; or at the times when the sun stands on a bearing.

A time needs its zone, in the cell (12:05+02:00, 10:05Z) or for the run. Azimuths are those of the centre, good to 0.01 degree; half a minute of the clock is about an eighth of a degree and more near noon.

Never look at the sun through a sight or a lens: use the shadow. Results support, and do not replace, licensed professional judgement.</source>
      <translation>Dónde está el sol: su acimut verdadero y su altura, el acimut de una sombra, con qué rapidez giran y qué debería leer una brújula con un ajuste dado del anillo. Un segundo norte donde la roca o el hierro desvían la aguja.

A la hora propia de cada fila; o a lo largo de los días por pasos, como tabla para la libreta; o a las horas en que el sol está en un rumbo.

Una hora necesita su huso, en la celda (12:05+02:00, 10:05Z) o para toda la ejecución. Los acimutes son los del centro, con 0.01 grados de exactitud; medio minuto de reloj es alrededor de un octavo de grado, y más cerca del mediodía.

No mire nunca al sol por una mira ni por una lente: use la sombra. Los resultados apoyan, y no sustituyen, el juicio profesional autorizado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Places</source>
      <translation>Posiciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Point layer; positions are taken from the geometry.</source>
      <translation>Capa de puntos; las posiciones se toman de la geometría.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Times</source>
      <translation>Horas</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Which times are asked for.</source>
      <translation>Qué horas se piden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>each row's own time</source>
      <translation>la hora propia de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>through the day in steps</source>
      <translation>a lo largo del día por pasos</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>when the sun stands on a bearing</source>
      <translation>cuando el sol está en un rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Time of each row</source>
      <translation>Hora de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Text such as 14:05, 2026-06-21 14:05+02:00, or a field of date and time.</source>
      <translation>Texto como 14:05, 2026-06-21 14:05+02:00, o un campo de fecha y hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Time zone</source>
      <translation>Huso horario</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Of times that do not say: UTC, an offset such as +02:00 (east positive), or Europe/Madrid.</source>
      <translation>De las horas que no lo dicen: UTC, un desfase como +02:00 (este positivo) o Europe/Madrid.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Last day</source>
      <translation>Último día</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Days from the date to this one, for steps and bearings.</source>
      <translation>Días desde la fecha hasta este, para pasos y rumbos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_profile.py" />
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Step</source>
      <translation>Paso</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Between rows of the table.</source>
      <translation>Entre filas de la tabla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>min</source>
      <translation>min</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/shared.py" />
      <source>Bearing</source>
      <translation>Azimut leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>True azimuth on which the sun is to stand.</source>
      <translation>Acimut verdadero en el que ha de estar el sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/parameters.py" />
      <source>Ring setting of the compass</source>
      <translation>Ajuste del limbo de la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>East positive; 0 for a ring that is not set.</source>
      <translation>Este positivo; 0 para un anillo sin ajustar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Ground that may hide the sun. Left out: a level horizon.</source>
      <translation>Terreno que puede ocultar el sol. Si se omite: un horizonte llano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>The places with the sun's azimuth and altitude at each time.</source>
      <translation>Los lugares con el acimut y la altura del sol a cada hora.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>ZONE: {zone} is no offset such as +02:00, nor a zone such as Europe/Madrid.</source>
      <translation>ZONE: {zone} no es un desfase como +02:00 ni un huso como Europe/Madrid.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Each row's own time needs TIME_FIELD.</source>
      <translation>La hora propia de cada fila necesita TIME_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>SIGHT must say on which bearing the sun is to stand.</source>
      <translation>SIGHT debe decir en qué rumbo ha de estar el sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>Which day? Give DATE or DATE_FIELD. There is no silent today.</source>
      <translation>¿Qué día? Dé DATE o DATE_FIELD. No se supone hoy en silencio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>LAST_DATE goes with an earlier DATE.</source>
      <translation>LAST_DATE va con una DATE anterior.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/sun_azimuths.py" />
      <source>That would be more than {most} rows; take a longer step or fewer days.</source>
      <translation>Serían más de {most} filas; tome un paso más largo o menos días.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Date of the readings</source>
      <translation>Fecha de las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Used for rows without a date of their own. There is no silent today.</source>
      <translation>Se usa en las filas que no tienen fecha propia. Nunca se supone la fecha de hoy.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Date of each row</source>
      <translation>Fecha de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>A date field, or text such as 2026-06-01, 1 Jun 2026, 2026-06 or 1987.</source>
      <translation>Un campo de fecha, o texto como 2026-06-01, 1 jun 2026, 2026-06 o 1987.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Order of numeric dates</source>
      <translation>Orden de las fechas numéricas</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>With the year first, 1/6/2026 is ambiguous and rejected.</source>
      <translation>Con el año primero, 1/6/2026 es ambiguo y se rechaza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Model of the magnetic field</source>
      <translation>Modelo del campo magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>IGRF-14 serves old and new readings alike; WMMHR2025 has the field of the crust in finer detail.</source>
      <translation>IGRF-14 sirve para lecturas viejas y nuevas; WMMHR2025 tiene el campo de la corteza con más detalle.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>{key}: {entry} cannot be read.</source>
      <translation>{key}: {entry} no se puede leer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Numbers that mean no height</source>
      <translation>Números que significan sin altura</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>In fields and z. -999 too means none where no other height of the field lies within 200 m of it.</source>
      <translation>En campos y z. También -999 significa ninguna donde ninguna otra altura del campo está a menos de 200 m de él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Unit of heights in fields and z</source>
      <translation>Unidad de las alturas en campos y z</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>The heights of the DEM have a unit of their own.</source>
      <translation>Las alturas del MDE tienen su propia unidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Stations may lie underground</source>
      <translation>Las estaciones pueden estar bajo tierra</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Otherwise heights of stations outside -450 to 8,900 m are not believed.</source>
      <translation>Si no, no se creen alturas de estaciones fuera de -450 a 8900 m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Dips drawn as level or upright</source>
      <translation>Buzamientos dibujados como horizontales o verticales</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Dips and plunges nearer than this to 0 get the symbol of level ones, as near to 90 that of upright ones, and no number. Half a degree is what is printed as 0 or 90.</source>
      <translation>Los buzamientos e inmersiones más cercanos que esto a 0 llevan el símbolo de los horizontales, igual de cerca de 90 el de los verticales, y ningún número. Medio grado es lo que se imprime como 0 o 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Magnetic ground</source>
      <translation>Terreno magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Areas or lines where the needle cannot be trusted, such as basalt, serpentinite, ore, mine works or power lines. Magnetic readings near them are warned.</source>
      <translation>Áreas o líneas donde no se puede confiar en la aguja, como basalto, serpentinita, mena, labores mineras o líneas eléctricas. Se avisa de las lecturas magnéticas cercanas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Distance from magnetic ground</source>
      <translation>Distancia al terreno magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>How near to it a reading is warned; 0: only within it.</source>
      <translation>A qué distancia se avisa de una lectura; 0: solo dentro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Local attraction</source>
      <translation>Atracción local</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Points with station, attr_corr and sig_attr. What they say is added to magnetic readings at the same station or within 10 m, and nowhere else: it is never interpolated.</source>
      <translation>Puntos con station, attr_corr y sig_attr. Lo que dicen se suma a las lecturas magnéticas en la misma estación o a menos de 10 m, y en ningún otro sitio: nunca se interpola.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Station of each row</source>
      <translation>Estación de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Name of the station, where local attraction is known by station.</source>
      <translation>Nombre de la estación, donde la atracción local se conoce por estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Compass of each row</source>
      <translation>Brújula de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Name of the compass, where ring settings or checks are stated by compass.</source>
      <translation>Nombre de la brújula, donde los ajustes del limbo o las comprobaciones se indican por brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Checked compasses</source>
      <translation>Brújulas comprobadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Table that the check of compasses wrote. Its index_err is added to the readings of each compass, the same as subtracting it from the ring setting.</source>
      <translation>Tabla que escribió la comprobación de brújulas. Su index_err se suma a las lecturas de cada brújula, lo mismo que restarlo del ajuste del limbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>North the readings are counted from</source>
      <translation>Norte al que se refieren las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>True: already corrected, as by many phones. Grid: taken off a map's grid.</source>
      <translation>Verdadero: ya corregido, como hacen muchos teléfonos. Cuadrícula: tomado de la cuadrícula de un mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>North of each row</source>
      <translation>Norte de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Field with magnetic, true or grid (or m, t, g) for each row. Empty rows use the north chosen above.</source>
      <translation>Campo con magnetic, true o grid (o m, t, g) en cada fila. Las filas vacías usan el norte elegido arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Your words for the norths</source>
      <translation>Sus palabras para los nortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Such as: compass=magnetic;phone=true;sheet=grid</source>
      <translation>Por ejemplo: brújula=magnetic;teléfono=true;hoja=grid</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>End of the needle that was read</source>
      <translation>Extremo de la aguja que se leyó</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>With the compass held the other way round the south end is read: 180 degrees are added to azimuths.</source>
      <translation>Con la brújula al revés se lee el extremo sur: se suman 180 grados a los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>End of the needle of each row</source>
      <translation>Extremo de la aguja de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Field with north or south. Empty rows go by the choice above. Compass letters of the dip stay.</source>
      <translation>Campo con north o south. Las filas vacías siguen la elección de arriba. Las letras del buzamiento se mantienen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Grid of the grid readings</source>
      <translation>Cuadrícula de las lecturas de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>CRS whose grid north the grid readings are counted from. Left empty: the layer's own.</source>
      <translation>SRC a cuyo norte de cuadrícula se refieren las lecturas de cuadrícula. Si se deja vacío: el de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Declination already dialled into the compass, east positive. 0: the ring is not set, the compass shows magnetic azimuths.</source>
      <translation>Declinación ya puesta en la brújula, positiva al este. 0: el anillo no está girado, la brújula da azimutes magnéticos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Ring setting of each row</source>
      <translation>Ajuste del limbo de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Field with the ring setting. What an empty cell means among others is said by RING_BLANK; a field that is empty in all rows of a compass leaves it to the ring setting above.</source>
      <translation>Campo con el ajuste del limbo. Lo que significa una celda vacía entre otras lo dice RING_BLANK; un campo vacío en todas las filas de una brújula lo deja al ajuste del limbo de arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Ring settings by compass</source>
      <translation>Ajustes del limbo por brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Such as A=0;B=23.9 or B=0;B=23.9@2024-05-01, which holds from that day on. East positive.</source>
      <translation>Como A=0;B=23.9 o B=0;B=23.9@2024-05-01, que vale desde ese día. Este positivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Empty ring settings among others</source>
      <translation>Ajustes del limbo vacíos entre otros</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>In a notebook a blank may mean as above, or 0. Only magnetic rows are asked.</source>
      <translation>En una libreta un blanco puede significar como arriba, o 0. Solo se pregunta a las filas magnéticas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Given declination</source>
      <translation>Declinación dada</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>East positive; used for all magnetic rows when the declination is given.</source>
      <translation>Positiva al este; se usa para todas las filas magnéticas cuando la declinación es dada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Given declination of each row</source>
      <translation>Declinación dada de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Field with the declination, east positive. A row that has one uses it, whatever the model; others use the model.</source>
      <translation>Campo con la declinación, positiva al este. La fila que la tiene usa la suya, sea cual sea el modelo; las demás usan el modelo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Uncertainty of a given declination</source>
      <translation>Incertidumbre de una declinación dada</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/sightings/shared.py" />
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>1-sigma.</source>
      <translation>1 sigma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Metres above sea level; it hardly matters for declination. Empty rows use 0.</source>
      <translation>Metros sobre el nivel del mar; apenas influye en la declinación. Las filas vacías usan 0.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>DEM</source>
      <translation>MDE</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Band of the DEM</source>
      <translation>Banda del MDE</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>The band that holds heights.</source>
      <translation>La banda que contiene las cotas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Unit of the DEM's heights</source>
      <translation>Unidad de las alturas del MDE</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>As the file says: by its vertical CRS or its band; metres where nothing says it.</source>
      <translation>Como dice el archivo: por su SRC vertical o su banda; metros donde nada lo dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Unit of the bearings</source>
      <translation>Unidad de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Only for bearings.</source>
      <translation>Solo para los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>Letters of the compass points</source>
      <translation>Letras de los puntos cardinales</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>O is west in Spanish, French, Italian and Portuguese and east in German: it is never guessed.</source>
      <translation>O es oeste en español, francés, italiano y portugués y este en alemán: nunca se adivina.</translation>
    </message>
    <message>
      <location filename="../processing_algs/parameters.py" />
      <source>400 gon or 6400 mil make the circle.</source>
      <translation>400 gon o 6400 mil hacen la circunferencia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Planes and lines from parts</source>
      <translation>Planos y líneas a partir de partes</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Puts attitudes together from parts: a plane from two apparent dips, from two lines, or from its strike and one apparent dip; the line in which two planes meet; attitudes turned about an axis; attitudes as they were before their bed was tilted.

The second part comes from two more fields of the same rows, or from the nearest row of another layer. Each result has the uncertainty that its parts give it. Two apparent dips less than 20 degrees apart, and one within 10 degrees of the strike, are warned: what they give is hardly known.

Beds are laid flat about their strike, overturned ones by 180 minus their dip; with a plunging fold first its axis is levelled, about the level line at right angles to it, and then the bed: ORDER says so.</source>
      <translation>Compone orientaciones a partir de partes: un plano a partir de dos buzamientos aparentes, de dos líneas, o de su rumbo y un buzamiento aparente; la línea en que se cortan dos planos; orientaciones giradas en torno a un eje; orientaciones como eran antes de que se inclinara su capa.

La segunda parte sale de otros dos campos de las mismas filas, o de la fila más cercana de otra capa. Cada resultado tiene la incertidumbre que le dan sus partes. Dos buzamientos aparentes a menos de 20 grados, y uno a menos de 10 grados del rumbo, se advierten: apenas se conoce lo que dan.

Las capas se ponen horizontales en torno a su rumbo, las invertidas girando 180 menos su buzamiento; en un pliegue con inmersión primero se nivela su eje, en torno a la línea horizontal perpendicular a él, y luego la capa: ORDER lo dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Points with the first part, and the second as well if it has fields.</source>
      <translation>Puntos con la primera parte, y también la segunda si tiene campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>What is put together</source>
      <translation>Qué se compone</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>What the two parts are.</source>
      <translation>Qué son las dos partes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>two apparent dips: a plane</source>
      <translation>dos buzamientos aparentes: un plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>two lines: a plane</source>
      <translation>dos líneas: un plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>a strike and an apparent dip: a plane</source>
      <translation>un rumbo y un buzamiento aparente: un plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>two planes: the line where they meet</source>
      <translation>dos planos: la línea en que se cortan</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>an attitude, turned about a given axis</source>
      <translation>una orientación, girada en torno a un eje dado</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>an attitude and its bed, which is laid flat</source>
      <translation>una orientación y su capa, que se pone horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Azimuth of the first part</source>
      <translation>Azimut de la primera parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>True: the azimuth in which an apparent dip goes down, the trend of a line, the strike of a plane with the dip to its right.</source>
      <translation>Verdadero: el azimut hacia el que baja un buzamiento aparente, la dirección de una línea, el rumbo de un plano con el buzamiento a su derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Angle of the first part</source>
      <translation>Ángulo de la primera parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Apparent dip, plunge or dip, 0 to 90. A strike alone has none.</source>
      <translation>Buzamiento aparente, inmersión o buzamiento, 0 a 90. Un rumbo solo no lo tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Azimuth of the second part</source>
      <translation>Azimut de la segunda parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>A field of the readings, where they have the second part too.</source>
      <translation>Un campo de las lecturas, cuando también tienen la segunda parte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Angle of the second part</source>
      <translation>Ángulo de la segunda parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>As the azimuth of the second part.</source>
      <translation>Como el azimut de la segunda parte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Layer of the second part</source>
      <translation>Capa de la segunda parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Where the readings do not have it: the nearest row is taken.</source>
      <translation>Cuando las lecturas no la tienen: se toma la fila más cercana.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Azimuth in that layer</source>
      <translation>Azimut en esa capa</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Of the second part.</source>
      <translation>De la segunda parte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Angle in that layer</source>
      <translation>Ángulo en esa capa</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>What is turned</source>
      <translation>Qué se gira</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Where attitudes are turned or laid flat.</source>
      <translation>Cuando se giran o se aplanan orientaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>planes</source>
      <translation>planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>lines</source>
      <translation>líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Polarity of the bed</source>
      <translation>Polaridad de la capa geológica</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>upright or overturned: of the bed that is laid flat, or of the planes that are turned.</source>
      <translation>upright u overturned: de la capa que se pone horizontal, o de los planos que se giran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>True, toward the downward end.</source>
      <translation>Verdadera, hacia el extremo inferior.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>0 to 90.</source>
      <translation>De 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Angle of turning</source>
      <translation>Ángulo de giro</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Clockwise for one who looks along the axis, down its plunge.</source>
      <translation>En el sentido de las agujas del reloj para quien mira a lo largo del eje, en el sentido de su inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Order of levelling</source>
      <translation>Orden de la nivelación</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Where a bed of a plunging fold is laid flat and its axis is given.</source>
      <translation>Cuando se pone horizontal una capa de un pliegue con inmersión y se da su eje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>first the plunge, then the bed</source>
      <translation>primero la inmersión, luego la capa</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>first the bed, then the plunge</source>
      <translation>primero la capa, luego la inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Uncertainty of the first part</source>
      <translation>Incertidumbre de la primera parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>1-sigma of its direction.</source>
      <translation>1-sigma de su dirección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Uncertainty of the second part</source>
      <translation>Incertidumbre de la segunda parte</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>1-sigma of its direction; of an axis of turning too.</source>
      <translation>1-sigma de su dirección; también la de un eje de giro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Kind of structure</source>
      <translation>Tipo de estructura</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>What the results are; it decides their symbol. Left empty: other plane, or other line.</source>
      <translation>Qué son los resultados; decide su símbolo. Vacío: otro plano, u otra línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Attitudes put together</source>
      <translation>Orientaciones compuestas</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>The readings with the attitude they give.</source>
      <translation>Las lecturas con la orientación que dan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>Counts, what was put together, and what was noticed.</source>
      <translation>Recuentos, qué se compuso y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>PARTS is {parts}, so {keys} is needed.</source>
      <translation>PARTS es {parts}, así que hace falta {keys}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>KIND_DEFAULT: {kind} does not go with what is put together.</source>
      <translation>KIND_DEFAULT: {kind} no va con lo que se compone.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_attitudes.py" />
      <source>SECOND is given together with AZIMUTH2_FIELD or ANGLE2_FIELD: the second part comes from one of them.</source>
      <translation>SECOND se da junto con AZIMUTH2_FIELD o ANGLE2_FIELD: la segunda parte sale de uno de ellos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_rows.py" />
      <source>SECOND: no row has a part that can be read, and a place.</source>
      <translation>SECOND: ninguna fila tiene una parte legible y un lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/combine_rows.py" />
      <source>SECOND: {count} rows without a part or a place were left out.</source>
      <translation>SECOND: se dejaron fuera {count} filas sin parte o sin lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Depth to a plane</source>
      <translation>Profundidad de un plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Says at what depth a vertical hole meets a plane that was measured elsewhere, taking the plane to go on flat: plane_elev is the height of the plane above sea level at the hole, depth how far below ground it lies, sig_depth the 1-sigma that the attitude, the places and the heights leave. It grows with the distance.

Each hole takes the nearest plane, or the nearest of its own group. Where the plane is above ground, so that the hole never meets it, the depth is negative and the row says above_ground.</source>
      <translation>Dice a qué profundidad corta un sondeo vertical un plano medido en otro lugar, suponiendo que el plano no se curva: plane_elev es la cota del plano sobre el nivel del mar en el sondeo; depth, a qué profundidad está bajo el terreno; sig_depth, su incertidumbre (1 sigma), debida a la orientación, las posiciones y las cotas, que crece con la distancia.

Cada sondeo toma el plano más próximo, o el más próximo de su grupo. Donde el plano queda sobre el terreno y el sondeo no llega a cortarlo, la profundidad es negativa y la fila dice above_ground.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Places of holes</source>
      <translation>Posiciones de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Points, such as planned boreholes.</source>
      <translation>Puntos, como sondeos proyectados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Height of each hole's mouth</source>
      <translation>Cota de la boca de cada sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Without a field, and where it is empty, the DEM is read.</source>
      <translation>Sin campo, y donde está vacío, se lee el MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Planes</source>
      <translation>Planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Points with true strike and dip, such as corrected readings or planes solved from points.</source>
      <translation>Puntos con rumbo verdadero y buzamiento, como lecturas corregidas o planos hallados a partir de puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Name of each plane</source>
      <translation>Nombre de cada plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Written out with each hole, so that one sees which plane was used.</source>
      <translation>Se escribe con cada sondeo, para que se vea qué plano se usó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Height of each plane</source>
      <translation>Cota de cada plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Without a field, and where it is empty, the DEM is read at the point; planes solved here keep theirs.</source>
      <translation>Sin campo, y donde está vacío, se lee el MDE en el punto; los planos hallados con estas herramientas conservan la suya.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Which plane</source>
      <translation>Qué plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>The group is what the fields below hold.</source>
      <translation>El grupo es lo que contienen los campos de abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>the nearest of all planes</source>
      <translation>el más cercano de todos los planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>the nearest of the same group</source>
      <translation>el más cercano del mismo grupo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Group of a hole</source>
      <translation>Grupo del sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Such as the name of the seam.</source>
      <translation>Por ejemplo, el nombre de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Group of a plane</source>
      <translation>Grupo del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <location filename="../processing_algs/planes/true_thickness.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>Heights of the ground.</source>
      <translation>Cotas del terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Depths</source>
      <translation>Profundidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>The points with plane_elev, depth and sig_depth, and which plane was used from how far.</source>
      <translation>Los puntos con plane_elev, depth y sig_depth, y qué plano se usó y a qué distancia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>MATCH is group, so GROUP_FIELD and PLANES_GROUP_FIELD are needed.</source>
      <translation>MATCH es group: hacen falta GROUP_FIELD y PLANES_GROUP_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>Group fields are given, but MATCH is nearest: set it to group.</source>
      <translation>Se indicaron campos de grupo, pero MATCH es nearest: póngalo en group.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>None of the {count} rows of PLANES is a plane with a place and a height.</source>
      <translation>Ninguna de las {count} filas de PLANES es un plano con posición y cota.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>{count} rows of PLANES are no planes with a place and a height and were left out.</source>
      <translation>Se dejaron fuera {count} fila(s) de PLANES que no son planos con posición y cota.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>PLANES: {line}</source>
      <translation>PLANES: {line}</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/depth_to_plane.py" />
      <source>(none)</source>
      <translation>(ninguno)</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Outcrop trace of planes</source>
      <translation>Traza de afloramiento de planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Predicts where a plane that was measured at one place meets the ground around it, taking the plane to go on flat within the radius. The line best is the trace itself; plus and minus bound the ground where any plane within the attitude's uncertainty (1-sigma of the pole) may crop out, plus on the side its pole points to. All three meet in the place of measurement.

Vertical and horizontal planes work too. Lines carry the height of the ground. They end at the radius and at gaps of the DEM; a row whose circle the DEM does not fill says so.</source>
      <translation>Predice dónde corta el terreno un plano medido en un punto, suponiendo que se mantiene plano dentro del radio. La línea best es la propia traza; plus y minus limitan el terreno donde puede aflorar cualquier plano dentro de la incertidumbre de la orientación (1 sigma del polo), con plus del lado hacia el que apunta su polo. Las tres se unen en el punto de medida.

Sirve también para planos verticales y horizontales. Las líneas llevan la cota del terreno. Acaban en el radio y en los huecos del MDE; si el MDE no cubre todo el círculo, la fila lo dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Height of each attitude</source>
      <translation>Cota de cada orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Without a field, and where it is empty, the DEM is read at the point.</source>
      <translation>Sin campo, y donde está vacío, se lee el MDE en el punto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Radius</source>
      <translation>Radio</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Around each attitude, within which its plane is taken to go on flat.</source>
      <translation>Alrededor de cada actitud, dentro del cual se supone que su plano sigue plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Outcrop traces</source>
      <translation>Trazas de afloramiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <source>Lines with the attitude's own fields and line = best, plus or minus.</source>
      <translation>Líneas con los campos de la orientación y line = best, plus o minus.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Planes along contact traces</source>
      <translation>Planos a lo largo de trazas de contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Reads the attitude of a contact from its own course over the ground: a window slides along each line, and where the line within it is bent enough, in plan or by the relief, a plane is laid through it by least squares. Elsewhere the row is rejected and says why: a straight stretch of trace belongs to every plane through it.

Each row gives the stretch (from_m, to_m), the plane and how well it is known, as for planes from points. Points read between two vertices of a line share the vertices' errors, so a line drawn with few vertices counts for few points. Windows that overlap are not independent.

Windows without a plane have a row in the table and no mark on the map; planes whose dip is hardly known are drawn pale.</source>
      <translation>Lee la actitud de un contacto de su propio curso sobre el terreno: una ventana se desliza por cada línea, y donde la línea dentro de ella está bastante curvada, en planta o por el relieve, se ajusta un plano por mínimos cuadrados. En otro caso la fila se rechaza y dice por qué: un tramo recto de traza pertenece a todo plano que pasa por él.

Cada fila da el tramo (from_m, to_m), el plano y lo bien que se conoce, como en los planos por puntos. Los puntos leídos entre dos vértices comparten los errores de estos, así que una línea con pocos vértices cuenta como pocos puntos. Las ventanas que se solapan no son independientes.

Las ventanas sin plano tienen una fila en la tabla y ninguna marca en el mapa; los planos cuyo buzamiento apenas se conoce se dibujan pálidos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Contact lines</source>
      <translation>Líneas de contacto</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Traces of contacts, faults or other surfaces as they crop out.</source>
      <translation>Trazas de contactos, fallas u otras superficies tal como afloran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Window</source>
      <translation>Ventana</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Length along the line that one plane is taken from; 0 takes the whole line.</source>
      <translation>Longitud de la línea de la que se toma un plano; 0 toma la línea entera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>By which the window moves on.</source>
      <translation>Con el que avanza la ventana.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>A point with the attitude of each window, on the trace, with strike-and-dip symbols.</source>
      <translation>Un punto con la orientación de cada ventana, sobre la traza, con símbolos de rumbo y buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Planes from points (three-point problem)</source>
      <translation>Planos a partir de puntos (problema de los tres puntos)</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Lays a plane through three points of a contact, a coal seam or a fault, or through more by least squares, and says how well it is known. Heights come from a DEM, a field or the points themselves.

The uncertainty of places and heights is carried through to the plane: dip_lo and dip_hi bound the dip, and dd_half is the half-range of the dip direction, at 95 percent. Three points always fit exactly, so rms says nothing then; look at thinness (1 for a round group, 0 for a line) and at the ranges. Points that lie on one line within their errors give no plane, and the row says so.

All geometry is done in metres on the ellipsoid with true north, in whatever CRS the layers are.</source>
      <translation>Ajusta un plano a tres puntos de un contacto, una capa de carbón o una falla, o a más puntos por mínimos cuadrados, y dice con qué certeza se conoce. Las cotas proceden de un MDE, de un campo o de los propios puntos.

La incertidumbre de posiciones y cotas se propaga al plano: dip_lo y dip_hi limitan el buzamiento, y dd_half es el semiintervalo de la dirección de buzamiento, al 95 %. Tres puntos siempre ajustan exactamente y entonces rms no dice nada; fíjese en thinness (relación ancho/largo del grupo: 1 si es redondo, 0 si es una línea) y en los intervalos. Los puntos alineados dentro de sus errores no dan ningún plano, y la fila lo dice.

Toda la geometría se resuelve en metros sobre el elipsoide y con norte verdadero, sea cual sea el SRC de las capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Points on the plane</source>
      <translation>Puntos del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Points of one surface, such as a contact, or of several told apart by a field.</source>
      <translation>Puntos de una superficie, como un contacto, o de varias que se distinguen por un campo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Which points belong together</source>
      <translation>Qué puntos van juntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>One plane for each value. Without a field all points are one plane.</source>
      <translation>Un plano por cada valor. Sin campo, todos los puntos son un plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Where heights come from</source>
      <translation>De dónde se toman las cotas</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>A field holds a height measured with each point, such as that of a seam in a borehole.</source>
      <translation>Un campo contiene una altura medida con cada punto, como la de una capa en un sondeo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>the DEM at the mapped place</source>
      <translation>el MDE en el lugar cartografiado</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>a field</source>
      <translation>un campo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>the points' own third coordinate</source>
      <translation>la tercera coordenada de los puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Heights of the ground, where they come from a DEM.</source>
      <translation>Cotas del terreno, cuando se toman de un MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Field of heights</source>
      <translation>Campo de las cotas</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Heights above sea level.</source>
      <translation>Cotas sobre el nivel del mar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>A point with the attitude of each plane at the middle of its points, with strike-and-dip symbols.</source>
      <translation>Un punto con la orientación de cada plano en el centro de sus puntos, con símbolos de rumbo y buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Areas of the planes</source>
      <translation>Polígonos de los planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>The triangle, or the outline of more points, of each plane, lying in it; for 3-D views.</source>
      <translation>El triángulo de cada plano, o el contorno si hay más puntos, situado en el plano; para vistas 3D.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>The planes with their ranges, what was noticed, and how it was done.</source>
      <translation>Los planos con sus intervalos, qué se observó y cómo se hizo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>HEIGHT_FROM is dem, so DEM is needed.</source>
      <translation>HEIGHT_FROM es dem: hace falta DEM.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>HEIGHT_FROM is field, so HEIGHT_FIELD is needed.</source>
      <translation>HEIGHT_FROM es field: hace falta HEIGHT_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>HEIGHT_FROM is z, but the points have no third coordinate.</source>
      <translation>HEIGHT_FROM es z, pero los puntos no tienen tercera coordenada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>There is no point in the layer.</source>
      <translation>No hay ningún punto en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>Planes from points</source>
      <translation>Planos a partir de puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>in all</source>
      <translation>en total</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/sightings/compass_report.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>How it was done</source>
      <translation>Cómo se hizo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Three points exactly, more by orthogonal regression, in metres on the ellipsoid with true north. Uncertainties put in, 1-sigma: places {place} m, heights {height} m. Ranges are at 95 percent, from these uncertainties carried through to the pole of the plane.</source>
      <translation>Tres puntos, de forma exacta; más, por regresión ortogonal; en metros sobre el elipsoide y con norte verdadero. Incertidumbres de partida, 1 sigma: posiciones {place} m, cotas {height} m. Los intervalos son al 95 % y resultan de propagar estas incertidumbres al polo del plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>A warning is given where thinness is under {thin} or the range of the dip over {wide} degrees. Heights of three points that are wrong together still fit exactly: no residual shows it.</source>
      <translation>Se avisa si la relación ancho/largo (thinness) es menor que {thin} o si el intervalo del buzamiento pasa de {wide} grados. Tres puntos con cotas erróneas ajustan igual de bien: ningún residuo lo delata.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Found</source>
      <translation>Resultados</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>group</source>
      <translation>grupo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>points</source>
      <translation>puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>strike</source>
      <translation>rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>dip</source>
      <translation>buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>dip from</source>
      <translation>buzamiento desde</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>dip to</source>
      <translation>buzamiento hasta</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>half-range of dip direction</source>
      <translation>semiintervalo de la dirección de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>rms, m</source>
      <translation>error cuadrático medio, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>thinness</source>
      <translation>ancho/largo (thinness)</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>{count} more planes are in the layer.</source>
      <translation>Hay {count} planos más en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Heights were read bilinearly from the DEM at the mapped places; its unit: {unit}.</source>
      <translation>Las cotas se leyeron del MDE por interpolación bilineal en las posiciones cartografiadas; su unidad: {unit}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Heights were measured with the points and taken from a field.</source>
      <translation>Las cotas se midieron con los puntos y se tomaron de un campo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Heights are the points' own third coordinates.</source>
      <translation>Las cotas son la tercera coordenada de los propios puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>What was noticed</source>
      <translation>Lo que se observó</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/statistics/reports.py" />
      <source>First ids</source>
      <translation>Primeros identificadores</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>By vectors in space. Uncertainties put in, 1-sigma: first part {first} degrees, second part {second} degrees; sig_pole is what they give in the direction that is least sure.</source>
      <translation>Por vectores en el espacio. Incertidumbres supuestas, 1-sigma: primera parte {first} grados, segunda parte {second} grados; sig_pole es lo que dan en la dirección menos segura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of a mapped place</source>
      <translation>Incertidumbre de la posición cartografiada</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>1-sigma in easting and in northing: how far a point or line may lie from where it belongs.</source>
      <translation>1 sigma en este y en norte: cuánto puede distar un punto o una línea de donde le corresponde.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of a height</source>
      <translation>Incertidumbre de la cota</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>1-sigma, apart from what a wrong place does to it.</source>
      <translation>1 sigma, aparte de lo que le hace un lugar equivocado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>What the planes are; it decides their symbol.</source>
      <translation>Qué son los planos; de ello depende su símbolo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>True, dip to the right.</source>
      <translation>Verdadero, con el buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Uncertainty of each attitude</source>
      <translation>Incertidumbre de cada orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>1-sigma of the pole, degrees.</source>
      <translation>1 sigma del polo, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Uncertainty of attitudes that do not say theirs</source>
      <translation>Incertidumbre de las orientaciones que no la indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>1-sigma of the pole.</source>
      <translation>1 sigma del polo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>{key}: the heights are not known; give DEM or {field}.</source>
      <translation>{key}: no se conocen las cotas; indique DEM o {field}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Structure contours of planes</source>
      <translation>Contornos estructurales de planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Draws the contours of a plane that was measured at one place, taking it to go on flat within the radius. They run along strike, at whole multiples of the interval above sea level.

With a DEM each contour is cut at the outcrop: below_ground is where the surface still lies in the ground, above_ground where it has been worn away. Horizontal and vertical planes have no contours to draw.</source>
      <translation>Dibuja los contornos estructurales de un plano medido en un punto, suponiendo que no se curva dentro del radio. Siguen el rumbo, a múltiplos enteros de la equidistancia sobre el nivel del mar.

Con un MDE, cada contorno se corta en el afloramiento: below_ground es donde la superficie sigue bajo el terreno; above_ground, donde se ha erosionado. Los planos horizontales y los verticales no tienen contornos que dibujar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Points with true strike and dip, such as planes solved from points.</source>
      <translation>Puntos con rumbo verdadero y buzamiento, como planos hallados a partir de puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Contour interval</source>
      <translation>Equidistancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Of height.</source>
      <translation>De altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Heights of the ground: of the attitudes, and to cut the contours at.</source>
      <translation>Cotas del terreno: las de las orientaciones y las que cortan los contornos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Structure contours</source>
      <translation>Contornos estructurales</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Lines with their height in elev, and where = below_ground or above_ground.</source>
      <translation>Líneas con su cota en elev, y where = below_ground o above_ground.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>True thickness across units</source>
      <translation>Espesor verdadero de unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>Takes lines drawn from the base of a unit to its top and gives the thickness at right angles to the bedding, on sloping ground and whatever the direction of the line. Only the two ends count, with the heights of the DEM there.

Strike and dip come from fields of the lines, or are the mean of the attitudes within a distance of each line. sig_thick is the 1-sigma that places, heights and attitude leave. The row also holds the width on the map, the slope and the azimuth of the line, from which the thickness follows: width x cos(azimuth - dip direction) x sin(dip) + width x tan(slope) x cos(dip).</source>
      <translation>Toma líneas dibujadas de la base de una unidad a su techo y da el espesor perpendicular a la estratificación, en terreno inclinado y sea cual sea la dirección de la línea. Solo cuentan los dos extremos, con las cotas del MDE en ellos.

El rumbo y el buzamiento se toman de campos de las líneas, o son la media de las orientaciones que hay hasta cierta distancia de cada línea. sig_thick es su incertidumbre (1 sigma), debida a las posiciones, las cotas y la orientación. La fila contiene además la anchura en el mapa, la pendiente y el azimut de la línea, de los que resulta el espesor: anchura x cos(azimut - dirección de buzamiento) x sen(buzamiento) + anchura x tan(pendiente) x cos(buzamiento).</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>Lines from base to top</source>
      <translation>Líneas de base a techo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>Each from the base of a unit to its top; only the first and the last vertex count.</source>
      <translation>Cada una de la base de una unidad a su techo; solo cuentan el primer vértice y el último.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>upright or overturned, of lines with their own strike and dip.</source>
      <translation>upright (normal) u overturned (invertida), de las líneas con rumbo y buzamiento propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>Bedding measured around, with the fields strike, dip and sig_pole. Used for lines without a strike and dip of their own.</source>
      <translation>Estratificación medida en los alrededores, con los campos strike, dip y sig_pole. Se usa para las líneas sin rumbo y buzamiento propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Distance</source>
      <translation>Distancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>From a line, within which attitudes are averaged, as poles.</source>
      <translation>Desde una línea, dentro de la cual se promedian actitudes, como polos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>Thicknesses</source>
      <translation>Espesores</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>The lines with thickness, sig_thick, and the attitude, width and slope used.</source>
      <translation>Las líneas con thickness, sig_thick, y la orientación, anchura y pendiente usadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>{key}: name the fields of strike and dip: STRIKE_FIELD and DIP_FIELD.</source>
      <translation>{key}: indique los campos de rumbo y buzamiento: STRIKE_FIELD y DIP_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>STRIKE_FIELD and DIP_FIELD are needed together.</source>
      <translation>STRIKE_FIELD y DIP_FIELD van siempre juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>ATTITUDES: the layer has no fields strike and dip.</source>
      <translation>ATTITUDES: la capa no tiene los campos strike y dip.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/true_thickness.py" />
      <source>ATTITUDES: {line}</source>
      <translation>ATTITUDES: {line}</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Side of the dip</source>
      <translation>Lado del buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Rake (pitch)</source>
      <translation>Cabeceo (rake, pitch)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>North it was read from</source>
      <translation>Norte desde el que se leyó</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>Ring setting, east positive</source>
      <translation>Ajuste del limbo, este positivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Observer</source>
      <translation>Observador</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>The notebook could not be written: {reason}</source>
      <translation>No se pudo escribir la libreta: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <source>not seen</source>
      <translation>no se vio</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Notebook</source>
      <translation>Libreta</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_book.py" />
      <location filename="../processing_algs/sections/package.py" />
      <location filename="../processing_algs/sheet/package.py" />
      <source>The project could not be stored: {reason}</source>
      <translation>No se pudo guardar el proyecto: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Blank notebook for the field</source>
      <translation>Libreta en blanco para el campo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Makes what goes into the field. OUTPUT is a GeoPackage with an empty layer of readings whose form has value lists for kinds and norths, ranges for angles, today's date, and repeats the last ring setting, compass and observer. PROJECT opens it, on a desktop or a mobile QGIS. PAGE is a page to be printed for the pencil, with a card that says the day's declination, its uncertainty and yearly change, the convergence, and how to set the ring.

Turning the ring clockwise for an east declination is common practice and true of dials on which E and W stand reversed; so the card says as well what the ring must then read along the needle: 010 for 10 E, 350 for 10 W.

A notebook that is already there is never replaced. Afterwards the layer goes through the correction, with the same notation. Magnetic readings fail near iron, power lines and in magnetic storms.</source>
      <translation>Prepara lo que va al campo. OUTPUT es un GeoPackage con una capa vacía de lecturas cuyo formulario tiene listas de tipos y nortes, intervalos para los ángulos, la fecha de hoy, y repite el último ajuste del limbo, la brújula y el observador. PROJECT la abre, en un QGIS de escritorio o móvil. PAGE es una hoja para imprimir y escribir a lápiz, con una ficha que dice la declinación del día, su incertidumbre y su cambio anual, la convergencia y cómo ajustar el limbo.

Girar el limbo en sentido horario para una declinación este es práctica común y vale para limbos con E y W invertidos; por eso la ficha dice también qué debe marcar entonces el limbo a lo largo de la aguja: 010 para 10 E, 350 para 10 W.

Una libreta que ya existe nunca se reemplaza. Después la capa pasa por la corrección, con la misma notación. Las lecturas magnéticas fallan cerca del hierro, de líneas eléctricas y en tormentas magnéticas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Where the readings will be taken. Give this or an extent.</source>
      <translation>Donde se tomarán las lecturas. Dé esto o una extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Extent of the area</source>
      <translation>Extensión del área</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>The card is for its centre. Give this or a place.</source>
      <translation>La ficha es para su centro. Dé esto o un lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>CRS of the layer</source>
      <translation>SRC de la capa</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Left empty: that of the place or the extent.</source>
      <translation>Vacío: el del lugar o la extensión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Date of the card</source>
      <translation>Fecha de la ficha</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>There is no silent today.</source>
      <translation>No se toma el día de hoy sin decirlo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Notation: how you will write readings</source>
      <translation>Notación: cómo escribirá las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>It decides the columns and their names.</source>
      <translation>Decide las columnas y sus nombres.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>First ring setting</source>
      <translation>Primer ajuste del limbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>What the compass will have dialled in, east positive; the form repeats the last one.</source>
      <translation>Lo que tendrá ajustado la brújula, este positivo; el formulario repite el último.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>First compass</source>
      <translation>Primera brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Name or number; the form repeats the last one.</source>
      <translation>Nombre o número; el formulario repite el último.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>First observer</source>
      <translation>Primer observador</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>The form repeats the last one.</source>
      <translation>El formulario repite el último.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Paper of the page</source>
      <translation>Papel de la hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Printed at its full size.</source>
      <translation>Se imprime a tamaño completo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>A GeoPackage that is not there yet.</source>
      <translation>Un GeoPackage que todavía no existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>GeoPackage files (*.gpkg)</source>
      <translation>Archivos GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Project</source>
      <translation>Proyecto</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Opens the notebook; it finds it from its own place, so carry both together.</source>
      <translation>Abre la libreta; la encuentra desde su propio lugar, así que lleve ambos juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>QGIS projects (*.qgz)</source>
      <translation>Proyectos de QGIS (*.qgz)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>QGIS projects (*.qgs)</source>
      <translation>Proyectos de QGIS (*.qgs)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Page for the pencil</source>
      <translation>Hoja para el lápiz</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>The ending of the name says which: .pdf, .svg or .png.</source>
      <translation>La terminación del nombre dice cuál: .pdf, .svg o .png.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Day</source>
      <translation>Día</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Ring set to</source>
      <translation>Limbo ajustado a</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Readings, {day}</source>
      <translation>Lecturas, {day}</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>The turning rule is common practice and true of dials on which E and W stand reversed. Check it: sighting along the needle, the ring must read 010 for 10 E, 350 for 10 W.</source>
      <translation>La regla de giro es práctica común y vale para limbos con E y W invertidos. Compruébelo: mirando a lo largo de la aguja, el limbo debe marcar 010 para 10 E, 350 para 10 W.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>Keep away from iron, vehicles and power lines; no model knows of them.</source>
      <translation>Aléjese del hierro, los vehículos y las líneas eléctricas; ningún modelo los conoce.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>{key}: the name must end in one of {endings}.</source>
      <translation>{key}: el nombre debe terminar en {endings}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blank_fieldbook.py" />
      <source>OUTPUT: {name} is there already, and a blank notebook never replaces one.</source>
      <translation>OUTPUT: {name} ya existe, y una libreta en blanco nunca reemplaza a otra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_table.py" />
      <source>{count} planes of contacts support the surface.</source>
      <translation>{count} planos de contactos apoyan la superficie.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>turned by 180 degrees: the wrong end of the needle</source>
      <translation>girado 180 grados: el extremo equivocado de la aguja</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>turned by 90 degrees: dip direction taken for strike, or the reverse</source>
      <translation>girado 90 grados: dirección de buzamiento tomada por rumbo, o al revés</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>mirrored: 360 minus the azimuth, or east and west swapped</source>
      <translation>reflejado: 360 menos el acimut, o este y oeste intercambiados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>off by the declination: corrected twice</source>
      <translation>desviado en la declinación: corregido dos veces</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>off by twice the declination: corrected the wrong way</source>
      <translation>desviado en dos veces la declinación: corregido al revés</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>ring setting of another day or compass</source>
      <translation>ajuste del limbo de otro día u otra brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>dip and azimuth swapped</source>
      <translation>buzamiento y acimut intercambiados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>gon taken for degrees</source>
      <translation>gon tomados por grados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>differs from the other readings at its station</source>
      <translation>difiere de las demás lecturas de su estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>its book disagrees with the others</source>
      <translation>su libreta no concuerda con las demás</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>cannot be told: there is no other book to compare with</source>
      <translation>no se puede decir: no hay otra libreta con la que comparar</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>cannot be told: too few beds steeper than 30 degrees in it or in the others</source>
      <translation>no se puede decir: hay muy pocas capas de más de 30 grados en ella o en las demás</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>cannot be told: its stations do not lie among those of the others</source>
      <translation>no se puede decir: sus estaciones no están entre las de las demás</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>over a million</source>
      <translation>más de un millón de</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>nothing</source>
      <translation>nada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>horizontal</source>
      <translation>horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Fits neither as read ({read}) nor repaired; around it {around} is expected.</source>
      <translation>No encaja ni como se leyó ({read}) ni corregida; a su alrededor se espera {around}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{named}: {times} times likelier.</source>
      <translation>{named}: {times} veces más verosímil.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Dips toward {read}, around it {around}; repaired {repaired}.</source>
      <translation>Buza hacia {read}, su entorno {around}; corregida {repaired}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Of the whole book or day {turn} degrees would be taken.</source>
      <translation>A toda la libreta o el día se le aplicarían {turn} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>agrees with the others within {turn} degrees</source>
      <translation>concuerda con las demás dentro de {turn} grados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{turn} degrees would bring it to the others</source>
      <translation>{turn} grados la llevarían a las demás</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{times} times likelier so</source>
      <translation>{times} veces más verosímil así</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>there are only two, and it cannot be told which of them is off</source>
      <translation>solo hay dos, y no se puede decir cuál de ellas está desviada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{label} ({kind}, {rows} readings): {text}.</source>
      <translation>{label} ({kind}, {rows} lecturas): {text}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{judged} rows were judged by a surface, {left} were not.</source>
      <translation>{judged} filas se juzgaron con una superficie, {left} no.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>{suspects} of {rows} rows are under suspicion; {judged} were judged by a surface.</source>
      <translation>{suspects} de {rows} filas están bajo sospecha; {judged} se juzgaron con una superficie.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>A suspicion is a reason to look at the notebook again. Nothing was changed. Before anything was known, two readings in a hundred were taken to carry a slip; a slip is reported from a chance of one in four.</source>
      <translation>Una sospecha es un motivo para volver a mirar la libreta. No se cambió nada. Antes de saber nada se supuso que dos lecturas de cada cien llevan un error; un error se comunica a partir de una probabilidad de uno entre cuatro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Rows under suspicion</source>
      <translation>Filas bajo sospecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>evidence</source>
      <translation>evidencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>what speaks for it</source>
      <translation>qué habla a su favor</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Rows that fit neither as read nor repaired</source>
      <translation>Filas que no encajan ni como se leyeron ni corregidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>what was seen</source>
      <translation>qué se vio</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Books</source>
      <translation>Libretas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Days</source>
      <translation>Días</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>which</source>
      <translation>cuál</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>readings</source>
      <translation>lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>what was found</source>
      <translation>qué se halló</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>Whole columns</source>
      <translation>Columnas enteras</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>The surfaces</source>
      <translation>Las superficies</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>axis</source>
      <translation>eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>scale across, m</source>
      <translation>escala a través, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>scale along, m</source>
      <translation>escala a lo largo, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>scatter of poles, degrees</source>
      <translation>dispersión de los polos, grados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/blunder_words.py" />
      <source>What cannot be seen: a turn by 180 degrees of beds flatter than some 10 or steeper than some 80 degrees; a mirror within 10 degrees of north-south; slips of joints, veins, faults and lineations without a second column; anything where readings are sparser than some eight to a square as wide as the shortest fold; a slip that all books share.</source>
      <translation>Lo que no se puede ver: un giro de 180 grados en capas con menos de unos 10 o más de unos 80 grados de buzamiento; un reflejo a menos de 10 grados de norte-sur; errores en diaclasas, vetas, fallas y lineaciones sin una segunda columna; nada donde las lecturas son menos de unas ocho por cuadrado tan ancho como el pliegue más corto; un error que comparten todas las libretas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Check readings for blunders</source>
      <translation>Revisar errores en las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Looks for the classic slips of the notebook: read off the wrong end of the needle, dip direction taken for strike, azimuths mirrored, the declination applied twice or the wrong way, a ring set for another day, dip and azimuth swapped, degrees taken for gon. Each is tried on every reading, and reported where the reading so repaired would fit what is around it many times better. Nothing is ever changed.

Bedding, foliation and cleavage are judged each by one smooth surface through its own kind, fitted without the reading and without the other suspects, so that a hinge is no blunder. Joints, veins, faults and lineations have no such surface: only a second column and repeats at a station speak for them. Whole books and days are weighed together and need some twenty steep beds among those of others.

evidence is how many times likelier the best repair is than the row as it stands, up to a million; suspicion names the slips. Flat and very steep beds hide a turn by 180 degrees, beds near north-south a mirrored azimuth, sparse readings everything. A suspicion is a reason to look at the notebook again, not a correction.</source>
      <translation>Busca los errores clásicos de la libreta: leer el extremo equivocado de la aguja, tomar la dirección de buzamiento por el rumbo, acimutes reflejados, la declinación aplicada dos veces o al revés, un limbo ajustado para otro día, buzamiento y acimut intercambiados, grados tomados por gon. Cada uno se prueba en cada lectura y se comunica donde la lectura así corregida encajaría muchas veces mejor con su entorno. Nunca se cambia nada.

Estratificación, foliación y clivaje se juzgan cada uno con una superficie suave ajustada a su propio tipo, sin la lectura y sin las demás sospechosas, de modo que una charnela no es un error. Diaclasas, vetas, fallas y lineaciones no tienen tal superficie: de ellas solo hablan una segunda columna y las repeticiones en una estación. Las libretas y los días enteros se pesan juntos y necesitan unas veinte capas empinadas entre las de los demás.

evidence es cuántas veces más verosímil es la mejor corrección que la fila tal como está, hasta un millón; suspicion nombra los errores. Las capas planas y las muy empinadas ocultan un giro de 180 grados, las cercanas a norte-sur un acimut reflejado, y las lecturas dispersas todo. Una sospecha es un motivo para volver a mirar la libreta, no una corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Points with true strike and dip, or trend and plunge.</source>
      <translation>Puntos con rumbo y buzamiento verdaderos, o dirección e inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Book, compass or observer</source>
      <translation>Libreta, brújula u observador</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Rows with the same value share their slips; each book is compared with the others.</source>
      <translation>Las filas con el mismo valor comparten sus errores; cada libreta se compara con las demás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Day of each reading</source>
      <translation>Día de cada lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Each day is compared with the others. Left empty: read_date, where our own output has it.</source>
      <translation>Cada día se compara con los demás. Vacío: read_date, donde lo tiene nuestra propia salida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Readings of one kind at one station are repeats. Left empty: readings within a metre.</source>
      <translation>Las lecturas de un tipo en una estación son repeticiones. Vacío: lecturas a menos de un metro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Second column for the dip</source>
      <translation>Segunda columna para el buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>A compass letter or a dip direction that was written down beside the strike.</source>
      <translation>Una letra de la brújula o una dirección de buzamiento anotada junto al rumbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>What was read off the compass</source>
      <translation>Qué se leyó en la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>It decides what a mirrored or swapped reading looks like.</source>
      <translation>Decide cómo se ve una lectura reflejada o intercambiada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Kinds that vary smoothly</source>
      <translation>Tipos que varían suavemente</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Each is judged by a surface through its own readings.</source>
      <translation>Cada una se juzga con una superficie ajustada a sus propias lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Neighbourhood</source>
      <translation>Vecindad</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Groups of readings farther apart than this say nothing about each other. 0: all belong together.</source>
      <translation>Los grupos de lecturas más alejados que esto no dicen nada unos de otros. 0: todos van juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Readings across a fault say nothing about each other.</source>
      <translation>Las lecturas a ambos lados de una falla no dicen nada unas de otras.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Structural unit</source>
      <translation>Unidad estructural</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Rocks above and below an unconformity, or lava over folds: each is judged by itself.</source>
      <translation>Rocas encima y debajo de una discordancia, o lava sobre pliegues: cada una se juzga por sí sola.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Contacts or marker beds</source>
      <translation>Contactos o capas guía</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>With a DEM, the planes that they make on the ground support the surface of the bedding.</source>
      <translation>Con un MDE, los planos que forman en el terreno apoyan la superficie de la estratificación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Heights of the ground, for the contacts.</source>
      <translation>Alturas del terreno, para los contactos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Checked attitudes</source>
      <translation>Orientaciones revisadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>The input with suspicion, evidence and evid_text.</source>
      <translation>La entrada con suspicion, evidence y evid_text.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>What was tested and found, book by book and row by row, and what could not be seen.</source>
      <translation>Lo probado y hallado, libreta por libreta y fila por fila, y lo que no se pudo ver.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Left out: the field of our own outputs.</source>
      <translation>Sin indicar: el campo de nuestras propias salidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Trend of lines</source>
      <translation>Azimut de inmersión de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>True.</source>
      <translation>Verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Plunge of lines</source>
      <translation>Inmersión de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Rows that do not say are bedding.</source>
      <translation>Las filas que no lo dicen son estratificación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Upright or overturned.</source>
      <translation>Normal o invertida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>The layer has neither strike and dip nor trend and plunge: name the fields.</source>
      <translation>La capa no tiene rumbo y buzamiento ni dirección e inmersión: indique los campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>CONTACTS and DEM go together: give both, or neither.</source>
      <translation>CONTACTS y DEM van juntos: dé ambos o ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Check of readings</source>
      <translation>Revisión de las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/check_readings.py" />
      <source>Rows judged by a surface</source>
      <translation>Filas juzgadas por una superficie</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Convert notation</source>
      <translation>Convertir la notación</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Writes attitudes in another notation: strikes with the dip to the right or left, strike and letter, dip direction, quadrant bearings, as columns and as text, rounded as you like, with the letters of your language. What it writes it reads back.

Only the way of writing changes: an azimuth from magnetic north stays one, nothing is corrected. Rows that cannot be read keep their place and say why.</source>
      <translation>Escribe orientaciones en otra notación: rumbos con el buzamiento a la derecha o a la izquierda, rumbo y letra, dirección de buzamiento, rumbos por cuadrantes, como columnas y como texto, redondeadas a su gusto y con las letras de su idioma. Lo que escribe lo vuelve a leer.

Solo cambia la forma de escribir: un acimut desde el norte magnético lo sigue siendo, no se corrige nada. Las filas que no se pueden leer conservan su lugar y dicen por qué.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Any layer or table with attitudes in some notation.</source>
      <translation>Cualquier capa o tabla con orientaciones en alguna notación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Notation to write</source>
      <translation>Notación que se escribe</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Of planes. Lines are written as trend and plunge.</source>
      <translation>De los planos. Las líneas se escriben como dirección e inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Letters to write</source>
      <translation>Letras que se escriben</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Of the compass points.</source>
      <translation>De los puntos cardinales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Decimals to write</source>
      <translation>Decimales que se escriben</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Of both angles, in degrees.</source>
      <translation>De ambos ángulos, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>Converted attitudes</source>
      <translation>Orientaciones convertidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/convert_notation.py" />
      <source>The input with conv_text, conv_azim, conv_dip and conv_side.</source>
      <translation>La entrada con conv_text, conv_azim, conv_dip y conv_side.</translation>
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
      <translation>Lleva las lecturas de una brújula de aguja a orientaciones verdaderas: lee la notación que usted usó, toma la declinación de cada lugar y fecha, tiene en cuenta el ajuste del limbo de la brújula y dibuja símbolos de rumbo y buzamiento bien orientados en la proyección del mapa.

Indique primero cómo están escritas las lecturas (notación) y qué campos las contienen. verdadero = lectura + (D − S), donde D es la declinación y S el ajuste del limbo, ambos positivos al este.

Salen todas las filas. La que no se puede usar conserva su posición y sus atributos, y lleva los resultados vacíos, una marca propia en el mapa y el motivo en el campo remark. El informe las cuenta y da una frase para el apartado de métodos de un artículo.

Los resultados apoyan, pero no sustituyen, el criterio de un profesional habilitado. Las lecturas magnéticas fallan cerca de hierro y líneas eléctricas, y durante las tormentas magnéticas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Stations with readings</source>
      <translation>Estaciones con lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Point layer, one row a reading. Positions are taken from the geometry.</source>
      <translation>Capa de puntos, una fila por lectura. Las posiciones se toman de la geometría.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>The input's fields, then true strike, dip, trend, plunge, uncertainties, symbol and what was noticed.</source>
      <translation>Los campos de la entrada y, a continuación, rumbo verdadero, buzamiento, azimut de inmersión, inmersión, incertidumbres, símbolo y observaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Counts, declinations, ring settings, rejected rows and a sentence for the methods section.</source>
      <translation>Recuentos, declinaciones, ajustes del limbo, filas rechazadas y una frase para el apartado de métodos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Easting or longitude</source>
      <translation>Coordenada este o longitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Numbers of INPUT_CRS, or degrees as text such as 7°15'30"W or W007 15.5.</source>
      <translation>Números de INPUT_CRS, o grados como texto, por ejemplo 7°15'30"W o W007 15.5.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Northing or latitude</source>
      <translation>Coordenada norte o latitud</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>As for the easting.</source>
      <translation>Como la coordenada este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>CRS of easting and northing</source>
      <translation>SRC de las coordenadas este y norte</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Needed where they are plain numbers; latitudes and longitudes count from DATUM without it.</source>
      <translation>Necesario donde son simples números; sin él, latitudes y longitudes se refieren a DATUM.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Grid reference</source>
      <translation>Referencia de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>UTM with its zone (32T 0501234 5098765) or MGRS (32T PQ 01234 98765).</source>
      <translation>UTM con su huso (32T 0501234 5098765) o MGRS (32T PQ 01234 98765).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Whole place in one cell</source>
      <translation>Lugar entero en una celda</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Latitude and longitude with their letters, or a grid reference.</source>
      <translation>Latitud y longitud con sus letras, o una referencia de cuadrícula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Points that the station names of the table are looked up in, such as the waypoints of a GPX file.</source>
      <translation>Puntos en los que se buscan los nombres de estación de la tabla, como los puntos de paso de un archivo GPX.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Its name or number, as the stations have it.</source>
      <translation>Su nombre o número, como lo tienen las estaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Field of the stations; left empty, the one field named station or name.</source>
      <translation>Campo de las estaciones; vacío, el único campo llamado station o name.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Order of two angles without letters</source>
      <translation>Orden de dos ángulos sin letras</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Unsaid, such a place is refused, unless one of the two is over 90.</source>
      <translation>Si no se dice, tal lugar se rechaza, salvo que uno de los dos pase de 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Packed degrees</source>
      <translation>Grados empaquetados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Whether a number such as 4530.2 is 45 degrees 30.2 minutes; read so only where it is said.</source>
      <translation>Si un número como 4530.2 es 45 grados 30.2 minutos; solo se lee así donde se dice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Letter behind a UTM zone</source>
      <translation>Letra tras el huso UTM</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Unsaid, the northing decides; an S that it does not decide is refused.</source>
      <translation>Si no se dice, decide la coordenada norte; una S que ella no decide se rechaza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Datum of degrees and grid references</source>
      <translation>Datum de los grados y las referencias de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>A CRS of longitude and latitude. It is said in log and report.</source>
      <translation>Un SRC de longitud y latitud. Se dice en el registro y en el informe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>CRS of the output</source>
      <translation>SRC de la salida</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Left empty: that of the places as they were read.</source>
      <translation>Vacío: el de los lugares como se leyeron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>DATUM must be a CRS of longitude and latitude, such as EPSG:4326.</source>
      <translation>DATUM debe ser un SRC de longitud y latitud, como EPSG:4326.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>{key}: {name} leads to no places on Earth.</source>
      <translation>{key}: {name} no lleva a ningún lugar de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>STATION_FIELD is given without STATIONS, the layer to look the stations up in.</source>
      <translation>Se da STATION_FIELD sin STATIONS, la capa en la que buscar las estaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>Nothing says where the rows are: name X_FIELD and Y_FIELD, GRID_FIELD or PLACE_FIELD, or give STATIONS with STATION_FIELD. The table has: {names}.</source>
      <translation>Nada dice dónde están las filas: indique X_FIELD e Y_FIELD, GRID_FIELD o PLACE_FIELD, o dé STATIONS con STATION_FIELD. La tabla tiene: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>CRS of the places</source>
      <translation>SRC de los lugares</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>X_FIELD and Y_FIELD go together: only {value} is given.</source>
      <translation>X_FIELD e Y_FIELD van juntos: solo se da {value}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>The place may be in more than one of these, and nothing is guessed between them: {value}. Name one.</source>
      <translation>El lugar puede estar en más de una de estas, y entre ellas no se adivina: {value}. Indique una.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>None of {count} rows has a place that can be read ({codes}). The first cells: {cells}.</source>
      <translation>Ninguna de las {count} filas tiene un lugar que se pueda leer ({codes}). Las primeras celdas: {cells}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>all empty</source>
      <translation>todas vacías</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>INPUT_CRS has no degrees, but the places were found in {columns}: name X_FIELD and Y_FIELD.</source>
      <translation>INPUT_CRS no está en grados, pero los lugares se hallaron en {columns}: indique X_FIELD e Y_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>{columns} hold plain numbers: say with INPUT_CRS what they count from.</source>
      <translation>{columns} contienen simples números: diga con INPUT_CRS a qué se refieren.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/fieldbook_places.py" />
      <source>STATION_NAME_FIELD is needed: the stations have {names}.</source>
      <translation>Hace falta STATION_NAME_FIELD: las estaciones tienen {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Read a notebook</source>
      <translation>Leer una libreta</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Takes a table as it was typed (delimited text, a spreadsheet, a table of a database) to true attitudes on the map in one run: finds the columns, reads the places and the readings, corrects for declination and ring, and draws the symbols. What was taken for what is said first.

Say how the readings are written (notation). Columns that you do not name are found by their usual names in English, Spanish, French, German and Portuguese; between two that could be meant nothing is guessed. Places may be coordinates of a CRS, degrees with minutes and seconds as text, UTM or MGRS references, or names of stations looked up in a layer or a GPX file.

Every row comes out, those without a usable place too, and PROBLEMS lists these with the reason. Cells that hold several readings are cut only where READINGS_SEPARATOR says so; row and part name each reading. Swapped coordinates and lost signs are told, never repaired.

Results support, and do not replace, licensed professional judgement. Magnetic readings fail near iron, power lines and in magnetic storms.</source>
      <translation>Lleva una tabla tal como se escribió (texto delimitado, una hoja de cálculo, una tabla de una base de datos) a orientaciones verdaderas en el mapa en una sola ejecución: encuentra las columnas, lee los lugares y las lecturas, corrige la declinación y el limbo y dibuja los símbolos. Primero se dice qué se tomó por qué.

Diga cómo están escritas las lecturas (notación). Las columnas que no nombre se encuentran por sus nombres usuales en español, inglés, francés, alemán y portugués; entre dos posibles no se adivina. Los lugares pueden ser coordenadas de un SRC, grados con minutos y segundos como texto, referencias UTM o MGRS, o nombres de estaciones que se buscan en una capa o un archivo GPX.

Salen todas las filas, también las que no tienen un lugar utilizable, y PROBLEMS las enumera con el motivo. Las celdas con varias lecturas solo se cortan donde READINGS_SEPARATOR lo dice; row y part nombran cada lectura. Las coordenadas intercambiadas y los signos perdidos se comunican, nunca se corrigen.

Los resultados apoyan, y no sustituyen, el juicio de un profesional habilitado. Las lecturas magnéticas fallan cerca del hierro, de líneas eléctricas y en tormentas magnéticas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Table</source>
      <translation>Tabla</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Any table that QGIS opens. Delimited text and spreadsheets are read anew, cell by cell.</source>
      <translation>Cualquier tabla que abra QGIS. El texto delimitado y las hojas de cálculo se leen de nuevo, celda por celda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>What parts several readings in one cell</source>
      <translation>Qué separa varias lecturas en una celda</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Such as ; or / between readings. Left empty, a cell holds one reading.</source>
      <translation>Como ; o / entre lecturas. Vacío, una celda contiene una lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>What parts the cells of a text file</source>
      <translation>Qué separa las celdas de un archivo de texto</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Found from the file where it is not chosen.</source>
      <translation>Se deduce del archivo si no se elige.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Encoding of a text file</source>
      <translation>Codificación de un archivo de texto</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Such as utf-8 or cp1252. Found from the file where it is left empty.</source>
      <translation>Como utf-8 o cp1252. Si queda vacío se deduce del archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>The table's columns, row and part of each reading, then true strike, dip, trend, plunge, uncertainties, symbol and what was noticed.</source>
      <translation>Las columnas de la tabla, fila y parte de cada lectura, y después rumbo, buzamiento, dirección e inmersión verdaderos, incertidumbres, símbolo y lo observado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Rows without a place</source>
      <translation>Filas sin lugar</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>The rows that have no usable place, with what was written and why it cannot be used.</source>
      <translation>Las filas sin un lugar utilizable, con lo escrito y por qué no se puede usar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>What was taken for what, counts, declinations, rejected rows and a sentence for the methods.</source>
      <translation>Qué se tomó por qué, recuentos, declinaciones, filas rechazadas y una frase para los métodos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Readings with a place</source>
      <translation>Lecturas con lugar</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>{key}: {names} could both be meant, and nothing is guessed between them. Name one.</source>
      <translation>{key}: puede tratarse de {names}, y entre ellas no se adivina. Indique una.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>{key} is needed for the notation {notation}, and no column has a usual name for it.</source>
      <translation>{key} hace falta para la notación {notation}, y ninguna columna tiene un nombre usual para ello.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>by its name</source>
      <translation>por su nombre</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>as you said</source>
      <translation>como usted dijo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>Taken: {what}.</source>
      <translation>Se tomó: {what}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>{role}: not read, since {columns} could both be meant.</source>
      <translation>{role}: no se leyó, ya que puede tratarse de {columns}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>The table has no column {name}. It has: {names}.</source>
      <translation>La tabla no tiene la columna {name}. Tiene: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>The table's rows could not be put into a layer.</source>
      <translation>No se pudieron pasar las filas de la tabla a una capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>What was taken for what</source>
      <translation>Qué se tomó por qué</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>from where</source>
      <translation>de dónde</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/read_fieldbook.py" />
      <source>The table</source>
      <translation>La tabla</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Notation: how the readings are written (choose one)</source>
      <translation>Notación: cómo están escritas las lecturas (elija una)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>A letter is one such as SE for the side of the dip.</source>
      <translation>Una letra como SE da el lado del buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Strike, dip direction or trend as read: a number, or text such as N45W.</source>
      <translation>Rumbo, dirección de buzamiento o azimut de inmersión tal como se leyó: un número, o texto como N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Dip or plunge</source>
      <translation>Buzamiento o inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>0 to 90, a number, or text with a letter such as 30SE.</source>
      <translation>De 0 a 90: un número, o texto con una letra, como 30SE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Dip letter</source>
      <translation>Letra del buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Side of the dip: N, NE, E and so on.</source>
      <translation>Lado del buzamiento: N, NE, E, etc., con las letras inglesas (N, E, S, W). W es el oeste; la O no se admite.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Attitude as text</source>
      <translation>Orientación como texto</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>For the notation text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W.</source>
      <translation>Para la notación text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W. W es el oeste.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>What a bare pair such as 045/30 means</source>
      <translation>Qué significa un par sin letras, como 045/30</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Needed only where text rows give two numbers and no letter.</source>
      <translation>Solo hace falta si hay filas de texto con dos números y ninguna letra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Such as bedding, joint, lineation.</source>
      <translation>Por ejemplo, bedding (estratificación), joint (diaclasa) o lineation (lineación).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Your words for the kinds</source>
      <translation>Sus palabras para los tipos</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Your word = kind, such as S0=bedding;S1=cleavage;L1=lineation. Kinds: {kinds}.</source>
      <translation>Su palabra = tipo, por ejemplo S0=bedding;diaclasa=joint;L1=lineation. Tipos: {kinds}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Kind of rows that do not say</source>
      <translation>Tipo de las filas que no lo indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Used where the field is empty.</source>
      <translation>Se usa donde el campo está vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>upright or overturned.</source>
      <translation>upright (normal) u overturned (invertida).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Your words for polarity</source>
      <translation>Sus palabras para la polaridad</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Such as: ok=upright;inv=overturned</source>
      <translation>Por ejemplo: normal=upright;inv=overturned</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Dips over 90 mean overturned</source>
      <translation>Un buzamiento mayor de 90 significa invertido</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Reads 110 as a dip of 70 toward the other side, overturned. Otherwise such rows are rejected.</source>
      <translation>Lee 110 como un buzamiento de 70 hacia el otro lado, invertido. Si no, esas filas se rechazan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Of lines measured in a plane; azimuth and dip of the row are then the plane.</source>
      <translation>De líneas medidas sobre un plano; el azimut y el buzamiento de la fila son entonces los del plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>How the rake is counted</source>
      <translation>Cómo se cuenta el cabeceo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>The letter is that of the end it is counted from, such as 65NE.</source>
      <translation>La letra es la del extremo desde el que se cuenta, como 65NE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Unit of the azimuths</source>
      <translation>Unidad de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>400 gon or 6400 mil make the circle. Dips are in degrees.</source>
      <translation>400 gon o 6400 mil hacen la circunferencia. Los buzamientos van en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Only for azimuth and dip.</source>
      <translation>Solo para azimut y buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Uncertainty of a reading</source>
      <translation>Incertidumbre de una lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>1-sigma. 2 is usual for a hand-held compass on a natural surface.</source>
      <translation>1 sigma. 2 es lo usual con una brújula de mano sobre una superficie natural.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Go on although the azimuths look corrected already</source>
      <translation>Continuar aunque los azimutes parezcan ya corregidos</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>A layer that this tool wrote holds true azimuths; correcting them again doubles the correction.</source>
      <translation>Una capa escrita por esta herramienta contiene azimutes verdaderos; corregirlos otra vez duplica la corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Notation {notation} needs {key}.</source>
      <translation>La notación {notation} necesita {key}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>RAKE_FIELD is given, so RAKE_MEANS must say how the rake is counted.</source>
      <translation>Se indicó RAKE_FIELD: RAKE_MEANS debe decir cómo se cuenta el cabeceo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Rows that do not say their kind are read as {kind}, since the notation is line.</source>
      <translation>Las filas que no indican su tipo se leen como {kind}, porque la notación es line.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Least declination used</source>
      <translation>Menor declinación usada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Greatest declination used</source>
      <translation>Mayor declinación usada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>Compass readings corrected to true north</source>
      <translation>Lecturas de brújula corregidas al norte verdadero</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_block.py" />
      <source>The field {name} of this layer was already corrected to true north (the layer has azim_read and correction). Use azim_read, set NORTH to true, or set FORCE to go on.</source>
      <translation>El campo {name} de esta capa ya se corrigió al norte verdadero (la capa tiene azim_read y correction). Use azim_read, ponga NORTH en true, o marque FORCE para continuar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>For the methods section</source>
      <translation>Para el apartado de métodos</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Renamed fields</source>
      <translation>Campos renombrados</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>These fields of the input have another name in the output; their values are unchanged.</source>
      <translation>Estos campos de la entrada tienen otro nombre en la salida; sus valores no cambian.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>in the input</source>
      <translation>en la entrada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>in the output</source>
      <translation>en la salida</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Of {read} field readings (notation {notation}), {done} were reduced to true north.</source>
      <translation>De {read} lecturas de campo (notación {notation}), {done} se redujeron al norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>A reading's uncertainty is taken as {sigma}° (1-sigma); {rejected} readings were rejected.</source>
      <translation>La incertidumbre de una lectura se toma como {sigma}° (1 sigma); se rechazaron {rejected} lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/run.py" />
      <source>{crs}: positions are carried to WGS 84 to {used} m; {best} m would need the grid {names}, which is not installed.</source>
      <translation>{crs}: las posiciones se llevan a WGS 84 con {used} m; para {best} m haría falta la rejilla {names}, que no está instalada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/run.py" />
      <source>The DEM does not say the unit of its heights; metres were taken.</source>
      <translation>El MDE no indica la unidad de sus cotas; se tomaron metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Attitudes were carried along the fold axis of their place, taken from a layer, falling with it, over at most {reach} m.</source>
      <translation>Las orientaciones se llevaron a lo largo del eje de pliegue de su lugar, tomado de una capa, bajando con él, hasta {reach} m como mucho.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Attitudes were carried along a fold axis that trends {trend} and plunges {plunge} degrees, falling with it, over at most {reach} m.</source>
      <translation>Las orientaciones se proyectaron según un eje de pliegue de azimut {trend} e inmersión {plunge} grados, descendiendo con él, a {reach} m como máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Planes were carried along their own strike at the same height, level planes and lines squarely to the section, over at most {reach} m.</source>
      <translation>Los planos se proyectaron según su propio rumbo a la misma cota; los planos horizontales y las líneas, perpendicularmente al corte; a {reach} m como máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Attitudes were carried squarely to the section at the same height, over at most {reach} m.</source>
      <translation>Las orientaciones se proyectaron perpendicularmente al corte a la misma cota, a {reach} m como máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Points with true strike and dip, or trend and plunge, such as the output of the correction.</source>
      <translation>Puntos con rumbo verdadero y buzamiento, o con azimut de inmersión e inmersión, como la salida de la corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/sections/section_faults.py" />
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>True, with the dip to the right.</source>
      <translation>Verdadero, con el buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Tells lines from planes in rows that have both.</source>
      <translation>Distingue líneas de planos en las filas que tienen ambos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Above sea level. Where it is empty the DEM is read.</source>
      <translation>Sobre el nivel del mar. Donde está vacío se lee el MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Greatest distance of carrying</source>
      <translation>Distancia máxima de proyección</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>From an attitude to where it lands, along the way it is carried.</source>
      <translation>De una actitud a donde cae, a lo largo del camino por el que se lleva.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Squarely and along strike heights are kept; level planes and lines always go squarely. Along the fold axis given below, they fall with it.</source>
      <translation>En perpendicular y a lo largo del rumbo se conservan las alturas; los planos horizontales y las líneas van siempre en perpendicular. A lo largo del eje de pliegue dado abajo, bajan con él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>squarely to the section</source>
      <translation>en perpendicular a la sección</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>along each plane's own strike</source>
      <translation>a lo largo del rumbo de cada plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>along a fold axis</source>
      <translation>a lo largo de un eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Legs of a bent section</source>
      <translation>Tramos de un corte quebrado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Which an attitude lands on.</source>
      <translation>En cuáles cae una actitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>the leg it has least far to go to</source>
      <translation>el tramo que le queda más cerca</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>each leg within the distance</source>
      <translation>cada tramo dentro de la distancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The attitudes have no coordinate reference system that leads to places on Earth.</source>
      <translation>Las orientaciones no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/statistics/reading.py" />
      <source>The attitudes have neither strike and dip nor trend and plunge: name the fields.</source>
      <translation>Las orientaciones no tienen ni rumbo y buzamiento ni azimut de inmersión e inmersión: indique los campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Give a DEM, or a field with the height of each attitude: without heights nothing has its place.</source>
      <translation>Indique un MDE, o un campo con la cota de cada orientación: sin cotas nada se puede situar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>attitudes</source>
      <translation>orientaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>on a section, nothing to note</source>
      <translation>en un corte, sin observaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>on a section, with a warning</source>
      <translation>en un corte, con aviso</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>outside: on no section</source>
      <translation>fuera: en ningún corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>How they were carried</source>
      <translation>Cómo se proyectaron</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>section</source>
      <translation>corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>length, m</source>
      <translation>longitud, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>legs, and the azimuth from true north in their middle</source>
      <translation>tramos, y el azimut desde el norte verdadero en su mitad</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>Outside</source>
      <translation>Fuera</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>Trend of the fold axis</source>
      <translation>Azimut de inmersión del eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>From true north, toward the downward end.</source>
      <translation>Desde el norte verdadero, hacia el extremo que baja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>Plunge of the fold axis</source>
      <translation>Inmersión del eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>0 to 85.</source>
      <translation>De 0 a 85.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Fold axes</source>
      <translation>Ejes de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>Points or areas with fields trend and plunge, such as the output of the fold axis tool. Each place takes the axis of the area it lies in, else the nearest point's. Instead of one trend and plunge.</source>
      <translation>Puntos o áreas con los campos trend y plunge, como la salida de la herramienta de ejes de pliegue. Cada lugar toma el eje del área en que está; si no, el del punto más próximo. En vez de un solo rumbo e inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>Uncertainty of the fold axis</source>
      <translation>Incertidumbre del eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>1-sigma of its direction; a layer of axes may say it for each.</source>
      <translation>1-sigma de su dirección; una capa de ejes puede indicarla para cada uno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>AXES is given together with AXIS_TREND or AXIS_PLUNGE: one of them.</source>
      <translation>AXES se da junto con AXIS_TREND o AXIS_PLUNGE: uno de los dos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>AXIS_TREND and AXIS_PLUNGE belong together: give both.</source>
      <translation>AXIS_TREND y AXIS_PLUNGE van juntos: indique ambos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>The fold axis is needed: give AXIS_TREND and AXIS_PLUNGE, or AXES.</source>
      <translation>Hace falta el eje de pliegue: indique AXIS_TREND y AXIS_PLUNGE, o AXES.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>A fold axis that plunges {value} degrees leads to no section: {limit} is the most.</source>
      <translation>Un eje de pliegue con inmersión de {value} grados no lleva a ningún corte: {limit} es el máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>AXES: the layer has no field {name}.</source>
      <translation>AXES: la capa no tiene el campo {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>AXES: no row has a trend, a plunge of at most 85 degrees and a place.</source>
      <translation>AXES: ninguna fila tiene rumbo, inmersión de 85 grados como máximo y lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/axes.py" />
      <source>AXES: {count} rows have no axis that leads to a section; left out.</source>
      <translation>AXES: {count} filas no tienen un eje que lleve a un corte; se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Boreholes</source>
      <translation>Sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Points at the collars.</source>
      <translation>Puntos en las bocas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Names of the boreholes</source>
      <translation>Nombres de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Printed; surveys and picks go by it.</source>
      <translation>Se imprimen; las desviaciones y los marcadores van por ellos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Height of each collar</source>
      <translation>Altura de cada boca</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Metres; where it is empty the DEM is read.</source>
      <translation>Metros; donde está vacía se lee el MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Surveys of the boreholes</source>
      <translation>Desviaciones de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>A table with fields hole, depth (along the hole, metres), azimuth and inclination, a row a survey.</source>
      <translation>Una tabla con los campos hole, depth (a lo largo del sondeo, metros), azimuth e inclination, una fila por medida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>An inclination means</source>
      <translation>Una inclinación significa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Needed with surveys: 60 may go down at 60 degrees, or at 30.</source>
      <translation>Hace falta con las desviaciones: 60 puede bajar a 60 grados, o a 30.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>below the horizon, positive downward: -90 is up</source>
      <translation>bajo el horizonte, positiva hacia abajo: -90 es hacia arriba</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>from the horizon, negative downward: -90 is down</source>
      <translation>desde el horizonte, negativa hacia abajo: -90 es hacia abajo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>from the vertical: 0 is down</source>
      <translation>desde la vertical: 0 es hacia abajo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>North the azimuths of surveys are counted from</source>
      <translation>Norte desde el que se cuentan los azimutes de las desviaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Grid north is that of the layer of boreholes.</source>
      <translation>El norte de cuadrícula es el de la capa de sondeos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>magnetic north, with the declination given below</source>
      <translation>norte magnético, con la declinación indicada abajo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Declination of the surveys</source>
      <translation>Declinación de las desviaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>East positive; for magnetic azimuths.</source>
      <translation>Positiva al este; para azimutes magnéticos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Picks in the boreholes</source>
      <translation>Marcadores en los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>A table with fields hole, depth (metres) and name, a row a pick.</source>
      <translation>Una tabla con los campos hole, depth (metros) y name, una fila por marcador.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Depths of picks are</source>
      <translation>Las profundidades de los marcadores son</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>From the collar.</source>
      <translation>Desde la boca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>measured along the hole</source>
      <translation>medidas a lo largo del sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>straight down</source>
      <translation>verticalmente hacia abajo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>{key} is given without BOREHOLES: where are the collars?</source>
      <translation>Se da {key} sin BOREHOLES: ¿dónde están las bocas?</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>{key}: the layer has no field {name}.</source>
      <translation>{key}: la capa no tiene el campo {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Surveys and picks go by the name of their hole: give HOLE_FIELD.</source>
      <translation>Las desviaciones y los marcadores van por el nombre de su sondeo: indique HOLE_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>SURVEYS needs INCLINATION_MEANS: nothing tells what an inclination of 60 means.</source>
      <translation>SURVEYS necesita INCLINATION_MEANS: nada dice qué significa una inclinación de 60.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Magnetic azimuths of surveys need HOLE_DECLINATION.</source>
      <translation>Los azimutes magnéticos de las desviaciones necesitan HOLE_DECLINATION.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>Borehole {what}</source>
      <translation>Sondeo {what}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>BOREHOLES: {line}</source>
      <translation>BOREHOLES: {line}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>{name}: {count} surveys cannot be read and were left out.</source>
      <translation>{name}: {count} desviaciones no se pueden leer y se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/borehole_block.py" />
      <source>{name}: the pick {label} lies beyond its end.</source>
      <translation>{name}: el marcador {label} queda más allá de su final.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/contact_planes.py" />
      <source>Attitudes: {noticed}</source>
      <translation>Actitudes: {noticed}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/contact_planes.py" />
      <source>Attitudes: {count} rows are lines, not planes, and were not used.</source>
      <translation>Actitudes: {count} filas son líneas, no planos, y no se usaron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/contact_planes.py" />
      <source>Attitudes: {count} rows are of kinds that KINDS does not name, and were not used.</source>
      <translation>Actitudes: {count} filas son de tipos que KINDS no nombra, y no se usaron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>straight, each contact down its own dip</source>
      <translation>rectos, cada contacto según su propio buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>kinks between domains of constant dip</source>
      <translation>kinks entre dominios de buzamiento constante</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>concentric arcs</source>
      <translation>arcos concéntricos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>dips interpolated between the readings</source>
      <translation>buzamientos interpolados entre las medidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Order of the units, oldest first</source>
      <translation>Orden de las unidades, primero la más antigua</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Codes between commas, such as: Ru, Pe, Cw, Th. Without it, the table of units says the order.</source>
      <translation>Códigos separados por comas, como: Ru, Pe, Cw, Th. Sin él, el orden lo dice la tabla de unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Its order, names and colours are used.</source>
      <translation>Se usan su orden, sus nombres y sus colores.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Units that lie unconformably on older ones</source>
      <translation>Unidades discordantes sobre otras más antiguas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Codes between commas. Each begins a sequence: its dips do not bend what is older, which ends at its base.</source>
      <translation>Códigos separados por comas. Cada una inicia una secuencia: sus buzamientos no doblan lo más antiguo, que termina en su base.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Intrusive units</source>
      <translation>Unidades intrusivas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Codes between commas. Their contacts do not follow bedding and are not drafted.</source>
      <translation>Códigos separados por comas. Sus contactos no siguen la estratificación y no se trazan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Below the lowest ground of each section. Nothing is drawn deeper.</source>
      <translation>Por debajo del terreno más bajo de cada corte. Nada se dibuja más hondo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Angle of a domain</source>
      <translation>Ángulo de un dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Neighbouring dips that differ by no more are taken together. Good dips on arcs want 2 or less.</source>
      <translation>Los buzamientos vecinos que no difieren más se toman juntos. Con buenos buzamientos sobre arcos conviene 2 o menos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Draft below the ground</source>
      <translation>Borrador bajo el terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_block.py" />
      <source>Constructed from the attitudes and units; it is marked as a draft on the figure and in the layers.</source>
      <translation>Construido a partir de las medidas y las unidades; queda marcado como borrador en la figura y en las capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>The order of units does not have {codes}: contacts with them are not drafted.</source>
      <translation>El orden de unidades no tiene {codes}: los contactos con ellas no se trazan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>None of the units on the map is in the order of units.</source>
      <translation>Ninguna de las unidades del mapa está en el orden de unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>Units that are named as unconformable or intrusive are not in the order: {codes}.</source>
      <translation>Hay unidades nombradas como discordantes o intrusivas que no están en el orden: {codes}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>None of the {count} rows of ATTITUDES is bedding with a place and a height.</source>
      <translation>Ninguna de las {count} filas de ATTITUDES es estratificación con lugar y altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>base of {unit}</source>
      <translation>base de {unit}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_inputs.py" />
      <source>contact {number}</source>
      <translation>contacto {number}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>DRAFT, not measured: contacts go straight down their own dip, with its 95 % band.</source>
      <translation>BORRADOR, no medido: los contactos bajan rectos según su propio buzamiento, con su banda del 95 %.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>DRAFT, not measured: domains of constant dip, axial surfaces bisect them, thickness is kept.</source>
      <translation>BORRADOR, no medido: dominios de buzamiento constante, bisecados por superficies axiales, con espesor constante.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>DRAFT, not measured: concentric arcs through the dips, thickness is kept.</source>
      <translation>BORRADOR, no medido: arcos concéntricos por los buzamientos, con espesor constante.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>DRAFT, not measured: dips interpolated between the readings, with a 95 % band.</source>
      <translation>BORRADOR, no medido: buzamientos interpolados entre las medidas, con una banda del 95 %.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>Carried along a fold axis that trends {trend} and plunges {plunge} degrees.</source>
      <translation>Trasladado según un eje de pliegue de rumbo {trend} e inmersión de {plunge} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>It supports, and does not replace, licensed professional judgement.</source>
      <translation>Apoya, y no sustituye, el juicio de un profesional habilitado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>Drafted sections</source>
      <translation>Cortes en borrador</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>A draft is a construction from the data by a stated rule. Nothing on it was measured below the ground. It is there to be argued with and edited.</source>
      <translation>Un borrador es una construcción a partir de los datos con una regla declarada. Nada de él se midió bajo el terreno. Está para discutirlo y editarlo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>count</source>
      <translation>número</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>read</source>
      <translation>leídas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>no bedding, or without place, height or a reading that can be used</source>
      <translation>sin estratificación, o sin lugar, altura o lectura utilizable</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>used on any section</source>
      <translation>usadas en algún corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>Drawn between {bottom} and {top} m above sea level; {used} attitudes used, {parted} kept away by a fault; {contacts} crossings of contacts, {faults} of faults.</source>
      <translation>Dibujado entre {bottom} y {top} m sobre el nivel del mar; {used} medidas usadas, {parted} apartadas por una falla; {contacts} cruces de contactos, {faults} de fallas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>Thickness of units square to their bedding, between neighbouring contacts:</source>
      <translation>Espesor de las unidades en perpendicular a su estratificación, entre contactos vecinos:</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>places</source>
      <translation>lugares</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>least, m</source>
      <translation>mínimo, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>most, m</source>
      <translation>máximo, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>at distances, m</source>
      <translation>a las distancias, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>No unit lies between two of its own contacts where its thickness could be told.</source>
      <translation>Ninguna unidad queda entre dos de sus propios contactos donde se pueda decir su espesor.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>Nothing was found that does not fit.</source>
      <translation>No se encontró nada que no encaje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>at distance, m</source>
      <translation>a la distancia, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>height, m</source>
      <translation>cota, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_report.py" />
      <source>what does not fit</source>
      <translation>lo que no encaja</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Draft sections at depth</source>
      <translation>Borrador de los cortes en profundidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Drafts where contacts go below the ground, from the dips of bedding and the mapped units, by one textbook construction: straight down their own dip with the band of what is not known of it; kinks, whose axial surfaces bisect domains of constant dip; arcs about the points where normals of neighbouring dips meet; or dips interpolated smoothly between the readings, with a band.

Each fault block and each sequence is drafted by itself. What does not fit (a contact that arrives elsewhere than it was mapped, thicknesses that differ, domains that end) is listed under PROBLEMS, with numbers, and not smoothed over.

A draft is a draft: method says so on every feature. It supports, and does not replace, licensed professional judgement; nothing is to be drilled or dug on a draft alone.</source>
      <translation>Traza en borrador por dónde van los contactos bajo el terreno, a partir de los buzamientos de la estratificación y de las unidades cartografiadas, con una construcción de manual: rectos según su propio buzamiento, con la banda de lo que no se sabe de él; kinks, cuyas superficies axiales bisecan dominios de buzamiento constante; arcos en torno a los puntos donde se cortan las normales de buzamientos vecinos; o buzamientos interpolados suavemente entre las medidas, con una banda.

Cada bloque de falla y cada secuencia se trazan por separado. Lo que no encaja (un contacto que llega a otro sitio que el cartografiado, espesores que difieren, dominios que terminan) se lista en PROBLEMS, con números, y no se disimula.

Un borrador es un borrador: method lo dice en cada elemento. Apoya, y no sustituye, el juicio de un profesional habilitado; no se debe perforar ni excavar solo con un borrador.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Faults as drawn on the sections</source>
      <translation>Fallas tal como se dibujaron en los cortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Lines in section space (VE 1) with fields section and name, for faults that do not go on straight.</source>
      <translation>Líneas en el espacio del corte (VE 1) con los campos section y name, para fallas que no siguen rectas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Construction</source>
      <translation>Construcción</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Kinks and arcs keep the thickness of every bed; folds that do not are told by what does not fit.</source>
      <translation>Kinks y arcos conservan el espesor de cada capa; los pliegues que no lo hacen se delatan por lo que no encaja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Height of eroded beds</source>
      <translation>Altura de las capas erosionadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Above the highest ground of each section, to which contacts are drawn in the air.</source>
      <translation>Por encima del terreno más alto de cada corte, hasta donde se dibujan los contactos en el aire.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Greatest distance of attitudes</source>
      <translation>Distancia máxima de las medidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>From the section, over which an attitude is carried.</source>
      <translation>Desde el corte, a la que se traslada una medida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Contacts, axial surfaces, faults and bands: x distance, y height times exaggeration.</source>
      <translation>Contactos, superficies axiales, fallas y bandas: x la distancia, y la altura por la exageración.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>The same with true heights, for 3-D views and elevation profiles.</source>
      <translation>Lo mismo con alturas verdaderas, para vistas 3D y perfiles de elevación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Units, in section space</source>
      <translation>Unidades, en el espacio del corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Areas between the lines.</source>
      <translation>Áreas entre las líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Units, on the map</source>
      <translation>Unidades, en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>The same as upright areas with true heights.</source>
      <translation>Lo mismo como áreas verticales con alturas verdaderas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Cut-offs</source>
      <translation>Cortes contra fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Where contacts end at faults, in section space.</source>
      <translation>Donde los contactos terminan en fallas, en el espacio del corte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>What does not fit</source>
      <translation>Lo que no encaja</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Points in section space, each with a sentence.</source>
      <translation>Puntos en el espacio del corte, cada uno con una frase.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>How it was drafted, what does not fit, and the thickness of each unit with its range.</source>
      <translation>Cómo se trazó, lo que no encaja, y el espesor de cada unidad con su intervalo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Things that do not fit</source>
      <translation>Cosas que no encajan</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The attitudes have no strike and dip: name the fields.</source>
      <translation>Las orientaciones no tienen rumbo y buzamiento: indique los campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>No section has any ground under it: the DEM lies elsewhere, or has a gap.</source>
      <translation>Ningún corte tiene terreno debajo: el MDE está en otro lugar o tiene un hueco.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>{count} things do not fit; PROBLEMS and the report list them.</source>
      <translation>{count} cosas no encajan; PROBLEMS y el informe las listan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Give UNITS with their order, or CONTACTS: else nothing is known that could go down.</source>
      <translation>Indique UNITS con su orden, o CONTACTS: si no, no se sabe de nada que pueda bajar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The contacts or units have no coordinate reference system that leads to places on Earth.</source>
      <translation>Los contactos o unidades no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Areas of units are made from UNITS: give that layer.</source>
      <translation>Las áreas de unidades se hacen a partir de UNITS: indique esa capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>UNITS needs UNIT_FIELD.</source>
      <translation>UNITS necesita UNIT_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>The order of the units is needed: give UNIT_ORDER or UNIT_TABLE.</source>
      <translation>Hace falta el orden de las unidades: indique UNIT_ORDER o UNIT_TABLE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Areas. Contacts are where the section passes from one unit into the next, unless a fault runs there.</source>
      <translation>Áreas. Los contactos están donde el corte pasa de una unidad a la siguiente, salvo que allí haya una falla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Codes of the units</source>
      <translation>Códigos de las unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>The letters on the map.</source>
      <translation>Las letras del mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <source>Lines, where there are no map units: those of one name are one contact.</source>
      <translation>Líneas, donde no hay unidades del mapa: las de un mismo nombre son un solo contacto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Names of the contacts</source>
      <translation>Nombres de los contactos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draft_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Printed.</source>
      <translation>Se imprime.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Draw sections</source>
      <translation>Dibujar cortes geológicos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Draws each section line to scale in one run: the ground with its map units, contacts and faults, attitudes at their apparent dip, axes in metres, letters and compass points at the ends, bends, scale bar and legend. Angles are drawn with the vertical exaggeration, numbers are printed true; the exaggeration and the rule of carrying stand on the figure.

FIGURE ends in .pdf, .svg or .png; each section is a page. PACKAGE is a GeoPackage with all of it as styled layers in section space, an empty layer to draw the interpretation on, and a QGIS project with the print layout: open it from the Browser panel and go on. A package that you have drawn on is never overwritten.</source>
      <translation>Dibuja a escala cada línea de corte de una sola vez: el terreno con sus unidades, contactos y fallas, las orientaciones con su buzamiento aparente, los ejes en metros, las letras y los puntos cardinales en los extremos, los quiebres, la escala gráfica y la leyenda. Los ángulos se dibujan con la exageración vertical y los números se imprimen sin exagerar; la exageración y la regla de proyección constan en la figura.

FIGURE acaba en .pdf, .svg o .png; cada corte es una página. PACKAGE es un GeoPackage con todo ello como capas con estilo en el espacio del corte, una capa vacía para dibujar la interpretación y un proyecto de QGIS con la composición de impresión: ábralo desde el panel del navegador y continúe. Un paquete en el que ya se ha dibujado nunca se sobrescribe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Figure</source>
      <translation>Figura</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>The drawn sections, as PDF, SVG or PNG by the ending of the file's name.</source>
      <translation>Los cortes dibujados, en PDF, SVG o PNG según la extensión del archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Package</source>
      <translation>Paquete</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>The same as layers to go on with, together with a project that holds the print layout.</source>
      <translation>Lo mismo, como capas para seguir trabajando, junto con un proyecto que contiene la composición de impresión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Lines. Those with fields strike and dip are drawn at their apparent dip.</source>
      <translation>Líneas. Las que tienen los campos strike y dip se dibujan con su buzamiento aparente.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Letters of the units</source>
      <translation>Siglas de las unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Areas. Colours are those of the layer's style where it is drawn by this field.</source>
      <translation>Polígonos. Los colores son los del estilo de la capa, si se dibuja según este campo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Names of the faults</source>
      <translation>Nombres de las fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Printed on the figure.</source>
      <translation>Consta en la figura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Scale, 1 to</source>
      <translation>Denominador de la escala</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Denominator of the horizontal scale. Without one, the longest section fits an A3 sheet.</source>
      <translation>De la escala horizontal: 10000 para 1:10 000. Si no se indica, el corte más largo cabe en una hoja A3.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Map units are drawn as</source>
      <translation>Las unidades se dibujan como</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>In the colours of the map.</source>
      <translation>En los colores del mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>a stripe along the ground</source>
      <translation>una franja a lo largo del terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>areas down to the lower edge</source>
      <translation>áreas hasta el borde inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Height of the lower edge</source>
      <translation>Cota del borde inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Above sea level. Without one, there is room to draw in below the ground.</source>
      <translation>Sobre el nivel del mar. Sin ella queda sitio para dibujar debajo del terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Length of the ticks</source>
      <translation>Longitud de los trazos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Whatever their slope.</source>
      <translation>Sea cual sea su pendiente.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>mm on paper</source>
      <translation>mm en el papel</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Between places where the height is read; 0 is the side of the DEM's cells.</source>
      <translation>Entre los lugares donde se lee la altura; 0 es el lado de las celdas del MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Name things as GeMS does</source>
      <translation>Usar los nombres de GeMS</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Letters the sections A, B, C in their order, begins the names of layers with CSA, CSB and so on, and makes CSAContactsAndFaults and CSAMapUnitPolys to draw on. x is the distance and y the height, so the vertical exaggeration must be 1.</source>
      <translation>Nombra los cortes A, B, C por su orden, empieza los nombres de las capas por CSA, CSB, etc., y crea CSAContactsAndFaults y CSAMapUnitPolys para dibujar en ellas. x es la distancia e y la cota, así que la exageración vertical debe ser 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>A draft is constructed from attitudes: give ATTITUDES, or set DRAFT to none.</source>
      <translation>Un borrador se construye a partir de medidas: indique ATTITUDES, o ponga DRAFT en none.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Give a FIGURE, a PACKAGE, or both.</source>
      <translation>Indique FIGURE, PACKAGE o ambos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>FIGURE: {name} ends in none of {allowed}.</source>
      <translation>FIGURE: {name} no acaba en ninguna de estas extensiones: {allowed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>PACKAGE: {name} does not end in .gpkg.</source>
      <translation>PACKAGE: {name} no acaba en .gpkg.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>In GeMS y is the height itself: set VE to 1.</source>
      <translation>En GeMS, y es la propia cota: ponga VE en 1.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>GeMS letters its sections A, B, C: leave NAME_FIELD empty, or GEMS unset.</source>
      <translation>GeMS nombra sus cortes A, B, C: deje NAME_FIELD vacío o GEMS sin marcar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>{name} failed.</source>
      <translation>Falló: {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Another page: {path}</source>
      <translation>Otra página: {path}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>No vertical exaggeration.</source>
      <translation>Sin exageración vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Vertical exaggeration {ve} times.</source>
      <translation>Exageración vertical: {ve} veces.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Scale 1:{scale}.</source>
      <translation>Escala 1:{scale}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Dips and thicknesses cannot be measured on it.</source>
      <translation>No se pueden medir en él buzamientos ni espesores.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Heights in metres above sea level, from {name}.</source>
      <translation>Cotas en metros sobre el nivel del mar, tomadas de {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>The farther off an attitude was, the paler it is.</source>
      <translation>Cuanto más lejos estaba una orientación, más pálida se dibuja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Numbers: apparent dips and plunges in degrees, not exaggerated.</source>
      <translation>Números: buzamientos e inmersiones aparentes en grados, sin exagerar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>For lack of room, {count} numbers or names are left out.</source>
      <translation>Por falta de espacio se omiten {count} números o nombres.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Section {name} is {size} m large on paper at this scale and exaggeration; {most} m is the most.</source>
      <translation>El corte {name} ocupa {size} m en el papel con esta escala y esta exageración; el máximo es {most} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Section {first}–{last}</source>
      <translation>Corte {first}–{last}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>{title}: a draft below the ground</source>
      <translation>{title}: borrador bajo el terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Contacts and faults</source>
      <translation>Contactos y fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Draft, not measured</source>
      <translation>Borrador, no medido</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Units, drafted</source>
      <translation>Unidades, en borrador</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>PACKAGE: {name} is no package of sections that this version made; choose another file.</source>
      <translation>PACKAGE: {name} no es un paquete de cortes hecho por esta versión; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>PACKAGE: {name} holds {layer}, which is no section; choose another file.</source>
      <translation>PACKAGE: {name} contiene {layer}, que no es un corte; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>PACKAGE: the layer {layer} of {name} was changed; choose another file.</source>
      <translation>PACKAGE: la capa {layer} de {name} fue modificada; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>PACKAGE: {name} holds {count} features of an interpretation that somebody drew; choose another file.</source>
      <translation>PACKAGE: {name} contiene {count} objetos de una interpretación que alguien dibujó; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>in {count} legs from {first} to {last}</source>
      <translation>en {count} tramos, de {first} a {last}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>toward {azimuths}</source>
      <translation>hacia {azimuths}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>, then </source>
      <translation>, luego </translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Drawn {way} from true north; {length} m along the ground</source>
      <translation>Dibujado {way} desde el norte verdadero; {length} m sobre el terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Plan boreholes to targets</source>
      <translation>Planear sondeos hasta objetivos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>From targets on planes to straight holes: collar, azimuth and inclination, length, the angle between hole and plane, and how well the depth and the place are known at which the hole meets the plane.

A hole is vertical, or comes from a direction you give and is followed up to the ground of the DEM, or starts at the nearest of the collars you have. Azimuths are from true north, inclinations below the horizon. A hole that meets its plane at less than 5 degrees is refused.

A plan is no permit and no safety case: services, old workings, gas, water and ground must be looked into on the spot, under local codes and licensed professional judgement. No hole stays straight.</source>
      <translation>De objetivos en planos a sondeos rectos: boca, azimut e inclinación, longitud, ángulo entre sondeo y plano, y con qué certeza se conocen la profundidad y el lugar en que el sondeo corta el plano.

Un sondeo es vertical, o viene de una dirección indicada y se sigue hacia arriba hasta el terreno del MDE, o parte de la más próxima de las bocas indicadas. Los azimutes son desde el norte verdadero, las inclinaciones bajo el horizonte. Se rechaza un sondeo que corta su plano a menos de 5 grados.

Un plan no es un permiso ni un estudio de seguridad: servicios enterrados, labores antiguas, gas, agua y terreno deben revisarse sobre el sitio, según la normativa local y el juicio de un profesional habilitado. Ningún sondeo se mantiene recto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Targets</source>
      <translation>Objetivos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Points below the ground, each with the strike and dip of the plane that is to be met there.</source>
      <translation>Puntos bajo el terreno, cada uno con el rumbo y el buzamiento del plano que se quiere cortar allí.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Names of the holes</source>
      <translation>Nombres de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Strike of the plane</source>
      <translation>Rumbo del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Dip of the plane</source>
      <translation>Buzamiento del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Height of each target</source>
      <translation>Altura de cada objetivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Above sea level, such as plane_elev of the depth to a plane. Without a field: z of the points.</source>
      <translation>Sobre el nivel del mar, como plane_elev de la profundidad hasta un plano. Sin campo: la z de los puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Uncertainty of each plane</source>
      <translation>Incertidumbre de cada plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Uncertainty of planes that do not say theirs</source>
      <translation>Incertidumbre de los planos que no la indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>How far off each plane was seen</source>
      <translation>A qué distancia se vio cada plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Metres between the target and the place where the plane was measured.</source>
      <translation>Metros entre el objetivo y el lugar donde se midió el plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>How far off planes were seen that do not say it</source>
      <translation>A qué distancia se vieron los planos que no lo dicen</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Between the target and the place where the plane was measured; the farther, the less is known.</source>
      <translation>Entre el objetivo y el lugar donde se midió el plano; cuanto más lejos, menos se sabe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Uncertainty of where a plane was seen</source>
      <translation>Incertidumbre del lugar donde se vio un plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>1-sigma, square to the plane.</source>
      <translation>1-sigma, en perpendicular al plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Holes are</source>
      <translation>Los sondeos son</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Straight in any case.</source>
      <translation>Rectos en todo caso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>drilled in a direction that is given</source>
      <translation>perforados en una dirección indicada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>drilled from collars that are given</source>
      <translation>perforados desde bocas indicadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Azimuth of the holes</source>
      <translation>Azimut de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>From true north.</source>
      <translation>Desde el norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Inclination of the holes</source>
      <translation>Inclinación de los sondeos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Below the horizon; 90 is vertical.</source>
      <translation>Bajo el horizonte; 90 es vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Collars</source>
      <translation>Bocas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Points; each target takes the nearest.</source>
      <translation>Puntos; cada objetivo toma el más próximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Uncertainty of a hole's direction</source>
      <translation>Incertidumbre de la dirección de un sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>1-sigma: how far the driller may be off, over the whole length.</source>
      <translation>1-sigma: cuánto puede desviarse el sondista en toda la longitud.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Longest hole</source>
      <translation>Sondeo más largo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Longer ones are refused.</source>
      <translation>Los más largos se rechazan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Collars of planned holes</source>
      <translation>Bocas de los sondeos planeados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>A point for each target, at the mouth of its hole.</source>
      <translation>Un punto por objetivo, en la boca de su sondeo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Planned holes</source>
      <translation>Sondeos planeados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Lines with true heights, from collar to target.</source>
      <translation>Líneas con alturas verdaderas, de la boca al objetivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>The table of holes, with the cautions.</source>
      <translation>La tabla de sondeos, con las advertencias.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>Each hole in its own upright plane, at one scale both ways, with the plane and its band.</source>
      <translation>Cada sondeo en su propio plano vertical, a una misma escala en ambos sentidos, con el plano y su banda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>HOLE is direction, so AZIMUTH and INCLINATION are needed.</source>
      <translation>HOLE es direction, así que hacen falta AZIMUTH e INCLINATION.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>HOLE is collar, so COLLARS is needed.</source>
      <translation>HOLE es collar, así que hace falta COLLARS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_boreholes.py" />
      <source>COLLARS: no row has a place with ground under it.</source>
      <translation>COLLARS: ninguna fila tiene un lugar con terreno debajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>Planned boreholes</source>
      <translation>Sondeos planeados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>Straight holes, planned and not drilled. Azimuths from true north, inclinations below the horizon, lengths in metres along the hole. The 1-sigma of the depth at which a hole meets its plane, and of the place on the plane, hold for the errors that were stated: the plane's, and {sigma} degrees of the hole's direction.</source>
      <translation>Sondeos rectos, planeados y no perforados. Azimutes desde el norte verdadero, inclinaciones bajo el horizonte, longitudes en metros a lo largo del sondeo. La 1-sigma de la profundidad a la que un sondeo corta su plano, y del lugar en el plano, valen para los errores declarados: los del plano, y {sigma} grados de la dirección del sondeo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>hole</source>
      <translation>sondeo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>angle to the plane</source>
      <translation>ángulo con el plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>depth, 1-sigma, m</source>
      <translation>profundidad, 1-sigma, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>place, 1-sigma, m</source>
      <translation>lugar, 1-sigma, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>collar, m</source>
      <translation>boca, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>target, m</source>
      <translation>objetivo, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/plan_report.py" />
      <source>A plan is no permit and no safety case. Before drilling, services, old workings, gas, water, the stability of the ground and rights of way are to be looked into on the spot. No hole stays straight: survey it.</source>
      <translation>Un plan no es un permiso ni un estudio de seguridad. Antes de perforar hay que revisar sobre el sitio servicios enterrados, labores antiguas, gas, agua, la estabilidad del terreno y los derechos de paso. Ningún sondeo se mantiene recto: mida su desviación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Carry a layer onto sections</source>
      <translation>Trasladar una capa a los cortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Carries points, lines or the rims of areas onto section lines, vertex by vertex: squarely, along their strike, or along a fold axis. A contact carried along the axis of its folds draws the folds above and below the ground (the view down the plunge).

Nothing is carried across a fault, nor farther than DISTANCE. sig_elev says how far the height may be off for what is not known of the axis: a degree is 35 m after 2 km. PROFILE shows the same in the plane square to the axis, which leans where the axis plunges.

What is carried is not measured: method says projected, and layers and figures say so too.</source>
      <translation>Traslada puntos, líneas o bordes de áreas a las líneas de corte, vértice por vértice: en perpendicular, según su rumbo o según un eje de pliegue. Un contacto trasladado según el eje de sus pliegues dibuja los pliegues por encima y por debajo del terreno (la vista según la inmersión).

Nada se traslada a través de una falla, ni más lejos que DISTANCE. sig_elev dice cuánto puede errar la altura por lo que no se sabe del eje: un grado son 35 m a 2 km. PROFILE muestra lo mismo en el plano perpendicular al eje, que se inclina donde el eje se hunde.

Lo trasladado no está medido: method dice projected, y las capas y figuras también lo dicen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>What is carried</source>
      <translation>Lo que se traslada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Points, lines or areas; of areas the rims. Draw lines with many vertices.</source>
      <translation>Puntos, líneas o áreas; de las áreas, los bordes. Dibuje las líneas con muchos vértices.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Squarely and along strike heights are kept; along the fold axis they fall with it.</source>
      <translation>En perpendicular y según el rumbo se conserva la altura; según el eje de pliegue baja con él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>along each row's own strike</source>
      <translation>según el rumbo propio de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Strike of each row</source>
      <translation>Rumbo de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>True. Needed along strike.</source>
      <translation>Verdadero. Hace falta para trasladar según el rumbo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Horizontally, along the way of carrying.</source>
      <translation>En horizontal, a lo largo del traslado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Heights are</source>
      <translation>Las alturas son</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Where each vertex lies.</source>
      <translation>Dónde está cada vértice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>those of the ground (DEM)</source>
      <translation>las del terreno (MDE)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>those of the geometry</source>
      <translation>las de la geometría</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>those of a field</source>
      <translation>las de un campo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Points or lines: x distance, y height times exaggeration.</source>
      <translation>Puntos o líneas: x la distancia, y la altura por la exageración.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>In the plane square to the axis</source>
      <translation>En el plano perpendicular al eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Points or lines seen down the plunge: x to the right, y up the plane, metres from the middle of the section.</source>
      <translation>Puntos o líneas vistos según la inmersión: x hacia la derecha, y hacia arriba del plano, en metros desde el centro del corte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>The rule along_strike needs STRIKE_FIELD.</source>
      <translation>La regla along_strike necesita STRIKE_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>PROFILE is the plane square to a fold axis: it needs the rule along_axis.</source>
      <translation>PROFILE es el plano perpendicular a un eje de pliegue: necesita la regla along_axis.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>Give a DEM, or say where the heights come from: without heights nothing has its place.</source>
      <translation>Indique un MDE, o diga de dónde vienen las alturas: sin alturas nada tiene su lugar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>HEIGHTS is field, so HEIGHT_FIELD is needed.</source>
      <translation>HEIGHTS es field, así que hace falta HEIGHT_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/project_to_section.py" />
      <source>HEIGHTS is z, but the geometry of the layer has no heights.</source>
      <translation>HEIGHTS es z, pero la geometría de la capa no tiene alturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Attitudes on sections</source>
      <translation>Orientaciones sobre cortes geológicos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Carries attitudes onto section lines by the rule you choose and gives each the dip it shows there. app_dip is positive where the bed goes down in the direction in which the section is drawn; app_dip_ve is the angle as drawn with vertical exaggeration. Lines are projected squarely and show their apparent plunge.

An attitude that lies farther off than DISTANCE, or beside no part of a section, is never moved to an end: it is counted as OUTSIDE and listed in the report. offset says over what distance each was carried, positive from the right of the section; code says what was noticed.</source>
      <translation>Proyecta orientaciones sobre líneas de corte según la regla elegida y da a cada una el buzamiento que muestra allí. app_dip es positivo donde la capa baja en el sentido en que se dibuja el corte; app_dip_ve es el ángulo dibujado con la exageración vertical. Las líneas se proyectan perpendicularmente y muestran su inmersión aparente.

Una orientación que queda más lejos que DISTANCE, o frente a ninguna parte de un corte, nunca se lleva a un extremo: se cuenta como OUTSIDE y se enumera en el informe. offset dice a qué distancia se proyectó cada una, positiva desde la derecha del corte; code dice qué se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Heights of the ground, for attitudes without a height of their own.</source>
      <translation>Cotas del terreno, para las orientaciones sin cota propia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>In section space, whatever the slope.</source>
      <translation>En el espacio de la sección, sea cual sea la pendiente.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Ticks at the apparent dip, exaggerated as the section is, each through its datum.</source>
      <translation>Trazos con el buzamiento aparente, exagerados como el corte, cada uno por su dato.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Ticks at the true apparent dip, in the plane of the section, for 3-D views and elevation profiles.</source>
      <translation>Trazos con el buzamiento aparente sin exagerar, en el plano del corte, para vistas 3D y perfiles de elevación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Counts, the rule, the sections, and which attitudes lie outside.</source>
      <translation>Recuentos, la regla, los cortes y qué orientaciones quedan fuera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Contacts and units on sections</source>
      <translation>Contactos y unidades sobre cortes geológicos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Finds where contacts or faults cross section lines, with distance and height; or, from areas, the stretches of each map unit along the ground of the section. Lines cross exactly where both maps draw them.

Where a plane is known for a crossing, its apparent dip is given: the line's own strike and dip, else the nearest attitude of the same name, else the nearest attitude within the distance. dip_from says which, dip_away how far off it was measured.

Rows of the layer that meet no section are counted as OUTSIDE.</source>
      <translation>Halla dónde cortan los contactos o fallas a las líneas de corte, con distancia y cota; o, a partir de polígonos, los intervalos de cada unidad cartográfica a lo largo del terreno del corte. Las líneas se cruzan exactamente donde las dibujan ambos mapas.

Donde se conoce un plano para un cruce se da su buzamiento aparente: el rumbo y buzamiento de la propia línea; si no, la orientación más próxima del mismo nombre; si no, la más próxima dentro de la distancia. dip_from dice cuál; dip_away, a qué distancia se midió.

Las filas de la capa que no tocan ningún corte se cuentan como OUTSIDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Contacts, faults or units</source>
      <translation>Contactos, fallas o unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Lines give points where they cross the sections, areas give stretches.</source>
      <translation>Las líneas dan puntos donde cruzan los cortes; los polígonos, intervalos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Name of the contact, fault or unit.</source>
      <translation>Nombre del contacto, falla o unidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Strike of the line itself</source>
      <translation>Rumbo de la propia línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Dip of the line itself</source>
      <translation>Buzamiento de la propia línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Points with true strike and dip, for lines that have none of their own.</source>
      <translation>Puntos con rumbo verdadero y buzamiento, para las líneas que no los tienen propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Name of the contact an attitude belongs to</source>
      <translation>Nombre del contacto al que pertenece una orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>An attitude whose name is that of the crossing is that contact's own plane and comes before nearer ones.</source>
      <translation>Una orientación con el mismo nombre que el cruce es el plano propio de ese contacto y va por delante de otras más próximas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Kinds of attitudes to use</source>
      <translation>Tipos de orientaciones que se usan</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Kinds between commas; they count where the attitudes have a field kind. Empty: all planes.</source>
      <translation>Tipos separados por comas; cuentan si las orientaciones tienen el campo kind. Vacío: todos los planos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Greatest distance to an attitude</source>
      <translation>Distancia máxima a una orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>From the crossing.</source>
      <translation>Desde el cruce.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Points, or stretches of the ground: x distance, y height times exaggeration.</source>
      <translation>Puntos, o intervalos del terreno: x distancia, y cota por exageración.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The same with true heights.</source>
      <translation>Lo mismo con cotas verdaderas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Crossings or stretches</source>
      <translation>Cruces o intervalos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>KINDS: {entry} is none of {allowed}.</source>
      <translation>KINDS: {entry} no es ninguno de estos: {allowed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Lines. Nothing is carried across one. A fault whose dip is known goes down along it, any other straight down. Lines of one name are one fault, also where it is covered between them.</source>
      <translation>Líneas. Nada se traslada a través de una falla. Una falla de buzamiento conocido baja según él; cualquier otra, en vertical. Las líneas de un mismo nombre son una sola falla, también donde está cubierta entre ellas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Strike of each fault</source>
      <translation>Rumbo de cada falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Dip of each fault</source>
      <translation>Buzamiento de cada falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>0 to 90; where it is empty the fault is taken as vertical.</source>
      <translation>De 0 a 90; donde está vacío, la falla se toma como vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Faults go on beyond their ends by</source>
      <translation>Las fallas siguen más allá de sus extremos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>Straight on, so that nothing is carried round the end of a line at the map's edge. Without a number: as far as data are carried. 0 for faults that end where their lines do.</source>
      <translation>En línea recta, para que nada se traslade rodeando el extremo de una línea en el borde del mapa. Sin número: tanto como se trasladan los datos. 0 para fallas que terminan donde sus líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_faults.py" />
      <source>FAULTS: {count} rows have no line; left out.</source>
      <translation>FAULTS: {count} filas no tienen línea; se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Fence of sections in 3-D</source>
      <translation>Panel de cortes en 3D</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Stands several sections up in space as panels that QGIS's 3-D view shows where they are: the mapped units as a stripe along the ground, and below it the drafted units, if you give the areas on the map that the draft of sections makes. PICTURE is a view of all of them.

method tells what was mapped from what is a draft; in the picture drafted areas are pale, with dashed rims.</source>
      <translation>Levanta varios cortes en el espacio como paneles que la vista 3D de QGIS muestra en su sitio: las unidades cartografiadas como una franja a lo largo del terreno y, debajo, las unidades en borrador, si se dan las áreas en el mapa que hace el borrador de cortes. PICTURE es una vista de todos ellos.

method distingue lo cartografiado de lo que es borrador; en la imagen las áreas en borrador son pálidas, con bordes a trazos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Areas, drawn as a stripe along the ground.</source>
      <translation>Áreas, dibujadas como una franja a lo largo del terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Height of the stripe</source>
      <translation>Altura de la franja</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Below the ground.</source>
      <translation>Por debajo del terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Drafted units on the map</source>
      <translation>Unidades en borrador en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Upright areas with fields section, unit and method, as the draft of sections makes them.</source>
      <translation>Áreas verticales con los campos section, unit y method, como las hace el borrador de cortes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Azimuth of the view</source>
      <translation>Azimut de la vista</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>In which the picture looks, from true north. Without one, across the first section.</source>
      <translation>Hacia donde mira la imagen, desde el norte verdadero. Sin él, a través del primer corte.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>How far down the view looks</source>
      <translation>Cuánto mira hacia abajo la vista</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>0 is level.</source>
      <translation>0 es horizontal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Vertical exaggeration of the picture</source>
      <translation>Exageración vertical de la imagen</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>The layers are never exaggerated.</source>
      <translation>Las capas nunca se exageran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Panels</source>
      <translation>Paneles</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Upright areas with true heights, a method on each.</source>
      <translation>Áreas verticales con alturas verdaderas, cada una con su method.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Ground lines</source>
      <translation>Líneas del terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>The ground along the sections, with true heights.</source>
      <translation>El terreno a lo largo de los cortes, con alturas verdaderas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Picture</source>
      <translation>Imagen</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>A view of the fence.</source>
      <translation>Una vista del panel de cortes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>Give UNITS, DRAFTED, or both: else there is nothing to show.</source>
      <translation>Indique UNITS, DRAFTED o ambas: si no, no hay nada que mostrar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>DRAFTED: the layer has no field {name}.</source>
      <translation>DRAFTED: la capa no tiene el campo {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>DRAFTED: its areas have no heights; give the areas on the map.</source>
      <translation>DRAFTED: sus áreas no tienen alturas; indique las áreas en el mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>DRAFTED: {count} areas are of no section here; left out.</source>
      <translation>DRAFTED: {count} áreas no son de ningún corte de aquí; se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_fence.py" />
      <source>The picture could not be written.</source>
      <translation>No se pudo escribir la imagen.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>Profile of the ground along sections</source>
      <translation>Perfil del terreno a lo largo de cortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>Draws the ground along section lines that may bend and run in any direction. Distances are ground distances on the ellipsoid, in metres, whatever the CRS of the lines and of the DEM; heights lie bilinearly between the DEM's cells.

In section space x is the distance and y the height times the vertical exaggeration. Where the DEM has a gap the profile is broken, never drawn at zero: each unbroken stretch is one line, and the row says dem_gap.</source>
      <translation>Dibuja el terreno a lo largo de líneas de corte que pueden quebrarse e ir en cualquier dirección. Las distancias son sobre el terreno, medidas en el elipsoide, en metros, sea cual sea el SRC de las líneas y del MDE; las cotas se interpolan bilinealmente entre las celdas del MDE.

En el espacio del corte, x es la distancia e y la cota por la exageración vertical. Donde el MDE tiene un hueco el perfil se interrumpe, nunca se dibuja en cero: cada intervalo continuo es una línea, y la fila dice dem_gap.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>Between places where the height is read; 0 is the side of the DEM's cells. Every vertex is read too.</source>
      <translation>Entre los lugares donde se lee la altura; 0 es el lado de las celdas del MDE. También se lee cada vértice.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>One line for each stretch of known ground: x distance, y height times exaggeration.</source>
      <translation>Una línea por cada intervalo de terreno conocido: x distancia, y cota por exageración.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>The same as lines with true heights, for 3-D views and elevation profiles.</source>
      <translation>Lo mismo, como líneas con cotas verdaderas, para vistas 3D y perfiles de elevación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Lines that may bend, drawn from the left end of the section to its right end. Between vertices a section runs along the shortest line on the ground.</source>
      <translation>Líneas que pueden quebrarse, dibujadas del extremo izquierdo del corte al derecho. Entre vértices, el corte sigue la línea más corta sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Names of the sections</source>
      <translation>Nombres de los cortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Such as A-A'. Without a field, and where it is empty, sections are lettered A, B, C in their order.</source>
      <translation>Por ejemplo, A-A'. Sin campo, y donde está vacío, los cortes se nombran A, B, C por su orden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>The section lines have no coordinate reference system that leads to places on Earth.</source>
      <translation>Las líneas de corte no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Height scale over length scale; 1 draws true angles. The map output is never exaggerated.</source>
      <translation>Escala vertical entre escala horizontal; con 1 se dibujan los ángulos verdaderos. La salida en el mapa nunca se exagera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>In section space</source>
      <translation>En el espacio del corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>On the map, in three dimensions</source>
      <translation>En el mapa, en tres dimensiones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Rows outside, on no section</source>
      <translation>Filas fuera, en ningún corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>A step of {value} m does not suit section {name}, which is {length} m long.</source>
      <translation>Un paso de {value} m no conviene al corte {name}, que mide {length} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>There is no section line in the layer.</source>
      <translation>No hay ninguna línea de corte en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>No section line can be used: {reason}</source>
      <translation>No se puede usar ninguna línea de corte: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>A section line was left out: {reason}</source>
      <translation>Se dejó fuera una línea de corte: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Between its vertices a section runs along the shortest line on the ground, up to {value} m from the straight line that this layer's map shows. Add vertices where it must follow the drawn line.</source>
      <translation>Entre sus vértices el corte sigue la línea más corta sobre el terreno, que se aparta hasta {value} m de la recta que muestra el mapa de esta capa. Añada vértices donde deba seguir la línea dibujada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Outside, on no section: {count} rows, first ids {ids}</source>
      <translation>Fuera, en ningún corte: {count} fila(s), primeros identificadores: {ids}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/shared.py" />
      <source>Outside, on no section: {count} rows, ids {ids}</source>
      <translation>Fuera, en ningún corte: {count} fila(s), identificadores: {ids}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Height contours</source>
      <translation>Curvas de nivel</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Graticule</source>
      <translation>Retícula geográfica</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Leaders</source>
      <translation>Líneas de guía</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>{count} areas are too small for letters, or have no room beside them.</source>
      <translation>{count} áreas son demasiado pequeñas para letras, o no hay sitio a su lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Letters of sections</source>
      <translation>Letras de los cortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Letters of units</source>
      <translation>Letras de las unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Names of lines</source>
      <translation>Nombres de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/contents.py" />
      <source>Heights of contours</source>
      <translation>Cotas de las curvas de nivel</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/frame.py" />
      <source>A sheet needs a projection: {crs} is in degrees.</source>
      <translation>Una hoja necesita una proyección: {crs} está en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/frame.py" />
      <source>The layers are in degrees; the sheet is drawn in {code}.</source>
      <translation>Las capas están en grados; la hoja se dibuja en {code}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/frame.py" />
      <source>The layers are empty: nothing says where the sheet lies. Give EXTENT.</source>
      <translation>Las capas están vacías: nada dice dónde está la hoja. Dé EXTENT.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Map sheet</source>
      <translation>Hoja del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Makes a finished geologic map of layers in one run: the map with its units, lines and attitudes, grid and graticule; the description and correlation of map units and the explanation of exactly the symbols that are drawn; scale bar, norths, location, sources, methods and cautions. Everything is placed so that nothing overlaps and the map is as large as it can be.

It comes out as PDF (vector, georeferenced), PNG and SVG, and as a package: a GeoPackage with copies of all vector layers, their styles, and the project "sheet" with the print layout, which you open, edit and print again, on any machine with QGIS.

Attitudes and lines are drawn by their field symbol, as Correct compass readings, Style attitudes and Style lines give it; lines without it keep their own style. Attitudes are thinned to the scale where they have no plot_scale. Rejected rows are not printed.

QGIS is busy meanwhile; a cancelled run stops between its steps, not within one export.</source>
      <translation>Hace de las capas, de una vez, un mapa geológico acabado: el mapa con sus unidades, líneas y actitudes, cuadrícula y retícula; la descripción y correlación de las unidades y la explicación de los símbolos dibujados, ni uno más; escala, nortes, situación, fuentes, métodos y precauciones. Todo se coloca sin que nada se solape y con el mapa lo mayor posible.

Sale como PDF (vectorial, georreferenciado), PNG y SVG, y como paquete: un GeoPackage con copias de todas las capas vectoriales, sus estilos y el proyecto "sheet" con la composición, que usted abre, edita e imprime de nuevo en cualquier máquina con QGIS.

Las actitudes y líneas se dibujan según su campo symbol, como lo dan Corregir lecturas de brújula, Dar estilo a las actitudes y Dar estilo a las líneas; las líneas sin él conservan su estilo. Las actitudes se entresacan para la escala si no tienen plot_scale. Las filas rechazadas no se imprimen.

Mientras tanto QGIS está ocupado; si se cancela, se detiene entre sus pasos, no dentro de una exportación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Points with the field symbol.</source>
      <translation>Puntos con el campo symbol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Contacts, faults and folds</source>
      <translation>Contactos, fallas y pliegues</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Drawn by the field symbol, else by their own style.</source>
      <translation>Se dibujan según el campo symbol; si no, con su propio estilo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>As for Style map units.</source>
      <translation>Como en Dar estilo a las unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Lines of sections</source>
      <translation>Líneas de corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Drawn with letters at their ends.</source>
      <translation>Se dibujan con letras en sus extremos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Such as A-A'.</source>
      <translation>Como A-A'.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Heights, for contours and the shaded relief.</source>
      <translation>Alturas, para las curvas de nivel y el relieve sombreado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Further layers</source>
      <translation>Otras capas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Streams, roads, an image; drawn in their own style.</source>
      <translation>Arroyos, caminos, una imagen; se dibujan con su propio estilo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Title</source>
      <translation>Título</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Across the top of the sheet.</source>
      <translation>En lo alto de la hoja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Geologic map</source>
      <translation>Mapa geológico</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Subtitle</source>
      <translation>Subtítulo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Below the title.</source>
      <translation>Bajo el título.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Authors</source>
      <translation>Autores</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Who mapped, compiled and drew it.</source>
      <translation>Quién cartografió, compiló y dibujó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Date of the map</source>
      <translation>Fecha del mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>For which magnetic north is drawn; without it there is none.</source>
      <translation>Para la que se dibuja el norte magnético; sin ella no se dibuja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>One a line.</source>
      <translation>Una por línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Scale 1 :</source>
      <translation>Escala 1 :</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: the largest round one that fits the paper.</source>
      <translation>Si se deja vacía: la mayor redonda que cabe en el papel.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: all of the units, else of the attitudes and lines.</source>
      <translation>Si se deja vacía: la de todas las unidades; si no, la de las actitudes y líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Projection</source>
      <translation>Proyección</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: that of the extent or the layers.</source>
      <translation>Si se deja vacía: la de la extensión o las capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Paper</source>
      <translation>Papel</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>ISO A or ANSI.</source>
      <translation>ISO A o ANSI.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Orientation</source>
      <translation>Orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>whichever gives the larger map</source>
      <translation>la que dé el mapa mayor</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>landscape</source>
      <translation>apaisada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>portrait</source>
      <translation>vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Width of a roll</source>
      <translation>Ancho de un rollo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>In place of PAPER: the sheet is as wide as the roll and as long as it has to be.</source>
      <translation>En lugar de PAPER: la hoja es tan ancha como el rollo y tan larga como haga falta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Draw contours</source>
      <translation>Dibujar curvas de nivel</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Of the DEM.</source>
      <translation>Del MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: chosen by the relief.</source>
      <translation>Si se deja vacía: según el relieve.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Shade the relief</source>
      <translation>Sombrear el relieve</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Of the DEM, under the units.</source>
      <translation>Del MDE, bajo las unidades.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Draw ornaments</source>
      <translation>Dibujar tramas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>By the words for the rock.</source>
      <translation>Según las palabras de la roca.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>A sentence on how the data were made.</source>
      <translation>Una frase sobre cómo se hicieron los datos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Language of the sheet</source>
      <translation>Idioma de la hoja</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Dots to the inch</source>
      <translation>Puntos por pulgada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Left empty: 300, of a PNG over A2 150.</source>
      <translation>Si se deja vacío: 300; en un PNG mayor que A2, 150.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>The layers and the project that prints the sheet.</source>
      <translation>Las capas y el proyecto que imprime la hoja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>GeoPackage (*.gpkg)</source>
      <translation>GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Pages</source>
      <translation>Páginas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Attitudes on the map</source>
      <translation>Actitudes en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Vector, fonts embedded, georeferenced; with layers that can be switched where GDAL can make them.</source>
      <translation>Vectorial, con tipos incrustados, georreferenciado; con capas que se encienden y apagan donde GDAL puede hacerlas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>An image; of a sheet with several pages the second ends in _2.</source>
      <translation>Una imagen; si la hoja tiene varias páginas la segunda acaba en _2.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Vector, to be edited by hand.</source>
      <translation>Vectorial, para editar a mano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Nothing is to be written: give PDF, PNG, SVG or PACKAGE.</source>
      <translation>No hay nada que escribir: dé PDF, PNG, SVG o PACKAGE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>Give UNITS, ATTITUDES or LINES.</source>
      <translation>Dé UNITS, ATTITUDES o LINES.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>ATTITUDES: {name} has no field symbol; Style attitudes adds it.</source>
      <translation>ATTITUDES: {name} no tiene el campo symbol; Dar estilo a las actitudes lo añade.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>UNITS is given, so UNIT_FIELD is needed.</source>
      <translation>Se da UNITS, así que hace falta UNIT_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/map_sheet.py" />
      <source>{key}: the name must end in .{ending}.</source>
      <translation>{key}: el nombre debe acabar en .{ending}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Methods statement</source>
      <translation>Declaración de métodos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Reads how the layers of the project were made, from the records that every output of Agonic carries, and writes one text for the methods section of a paper or a map's notes, then each step with its parameters. Layers without a record are named: how they were made must be told by whoever made them.</source>
      <translation>Lee cómo se hicieron las capas del proyecto, de los registros que lleva toda salida de Agonic, y escribe un texto para la sección de métodos de un artículo o las notas de un mapa, luego cada paso con sus parámetros. Se nombran las capas sin registro: cómo se hicieron debe decirlo quien las hizo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Layers</source>
      <translation>Capas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Left empty: all vector layers of the project.</source>
      <translation>Vacío: todas las capas vectoriales del proyecto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>The text, then each step with its parameters.</source>
      <translation>El texto, luego cada paso con sus parámetros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Steps</source>
      <translation>Pasos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Layers without a record</source>
      <translation>Capas sin registro</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>There is no layer: the project has none, and LAYERS is empty.</source>
      <translation>No hay ninguna capa: el proyecto no tiene, y LAYERS está vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>How these layers were made is not recorded: {names}.</source>
      <translation>No está registrado cómo se hicieron estas capas: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>{names}: {title} ({tool}, Agonic {version}, {date}).</source>
      <translation>{names}: {title} ({tool}, Agonic {version}, {date}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Before: {title} ({tool}, Agonic {version}, {date}).</source>
      <translation>Antes: {title} ({tool}, Agonic {version}, {date}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/methods_statement.py" />
      <source>Model of the magnetic field: {model}.</source>
      <translation>Modelo del campo magnético: {model}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/package.py" />
      <source>PACKAGE: {name} is no package of a sheet that this version made; choose another file.</source>
      <translation>PACKAGE: {name} no es un paquete de hoja hecho por esta versión; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/package.py" />
      <source>PACKAGE: {name} holds {layer}, which is not of the sheet; choose another file.</source>
      <translation>PACKAGE: {name} contiene {layer}, que no es de la hoja; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/package.py" />
      <source>PACKAGE: {name} was edited since it was made; choose another file.</source>
      <translation>PACKAGE: {name} se ha editado desde que se hizo; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>{name} is longer than the paper is wide; it is left out.</source>
      <translation>{name} es más largo que el ancho del papel; se omite.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>In this projection lengths on the sheet are {factor:.3f} times those on the ground.</source>
      <translation>En esta proyección las longitudes en la hoja son {factor:.3f} veces las del terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Line of section</source>
      <translation>Línea de corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Heights in metres, from {name}.</source>
      <translation>Alturas en metros, de {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Strikes and trends are true azimuths; their symbols are turned to the sheet's own north, grid north.</source>
      <translation>Los rumbos y sentidos son acimutes verdaderos; sus símbolos están girados al norte de la hoja, el de cuadrícula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Without MAP_DATE the sheet has no diagram of the norths: there is no silent today.</source>
      <translation>Sin MAP_DATE la hoja no lleva diagrama de nortes: la fecha de hoy nunca se supone.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>S</source>
      <translation>S</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>Centre {lat:.3f}° {north}, {lon:.3f}° {east}.</source>
      <translation>Centro {lat:.3f}° {north}, {lon:.3f}° {east}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>The paper is too small for a map.</source>
      <translation>El papel es demasiado pequeño para un mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/printing.py" />
      <source>At this scale the map is larger than the paper; 1:{scale:,.0f} would fit.</source>
      <translation>A esta escala el mapa es mayor que el papel; 1:{scale:,.0f} cabría.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sheet/profiles.py" />
      <source>The sections are not drawn: {reason}</source>
      <translation>Los cortes no se dibujan: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Check compasses on known lines</source>
      <translation>Comprobar brújulas en líneas conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Sight from one known point to another and note the reading: the azimuth between them is known, so the compass shows its own error. Each row is one reading; name its two points, or give their coordinates.

For every compass: the index error (what must be added to its readings) with its uncertainty, the scatter of one reading, and the drift with time. For every reading: how far it is off, and what it may be. Near 180 degrees a reversed reading is suspected; near the declination, a correction left out at one end or made twice; near twice the declination, a correction made the wrong way. These are suspicions: no reading is changed.

To allow for an index error in other tools, subtract it from the ring setting. Iron near one of the points spoils all readings there; use several lines from several points.

The sun serves where no known point is in sight: a reading of it, or of a shadow, with its time and time zone. Two results are never mixed: to_add is all that is wrong at that place (compass, rock and model), index_err the compass alone. The clock's error is one for all sights of a day.

Never look at the sun through a sight or a lens: use the shadow. Results support, and do not replace, licensed professional judgement.</source>
      <translation>Vise de un punto conocido a otro y anote la lectura: el acimut entre ellos se conoce, así que la brújula muestra su propio error. Cada fila es una lectura; nombre sus dos puntos o dé sus coordenadas.

Para cada brújula: el error de índice (lo que hay que sumar a sus lecturas) con su incertidumbre, la dispersión de una lectura y la deriva con el tiempo. Para cada lectura: cuánto se aparta y qué puede ser. Cerca de 180 grados se sospecha una lectura invertida; cerca de la declinación, una corrección omitida en un extremo o hecha dos veces; cerca del doble de la declinación, una corrección hecha al revés. Son sospechas: no se cambia ninguna lectura.

Para tener en cuenta un error de índice en otras herramientas, réstelo del ajuste del limbo. El hierro cerca de uno de los puntos estropea todas las lecturas allí; use varias líneas desde varios puntos.

El sol sirve donde no se ve ningún punto conocido: una lectura de él, o de una sombra, con su hora y huso horario. Nunca se mezclan dos resultados: to_add es todo lo que está mal en ese lugar (brújula, roca y modelo), index_err solo la brújula. El error del reloj es uno para todas las visuales de un día.

No mire nunca al sol por una mira o una lente: use la sombra. Los resultados apoyan, y no sustituyen, el juicio profesional autorizado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>A table or layer, one row a reading along a line between two known points, or of the sun.</source>
      <translation>Una tabla o capa, una fila por lectura a lo largo de una línea entre dos puntos conocidos, o del sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Which compass it was read with. Without a field all rows are of one compass.</source>
      <translation>Con qué brújula se leyó. Sin campo, todas las filas son de una sola brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Uncertainty of a known point</source>
      <translation>Incertidumbre de un punto conocido</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>1-sigma in easting and in northing; it matters on short lines.</source>
      <translation>1 sigma en este y en norte; importa en líneas cortas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Readings checked</source>
      <translation>Lecturas comprobadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>The input's rows with the known azimuth, what would have to be added, and what was noticed.</source>
      <translation>Las filas de la entrada con el azimut conocido, lo que habría que sumar y qué se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>Compasses</source>
      <translation>Brújulas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>A table with the index error, scatter and drift of each compass.</source>
      <translation>Una tabla con el error de índice, la dispersión y la deriva de cada brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>The compasses, the readings that stand out, and how it was done.</source>
      <translation>Las brújulas, las lecturas que llaman la atención y cómo se hizo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Compasses held against known lines</source>
      <translation>Brújulas comprobadas en líneas conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Compasses held against the sun</source>
      <translation>Brújulas comprobadas con el sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Compasses held against known lines and the sun</source>
      <translation>Brújulas comprobadas con líneas conocidas y con el sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>{compass}: add {error} ± {sigma} degrees to its readings.</source>
      <translation>{compass}: sume {error} ± {sigma} grados a sus lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>The index error is what must be added to the readings of a compass; subtract it from the ring setting to allow for it. Uncertainties are 1-sigma. Readings under suspicion of a slip were left out.</source>
      <translation>El error de índice es lo que hay que sumar a las lecturas de una brújula; para compensarlo, réstelo del ajuste del limbo. Las incertidumbres son de 1 sigma. Se dejaron fuera las lecturas con sospecha de equivocación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>readings used</source>
      <translation>lecturas usadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>index error</source>
      <translation>error de índice</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>scatter of one reading</source>
      <translation>dispersión de una lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>drift a year</source>
      <translation>deriva anual</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>first date</source>
      <translation>primera fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>last date</source>
      <translation>última fecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>of the sun</source>
      <translation>del sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>the clock's part</source>
      <translation>parte del reloj</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>Azimuths between the known points are those of the geodesic on the ellipsoid, from true north. A reading is taken to be good to {reading}° and a point to {point} m (1-sigma); long lines weigh more than short ones. The uncertainty of the declination is part of that of the index error.</source>
      <translation>Los azimutes entre los puntos conocidos son los de la geodésica en el elipsoide, desde el norte verdadero. La incertidumbre de una lectura se toma como {reading}° y la de un punto como {point} m (1 sigma); las líneas largas pesan más que las cortas. La incertidumbre del error de índice incluye la de la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>Azimuths of the sun are those of its centre, its limb or its shadow at the place and time, good to 0.01°. The clock is taken to be good to {clock} s (1-sigma), wrong alike for all sights of a day. to_add is all that is wrong at a place: compass, rock and model. index_err is that of the compass; the uncertainty of the declination is counted once. Never look at the sun through a sight or a lens: use the shadow.</source>
      <translation>Los acimutes del sol son los de su centro, su limbo o su sombra en el lugar y la hora, con una exactitud de 0.01°. El reloj se toma por bueno hasta {clock} s (1 sigma), con el mismo error en todas las visuales de un día. to_add es todo lo que está mal en un lugar: brújula, roca y modelo. index_err es el de la brújula; la incertidumbre de la declinación se cuenta una vez. No mire nunca al sol por una mira o una lente: use la sombra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Instead of names: coordinates in each row. All four fields and CRS are needed.</source>
      <translation>En lugar de nombres: coordenadas en cada fila. Hacen falta los cuatro campos y CRS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Easting where the compass stood</source>
      <translation>X (este) del punto de estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Northing where the compass stood</source>
      <translation>Y (norte) del punto de estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Easting of what was sighted</source>
      <translation>X (este) del punto visado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Northing of what was sighted</source>
      <translation>Y (norte) del punto visado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Known points</source>
      <translation>Puntos conocidos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Points whose places are known well, such as survey marks, peaks or crossings; each has a name.</source>
      <translation>Puntos de posición bien conocida, como vértices geodésicos, cumbres o cruces; cada uno con su nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Names of the known points</source>
      <translation>Nombres de los puntos conocidos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>The field of the known points that names them.</source>
      <translation>El campo de los puntos conocidos que les da nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Where the compass stood</source>
      <translation>Punto de estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Name of a known point.</source>
      <translation>Nombre de un punto conocido: donde estaba la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>What was sighted</source>
      <translation>Punto visado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Name of another known point.</source>
      <translation>Nombre de otro punto conocido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>CRS of the coordinates</source>
      <translation>SRC de las coordenadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>What the coordinates in the four fields are counted in.</source>
      <translation>El sistema en que están las coordenadas de los cuatro campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>Tell the ends of the lines by names ({names}) or by coordinates ({coordinates}), not by both.</source>
      <translation>Indique los extremos de las líneas por nombres ({names}) o por coordenadas ({coordinates}), no de las dos maneras.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>To know the ends of the lines, {missing} is needed too.</source>
      <translation>Para conocer los extremos de las líneas hace falta también {missing}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/known_lines.py" />
      <source>To know where the compass stood, {missing} is needed too.</source>
      <translation>Para saber dónde estaba la brújula hace falta también {missing}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Basalt, serpentinite, ore, rails and power lines turn the needle, and no model knows of it. From checked readings (Check compasses, against known lines or the sun), from the stations of traverses, and from lines read at both ends: a layer of stations with what must be added there, and its 1-sigma.

Give it as ATTRACTION to the tools that read bearings. It is added at the same station, or within 10 m, and nowhere else: it is never interpolated.

A checked reading holds all that is wrong: with a table of checked compasses its index error is taken out; without one it stays in, so then do not give COMPASSES as well where you apply the layer. Stations that a traverse took as free of attraction were not measured, and are left out. Results support, and do not replace, licensed professional judgement; magnetic readings fail near iron, power lines and in storms.</source>
      <translation>El basalto, la serpentinita, la mena, los raíles y las líneas eléctricas desvían la aguja, y ningún modelo lo sabe. A partir de lecturas comprobadas (Comprobar brújulas, con líneas conocidas o el sol), de las estaciones de poligonales y de líneas leídas en ambos extremos: una capa de estaciones con lo que hay que sumar allí y su 1 sigma.

Désela como ATTRACTION a las herramientas que leen rumbos. Se suma en la misma estación, o a menos de 10 m, y en ningún otro sitio: nunca se interpola.

Una lectura comprobada contiene todo lo que está mal: con una tabla de brújulas comprobadas se le quita el error de índice; sin ella se queda dentro, así que no dé entonces COMPASSES además donde aplique la capa. Las estaciones que una poligonal tomó por libres de atracción no se midieron y se omiten. Los resultados apoyan, y no sustituyen, el juicio profesional autorizado; las lecturas magnéticas fallan cerca del hierro, de líneas eléctricas y en tormentas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Checked readings</source>
      <translation>Lecturas comprobadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Rows the check of compasses wrote.</source>
      <translation>Filas que escribió la comprobación de brújulas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Station of each checked reading</source>
      <translation>Estación de cada lectura comprobada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Left empty: readings within 10 m are of one station.</source>
      <translation>Vacío: las lecturas a menos de 10 m son de una estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Compass of each checked reading</source>
      <translation>Brújula de cada lectura comprobada</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Needed with a table of checked compasses.</source>
      <translation>Necesario con una tabla de brújulas comprobadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Checked where nothing attracts the needle. Their index_err is taken out of the checked readings.</source>
      <translation>Comprobadas donde nada atrae la aguja. Su index_err se quita de las lecturas comprobadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Stations of a traverse</source>
      <translation>Estaciones de una poligonal</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>As the traverse wrote them.</source>
      <translation>Como las escribió la poligonal.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Lines read at both ends</source>
      <translation>Líneas leídas en ambos extremos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>A table, one row a line.</source>
      <translation>Una tabla, una fila por línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Of the lines read at both ends.</source>
      <translation>De las líneas leídas en ambos extremos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Station of the fore bearing</source>
      <translation>Estación del rumbo directo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Station of the back bearing</source>
      <translation>Estación del rumbo inverso</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Fore bearing</source>
      <translation>Azimut directo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Back bearing</source>
      <translation>Azimut inverso</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Clean line</source>
      <translation>Línea limpia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>A line whose two bearings agree within this is free of attraction at both ends.</source>
      <translation>Una línea cuyos dos rumbos concuerdan dentro de esto está libre de atracción en ambos extremos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Places of the stations</source>
      <translation>Lugares de las estaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Points with names.</source>
      <translation>Puntos con nombres.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Names of the places</source>
      <translation>Nombres de los lugares</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>As in the findings.</source>
      <translation>Como en los resultados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Uncertainty of a bearing</source>
      <translation>Incertidumbre de un azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Stations with attr_corr, what must be added there, and sig_attr.</source>
      <translation>Estaciones con attr_corr, lo que hay que sumar allí, y sig_attr.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>Give CHECKS, STATIONS or PAIRS: something must say how much the needle is turned.</source>
      <translation>Dé CHECKS, STATIONS o PAIRS: algo debe decir cuánto se desvía la aguja.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>{key}: the table has no field {names}.</source>
      <translation>{key}: la tabla no tiene el campo {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>PAIRS needs {keys}.</source>
      <translation>PAIRS necesita {keys}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>COMPASSES needs CHECK_COMPASS_FIELD: which compass each reading is of.</source>
      <translation>COMPASSES necesita CHECK_COMPASS_FIELD: de qué brújula es cada lectura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>POINTS needs POINT_FIELD.</source>
      <translation>POINTS necesita POINT_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>{count} findings have neither a station nor a place, and were left out.</source>
      <translation>{count} resultados no tienen ni estación ni lugar y se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>What is added holds the errors of the compasses too: where the layer is used, give no table of checked compasses.</source>
      <translation>Lo que se suma contiene también los errores de las brújulas: donde se use la capa, no dé ninguna tabla de brújulas comprobadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>{count} readings suspected of being reversed were left out.</source>
      <translation>Se omitieron {count} lecturas sospechosas de estar invertidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>{count} readings are of compasses that the table does not have, and were left out.</source>
      <translation>{count} lecturas son de brújulas que la tabla no tiene y se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/local_attraction.py" />
      <source>{count} lines of PAIRS lack a station or a bearing, and were left out.</source>
      <translation>A {count} líneas de PAIRS les falta una estación o un rumbo y se omitieron.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Locate by bearings</source>
      <translation>Situar por azimutes (intersección directa e inversa)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Finds a place from compass bearings. target: two or more stations sight one point that nobody can reach. observer: you sight two or more known landmarks and want to know where you stand.

Each place comes with the ellipse that holds it with 95 percent probability. Two landmarks fix an observer whose compass is trusted. Three or more also give the turn: what must be added to all bearings to make them agree, so that an unknown declination or a compass that is off does no harm; a fourth landmark checks it. Where you and the landmarks lie near one circle the turn cannot be told; the compass is then trusted, and the row says so.

Rays that meet nowhere, or behind where they go, give no place. Rays that cross at less than 30 degrees give a poor one, with a warning. With vertical angles and known heights the place gets a height, with curvature of the Earth and refraction allowed for.</source>
      <translation>Halla una posición a partir de azimutes de brújula. target (intersección directa): dos o más estaciones visan un punto inaccesible. observer (intersección inversa): usted visa dos o más referencias conocidas y quiere saber dónde está.

Cada posición va con la elipse que la contiene con una probabilidad del 95 %. Dos referencias fijan a un observador cuya brújula se da por buena. Tres o más dan además el giro: lo que hay que sumar a todos los azimutes para que concuerden, de modo que una declinación desconocida o una brújula desviada no estropean el resultado; una cuarta referencia lo comprueba. Donde usted y las referencias están casi en una circunferencia (círculo peligroso) no se puede hallar el giro; entonces se da por buena la brújula, y la fila lo dice.

Las visuales que no se cortan, o que se cortan detrás de su sentido, no dan posición. Las que se cortan a menos de 30 grados dan una mala, con un aviso. Con ángulos verticales y cotas conocidas la posición recibe una cota, teniendo en cuenta la curvatura terrestre y la refracción.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>What is looked for</source>
      <translation>Qué se busca</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>A target is sighted from several stations; an observer sights known landmarks.</source>
      <translation>Un objetivo se visa desde varias estaciones; un observador visa puntos de referencia conocidos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>a target, from known stations</source>
      <translation>un objetivo, desde estaciones conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>where you stood, from known landmarks</source>
      <translation>dónde estaba usted, desde puntos de referencia conocidos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Sights</source>
      <translation>Visuales</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>One row a sight. For a target: the stations, as points. For an observer: a table, or any layer.</source>
      <translation>Una fila por visual. Para target: las estaciones, como puntos. Para observer: una tabla o cualquier capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Which sights belong together</source>
      <translation>Qué visuales van juntas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>One place for each value. Without a field all sights are of one place.</source>
      <translation>Una posición por cada valor. Sin campo, todas las visuales son de una sola posición.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>For the height of the place. Some rows may lack it.</source>
      <translation>Para la cota de la posición. Puede faltar en algunas filas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>The vertical angle is</source>
      <translation>El ángulo vertical es</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Needed with vertical angles.</source>
      <translation>Necesario con ángulos verticales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Landmarks</source>
      <translation>Referencias</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>For an observer: points whose places are known, such as peaks and towers; each has a name.</source>
      <translation>Para observer: puntos de posición conocida, como cumbres y torres; cada uno con su nombre.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Name of the landmark</source>
      <translation>Nombre de la referencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Field that names the landmark: the same field in the landmarks and in the sights.</source>
      <translation>Campo que nombra la referencia: el mismo en las referencias y en las visuales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Height of the landmark</source>
      <translation>Cota de la referencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Of the point that was sighted. Left empty: the third coordinate, where there is one.</source>
      <translation>Del punto que se visó. Vacío: la tercera coordenada, donde la hay.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Above sea level. For a target: of the ground at the station; left empty, the points' own z, else the DEM's.</source>
      <translation>Sobre el nivel del mar. Para un blanco: del terreno en la estación; si se deja vacío, la z de los puntos, o la del MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>For a target: heights of the ground at stations that have none of their own.</source>
      <translation>Para un blanco: alturas del terreno en las estaciones que no tienen la suya.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Curvature of a ray of light over that of the Earth; 0.13 is usual over land by day, 0 for none.</source>
      <translation>Curvatura del rayo de luz entre la de la Tierra; 0,13 es lo habitual sobre tierra y de día; 0, ninguna.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Solve for a turn of all bearings to a target</source>
      <translation>Resolver un giro de todos los rumbos a un blanco</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Moves the place to where all bearings agree if they are all turned by as much. Otherwise such a turn is only reported. An observer's turn is solved anyway, from three landmarks on.</source>
      <translation>Mueve el lugar adonde concuerdan todos los rumbos si todos se giran otro tanto. Si no, tal giro solo se comunica. El giro de un observador se resuelve de todos modos, desde tres referencias.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>A point for each group, with its error ellipse, the turn and the height.</source>
      <translation>Un punto por grupo, con su elipse de error, el giro y la cota.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Error ellipses</source>
      <translation>Elipses de error</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Each holds its place with 95 percent probability.</source>
      <translation>Cada una contiene su posición con una probabilidad del 95 %.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Every row of the sights, with its line to the place and how far the bearing is off.</source>
      <translation>Cada fila de las visuales, con su línea hasta la posición y cuánto difiere el azimut.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>ANGLE_FIELD is given, so ANGLE_MEANS must say what the angle is.</source>
      <translation>Se indicó ANGLE_FIELD: ANGLE_MEANS debe decir qué es el ángulo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>{keys}: landmarks are used only when FIND is observer.</source>
      <translation>{keys}: las referencias solo se usan cuando FIND es observer.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>FIND is target, so INPUT must be a layer of points: the stations.</source>
      <translation>FIND es target: INPUT debe ser una capa de puntos, las estaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>FIND is observer, so {missing} is needed.</source>
      <translation>FIND es observer: hace falta {missing}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>LANDMARK_FIELD: the sights have no field {name}. They have: {names}.</source>
      <translation>LANDMARK_FIELD: las visuales no tienen el campo {name}. Tienen: {names}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>There are no sights in the layer.</source>
      <translation>No hay ninguna visual en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Sights: {line}</source>
      <translation>Visuales: {line}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Reduce a compass traverse</source>
      <translation>Calcular una poligonal con brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>From a table of legs (from, to, fore bearing, back bearing, distance, vertical angle) and one known point to the places of all stations.

Iron and magnetic rock turn all readings at a station alike. A leg whose fore and back bearing agree is taken as free of it, and from there each station's correction is carried on, leg by leg. Where no such leg leads, the mean of fore bearing and back bearing turned round is taken, and the row says so. A residual is back bearing minus fore bearing minus 180; it is given before and after.

Where the traverse returns to a station, or ends at a second known point, what it misses by is spread over the legs in proportion to their length. Loops and branches may be mixed, in any order of rows. Each place has an uncertainty. Distances may be taped, paced or read by range finder.</source>
      <translation>De una tabla de lados (desde, hasta, azimut directo, azimut inverso, distancia, ángulo vertical) y un punto conocido a la posición de todas las estaciones.

El hierro y las rocas magnéticas desvían por igual todas las lecturas de una estación. Un lado cuyos azimutes directo e inverso concuerdan se toma como libre de atracción local, y desde él se va llevando, lado a lado, la corrección de cada estación. Adonde no llega ningún lado así, se toma la media del azimut directo y del inverso girado 180 grados, y la fila lo dice. Un residuo es el azimut inverso menos el directo menos 180; se da antes y después.

Donde la poligonal vuelve a una estación, o acaba en un segundo punto conocido, el error de cierre se reparte entre los lados en proporción a su longitud. Puede haber anillos y ramales mezclados, con las filas en cualquier orden. Cada posición lleva su incertidumbre. Las distancias pueden medirse con cinta, a pasos o con telémetro.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>A table, one row a leg, in any order.</source>
      <translation>Una tabla, una fila por lado, en cualquier orden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Fore and back bearing agree within</source>
      <translation>Tolerancia entre azimut directo e inverso</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Legs whose residual is no greater are taken as free of local attraction. About twice what the compass can be read to.</source>
      <translation>Los tramos cuyo residuo no es mayor se toman como libres de atracción local. Como el doble de lo que se puede leer en la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Uncertainty of a distance</source>
      <translation>Incertidumbre de una distancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>1-sigma, of the distance: 0.2 with a tape on rough ground, 2 or more by pacing.</source>
      <translation>1 sigma, de la distancia: 0,2 con cinta en terreno áspero, 2 o más a pasos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>percent</source>
      <translation>por ciento</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Curvature of a ray of light over that of the Earth; it matters for heights over long legs.</source>
      <translation>Coeficiente: curvatura del rayo de luz entre la de la Tierra; influye en las cotas de los lados largos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Stations of the traverse</source>
      <translation>Estaciones de la poligonal</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>A point for each station, with the correction for its local attraction and its uncertainty; with a third coordinate where all heights are known.</source>
      <translation>Un punto por estación, con la corrección por su atracción local y su incertidumbre; con tercera coordenada si se conocen todas las cotas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Legs of the traverse</source>
      <translation>Lados de la poligonal</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>The input's rows as lines, with residuals before and after and what the adjustment changed.</source>
      <translation>Las filas de la entrada como líneas, con los residuos antes y después y lo que cambió la compensación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Closure, stations, residuals, and how it was done.</source>
      <translation>Cierre, estaciones, residuos y cómo se hizo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>From station</source>
      <translation>Desde la estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Name of the station where the leg starts.</source>
      <translation>Nombre de la estación donde empieza el lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>To station</source>
      <translation>Hasta la estación</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Name of the station where the leg ends.</source>
      <translation>Nombre de la estación donde acaba el lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Read at the start toward the end, a number or N45W.</source>
      <translation>Leído en el inicio hacia el final: un número o N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Read at the end toward the start. Without back bearings local attraction cannot be found.</source>
      <translation>Leído en el final hacia el inicio. Sin azimutes inversos no se puede hallar la atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Length of the leg.</source>
      <translation>Longitud del lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>What the distance is (choose one)</source>
      <translation>Qué es la distancia (elija una opción)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Along the line of sight needs the vertical angle.</source>
      <translation>A lo largo de la visual hace falta el ángulo vertical.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>along the line of sight</source>
      <translation>a lo largo de la visual</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>level already</source>
      <translation>ya horizontal</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Metres in one unit of the distances</source>
      <translation>Metros que vale la unidad de las distancias</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>0.3048 for feet; the length of your pace if you counted paces.</source>
      <translation>0,3048 para pies; la longitud de su paso si contó pasos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Read at the start toward the end, at eye height there.</source>
      <translation>Leído en el inicio hacia el final, a la altura de los ojos en este.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>What the vertical angle is</source>
      <translation>Qué es el ángulo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Start point</source>
      <translation>Punto de partida</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Where the traverse starts, in the CRS below unless it names its own.</source>
      <translation>Donde empieza la poligonal, en el SRC de abajo salvo que indique el suyo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Name of the start station</source>
      <translation>Nombre de la estación de partida</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Left empty: the station where the first row starts.</source>
      <translation>Si se deja vacío: la estación donde empieza la primera fila.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Height of the start station</source>
      <translation>Cota de la estación de partida</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Above sea level. Left empty: no heights are worked out.</source>
      <translation>Sobre el nivel del mar. Vacío: no se calculan alturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>CRS of the stations</source>
      <translation>SRC de las estaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Left empty: the one the start point names, else the layer's own.</source>
      <translation>Si se deja vacío: el que indique el punto de partida o, si no, el de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Second known point</source>
      <translation>Segundo punto conocido</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Where the traverse ends, if it ends at another known point; it closes there.</source>
      <translation>Donde acaba la poligonal, si acaba en otro punto conocido; cierra en él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Name of the station at the second point</source>
      <translation>Nombre de la estación del segundo punto</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Needed with the second known point.</source>
      <translation>Necesario con el segundo punto conocido.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Largest gap where the traverse closes, metres</source>
      <translation>Mayor error de cierre de la poligonal, en metros</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Length around that closure, metres</source>
      <translation>Longitud del recorrido de ese cierre, en metros</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Slope distances need vertical angles: give ANGLE_FIELD.</source>
      <translation>Las distancias inclinadas necesitan ángulos verticales: indique ANGLE_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Heights need vertical angles: give ANGLE_FIELD, or leave START_HEIGHT empty.</source>
      <translation>Las cotas necesitan ángulos verticales: indique ANGLE_FIELD o deje START_HEIGHT vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>END and END_STATION are needed together.</source>
      <translation>END y END_STATION van siempre juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>There is no leg in the table.</source>
      <translation>No hay ningún lado en la tabla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Compass traverse</source>
      <translation>Poligonal con brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>As read: a number, or text such as N45W.</source>
      <translation>Tal como se leyó: un número, o texto como N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>1-sigma. 1 is usual for a sighted bearing with a hand-held compass.</source>
      <translation>1 sigma. 1 es lo usual para un rumbo visado con una brújula de mano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>Uncertainty of a vertical angle</source>
      <translation>Incertidumbre de un ángulo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>Refraction</source>
      <translation>Refracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>Height of the eye</source>
      <translation>Altura del ojo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>Above the ground.</source>
      <translation>Sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/shared.py" />
      <source>{key}: there is no coordinate reference system that leads to places on Earth.</source>
      <translation>{key}: no hay un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Sight a set grade</source>
      <translation>Visar una pendiente fija</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>From a station, a bearing and a set vertical angle: the line over the ground of a DEM that climbs or falls at just that angle, such as a road, a ditch or a trail. It sets out in the direction nearest to the bearing, keeps to its side of the slope round spurs and up valleys, and makes no hairpins; line_end says how it ends: the ground is gentler than the grade, the DEM ends, the line is long enough, or it has come back to its beginning.

On request also the places that are seen from the station at that angle, all around.

The ground is that of the DEM: nothing is known of rock, water, old workings or whose land it is. Results support, and do not replace, licensed professional judgement and local codes. Steep ground is dangerous.</source>
      <translation>Desde una estación, un rumbo y un ángulo vertical fijado: la línea sobre el terreno de un MDE que sube o baja justo con ese ángulo, como un camino, una acequia o una senda. Parte en la dirección más cercana al rumbo, se mantiene en su lado de la ladera por espolones y valles, y no hace zigzag; line_end dice cómo acaba: el terreno es más suave que la pendiente, el MDE termina, la línea es bastante larga o ha vuelto a su comienzo.

A petición, también los lugares que se ven desde la estación con ese ángulo, en todo el contorno.

El terreno es el del MDE: nada se sabe de roca, agua, labores antiguas ni de quién es la tierra. Los resultados apoyan, y no sustituyen, el juicio profesional autorizado y las normas locales. El terreno escarpado es peligroso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Stations, one row a line</source>
      <translation>Estaciones, una fila por línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Points from which the lines set out.</source>
      <translation>Puntos de los que parten las líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>What the set angle is (choose one)</source>
      <translation>Qué es el ángulo fijado (elija uno)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Upward is positive.</source>
      <translation>Hacia arriba es positivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Set angle</source>
      <translation>Ángulo fijado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>For rows without one of their own.</source>
      <translation>Para filas sin uno propio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Set angle of each row</source>
      <translation>Ángulo fijado de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>The ground that the lines follow.</source>
      <translation>El terreno que siguen las líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Longest line</source>
      <translation>Línea más larga</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>On the map.</source>
      <translation>En el mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Between vertices. Left out: half a cell of the DEM.</source>
      <translation>Entre vértices. Si se omite: media celda del MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Curvature of a ray of light over that of the Earth.</source>
      <translation>Curvatura de un rayo de luz respecto a la de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Lines of constant grade</source>
      <translation>Líneas de pendiente constante</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>A line with heights for each station.</source>
      <translation>Una línea con alturas por cada estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Seen at that angle</source>
      <translation>Visto con ese ángulo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>The places that are seen from each station at its angle, as lines with heights.</source>
      <translation>Los lugares que se ven desde cada estación con su ángulo, como líneas con alturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_grade.py" />
      <source>Which grade? Give ANGLE or ANGLE_FIELD.</source>
      <translation>¿Qué pendiente? Dé ANGLE o ANGLE_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Sight to terrain</source>
      <translation>Visual al terreno</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>From a bearing and a vertical angle to the outcrop across the valley: where the sight first meets the ground of a DEM, how far that is and how high. Each row of the stations is one sight. Three such points on a bed that nobody can touch give its plane (Planes from points).

Sights bend with the curvature of the Earth and the refraction of the air. range is the horizontal distance on the ground; range_lo and range_hi are the ranges for a vertical angle one sigma lower and higher, and empty where such a sight meets no ground. sig_across is the error sideways that the bearing makes, sig_elev the error in height that the vertical angle makes over this distance, curv_refr the share of curvature and refraction in the height, all in metres.

A sight that leaves the DEM or the longest range without a hit is rejected as no_hit; one that passes over ground without heights, as dem_gap, since it may have met it there. Rejected rows have no geometry, so that no plane is laid through them.

With a second vertical angle, to the top of a cliff, a bench or a dump whose foot was sighted, obj_height is its height and sig_height the 1-sigma of it.</source>
      <translation>Del rumbo y el ángulo vertical al afloramiento del otro lado del valle: dónde encuentra la visual por primera vez el terreno de un MDE, a qué distancia y a qué cota. Cada fila de las estaciones es una visual. Tres de esos puntos en una capa que nadie puede tocar dan su plano (Planos a partir de puntos).

Las visuales se curvan por la curvatura de la Tierra y la refracción del aire. range es la distancia horizontal sobre el terreno; range_lo y range_hi son las distancias para un ángulo vertical 1 sigma menor y mayor, y quedan vacías donde tal visual no encuentra terreno. sig_across es el error lateral que causa el rumbo, sig_elev el error de cota que causa el ángulo vertical a esa distancia, curv_refr la parte de curvatura y refracción en la cota, todo en metros.

Una visual que sale del MDE o pasa de la distancia máxima sin encontrar terreno se rechaza como no_hit; la que pasa sobre terreno sin cotas, como dem_gap, pues pudo encontrarlo allí. Las filas rechazadas no tienen geometría, para que no se trace ningún plano por ellas.

Con un segundo ángulo vertical, a la cima de un escarpe, un banco o una escombrera cuyo pie se visó, obj_height es su altura y sig_height su 1 sigma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Stations, one row a sight</source>
      <translation>Estaciones, una fila por visual</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Points you sighted from. Positions are taken from the geometry.</source>
      <translation>Puntos desde los que se visó. Las posiciones se toman de la geometría.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>As read with the clinometer of the compass.</source>
      <translation>Tal como se leyó en el clinómetro de la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>What the vertical angle is (choose one)</source>
      <translation>Qué es el ángulo vertical (elija una opción)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Vertical angle to the top</source>
      <translation>Ángulo vertical a la cima</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Of an object whose foot the vertical angle is of; counted in the same. Empty: no height is wanted.</source>
      <translation>De un objeto a cuyo pie corresponde el ángulo vertical; se cuenta igual. Vacío: no se quiere altura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Heights of the ground that the sights meet.</source>
      <translation>Cotas del terreno que cortan las visuales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Height of the ground at the station; where it is empty, that of the DEM.</source>
      <translation>Altura del terreno en la estación; donde está vacío, la del MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Height of the eye of each row</source>
      <translation>Altura del ojo de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Metres. Empty rows use the one above.</source>
      <translation>Metros. Las filas vacías usan la de arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Longest range</source>
      <translation>Alcance máximo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>No sight is followed farther.</source>
      <translation>Ninguna visual se sigue más lejos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Sighted places</source>
      <translation>Puntos visados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>A point with its height where each sight first meets the ground.</source>
      <translation>Un punto con su cota donde cada visual corta por primera vez el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>The sights as lines with heights, from the eye to where they end, also where they meet nothing.</source>
      <translation>Las visuales como líneas con cotas, desde el ojo hasta donde acaban, aunque no corten nada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>without end</source>
      <translation>infinito</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>With both, rows that have a time are of the sun and the others along known lines.</source>
      <translation>Con ambos, las filas que llevan hora son del sol y las demás de líneas conocidas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>known lines</source>
      <translation>líneas conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>the sun or a shadow</source>
      <translation>el sol o una sombra</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>both</source>
      <translation>ambos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Time of each sight of the sun</source>
      <translation>Hora de cada visual al sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>The shadow was read</source>
      <translation>Se leyó la sombra</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>The bearing of the shadow, away from the sun.</source>
      <translation>El rumbo de la sombra, en sentido contrario al sol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Whether each row is of the shadow</source>
      <translation>Si cada fila es de la sombra</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Yes or no. Empty rows go by the box above.</source>
      <translation>Sí o no (yes o no). Las filas vacías siguen la casilla de arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Which side of the sun</source>
      <translation>Qué lado del sol</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Where it was sighted. A shadow has no side.</source>
      <translation>Dónde se visó. Una sombra no tiene lado.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>centre</source>
      <translation>centro</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>left</source>
      <translation>izquierda</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>right</source>
      <translation>derecha</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Side of the sun of each row</source>
      <translation>Lado del sol de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Centre, left or right. Empty rows go by the choice above.</source>
      <translation>Centre, left o right. Las filas vacías siguen la opción de arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>Uncertainty of the clock</source>
      <translation>Incertidumbre del reloj</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>1-sigma, the same for all sights of a day. A time written to the minute is good to 17 s.</source>
      <translation>1 sigma, la misma para todas las visuales de un día. Una hora anotada al minuto vale hasta 17 s.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>s</source>
      <translation>s</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sun_rows.py" />
      <source>A sight of the sun needs its time: give TIME_FIELD.</source>
      <translation>Una visual al sol necesita su hora: indique TIME_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_legs.py" />
      <source>{key}: no leg starts or ends at a station "{name}".</source>
      <translation>{key}: ningún lado empieza ni acaba en una estación «{name}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_legs.py" />
      <source>{key} is no place on Earth in the CRS.</source>
      <translation>{key} no es un lugar de la Tierra en ese SRC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_legs.py" />
      <source>START_STATION and END_STATION are the same station.</source>
      <translation>START_STATION y END_STATION son la misma estación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Bearings were counted from true north where they were read. A leg whose fore and back bearing agree is taken as free of local attraction at both ends, and corrections are carried on from there; where they meet and disagree, the rest is spread evenly. Two stations attracted alike look free too: bearings alone cannot tell. Where no free leg leads, the mean of fore bearing and back bearing turned round was taken. What the traverse misses by was spread over the legs in proportion to their length. Uncertainties are 1-sigma.</source>
      <translation>Los azimutes se refirieron al norte verdadero del lugar donde se leyeron. Un lado cuyos azimutes directo e inverso concuerdan se toma como libre de atracción local en ambos extremos, y desde él se llevan las correcciones; donde se encuentran y no coinciden, la diferencia se reparte por igual. Dos estaciones atraídas por igual también parecen libres: los azimutes solos no lo distinguen. Adonde no llega ningún lado libre, se tomó la media del azimut directo y del inverso girado 180 grados. El error de cierre de la poligonal se repartió entre los lados en proporción a su longitud. Las incertidumbres son de 1 sigma.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Where it closes</source>
      <translation>Dónde cierra</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Nowhere: the traverse is open, and nothing checks its legs.</source>
      <translation>En ningún sitio: la poligonal es abierta y nada comprueba sus lados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>closing leg</source>
      <translation>lado de cierre</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>east, m</source>
      <translation>este, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>north, m</source>
      <translation>norte, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>gap, m</source>
      <translation>error de cierre, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>around, m</source>
      <translation>recorrido, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>one in</source>
      <translation>uno en</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>legs</source>
      <translation>lados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>add for local attraction</source>
      <translation>sumar por atracción local</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>how that is known</source>
      <translation>cómo se conoce</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>moved by closing, m</source>
      <translation>desplazamiento por el cierre, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>uncertainty, m</source>
      <translation>incertidumbre, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>an end of a clean line</source>
      <translation>extremo de una línea limpia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>carried on</source>
      <translation>llevada desde otra</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>not known</source>
      <translation>no se conoce</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>{count} more stations are in the layer.</source>
      <translation>Hay {count} estaciones más en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Slip on faults</source>
      <translation>Desplazamiento en fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Finds the net slip of faults and its parts from the separation of an offset marker, a bed or a dike, and the slip line on the fault. Each result has the uncertainty that what is put in gives it.

Slip is that of the hanging wall. strike_slp is positive sinistral (to the left across the fault), dip_slip positive down the dip (normal), throw positive down. Where the slip runs within 10 degrees of the marker's trace on the fault, the marker is hardly moved by it and the row is rejected: its separation says nothing about the slip.</source>
      <translation>Halla el desplazamiento neto de fallas y sus componentes a partir de la separación de un marcador desplazado, una capa o un dique, y de la línea de desplazamiento en la falla. Cada resultado tiene la incertidumbre que le da lo que se introduce.

El desplazamiento es el del bloque de techo. strike_slp es positivo sinistral (a la izquierda a través de la falla), dip_slip positivo buzamiento abajo (normal), throw positivo hacia abajo. Donde el desplazamiento corre a menos de 10 grados de la traza del marcador en la falla, apenas mueve el marcador y la fila se rechaza: su separación no dice nada sobre el desplazamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Points or a table: one row a fault.</source>
      <translation>Puntos o una tabla: una fila por falla.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Strike of the fault</source>
      <translation>Rumbo de la falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Dip of the fault</source>
      <translation>Buzamiento de la falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Rake of the slip line</source>
      <translation>Cabeceo de la línea de desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>0 to 180 from the strike with the dip to its right. Instead of trend and plunge.</source>
      <translation>0 a 180 desde el rumbo con el buzamiento a su derecha. En lugar de dirección e inmersión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Trend of the slip line</source>
      <translation>Dirección de la línea de desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>True, downward end.</source>
      <translation>Verdadera, extremo inferior.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Plunge of the slip line</source>
      <translation>Inmersión de la línea de desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Sense of slip</source>
      <translation>Sentido del desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>normal, reverse, dextral or sinistral.</source>
      <translation>normal, reverse, dextral o sinistral.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Your words for senses of slip</source>
      <translation>Sus palabras para los sentidos de desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Such as: N=normal;R=reverse</source>
      <translation>Como: N=normal;R=reverse</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Strike of the marker</source>
      <translation>Rumbo del marcador</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Dip of the marker</source>
      <translation>Buzamiento del marcador</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Separation of the marker</source>
      <translation>Separación del marcador</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Metres, from the marker in the footwall to the marker in the hanging wall: positive along the strike, down the dip, or downward.</source>
      <translation>Metros, desde el marcador en el bloque de piso hasta el marcador en el bloque de techo: positiva a lo largo del rumbo, buzamiento abajo, o hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Along what the separation was measured</source>
      <translation>A lo largo de qué se midió la separación</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>In the fault, or straight down.</source>
      <translation>En la falla, o verticalmente hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>along the strike of the fault</source>
      <translation>a lo largo del rumbo de la falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>down the dip of the fault</source>
      <translation>buzamiento abajo de la falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>The faults with their net slip and its parts.</source>
      <translation>Las fallas con su desplazamiento neto y sus componentes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Counts, conventions, and what was noticed.</source>
      <translation>Recuentos, convenciones y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Uncertainty of the fault's pole</source>
      <translation>Incertidumbre del polo de la falla</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Uncertainty of the slip line's rake</source>
      <translation>Incertidumbre del cabeceo de la línea de desplazamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Uncertainty of the marker's pole</source>
      <translation>Incertidumbre del polo del marcador</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>Uncertainty of the separation</source>
      <translation>Incertidumbre de la separación</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>RAKE_FIELD is given together with TREND_FIELD or PLUNGE_FIELD: the slip line is one of them.</source>
      <translation>RAKE_FIELD se da junto con TREND_FIELD o PLUNGE_FIELD: la línea de desplazamiento es uno de ellos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fault_slip.py" />
      <source>The slip line is needed: give RAKE_FIELD, or TREND_FIELD and PLUNGE_FIELD.</source>
      <translation>Hace falta la línea de desplazamiento: dé RAKE_FIELD, o TREND_FIELD y PLUNGE_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Figures side by side</source>
      <translation>Figuras por fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Each is 85 mm wide. 0: about as many as there are rows.</source>
      <translation>Cada una tiene 85 mm de ancho. 0: más o menos tantas como filas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Size of the small figures on the map</source>
      <translation>Tamaño de las figuras pequeñas en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Printed at this width whatever the scale.</source>
      <translation>Se imprimen con este ancho a cualquier escala.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Small figures on the map</source>
      <translation>Figuras pequeñas en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>A point in the middle of each group, drawn as a small figure.</source>
      <translation>Un punto en el centro de cada grupo, dibujado como una figura pequeña.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>The figure, a table of the groups, and what was noticed.</source>
      <translation>La figura, una tabla de los grupos y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/figure_block.py" />
      <source>Of {count} groups the first {most} have a small figure on the map.</source>
      <translation>De {count} grupos, los primeros {most} tienen una figura pequeña en el mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Fold axis</source>
      <translation>Eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Finds the axis of each fold: of the girdle that its beds' poles lie on, or where bedding meets cleavage. It says how sure the axis is, whether the fold is a cylinder or a cone, what angle is between its limbs and which plane bisects them.

The angle between the limbs needs to know which way up the beds are; without, both values are given and the row says so. The bisecting plane is called axial plane only where a mapped axial trace or a cleavage shows it: bis_from says which. The axis of a conical fold does not carry beds far: such rows are warned.

The output has the fields trend, plunge and sig_pole by which the section tools take fold axes from a layer.</source>
      <translation>Halla el eje de cada pliegue: el de la guirnalda en que están los polos de sus capas, o el de la intersección de estratificación y clivaje. Dice cuán seguro es el eje, si el pliegue es un cilindro o un cono, qué ángulo hay entre sus flancos y qué plano los biseca.

El ángulo entre los flancos necesita la polaridad de las capas; sin ella se dan ambos valores y la fila lo dice. El plano bisector se llama plano axial solo donde una traza axial cartografiada o un clivaje lo muestra: bis_from dice cuál. El eje de un pliegue cónico no lleva las capas lejos: esas filas se advierten.

La salida tiene los campos trend, plunge y sig_pole con los que las herramientas de cortes toman ejes de pliegue de una capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Points with true attitudes of the beds of folds.</source>
      <translation>Puntos con orientaciones verdaderas de las capas de pliegues.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Where the axis comes from</source>
      <translation>De dónde sale el eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Where bedding meets cleavage, the two kinds are those named below.</source>
      <translation>Donde la estratificación corta al clivaje, los dos tipos son los que se nombran abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>the girdle of the poles</source>
      <translation>la guirnalda de los polos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>where bedding meets cleavage</source>
      <translation>donde la estratificación corta al clivaje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Kind of the cleavage</source>
      <translation>Tipo del clivaje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Readings of this kind are the cleavage of the fold, all others its beds.</source>
      <translation>Las lecturas de este tipo son el clivaje del pliegue; todas las demás, sus capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>Azimuth of the mapped axial trace</source>
      <translation>Azimut de la traza axial cartografiada</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>On ground that is about level. With it the plane through the axis and the trace is the axial plane.</source>
      <translation>En terreno más o menos llano. Con ella, el plano que pasa por el eje y la traza es el plano axial.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>One point a group, with its symbol; for the section tools.</source>
      <translation>Un punto por grupo, con su símbolo; para las herramientas de cortes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>The axes with their regions, limbs and planes, and what was noticed.</source>
      <translation>Los ejes con sus regiones, los flancos y planos, y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Readings that could not be used</source>
      <translation>Lecturas que no se pudieron usar</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/fold_axis.py" />
      <source>AXIS_FROM is cleavage, but KIND leaves out {kind}, the kind of the cleavage.</source>
      <translation>AXIS_FROM es cleavage, pero KIND deja fuera {kind}, el tipo del clivaje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Mean orientations</source>
      <translation>Orientaciones medias</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Gives the mean of each group of attitudes with the cone that holds the true mean with 95 per cent confidence, and the shape of the readings: eigenvalues, K (above 1 a cluster, below 1 a girdle), strength, the axis of the best girdle, and whether they could be an even spread.

Planes and lines without a sense are averaged as axes: two beds that dip 85 degrees east and west have a vertical mean. A mean that is not defined is left empty, with a code that says why; it is never a number. The point of a group lies in the middle of its readings.</source>
      <translation>Da la media de cada grupo de orientaciones con el cono que contiene la media verdadera con un 95 por ciento de confianza, y la forma de las lecturas: autovalores, K (más de 1, un conjunto; menos de 1, una guirnalda), intensidad, el eje de la mejor guirnalda y si podrían ser un reparto uniforme.

Los planos y las líneas sin sentido se promedian como ejes: dos capas que buzan 85 grados al este y al oeste tienen una media vertical. Una media que no está definida queda vacía, con un código que dice por qué; nunca es un número. El punto de un grupo está en el centro de sus lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Points with true attitudes, such as the output of the correction.</source>
      <translation>Puntos con orientaciones verdaderas, como la salida de la corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>What is averaged</source>
      <translation>Qué se promedia</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Azimuths alone are trends of lines and dip directions of planes, whatever the plunge or dip.</source>
      <translation>Los azimutes solos son direcciones de líneas y direcciones de buzamiento de planos, sea cual sea la inmersión o el buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>lines without a sense</source>
      <translation>líneas sin sentido</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>lines with a sense, toward their downward end</source>
      <translation>líneas con sentido, hacia su extremo inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>azimuths alone</source>
      <translation>azimutes solos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Size of the sectors of confidence</source>
      <translation>Tamaño de los sectores de confianza</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>On the ground: how far they reach from the middle of a group.</source>
      <translation>En el terreno: hasta dónde llegan desde el centro de un grupo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>One point a group, with its symbol.</source>
      <translation>Un punto por grupo, con su símbolo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>Sectors of confidence</source>
      <translation>Sectores de confianza</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>One area a group: the azimuths that its strike or trend has with 95 per cent confidence.</source>
      <translation>Un área por grupo: los azimutes que tiene su rumbo o dirección con un 95 por ciento de confianza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/mean_orientations.py" />
      <source>The means, how they were found, and what was noticed.</source>
      <translation>Las medias, cómo se hallaron y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>{count} great circles would cover the net; planes are shown as poles.</source>
      <translation>{count} círculos máximos taparían la red; los planos se muestran como polos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>poles of planes</source>
      <translation>polos de planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>plane of a section toward {azimuth:03.0f}</source>
      <translation>plano de un corte hacia {azimuth:03.0f}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>small circles {list}</source>
      <translation>círculos menores {list}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>Senses of slip that are not known: {count}.</source>
      <translation>Sentidos de desplazamiento desconocidos: {count}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>slip of the hanging wall</source>
      <translation>desplazamiento del bloque de techo</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>slip lines without a sense</source>
      <translation>líneas de desplazamiento sin sentido</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>The poles form no girdle.</source>
      <translation>Los polos no forman guirnalda.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>best girdle</source>
      <translation>mejor guirnalda</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>axis of the girdle {axis}</source>
      <translation>eje de la guirnalda {axis}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>its region, 95 % confidence: {wide:.0f} by {narrow:.0f} degrees</source>
      <translation>su región, 95 % de confianza: {wide:.0f} por {narrow:.0f} grados</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>None of the directions stands out, so there is no mean.</source>
      <translation>Ninguna dirección destaca, así que no hay media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>pole of the mean plane {plane}</source>
      <translation>polo del plano medio {plane}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>mean line {plane}</source>
      <translation>línea media {plane}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>mean plane</source>
      <translation>plano medio</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/net_panels.py" />
      <source>How sure the mean is cannot be said: too few readings, or all alike.</source>
      <translation>No se puede decir cuán segura es la media: muy pocas lecturas, o todas iguales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Orientation net</source>
      <translation>Red de orientaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Draws attitudes on a net, one net a group: planes as poles or great circles, lines, slip on faults, contours of density, the mean with its cone, the girdle with its axis and its region, the plane of a section, small circles. Each net is 85 mm wide, one column of a page, and says its number of readings, projection and hemisphere.

To read map and net together, choose readings on the map and run it on selected features only. Above 250 readings dots stand for the readings of a cell, so that none covers another. Contours are in multiples of an even spread and the same on either net.</source>
      <translation>Dibuja orientaciones en una red, una por grupo: planos como polos o círculos máximos, líneas, desplazamiento en fallas, isolíneas de densidad, la media con su cono, la guirnalda con su eje y su región, el plano de un corte, círculos menores. Cada red tiene 85 mm de ancho, una columna de página, y dice su número de lecturas, proyección y hemisferio.

Para leer juntos mapa y red, elija lecturas en el mapa y ejecútela solo con los objetos seleccionados. Por encima de 250 lecturas los puntos representan las lecturas de una celda, de modo que ninguno tapa a otro. Las isolíneas están en múltiplos de un reparto uniforme y son las mismas en ambas redes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Points with true attitudes, of planes and lines.</source>
      <translation>Puntos con orientaciones verdaderas, de planos y líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Net</source>
      <translation>Red</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>On an equal-area net densities can be compared; on an equal-angle net circles are circles.</source>
      <translation>En una red equiareal se pueden comparar densidades; en una red conforme los círculos son círculos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>equal-area</source>
      <translation>equiareal</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>equal-angle</source>
      <translation>conforme</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Hemisphere</source>
      <translation>Hemisferio</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>The half of the sphere that is seen, from above in both cases.</source>
      <translation>La mitad de la esfera que se ve, desde arriba en ambos casos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>lower</source>
      <translation>inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>upper</source>
      <translation>superior</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>How planes are drawn.</source>
      <translation>Cómo se dibujan los planos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>as poles</source>
      <translation>como polos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>as great circles</source>
      <translation>como círculos máximos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>as both</source>
      <translation>como ambos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>not at all</source>
      <translation>no se dibujan</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Contours of density</source>
      <translation>Isolíneas de densidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Of poles and lines together.</source>
      <translation>De polos y líneas juntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Mean and its cone</source>
      <translation>Media y su cono</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Of axes without a sense: of poles, or of lines.</source>
      <translation>De ejes sin sentido: de polos, o de líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Girdle and its axis</source>
      <translation>Guirnalda y su eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Of the poles of folded beds.</source>
      <translation>De los polos de capas plegadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Azimuth of a section</source>
      <translation>Azimut de un corte</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>The vertical plane of a section is drawn along this azimuth.</source>
      <translation>El plano vertical de un corte se dibuja en este azimut.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Small circles</source>
      <translation>Círculos menores</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Trend, plunge and radius of each, such as: 120 30 20; 045 10 15</source>
      <translation>Dirección, inmersión y radio de cada uno, como: 120 30 20; 045 10 15</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Of fault planes: 0 to 180 from the strike with the dip to its right. Drawn as an arrow.</source>
      <translation>De planos de falla: 0 a 180 desde el rumbo con el buzamiento a su derecha. Se dibuja como flecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>normal, reverse, dextral or sinistral. Without a sense slip lines are drawn as dots.</source>
      <translation>normal, reverse, dextral o sinistral. Sin sentido, las líneas de desplazamiento se dibujan como puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Nets drawn</source>
      <translation>Redes dibujadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>No reading can be shown.</source>
      <translation>Ninguna lectura se puede mostrar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>Of {count} groups the first {most} have a net.</source>
      <translation>De {count} grupos, los primeros {most} tienen red.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>SMALL_CIRCLES: {entry} is no trend, plunge and radius.</source>
      <translation>SMALL_CIRCLES: {entry} no es dirección, inmersión y radio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/orientation_net.py" />
      <source>SENSE_FIELD needs RAKE_FIELD: a sense is that of a slip line.</source>
      <translation>SENSE_FIELD necesita RAKE_FIELD: un sentido es el de una línea de desplazamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Kinds of structure</source>
      <translation>Tipos de estructura</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Only readings of these kinds are used; without a choice all of them.</source>
      <translation>Solo se usan lecturas de estos tipos; sin elección, todas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Which readings belong together</source>
      <translation>Qué lecturas van juntas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>One group for each value. Without a field, zones or a grid all readings are one group.</source>
      <translation>Un grupo por cada valor. Sin campo, zonas ni cuadrícula, todas las lecturas son un grupo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Zones</source>
      <translation>Zonas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Areas: one group for each. A reading in two areas counts in the first.</source>
      <translation>Áreas: un grupo por cada una. Una lectura en dos áreas cuenta en la primera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Name of each zone</source>
      <translation>Nombre de cada zona</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Without it zones are numbered.</source>
      <translation>Sin él las zonas se numeran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Side of squares</source>
      <translation>Lado de los cuadrados</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Readings are grouped by squares of this side, counted from the middle of all readings.</source>
      <translation>Las lecturas se agrupan por cuadrados de este lado, contados desde el centro de todas las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Weight readings by their uncertainty</source>
      <translation>Ponderar las lecturas por su incertidumbre</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>By 1 / (sigma^2 + scatter^2), the scatter of the rock being estimated from the readings.</source>
      <translation>Por 1 / (sigma^2 + dispersión^2); la dispersión de la roca se estima de las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>1-sigma of the pole or line, degrees.</source>
      <translation>1-sigma del polo o de la línea, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>1-sigma of the pole or line.</source>
      <translation>1-sigma del polo o de la línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>{first} and {second} cannot be given together: readings are grouped in one way.</source>
      <translation>{first} y {second} no se pueden dar a la vez: las lecturas se agrupan de una sola manera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>Readings of other kinds, left out: {count}</source>
      <translation>Lecturas de otros tipos, dejadas fuera: {count}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reading.py" />
      <source>all readings</source>
      <translation>todas las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>{read} readings read, {used} used, {rejected} rejected; {others} of other kinds were left out.</source>
      <translation>{read} lecturas leídas, {used} usadas, {rejected} rechazadas; {others} de otros tipos se dejaron fuera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>What was noticed about groups</source>
      <translation>Lo que se observó en los grupos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Means</source>
      <translation>Medias</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>n</source>
      <translation>n</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>95 % range</source>
      <translation>Rango del 95 %</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>kappa</source>
      <translation>kappa</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Strike/dip</source>
      <translation>Rumbo/buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Trend/plunge</source>
      <translation>Dirección/inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>95 % cone</source>
      <translation>Cono del 95 %</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Eigenvalues</source>
      <translation>Autovalores</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Axis of the girdle</source>
      <translation>Eje de la guirnalda</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Vector mean of azimuths. Its range of 95 per cent confidence: by likelihood below 25 readings (Zar 2010), by dispersion from 25 (Fisher 1993). kappa of the von Mises distribution.</source>
      <translation>Media vectorial de azimutes. Su rango de confianza del 95 por ciento: por verosimilitud con menos de 25 lecturas (Zar 2010), por dispersión desde 25 (Fisher 1993). kappa de la distribución de von Mises.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Means weighted by 1 / (sigma^2 + scatter^2), the scatter such that the weighted squares equal their number (Paule and Mandel 1982). Eigenvalues and shape are not weighted.</source>
      <translation>Medias ponderadas por 1 / (sigma^2 + dispersión^2), con la dispersión tal que los cuadrados ponderados igualen su número (Paule y Mandel 1982). Los autovalores y la forma no se ponderan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Vector mean, kappa and cone of Fisher (1953); below 16 readings kappa in its small-sample form. K and C after Woodcock (1977).</source>
      <translation>Media vectorial, kappa y cono de Fisher (1953); con menos de 16 lecturas, kappa en su forma para muestras pequeñas. K y C según Woodcock (1977).</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Mean axis: the first axis of the orientation tensor (Scheidegger 1965). Its region: Hotelling's, with F(2, n - 2), of which the longer half angle is given. K and C after Woodcock (1977). Even spread: Bingham's test.</source>
      <translation>Eje medio: el primer eje del tensor de orientación (Scheidegger 1965). Su región: la de Hotelling, con F(2, n - 2), de la que se da el semiángulo mayor. K y C según Woodcock (1977). Reparto uniforme: prueba de Bingham.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Axes</source>
      <translation>Ejes</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>cylinder</source>
      <translation>cilindro</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>cone</source>
      <translation>cono</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>undetermined</source>
      <translation>indeterminada</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Beds</source>
      <translation>Capas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Axis</source>
      <translation>Eje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>95 % region</source>
      <translation>Región del 95 %</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Bootstrap</source>
      <translation>Remuestreo</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Shape</source>
      <translation>Forma</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Axis of the cone</source>
      <translation>Eje del cono</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Its radius</source>
      <translation>Su radio</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Limbs</source>
      <translation>Flancos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>bisecting plane</source>
      <translation>plano bisector</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>axial plane, by the mapped trace</source>
      <translation>plano axial, por la traza cartografiada</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>axial plane, by cleavage</source>
      <translation>plano axial, por el clivaje</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Beds in the limbs</source>
      <translation>Capas en los flancos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Strike/dip of the plane</source>
      <translation>Rumbo/buzamiento del plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>What plane</source>
      <translation>Qué plano</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>The axis is that of the least eigenvalue of the poles' orientation tensor; its region is that of least squares with F(2, n - 2), which holds for few beds as for many; a bootstrap stands beside it from 30 beds. A cone is believed where a girdle would fit so badly in fewer than 5 of 100 cases.</source>
      <translation>El eje es el del menor autovalor del tensor de orientación de los polos; su región es la de mínimos cuadrados con F(2, n - 2), que vale para pocas capas como para muchas; desde 30 capas se da al lado un remuestreo. Se cree en un cono donde una guirnalda se ajustaría tan mal en menos de 5 de 100 casos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>The axis is the line in which the mean bedding plane meets the mean cleavage plane.</source>
      <translation>El eje es la línea en que el plano medio de estratificación corta al plano medio de clivaje.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>{one} or {other}</source>
      <translation>{one} o {other}</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Domains are drafts: constructed from readings by the test below, not measured.</source>
      <translation>Los dominios son borradores: construidos a partir de las lecturas con la prueba de abajo, no medidos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Domains</source>
      <translation>Dominios</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>{read} readings, {done} of them in domains, {rejected} rejected or in none.</source>
      <translation>{read} lecturas, {done} de ellas en dominios, {rejected} rechazadas o en ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Neighbouring pieces of at least {least} readings were joined, the least loss of fit first (Ward 1963), unless their axes would differ so much by chance in fewer than {level:g} per cent of cases, shared among all pieces. The scatter of readings off the girdles is {scatter} degrees.</source>
      <translation>Se unieron piezas vecinas de al menos {least} lecturas, primero las que menos pierden en el ajuste (Ward 1963), salvo que sus ejes difirieran tanto por azar en menos del {level:g} por ciento de los casos, repartido entre todas las piezas. La dispersión de las lecturas respecto de las guirnaldas es de {scatter} grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Nets of attitudes, one a group; the table below says what they show.</source>
      <translation>Redes de orientaciones, una por grupo; la tabla de abajo dice lo que muestran.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>What the nets show</source>
      <translation>Lo que muestran las redes</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Shown</source>
      <translation>Mostrado</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Densities are counted on the sphere with the exponential weight of Robin and Jowett (1986), in multiples of an even spread; contours begin at twice it, three standard deviations above (Kamb 1959). Regions of means are Hotelling's, those of girdle axes least squares'.</source>
      <translation>Las densidades se cuentan en la esfera con el peso exponencial de Robin y Jowett (1986), en múltiplos de un reparto uniforme; las isolíneas empiezan en el doble, tres desviaciones típicas por encima (Kamb 1959). Las regiones de las medias son las de Hotelling; las de los ejes de guirnalda, las de mínimos cuadrados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>Roses of azimuths, one a group; the table below has their means.</source>
      <translation>Rosas de azimutes, una por grupo; la tabla de abajo tiene sus medias.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>{read} faults read, {done} with a slip, {rejected} rejected.</source>
      <translation>{read} fallas leídas, {done} con desplazamiento, {rejected} rechazadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/reports.py" />
      <source>The marker's plane is moved by the slip: slip times (n . s) is separation times (n . d), with the marker's normal n, the slip line s and the direction d along which the separation was measured. Uncertainties put in, 1-sigma: fault {fault}, rake {rake}, marker {marker} degrees, separation {length} m.</source>
      <translation>El plano del marcador se mueve con el desplazamiento: desplazamiento por (n . s) es separación por (n . d), con la normal n del marcador, la línea de desplazamiento s y la dirección d en que se midió la separación. Incertidumbres supuestas, 1-sigma: falla {fault}, cabeceo {rake}, marcador {marker} grados, separación {length} m.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Rose diagram</source>
      <translation>Diagrama de rosa</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Draws how azimuths are spread over the compass, one rose a group. The areas of petals are as the numbers of readings, not their lengths, which would make many readings look like more than they are. Strikes and trends without a sense are counted in two opposite petals each.

The mean is drawn with the range that holds the true one with 95 per cent confidence; where azimuths have no mean, none is drawn.</source>
      <translation>Dibuja cómo se reparten los azimutes por la brújula, una rosa por grupo. Las áreas de los pétalos son como los números de lecturas, no sus longitudes, que harían parecer muchas lecturas más de lo que son. Los rumbos y las direcciones sin sentido se cuentan en dos pétalos opuestos.

La media se dibuja con el rango que contiene la verdadera con un 95 por ciento de confianza; donde los azimutes no tienen media, no se dibuja ninguna.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Points with true attitudes, of planes or lines.</source>
      <translation>Puntos con orientaciones verdaderas, de planos o líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>What is drawn</source>
      <translation>Qué se dibuja</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Level planes have no strike, vertical lines no trend: they are left out and counted.</source>
      <translation>Los planos horizontales no tienen rumbo, ni las líneas verticales dirección: se dejan fuera y se cuentan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>strikes of planes, without a sense</source>
      <translation>rumbos de planos, sin sentido</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>dip directions of planes</source>
      <translation>direcciones de buzamiento de planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>trends of lines, toward their downward end</source>
      <translation>direcciones de líneas, hacia su extremo inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>trends of lines, without a sense</source>
      <translation>direcciones de líneas, sin sentido</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Width of the petals</source>
      <translation>Ancho de los pétalos</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>In degrees.</source>
      <translation>En grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Roses drawn</source>
      <translation>Rosas dibujadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>{count} readings have no azimuth: level planes, or vertical lines.</source>
      <translation>{count} lecturas no tienen azimut: planos horizontales o líneas verticales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Of {count} groups the first {most} have a rose.</source>
      <translation>De {count} grupos, los primeros {most} tienen rosa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>The azimuths have no mean.</source>
      <translation>Los azimutes no tienen media.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/rose_diagram.py" />
      <source>Nothing tells these azimuths from an even spread (probability {value:.2f}).</source>
      <translation>Nada distingue estos azimutes de un reparto uniforme (probabilidad {value:.2f}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Structural domains</source>
      <translation>Dominios estructurales</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Draws the parts of the map within which the beds fit one fold axis: neighbouring readings are joined as long as the difference of their axes could be chance, held against the scatter of the rock, which is estimated from the readings.

Domains are drafts: their edges lie half-way between readings, and another test or more readings would move them. A reading that fits no axis, or not that of its domain, is listed and marked. The areas have the fields trend, plunge and sig_pole by which the section tools take fold axes from a layer.</source>
      <translation>Dibuja las partes del mapa en que las capas se ajustan a un eje de pliegue: se unen lecturas vecinas mientras la diferencia de sus ejes pueda ser azar, frente a la dispersión de la roca, que se estima de las lecturas.

Los dominios son borradores: sus bordes están a medio camino entre lecturas, y otra prueba o más lecturas los moverían. Una lectura que no se ajusta a ningún eje, o no al de su dominio, se lista y se marca. Las áreas tienen los campos trend, plunge y sig_pole con los que las herramientas de cortes toman ejes de pliegue de una capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Points with true attitudes of beds.</source>
      <translation>Puntos con orientaciones verdaderas de capas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Readings of the smallest piece</source>
      <translation>Lecturas de la pieza más pequeña</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Pieces of the map that are joined to domains hold at least so many.</source>
      <translation>Las piezas del mapa que se unen en dominios tienen al menos tantas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Level of the test</source>
      <translation>Nivel de la prueba</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Two pieces are kept apart where their axes would differ so much by chance in fewer cases, in per cent.</source>
      <translation>Dos piezas se mantienen separadas donde sus ejes diferirían tanto por azar en menos casos, en por ciento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>One area a domain, with its fold axis; for the section tools.</source>
      <translation>Un área por dominio, con su eje de pliegue; para las herramientas de cortes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Readings with their domain</source>
      <translation>Lecturas con su dominio</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>The readings, each with the number of its domain, how far it lies off its girdle, and what was noticed.</source>
      <translation>Las lecturas, cada una con el número de su dominio, cuánto se aparta de su guirnalda y lo que se observó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>The domains, the test, and which readings fit nowhere.</source>
      <translation>Los dominios, la prueba y qué lecturas no encajan en ninguno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>Domains found</source>
      <translation>Dominios hallados</translation>
    </message>
    <message>
      <location filename="../processing_algs/statistics/structural_domains.py" />
      <source>No domain was found: nowhere do the beds fit one axis that is known within 30 degrees.</source>
      <translation>No se halló ningún dominio: en ninguna parte las capas se ajustan a un eje que se conozca dentro de 30 grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/attitude_rows.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Fields used: {fields}.</source>
      <translation>Campos usados: {fields}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/attitude_rows.py" />
      <source>Rows that do not say their kind are read as {kind}, since all rows are lines.</source>
      <translation>Las filas que no indican su tipo se leen como {kind}, porque todas las filas son líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/shared.py" />
      <source>Style file</source>
      <translation>Archivo de estilo</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/shared.py" />
      <source>The style alone, for other layers with the same fields. The output has its style in any case.</source>
      <translation>Solo el estilo, para otras capas con los mismos campos. La salida lleva su estilo en todo caso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/shared.py" />
      <source>QGIS style files (*.qml)</source>
      <translation>Archivos de estilo de QGIS (*.qml)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Style attitudes</source>
      <translation>Simbolizar orientaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Gives any point layer of attitudes the symbols of FGDC-STD-013-2006: bedding, cleavage, foliation, joints, faults, veins, dikes, lineations, slickenlines and fold axes, inclined, horizontal and vertical, upright and overturned, with the dip beside each symbol on its lower side.

The symbols point the right way in whatever projection the map has, follow its rotation, and need nothing but QGIS to be drawn. The fields the style needs are added; all others stay as they are.

Azimuths must be from true or grid north. Readings of a compass go through Correct compass readings first, which draws them too. For a layer that Agonic wrote, leave the fields of azimuth and dip empty: its own strike, dip, trend and plunge are taken.

A row that cannot be drawn gets a mark of its own, and the reason in the field remark.</source>
      <translation>Da a cualquier capa de puntos con orientaciones los símbolos de FGDC-STD-013-2006: estratificación, clivaje, foliación, diaclasas, fallas, venas, diques, lineaciones, estrías de falla y ejes de pliegue; inclinados, horizontales y verticales; normales e invertidos; con el buzamiento junto a cada símbolo, del lado hacia el que buza.

Los símbolos quedan bien orientados en cualquier proyección que tenga el mapa, siguen su rotación y solo necesitan QGIS para dibujarse. Se añaden los campos que el estilo necesita; los demás quedan como están.

Los azimutes deben contarse desde el norte verdadero o el de cuadrícula. Las lecturas de brújula pasan antes por «Corregir lecturas de brújula», que también las dibuja. En una capa escrita por Agonic, deje vacíos los campos de azimut y buzamiento: se toman sus propios strike, dip, trend y plunge.

La fila que no se puede dibujar lleva una marca propia y el motivo en el campo remark.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Point layer, one row a plane or line.</source>
      <translation>Capa de puntos, una fila por plano o línea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Styled attitudes</source>
      <translation>Orientaciones simbolizadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>The input's fields, then strike and trend from true north, symbol, label and what was noticed.</source>
      <translation>Los campos de la entrada y, a continuación, rumbo y azimut de inmersión desde el norte verdadero, símbolo, etiqueta y observaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Azimuth of each plane and line, a number or text such as N45W. Rows that are lines give their trend in it. Left empty: the fields strike, dip, trend and plunge of a layer that Agonic wrote.</source>
      <translation>Azimut de cada plano y línea: un número, o texto como N45W (W es el oeste). Las filas que son líneas dan en él su azimut de inmersión. Si se deja vacío: los campos strike, dip, trend y plunge de una capa escrita por Agonic.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>What the azimuth of planes means (choose one)</source>
      <translation>Qué significa el azimut de los planos (elija una opción)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Needed with the field of the azimuth.</source>
      <translation>Necesario con el campo del azimut.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>North of the azimuths</source>
      <translation>Norte de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Grid: counted from the grid of the layer's coordinate reference system.</source>
      <translation>Cuadrícula: contado desde la cuadrícula del sistema de referencia de coordenadas de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>0 to 90, downward.</source>
      <translation>De 0 a 90, hacia abajo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Grid of the grid azimuths</source>
      <translation>Cuadrícula de los azimutes de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>CRS whose grid north grid azimuths are counted from. Left empty: the layer's own.</source>
      <translation>SRC a cuyo norte de cuadrícula se refieren los azimutes de cuadrícula. Si se deja vacío: el de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Your word = kind, such as S0=bedding;S1=foliation. Kinds: {kinds}; and closer: {closer}.</source>
      <translation>Su palabra = tipo, por ejemplo S0=bedding;S1=foliation. Tipos: {kinds}; y más precisos: {closer}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Used where the field is empty or its word is not known.</source>
      <translation>Se usa donde el campo está vacío o no se conoce su palabra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>upright where the top of a bed was seen and it is right way up; overturned; anything else is unknown.</source>
      <translation>upright si se vio el techo de la capa y su polaridad es normal; overturned (invertida); cualquier otra cosa es unknown (desconocida).</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Quality</source>
      <translation>Calidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>1-sigma of each attitude in degrees. Bedding with more than {limit:g} is drawn as approximate.</source>
      <translation>1 sigma de cada orientación, en grados. La estratificación con más de {limit:g} se dibuja como aproximada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Symbol of inclined bedding</source>
      <translation>Símbolo de la estratificación inclinada</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>The arrow is as on British maps. Other planes have their bars in either case.</source>
      <translation>La flecha es como en los mapas británicos. Los demás planos llevan su barra en todo caso.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Length of the strike bar</source>
      <translation>Longitud de la barra de rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>5 is the standard's. Everything else keeps its proportion to it.</source>
      <translation>5 es la de la norma. Todo lo demás guarda su proporción con ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Length of the dip tick</source>
      <translation>Longitud de la marca de buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Left empty: a fifth of the bar.</source>
      <translation>Si se deja vacío: un quinto de la barra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Width of lines</source>
      <translation>Grosor de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Thinner lines than {least} may not print.</source>
      <translation>Las líneas de menos de {least} pueden no imprimirse.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>What of a line's arrow lies on its place</source>
      <translation>Qué parte de la flecha de una línea cae en su punto</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Show dips and plunges</source>
      <translation>Mostrar buzamientos e inmersiones</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Numbers beside the symbols: down the dip of planes, beyond the tip of lines.</source>
      <translation>Números junto a los símbolos: buzamiento abajo en los planos, más allá de la punta en las líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Say what the azimuth of planes means: AZIMUTH_MEANS is one of {words}.</source>
      <translation>Indique qué significa el azimut de los planos: AZIMUTH_MEANS es uno de estos valores: {words}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>{one} is given, so {other} is needed.</source>
      <translation>Se indicó {one}: hace falta {other}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>AZIMUTH_FIELD and DIP_FIELD are needed: without them strike, dip, trend and plunge are taken.</source>
      <translation>Hacen falta AZIMUTH_FIELD y DIP_FIELD: sin ellos se toman strike, dip, trend y plunge.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Say which fields hold the attitudes: AZIMUTH_FIELD and DIP_FIELD.</source>
      <translation>Indique qué campos contienen las orientaciones: AZIMUTH_FIELD y DIP_FIELD.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>NORTH is grid, but the layer's coordinate reference system has no grid. Give GRID_CRS: the grid that the azimuths were counted from.</source>
      <translation>NORTH es grid, pero el sistema de referencia de coordenadas de la capa no tiene cuadrícula. Indique GRID_CRS: la cuadrícula a la que se refieren los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>{count} rows have a quality over {limit:g} degrees, but their kind has no approximate symbol; they are drawn as the others.</source>
      <translation>{count} fila(s) tienen una calidad de más de {limit:g} grados, pero su tipo no tiene símbolo aproximado; se dibujan como las demás.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Style lines</source>
      <translation>Simbolizar líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Gives a layer of contacts, faults and fold axes the lines of FGDC-STD-013-2006: solid where they are accurately located, long dashes where approximate, short dashes where inferred, dots where concealed, with queries where their identity or existence is questionable.

Whatever has a side has it to the right of the direction in which the line was drawn: ball and bar and half circles on the side that dropped, teeth and ticks on the upper plate, boxes on the side that rose.

Fields of GeMS (Type, IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters) are taken where the parameters are left out. A half-width in metres needs the scale of the map. A line whose type is not known is drawn as such, and never as a contact.</source>
      <translation>Da a una capa de contactos, fallas y ejes de pliegues las líneas de FGDC-STD-013-2006: continuas donde están bien ubicadas, de trazos largos donde son aproximadas, de trazos cortos donde son inferidas, de puntos donde están cubiertas, con signos de interrogación donde su identidad o existencia es dudosa.

Lo que tiene un lado lo tiene a la derecha del sentido en que se dibujó la línea: la bola y la barra y los semicírculos en el lado que bajó, los dientes y las marcas en la placa superior, los cuadros en el lado que subió.

Los campos de GeMS (Type, IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters) se toman donde no se dan los parámetros. Un semiancho en metros necesita la escala del mapa. Una línea cuyo tipo no se conoce se dibuja como tal, y nunca como un contacto.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>certain or questionable.</source>
      <translation>certain o questionable.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Contacts, faults, folds</source>
      <translation>Contactos, fallas y pliegues</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Line layer.</source>
      <translation>Capa de líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Type of line</source>
      <translation>Tipo de línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Such as contact, fault, thrust fault, anticline, or a GeMS type.</source>
      <translation>Por ejemplo contact (contacto), fault (falla), thrust fault (cabalgamiento), anticline (anticlinal), o un tipo de GeMS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>How well located, in words</source>
      <translation>Exactitud de la situación, en palabras</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>{words}. Empty: by the half-width, and without one accurate.</source>
      <translation>{words}. Vacío: según la semianchura; sin ella, accurate.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Your words for how well located</source>
      <translation>Sus palabras para la exactitud de la situación</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Such as: obs=accurate;inf=inferred</source>
      <translation>Por ejemplo: obs=accurate;inf=inferred</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Concealed</source>
      <translation>Cubierta</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Y or N.</source>
      <translation>Y o N.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Confidence in the identity</source>
      <translation>Confianza en la identidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Confidence in the existence</source>
      <translation>Confianza en la existencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Half-width of the zone the line lies in (m)</source>
      <translation>Semianchura de la zona en que está la línea (m)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Left empty: {field}, where there is one and the scale is given.</source>
      <translation>Vacío: {field}, donde lo hay y se da la escala.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Such as 24000. Needed to tell from the half-width how well a line is located.</source>
      <translation>Por ejemplo 24000. Hace falta para deducir de la semianchura la exactitud de la situación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Approximate over</source>
      <translation>Aproximada a partir de</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Half-width on the map over which a line is drawn as approximate.</source>
      <translation>Semianchura en el mapa a partir de la cual una línea se dibuja como aproximada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>mm on the map</source>
      <translation>mm en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Inferred over</source>
      <translation>Inferida a partir de</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Half-width on the map over which a line is drawn as inferred.</source>
      <translation>Semianchura en el mapa a partir de la cual una línea se dibuja como inferida.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Styled lines</source>
      <translation>Líneas simbolizadas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>The input's fields, then symbol and what was noticed.</source>
      <translation>Los campos de la entrada y, a continuación, el símbolo y las observaciones.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>LOCATION_FIELD is given, so MAP_SCALE is needed.</source>
      <translation>Se indicó LOCATION_FIELD: hace falta MAP_SCALE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>{field} is not used, since MAP_SCALE is not given.</source>
      <translation>{field} no se usa, porque no se indicó MAP_SCALE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>No field says how well the lines are located: all are drawn as accurate.</source>
      <translation>Ningún campo indica con qué exactitud están situadas las líneas: todas se dibujan como bien situadas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Style map units</source>
      <translation>Dar estilo a las unidades</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Gives a layer of map units its colours, ornaments and letters, in stratigraphic order.

Colours come from the table of units, else from the layer's own style, else from ten pale ones that readers who see colours otherwise can tell apart too; units that touch on the map are kept well apart, and from eleven units on colours come again with a pattern. Colours of the table are kept as they are, and neighbours that are hard to tell apart are named in the log.

Ornaments follow the words for the rock, as is common practice: dots for sand, dashes for mud, bricks for limestone, leaning bricks for dolomite, circles for conglomerate, v for volcanic, crosses for plutonic, waves for metamorphic rocks.

The style needs nothing but QGIS to be drawn.</source>
      <translation>Da a una capa de unidades sus colores, tramas y letras, en orden estratigráfico.

Los colores vienen de la tabla de unidades, si no del estilo de la capa, si no de diez pálidos que también distinguen quienes ven los colores de otro modo; las unidades que se tocan en el mapa quedan bien separadas, y desde once unidades los colores se repiten con una trama. Los colores de la tabla se conservan, y las vecinas difíciles de distinguir se nombran en el registro.

Las tramas siguen las palabras de la roca, según la práctica común: puntos para arena, rayas para lodo, ladrillos para caliza, ladrillos inclinados para dolomía, círculos para conglomerado, v para volcánicas, cruces para plutónicas, ondas para metamórficas.

El estilo no necesita más que QGIS para dibujarse.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Columns: code; name, order (1 is the youngest), description, color (#rrggbb), rock, age_old and age_young (order or Ma), group, sort (surficial, sedimentary, volcanic, intrusive, metamorphic). Only code is needed; a GeMS DescriptionOfMapUnits serves too.</source>
      <translation>Columnas: code; name, order (1 es la más joven), description, color (#rrggbb), rock, age_old y age_young (orden o Ma), group, sort (surficial, sedimentary, volcanic, intrusive, metamorphic). Solo code es necesaria; también sirve una DescriptionOfMapUnits de GeMS.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Draw letters</source>
      <translation>Dibujar letras</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>The code in each area, or beside it with a leader where it does not fit.</source>
      <translation>El código en cada área, o a su lado con una guía donde no cabe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Styled units</source>
      <translation>Unidades con estilo</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>The input's fields, then the unit's name, order and colour.</source>
      <translation>Los campos de la entrada y después el nombre, el orden y el color de la unidad.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Units on the map</source>
      <translation>Unidades en el mapa</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_units.py" />
      <source>Neighbours that are hard to tell apart</source>
      <translation>Vecinas difíciles de distinguir</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Explanation of symbols</source>
      <translation>Explicación de los símbolos</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Draws the explanation of the symbols that a layer uses, for the margin of the map: each symbol as large as on the map, its name and its number, as SVG, PDF or PNG with a clear ground.

The layer is one that Correct compass readings, Style attitudes, Thin attitudes or Style lines has made; it may be of points or of lines. Numbers are those of FGDC-STD-013-2006; those that begin with ag. are our own.</source>
      <translation>Dibuja la explicación de los símbolos que usa una capa, para el margen del mapa: cada símbolo al tamaño del mapa, con su nombre y su número, en SVG, PDF o PNG con fondo transparente.

La capa es una hecha por «Corregir lecturas de brújula», «Simbolizar orientaciones», «Reducir la densidad de orientaciones según la escala» o «Simbolizar líneas»; puede ser de puntos o de líneas. Los números son los de FGDC-STD-013-2006; los que empiezan por ag. son propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Layer with symbols</source>
      <translation>Capa con símbolos</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Points or lines with the field symbol.</source>
      <translation>Puntos o líneas con el campo symbol.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Empty for none.</source>
      <translation>Vacío: sin título.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Columns</source>
      <translation>Columnas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>How many stand side by side.</source>
      <translation>Cuántas van una junto a otra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Explanation</source>
      <translation>Explicación</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Symbols explained</source>
      <translation>Símbolos explicados</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>The layer has no field symbol. Style attitudes and Style lines add it.</source>
      <translation>La capa no tiene el campo symbol. «Simbolizar orientaciones» y «Simbolizar líneas» lo añaden.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>The layer has no symbol to explain.</source>
      <translation>La capa no tiene ningún símbolo que explicar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>{count} rows have no symbol of ours.</source>
      <translation>{count} fila(s) no tienen un símbolo de los nuestros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>{count} symbols on {width:.1f} by {height:.1f} mm.</source>
      <translation>{count} símbolos en {width:.1f} por {height:.1f} mm.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Thin attitudes by scale</source>
      <translation>Reducir la densidad de orientaciones según la escala</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Says for each attitude on which maps it is printed, so that no two symbols come nearer to each other than the least distance on paper. The field plot_scale gets the denominator of the smallest scale at which the attitude is printed; 0, and an empty cell, would mean always. The symbols heed it: they come and go with the scale of the map. No attitude is deleted, moved or averaged.

The smallest scale is filled first: the attitude of the highest priority, then the next that is not too near, and so on, evenly over the ground. What a map prints, larger ones print too. Attitudes that fit on none of the maps are given out in the same way at half the largest scale's denominator, a quarter and so on, for those who look closer on the screen; further readings at the very same place get 1.

Distances are metres on the ground, whatever coordinate reference system the layer has, and 1 in 2000 wider, since pages such as UTM shorten lengths a little. The answer does not depend on the order of the rows.</source>
      <translation>Dice en qué mapas se imprime cada orientación, de modo que nunca haya dos símbolos más próximos que la distancia mínima en el papel. El campo plot_scale recibe el denominador de la escala más pequeña en que se imprime la orientación; 0, o una celda vacía, significaría siempre. Los símbolos lo respetan: aparecen y desaparecen con la escala del mapa. Ninguna orientación se borra, se mueve ni se promedia.

Primero se llena la escala más pequeña: la orientación de mayor prioridad, luego la siguiente que no quede demasiado cerca, y así sucesivamente, repartidas por el terreno. Lo que imprime un mapa lo imprimen también los de mayor escala. Las orientaciones que no caben en ninguno de los mapas se reparten del mismo modo a la mitad del denominador de la escala mayor, a un cuarto, etc., para quien mire más de cerca en la pantalla; las demás lecturas de un mismo punto reciben 1.

Las distancias son metros sobre el terreno, sea cual sea el sistema de referencia de coordenadas de la capa, y se amplían 1 parte en 2000, porque proyecciones como UTM acortan un poco las longitudes. El resultado no depende del orden de las filas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Point layer, one row a plane or line. Of a layer with the fields symbol or kind the kinds are known; rows whose status is rejected come last.</source>
      <translation>Capa de puntos, una fila por plano o línea. Si la capa tiene los campos symbol o kind se conocen los tipos; las filas con status rejected van al final.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Scales of the maps</source>
      <translation>Escalas de los mapas</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Denominators, such as 25000, 50000, 100000.</source>
      <translation>Denominadores, por ejemplo 25000, 50000, 100000.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>1 :</source>
      <translation>1:</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Least distance between symbols</source>
      <translation>Distancia mínima entre símbolos</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>From the place of one symbol to that of the next.</source>
      <translation>Del punto de un símbolo al del siguiente.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Kinds, the most important first</source>
      <translation>Tipos, primero los más importantes</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Among attitudes of equal priority. Kinds that are not named come after those that are, all alike.</source>
      <translation>Entre orientaciones de igual prioridad. Los tipos que no se nombran van después de los nombrados, todos por igual.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Priority</source>
      <translation>Prioridad</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Numbers; the higher, the earlier. Rows without one come last. Priority comes before the kind.</source>
      <translation>Números: a mayor número, antes. Las filas sin número van al final. La prioridad va por delante del tipo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Thinned attitudes</source>
      <translation>Orientaciones con densidad reducida</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>The input with plot_scale, and the symbols if it has any.</source>
      <translation>La entrada con plot_scale, y sus símbolos si los tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>SCALES: {entry} is no denominator of a scale, such as 25000.</source>
      <translation>SCALES: {entry} no es un denominador de escala, como 25000.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>SCALES: give the denominators of the maps' scales, such as 25000, 50000.</source>
      <translation>SCALES: indique los denominadores de las escalas de los mapas, por ejemplo 25000, 50000.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>KIND_ORDER: {entry} is no kind, or comes twice. Kinds: {kinds}.</source>
      <translation>KIND_ORDER: {entry} no es un tipo, o está repetido. Tipos: {kinds}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>1:{scale} prints {count}.</source>
      <translation>A 1:{scale} se imprimen {count}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>The layer has no symbols yet. Style attitudes draws them, and heeds plot_scale.</source>
      <translation>La capa aún no tiene símbolos. «Simbolizar orientaciones» los dibuja y respeta plot_scale.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>PRIORITY_FIELD: {value} is no number.</source>
      <translation>PRIORITY_FIELD: {value} no es un número.</translation>
    </message>
  </context>
</TS>
