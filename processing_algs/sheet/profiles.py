"""The sections of a sheet, drawn by draw_section at the sheet's own scale and without exaggeration."""

from dataclasses import dataclass
from pathlib import Path

from osgeo import gdal
from qgis.core import QgsApplication, QgsLayoutItemMap, QgsProcessingException, QgsProject, QgsRectangle
from qgis.PyQt.QtXml import QDomDocument

from ..drawing.lines import NUMBERED
from ..gis.i18n import tr

ALGORITHM, PROJECT = "agonic:draw_section", "sections"
TITLE_MM = 6.0  # room for a section's title


@dataclass(frozen=True)
class Profile:
    """A section that is drawn.

    Attributes
    ----------
    name : str
        Each once on a sheet.
    title : str
    extent : QgsRectangle
        Of the picture, lettering included. Units: metres of section space.
    layers : list of QgsVectorLayer
        Top first.
    """

    name: str
    title: str
    extent: QgsRectangle
    layers: list

    @property
    def room(self):
        """Name, length and height on the ground in metres, and room for its title in mm, for ``arrange``."""
        return self.name, self.extent.width(), self.extent.height(), TITLE_MM


def draw_profiles(said, contents, plain_units, scale, folder, run):
    """Draw the sections of a sheet.

    Parameters
    ----------
    said : Said
    contents : Contents
        With the sections, units, lines and attitudes of the sheet.
    plain_units : QgsVectorLayer or None
        Units in the colours of the explanation.
    scale : float
        Denominator.
    folder : str or pathlib.Path
        For files that are not kept.
    run : Run

    Returns
    -------
    list of Profile
        Empty where no section has any ground under it.
    """
    package = Path(folder, "profiles.gpkg")
    algorithm = QgsApplication.processingRegistry().createAlgorithmById(ALGORITHM)
    inputs = {
        "SECTION": contents.get("sections"),
        "NAME_FIELD": said.SECTION_FIELD,
        "DEM": said.DEM,
        "HEIGHT_UNIT": said.HEIGHT_UNIT,
        "SCALE": scale,
        "PACKAGE": str(package),
        "UNITS": plain_units,
        "UNIT_FIELD": said.UNIT_FIELD if plain_units is not None else None,
        "ATTITUDES": _readings(contents.get("attitudes_1")),
        **_lines(contents),
    }
    inputs = {key: value for key, value in inputs.items() if value is not None}
    try:
        _, fine = algorithm.run(inputs, run.context, run.feedback, {}, False)
    except QgsProcessingException as error:
        run.warn(tr("The sections are not drawn: {reason}").format(reason=error))
        return []
    if not fine or run.is_cancelled:
        return []
    return _taken_over(package, contents.store)


def _readings(layer):
    """Attitudes that a section can carry: the numbers are needed too, not the symbols alone."""
    if layer is None or any(layer.fields().lookupField(name) < 0 for name in ("strike", "dip")):
        return None
    return layer


def _lines(contents):
    """Layers of lines by what they hold: faults alone, or contacts with whatever else. Dict of parameters."""
    found = {}
    for name, layer in contents.named("lines_"):
        if layer.fields().lookupField("symbol") < 0:
            continue
        kinds = {NUMBERED[row["symbol"]][0] for row in layer.getFeatures() if row["symbol"] in NUMBERED}
        what = "FAULTS" if kinds and all("fault" in kind for kind in kinds) else "CONTACTS"
        found.setdefault(what, contents.get(name))
    return found


def _taken_over(package, store):
    """Copy the drawn sections into the sheet's own store. List of Profile."""
    made, project = [], QgsProject()
    try:
        if not project.read(f"geopackage:{package}?projectName={PROJECT}"):
            raise QgsProcessingException(tr("The sections are not drawn: {reason}").format(reason=project.error()))
        (layout,) = project.layoutManager().printLayouts()
        shown = [item for item in layout.items() if isinstance(item, QgsLayoutItemMap)]
        for number, item in enumerate(sorted(shown, key=lambda one: one.page())):
            layers = [_copied(layer, package, store, number) for layer in item.layers()]
            made.append(Profile(f"profile {number}", item.id(), item.extent(), layers))
    finally:
        project.clear()
    return made


def _copied(layer, package, store, number):
    """Copy a layer of a section, with its style."""
    table = layer.source().split("layername=")[1].split("|")[0]
    name = f"profile_{number + 1}_{table}"
    done = gdal.VectorTranslate(str(store.path), str(package), accessMode="update", layers=[table], layerName=name)
    if done is None:
        raise QgsProcessingException(
            tr("Rows could not be written to {place}: {reason}").format(
                place=f"{store.path}|{name}", reason=gdal.GetLastErrorMsg()
            )
        )
    del done  # closes it
    copied, style = store.open(name, f"{table} {number + 1}"), QDomDocument()
    store.names.append(name)
    layer.exportNamedStyle(style)
    copied.importNamedStyle(style)
    return copied
