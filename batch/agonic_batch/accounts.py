"""Accounts of parts of a run as plain JSON and back, so that a run can be taken up again where it stopped."""

from __future__ import annotations

import datetime
import importlib
from collections import Counter
from typing import Any

import numpy as np
from agonic_core.noticed import Noticed

SCIENCE = "agonic_core."


def encode(value: Any) -> Any:
    """Write an account as lists, texts and numbers; what it does not know is an error."""
    if value is None or isinstance(value, (bool, int, float, str)):
        return value
    if isinstance(value, np.generic):
        return encode(value.item())
    for kind, write in WRITERS:
        if isinstance(value, kind):
            return write(value)
    if type(value).__module__.startswith(SCIENCE):
        return {"object": [type(value).__module__, type(value).__name__, encode(vars(value))]}
    message = f"An account holds {type(value).__name__}, which cannot be written."
    raise TypeError(message)


def _sorted(values: Any) -> list[Any]:
    """In an order that does not hang on hashes."""
    return sorted(values, key=repr)


# Narrower kinds stand before wider ones: a Counter is a dict, Noticed a tuple.
WRITERS = (
    (np.ndarray, lambda array: {"array": [array.dtype.str, [encode(one) for one in array.tolist()]]}),
    (datetime.date, lambda date: {"date": date.isoformat()}),
    (Counter, lambda counts: {"counter": _sorted([encode(key), count] for key, count in counts.items())}),
    (Noticed, lambda one: {"noticed": [one.row, one.code, one.rejects, encode(_shown(one.values))]}),
    (dict, lambda pairs: {"dict": _sorted([encode(key), encode(one)] for key, one in pairs.items())}),
    ((set, frozenset), lambda ones: {"set": _sorted(encode(one) for one in ones)}),
    (tuple, lambda ones: {"tuple": [encode(one) for one in ones]}),
    (list, lambda ones: [encode(one) for one in ones]),
)


def _shown(values: dict[str, Any]) -> dict[str, Any]:
    """Values of a sentence: what is no number or text, such as a cell of a table, as it reads."""
    plain = (bool, int, float, str, datetime.date, np.generic, tuple, list, type(None))
    return {name: value if isinstance(value, plain) else str(value) for name, value in values.items()}


def decode(value: Any) -> Any:
    """Read what `encode` wrote."""
    if isinstance(value, list):
        return [decode(one) for one in value]
    if not isinstance(value, dict):
        return value
    ((kind, held),) = value.items()
    if kind == "object":
        module, name, attributes = held
        if not module.startswith(SCIENCE):
            message = f"An account names {module}, which is not of the science."
            raise ValueError(message)
        made = object.__new__(getattr(importlib.import_module(module), name))
        vars(made).update(decode(attributes))
        return made
    readers = {
        "array": lambda two: np.array(decode(two[1]), dtype=two[0]),
        "date": datetime.date.fromisoformat,
        "counter": lambda pairs: Counter({decode(key): count for key, count in pairs}),
        "noticed": lambda four: Noticed(four[0], four[1], four[2], decode(four[3])),
        "dict": lambda pairs: {decode(key): decode(one) for key, one in pairs},
        "set": lambda ones: {decode(one) for one in ones},
        "tuple": lambda ones: tuple(decode(one) for one in ones),
    }
    return readers[kind](held)
