"""Runs every tool on seeded random tables, and says which promises of a run were broken.

    fuzz.py --seed 1 --count 400            tables, spread over processes that may die
    fuzz.py --seed 1 --first 37 --count 1   one table again

What is promised: READ = DONE + REJECTED (+ OUTSIDE); a run that fails says so in a sentence; no result is infinite, no
angle outside its circle; inputs are left alone, and so is an output of before where the run fails; no run hangs.
"""

import argparse
import faulthandler
import hashlib
import math
import os
import random
import shutil
import subprocess
import sys
import tempfile
import time
import traceback
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
SLOW = 20.0  # seconds from which on a run hangs
BATCH = 20  # tables a process
ANGLES = {
    **dict.fromkeys(("strike", "dip_dir", "trend", "azim_read", "azim_true", "sun_azim", "leg_azim"), (0.0, 360.0)),
    **dict.fromkeys(("dip", "plunge", "dip_lo", "dip_hi"), (0.0, 90.0)),
    **dict.fromkeys(("decl", "converg", "app_dip", "incl"), (-180.0, 180.0)),
    **dict.fromkeys(("sig_az", "sig_pole", "sig_decl"), (0.0, 180.0)),
}
CRSS = ["EPSG:32633", "EPSG:32633", "EPSG:4326", "EPSG:3857", "EPSG:27700", "EPSG:3031", "EPSG:2048", "EPSG:3035", ""]
TEXTS = [
    *(
        "N45E/30SE",
        "045/30",
        "30/045",
        "045/30SE",
        "E-W 20 S",
        "horizontal",
        "vertical N20W",
        "N91E",
        "S8E",
        "999",
        "-9",
    ),
    *("12,5", "1,200", "", " ", "NULL", "n/a", "#REF!", "Ñandú", "[% env('HOME') %]", "<b>x</b>", "'; DROP TABLE x;--"),
    *("2026-06-01", "1987", "1/6/26", "0000-00-00", "9999-99-99", "upright", "overturned", "S0", "bedding", "magnetic"),
    *("14:05", "14:05Z", "A", "A'", "x" * 300, "\u202e", "a\nb", "\t", "1e400", "NaN", "inf", "-1e-320", "0x10", "٣٠"),
]
NUMBERS = [
    0.0,
    -0.0,
    1.0,
    30.0,
    45.0,
    89.999,
    90.0,
    180.0,
    359.9,
    360.0,
    361.0,
    -1.0,
    -9.0,
    -99.0,
    -999.0,
    -9999.0,
    999.0,
]
NUMBERS += [1e9, -1e9, 1e300, 1e-300, 0.5, 12.25, 3.4e38, -32768.0]
FITTING = {  # columns that hold what a field parameter asks for
    "azimuth": ("azimuth", "strike"),
    "bearing": ("azimuth",),
    "date": ("day",),
    "fore": ("azimuth",),
    "landmark": ("name",),
    "point": ("name",),
    "side": ("TEXT2",),
    "time": ("text",),
    "trend": ("trend", "azimuth"),
    "plunge": ("plunge", "dip"),
    "target": ("name",),
    "angle": ("slope", "dip"),
    "distance": ("length", "height"),
}
FORMATS = [".gpkg", ".shp", ".geojson", ".csv", ".fgb"]


