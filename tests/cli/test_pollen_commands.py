"""Commands pollen, partners and bloom: JSON as promised, exit codes, and one line for what is wrong."""

import json
from pathlib import Path
from typing import Any

import pytest
from support.builders import yard_of
from support.orchards import row_of, site

from yardplan.cli import main
from yardplan.files.writing import save


@pytest.fixture
def yard(tmp_path: Path) -> str:
    path = tmp_path / "orchard.yard"
    keys = ("sweet cherry:Bing", "sweet cherry:Lambert", "apple:Gala", "apple:Empire")
    save(path, yard_of(*row_of(*keys), site=site(), width=60))
    return str(path)


def out(capsys: pytest.CaptureFixture[str]) -> Any:
    return json.loads(capsys.readouterr().out)


def test_pollen_gives_both_directions_with_reasons(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["pollen", "apple:Golden Delicious", "apple:Stayman", "--json"]) == 0
    found = out(capsys)
    assert (found["a_to_b"]["verdict"], found["b_to_a"]["verdict"]) == ("yes", "no")
    assert [reason["step"] for reason in found["b_to_a"]["reasons"]] == ["family", "clone", "pollen"]
    assert all(reason["words"] and reason["source"] for reason in found["a_to_b"]["reasons"])


def test_pollen_understands_other_names_and_case(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["pollen", "european pear:williams bon chretien", "european pear:Seckel", "--json"]) == 0
    assert out(capsys)["a_to_b"]["verdict"] == "no"


def test_pollen_with_a_site_judges_bloom_there(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["pollen", "apple:Gala", "apple:Empire", "--site", yard, "--json"]) == 0
    words = [r["words"] for r in out(capsys)["a_to_b"]["reasons"] if r["step"] == "bloom"]
    assert "dates at this place" in words[0]


def test_pollen_prints_a_table(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["pollen", "apple:Gala", "peach:Redhaven"]) == 0
    text = capsys.readouterr().out
    assert "apple:Gala sets fruit on peach:Redhaven: no" in text
    assert "needs no partner" in text


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["pollen", "apple:Golden Delicius", "apple:Gala"], "did you mean apple:Golden Delicious"),
        (["pollen", "apple", "apple:Gala"], "CROP:CULTIVAR"),
        (["pollen", "apple:Gala", "apple:Empire", "--site", "nowhere.yard"], "nowhere.yard"),
        (["pollen", "granite:Grey", "apple:Gala"], "yardplan plants"),
        (["partners", "nowhere.yard"], "nowhere.yard"),
        (["bloom", "nowhere.yard"], "nowhere.yard"),
    ],
)
def test_what_is_wrong_is_said_in_one_line(
    words: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(words) == 2
    caught = capsys.readouterr()
    assert caught.out == ""
    assert said in caught.err
    assert caught.err.count("\n") == 1


def test_partners_of_a_yard(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["partners", yard, "--json"]) == 0
    found = out(capsys)
    assert found["lacking"] == ["P1", "P2"]
    plants = {one["id"]: one for one in found["plants"]}
    assert (plants["P1"]["expected"], plants["P1"]["best_partner"]) == ("none", None)
    assert (plants["P3"]["expected"], plants["P3"]["best_partner"]) == ("well", "Empire (P4)")
    assert plants["P3"]["share"] == 1
    assert plants["P3"]["overlap_days"] > 3
    assert len(found["additions"]) == 1
    assert set(found["additions"][0]["serves"]) == {"P1", "P2"}
    assert main(["partners", yard]) == 0
    text = capsys.readouterr().out
    assert "P1, P2" in text
    assert "will not set" in text
    assert "will set well" in text


def test_partners_of_one_plant(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["partners", yard, "--for", "P1", "--json"]) == 0
    found = out(capsys)
    assert (found["for"], found["expected"]) == ("P1", "none")
    assert found["partners"][0]["verdict"] == "yes"
    assert main(["partners", yard, "--for", "P3"]) == 0
    text = capsys.readouterr().out
    assert text.startswith("Gala (P3): will set well; best here: Empire (P4).")
    assert "variety" in text
    assert main(["partners", yard, "--for", "Z9"]) == 2
    assert "Z9 is no plant of this yard; it has P1, P2" in capsys.readouterr().err


def test_bloom_dates_harvest_and_overlaps(yard: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["bloom", yard, "--json"]) == 0
    found = out(capsys)
    assert found["basis"] == "monthly means"
    assert found["plants"][0]["plant"] == "sweet cherry:Bing"
    gala = next(plant for plant in found["plants"] if plant["plant"] == "apple:Gala")
    assert gala["bloom"]["full"].startswith("04-2")
    assert gala["harvest"]["first"].startswith("08-")
    assert {(pair["a"], pair["b"]) for pair in found["overlaps"]} >= {
        ("sweet cherry:Bing", "sweet cherry:Lambert"),
    }
    assert main(["bloom", yard]) == 0
    assert "full bloom" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({"monthly_means": (18.0,) * 12}, "Winters are too mild here"),
        ({"monthly_means": None, "place": "", "longitude": 0.0, "latitude": 45.0}, "Bloom is not dated"),
    ],
)
def test_bloom_says_why_there_are_no_dates(
    fields: dict[str, Any], said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "undated.yard"
    save(path, yard_of(*row_of("apple:Gala"), site=site(**fields)))
    assert main(["bloom", str(path)]) == 0
    assert said in capsys.readouterr().out
