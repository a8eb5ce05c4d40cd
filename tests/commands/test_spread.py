"""`stepper spread`: the answer on the spot."""

from __future__ import annotations

import pytest

from stepper.commands.main import main


def test_an_increase_is_spread_evenly(capsys: pytest.CaptureFixture[str]) -> None:
    """204 to 240: 36 increases, 24 gaps of 6 and 12 of 5. Source: 204 = 36 × 5 + 24."""
    assert main(["spread", "204", "to", "240"]) == 0
    assert "36 increases, gaps 24 of 6, 12 of 5" in capsys.readouterr().out


def test_the_round_is_said_short_with_how_even_it_is(capsys: pytest.CaptureFixture[str]) -> None:
    """200 = 8 × (4 × 4 + 3 × 3); behind the fourth change 16 are worked and 4 × 200 / 56 = 14.3 would be even."""
    assert main(["spread", "200", "to", "256"]) == 0
    told = capsys.readouterr().out.splitlines()
    assert told[1] == "[(k4, m1) 4 times, (k3, m1) 3 times] 8 times"
    assert told[2] == "At most 1.7 sts from the even place, 0.5 of a gap."
    assert told[3].startswith("Look: ")
    assert len(told) == 4


@pytest.mark.parametrize(
    ("manner", "line", "look"),
    [
        ("sayable", "(k11, m1) 15 times, (k10, m1) 6 times", "in groups"),
        ("runs", "(k11, m1) 15 times, (k10, m1) 6 times", "fuller in one"),
        ("mixed", "[k5, m1, (k11, m1, k10, m1, k11, m1) 2 times, k6] 3 times", "alternate"),
    ],
)
def test_each_manner_can_be_chosen_and_says_how_it_looks(
    manner: str, line: str, look: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """225 = 15 × 11 + 6 × 10; mixed it is 3 × (5 + 11 + 10 + 11 + 11 + 10 + 11 + 6)."""
    assert main(["spread", "225", "to", "246", "--manner", manner]) == 0
    told = capsys.readouterr().out
    assert f"\n{line}\n" in told
    assert look in told


def test_rows_have_half_gaps_at_the_ends_and_decreases_are_spread(capsys: pytest.CaptureFixture[str]) -> None:
    """80 to 70: 60 plain, six between decreases, three at each end. Source: 10rowsaday, "Evenly decrease"."""
    assert main(["spread", "80", "to", "70", "--flat"]) == 0
    told = capsys.readouterr().out
    assert "\nk3, k2tog, (k6, k2tog) 9 times, k3\n" in told
    assert "Every change stands at its even place." in told
    assert "all gaps are alike" in told


def test_many_increases_are_few_letters(capsys: pytest.CaptureFixture[str]) -> None:
    """More increases than half of the stitches: 175 = 25 × (2 × 2 + 3 × 1)."""
    assert main(["spread", "175", "to", "300"]) == 0
    assert "\n[(k2, m1) 2 times, (k1, m1) 3 times] 25 times\n" in capsys.readouterr().out


def test_an_impossible_change_is_refused_with_the_numbers(capsys: pytest.CaptureFixture[str]) -> None:
    """10 stitches carry at most 5 decreases of two."""
    assert main(["spread", "10", "to", "2"]) == 1
    assert "at most 5" in capsys.readouterr().err


def test_nothing_to_change_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    """As many as there are."""
    assert main(["spread", "80", "to", "80"]) == 0
    assert "nothing to change" in capsys.readouterr().out


def test_a_count_that_must_be_a_multiple_offers_the_nearest_with_their_cost(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Source: check-values 6.5: 209 at 22 to 10 cm; 204 is 5 off, 216 is 7 off."""
    assert main(["spread", "180", "to", "209", "--multiple", "12", "--gauge", "22"]) == 1
    told = capsys.readouterr().err
    assert "209 is not a multiple of 12" in told
    assert "204: 5 fewer, 2.3 cm narrower" in told
    assert "216: 7 more, 3.2 cm wider" in told
    assert main(["spread", "180", "to", "204", "--multiple", "12"]) == 0
    assert main(["spread", "100", "to", "106", "--multiple", "4", "--plus", "2"]) == 0
    assert main(["spread", "100", "to", "106", "--multiple", "0"]) == 1


@pytest.mark.parametrize(
    "typed", ["204-240", "204 - 240", "204\u2013240", "204->240", "204\u2192240", "204..240", "204 240", "204 sts TO 240 sts"]
)
def test_two_counts_are_read_however_they_are_typed(typed: str, capsys: pytest.CaptureFixture[str]) -> None:
    """With wool in one hand nobody looks up which sign goes between them."""
    assert main(["spread", *typed.split()]) == 0
    assert capsys.readouterr().out.startswith("204 to 240: 36 increases")


@pytest.mark.parametrize("typed", ["204", "204240", "a to b", "204 to", "204 or 240"])
def test_what_is_not_two_counts_is_a_wrong_command_line(typed: str, capsys: pytest.CaptureFixture[str]) -> None:
    """With what would have been right."""
    with pytest.raises(SystemExit) as ended:
        main(["spread", *typed.split()])
    assert ended.value.code == 2
    assert 'as in "204 to 240"' in capsys.readouterr().err
