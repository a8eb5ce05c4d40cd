from __future__ import annotations

import random
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Group, Item, Plan, Run, flatten
from stepper.session.steps import BREATH, By, RoundSort, StepPart, cut_into_steps, part_at, rest_of, sort_of
from stepper.sitting.project_file import load_project
from tests.plans import final_increase, phrase, plan
from tests.tables import each_row

_SAMPLES = Path(__file__).parents[1] / "fixtures"


def _one(text: str) -> Plan:
    """Make a plan whose second round is `text`."""
    uses = sum(run.uses for run in flatten(phrase(text)))
    return plan(("body", [f"co{uses}" if uses else "", text]))


def _shown(text: str, by: By) -> list[tuple[int, int, tuple[Item, ...]]]:
    return [(p.start, p.end, p.items) for p in cut_into_steps(_one(text).rounds[1], by)]


def test_by_round_a_short_round_is_one_step() -> None:
    """What fits in one breath is said in one breath."""
    assert _shown("k5 m1 k5", By.ROUND) == [(0, 11, phrase("k5 m1 k5"))]


def test_by_round_a_long_round_is_said_in_breaths() -> None:
    """More than four items cannot be kept in mind, so they follow on."""
    assert _shown("k5 m1 k6 m1 k5 m1 k4", By.ROUND) == [
        (0, 13, phrase("k5 m1 k6 m1")),
        (13, 23, phrase("k5 m1 k4")),
    ]


def test_by_round_the_last_few_stitches_are_no_step_of_their_own() -> None:
    """ "... then knit six" goes with what is before it; nobody wants to be asked for it."""
    assert _shown("k1 m1 (k2 m1)x49 k1", By.ROUND) == [(0, 150, phrase("k1 m1 (k2 m1)x49 k1"))]


def test_by_round_a_repeat_stays_whole() -> None:
    """A repeat is said once with how often, never cut in the middle."""
    assert _shown("k3 (k2 k2tog k2 yo k1)x4 k3", By.ROUND) == [
        (0, 3, phrase("k3")),
        (3, 31, phrase("(k2 k2tog k2 yo k1)x4")),
        (31, 34, phrase("k3")),
    ]


def test_by_round_a_long_repeat_is_read_once_in_parts_and_then_worked_again() -> None:
    """Nine things in one breath are kept by nobody: the repeat follows on in parts, then only how often."""
    cut = cut_into_steps(_one("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x15").rounds[1], By.ROUND)

    assert [(p.start, p.end, p.repeat, p.again) for p in cut] == [
        (0, 7, (1, 15), False),
        (7, 15, None, False),
        (15, 225, None, True),
    ]
    assert cut[2].items == phrase("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x14")


def test_by_round_a_long_repeat_that_is_begun_is_read_out_to_its_end() -> None:
    """Who goes on in the middle of it hears what is left of it; at its beginning how often it is left."""
    again = cut_into_steps(_one("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x4").rounds[1], By.ROUND)[-1]
    assert rest_of(again, 30) == StepPart(
        start=30, end=60, items=phrase("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x2"), again=True
    )
    assert not rest_of(again, 31).again
    # What was not read out before is not "the same again", even where whole repeats of it are left.
    assert not rest_of(StepPart(start=15, end=60, items=again.items), 30).again


def test_by_repeat_every_repetition_is_a_step() -> None:
    """One repetition at a time, numbered, with what stands before and after it."""
    cut = cut_into_steps(_one("k3 (k2 p2)x3 k1").rounds[1], By.REPEAT)

    assert [(p.start, p.end, p.repeat) for p in cut] == [
        (0, 3, None),
        (3, 7, (1, 3)),
        (7, 11, (2, 3)),
        (11, 15, (3, 3)),
        (15, 16, None),
    ]


