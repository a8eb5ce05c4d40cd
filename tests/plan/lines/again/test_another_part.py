"""Another part worked again: which, and how far. Worked out by hand; source of the reading: common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import Plan
from tests.plan.test_compile import faults, plan_of
from tests.project.corpus_judge import text_of, worked

BACK = (
    "== back",
    "CO 40 sts. Work flat.",
    "Work 6 rows in stockinette st. **",
    "Armhole shaping: Bind off 4 sts at the beginning of the next 2 rows. 32 sts.",
    "Purl 1 row.",
    "Bind off.",
)


def knit(*lines: str) -> Plan:
    """Compile lines that read as meant."""
    return plan_of(text_of(list(lines), 1, "cm")[0])


def refused(*lines: str) -> str:
    """Return what is printed of lines that are refused."""
    return faults(text_of(list(lines), 1, "cm")[0])


def counts(plan: Plan, section: str) -> list[int]:
    """Return the stitches after each row of a section."""
    return [round_.after for round_ in plan.rounds if round_.section == section]


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("Work as for back.", [40, *[40] * 6, 36, 32, 32, 0]),
        ("Same as back.", [40, *[40] * 6, 36, 32, 32, 0]),
        ("Work as given for back to **.", [40, *[40] * 6]),
        ("Work as for back until piece measures 1 cm.", [40, *[40] * 3]),
        ("Work as for back until armhole shaping.", [40, *[40] * 6]),
        ("Work as for the back until 32 sts rem.", [40, *[40] * 6, 36, 32]),
    ],
)
def test_a_part_goes_as_far_as_the_line_says(line: str, rows: list[int]) -> None:
    """To its end, a mark, a length, an event, a count: the row that comes to it is the last."""
    assert counts(knit(*BACK, "== front", line), "front") == rows


@pytest.mark.parametrize(
    "line",
    [
        "Work as for collar.",
        "Work as for back to ***.",
        "Work as for back until piece measures 40 cm.",
        "Work as for back until 30 sts rem.",
        "Work as for back until thumb.",
    ],
)
def test_what_is_not_there_is_refused(line: str) -> None:
    """No such part, no such mark, never so long, never so few, no row of a thumb."""
    assert refused(*BACK, "== front", line)


def test_its_printed_counts_are_checked_again() -> None:
    """A front cast on with other stitches does not come to the counts of the back."""
    told = refused(*BACK, "== front", "CO 30 sts. Work flat.", "Work as for back from ** to ***.")
    assert "***" in told


def test_what_follows_goes_on_where_the_copy_ends() -> None:
    """The needle changed behind the mark is not taken over."""
    back = ("== back", "CO 8 sts. Work flat.", "Knit 2 rows. **", "Change to 3.5 mm needles.", "Knit 2 rows.", "Bind off.")
    plan = knit(*back, "== front", "Work as for back to **.", "Knit 1 row.")
    assert plan.rounds[-1].needle_mm == 4


def test_a_name_that_fits_two_parts_is_refused() -> None:
    """Left or right front, nobody can tell."""
    fronts = ("== left front", "CO 8 sts. Work flat.", "Bind off.", "== right front", "CO 9 sts. Work flat.", "Bind off.")
    assert "more than one part" in refused(*fronts, "== band", "Work as for front.")


def test_held_stitches_are_those_of_the_part_that_is_worked() -> None:
    """The right sleeve takes up the stitches of the right sleeve, by the lines of the left."""
    body = ("== body", "CO 60 sts. Join in the round.", "Hold 20 for left sleeve, k20, hold 20 for right sleeve.", "Bind off.")
    sleeve = ("== left sleeve", "Return left sleeve to needles.", "Knit 2 rows.", "Bind off.")
    plan = knit(*body, *sleeve, "== right sleeve", "Work as for left sleeve.")
    assert plan.rounds[-1].held == {}


def test_another_one_takes_up_the_stitches_across_from_those_of_the_first() -> None:
    """Below "place right sleeve sts on the needle" it is the left sleeve, whose stitches wait as well."""
    body = ("== body", "CO 60 sts. Join in the round.", "Hold 20 for left sleeve, k20, hold 20 for right sleeve.", "Bind off.")
    sleeve = ("== sleeves", "Return right sleeve to needles.", "Knit 2 rows.", "Bind off.", "Make another sleeve.")
    plan = knit(*body, *sleeve)
    assert [each.before for each in plan.rounds].count(20) == 2 * 3 + 1
    assert plan.rounds[-1].held == {}
    nothing = ("== sleeves", "Return right sleeve to needles.", "Bind off.", "Return right sleeve to needles.")
    assert "nothing is on hold" in refused(*body, *nothing)


@pytest.mark.parametrize(
    ("own", "line", "rows"),
    [
        (("CO 30 sts. Work flat.",), "Work as for back to **.", [30, *[30] * 6]),
        (("CO 30 sts. Work flat.",), "Work as for back until piece measures 1 cm.", [30, *[30] * 3]),
        (("CO 30 sts. Work flat.",), "Work as for back.", [30, *[30] * 6, 26, 22, 22, 0]),
        (
            ("CO 30 sts. Work flat.", "Work 6 rows in garter st."),
            "Work as for back.",
            [30, *[30] * 6, 26, 22, 22, 0],
        ),
    ],
)
def test_a_part_with_stitches_of_its_own_does_not_cast_on_those_of_the_other(
    own: tuple[str, ...], line: str, rows: list[int]
) -> None:
    """The narrower front is cast on with its own number and goes on as the back; a band of its own stands for that
    of the back where it has as many rows."""
    back = tuple(row.replace(" 32 sts.", "") for row in BACK)
    assert counts(knit(*back, "== front", *own, line), "front") == rows


def test_the_other_edge_does_not_cast_on_twice() -> None:
    """Reversed, the beginning is left out just the same."""
    plan = knit(*BACK[:3], "Bind off.", "== front", "CO 40 sts. Work flat.", "Work as for back, reversing shaping.")
    assert counts(plan, "front") == [40, *[40] * 6, 0]


def test_where_it_goes_on_is_not_guessed() -> None:
    """Four rows of her own against six of the back: which row of the back comes next is for her to say."""
    told = refused(*BACK, "== front", "CO 40 sts. Work flat.", "Work 4 rows in garter st.", "Work as for back.")
    assert "5 rows are worked, so it is not known where in the back this goes on" in told


def test_a_mark_in_front_of_a_part_is_its_beginning() -> None:
    """The first of the two marks stands before the cast-on, and no line comes before it."""
    back = ("== back", "**CO 40 sts. Work flat.", "Work 6 rows in stockinette st. **", "Bind off.")
    assert counts(knit(*back, "== front", "Work as for back from ** to **."), "front") == [40, *[40] * 6]
    assert "no mark ***" in refused(*back, "== front", "Work as for back from *** to **.")


def test_the_one_part_without_a_name_is_the_one_meant() -> None:
    """A page often prints no heading over its back; told, and only where nothing else can be meant."""
    part = ("== beginning", *BACK[1:])
    plan = knit(*part, "== front", "Work as for back to **.")
    assert counts(plan, "front") == [40, *[40] * 6]
    assert any("the one part before this one" in warning.text for warning in plan.warnings)
    assert "no part was worked before" in refused(*part, "== front", "Work as for collar to **.")
    assert "no part was worked before" in refused("== welt", *BACK[1:], "== front", "Work as for back to **.")


@pytest.mark.parametrize("beginning", [("CO 40 sts. Work flat.",), ("CO 40 sts. Work flat. Knit 2 rows.",)])
def test_a_cast_on_of_her_own_stands_for_the_other_and_needs_no_word(beginning: tuple[str, ...]) -> None:
    """The first row is the one row that no two parts share: nothing is assumed, and what stands behind the cast-on of the other part,
    on the same line even, is worked. Source: common practice ("cast on 36 sts; work as for back to underarm")."""
    plan = knit("== back", *beginning, "Purl 1 row.", "Bind off.", "== front", "CO 36 sts. Work flat.", "Work as for back.")
    rows = 2 + 2 * beginning[0].endswith("Knit 2 rows.")
    assert counts(plan, "front") == [*[36] * rows, 0]
    assert not [each for each in plan.warnings if "goes on with line" in each.text]


def test_make_2_is_not_made_again_by_the_second() -> None:
    """A line that only says how many are made is none of the lines of the part."""
    plan = knit("== sleeve", "CO 20 sts. Work flat.", "Knit 3 rows.", "Bind off.", "Make 2.")
    assert [round_.after for round_ in plan.rounds] == [20, 20, 20, 20, 0] * 2


def test_a_part_worked_again_to_a_count_takes_the_row_back_that_the_line_ends_with() -> None:
    """The 26th stitch is left in a right-side row, and "ending with a P row" works the purl row behind it."""
    back = (
        "== back",
        "Cast on 30 sts.",
        "Row 1 (RS): K1, ssk, k to last 3 sts, k2tog, k1.",
        "Row 2: Purl.",
        "Rep these 2 rows until 20 sts rem, ending with a P row.",
        "Bind off.",
        "== front",
    )
    plan = plan_of(text_of([*back, "Work as given for back until 26 sts rem, ending with a P row.", "Bind off."], 1, "cm")[0])
    front = [row for row in plan.rounds if row.section == "front"]
    assert [(row.side, row.after) for row in front[1:-1]] == [("RS", 28), ("WS", 28), ("RS", 26), ("WS", 26)]
    plan = plan_of(text_of([*back, "Work as given for back until 26 sts rem, ending with a RS row.", "Bind off."], 1, "cm")[0])
    assert len([row for row in plan.rounds if row.section == "front"]) == 1 + 3 + 1


# --- rows between marks worked again to a length -----------------------------------------------------

MARKED = ("CO 20 sts. Join in the round.", "* Knit 2 rounds.", "Purl 1 round. **")


def rounds_and_told(last: str) -> tuple[int, list[str]]:
    """Work rows and their repeat; give how many rounds are worked, and what is told or refused."""
    text, _ = text_of([*MARKED, last], 1, "cm")
    plans, problems = worked(text, 1)
    if not plans:
        return 0, [problem.message for problem in problems]
    (plan,) = plans
    return sum(1 for one in plan.rounds if one.before), [caution.text for caution in plan.warnings]


def test_they_are_worked_whole_the_nearest_number_of_times() -> None:
    """By hand: 3 rounds to the centimetre, so 3.4 cm are 10 rounds, and three times 3 is nearest; 3.6 cm are 11, four times."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 3.4 cm.")
    assert rounds == 9
    assert any("these 3 rows are worked twice more, whole, to 3.4 cm" in words for words in told)
    assert rounds_and_told("Rep from * to ** until piece measures 3.6 cm.")[0] == 12


