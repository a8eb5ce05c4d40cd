"""Lists of abbreviations among the rows of a section."""

from __future__ import annotations

import pytest

from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.lists import can_be_name, entries_of, goes_on, take_definitions
from stepper.project.problems import Problem, Span
from stepper.project.respelt import Respelt
from tests.project.corpus_judge import text_of, worked


def taken(*texts: str) -> tuple[list[str], Abbreviations]:
    """Take the definitions off rows; give the rows that are left and the abbreviations."""
    own = Abbreviations()
    problems: list[Problem] = []
    rows = [(text, Span(line=number, column=1)) for number, text in enumerate(texts, 1)]
    left = take_definitions(rows, own, ("MC", "wave"), problems, Respelt())
    assert problems == []
    return [text for text, _ in left], own


def test_a_list_ends_where_a_row_explains_nothing() -> None:
    """What stands below it is knitted."""
    left, own = taken("Abbreviations", "k: knit", "SE: slip 1 purlwise", "with yarn in front", "CUFF: K2, p2.", "Row 1: SE, k to end.")  # fmt: skip
    assert left == ["CUFF: K2, p2.", "Row 1: sl 1 wyif, k to end."]
    assert set(own.known) == {"SE"}


@pytest.mark.parametrize(
    "row",
    [
        "MC = kfb",
        "wave = kfb",
        "SE: slip 1 purlwise with yarn in front",
        "Rnd 1: *K2, p2; rep from * to end.",
        "DR (dec round): K1, k2tog, k to end.",
        "10 cm = 22 sts",
        "Note: SE = kfb",
        "Own words: SE = kfb. 20 sts.",
    ],
)
def test_other_rows_explain_nothing(row: str) -> None:
    """A line that is taken for an explanation is never knitted; a colon outside a list heads a line."""
    left, own = taken(row)
    assert left == [row]
    assert own.known == {}


def test_what_is_not_read_of_a_list_stays_as_a_note() -> None:
    """It is the knitter's only help with the row that has it."""
    left, own = taken("Special abbreviations:", "KW: wrap the yarn three times around 2 sts")
    assert left == ["Note: KW: wrap the yarn three times around 2 sts"]
    assert own.known["KW"].meaning is None


def test_a_row_keeps_its_words_and_what_it_assumes_is_told_once() -> None:
    """She reads what her page prints; what is made of it she hears once."""
    rows = ["CO 20 sts. Work flat.", "SE = slip 1 purlwise with yarn in front.", "Row 1: SE, k to end.", "Row 2: SE, k to end."]  # fmt: skip
    text, places = text_of(rows, 1, "cm")
    (plan,), problems = worked(text, 1)
    assert problems == ()
    told = [
        caution
        for caution in plan.warnings
        if '"SE" is worked as the page defines it: sl 1 wyif.' in caution.text
    ]
    assert [caution.line for caution in told] == [places[2]]


def test_a_problem_stands_under_what_is_printed() -> None:
    """The stitches put in are longer than their abbreviation."""
    rows = [
        "CO 20 sts. Work flat.",
        "SE = slip 1 purlwise with yarn in front.",
        "Row 1: SE, k to lsat st, k1.",
    ]
    text, places = text_of(rows, 1, "cm")
    _, (problem,) = worked(text, 1)
    row = text.splitlines()[places[2] - 1]
    assert (problem.line, problem.column) == (places[2], row.index("lsat") + 1)


def test_a_list_of_a_page_is_read_entry_by_entry() -> None:
    """What explains no stitch is passed over."""
    row = "Abbreviations: k = knit, rem = remaining, SE = slip 1 purlwise; KW = wrap the yarn twice; Row 1 = kfb"
    assert [(entry.name, entry.read) for entry in entries_of(row)] == [
        ("k", True),
        ("SE", True),
        ("KW", False),
    ]


