"""The three norths and the page: convergence, azimuths on a map's page, and local frames with true north.

*True* north is the direction of the meridian on the ellipsoid. *Grid* north is up on the page: the direction in which
the second map coordinate grows, taken as QGIS draws a map (x to the right, y up, whatever order or sense the axes of
the CRS have on paper; a south-orientated CRS is drawn with south up, and its convergence is near 180). *Magnetic*
north is where a needle points.

All angles are degrees. Declination and ring setting are east positive; convergence is the azimuth of grid north from
true north, east positive. Some national manuals print convergence with the opposite sign.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

import numpy as np
import numpy.typing as npt
from pyproj import CRS, Geod, Transformer
from pyproj.exceptions import CRSError, ProjError

from .angles import FloatArray, difference, wrap180, wrap360
from .errors import FieldDataError

WGS84: Final = "EPSG:4326"
SHIFT: Final = "shift"
"""Attribute of a pyproj.CRS that holds the pipeline by which its positions are carried to WGS84, where somebody chose
one: between two datums there are several, metres apart, and a map is right only by the one that drew it."""
_GEOD: Final = Geod(ellps="WGS84")

# 64 m along a meridian: long against the rounding of map coordinates (a nanometre), short against any projection's
# curvature, so that a centred difference is right to about 1e-8 degree.
_STEP: Final = float(np.degrees(1e-5))
# Neighbouring steps that differ in length by more than this do not lie on one smooth piece of page: an edge is between.
_TORN: Final = 2.0
# Farther from the ground than this (in degrees), the way to the page and back has not led home: the formulas of some
# projections (Krovak, Swiss) fold distant parts of the globe onto the page.
_HOME: Final = 1e-4
# Page vectors of east and north closer than this to one line (sine of the angle) leave no direction to speak of.
_FLAT: Final = 1e-9


@dataclass(frozen=True)
class PageAxes:
    """How a metre of ground lies on the page, at each point: the projection's Jacobian in the frame of true north.

    Attributes
    ----------
    east_x, east_y : ndarray, shape (n,)
        Page vector of one metre toward true east. Units: map units per metre.
    north_x, north_y : ndarray, shape (n,)
        Page vector of one metre toward true north. Units: map units per metre.
    """

    east_x: FloatArray
    east_y: FloatArray
    north_x: FloatArray
    north_y: FloatArray

    def convergence(self) -> FloatArray:
        """See the function `convergence`."""
        return wrap180(-np.degrees(np.arctan2(self.north_x, self.north_y)))

    def page_azimuth(self, azimuth: npt.ArrayLike) -> FloatArray:
        """See the function `page_azimuth`."""
        true = np.radians(np.asarray(azimuth, dtype=float))
        east, north = np.sin(true), np.cos(true)
        x = east * self.east_x + north * self.north_x
        y = east * self.east_y + north * self.north_y
        return wrap360(np.degrees(np.arctan2(x, y)))

    def true_azimuth(self, page: npt.ArrayLike) -> FloatArray:
        """See the function `true_azimuth`."""
        drawn = np.radians(np.asarray(page, dtype=float))
        x, y = np.sin(drawn), np.cos(drawn)
        # Cramer's rule; the sign of the determinant matters, for a page may be a mirror image.
        determinant = self.east_x * self.north_y - self.east_y * self.north_x
        east = (x * self.north_y - y * self.north_x) / determinant
        north = (y * self.east_x - x * self.east_y) / determinant
        return wrap360(np.degrees(np.arctan2(east, north)))


def convergence(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike) -> FloatArray:
    """Meridian convergence: the azimuth of grid north from true north, east positive.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    lon, lat : float or array_like, shape (n,)
        Position in the CRS's own datum, from Greenwich, as `own_lonlat` gives it. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Convergence in (-180, 180]: what must be subtracted from a true azimuth to have a grid azimuth, and the
        angle by which true north is drawn to the left of the page's up. It has pyproj's sign, and equals pyproj's
        ``meridian_convergence`` wherever the CRS's axes run east and north. 0 in a geographic CRS. In a CRS that is
        not conformal the two readings of "azimuth of grid north" differ by a little; this is the first, the one of
        the drawn meridian, and only `page_azimuth` is exact for other directions. NaN outside the CRS's domain.
        Units: degrees.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).

    References
    ----------
    Snyder, J. P., 1987, Map Projections: A Working Manual, USGS Professional Paper 1395, pages 19 and 20.
    """
    return page_axes(crs, lon, lat).convergence()


def page_azimuth(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike, azimuth: npt.ArrayLike) -> FloatArray:
    """Direction on the map's page of a true azimuth on the ground.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    lon, lat : float or array_like, shape (n,)
        Position in the CRS's own datum, from Greenwich, as `own_lonlat` gives it. Units: degrees.
    azimuth : float or array_like, shape (n,)
        Azimuth from true north. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Angle clockwise from the page's up, in [0, 360), exact in every CRS, conformal or not. In a geographic CRS,
        drawn in degrees, true north-east at 60 degrees north is 63.4. NaN where the azimuth is missing or the
        position is outside the CRS's domain. Within 64 m of a pole the page is taken as it is 64 m from the pole on
        the same meridian; at the pole itself the azimuth is counted from that meridian. Units: degrees.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    return page_axes(crs, lon, lat).page_azimuth(azimuth)


