"""The stitch table against the Craft Yarn Council's list."""

from __future__ import annotations

import pytest

from stepper.craft.stitches import ALIASES, STITCHES, Kind, find_stitch, list_codes, stitch, whole_words
from tests.tables import each_row

# Source: Craft Yarn Council booklet 2018, knitting master list, checked against general abbreviation
# lists (check-values 1.6, published): code, uses, leaves.
PUBLISHED = [
    ("k", 1, 1),
    ("p", 1, 1),
    ("k2tog", 2, 1),
    ("p2tog", 2, 1),
    ("ssk", 2, 1),
    ("skp", 2, 1),
    ("k3tog", 3, 1),
    ("sk2p", 3, 1),
    ("s2kp", 3, 1),
    ("m1", 0, 1),
    ("m1l", 0, 1),
    ("m1r", 0, 1),
    ("m1p", 0, 1),
    ("kfb", 1, 2),
    ("pfb", 1, 2),
    ("yo", 0, 1),
    ("sl", 1, 1),
    ("pm", 0, 0),
    ("sm", 0, 0),
]

# What each is made of (common practice): how many stitches it is worked into and how many loops it leaves.
BY_MAKING = [
    ("k tbl", 1, 1),
    ("p tbl", 1, 1),
    ("sl wyif", 1, 1),
    ("k1b", 1, 1),
    ("mb", 1, 1),
    ("m1lp", 0, 1),
    ("m1rp", 0, 1),
    ("kfbf", 1, 3),
    ("kyok", 1, 3),
    ("yo2", 0, 2),
    ("rli", 0, 1),
    ("lli", 0, 1),
    ("inc", 1, 2),
    ("dec", 2, 1),
    ("ssp", 2, 1),
    ("k2tog tbl", 2, 1),
    ("p3tog", 3, 1),
    ("sssk", 3, 1),
    ("s2pp", 3, 1),
    ("bead", 0, 0),
    ("co", 0, 1),
    ("bo", 1, 0),
    ("pu", 0, 1),
    ("graft", 1, 0),
    ("draw", 1, 0),
    ("hold", 1, 0),
    ("return", 0, 1),
    ("rest", 1, 1),
    ("ds", 1, 1),
    ("rm", 0, 0),
    ("turn", 0, 0),
    ("w&t", 0, 0),
]


@each_row(("code", "uses", "leaves"), PUBLISHED + BY_MAKING)
def test_a_stitch_uses_and_leaves_what_the_published_list_says(code: str, uses: int, leaves: int) -> None:
    """Every count of the program rests on these two numbers."""
    assert (stitch(code).uses, stitch(code).leaves) == (uses, leaves)


@pytest.mark.parametrize("word", ["yfwd", "yon", "yrn"])
def test_british_yarn_overs_equal_a_yarn_over(word: str) -> None:
    """Source: check-values 1.6.2, published."""
    found = find_stitch(word)
    assert found is not None
    assert found.code == "yo"


@pytest.mark.parametrize(
    ("code", "total"), [("2/2 RC", 4), ("1/1 LC", 2), ("3/3 LC", 6), ("2/1 RPC", 3), ("2/1/2 RC", 5)]
)
def test_a_cable_keeps_its_stitches(code: str, total: int) -> None:
    """The Council writes a cable as the stitches that cross over those they cross; none is lost."""
    found = find_stitch(code)
    assert found is not None
    assert (found.uses, found.leaves, found.kind) == (total, total, Kind.CABLE)


@pytest.mark.parametrize(
    ("code", "said"),
    [
        ("2/2 RC", "2 over 2 right cross"),
        ("2/1 LPC", "2 over 1 left purl cross"),
        ("1/1/2 LC", "1 over 1 over 2 left cross"),
        ("C4F", "cable 4 front"),
        ("T3B", "twist 3 back"),
    ],
)
def test_a_cable_is_said_as_it_is_worked(code: str, said: str) -> None:
    """The Council's own words for its signs, and the British ones: a cable crossed the other way is a fault for good."""
    assert stitch(code).said == said
    assert stitch("C12F").uses == stitch("C12F").leaves == 12


@pytest.mark.parametrize(
    ("code", "stitches"), [("k", 1), ("k2tog", 1), ("kfb", 2), ("bo", 1), ("pm", 0), ("2/2 rc", 4)]
)
def test_the_place_in_a_round_moves_by_what_a_stitch_leaves(code: str, stitches: int) -> None:
    """Counted on the right needle; what leaves nothing there counts as what it deals with."""
    assert stitch(code).progress == stitches


@pytest.mark.parametrize("code", ["", "k2tgo", "2/ RC", "cast", "0/0"])
def test_what_is_not_a_stitch_is_not_found(code: str) -> None:
    """A slip of the pen must not become a stitch."""
    assert find_stitch(code) is None