def test_by_repeat_a_long_one_is_read_out_once_and_called_the_same_from_the_second_on() -> None:
    """ "The same again" in front of the first would leave her with nothing to knit by; a short one is read each time, as
    it takes no longer than saying that it is the same. By hand: 7 and 8 stitches of 15, 4 of 4."""
    long = cut_into_steps(_one("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x3").rounds[1], By.REPEAT)
    assert [(part.start, part.end, part.again) for part in long] == [
        (0, 7, False), (7, 15, False), (15, 30, True), (30, 45, True),
    ]  # fmt: skip
    short = cut_into_steps(_one("(k2 p2)x3").rounds[1], By.REPEAT)
    assert [(part.start, part.end, part.again) for part in short] == [(0, 4, False), (4, 8, False), (8, 12, False)]


def test_a_repeat_worked_once_leaves_none_to_be_worked_again() -> None:
    """ "The same no times" is nothing to be said behind a long bracket that is worked only once. By hand."""
    assert _shown("(k1 p2 k2 p2 k1 p2 k2 p2 k1)x1", By.ROUND) == [
        (0, 7, phrase("k1 p2 k2 p2")),
        (7, 15, phrase("k1 p2 k2 p2 k1")),
    ]


@pytest.mark.parametrize("by", [By.REPEAT, By.COLOUR])
def test_a_long_name_of_the_place_shortens_no_step_but_the_first(by: By) -> None:
    """The section's name is said in front of the first step alone: wherever that is cut alike, so is the rest."""
    dice, alike = random.Random(7), 0
    tokens = ("k3", "k21:A", "p2:A", "m1", "k2tog", "p1", "k14", "k1:A", "p22")
    for _ in range(80):
        row = " ".join(dice.choice(tokens) for _ in range(dice.randint(2, 7)))
        text = f"k3 (k9:A {row})x{dice.randint(1, 3)} {dice.choice(tokens)}"
        before = ("before", [f"co{sum(item.uses for item in phrase(text))}"])
        short, long = (
            cut_into_steps(plan(before, (section, [text])).rounds[1], by)
            for section in ("cuff", "the left half of the back of the yoke")
        )
        if short[0] == long[0]:
            alike += 1
            assert short == long, text
    assert alike > 40


def test_by_colour_a_step_ends_where_the_yarn_changes() -> None:
    """Stitches in one yarn are one step, also across the end of a repeat."""
    assert _shown("(k2 k2:A k2)x2", By.COLOUR) == [
        (0, 2, phrase("k2")),
        (2, 4, phrase("k2:A")),
        (4, 8, phrase("k4")),
        (8, 10, phrase("k2:A")),
        (10, 12, phrase("k2")),
    ]


def test_by_marker_a_step_ends_at_each_marker() -> None:
    """Raglan lines: up to and with the marker, also a new one; what follows the last is a step."""
    assert _shown("k3 m1 pm k2 sm k4", By.MARKER) == [
        (0, 4, phrase("k3 m1 pm")),
        (4, 6, phrase("k2 sm")),
        (6, 10, phrase("k4")),
    ]


def test_by_marker_a_plain_round_is_cut_at_the_markers_it_leaves_alone() -> None:
    """A knit round between two raglan rounds names no marker; they hang there all the same."""
    raglan = plan(("yoke", ["co9", "k9"])).rounds[1]
    round_ = replace(raglan, markers=(2, 7))

    assert [(part.start, part.end) for part in cut_into_steps(round_, By.MARKER)] == [(0, 2), (2, 7), (7, 9)]
    assert all(flatten(part.items) for part in cut_into_steps(round_, By.MARKER))


def test_by_gap_each_increase_or_decrease_ends_a_numbered_step() -> None:
    """So many are left: three changes, a double one counted twice, then the plain end."""
    cut = cut_into_steps(_one("k5 m1 k3 k2tog k2tog k4").rounds[1], By.GAP)

    assert [(part.start, part.end, part.repeat) for part in cut] == [
        (0, 6, (1, 3)),
        (6, 10, (2, 3)),
        (10, 11, (3, 3)),
        (11, 15, None),
    ]
    assert [part.change for part in cut] == [True, True, True, False]


