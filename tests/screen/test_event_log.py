from __future__ import annotations

import pytest

from stepper.screen.event_log import find_way_back, list_entries
from stepper.session.cues import AtStitch, GoTo, Redo, Undo
from stepper.session.events import EVENTS
from tests.screen.scenes import Desk, garment
from tests.session.samples import of_kind
from tests.tables import each_row


def _history(desk: Desk) -> list[str]:
    return [
        f"{entry.what}{'' if entry.stands else ' (taken back)'}"
        for entry in list_entries(desk.events, desk.plan)
    ]


def test_the_journal_reads_as_what_was_done() -> None:
    """The latest first; what was taken back is still there and says so."""
    desk = Desk().do("next", "count is 60", "next", "undo that", "make a note soft", "pine weighs 42 g")

    assert _history(desk) == [
        "pine weighed 42 g",
        "note: soft",
        "done: Neckband, round 2 of 3 (taken back)",
        "counted 60: as it should be",
        "done: Neckband, round 1 of 3",
        "sat down to knit",
    ]


@each_row("kind", EVENTS)
def test_every_kind_of_event_has_words(kind: type) -> None:
    """Also where the place it names is not in the plan any more."""
    from hypothesis import given, settings

    @settings(max_examples=15)
    @given(of_kind(kind))
    def told(event: object) -> None:
        for entry in list_entries([(1, event)], garment()):  # type: ignore[list-item] # of that kind
            assert entry.what

    told()


@pytest.mark.parametrize("target", range(6))
def test_going_back_leads_to_just_after_the_entry(target: int) -> None:
    """To every point of an evening: the state is the one that stood there then."""
    cues = ["next", "count is 60", "stitch 9", "next", "by repeat", "make a note soft"]
    then = Desk().do(*cues[: target + 1])
    desk = Desk().do(*cues)
    history = list_entries(desk.events, desk.plan)
    entry = next(each for each in history if each.seq == target + 2)  # the opening is the first

    desk.do(*find_way_back(entry, history, desk.plan, desk.state))

    assert desk.state.knitting == then.state.knitting
    assert len(desk.events) > len(cues)


def test_what_was_taken_back_last_can_be_gone_forward_to() -> None:
    """Nothing is lost by going back."""
    desk = Desk().do("next", "next", "next", "undo that", "undo that")
    history = list_entries(desk.events, desk.plan)

    assert list(find_way_back(history[0], history, desk.plan, desk.state)) == [Redo(), Redo()]
    assert list(find_way_back(history[1], history, desk.plan, desk.state)) == [Redo()]
    desk.do(Redo(), Redo())
    history = list_entries(desk.events, desk.plan)
    assert list(find_way_back(history[-1], history, desk.plan, desk.state)) == [Undo(), Undo(), Undo()]
    assert list(find_way_back(history[0], history, desk.plan, desk.state)) == []


def test_what_was_overtaken_is_gone_to_as_a_place() -> None:
    """Taken back and something else done since: no redo leads there, a jump does."""
    desk = Desk().do("next", "next", "stitch 9", "undo that", "undo that", "count is 60")
    history = list_entries(desk.events, desk.plan)
    overtaken = next(entry for entry in history if entry.what.startswith("place set"))
    way = find_way_back(overtaken, history, desk.plan, desk.state)

    assert list(way) == [GoTo(round_number=3, place="neckband"), AtStitch(stitch=9)]
    desk.do(*way)
    assert (desk.state.place.index, desk.state.place.stitch) == (2, 9)


def test_a_time_that_is_none_is_left_out() -> None:
    """A damaged entry is no reason to fail."""
    desk = Desk()
    entry = list_entries(desk.events, desk.plan)[0]

    assert (entry.day, entry.clock) == ("03.03.", "20:15")
