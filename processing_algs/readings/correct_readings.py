"""Raw compass readings to true attitudes: the main job."""

from ..base import AgonicAlgorithm
from ..gis.i18n import tr
from ..parameters import POINTS, layer, report, sink
from .readings_block import fields_by_role, further_results, reading_entries, reduce_layer


class CorrectReadings(AgonicAlgorithm):
    """Raw compass readings to true attitudes, checked row by row and styled."""

    ID, GROUP = "correct_readings", "readings"
    FIRST = ("INPUT", "NOTATION", "AZIMUTH_FIELD", "DIP_FIELD", "TEXT_FIELD", "NORTH", "RING_SET", "DATE", "DATE_FIELD")

    def displayName(self):
        """Name in the toolbox."""
        return tr("Correct compass readings")

    def shortHelpString(self):
        """Help in the dialog."""
        return tr(
            "Carries readings of a needle compass to true attitudes: reads the notation you wrote, takes the "
            "declination of each place and date, allows for the setting of the compass ring, and draws strike-and-dip "
            "symbols that point the right way in the map's own projection.\n\n"
            "Say first how the readings are written (notation) and which fields hold them. true = reading + (D - S), "
            "where D is the declination and S the ring setting, both east positive.\n\n"
            "Every row comes out. A row that cannot be used keeps its place and its attributes, has empty results, its "
            "own mark on the map, and the reason in the field remark. The report counts them and gives a sentence for "
            "the methods section of a paper.\n\n"
            "Results support, and do not replace, licensed professional judgement. Magnetic readings fail near iron, "
            "power lines and in magnetic storms."
        )

    def parameters(self):
        """Entries, in the order of the dialog."""
        return [
            layer(
                "INPUT",
                tr("Stations with readings"),
                tr("Point layer, one row a reading. Positions are taken from the geometry."),
                POINTS,
            ),
            *reading_entries(),
            sink(
                "OUTPUT",
                tr("Attitudes"),
                tr(
                    "The input's fields, then true strike, dip, trend, plunge, uncertainties, symbol and what was "
                    "noticed."
                ),
            ),
            report(tr("Counts, declinations, ring settings, rejected rows and a sentence for the methods section.")),
        ]

    def results(self):
        """Further numbers it returns."""
        return further_results()

    def work(self, said, run):
        """Run."""
        done = reduce_layer(said, run, run.source(said.INPUT), fields_by_role(said))
        return {} if done is None else done.results