def test_an_unknown_code_is_our_own_fault() -> None:
    """Inside the program every code comes from the table."""
    with pytest.raises(KeyError):
        stitch("nonsense")


@each_row("entry", STITCHES.values())
def test_the_kind_of_a_stitch_agrees_with_its_count(entry: object) -> None:
    """An increase leaves more than it uses, a decrease less, the rest of the worked ones the same."""
    assert hasattr(entry, "kind")
    if entry.kind is Kind.INCREASE:
        assert entry.change > 0
    elif entry.kind is Kind.DECREASE:
        assert entry.change < 0
    elif entry.kind in (Kind.PLAIN, Kind.CABLE, Kind.MARK):
        assert entry.change == 0
    assert entry.said


@each_row("entry", [e for e in STITCHES.values() if e.wrong_side])
def test_the_opposite_of_a_stitch_has_the_same_count(entry: object) -> None:
    """On the wrong side another stitch is worked, with the same use and yield (check-values 1.7.4)."""
    opposite = stitch(entry.wrong_side)  # type: ignore[attr-defined]
    assert (opposite.uses, opposite.leaves) == (entry.uses, entry.leaves)  # type: ignore[attr-defined]


def test_every_other_form_names_a_stitch_of_the_table() -> None:
    """No alias leads nowhere."""
    assert set(ALIASES.values()) <= set(STITCHES)
    assert set(list_codes()) == set(STITCHES) | set(ALIASES)


def test_no_form_stands_for_two_stitches() -> None:
    """One table: a form listed twice would silently mean the stitch that is listed last."""
    forms = [form for entry in STITCHES.values() for form in (entry.code, *entry.spellings)]
    assert len(forms) == len(set(forms))
    assert all(form == " ".join(form.lower().split()) for form in forms)


@pytest.mark.parametrize(
    ("form", "code"),
    [
        ("K1-f/b", "kfb"),
        ("kf&b", "kfb"),
        ("SKPO", "skp"),
        ("sl1-k1-psso", "skp"),
        ("sk2po", "sk2p"),
        ("CDD", "s2kp"),
        ("M1 left", "m1l"),
        ("make one", "m1"),
        ("yo  twice", "yo2"),
        ("ktbl", "k tbl"),
        ("slm", "sm"),
    ],
)
def test_other_printed_forms_are_found(form: str, code: str) -> None:
    """Source: the Council's list beside the forms of US and UK patterns (common practice)."""
    found = find_stitch(form)
    assert found is not None
    assert found.code == code


def test_whole_words_are_the_worked_stitches_with_every_form_of_them() -> None:
    """A reader made of these misses no shaping stitch of the table, and takes "k2tog tbl" before "k2tog"."""
    words = whole_words()
    shaping = [entry for entry in STITCHES.values() if entry.kind in (Kind.INCREASE, Kind.DECREASE)]
    assert {form for entry in shaping for form in (entry.code, *entry.spellings)} <= set(words)
    assert {"k1b", "mb"} <= set(words), "worked on their own, though they keep the count"
    assert not {"k", "p", "sl", "knit", "purl", "slip", "co", "bo", "pm", "hold", "turn"} & set(words)
    for place, word in enumerate(words):
        assert not any(later.startswith(word) for later in words[place + 1 :])


def test_several_stitches_worked_into_one_use_one() -> None:
    """A nupp widens the round by what it leaves less the one it is worked into: by hand, three less one are two."""
    found = find_stitch("(k1, yo, k1) in one")
    assert found is not None
    assert (found.uses, found.leaves) == (1, 3)


def test_a_row_in_own_words_is_known_by_its_counts_alone() -> None:
    """One stitch of it stays one; a whole row that changes the number is one stitch that uses and leaves all."""
    one, row = stitch("own"), stitch("own 96 to 102")
    assert (one.uses, one.leaves, one.kind) == (1, 1, Kind.OWN)
    assert (row.uses, row.leaves, row.kind) == (96, 102, Kind.OWN)


@pytest.mark.parametrize("code", ["own", "own 96 to 102"])
def test_no_page_and_no_chart_can_print_a_stitch_in_own_words(code: str) -> None:
    """It stands for words that are written elsewhere."""
    assert find_stitch(code) is None
    assert code not in list_codes()


@pytest.mark.parametrize("number", [2, 3, 4, 5])
@pytest.mark.parametrize("word", ["k", "p"])
def test_so_many_together_use_so_many_and_leave_one(word: str, number: int) -> None:
    """The name says how many; from the other side it is the same number in the other stitch. Source: common practice."""
    found = stitch(f"{word}{number}tog")
    assert (found.uses, found.leaves) == (number, 1)
    assert found.wrong_side == f"{'p' if word == 'k' else 'k'}{number}tog"
