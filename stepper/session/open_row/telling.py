"""Tell of a row that is not read, at which the garment ends for now, and ask what it is. Pure."""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import OpenRow, Plan
from stepper.records import dataclass
from stepper.session.effects import Effect
from stepper.session.events import RowAnswered, RowSaid
from stepper.session.open_row.by_parts import PartQuestion, question_of
from stepper.session.open_row.in_parts import is_more_to_hear
from stepper.session.rules import Mode, mode_of
from stepper.session.state import OpenAnswer, OpenWork, State


@dataclass(frozen=True, slots=True, kw_only=True)
class TellOpenRow(Effect):
    """Say a row that is not read, and ask what it is."""

    row: OpenRow
    work: OpenWork
    """What is known of it."""
    brief: bool = False
    """Whether she has just heard its words."""

    @property
    def fits(self) -> bool:
        """Whether as many rows are worked as it is likely to have, so that its count may be asked for."""
        proposed = self.row.proposed
        return proposed is not None and 0 < proposed.rows == self.work.rows and proposed.printed

    @property
    def question(self) -> PartQuestion | None:
        """What is asked of its stitches; None where it is asked by its count."""
        return question_of(self.row, self.work)

    @property
    def more(self) -> bool:
        """Whether some of its words are yet to be said, so that nothing is asked."""
        return is_more_to_hear(self.row, self.work)

    @property
    def asks(self) -> bool:
        """Whether it is asked so that yes or no answers it; while she counts its rows nothing is."""
        work = self.work
        if self.more or self.question is not None:
            return not self.more
        if work.idle or work.stitches is not None:
            return True
        return self.fits if work.rows else self.row.proposed is not None and not work.declined


@dataclass(frozen=True, slots=True, kw_only=True)
class TellOpenAhead(Effect):
    """Say that behind the line that begins here the pattern goes on with a row that is not read."""

    row: OpenRow


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSettled(Effect):
    """Say that the row is kept as she answered."""


@dataclass(frozen=True, slots=True, kw_only=True)
class TellSoFar(Effect):
    """Say that what was asked is known only up to the row that is not read."""

    row: OpenRow
    known: bool
    """Whether something was told of it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SettleRow(Effect):
    """Write into the project file what the row is, and go on with the plan that follows."""

    answer: OpenAnswer


def tell_open_row(row: OpenRow, state: State, *, brief: bool = False) -> TellOpenRow:
    """Return what is told of the row where the session stands."""
    return TellOpenRow(row=row, work=state.knitting.row_said, brief=brief)


def ask_row(plan: Plan, state: State) -> Iterator[TellOpenRow]:
    """Ask once more what the row is, where the session stands at one; its words are not said again."""
    if plan.open is not None and mode_of(plan, state) is Mode.OPEN:
        yield tell_open_row(plan.open, state, brief=True)


def tell_row_said(plan: Plan, before: State, event: RowSaid, after: State) -> Iterator[Effect]:
    """Tell how much of the row is known now, and ask for the rest."""
    if plan.open is not None:
        same = before.knitting.row_said.heard == after.knitting.row_said.heard
        yield tell_open_row(plan.open, after, brief=same)


def settle_row(plan: Plan, before: State, event: RowAnswered, after: State) -> Iterator[Effect]:
    """Have the row written as she answered it."""
    yield SettleRow(answer=event.meant)


def tell_ahead(plan: Plan, index: int) -> Iterator[Effect]:
    """Tell of the row that is not read where the line above it begins: it may speak of what comes now.

    Args:
        plan: The plan as knitted.
        index: The round that is begun.
    """
    if plan.open is None or index >= len(plan.rounds) - 1:
        return  # one round: she hears the row behind it soon enough
    line = plan.rounds[index].line
    begins = not index or plan.rounds[index - 1].line != line
    if begins and all(each.line == line for each in plan.rounds[index:]):
        yield TellOpenAhead(row=plan.open)
