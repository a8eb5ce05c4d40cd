"""Where a length is measured from: an edge, the underarm, an armhole or the end of a rib. No I/O.

It is long because each place that print measures from has a rule of its own, and one line is asked of all.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from stepper.craft.gauge import half_up
from stepper.plan.drafts import DraftRound
from stepper.plan.model import flatten
from stepper.plan.state.foot_places import FootBegin, foot_begun, heel_begun
from stepper.plan.state.held_below import height_of, piece_begun, rows_below
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilLength, UntilLike
from stepper.project.pairs import without_copy
from stepper.project.problems import one_of
from stepper.regex import regex

_IN_ONE_PIECE = frozenset({"piece", "work", "shawl", "cowl", "scarf", "wrap", "blanket"})
_NUMBERED = regex(r"(?:section|part|clue|stage)\s+(?:\w{1,5})\b", re.I)
"""The name of a section by its number: one of a piece that is worked on."""
_FROM_ELSEWHERE = 'Measure from the cast-on edge, or write "for" and the length worked from here.'


def measured_from(duration: UntilLength, needles: Needles) -> int:
    """Return the index of the draft from whose beginning a length is measured.

    A piece begins where stitches come onto empty needles, so "from cast-on" is the cast-on of this piece, and
    a section with two pieces is measured from the second.
    """
    piece = piece_begun(needles)
    if duration.start == "piece":
        return piece
    if duration.start in ("heel", "foot"):
        foot = _foot_begun(duration, needles, piece)
        return foot.origin if foot is not None else piece
    if duration.start == "armhole edge":
        return _along_armhole(duration, needles, piece)
    ways = {"divide": _divide, "marked": _marked, "picked up": _picked_up}
    if duration.start in ways:
        return ways[duration.start](duration, needles, piece)
    if duration.start.startswith(("beg ", "end ")):
        return _named(duration, needles, piece)
    if duration.start == "flap" and needles.last.apart > max(needles.section.start, piece):
        needles.warn(duration.length.place, "measured from the row that set the other stitches aside.")
        return needles.last.apart
    if duration.start == "section" and needles.last.measured > max(needles.section.start, piece):
        return needles.last.measured
    rib = _rib_begun(needles, piece) if duration.of in ("rib", "ribbing") else None
    if duration.start == "section" and rib is not None:
        return rib
    if duration.start == "section" and duration.of in _IN_ONE_PIECE and _NUMBERED.match(needles.section.name):
        return piece
    if duration.start == "section" and duration.of in _WHOLE and ", " in without_copy(needles.section.name):
        return _piece_of_sections(needles, piece)
    if duration.start != "cast-on":
        return _behind_another_section(duration, needles, piece)
    taken_back = _begins_with(needles, piece, "return") and not _begins_with(needles, piece, "co")
    if taken_back and not rows_below(needles, piece):
        needles.report(
            duration.length.place,
            "these stitches came back from hold, so this piece has no cast-on edge to measure from.",
            'Say the length from where they came back: leave out "from cast-on edge".',
            kind="length",
        )
    return piece


def _rib_begun(needles: Needles, piece: int) -> int | None:
    """Return where the rib in hand begins, as "until rib measures 5 cm" leaves out what lies below it.

    None where the last rows are ribbed in part, as those of a broken rib: they may all belong to it.
    """
    at = len(needles.drafts)
    while at > piece and (is_rib(needles.drafts[at - 1]) or not needles.drafts[at - 1].before):
        at -= 1
    near = needles.drafts[max(piece, at - _EVEN) : at]
    return None if at == len(needles.drafts) and any(map(is_rib, near)) else at


def _piece_of_sections(needles: Needles, piece: int) -> int:
    """Return where the piece begins that the section in hand is a part of, as "right mitten, gusset" is.

    "Until piece measures 18 cm" below such a heading means the mitten and not its gusset alone.
    """
    name = needles.section.name.partition(", ")[0]
    here = max(needles.section.start, piece)
    own = (at for at in range(piece, here) if needles.drafts[at].section.partition(", ")[0] == name)
    return next(own, here)


def _along_armhole(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return where an armhole edge begins: at the armhole, or in a piece worked downwards with the piece.

    From the shoulder down nothing is bound off before the edge ends, and short rows add no length.
    """
    armhole = stretch_named("armhole", needles, range(piece, len(needles.drafts)))
    begun = piece if armhole is None else armhole[0]
    what = "the piece begins, as no armhole was shaped yet" if armhole is None else "the armhole begins"
    needles.warn(duration.length.place, f"along the armhole edge: measured from where {what}.")
    return begun


