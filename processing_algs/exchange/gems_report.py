"""The report of a GeMS database: what was written, what it lacks, and what was found against each level."""

from ..core.gems_rules import LEVELS
from ..gis.i18n import tr

MOST = 60  # findings of one level in the table


def sentences():
    """Sentence of each finding."""
    return {
        "table_missing": tr("The table is missing."),
        "table_empty": tr("The table has no rows."),
        "value_missing": tr("The field may not be null."),
        "text_blank": tr("Blank texts."),
        "text_long": tr("Texts longer than the field's usual length: {value}."),
        "id_twice": tr("The key {value} is there more than once."),
        "term_missing": tr('The Glossary lacks "{value}".'),
        "term_unused": tr('The Glossary has "{value}", which nothing uses.'),
        "term_twice": tr('The Glossary has "{value}" more than once.'),
        "source_missing": tr("DataSources lacks {value}."),
        "source_unused": tr("DataSources has {value}, which nothing uses."),
        "unit_missing": tr("DescriptionOfMapUnits lacks {value}."),
        "unit_unused": tr("DescriptionOfMapUnits has {value}, which is not on the map."),
        "unit_twice": tr("DescriptionOfMapUnits has {value} more than once."),
        "unit_lacks": tr("Not given for: {value}."),
        "dict_changed": tr("The table is not as the standard prints it."),
        "material_unknown": tr('"{value}" is no term of GeoMaterialDict.'),
        "station_missing": tr("Stations lacks {value}."),
        "station_twice": tr('Two stations are called "{value}"; attitudes were linked to the first.'),
        "key_form": tr('"{value}" is no key of numbers parted by dashes.'),
        "key_length": tr('The parts of the key "{value}" are not as long as the others.'),
        "key_twice": tr('The key "{value}" is there more than once.'),
        "key_order": tr('The key "{value}" sorts before the one above it.'),
        "key_deep": tr('The key "{value}" is more than one step deeper than the one above it.'),
        "areas_overlap": tr("Areas overlap: {value}."),
        "areas_gap": tr("A gap between areas: {value}."),
        "boundary_bare": tr("Boundaries of areas that no line of ContactsAndFaults covers: {value}."),
        "line_crosses": tr("Line {value} crosses or touches itself."),
        "lines_overlap": tr("Lines lie on each other: {value}."),
    }


def line_of(finding):
    """A finding as one line."""
    what = sentences()[finding.code].format(value=finding.value)
    where = f"{finding.table}.{finding.field}" if finding.field else finding.table
    return f"{where}: {what}"


def fill(report, contents, findings, database, left_out):
    """Put the report together.

    Parameters
    ----------
    report : Report
    contents : gems_rows.Contents
    findings : list of core.gems_rules.Finding
    database : gems_files.Database
    left_out : list of str
        What is said beside.
    """
    report.heading(tr("Written"))
    report.table([tr("table"), tr("rows")], [(name, len(rows)) for name, rows in contents.tables.items()])
    tally = contents.tally
    report.paragraph(
        tr(
            "{read} rows of the layers were read: {done} were written, {rejected} were rejected and are not in it."
        ).format(read=tally.read, done=tally.done, rejected=tally.read - tally.done)
    )
    if tally.codes:
        report.table(
            [tr("noticed"), tr("rows"), tr("such as")],
            [(code, count, tally.sentence(code)) for code, count in tally.codes.most_common()],
        )
    report.heading(tr("What the standard wants and the data lack"))
    for sentence in [*contents.told, *left_out]:
        report.paragraph(sentence)
    if contents.suggested:
        report.paragraph(
            tr("GeoMaterial is left null where the rock is no term of the list. A word of its name suggests:")
        )
        report.table([tr("unit"), tr("rock"), "GeoMaterial"], contents.suggested)
    if database.cut:
        report.paragraph(
            tr("A Shapefile holds 254 bytes of a text; these were cut, and are whole in the file of long texts:")
        )
        report.table([tr("table"), tr("field"), tr("row")], database.cut)
    report.heading(tr("Against the three levels"))
    for level in LEVELS:
        _level(report, level, [finding for finding in findings if finding.level == level])
    report.paragraph(
        tr(
            "A level includes those before it. This list does not say that the database is of a level: a review of its "
            "geologic names, which levels 2 and 3 ask for, and its metadata are not looked at."
        )
    )
    report.cautions()


def _level(report, level, found):
    if not found:
        report.paragraph(tr("Level {level}: nothing found against it.").format(level=level))
        return
    report.paragraph(tr("Level {level}: {count} findings.").format(level=level, count=len(found)))
    rows = [(finding.rule, line_of(finding), finding.rows) for finding in found[:MOST]]
    report.table([tr("rule"), tr("found"), tr("rows")], rows)
    if len(found) > MOST:
        report.paragraph(tr("{count} more are not listed.").format(count=len(found) - MOST))
