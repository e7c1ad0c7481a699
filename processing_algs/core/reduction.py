"""From what was written down and the correction for north to attitudes."""

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from .angles import wrap360
from .attitudes import dip_direction, line_from_rake, sigma_line, sigma_plane

Floats = npt.NDArray[np.float64]
Bools = npt.NDArray[np.bool_]


@dataclass(frozen=True)
class Attitudes:
    """Planes and lines from true north; every array has shape (n,), NaN where a row has no such thing. Units: degrees.

    Attributes
    ----------
    strike, dip, dip_dir : ndarray
        Of planes: strike in [0, 360) with the dip to the right. A horizontal plane has neither strike nor dip
        direction.
    trend, plunge : ndarray
        Of lines. A vertical line has no trend.
    sig_az : ndarray
        1-sigma of the strike or trend; NaN where there is none.
    sig_pole : ndarray
        1-sigma of the direction of the plane's pole or of the line.
    """

    strike: Floats
    dip: Floats
    dip_dir: Floats
    trend: Floats
    plunge: Floats
    sig_az: Floats
    sig_pole: Floats

    @property
    def azimuth(self) -> Floats:
        """Strike of planes and trend of lines."""
        return np.where(np.isnan(self.strike), self.trend, self.strike)

    @property
    def inclination(self) -> Floats:
        """Dip of planes and plunge of lines."""
        return np.where(np.isnan(self.dip), self.plunge, self.dip)


def attitudes_of(
    true: npt.ArrayLike,
    to_strike: npt.ArrayLike,
    dip: npt.ArrayLike,
    rake: npt.ArrayLike,
    is_line: npt.NDArray[np.bool_],
    sigma: float,
    sigma_declination: npt.ArrayLike,
) -> Attitudes:
    """Reduce corrected readings to attitudes.

    Parameters
    ----------
    true : array_like, shape (n,)
        The azimuth that was read, corrected to true north. Units: degrees.
    to_strike : array_like, shape (n,)
        What leads from that azimuth to the strike with the dip to its right. Units: degrees.
    dip : array_like, shape (n,)
        Dip or plunge as read, 0 to 90. Units: degrees.
    rake : array_like, shape (n,)
        Of lines measured in a plane, 0 to 180 from that strike; NaN elsewhere. Units: degrees.
    is_line : ndarray of bool, shape (n,)
        Rows that are lines.
    sigma : float
        1-sigma of a reading. Units: degrees.
    sigma_declination : array_like, shape (n,)
        1-sigma of the declination, 0 where none was needed. Units: degrees.

    Returns
    -------
    Attitudes
    """
    true, dip, rake = (np.asarray(column, dtype=float) for column in (true, dip, rake))
    strike = wrap360(true + to_strike)
    pitched = is_line & ~np.isnan(rake)
    trend, plunge = np.where(is_line, true, np.nan), np.where(is_line, dip, np.nan)
    if pitched.any():
        trend[pitched], plunge[pitched] = line_from_rake(strike[pitched], dip[pitched], rake[pitched])
    strike = np.where(is_line | (dip == 0.0), np.nan, strike)
    trend = np.where(plunge == 90.0, np.nan, trend)
    dip = np.where(is_line, np.nan, dip)
    plane_az, plane_pole = sigma_plane(dip, sigma, sigma_declination)
    line_az, line_direction = sigma_line(plunge, sigma, sigma_declination)
    return Attitudes(
        strike,
        dip,
        dip_direction(strike),
        trend,
        plunge,
        np.where(np.isnan(np.where(is_line, trend, strike)), np.nan, np.where(is_line, line_az, plane_az)),
        np.where(is_line, line_direction, plane_pole),
    )