def test_a_round_is_read_out_like_those_of_its_sort() -> None:
    """Two yarns, lace, shaping, or none of these."""
    made = plan(
        ("body", ["co40", "k40", "(k1 k1:A)x20", "(k2tog yo)x20", "k2tog k36 ssk", "k38"]),
    )

    assert [sort_of(round_) for round_ in made.rounds[1:]] == [
        RoundSort.PLAIN,
        RoundSort.COLOURS,
        RoundSort.TEXTURE,
        RoundSort.SHAPING,
        RoundSort.PLAIN,
    ]


def test_markers_and_turns_go_with_the_step_in_front() -> None:
    """Two steps at the same stitch could not be told apart, so a marker is never a step of its own."""
    assert _shown("k3 m1 k4 m1 pm k2 sm k2 turn", By.ROUND) == [
        (0, 9, phrase("k3 m1 k4 m1 pm")),
        (9, 13, phrase("k2 sm k2 turn")),
    ]
    assert _shown("(sm)x1 (k2 pm)x2", By.REPEAT) == [(0, 2, phrase("sm k2 pm")), (2, 4, phrase("k2 pm"))]


def test_a_round_without_stitches_is_one_step() -> None:
    """A round of nothing but a turn still takes one cue to get past."""
    assert [(p.start, p.end) for p in cut_into_steps(plan(("body", ["turn"])).rounds[0], By.ROUND)] == [
        (0, 0)
    ]


_TOKENS = st.sampled_from(
    ["k3", "p2:A", "m1", "k2tog", "ssk:A", "pm", "yo", "2/2_rc", "kfb", "hold4:sleeve", "bo2", "co3"]
)
_GROUPS = st.builds(
    lambda inner, n: f"({' '.join(inner)})x{n}", st.lists(_TOKENS, min_size=1, max_size=5), st.integers(1, 4)
)
ROUNDS = st.lists(st.one_of(_TOKENS, _GROUPS), min_size=1, max_size=8).map(" ".join)
"""Rounds of any shape, as text."""


def _work(items: tuple[Item, ...]) -> list[tuple[str, str]]:
    return [(run.stitch, run.yarn) for run in flatten(items) for _ in range(run.times)]


@given(ROUNDS, st.sampled_from(By))
def test_the_steps_of_a_round_are_the_round(text: str, by: By) -> None:
    """However it is cut: nothing left out, nothing twice, in order, and every step but a lone one has
    stitches."""
    round_ = _one(text).rounds[1]

    cut = cut_into_steps(round_, by)

    assert [item for part in cut for item in _work(part.items)] == _work(round_.phrase)
    assert [part.start for part in cut] == [0, *(part.end for part in cut[:-1])]
    assert cut[-1].end == round_.progress
    assert len(cut) == 1 or all(part.start < part.end for part in cut)


@given(ROUNDS, st.sampled_from(By), st.data())
def test_every_place_lies_in_one_step(text: str, by: By, data: st.DataObject) -> None:
    """From the stitches alone it follows which step is in hand, whatever was in hand before."""
    round_ = _one(text).rounds[1]
    place = data.draw(st.integers(0, max(0, round_.progress - 1)))

    part = part_at(cut_into_steps(round_, by), place)

    assert part.start <= place < max(part.end, 1)


@given(ROUNDS, st.sampled_from(By), st.data())
def test_the_rest_of_a_step_is_its_end(text: str, by: By, data: st.DataObject) -> None:
    """What is left after some stitches is exactly the last stitches of the step, a begun stitch made
    again."""
    round_ = _one(text).rounds[1]
    place = data.draw(st.integers(0, max(0, round_.progress - 1)))
    part = part_at(cut_into_steps(round_, by), place)

    left, whole = _work(rest_of(part, place).items), _work(part.items)

    assert whole[len(whole) - len(left) :] == left
    assert rest_of(part, place).end == part.end