def true_azimuth(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike, page: npt.ArrayLike) -> FloatArray:
    """Turn a direction on the map's page into a true azimuth on the ground: the inverse of `page_azimuth`.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    lon, lat : float or array_like, shape (n,)
        Position in the CRS's own datum, from Greenwich, as `own_lonlat` gives it. Units: degrees.
    page : float or array_like, shape (n,)
        Angle clockwise from the page's up, such as a grid azimuth. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        Azimuth from true north in [0, 360). NaN as for `page_azimuth`. Units: degrees.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    return page_axes(crs, lon, lat).true_azimuth(page)


def page_axes(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike) -> PageAxes:
    """Jacobian of the projection in the frame of true north, from which convergence and page azimuths follow.

    The derivatives are taken through the same transformation that draws the map, not from the parameters of the
    projection alone: those know nothing of axes that run south or west.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS. Of a compound CRS the horizontal part counts.
    lon, lat : float or array_like, shape (n,)
        Position in the CRS's own datum, from Greenwich, as `own_lonlat` gives it. Units: degrees.

    Returns
    -------
    PageAxes
        All NaN where the position is missing, is no position (latitude over 90, longitude over 360) or lies outside
        the CRS's domain. On an edge of the page (the 180th meridian in most world maps) the side of the point counts.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).

    References
    ----------
    Snyder, J. P., 1987, Map Projections: A Working Manual, USGS Professional Paper 1395, equations 4-18 to 4-20.
    """
    page = _page_of(crs)
    lon, lat = np.broadcast_arrays(np.asarray(lon, dtype=float), np.asarray(lat, dtype=float))
    position = (np.abs(lat) <= 90.0) & (np.abs(lon) <= 360.0)
    lon = np.where(position, lon, np.nan)
    # At the pole itself a step along the parallel has no length.
    lat = np.clip(np.where(position, lat, np.nan), _STEP - 90.0, 90.0 - _STEP)
    here = _draw(page, lon, lat)
    along_parallel = _slope(page, lon, lat, here, _STEP, 0.0)
    along_meridian = _slope(page, lon, lat, here, 0.0, _STEP)
    step = np.radians(_STEP)
    sine, cosine = np.sin(np.radians(lat)), np.cos(np.radians(lat))
    w2 = 1.0 - page.eccentricity2 * sine**2
    normal_radius = page.semi_major / np.sqrt(w2)
    meridian_radius = normal_radius * (1.0 - page.eccentricity2) / w2
    east = along_parallel / (step * normal_radius * cosine)
    north = along_meridian / (step * meridian_radius)
    with np.errstate(invalid="ignore"):
        span = np.hypot(*east) * np.hypot(*north)
        drawn = np.abs(east[0] * north[1] - east[1] * north[0]) > _FLAT * span
        drawn &= _leads_home(page, lon, lat, here)
    east, north = np.where(drawn, east, np.nan), np.where(drawn, north, np.nan)
    return PageAxes(east[0], east[1], north[0], north[1])


def own_lonlat(crs: Any, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Longitude and latitude of map coordinates, in the CRS's own datum.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    x, y : float or array_like, shape (n,)
        Map coordinates as QGIS delivers them: x to the right on the page, y up. Units: the CRS's.

    Returns
    -------
    lon, lat : ndarray, shape (n,)
        Longitude from Greenwich in [-180, 180] and latitude. NaN where the coordinates are missing or are those of
        no place. Units: degrees.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    return _lonlat(_page_of(crs), x, y)


def wgs84_lonlat(crs: Any, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """WGS84 longitude and latitude (EPSG:4326) of map coordinates: what a geomagnetic model wants.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    x, y : float or array_like, shape (n,)
        Map coordinates as QGIS delivers them: x to the right on the page, y up. Units: the CRS's.

    Returns
    -------
    lon, lat : ndarray, shape (n,)
        Longitude from Greenwich in [-180, 180] and latitude. NaN where the coordinates are missing or are those of
        no place. Units: degrees.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    lon, lat = _transform(_page_of(crs).to_wgs84, x, y)
    return _position(lon, lat)


