"""Files of Gauss coefficients, as the publishers of geomagnetic models issue them.

Two formats are read: SHC, with a set of coefficients for each of several epochs (the IGRF), and COF, with one set and
its yearly change, good for five years (the World Magnetic Models). The models at hand are whatever files lie in
``data/``, known by what their headers say, so a newer one is added by putting its file beside the others: a COF file
whose first line names ``WMM-2030`` is the model ``wmm2030``, printed WMM2030; ``IGRF15.shc`` is ``igrf15``, printed
IGRF-15.
"""

import re
from dataclasses import dataclass
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt

from .errors import FieldDataError

FloatArray = npt.NDArray[np.float64]

COF_YEARS: Final = 5.0
"""Years for which a COF model is issued, from its epoch."""


@dataclass(frozen=True, eq=False)
class Coefficients:
    """What a coefficient file says.

    Attributes
    ----------
    id : str
        Letters and digits of the name in lower case, such as ``igrf14``.
    name : str
        As its publisher prints it, such as ``IGRF-14`` or ``WMM2025``.
    epochs : ndarray, shape (k,)
        Decimal years of the sets. The model holds from the first to the last, and coefficients change linearly in
        decimal years from each to the next.
    g, h : ndarray, shape (k, degree + 1, degree + 1)
        Schmidt semi-normalised coefficients by epoch, degree and order, for the reference radius 6371.2 km. Units: nT.
    ends_before : bool
        Whether the model holds up to its last epoch, but not on that day: a COF model of 2025 is issued for the years
        2025 to 2029, and its successor holds from 2030.0 on.
    """

    id: str
    name: str
    epochs: FloatArray
    g: FloatArray
    h: FloatArray
    ends_before: bool = False


def find_models(folder: Path) -> dict[str, Path]:
    """List the models whose coefficient files lie in a folder.

    Parameters
    ----------
    folder : Path
        Every ``.shc`` and ``.cof`` file in it counts, in capitals or not, unless it is hidden by a leading dot.

    Returns
    -------
    dict of str to Path
        Model ids in alphabetical order, and their files. An id is made of the letters and digits of the model's
        name: for SHC the comment that consists of a name and a number (``# IGRF 14``), else the file's own name; for
        COF the name in the first line (``WMM-2025``), with the epoch's year behind it if it has no number.

    Raises
    ------
    FieldDataError
        Code ``model_file``: a COF file lacks that first line, or two files hold the same model. Nothing is listed
        then, because either could make numbers come from another model than the one named beside them.
    """
    models: dict[str, Path] = {}
    for path in sorted(folder.iterdir()):
        if path.suffix.lower() in (".shc", ".cof") and not path.name.startswith("."):
            model_id = _id(_name(path))
            if model_id in models:
                raise _bad_file(path, f"{models[model_id].name} is the model {model_id} already")
            models[model_id] = path
    return dict(sorted(models.items()))


def read_coefficients(path: Path) -> Coefficients:
    """Read a coefficient file and check that it is whole.

    Parameters
    ----------
    path : Path
        An SHC file that starts at degree 1 and is linear in time, or a COF file.

    Returns
    -------
    Coefficients
        A COF file gives two epochs, the second at the end of its five years.

    Raises
    ------
    FieldDataError
        Code ``model_file``: not such a file, or coefficients are missing, twice there or not numbers.
    """
    name = _name(path)
    try:
        cof = path.suffix.lower() != ".shc"
        epochs, g, h = _read_cof(path) if cof else _read_shc(path)
    except FieldDataError:
        raise
    except ValueError as error:  # from numpy, on words or ragged rows
        raise _bad_file(path, "not numbers in rows where coefficients should be") from error
    return Coefficients(_id(name), name, epochs, g, h, ends_before=cof)


def _bad_file(path: Path, fault: str) -> FieldDataError:
    return FieldDataError(f"Coefficient file {path.name}: {fault}.", code="model_file", file=path.name, fault=fault)


def _id(name: str) -> str:
    return re.sub(r"[^a-z0-9]", "", name.lower())


def _lines(path: Path) -> list[str]:
    return path.read_text(encoding="latin-1").splitlines()  # an encoding that never fails: damage shows in the checks


