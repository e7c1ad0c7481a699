"""Map units of a layer: what a table says of them, in order, with colours. The one reader of units."""

from dataclasses import dataclass

from qgis.core import QgsCategorizedSymbolRenderer, QgsGeometry, QgsSpatialIndex, QgsVectorLayer

from ..core import colour
from ..core.cells import is_empty, text_of
from ..core.units import Unit, columns_of, read_units
from .columns import chunks
from .i18n import tr


@dataclass(frozen=True)
class Units:
    """The units of a layer.

    Attributes
    ----------
    units : list of core.units.Unit
        Those that are on the map, youngest first; units that the table does not have come last.
    colors : dict of str to str
        Code to ``#rrggbb``.
    shared : frozenset of str
        Codes of units whose colour another one has too.
    clashes : tuple of core.colour.Clash
        Neighbours whose colours are hard to tell apart.
    unknown : tuple of str
        Codes on the map that the table does not have.
    faults : list of core.units.Fault
        What is wrong with the table.
    """

    units: list
    colors: dict
    shared: frozenset
    clashes: tuple
    unknown: tuple
    faults: list

    @property
    def codes(self):
        """Codes in order. List of str."""
        return [unit.code for unit in self.units]


def code_of(value):
    """Code of a unit as a layer's cell has it; empty where there is none."""
    return "" if is_empty(value) else text_of(value).strip()


def table_units(source, feedback):
    """Read a table of units.

    Parameters
    ----------
    source : QgsFeatureSource
    feedback : QgsProcessingFeedback

    Returns
    -------
    units : list of core.units.Unit
    faults : list of core.units.Fault
    """
    named = columns_of(source.fields().names())
    rows = []
    for chunk in chunks(source, feedback, fields=list(named.values()), geometry=False):
        columns = {key: chunk.column(name) for key, name in named.items()}
        rows += [dict(zip(columns, cells)) for cells in zip(*columns.values())]
    return read_units(rows)


def has_codes(source):
    """Whether a table has a column of codes."""
    return "code" in columns_of(source.fields().names())


def styled_units(layer, field):
    """Units of a layer's own style: its categories by a field, in their order, with their colours.

    Parameters
    ----------
    layer : QgsVectorLayer or None
    field : str

    Returns
    -------
    list of core.units.Unit
        Empty where the layer is styled otherwise.
    """
    if layer is None:
        return []
    opened = layer
    if not isinstance(layer.renderer(), QgsCategorizedSymbolRenderer) and layer.providerType() == "ogr":
        opened = QgsVectorLayer(layer.source(), layer.name(), "ogr")  # Processing opens files without their styles
    renderer = opened.renderer()
    if not isinstance(renderer, QgsCategorizedSymbolRenderer):
        return []
    if renderer.classAttribute().strip('"').lower() != field.lower():
        return []
    found = {}
    categories = renderer.categories()
    for category in categories:
        values = category.value() if isinstance(category.value(), list) else [category.value()]
        for code in filter(None, map(code_of, values)):
            name = category.label() if category.label() != code else ""
            found.setdefault(code, Unit(code, name.removeprefix(code).strip(), color=category.symbol().color().name()))
    return list(found.values())


def touching(areas):
    """Pairs of units that touch.

    Parameters
    ----------
    areas : list of (str, QgsGeometry)

    Returns
    -------
    set of tuple of str
    """
    index = QgsSpatialIndex()
    for number, (_, geometry) in enumerate(areas):
        index.addFeature(number, geometry.boundingBox())
    pairs = set()
    for number, (code, geometry) in enumerate(areas):
        engine = None
        for other in index.intersects(geometry.boundingBox()):
            beside = areas[other][0]
            pair = (min(code, beside), max(code, beside))
            if other <= number or code == beside or pair in pairs:
                continue
            if engine is None:
                engine = QgsGeometry.createGeometryEngine(geometry.constGet())
                engine.prepareGeometry()
            if engine.intersects(areas[other][1].constGet()):
                pairs.add(pair)
    return pairs


def units_of(areas, table, styled, faults=()):
    """Put the units of a map together.

    Parameters
    ----------
    areas : list of (str, QgsGeometry)
        Code and shape of each polygon with a code and a shape.
    table : list of core.units.Unit
        As `table_units` gives them; empty for no table.
    styled : list of core.units.Unit
        As `styled_units` gives them: their colours are taken where the table has none.
    faults : list of core.units.Fault

    Returns
    -------
    Units
    """
    held = {code for code, _ in areas}
    known = {unit.code: unit for unit in (table or styled)}
    strange = sorted(held - known.keys())
    units = [unit for code, unit in known.items() if code in held] + [Unit(code) for code in strange]
    worn = {unit.code: unit.color for unit in styled if unit.color}
    given = {unit.code: unit.color or worn.get(unit.code, "") for unit in units}
    found = colour.choose(
        [unit.code for unit in units], {code: color for code, color in given.items() if color}, touching(areas)
    )
    unknown = tuple(strange) if table else ()
    return Units(units, found.colors, found.shared, found.clashes, unknown, list(faults))


def warnings(units):
    """Say what is wrong with the units of a map. List of str."""
    named = {
        "unit_no_code": tr("has no code"),
        "unit_twice": tr("has the code {value} a second time and is left out"),
        "unit_color": tr("has the colour {value}, which is none"),
        "unit_age": tr("has the age {value}, which cannot be"),
        "unit_sort": tr("has the sort {value}, which is not known"),
    }
    told = [
        tr("Table of units: row {row} {what}.").format(
            row=fault.row + 1, what=named[fault.code].format(value=fault.value)
        )
        for fault in units.faults
    ]
    if units.unknown:
        told.append(tr("The table of units does not have: {codes}.").format(codes=", ".join(units.unknown)))
    told += [
        tr(
            "{one} and {other} touch on the map, and their colours are only {distance:.0f} apart (15 is enough)."
        ).format(one=clash.one, other=clash.other, distance=clash.distance)
        for clash in units.clashes
    ]
    return told
