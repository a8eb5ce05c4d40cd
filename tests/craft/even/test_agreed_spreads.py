"""Even rounds are said as they were agreed on, also where there are too many orders of the gaps to try them all.

`test_sayable` tries every order and every phrase of up to ten changes, `test_manners` holds what every round promises; the text in
`agreed/` only notices where one of more changes is said otherwise than before. A row: stitches and changes, what is worked, in the round
or flat, and for each manner its words, how far a change stands from its even place, the first places, and its phrase: `8x3` is three times eight plain stitches and a change, `[…]x5` a repeat, `+4`
plain stitches at the end.
"""

from __future__ import annotations

import random
from collections.abc import Iterator
from pathlib import Path

from stepper.craft.even.manners import Manner, space_changes
from stepper.craft.even.phrases import KNIT_TOGETHER, MAKE_ONE, Phrase, Plain, SpacedStretch
from stepper.craft.even.respacing import avoid_places, places_touching, respread
from stepper.craft.even.spacing import decrease_positions, gaps_between, increase_positions
from tests.agreed import compare

HERE = Path(__file__).parent / "agreed"
PAIRS = (
    (37, 12), (52, 13), (61, 11), (64, 24), (70, 21), (76, 17), (81, 14), (84, 26), (90, 11), (97, 18), (100, 30), (105, 25),
    (113, 12), (120, 22), (126, 33), (131, 41), (144, 15), (150, 28), (160, 62), (175, 19), (186, 44), (200, 23), (211, 16), (240, 50),
    (18, 15), (23, 22), (33, 32), (46, 45), (20, 0), (20, 1), (5, 1), (9, 2), (12, 6),
)  # fmt: skip
"""Stitches and changes, of the size of yokes and cuffs, with and without a common divisor; of the last only increases fit."""


def test_rounds_of_many_changes_are_said_as_agreed() -> None:
    """She learnt the yoke of last winter by heart; it is said in the same words this winter."""
    rows: list[str] = []
    for stitches, changes in PAIRS:
        for change in (MAKE_ONE, KNIT_TOGETHER):
            if change == KNIT_TOGETHER and 2 * changes > stitches:
                continue
            for flat in (False, True):
                rows.append(f"{stitches} {changes} {change} {'flat' if flat else 'round'}")
                for manner in Manner:
                    round_ = space_changes(stitches, changes, change=change, flat=flat, manner=manner)
                    said = f"{round_.words}, off {round_.off} of {round_.gap}, begins {round_.positions[:3]}"
                    rows.append(f"  {manner.value} {said}: {' '.join(_written(round_.phrase))}")
    compare(HERE / "phrases.txt", rows)


def test_rounds_of_all_sizes_are_said_as_agreed() -> None:
    """As the rows above, in the words that are said unless others are asked for: the orders of parts that a shortest phrase may
    have come up in few rounds each, so that many are drawn."""
    dice, rows = random.Random(60_520), list[str]()
    while len(rows) < 300:
        stitches = dice.randint(20, 520)
        changes, change, flat = dice.randint(2, stitches // 2), dice.choice((MAKE_ONE, KNIT_TOGETHER)), dice.random() < 0.5
        round_ = space_changes(stitches, changes, change=change, flat=flat)
        head = f"{stitches} {changes} {change} {'flat' if flat else 'round'}: {round_.words}, off {round_.off}"
        rows.append(f"{head}: {' '.join(_written(round_.phrase))}")
    compare(HERE / "drawn.txt", rows)


def _written(phrase: Phrase) -> Iterator[str]:
    for part in phrase:
        if isinstance(part, Plain):
            yield f"+{part.stitches}"
        elif isinstance(part, SpacedStretch):
            yield f"{part.gap}x{part.times}"
        else:
            yield f"[{' '.join(_written(part.parts))}]x{part.times}"


def test_rounds_that_keep_off_a_panel_are_spaced_as_agreed() -> None:
    """The front panel stays as it was, and so does where the increases beside it went; half a round respaced goes on alike."""
    rows: list[str] = []
    for number, (stitches, changes) in enumerate(PAIRS):
        for uses in (0, 2) if 2 * changes <= stitches else (0,):
            flat = number % 2 == 1
            places = (
                decrease_positions(stitches, changes, flat=flat)
                if uses
                else increase_positions(stitches, changes, flat=flat)
            )
            panel = range(stitches // 3, stitches // 3 + 1 + number % 4)
            rows.append(f"{stitches} {changes} uses {uses}{' flat' * flat}, plain {panel.start} to {panel.stop - 1}")
            try:
                kept = avoid_places(places, stitches, places_touching(panel, uses=uses), flat=flat, uses=uses)
                rows.append(f"  {kept}")
                rows.append(f"  {gaps_between(kept, stitches, flat=flat, uses=uses)}")
            except ValueError as error:
                rows.append(f"  {error}")
            left, due = stitches // 2, changes // 2 + number % 3
            try:
                rows.append(f"  {respread(left, due, worked_since=number % 5, beyond=number % 3, uses=uses)}")
            except ValueError as error:
                rows.append(f"  {error}")
    compare(HERE / "places.txt", rows)


def test_changes_kept_off_any_stitches_go_where_they_were_agreed_on() -> None:
    """Marker stitches, motifs and seams anywhere, few stitches and many: what does not fit is refused in the same words."""
    dice, rows = random.Random(61_160), list[str]()
    while len(rows) < 500:
        stitches = dice.randint(4, 90)
        changes, uses, flat = dice.randint(1, max(1, stitches // 2)), dice.choice((0, 2, 3)), dice.random() < 0.5
        kept = {dice.randint(1, stitches) + each for _ in range(dice.randint(1, 4)) for each in range(dice.randint(1, 5))}
        within = dice.choice((None, None, 1, 2, 5))
        rows.append(f"{stitches} {changes} uses {uses}{' flat' * flat}, plain {sorted(kept)}, within {within}")
        try:
            places = (
                decrease_positions(stitches, changes, flat=flat, uses=uses)
                if uses
                else increase_positions(stitches, changes, flat=flat)
            )
            forbidden = places_touching(kept, uses=uses)
            moved = avoid_places(places, stitches, forbidden, flat=flat, uses=uses, within=within)
            assert not forbidden.intersection(moved)
            rows.append(f"  {places} {moved} {gaps_between(moved, stitches, flat=flat, uses=uses)}")
        except ValueError as error:
            rows.append(f"  {error}")
        left, due, since, beyond = (dice.randint(0, most) for most in (stitches, changes, 6, 6))
        try:
            rows.append(f"  {left} {due} {since} {beyond}: {respread(left, due, worked_since=since, beyond=beyond, uses=uses)}")
        except ValueError as error:
            rows.append(f"  {error}")
    compare(HERE / "drawn_places.txt", rows)


def test_no_text_is_left_over() -> None:
    """What nobody spaces any more must not be kept as if it were agreed on."""
    assert {path.stem for path in HERE.glob("*.txt")} == {"phrases", "places", "drawn", "drawn_places"}
