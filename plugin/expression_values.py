"""What the functions of expressions work out, for one row: numbers, texts, None for NULL, or an error with a reason."""

import math
from types import SimpleNamespace

import numpy as np
from qgis.core import QgsCoordinateReferenceSystem, QgsGeometry, QgsPointXY

from ..processing_algs.core import attitudes, norths
from ..processing_algs.core.dates import SaidDates
from ..processing_algs.core.field_model import FieldModel
from ..processing_algs.core.geomagnetism import MODELS
from ..processing_algs.core.letters import LETTERS
from ..processing_algs.core.notation import PAIR_MEANS, read_rows
from ..processing_algs.core.notation_write import PLANE_NOTATIONS, write_planes
from ..processing_algs.gis.columns import plain
from ..processing_algs.gis.i18n import tr
from ..processing_algs.gis.places import Locator
from ..processing_algs.gis.remarks import Notes

KEPT = "agonic_locator_"
ONE = np.ones(1, dtype=bool)


class WrongValueError(Exception):
    """What an argument holds cannot be used; the message is for the user."""


# -- arguments ---------------------------------------------------------------------------------------------------------


def _angle(value, name):
    """A number, or None; a text such as N45E is no number here."""
    if value is None:
        return None
    try:
        number = float(value)
    except (TypeError, ValueError):
        number = math.nan
    if not math.isfinite(number):
        raise WrongValueError(tr("{name}: {value} is no number.").format(name=name, value=value))
    return number


def _dip(value, name):
    number = _angle(value, name)
    if number is not None and not 0 <= number <= 90:
        raise WrongValueError(tr("{name}: {value} is outside 0 to 90.").format(name=name, value=value))
    return number


def _word(value, name, allowed):
    if value is not None and value not in allowed:
        message = tr("{name}: {value} is none of {allowed}.")
        raise WrongValueError(message.format(name=name, value=value, allowed=", ".join(map(str, allowed))))
    return value


def _number(value):
    """A result; NaN is NULL."""
    value = float(np.ravel(value)[0])
    return value if math.isfinite(value) else None


def _crs(context, said):
    """CRS of a geometry: the one that was said, else that of the layer whose row it is."""
    name = said if said is not None else context.variable("layer_crs") if context is not None else None
    if not name:
        raise WrongValueError(
            tr("Whose coordinates are these? Name their coordinate reference system, such as crs:='EPSG:25832'.")
        )
    found = QgsCoordinateReferenceSystem(str(name))
    if not found.isValid():
        raise WrongValueError(tr("There is no coordinate reference system {name}.").format(name=name))
    return found


def _locator(context, said):
    """What finds places, made once for all rows of a layer."""
    crs = _crs(context, said)
    key = KEPT + (crs.authid() or crs.toWkt())
    if context is not None and context.hasCachedValue(key):
        return context.cachedValue(key)
    made = Locator(crs)
    if made.projection is None:
        raise WrongValueError(tr("{name} leads to no places on Earth.").format(name=crs.userFriendlyIdentifier()))
    if context is not None:
        context.setCachedValue(key, made)
    return made


def _places(context, geometry, crs):
    """Place of a point, one row of them."""
    if isinstance(geometry, QgsPointXY):
        geometry = QgsGeometry.fromPointXY(geometry)
    if not isinstance(geometry, QgsGeometry):
        raise WrongValueError(tr("The place is no geometry; use @geometry, $geometry or make_point(x, y)."))
    places = _locator(context, crs).places(SimpleNamespace(geometries=[geometry]))
    if np.isnan(places.x[0]):
        raise WrongValueError(tr("The place is no point; a point of a line or an area is centroid(@geometry)."))
    if np.isnan(places.own_lon[0]):
        raise WrongValueError(tr("The point lies outside what its coordinate reference system can show."))
    return places


# -- the functions -----------------------------------------------------------------------------------------------------


def declination(context, geometry, date, height, model, crs):
    """Declination at a point and date."""
    if geometry is None or date is None:
        return None
    _word(model, "model", MODELS)
    places, height = _places(context, geometry, crs), _angle(height, "height") or 0.0
    notes = Notes(1)
    at = FieldModel(model).at(places, np.array([height]), SaidDates(), [plain(date)], ONE, ONE, notes)
    if notes.rejected[0]:
        raise WrongValueError(notes.columns()["remark"][0])
    return _number(at.decl)


def convergence(context, geometry, crs):
    """Meridian convergence at a point."""
    if geometry is None:
        return None
    places = _places(context, geometry, crs)
    return _number(norths.convergence(places.projection, places.own_lon, places.own_lat))


def true_to_grid(context, azimuth, geometry, crs):
    """Azimuth on the page of a true azimuth."""
    return _turned(norths.page_azimuth, context, azimuth, geometry, crs)


def grid_to_true(context, azimuth, geometry, crs):
    """True azimuth of an azimuth on the page."""
    return _turned(norths.true_azimuth, context, azimuth, geometry, crs)


def _turned(turn, context, azimuth, geometry, crs):
    azimuth = _angle(azimuth, "azimuth")
    if azimuth is None or geometry is None:
        return None
    places = _places(context, geometry, crs)
    return _number(turn(places.projection, places.own_lon, places.own_lat, azimuth))


def apparent_dip(_context, dip, dip_dir, azimuth):
    """Dip of a plane in a vertical section."""
    dip, dip_dir, azimuth = _dip(dip, "dip"), _angle(dip_dir, "dip_dir"), _angle(azimuth, "azimuth")
    if dip == 0 and azimuth is not None:
        return 0.0
    if dip is None or dip_dir is None or azimuth is None:
        return None
    return _number(attitudes.apparent_dip(dip, dip_dir, azimuth))


def _read(text, pair_means, letters):
    """Strike, with the dip to the right, and dip of a plane as written; None for none."""
    if text is None or not str(text).strip():
        return None, None
    _word(pair_means, "pair_means", PAIR_MEANS)
    _word(letters, "letters", LETTERS)
    read = read_rows("text", None, None, None, [str(text)], None, [False], pair_means=pair_means, letters=letters)
    notes = Notes(1)
    notes.add_problems(read.problems)
    if read.rejected[0]:
        raise WrongValueError(notes.columns()["remark"][0])
    if read.is_line[0]:
        raise WrongValueError(tr('"{value}" is a line, not a plane.').format(value=text))
    return _number(np.mod(read.azimuth + read.to_strike, 360.0)), _number(read.dip)


def strike(_context, text, pair_means, letters):
    """Strike of a plane as written."""
    return _read(text, pair_means, letters)[0]


def dip(_context, text, pair_means, letters):
    """Dip of a plane as written."""
    return _read(text, pair_means, letters)[1]


def dip_dir(_context, text, pair_means, letters):
    """Dip direction of a plane as written."""
    found = _read(text, pair_means, letters)[0]
    return None if found is None else _number(attitudes.dip_direction(found))


def plane_text(_context, strike, dip, notation, letters, decimals):
    """A plane, written."""
    strike, dip = _angle(strike, "strike"), _dip(dip, "dip")
    _word(notation, "notation", PLANE_NOTATIONS)
    _word(letters, "letters", LETTERS)
    decimals = _word(int(_angle(decimals, "decimals") or 0), "decimals", range(7))
    cells = [math.nan if value is None else value for value in (strike, dip)]
    return str(write_planes(cells[:1], cells[1:], notation, decimals, letters)[0]) or None
