"""The package of drawn sections: their layers in one GeoPackage, styled, with a project to open them in."""

import json
import re
from contextlib import closing
from pathlib import Path

import numpy as np
from qgis.core import Qgis, QgsCoordinateTransformContext, QgsProcessingException

from ..core import norths, sections
from ..core.angles import compass_point, wrap360
from ..drawing import section_layers as tables
from ..drawing.draft_layers import style_draft, style_draft_units
from ..drawing.literal import literal
from ..drawing.section_layout import Page
from ..gis.databases import connect, contents_of, count_rows, mark_as_ours, our_mark, tables_of
from ..gis.i18n import tr
from ..gis.remarks import REJECTED
from ..gis.section_lines import section_space
from ..gis.styling import STYLE_NAME

PROJECT_NAME = "sections"
LAYOUT = 1  # version of what a package holds
# Endings of the tables that a geologist draws on.
DRAWN_ON = ("interpretation", tables.GEMS_LINES, tables.GEMS_AREAS)
MANY_LEGS = 3  # more are not listed one by one


class Package:
    """Layers of drawn sections.

    Parameters
    ----------
    path : pathlib.Path
        A GeoPackage that is not there yet.
    project : QgsProject
        Takes the layers.
    attitudes : QgsVectorLayer or None
        Ticks of all sections.
    colors : dict
        Of units, as `section_layers.unit_colors` gives them.
    reach : float
        Distance at which an attitude is palest. Units: metres.
    gems : bool
        Whether to name things as GeMS does.

    Attributes
    ----------
    pages : list of Page
    """

    def __init__(self, path, project, attitudes, colors, reach, *, gems):
        self._path, self._project = path, project
        self._tick_fields, self._ticks = None, {}
        if attitudes is not None:
            self._tick_fields = attitudes.fields()
            for row in attitudes.getFeatures():
                if row["status"] != REJECTED:
                    self._ticks.setdefault(row["section"], []).append((row.geometry(), row.attributes()))
        self._colors, self._reach, self._gems = colors, reach, gems
        self._taken, self._layers, self.pages = set(), [], []
        project.setCrs(section_space())
        project.setEllipsoid("NONE")
        project.setFilePathStorage(Qgis.FilePathType.Relative)
        project.setTitle(tr("Sections"))

    def add(self, line, content, drawing, notes, ve, rule, index=()):
        """Add a section.

        Parameters
        ----------
        line : SectionLine
        content : section_drawing.Content
        drawing : section_drawing.Drawing
        notes : str
            Small print of its page.
        ve : float
            Vertical exaggeration.
        rule : str
            Construction of the draft.
        index : sequence
            All sections seen from above, as `index_of` gives them.
        """
        prefix = self._prefix(line)
        drawn_on = tables.interpretation_tables(prefix, gems=self._gems)
        written = [
            *drawn_on,
            *tables.drawing_tables(prefix, drawing),
            tables.contact_table(prefix, drawing, content.marks),
            tables.profile_table(prefix, drawing),
        ]
        if content.ticks:
            kind, rows = Qgis.WkbType.LineString, self._ticks[line.name]
            written.append(tables.Table(f"{prefix}attitudes", kind, self._tick_fields, rows))
        if content.draft:
            written += tables.draft_tables(prefix, content, ve, rule)
        tables.write_tables(self._path, written, QgsCoordinateTransformContext())
        title = tr("Section {first}\u2013{last}").format(first=line.ends[0], last=line.ends[1])
        if content.draft:
            title = tr("{title}: a draft below the ground").format(title=title)
        layers = self._open(prefix, title, written, drawn_on)
        legend = [
            (layers[what], name)
            for what, name, filled in (
                ("units", tr("Map units"), content.units),
                ("contacts", tr("Contacts and faults"), content.marks),
                ("attitudes", tr("Attitudes"), content.ticks),
                ("draft", tr("Draft, not measured"), content.draft),
                ("draft_areas", tr("Units, drafted"), content.draft_areas),
            )
            if what in layers and filled and layers[what].featureCount()
        ]
        seen = [(points, name == line.name, ends) for name, points, ends in index]
        subtitle = _subtitle(line, content)
        self.pages.append(Page(title, subtitle, notes, drawing.box, list(layers.values()), legend, seen))

    def store(self):
        """Store the styles and the project in the GeoPackage."""
        for layer in self._layers:
            error = layer.saveStyleToDatabase(STYLE_NAME, "", True, "")
            if error:
                raise QgsProcessingException(tr("The style could not be stored: {reason}").format(reason=error))
        if not self._project.write(f"geopackage:{self._path}?projectName={PROJECT_NAME}"):
            message = tr("The project could not be stored: {reason}").format(reason=self._project.error())
            raise QgsProcessingException(message)

    def _prefix(self, line):
        """What the names of a section's tables begin with, unlike those of any other section."""
        letter = re.sub(r"\W", "", line.ends[0]) or "S"
        wanted, number = f"CS{letter}" if self._gems else f"{letter}_", 1
        prefix = wanted
        while prefix in self._taken:
            number += 1
            prefix = f"{wanted.rstrip('_')}{number}_"
        self._taken.add(prefix)
        return prefix

    def _open(self, prefix, title, written, drawn_on):
        """Open the tables as layers, styled, top first, in a group of their own."""
        styles = {
            "lettering": tables.style_lettering,
            **{table.name.removeprefix(prefix): tables.style_interpretation for table in drawn_on},
            "attitudes": lambda layer: tables.style_ticks(layer, self._reach),
            "contacts": tables.style_contacts,
            "profile": tables.style_profile,
            "draft": style_draft,
            "drawing": tables.style_drawing,
            "units": lambda layer: tables.style_units(layer, self._colors),
            "draft_areas": lambda layer: style_draft_units(layer, self._colors),
        }
        present = {table.name.removeprefix(prefix) for table in written}
        group = self._project.layerTreeRoot().addGroup(literal(title))
        layers = {}
        for what, style in styles.items():
            if what in present:
                layer = tables.open_layer(self._path, prefix + what, prefix + what)
                style(layer)
                self._project.addMapLayer(layer, False)
                group.addLayer(layer)
                layers[what] = layer
        self._layers += layers.values()
        return layers


