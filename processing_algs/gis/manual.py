"""Where the manual lies: pages inside the released plugin, built or as sources in a checkout."""

from pathlib import Path

from qgis.PyQt.QtCore import QUrl

ROOT = Path(__file__).resolve().parent.parent.parent


def manual_url(page="index"):
    """Address of a page of the manual on this machine.

    Parameters
    ----------
    page : str
        Its path in the manual without an ending, such as ``algorithms/north_angles``.

    Returns
    -------
    str
        Empty where there is no such page.
    """
    for place in (ROOT / "docs" / f"{page}.html", ROOT / "build/docs" / f"{page}.html", ROOT / "docs" / f"{page}.md"):
        if place.is_file():
            return QUrl.fromLocalFile(str(place)).toString()
    return ""
