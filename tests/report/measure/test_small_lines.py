"""Hats, mittens, socks and shawls against sums by hand."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from stepper.report.measure.measurements import measure_garment
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.roles import assign_roles
from stepper.report.measure.small_lines import (
    closed_ends,
    find_heel,
    heel_rows,
    kind_of,
    measure_small,
    most_common,
)
from stepper.report.measure.tape import Tape
from tests.garments import read_garment
from tests.plans import plan
from tests.report.measure.test_measurements import measured as sample
from tests.tables import each_row


def measured(name: str) -> dict[str, Measurement]:
    """Measure an invented garment as its file knits it."""
    project, knitted = read_garment(name)
    return {line.name: line for line in measure_garment(knitted.rounds, project)}


@each_row(
    ("garment", "name", "mm", "measure"),
    [
        # Sock: 32 stitches to 10 cm, the rib 40; 40 rounds, 2.5 mm each.
        ("sock", "cuff", 64 / 40 * 100, ""),
        (
            "sock",
            "leg, around",
            64 / 32 * 100,
            "",
        ),  # plain on the larger needle, though its section names the rib
        ("sock", "leg, length", 40 + 100, ""),  # printed
        ("sock", "heel, under the foot", 14 * 2.5, ""),  # the rows that turn it; the flap of 31 stands behind the heel
        ("sock", "foot, around", 64 / 32 * 100, "foot"),
        # heel 14, picking up 1, gusset 18, 8 cm are 32, toe 19 (8 decreases with 7 between, and 4)
        ("sock", "foot, length", (14 + 1 + 18 + 32 + 19) * 2.5, "foot_length"),
        # Mitten: 5 mm a stitch, 4 mm a round; the rib 4 mm a stitch.
        ("mitten", "cuff, around", 40 * 4, "wrist"),
        ("mitten", "hand, around", 40 * 5, "hand"),
        # cuff 15; 4, set-up, 6 × 3 increasing less the two before the first, 2, opening, 25 (10 cm), tip 8
        ("mitten", "mitten, height", (15 + 4 + 1 + 18 + 2 + 1 + 25 + 8) * 4, ""),
        ("mitten", "thumb, around", 16 * 5, ""),
        # Hat: brim 15 rounds and an increase; 20 (8 cm); crown 11, from 96 in steps of 8 to 8
        ("hat", "brim, around", 88 * 4, "head"),
        ("hat", "crown, around", 96 * 5, "head"),
        ("hat", "hat, height", (15 + 1 + 20 + 11) * 4, ""),
        # Shawl: 203 stitches at 16; 199 rows of 4 mm
        ("shawl", "shawl, widest row", 203 / 16 * 100, ""),
        ("shawl", "shawl, length", 199 * 4, ""),
    ],
)
def test_small_garments_are_measured_as_by_hand(garment: str, name: str, mm: float, measure: str) -> None:
    """Source: printed counts over the gauge of the fabric in hand, rounds counted from the printed lines."""
    line = measured(garment)[name]
    assert line.needles_mm == pytest.approx(mm)
    assert line.measure == measure


def test_a_crown_that_decreases_from_its_first_round_is_compared_with_no_head() -> None:
    """What closes the top lies above the head; the band below it goes around."""
    rounds = "\n".join(f"      *K{12 - each}, k2tog; rep from * to end.\n      Knit 2 rounds." for each in range(2, 11))
    text = f"""title: Tarn hat
sizes: one
yarn: {{MC: {{name: slate}}}}
gauge: {{plain: {{needle: 4 mm, stitches: 20, rounds: 28}}}}
body: {{head: 56 cm}}
sections:
  - name: band
    work: |
      Cast on 96 sts. Join in the round.
      Knit 40 rounds.
  - name: crown
    work: |
{rounds}
      Break yarn, draw through the remaining sts and fasten off.
