"""Collects what the program says and keeps its translations: run it after changing texts.

    python tests/support/texts.py de                    # update resources/languages/de/*.ts and the .qm
    python tests/support/texts.py de --missing window   # print what has no translation yet, as JSON
    python tests/support/texts.py de --fill FILE.json   # take translations {"English": "Deutsch"} over

A count's translation in a JSON file is a list: ["{n} Pflanze", "{n} Pflanzen"].
"""

from __future__ import annotations

import argparse
import ast
import csv
import json
import string
import subprocess
import sys
import sysconfig
import xml.etree.ElementTree as ET
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
LANGUAGES = ROOT / "resources" / "languages"
#: Shipped tables whose words are said to a person: the column names, by file below resources/.
DATA: dict[str, tuple[str, ...]] = {
    "places/countries.csv": ("name",),
    "rules.csv": ("note",),
    "pollen/limits.csv": ("note",),
    "pollen/ranges.csv": ("note",),
    "pollen/crops.csv": ("family",),
    "pollen/pairs.csv": ("words",),
    "pollen/cross.csv": ("words",),
    "pollen/crossing.csv": ("words",),
    "pollen/seedlings.csv": ("words",),
    "pollen/ratios.csv": ("words", "layout"),
    "care/tasks.csv": ("title", "when", "why"),
    "care/cautions.csv": ("text",),
    "care/soil-steps.csv": ("title", "words"),
    "checks/plant-groups.csv": ("member",),
    "checks/dig-first.csv": ("words",),
    "checks/lot-line-law.csv": ("note",),
    "checks/ribes-law.csv": ("words",),
    "checks/acidifiers.csv": ("material", "note"),
    "sheets/cautions.csv": ("words",),
    "sheets/dig-places.csv": ("called",),
    "plants/crops.csv": ("crop", "name", "usual_form", "habit"),
    "plants/trees.csv": ("tree",),
    "plants/training.csv": ("training",),
    "plants/crop-size.csv": ("form", "training"),
    "plants/bud-kill.csv": ("stage",),
    "plants/ornament.csv": (
        "flower_colour", "fragrance", "spring_foliage", "summer_foliage", "autumn_colour", "winter_interest",
        "form", "wildlife",
    ),
    "plants/disease-resistance.csv": ("problem", "resistance"),
    "plants/small-fruit-cultivars.csv": (
        "type", "cross_benefit", "bloom_season", "harvest_season", "container_ok", "thornless",
    ),
    "plants/tree-fruit-cultivars.csv": ("bloom_season", "harvest_season"),
    "plants/rootstocks.csv": ("size_class", "vigour", "needs_support"),
}
#: Rooms in which nothing is translated: the command line speaks English.
ENGLISH_ROOMS = ("cli", "__main__")

Said = dict[str, dict[str, bool]]  # room -> text -> whether it is a count
Translations = dict[str, str | list[str]]


def said() -> Said:
    """Every text said through `tr`, `tr_n`, `later` or `Wording`, and in the tables of DATA, by room."""
    found: Said = {}
    for path in sorted((ROOT / "yardplan").rglob("*.py")):
        room = path.relative_to(ROOT / "yardplan").parts[0].removesuffix(".py")
        if room not in ENGLISH_ROOMS:
            found.setdefault(room, {}).update(_in_code(path))
    for name, columns in DATA.items():
        with (ROOT / "resources" / name).open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(line for line in file if not line.startswith("#")):
                found.setdefault("data", {}).update({row[one]: False for one in columns if row[one]})
    return {room: texts for room, texts in found.items() if texts}


def _in_code(path: Path) -> dict[str, bool]:
    texts: dict[str, bool] = {}
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Name)):
            continue
        match node.func.id, node.args:
            case "tr" | "later", [ast.Constant(value=str(text)), *_] if text:
                texts.setdefault(text, False)
            case "tr_n", [_, ast.Constant(value=str(text)), *_]:
                texts[text] = True
            case "Wording", _:
                texts.update(dict.fromkeys(_wordings(path, node), False))
            case "later" | "tr_n", _:
                raise ValueError(f"{path}:{node.lineno}: {node.func.id} takes plain texts")
    return texts


def _wordings(path: Path, node: ast.Call) -> list[str]:
    """The sentences of a check's wording: each said whole, or a name whose text is marked by `later`."""
    parts = [*node.args, *(keyword.value for keyword in node.keywords)]
    if any(not isinstance(part, ast.Constant | ast.Name) for part in parts):
        raise ValueError(f"{path}:{node.lineno}: Wording takes plain texts")
    return [part.value for part in parts if isinstance(part, ast.Constant) and part.value]


def names_in(text: str) -> set[str]:
    """The names to be filled in: {"plant", "room"}."""
    return {name for _, name, _, _ in string.Formatter().parse(text) if name}


def translations(language: str) -> Translations:
    """What is translated, from all files of the language."""
    known: Translations = {}
    for path in sorted((LANGUAGES / language).glob("*.ts")):
        for message in ET.parse(path).iter("message"):
            source, element = message.findtext("source") or "", message.find("translation")
            if element is None or element.get("type") == "unfinished":
                continue
            forms = [form.text or "" for form in element.iter("numerusform")]
            known[source] = forms or element.text or ""
    return known


def write(language: str, known: Translations) -> None:
    """Write the .ts files of a language: what is said now, with what is translated; then compile them."""
    folder = LANGUAGES / language
    folder.mkdir(parents=True, exist_ok=True)
    rooms = said()
    for old in folder.glob("*.ts"):
        if old.stem not in rooms:
            old.unlink()
    for room, texts in rooms.items():
        root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
        context = ET.SubElement(root, "context")
        ET.SubElement(context, "name").text = "yardplan"
        for text, count in sorted(texts.items()):
            message = ET.SubElement(context, "message", {"numerus": "yes"} if count else {})
            ET.SubElement(message, "source").text = text
            element = ET.SubElement(message, "translation")
            match known.get(text):
                case [*forms] if count:
                    for form in forms:
                        ET.SubElement(element, "numerusform").text = form
                case str(one) if one and not count:
                    element.text = one
                case _:
                    element.set("type", "unfinished")
        ET.indent(root, " ")
        text = ET.tostring(root, encoding="unicode")
        (folder / f"{room}.ts").write_text(
            f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{text}\n', encoding="utf-8"
        )
    compile_to(language, LANGUAGES / f"yardplan_{language}.qm")


def compile_to(language: str, target: Path) -> None:
    """Compile the .ts files of a language into one .qm file by Qt's own tool."""
    tool = Path(sysconfig.get_path("scripts")) / "pyside6-lrelease"
    files = sorted(str(path) for path in (LANGUAGES / language).glob("*.ts"))
    subprocess.run([str(tool), "-silent", "-removeidentical", *files, "-qm", str(target)], check=True)


def _missing(language: str, room: str | None) -> dict[str, str]:
    known = translations(language)
    return {
        text: "count" if count else ""
        for name, texts in said().items() if room in (None, name)
        for text, count in texts.items() if text not in known
    }


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("language")
    parser.add_argument("--missing", nargs="?", const="", metavar="ROOM")
    parser.add_argument("--fill", type=Path)
    args = parser.parse_args()
    if args.missing is not None:
        json.dump(_missing(args.language, args.missing or None), sys.stdout, ensure_ascii=False, indent=0)
        return
    known = translations(args.language)
    if args.fill:
        known |= json.loads(args.fill.read_text(encoding="utf-8"))
    write(args.language, known)
    print(f"{args.language}: {len(_missing(args.language, None))} texts have no translation yet")


if __name__ == "__main__":
    main()
