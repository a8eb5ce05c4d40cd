"""A round in abbreviations, as a printed pattern would write it."""

from __future__ import annotations

from stepper.plan.model import Group, Item, Run
from stepper.plan.stitches.abbreviate import in_its_yarn, instruction
from tests.plans import plan
from tests.tables import each_row

K2P2 = Group((Run("k", 2, "MC"), Run("p", 2, "MC")), 25)


@each_row(
    ("phrase", "text"),
    [
        ((Run("k", 100, "MC"),), "knit"),
        ((Run("p", 100, "MC"),), "purl"),
        ((K2P2,), "*k2, p2; rep from * to end"),
        ((K2P2, Run("k", 3, "MC")), "(k2, p2) 25 times, k3"),
        # Twice is a repeat to the end as well, once is none.
        ((Group(K2P2.items, 2),), "*k2, p2; rep from * to end"),
        ((Group(K2P2.items, 1),), "k2, p2"),
        ((Run("k", 1, "MC"), Group(K2P2.items, 2)), "k1, *k2, p2; rep from * to end"),
        (
            (Group((Group(K2P2.items, 2), Run("k", 1, "MC")), 3), Run("k", 1, "MC")),
            "[(k2, p2) 2 times, k1] 3 times, k1",
        ),
        ((Run("k", 1, "MC"), Run("k2tog", 1, "MC"), Run("k", 9, "MC")), "k1, k2tog, k9"),
        ((Run("k2tog", 3, "MC"),), "k2tog 3 times"),
        ((Run("k", 2, "MC"), Run("k", 3, "A")), "k2 MC, k3 A"),
        ((Run("co", 80, "MC"),), "cast on 80"),
        ((Run("hold", 46, "left sleeve"), Run("k", 4, "MC")), "hold 46 for left sleeve, k4"),
        ((Run("k tbl", 3, "MC"), Run("sl wyif", 1, "MC")), "k3 tbl, sl1 wyif"),
    ],
)
def test_a_round_reads_as_printed(phrase: tuple[Item, ...], text: str) -> None:
    """One line, trade abbreviations."""
    assert instruction(phrase) == text


def test_binding_off_and_charts_say_what_they_are() -> None:
    """The manner of a bind-off, the name and round of a chart."""
    assert instruction((Run("bo", 40, "MC"),), manner="stretchily") == "bind off stretchily"
    assert instruction((Run("bo", 40, "MC"),), manner="") == "bind off"
    assert instruction((Run("bo", 39, "MC"), Run("draw", 1, "MC")), manner="") == "bind off"
    assert instruction((K2P2,), chart="trail", chart_round=3).startswith("chart trail, round 3: *k2")


def test_a_round_in_one_contrast_colour_says_which() -> None:
    """At its stitches it names none, so the paper would read as if it were in the main yarn."""
    made = plan(
        (
            "body",
            [
                "co8",
                "k8",
                ("k8:A", {"remarks": ("with pine",)}),
                "k8:A",
                ("k8", {"remarks": ("with chalk",)}),
                "(k1:A k1)x4",
                "k8",
                "(k1:B p1:B)x4",
            ],
        )
    )
    rounds = made.rounds
    lines = [in_its_yarn(each, rounds[each.index - 1] if each.index else None, made) for each in rounds]
    assert lines == [
        "co8",
        "k8",
        "k8:A in A",
        "k8:A in A",
        "k8",
        "(k1:A k1)x4",
        "k8 in MC",
        "(k1:B p1:B)x4, in B",
    ]