def test_a_side_may_belong_to_a_name() -> None:
    """ "Dec L" and "dec R" are two stitches, and "dec" alone is none of them."""
    entries = entries_of("dec L = sl 1, k1, psso. dec R = k2tog.")
    assert [(each.name, each.words) for each in entries] == [("dec L", "sl 1, k1, psso"), ("dec R", "k2tog.")]
    left, _ = taken("Abbreviations:", "dec L = sl 1, k1, psso", "dec R = k2tog", "Rnd 1: K1, dec L, k to last 3 sts, dec R, k1.")
    assert left == ["Rnd 1: K1, skp, k to last 3 sts, k2tog, k1."]


def test_an_increase_of_two_is_not_taken_for_one() -> None:
    """Letters that rows count as one stitch more are asked about, where the page means two by them."""
    (entry,) = entries_of("inc = increase 2 sts by working k1, p1, k1 into next st")
    assert Abbreviations().define(entry.name, entry.words, Span(line=1, column=1)) is not None
    assert [entry.read for entry in entries_of("inc = work twice into the next st")] == [True]


def test_a_list_of_the_old_style_has_commas_behind_its_names() -> None:
    """"inc., increase by ..." among "k., knit; p., purl" is how the page increases, as much as with an equals sign."""
    told = "k., knit; p., purl; ins., inches; inc., increase by working into front and back of st; st., stitch"
    assert [entry.name for entry in entries_of(f"Abbreviations: {told}.") if entry.words.startswith("increase")] == ["inc"]
    left, own = taken(told, "K3, inc. in next st, k to end.", "Work 3 ins.")
    assert left == ["K3, kfb, k to end.", "Work 3 ins."]
    assert set(own.known) == {"inc"}
    for row in ("k, p; k, p", "Back, k 2 rows; front, k 2 rows; sleeve, k 2 rows.", "k1, knit; p., purl"):
        assert taken(row)[1].known == {}


def test_dec_is_a_stitch_only_behind_an_equals_sign() -> None:
    """With a colon it heads the row that decreases."""
    assert taken("dec = k2tog tbl", "K3, dec, k to end.")[0] == ["K3, k2tog tbl, k to end."]
    assert taken("Dec: K2tog.")[0] == ["Dec: K2tog."]


def test_a_name_in_full_may_stand_for_the_sign_before_a_meaning() -> None:
    """The page's own meaning goes with its name; a row with a bracket behind its head is none."""
    row = "C4B (Cable 4 Back) Slip 2 sts to cable needle and hold in back, k2, then k2 from cable needle."
    assert [(entry.name, entry.read) for entry in entries_of(row)] == [("C4B", True)]
    told = "kfb (knit into front and back) Knit next st without removing it from left needle, then k through back of same st."
    assert [(entry.name, entry.read) for entry in entries_of(told)] == [("kfb", True)]
    for other in ("Row 2 (WS) Purl to end.", "Back (make one) Cast on 20 sts.", "Dec (right side) K1, ssk, k to end."):
        assert entries_of(other) == []


def test_a_meaning_goes_on_in_small_letters() -> None:
    """The row below would change what is worked, and must not be lost."""
    assert goes_on("SE: slip 1 purlwise", "with yarn in front")
    assert not goes_on("SE: slip 1 purlwise.", "with yarn in front")
    assert not goes_on("ssk: slip 2 sts, knit them together tbl", "st(s): stitch(es)")
    assert not goes_on("SE: slip 1 purlwise", "T2: k2tog, yo")
    assert not goes_on("SE: slip 1 purlwise", "Row 1: Knit.")


def test_parts_rows_and_yarns_are_no_names() -> None:
    """They head lines of the pattern."""
    assert [name for name in ("SE", "M1A", "2", "MC", "CUFF", "row", "RS") if can_be_name(name)] == [
        "SE",
        "M1A",
    ]


@pytest.mark.parametrize("below", ["st(s) \u2013 stitch(es)", "pm / sm / rm \u2013 place / slip / remove marker", "kwise/pwise = as if to knit/purl"])
def test_a_row_that_explains_a_word_is_no_part_of_the_stitch_above_it(below: str) -> None:
    """"… knit them together tbl st(s)": the meaning above was not read."""
    assert not goes_on("ssk \u2013 slip 2 sts knitwise, knit them together tbl", below)
    assert goes_on("SE: slip 1 purlwise", "with yarn in front")


