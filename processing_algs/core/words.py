"""The words of a field table: kinds of structure, polarity, and which north an azimuth refers to."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Mapping
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray

from .cells import for_each_distinct, is_empty, text_of
from .errors import FieldDataError

PLANES = (
    "bedding",
    "cleavage",
    "foliation",
    "joint",
    "fault",
    "vein",
    "dike",
    "contact",
    "axial_plane",
    "other_plane",
)
LINES = ("lineation", "slickenline", "fold_axis", "other_line")
KINDS = PLANES + LINES
POLARITIES = ("upright", "overturned", "unknown")
NORTHS = ("magnetic", "true", "grid")
NEEDLE_ENDS = ("north", "south")

KIND_SYNONYMS = {"dyke": "dike", "fold axes": "fold_axis"}
POLARITY_SYNONYMS = {
    "normal": "upright",
    "right way up": "upright",
    "right side up": "upright",
    "inverted": "overturned",
    "upside down": "overturned",
    "not known": "unknown",
    "?": "unknown",
}
NORTH_SYNONYMS = {
    "m": "magnetic",
    "mag": "magnetic",
    "magnetic north": "magnetic",
    "t": "true",
    "true north": "true",
    "g": "grid",
    "grid north": "grid",
}
NEEDLE_SYNONYMS = {"n": "north", "north end": "north", "s": "south", "south end": "south"}

# Usual names of the columns of field tables, by what the column holds, in English, Spanish, French, German and
# Portuguese; compared as `fold` brings them. From common practice. A name stands under one role of those that one
# table may have together, so that one column never fills two boxes.
COLUMN_NAMES: Final[dict[str, tuple[str, ...]]] = {
    "azimuth": (
        "azimuth",
        "azim",
        "azim_read",
        "bearing",
        "brg",
        "strike",
        "strk",
        "trend",
        "dip_dir",
        "dip_direction",
        "azimut",
        "acimut",
        "azimute",
        "rumbo",
        "reading",
        "lectura",
        "lecture",
        "ablesung",
        "leitura",
    ),
    "back": ("back", "back_bearing", "backsight", "contrarumbo", "rumbo_inverso", "visee_arriere"),
    "bearing": ("bearing", "brg", "azimuth", "azim", "rumbo", "azimut", "visee", "peilung", "azimute", "visada"),
    "compass": ("compass", "compass_no", "brujula", "boussole", "kompass", "bussola"),
    "concealed": ("isconcealed", "concealed", "oculto", "cache", "verdeckt"),
    "date": ("date", "read_date", "fecha", "datum", "data", "day", "survey_date"),
    "declination": ("declination", "decl", "declinacion", "declinaison", "deklination", "declinacao"),
    "dip": (
        "dip",
        "dip_angle",
        "inclination",
        "buzamiento",
        "pendage",
        "einfallen",
        "fallwinkel",
        "mergulho",
        "manteo",
        "fallen",
        "einfallswinkel",
    ),
    "dip_dir": (
        "dip_dir",
        "dip_direction",
        "dipdir",
        "dd",
        "dir_buz",
        "direccion_buzamiento",
        "direccion_de_buzamiento",
        "sentido_de_buzamiento",
        "sens_du_pendage",
        "einfallsrichtung",
        "fallrichtung",
        "direcao_de_mergulho",
        "sentido_de_mergulho",
    ),
    "distance": ("distance", "dist", "length", "distancia", "longueur", "laenge", "taped", "comprimento"),
    "easting": ("easting", "x", "utm_e", "utm_east", "x_coord", "coord_x", "este_utm", "rechtswert", "ostwert"),
    "existence": ("existenceconfidence", "existence"),
    "fore": ("fore", "fore_bearing", "foresight", "bearing", "azimuth", "rumbo", "azimut", "visee_avant"),
    "from_station": ("from", "from_station", "from_stn", "desde", "de", "von", "start", "station_from"),
    "grid_ref": ("grid_ref", "grid_reference", "utm", "mgrs", "utm_ref", "utmref"),
    "group": ("group", "group_id", "plane_id", "grupo", "groupe", "gruppe", "set"),
    "height": ("height", "elev", "elevation", "altitude", "z", "altura", "cota", "altitud", "hoehe", "altitude_m"),
    "identity": ("identityconfidence", "identity"),
    "kind": ("kind", "type", "structure", "feature", "tipo", "estructura", "art", "gefuege", "estrutura"),
    "latitude": ("latitude", "lat", "latitud", "breite", "breitengrad", "lat_dd", "lat_dms"),
    "line_type": ("type", "line_type", "tipo", "kind"),
    "longitude": ("longitude", "lon", "long", "lng", "longitud", "laengengrad", "lon_dd", "lon_dms"),
    "name": ("name", "id", "label", "nombre", "nom", "nome", "bezeichnung"),
    "needle": ("needle", "needle_end", "end_of_needle", "extremo_aguja", "aguja", "aiguille", "nadel", "agulha"),
    "north": ("north", "north_ref", "norte", "nord", "azimuth_north"),
    "northing": ("northing", "y", "utm_n", "utm_north", "y_coord", "coord_y", "norte_utm", "hochwert", "nordwert"),
    "place": ("place", "coordinates", "coordenadas", "coordonnees", "koordinaten", "lat_lon", "position"),
    "plunge": ("plunge", "inmersion", "plongement", "abtauchen", "caimento"),
    "polarity": ("polarity", "way_up", "facing", "polaridad", "polarite", "polaritaet", "polaridade"),
    "quality": ("quality", "sigma", "sig_pole", "calidad", "qualite", "qualitaet", "qualidade"),
    "rake": ("rake", "pitch", "cabeceo", "rechenwinkel"),
    "ring": ("ring_set", "ring", "ring_setting", "decl_set", "declination_set"),
    "side": ("side", "dip_side", "dip_letter", "quadrant", "lado", "cote", "seite", "cuadrante"),
    "sigma": ("sig_pole", "sigma", "uncertainty", "incertidumbre", "incertitude", "unsicherheit", "incerteza"),
    "slope": ("slope", "vert_angle", "vertical_angle", "vertical", "incl", "pendiente", "pente", "neigung", "declive"),
    "station": (
        "station",
        "stn",
        "estacion",
        "estacao",
        "point",
        "punto",
        "ponto",
        "punkt",
        "stop",
        "outcrop",
        "afloramiento",
        "affleurement",
        "aufschluss",
        "afloramento",
        "waypoint",
    ),
    "strike": (
        "strike",
        "strike_right",
        "rumbo",
        "direccion",
        "direction",
        "streichen",
        "streichrichtung",
        "direcao",
        "strk",
    ),
    "target": ("target", "landmark", "objetivo", "blanco", "cible", "ziel", "alvo"),
    "text": ("attitude", "text", "orientation", "actitud", "attitude_text", "messung", "atitude"),
    "to_station": ("to", "to_station", "to_stn", "hasta", "vers", "nach", "end", "station_to"),
    "time": ("time", "hour", "clock", "hora", "heure", "uhrzeit", "zeit", "tempo"),
    "trend": ("trend", "tendencia", "direction_plunge", "abtauchrichtung", "sentido"),
    "unit": ("unit", "mapunit", "map_unit", "unidad", "unite", "einheit", "unidade"),
}


def find_column(role: str, columns: Iterable[str]) -> str | None:
    """Find the one column of a table that has a usual name.

    Parameters
    ----------
    role : str
        A key of `COLUMN_NAMES`.
    columns : iterable of str
        Names of the table's columns.

    Returns
    -------
    str or None
        The column's own name; None where no column has a usual name, or several have: between two nothing is guessed.
    """
    return one_named(COLUMN_NAMES[role], columns)


def one_named(names: Iterable[str], columns: Iterable[str]) -> str | None:
    """Find the one column that has one of several names, compared as `fold` brings them.

    Parameters
    ----------
    names, columns : iterable of str

    Returns
    -------
    str or None
        None where none or several columns fit.
    """
    found = named_so(names, columns)
    return found[0] if len(found) == 1 else None


def named_so(names: Iterable[str], columns: Iterable[str]) -> list[str]:
    """Find all columns that have one of several names, compared as `fold` brings them and without accents.

    Parameters
    ----------
    names, columns : iterable of str

    Returns
    -------
    list of str
        The columns' own names, in their order.
    """
    wanted = {_bare(name) for name in names}
    return [column for column in columns if _bare(column) in wanted]


def _bare(name: str) -> str:
    """Bring a name to the form without accents: rumbo magnético, Längengrad (written Laengengrad too)."""
    spelled = fold(name).translate({ord("ä"): "ae", ord("ö"): "oe", ord("ü"): "ue"})
    return "".join(sign for sign in unicodedata.normalize("NFD", spelled) if not unicodedata.combining(sign))


def fold(word: str) -> str:
    """Bring a word to the form in which words are compared.

    Parameters
    ----------
    word : str
        Any text.

    Returns
    -------
    str
        Lower case, with each run of blanks, underscores and hyphens as one blank.
    """
    return re.sub(r"[\s_\-]+", " ", word.casefold()).strip()


def parse_words(text: str | None, allowed: Iterable[str]) -> dict[str, str]:
    """Read a list of the writer's own words and what each means, such as ``S0=bedding;L1=lineation``.

    Parameters
    ----------
    text : str or None
        Entries ``word=meaning`` separated by semicolons or line ends. Empty entries are skipped; None means no words.
    allowed : iterable of str
        The meanings that may stand on the right-hand side. Case, blanks, underscores and hyphens do not matter there.

    Returns
    -------
    dict
        The folded word (see `fold`) to the meaning as written in ``allowed``.

    Raises
    ------
    FieldDataError
        ``bad_words``: an entry has no equals sign, no word or no allowed meaning, or a word has two meanings. The
        values are ``entry`` and ``allowed``.
    """
    meanings = {fold(word): word for word in allowed}
    words: dict[str, str] = {}
    for entry in filter(None, (part.strip() for part in re.split(r"[;\n\r]", text or ""))):
        word, equals, meaning = entry.partition("=")
        key, value = fold(word), meanings.get(fold(meaning))
        if not equals or not key or value is None or words.get(key, value) != value:
            listed = ", ".join(meanings.values())
            message = f'"{entry}" does not give one word one meaning, as in word=meaning. Meanings: {listed}.'
            raise FieldDataError(message, "bad_words", entry=entry, allowed=listed)
        words[key] = value
    return words


def read_words(
    values: Iterable[Any], known: Mapping[str, str], words: Mapping[str, str], empty: str, other: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Look up what the word in each cell means.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells.
    known : mapping
        Words in the form that `fold` gives, and what they mean; each is also known with a plural s.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known ones.
    empty, other : str
        The meaning of empty cells, and of words that are not known.

    Returns
    -------
    meanings : ndarray of str, shape (n,)
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """

    def look_up(value: Any) -> tuple[str, bool]:
        if is_empty(value) and fold(text_of(value)) not in words:
            return empty, False
        word = fold(text_of(value))
        meaning = words.get(word) or known.get(word) or known.get(word.removesuffix("s"))
        return (other, True) if meaning is None else (meaning, False)

    found = for_each_distinct(values, look_up)
    meanings = np.array([meaning for meaning, _ in found], dtype=object)
    return meanings, np.array([unknown for _, unknown in found], dtype=bool)


