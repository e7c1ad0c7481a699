"""Map units, coloured, patterned and lettered."""

import numpy as np

from ..base import AgonicAlgorithm
from ..drawing.unit_patterns import ornaments
from ..drawing.unit_style import style_units
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..gis.units import code_of, has_codes, styled_units, table_units, units_of, warnings
from ..parameters import AREAS, TABLE, column, flag, layer, rule, sink

FIELDS = ["unit", "unit_name", "unit_order", "unit_color", *NOTICED]


class StyleUnits(AgonicAlgorithm):
    """Map units, coloured, patterned and lettered."""

    ID, GROUP = "style_units", "symbols"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Style map units")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Gives a layer of map units its colours, ornaments and letters, in stratigraphic order.\n\n"
            "Colours come from the table of units, else from the layer's own style, else from ten pale ones that "
            "readers who see colours otherwise can tell apart too; units that touch on the map are kept well apart, "
            "and from eleven units on colours come again with a pattern. Colours of the table are kept as they are, "
            "and neighbours that are hard to tell apart are named in the log.\n\n"
            "Ornaments follow the words for the rock, as is common practice: dots for sand, dashes for mud, bricks for "
            "limestone, leaning bricks for dolomite, circles for conglomerate, v for volcanic, crosses for plutonic, "
            "waves for metamorphic rocks.\n\n"
            "The style needs nothing but QGIS to be drawn."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer("INPUT", tr("Map units"), tr("Polygons."), AREAS),
            column("UNIT_FIELD", tr("Unit"), tr("Field with the code of each area's unit."), role="unit"),
            layer(
                "UNIT_TABLE",
                tr("Table of units"),
                tr(
                    "Columns: code; name, order (1 is the youngest), description, color (#rrggbb), rock, age_old and "
                    "age_young (order or Ma), group, sort (surficial, sedimentary, volcanic, intrusive, metamorphic). "
                    "Only code is needed; a GeMS DescriptionOfMapUnits serves too."
                ),
                TABLE,
                optional=True,
            ),
            flag("PATTERNS", tr("Draw ornaments"), tr("By the words for the rock."), default=True),
            flag(
                "LETTERS",
                tr("Draw letters"),
                tr("The code in each area, or beside it with a leader where it does not fit."),
                default=True,
            ),
            sink("OUTPUT", tr("Styled units"), tr("The input's fields, then the unit's name, order and colour.")),
            rule(_refusal),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"UNITS": tr("Units on the map"), "CLASHES": tr("Neighbours that are hard to tell apart")}

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        areas = []
        for chunk in run.chunks(source, fields=[said.UNIT_FIELD], stop=30.0):
            codes = map(code_of, chunk.column(said.UNIT_FIELD))
            areas += [(code, shape) for code, shape in zip(codes, chunk.geometries) if code and not shape.isEmpty()]
        table, faults = table_units(run.source(said.UNIT_TABLE), run.feedback) if said.UNIT_TABLE else ([], [])
        found = units_of(areas, table, run.ready, faults)
        for sentence in warnings(found):
            run.warn(sentence)
        rank = {unit.code: (number + 1, unit) for number, unit in enumerate(found.units)}
        with run.output(said.OUTPUT, source, FIELDS) as out:
            for chunk in run.chunks(source, start=30.0):
                notes = Notes(len(chunk))
                codes = [code_of(value) for value in chunk.column(said.UNIT_FIELD)]
                notes.add_where(np.array([not code for code in codes], dtype=bool), "unit_none", rejects=False)
                strange = np.array([code in found.unknown for code in codes], dtype=bool)
                notes.add_where(strange, "unit_unknown", rejects=False, value=codes)
                known = [rank.get(code) for code in codes]
                columns = {
                    "unit": [code or None for code in codes],
                    "unit_name": [one[1].name or None if one else None for one in known],
                    "unit_order": [one[0] if one else None for one in known],
                    "unit_color": [found.colors[one[1].code] if one else None for one in known],
                }
                out.add(chunk, columns, notes)
        patterns = ornaments(found.units, found.colors, found.shared) if said.PATTERNS else {}
        run.style(out, lambda styled: style_units(styled, "unit", found, patterns, letters=said.LETTERS))
        return {**out.counts, "UNITS": len(found.units), "CLASHES": len(found.clashes)}

    def ready(self, said):
        """Look at the layer's own style, in the thread that may."""
        return styled_units(said.INPUT.layer, said.UNIT_FIELD)


def _refusal(said):
    """Why what was said cannot run together: a sentence, or None."""
    if said.UNIT_TABLE and not has_codes(said.UNIT_TABLE.source):
        return tr("UNIT_TABLE: the table has no column code.")
    return None
