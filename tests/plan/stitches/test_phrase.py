"""A written-out round fits the stitches, or says why not."""

from __future__ import annotations

import pytest

from stepper.plan.model import Run
from stepper.plan.stitches.phrase import WorkedPhrase, work_phrase
from stepper.plan.stitches.round_sources import RoundSources
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.row_facing import face
from stepper.plan.stitches.run_repeats import laid_flat
from stepper.project.instructions import Phrase
from stepper.project.problems import Span
from tests.plan.test_compile import faults, plan_of
from tests.project.reading.test_wording import only
from tests.project.samples import project

HERE = Span(line=1, column=1)


def work(text: str, count: int, *, size: int = 0, markers: tuple[int, ...] = ()) -> WorkedPhrase:
    """Work a printed round on so many stitches."""
    sentence = only(text)
    assert isinstance(sentence, Phrase)
    plain = RoundSources(look=lambda _: (("k", ""),) * count)
    facing = face(count=count, flat=True, side="RS", markers=markers)
    return work_phrase(
        sentence.elements, count=count, size=size, yarn="MC", place=HERE, facing=facing, supplies=plain
    )


def flat(text: str, count: int, **more: int) -> list[tuple[str, int]]:
    """Return the runs of a worked round."""
    return [(run.stitch, run.times) for run in laid_flat(work(text, count, **more).items)]


@pytest.mark.parametrize(
    ("text", "count", "after"),
    [
        # Source: worked by hand; k2tog and ssk use two and leave one, yo and m1 leave one (check-values 1.6).
        ("K1, k2tog, k to last 3 sts, ssk, k1.", 60, 58),
        ("[k6, m1] 12 times.", 72, 84),
        ("(k1, yo) 3 times, k to end.", 20, 23),
        ("*k4, k2tog; rep from * to end.", 72, 60),
        ("*k2, yo, k2tog; rep from * to last 3 sts, k3.", 43, 43),
        ("*k1, k2tog; rep from *, k2.", 20, 14),
        ("K34, hold 46 for left sleeve, cast on 8, k to end.", 200, 162),
        ("Bind off 5 sts, k to end.", 50, 45),
        ("2/2 RC, k4.", 8, 8),
    ],
)
def test_a_round_leaves_what_its_stitches_leave(text: str, count: int, after: int) -> None:
    """The whole arithmetic of a line."""
    assert work(text, count).after == after


@pytest.mark.parametrize("count", [8, 100, 168])
def test_a_two_by_two_rib_fits_a_multiple_of_four(count: int) -> None:
    """Source: 2x2 rib in the round is a multiple of 4 (check-values 6.1, published; 168 works)."""
    assert work("*K2, p2; rep from * to end.", count).after == count


@pytest.mark.parametrize("count", [169, 18, 102])
def test_a_two_by_two_rib_does_not_fit_any_other_number(count: int) -> None:
    """Source: 169 fails (6.1, published); 18 is even and fails in the round (6.4, a published error)."""
    with pytest.raises(MisfitError, match="does not divide") as caught:
        work("*K2, p2; rep from * to end.", count)
    assert str(count - count % 4) in caught.value.hint


@pytest.mark.parametrize(("text", "multiple"), [("*k1, p1; rep from * to end.", 2), ("*k2, p1; rep from * to end.", 3), ("*k3, p3; rep from * to end.", 6)])
def test_other_ribs_fit_their_own_multiples(text: str, multiple: int) -> None:
    """Source: 1x1, 2x1 and 3x3 rib in the round (check-values 6.3, published)."""
    for count in range(multiple, 60):
        if count % multiple == 0:
            assert work(text, count).after == count
        else:
            with pytest.raises(MisfitError):
                work(text, count)


def test_a_size_takes_its_own_number() -> None:
    """`k34 (36, …)` is 36 in the second size."""
    assert flat("K34 (36, 40, 43, 47, 49), p to end.", 50, size=1) == [("k", 36), ("p", 14)]