def main():
    """Run, spread over processes; 1 where a promise was broken."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--first", type=int, default=0, help="number of the first table")
    parser.add_argument("--count", type=int, default=400)
    parser.add_argument("--verbose", action="store_true", help="say how each run ended")
    parser.add_argument("--inside", action="store_true", help=argparse.SUPPRESS)
    given = parser.parse_args()
    if given.inside:
        return tables(given.seed, given.first, given.count)
    broken, runs, ended = [], 0, 0
    for first in range(given.first, given.first + given.count, BATCH):
        count = min(BATCH, given.first + given.count - first)
        lines, died = _process(given.seed, first, count)
        runs += sum(line.startswith("ran ") for line in lines)
        ended += sum(line.endswith(" to its end") for line in lines)
        if given.verbose:
            print("\n".join(lines), flush=True)
        broken += [line for line in lines if line.startswith("BROKEN")]
        if died:
            broken.append(
                f"BROKEN seed {given.seed}: the process of tables {first} to {first + count - 1} died: {died}"
            )
    print("\n".join(broken))
    ends = f"{runs} runs, {ended} of them to their end"
    print(f"{given.count} tables of seed {given.seed}, {ends}, {len(broken)} broken promises")
    return 1 if broken else 0


def _process(seed, first, count):
    """Lines of a process of its own, and how it died, if it did."""
    command = [sys.executable, __file__, "--inside", "--seed", str(seed), "--first", str(first), "--count", str(count)]
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONHASHSEED": "0"}
    try:
        run = subprocess.run(
            command, capture_output=True, text=True, timeout=SLOW * count * 3 + 60, check=False, env=environment
        )
    except subprocess.TimeoutExpired as late:
        return (late.stdout or b"").decode(errors="replace").splitlines(), "it hung"
    died = "" if "end of tables" in run.stdout else f"exit {run.returncode}: {run.stderr.strip()[-1500:]}"
    return run.stdout.splitlines(), died


def tables(seed, first, count):
    """Run the tools on tables of a seed, in this process."""
    faulthandler.enable()
    sys.path[:0] = [str(ROOT / "build" / "plugins"), "/usr/share/qgis/python/plugins"]
    from qgis.core import QgsApplication

    application = QgsApplication([], True)
    application.initQgis()
    from processing.core.Processing import Processing

    Processing.initialize()
    from agonic import classFactory

    plugin = classFactory(None)
    plugin.initProcessing()
    names = [algorithm.name() for algorithm in plugin.provider.algorithms()]
    for number in range(first, first + count):
        folder = Path(tempfile.mkdtemp(prefix="agonic-fuzz-"))
        try:
            one_table(random.Random(f"{seed} {number}"), f"seed {seed} table {number}", names, folder)
        finally:
            shutil.rmtree(folder, ignore_errors=True)
    print("end of tables", flush=True)
    plugin.unload()
    os._exit(0)  # layers that a failed run left behind are no matter here


def one_table(dice, label, names, folder):
    """Make a table and what goes with it, and run three tools on it."""
    inputs = Inputs(dice, folder)
    for name in dice.sample(names, 3):
        from qgis.core import QgsApplication

        algorithm = QgsApplication.processingRegistry().createAlgorithmById(f"agonic:{name}")
        asked, outputs = Asker(dice, folder, inputs).parameters(algorithm)
        before = {path: _digest(path) for path in inputs.files}
        old = {path: _digest(path) for path in outputs if path.exists()}
        ends = []
        for problem in attempt(name, asked, old, ends):
            print(f"BROKEN {label} {name}: {problem}; asked {_short(asked)}", flush=True)
        changed = [path.name for path, digest in before.items() if _digest(path) != digest]
        if changed:
            print(f"BROKEN {label} {name}: inputs changed: {changed}; asked {_short(asked)}", flush=True)
        print(f"ran {name} {'refused: ' + ends[0][:150] if ends else 'to its end'}", flush=True)


def attempt(name, asked, old, ends):
    """Run a tool; yield the promises it breaks."""
    import processing
    from qgis.core import QgsProcessingException, QgsProcessingFeedback

    begun = time.process_time()  # what else the machine does is no matter
    try:
        result = processing.run(f"agonic:{name}", asked, feedback=QgsProcessingFeedback(False))
    except QgsProcessingException as error:
        sentence = str(error).strip()
        ends.append(sentence.replace("\n", " "))
        if not sentence or "Traceback" in sentence or "fault of Agonic" in sentence:
            yield f"refused without a sentence: {sentence[:600]!r}"
        for path, digest in old.items():
            if not path.exists() or _digest(path) != digest:
                yield f"failed, and {path.name} of before is not as it was"
        return
    except Exception:
        yield "raised: " + " | ".join(traceback.format_exc().strip().splitlines()[-4:])
        return
    finally:
        spent = time.process_time() - begun
        if spent > SLOW:
            yield f"took {spent:.0f} s"
    own = {name for value in asked.values() if hasattr(value, "fields") for name in value.fields().names()}
    yield from wrong(result, own)


def wrong(result, own):
    """Yield what is wrong with a result; the input's own columns may hold anything."""
    from qgis.core import QgsVariantUtils, QgsVectorLayer

    counts = [result.get(key) for key in ("READ", "DONE", "REJECTED")]
    if None not in counts and counts[0] != counts[1] + counts[2] + result.get("OUTSIDE", 0):
        yield f"READ {counts[0]}, DONE {counts[1]}, REJECTED {counts[2]}, OUTSIDE {result.get('OUTSIDE')}"
    if None not in counts and not 0 <= result.get("WARNED", 0) <= counts[1]:
        yield f"WARNED {result.get('WARNED')} of DONE {counts[1]}"
    for key, value in result.items():
        if isinstance(value, float) and not math.isfinite(value):
            yield f"{key} is {value}"
        layer = value if isinstance(value, QgsVectorLayer) else None
        if layer is None and isinstance(value, str) and Path(value.split("|")[0]).suffix in FORMATS:
            layer = QgsVectorLayer(value, "result", "ogr")
        if layer is None or not layer.isValid():
            continue
        there = layer.fields().names()
        names = [name for name in there if name in ANGLES and (name not in own or f"in_{name}" in there)]
        for feature in layer.getFeatures():
            for name in names:
                cell, (low, high) = feature[name], ANGLES[name]
                if isinstance(cell, float) and not QgsVariantUtils.isNull(cell) and not low <= cell <= high:
                    yield f"{key}: {name} is {cell}"


