"""Points of a GeMS database: stations and attitudes."""

import numpy as np

from ..core import gems, gems_terms
from ..core.symbol_numbers import labels
from ..gis.attitude_columns import AttitudeFields, read_attitudes
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.remarks import Notes
from .gems_contents import REPORT, notes_of, numbers_of, present, quantity, symbol_of, text_of_cell
from .gems_shapes import UnitsAt


def add_stations(contents, source, layer, field, metres):
    """Take stations; ``metres`` is how far they may lie off, None for not known."""
    move, units = contents.moved(source), UnitsAt(*contents.areas)
    for chunk in contents.run.chunks(source):
        notes = Notes(len(chunk))
        shapes = contents.shaped(chunk, move, notes)
        off = quantity(chunk, "LocationConfidenceMeters", metres)
        remarks = notes_of(chunk)
        for row, name in enumerate(contents.named(layer, chunk, field)):
            if notes.rejected[row]:
                continue
            values = {
                "FieldID": name,
                "LocationConfidenceMeters": off[row],
                "MapUnit": units.code(shapes[row]),
                "PlotAtScale": 0.0,
                "DataSourceID": REPORT,
                "Notes": remarks[row],
            }
            contents.keyed("Stations", name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)
    found = contents.called.get("Stations", [])
    for name, key in zip(found, gems.keys("STA", found)):
        contents.stations.setdefault(name, key)


def add_attitudes(contents, source, layer, said):
    """Take attitudes.

    Parameters
    ----------
    source : QgsFeatureSource
    layer : str
    said : Said
        With ID_FIELD, STATION_FIELD, SIGMA_FIELD, SCALE_FIELD, LOCATION_M and the fields of the readings.
    """
    move, units = contents.moved(source), UnitsAt(*contents.areas)
    given = {"strike": said.STRIKE_FIELD, "dip": said.DIP_FIELD, "trend": said.TREND_FIELD,
             "plunge": said.PLUNGE_FIELD, "kind": said.KIND_FIELD, "polarity": said.POLARITY_FIELD}  # fmt: skip
    names = AttitudeFields.find(source.fields(), **given)
    contents.run.say(tr("Fields used: {fields}").format(fields=names.said()))
    lost = set()
    for chunk in contents.run.chunks(source):
        notes = Notes(len(chunk))
        found = read_attitudes(chunk, names, notes)
        shapes = contents.shaped(chunk, move, notes)
        azimuth = np.where(found.is_line, found.trend, found.strike)
        dip = np.where(found.is_line, found.plunge, found.dip)
        sigma = numbers_of(chunk, said.SIGMA_FIELD)
        scale = numbers_of(chunk, said.SCALE_FIELD)
        off = quantity(chunk, "LocationConfidenceMeters", said.LOCATION_M)
        symbols = column_or_empty(chunk, present(chunk.names, "symbol"))
        methods = column_or_empty(chunk, present(chunk.names, "method"))
        stations = column_or_empty(chunk, said.STATION_FIELD)
        printed, remarks = labels(dip), notes_of(chunk)
        for row, name in enumerate(contents.named(layer, chunk, said.ID_FIELD)):
            if notes.rejected[row]:
                continue
            kind, polarity = found.kind[row], found.polarity[row]
            station = text_of_cell(stations[row])
            if station and station not in contents.stations:
                lost.add(station)
            term = gems_terms.orientation_type(kind, polarity)
            values = {
                "Type": contents.term(term, gems_terms.orientation_definition(kind, polarity)),
                "Azimuth": 0.0 if np.isnan(azimuth[row]) else float(azimuth[row]),
                "Inclination": float(dip[row]),
                "Symbol": symbol_of(symbols[row]),
                "Label": printed[row],
                "LocationConfidenceMeters": off[row],
                "IdentityConfidence": contents.confidence("certain"),
                "OrientationConfidenceDegrees": gems.RADIUS_95 * sigma[row] if sigma[row] >= 0 else gems.UNKNOWN,
                "PlotAtScale": scale[row] if scale[row] >= 0 else 0.0,
                "StationsID": contents.stations.get(station),
                "MapUnit": units.code(shapes[row]),
                "LocationSourceID": REPORT,
                "OrientationSourceID": _source(contents, text_of_cell(methods[row])),
                "Notes": remarks[row],
            }
            contents.keyed("OrientationPoints", name, values, shapes[row])
        contents.tally.add(chunk.ids, notes)
    if lost:
        contents.told.append(
            tr("Stations that attitudes name and the layer of stations lacks, so that StationsID is null: {names}.")
            .format(names=", ".join(sorted(lost)))
        )  # fmt: skip


def _source(contents, method):
    """Key of the source of an attitude."""
    key = f"DAS_{gems.slug(method)}" if method else "DAS_attitudes"
    note = (
        "OrientationConfidenceDegrees is the radius of the circle of 95 per cent about the pole or the line: "
        "2.4477 times its 1-sigma; -9 where that is not known. Azimuth counts from true north, corrections made."
    )
    contents.methods[key] = method
    contents.sources.setdefault(key, (f"This report, attitudes{f' by {method}' if method else ''}", note))
    return key
