"""Pairs that touch, and what becomes of them: against the published definitions and general libraries."""

from __future__ import annotations

import numpy as np
import pytest
import skimage

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from stepper.report.colours import PLAIN_ROUNDS, Colours, colours_after_mend, compare_colours, list_views
from tests.plan.test_compile import SWITCHBACK
from tests.project.samples import HEAD, project


def looked_at(text: str) -> Colours:
    """Work out the colours of a text that must come out."""
    found = read_project(text).project
    assert found is not None
    plan = compile_plan(found).plan
    assert plan is not None
    return compare_colours(found, plan)


def with_colours(pine: str, ember: str) -> Colours:
    """Return the colours of the pullover with two other contrasts."""
    text = SWITCHBACK.read_text(encoding="utf-8")
    return looked_at(text.replace("#1f4d3a", pine).replace("#c4512d", ember))


def test_the_red_and_green_pair_vanishes_and_a_change_is_proposed() -> None:
    """#C0392B on #1E7A34: contrast 1.007, Δ L* 0.19 (check-values 7.3, computed)."""
    found = with_colours("#1e7a34", "#c0392b")
    worst = found.pairs[0]
    assert {worst.one, worst.other} == {"A", "B"}
    assert worst.contrast == pytest.approx(1.007, abs=0.0005)
    assert worst.lightness_apart == pytest.approx(0.19, abs=0.02)
    assert worst.in_grey == "vanishes"
    assert worst.hard
    assert found.mend is not None
    assert found.mend.apart >= 20
    after = colours_after_mend(found)
    assert after[found.mend.yarn] == found.mend.colour
    assert {key for key in after if after[key] != found.colours[key]} == {found.mend.yarn}


def test_the_figures_agree_with_colour_science_and_scikit_image() -> None:
    """Lightness by CIE 1976, difference by CIEDE2000, lightness again by skimage to 0.02 (check-values 7.2)."""
    import colour as colour_science

    found = with_colours("#1f4d3a", "#c4512d")
    for pair in found.pairs:
        bytes_ = [
            np.array([each.red, each.green, each.blue]) / 255
            for each in (found.colours[pair.one], found.colours[pair.other])
        ]
        light = [np.where(each <= 0.04045, each / 12.92, ((each + 0.055) / 1.055) ** 2.4) for each in bytes_]
        shares = [float(each @ [0.2126, 0.7152, 0.0722]) for each in light]
        ratio = (max(shares) + 0.05) / (min(shares) + 0.05)
        assert pair.contrast == pytest.approx(ratio)
        levels = [float(colour_science.lightness(100 * each, method="CIE 1976")) for each in shares]
        assert pair.lightness_apart == pytest.approx(abs(levels[0] - levels[1]), abs=1e-6)
        skimage_levels = [skimage.color.rgb2lab(each.reshape(1, 1, 3))[0, 0, 0] for each in bytes_]
        assert pair.lightness_apart == pytest.approx(abs(skimage_levels[0] - skimage_levels[1]), abs=0.02)


def test_every_pair_of_the_sample_and_where_it_touches() -> None:
    """Chalk touches both contrasts; pine and ember meet in ridge alone."""
    found = with_colours("#1f4d3a", "#c4512d")
    assert {(pair.one, pair.other): pair.where for pair in found.pairs} == {
        ("A", "B"): ("ridge",),
        ("A", "MC"): ("trail", "ridge"),
        ("B", "MC"): ("ridge", "cairn"),
    }
    assert found.mend is None


def test_a_chart_repeats_so_its_edges_touch() -> None:
    """A contrast in the last column lies beside the one in the first, a lowest row above the highest."""
    head = HEAD.replace('{{".": MC, a: A}}', '{{".": MC, a: A, b: B}}').replace(
        "      a..a\n      .aa.\n", "      a..b\n      ....\n"
    )
    head = head.replace('"#4f6b3a"}}', '"#4f6b3a"}}\n  B: {{name: rust, colour: "#a04020"}}')
    found = looked_at(project("Cast on 40 sts.\nJoin in the round.\nChart peak, 2 times.", head=head))
    assert ("A", "B") in {(pair.one, pair.other) for pair in found.pairs}


def test_yarns_of_stripes_touch_from_round_to_round() -> None:
    """No chart is needed for two yarns to lie on each other."""
    text = project("Cast on 40 sts.\nJoin in the round.\nWith A, knit 3 rounds.\nWith MC, knit 3 rounds.")
    found = looked_at(text)
    assert [pair.where for pair in found.pairs] == [(PLAIN_ROUNDS,)]
    assert found.charts == ()


def test_a_yarn_without_a_colour_is_named() -> None:
    """It is in a chart and cannot be compared."""
    head = HEAD.replace(', colour: "#4f6b3a"', "")
    found = looked_at(project("Cast on 40 sts.\nJoin in the round.\nChart peak.", head=head))
    assert (found.pairs, found.unknown) == ((), ("A",))


def test_grey_is_grey_and_other_eyes_see_other_colours() -> None:
    """In colour, in grey, and three kinds of eyes."""
    views = dict(list_views(with_colours("#1f4d3a", "#c4512d")))
    assert list(views) == ["in colour", "in grey", "red-blind", "green-blind", "blue-blind"]
    for colour in views["in grey"].values():
        assert colour.red == colour.green == colour.blue
    assert views["red-blind"]["B"] != views["in colour"]["B"]
