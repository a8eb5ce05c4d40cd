"""Whether the colours can be told apart, in words. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from stepper.craft.colours.colour import Rgb, contrast
from stepper.craft.colours.colour_difference import VANISHES_BELOW, WEAK_BELOW, value_difference
from stepper.craft.colours.colour_mend import HARD_BELOW
from stepper.report.colours import CALLED, PLAIN_ROUNDS, Colours, PairRow

_PAIR: Final = 26


def why_not_compared(found: Colours) -> str:
    """Return why there is nothing to compare; empty if there is something."""
    if found.unknown and not found.pairs:
        names = " and ".join(found.names.get(key, key) for key in found.unknown)
        return f'No colour is known for {names}: write colour: "#1f4d3a" beside its name, in quotes.'
    if found.pairs:
        return ""
    if not found.charts:
        return "No chart has two yarns, and no two yarns touch from round to round: nothing to compare."
    return "No two yarns touch: nothing to compare."


def pair_lines(found: Colours) -> Iterator[str]:
    """Write the table of the pairs."""
    yield f"{'yarns that touch':<{_PAIR}}{'contrast':>9}{'lightness':>11}  {'in grey':<10}hardest for"
    for pair in found.pairs:
        names = f"{found.names[pair.one]}, {found.names[pair.other]}"
        hard = "hard to tell apart" if pair.hard else "told apart"
        seen = f"{pair.hardest}: {hard}, {pair.seen_apart:.1f}"
        figures = f"{pair.contrast:>7.2f}:1{pair.lightness_apart:>11.1f}"
        yield f"{names:<{_PAIR}}{figures}  {pair.in_grey:<10}{seen}"
        yield f"  {', '.join(pair.where)}" if pair.where == (PLAIN_ROUNDS,) else f"  in {_charts(pair)}"
    for key in found.unknown:
        yield f"{found.names.get(key, key)} has no colour in the file and is left out."


def verdict_lines(found: Colours) -> Iterator[str]:
    """Write what vanishes, what would mend it, and what the figures mean."""
    for pair in found.pairs:
        names = f"{found.names[pair.one]} and {found.names[pair.other]}"
        if pair.in_grey == "vanishes":
            yield f"{names} vanish in grey."
        if pair.hard:
            yield f"{names} are hard to tell apart for {CALLED[pair.hardest]} eyes."
    yield from _mend(found)
    yield ""
    text = (
        f"Lightness is in steps of L*, 0 black to 100 white. Below {VANISHES_BELOW:g} apart a motif is said "
        f"to vanish in grey, below {WEAK_BELOW:g} to be weak. No threshold for yarn is in print; judging "
        "yarns by a grey photograph is common practice, and of pairs so judged one 8 apart was poor, one 14 "
        f"weak, one 78 strong. For other eyes a pair is called hard below {HARD_BELOW:g} of CIEDE2000. "
        "Contrast is WCAG's, whose limits are made for screens. A colour on the screen is not the yarn: look "
        "at it in daylight."
    )
    yield text


def _charts(pair: PairRow) -> str:
    charts = [each for each in pair.where if each != PLAIN_ROUNDS]
    return f"chart{'s' if len(charts) > 1 else ''} {', '.join(charts)}"


def _mend(found: Colours) -> Iterator[str]:
    lost = [pair for pair in found.pairs if pair.in_grey == "vanishes" or pair.hard]
    if not lost:
        yield "Every pair can be told apart, in grey and for other eyes."
        return
    change = found.mend
    if change is None:
        yield "No single change of one colour in its own hue would mend that; choose other yarns."
        return
    own = found.colours[change.yarn]
    way = "lighter" if _lighter(change.colour, own) else "darker"
    yield (
        f"One change would mend {'it' if not change.left else 'most'}: {found.names[change.yarn]} {way}, "
        f"{change.colour.hex} in place of {own.hex} ({change.far:.1f} away by CIEDE2000)."
    )
    for key in found.beside(change.yarn):
        apart = value_difference(change.colour, found.colours[key])
        ratio = contrast(change.colour, found.colours[key])
        yield f"  Beside {found.names[key]}: {apart:.1f} apart in lightness, contrast {ratio:.2f}:1."
    for left in change.left:
        yield f"  {found.names[left[0]]} and {found.names[left[1]]} would still be too near."


def _lighter(one: Rgb, other: Rgb) -> bool:
    return contrast(one, Rgb(0, 0, 0)) > contrast(other, Rgb(0, 0, 0))
