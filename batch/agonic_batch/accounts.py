"""Accounts of parts of a run as plain JSON and back, so that a run can be taken up again where it stopped."""

from __future__ import annotations

import datetime
from collections import Counter
from typing import Any

import numpy as np
from agonic_core.blunders import DeclinationCheck, QuadrantCheck, ResidueCheck
from agonic_core.noticed import Noticed, Tally
from agonic_core.readings import Account
from agonic_core.true_north import NorthAccount

KNOWN = {
    cls.__name__: cls for cls in (Account, DeclinationCheck, NorthAccount, QuadrantCheck, ResidueCheck, Tally)
}


def encode(value: Any) -> Any:
    """Write an account as lists, texts and numbers; what it does not know is an error."""
    if value is None or isinstance(value, (bool, int, float, str)):
        return value
    if isinstance(value, np.ndarray):
        return {"array": [value.dtype.str, [encode(one) for one in value.tolist()]]}
    if isinstance(value, np.generic):
        return encode(value.item())
    if isinstance(value, datetime.date):
        return {"date": value.isoformat()}
    if isinstance(value, Counter):
        return {"counter": sorted(([encode(key), count] for key, count in value.items()), key=repr)}
    if isinstance(value, Noticed):
        return {"noticed": [value.row, value.code, value.rejects, encode(dict(value.values))]}
    if isinstance(value, dict):
        return {"dict": [[encode(key), encode(one)] for key, one in sorted(value.items(), key=repr)]}
    if isinstance(value, (set, frozenset)):
        return {"set": sorted((encode(one) for one in value), key=repr)}
    if isinstance(value, tuple):
        return {"tuple": [encode(one) for one in value]}
    if isinstance(value, list):
        return [encode(one) for one in value]
    if type(value).__name__ in KNOWN:
        return {type(value).__name__: encode(vars(value))}
    return {"text": str(value)}  # values of a sentence, such as a cell as it was written


def decode(value: Any) -> Any:
    """Read what `encode` wrote."""
    if isinstance(value, list):
        return [decode(one) for one in value]
    if not isinstance(value, dict):
        return value
    ((kind, held),) = value.items()
    if kind in KNOWN:
        made = object.__new__(KNOWN[kind])
        vars(made).update(decode(held))
        return made
    readers = {
        "array": lambda two: np.array(decode(two[1]), dtype=two[0]),
        "date": datetime.date.fromisoformat,
        "counter": lambda pairs: Counter({decode(key): count for key, count in pairs}),
        "noticed": lambda four: Noticed(four[0], four[1], four[2], decode(four[3])),
        "dict": lambda pairs: {decode(key): decode(one) for key, one in pairs},
        "set": lambda ones: {decode(one) for one in ones},
        "tuple": lambda ones: tuple(decode(one) for one in ones),
        "text": str,
    }
    return readers[kind](held)
