"""What rounds take of each yarn, how it lasts and where its skeins end is as it was agreed on.

The texts in `agreed/` only notice change: lengths of stitches are held against swatches and books in `tests/craft/test_stitch_yarn.py`,
the sums of a round, forecasts and the ends of skeins against arithmetic by hand in the tests beside this one. Here all of them are worked
out for whole garments, from every kind of place and whatever was weighed. Where one differs, the difference is read before it is
kept: `STEPPER_WRITE_GOLDENS=1`.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path

import pytest

from stepper.plan.materials import Stock
from stepper.plan.model import Plan
from stepper.plan.yarn.skein_ends import find_skein_ends
from stepper.plan.yarn.worked_twice import second_pieces, with_second_pieces
from stepper.plan.yarn.yarn_left import Weighing, forecast
from stepper.plan.yarn.yarn_use import Amount, yarn_use
from tests.agreed import compare, joined, plan_of
from tests.plan.under_way.test_agreed_changes import told
from tests.plan.under_way.test_resuming import compiled

AGREED = Path(__file__).parent / "agreed"
PARTS_OF_A_SKEIN = (0.0, 0.04, 0.5, 0.99, 1.08, 2.3)
"""What is weighed of a yarn. Unit: skeins."""
GAUGE = "gauge:\n  plain: {needle: 4 mm, stitches: 20, rounds: 30}\n  rib: {needle: 3.5 mm, stitches: 24, rounds: 30}\n"
YARN = 'yarn:\n  MC: {name: oat, colour: "#d8ccb0", skein: {grams: 50, metres: 10}, bought: 3}\n  CC: {name: moss, colour: "#4f6b3a", skein: {grams: 50, metres: 4}}\n'
GARMENTS = ["fixture-hat", "fixture-mittens", "fixture-socks", "fixture-cardigan"]
WEIGHED = GAUGE.replace("rounds: 30}\n  rib", "rounds: 30, swatch: {stitches: 30, rounds: 40, grams: 7, yarn: MC}}\n  rib")
"""The same gauge, of which the swatch was weighed: what it takes is known so well that the trade's allowance is more."""
WORKS: Mapping[str, str] = {
    "edges": "CO 40 sts with CC. Change to MC. Knit 2 rows. BO 10 sts, k to end. Purl 1 row. *K2, yo, k2tog; rep from * to last 2 sts, k2. BO loosely.",
    "sewn": "CO 24 sts. Join in the round. *K1, p1; rep from * to end. Knit 1 round with CC. BO with a sewn bind-off.",
    "stretchy": "CO 24 sts. *K1, p1; rep from * to end. BO with a stretchy bind-off.",
    "on other needles": "CO 24 sts. Join in the round. Knit 2 rounds. Change to 2 mm needles. Knit 1 round. Change to 5 mm needles. Knit 1 round. Change to 7 mm needles. Knit 1 round. BO.",
    "wide ribs": "CO 84 sts. Join in the round. *K6, p1; rep from * to end. *K3, p1; rep from * to end. *K7, p7; rep from * to end. *K6, p6; rep from * to end. *K2tog, p2; rep from * to end. BO.",
    "yarns carried": "CO 24 sts. Join in the round. *K3 with MC, k1 with CC; rep from * to end. Knit 9 rounds. *K2 with CC, k2 with MC; rep from * to end. Knit 10 rounds. Knit 1 round with CC. BO.",
    "yarns in rows": "CO 24 sts. Row 1 (RS): K4 with MC, k2 with CC, k18 with MC. Row 2: P12 with MC, p3 with CC, p9 with MC. BO.",
}  # fmt: skip
"""Small works, each about what some rounds take; a sentence is a line."""


def in_fibres(work: str, gauge: str = GAUGE) -> Plan:
    """Return the plan of a small work."""
    lines = "".join(f"      {sentence.rstrip('.')}.\n" for sentence in work.split(". "))
    return compiled(f"title: Bramble piece\nunits: cm\nsizes: one\n{YARN}{gauge}sections:\n  - name: piece\n    gauge: plain\n    work: |\n{lines}")


def amount_row(amount: Amount) -> str:
    """Write a length of yarn with its parts, and why it may be less or more. Unit: mm."""
    return " ".join(
        f"{sign}{key} {value:.1f}"
        for sign, values in (("", amount.parts), ("-", amount.down), ("+", amount.up))
        for key, value in sorted(values.items())
    )


def use_rows(plan: Plan) -> list[str]:
    """Write what each round takes, rounds that repeat once, and where the second piece is added."""
    uses = yarn_use(plan)
    twice = with_second_pieces(plan, uses)
    rows = []
    for round_, use, both in zip(plan.rounds, uses, twice, strict=True):
        row = " | ".join(f"{yarn}: {amount_row(amount)}" for yarn, amount in sorted(use.items()))
        again = "" if both == use else f" || with the second piece {sum(each.likely_mm for each in both.values()):.0f}"
        rows.append(f"{round_.before}-{round_.after} {row or 'nothing'}{again}")
    return joined(rows)


def weighings(plan: Plan, stock: Stock) -> Iterator[Weighing | None]:
    """Yield what may have been weighed, at the beginning, within the work and when it is done."""
    yield None
    rounds = len(plan.rounds)
    for index in sorted({0, rounds // 3, rounds - 2, rounds - 1, rounds}):
        stitches = plan.rounds[index].progress if index < rounds else 0
        for part in PARTS_OF_A_SKEIN:
            for stitch in {0, stitches // 2}:
                yield Weighing(index=index, stitch=stitch, grams=round(part * stock.skein.grams, 1))


def lasting_rows(plan: Plan) -> Iterator[str]:
    """Write how each yarn lasts, and where its skeins end."""
    yield f"worked twice: {list(second_pieces(plan))}"
    uses = with_second_pieces(plan, yarn_use(plan))
    for yarn in (*plan.yarns, "none"):
        stock = plan.materials.stocks.get(yarn)
        if stock is None:
            yield f"{yarn}: {told(forecast(plan, yarn))} {told(find_skein_ends(plan, yarn))}"
            continue
        for weighing in weighings(plan, stock):
            found = forecast(plan, yarn, weighing, uses)
            over = "" if found is None or found.over_m is None else f" over {found.over_m:.2f}"
            ends = " ".join(
                f"{end.soonest}-{end.likely}{'' if end.more else ' last'}"
                for end in find_skein_ends(plan, yarn, weighing)
            )
            yield f"{yarn} weighed {told(weighing)}: {told(found)}{over} ends {ends or '-'}"


def test_rounds_take_what_was_agreed() -> None:
    """A stitch that is measured as another one is seen in no sum of a whole garment, and the yarn runs out a round too early."""
    rows = []
    for name, work in WORKS.items():
        rows += [f"@ {name}", *use_rows(in_fibres(work)), *lasting_rows(in_fibres(work))]
    weighed = in_fibres("CO 24 sts. Join in the round. Knit 40 rounds", WEIGHED)
    rows += ["@ by a weighed swatch", *use_rows(weighed), *lasting_rows(weighed)]
    compare(AGREED / "small.txt", rows)


@pytest.mark.parametrize("garment", GARMENTS)
def test_garments_take_what_was_agreed(garment: str) -> None:
    """She buys what is told before the cast-on."""
    plan = plan_of(garment)
    assert plan is not None
    compare(AGREED / f"{garment}.txt", [*use_rows(plan), *lasting_rows(plan)])


def test_no_text_is_left_over() -> None:
    """What nobody works out any more must not be kept as if it were agreed on."""
    assert {path.stem for path in AGREED.glob("*.txt")} == {*GARMENTS, "small"}
