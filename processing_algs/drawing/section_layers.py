"""Layers of a drawn section: tables of a GeoPackage in section space, each with its style."""

from dataclasses import dataclass
from math import isnan

from qgis.core import (
    Qgis,
    QgsCategorizedSymbolRenderer,
    QgsFeature,
    QgsField,
    QgsFields,
    QgsFillSymbol,
    QgsGeometry,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsNullSymbolRenderer,
    QgsPalLayerSettings,
    QgsPointXY,
    QgsProcessingException,
    QgsProperty,
    QgsRendererCategory,
    QgsRuleBasedLabeling,
    QgsSimpleMarkerSymbolLayer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsVectorFileWriter,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QMetaType
from qgis.PyQt.QtGui import QColor

from ..core import colour
from ..core.printable import printable
from ..gis.i18n import tr
from ..gis.section_lines import section_space
from .literal import literal
from .section_drawing import LOOKS

TEXT, REAL = QMetaType.Type.QString, QMetaType.Type.Double
INK, FAULT, SEA = "#000000", "#b02a1a", "#2a6f97"
FADE = 65.0  # how much paler the farthest attitude is. Units: percent

# Marks in the middle of a tick, and their size in mm. The half circle lies on the upper side: the bed was turned over.
MARKS = {
    "overturned": (Qgis.MarkerShape.HalfArc, 2.2),
    "vertical": (Qgis.MarkerShape.Line, 1.7),
    "line": (Qgis.MarkerShape.Circle, 1.1),
}
LINE_WIDTHS = {
    "axis": 0.25, "tick": 0.2, "base": 0.25, "sea_level": 0.2, "bend": 0.18, "leader": 0.12, "hole": 0.5, "pick": 0.35,
    "meets": 0.18,
}  # fmt: skip
TABLES = ("lettering", "interpretation", "attitudes", "contacts", "profile", "draft", "drawing", "units", "draft_areas")
"""What the names of a section's tables end in, top layer first."""
GEMS_LINES, GEMS_AREAS = "ContactsAndFaults", "MapUnitPolys"


@dataclass(frozen=True)
class Table:
    """One table to write.

    Attributes
    ----------
    name : str
    kind : Qgis.WkbType
    fields : QgsFields
    rows : list of (QgsGeometry, list)
    """

    name: str
    kind: Qgis.WkbType
    fields: QgsFields
    rows: list


def fields_of(**types):
    """Fields by name and type; a text may give its length as (TEXT, length)."""
    fields = QgsFields()
    for name, kind in types.items():
        field = QgsField(name, kind[0], len=kind[1]) if isinstance(kind, tuple) else QgsField(name, kind)
        fields.append(field)
    return fields


def drawing_tables(prefix, drawing):
    """Make the tables of what was drawn: bands of units, lines, lettering.

    Parameters
    ----------
    prefix : str
        What the tables' names begin with.
    drawing : section_drawing.Drawing

    Returns
    -------
    list of Table
    """
    bands = [(_polygon(outline), [label]) for label, outline in drawing.bands]
    lines = [(_line(points), [what]) for what, points in drawing.lines if what not in ("contact", "fault")]
    texts = [
        (
            QgsGeometry.fromPointXY(QgsPointXY(text.x, text.y)),
            [text.what, printable(text.text), text.halign, text.valign, text.angle],
        )
        for text in drawing.texts
    ]
    lettering = fields_of(what=TEXT, text=TEXT, halign=TEXT, valign=TEXT, angle=REAL)
    return [
        Table(f"{prefix}units", Qgis.WkbType.Polygon, fields_of(label=TEXT), bands),
        Table(f"{prefix}drawing", Qgis.WkbType.LineString, fields_of(what=TEXT), lines),
        Table(f"{prefix}lettering", Qgis.WkbType.Point, lettering, texts),
    ]


def contact_table(prefix, drawing, marks):
    """Make the table of contacts and faults, drawn through the ground, in the order of ``marks``."""
    drawn = [points for what, points in drawing.lines if what in ("contact", "fault")]
    rows = [
        (
            _line(points),
            [mark.what, mark.label, mark.distance, mark.elev, None if isnan(mark.app_dip) else mark.app_dip],
        )
        for mark, points in zip(marks, drawn)
    ]
    fields = fields_of(what=TEXT, label=TEXT, distance=REAL, elev=REAL, app_dip=REAL)
    return Table(f"{prefix}contacts", Qgis.WkbType.LineString, fields, rows)


def profile_table(prefix, drawing):
    """Make the table of the ground."""
    rows = [(_line(points), []) for points in drawing.ground]
    return Table(f"{prefix}profile", Qgis.WkbType.LineString, QgsFields(), rows)


def draft_tables(prefix, content, ve, rule):
    """Make the tables of a draft, marked as such: its lines, and the areas of its units."""
    paths = [
        (
            _line(path.points * (1.0, ve)),
            [path.what, path.name or None, int(path.in_air), None if isnan(path.away) else path.away, rule, "draft"],
        )
        for path in content.draft
    ]
    lines = fields_of(what=TEXT, cross_name=TEXT, in_air=QMetaType.Type.Int, away=REAL, rule=TEXT, method=TEXT)
    areas = [(_polygon(ring * (1.0, ve)), [unit, rule, "draft"]) for unit, ring in content.draft_areas]
    return [
        Table(f"{prefix}draft", Qgis.WkbType.LineString, lines, paths),
        Table(f"{prefix}draft_areas", Qgis.WkbType.Polygon, fields_of(unit=TEXT, rule=TEXT, method=TEXT), areas),
    ]


def interpretation_tables(prefix, *, gems):
    """Make the empty tables to draw the interpretation on.

    Parameters
    ----------
    prefix : str
    gems : bool
        Whether to name and field them as the section classes of GeMS.

    Returns
    -------
    list of Table

    References
    ----------
    US Geological Survey, 2020, GeMS (Geologic Map Schema), Techniques and Methods 11-B10, appendix 2.
    """
    if not gems:
        fields = fields_of(kind=(TEXT, 40), certainty=(TEXT, 40), note=(TEXT, 254))
        return [Table(f"{prefix}interpretation", Qgis.WkbType.LineString, fields, [])]
    lines = fields_of(
        Type=(TEXT, 254), IsConcealed=(TEXT, 1), LocationConfidenceMeters=REAL, ExistenceConfidence=(TEXT, 50),
        IdentityConfidence=(TEXT, 50), Label=(TEXT, 50), Symbol=(TEXT, 254), DataSourceID=(TEXT, 50), Notes=(TEXT, 254),
    )  # fmt: skip
    areas = fields_of(
        MapUnit=(TEXT, 10), IdentityConfidence=(TEXT, 50), Label=(TEXT, 50), Symbol=(TEXT, 254),
        DataSourceID=(TEXT, 50), Notes=(TEXT, 254),
    )  # fmt: skip
    for fields, name in ((lines, GEMS_LINES), (areas, GEMS_AREAS)):
        fields.append(QgsField(f"{prefix}{name}_ID", TEXT, len=50))
    return [
        Table(f"{prefix}{GEMS_LINES}", Qgis.WkbType.LineString, lines, []),
        Table(f"{prefix}{GEMS_AREAS}", Qgis.WkbType.Polygon, areas, []),
    ]


def write_tables(path, tables, context):
    """Write tables into a GeoPackage, a new one or one that has other tables.

    Raises
    ------
    QgsProcessingException
        If a row or a table is refused.
    """
    for number, table in enumerate(tables):
        options = QgsVectorFileWriter.SaveVectorOptions()
        options.driverName, options.layerName = "GPKG", table.name
        options.actionOnExistingFile = (
            QgsVectorFileWriter.ActionOnExistingFile.CreateOrOverwriteLayer
            if number or path.exists()
            else QgsVectorFileWriter.ActionOnExistingFile.CreateOrOverwriteFile
        )
        writer = QgsVectorFileWriter.create(str(path), table.fields, table.kind, section_space(), context, options)
        fine = writer.hasError() == QgsVectorFileWriter.WriterError.NoError
        for geometry, attributes in table.rows if fine else ():
            feature = QgsFeature(table.fields)
            feature.setGeometry(geometry)
            feature.setAttributes(attributes)
            fine = fine and writer.addFeature(feature)
        reason = writer.errorMessage()
        del writer  # closes the file
        if not fine:
            raise QgsProcessingException(
                tr("Rows could not be written to {place}: {reason}").format(place=f"{path}|{table.name}", reason=reason)
            )


def open_layer(path, table, title):
    """Open a table as a layer."""
    layer = QgsVectorLayer(f"{path}|layername={table}", title, "ogr")
    if not layer.isValid():
        raise QgsProcessingException(tr("The layer {name} of {place} cannot be read.").format(name=table, place=path))
    return layer


# Styles


def style_profile(layer):
    """Draw the ground."""
    layer.setRenderer(QgsSingleSymbolRenderer(_stroke(0.4)))


def style_interpretation(layer):
    """Draw what the geologist will draw: lines of middling weight, areas without a fill."""
    if layer.geometryType() == Qgis.GeometryType.Polygon:
        symbol = QgsFillSymbol.createSimple({"style": "no", "outline_color": INK, "outline_width": "0.2"})
    else:
        symbol = _stroke(0.35)
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))


