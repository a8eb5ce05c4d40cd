"""What each line comes to in a size alone, and which lines spread a change."""

from __future__ import annotations

from itertools import groupby
from random import Random

from stepper.plan.compile import work_as_knitted
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Run
from stepper.plan.state.size_alone import (
    LinesAlone,
    RoundAlone,
    change_of,
    lines_alone,
    lines_labelled_once,
    quote_label,
    spreads_change,
    why_unmet,
)
from stepper.plan.stitches.evenly import Change
from stepper.project.model import Project
from stepper.project.reader import read_project
from tests.project.samples import project
from tests.tables import each_row


def worked(line: str, *, begin: str = "Join in the round.") -> tuple[Project, LinesAlone]:
    """Work a labelled line on forty stitches."""
    read = read_project(project(f"Cast on 40 sts.\n{begin}\nThis: {line}", sizes="S", size="S"))
    assert read.project is not None
    return read.project, lines_alone(work_as_knitted(read.project, frozenset()).drafts)


def test_a_line_spreads_a_change_if_any_of_its_rounds_does() -> None:
    """A line of two rounds, one of which is plain, can be blended by the other."""
    (line,) = lines_labelled_once(worked("Knit 2 rounds.")[0])
    plain = RoundAlone(before=40, after=40, change=None)
    spread = RoundAlone(before=40, after=50, change=Change(code="m1", yarn="MC"))
    at = line.place.line
    assert [
        spreads_change(line, {at: rounds}) for rounds in ((plain, spread), (plain, plain), (spread, spread))
    ] == [True, False, True]
    assert not spreads_change(line, {})


def test_a_round_spreads_its_change_where_gaps_and_edges_are_alike() -> None:
    """Stitch by stitch: three changes or more, gaps that differ by two at most, and no edge wider than the widest gap and two more."""
    chance, spread = Random(5), 0
    for _ in range(600):
        code = chance.choice(("k2tog", "m1", "kfb", "p2tog"))
        usual, row = chance.randint(0, 5), list[str]()
        for number in range(chance.choice((1, 2, 3, 3, 3, 4, 6))):
            edge = (
                chance.choice((0, 0, 2, 3))
                if number == 0
                else chance.choice((0, 0, 1, 2, 2, 3) if chance.random() < 0.5 else (0, 1))
            )
            row += ["k"] * (usual + edge) + [code]
        row += ["k"] * chance.choice((0, usual, usual + 2, usual + 3, usual + 4))
        if chance.random() < 0.15:
            row[chance.randrange(len(row))] = chance.choice(("p", "ssk", "sl", "m1", "pm"))
        yarns = ["MC"] * len(row)
        if chance.random() < 0.1:
            yarns[chance.randrange(len(row))] = "A"
        chart = "peak" if chance.random() < 0.05 else None
        runs = tuple(
            Run(one, len(list(alike)), yarn) for (one, yarn), alike in groupby(zip(row, yarns, strict=True))
        )
        before, after = sum(run.uses for run in runs), sum(run.leaves for run in runs)
        draft = DraftRound(
            section="", before=before, after=after, phrase=runs, line=1, size=0, flat=False, side="RS", needle_mm=None,
            fabric=None, held={}, markers=(), chart=chart,
        )  # fmt: skip
        plain, changes = (
            {one for one in row if one in "kp"},
            {one for one in row if one not in ("k", "p", "sl", "pm")},
        )
        gaps = [len(gap) for gap in "".join("c" if one in changes else "." for one in row).split("c")]
        inner = gaps[1:-1]
        fits = (
            len(changes) == 1
            and len(plain) < 2
            and set(row) <= plain | changes
            and len(set(yarns)) == 1
            and not chart
        )
        fits = fits and before != after and before > 0 and len(gaps) >= 4 and max(inner) <= min(inner) + 2
        fits = fits and max(gaps[0], gaps[-1]) <= max(inner) + 2
        expected = Change(code=min(changes), yarn="MC", plain=min(plain, default="k")) if fits else None
        assert change_of(draft) == expected, row
        spread += fits
    assert 100 < spread < 500


@each_row(
    ("line", "code"),
    [
        ("Increase evenly to 50 sts.", "m1"),
        ("Decrease 8 sts evenly.", "k2tog"),
        ("*K3, k2tog; rep from * to end.", "k2tog"),
        ("*K5, ssk; rep from * to last 5 sts, k to end.", "ssk"),
        ("*K1, yo; rep from * to end.", "yo"),
        ("*K7, kfb; rep from * to end.", "kfb"),
        ("*P2tog; rep from * to end.", "p2tog"),
        ("*K2, k3tog; rep from * to end.", "k3tog"),
        # These stand where they stand: at edges, beside markers, in lace, in two colours.
        ("K1, ssk, k to last 3 sts, k2tog, k1.", None),
        ("*K2, yo, k2tog; rep from * to end.", None),
        ("K10, k2tog, k16, k2tog, k10.", None),
        ("*K8, sl1, kfb; rep from * to end.", None),
        ("K1, m1, k1, m1, k1, m1, k to end.", None),
        ("Knit 2 rounds.", None),
    ],
)
def test_a_line_spreads_its_change_or_shapes_where_it_stands(line: str, code: str | None) -> None:
    """What is spread can be spread anew over other stitches; a dart or a raglan line would come out of place."""
    found, alone = worked(line)
    (labelled,) = lines_labelled_once(found)
    rounds = alone[labelled.place.line]
    assert (rounds[0].change.code if rounds[0].change is not None else None) == code
    assert spreads_change(labelled, alone) is (code is not None)
    assert rounds[0].before == 40


def test_the_rounds_of_a_line_stand_under_its_number() -> None:
    """With the stitches before and after each."""
    found, alone = worked("Increase evenly to 50 sts. Knit 2 rounds.")
    (labelled,) = lines_labelled_once(found)
    assert [(each.before, each.after) for each in alone[labelled.place.line]] == [
        (40, 50),
        (50, 50),
        (50, 50),
    ]


def test_a_label_that_two_lines_have_names_neither() -> None:
    """A switch at it would be one of two places."""
    read = read_project(project("Cast on 40 sts.\nInc: Knit 1 row.\nInc: Knit 1 row.\nOther: Knit 1 row."))
    assert read.project is not None
    assert [line.label for line in lines_labelled_once(read.project)] == ["Other"]


def test_where_no_line_can_the_wording_of_one_is_shown() -> None:
    """She learns what to write; where the stitches meet there is nothing to say."""
    found, alone = worked("Knit 2 rounds.")
    (labelled,) = lines_labelled_once(found)
    assert "put one in front of such a line" in why_unmet(labelled, 0, 36, alone, found)
    assert why_unmet(labelled, 0, 40, alone, found) == ""
    assert quote_label("Inc") == '"Inc"'