def test_a_length_that_is_reached_already_is_refused() -> None:
    """One that is shorter than the rows that stand written."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 1 cm.")
    assert rounds == 0
    assert any("measures 1 cm before these rows are worked once more" in words for words in told)


def test_which_row_ends_them_is_not_chosen() -> None:
    """Whole groups end with their own last row."""
    rounds, told = rounds_and_told("Rep from * to ** until piece measures 4 cm, ending with a WS row.")
    assert rounds == 0
    assert told


MITTEN = (
    "== right mitten, cuff",
    "CO 16 sts. Join in the round.",
    "Knit 3 rounds.",
    "== right mitten, hand",
    "Knit 2 rounds.",
    "== right mitten, thumb gusset",
    "Inc round: K8, m1, k to end. 17 sts.",
    "Bind off.",
    "== left mitten",
)


@pytest.mark.parametrize(
    ("lines", "rows"),
    [
        (("Work as for right mitten.",), [16] * 6 + [17, 0]),
        (("Work as for right mitten to thumb gusset.", "K7, m1, k to end. 17 sts.", "Bind off."), [16] * 6 + [17, 0]),
        (("Work as for right mitten until 17 sts.", "Bind off."), [16] * 6 + [17, 0]),
        (("Work as for cuff.", "Bind off."), [16] * 4 + [0]),
    ],
)
def test_a_piece_of_several_sections_is_worked_again_whole(lines: tuple[str, ...], rows: list[int]) -> None:
    """A page names them by small headings; the piece is all of them, up to where the line ends."""
    assert counts(knit(*MITTEN, *lines), "left mitten") == rows


@pytest.mark.parametrize("again", [("== left mitten", "Work as for right mitten."), ("Make a second mitten the same.",)])
def test_a_whole_is_worked_again_with_the_parts_that_stand_under_headings_of_their_own(again: tuple[str, ...]) -> None:
    """The second mitten was its cuff, because HAND stood above the rest, and its 16 stitches stayed on the needle. Common practice."""
    mitten = ("== right mitten", "CO 16 sts. Join in the round.", "Knit 3 rounds.", "== hand", "Knit 2 rounds.", "Next round: *K2tog; rep from * to end. 8 sts.", "Bind off.")
    plan = knit(*mitten, *again)
    assert [round_.after for round_ in plan.rounds] == [16] * 6 + [8, 0] + [16] * 6 + [8, 0]
    cuffs = ("== right cuff", *mitten[1:], "== left cuff", "Work as for right cuff.", "Bind off.")
    assert counts(knit(*cuffs), "left cuff") == [16] * 4 + [0]


def test_the_counts_printed_in_a_part_hold_where_it_began_with_as_many() -> None:
    """ "Section 3: As section 2. 25 sts" was refused for the 19 printed in section 2. By hand: two stitches a round, three times."""
    first = ("== section 1", "CO 13 sts. Work flat.", "== section 2", "Row 1: K3, yo, k to last 3 sts, yo, k3.", "Row 2: Knit.", "Repeat these 2 rows 2 times more. 19 sts.")
    plan = knit(*first, "== section 3", "As section 2. 25 sts.", "Bind off.")
    assert counts(plan, "section 3")[-2:] == [25, 0]
    assert "prints 27" in refused(*first, "== section 3", "As section 2. 27 sts.", "Bind off.")


def test_a_pair_that_the_page_asks_for_twice_is_made_once() -> None:
    """ "Make 2" beside the heading and "make another the same" at the end came to a third sock. Common practice."""
    toe = ("== sock, toe", "Make 2.", "CO 16 sts. Join in the round.", "Knit 3 rounds.")
    plan = knit(*toe, "== sock, foot", "Knit 2 rounds.", "Bind off.", "Make another the same.")
    assert [round_.after for round_ in plan.rounds] == ([16] * 6 + [0]) * 2
    assert any("it is made once" in caution.text for caution in plan.warnings)


@pytest.mark.parametrize("line", ["Work as for right mitten to crown.", "Work as for right mitten until 30 sts."])
def test_a_piece_that_never_gets_there_is_refused(line: str) -> None:
    """Whichever of its sections was meant."""
    assert "the right mitten never comes to where this line ends" in refused(*MITTEN, line)


def test_a_piece_is_mirrored_over_its_sections() -> None:
    """What is bound off at the beginning comes a row later from the other edge, in the next section or not."""
    right = ("== right front", "CO 12 sts. Work flat.", "Knit 2 rows.", "== right front, armhole")
    armhole = ("Bind off 3 sts, k to end. 9 sts.", "Knit 1 row.", "Bind off.")
    plan = knit(*right, *armhole, "== left front", "Work as for right front, reversing shaping.")
    assert counts(plan, "left front") == [12, 12, 12, 12, 9, 0]


def test_the_second_of_a_pair_is_measured_as_the_first() -> None:
    """The second sock's foot was measured from its own beginning, and the sock became a third longer. Common practice."""
    sock = ("== toe", "CO 16 sts. Join in the round.", "Knit 6 rounds.", "== foot", "Knit until piece measures 5 cm.", "Bind off.")
    plan = knit(*sock, "Make another the same.")
    assert counts(plan, "foot, second") == counts(plan, "foot")
    assert len(counts(plan, "foot")) == 15 - 6 + 1


def test_a_piece_is_measured_over_its_sections() -> None:
    """ "Piece measures" below the heading of its gusset means the mitten: 30 rounds are 10 cm, so 15 are 5 cm."""
    cuff = ("== right mitten, cuff", "CO 16 sts. Join in the round.", "Knit 3 rounds.")
    plan = knit(*cuff, "== right mitten, hand", "Knit until piece measures 5 cm.", "Bind off.")
    assert len(counts(plan, "right mitten, cuff")) + len(counts(plan, "right mitten, hand")) == 1 + 15 + 1
    alone = knit(*cuff, "== hand", "Knit until hand measures 5 cm.", "Bind off.")
    assert len(counts(alone, "hand")) == 15 + 1
