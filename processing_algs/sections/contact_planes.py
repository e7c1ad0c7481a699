"""The planes that give crossings their apparent dips."""

from collections import Counter
from dataclasses import dataclass

import numpy as np

from ..core import sections
from ..core.attitudes import dip_direction
from ..gis.attitude_columns import read_attitudes
from ..gis.i18n import tr
from ..gis.point_rows import PointRows
from ..gis.remarks import Notes, Tally
from .shared import texts


@dataclass(frozen=True)
class Seen:
    """Apparent dips at crossings: degrees; where each plane is from; metres to it. Every array has shape (n,)."""

    app_dip: np.ndarray
    source: list
    away: np.ndarray


class ContactPlanes:
    """Planes of contacts.

    Parameters
    ----------
    own : AttitudeFields or None
        Fields of the contacts themselves.
    reach : float
        Greatest distance to another attitude. Units: metres.
    """

    def __init__(self, own, reach):
        self._own, self._reach = own, reach
        self._lon = self._lat = self._strike = self._dip = np.empty(0)
        self._group = np.empty(0, dtype=object)

    def read(self, run, source, names, group_field, kinds):
        """Read the attitudes, planes of the wanted kinds alone; say what was noticed about them.

        A row that does not say its kind, or says it by a word that is not known, is taken as the first wanted kind.
        """
        locator, tally, unused = run.locator(source), Tally(), Counter()
        looked = PointRows(run, source, locator, what="ATTITUDES", share=0.0)
        parts, default = [], (kinds or ["other_plane"])[0]
        for chunk in run.chunks(source, stop=0.0):
            notes = Notes(len(chunk))
            places, read = locator.places(chunk), read_attitudes(chunk, names, notes, kind_default=default)
            looked.note_places(places, notes)
            notes.add_where(np.isnan(places.lon), "no_position", rejects=True)
            tally.add(chunk.ids, notes)
            good = ~notes.rejected
            use = good & ~read.is_line
            unused["lines"] += int((good & read.is_line).sum())
            if names.kind and kinds:
                unused["kinds"] += int((use & ~np.isin(read.kind, kinds)).sum())
                use &= np.isin(read.kind, kinds)
            group = np.array(texts(chunk, group_field), dtype=object)
            parts.append([part[use] for part in (places.lon, places.lat, read.strike, read.dip, group)])
        for line in tally.lines():
            run.warn(tr("Attitudes: {noticed}").format(noticed=line))
        if unused["lines"]:
            run.say(
                tr("Attitudes: {count} rows are lines, not planes, and were not used.").format(count=unused["lines"])
            )
        if unused["kinds"]:
            run.say(
                tr("Attitudes: {count} rows are of kinds that KINDS does not name, and were not used.").format(
                    count=unused["kinds"]
                )
            )
        looked.tell()
        if parts:
            self._lon, self._lat, self._strike, self._dip, self._group = (
                np.concatenate(column) for column in zip(*parts)
            )

    def seen(self, chunk, row, where, label, notes):
        """Apparent dips at crossings.

        Parameters
        ----------
        chunk : Chunk
        row : ndarray of int, shape (n,)
            Row of each crossing.
        where : sections.Stations
        label : list of str
            Names of the chunk's rows.
        notes : Notes
            Of the crossings: a plane along the section is noted.

        Returns
        -------
        Seen
        """
        strike, dip = np.full(len(row), np.nan), np.full(len(row), np.nan)
        source, away = [None] * len(row), np.full(len(row), np.nan)
        if self._own:
            found = Notes(len(chunk))
            own = read_attitudes(chunk, self._own, found)
            for one in found.at(row).noticed:
                if one.code != "null_value":  # a contact need have no attitude of its own
                    notes.add(one.row, one.code, rejects=False, **one.values)
            strike, dip = own.strike[row], own.dip[row]
            away[np.isfinite(dip)] = 0.0
            source = ["own" if known else None for known in np.isfinite(dip)]
        for one in np.flatnonzero(np.isnan(dip)) if len(self._lon) else ():
            distance = sections.distances(where.lon[one], where.lat[one], self._lon, self._lat)
            named = np.where((self._group == label[row[one]]) & (self._group != ""), distance, np.inf)
            word, best = (
                ("named", int(np.argmin(named)))
                if named.min() <= self._reach
                else ("nearest", int(np.argmin(distance)))
            )
            if distance[best] <= self._reach:
                strike[one], dip[one] = self._strike[best], self._dip[best]
                source[one], away[one] = word, distance[best]
        app_dip = sections.seen_dip(dip, dip_direction(strike), where.azimuth)
        notes.add_where(
            np.isnan(app_dip) & np.isfinite(dip) & ~notes.rejected, "parallel", rejects=False, leg=where.leg + 1
        )
        return Seen(app_dip, source, away)
