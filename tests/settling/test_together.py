"""Remarks that follow each other are kept in one answer, and nothing else with them."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.left_open import LeftKind, find_left_open
from stepper.settling.together import alike_below, ask_together
from tests.project.samples import project
from tests.settling.typed import type_answers

MARK = "# LOOK (row 9 of the text)."


def hat(*rows: str, front: str = "") -> str:
    """Write a hat with rows between its cast-on and its end; a mark stands above each note."""
    marked = [f"{MARK}\n{row}" if row.startswith("Note") else row for row in rows]
    return front + project("\n".join(["Cast on 40 sts.", *marked, "Bind off."]), size="M")


def together(text: str, number: int = 0) -> list[str]:
    """Return the words of what may be kept with an open row."""
    opened = find_left_open(text)
    return [each.text for each in alike_below(opened[number], opened, text)]


def test_remarks_are_together_until_something_is_knitted() -> None:
    """A line between them, or a row that may be knitted, ends it."""
    text = hat("Note: It is soft.", "Note: This is her hat.", "Note: Twirl k2 in loops.", "Note: It ends.")
    assert together(text) == ["It is soft.", "This is her hat."]
    assert together(text.replace("Note: It is soft.", "Note: It is soft.\n      # soft")) == together(text)
    assert together(text, 2) == []
    assert together(text, 3) == []
    assert together(hat("Note: It is soft.", "Knit 1 row.", "Note: This is her hat.")) == []


def test_text_in_front_that_may_be_knitted_is_asked_about_alone() -> None:
    """Among six remarks in front of a shawl stood its cast-on and three of its parts."""
    fronts = ["Size 1 is small.", "Cast on 8 sts into a ring.", "Pins are sharp.", "1st round: o, k1, o."]
    front = "".join(f"# LOOK (row {at} of the text): it stands in front of the pattern.\n# {each}\n" for at, each in enumerate(fronts))
    assert together(hat(front=front)) == ["Size 1 is small.", "Pins are sharp."]
    assert together(hat(front=front), 1) == []


def test_one_answer_keeps_them_all(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Or none, and they are asked about one by one."""
    text = hat("Note: It is soft.", "Note: This is her hat.")
    opened = find_left_open(text)
    type_answers(monkeypatch, "rows", "")
    kept = ask_together(opened, text)
    assert find_left_open(kept) == ()
    assert "Note: It is soft." in kept
    assert "Answer notes or one by one." in capsys.readouterr().out
    type_answers(monkeypatch, "one by one")
    assert ask_together(opened, text) == text


def test_all_text_in_front_is_one_question(monkeypatch: pytest.MonkeyPatch) -> None:
    """It stays where it is, as comments."""
    front = "# LOOK (row 3 of the text): it may be an instruction.\n# Loops.\n#\n# LOOK (row 4 of the text): it may.\n# Twirls.\n"
    text = hat("Note: It is soft.", front=front)
    opened = find_left_open(text)
    both = alike_below(opened[0], opened, text)
    assert [each.kind for each in both] == [LeftKind.FRONT, LeftKind.FRONT]
    type_answers(monkeypatch, "")
    assert ask_together(both, text) == text.replace("# LOOK (row 3 of the text): it may be an instruction.\n", "").replace(
        "# LOOK (row 4 of the text): it may.\n", ""
    )