"""
    project = read_project(text).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    lines = {line.name: line for line in measure_garment(plan.rounds, project)}
    assert (lines["band, around"].measure, lines["crown, around"].measure) == ("head", "")


def test_the_foot_is_compared_in_length_and_around() -> None:
    """210 mm on a foot of 24 cm; 200 mm around one of 22 cm."""
    found = measured("sock")
    assert found["foot, length"].compared
    assert found["foot, length"].ease_mm == pytest.approx(210 - 240)
    assert found["foot, around"].ease_mm == pytest.approx(200 - 220)


@pytest.mark.parametrize(
    ("name", "kind"), [("sock", "sock"), ("mitten", "mitten"), ("hat", "hat"), ("shawl", "flat")]
)
def test_what_it_is_follows_from_its_stitches_and_not_from_what_she_measured(name: str, kind: str) -> None:
    """The mitten's file has a foot and the hat's a bust; both are given more of her here."""
    project, knitted = read_garment(name)
    project = replace(project, title="Thing", body={"bust": 900, "head": 560, "foot": 230, "hand": 190})
    flow = assign_roles(knitted.rounds).flow
    assert kind_of(flow.strands[0], knitted.rounds, flow, Tape(project)) == kind


def test_a_tube_closed_at_one_end_without_a_name_is_left_alone() -> None:
    """A hat of sections without telling names may be anything; with one measurement it is for that."""
    project, knitted = read_garment("hat")
    rounds = [replace(each, section="part") for each in knitted.rounds]
    flow = assign_roles(rounds).flow
    unknown = replace(project, title="Thing", body={"bust": 900})
    assert kind_of(flow.strands[0], rounds, flow, Tape(unknown)) == "closed"
    assert all(line.measure == "" for line in measure_small(rounds, flow, Tape(unknown)))
    hand = replace(unknown, body={"hand": 190})
    assert kind_of(flow.strands[0], rounds, flow, Tape(hand)) == "mitten"


def test_a_heel_is_the_rows_between_the_rounds() -> None:
    """A flap of 31 rows and 14 that turn it, between leg and foot; a mitten has none."""
    _, knitted = read_garment("sock")
    strand = assign_roles(knitted.rounds).flow.strands[0]
    heel = find_heel(strand, knitted.rounds)
    assert heel is not None
    assert heel[1] - heel[0] == 31 + 14
    rows, share = heel_rows(strand, knitted.rounds)
    assert (len(rows), share) == (14, 1.0)
    _, knitted = read_garment("mitten")
    assert find_heel(assign_roles(knitted.rounds).flow.strands[0], knitted.rounds) is None


def test_a_sock_from_the_toe_up_has_its_foot_before_its_heel() -> None:
    """Toe 8 to 20 in 3 rounds, foot 12, heel 4 short rows there and 4 back, leg 10: 3 + 12 and half of 8 rows long.

    The stitches of the foot are 5 mm, the rounds 4 mm.
    """
    project, _ = read_garment("raglan")
    toe = ["co8", "(k1 m1)x4 k4", "(k1 m1)x4 k8", "(k1 m1)x4 k12"]
    there = ["k10 rest10", "k8 rest12", "k6 rest14", "k4 rest16"]
    heel = [(row, {"flat": True}) for row in [*there, *reversed(there)]]
    made = plan(("sock", [*toe, *["k20"] * 12, *heel, *["k20"] * 10, "bo20"]))
    rounds = [replace(each, gauge="stockinette", needle_mm=4.5) for each in made.rounds]
    found = {line.name: line for line in measure_small(rounds, assign_roles(rounds).flow, Tape(project))}
    assert found["foot, length"].needles_mm == pytest.approx((3 + 12 + 4) * 4)
    assert found["leg, length"].needles_mm == pytest.approx(10 * 4)
    assert found["cuff"].stitches == 20
    assert found["foot, around"].needles_mm == pytest.approx(20 * 5)


def test_short_rows_there_and_back_count_once() -> None:
    """38 short rows of the sample are 19 of depth: 19 / 42 of 10 cm. Source: common practice."""
    assert sample("socks")["first heel, under the foot"].needles_mm == pytest.approx(19 / 42 * 100)


def test_a_sock_is_open_at_the_cuff_and_closed_at_the_toe() -> None:
    """64 cast on, 16 grafted; 64 is what most rounds have."""
    _, knitted = read_garment("sock")
    strand = assign_roles(knitted.rounds).flow.strands[0]
    assert closed_ends(strand, knitted.rounds) == (False, True)
    assert most_common(strand, knitted.rounds) == 64
