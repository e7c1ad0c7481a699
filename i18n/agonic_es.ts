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
      <location filename="../processing_algs/sightings/check_compass.py" />
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
      <source>The input's field {old} is called {new} in the output.</source>
      <translation>El campo {old} de la entrada se llama {new} en la salida.</translation>
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
      <source>{key}: the layer has no field {name}. It has: {names}.</source>
      <translation>{key}: la capa no tiene el campo {name}. Tiene: {names}.</translation>
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
      <location filename="../processing_algs/drawing/section_drawing.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>{value} m</source>
      <translation>{value} m</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_drawing.py" />
      <source>bend: {before} to {after}</source>
      <translation>quiebre: de {before} a {after}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
      <location filename="../processing_algs/gis/sinks.py" />
      <source>Rows could not be written to {place}: {reason}</source>
      <translation>No se pudieron escribir filas en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/section_layers.py" />
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
      <source>Attitude</source>
      <translation>Orientación</translation>
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
      <source>The explanation could not be written to {place}: {reason}</source>
      <translation>No se pudo escribir la explicación de los símbolos en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/drawing/sheet.py" />
      <source>the file cannot be opened</source>
      <translation>no se puede abrir el archivo</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Date of the readings</source>
      <translation>Fecha de las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Used for rows without a date of their own. There is no silent today.</source>
      <translation>Se usa en las filas que no tienen fecha propia. Nunca se supone la fecha de hoy.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Date of each row</source>
      <translation>Fecha de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>A date field, or text such as 2026-06-01, 1 Jun 2026, 2026-06 or 1987.</source>
      <translation>Un campo de fecha, o texto como 2026-06-01, 1 jun 2026, 2026-06 o 1987.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>Order of numeric dates</source>
      <translation>Orden de las fechas numéricas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dates.py" />
      <source>iso: year first. dmy: day, month, year. mdy: month, day, year. With iso, 1/6/2026 is ambiguous and rejected.</source>
      <translation>iso: primero el año. dmy: día, mes, año. mdy: mes, día, año. Con iso, 1/6/2026 es ambigua y se rechaza.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <location filename="../processing_algs/gis/dem_block.py" />
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
      <source>The DEM could not be read: {reason}</source>
      <translation>No se pudo leer el MDE: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem.py" />
      <source>The DEM does not say how many cells it has.</source>
      <translation>El MDE no indica cuántas celdas tiene.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>DEM</source>
      <translation>MDE</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>Band of the DEM</source>
      <translation>Banda del MDE</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>The band that holds heights.</source>
      <translation>La banda que contiene las cotas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>Unit of heights</source>
      <translation>Unidad de las cotas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>file: as the DEM itself says, by its vertical CRS or its band; metres where nothing says it. foot: 0.3048 m. us_foot: US survey foot, 1200/3937 m. Height fields have the same unit; with file they are metres.</source>
      <translation>file: la que indica el propio MDE, por su SRC vertical o por su banda; metros si no indica nada. foot: 0,3048 m. us_foot: pie topográfico de EE. UU., 1200/3937 m. Los campos de cota llevan la misma unidad; con file, metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/dem_block.py" />
      <source>The DEM does not say the unit of its heights; metres were taken.</source>
      <translation>El MDE no indica la unidad de sus cotas; se tomaron metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{one} and {other} would go to the same place.</source>
      <translation>{one} y {other} irían al mismo sitio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/destinations.py" />
      <source>{key} would overwrite the layer of {input}; choose another place.</source>
      <translation>{key} sobrescribiría la capa de {input}; elija otro sitio.</translation>
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
      <source>{key}: no file can be written at {place}.</source>
      <translation>{key}: no se puede escribir ningún archivo en {place}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>igrf14: 1900 to 2030, the one for old and new readings alike. wmm2025 and wmmhr2025: 2025 to 2030, the second with the field of the crust in finer detail.</source>
      <translation>igrf14: de 1900 a 2030, sirve tanto para lecturas antiguas como recientes. wmm2025 y wmmhr2025: de 2025 a 2030; el segundo, con el campo de la corteza en mayor detalle.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>given: you state the declination.</source>
      <translation>given: la declinación la indica usted.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/field_model.py" />
      <source>Model of the magnetic field</source>
      <translation>Modelo del campo magnético</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>North the readings are counted from</source>
      <translation>Norte al que se refieren las lecturas</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>magnetic: read with a compass. true: already corrected, as by many phones. grid: taken off a map's grid.</source>
      <translation>magnetic: leídas con brújula. true: ya corregidas al norte verdadero, como hacen muchos teléfonos. grid: medidas sobre la cuadrícula de un mapa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>North of each row</source>
      <translation>Norte de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with magnetic, true or grid (or m, t, g) for each row. Empty rows use the north chosen above.</source>
      <translation>Campo con magnetic, true o grid (o m, t, g) en cada fila. Las filas vacías usan el norte elegido arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Your words for the norths</source>
      <translation>Sus palabras para los nortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Such as: compass=magnetic;phone=true;sheet=grid</source>
      <translation>Por ejemplo: brújula=magnetic;teléfono=true;hoja=grid</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Grid of the grid readings</source>
      <translation>Cuadrícula de las lecturas de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>CRS whose grid north the grid readings are counted from. Left empty: the layer's own.</source>
      <translation>SRC a cuyo norte de cuadrícula se refieren las lecturas de cuadrícula. Si se deja vacío: el de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Ring setting of the compass</source>
      <translation>Ajuste del limbo de la brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Declination already dialled into the compass, in degrees, east positive. 0: the ring is not set, the compass shows magnetic azimuths.</source>
      <translation>Declinación ya puesta en el limbo de la brújula, en grados, positiva al este. 0: limbo sin ajustar, la brújula da azimutes magnéticos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Ring setting of each row</source>
      <translation>Ajuste del limbo de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with the ring setting. Empty rows use the ring setting above.</source>
      <translation>Campo con el ajuste del limbo. Las filas vacías usan el ajuste indicado arriba.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Given declination</source>
      <translation>Declinación dada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Degrees, east positive; used for all magnetic rows when the model is given.</source>
      <translation>Grados, positiva al este; se usa en todas las filas magnéticas cuando el modelo es given.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Given declination of each row</source>
      <translation>Declinación dada de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Field with the declination, east positive. A row that has one uses it, whatever the model; others use the model.</source>
      <translation>Campo con la declinación, positiva al este. La fila que la tiene usa la suya, sea cual sea el modelo; las demás usan el modelo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Uncertainty of a given declination</source>
      <translation>Incertidumbre de una declinación dada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>1-sigma, degrees.</source>
      <translation>1 sigma, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Height of each row</source>
      <translation>Cota de cada fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>Metres above sea level; it hardly matters for declination. Empty rows use 0.</source>
      <translation>Metros sobre el nivel del mar; apenas influye en la declinación. Las filas vacías usan 0.</translation>
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
      <source>NORTH_WORDS: {entry} is none of {allowed}.</source>
      <translation>NORTH_WORDS: {entry} no es ninguno de estos: {allowed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/north_block.py" />
      <source>The declination changes from year to year, so the readings need a date: give DATE or DATE_FIELD, or set MODEL to given and state the declination. No row has a date.</source>
      <translation>La declinación cambia de un año a otro, así que las lecturas necesitan fecha: indique DATE o DATE_FIELD, o ponga MODEL en given y dé la declinación. Ninguna fila tiene fecha.</translation>
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
      <source>{value} is a line with two ends; a trend or dip direction has one.</source>
      <translation>{value} es una línea con dos extremos; un azimut de inmersión o una dirección de buzamiento tiene uno solo.</translation>
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
      <source>Date {value} can be read in more than one way; write it like 2026-06-01, or state the order of day and month and write all four digits of the year.</source>
      <translation>La fecha {value} se puede leer de varias maneras; escríbala como 2026-06-01, o indique el orden de día y mes y ponga las cuatro cifras del año.</translation>
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
      <source>The horizontal field is weak here ({h} nT); a needle is sluggish and declination uncertain.</source>
      <translation>El campo horizontal es débil aquí ({h} nT): la aguja responde mal y la declinación es incierta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>The horizontal field is too weak here ({h} nT) for a compass; give the declination yourself.</source>
      <translation>El campo horizontal es demasiado débil aquí ({h} nT) para una brújula; indique usted la declinación.</translation>
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
      <source>Height {value} is no height on land in metres; {used} was used.</source>
      <translation>La cota {value} no es posible en tierra firme, en metros; se usó {used}.</translation>
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
      <source>The DEM has no height here, or not all along.</source>
      <translation>El MDE no tiene cota aquí, o le falta en parte del recorrido.</translation>
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
      <source>The station's height lies {value} m off the ground of the DEM: another unit?</source>
      <translation>La cota de la estación se aparta {value} m del terreno del MDE: ¿otra unidad?</translation>
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
      <source>The vertical angle "{value}" is outside {low} to {high}.</source>
      <translation>El ángulo vertical «{value}» está fuera del intervalo de {low} a {high}.</translation>
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
      <source>The bearings disagree by {value} degrees, more than their errors explain: a wrong landmark, a misread bearing or iron. The ellipse was widened.</source>
      <translation>Los azimutes discrepan en {value} grados, más de lo que explican sus errores: una referencia equivocada, un azimut mal leído o hierro. Se amplió la elipse.</translation>
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
      <source>The vertical angle "{value}" is outside {low} to {high}; it was not used.</source>
      <translation>El ángulo vertical «{value}» está fuera del intervalo de {low} a {high}; no se usó.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>All {rows} directions lie within 0 to 90. Are these quadrant bearings (N45W) read as azimuths?</source>
      <translation>Las {rows} direcciones están todas entre 0 y 90. ¿Son rumbos cuadrantales (N45W) leídos como azimutes?</translation>
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
      <source>There are no back bearings, so local attraction was not looked for.</source>
      <translation>No hay azimutes inversos, así que no se buscó atracción local.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>azimuth</source>
      <translation>azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
      <source>dip or plunge</source>
      <translation>buzamiento o inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/remarks.py" />
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
      <source>rake</source>
      <translation>cabeceo</translation>
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
      <location filename="../processing_algs/gis/schema.py" />
      <source>The output cannot hold the field {name}.</source>
      <translation>La salida no admite el campo {name}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sight_columns.py" />
      <source>Unit of the bearings</source>
      <translation>Unidad de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sight_columns.py" />
      <source>degree, gon (400 to the circle) or mil6400 (6400 to the circle).</source>
      <translation>degree (grados sexagesimales), gon (400 en la circunferencia) o mil6400 (6400 en la circunferencia).</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sight_columns.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Numbers that mean no reading</source>
      <translation>Números que significan «sin lectura»</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sight_columns.py" />
      <source>Only for bearings.</source>
      <translation>Solo para los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sight_columns.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>NULL_VALUES: {entry} is no number.</source>
      <translation>NULL_VALUES: {entry} no es un número.</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/sinks.py" />
      <source>Cancelled before anything was written.</source>
      <translation>Cancelado antes de escribir nada.</translation>
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
      <source>the table layer_styles took nothing</source>
      <translation>la tabla layer_styles no guardó nada</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/styling.py" />
      <source>the output is gone</source>
      <translation>la salida ya no existe</translation>
    </message>
    <message>
      <location filename="../processing_algs/gis/styling.py" />
      <location filename="../processing_algs/sections/package.py" />
      <source>The style could not be stored: {reason}</source>
      <translation>No se pudo guardar el estilo: {reason}</translation>
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
      <source>Points</source>
      <translation>Puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Any point layer. Positions are taken from the geometry, in the layer's CRS.</source>
      <translation>Cualquier capa de puntos. Las posiciones se toman de la geometría, en el SRC de la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Height</source>
      <translation>Cota</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Metres above sea level, for rows without a height of their own.</source>
      <translation>Metros sobre el nivel del mar, para las filas sin cota propia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>Metres above sea level.</source>
      <translation>Metros sobre el nivel del mar.</translation>
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
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>The layer has no coordinate reference system that leads to places on Earth.</source>
      <translation>La capa no tiene un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/north/north_angles.py" />
      <source>No row has a date: give DATE or DATE_FIELD. There is no silent today.</source>
      <translation>Ninguna fila tiene fecha: indique DATE o DATE_FIELD. Nunca se supone la fecha de hoy.</translation>
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
      <source>nearest: of all planes. group: the nearest of those with the same value in the fields below.</source>
      <translation>nearest: el más próximo de todos los planos. group: el más próximo de los que tienen el mismo valor en los campos de abajo.</translation>
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
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
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
      <location filename="../processing_algs/planes/outcrop_trace.py" />
      <location filename="../processing_algs/planes/structure_contours.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Fields used: {fields}</source>
      <translation>Campos usados: {fields}</translation>
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
      <location filename="../processing_algs/planes/true_thickness.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/package.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Attitudes</source>
      <translation>Orientaciones</translation>
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
      <source>Metres around each attitude within which its plane is taken to go on flat.</source>
      <translation>Metros alrededor de cada orientación dentro de los cuales se supone que el plano no se curva.</translation>
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

Each row gives the stretch (from_m, to_m), the plane and how well it is known, as for planes from points. Points read between two vertices of a line share the vertices' errors, so a line drawn with few vertices counts for few points. Windows that overlap are not independent.</source>
      <translation>Deduce la orientación de un contacto de su propia traza sobre el terreno: una ventana recorre cada línea y, donde la línea se curva lo bastante dentro de ella, en planta o por el relieve, se le ajusta un plano por mínimos cuadrados. En el resto la fila se rechaza y dice por qué: un intervalo recto de traza es común a todos los planos que pasan por él.

Cada fila da el intervalo (from_m, to_m), el plano y con qué certeza se conoce, como en los planos a partir de puntos. Los puntos leídos entre dos vértices de una línea comparten los errores de los vértices, así que una línea dibujada con pocos vértices vale por pocos puntos. Las ventanas que se solapan no son independientes.</translation>
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
      <source>Metres along the line that one plane is taken from; 0 takes the whole line.</source>
      <translation>Metros a lo largo de la línea de los que se toma un plano; 0 toma la línea entera.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_profile.py" />
      <source>Step</source>
      <translation>Paso</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_along_traces.py" />
      <source>Metres by which the window moves on.</source>
      <translation>Metros que avanza la ventana.</translation>
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
      <source>dem: the DEM at the mapped place. field: a height measured with each point, such as that of a seam in a borehole. z: the points' own third coordinate.</source>
      <translation>dem: el MDE en la posición cartografiada. field: una cota medida con cada punto, como la de una capa en un sondeo. z: la tercera coordenada de los propios puntos.</translation>
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
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Report</source>
      <translation>Informe</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>HTML files (*.html)</source>
      <translation>Archivos HTML (*.html)</translation>
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
      <source>HEIGHT_UNIT does not say the unit of the heights; metres were taken.</source>
      <translation>HEIGHT_UNIT no indica la unidad de las cotas; se tomaron metros.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_from_points.py" />
      <source>There is no point in the layer.</source>
      <translation>No hay ningún punto en la capa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>Planes from points</source>
      <translation>Planos a partir de puntos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>status</source>
      <translation>estado</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <source>planes</source>
      <translation>planos</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>ok</source>
      <translation>sin observaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>warning</source>
      <translation>aviso</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/planes_report.py" />
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>rejected</source>
      <translation>rechazo</translation>
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
      <location filename="../processing_algs/sightings/compass_report.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>remark</source>
      <translation>observación</translation>
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
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of a mapped place</source>
      <translation>Incertidumbre de la posición cartografiada</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>1-sigma in easting and in northing, metres: how far a point or line may lie from where it belongs.</source>
      <translation>1 sigma en X y en Y, en metros: cuánto puede apartarse un punto o una línea de su sitio.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of a height</source>
      <translation>Incertidumbre de la cota</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>1-sigma, metres, apart from what a wrong place does to it.</source>
      <translation>1 sigma, en metros, sin contar el efecto de una posición errónea.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Kind of structure</source>
      <translation>Tipo de estructura</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>What the planes are; it decides their symbol.</source>
      <translation>Qué son los planos; de ello depende su símbolo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Without one, the field {name} is taken if there is one.</source>
      <translation>Si no se indica, se toma el campo {name}, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Strike</source>
      <translation>Rumbo</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>True, dip to the right.</source>
      <translation>Verdadero, con el buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Dip</source>
      <translation>Buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>0 to 90.</source>
      <translation>De 0 a 90.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of each attitude</source>
      <translation>Incertidumbre de cada orientación</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>1-sigma of the pole, degrees.</source>
      <translation>1 sigma del polo, en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>Uncertainty of attitudes that do not say theirs</source>
      <translation>Incertidumbre de las orientaciones que no la indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>{key}: the layer has no coordinate reference system that leads to places on Earth.</source>
      <translation>{key}: la capa no tiene un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/shared.py" />
      <source>{key}: name the fields of strike and dip: STRIKE_FIELD and DIP_FIELD.</source>
      <translation>{key}: indique los campos de rumbo y buzamiento: STRIKE_FIELD y DIP_FIELD.</translation>
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
      <source>Contour interval</source>
      <translation>Equidistancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/planes/structure_contours.py" />
      <source>Metres of height.</source>
      <translation>Metros de cota.</translation>
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
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Polarity</source>
      <translation>Polaridad</translation>
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
      <source>Metres from a line within which attitudes are averaged, as poles.</source>
      <translation>Metros desde una línea dentro de los cuales se promedian las orientaciones, como polos.</translation>
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
      <source>{count} rows of ATTITUDES are no planes with a place and were left out.</source>
      <translation>Se dejaron fuera {count} fila(s) de ATTITUDES que no son planos con posición.</translation>
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
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Least declination used</source>
      <translation>Menor declinación usada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Greatest declination used</source>
      <translation>Mayor declinación usada</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Notation: how the readings are written (choose one)</source>
      <translation>Notación: cómo están escritas las lecturas (elija una)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>strike_right: strike with the dip to the right. strike_left: strike with the dip to the left. strike_letter: strike, dip and a letter such as SE for the side of the dip. dip_direction: azimuth of the dip, and dip. line: trend and plunge. text: the whole attitude in one field, such as N45E/30SE.</source>
      <translation>strike_right: rumbo con el buzamiento a la derecha. strike_left: rumbo con el buzamiento a la izquierda. strike_letter: rumbo, buzamiento y una letra, como SE, para el lado del buzamiento. dip_direction: dirección de buzamiento y buzamiento. line: azimut de inmersión e inmersión. text: la orientación completa en un solo campo, como N45E/30SE. Las letras son las inglesas (N, E, S, W): W es el oeste.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Azimuth</source>
      <translation>Azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Strike, dip direction or trend as read: a number, or text such as N45W.</source>
      <translation>Rumbo, dirección de buzamiento o azimut de inmersión tal como se leyó: un número, o texto como N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Dip or plunge</source>
      <translation>Buzamiento o inmersión</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>0 to 90, a number, or text with a letter such as 30SE.</source>
      <translation>De 0 a 90: un número, o texto con una letra, como 30SE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Dip letter</source>
      <translation>Letra del buzamiento</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Side of the dip: N, NE, E and so on.</source>
      <translation>Lado del buzamiento: N, NE, E, etc., con las letras inglesas (N, E, S, W). W es el oeste; la O no se admite.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Attitude as text</source>
      <translation>Orientación como texto</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>For the notation text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W.</source>
      <translation>Para la notación text: N45E/30SE, 045/30SE, 045/30, E-W 20 S, horizontal, vertical N20W. W es el oeste.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>What a bare pair such as 045/30 means</source>
      <translation>Qué significa un par sin letras, como 045/30</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Needed only where text rows give two numbers and no letter.</source>
      <translation>Solo hace falta si hay filas de texto con dos números y ninguna letra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Such as bedding, joint, lineation.</source>
      <translation>Por ejemplo, bedding (estratificación), joint (diaclasa) o lineation (lineación).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Your words for the kinds</source>
      <translation>Sus palabras para los tipos</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Your word = kind, such as S0=bedding;S1=cleavage;L1=lineation. Kinds: {kinds}.</source>
      <translation>Su palabra = tipo, por ejemplo S0=bedding;diaclasa=joint;L1=lineation. Tipos: {kinds}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Kind of rows that do not say</source>
      <translation>Tipo de las filas que no lo indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Used where the field is empty.</source>
      <translation>Se usa donde el campo está vacío.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>upright or overturned.</source>
      <translation>upright (normal) u overturned (invertida).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Your words for polarity</source>
      <translation>Sus palabras para la polaridad</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Such as: ok=upright;inv=overturned</source>
      <translation>Por ejemplo: normal=upright;inv=overturned</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Dips over 90 mean overturned</source>
      <translation>Un buzamiento mayor de 90 significa invertido</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Reads 110 as a dip of 70 toward the other side, overturned. Otherwise such rows are rejected.</source>
      <translation>Lee 110 como un buzamiento de 70 hacia el otro lado, invertido. Si no, esas filas se rechazan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Rake (pitch)</source>
      <translation>Cabeceo (rake, pitch)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Of lines measured in a plane; azimuth and dip of the row are then the plane.</source>
      <translation>De líneas medidas sobre un plano; el azimut y el buzamiento de la fila son entonces los del plano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>How the rake is counted</source>
      <translation>Cómo se cuenta el cabeceo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>from_strike: 0 to 180 from the strike that has the dip to its right. with_letter: 0 to 90 and the letter of the end it is counted from, such as 65NE.</source>
      <translation>from_strike: de 0 a 180 desde el rumbo que tiene el buzamiento a su derecha. with_letter: de 0 a 90 y la letra del extremo desde el que se cuenta, como 65NE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Unit of the azimuths</source>
      <translation>Unidad de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>degree, gon (400 to the circle) or mil6400 (6400 to the circle). Dips are in degrees.</source>
      <translation>degree (grados sexagesimales), gon (400 en la circunferencia) o mil6400 (6400 en la circunferencia). Los buzamientos van en grados.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Only for azimuth and dip.</source>
      <translation>Solo para azimut y buzamiento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Uncertainty of a reading</source>
      <translation>Incertidumbre de una lectura</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>1-sigma, degrees. 2 is usual for a hand-held compass on a natural surface.</source>
      <translation>1 sigma, en grados. 2 es lo habitual con brújula de mano sobre una superficie natural.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Go on although the azimuths look corrected already</source>
      <translation>Continuar aunque los azimutes parezcan ya corregidos</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>A layer that this tool wrote holds true azimuths; correcting them again doubles the correction.</source>
      <translation>Una capa escrita por esta herramienta contiene azimutes verdaderos; corregirlos otra vez duplica la corrección.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Say how the readings are written: NOTATION is one of {words}.</source>
      <translation>Indique cómo están escritas las lecturas: NOTATION es uno de estos valores: {words}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Notation {notation} needs {key}.</source>
      <translation>La notación {notation} necesita {key}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>RAKE_FIELD is given, so RAKE_MEANS must say how the rake is counted.</source>
      <translation>Se indicó RAKE_FIELD: RAKE_MEANS debe decir cómo se cuenta el cabeceo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <location filename="../processing_algs/symbols/shared.py" />
      <source>{key}: {entry} does not end in one of {allowed}.</source>
      <translation>{key}: {entry} no acaba en ninguno de estos valores: {allowed}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>Rows that do not say their kind are read as {kind}, since the notation is line.</source>
      <translation>Las filas que no indican su tipo se leen como {kind}, porque la notación es line.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/correct_readings.py" />
      <source>The field {name} of this layer was already corrected to true north (the layer has azim_read and correction). Use azim_read, set NORTH to true, or set FORCE to go on.</source>
      <translation>El campo {name} de esta capa ya se corrigió al norte verdadero (la capa tiene azim_read y correction). Use azim_read, ponga NORTH en true, o marque FORCE para continuar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Compass readings corrected to true north</source>
      <translation>Lecturas de brújula corregidas al norte verdadero</translation>
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
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>Rows</source>
      <translation>Filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>rows</source>
      <translation>filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>read in all</source>
      <translation>leídas en total</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>Look at this first</source>
      <translation>Mire esto primero</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>code</source>
      <translation>código</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>what was noticed</source>
      <translation>qué se observó</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>What was noticed, row by row</source>
      <translation>Qué se observó, fila por fila</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>first row ids</source>
      <translation>identificadores de las primeras filas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sightings/noticed.py" />
      <source>for example</source>
      <translation>por ejemplo</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Norths</source>
      <translation>Nortes</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>rows by the north they were read from</source>
      <translation>filas según el norte al que se refieren</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>rows by source of their declination</source>
      <translation>filas según la procedencia de su declinación</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>declination used, east positive</source>
      <translation>declinación usada, positiva al este</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>dates</source>
      <translation>fechas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>ring setting of the compass, east positive</source>
      <translation>ajuste del limbo de la brújula, positivo al este</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>grid of the grid readings</source>
      <translation>cuadrícula de las lecturas de cuadrícula</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>what</source>
      <translation>dato</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>value</source>
      <translation>valor</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>none</source>
      <translation>no hay</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{low}° to {high}°</source>
      <translation>de {low}° a {high}°</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>none used</source>
      <translation>no se usó ninguna</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{first} to {last}</source>
      <translation>de {first} a {last}</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>ring taken as 0 in {count} rows, since nobody set it</source>
      <translation>limbo tomado como 0 en {count} filas, porque nadie indicó su ajuste</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{setting}° in {count} rows</source>
      <translation>{setting}° en {count} fila(s)</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>no magnetic rows</source>
      <translation>no hay filas magnéticas</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Of {read} field readings (notation {notation}), {done} were reduced to true north.</source>
      <translation>De {read} lecturas de campo (notación {notation}), {done} se redujeron al norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>Declinations at each place and date ({dates}) are from {model} and run from {span}.</source>
      <translation>Las declinaciones de cada lugar y fecha ({dates}) proceden de {model} (valores: {span}).</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{count} readings use a declination given by the mapper.</source>
      <translation>{count} lecturas usan una declinación dada por el cartógrafo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{count} readings were counted from true north already.</source>
      <translation>{count} lecturas estaban ya referidas al norte verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>{count} readings were counted from the north of the grid {grid}.</source>
      <translation>{count} lecturas estaban referidas al norte de la cuadrícula {grid}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>The compass ring was taken as set to 0 unless noted otherwise.</source>
      <translation>El limbo de la brújula se tomó como ajustado a 0 salvo que se indicara otra cosa.</translation>
    </message>
    <message>
      <location filename="../processing_algs/readings/readings_report.py" />
      <source>A reading's uncertainty is taken as {sigma}° (1-sigma); {rejected} readings were rejected.</source>
      <translation>La incertidumbre de una lectura se toma como {sigma}° (1 sigma); se rechazaron {rejected} lecturas.</translation>
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
      <source>Tells lines from planes in rows that have both.</source>
      <translation>Distingue líneas de planos en las filas que tienen ambos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>True, with the dip to the right.</source>
      <translation>Verdadero, con el buzamiento a la derecha.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Trend of lines</source>
      <translation>Azimut de inmersión de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>True.</source>
      <translation>Verdadero.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Plunge of lines</source>
      <translation>Inmersión de las líneas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>In the unit of heights. Where it is empty the DEM is read.</source>
      <translation>En la unidad de las cotas. Donde está vacía se lee el MDE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Greatest distance of carrying</source>
      <translation>Distancia máxima de proyección</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Metres from an attitude to where it lands, along the way it is carried.</source>
      <translation>Metros desde una orientación hasta donde cae, según la dirección en que se proyecta.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Rule of carrying</source>
      <translation>Regla de proyección</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>perpendicular: square to the section, at the same height. along_strike: along each plane's own strike, at the same height; level planes and lines go squarely. along_axis: along the fold axis given below, falling with it.</source>
      <translation>perpendicular: perpendicularmente al corte, a la misma cota. along_strike: según el rumbo de cada plano, a la misma cota; los planos horizontales y las líneas van perpendicularmente. along_axis: según el eje de pliegue indicado abajo, descendiendo con él.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Trend of the fold axis</source>
      <translation>Azimut de inmersión del eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Degrees from true north, toward the downward end. Needed for along_axis.</source>
      <translation>Grados desde el norte verdadero, hacia el extremo que baja. Necesario para along_axis.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Plunge of the fold axis</source>
      <translation>Inmersión del eje de pliegue</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Degrees, 0 to 85. Needed for along_axis.</source>
      <translation>Grados, de 0 a 85. Necesario para along_axis.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Legs of a bent section</source>
      <translation>Tramos de un corte quebrado</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>nearest: an attitude lands on the leg it has least far to go to. every: on each leg within the distance.</source>
      <translation>nearest: la orientación cae en el tramo más próximo. every: en cada tramo que esté dentro de la distancia.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The attitudes have no coordinate reference system that leads to places on Earth.</source>
      <translation>Las orientaciones no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>The attitudes have neither strike and dip nor trend and plunge: name the fields.</source>
      <translation>Las orientaciones no tienen ni rumbo y buzamiento ni azimut de inmersión e inmersión: indique los campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>Give a DEM, or a field with the height of each attitude: without heights nothing has its place.</source>
      <translation>Indique un MDE, o un campo con la cota de cada orientación: sin cotas nada se puede situar.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>The rule along_axis needs AXIS_TREND and AXIS_PLUNGE.</source>
      <translation>La regla along_axis necesita AXIS_TREND y AXIS_PLUNGE.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitude_block.py" />
      <source>A fold axis that plunges {value} degrees leads to no section: {limit} is the most.</source>
      <translation>Un eje de pliegue con inmersión de {value} grados no lleva a ningún corte: {limit} es el máximo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Attitudes on sections</source>
      <translation>Orientaciones sobre cortes geológicos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
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
      <source>length, m</source>
      <translation>longitud, m</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>legs, and the azimuth at their beginning</source>
      <translation>tramos, y azimut en su inicio</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/attitudes_report.py" />
      <source>Outside</source>
      <translation>Fuera</translation>
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
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>PDF files (*.pdf)</source>
      <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>SVG files (*.svg)</source>
      <translation>Archivos SVG (*.svg)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>PNG files (*.png)</source>
      <translation>Archivos PNG (*.png)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
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
      <source>Package</source>
      <translation>Paquete</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>GeoPackage files (*.gpkg)</source>
      <translation>Archivos GeoPackage (*.gpkg)</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>The same as layers to go on with, together with a project that holds the print layout.</source>
      <translation>Lo mismo, como capas para seguir trabajando, junto con un proyecto que contiene la composición de impresión.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Printed on the figure.</source>
      <translation>Consta en la figura.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/package.py" />
      <source>Map units</source>
      <translation>Unidades cartográficas</translation>
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
      <source>Contacts</source>
      <translation>Contactos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Names of the contacts</source>
      <translation>Nombres de los contactos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Lines. Those with fields strike and dip are drawn at their apparent dip.</source>
      <translation>Líneas. Las que tienen los campos strike y dip se dibujan con su buzamiento aparente.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Faults</source>
      <translation>Fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Names of the faults</source>
      <translation>Nombres de las fallas</translation>
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
      <source>stripe: along the ground. fill: down to the lower edge. none: not at all.</source>
      <translation>stripe: una banda a lo largo del terreno. fill: relleno hasta el borde inferior. none: no se dibujan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Height of the lower edge</source>
      <translation>Cota del borde inferior</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Metres above sea level. Without one, there is room to draw in below the ground.</source>
      <translation>Metros sobre el nivel del mar. Si no se indica, queda espacio para dibujar bajo el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <location filename="../processing_algs/sections/section_attitudes.py" />
      <source>Length of the ticks</source>
      <translation>Longitud de los trazos</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Millimetres on paper.</source>
      <translation>Milímetros en el papel.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>Metres between places where the height is read; 0 is the side of the DEM's cells.</source>
      <translation>Metros entre los puntos donde se lee la cota; 0 es el lado de las celdas del MDE.</translation>
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
      <source>No section has any ground under it: the DEM lies elsewhere, or has a gap.</source>
      <translation>Ningún corte tiene terreno debajo: el MDE está en otro lugar o tiene un hueco.</translation>
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
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>PACKAGE: {name} holds the layer {layer}, which is no section; choose another file.</source>
      <translation>PACKAGE: {name} contiene la capa {layer}, que no es de un corte; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>PACKAGE: {name} holds {count} features of an interpretation that somebody drew; choose another file.</source>
      <translation>PACKAGE: {name} contiene {count} objetos de una interpretación que alguien dibujó; elija otro archivo.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/draw_section.py" />
      <source>The package could not be written to {place}: {reason}</source>
      <translation>No se pudo escribir el paquete en {place}: {reason}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Section {first}–{last}</source>
      <translation>Corte {first}–{last}</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>Contacts and faults</source>
      <translation>Contactos y fallas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/package.py" />
      <source>The project could not be stored: {reason}</source>
      <translation>No se pudo guardar el proyecto: {reason}</translation>
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
      <source>Drawn {way}; {length} m along the ground</source>
      <translation>Dibujado {way}; {length} m sobre el terreno</translation>
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
      <source>Metres of section space, whatever the slope.</source>
      <translation>Metros del espacio del corte, sea cual sea la pendiente.</translation>
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
      <source>Name</source>
      <translation>Nombre</translation>
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
      <source>True, with the dip to the right. Without one, the field strike is taken if there is one.</source>
      <translation>Verdadero, con el buzamiento a la derecha. Si no se indica, se toma el campo strike, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Dip of the line itself</source>
      <translation>Buzamiento de la propia línea</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Without one, the field dip is taken if there is one.</source>
      <translation>Si no se indica, se toma el campo dip, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Points with true strike and dip, for lines that have none of their own.</source>
      <translation>Puntos con rumbo verdadero y buzamiento, para las líneas que no los tienen propios.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>Without one, the field strike is taken if there is one.</source>
      <translation>Si no se indica, se toma el campo strike, si existe.</translation>
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
      <source>Metres from the crossing.</source>
      <translation>Metros desde el cruce.</translation>
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
      <source>The contacts or units have no coordinate reference system that leads to places on Earth.</source>
      <translation>Los contactos o unidades no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>The attitudes have no strike and dip: name the fields.</source>
      <translation>Las orientaciones no tienen rumbo y buzamiento: indique los campos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sections/section_crossings.py" />
      <source>KINDS: {entry} is none of {allowed}.</source>
      <translation>KINDS: {entry} no es ninguno de estos: {allowed}.</translation>
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
      <source>Metres between places where the height is read; 0 is the side of the DEM's cells. Every vertex is read too.</source>
      <translation>Metros entre los puntos donde se lee la cota; 0 es el lado de las celdas del MDE. También se lee en cada vértice.</translation>
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
      <source>Section lines</source>
      <translation>Líneas de corte</translation>
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
      <source>Vertical exaggeration</source>
      <translation>Exageración vertical</translation>
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
      <source>The section lines have no coordinate reference system that leads to places on Earth.</source>
      <translation>Las líneas de corte no tienen un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
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
      <source>A step of {value} m does not suit section {name}, which is {length} m long.</source>
      <translation>Un paso de {value} m no conviene al corte {name}, que mide {length} m.</translation>
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
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Check compasses on known lines</source>
      <translation>Comprobar brújulas en líneas conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Sight from one known point to another and note the reading: the azimuth between them is known, so the compass shows its own error. Each row is one reading; name its two points, or give their coordinates.

For every compass: the index error (what must be added to its readings) with its uncertainty, the scatter of one reading, and the drift with time. For every reading: how far it is off, and what it may be. Near 180 degrees a reversed reading is suspected; near the declination, a correction left out at one end or made twice; near twice the declination, a correction made the wrong way. These are suspicions: no reading is changed.

To allow for an index error in other tools, subtract it from the ring setting. Iron near one of the points spoils all readings there; use several lines from several points.</source>
      <translation>Vise de un punto conocido a otro y anote la lectura: el azimut entre ambos se conoce, así que la brújula muestra su propio error. Cada fila es una lectura; nombre sus dos puntos o dé sus coordenadas.

Para cada brújula: el error de índice (lo que hay que sumar a sus lecturas) con su incertidumbre, la dispersión de una lectura y la deriva con el tiempo. Para cada lectura: cuánto difiere y a qué puede deberse. Cerca de 180 grados se sospecha una lectura invertida; cerca de la declinación, una corrección omitida en una parte o hecha dos veces; cerca del doble de la declinación, una corrección con el signo contrario. Son sospechas: no se cambia ninguna lectura.

Para compensar un error de índice en otras herramientas, réstelo del ajuste del limbo. El hierro cerca de uno de los puntos estropea todas las lecturas hechas en él; use varias líneas desde varios puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>A table or layer, one row a reading along a line between two known points.</source>
      <translation>Una tabla o capa, una fila por lectura en una línea entre dos puntos conocidos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Bearing</source>
      <translation>Azimut leído</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>As read: a number, or text such as N45W.</source>
      <translation>Tal como se leyó: un número, o texto como N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Compass</source>
      <translation>Brújula</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Which compass it was read with. Without a field all rows are of one compass.</source>
      <translation>Con qué brújula se leyó. Sin campo, todas las filas son de una sola brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>1-sigma, degrees. 1 is usual for a sighted bearing with a hand-held compass.</source>
      <translation>1 sigma, en grados. 1 es lo habitual en una visual con brújula de mano.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>Uncertainty of a known point</source>
      <translation>Incertidumbre de un punto conocido</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>1-sigma in easting and in northing, metres; it matters on short lines.</source>
      <translation>1 sigma en X y en Y, en metros; influye en las líneas cortas.</translation>
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
      <source>BEARING_FIELD is needed: it holds the readings.</source>
      <translation>Hace falta BEARING_FIELD: contiene las lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/check_compass.py" />
      <source>{compass}: add {error} ± {sigma} degrees to its readings.</source>
      <translation>{compass}: sume {error} ± {sigma} grados a sus lecturas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>Compasses held against known lines</source>
      <translation>Brújulas comprobadas en líneas conocidas</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>The index error is what must be added to the readings of a compass; subtract it from the ring setting to allow for it. Uncertainties are 1-sigma. Readings under suspicion of a slip were left out.</source>
      <translation>El error de índice es lo que hay que sumar a las lecturas de una brújula; para compensarlo, réstelo del ajuste del limbo. Las incertidumbres son de 1 sigma. Se dejaron fuera las lecturas con sospecha de equivocación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <source>compass</source>
      <translation>brújula</translation>
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
      <source>Azimuths between the known points are those of the geodesic on the ellipsoid, from true north. A reading is taken to be good to {reading}° and a point to {point} m (1-sigma); long lines weigh more than short ones. The uncertainty of the declination is part of that of the index error.</source>
      <translation>Los azimutes entre los puntos conocidos son los de la geodésica en el elipsoide, desde el norte verdadero. La incertidumbre de una lectura se toma como {reading}° y la de un punto como {point} m (1 sigma); las líneas largas pesan más que las cortas. La incertidumbre del error de índice incluye la de la declinación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/compass_report.py" />
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Readings by source of their declination: {sources}.</source>
      <translation>Lecturas según la procedencia de su declinación: {sources}.</translation>
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
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>{key}: there is no coordinate reference system that leads to places on Earth.</source>
      <translation>{key}: no hay un sistema de referencia de coordenadas que lleve a lugares de la Tierra.</translation>
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
      <source>target: a point sighted from several stations. observer: where you stood, from known landmarks.</source>
      <translation>target: un punto visado desde varias estaciones. observer: dónde estaba usted, a partir de referencias conocidas.</translation>
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
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Vertical angle</source>
      <translation>Ángulo vertical</translation>
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
      <source>degrees_up: from the horizon, up positive. zenith: from straight up. percent: rise over run.</source>
      <translation>degrees_up: desde el horizonte, positivo hacia arriba. zenith: ángulo cenital. percent: pendiente en tanto por ciento.</translation>
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
      <source>Metres, of the point that was sighted. Left empty: the third coordinate, where there is one.</source>
      <translation>Metros, la del punto visado. Si se deja vacío: la tercera coordenada, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Metres above sea level. For a target: of the ground at the station; left empty, the points' own z.</source>
      <translation>Metros sobre el nivel del mar. Para target: la cota del terreno en la estación; si se deja vacío, la z de los propios puntos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Height of the eye</source>
      <translation>Altura del ojo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Metres above the ground.</source>
      <translation>Metros sobre el terreno.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Uncertainty of a bearing</source>
      <translation>Incertidumbre de un azimut</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Uncertainty of a vertical angle</source>
      <translation>Incertidumbre de un ángulo vertical</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Refraction coefficient</source>
      <translation>Coeficiente de refracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Curvature of a ray of light over that of the Earth; 0.13 is usual over land by day, 0 for none.</source>
      <translation>Curvatura del rayo de luz entre la de la Tierra; 0,13 es lo habitual sobre tierra y de día; 0, ninguna.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Places</source>
      <translation>Posiciones</translation>
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
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Rays</source>
      <translation>Líneas de las visuales</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>Every row of the sights, with its line to the place and how far the bearing is off.</source>
      <translation>Cada fila de las visuales, con su línea hasta la posición y cuánto difiere el azimut.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>FIND is needed: is it a target or an observer that is looked for?</source>
      <translation>Hace falta FIND: ¿se busca un punto visado (target) o un observador (observer)?</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <source>BEARING_FIELD is needed: it holds the bearings.</source>
      <translation>Hace falta BEARING_FIELD: contiene los azimutes.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/locate_by_bearings.py" />
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
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
      <source>Legs</source>
      <translation>Lados</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>A table, one row a leg, in any order.</source>
      <translation>Una tabla, una fila por lado, en cualquier orden.</translation>
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
      <source>Fore bearing</source>
      <translation>Azimut directo</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Read at the start toward the end, a number or N45W.</source>
      <translation>Leído en el inicio hacia el final: un número o N45W (W es el oeste).</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Back bearing</source>
      <translation>Azimut inverso</translation>
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
      <source>slope: along the line of sight, needs the vertical angle. horizontal: already level.</source>
      <translation>slope: inclinada, según la visual; necesita el ángulo vertical. horizontal: ya reducida a la horizontal.</translation>
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
      <source>degrees_up: degrees above the horizon, negative below. zenith: degrees from straight up. percent: rise over run. Needed with vertical angles.</source>
      <translation>degrees_up: grados sobre el horizonte, negativos por debajo. zenith: ángulo cenital en grados. percent: pendiente en tanto por ciento. Necesario si hay ángulos verticales.</translation>
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
      <source>Metres above sea level. Left empty: no heights are worked out.</source>
      <translation>Metros sobre el nivel del mar. Si se deja vacío, no se calculan cotas.</translation>
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
      <source>Fore and back bearing agree within</source>
      <translation>Tolerancia entre azimut directo e inverso</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Degrees. Legs whose residual is no greater are taken as free of local attraction. About twice what the compass can be read to.</source>
      <translation>Grados. Los lados cuyo residuo no la supera se toman como libres de atracción local. Aproximadamente el doble de la apreciación con que se lee la brújula.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Uncertainty of a distance</source>
      <translation>Incertidumbre de una distancia</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>1-sigma, percent of the distance: 0.2 with a tape on rough ground, 2 or more by pacing.</source>
      <translation>1 sigma, en tanto por ciento de la distancia: 0,2 con cinta en terreno abrupto, 2 o más a pasos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Refraction</source>
      <translation>Refracción</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Curvature of a ray of light over that of the Earth; it matters for heights over long legs.</source>
      <translation>Coeficiente: curvatura del rayo de luz entre la de la Tierra; influye en las cotas de los lados largos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>{key} is needed.</source>
      <translation>Hace falta {key}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>Say what the distance is: DISTANCE_MEANS is slope or horizontal.</source>
      <translation>Indique qué es la distancia: DISTANCE_MEANS es slope u horizontal.</translation>
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
      <source>{key}: no leg starts or ends at a station "{name}".</source>
      <translation>{key}: ningún lado empieza ni acaba en una estación «{name}».</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>{key} is no place on Earth in the CRS.</source>
      <translation>{key} no es un lugar de la Tierra en ese SRC.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/reduce_traverse.py" />
      <source>START_STATION and END_STATION are the same station.</source>
      <translation>START_STATION y END_STATION son la misma estación.</translation>
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

A sight that leaves the DEM or the longest range without a hit is rejected as no_hit; one that passes over ground without heights, as dem_gap, since it may have met it there. Rejected rows have no geometry, so that no plane is laid through them.</source>
      <translation>De un azimut y un ángulo vertical al afloramiento del otro lado del valle: dónde corta la visual por primera vez el terreno de un MDE, a qué distancia y a qué cota. Cada fila de las estaciones es una visual. Tres puntos así, sobre una capa que nadie puede tocar, dan su plano (Planos a partir de puntos).

Las visuales se curvan por la curvatura terrestre y la refracción del aire. range es la distancia horizontal sobre el terreno; range_lo y range_hi son los alcances para un ángulo vertical una sigma menor y mayor, y quedan vacíos si esa visual no corta el terreno. sig_across es el error lateral debido al azimut; sig_elev, el error de cota que produce el ángulo vertical a esa distancia; curv_refr, la parte de la cota debida a curvatura y refracción; todo en metros.

La visual que sale del MDE o del alcance máximo sin cortar el terreno se rechaza como no_hit; la que pasa sobre terreno sin cotas, como dem_gap, porque pudo cortarlo allí. Las filas rechazadas no tienen geometría, para que no se ajuste ningún plano a ellas.</translation>
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
      <source>degrees_up: degrees above the horizon, negative below. zenith: degrees from straight up. percent: rise over run.</source>
      <translation>degrees_up: grados sobre el horizonte, negativos por debajo. zenith: ángulo cenital en grados. percent: pendiente en tanto por ciento.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Heights of the ground that the sights meet.</source>
      <translation>Cotas del terreno que cortan las visuales.</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/sight_to_terrain.py" />
      <source>Height of the ground at the station, in the unit of heights; where it is empty, that of the DEM.</source>
      <translation>Cota del terreno en la estación, en la unidad de las cotas; donde está vacía, la del MDE.</translation>
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
      <source>Metres; no sight is followed farther.</source>
      <translation>Metros; ninguna visual se sigue más allá.</translation>
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
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>Compass traverse</source>
      <translation>Poligonal con brújula</translation>
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
      <source>Stations</source>
      <translation>Estaciones</translation>
    </message>
    <message>
      <location filename="../processing_algs/sightings/traverse_report.py" />
      <source>station</source>
      <translation>estación</translation>
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
      <source>height, m</source>
      <translation>cota, m</translation>
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
      <location filename="../processing_algs/symbols/shared.py" />
      <source>Style file</source>
      <translation>Archivo de estilo</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/shared.py" />
      <source>QGIS style files (*.qml)</source>
      <translation>Archivos de estilo de QGIS (*.qml)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/shared.py" />
      <source>The style alone, for other layers with the same fields. The output has its style in any case.</source>
      <translation>Solo el estilo, para otras capas con los mismos campos. La salida lleva su estilo en todo caso.</translation>
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
      <source>strike_right: strike with the dip to the right. strike_left: strike with the dip to the left. dip_direction: azimuth of the dip. trend: all rows are lines.</source>
      <translation>strike_right: rumbo con el buzamiento a la derecha. strike_left: rumbo con el buzamiento a la izquierda. dip_direction: dirección de buzamiento. trend: todas las filas son líneas.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>North of the azimuths</source>
      <translation>Norte de los azimutes</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>true, or grid: counted from the grid of the layer's coordinate reference system.</source>
      <translation>true (verdadero) o grid: contados desde la cuadrícula del sistema de referencia de coordenadas de la capa.</translation>
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
      <source>bar: strike bar with a tick down the dip. arrow: arrow down the dip with the number at its tip, as on British maps. Other planes have their bars in either case.</source>
      <translation>bar: barra de rumbo con un trazo según el buzamiento. arrow: flecha según el buzamiento con el número en la punta, como en los mapas británicos. Los demás planos llevan su barra en ambos casos.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Length of the strike bar (mm on paper)</source>
      <translation>Longitud de la barra de rumbo (mm en el papel)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>5 is the standard's. Everything else keeps its proportion to it.</source>
      <translation>5 es la de la norma. Todo lo demás guarda su proporción con ella.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Length of the dip tick (mm on paper)</source>
      <translation>Longitud del trazo de buzamiento (mm en el papel)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Left empty: a fifth of the bar.</source>
      <translation>Si se deja vacío: un quinto de la barra.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Width of lines (mm on paper)</source>
      <translation>Grosor de las líneas (mm en el papel)</translation>
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
      <source>tail, middle or tip.</source>
      <translation>tail (origen), middle (centro) o tip (punta).</translation>
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
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Fields used: {fields}.</source>
      <translation>Campos usados: {fields}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_attitudes.py" />
      <source>Rows that do not say their kind are read as {kind}, since all rows are lines.</source>
      <translation>Las filas que no indican su tipo se leen como {kind}, porque todas las filas son líneas.</translation>
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

Fields of GeMS (Type, IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters) are found by their names. A half-width in metres needs the scale of the map. A line whose type is not known is drawn as such, and never as a contact.</source>
      <translation>Da a una capa de contactos, fallas y ejes de pliegue las líneas de FGDC-STD-013-2006: continuas donde están bien situadas, de trazos largos donde su situación es aproximada, de trazos cortos donde es inferida, de puntos donde están cubiertas, con interrogaciones donde su identidad o su existencia es dudosa.

Lo que tiene un lado lo lleva a la derecha del sentido en que se dibujó la línea: bola y barra y semicírculos en el bloque hundido, dientes y trazos en el bloque superior, recuadros en el bloque levantado.

Los campos de GeMS (Type, IsConcealed, ExistenceConfidence, IdentityConfidence, LocationConfidenceMeters) se encuentran por su nombre. Una semianchura en metros necesita la escala del mapa. La línea cuyo tipo no se conoce se dibuja como tal, nunca como contacto.</translation>
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
      <source>Your words for the types</source>
      <translation>Sus palabras para los tipos</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Your word = type, such as F1=normal_fault;K=contact. Types: {types}.</source>
      <translation>Su palabra = tipo, por ejemplo F1=normal_fault;K=contact. Tipos: {types}.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Type of lines that do not say</source>
      <translation>Tipo de las líneas que no lo indican</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Used where there is no field, or it is empty.</source>
      <translation>Se usa donde no hay campo o está vacío.</translation>
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
      <source>Y or N. Left empty: IsConcealed, where there is one.</source>
      <translation>Y (sí) o N (no). Si se deja vacío: IsConcealed, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Confidence in the identity</source>
      <translation>Confianza en la identidad</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>certain or questionable. Left empty: IdentityConfidence, where there is one.</source>
      <translation>certain (segura) o questionable (dudosa). Si se deja vacío: IdentityConfidence, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Confidence in the existence</source>
      <translation>Confianza en la existencia</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>certain or questionable. Left empty: ExistenceConfidence, where there is one.</source>
      <translation>certain (segura) o questionable (dudosa). Si se deja vacío: ExistenceConfidence, si existe.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Half-width of the zone the line lies in (m)</source>
      <translation>Semianchura de la zona en que está la línea (m)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Left empty: LocationConfidenceMeters, where there is one and the scale is given.</source>
      <translation>Si se deja vacío: LocationConfidenceMeters, si existe y se indica la escala.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Scale of the map (denominator)</source>
      <translation>Escala del mapa (denominador)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Such as 24000. Needed to tell from the half-width how well a line is located.</source>
      <translation>Por ejemplo 24000. Hace falta para deducir de la semianchura la exactitud de la situación.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Approximate over (mm on the map)</source>
      <translation>Aproximada a partir de (mm en el mapa)</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Half-width on the map over which a line is drawn as approximate.</source>
      <translation>Semianchura en el mapa a partir de la cual una línea se dibuja como aproximada.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/style_lines.py" />
      <source>Inferred over (mm on the map)</source>
      <translation>Inferida a partir de (mm en el mapa)</translation>
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
      <source>Title</source>
      <translation>Título</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Explanation of map symbols</source>
      <translation>Explicación de los símbolos del mapa</translation>
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
      <source>Dots to the inch of a PNG</source>
      <translation>Puntos por pulgada de un PNG</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>SVG and PDF do not need it.</source>
      <translation>SVG y PDF no lo necesitan.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>Explanation</source>
      <translation>Explicación</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/symbol_sheet.py" />
      <source>The ending of the name says which: .svg, .pdf or .png.</source>
      <translation>La extensión del nombre dice cuál: .svg, .pdf o .png.</translation>
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
      <source>OUTPUT: the name must end in one of {endings}.</source>
      <translation>OUTPUT: el nombre debe acabar en una de estas extensiones: {endings}.</translation>
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
      <source>1 :</source>
      <translation>1:</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Denominators, such as 25000, 50000, 100000.</source>
      <translation>Denominadores, por ejemplo 25000, 50000, 100000.</translation>
    </message>
    <message>
      <location filename="../processing_algs/symbols/thin_attitudes.py" />
      <source>Least distance between symbols (mm on paper)</source>
      <translation>Distancia mínima entre símbolos (mm en el papel)</translation>
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
  </context>
</TS>
