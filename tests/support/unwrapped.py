"""Finds texts in the program's code that a person may see and that no language but English would say."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

#: Calls in which a text is said in the language shown.
_SAID = frozenset({"tr", "tr_n", "later", "Wording"})
#: Faults that tell a developer, never a person.
_FOR_DEVELOPERS = frozenset({
    "ValueError", "RuntimeError", "AssertionError", "TypeError", "NotImplementedError",
})
#: Calls whose first argument is the name of a command, a pattern or another word of the program's own.
_NAMES_FIRST = frozenset({
    "add", "_add", "_layer", "add_existing", "setObjectName", "setProperty", "compile", "ToolKind",
    "fullmatch", "removeprefix", "removesuffix", "members",
})
#: Calls that show or speak their first argument: there a single word is a text, too.
_SHOWS = frozenset({
    "label", "button", "setText", "setTitle", "setWindowTitle", "setAccessibleName", "setToolTip",
    "setStatusTip", "setAccessibleDescription", "setPlaceholderText", "set_placeholder", "QMenu", "Check",
    "Fold", "commit", "say", "showMessage", "TextEntry", "ChoiceEntry", "PlantEntry", "EntryError",
    "UnitError",
})
#: Keywords that take words of the program's own.
_NAMES = frozenset({"id", "sort", "merge", "path", "look"})


def is_text(words: str) -> bool:
    """Words of a sentence: a space and small letters."""
    return " " in words.strip() and re.search(r"[a-z]{2}", words) is not None


def unwrapped(path: Path) -> Iterator[tuple[int, str]]:
    """Line and words of each text that is said by none of the language's functions."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    yield from _in(tree)


def _in(node: ast.AST) -> Iterator[tuple[int, str]]:
    match node:
        case ast.Constant(value=str(words)) if is_text(words):
            yield node.lineno, words
        case ast.JoinedStr(values=parts):
            words = "".join(str(p.value) if isinstance(p, ast.Constant) else "{}" for p in parts)
            if is_text(words):
                yield node.lineno, words
            for part in parts:
                if isinstance(part, ast.FormattedValue):
                    yield from _in(part.value)
        case ast.Call(func=func, args=args, keywords=keywords):
            yield from _in_call(func, args, keywords)
        case ast.Dict(values=values):
            for value in values:
                yield from _in(value)
        case _ if not _shows_nothing(node):
            for child in ast.iter_child_nodes(node):
                yield from _in(child)


def _shows_nothing(node: ast.AST) -> bool:
    """A docstring, an index, a comparison, a fault for developers: none of it is read by a person."""
    match node:
        case ast.Expr(value=ast.Constant()) | ast.Subscript() | ast.Compare() | ast.MatchValue():
            return True
        case ast.Raise(exc=ast.Call(func=ast.Name(id=name))):
            return name in _FOR_DEVELOPERS
    return False


def _in_call(func: ast.expr, args: list[ast.expr], keywords: list[ast.keyword]) -> Iterator[tuple[int, str]]:
    """What is handed to a call, but for the words of the program's own."""
    name = func.id if isinstance(func, ast.Name) else func.attr if isinstance(func, ast.Attribute) else ""
    yield from _in(func)
    skipped = len(args) if name in _SAID else 1 if name in _NAMES_FIRST else 0
    match args:
        case [ast.Constant(value=str(word)), *_] if name in _SHOWS and re.search(r"[a-z]{2}", word):
            yield args[0].lineno, word
            skipped = 1
    for argument in args[skipped:]:
        yield from _in(argument)
    for keyword in keywords if name != "Wording" else ():
        if keyword.arg not in _NAMES:
            yield from _in(keyword.value)
