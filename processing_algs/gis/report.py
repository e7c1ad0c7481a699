"""Reports: one self-contained HTML page, everything in it escaped."""

import os
from html import escape
from pathlib import Path
from urllib.parse import quote

from qgis.core import QgsProcessingException

from ..core.printable import printable
from .i18n import tr
from .kinds import REPORT_MARK

STYLE = """
body { font: 11pt/1.45 sans-serif; max-width: 46em; margin: 2em auto; padding: 0 1em; color: #111; }
h1 { font-size: 1.5em; margin-bottom: 0.2em; } h2 { font-size: 1.15em; margin-top: 1.6em; }
table { border-collapse: collapse; margin: 0.5em 0; }
th, td { border: 1px solid #999; padding: 0.2em 0.6em; text-align: left; vertical-align: top; }
td.number { text-align: right; } .caution { border: 2px solid #111; padding: 0.4em 1em; margin-top: 2em; }
@media print { body { margin: 0; max-width: none; } h2 { page-break-after: avoid; } tr { page-break-inside: avoid; } }
"""


class Report:
    """A page put together part by part.

    Parameters
    ----------
    title : str
    """

    def __init__(self, title):
        self._title = title
        self._parts = [f"<h1>{escape(title)}</h1>"]

    def heading(self, text):
        """Start a part."""
        self._parts.append(f"<h2>{escape(text)}</h2>")

    def paragraph(self, text):
        """Add a paragraph."""
        self._parts.append(f"<p>{escape(text)}</p>")

    def table(self, head, rows):
        """Add a table.

        Parameters
        ----------
        head : list of str
        rows : iterable of sequence
            Numbers are set to the right.
        """
        lines = ["<tr>" + "".join(f"<th>{escape(cell)}</th>" for cell in head) + "</tr>"]
        for row in rows:
            cells = (
                f'<td class="number">{cell}</td>' if isinstance(cell, (int, float)) else f"<td>{escape(str(cell))}</td>"
                for cell in row
            )
            lines.append("<tr>" + "".join(cells) + "</tr>")
        self._parts.append("<table>" + "\n".join(lines) + "</table>")

    def picture(self, svg, words):
        """Add a picture.

        Parameters
        ----------
        svg : str
            A document of ours; it goes in as it is.
        words : str
            What it shows, for those who cannot see it.
        """
        self._parts.append(f'<figure role="img" aria-label="{escape(words, quote=True)}">{svg}</figure>')

    def link(self, text, path, place):
        """Add a link to a file of the run.

        Parameters
        ----------
        text : str
        path : str
            Of the file.
        place : str
            Where the page is to be: the link is relative to it, so that both may be moved together.
        """
        try:
            target = quote(os.path.relpath(path, Path(place).parent).replace(os.sep, "/"))
        except ValueError:  # another drive
            target = Path(path).as_uri()
        self._parts.append(f'<p><a href="{escape(target)}">{escape(text)}</a></p>')

    def cautions(self):
        """Add the cautions every report carries."""
        self._parts.append(f'<div class="caution"><p>{escape(cautions())}</p></div>')

    def write(self, path):
        """Write the page.

        Raises
        ------
        QgsProcessingException
            If the file cannot be written.
        """
        body = "\n".join(self._parts)
        page = (
            f'<!DOCTYPE html>\n<html><head><meta charset="utf-8">{REPORT_MARK}<title>{escape(self._title)}</title>'
            f"<style>{STYLE}</style></head>\n<body>\n{body}\n</body></html>\n"
        )
        try:
            Path(path).write_text(printable(page), encoding="utf-8")
        except OSError as error:
            message = tr("The report could not be written: {reason}").format(reason=error)
            raise QgsProcessingException(message) from error


def cautions():
    """The usual cautions, as one text."""
    return tr(
        "These results support, and do not replace, licensed professional judgement and local codes. Magnetic readings "
        "fail near iron, vehicles, power lines and some rocks, and during magnetic storms; no model of the Earth's "
        "field knows of them. Check readings against a second sight before anything is drilled, dug or built on them."
    )