class Inputs:
    """Layers of one table: points with readings, lines, areas, a bare table, a DEM."""

    def __init__(self, dice, folder):
        self.dice, self.folder, self.files = dice, folder, []
        self.crs = dice.choice(CRSS)
        self.centre = {"EPSG:4326": (15.0, 50.0), "EPSG:3857": (1.67e6, 6.45e6), "EPSG:27700": (4e5, 3e5)}.get(
            self.crs, (5e5, 5.5e6)
        )
        self.scale = 0.01 if self.crs == "EPSG:4326" else 1000.0
        self.points, self.lines, self.areas = (self.layer(kind) for kind in ("Point", "LineString", "Polygon"))
        self.table, self.raster = self.layer("None"), self.dem()

    def columns(self):
        """Names, types and makers of cells."""
        dice = self.dice

        def numbers():
            plain = round(dice.uniform(0, 360), dice.choice((0, 1, 6)))
            return dice.choice(NUMBERS) if dice.random() < 0.2 else plain

        def dips():
            return dice.choice(NUMBERS) if dice.random() < 0.1 else float(dice.randint(0, 90))

        def texts():
            return dice.choice(TEXTS)

        names = [
            "strike",
            "dip",
            "kind",
            "polarity",
            "day",
            "name",
            "height",
            "status",
            "ring_set",
            "azimuth",
            "fid",
            "group",
        ]
        names += ["plunge", "trend", "text", "geom", "TEXT2", "größe", "sigma", "from", "to", "length", "slope", "unit"]
        makers = {
            "strike": numbers,
            "azimuth": numbers,
            "trend": numbers,
            "dip": dips,
            "plunge": dips,
            "height": numbers,
        }
        chosen = dice.sample(names, dice.randint(4, 12))
        if dice.random() < 0.8:
            chosen = list(dict.fromkeys([*chosen, "strike", "dip", "azimuth", "text", "day", "name", "from", "to"]))
        found = []
        for name in chosen:
            kind = (
                dice.choice(("double", "string", "string", "integer"))
                if name not in ("day", "kind", "text")
                else "string"
            )
            maker = makers.get(name, numbers if kind != "string" else texts)
            if kind == "string" and maker is not texts:
                maker = lambda make=maker: str(make()) if dice.random() < 0.7 else dice.choice(TEXTS)  # noqa: E731
            if kind == "integer":
                maker = lambda: dice.choice((0, 1, -9, 45, 400, 2**31 - 1))  # noqa: E731
            found.append((name, kind, maker))
        return found

    def layer(self, geometry):
        """A layer in memory, or one in a file."""
        from qgis.core import QgsFeature, QgsProject, QgsVectorFileWriter, QgsVectorLayer

        columns = self.columns()
        fields = "&".join(f"field={name}:{kind}" for name, kind, _ in columns)
        crs = f"crs={self.crs}&" if self.crs and geometry != "None" else ""
        layer = QgsVectorLayer(f"{geometry}?{crs}{fields}", f"{geometry} [% 1 %]", "memory")
        features = []
        for _ in range(self.dice.choice((0, 1, 2, 3, 8, 40, 60))):
            feature = QgsFeature(layer.fields())
            feature.setAttributes([None if self.dice.random() < 0.1 else make() for _, _, make in columns])
            if geometry != "None":
                feature.setGeometry(self.geometry(geometry))
            features.append(feature)
        layer.dataProvider().addFeatures(features)
        if self.dice.random() < 0.4:
            path = self.folder / f"{geometry}{self.dice.choice(('.gpkg', '.geojson'))}"
            options = QgsVectorFileWriter.SaveVectorOptions()
            options.driverName = "GPKG" if path.suffix == ".gpkg" else "GeoJSON"
            written = QgsVectorFileWriter.writeAsVectorFormatV3(
                layer, str(path), QgsProject.instance().transformContext(), options
            )
            loaded = QgsVectorLayer(str(path), geometry, "ogr")
            if written[0] == QgsVectorFileWriter.WriterError.NoError and loaded.isValid():
                self.files.append(path)
                return loaded
        return layer

    def geometry(self, kind):
        """A geometry, now and then one that is none."""
        from qgis.core import QgsGeometry

        dice, (x, y) = self.dice, self.centre

        def place():
            return f"{x + dice.uniform(-1, 1) * self.scale} {y + dice.uniform(-1, 1) * self.scale}"

        odd = dice.random()
        if odd < 0.05:
            return QgsGeometry()
        if odd < 0.08:
            return QgsGeometry.fromWkt(f"{kind.upper()} EMPTY")
        if kind == "Point":
            far = f"POINT ({dice.choice(('0 0', '1e30 1e30', '-180 90', 'nan nan'))})"
            return QgsGeometry.fromWkt(far if odd < 0.12 else f"POINT ({place()})")
        ring = [place() for _ in range(dice.choice((2, 3, 5, 12)))]
        if odd < 0.14:
            ring = [ring[0]] * 2  # no length
        if kind == "LineString":
            return QgsGeometry.fromWkt(f"LINESTRING ({', '.join(ring)})")
        return QgsGeometry.fromWkt(f"POLYGON (({', '.join([*ring, place(), ring[0]])}))")

    def dem(self):
        """A small DEM with gaps."""
        import numpy as np
        from osgeo import gdal, osr

        path = self.folder / "dem.tif"
        size = self.dice.choice((3, 40, 90))
        generator = np.random.default_rng(self.dice.randrange(10**6))
        heights = 500.0 + np.cumsum(np.cumsum(generator.normal(0, 0.5, (size, size)), axis=0), axis=1)
        heights[generator.random((size, size)) < self.dice.choice((0.0, 0.0, 0.05, 1.0))] = -9999.0
        raster = gdal.GetDriverByName("GTiff").Create(str(path), size, size, 1, gdal.GDT_Float32)
        (x, y), reach = self.centre, self.scale * self.dice.choice((0.5, 1.5))
        raster.SetGeoTransform((x - reach, 2 * reach / size, 0, y + reach, 0, -2 * reach / size))
        if self.crs:
            reference = osr.SpatialReference()
            reference.SetFromUserInput(self.crs)
            raster.SetProjection(reference.ExportToWkt())
        band = raster.GetRasterBand(1)
        if self.dice.random() < 0.8:
            band.SetNoDataValue(-9999.0)
        band.SetUnitType(self.dice.choice(("m", "", "ft", "US survey foot")))
        band.WriteArray(heights)
        del band, raster
        self.files.append(path)
        return str(path)


