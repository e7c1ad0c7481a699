"""Text that any file can hold."""

import re

# What XML 1.0 knows no character for: control characters, halves of a character, and two that are none.
UNPRINTABLE = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
REPLACEMENT = "\ufffd"


def printable(text: str) -> str:
    r"""Text with what no file can hold replaced, visibly.

    Parameters
    ----------
    text : str

    Returns
    -------
    str
        With U+FFFD for each control character but tab and line ends, for each lone surrogate, and for U+FFFE and
        U+FFFF: the characters that XML 1.0 excludes (W3C, Extensible Markup Language 1.0, production 2).

    Examples
    --------
    >>> printable("bed\x07ding") == "bed\ufffdding"
    True
    """
    return UNPRINTABLE.sub(REPLACEMENT, text)
