"""Putting finished outputs in their places, and taking that back if a later one cannot be put."""

import os
import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

from osgeo import gdal
from qgis.core import QgsProcessingException, QgsProviderRegistry

from .databases import back_up, connect, count_rows, find_table, tables_of
from .i18n import tr
from .kinds import DATABASES
from .sinks import layer_file
from .styling import store_style

STALE = {".qix", ".sbn", ".sbx", ".cpg", ".prj", ".idx", ".ind", ".idm", ".map", ".id", ".dat"}
"""Endings of files that belong to the layer they lie beside, and spoil another one."""


class Placing:
    """Puts outputs in their places. Use it as a context: when the block ends by an error, all is undone.

    Parameters
    ----------
    targets : list of outputs.Target
    """

    def __init__(self, targets):
        self._targets, self._undo = list(targets), []
        self.lost = False  # whether something could not be undone, and what was kept of it must stay

    def __enter__(self):
        return self

    def __exit__(self, kind, error, trace):
        if kind is not None:
            for undo in reversed(self._undo):
                try:
                    undo()
                except (OSError, RuntimeError, sqlite3.Error):
                    self.lost = True

    def in_order(self):
        """Targets in the order in which they are put: what is hardest to undo comes last. List of outputs.Target."""
        return sorted(self._targets, key=_goes_into_a_database)

    def put(self, target, context, styles, feedback):
        """Put one output in its place.

        Parameters
        ----------
        target : outputs.Target
            Whole and closed.
        context : QgsProcessingContext
        styles : list of callable
            Each takes the QgsVectorLayer and styles it; for a table in a database that is there already, whose style
            lies elsewhere in it.
        feedback : QgsProcessingFeedback

        Raises
        ------
        QgsProcessingException
            If it cannot be put there. The place is then as it was.
        """
        try:
            if target.is_folder:
                self._put_folder(target)
            elif _goes_into_a_database(target) and target.written is None:
                self._put_database(target)
            elif _goes_into_a_database(target):
                self._put_table(target)
                for apply in styles:
                    self._style(target, context, apply, feedback)
            else:
                self._put_files(target)
        except (OSError, RuntimeError, sqlite3.Error) as error:
            raise QgsProcessingException(_refused(target, getattr(error, "strerror", None) or error)) from error

    # -- files --------------------------------------------------------------------------------------------------------

    def _put_files(self, target):
        """Move the files of an output, the one that it is opened by last."""
        made = sorted(target.aside.parent.iterdir(), key=lambda file: file.name == target.aside.name)
        places = {file: _place_of(file, target) for file in made if file.is_file()}
        self._drop_stale(target, set(places.values()))
        for file, place in places.items():
            old = self._keep(place, file.parent)
            if old is not None:
                shutil.copymode(place, file)
            os.replace(file, place)
            self._undo.append(lambda place=place, old=old: os.replace(old, place) if old else place.unlink())

    def _put_folder(self, target):
        """Move a folder to its place, where nothing is or an empty folder."""
        was_there = target.final.is_dir()
        if was_there:
            target.final.rmdir()
        os.replace(target.aside, target.final)

        def undo():
            os.replace(target.final, target.aside)
            if was_there:
                target.final.mkdir()

        self._undo.append(undo)

    def _drop_stale(self, target, new):
        """Remove what belongs to the layer that is replaced and not to the new one, such as an index."""
        sidecars = QgsProviderRegistry.instance().providerMetadata("ogr").sidecarFilesForUri(str(target.final))
        for sidecar in map(Path, sidecars if target.final.exists() and target.written else ()):
            if sidecar.suffix.lower() in STALE and sidecar not in new and sidecar.is_file():
                old = self._keep(sidecar, target.aside.parent)
                sidecar.unlink()
                self._undo.append(lambda sidecar=sidecar, old=old: os.replace(old, sidecar))

    @staticmethod
    def _keep(place, folder):
        """Keep what lies at a place under a second name. The path, or None where there is nothing."""
        if not place.exists():
            return None
        kept = folder / "old" / place.name
        kept.parent.mkdir(exist_ok=True)
        try:
            os.link(place, kept)
        except OSError:  # the disk knows no second names
            shutil.copy2(place, kept)
        return kept

    # -- tables -------------------------------------------------------------------------------------------------------

    def _put_table(self, target):
        """Copy a table into a database that is there already, in one transaction."""
        _, name = layer_file(target.written)
        if name is None:
            (name,) = tables_of(target.aside)
        old = find_table(target.final, name)
        kept = None
        if old:
            kept = target.aside.parent / "old.gpkg"
            _translate(target.final, kept, old, old)
        _translate(target.aside, target.final, name, old or name)
        self._undo.append(lambda: _restore(target.final, kept, old or name))
        with closing(connect(target.final)) as database:
            found = count_rows(database, old or name)
        if found != target.rows:
            message = tr("of {rows} rows, {found} are there").format(rows=target.rows, found=found)
            raise QgsProcessingException(_refused(target, message))

    def _put_database(self, target):
        """Copy a whole database into the one that is there, which somebody may hold open."""
        kept = target.aside.parent / "old.gpkg"
        back_up(target.final, kept)
        back_up(target.aside, target.final)
        self._undo.append(lambda: back_up(kept, target.final))

    @staticmethod
    def _style(target, context, apply, feedback):
        """Store the style in the database. The rows are safe by now, so this is no reason to fail."""
        try:
            store_style(target.destination, context, apply)
        except QgsProcessingException as error:
            feedback.pushWarning(str(error))


def _goes_into_a_database(target):
    final = target.final
    is_database = final.suffix.lower() in DATABASES
    return is_database and final.exists() and final.stat().st_size > 0


def _place_of(file, target):
    """Place of one of the files that make up an output: named as its main file is."""
    rest = file.name.removeprefix(target.aside.stem)
    return target.final.with_name(target.final.stem + rest)


def _translate(source, place, name, new_name):
    """Copy a table from one database to another.

    Raises
    ------
    RuntimeError
        If it cannot be copied. The other database is then as it was.
    """
    options = ["-overwrite", "-nln", new_name, "-ds_transaction", "-gt", "unlimited"]
    if not place.exists():
        options = ["-f", "GPKG", "-nln", new_name]
    gdal.ErrorReset()
    done = gdal.VectorTranslate(str(place), str(source), options=[*options, name])
    failed = done is None or gdal.GetLastErrorType() >= gdal.CE_Failure
    reason = gdal.GetLastErrorMsg()
    del done  # closes it
    if failed or gdal.GetLastErrorType() >= gdal.CE_Failure:
        raise RuntimeError(reason or gdal.GetLastErrorMsg() or tr("the database refused it"))


def _restore(place, kept, name):
    """Put a table back as it was, or take it away where there was none."""
    if kept is not None:
        _translate(kept, place, name, name)
        return
    data = gdal.OpenEx(str(place), gdal.OF_VECTOR | gdal.OF_UPDATE)
    if data is not None and data.GetLayerByName(name) is not None:
        data.DeleteLayer(name)
    del data  # closes it


def _refused(target, reason):
    return tr("Nothing was written to {place}: {reason}").format(place=target.final, reason=reason)