def index_of(lines):
    """All sections seen from above.

    Parameters
    ----------
    lines : list of SectionLine

    Returns
    -------
    list of (str, ndarray of shape (n, 2), tuple of str)
        Name; metres east and north of the middle of all; letters of the ends.
    """
    lon, lat = (np.concatenate([getattr(line.section, key) for line in lines]) for key in ("lon", "lat"))
    centre = norths.centre(lon, lat)
    return [
        (line.name, np.column_stack(norths.to_local(line.section.lon, line.section.lat, *centre)), line.ends)
        for line in lines
    ]


def mark_package(path):
    """Mark a finished package as ours, with what it holds, so that another run knows what it may replace.

    Parameters
    ----------
    path : pathlib.Path
        Closed.
    """
    with closing(connect(path)) as database:
        held = {name: count_rows(database, name) for name in tables_of(path)}
    mark_as_ours(path, json.dumps({"package": LAYOUT, "tables": held}, ensure_ascii=False))


def package_refusal(path):
    """Why a package that is there already must not be replaced: a sentence, or None.

    Parameters
    ----------
    path : str
    """
    path = Path(path)
    if not path.is_file() or not path.stat().st_size:
        return None
    mark = our_mark(path)
    if mark is None:
        return tr("PACKAGE: {name} is no package of sections that this version made; choose another file.").format(
            name=path.name
        )
    held = json.loads(mark)["tables"]
    drawn = 0
    with closing(connect(path)) as database:
        for name, what in contents_of(path).items():
            if name not in held and (what, name) != ("project", PROJECT_NAME):
                return tr("PACKAGE: {name} holds {layer}, which is no section; choose another file.").format(
                    name=path.name, layer=name
                )
            found = count_rows(database, name) if name in held else 0
            if name.endswith(DRAWN_ON):
                drawn += found
            elif name in held and found != held[name]:
                return tr("PACKAGE: the layer {layer} of {name} was changed; choose another file.").format(
                    name=path.name, layer=name
                )
    if drawn:
        return tr(
            "PACKAGE: {name} holds {count} features of an interpretation that somebody drew; choose another file."
        ).format(name=path.name, count=drawn)
    return None


def _subtitle(line, content):
    """Say where a section runs and how long it is."""
    azimuths = sections.middle_azimuth(line.section)
    named = [f"{round(float(wrap360(one))) % 360:03d}° {compass_point(one)}" for one in azimuths]
    length = f"{round(content.length):,}".replace(",", "\u2009")
    if len(named) > MANY_LEGS:
        way = tr("in {count} legs from {first} to {last}").format(count=len(named), first=named[0], last=named[-1])
    else:
        way = tr("toward {azimuths}").format(azimuths=tr(", then ").join(named))
    told = tr("Drawn {way} from true north; {length} m along the ground").format(way=way, length=length)
    if line.title == line.name and (line.name in line.ends or _is_pair(line)):
        return told
    return f"{line.title}. {told}"


def _is_pair(line):
    """Whether a section's name says no more than its two letters."""
    plain = re.sub(r"[\s'\u2019\u2032\u2010-\u2014-]", "", line.name)
    return plain == re.sub("\u2032", "", "".join(line.ends))
