"""Errors that field data can cause, each with a machine code and the values to name in a remark."""

from typing import Any


class FieldDataError(ValueError):
    """A value from the field that cannot be used as it stands.

    Parameters
    ----------
    message : str
        A sentence with the value and the rule it breaks, in English.
    code : str
        Machine code of the fault, such as ``dip_range``.
    **values
        What a translated remark needs: the value, its limits, the nearest valid readings.
    """

    def __init__(self, message: str, code: str = "unreadable", **values: Any) -> None:
        super().__init__(message)
        self.code = code
        self.values = values
