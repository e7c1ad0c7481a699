"""What the algorithms about sightings have in common: parameters."""

from ..core import rays
from ..gis import wording
from ..gis.i18n import tr
from ..gis.places import Locator
from ..parameters import choice, column, number


def bearing(parent="INPUT"):
    """Field of the bearings, BEARING_FIELD."""
    return column(
        "BEARING_FIELD", tr("Bearing"), tr("As read: a number, or text such as N45W."), parent, role="bearing"
    )


def angle_means(label, help_text, *, optional=False):
    """What a vertical angle is, ANGLE_MEANS."""
    return choice(
        "ANGLE_MEANS",
        label,
        help_text,
        wording.worded(rays.ANGLE_MEANS, wording.vertical_angles()),
        optional=optional,
    )


def sigma_bearing(label, *, least=0.0, most=None):
    """Uncertainty of a bearing, SIGMA_BEARING."""
    return number(
        "SIGMA_BEARING",
        label,
        tr("1-sigma. 1 is usual for a sighted bearing with a hand-held compass."),
        default=1.0,
        unit="°",
        least=least,
        most=most,
        advanced=True,
    )


def sigma_angle(*, least=0.0, most=None):
    """Uncertainty of a vertical angle, SIGMA_ANGLE."""
    return number(
        "SIGMA_ANGLE",
        tr("Uncertainty of a vertical angle"),
        tr("1-sigma."),
        default=0.5,
        unit="°",
        least=least,
        most=most,
        advanced=True,
    )


def refraction(help_text, *, least, most=None):
    """Coefficient of refraction, REFRACTION."""
    return number(
        "REFRACTION",
        tr("Refraction"),
        help_text,
        default=rays.REFRACTION,
        least=least,
        most=most,
        advanced=True,
    )


def eye_height(**limits):
    """Height of the eye above the ground, EYE_HEIGHT."""
    return number("EYE_HEIGHT", tr("Height of the eye"), tr("Above the ground."), default=1.6, unit="m", **limits)


def nowhere(key, crs):
    """Say that a CRS leads to no places on Earth, or None."""
    if Locator(crs).projection is None:
        return tr("{key}: there is no coordinate reference system that leads to places on Earth.").format(key=key)
    return None
