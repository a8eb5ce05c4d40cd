"""Take stripe sequences off the rows of a section, and the words that call for them out of others. No I/O."""

from __future__ import annotations

from collections.abc import Mapping

from stepper.project.reading.own_words import is_own_row
from stepper.project.reading.parsing import NOTE, made_plain
from stepper.project.respelt import Respelt, Row
from stepper.project.rewording.reworded import Reworded
from stepper.project.stripes.stripe_sequences import StripeSequences


def take_stripes(
    rows: list[Row], sequences: StripeSequences, yarns: Mapping[str, str], respelt: Respelt
) -> list[Row]:
    """Take the definitions of stripes off rows, and read those that call for them without these words.

    Args:
        rows: The rows, each with its place.
        sequences: The sequences defined so far; gets those that the rows define.
        yarns: The names of the yarns of the file, by their keys.
        respelt: Gets the rows as they were, with the stripes they call for.

    Returns:
        The rows that are worked.
    """
    names = [*yarns, *yarns.values()]
    made: list[Row] = []
    at = 0
    while at < len(rows):
        text, place = rows[at]
        plain = made_plain(text)
        if NOTE.match(plain) or is_own_row(plain):
            made.append(rows[at])
            at += 1
            continue
        below = [made_plain(row) for row, _ in rows[at : at + 24]] if sequences.begins(plain) else []
        taken = sequences.take(below, names) if below else 0
        if taken:
            at += taken
            continue
        called = sequences.call(plain, place)
        at += 1
        if called is None:
            made.append((text, place))
            continue
        reworded = called.reworded
        if not reworded.text:  # "Work in stripe sequence throughout.": the rows below are
            reworded = Reworded(f"Note: {text.strip()}", (*([0] * 6), *range(len(text.strip()) + 1)))
        respelt.put((text, place), reworded, stripes=called.stripes, at=called.at)
        made.append((reworded.text, place))
    return made
