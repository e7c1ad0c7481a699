"""Dialogs, batch and modeler in a real window of QGIS, on a display that nobody sees."""

import json
import os
import shutil
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
WORDS = ["magnetic north, read with a compass", "true north", "grid north"]


@pytest.fixture(scope="module")
def seen(tmp_path_factory):
    """What tools/window.py saw."""
    if not (shutil.which("xvfb-run") and shutil.which("qgis")):
        pytest.skip("Xvfb and QGIS's own window are not installed")
    folder = tmp_path_factory.mktemp("window")
    settings = folder / "profiles" / "default" / "QGIS" / "QGIS3.ini"
    settings.parent.mkdir(parents=True)
    settings.write_text("[PythonPlugins]\nagonic=true\nprocessing=true\n", encoding="utf-8")
    environment = {
        **{key: value for key, value in os.environ.items() if key not in ("QT_QPA_PLATFORM", "PYTHONPATH")},
        "AGONIC_WINDOW": str(folder),
        "QGIS_PLUGINPATH": str(ROOT / "build" / "plugins"),
        "LANG": "C.UTF-8",
    }
    program = ["qgis", "--nologo", "--noversioncheck", "--profiles-path", str(folder)]
    subprocess.run(  # noqa: S603
        ["xvfb-run", "-a", "-s", "-screen 0 1600x1100x24", *program, "--code", str(ROOT / "tools" / "window.py")],  # noqa: S607
        env=environment,
        timeout=300,
        check=True,
        capture_output=True,
    )
    return json.loads((folder / "seen.json").read_text(encoding="utf-8"))


def test_nothing_went_wrong_and_nothing_is_kept(seen):
    assert not [key for key in seen if key.endswith("_error") or key == "hook"], seen
    assert seen["kept"] == 0


def test_a_choice_shows_words_and_gives_tokens(seen):
    for where in ("check_compass", "sight_to_terrain", "correct_readings"):
        assert seen[where]["NORTH"] == {"offers": WORDS, "shows": WORDS[0]}
        assert seen[where]["values"]["NORTH"] == "magnetic"
        assert seen[where]["grid"] == "grid"
    assert seen["batch"]["offers"] == WORDS
    assert seen["batch"]["value"] == "magnetic"
    assert WORDS in seen["modeler"]["NORTH"]["offers"]
    assert seen["modeler"]["NORTH"]["value"] == "magnetic"


def test_several_at_once_show_words_and_give_tokens(seen):
    assert sorted(seen["several"]["value"]) == ["bedding", "joint"]
    assert seen["several"]["default"] == seen["several"]["declared"]


def test_a_choice_that_must_be_made_starts_unmade(seen):
    assert seen["sight_to_terrain"]["ANGLE_MEANS"]["shows"] == ""
    assert seen["correct_readings"]["NOTATION"]["shows"] == ""


def test_a_field_is_filled_by_its_usual_name_and_not_guessed(seen):
    assert seen["check_compass"]["values"]["BEARING_FIELD"] == "brg"
    assert seen["check_compass"]["values"]["DATE_FIELD"] == "fecha"
    assert seen["batch"]["bearing"] == "brg"
    assert seen["correct_readings"]["values"]["AZIMUTH_FIELD"] == "brg"
    # No field of the layer has a usual name for a vertical angle: QGIS itself would have taken the first.
    assert seen["sight_to_terrain"]["parameters"] == {}


def test_what_is_needed_is_not_called_optional(seen):
    assert seen["check_compass"]["labels"]["BEARING_FIELD"] == "Bearing"
    assert seen["correct_readings"]["labels"]["AZIMUTH_FIELD"] == "Azimuth"
    assert seen["correct_readings"]["labels"]["NOTATION"].endswith("(choose one)")
    assert seen["check_compass"]["labels"]["DATE_FIELD"].endswith("[optional]")


def test_a_field_that_is_taken_while_folded_away_is_named(seen):
    folded = seen["correct_readings"]["folded"]
    assert folded["collapsed"]
    assert "(taken: Kind of structure: kind)" in folded["title"]
    assert "Kind of structure" not in folded["emptied"]
    assert "taken" not in seen["sight_to_terrain"]["folded"]["title"]


def test_a_run_ends_with_one_line_and_ways_to_the_rejected_rows_and_the_report(seen):
    after = seen["after"]
    assert (after["title"], after["text"]) == ("Correct compass readings", "2 done, 1 rejected")
    assert after["buttons"] == ["Show rejected", "Report"]
    assert after["selected"] == ["rejected"]
    assert after["layers"] == after["found"] == ["book: Attitudes"]
    assert after["groups"] == ["Correct compass readings"]


def test_the_menu_stands_under_plugins(seen):
    assert seen["menu"][0] == "Correct compass readings…"
    assert seen["menu"][1:3] == ["1 North", "2 Readings"]
    assert seen["menu"][-2:] == ["Open the sample area…", "Help"]
