"""Layers of a map to GeoSciML Lite."""

import re

from ..base import AgonicAlgorithm
from ..core import geosciml
from ..gis.i18n import tr
from ..parameters import choice, crs, folder, report, text
from ..run import counts_of
from .gems_contents import Contents
from .geosciml_files import write
from .map_layers import crs_of, entries, gather, ready, refusal

ABSOLUTE = re.compile(r"[A-Za-z][A-Za-z0-9+.\-]*:\S+")


class ExportGeosciml(AgonicAlgorithm):
    """Layers of a map to GeoSciML Lite."""

    ID, GROUP = "export_geosciml", "exchange"
    FIRST = ("ATTITUDES", "CONTACTS", "FAULTS", "FOLDS", "UNITS", "UNIT_FIELD", "BASE_URI", "CRS", "FORMAT")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Export to GeoSciML")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Writes the layers of a map as the views of GeoSciML 4.1 Lite (OGC 16-008): contacts, faults and map "
            "units, and each attitude as one SiteObservationView, with the URIs of the CGI vocabularies for types, "
            "polarity, convention and method. What is not known is the nil of the OGC, never a guess.\n\n"
            "Strikes have the dip to the right; azimuths and symbolRotation count clockwise from true north. A "
            "GeoPackage has azimuth, dip, polarity, convention and method as columns of their own behind those of the "
            "view; GML has the schema's properties only. Folds, section lines and stations have no view and are left "
            "out; the report says what was."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            *entries(),
            text(
                "BASE_URI",
                tr("What identifiers begin with"),
                tr("An absolute URI of yours, such as https://example.org/map/; the key of each row follows."),
                optional=False,
            ),
            crs("CRS", tr("CRS"), tr("Left empty: that of the map units, else of the first layer.")),
            choice(
                "FORMAT",
                tr("Format"),
                tr("One table or one file for each view."),
                {"gpkg": tr("GeoPackage"), "gml": tr("GML 3.1.1")},
                default="gpkg",
            ),
            folder("OUTPUT", tr("Folder"), tr("A new or empty folder.")),
            report(tr("What was written and what was left out.")),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if not ABSOLUTE.fullmatch(said.BASE_URI):
            return tr("BASE_URI: {uri} is no absolute URI.").format(uri=said.BASE_URI)
        message = refusal(said)
        if not message and said.FORMAT == "gml" and not crs_of(said).authid().startswith("EPSG:"):
            return tr("GML names its CRS by a number of the EPSG; choose CRS, or a GeoPackage.")
        return message

    def ready(self, said):
        """Look at the units' own style, in the thread that may."""
        return ready(said)

    def work(self, said, run):
        """Run."""
        place = crs_of(said)
        contents = Contents(run, place, "")
        told = gather(said, run, contents)
        if run.is_cancelled:
            return {}
        contents.finish()
        rows, shapes, left_out = views(contents, said.BASE_URI)
        told += _left_out(left_out, said.FORMAT)
        write(run.folder(said.OUTPUT), said.FORMAT, rows, shapes, place)
        contents.tally.report(run.feedback)
        for sentence in told:
            run.say(sentence)
        with run.report(said.REPORT, tr("GeoSciML Lite")) as page:
            page.heading(tr("Written"))
            page.table([tr("view"), tr("rows")], [(view, len(found)) for view, found in rows.items()])
            if contents.tally.codes:
                tally = contents.tally
                lines = [(code, count, tally.sentence(code)) for code, count in tally.codes.most_common()]
                page.table([tr("noticed"), tr("rows"), tr("such as")], lines)
            page.heading(tr("Left out"))
            for sentence in told:
                page.paragraph(sentence)
            page.cautions()
        return counts_of(contents.tally)


def views(contents, base):
    """Rows and shapes of each view, and how many rows of what were left out.

    Parameters
    ----------
    contents : Contents
        Finished.
    base : str
        What identifiers begin with.
    """
    tables, left_out = contents.tables, {}
    rows, shapes = {}, {}

    def add(view, row, shape):
        rows.setdefault(view, []).append(row)
        shapes.setdefault(view, []).append(shape)

    for row, shape in zip(tables["ContactsAndFaults"], contents.shapes["ContactsAndFaults"]):
        view, _ = geosciml.line_view(row["Type"])
        if view is None:
            left_out[row["Type"]] = left_out.get(row["Type"], 0) + 1
        else:
            add(view, geosciml.line_row(row, base), shape)
    described = {row["MapUnit"]: row for row in tables["DescriptionOfMapUnits"] if row["MapUnit"]}
    for row, shape in zip(tables["MapUnitPolys"], contents.shapes["MapUnitPolys"]):
        unit = described[row["MapUnit"]]
        add("GeologicUnitView", geosciml.unit_row(row, unit, contents.rocks.get(row["MapUnit"], ""), base), shape)
    sites = {key: name for name, key in contents.stations.items()}
    for row, shape in zip(tables.get("OrientationPoints", ()), contents.shapes.get("OrientationPoints", ())):
        method = contents.methods[row["OrientationSourceID"]]
        add("SiteObservationView", geosciml.observation_row(row, method, sites.get(row["StationsID"]), base), shape)
    for name in ("GeologicLines", "CartographicLines", "Stations"):
        if tables.get(name):
            left_out[name] = len(tables[name])
    return rows, shapes, left_out


def _left_out(found, form):
    told = [
        tr("{what}: {count} rows left out, since Lite has no view for them.").format(what=what, count=count)
        for what, count in sorted(found.items())
    ]
    told.append(
        tr("Uncertainties of attitudes, numeric ages and confidences are left out, since Lite has no place for them.")
    )
    if form == "gml":
        told.append(tr("Polarity, convention and method as URIs are left out of GML; a GeoPackage has them."))
    return told
