from yardplan.plants.cultivar import MEMORY
from yardplan.plants.sources import Source, bibliography, written_out


def test_a_source_is_written_out_without_repeating_itself() -> None:
    source = Source("a", "Spacing, 1996", "Iowa State", "1996", "x.edu")
    assert str(source) == "Iowa State, Spacing, 1996, x.edu"
    assert str(Source("a", "RHS list", "RHS")) == "RHS list"
    assert str(bibliography()[MEMORY]) == "from memory"


def test_unknown_ids_stay_as_they_are() -> None:
    text, unknown = written_out(["nc-hil-302", "label of the nursery"])
    assert "HIL-302" in text
    assert unknown == "label of the nursery"


def test_sources_of_the_folders_below_are_part_of_it() -> None:
    assert "niab-pollen-compatibility" in bibliography()