class Asker:
    """Makes parameters for a tool from what its definitions say."""

    def __init__(self, dice, folder, inputs):
        self.dice, self.folder, self.inputs, self.outputs = dice, folder, inputs, []
        # Many runs leave most as it is, so that they get far; some say something about everything.
        self.plain = dice.choice((0.95, 0.9, 0.8, 0.4))

    def parameters(self, algorithm):
        """Parameters, and the files that may be written."""
        from qgis.core import Qgis

        found = {}
        for definition in algorithm.parameterDefinitions():
            optional = bool(definition.flags() & Qgis.ProcessingParameterFlag.Optional)
            usual = definition.defaultValue() is not None
            needed = {"DEM": 0.3, "DATE": 0.3, "DATE_FIELD": 0.5, "INPUT": 0.0}.get(definition.name(), self.plain)
            needed = min(needed, 0.3) if definition.type() == "field" else needed
            if (optional or usual) and self.dice.random() < needed:
                if not definition.isDestination():
                    continue
                if optional and self.dice.random() < 0.5:
                    continue
            value = self.value(definition, found)
            if value is not None:
                found[definition.name()] = value
        return found, self.outputs

    def value(self, definition, found):
        """A value for a parameter."""
        maker = getattr(self, f"_{definition.type()}", None)
        return maker(definition, found) if maker else None

    def _source(self, definition, found):
        from qgis.core import Qgis

        kinds = definition.dataTypes()
        fitting = {
            Qgis.ProcessingSourceType.VectorPoint: self.inputs.points,
            Qgis.ProcessingSourceType.VectorLine: self.inputs.lines,
            Qgis.ProcessingSourceType.VectorPolygon: self.inputs.areas,
        }
        choices = [fitting[kind] for kind in kinds if kind in fitting]
        if not choices:
            choices = [self.inputs.points, self.inputs.table]
        if self.dice.random() < 0.03:
            choices = [self.inputs.areas, self.inputs.table]
        return self.dice.choice(choices)

    def _multilayer(self, definition, found):
        return [self.inputs.points, self.inputs.lines][: self.dice.randint(1, 2)]

    def _field(self, definition, found):
        layer = found.get(definition.parentLayerParameterName())
        names = layer.fields().names() if layer is not None else []
        role = definition.name().removesuffix("_FIELD").lower()
        wanted = [name for name in FITTING.get(role, (role,)) if name in names]
        if wanted and self.dice.random() < 0.9:
            return wanted[0]
        return self.dice.choice(names) if names else "nothing"

    def _number(self, definition, found):
        low, high = definition.minimum(), definition.maximum()
        if self.dice.random() < 0.05:
            return self.dice.choice(NUMBERS)
        value = self.dice.uniform(max(low, -1000.0), min(high, 2000.0)) if low <= high else low
        return int(value) if definition.dataType() == 0 else value

    _distance = _number

    def _enum(self, definition, found):
        options = definition.options()
        return [self.dice.choice(options)] if definition.allowMultiple() else self.dice.choice(options)

    def _string(self, definition, found):
        if definition.name() == "ZONE":
            return self.dice.choice(("UTC", "+02:00", "Europe/Madrid"))
        if definition.name().endswith("_WORDS"):
            return self.dice.choice(("", "", "S0=bedding", "ok=upright", "m=magnetic"))
        if definition.name().endswith(("_NULLS", "NULL_VALUES")) and self.dice.random() < 0.9:
            return self.dice.choice(("-9,-99", "-9999"))
        return self.dice.choice([*TEXTS, "S0=bedding;S1=cleavage", "A=0;B=3", "-9,-99"])

    def _boolean(self, definition, found):
        return self.dice.random() < 0.5

    def _raster(self, definition, found):
        found.setdefault("BAND", 1)
        return self.inputs.raster

    def _band(self, definition, found):
        return 1 if self.dice.random() < 0.95 else 2

    def _crs(self, definition, found):
        return self.dice.choice([crs for crs in CRSS if crs])

    def _datetime(self, definition, found):
        return self.dice.choice(("2026-06-01", "2026-06-01", "1987-03-04", "1850-01-01"))

    def _extent(self, definition, found):
        (x, y), reach = self.inputs.centre, self.inputs.scale
        return f"{x - reach},{x + reach},{y - reach},{y + reach} [{self.inputs.crs or 'EPSG:4326'}]"

    def _point(self, definition, found):
        x, y = self.inputs.centre
        return f"{x},{y} [{self.inputs.crs or 'EPSG:4326'}]"

    def _file(self, definition, found):
        path = self.folder / "given.csv"
        path.write_text("name;x;y;strike;dip\n" + "\n".join(";".join(self.dice.sample(TEXTS, 5)) for _ in range(5)))
        return str(path)

    def _sink(self, definition, found):
        if self.dice.random() < 0.4:
            return "TEMPORARY_OUTPUT"
        return self._old(self.folder / f"out_{definition.name()}{self.dice.choice(FORMATS)}")

    _vectorDestination = _sink

    def _fileDestination(self, definition, found):
        suffix = "." + (definition.defaultFileExtension() or "html")
        return self._old(self.folder / f"out_{definition.name()}{suffix}")

    def _folderDestination(self, definition, found):
        return str(self.folder / f"out_{definition.name()}")

    def _old(self, path):
        if self.dice.random() < 0.2 and path.suffix in (".geojson", ".csv", ".html", ".png"):
            path.write_text(
                '{"type":"FeatureCollection","features":[]}' if path.suffix == ".geojson" else "here\nbefore\n"
            )
        self.outputs.append(path)
        return str(path)


def _digest(path):
    return hashlib.sha256(path.read_bytes()).hexdigest()


def _short(asked):
    return {
        key: value if isinstance(value, (str, int, float, list)) else str(value)[:60] for key, value in asked.items()
    }


if __name__ == "__main__":
    sys.exit(main())
