"""How the layers of a project were made, as one text for a paper."""

from ..base import AgonicAlgorithm
from ..gis.i18n import tr
from ..gis.provenance import history_of, lines_of
from ..parameters import TABLE, layers, report


class MethodsStatement(AgonicAlgorithm):
    """How the layers of a project were made, as one text for a paper."""

    ID, GROUP = "methods_statement", "sheet"

    def displayName(self):
        """Name in the toolbox."""
        return tr("Methods statement")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Reads how the layers of the project were made, from the records that every output of Agonic carries, and "
            "writes one text for the methods section of a paper or a map's notes, then each step with its parameters. "
            "Layers without a record are named: how they were made must be told by whoever made them."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layers(
                "LAYERS",
                tr("Layers"),
                tr("Left empty: all vector layers of the project."),
                TABLE[0],
                optional=True,
            ),
            report(tr("The text, then each step with its parameters."), key="OUTPUT", label=tr("Methods statement")),
        ]

    def results(self):
        """Further numbers it returns."""
        return {"STEPS": tr("Steps"), "UNTOLD": tr("Layers without a record")}

    def refusal(self, said):
        """Why what was said cannot run together: a sentence, or None."""
        if not _chosen(said):
            return tr("There is no layer: the project has none, and LAYERS is empty.")
        return None

    def ready(self, said):
        """Read the layers' metadata, in the thread that may."""
        return [(layer.name(), history_of(layer)) for layer in _chosen(said)]

    def work(self, said, run):
        """Run."""
        steps, made, untold = [], {}, []
        for name, records in run.ready:
            if not records:
                untold.append(name)
            for record in records:
                if record not in steps:
                    steps.append(record)
            if records:
                made.setdefault(steps.index(records[-1]), []).append(name)
        steps_in_order = sorted(range(len(steps)), key=lambda number: (steps[number]["date"], number))
        sentences = [_sentence(steps[number], made.get(number, [])) for number in steps_in_order]
        if untold:
            sentences.append(
                tr("How these layers were made is not recorded: {names}.").format(names=", ".join(sorted(untold)))
            )
        text = " ".join(sentences)
        run.say(text)
        with run.report(said.OUTPUT, tr("Methods statement")) as page:
            page.paragraph(text)
            for number in steps_in_order:
                page.heading(steps[number].get("title") or steps[number]["tool"])
                page.table([tr("what"), tr("value")], lines_of(steps[number]))
            page.cautions()
        told = len(run.ready) - len(untold)
        counts = {"READ": len(run.ready), "DONE": told, "WARNED": 0, "REJECTED": len(untold)}
        return {**counts, "STEPS": len(steps), "UNTOLD": len(untold)}


def _chosen(said):
    """Layers that are asked for: those named, else the project's."""
    if said.LAYERS:
        return said.LAYERS
    project = said.context.project() if said.context else None
    found = project.mapLayers().values() if project else ()
    return sorted((layer for layer in found if hasattr(layer, "fields")), key=lambda layer: layer.name())


def _sentence(record, names):
    """A step as a sentence: the tool's own words where it has some."""
    values = {
        "title": record.get("title") or record["tool"],
        "tool": record["tool"],
        "version": record["version"],
        "date": record["date"],
        "names": ", ".join(names),
    }
    if names:
        told = tr("{names}: {title} ({tool}, Agonic {version}, {date}).").format(**values)
    else:
        told = tr("Before: {title} ({tool}, Agonic {version}, {date}).").format(**values)
    model = record["parameters"].get("MODEL")
    if record["methods"]:
        return " ".join([told, *map(str, record["methods"])])
    return f"{told} {tr('Model of the magnetic field: {model}.').format(model=model)}" if model else told
