"""Map units: what a table says of them, their order, and what ornament their rock has."""

from __future__ import annotations

import math
import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any, Final

from .cells import is_empty, text_of
from .colour import normal
from .errors import FieldDataError

SORTS: Final = ("surficial", "sedimentary", "volcanic", "intrusive", "metamorphic")
"""Sorts of units, in the order in which they are explained where nothing else is told."""

COLUMNS: Final[dict[str, tuple[str, ...]]] = {
    "code": ("code", "mapunit", "unit"),
    "name": ("name", "fullname"),
    "order": ("order", "hierarchykey"),
    "description": ("description",),
    "color": ("color", "colour", "areafillrgb"),
    "rock": ("rock", "geomaterial", "lithology"),
    "age_old": ("age_old",),
    "age_young": ("age_young",),
    "group": ("group",),
    "sort": ("sort",),
}
"""Columns of a table of units, with the names they may have: ours, and those of GeMS (USGS TM 11-B10)."""

# Beginnings of words, without accents, by ornament. The first ornament that has a word of the rock's name wins, in the
# order in which the words stand there: "sandstone with shale" is sand.
ROCKS: Final[dict[str, tuple[str, ...]]] = {
    "sand": ("sand", "arenisc", "aren", "gres", "arenit", "grit", "quartzit", "cuarcit", "arkos", "graywack",
             "greywack"),
    "silt": ("silt", "limolit", "siltit", "schluff", "loess"),
    "mud": ("mud", "shale", "clay", "slate", "lutit", "argil", "arcill", "pelit", "marga", "marl", "ton", "schiefert",
            "folhelho"),
    "limestone": ("limestone", "chalk", "carbonat", "caliz", "calcair", "calcar", "kalk", "marble", "marmol",
                  "travertin"),
    "dolomite": ("dolomit", "dolom", "dolosto"),
    "conglomerate": ("conglom", "gravel", "grava", "konglom", "cascalh", "alluvi", "aluvi", "terrace", "terraza"),
    "breccia": ("brecci", "brech", "brekz", "till", "moraine", "morren", "talus", "scree", "colluvi", "coluvi",
                "landslide"),
    "evaporite": ("evapor", "gypsum", "yeso", "gips", "gyps", "salt", "sal", "halit", "anhydr", "anhidr"),
    "coal": ("coal", "carbon", "lignit", "peat", "turba", "kohle", "charbon", "tourb", "torf"),
    "volcanic": ("basalt", "lava", "andesit", "rhyolit", "riolit", "dacit", "volcan", "vulkan", "trachyt", "traquit"),
    "tuff": ("tuff", "toba", "tuf", "ash", "ceniza", "ignimbrit", "pyroclast", "piroclast", "cinza"),
    "plutonic": ("granit", "granod", "diorit", "gabbr", "tonalit", "syenit", "sienit", "pluton", "monzon", "peridot"),
    "dike": ("dike", "dyke", "dique", "diabas", "dolerit", "porphyr", "porfid", "pegmatit", "aplit"),
    "metamorphic": ("gneis", "schist", "esquist", "xisto", "metamorph", "metamorf", "amphibol", "anfibol", "migmat",
                    "phyllit", "filit", "mylonit", "milonit", "serpentin"),
}  # fmt: skip
_BY_BEGINNING: Final = sorted(
    ((start, ornament) for ornament, starts in ROCKS.items() for start in starts), key=lambda pair: -len(pair[0])
)
ORNAMENTS: Final = tuple(ROCKS)
_WHOLE: Final = {"sal", "salt", "ton", "ash", "aren", "tuf"}  # words too short to be taken as a beginning


@dataclass(frozen=True)
class Unit:
    """A map unit.

    Attributes
    ----------
    code : str
        Letters on the map.
    name, description, rock, group : str
        Empty where nothing is told.
    color : str
        ``#rrggbb``; empty where the table has none.
    age_old, age_young : float
        Order or millions of years, larger is older; NaN where not told.
    sort : str
        One of `SORTS`, or empty.
    """

    code: str
    name: str = ""
    description: str = ""
    rock: str = ""
    group: str = ""
    color: str = ""
    age_old: float = math.nan
    age_young: float = math.nan
    sort: str = ""

    @property
    def ornament(self) -> str:
        """Ornament of its rock, or of its name where no rock is told; empty where neither names one."""
        return ornament_of(self.rock) or ("" if self.rock else ornament_of(self.name))

    @property
    def has_age(self) -> bool:
        """Whether an age is told."""
        return math.isfinite(self.age_old) and math.isfinite(self.age_young)


