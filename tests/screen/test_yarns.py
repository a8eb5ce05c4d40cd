from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.colours.colour import rgb_from_hex
from stepper.screen.drawing.rows import text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.yarns import NO_YARNS, yarns_of


@given(st.dictionaries(st.text(max_size=4), st.text(max_size=6), max_size=30))
def test_no_two_yarns_have_the_same_sign(names: dict[str, str]) -> None:
    """Without colour the sign is all there is."""
    signs = [yarn.sign for yarn in yarns_of(names, {}).by_key.values()]

    assert len(set(signs)) == len(signs) == len(names)
    assert all(len(sign) == 1 for sign in signs)


def test_signs_are_the_letters_of_the_file_where_they_can_be() -> None:
    """The chart in the pattern and the one on the screen agree."""
    yarns = yarns_of({"MC": "chalk", "A": "pine", "a2": "ash", "B": "ember"}, {})

    assert [yarn.sign for yarn in yarns.by_key.values()] == [".", "A", "2", "B"]


def test_a_yarn_without_a_colour_is_plain() -> None:
    """Its sign in the terminal's own ink."""
    yarns = yarns_of({"MC": "chalk", "A": "pine"}, {"MC": rgb_from_hex("#ece6d8"), "A": None})

    assert yarns.paint("A", Depth.TRUE).ground is None
    assert yarns.paint("MC", Depth.TRUE).ground == rgb_from_hex("#ece6d8")
    assert yarns.paint("MC", Depth.NONE).ground is None
    assert text_of((yarns.swatch("A", Depth.TRUE),)) == " A pine "


def test_a_yarn_nobody_told_of_is_called_by_its_key() -> None:
    """Stitches held have a name in the place of a yarn."""
    assert NO_YARNS.of("left sleeve").sign == "L"
    assert NO_YARNS.of("").sign == "?"