def _behind_another_section(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return where a piece is measured from below the heading of a section; what that leaves open is told.

    "Until piece measures 30 cm" means all of it, from its cast-on edge, unless the section cast on or picked
    up its own stitches, or others went on hold since: there a piece begins for the knitter, too. A section
    that bears the name of what is measured is measured alone, and so is one behind rows that are longer
    already. Source: common practice.
    """
    here = max(needles.section.start, piece)
    if duration.start != "section" or (duration.of and duration.of in needles.section.name.lower()):
        return here
    before = needles.drafts[piece:here]
    parted = any(draft.codes & {"hold", "return", "pu"} for draft in before)
    parted = parted or _begins_with(needles, here, "return", "pu")
    reached = sum(draft.height_mm for draft in before)
    if parted or reached <= 0:
        return here
    unit, mm = ("in", 25.4) if needles.project.units == "in" else ("cm", 10)
    name, long = without_copy(needles.section.name), f"{reached / mm:.1f} {unit}"
    if duration.of in _WHOLE and duration.length.of(needles.size) > reached:
        told = f'measured from the cast-on edge, {long} before "{name}"'
        needles.warn(duration.length.place, f'{told}; write "for" and the length if only this part is meant.')
        return piece
    told = f'measured from the beginning of "{name}", {long} behind the cast-on'
    needles.warn(duration.length.place, f'{told}; write "from cast-on edge" if all of it is meant.')
    return here


def without_heel(duration: UntilLength, needles: Needles) -> UntilLength:
    """Return a length without what the short rows of a heel or toe add along the sole; tell the knitter."""
    if duration.start not in ("heel", "foot"):
        return duration
    foot = _foot_begun(duration, needles, piece_begun(needles))
    if foot is None:
        told = "no heel was turned in this piece so far, so nobody can tell where its back is."
        needles.report(duration.length.place, told, _FROM_ELSEWHERE, kind="length")
        return duration
    if foot.told:
        needles.warn(duration.length.place, foot.told)
    return _shorter(duration, foot.more_mm)


def _shorter(duration: UntilLength, by_mm: float) -> UntilLength:
    values = tuple(value - by_mm for value in duration.length.values)
    return replace(duration, length=replace(duration.length, values=values))


def without_held(duration: UntilLength, needles: Needles) -> UntilLength:
    """Return a length without the rows below stitches that came back from hold, where it counts them."""
    piece = piece_begun(needles)
    below = rows_below(needles, piece) if duration.measured else ()
    height = height_of(needles, below)
    if not height:
        return duration
    if duration.start == "cast-on" and not _begins_with(needles, piece, "co"):
        rows = sum(1 for at in below if needles.drafts[at].height_mm)
        told = f"the {rows} rows below the stitches that came back from hold count."
        needles.warn(duration.length.place, told)
        return _shorter(duration, height)
    opened = _opened_below(duration, needles, piece)
    if opened is not None:
        return _shorter(duration, height_of(needles, [at for at in below if at >= opened]))
    whole = duration.start in ("section", "piece") and (
        duration.of in ("", *_WHOLE) or duration.of in needles.section.name.lower()
    )
    if whole and duration.length.of(needles.size) > height:
        needles.report(
            duration.length.place,
            "these stitches came back from hold, and nobody can tell whether the rows below them count.",
            'Write "from cast-on edge" if they do, or "for" and the length worked from here.',
            kind="length",
        )
    return duration


def _opened_below(duration: UntilLength, needles: Needles, piece: int) -> int | None:
    """Return the draft where an armhole was opened before the stitches of the piece went on hold."""
    which, _, name = duration.start.partition(" ")
    if which != "beg" or _stem(name) not in ("armhole", "underarm"):
        return None
    if stretch_named(name, needles, range(piece, len(needles.drafts))) is not None:
        return None
    found = stretch_named(name, needles, rows_below(needles, piece))
    return found[0] if found is not None else None


def _foot_begun(duration: UntilLength, needles: Needles, piece: int) -> FootBegin | None:
    """Return where the foot begins; None if the line measures from a heel that was not turned."""
    return heel_begun(needles, piece) if duration.start == "heel" else foot_begun(needles, piece)


def _divide(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return the index of the draft after the one that put stitches on hold for other parts.

    A sleeve taken off hold or picked up has its underarm where it begins.
    """
    held = [at for at in range(piece, len(needles.drafts)) if needles.drafts[at].divide]
    if held:
        return held[-1] + 1
    if _begins_with(needles, piece, "return", "pu"):
        return piece
    needles.report(
        duration.length.place,
        "no stitches of this piece were put on hold, so nobody can tell where the underarm is.",
        _FROM_ELSEWHERE,
        kind="length",
    )
    return piece


def _begins_with(needles: Needles, piece: int, *codes: str) -> bool:
    """Return whether the first row of a piece takes stitches back, or picks some up."""
    return any(draft.codes & {*codes} for draft in needles.drafts[piece : piece + 1])


def _marked(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return the index after the draft of the piece into which marks were hung."""
    if needles.last.marked > piece:
        return needles.last.marked
    needles.report(
        duration.length.place,
        "no row of this piece was marked to measure from.",
        'Write "Place markers at each end of last row" behind that row.',
        kind="length",
    )
    return piece


def _picked_up(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return the index after the draft of the piece in which stitches were last picked up."""
    for at in range(len(needles.drafts) - 1, piece - 1, -1):
        if "pu" in needles.drafts[at].codes:
            return at + 1
    needles.report(
        duration.length.place,
        "no stitches of this piece were picked up, so it has no such edge to measure from.",
        "Measure from the cast-on edge.",
        kind="length",
    )
    return piece


def _named(duration: UntilLength, needles: Needles, piece: int) -> int:
    """Return the draft where a named stretch begins, or the one after its end.

    It consists of the rows whose line, label or section bears the name; a rib is also known by its stitches,
    and an armhole that no line names begins where stitches were first bound off at an edge or put on hold.
    """
    which, name = duration.start.split(" ", 1)
    found = stretch_named(name, needles, range(piece, len(needles.drafts)))
    opened = which == "beg" and _stem(name) in ("armhole", "underarm")
    below = _opened_below(duration, needles, piece)
    if below is not None:
        line = needles.drafts[below].line
        told = f"measured from the beginning of line {line}, before the stitches were held."
        needles.warn(duration.length.place, f"{name}: {told}")
        return piece
    if found is None and opened and _begins_with(needles, piece, "return"):
        told = "measured from where the stitches came back from hold, as it was opened when they went there."
        needles.warn(duration.length.place, f"{name}: {told}")
        return piece
    if found is None:
        needles.report(
            duration.length.place,
            f"no row of this piece so far is of the {name}, so nobody can tell where it is.",
            _FROM_ELSEWHERE,
            kind="length",
        )
        return piece
    origin = found[0] if which == "beg" else found[1]
    line = needles.drafts[found[0] if which == "beg" else found[1] - 1].line
    where = "from the beginning" if which == "beg" else "from the end"
    needles.warn(duration.length.place, f"{name}: measured {where} of line {line}.")
    return origin


_WHOLE = ("piece", "work", "knitting", "it")
"""Words for all of what is on the needles."""
_SHAPED = ("armhole", "underarm", "shoulder", "neck", "raglan")
"""Places that are made by shaping: rows that change no stitches do not belong to them."""


def stretch_named(name: str, needles: Needles, drafts: Sequence[int]) -> tuple[int, int] | None:
    """Find the first stretch of rows that a name refers to.

    Args:
        name: What is looked for: `rib`, `cuff`, `armhole`.
        needles: The knitting in hand.
        drafts: Indices of the drafts looked through.

    Returns:
        Index of its first draft, and the index after its last; None if there is none.
    """
    if name == "fold":
        ridge = _only_ridge(needles, drafts)
        return None if ridge is None else (ridge, ridge + 1)
    texts = needles.project.line_texts
    word = re.compile(rf"\b{re.escape(_stem(name))}", re.I)
    rib = _stem(name) == "rib"
    own = [
        at
        for at in drafts
        if needles.drafts[at].before
        and (
            word.search(texts.get(needles.drafts[at].line, ""))
            or word.search(needles.drafts[at].section)
            or (rib and is_rib(needles.drafts[at]))
        )
    ]
    if _stem(name) in _SHAPED:  # a line may speak of the armhole that comes after it, and shape none
        opened = [at for at in drafts if _opens_armhole(needles.drafts[at])]
        own = [at for at in own if needles.drafts[at].before != needles.drafts[at].after]
        own = [at for at in own if at in opened] or own
        if _stem(name) in ("armhole", "underarm"):
            own = _with_bound_off(own, opened) if own else opened
    if not own:
        return None
    end = own[0]
    while end in drafts and end in own:
        end += 1
    return own[0], end


def _only_ridge(needles: Needles, drafts: Sequence[int]) -> int | None:
    """Return the one purled ridge of a piece, at which a hem is folded; None if it has none, or more."""
    ridges = [at for at in drafts if _is_ridge(needles.drafts[at])]
    return ridges[0] if len(ridges) == 1 else None


def _is_ridge(draft: DraftRound) -> bool:
    """Return whether a row shows purl stitches throughout on the right side, and works nothing else."""
    purled = "k" if draft.flat and draft.side == "WS" else "p"
    return bool(draft.before) and draft.codes == {purled}


_EVEN = 8
"""Rows worked even that end a shaping. Chosen here: armholes are shaped in every sixth row at the most."""


def last_shaped(name: str, needles: Needles, drafts: range) -> int | None:
    """Return the last row of a shaping at the edges, as of the armholes; None if none is of that name.

    It goes on over the rows between that are worked even, up to a row of the neck or the shoulders, or to
    where the piece is divided.
    """
    stretch = stretch_named(name, needles, drafts)
    if stretch is None or _stem(name) not in ("armhole", "underarm", "raglan"):
        return None
    last = stretch[0]
    for at in range(stretch[0], drafts.stop):
        draft = needles.drafts[at]
        other = re.search(r"\b(?:neck|shoulder)", needles.project.line_texts.get(draft.line, ""), re.I)
        if at - last >= _EVEN or draft.divide or other is not None or not draft.after:
            break
        last = at if draft.before != draft.after else last
    return last


def rib_ended(needles: Needles, drafts: range) -> int | None:
    """Return the last row of the rib with which a piece begins; None if it begins with none.

    The lines of the rib go on to their end: "rib 10 rows, inc 6 sts in last row" belongs to it.
    """
    rows = [at for at in drafts if needles.drafts[at].before]
    begun = next((number for number, at in enumerate(rows[:_RIB_BELOW]) if is_rib(needles.drafts[at])), None)
    if begun is None:
        return None
    last = rows[begun]
    for at in rows[begun:]:
        if not is_rib(needles.drafts[at]) and needles.drafts[at].line != needles.drafts[last].line:
            break
        last = at
    return last


_RIB_BELOW = 3
"""Within how many rows of its cast-on a rib begins at the edge of a piece: a row or two stand below it."""


def _with_bound_off(own: list[int], opened: list[int]) -> list[int]:
    """Return the rows of an armhole with those right before them that bind off for it and do not say so.

    "BO 4 sts at beg of next 2 rows. Dec 1 st at armhole edge …": it begins with the stitches bound off.
    """
    first = own[0]
    while before := [at for at in opened if first - 2 <= at < first]:
        first = before[0]
    return [*range(first, own[0]), *own]


def _stem(name: str) -> str:
    """Return a name without its additions: `armhole shaping`, `ribbing`."""
    words = re.sub(r"\s+(?:shapings?|section|edge|border|band)$", "", name.lower())
    return re.sub(r"^ribbing$", "rib", words).removesuffix("s")


def is_rib(draft: DraftRound) -> bool:
    """Return whether a row is ribbed: knit and purl in turn, twisted or not, the first perhaps slipped."""
    runs = [run for run in flatten(draft.phrase) if run.uses]
    runs = runs[1:] if runs and runs[0].stitch.startswith("sl") and runs[0].times == 1 else runs
    if len(runs) < 4 or draft.before != draft.after:
        return False
    plain = {run.stitch.removesuffix(" tbl") for run in runs}
    return plain == {"k", "p"} and all(run.times <= 5 for run in runs)


def _opens_armhole(draft: DraftRound) -> bool:
    """Return whether a row binds off at an edge, or puts stitches on hold for both sleeves.

    In rows one stretch on hold is the other side of the neck.
    """
    first = next((run for run in flatten(draft.phrase) if run.uses), None)
    held = sum(run.stitch == "hold" for run in flatten(draft.phrase))
    return held > (1 if draft.flat else 0) or (first is not None and first.stitch == "bo" and draft.after > 0)


def like_another(duration: UntilLike, needles: Needles) -> int:
    """Return the rounds still to work until the piece is as long as another part up to a given place."""
    drafts = needles.drafts
    own = piece_begun(needles)
    if duration.part == FIRST_SIDE:
        return _like_first_side(duration, needles)
    part = [at for at in range(own) if drafts[at].section.lower() == duration.part]
    if not part:
        known = one_of(dict.fromkeys(draft.section for draft in drafts[:own])) or "none"
        told = f'no part called "{duration.part}" was worked before this one.'
        needles.miss(duration.place, told, f"The parts so far are {known}.", anywhere=True)
        return 0
    found = first_row_of(duration, part, needles)
    if found is None:
        told = f"no row of the {duration.part} is of the {duration.upto}, so nobody can tell how long it is."
        needles.report(duration.place, told, "Write the length itself.", kind="length")
        return 0
    target = sum(draft.height_mm for draft in drafts[part[0] : found])
    done = needles.height_mm(own) + height_of(needles, rows_below(needles, own))
    rounds = half_up((target - done) * needles.fabric.gauge.rounds / 100)
    rounds -= 0 if duration.fewer is None else duration.fewer.of(needles.size)
    if rounds < 1:
        needles.report(duration.place, "the piece is as long already.", kind="length")
        return 0
    return rounds


FIRST_SIDE = "first side"
"""What a line calls the side of a piece that was worked before this one."""


def _like_first_side(duration: UntilLike, needles: Needles) -> int:
    """Return the rows still to work until this side has as many as the first; 0, reported, if unknown.

    Its rows are those from where the other was put on hold. It has to end at once, held or bound off: where
    its shoulder has steps, nobody can tell where in them this side is to end.
    """
    drafts = needles.drafts
    back = next((at for at in range(len(drafts) - 1, -1, -1) if "return" in drafts[at].codes), None)
    divides = (at for at in range((back or 0) - 1, -1, -1) if drafts[at].divide and drafts[at].after)
    parted = next(divides, None)
    if back is None or parted is None or drafts[parted].section != drafts[back].section:
        told = "no first side of this part is known, that begins where the other is put on hold."
        needles.miss(duration.place, told, "Write the length itself.", anywhere=True)
        return 0
    parted += drafts[parted].codes == {"rest", "hold"}
    first = [draft for draft in drafts[parted:back] if draft.before]
    first = first[:-1] if first and not first[-1].after else first
    steps = [draft for draft in first[-_STRAIGHT:] if _bound_off_at_beginning(draft)]
    rows = len(first) - (len(drafts) - back - 1)
    if steps or rows < 1 or not all(draft.flat for draft in first):
        why = "its last rows bind off stitches" if steps else "this side is as long already"
        told = f"the first side does not tell how many rows come here: {why}."
        needles.report(duration.place, told, "Write the length itself.", kind="length")
        return 0
    needles.warn(duration.place, f"the first side has {len(first)} rows from where the other was held.")
    return rows


def first_row_of(duration: UntilLike, part: Sequence[int], needles: Needles) -> int | None:
    """Return the row of another part that is the first of its armholes or shoulders; tell how it was found.

    Args:
        duration: Where in that part a line ends.
        part: Indices of its drafts.
        needles: The knitting in hand.

    Returns:
        Index of its draft; None if nobody can tell.
    """
    found = stretch_named(duration.upto, needles, range(part[0], part[-1] + 1))
    if found is not None:
        return found[0]
    if _stem(duration.upto) != "shoulder":
        return None
    if _ends_straight(part, needles):
        told = f"the {duration.part} is bound off at once: its length up to there is taken."
        needles.warn(duration.place, told)
        return part[-1]
    step = _shoulder_step(part, needles)
    if step is not None:
        line = needles.drafts[step].line
        told = f"the {duration.part} is taken to bind off its shoulders from line {line} on."
        needles.warn(duration.place, told)
    return step


_STRAIGHT = 6
"""Rows before a bind-off where a shoulder would have steps: common practice, in every other row."""
_STEP = 2
"""Rows from one step of a shoulder to the next at most."""
_SHOULDERS = 2
"""Shoulders of a back, each bound off on a row of its own at the least."""


def _ends_straight(part: Sequence[int], needles: Needles) -> bool:
    """Return whether a part is one piece whose last row binds off all of it, with no shoulder or neck before.

    What was bound off before is at the beginning of rows, as for armholes, and well below the last row.
    """
    rows = [needles.drafts[at] for at in part]
    worked = [[run.stitch for run in flatten(row.phrase) if run.uses or run.stitch == "bo"] for row in rows]
    moved = any(row.codes & {"hold", "return", "pu"} for row in rows)
    if moved or sum(not row.before for row in rows) != 1 or rows[0].before or rows[-1].after:
        return False
    if set(worked[-1]) != {"bo"} or any("bo" in row[1:] for row in worked[:-1]):
        return False
    last = rows[-1 - _STRAIGHT : -1]
    return len(rows) > _STRAIGHT + 1 and all(row.before == row.after for row in last)


def _shoulder_step(part: Sequence[int], needles: Needles) -> int | None:
    """Return the row of the first step of a shoulder that no row names; None if nobody can tell it.

    Common practice: the last stitches bound off at the beginning of rows are the shoulders, in steps of
    every other row, and what is left lies on hold or is bound off. The armholes come long before.
    """
    rows = [needles.drafts[at] for at in part]
    ended = [at for at, row in enumerate(rows) if row.before and not row.after]
    if ended != [len(rows) - 1] or sum(not row.before for row in rows) > 1:
        return None  # one that goes on from a body has no cast-on of its own
    off = [at for at, row in enumerate(rows) if _bound_off_at_beginning(row)]
    steps = [len(rows) - 1]
    while off and steps[-1] - off[-1] <= _STEP:
        steps.append(off.pop())
    of_both = len(steps) - 1 >= _SHOULDERS
    return part[steps[-1]] if of_both and (not off or steps[-1] - off[-1] > _STRAIGHT) else None


def _bound_off_at_beginning(row: DraftRound) -> bool:
    """Return whether a row binds off at its beginning and changes no other stitch."""
    runs = [run.stitch for run in flatten(row.phrase) if run.uses or run.stitch in ("bo", "co")]
    return row.after > 0 and runs[:1] == ["bo"] and not {"bo", "co", "hold"} & set(runs[1:])
