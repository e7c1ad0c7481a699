"""A rectangle of a map's page: its CRS, its box and the way from it to places on Earth."""

from dataclasses import dataclass
from typing import Any

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsProcessingException,
    QgsRectangle,
)

from ..core import norths
from .i18n import tr
from .places import Locator


@dataclass(frozen=True)
class Page:
    """A rectangle of a map's page; a place has no width.

    Attributes
    ----------
    crs : QgsCoordinateReferenceSystem
    projection : pyproj.CRS
        The same.
    box : tuple of float
        Left, bottom, right and top, in units of the CRS.
    """

    crs: QgsCoordinateReferenceSystem
    projection: Any
    box: tuple

    def own(self, x, y):
        """Longitude and latitude in the CRS's own datum. Units: degrees."""
        return norths.own_lonlat(self.projection, x, y)

    def wgs84(self, x, y):
        """Longitude and latitude on WGS 84. Units: degrees."""
        return norths.wgs84_lonlat(self.projection, x, y)

    @property
    def middle(self):
        """Its middle, x and y."""
        left, bottom, right, top = self.box
        return (left + right) / 2.0, (bottom + top) / 2.0


def page_of(rectangle, given, wanted, context):
    """Make a page of a rectangle.

    Parameters
    ----------
    rectangle : QgsRectangle
    given : QgsCoordinateReferenceSystem
        Of the rectangle.
    wanted : QgsCoordinateReferenceSystem or None
        Of the page; None for the rectangle's own.
    context : QgsCoordinateTransformContext

    Returns
    -------
    Page

    Raises
    ------
    QgsProcessingException
        If there is no CRS that leads to places on Earth, or the rectangle cannot be brought into it.
    """
    crs = wanted if wanted is not None and wanted.isValid() else given
    projection = Locator(crs).projection
    if projection is None:
        raise QgsProcessingException(tr("There is no coordinate reference system that leads to places on Earth."))
    if given is not None and given.isValid() and given != crs:
        try:
            rectangle = QgsCoordinateTransform(given, crs, context).transformBoundingBox(rectangle)
        except QgsCsException as error:
            raise QgsProcessingException(
                tr("The extent cannot be brought into {crs}: {reason}").format(
                    crs=crs.userFriendlyIdentifier(), reason=error
                )
            ) from error
    box = rectangle.xMinimum(), rectangle.yMinimum(), rectangle.xMaximum(), rectangle.yMaximum()
    return Page(crs, projection, box)


def place_page(place, wanted, context):
    """Make a page without width of a place, an ``entries.Place``; as `page_of`."""
    given = place.crs if place.crs is not None else wanted
    if given is None:
        raise QgsProcessingException(tr("The place has no coordinate reference system."))
    point = QgsRectangle(place.point.x(), place.point.y(), place.point.x(), place.point.y())
    return page_of(point, given, wanted, context)
