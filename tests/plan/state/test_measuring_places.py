"""Where lengths are measured from. Source: arithmetic at 28 rounds to 10 cm, 2.8 to the centimetre."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import compiled, faults, plan_of
from tests.project.samples import HEAD, project

ARMHOLE = "Cast on 60 sts. Work flat.\nWork 10 rows in stockinette.\nBind off 4 sts at the beginning of the next 2 rows.\n"


@pytest.mark.parametrize(
    ("work", "rows"),
    [
        # 5 cm are 14 rows; the two that bind off count.
        (ARMHOLE + "Work even until armhole measures 5 cm.", 10 + 14),
        (ARMHOLE + "Work even until piece measures 5 cm from beg of armhole shaping.", 10 + 14),
        # Along the edge of an armhole is from where it begins; from the shoulder down that is where the piece does.
        (ARMHOLE + "Work even until piece measures 5 cm along the armhole edge.", 10 + 14),
        ("Cast on 60 sts. Work flat.\nWork in stockinette until back measures 5 cm along the armhole edge.", 14),
        # The rows before it speak of the armhole, and are none of it.
        (
            "Cast on 60 sts. Work flat.\nWork 10 rows in stockinette.\n"
            + "To armhole: Work 2 rows even.\nBind off 4 sts at the beginning of the next 2 rows.\nWork even until armhole measures 5 cm.",
            12 + 14,
        ),
        # 10 rounds of rib, 14 more.
        ("Cast on 60 sts.\nJoin in the round.\nWork in k2, p2 rib for 10 rounds.\nKnit until piece measures 5 cm from end of rib.", 24),
        ("Cast on 60 sts.\nJoin in the round.\nCuff: Work in k2, p2 rib for 6 rounds.\nKnit until piece measures 5 cm from top of cuff.", 20),
        ("Pick up and knit 60 sts.\nKnit until piece measures 5 cm from picked-up edge.", 14),
        (
            "Cast on 60 sts. Work flat.\nWork 2 rows in stockinette.\nWork even until piece measures 5 cm, ending with a p row.",
            14,
        ),
    ],
)
def test_a_length_begins_where_the_words_say(work: str, rows: int) -> None:
    """Armhole, rib, cuff and picked-up edge are places of the piece in hand; the edge itself is no row of it."""
    assert len(plan_of(project(f"{work}\nBind off.")).rounds) == 1 + rows + 1


def test_a_named_place_is_told_with_its_line() -> None:
    """Which row is meant is taken from the lines before, and she can see from which."""
    work = ARMHOLE + "Work even until armhole measures 5 cm.\nBind off."
    assert any(warning.text.startswith("armhole: measured from the beginning of line") for warning in plan_of(project(work)).warnings)


@pytest.mark.parametrize(
    "words",
    ["armhole measures 5 cm", "piece measures 5 cm from end of rib", "piece measures 5 cm from top of heel flap",
     "piece measures 5 cm from picked-up edge", "piece measures 5 cm from dividing row"],
)  # fmt: skip
def test_a_place_that_is_nowhere_in_the_piece_is_refused(words: str) -> None:
    """A length from a place that nobody knows would be any length."""
    assert faults(project(f"Cast on 60 sts.\nJoin in the round.\nKnit 2 rounds.\nKnit until {words}.\nBind off."))


def test_which_row_is_the_purl_row_is_known_of_stockinette_alone() -> None:
    """In garter stitch no row is the purl row."""
    work = "Cast on 60 sts. Work flat.\nWork in garter stitch until piece measures 5 cm, ending with a purl row.\nBind off."
    assert compiled(project(work)).problems


BACK = HEAD.replace(
    "  - name: body\n    work: |\n",
    "  - name: back\n    work: |\n      Cast on 40 sts. Work flat.\n      Work {rows} rows in stockinette.\n"
    "      Bind off 4 sts at the beginning of the next 2 rows.\n      Work 10 rows even.\n      Bind off.\n"
    "  - name: front\n    work: |\n",
)


@pytest.mark.parametrize("rows", [2, 20, 31])
def test_a_front_is_as_long_as_the_back_up_to_the_same_place(rows: int) -> None:
    """Side seams that are to be sewn row by row have as many rows. By hand: those of the back before its armhole."""
    head = BACK.replace("{rows}", str(rows))
    front = "Cast on 40 sts. Work flat.\nWork in stockinette st until front measures same as back to armhole.\nBind off."
    plan = plan_of(project(front, head=head, sizes="one", size="one"))
    assert sum(round_.section == "front" for round_ in plan.rounds) == 1 + rows + 1


def test_a_front_that_is_longer_already_is_told() -> None:
    """Nothing can be worked until then."""
    head = BACK.replace("{rows}", "4")
    front = "Cast on 40 sts. Work flat.\nWork 6 rows in stockinette.\nWork even until front measures same as back to armhole."
    assert "the piece is as long already." in faults(project(front, head=head, sizes="one", size="one"))


def test_an_armhole_begins_with_the_stitches_bound_off_for_it() -> None:
    """Measured from the first decrease "at armhole edge", a front came out two rows longer than its back.

    28 rows are 10 cm: from the bind-off 5 cm are 14 rows.
    """
    work = (
        "Cast on 50 sts.\nWork flat.\nWork 4 rows in stockinette.\nBO 4 sts at beg of next row.\nPurl 1 row.\n"
        "Dec 1 st at armhole edge of next and foll alt row.\n"
        "Work even until armhole measures 5 cm, ending with a WS row.\nBind off."
    )
    plan = plan_of(project(work))
    assert plan.rounds[5].instruction.startswith("bind off 4")
    assert len(plan.rounds[5:-1]) == 14


@pytest.mark.parametrize("words", ["piece measures same as back", "front measures same as back to shoulders"])
@pytest.mark.parametrize("rows", [2, 31])
def test_a_part_that_is_bound_off_at_once_is_measured_up_to_there(rows: int, words: str) -> None:
    """The back has no shoulder row; by hand: its rows, the two that bind off for the armholes, and the ten even ones."""
    head = BACK.replace("{rows}", str(rows))
    front = f"Cast on 40 sts. Work flat.\nWork in stockinette st until {words}.\nBind off."
    plan = plan_of(project(front, head=head, sizes="one", size="one"))
    assert sum(round_.section == "front" for round_ in plan.rounds) == 1 + rows + 12 + 1
    assert any("bound off at once" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize(
    "steps",
    [
        "Bind off 8 sts at the beginning of the next 2 rows.",
        "Bind off 4 sts at beg of next 4 rows.",
        "Bind off 4 sts at beg of next 2 rows. Bind off 4 sts at beg of next 2 rows.",
    ],
)
def test_the_steps_of_a_shoulder_need_no_name(steps: str) -> None:
    """The last stitches bound off at the beginning of rows are its steps: the front is as long as the rows before them."""
    head = BACK.replace("{rows}", "20").replace("      Work 10 rows even.\n", f"      Work 10 rows even.\n      {steps}\n")
    front = "Cast on 40 sts. Work flat.\nWork in stockinette st until front measures same as back to shoulder shaping.\nBind off."
    plan = plan_of(project(front, head=head, sizes="one", size="one"))
    assert sum(round_.section == "front" for round_ in plan.rounds) == 1 + 20 + 12 + 1
    assert any("is taken to bind off its shoulders from line" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize(
    "words",
    [
        "front is 5 rows shorter than back to shoulder",
        "5 rows fewer have been worked than on back to start of shoulder shaping",
        "there are 5 rows less than on the back to shoulder shaping",
    ],
)
def test_a_front_may_stay_some_rows_shorter_than_the_back(words: str) -> None:
    """Its neck begins there: 20 rows, two for the armholes and ten, less five. Source: common practice in British leaflets."""
    head = BACK.replace("{rows}", "20").replace("      Work 10 rows even.\n", "      Work 10 rows even.\n      Bind off 4 sts at beg of next 4 rows.\n")
    front = f"Cast on 40 sts. Work flat.\nWork in stockinette st until {words}.\nBind off."
    plan = plan_of(project(front, head=head, sizes="one", size="one"))
    assert sum(round_.section == "front" for round_ in plan.rounds) == 1 + 20 + 12 - 5 + 1


def test_a_piece_that_is_that_long_already_is_told() -> None:
    """No rows are left to be worked, and none is taken back."""
    head = BACK.replace("{rows}", "2")
    front = "Cast on 40 sts. Work flat.\nWork in stockinette st until front is 14 rows shorter than back to shoulder.\nBind off."
    assert "the piece is as long already" in faults(project(front, head=head, sizes="one", size="one"))


def test_steps_right_behind_the_armholes_are_no_shoulders() -> None:
    """Nobody can tell where the one ends and the other begins."""
    head = BACK.replace("{rows}", "20").replace("      Work 10 rows even.\n", "      Work 4 rows even.\n      Bind off 8 sts at beg of next 2 rows.\n")
    front = "Cast on 40 sts. Work flat.\nWork in stockinette st until front measures same as back to shoulders.\nBind off."
    assert "is of the shoulder" in faults(project(front, head=head, sizes="one", size="one"))


@pytest.mark.parametrize(
    "ending",
    [
        "Next row: K14, bind off 4, k to end.",
        "Dec 1 st at each end of next row.",
        "Work 4 rows even.",
    ],
)
def test_a_part_with_a_shoulder_that_no_line_names_is_not_measured(ending: str) -> None:
    """Where the shoulder begins is then not said: it is below the last row, nobody knows how far."""
    work = "      Work 10 rows even.\n"
    head = BACK.replace("{rows}", "20").replace(work, f"{work if 'Work' not in ending else ''}      {ending}\n")
    front = "Cast on 40 sts. Work flat.\nWork in stockinette st until front measures same as back to shoulders.\nBind off."
    assert "is of the shoulder" in faults(project(front, head=head, sizes="one", size="one"))


def test_a_numbered_section_is_measured_as_the_piece_it_is_a_part_of() -> None:
    """"Until piece measures 10 cm" in Section 2 of a cowl means the cowl: 28 rounds, 14 of them in Section 1."""
    work = "Cast on 60 sts.\nJoin in the round.\nKnit for 5 cm."
    later = "  - name: {}\n    work: |\n      Knit until piece measures 10 cm.\n      Bind off.\n"
    text = project(work).replace("- name: body", "- name: section 1")
    assert len(plan_of(text + later.format("section 2")).rounds) == 1 + 28 + 1


@pytest.mark.parametrize(
    ("line", "rounds"),
    [
        ("Knit until piece measures 10 cm.", 14),
        ("Knit until work measures 10 cm.", 14),
        ("Knit until edging measures 10 cm.", 28),
        ("Knit for 10 cm.", 28),
        ("Knit until piece measures 10 cm from cast-on edge.", 14),
        ("Knit until piece measures 3 cm.", 8),
        ("Bind off.\n      Pick up and knit 60 sts.\n      Knit until piece measures 10 cm.", 1 + 1 + 28),
        ("Bind off.\n      Cast on 60 sts.\n      Join in the round.\n      Knit until piece measures 10 cm.", 1 + 1 + 28),
    ],
)
def test_a_piece_goes_on_over_headings_until_it_casts_on_or_picks_up_anew(line: str, rounds: int) -> None:
    """It was measured from the heading, and came out 5 cm too long. Source: common practice; 3 cm are behind it already."""
    work = "Cast on 60 sts.\nJoin in the round.\nKnit for 5 cm."
    plan = plan_of(project(work) + f"  - name: edging\n    work: |\n      {line}\n      Bind off.\n")
    assert len(plan.rounds) == 1 + 14 + rounds + 1


def test_a_length_from_the_fold_leaves_out_the_facing() -> None:
    """By hand: 5 cm are 14 rounds, of which the purled one and 3 more are worked; the 5 of the facing do not count."""
    work = "Cast on 40 sts. Join in the round.\nKnit 5 rounds. Purl 1 round. Knit 3 rounds.\n"
    plan = plan_of(project(f"{work}Knit until piece measures 5 cm from the fold."))
    assert len(plan.rounds) == 1 + 5 + 14
    # Of two ridges nobody can tell at which it is folded.
    told = faults(project(f"{work}Purl 1 round. Knit 3 rounds.\nKnit until piece measures 6 cm from the fold."))
    assert "of the fold" in told