def from_wgs84(crs: Any, lon: npt.ArrayLike, lat: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Map coordinates of places: `wgs84_lonlat` turned round.

    Parameters
    ----------
    crs : anything that pyproj.CRS accepts
        The map's CRS.
    lon, lat : float or array_like, shape (n,)
        WGS84. Units: degrees.

    Returns
    -------
    x, y : ndarray, shape (n,)
        As QGIS has them: x to the right on the page, y up. NaN where a place is missing or has none on the page.
        Units: the CRS's.

    Raises
    ------
    FieldDataError
        If the CRS cannot be read (code ``crs_unknown``) or has no page (``crs_without_north``).
    """
    lon, lat = np.asarray(lon, dtype=float), np.asarray(lat, dtype=float)
    known = np.isfinite(lon) & np.isfinite(lat)
    lon, lat = np.where(known, lon, np.nan), np.where(known, lat, np.nan)
    x, y = _page_of(crs).to_wgs84.transform(lon, lat, direction="INVERSE")
    x, y = np.asarray(x, dtype=float), np.asarray(y, dtype=float)
    there = known & np.isfinite(x) & np.isfinite(y)
    return np.where(there, x, np.nan), np.where(there, y, np.nan)


def correction(decl: npt.ArrayLike, ring_set: npt.ArrayLike = 0.0) -> FloatArray:
    """Say what must be added to a magnetic reading to have the true azimuth.

    Parameters
    ----------
    decl : float or array_like, shape (n,)
        Declination at the place and date, east positive. Units: degrees.
    ring_set : float or array_like, shape (n,)
        Declination already set on the compass ring, east positive. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        ``decl - ring_set`` in (-180, 180]: the whole declination for a raw reading, 0 for a ring set rightly, twice
        the declination for a ring turned the wrong way. NaN where either is missing. Units: degrees.
    """
    return wrap180(np.subtract(np.asarray(decl, dtype=float), np.asarray(ring_set, dtype=float)))


def grid_magnetic(decl: npt.ArrayLike, convergence: npt.ArrayLike) -> FloatArray:
    """Grid magnetic angle: the azimuth of magnetic north from grid north, east positive.

    Parameters
    ----------
    decl : float or array_like, shape (n,)
        Declination, east positive. Units: degrees.
    convergence : float or array_like, shape (n,)
        Meridian convergence, as the function `convergence` gives it. Units: degrees.

    Returns
    -------
    ndarray, shape (n,)
        ``decl - convergence`` in (-180, 180]; a magnetic reading plus this is a grid azimuth. NaN where either is
        missing. Units: degrees.

    References
    ----------
    US Army, 2013, TC 3-25.26, Map Reading and Land Navigation, chapter 6: the G-M angle.
    """
    return wrap180(np.subtract(np.asarray(decl, dtype=float), np.asarray(convergence, dtype=float)))


def to_local(
    lon: npt.ArrayLike, lat: npt.ArrayLike, lon0: npt.ArrayLike, lat0: npt.ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Metres east and north of a centre, on the ellipsoid, with true north at the centre.

    Parameters
    ----------
    lon, lat : float or array_like, shape (n,)
        Positions, WGS84. Units: degrees.
    lon0, lat0 : float or array_like, broadcast
        The centre, WGS84. At a pole, north is along the meridian ``lon0``. Units: degrees.

    Returns
    -------
    east, north : ndarray, shape (n,)
        Ellipsoidal distance from the centre, laid off along the ellipsoidal azimuth: distances and azimuths from the
        centre are exact everywhere; between two points 10 km from it, lengths are right to a centimetre. NaN
        where a coordinate is missing or is no position. Units: metres.

    References
    ----------
    Karney, C. F. F., 2013, Algorithms for geodesics, Journal of Geodesy 87, 43-55.
    """
    places, shape = _flat(lon, lat, lon0, lat0)
    bad = ~((np.abs(places[[1, 3]]) <= 90.0).all(axis=0) & np.isfinite(places).all(axis=0))
    places[:, bad] = 0.0
    azimuth, _, distance = _GEOD.inv(places[2], places[3], places[0], places[1])
    angle, distance = np.radians(azimuth), np.where(bad, np.nan, distance)
    return (distance * np.sin(angle)).reshape(shape), (distance * np.cos(angle)).reshape(shape)


def from_local(
    east: npt.ArrayLike, north: npt.ArrayLike, lon0: npt.ArrayLike, lat0: npt.ArrayLike
) -> tuple[FloatArray, FloatArray]:
    """Positions of metres east and north of a centre: `to_local` turned round.

    Parameters
    ----------
    east, north : float or array_like, shape (n,)
        Local coordinates. Units: metres.
    lon0, lat0 : float or array_like, broadcast
        The centre, WGS84. Units: degrees.

    Returns
    -------
    lon, lat : ndarray, shape (n,)
        Positions, WGS84, longitude in [-180, 180]. NaN where a coordinate is missing or the centre is no position.
        Units: degrees.
    """
    places, shape = _flat(east, north, lon0, lat0)
    bad = ~((np.abs(places[3]) <= 90.0) & np.isfinite(places).all(axis=0))
    places[:, bad] = 0.0
    azimuth = np.degrees(np.arctan2(places[0], places[1]))
    lon, lat, _ = _GEOD.fwd(places[2], places[3], azimuth, np.hypot(places[0], places[1]))
    return np.where(bad, np.nan, lon).reshape(shape), np.where(bad, np.nan, lat).reshape(shape)


def centre(lon: npt.ArrayLike, lat: npt.ArrayLike) -> tuple[float, float]:
    """Middle of a group of places, to hang a local frame on: the direction of the mean of their verticals.

    Averaged as vectors in space, not as numbers, so that the antimeridian and the poles are places like any other.

    Parameters
    ----------
    lon, lat : array_like, shape (n,)
        Positions. A place with a missing coordinate is left out. Units: degrees.

    Returns
    -------
    lon0, lat0 : float
        Longitude in (-180, 180] and latitude. NaN where no place was given or the places cancel out, as opposite
        points of the globe do. Units: degrees.
    """
    angles = np.radians(np.stack(np.broadcast_arrays(np.asarray(lon, dtype=float), np.asarray(lat, dtype=float))))
    longitude, latitude = angles.reshape(2, -1)[:, np.isfinite(angles.reshape(2, -1)).all(axis=0)]
    if longitude.size == 0:
        return np.nan, np.nan
    up = np.cos(latitude) * np.cos(longitude), np.cos(latitude) * np.sin(longitude), np.sin(latitude)
    x, y, z = (float(np.mean(part)) for part in up)
    if np.sqrt(x * x + y * y + z * z) < _FLAT:
        return np.nan, np.nan
    return float(wrap180(np.degrees(np.arctan2(y, x)))), float(np.degrees(np.arctan2(z, np.hypot(x, y))))


@dataclass(frozen=True)
class _Page:
    """A map's CRS taken apart once: the transformations to and from its own geographic base, and its ellipsoid."""

    from_base: Transformer
    to_base: Transformer
    to_wgs84: Transformer
    unit: float  # degrees in one unit of the base's longitude and latitude
    prime_meridian: float  # degrees from Greenwich
    semi_major: float
    eccentricity2: float


def _page_of(crs: Any) -> _Page:
    """Take a CRS apart, or remember how; text is remembered as it is, for reading it costs more than a small job."""
    return _page(crs if isinstance(crs, str) else _read_crs(crs), str(getattr(crs, SHIFT, "") or ""))


def _read_crs(crs: Any) -> CRS:
    try:
        return CRS.from_user_input(crs)
    except (CRSError, TypeError) as reason:
        message = f"The CRS {str(crs)[:80]!r} cannot be read."
        raise FieldDataError(message, code="crs_unknown", value=str(crs)[:80]) from reason


@lru_cache(maxsize=64)
def _page(given: str | CRS, shift: str = "") -> _Page:
    crs = _read_crs(given)
    horizontal = crs
    if horizontal.is_compound:
        horizontal = horizontal.sub_crs_list[0]
    bare = horizontal.source_crs if horizontal.is_bound and horizontal.source_crs else horizontal
    base = bare.geodetic_crs
    # A geographic CRS with a pole of its own hangs on a plain one.
    while base is not None and base.is_derived and base.source_crs is not None:
        base = base.source_crs
    if base is None or base.ellipsoid is None or not (bare.is_projected or bare.is_geographic):
        message = f'The CRS "{crs.name}" ({crs.type_name}) has no map page with a north.'
        raise FieldDataError(message, code="crs_without_north", value=crs.name)
    try:
        from_base = Transformer.from_crs(base, bare, always_xy=True)
        to_base = Transformer.from_crs(bare, base, always_xy=True)
        to_wgs84 = (
            Transformer.from_pipeline(shift) if shift else Transformer.from_crs(horizontal, WGS84, always_xy=True)
        )
    except ProjError as reason:
        message = f'The CRS "{crs.name}" cannot be transformed to longitude and latitude.'
        raise FieldDataError(message, code="crs_unknown", value=crs.name) from reason
    meridian = base.prime_meridian
    greenwich = float(np.degrees(meridian.longitude * float(meridian.unit_conversion_factor))) if meridian else 0.0
    flattening = 1.0 / base.ellipsoid.inverse_flattening if base.ellipsoid.inverse_flattening else 0.0
    return _Page(
        from_base=from_base,
        to_base=to_base,
        to_wgs84=to_wgs84,
        unit=float(np.degrees(base.axis_info[0].unit_conversion_factor)),
        prime_meridian=greenwich,
        semi_major=base.ellipsoid.semi_major_metre,
        eccentricity2=flattening * (2.0 - flattening),
    )


def _draw(page: _Page, lon: FloatArray, lat: FloatArray) -> FloatArray:
    """Page position of longitude and latitude in the CRS's own datum, shape (2, n)."""
    return np.stack(_transform(page.from_base, (lon - page.prime_meridian) / page.unit, lat / page.unit))


def _lonlat(page: _Page, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Longitude and latitude in the CRS's own datum of a page position."""
    lon, lat = _transform(page.to_base, x, y)
    return _position(lon * page.unit + page.prime_meridian, lat * page.unit)


def _leads_home(page: _Page, lon: FloatArray, lat: FloatArray, here: FloatArray) -> npt.NDArray[np.bool_]:
    """Tell where the way to the page and back ends where it began."""
    back_lon, back_lat = _lonlat(page, here[0], here[1])
    astray = np.hypot(back_lat - lat, difference(back_lon, lon) * np.cos(np.radians(lat)))
    return np.asarray(astray < _HOME)


def _slope(page: _Page, lon: FloatArray, lat: FloatArray, here: FloatArray, dlon: float, dlat: float) -> FloatArray:
    """Change of page position with one step in longitude or latitude, shape (2, n)."""
    ahead, behind = _draw(page, lon + dlon, lat + dlat), _draw(page, lon - dlon, lat - dlat)
    with np.errstate(invalid="ignore"):
        forward, backward = np.hypot(*(ahead - here)), np.hypot(*(here - behind))
        whole = (forward <= _TORN * backward) & (backward <= _TORN * forward)
        slope = (ahead - behind) / 2.0
    # An edge of the page lies within a step: difference toward the side on which the page goes on.
    torn = ~whole & np.isfinite(here).all(axis=0)
    if torn.any():
        forward, backward = (np.where(np.isfinite(length), length, np.inf)[torn] for length in (forward, backward))
        side = np.where(forward < backward, 1.0, -1.0)
        near = np.where(side > 0, ahead[:, torn], behind[:, torn])
        far = _draw(page, lon[torn] + 2.0 * side * dlon, lat[torn] + 2.0 * side * dlat)
        slope[:, torn] = side * (4.0 * near - 3.0 * here[:, torn] - far) / 2.0
    return slope


def _transform(transformer: Transformer, x: npt.ArrayLike, y: npt.ArrayLike) -> tuple[FloatArray, FloatArray]:
    """Transform arrays of any shape; what is outside the domain comes back as NaN."""
    places, shape = _flat(x, y)
    moved = np.array(transformer.transform(places[0], places[1]), dtype=float)
    moved = np.where(np.isfinite(moved).all(axis=0), moved, np.nan)
    return moved[0].reshape(shape), moved[1].reshape(shape)


def _position(lon: FloatArray, lat: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Longitude within half a turn, and NaN where the numbers are those of no place."""
    with np.errstate(invalid="ignore"):
        place = (np.abs(lat) <= 90.0) & (np.abs(lon) <= 540.0)
        lon = np.where(np.abs(lon) > 180.0, wrap180(lon), lon)
    return np.where(place, lon, np.nan), np.where(place, lat, np.nan)


def _flat(*values: npt.ArrayLike) -> tuple[FloatArray, tuple[int, ...]]:
    """Broadcast numbers against each other and lay each out in one row, shape (len(values), n)."""
    arrays = np.broadcast_arrays(*(np.asarray(value, dtype=float) for value in values))
    return np.stack([array.ravel() for array in arrays]), arrays[0].shape
