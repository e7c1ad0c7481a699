"""Parts of the map within which one fold axis fits."""

import numpy as np
from qgis.core import Qgis

from ..base import AgonicAlgorithm
from ..core import norths
from ..core.attitudes import line_of
from ..core.domains import LEAST, domains
from ..core.girdles import girdles
from ..drawing.domain_style import style_domain_areas, style_domain_readings
from ..gis.i18n import tr
from ..gis.map_shapes import MapShapes
from ..gis.remarks import Notes
from ..gis.schema import NOTICED
from ..parameters import number, report, sink
from .domain_areas import domain_areas, neighbours
from .reading import PLANES, attitudes_in, fields_of, read_rows
from .reports import domain_report

FIELDS = [
    "domain",
    "trend",
    "plunge",
    "sig_pole",
    "axis_half",
    "scatter",
    "n_used",
    "method",
]
READING_FIELDS = ["domain", "misfit", *NOTICED]


class StructuralDomains(AgonicAlgorithm):
    """Parts of the map within which one fold axis fits."""

    ID, GROUP = "structural_domains", "statistics"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Structural domains")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Draws the parts of the map within which the beds fit one fold axis: neighbouring readings are joined as "
            "long as the difference of their axes could be chance, held against the scatter of the rock, which is "
            "estimated from the readings.\n\nDomains are drafts: their edges lie half-way between readings, and "
            "another test or more readings would move them. A reading that fits no axis, or not that of its domain, "
            "is listed and marked. The areas have the fields trend, plunge and sig_pole by which the section tools "
            "take fold axes from a layer."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *attitudes_in(tr("Points with true attitudes of beds."), polarity=False),
            number(
                "LEAST",
                tr("Readings of the smallest piece"),
                tr("Pieces of the map that are joined to domains hold at least so many."),
                default=LEAST,
                least=4,
                most=1000,
                whole=True,
            ),
            number(
                "LEVEL",
                tr("Level of the test"),
                tr(
                    "Two pieces are kept apart where their axes would differ so much by chance in fewer cases, in "
                    "per cent."
                ),
                default=0.1,
                unit="%",
                least=0.0001,
                most=20.0,
                advanced=True,
            ),
            sink(
                "OUTPUT",
                tr("Structural domains"),
                tr("One area a domain, with its fold axis; for the section tools."),
                kind=Qgis.ProcessingSourceType.VectorPolygon,
            ),
            sink(
                "READINGS",
                tr("Readings with their domain"),
                tr(
                    "The readings, each with the number of its domain, how far it lies off its girdle, and what was "
                    "noticed."
                ),
                optional=True,
            ),
            report(tr("The domains, the test, and which readings fit nowhere.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"DOMAINS": tr("Domains found")}

    def work(self, said, run):
        """Run."""
        read = self._read(said, run)
        if read is None:
            return {}
        chunks, vectors, lon, lat = read
        centre = norths.centre(lon, lat)
        place = np.stack(norths.to_local(lon, lat, *centre), axis=1)
        known = np.flatnonzero(np.isfinite(vectors[:, 0]) & np.isfinite(place[:, 0]))
        edges = known[neighbours(place[known])]
        usable = np.where(np.isfinite(place[:, :1]), vectors, np.nan)
        found = domains(usable, place, edges, least=said.LEAST, tail=said.LEVEL / 100.0)
        run.feedback.setProgress(70.0)
        fit = girdles(vectors, found.domain, max(found.number, 1))
        misfit = np.full(len(vectors), np.nan)
        inside = found.domain >= 0
        off = np.einsum("ij,ij->i", vectors[inside], fit.axis[found.domain[inside]])
        misfit[inside] = np.abs(np.degrees(np.arcsin(np.clip(off, -1.0, 1.0))))
        columns = self._columns(found, fit)
        areas = domain_areas(place, found.domain, found.number, MapShapes(said.INPUT.crs), centre)
        with run.output(said.OUTPUT, said.INPUT.crs, FIELDS, geometry=Qgis.WkbType.MultiPolygonZ) as out:
            out.add_columns(areas, columns)
        run.style(out, style_domain_areas)
        self._readings(said, run, out, chunks, found, misfit)
        if not found.number:
            run.warn(tr("No domain was found: nowhere do the beds fit one axis that is known within 30 degrees."))
        with run.report(said.REPORT, tr("Structural domains")) as page:
            domain_report(page, columns, out.tally, found, said)
        return {"DOMAINS": found.number, **out.counts}

    @staticmethod
    def _read(said, run):
        source = run.source(said.INPUT)
        run.say(tr("Fields used: {fields}").format(fields=fields_of(said).said()))
        locator, kept, vectors, lon, lat = run.locator(source), [], [], [], []
        for chunk in run.chunks(source, stop=40.0):
            notes = Notes(len(chunk))
            found, own = read_rows(chunk, said, notes, PLANES)
            places = locator.places(chunk)
            notes.add_where(np.isnan(places.lon) & ~notes.rejected, "no_position", rejects=True)
            wanted = np.isin(found.kind, said.KIND) if said.KIND else np.ones(len(chunk), dtype=bool)
            own[~wanted] = np.nan
            kept.append((chunk, notes, wanted))
            vectors.append(own)
            lon.append(np.where(notes.rejected, np.nan, places.lon))
            lat.append(np.where(notes.rejected, np.nan, places.lat))
        if run.is_cancelled:
            return None
        if not kept:
            return [], np.empty((0, 3)), np.empty(0), np.empty(0)
        return kept, np.concatenate(vectors), np.concatenate(lon), np.concatenate(lat)

    @staticmethod
    def _columns(found, fit):
        count = found.number
        trend, plunge = line_of(fit.axis[:count])
        return {
            "domain": list(range(1, count + 1)),
            "trend": trend,
            "plunge": plunge,
            "sig_pole": fit.sigma[:count, 0],
            "axis_half": fit.region[:count, 0],
            "scatter": fit.scatter[:count],
            "n_used": [int(n) for n in fit.n[:count]],
            "method": ["draft"] * count,
        }

    @staticmethod
    def _readings(said, run, out, kept, found, misfit):
        """Note what fits nowhere, count, and write the readings where that is wanted."""
        start, rows = 0, []
        for chunk, notes, wanted in kept:
            own = slice(start, start + len(chunk))
            start += len(chunk)
            good = ~notes.rejected & wanted
            notes.add_where(good & (found.domain[own] < 0), "no_domain", rejects=True)
            notes.add_where(good & found.apart[own], "off_domain", rejects=False, value=np.round(misfit[own], 1))
            place = np.flatnonzero(wanted)
            out.count(chunk.ids[place], notes.at(place))
            rows.append((chunk, notes, found.domain[own], misfit[own], wanted))
        if not said.READINGS:
            return
        with run.output(said.READINGS, said.INPUT.source, READING_FIELDS) as readings:
            for chunk, notes, domain, off, _ in rows:
                numbers = [None if one < 0 else int(one) + 1 for one in domain]
                readings.add(chunk, {"domain": numbers, "misfit": off}, notes)
        run.style(readings, style_domain_readings)
