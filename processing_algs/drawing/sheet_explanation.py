"""The explanation of a sheet: units in stratigraphic order, their correlation, symbols; what is drawn and no more."""

from qgis.core import (
    Qgis,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFillSymbol,
    QgsRenderContext,
    QgsWkbTypes,
)

from ..gis.i18n import tr
from .parts import number_text
from .sheet_items import COLUMN, GROUP, NAME, SMALL, WORDS, Item, Part, heading, text_item
from .type import SERIF, Look
from .unit_patterns import unit_fill

SWATCH = (11.0, 6.0)  # Units: mm
TEXT_AT = SWATCH[0] + 3.0
CODE = Look(7.5, families=SERIF)
PICTURE = 30.0  # room for the picture of a symbol. Units: mm
LEAST_ROW, LEAST_PICTURE = 4.6, 3.0
STEP = 6.0  # of its ages. Units: mm
OUTLINE = {"style": "no", "outline_color": "#000000", "outline_width": "0.15", "joinstyle": "miter"}


def age_words(unit):
    """Write a unit's age as the table has it; empty where it has none."""
    if not unit.has_age:
        return ""
    if unit.age_old == unit.age_young:
        return f"{unit.age_old:g}"
    return f"{unit.age_young:g}\u2013{unit.age_old:g}"


def _swatch(unit, fills, x, y):
    wide, high = SWATCH
    fill = fills[unit.code].clone()
    return [
        Item("fill", x, y, wide, high, fill),
        Item("fill", x, y, wide, high, QgsFillSymbol.createSimple(OUTLINE)),
    ]


def unit_parts(units, fills):
    """Describe the units of a map, youngest first.

    Parameters
    ----------
    units : list of core.units.Unit
    fills : dict of str to QgsFillSymbol
        As on the map.

    Returns
    -------
    list of Part
    """
    if not units:
        return []
    parts, group = [heading("units", tr("Description of map units"))], ""
    for number, unit in enumerate(units):
        if unit.group and unit.group != group:
            group = unit.group
            item = text_item(GROUP, group, 0.0, 0.8, COLUMN)
            parts.append(Part(f"unit group {number}", item.height + 0.8, [item], with_next=True))
        parts.append(_unit(number, unit, fills))
    return parts


def _unit(number, unit, fills):
    items = _swatch(unit, fills, 0.0, 0.0)
    code = text_item(CODE, unit.code, 0.0, 0.0, SWATCH[0], align="centre")
    items.append(Item("text", 0.0, (SWATCH[1] - code.height) / 2, SWATCH[0], code.height, unit.code, CODE, "centre"))
    y, wide = 0.0, COLUMN - TEXT_AT
    age = age_words(unit)
    name = (unit.name or unit.code) + (f" ({age})" if age else "")
    told = text_item(NAME, name, TEXT_AT, y, wide)
    items.append(told)
    y += told.height
    words = unit.description or unit.rock
    if words:
        told = text_item(WORDS, words[:1].upper() + words[1:], TEXT_AT, y, wide)
        items.append(told)
        y += told.height
    return Part(f"unit {number}", max(y, SWATCH[1]), items)


# -- correlation -------------------------------------------------------------------------------------------------------


def correlation_parts(units, fills):
    """Draw how the units of a map are related in age.

    Parameters
    ----------
    units : list of core.units.Unit
    fills : dict of str to QgsFillSymbol

    Returns
    -------
    list of Part
        Empty where not every unit has an age. The older a unit the lower it stands; ages that bound units are set at
        equal distances. Units of one sort stand in one column where their ages do not overlap.
    """
    if len(units) < 2 or not all(unit.has_age for unit in units):
        return []
    ages = sorted({age for unit in units for age in (unit.age_young, unit.age_old)})
    at = {age: number for number, age in enumerate(ages)}
    spans = {unit.code: (at[unit.age_young], max(at[unit.age_old], at[unit.age_young])) for unit in units}
    lanes, sorts = _lanes(units, spans)
    room = COLUMN - 16.0
    wide = min(14.0, (room - 1.0) / lanes - 1.0)
    if wide < 5.0:
        return []
    step = STEP if len(ages) <= 24 else max(2.5, 150.0 / len(ages))
    top = 5.0 if any(sorts) else 1.0
    items = [text_item(SMALL, f"{ages[0]:g}", 0.0, top - 1.2, 13.0, align="right")]
    for age, number in list(at.items())[1:]:
        items.append(text_item(SMALL, f"{age:g}", 0.0, top + number * step - 1.2, 13.0, align="right"))
    placed = {}
    for unit in units:
        first, last = spans[unit.code]
        lane = lanes_of(units, spans)[unit.code]
        x, y = 15.0 + lane * (wide + 1.0), top + first * step
        high = max(last - first, 0.7) * step - 0.4
        placed[unit.code] = x, y, wide, high
        items.append(Item("fill", x, y, wide, high, fills[unit.code].clone()))
        items.append(Item("fill", x, y, wide, high, QgsFillSymbol.createSimple(OUTLINE)))
        code = text_item(CODE, unit.code, x, y, wide, align="centre")
        items.append(Item("text", x, y + (high - code.height) / 2, wide, code.height, unit.code, CODE, "centre"))
    if any(sorts):
        names = sort_names()
        starts = {}
        for unit in units:
            starts.setdefault(unit.sort, []).append(placed[unit.code][0])
        free = 14.0
        for sort, xs in starts.items():
            if sort:
                span, needs = max(xs) + wide - min(xs), SMALL.width_mm(names[sort]) + 0.6
                x = max(min(xs) + (span - needs) / 2, free)
                if x + needs <= COLUMN:
                    items.append(text_item(SMALL, names[sort], x, 0.0, needs))
                    free = x + needs + 1.0
    high = top + (len(ages) - 1) * step + 3.0
    title = heading("correlation", tr("Correlation of map units"))
    return [title, Part("correlation chart", high, items)]