def unit_colors(labels, renderer=None):
    """Choose the colours of units.

    Parameters
    ----------
    labels : iterable of str
    renderer : QgsCategorizedSymbolRenderer, optional
        Of the map: units it has keep their colours and names.

    Returns
    -------
    dict of str to (str, str)
        Label to colour and name in the legend, in the renderer's order, then in the alphabet's.
    """
    known = {}
    for category in renderer.categories() if renderer is not None else ():
        values = category.value() if isinstance(category.value(), list) else [category.value()]
        known |= {str(value): (category.symbol().color().name(), category.label() or str(value)) for value in values}
    labels = {label for label in labels if label}
    colors = {label: known[label] for label in known if label in labels}
    named = [*colors, *sorted(labels - colors.keys())]
    # The one set of colours there is, for units that the map does not colour.
    chosen = colour.choose(named, {label: color for label, (color, _) in colors.items()}, ()).colors
    return {label: colors.get(label, (chosen[label], label)) for label in named}


def style_units(layer, colors):
    """Fill the units.

    Parameters
    ----------
    layer : QgsVectorLayer
    colors : dict
        As `unit_colors` gives them.
    """
    renderer = QgsCategorizedSymbolRenderer("label")
    present = layer.uniqueValues(layer.fields().lookupField("label"))
    for label, (color, name) in colors.items():
        if label in present:
            fill = QgsFillSymbol.createSimple({"color": color, "outline_color": "#707070", "outline_width": "0.08"})
            renderer.addCategory(QgsRendererCategory(label, fill, literal(name)))
    layer.setRenderer(renderer)