def test_the_rest_of_a_repeat_keeps_its_repeats() -> None:
    """In the middle of a repeat it is first finished and then the others are said as repeats."""
    part = cut_into_steps(_one("(k2 p2)x10").rounds[1], By.ROUND)[0]

    assert rest_of(part, 5).items == (Run("k", 1, "MC"), Run("p", 2, "MC"), Group(phrase("k2 p2"), 8))
    assert rest_of(part, 36).items == phrase("k2 p2")


@each_row("index", range(1, len(final_increase().rounds)))
def test_a_breath_is_no_longer_than_four_items(index: int) -> None:
    """Unless one repeat alone is longer, no step of the sample asks more than memory holds."""

    def length(part: StepPart) -> int:
        items = part.items[:-1] if isinstance(part.items[-1], Run) else part.items  # a last plain end is free
        return sum(len(item.items) if isinstance(item, Group) else 1 for item in items)

    for part in cut_into_steps(final_increase().rounds[index], By.ROUND):
        assert length(part) <= BREATH or len(part.items) == 1


@pytest.mark.parametrize("path", sorted(_SAMPLES.glob("*.yaml")), ids=lambda path: path.stem)
def test_no_step_of_a_sample_holds_more_than_a_breath(path: Path) -> None:
    """Four things and a last plain end, markers and turns apart; a long repeat comes back as how often."""
    for round_ in load_project(path).plan.rounds:
        for part in cut_into_steps(round_, By.ROUND):
            worked = [run for item in part.items for run in _once(item) if run.progress]
            assert part.again or len(worked) <= BREATH + 1, (round_.section, round_.number, part.items)


def _once(item: Item) -> list[Run]:
    return [item] if isinstance(item, Run) else [run for inner in item.items for run in _once(inner)]


def test_a_run_that_ends_at_a_marker_ends_there() -> None:
    """No stitches are left of it for the section behind; "knit none" is nothing to be said. By hand, markers that the
    round does not name after the fourth and the eighth stitch."""
    body = plan(("body", ["co12", ("k4 p6 k2", {"markers": (4, 8)})]))
    parts = cut_into_steps(body.rounds[1], By.MARKER)
    assert [(part.start, part.end, part.items) for part in parts] == [
        (0, 4, phrase("k4")),
        (4, 8, phrase("p4")),
        (8, 12, phrase("p2 k2")),
    ]


def test_a_bead_behind_a_marker_belongs_to_the_stitch_behind_it() -> None:
    """It is no stitch and ends no section; a step of a bead alone would have nothing to knit."""
    beaded = plan(("body", ["co8", ("k4 bead p4", {"markers": (4,)})]))
    parts = cut_into_steps(beaded.rounds[1], By.MARKER)
    assert [(part.start, part.end, part.items) for part in parts] == [
        (0, 4, phrase("k4")),
        (4, 8, phrase("bead p4")),
    ]


@pytest.mark.parametrize("by", list(By))
def test_a_row_in_own_words_is_one_step(by: By) -> None:
    """Where in the words a marker or a stitch comes nobody can tell, so it is never cut."""
    own = replace(_one("k96").rounds[-1], phrase=(Run("own", 96, "MC"),), words="twist it", markers=(10, 40))
    (step,) = cut_into_steps(own, by)
    assert (step.start, step.end, step.items) == (0, own.progress, own.phrase)


@pytest.mark.parametrize("by", By)
def test_no_step_asks_for_a_cue_where_the_hands_do_nothing(by: By) -> None:
    """Behind the turn of a short row some stitches are left unworked: that is said with the turn. As a step of its own it
    took a cue in each row of a heel for nothing."""
    rounds = load_project(_SAMPLES / "socks.yaml").plan.rounds
    waiting = [round_ for round_ in rounds if any(run.stitch == "rest" for run in round_.runs)]
    assert waiting
    for round_ in waiting:
        for part in cut_into_steps(round_, by):
            worked = [run for run in flatten(part.items) if run.progress]
            assert any(run.stitch != "rest" for run in worked), (round_.section, round_.number)
