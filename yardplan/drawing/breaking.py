"""Words broken into lines of a given width."""

from __future__ import annotations

from yardplan.drawing.lettering import Type, text_size


def broken(text: str, wide: float, face: Type, unit: float) -> list[str]:
    """Lines of at most `wide` device pixels; a single word that is wider is cut between letters."""
    lines: list[str] = []
    line = ""
    for word in text.split():
        for piece in _pieces(word, wide, face, unit):
            longer = f"{line} {piece}" if line else piece
            if line and text_size(longer, face, unit)[0] > wide:
                lines.append(line)
                line = piece
            else:
                line = longer
    return [*lines, line]


def _pieces(word: str, wide: float, face: Type, unit: float) -> list[str]:
    """The word, cut where it does not fit on a line of its own."""
    pieces = []
    while len(word) > 1 and text_size(word, face, unit)[0] > wide:
        end = len(word) - 1
        while end > 1 and text_size(word[:end], face, unit)[0] > wide:
            end -= 1
        pieces.append(word[:end])
        word = word[end:]
    return [*pieces, word]
