"""`stepper spread 204 to 240`: an even increase or decrease on the spot."""

from __future__ import annotations

import argparse
from collections.abc import Iterator

from stepper.craft.gauge import Gauge
from stepper.craft.spacing import count_gaps, gaps_between
from stepper.errors import ProjectError
from stepper.plan.abbreviate import instruction
from stepper.plan.evenly import even_round
from stepper.plan.fitting_counts import costs, nearest_counts


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("before", type=int, metavar="204", help="stitches on the needles")
    parser.add_argument("to", choices=["to"], metavar="to", help="the word to")
    parser.add_argument("after", type=int, metavar="240", help="stitches to reach")
    parser.add_argument("--flat", action="store_true", help="in rows: half a gap at each end")
    parser.add_argument(
        "--multiple",
        type=int,
        default=1,
        metavar="4",
        help="what the count must be a multiple of: a rib, a chart",
    )
    parser.add_argument("--plus", type=int, default=0, metavar="2", help="and so many stitches over")
    parser.add_argument("--gauge", type=float, metavar="22", help="stitches to 10 cm, for what a count costs")


def _instead(after: int, near: tuple[int, ...], args: argparse.Namespace) -> Iterator[str]:
    """Offer the nearest counts that are a multiple, with what each costs."""
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
        raise ProjectError("A multiple is from 1 up, stitches over it from 0 up, a gauge above 0.")
    near = nearest_counts(after, args.multiple, args.plus)
    if near != (after,):
        raise ProjectError("\n".join(_instead(after, near, args)))
    try:
        phrase, places = even_round(before, after, yarn="", flat=args.flat)
    except ValueError as error:
        raise ProjectError(f"{before} to {after} is not possible in one round: {error}") from None
    if not places:
        print(f"{before} to {after}: nothing to change.")
        return 0
    word = "increase" if after > before else "decrease"
    gaps = gaps_between(places, before, flat=args.flat, uses=0 if after > before else 2)
    sizes = ", ".join(f"{times} of {gap}" for gap, times in count_gaps(gaps))
    print(f"{before} to {after}: {len(places)} {word}{'s' if len(places) > 1 else ''}, gaps {sizes}.")
    print(instruction(phrase))
    return 0
