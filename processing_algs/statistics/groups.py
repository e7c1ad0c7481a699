"""Which group each reading belongs to: by a field, by areas, or by squares."""

import numpy as np
from qgis.core import Qgis, QgsCoordinateTransform, QgsGeometry, QgsPointXY, QgsSpatialIndex

from ..core import norths
from ..gis.columns import chunks, column_or_empty, group_word


def rows_of(group, count):
    """Places of the members of each group, in their order.

    Parameters
    ----------
    group : ndarray of int, shape (n,)
        Negative: in none.
    count : int

    Returns
    -------
    list of ndarray of int
    """
    order = np.argsort(group, kind="stable")
    edges = np.searchsorted(group[order], np.arange(count + 1))
    return [order[start:stop] for start, stop in zip(edges[:-1], edges[1:])]


class Groups:
    """Finds the group of each reading."""

    def __init__(self, said, run):
        self._field, self._grid = said.GROUP_FIELD, said.GRID
        self._known = {}
        self._zones = _Zones(said, run) if said.ZONES else None

    def of(self, chunk, places, notes, wanted):
        """Number of the group of each row; rows without one are rejected."""
        if self._zones is not None:
            found = self._zones.of(chunk)
            notes.add_where((found < 0) & wanted & ~notes.rejected, "outside_zones", rejects=True)
            return found
        if self._grid:
            notes.add_where(np.isnan(places.lon) & wanted & ~notes.rejected, "no_position", rejects=True)
            return np.zeros(len(chunk), dtype=np.int64)
        if not self._field:
            return np.zeros(len(chunk), dtype=np.int64)
        words = [group_word(value) for value in column_or_empty(chunk, self._field)]
        notes.add_where(
            np.array([word is None for word in words], dtype=bool) & wanted & ~notes.rejected,
            "no_own_group",
            rejects=True,
        )
        return np.array(
            [-1 if word is None else self._known.setdefault(word, len(self._known)) for word in words], dtype=np.int64
        )

    def finished(self, lon, lat, group):
        """Groups that hold readings, in order, and their names."""
        if self._grid:
            group, titles = self._squares(lon, lat)
        elif self._zones is not None:
            titles = self._zones.titles
        else:
            titles = list(self._known) if self._field else [None]
        held = np.unique(group)
        if not self._field and not self._grid and self._zones is None:
            held = np.array([0])
        return np.searchsorted(held, group), [titles[one] for one in held]

    def _squares(self, lon, lat):
        east, north = norths.to_local(lon, lat, *norths.centre(lon, lat))
        cells = np.floor(np.stack([north, east], axis=1) / self._grid).astype(np.int64)
        kinds, group = np.unique(cells, axis=0, return_inverse=True)
        return group.ravel(), [f"E{column:+d} N{row:+d}" for row, column in kinds.tolist()]


class _Zones:
    """Finds the area that each point of a layer lies in."""

    def __init__(self, said, run):
        source = run.source(said.ZONES)
        way = QgsCoordinateTransform(source.sourceCrs(), said.INPUT.crs, run.context.transformContext())
        self._index, self._areas, self.titles = QgsSpatialIndex(), [], []
        for chunk in chunks(source, run.feedback, stop=0.0):
            words = [group_word(value) for value in column_or_empty(chunk, said.ZONE_FIELD)]
            for feature, word in zip(chunk.features, words):
                area = QgsGeometry(feature.geometry())
                area.transform(way)
                feature.setGeometry(area)
                feature.setId(len(self._areas))
                self._index.addFeature(feature)
                self._areas.append(QgsGeometry.createGeometryEngine(area.constGet()))
                self._areas[-1].prepareGeometry()
                self.titles.append(word or str(len(self._areas)))
        taken = {}
        for place, title in enumerate(self.titles):
            taken[title] = taken.get(title, 0) + 1
            if taken[title] > 1:
                self.titles[place] = f"{title} ({taken[title]})"

    def of(self, chunk):
        """Place of the area of each row, -1 for none."""
        found = np.full(len(chunk), -1, dtype=np.int64)
        for row, geometry in enumerate(chunk.geometries):
            if geometry.isEmpty() or geometry.type() != Qgis.GeometryType.Point:
                continue
            point = geometry.centroid()
            at = QgsPointXY(point.asPoint())
            near = sorted(self._index.intersects(QgsGeometry.fromPointXY(at).boundingBox()))
            found[row] = next((one for one in near if self._areas[one].intersects(point.constGet())), -1)
        return found
