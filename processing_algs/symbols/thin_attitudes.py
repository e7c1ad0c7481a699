"""Which attitudes are printed at which scale."""

import re
from contextlib import contextmanager
from zlib import crc32

import numpy as np
from osgeo import gdal
from qgis.core import QgsProcessingException

from ..base import AgonicAlgorithm
from ..core.cells import text_of
from ..core.number_columns import numbers
from ..core.symbol_numbers import KIND_OF
from ..core.thinning import plot_scales, ranks
from ..core.words import KINDS, read_kinds
from ..drawing.layer_style import style_attitudes, style_options
from ..gis.columns import column_or_empty
from ..gis.i18n import tr
from ..gis.remarks import Notes
from ..parameters import NUMERIC, POINTS, column, layer, matrix, number, sink, text

# Common practice: bedding before faults, other planes and lines.
KIND_ORDER = (
    "bedding",
    "fault",
    "contact",
    "dike",
    "vein",
    "foliation",
    "cleavage",
    "axial_plane",
    "joint",
    "other_plane",
    "fold_axis",
    "lineation",
    "slickenline",
    "other_line",
)
SCALES = (25_000, 50_000, 100_000)
MOST = 2_000_000_000  # what a whole number in a file holds
CACHE = "OGR_SQLITE_CACHE"  # megabytes
KIND, SYMBOL, STATUS = "kind", "symbol", "status"  # fields of our own layers that are heeded


def read_scales(cells):
    """Read denominators such as 25000, 25 000 or 1:25000.

    Parameters
    ----------
    cells : list

    Returns
    -------
    scales : list of int
    bad : str or None
        The first cell that is none.
    """
    scales = []
    for cell in filter(None, (text_of(cell) for cell in cells)):
        digits = re.fullmatch(r"(?:1\s*:)?([\d\s'\u00a0\u202f]+)", cell)
        denominator = int(re.sub(r"\D", "", digits[1]) or 0) if digits else 0
        if not 1 <= denominator <= MOST:
            return scales, cell
        scales.append(denominator)
    return scales, None


def read_kind_order(text):
    """Read a list of kinds, the first first.

    Parameters
    ----------
    text : str or None

    Returns
    -------
    order : dict
        Kind to its place in the list.
    bad : str or None
        The first word that is no kind, or comes twice.
    """
    order = {}
    for word in filter(None, (part.strip() for part in re.split(r"[,;\n]", text or ""))):
        kind, unknown = read_kinds([word], {}, "other_plane")
        if unknown[0] or kind[0] in order:
            return order, word
        order[kind[0]] = len(order)
    return order, None


@contextmanager
def large_cache():
    """Give GeoPackages that are opened meanwhile a cache that holds the spatial index of a million places.

    With the usual one, building that index takes twice as long.
    """
    before = gdal.GetThreadLocalConfigOption(CACHE, None)
    gdal.SetThreadLocalConfigOption(CACHE, "256")
    try:
        yield
    finally:
        gdal.SetThreadLocalConfigOption(CACHE, before)


