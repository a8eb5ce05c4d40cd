"""Put stitches on hold that a row has just worked: "K8, place these sts on a holder, bind off 12". No I/O.

The row is worked as if nothing were held. What it has worked first lies at the far end of the needle then, so
the next row works back over the stitches behind, and the others wait. How many they are is counted: all from
the beginning of the row, or from where stitches were bound off, to where the line says so. A round goes on
over those that are left, wherever the others lay: "k8, slip these sts to waste yarn" are the eight in front
of the words. Source: a neck divided in one row and the underarms of a body before its yoke, common practice.
"""

from __future__ import annotations

from stepper.craft.stitches import TURNS
from stepper.plan.drafts import Template
from stepper.plan.fabric.established import keep_held
from stepper.plan.lines.held.set_apart import part
from stepper.plan.model import Item, Run, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import WorkedPhrase
from stepper.plan.stitches.row_elements import UNNAMED, JustWorked, MisfitError, name_apart
from stepper.project.problems import Span
from stepper.project.stitchwork import Hold

_SHORT = TURNS | {"rest"}
"""Stitches of a row that does not go from one edge to the other."""


def hold_what_was_worked(worked: WorkedPhrase, template: Template, needles: Needles) -> None:
    """Put stitches of the row just worked on hold, and go on with those that the row has worked last."""
    try:
        if not needles.drafts[-1].flat:
            _hold_within_round(worked, template, needles)
            return
        others = _others(worked, template, needles)
    except MisfitError as misfit:
        needles.miss(misfit.place, misfit.message, misfit.hint)
        return
    part(needles.count - sum(number for _, number in others), others, needles)


def _hold_within_round(worked: WorkedPhrase, template: Template, needles: Needles) -> None:
    """Put stitches on hold that a round has just worked, and go on in the round over the others.

    Raises:
        MisfitError: it is not clear which they are, or they are not as many as printed.
    """
    _check_told(worked, template, flat=False)
    items: list[Item] = []
    held: dict[str, int] = {}
    markers = list(needles.markers)
    done = 0
    for one in worked.behind:
        if one.last < done:
            raise _unclear(one.hold.place, "which stitches go on hold here is not clear.")
        number = _counted(one, one.last, needles.size)
        name = name_apart(one.hold.name or UNNAMED, {*needles.held, *held})
        items += [Run("rest", one.last - done, needles.yarn)] * (one.last > done)
        items.append(Run("hold", number, name))
        markers = [mark for mark in markers if not one.last < mark < one.end]
        held[name], done = number, one.end
    left = needles.count - sum(held.values())
    if not left:
        raise _unclear(worked.behind[-1].hold.place, "all stitches of the round go on hold.")
    items += [Run("rest", needles.count - done, needles.yarn)] * (needles.count > done)
    waiting = [(one.end, one.end - one.last) for one in worked.behind]
    needles.markers = tuple(mark - sum(number for end, number in waiting if end <= mark) for mark in markers)
    keep_held(tuple(items), needles)
    needles.held.update(held)
    needles.held_by.update(dict.fromkeys(held, (needles.section.name, template.place.line)))
    needles.emit(tuple(items), left, divide=True)


def _check_told(worked: WorkedPhrase, template: Template, *, flat: bool) -> None:
    """Raise if which stitches go on hold hangs on a repeat, on others of a round, or on where it turned.

    Raises:
        MisfitError: it is not clear which they are.
    """
    place = worked.behind[0].hold.place
    told = sum(isinstance(one, Hold) and one.worked for one in template.elements)
    waits = sum(isinstance(one, Hold) and not one.worked for one in template.elements)
    if told != len(worked.behind) or waits != len(worked.held) or (worked.held and not flat):
        raise _unclear(place, "which stitches go on hold here is not clear within a repeat.")
    if any(run.stitch in _SHORT for run in flatten(worked.items)):
        raise _unclear(place, "stitches just worked go on hold only in a whole row or round.")


def _others(worked: WorkedPhrase, template: Template, needles: Needles) -> tuple[tuple[str, int], ...]:
    """Return names and stitches of the parts that wait, as the next row would come to them.

    Raises:
        MisfitError: it is not clear which they are, or they are not as many as printed.
    """
    _check_told(worked, template, flat=True)
    bounds = [0, *_parted_at(worked)]
    others: list[tuple[str, int]] = []
    done = 0
    for one in worked.behind:
        start = max((bound for bound in (*bounds, done) if bound < one.end), default=0)
        if start != done:
            raise _unclear(
                one.hold.place,
                f"the line holds stitches behind the {start - done} before them, which nobody works then.",
            )
        number = _counted(one, start, needles.size)
        taken = {*needles.held, *(name for name, _ in others)}
        others.append((name_apart(one.hold.name or UNNAMED, taken), number))
        done = one.end
    if done > worked.after or (done == worked.after and not worked.held):
        raise _unclear(
            worked.behind[-1].hold.place, "all stitches of the row go on hold, and none are worked behind."
        )
    return tuple(reversed(others))


def _counted(one: JustWorked, start: int, size: int) -> int:
    """Return how many stitches go on hold.

    Raises:
        MisfitError: there are none, or not as many as printed, or it may be fewer.
    """
    number, said = one.end - start, one.hold.times
    if said is not None and said.of(size) != number:
        raise _unclear(
            one.hold.place,
            f"{said.of(size)} stitches go on hold of the {number} that the row has worked there.",
        )
    if number < 1 or (said is None and one.last > start):
        raise _unclear(one.hold.place, "the line does not say how many of its stitches go on hold.")
    return number


def _unclear(place: Span, told: str) -> MisfitError:
    return MisfitError(
        place, told, 'Hold them at the end of the next row: "P11, hold 11 for right shoulder."'
    )


def _parted_at(worked: WorkedPhrase) -> list[int]:
    """Return where the row bound off stitches or left some waiting. Unit: stitches it had made there."""
    made, at = 0, []
    for run in flatten(worked.items):
        if run.stitch in ("bo", "hold"):
            at.append(made)
            continue
        made += run.leaves
    return at
