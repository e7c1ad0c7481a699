"""Outputs that go to PostGIS: rows into a table of their own, then one transaction that puts them in their place."""

from uuid import uuid4

from qgis.core import (
    QgsDataSourceUri,
    QgsProcessingException,
    QgsProviderConnectionException,
    QgsProviderRegistry,
    QgsVectorLayer,
)

from .i18n import tr
from .styling import STYLE_NAME, save_style

PROVIDERS = ("postgis", "postgres")
WAITS_FOR_LOCKS = "5s"
TABLES = ("r", "p")  # what PostgreSQL calls plain and partitioned tables
HIDDEN = "\u2026"  # stands where a user, a password or the like was


def is_server(destination):
    """Whether a destination, as the user gave it, is a table of a database server."""
    return destination.partition(":")[0] in PROVIDERS


def connection_text(destination):
    """Connection and table in a destination on a server, as QgsDataSourceUri takes them."""
    return destination.partition(":")[2].removeprefix("//")


class Staged:
    """A table of a server while its rows are being written to another one.

    Parameters
    ----------
    given : str
        The destination as the user gave it.

    Attributes
    ----------
    destination : str
        For the run's results: without user, password, authentication or service.
    sink : str
        Destination for the sink that writes the rows.
    loaded : str
        What QGIS is to load: the table in its place.
    rows : int
        Rows that were written.
    """

    def __init__(self, given):
        text = connection_text(given)
        self._uri, aside = QgsDataSourceUri(text), QgsDataSourceUri(text)
        self._schema, self._table = self._uri.schema() or "public", self._uri.table()
        self._geometry = self._uri.geometryColumn() or "geom"
        for uri in (self._uri, aside):
            uri.setSchema(self._schema)
            uri.setGeometryColumn(self._geometry)
        self._staging = f"agonic_{uuid4().hex[:20]}"
        aside.setTable(self._staging)
        self.sink, self.loaded = f"postgres:{aside.uri(False)}", f"postgres://{self._uri.uri(False)}"
        plain = QgsDataSourceUri()
        plain.setConnection(self._uri.host(), self._uri.port(), self._uri.database(), "", "")
        plain.setDataSource(self._schema, self._table, self._geometry)
        self.destination, self.rows = f"postgres://{plain.uri(False)}", 0
        self._is_spatial = True

    # -- before and while rows are written ----------------------------------------------------------------------------

    def refuse(self):
        """Refuse what is no table, such as a view.

        Raises
        ------
        QgsProcessingException
            Also if the database cannot be reached.
        """
        kind = self._kind()
        if kind is not None and kind not in TABLES:
            raise QgsProcessingException(
                tr("{table} is there already and is no table of rows; choose another name.").format(table=self._table)
            )

    def reserved(self):
        """Names that the table needs for columns of its own. Tuple of str, in small letters."""
        return (self._geometry.lower(),)

    def without_secrets(self, text):
        """Give a text without what nobody should read who does not need it."""
        uri = self._uri
        for secret in (uri.password(), uri.authConfigId(), uri.service(), uri.username()):
            if secret:
                text = text.replace(secret, HIDDEN)
        return text

    def finish(self):
        """Index and count the rows.

        Raises
        ------
        QgsProcessingException
            If rows are missing.
        """
        columns = self._columns(self._staging)
        self._is_spatial = self._geometry in columns
        if self._is_spatial:
            index = _name(f"{self._staging}_{self._geometry}")
            self._run(f"CREATE INDEX {index} ON {self._full(self._staging)} USING GIST ({_name(self._geometry)})")
        found = self._run(_words("SELECT count(*) FROM", self._full(self._staging)))[0][0]
        if int(found) != self.rows:
            message = tr("of {rows} rows, {found} are there").format(rows=self.rows, found=found)
            raise QgsProcessingException(self._refused(message))

    def write_style(self, apply, file):
        """Write the style of the rows, which are still aside, to a file of its own."""
        layer = QgsVectorLayer(connection_text(self.sink), self._table, "postgres")
        apply(layer)
        save_style(layer, file)

    def drop(self):
        """Take the rows away again, where they are not in their place yet."""
        try:
            self._run(f"DROP TABLE IF EXISTS {self._full(self._staging)}")
        except QgsProcessingException:
            return  # the server is gone, and with it what was not committed

    # -- in its place -------------------------------------------------------------------------------------------------

    def same_database(self, other):
        """Whether another one goes to the same database, so that one transaction can hold both."""
        return self._uri.connectionInfo(False) == other._uri.connectionInfo(False)

    def statements(self):
        """SQL that puts the rows in their place. List of str."""
        place, aside = self._full(self._table), self._full(self._staging)
        ours = self._columns(self._staging)
        if self._kind() is None:
            return self._renamed()
        if set(ours) <= set(self._columns(self._table)):  # views and rights stay
            names = ", ".join(map(_name, ours))
            return [
                f"TRUNCATE {place}",
                _words("INSERT INTO", place, "(", names, ") SELECT", names, "FROM", aside),
                f"DROP TABLE {aside}",
                *self._index_for_old(),
                *self._next_numbers(ours),
            ]
        rights = self._run(
            _words(
                "SELECT privilege_type, grantee FROM information_schema.table_privileges WHERE grantee <> grantor AND",
                "table_schema =", _text(self._schema), "AND table_name =", _text(self._table),
            )
        )  # fmt: skip
        granted = [f"GRANT {right} ON {place} TO {'PUBLIC' if to == 'PUBLIC' else _name(to)}" for right, to in rights]
        return [f"DROP TABLE {place}", *self._renamed(), *granted]

    def store_style(self, apply):
        """Store a style with the table in its place.

        Returns
        -------
        str
            Why it could not be stored; empty if it was.
        """
        layer = QgsVectorLayer(self._uri.uri(False), self._table, "postgres")
        if not layer.isValid():
            return tr("the table cannot be opened")
        apply(layer)
        error = layer.saveStyleToDatabase(STYLE_NAME, "", True, "")
        if not error and STYLE_NAME not in layer.listStylesInDatabase()[2]:
            error = tr("the table layer_styles took nothing")
        return self.without_secrets(error)

    def _renamed(self):
        """SQL that gives the table, its key, sequence and index the names they would have had."""
        found = [f"ALTER TABLE {self._full(self._staging)} RENAME TO {_name(self._table)}"]
        parts = self._run(
            _words(
                "SELECT relkind::text, relname FROM pg_class JOIN pg_namespace n ON n.oid = relnamespace",
                "WHERE nspname =", _text(self._schema), "AND relkind IN ('i', 'S')",
                "AND relname LIKE", _text(f"{self._staging}%"),
            )
        )  # fmt: skip
        for kind, old in parts:
            new = old.replace(self._staging, self._table, 1)
            if not self._kind(new):
                what = "INDEX" if kind == "i" else "SEQUENCE"
                found.append(f"ALTER {what} {self._full(old)} RENAME TO {_name(new)}")
        return found

    def _index_for_old(self):
        """SQL that gives the table that stays a spatial index, if it has none."""
        if not self._is_spatial:
            return []
        indexed = self._run(
            _words(
                "SELECT 1 FROM pg_indexes WHERE indexdef ILIKE '%USING gist%' AND schemaname =", _text(self._schema),
                "AND tablename =", _text(self._table),
            )
        )  # fmt: skip
        return [] if indexed else [f"CREATE INDEX ON {self._full(self._table)} USING GIST ({_name(self._geometry)})"]

    def _next_numbers(self, columns):
        """SQL that has a key go on from the rows that are there now."""
        found = []
        for column in columns:
            sequence = self._run(
                _words("SELECT pg_get_serial_sequence(", _text(self._full(self._table)), ",", _text(column), ")")
            )[0][0]
            if sequence:
                most = _words("SELECT coalesce(max(", _name(column), "), 0) + 1 FROM", self._full(self._table))
                found.append(_words("SELECT setval(", _text(sequence), ", (", most, "), false)"))
        return found

    # -- the database -------------------------------------------------------------------------------------------------

    def run_together(self, statements):
        """Run SQL in one transaction.

        Raises
        ------
        QgsProcessingException
            If any of it is refused; then nothing has changed.
        """
        try:
            self._run("; ".join(["BEGIN", f"SET LOCAL lock_timeout = '{WAITS_FOR_LOCKS}'", *statements, "COMMIT"]))
        except QgsProcessingException:
            self._run("ROLLBACK")  # or the connection, which others use too, would stay in the broken transaction
            raise

    def _run(self, statement):
        registry = QgsProviderRegistry.instance().providerMetadata("postgres")
        try:
            return registry.createConnection(self._uri.connectionInfo(False), {}).executeSql(statement)
        except QgsProviderConnectionException as error:
            raise QgsProcessingException(self._refused(str(error))) from error

    def _kind(self, name=None):
        """Say what a name stands for, as PostgreSQL codes it; None where it is free."""
        found = self._run(
            _words(
                "SELECT relkind::text FROM pg_class JOIN pg_namespace n ON n.oid = relnamespace WHERE nspname =",
                _text(self._schema), "AND relname =", _text(name or self._table),
            )
        )  # fmt: skip
        return found[0][0] if found else None

    def _columns(self, table):
        found = self._run(
            _words(
                "SELECT column_name FROM information_schema.columns WHERE table_schema =", _text(self._schema),
                "AND table_name =", _text(table), "ORDER BY ordinal_position",
            )
        )  # fmt: skip
        return [row[0] for row in found]

    def _full(self, table):
        return f"{_name(self._schema)}.{_name(table)}"

    def _refused(self, reason):
        message = tr("Nothing was written to the table {table}: {reason}").format(table=self._table, reason=reason)
        return self.without_secrets(message)


def put_in_place(tables):
    """Put the rows of several outputs in their places, in one transaction.

    Parameters
    ----------
    tables : list of Staged
        All of one database.

    Raises
    ------
    QgsProcessingException
        If one of them is refused; then all are as they were.
    """
    if tables:
        tables[0].run_together([statement for table in tables for statement in table.statements()])


def _words(*words):
    return " ".join(words)


def _name(name):
    return '"' + name.replace('"', '""') + '"'


def _text(text):
    return "'" + text.replace("'", "''") + "'"
