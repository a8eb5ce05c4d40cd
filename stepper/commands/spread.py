"""`stepper spread 204 to 240`: an even increase or decrease, worked out on the spot."""

from __future__ import annotations

import argparse
from collections.abc import Iterator

from stepper.craft.gauge import Gauge
from stepper.craft.manners import Manner, Spaced, space_changes
from stepper.craft.phrases import KNIT_TOGETHER, MAKE_ONE, print_phrase
from stepper.craft.spacing import count_gaps
from stepper.errors import ProjectError
from stepper.language.even_words import LOOKS
from stepper.plan.state.fitting_counts import costs, nearest_counts

_ALIKE = "Look: all gaps are alike."


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("before", type=int, metavar="204", help="stitches on the needles")
    parser.add_argument("to", choices=["to"], metavar="to", help="the word to")
    parser.add_argument("after", type=int, metavar="240", help="stitches to reach")
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
    before, after = args.before, args.after
    if before < 1 or after < 0:
        raise ProjectError(f"Stitches are counted from 1 up (got {before} to {after}).")
    if args.multiple < 1 or args.plus < 0 or (args.gauge is not None and not args.gauge > 0):
        raise ProjectError("The multiple must be 1 or more, stitches over it 0 or more, the gauge above 0.")
    near = nearest_counts(after, args.multiple, args.plus)
    if near != (after,):
        raise ProjectError("\n".join(_instead(after, near, args)))
    if before == after:
        print(f"{before} to {after}: nothing to change.")
        return 0
    change = MAKE_ONE if after > before else KNIT_TOGETHER
    manner = Manner(args.manner)
    try:
        round_ = space_changes(before, abs(after - before), change=change, flat=args.flat, manner=manner)
    except ValueError as error:
        raise ProjectError(f"{before} to {after} is not possible in one round: {error}") from None
    for line in _told(round_, before, after, change, manner):
        print(line)
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
