"""How long a pattern is worked: so many rounds, so many times, or to a length. No I/O."""

from __future__ import annotations

from stepper.plan.model import Stretch
from stepper.plan.needles import Needles, Template
from stepper.plan.rounds import repeat
from stepper.project.instructions import (
    Duration,
    Rounds,
    Times,
    Until,
    UntilLength,
    Worked,
)
from stepper.project.problems import Place


def cycle_of(instruction: Worked, needles: Needles) -> tuple[Template, ...] | None:
    """Give the rounds that a duration repeats; nothing, reported, where none has been set up."""
    place = instruction.place
    if instruction.manner in ("k", "stockinette"):
        flat_knit = instruction.manner == "k" and needles.flat
        if flat_knit:
            return (Template((Until("k", "end", None, None, place),), place),)
        return (Template((), place, stockinette=True),)
    if instruction.manner == "p":
        return (Template((Until("p", "end", None, None, place),), place),)
    if instruction.manner == "garter":
        knit = Template((Until("k", "end", None, None, place),), place)
        purl = Template((Until("p", "end", None, None, place),), place)
        return (knit,) if needles.flat else (knit, purl)
    if needles.pattern:
        return needles.pattern
    needles.report(
        place,
        "no pattern has been set up before this line.",
        "Write the round first, for example *K2, p2; rep from * to end. Work for 3 cm.",
    )
    return None


def last_for(
    cycle: tuple[Template, ...], duration: Duration, needles: Needles, place: Place, *, start: int
) -> None:
    """Work a cycle for a duration; rounds of it since `start` count unless the line says "more"."""
    done = len(needles.drafts) - start
    if isinstance(duration, Rounds):
        rounds = duration.number.of(needles.size) - (0 if duration.more else done)
        repeat(cycle, rounds, needles, duration.number.place, start=done)
    elif isinstance(duration, Times):
        rounds = duration.number.of(needles.size) * len(cycle) - (0 if duration.more else done)
        repeat(cycle, rounds, needles, duration.number.place, start=done)
    else:
        _to_length(cycle, duration, needles, place, start=start)


def _to_length(
    cycle: tuple[Template, ...], duration: UntilLength, needles: Needles, place: Place, *, start: int
) -> None:
    origin = start
    if duration.measured:
        origin = 0 if duration.start == "cast-on" else needles.section_start
    first = len(needles.drafts)
    rounds, target = needles.rounds_for(
        duration.length, origin=origin, measured=True, blocked=duration.blocked
    )
    if rounds <= 0:
        reached = needles.height_mm(origin) / 10
        needles.report(
            duration.length.place,
            f"the piece already measures {reached:.1f} cm here, so {duration.length.printed} is passed.",
            'Say from where it is measured, or write "for" a length instead.',
            kind="length",
        )
        return
    rounds = _ended(rounds, cycle, duration, needles, first - start)
    repeat(cycle, rounds, needles, place, start=first - start)
    last = len(needles.drafts) - 1
    if last < first or needles.fabric is None or target <= 0:
        return
    needles.stretches.append(
        Stretch(
            first=first,
            last=last,
            origin=origin,
            target_mm=target,
            rounds_per_10cm=needles.fabric.gauge.rounds,
            cycle=len(cycle),
        )
    )
    _blocking_caution(duration, needles)


def _ended(
    rounds: int, cycle: tuple[Template, ...], duration: UntilLength, needles: Needles, done: int
) -> int:
    """Move the end to the round or side that the line asks for: the nearest, never none."""
    if duration.ending is not None and len(cycle) > 1:
        wanted = duration.ending % len(cycle)
        near = [rounds + shift for shift in range(-len(cycle) // 2, len(cycle) + 1)]
        fits = [value for value in near if value >= 1 and (done + value) % len(cycle) == wanted]
        return min(fits, key=lambda value: abs(value - rounds))
    if duration.ending_side and needles.flat:
        last_side = needles.side if rounds % 2 else ("WS" if needles.side == "RS" else "RS")
        return rounds if last_side == duration.ending_side else rounds + 1
    return rounds


def _blocking_caution(duration: UntilLength, needles: Needles) -> None:
    fabric = needles.fabric
    if fabric is None or fabric.blocked is None or duration.blocked:
        return
    after = duration.length.of(needles.size) * fabric.gauge.rounds / fabric.blocked.rounds
    if abs(after - duration.length.of(needles.size)) >= 5:
        needles.warn(
            duration.length.place,
            f"{duration.length.printed} on the needles become {after / 10:.1f} cm after blocking; "
            f'write "{duration.length.printed} after blocking" if the finished length is meant.',
        )


def times_in_words(duration: Duration, needles: Needles) -> str:
    """Say how often, for a caution."""
    if isinstance(duration, Times):
        return f"{duration.number.of(needles.size)} times"
    return "so long"
