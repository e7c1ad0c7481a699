"""What the algorithms about map symbols have in common."""

from ..gis.i18n import tr
from ..parameters import file


def style_file():
    """Declare a file for the style alone, QML."""
    return file(
        "QML",
        tr("Style file"),
        tr("The style alone, for other layers with the same fields. The output has its style in any case."),
        tr("QGIS style files (*.qml)"),
        optional=True,
        create=False,
    )
