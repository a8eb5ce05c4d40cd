"""Words for answers about a part or a line that was named."""

from __future__ import annotations

from stepper.craft.stitches import Kind
from stepper.language.effect_words import tell_effect
from stepper.session.effects import Effect
from stepper.session.questions import about_named
from stepper.session.state import NoteKept
from tests.fixtures import plan_named
from tests.tables import each_row

SWITCHBACK = plan_named("switchback")
DIVIDE = next(each.index for each in SWITCHBACK.rounds if each.holds)
NOTE = NoteKept(index=DIVIDE + 20, text="a larger needle.")


def _rhythm(*gaps: tuple[int, int], ahead: int | None = 3) -> about_named.TellRhythm:
    index = None if ahead is None else DIVIDE + 1 + ahead
    return about_named.TellRhythm(kind=Kind.DECREASE, gaps=gaps, index=index, here=DIVIDE + 1)


@each_row(
    ("effect", "line"),
    [
        (about_named.TellPartNotes(notes=(("body", (NOTE,)),)), "Body, round 20: a larger needle."),
        (
            about_named.TellPartNotes(notes=(("left sleeve", ()), ("right sleeve", ()))),
            "Nothing is noted in left sleeve and right sleeve.",
        ),
        (
            about_named.TellPartCounts(counts=(("left sleeve", 57, 44), ("hem", 90, 90)), is_line=False),
            "Left sleeve: 57 stitches at its beginning, 44 at its end. Hem: 90 stitches at its beginning, as at its end.",
        ),
        (
            about_named.TellPartCounts(counts=(("Divide", 246, 164),), is_line=True),
            "246 stitches before Divide, 164 after it.",
        ),
        (about_named.TellPartCounts(counts=(), is_line=True), "Nothing here is called so."),
        (
            about_named.TellLinesLeft(name="divide", ahead=(DIVIDE,), done=0, here=DIVIDE - 4),
            "One is left, in 4 rounds, round 37, Divide.",
        ),
        (
            about_named.TellLinesLeft(name="divide", ahead=(DIVIDE, DIVIDE + 9), done=2, here=DIVIDE),
            "2 are left, the next in this round; 2 done.",
        ),
        (about_named.TellLinesLeft(name="divide", ahead=(), done=2, here=DIVIDE), "None is left; 2 done."),
        (about_named.TellLinesLeft(name="attic", ahead=(), done=0, here=0), "No line here is called attic."),
        (
            about_named.TellUnderarm(index=DIVIDE, stitches=(9, 9)),
            "9 stitches each time, in Yoke, round 37 of 37, Divide.",
        ),
        (
            about_named.TellUnderarm(index=DIVIDE, stitches=(9, 10)),
            "9 and 10 stitches, in Yoke, round 37 of 37, Divide.",
        ),
        (
            about_named.TellUnderarm(index=None, stitches=()),
            "Nothing is cast on where stitches are put on hold.",
        ),
        (_rhythm((12, 7)), "Every 12 rounds, 7 times. The next in 3 rounds, round 4."),
        (_rhythm((2, 2), (3, 1), ahead=0), "Every 2 rounds, 2 times; then every 3 rounds, 1 time. The next now."),
        (_rhythm((1, 1)), "In every round. The next in 3 rounds, round 4."),
        (
            _rhythm((2, 1), (3, 1), (2, 1), (4, 1)),
            "Every 2 to 4 rounds, 4 times more. The next in 3 rounds, round 4.",
        ),
        (_rhythm(), "Once, in 3 rounds, round 4."),
        (_rhythm(ahead=None), "No decreases come in body."),
    ],
)
def test_the_answer_comes_first_and_then_what_it_rests_on(effect: Effect, line: str) -> None:
    """Short enough to remember, with a word or a comma between two numbers."""
    assert tell_effect(effect, SWITCHBACK) == line