def style_unit_lines(layer, name, colors):
    """Draw stretches of units as broad lines.

    Parameters
    ----------
    layer : QgsVectorLayer
    name : str
        Field with their labels.
    colors : dict
        As `unit_colors` gives them.
    """
    renderer = QgsCategorizedSymbolRenderer(name)
    for label, (color, title) in colors.items():
        renderer.addCategory(QgsRendererCategory(label, _stroke(1.2, color), literal(title)))
    renderer.addCategory(QgsRendererCategory("", _stroke(1.2, "#808080"), tr("Unit without a name")))
    layer.setRenderer(renderer)


def style_crossings(layer):
    """Mark crossings by upright strokes."""
    mark = QgsSimpleMarkerSymbolLayer(Qgis.MarkerShape.Line, 3.0)
    mark.setStrokeWidth(0.3)
    marker = QgsMarkerSymbol()
    marker.changeSymbolLayer(0, mark)
    layer.setRenderer(QgsSingleSymbolRenderer(marker))


def style_contacts(layer):
    """Draw contacts and faults."""
    renderer = QgsCategorizedSymbolRenderer("what")
    present = layer.uniqueValues(layer.fields().lookupField("what"))
    for what, width, color, name in (("contact", 0.25, INK, tr("Contact")), ("fault", 0.5, FAULT, tr("Fault"))):
        if what in present:
            renderer.addCategory(QgsRendererCategory(what, _stroke(width, color), literal(name)))
    layer.setRenderer(renderer)


def style_drawing(layer):
    """Draw axes, bends and leaders."""
    renderer = QgsCategorizedSymbolRenderer("what")
    for what, width in LINE_WIDTHS.items():
        dashed = {"sea_level": "dash", "bend": "dash", "meets": "dot"}.get(what, "solid")
        color = SEA if what == "sea_level" else INK
        renderer.addCategory(QgsRendererCategory(what, _stroke(width, color, dashed), literal(what)))
    layer.setRenderer(renderer)


def style_lettering(layer):
    """Letter the section: every text at its own place, each kind in its own type."""
    layer.setRenderer(QgsNullSymbolRenderer())
    root = QgsRuleBasedLabeling.Rule(None)
    for what, look in LOOKS.items():
        rule = QgsRuleBasedLabeling.Rule(_lettering(look), filterExp=f"\"what\" = '{what}'", description=literal(what))
        root.appendChild(rule)
    layer.setLabeling(QgsRuleBasedLabeling(root))
    layer.setLabelsEnabled(True)


def _lettering(look):
    settings = QgsPalLayerSettings()
    settings.fieldName = "text"
    settings.setFormat(look.text_format())
    settings.placement = Qgis.LabelPlacement.OverPoint
    settings.placementSettings().setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapAtNoCost)
    settings.obstacleSettings().setIsObstacle(False)
    place = QgsPalLayerSettings.Property
    wanted = {
        place.PositionX: QgsProperty.fromExpression("x($geometry)"),
        place.PositionY: QgsProperty.fromExpression("y($geometry)"),
        place.Hali: QgsProperty.fromField("halign"),
        place.Vali: QgsProperty.fromField("valign"),
        place.LabelRotation: QgsProperty.fromField("angle"),
        place.AlwaysShow: QgsProperty.fromExpression("true"),
    }
    properties = settings.dataDefinedProperties()
    for key, value in wanted.items():
        properties.setProperty(key, value)
    settings.setDataDefinedProperties(properties)
    return settings


