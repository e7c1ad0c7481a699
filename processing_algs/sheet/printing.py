"""A sheet while it is put together: from what was said to its layers, parts, places and layout."""

from dataclasses import replace

import pyproj
from qgis.core import QgsLayoutItem, QgsLayoutPoint, QgsLineSymbol, QgsProcessingException, QgsRectangle

from ..core.errors import FieldDataError
from ..core.geomagnetism import load
from ..core.north_diagram import drawn_angles, norths_of_sheet
from ..core.sheet_boxes import Paper, arrange, paper_size
from ..drawing import sheet_explanation as explanation
from ..drawing import sheet_margin as margin
from ..drawing.layer_style import symbols_in
from ..drawing.map_style import style_graticule
from ..drawing.north_words import norths_sentences
from ..drawing.sheet import line_entries, symbol_entries
from ..drawing.sheet_items import COLUMN, Item, text_item
from ..drawing.sheet_print import SheetLayout, export, set_locator, whole_points
from ..drawing.symbols import Sizes
from ..drawing.type import SERIF, Look, text_size
from ..drawing.unit_patterns import ornaments
from ..drawing.unit_style import style_units
from ..gis.copies import TEXT, fields_of
from ..gis.dem import Dem
from ..gis.i18n import day, tr
from ..gis.raster_cache import modest_cache
from ..gis.units import code_of, styled_units, table_units, units_of, warnings
from .contents import LINE, SHADED, own_style
from .frame import edge_box, edge_labels, graticule_lines, grid_numbers, grid_step, metres_of, true_scale, wider
from .profiles import draw_profiles

MARGIN, RIM = 10.0, 9.6  # Units: mm
EDGE, PROFILE = Look(6.0), Look(9.0, bold=True, families=SERIF)
GRID_AT, EDGE_AT = 2.3, 6.0  # numbers of the grid and labels of the graticule, from the neat line. Units: mm
LONGEST = 5000.0  # of a sheet from a roll. Units: mm