def sort_names():
    """Names of the sorts of units."""
    return {
        "surficial": tr("Surficial"),
        "sedimentary": tr("Sedimentary"),
        "volcanic": tr("Volcanic"),
        "intrusive": tr("Intrusive"),
        "metamorphic": tr("Metamorphic"),
        "": "",
    }


def _lanes(units, spans):
    """Number of lanes, and the sorts of the units."""
    return max(lanes_of(units, spans).values()) + 1, {unit.sort for unit in units}


def lanes_of(units, spans):
    """Lane of each unit: those of one sort side by side, none over another. Dict of code to int."""
    found, first = {}, 0
    for sort in dict.fromkeys(unit.sort for unit in units):
        ends = []
        for unit in (one for one in units if one.sort == sort):
            start, end = spans[unit.code]
            lane = next((n for n, used in enumerate(ends) if all(start >= e or end <= s for s, e in used)), None)
            if lane is None:
                lane = len(ends)
                ends.append([])
            ends[lane].append((start, max(end, start + 0.7)))
            found[unit.code] = first + lane
        first += len(ends)
    return found


# -- symbols -----------------------------------------------------------------------------------------------------------


def symbol_parts(entries, others):
    """Explain symbols.

    Parameters
    ----------
    entries : list of sheet.Entry
        Of attitudes and lines.
    others : list of (QgsSymbol, str)
        Of further layers, with their names.

    Returns
    -------
    list of Part
    """
    rows = [_entry(f"symbol {number}", entry) for number, entry in enumerate(entries)]
    rows += [_other(f"base {number}", symbol, name) for number, (symbol, name) in enumerate(others)]
    return [heading("symbols", tr("Explanation of map symbols")), *rows] if rows else []


def _named(name, high, picture, text):
    """Set a picture and its name side by side, their middles on one line."""
    label = text_item(WORDS, text, PICTURE + 2.0, 0.0, COLUMN - PICTURE - 2.0)
    tall = max(high, label.height, LEAST_ROW)
    text_at = Item("text", label.x, (tall - label.height) / 2, label.width, label.height, label.content, label.look)
    return Part(name, tall, [*picture((tall - high) / 2), text_at])


def _entry(name, entry):
    left, top, right, bottom = entry.bounds
    # QGIS draws nothing right of a picture that is no higher than a hair, so each has some air.
    middle, half = (top + bottom) / 2, max((bottom - top) / 2 + 0.2, LEAST_PICTURE / 2)
    left, right, top, bottom = left - 0.2, right + 0.2, middle - half, middle + half
    wide, high = right - left, bottom - top
    view = " ".join(number_text(value) for value in (left, top, wide, high))
    size = f'width="{number_text(wide)}mm" height="{number_text(high)}mm"'
    svg = f'<svg xmlns="http://www.w3.org/2000/svg" {size} viewBox="{view}">{entry.picture}</svg>'
    return _named(name, high, lambda y: [Item("picture", (PICTURE - wide) / 2, y, wide, high, svg)], entry.name)


def _other(name, symbol, text):
    kind = symbol.type()
    if kind == Qgis.SymbolType.Fill:
        return _named(name, SWATCH[1], lambda y: [Item("fill", (PICTURE - 11) / 2, y, *SWATCH, symbol.clone())], text)
    if kind == Qgis.SymbolType.Line:
        return _named(name, 2.0, lambda y: [Item("line", 3.0, y, PICTURE - 6.0, 2.0, symbol.clone())], text)
    return _named(name, 4.0, lambda y: [Item("marker", PICTURE / 2 - 2.0, y, 4.0, 4.0, symbol.clone())], text)


def symbols_of(layer):
    """Symbols by which a layer of other things is drawn, those of its rows alone, with their names.

    Parameters
    ----------
    layer : QgsVectorLayer

    Returns
    -------
    list of (QgsSymbol, str)
    """
    renderer = layer.renderer()
    if renderer is None or QgsWkbTypes.geometryType(layer.wkbType()) == Qgis.GeometryType.Null:
        return []
    items = [item for item in renderer.legendSymbolItems() if item.symbol() is not None]
    if len(items) > 1:
        used = _used_keys(layer, renderer)
        items = [item for item in items if item.ruleKey() in used or not used]
    return [(item.symbol().clone(), item.label() if len(items) > 1 else layer.name()) for item in items]


def _used_keys(layer, renderer):
    """Keys of the legend that the layer's rows need."""
    drawn = renderer.clone()
    context = QgsRenderContext()
    expressions = QgsExpressionContext()
    for scope in QgsExpressionContextUtils.globalProjectLayerScopes(layer):
        expressions.appendScope(scope)
    context.setExpressionContext(expressions)
    drawn.startRender(context, layer.fields())
    used = set()
    for row in layer.getFeatures():
        context.expressionContext().setFeature(row)
        used |= drawn.legendKeysForFeature(row, context)
    drawn.stopRender(context)
    return used


def fills_of(units, colors, ornaments, shade=1.0):
    """Fills of units on the map and in its explanation.

    Parameters
    ----------
    units : list of core.units.Unit
    colors, ornaments : dict of str to str
    shade : float
        Opacity over a relief; 1 where there is none. The colour is made stronger so that on level ground it looks as
        it does without.

    Returns
    -------
    dict of str to QgsFillSymbol
    """
    return {unit.code: unit_fill(colors[unit.code], ornaments.get(unit.code, ""), shade) for unit in units}
