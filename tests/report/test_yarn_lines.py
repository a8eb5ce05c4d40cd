"""The yarn table in words."""

from __future__ import annotations

from stepper.craft.skeins import Skein
from stepper.plan.model import Plan
from stepper.plan.yarn.yarn_left import Forecast
from stepper.report.leftovers import Leftover
from stepper.report.yarn import list_yarns
from stepper.report.yarn_lines import forecast_sentences, yarn_length, yarn_lines
from tests.plan.test_compile import SWITCHBACK, plan_of
from tests.project.samples import HEAD, project


def table(plan: Plan, **remnants: tuple[Leftover, ...]) -> str:
    """Write the table of a plan."""
    return "\n".join(yarn_lines(plan, list_yarns(plan), remnants))


def test_the_table_of_the_sample_names_its_few_metres_and_its_reasons() -> None:
    """Sections, skeins, the remnant that will do, and why there is a range."""
    text = table(plan_of(SWITCHBACK.read_text(encoding="utf-8")))
    assert "chalk (MC)" in text
    assert text.count("Only a few metres: a remnant of") == 2
    assert "50 g, 175 m (the file)" in text
    assert "It lasts; " in text
    flat = " ".join(text.split())
    assert "A loop of stockinette: 17.8 mm (17.0 as knitted, 18.7 as blocked; 20.7 by the rule of area)." in flat
    assert "A loop of colourwork: 18.8 mm (18.2 if counted as knitted, 19.5 if after blocking; " in flat
    tables = [line for line in text.splitlines() if not line.endswith(".")]
    assert all(len(line) <= 80 for line in tables)


def test_a_yarn_without_a_skein_says_what_to_write() -> None:
    """And is still given in metres."""
    text = table(plan_of(project("Cast on 40 sts.\nChart peak.")))
    assert "The file names no skein of moss" in text
    assert "skein: {grams: 50, metres: 175}" in text


def test_what_is_bought_may_be_unknown() -> None:
    """Then nothing is said about lasting."""
    text = table(plan_of(project("Cast on 40 sts.\nKnit 9 rounds.", head=HEAD.replace(", bought: 3", ""))))
    assert "The file does not say how much is bought." in text


def test_a_shortage_is_told_with_place_and_skeins() -> None:
    """Where it likely ends, where at the soonest, and what to buy."""
    text = table(plan_of(project("Cast on 60 sts.\nKnit 600 rounds.")))
    assert "It does not last: it likely runs out in body, round" in text
    assert "more skeins before then" in text


def test_lasting_likely_but_not_surely() -> None:
    """One skein to be sure, none if it goes as is likely."""
    plan = plan_of(project("Cast on 60 sts.\nKnit 60 rounds."))
    found = Forecast(
        yarn="MC",
        left_m=100,
        rest_low_m=80,
        rest_m=95,
        rest_high_m=110,
        out_soonest=50,
        buy=1,
        weighed=True,
        factor=1.1,
    )
    told = " ".join(forecast_sentences(found, plan, Skein(grams=50, metres=120), 3))
    assert "10 % more than the gauge says" in told
    assert "Still needed: 95 m (80 to 110 m)." in told
    assert "It likely lasts, but may run out in body, round 51 of 61." in told
    assert "Buy 1 more skein before then to be sure; 0 if it goes as is likely." in told


def test_a_remnant_of_another_garment_is_named() -> None:
    """Enough or not enough, by the higher figure."""
    moss = Leftover(yarn="moss", garment="Gorse hat", grams=40, skein=Skein(grams=50, metres=120))
    text = table(plan_of(project("Cast on 40 sts.\nChart peak.")), A=(moss,))
    assert "40 g of moss are left from Gorse hat: enough." in text


def test_yards_for_a_file_in_inches() -> None:
    """91.44 m are 100 yd (international yard)."""
    assert yarn_length(91.44, "in") == "100 yd"
    assert (yarn_length(91.44, "cm"), yarn_length(9.1, "cm"), yarn_length(0, "cm")) == (
        "91 m",
        "9.1 m",
        "0 m",
    )


def test_a_skein_in_ounces_and_yards_is_shown_in_both() -> None:
    """1.75 oz are 49.6 g and 137 yd are 125 m (international ounce and yard), for a file in inches."""
    text = "units: in\n" + project("Cast on 40 sts.\nKnit 9 rounds.", head=HEAD)
    text = text.replace("skein: {grams: 50, metres: 120}", "skein: {ounces: 1.75, yards: 137}")
    assert "50 g (1.8 oz), 137 yd (the file)" in table(plan_of(text))


def test_a_piece_worked_twice_is_told_as_such() -> None:
    """Else the row would seem to be for one sleeve."""
    assert "body, twice " in table(plan_of(project("Cast on 40 sts.\nKnit 9 rounds.\nBind off.\nNote: The other sleeve is the same.")))