@dataclass(frozen=True)
class Fault:
    """What is wrong with a row of a table of units.

    Attributes
    ----------
    row : int
        From 0.
    code : str
        ``unit_no_code``, ``unit_twice``, ``unit_color``, ``unit_age`` or ``unit_sort``.
    value : str
    """

    row: int
    code: str
    value: str


def columns_of(names: Iterable[str]) -> dict[str, str]:
    """Which of a table's columns hold what.

    Parameters
    ----------
    names : iterable of str

    Returns
    -------
    dict of str to str
        Key of `COLUMNS` to the table's own name; only what is there.
    """
    have = {name.lower(): name for name in reversed(list(names))}
    found = {}
    for key, known in COLUMNS.items():
        for name in known:
            if name in have:
                found[key] = have[name]
                break
    return found


def read_units(rows: Sequence[Mapping[str, Any]]) -> tuple[list[Unit], list[Fault]]:
    """Read a table of units.

    Parameters
    ----------
    rows : sequence of mapping
        Cells by key of `COLUMNS`.

    Returns
    -------
    units : list of Unit
        In the order of explanation: by ``order`` where all rows have one, ascending, youngest first; else surficial
        deposits first, then by age, youngest first; else as the rows stand.
    faults : list of Fault
        Rows without a code and second rows of one code are left out; a colour, age or sort that cannot be read is
        taken as not told.
    """
    units: dict[str, Unit] = {}
    orders: dict[str, tuple[int, float, str]] = {}
    faults: list[Fault] = []
    for number, row in enumerate(rows):
        code = _text(row.get("code"))
        if not code:
            faults.append(Fault(number, "unit_no_code", ""))
            continue
        if code in units:
            faults.append(Fault(number, "unit_twice", code))
            continue
        old, young = (_age(row.get(key), number, faults) for key in ("age_old", "age_young"))
        old, young = (young if math.isnan(old) else old), (old if math.isnan(young) else young)
        if old < young:
            faults.append(Fault(number, "unit_age", f"{young:g} - {old:g}"))
            old, young = young, old
        units[code] = Unit(
            code=code,
            name=_text(row.get("name")),
            description=_text(row.get("description")),
            rock=_text(row.get("rock")),
            group=_text(row.get("group")),
            color=_color(row.get("color"), number, faults),
            age_old=old,
            age_young=young,
            sort=_sort(row.get("sort"), number, faults),
        )
        orders[code] = _order(row.get("order"))
    return _in_order(list(units.values()), orders), faults


def _in_order(units: list[Unit], orders: Mapping[str, tuple[int, float, str]]) -> list[Unit]:
    if units and all(orders[unit.code][0] < 2 for unit in units):
        return sorted(units, key=lambda unit: orders[unit.code])
    aged = all(unit.has_age for unit in units)
    return sorted(
        units,
        key=lambda unit: (unit.sort != "surficial", unit.age_young + unit.age_old if aged else 0.0),
    )


def _order(value: Any) -> tuple[int, float, str]:
    """Sorting key of an order: numbers, then texts such as 02-01, then nothing."""
    text = _text(value)
    if not text:
        return 2, 0.0, ""
    try:
        return 0, float(text), ""
    except ValueError:
        return 1, 0.0, text


def _text(value: Any) -> str:
    return "" if is_empty(value) else text_of(value).strip()


def _age(value: Any, row: int, faults: list[Fault]) -> float:
    text = _text(value)
    if not text:
        return math.nan
    try:
        age = float(text.replace(",", "."))
    except ValueError:
        age = math.inf
    if not 0.0 <= age < 5000.0:
        faults.append(Fault(row, "unit_age", text))
        return math.nan
    return age


def _color(value: Any, row: int, faults: list[Fault]) -> str:
    text = _text(value)
    if not text:
        return ""
    try:
        return normal(text)
    except FieldDataError:
        faults.append(Fault(row, "unit_color", text))
        return ""


def _sort(value: Any, row: int, faults: list[Fault]) -> str:
    text = _text(value).lower()
    if text and text not in SORTS:
        faults.append(Fault(row, "unit_sort", text))
        return ""
    return text


def ornament_of(rock: str) -> str:
    """Ornament that a rock has by common practice.

    Parameters
    ----------
    rock : str
        Such as "coarse sandstone, pebbly at the base", in English, Spanish, Portuguese, French or German.

    Returns
    -------
    str
        One of `ORNAMENTS`, of the first word that names a rock; empty where none does.
    """
    plain = unicodedata.normalize("NFKD", rock.lower()).encode("ascii", "ignore").decode()
    for word in re.findall(r"[a-z]+", plain):
        for start, ornament in _BY_BEGINNING:
            if word == start or (word.startswith(start) and start not in _WHOLE):
                return ornament
    return ""
