"""Errors that nobody foresaw, told as what they are."""

import traceback
from contextlib import contextmanager
from pathlib import Path

from qgis.core import QgsProcessingException

from .i18n import tr


@contextmanager
def faults_told():
    """Turn any error that is no sentence for the user into one that says where it came from.

    Raises
    ------
    QgsProcessingException
    """
    try:
        yield
    except QgsProcessingException:
        raise
    except Exception as error:
        steps = traceback.extract_tb(error.__traceback__)
        place = steps[-1]
        ours = Path(__file__).parents[1]
        for step in steps:  # the last step in our own code says most
            if Path(step.filename).is_relative_to(ours):
                place = step
        message = tr("This is a fault of Agonic: {kind}: {reason} ({file}, line {line}). Nothing was written.").format(
            kind=type(error).__name__, reason=error, file=Path(place.filename).name, line=place.lineno
        )
        raise QgsProcessingException(message) from error