def style_ticks(layer, reach):
    """Draw attitudes: by kind, with marks for overturned and vertical beds, the farther off the section the paler.

    The renderer is one of categories, for QGIS's elevation profile draws nothing of one of rules.

    Parameters
    ----------
    layer : QgsVectorLayer
        With the fields ``tick`` and ``offset``, and ``kind`` if the kinds are known.
    reach : float
        Distance at which an attitude is palest. Units: metres.
    """
    by_kind = layer.fields().lookupField("kind") >= 0
    present = {(str(row["kind"]) if by_kind else "", str(row["tick"])) for row in layer.getFeatures()}
    groups = _groups() if by_kind else (("all", tr("Attitude"), ("",), {}),)
    fade = f'100 - {FADE} * min(abs("offset") / {max(reach, 1e-9)!r}, 1)'
    cases, categories = [], []
    for group, name, kinds, look in groups:
        words = ", ".join(f"'{kind}'" for kind in kinds)
        cases.append(f"WHEN \"kind\" IN ({words}) THEN '{group}'" if by_kind else f"WHEN true THEN '{group}'")
        known = {tick for kind, tick in present if kind in kinds}
        for tick, suffix in _tick_names().items():
            if tick in known:
                categories.append(
                    QgsRendererCategory(f"{group} {tick}", _tick_symbol(tick, look, fade), literal(name + suffix))
                )
    listed = {kind for _, _, kinds, _ in groups for kind in kinds}
    if any(kind not in listed and tick in _tick_names() for kind, tick in present):
        categories.append(QgsRendererCategory("", _tick_symbol("inclined", {}, fade), tr("Other attitude")))
    expression = f"CASE {' '.join(cases)} ELSE '' END || ' ' || coalesce(\"tick\", '')"
    layer.setRenderer(QgsCategorizedSymbolRenderer(expression, categories))


def _groups():
    """Groups of kinds that are drawn alike: id, name, kinds, look."""
    green, grey, blue, purple = "#1d6b45", "#6a6a6a", "#4a4a8a", "#7a2f86"
    lines = ("lineation", "slickenline", "fold_axis", "other_line")
    cleavages = ("cleavage", "foliation", "axial_plane")
    return (
        ("beds", tr("Bedding or contact"), ("bedding", "contact"), {}),
        ("cleavages", tr("Cleavage or foliation"), cleavages, {"color": green, "dash": (1.2, 0.7)}),
        ("joints", tr("Joint or vein"), ("joint", "vein"), {"color": grey, "dash": (0.5, 0.6)}),
        ("faults", tr("Fault plane or dike"), ("fault", "dike"), {"color": FAULT}),
        ("planes", tr("Other plane"), ("other_plane",), {"color": blue}),
        ("lines", tr("Line, projected"), lines, {"color": purple}),
    )


def _tick_names():
    """What follows the name of a group for each way of drawing an attitude."""
    return {"inclined": "", "overturned": tr(", overturned"), "vertical": tr(", vertical"), "line": ""}


def _tick_symbol(tick, look, fade):
    """Make the symbol of a tick; ``fade`` is the expression of its opacity."""
    color = look.get("color", INK)
    symbol = _stroke(0.35, color)
    if "dash" in look:
        layer = symbol.symbolLayer(0)
        layer.setUseCustomDashPattern(True)
        layer.setCustomDashVector(list(look["dash"]))
        layer.setCustomDashPatternUnit(Qgis.RenderUnit.Millimeters)
    symbol.setDataDefinedProperty(QgsSymbol.Property.Opacity, QgsProperty.fromExpression(fade))
    if tick in MARKS:
        shape, size = MARKS[tick]
        mark = QgsSimpleMarkerSymbolLayer(shape, size)
        mark.setColor(QColor(0, 0, 0, 0))
        mark.setStrokeColor(QColor(color))
        mark.setStrokeWidth(0.3)
        marker = QgsMarkerSymbol()
        marker.changeSymbolLayer(0, mark)
        along = QgsMarkerLineSymbolLayer(True)
        along.setPlacements(Qgis.MarkerLinePlacement.CentralPoint)
        along.setSubSymbol(marker)
        symbol.appendSymbolLayer(along)
    return symbol


def _stroke(width, color=INK, style="solid"):
    return QgsLineSymbol.createSimple(
        {"color": color, "width": str(width), "line_style": style, "capstyle": "flat", "joinstyle": "round"}
    )


def _line(points):
    return QgsGeometry.fromPolylineXY([QgsPointXY(x, y) for x, y in points])


def _polygon(points):
    return QgsGeometry.fromPolygonXY([[QgsPointXY(x, y) for x, y in points]])
