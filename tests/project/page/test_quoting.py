from __future__ import annotations

import yaml
from hypothesis import given
from hypothesis import strategies as st

from stepper.project.page.quoting import comment, list_values, size_line, value, writable


@given(st.text(max_size=60))
def test_a_value_comes_back_as_it_was(text: str) -> None:
    """Whatever a page or a knitter calls something. Outside check: PyYAML reads it."""
    plain = " ".join(writable(text).split())
    assert yaml.load(f"a: {value(text)}\n", Loader=yaml.BaseLoader) == {"a": plain}
    assert yaml.load(f"{{a: {value(text)}, b: c}}\n", Loader=yaml.BaseLoader) == {"a": plain, "b": "c"}


@given(st.text(max_size=60))
def test_a_comment_stays_a_comment(text: str) -> None:
    """Nothing in it becomes a key. Outside check: PyYAML reads past it."""
    assert yaml.load(f"{comment(text)}\na: b\n", Loader=yaml.BaseLoader) == {"a": "b"}


def test_a_sign_that_no_file_may_hold_is_written_as_its_code() -> None:
    """It is seen, and not lost."""
    assert writable("a\x07b\x0cc") == "a<U+0007>b c"


def test_lists_are_written_as_printed() -> None:
    """The first size outside the brackets."""
    assert list_values(("S", "M", "L")) == "S (M, L)"
    assert size_line(("one",)) == "one"
    assert size_line(("S:1", "M")) == '"S:1 (M)"'
