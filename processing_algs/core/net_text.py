"""Small circles as a person writes them: trend, plunge and radius of each."""

from __future__ import annotations

import re

from .errors import FieldDataError


def parse_small_circles(text: str | None) -> list[tuple[float, float, float]]:
    """Read a list of small circles.

    Parameters
    ----------
    text : str or None
        ``120 30 20; 045 10 15``: trend, plunge and radius, circles apart by semicolons or line ends. Units: degrees.

    Returns
    -------
    list of (trend, plunge, radius)
        Empty where nothing is written.

    Raises
    ------
    FieldDataError
        ``bad_circle``: an entry is not three numbers, or one of them is outside 0 to 360, 0 to 90 or 0 to 90.

    Examples
    --------
    >>> parse_small_circles("120 30 20; 45/10/15")
    [(120.0, 30.0, 20.0), (45.0, 10.0, 15.0)]
    """
    found = []
    for entry in filter(None, (part.strip() for part in re.split(r"[;\n\r]", text or ""))):
        parts = [part for part in re.split(r"[\s,/]+", entry) if part]
        try:
            trend, plunge, radius = (float(part) for part in parts)
        except ValueError as error:
            raise _bad(entry) from error
        if not (0.0 <= trend <= 360.0 and 0.0 <= plunge <= 90.0 and 0.0 < radius <= 90.0):
            raise _bad(entry)
        found.append((trend, plunge, radius))
    return found


def _bad(entry: str) -> FieldDataError:
    message = f'"{entry}" is no trend (0 to 360), plunge (0 to 90) and radius (over 0 to 90).'
    return FieldDataError(message, code="bad_circle", entry=entry)