def test_a_cable_called_by_its_halves_is_an_entry() -> None:
    """A name such as 2/2 LC has a space in its name; a row with a number in front is none."""
    (entry,) = entries_of("2/2 LC: slip 2 sts to cn and hold in back, k2, k2 from cn.")
    assert (entry.name, entry.read) == ("2/2 LC", True)
    assert entries_of("2 LC rows: knit.") == []


def test_a_meaning_ends_where_words_of_two_parts_are_explained() -> None:
    """ "st st = …" behind it in the same paragraph is none of its stitches."""
    entries = entries_of("skpo = slip 1, knit 1, pass slipped st over; st st = stocking stitch; st(s) = stitch(es).")
    assert [(one.name, one.words, one.read) for one in entries] == [("skpo", "slip 1, knit 1, pass slipped st over", True)]


def test_a_leaflet_shortens_with_stops() -> None:
    """ "W.f." in every other place of a lace row: not one of its rows was read. Common practice in old print."""
    found = entries_of(
        "Abbreviations: K., knit; P., purl; tog., together; w.f., wool forward; d.d., double decrease (sl. 1, K. 2 tog., p.s.s.o.); M., make."
    )
    assert [(one.name, one.read) for one in found if "." in one.name] == [("w.f", True), ("d.d", True)]
    left, own = taken("w.f. = wool forward", "d.d. = double decrease (sl 1, k2tog, psso)", "1st row: K1, w.f., k3, d.d., k3, w. f., k1.")
    assert left == ["1st row: K1, yo, k3, sk2p, k3, yo, k1."]
    assert set(own.known) == {"w.f", "d.d"}


def test_terms_may_be_explained_sentence_by_sentence() -> None:
    """As needle books did: one letter, its name, how it is made."""
    found = entries_of("EXPLANATION OF TERMS.--K, knit. P, purl. O, over, that is, thread before the needle to make a stitch. N, narrow, by knitting two together.")
    assert [one.name for one in found] == ["K", "P", "O", "N"]


@pytest.mark.parametrize(
    ("row", "names"),
    [
        ("C6B sl next 3 sts to cn, hold at back, k3, k3 from cn", ["C6B"]),
        ("CDD   slip 2 tog kwise, k1, pass the 2 slipped sts over (2 sts dec'd)", ["CDD"]),
        ("BOR beginning of round | CDD sl 2 together knitwise, k1, pass 2 sl sts over", ["CDD"]),
        ("M1 pick up strand between sts and knit into the back of it; k2tog; ssk; C6F slip 3 sts on cable needle to front, k3, k3 from cable needle.", ["M1", "C6F"]),
        ("M1 as usual", []),
        ("Work k2, p2 to end", []),
        ("BODY k2, p2 to end", []),
    ],
)  # fmt: skip
def test_columns_need_no_sign_behind_a_name(row: str, names: list[str]) -> None:
    """Where the words behind it are the stitches of one; any other row is left alone."""
    assert [one.name for one in entries_of(row)] == names


def test_a_name_without_a_meaning_is_no_part_of_the_one_before_it() -> None:
    """ "M1 = lift the bar …; k2tog; ssk" made one stitch of three."""
    (entry,) = (one for one in entries_of("M1 = pick up the bar between sts and knit into the back of it; k2tog; ssk") if one.name == "M1")
    assert entry.words == "pick up the bar between sts and knit into the back of it"


def test_an_order_may_have_letters_of_its_own() -> None:
    """ "PUK 22" is "pick up and knit 22"."""
    left, _ = taken("PUK = pick up and knit.", "Square 2: PUK 22, cast on 23.")
    assert left == ["Square 2: pick up and knit 22, cast on 23."]


def test_an_order_that_begins_with_letters_of_the_trade_is_no_entry_of_a_list() -> None:
    """Taken for one, "BO all sts." in front of a row would be dropped with it."""
    assert entries_of("BO all sts. Row 1: Knit.") == []
    assert [entry.name for entry in entries_of("C6B sl next 3 sts to cn, hold in back, k3, k3 from cn")] == ["C6B"]
