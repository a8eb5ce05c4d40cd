"""`stepper spread 204 to 240`: an even increase or decrease, worked out on the spot."""

from __future__ import annotations

import argparse
import re
from collections.abc import Iterator, Sequence

from stepper.craft.even.manners import Manner, Spaced, space_changes
from stepper.craft.even.phrases import KNIT_TOGETHER, MAKE_ONE, print_phrase
from stepper.craft.even.spacing import count_gaps
from stepper.craft.gauge import Gauge
from stepper.errors import ProjectError
from stepper.language.even_words import LOOKS
from stepper.plan.state.fitting_counts import costs, nearest_counts
from stepper.regex import regex
from stepper.sitting.folding import print_folded

_ALIKE = "Look: all gaps are alike."
_STITCHES = r"\s*(-?\d+)\s*(?:sts?|stitches)?\s*"
_COUNTS = regex(
    rf"{_STITCHES}(?:\bto\b|->|[-\u2013\u2014\u2192:,/]|\.{{2,3}}|\s){_STITCHES}", re.IGNORECASE
)


EXAMPLES = (
    ("stepper spread 204 to 240", "increase evenly in the round"),
    ("stepper spread 96-84 --flat", "decrease evenly in rows"),
    (
        "stepper spread 204 to 241 --multiple 4 --gauge 22",
        "the nearest counts for a rib, and what each costs",
    ),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.usage = "%(prog)s [options] 204 to 240"
    parser.add_argument(
        "counts",
        nargs="+",
        metavar="204 to 240",
        help="stitches on the needles and stitches to reach; 204-240 and 204 240 mean the same",
    )
    parser.add_argument(
        "--manner",
        choices=[manner.value for manner in Manner],
        default=Manner.SAYABLE.value,
        help="how wider and narrower gaps follow each other: mixed as evenly as can be, in the shortest "
        "phrase that stays near the even places (sayable, as usual), or in two runs",
    )
    parser.add_argument("--flat", action="store_true", help="in rows: half a gap at each end")
    parser.add_argument(
        "--multiple",
        type=int,
        default=1,
        metavar="4",
        help="what the count must be a multiple of: a rib, a chart",
    )
    parser.add_argument("--plus", type=int, default=0, metavar="2", help="plus this many stitches")
    parser.add_argument("--gauge", type=float, metavar="22", help="stitches per 10 cm, for what it costs")


def read_counts(words: Sequence[str]) -> tuple[int, int] | None:
    """Read two counts as they are typed: "204 to 240", "204-240", "204 240"; None if they are not."""
    found = _COUNTS.fullmatch(" ".join(words))
    return (int(found[1]), int(found[2])) if found is not None else None


def _instead(after: int, near: tuple[int, ...], args: argparse.Namespace) -> Iterator[str]:
    """Offer the nearest counts that are a multiple, and what each costs."""
    over = f" and {args.plus} over" if args.plus else ""
    yield f"{after} is not a multiple of {args.multiple}{over}. Nearest:"
    gauge = Gauge(stitches=args.gauge, rounds=args.gauge) if args.gauge is not None else None
    for count in near:
        yield f"  {count}: {costs(count - after, gauge, 'cm')}"


def run(args: argparse.Namespace) -> int:
    """Print the round and how its changes are spaced.

    Returns:
        Exit code.

    Raises:
        ProjectError: No such round is possible.
    """
    counts = read_counts(args.counts)
    if counts is None:
        typed = " ".join(args.counts)
        parser: argparse.ArgumentParser = args.parser
        parser.error(f'two counts are needed, as in "204 to 240"; "{typed}" is not understood')
    before, after = counts
    if before < 1 or after < 0:
        raise ProjectError(f"Stitches are counted from 1 up (got {before} to {after}).")
    if args.multiple < 1 or args.plus < 0 or (args.gauge is not None and not args.gauge > 0):
        raise ProjectError("The multiple must be 1 or more, stitches over it 0 or more, the gauge above 0.")
    near = nearest_counts(after, args.multiple, args.plus)
    if near != (after,):
        raise ProjectError("\n".join(_instead(after, near, args)))
    if before == after:
        print_folded([f"{before} to {after}: nothing to change."])
        return 0
    change = MAKE_ONE if after > before else KNIT_TOGETHER
    manner = Manner(args.manner)
    try:
        round_ = space_changes(before, abs(after - before), change=change, flat=args.flat, manner=manner)
    except ValueError as error:
        raise ProjectError(f"{before} to {after} is not possible in one round: {error}") from None
    print_folded(_told(round_, before, after, change, manner))
    return 0


def _told(round_: Spaced, before: int, after: int, change: str, manner: Manner) -> Iterator[str]:
    """Write how many changes there are, the round, how even it is and how it looks."""
    number = len(round_.positions)
    word = ("increase" if after > before else "decrease") + ("s" if number > 1 else "")
    sizes = ", ".join(f"{times} of {gap}" for gap, times in count_gaps(round_.gaps))
    yield f"{before} to {after}: {number} {word}" + (f", gaps {sizes}." if sizes else ".")
    yield print_phrase(round_.phrase, change)
    if round_.off == 0:
        yield "Every change stands at its even place."
    else:
        stitches, gaps = float(round_.off), float(round_.off / round_.gap)
        yield f"At most {stitches:.1f} sts from the even place, {gaps:.1f} of a gap."
    yield _ALIKE if len(set(round_.gaps)) < 2 else f"Look: {LOOKS[manner]}"