def test_stitches_left_over_are_a_problem_with_a_remedy() -> None:
    """A line that stops short leaves the knitter in the middle of a round."""
    with pytest.raises(MisfitError, match="4 are left over") as caught:
        work("K2, p2.", 8)
    assert "rep from *" in caught.value.hint


def test_more_stitches_than_there_are_cannot_be_worked() -> None:
    """The message names what is left at that place."""
    with pytest.raises(MisfitError, match="needs 34 stitches; 20 of the 20"):
        work("K34, k to end.", 20)


def test_markers_move_with_the_stitches_before_them() -> None:
    """Two increases before a marker put it two stitches on."""
    assert work("[k5, m1] 2 times, k to end.", 20, markers=(10,)).markers == (12,)


def test_raglan_shaping_finds_its_markers() -> None:
    """`k to 1 st before marker, m1r, k1, sm, k1, m1l` keeps one stitch on each side of the marker."""
    worked = work("K to 1 st before marker, m1r, k1, sm, k1, m1l, k to end.", 20, markers=(10,))
    assert worked.after == 22
    assert worked.markers == (11,)
    runs = [(run.stitch, run.times) for run in laid_flat(worked.items)]
    assert runs == [("k", 9), ("m1r", 1), ("k", 1), ("sm", 1), ("k", 1), ("m1l", 1), ("k", 9)]


def test_a_marker_that_is_not_there_cannot_be_slipped() -> None:
    """The message says how far the next one is."""
    with pytest.raises(MisfitError, match="the next is 5 stitches on"):
        work("K5, sm, k to end.", 20, markers=(10,))
    with pytest.raises(MisfitError, match="no marker"):
        work("K to marker, k to end.", 20)


def test_a_repeat_that_uses_nothing_never_ends() -> None:
    """`*yo; rep from * to end` would go on for ever."""
    with pytest.raises(MisfitError, match="never end"):
        work("*yo; rep from * to end.", 20)


def test_casting_on_alone_leaves_the_rest_unworked() -> None:
    """Stitches that only come or go do not ask for the rest of the round."""
    assert flat("Cast on 8 sts.", 12) == [("co", 8), ("rest", 12)]
    assert laid_flat(work("Cast on 8 sts.", 0).items) == (Run("co", 8, "MC"),)


@pytest.mark.parametrize("line", ["BO 5 sts for armhole.", "Bind off 5 sts.", "Cast off 5 sts for the neck."])
def test_a_row_that_only_binds_off_at_its_beginning_goes_on_to_its_end(line: str) -> None:
    """The other 15 stitches are worked as they look, which the line is told to assume."""
    assert flat(line, 20) == [("bo", 5), ("k", 15)]
    assert work(line.rstrip(".") + ", k to end.", 20).after == 15
    assert work(line, 5).after == 0


def test_a_bind_off_that_leaves_stitches_unworked_says_so() -> None:
    """The other stitches would be left on the needle without a word."""
    with pytest.raises(MisfitError, match="how the other 15 are worked"):
        work("Cast on 2 sts, bind off 5 sts.", 20)


def test_a_slip_of_the_pen_makes_no_round_of_a_hundred_thousand_stitches() -> None:
    """Each pass of the repeat is small, and thirty of them are not."""
    with pytest.raises(MisfitError, match="more stitches than any round has"):
        work("*K1, (yo) 9999 times; rep from * to end.", 30)


def test_a_row_across_held_stitches_says_what_becomes_of_those_on_the_needles() -> None:
    """"K across sleeve sts" with the body still on the needles made one tube of both, in silence."""
    page = "Cast on 60 sts. Join in the round.\nK40, place next 20 sts on hold for sleeve.\nKnit 1 round.\n"
    assert "not the 40 that are on the needles" in faults(project(f"{page}K across sleeve sts.\nKnit 2 rounds."))
    whole = plan_of(project(f"{page}K across sleeve sts, k to end.\nBind off."))
    assert whole.rounds[-1].before == 60