def _names(names: Iterable[str], synonyms: Mapping[str, str]) -> dict[str, str]:
    return {fold(name): name for name in names} | dict(synonyms)


def read_kinds(
    values: Iterable[Any], words: Mapping[str, str], default: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read the kind of structure of each row.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `KINDS` are known in any case, with blanks, underscores or hyphens, and with a plural s.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.
    default : str
        One of `KINDS`: for empty cells and unknown words.

    Returns
    -------
    kinds : ndarray of str, shape (n,)
        Elements of `KINDS`.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known, read as ``default``.
    """
    return read_words(values, _names(KINDS, KIND_SYNONYMS), words, default, default)


def read_polarities(values: Iterable[Any], words: Mapping[str, str]) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read which way up each bed is.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `POLARITIES` are known, and plain words for them such as "right way up" and "inverted".
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.

    Returns
    -------
    polarities : ndarray of str, shape (n,)
        Elements of `POLARITIES`; "unknown" for empty cells and for words that are not known.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known.
    """
    return read_words(values, _names(POLARITIES, POLARITY_SYNONYMS), words, "unknown", "unknown")


def read_needle_ends(values: Iterable[Any], default: str) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
    """Read at which end of the needle each azimuth was read.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells: north or south, or their initials.
    default : str
        One of `NEEDLE_ENDS`: for empty cells.

    Returns
    -------
    south, unknown : ndarray of bool, shape (n,)
        Rows read at the south end, and cells whose word is not known (code ``needle_unknown``).
    """
    found, unknown = read_words(values, _names(NEEDLE_ENDS, NEEDLE_SYNONYMS), {}, default, "")
    return np.asarray(found == "south", dtype=bool), unknown


def read_norths(
    values: Iterable[Any], words: Mapping[str, str], default: str
) -> tuple[NDArray[np.object_], NDArray[np.bool_]]:
    """Read which north each azimuth counts from.

    Parameters
    ----------
    values : iterable, shape (n,)
        Cells. The names in `NORTHS` and their initials are known.
    words : mapping
        The writer's own words, from `parse_words`. They come before the known names.
    default : str
        One of `NORTHS`: for empty cells.

    Returns
    -------
    norths : ndarray of str, shape (n,)
        Elements of `NORTHS`. An unknown word gives an empty text: a guessed north would be wrong by the declination.
    unknown : ndarray of bool, shape (n,)
        Cells whose word is not known (code ``north_unknown``; such a row is to be rejected).
    """
    return read_words(values, _names(NORTHS, NORTH_SYNONYMS), words, default, "")
