"""Counts told in words behind what is worked, and goals of stitches that are not named. Source: common practice."""

from __future__ import annotations

from stepper.project.rewording.on_needles.counted import write_counts
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

ROUND = "Next rnd: *K2, k2tog; rep from * around"
"""Work that leaves 45 stitches."""


@each_row(
    "told",
    [
        ": 45.", " = 45.", " (45 left).", ", leaving 45.", " and you're at 45.", ", reducing to 45 sts.", ": you have 45 sts.",
        ", which leaves you with 45 on the needle.", "; 45 in all.", ": 45 sts remain on needles.", " [45].", ", bringing you back up to 45.",
    ],
)  # fmt: skip
def test_a_count_behind_work_is_one_however_it_is_led_in(told: str) -> None:
    """Every word of it leads in or says what is counted."""
    line = write_counts(as_printed(ROUND + told))
    assert line.text == f"{ROUND} = 45 sts."
    assert len(line.places) == len(line.text) + 1


@each_row(
    ("told", "order"),
    [
        ("45 remain.", "45 sts."),
        ("You should now have 45.", "45 sts."),
        ("That makes 45 (50, 55) in all.", "45 (50, 55) sts."),
        ("(15 sts decreased, 45 remain.)", "45 sts"),
        ("Count again: 45.", "45 sts."),
        ("Rep last rnd until 45 remain.", "Rep last rnd until 45 sts remain."),
        ("Work straight until you're down to 45, then cut yarn.", "Work straight until 45 sts, then cut yarn."),
        # what counts something else, or is left at a turn
        ("Repeat rows 1-4.", None),
        ("Next rnd: K10 (12).", None),
        ("Dec every 4th rnd, 5 times in all = 42 (44) 46 (48) 50 sts.", None),
        ("K 45, turn, leaving 15.", None),
        ("Bind off 5 - 3 - 2.", None),
        ("Back: 45.", None),
        ("Repeat until you have 45 rows.", None),
        ("Repeat until 8 are left at each end.", None),
        ("Repeat until 8 remain unworked.", None),
        ("Place markers: 45 sts on each needle.", None),
        ("There should be 45 on each needle.", "45 sts on each needle."),
        ("*K5, m1*, which brings us to the full 45. No more increases!", "*K5, m1* = 45 sts. No more increases!"),
        ("*K10, m1* 45 sts.", "*K10, m1* = 45 sts."),
        ("Rep rows 1-2, which makes 6.", None),
        ("Leave 30 sts on hold, leaving 24 for the front.", None),
        ("Bind off 5 sts and there are 20 sts for each shoulder.", None),
        ("K1: 54 rounds.", None),
    ],
)
def test_a_sentence_of_its_own_counts_where_it_says_so(told: str, order: str | None) -> None:
    """A bare number without work before it names something else."""
    text = write_counts(as_printed(told)).text
    assert text == (told if order is None else order)
