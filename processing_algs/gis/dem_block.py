"""The parameters of a DEM, the same in every algorithm that reads one."""

from qgis.core import (
    QgsProcessingException,
    QgsProcessingParameterBand,
    QgsProcessingParameterEnum,
    QgsProcessingParameterRasterLayer,
)

from .dem import FROM_FILE, UNITS, Dem, tell_undeclared
from .i18n import tr

DEM, BAND, HEIGHT_UNIT = "DEM", "BAND", "HEIGHT_UNIT"


def add_dem(algorithm, help_text, *, optional=False):
    """Add a DEM, its band and the unit of its heights.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    help_text : str
        What the DEM is for.
    optional : bool
    """
    algorithm.add(QgsProcessingParameterRasterLayer(DEM, tr("DEM"), optional=optional), help_text)
    algorithm.add(
        QgsProcessingParameterBand(BAND, tr("Band of the DEM"), 1, DEM, optional=True),
        tr("The band that holds heights."),
        advanced=True,
    )


def add_height_unit(algorithm):
    """Add the unit of heights, of the DEM and of height fields alike."""
    algorithm.add(
        QgsProcessingParameterEnum(
            HEIGHT_UNIT, tr("Unit of heights"), [FROM_FILE, *UNITS], usesStaticStrings=True, defaultValue=FROM_FILE
        ),
        tr(
            "file: as the DEM itself says, by its vertical CRS or its band; metres where nothing says it. foot: 0.3048 "
            "m. us_foot: US survey foot, 1200/3937 m. Height fields have the same unit; with file they are metres."
        ),
    )


def open_dem(algorithm, parameters, context, feedback):
    """Open the DEM that the user chose. For ``prepareAlgorithm``, where layers may be touched.

    Parameters
    ----------
    algorithm : AgonicAlgorithm
    parameters, context, feedback
        Of the run.

    Returns
    -------
    Dem or None
        None where none was chosen.

    Raises
    ------
    QgsProcessingException
        If it cannot be used.
    """
    if not algorithm.given(parameters, DEM):
        return None
    layer = algorithm.parameterAsRasterLayer(parameters, DEM, context)
    if layer is None:
        raise QgsProcessingException(tr("The DEM cannot be read."))
    band = algorithm.parameterAsInt(parameters, BAND, context) or 1
    dem = Dem(layer, band, algorithm.word(parameters, HEIGHT_UNIT, context) or FROM_FILE)
    if not dem.unit_known:
        feedback.pushWarning(tr("The DEM does not say the unit of its heights; metres were taken."))
    tell_undeclared(dem, feedback.pushWarning)
    return dem


def field_unit(algorithm, parameters, context):
    """Metres in one unit of the heights that fields or geometries hold: as the user said, else 1."""
    return UNITS.get(algorithm.word(parameters, HEIGHT_UNIT, context), 1.0)
