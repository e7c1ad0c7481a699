"""Section lines: their names and the letters of their ends."""

import pytest
from agonic.processing_algs.gis.section_lines import ends_of, section_space

# Names, the place of the section among others, and the letters of its ends.
NAMES = [
    ("A-A'", 0, ("A", "A′")),
    ("A - A’", 0, ("A", "A′")),
    ("A–B", 0, ("A", "B")),
    ("C—C′", 4, ("C", "C′")),
    ("1-1'", 0, ("1", "1′")),
    ("K", 0, ("K", "K′")),
    ("12", 0, ("12", "12′")),
    ("River section", 2, ("C", "C′")),
    ("north-south road", 1, ("B", "B′")),
]


@pytest.mark.parametrize(("name", "number", "ends"), NAMES)
def test_a_name_gives_the_letters_of_the_ends(name, number, ends):
    assert ends_of(name, number) == ends


def test_section_space_is_a_crs_of_metres_that_leads_nowhere_on_earth(qgis_app):
    from agonic.processing_algs.gis.places import Locator
    from qgis.core import Qgis

    crs = section_space()
    assert crs.isValid()
    assert crs.mapUnits() == Qgis.DistanceUnit.Meters
    assert Locator(crs).projection is None