class Sheet:
    """A sheet of a run.

    Parameters
    ----------
    said : Said
    run : Run
    page : gis.pages.Page
    contents : Contents
    project : QgsProject
        Takes the layers.
    folder : str or pathlib.Path
        For files that are not kept.

    Attributes
    ----------
    scale : float
        Denominator.
    pages : int
    """

    def __init__(self, said, run, page, contents, project, folder):
        self.said, self.run, self.page, self.contents, self.project = said, run, page, contents, project
        self.units, self.patterns, self.fills = None, {}, {}
        self._metres = metres_of(page.crs)
        left, bottom, right, top = page.box
        self._ground = (right - left) * self._metres, (top - bottom) * self._metres
        self._to_page = pyproj.Transformer.from_crs("EPSG:4326", page.projection, always_xy=True).transform
        self._graticule = graticule_lines(page, page.box, self._to_page)
        self.scale, self.pages, self._small = None, 1, None
        self._folder, self._profiles = folder, []

    # -- contents -----------------------------------------------------------------------------------------------------

    def fill(self):
        """Copy layers and make those of the sheet, at the scale that the paper allows."""
        said, contents, run = self.said, self.contents, self.run
        steps = 7
        contents.shade = SHADED if said.DEM and said.HILLSHADE else 1.0
        if said.UNITS:
            self._read_units()
        run.feedback.setProgress(100.0 / steps)
        contents.add_lines(said.LINES)
        contents.add_base(said.BASE)
        if said.SECTIONS:
            contents.add_sections(said.SECTIONS.layer, said.SECTION_FIELD)
        self.scale = self._scale_that_fits()
        run.feedback.setProgress(200.0 / steps)
        per_mm = self.scale / 1000.0 / self._metres
        if said.DEM and not run.is_cancelled:
            contents.add_relief(
                said.DEM,
                run.dem(Dem(said.DEM, 1, said.HEIGHT_UNIT)).unit_word,
                per_mm,
                shaded=said.HILLSHADE,
                lines=said.CONTOURS,
                interval=said.CONTOUR_INTERVAL,
                feedback=run.feedback,
            )
        run.feedback.setProgress(400.0 / steps)
        if run.is_cancelled:
            return
        contents.add_attitudes(said.ATTITUDES, self.scale)
        contents.add_graticule(self._graticule)
        run.feedback.setProgress(500.0 / steps)
        contents.add_lettering(per_mm)
        if said.SECTIONS and said.DEM and not run.is_cancelled:
            self._draw_profiles()
        run.feedback.setProgress(600.0 / steps)
        self._check_scale()

    def _read_units(self):
        said, layer = self.said, own_style(self.said.UNITS.layer)
        copied = self.contents.store.copy(layer, "units", self.contents.rectangle)
        areas = [(code_of(row[said.UNIT_FIELD]), row.geometry()) for row in copied.getFeatures()]
        table, faults = ([], [])
        if said.UNIT_TABLE:
            table, faults = table_units(said.UNIT_TABLE.source, self.run.feedback)
        found = units_of([area for area in areas if area[0]], table, styled_units(layer, said.UNIT_FIELD), faults)
        for sentence in warnings(found):
            self.run.warn(sentence)
        self.units = found
        self.patterns = ornaments(found.units, found.colors, found.shared) if said.PATTERNS else {}
        self.fills = explanation.fills_of(found.units, found.colors, self.patterns, self.contents.shade)
        self.contents.add_units(layer, said.UNIT_FIELD, found, self.patterns)

    def _draw_profiles(self):
        """Draw the sections, those that fit the paper."""
        plain = None
        if self.units:
            plain = self.contents.store.open("units", tr("Map units"))
            style_units(plain, self.said.UNIT_FIELD, self.units, {}, letters=False)
        drawn = draw_profiles(self.said, self.contents, plain, self.scale, self._folder, self.run)
        widest = max(wide for wide, _ in self._papers()) - 2 * MARGIN
        self._profiles = [one for one in drawn if one.extent.width() * 1000.0 / self.scale <= widest]
        for one in drawn:
            if one not in self._profiles:
                self.run.warn(tr("{name} is longer than the paper is wide; it is left out.").format(name=one.title))

    def _check_scale(self):
        """Say where lengths on the page are not those on the ground."""
        off = true_scale(self.page)
        if abs(off - 1.0) > 0.01:
            self.run.warn(
                tr("In this projection lengths on the sheet are {factor:.3f} times those on the ground.").format(
                    factor=off
                )
            )

    # -- parts --------------------------------------------------------------------------------------------------------

    def _parts(self, scale, symbols, numbers, interval, missing=()):
        """Parts of the margin, in the order in which they are read."""
        said = self.said
        units = self.units.units if self.units else []
        sizes = Sizes(**{key: value for key, value in self.contents.sizes.items() if key != "labels"})
        entries = [*symbol_entries(symbols, sizes), *line_entries(numbers)]
        others = [pair for layer in self.contents.base for pair in explanation.symbols_of(layer)] + list(missing)
        if said.SECTIONS and self.contents.get("sections") is not None:
            shown = self.contents.get("sections").renderer().symbol().clone()
            others.append((shown, tr("Line of section")))
        facts = self._facts(interval)
        return [
            *explanation.unit_parts(units, self.fills),
            *explanation.correlation_parts(units, self.fills),
            *explanation.symbol_parts(entries, others),
            margin.scale_part(scale, facts),
            *self._norths_parts(),
            *margin.locator_parts(self._where()),
            *margin.note_parts(facts),
        ]

    def _facts(self, interval):
        crs = self.page.crs
        datum = self.page.projection.geodetic_crs.datum if self.page.projection.geodetic_crs else None
        return margin.Facts(
            crs=crs.description() + f" ({crs.authid()})" if crs.authid() else crs.description(),
            datum=datum.name if datum else crs.description(),
            vertical=tr("Heights in metres, from {name}.").format(name=self.said.DEM.name()) if self.said.DEM else "",
            interval=interval,
            grid=True,
            sources=self.said.DATA_SOURCES,
            methods=self.said.METHODS,
            notes=self._notes(),
        )

    def _notes(self):
        if not self.said.ATTITUDES:
            return []
        told = tr(
            "Strikes and trends are true azimuths; their symbols are turned to the sheet's own north, grid north."
        )
        return [told]

    def _norths_parts(self):
        said = self.said
        if said.MAP_DATE is None:
            self.run.warn(tr("Without MAP_DATE the sheet has no diagram of the norths: there is no silent today."))
            return []
        model = load(said.MODEL)
        try:
            found = norths_of_sheet(
                model, said.MAP_DATE, 0.0, self.page.projection, self.page.box, self.page.own, self.page.wgs84
            )
        except FieldDataError as error:
            if error.code != "date_outside_model":
                raise QgsProcessingException(str(error)) from error
            raise QgsProcessingException(
                tr("The date is outside {model}, which holds from {first:g} to {last:g}.").format(
                    model=model.name, first=model.first, last=model.last
                )
            ) from error
        drawn = drawn_angles(found.decl.centre, found.converg.centre)
        sentences = norths_sentences(found, said.MAP_DATE, model.name, drawn)
        return [margin.norths_part(drawn, tr("Norths, {day}").format(day=day(said.MAP_DATE)), sentences)]

    def _where(self):
        lon, lat = (float(part) for part in self.page.wgs84(*self.page.middle))
        sides = (tr("N") if lat >= 0 else tr("S"), tr("E") if lon >= 0 else tr("W"))
        return tr("Centre {lat:.3f}° {north}, {lon:.3f}° {east}.").format(
            lat=abs(lat), north=sides[0], lon=abs(lon), east=sides[1]
        )

    # -- places -------------------------------------------------------------------------------------------------------

    def _papers(self):
        """Sizes of paper that may be taken."""
        if self.said.ROLL:
            return [(self.said.ROLL, LONGEST)]
        wanted = {"landscape": [True], "portrait": [False], "auto": [True, False]}[self.said.ORIENTATION]
        return [tuple(map(whole_points, paper_size(self.said.PAPER, landscape=flat))) for flat in wanted]

    def _title(self, wide):
        """Lettering across the top, with its places. List of Item, and its height."""
        said = self.said
        names = [line for line in said.AUTHORS.split("\n") if line.strip()]
        return margin.title(said.TITLE, said.SUBTITLE, names, day(said.MAP_DATE) if said.MAP_DATE else "", wide)

    def _arrange(self, parts, scale, sections):
        """Best arrangement over the papers that may be taken: (Paper, Arrangement)."""
        best, smallest = None, None
        for wide, high in self._papers():
            paper = Paper(wide, high, MARGIN, self._title(wide - 2 * MARGIN)[1], COLUMN, RIM)
            try:
                found = arrange(paper, self._ground, [part.piece for part in parts], sections, scale)
            except FieldDataError as error:
                fits = error.values.get("fits") or smallest
                smallest = fits if smallest is None else min(smallest, fits)
                continue
            if self.said.ROLL:
                low = max([found.map.y + found.map.height + RIM, *(b.y + b.height for _, b in found.places.values())])
                paper = replace(paper, height=whole_points(low + MARGIN))
            if best is None or (found.pages, found.scale) < (best[1].pages, best[1].scale):
                best = paper, found
        if best is None:
            if not smallest:
                raise QgsProcessingException(tr("The paper is too small for a map."))
            raise QgsProcessingException(
                tr("At this scale the map is larger than the paper; 1:{scale:,.0f} would fit.").format(scale=smallest)
            )
        return best

    def _scale_that_fits(self):
        if self.said.SCALE:
            return float(self.said.SCALE)
        symbols = {one.number: one for layer in self.said.ATTITUDES for one in symbols_in(layer)}
        lined = bool(self.said.DEM and self.said.CONTOURS)
        # What is not made yet takes its room all the same: two sorts of contours, the lines of sections.
        missing = [(QgsLineSymbol(), "")] * (2 * lined + bool(self.said.SECTIONS))
        parts = self._parts(25000.0, list(symbols.values()), self.contents.numbers, 100.0 * lined, missing)
        return self._arrange(parts, None, ())[1].scale

    # -- the layout ---------------------------------------------------------------------------------------------------

    def print(self):
        """Put the layout together. QgsPrintLayout."""
        contents = self.contents
        parts = self._parts(self.scale, contents.symbols, contents.numbers, contents.interval)
        paper, found = self._arrange(parts, self.scale, [one.room for one in self._profiles])
        self.pages = found.pages
        self._paper = paper
        made = SheetLayout(self.project, self.said.TITLE or tr("Sheet"), (paper.width, paper.height), found.pages, 300)
        for layer in reversed(contents.layers):
            self.project.addMapLayer(layer)
        step = grid_step(self.scale, self.page.crs)
        made.add_map(found.map, QgsRectangle(*self.page.box), self.page.crs, contents.layers, step)
        items, _ = self._title(paper.inner.width)
        for number, item in enumerate(items):
            made.add_text(f"title {number}", 0, paper.margin + item.x, paper.margin + item.y, item)
        self._edge(made, found.map)
        for one in self._profiles:
            page, box = found.places[one.name]
            made.add_profile(one, page, box, text_item(PROFILE, one.title, 0.0, 0.0, box.width))
            for layer in one.layers:
                self.project.addMapLayer(layer)
        for part in parts:
            page, box = found.places[part.name]
            made.add(part, page, box, lambda small: self._locator(made, small))
        return made.layout

    def _edge(self, made, box):
        """Number the grid and letter the graticule about the neat line, each in a ring of its own."""
        numbers = grid_numbers(self.page.box, grid_step(self.scale, self.page.crs))
        rings = (("grid", numbers, GRID_AT), ("graticule", edge_labels(self._graticule, self.page.box), EDGE_AT))
        for name, labels, off in rings:
            taken = []
            for number, (side, share, label) in enumerate(labels):
                wide, high = text_size(EDGE, [label])
                mine = edge_box(box, side, share, off, (wide + 0.6, high + 0.2))
                if mine is None or any(mine.meets(other, 1.0) for other in taken):
                    continue
                taken.append(mine)
                x, y = mine.x + mine.width / 2, mine.y + mine.height / 2
                item = Item("text", 0.0, 0.0, wide + 0.6, high + 0.2, label, EDGE, "centre")
                text = made.add_text(f"{name} {number}", 0, x - item.width / 2, y - item.height / 2, item)
                if side in ("left", "right"):
                    turn_about_middle(text, -90.0, x, y)

    def _locator(self, made, small):
        box = wider(self.page.box, margin.LOCATOR)
        if self._small is None:
            rows = [(line, [what, label]) for line, what, label in graticule_lines(self.page, box, self._to_page)]
            for line, _ in rows:
                line.convertToMultiType()
            self._small = self.contents.store.write("location", fields_of(what=TEXT, label=TEXT), LINE, rows)
            self._small.setName(tr("Location"))
            style_graticule(self._small)
            self.project.addMapLayer(self._small)
        set_locator(small, made.map, QgsRectangle(*box), self.page.crs, [self._small])

    # -- output -------------------------------------------------------------------------------------------------------

    def export(self, layout, kind, path):
        """Export the layout."""
        dpi = self.said.DPI or (150 if kind == "png" and max(self._paper.width, self._paper.height) > 600.0 else 300)
        with modest_cache():  # a large DEM would fill what GDAL may take of the machine
            export(layout, kind, path, dpi)

    def keep_styles(self):
        """Store all styles with their layers."""
        for layer in self.project.mapLayers().values():
            if layer.source().startswith(str(self.contents.store.path)):
                self.contents.store.keep_style(layer)


def turn_about_middle(item, turn, x, y):
    """Turn an item about its middle, which stays at a place of the first page."""
    item.setReferencePoint(QgsLayoutItem.ReferencePoint.Middle)
    item.setItemRotation(turn)
    item.attemptMove(QgsLayoutPoint(x, y), True, False, 0)
