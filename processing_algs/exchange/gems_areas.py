"""Map units of a GeMS database."""

import numpy as np

from ..core import gems, gems_terms
from ..core.map_lines import read_confidence
from ..core.words import fold
from ..gis.columns import column_or_empty
from ..gis.remarks import Notes
from ..gis.units import code_of
from .gems_contents import REPORT, notes_of, present


def add_areas(contents, source, field, layer):
    """Take the areas of map units."""
    move = contents.moved(source)
    for chunk in contents.run.chunks(source):
        notes = Notes(len(chunk))
        codes = [code_of(value) for value in chunk.column(field)]
        notes.add_where(np.array([not code for code in codes], dtype=bool), "unit_none", rejects=True)
        shapes = contents.shaped(chunk, move, notes)
        sure = column_or_empty(chunk, present(chunk.names, "IdentityConfidence"))
        doubt, unknown = read_confidence(sure)
        notes.add_where(unknown, "confidence_unknown", rejects=False, value=sure)
        remarks = notes_of(chunk)
        for row, name in enumerate(contents.named(layer, chunk, None)):
            if notes.rejected[row]:
                continue
            contents.areas[0].append(shapes[row])
            contents.areas[1].append(codes[row])
            values = {
                "MapUnit": codes[row],
                "IdentityConfidence": contents.confidence("questionable" if doubt[row] else "certain"),
                "Label": codes[row] + ("?" if doubt[row] else ""),
                "DataSourceID": REPORT,
                "Notes": remarks[row],
            }
            contents.keyed("MapUnitPolys", name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)


def describe_units(contents, units, ages):
    """Fill DescriptionOfMapUnits.

    Parameters
    ----------
    units : gis.units.Units
    ages : dict of str to str
        Age in words by code.
    """
    terms = {fold(row[1]): row[1] for row in gems.geo_materials()}
    grouped = any(unit.group for unit in units.units)
    rows, depths, group = [], [], ""
    for unit in units.units:
        if unit.group and unit.group != group:
            rows.append({"Name": unit.group, "ParagraphStyle": "DMUHeading1"})
            depths.append(1)
            contents.called.setdefault("DescriptionOfMapUnits", []).append(f"heading {unit.group}")
        group = unit.group
        contents.rocks[unit.code] = unit.rock
        material, suggestion = gems_terms.geo_material(unit.rock, terms)
        if suggestion:
            contents.suggested.append((unit.code, unit.rock, suggestion))
        rows.append(
            {
                "MapUnit": unit.code,
                "Name": unit.name or None,
                "FullName": unit.name or None,
                "Age": ages.get(unit.code) or None,
                "Description": unit.description or None,
                "ParagraphStyle": "DMUUnit1",
                "Label": unit.code,
                "AreaFillRGB": gems.area_fill(units.colors.get(unit.code, "")),
                "GeoMaterial": material,
                "GeoMaterialConfidence": contents.confidence("High") if material else None,
            }
        )
        depths.append(2 if grouped and unit.group else 1)
        contents.called.setdefault("DescriptionOfMapUnits", []).append(unit.code)
    for row, key in zip(rows, gems.hierarchy_keys(depths)):
        contents.term(row["ParagraphStyle"], gems_terms.STYLES[row["ParagraphStyle"]])
        contents.add("DescriptionOfMapUnits", {**row, "HierarchyKey": key, "DescriptionSourceID": REPORT})