def _name(path: Path) -> str:
    """Name of the model in a file, as its publisher prints it: ``IGRF 14`` is IGRF-14, and ``WMM-2025`` is WMM2025."""
    lines = _lines(path)
    if path.suffix.lower() == ".shc":
        remarks = [line[1:].strip() for line in lines if line.startswith("#")]
        named = [found for text in [*remarks, path.stem] if (found := re.fullmatch(r"([A-Za-z]+)[ _-]?(\d+)", text))]
        return "-".join(named[0].groups()) if named else path.stem
    header = lines[0].split() if lines else []
    if len(header) < 2 or not re.fullmatch(r"\d{4}(\.\d*)?", header[0]):
        raise _bad_file(path, "the first line should be epoch, name and date of issue")
    name = header[1].replace("-", "")
    return name if re.search(r"\d", name) else name + header[0][:4]


def _read_shc(path: Path) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Epochs, g and h of an SHC file, as in `Coefficients`."""
    rows = [line.split() for line in _lines(path) if line.strip() and not line.startswith("#")]
    if len(rows) < 3:
        raise _bad_file(path, "no coefficients")
    lowest, degree, count, order = (int(word) for word in rows[0][:4])
    if lowest != 1 or order != 2:
        raise _bad_file(path, f"degrees from {lowest} and splines of order {order}, where 1 and 2 (linear) are read")
    epochs, table = np.array(rows[1], dtype=np.float64), np.array(rows[2:], dtype=np.float64)
    if len(epochs) != count or count < 2 or not np.all(np.diff(epochs) > 0):
        raise _bad_file(path, f"{count} rising epochs announced, others found")
    if _complete_degree(path, table, lowest_order=-1, columns=count) != degree:
        raise _bad_file(path, f"degree {degree} announced, another found")
    signed = table[:, 1]  # the order of g, and minus the order of h
    g = _square(table[signed >= 0, :2], table[signed >= 0, 2:])
    h = _square(np.abs(table[signed < 0, :2]), table[signed < 0, 2:])
    return epochs, g, h


def _read_cof(path: Path) -> tuple[FloatArray, FloatArray, FloatArray]:
    """As `_read_shc`, from a COF file: its one set, and the set that its yearly change leads to after five years."""
    lines = _lines(path)
    epoch = float(lines[0].split()[0])
    end = next((i for i, line in enumerate(lines) if line.startswith("9999")), 0)  # nines close the file
    if end < 2:
        raise _bad_file(path, "no coefficients with a line of nines behind them")
    table = np.array([line.split() for line in lines[1:end]], dtype=np.float64)
    _complete_degree(path, table, lowest_order=0, columns=4)
    sets = table[:, 2:4, None] + table[:, 4:6, None] * np.array([0.0, COF_YEARS])  # (row, g or h, epoch)
    g, h = (_square(table[:, :2], sets[:, i]) for i in (0, 1))
    return np.array([epoch, epoch + COF_YEARS]), g, h


def _complete_degree(path: Path, table: FloatArray, lowest_order: int, columns: int) -> int:
    """Highest degree in a table, once it is known to be whole.

    Parameters
    ----------
    path : Path
        For the message.
    table : ndarray, shape (rows, columns + 2)
        Degree, order and coefficients.
    lowest_order : int
        0, or -1 where orders run from minus the degree.
    columns : int
        Number of coefficients in a row.

    Returns
    -------
    int

    Raises
    ------
    FieldDataError
        Unless each degree from 1 and order is there once, with so many finite coefficients.
    """
    if table.ndim != 2 or table.shape[1] != columns + 2 or not np.all(np.isfinite(table)):
        raise _bad_file(path, f"rows of degree, order and {columns} numbers expected, others found")
    highest = table[:, 0].max()
    rows = highest * (highest + 2) if lowest_order < 0 else highest * (highest + 3) / 2
    degrees = range(1, int(highest) + 1) if len(table) == rows else range(0)  # so no list outgrows the table
    orders = [(n, m) for n in degrees for m in range(lowest_order * n, n + 1)]
    if sorted(map(tuple, table[:, :2].tolist())) != orders:
        raise _bad_file(path, "a degree and order is missing or there twice")
    return int(highest)


def _square(orders: FloatArray, values: FloatArray) -> FloatArray:
    """Rows (degree, order) and their values at each epoch to an array (epoch, degree, order)."""
    n, m = orders.astype(np.int64).T
    square = np.zeros((values.shape[1], n.max() + 1, n.max() + 1))
    square[:, n, m] = values.T
    return square