class ThinAttitudes(AgonicAlgorithm):
    """Which attitudes are printed at which scale."""

    ID, GROUP = "thin_attitudes", "symbols"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Thin attitudes by scale")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Says for each attitude on which maps it is printed, so that no two symbols come nearer to each other than "
            "the least distance on paper. The field plot_scale gets the denominator of the smallest scale at which the "
            "attitude is printed; 0, and an empty cell, would mean always. The symbols heed it: they come and go with "
            "the scale of the map. No attitude is deleted, moved or averaged.\n\n"
            "The smallest scale is filled first: the attitude of the highest priority, then the next that is not too "
            "near, and so on, evenly over the ground. What a map prints, larger ones print too. Attitudes that fit on "
            "none of the maps are given out in the same way at half the largest scale's denominator, a quarter and so "
            "on, for those who look closer on the screen; further readings at the very same place get 1.\n\n"
            "Distances are metres on the ground, whatever coordinate reference system the layer has, and 1 in 2000 "
            "wider, since pages such as UTM shorten lengths a little. The answer does not depend on the order of the "
            "rows."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Attitudes"),
                tr(
                    "Point layer, one row a plane or line. Of a layer with the fields symbol or kind the kinds are "
                    "known; rows whose status is rejected come last."
                ),
                POINTS,
            ),
            matrix(
                "SCALES",
                tr("Scales of the maps"),
                tr("Denominators, such as 25000, 50000, 100000."),
                [tr("1 :")],
                default=list(SCALES),
            ),
            number(
                "MIN_MM",
                tr("Least distance between symbols"),
                tr("From the place of one symbol to that of the next."),
                default=6.0,
                unit=tr("mm on paper"),
                least=0.1,
                most=1000,
            ),
            text(
                "KIND_ORDER",
                tr("Kinds, the most important first"),
                tr("Among attitudes of equal priority. Kinds that are not named come after those that are, all alike."),
                default=";".join(KIND_ORDER),
            ),
            column(
                "PRIORITY_FIELD",
                tr("Priority"),
                tr("Numbers; the higher, the earlier. Rows without one come last. Priority comes before the kind."),
                kind=NUMERIC,
                optional=True,
            ),
            sink("OUTPUT", tr("Thinned attitudes"), tr("The input with plot_scale, and the symbols if it has any.")),
        ]

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        scales, bad = read_scales(said.SCALES)
        if bad is not None:
            return tr("SCALES: {entry} is no denominator of a scale, such as 25000.").format(entry=bad)
        if not scales:
            return tr("SCALES: give the denominators of the maps' scales, such as 25000, 50000.")
        _, bad = read_kind_order(said.KIND_ORDER)
        if bad is not None:
            return tr("KIND_ORDER: {entry} is no kind, or comes twice. Kinds: {kinds}.").format(
                entry=bad, kinds=", ".join(KINDS)
            )
        return None

    def ready(self, said):
        """Ask the layer what its symbols were drawn with."""
        return style_options(said.INPUT.layer)

    def work(self, said, run):
        """Run."""
        source = run.source(said.INPUT)
        locator = run.locator(source)
        if locator.projection is None:
            raise QgsProcessingException(
                tr("The layer has no coordinate reference system that leads to places on Earth.")
            )
        order, _ = read_kind_order(said.KIND_ORDER)
        scales, _ = read_scales(said.SCALES)
        lon, lat, keys, content = self._survey(run, source, locator, order, said.PRIORITY_FIELD)
        rank = ranks(keys, lon, lat, content)
        del keys, content
        found = plot_scales(lon, lat, rank, scales, said.MIN_MM, cancelled=run.feedback.isCanceled)
        run.feedback.setProgress(60.0)

        done = 0
        with large_cache(), run.output(said.OUTPUT, source, ["plot_scale"]) as out:
            for chunk in run.chunks(source, start=60.0):
                notes = Notes(len(chunk))
                scale = found[done : done + len(chunk)]
                notes.add_where(np.isnan(scale), "no_position", rejects=True)
                out.add(chunk, {"plot_scale": notes.kept(np.nan_to_num(scale).astype(int).tolist())}, notes)
                done += len(chunk)
        for scale in sorted(set(scales)):
            run.say(tr("1:{scale} prints {count}.").format(scale=scale, count=int((found >= scale).sum())))
        if said.INPUT.has(SYMBOL):
            options = run.ready
            run.style(out, lambda made: style_attitudes(made, **options))
        else:
            run.say(tr("The layer has no symbols yet. Style attitudes draws them, and heeds plot_scale."))
        return out.counts

    @staticmethod
    def _survey(run, source, locator, order, priority_field):
        """Positions of all rows, what they are ranked by, and checksums of their attributes."""
        heeded = {name: source.fields().lookupField(name) for name in (KIND, SYMBOL, STATUS)}
        heeded = {name: source.fields().at(index).name() for name, index in heeded.items() if index >= 0}
        own = [index for index, field in enumerate(source.fields()) if field.name().lower() != "fid"]
        parts = []
        for chunk in run.chunks(source, stop=30.0):
            places = locator.places(chunk)
            priority, bad = numbers(chunk.column(priority_field), len(chunk))
            if bad.any():
                raise QgsProcessingException(
                    tr("PRIORITY_FIELD: {value} is no number.").format(
                        value=chunk.column(priority_field)[np.flatnonzero(bad)[0]]
                    )
                )
            status = column_or_empty(chunk, heeded.get(STATUS))
            parts.append(
                (
                    places.lon,
                    places.lat,
                    np.array([cell == "rejected" for cell in status], dtype=bool),
                    -priority,
                    _places_in_order(chunk, heeded, order),
                    [crc32("\x1f".join(str(row[index]) for index in own).encode()) for row in chunk.attributes],
                )
            )
        columns = [np.concatenate(column) for column in zip(*parts)] if parts else [np.empty(0)] * 6
        return columns[0], columns[1], columns[2:5], columns[5]


def _places_in_order(chunk, heeded, order):
    """Place of each row's kind in the order; kinds that are not in it come after, unknown ones too."""
    kinds = [KIND_OF.get(symbol) for symbol in column_or_empty(chunk, heeded.get(SYMBOL))]
    if heeded.get(KIND):
        words, unknown = read_kinds(column_or_empty(chunk, heeded[KIND]), {}, "")
        kinds = [kind or (None if bad else word) for kind, word, bad in zip(kinds, words, unknown)]
    return np.array([order.get(kind, len(order)) for kind in kinds], dtype=float)
