from __future__ import annotations

import copy
import json
from dataclasses import replace
from typing import Any

from stepper.lap.content import describe_sight
from stepper.lap.ports import Sight
from stepper.lap.questions import NOT_READ
from stepper.screen.course import course_of
from stepper.screen.device_status import DeviceStatus, EarsState, HeardWords, MouthState
from stepper.screen.drawing.rows import text_of
from stepper.screen.drawing.style import Terminal
from stepper.screen.pages.step_text import word_step, write_step
from stepper.screen.view import draw_screen
from tests.plans import plan
from tests.screen.scenes import MOMENTS, Desk
from tests.screen.test_view import shows_large
from tests.session.open_row.evening import ROW
from tests.tables import each_row

LISTENING = DeviceStatus(
    ears=EarsState.LISTENING,
    why_no_ears="",
    mouth=MouthState.QUIET,
    why_no_mouth="",
    heard=HeardWords(text="where am i", did="answered"),
)


def shown(
    desk: Desk, *, devices: DeviceStatus | None = None, here: bool = True, speaking: bool = False
) -> dict[str, Any]:
    """Describe what a page shows of a session, as it arrives there."""
    sight = Sight(scene=desk.scene(devices=devices), session=copy.copy(desk.conductor.session))
    described: dict[str, Any] = json.loads(json.dumps(describe_sight(sight, here=here, room=40, speaking=speaking)))
    return described


def test_a_page_says_what_the_screen_says() -> None:
    """One program with two faces: the step, the place, the count and what is ahead are in the same words."""
    desk = Desk().do("go to yoke round 4", "stitch 20")
    page = shown(desk)
    rows = draw_screen(desk.scene(), Terminal(columns=160, rows=60))
    drawn = "\n".join(text_of(row) for row in rows)
    screen = " ".join(drawn.split())
    screen += " ".join(text_of(row) for row in write_step(word_step(desk.scene()), 200))
    for words in (*page["step"], *page["where"], page["section"], page["count"]["word"], page["count"]["detail"]):
        assert words in screen or shows_large(words, drawn), words
    for name, value in page["ahead"]:
        assert f"{name} {value}" in screen
    for name, share, left in page["progress"]:
        assert f"{name} {int(share * 100)} %, {left}".lower() in screen.lower()
    assert page["round"] == "Round 4 of 6"


@each_row("moment", MOMENTS)
def test_every_moment_can_be_shown(moment: str) -> None:
    """Whatever the screen can show, a page can, as plain JSON."""
    scene = MOMENTS[moment]()
    sight = Sight(scene=scene, session=Desk().conductor.session)
    page = json.loads(json.dumps(describe_sight(sight, here=True, room=40, speaking=False)))
    assert page["step"]
    assert page["count"]["badge"] in ("stands", "asks", "off", "calm")


def test_a_needle_is_changed_before_the_step() -> None:
    """What has to be done first is said first, and once: in the middle of the round it is done."""
    page = shown(Desk().do("go to yoke"))
    assert (page["before"], page["step"]) == ([], ["Change to 3.75 mm needles."])
    assert page["facts"][1] == "3.75 mm needle"
    assert shown(Desk().do("go to yoke", "next"))["step"][0].startswith("Place marker")
    assert shown(Desk().do("go to yoke", "stitch 20"))["before"] == []


def test_what_was_heard_stays_in_the_room() -> None:
    """A page on the computer that listens shows it; a phone in another room does not."""
    desk = Desk()
    assert shown(desk, devices=LISTENING)["heard"] == 'Heard "where am i": answered'
    assert shown(desk, devices=LISTENING, here=False)["heard"] == ""
    assert shown(desk)["heard"] == ""


def test_the_senses_are_told_with_their_reasons() -> None:
    """Whether she is heard, whether it speaks, whether a film is on."""
    desk = Desk()
    page = shown(desk, devices=replace(LISTENING, film=True), speaking=True)
    assert (page["ears"]["says"], page["mouth"]["says"], page["film"]) == ("Speaking, deaf meanwhile", "", True)
    page = shown(desk, devices=LISTENING)
    assert (page["ears"]["says"], page["mouth"]["says"]) == ("Listening", "Voice on")
    page = shown(desk)
    assert page["ears"] == {"badge": "none", "says": "No ears", "why": "keys and typed cues only"}
    assert page["mouth"] == {"badge": "none", "says": "No voice", "why": "mute"}
    closed = DeviceStatus(ears=EarsState.CLOSED, why_no_ears="")
    assert shown(desk.do("stop listening"), devices=closed)["ears"]["says"] == "Not listening"


def test_a_finished_garment_says_so() -> None:
    """There is no next step, and nothing ahead."""
    page = shown(Desk().do("go to body round 3", "next"))
    assert page["step"] == ["Every round is done: 12 of 12. The garment is finished."]
    assert page["strip"] is None
    assert page["ahead"] == []


def test_a_row_that_is_not_read_stands_in_place_of_the_step() -> None:
    """In the words of the page, and nothing is called finished."""
    scene = Desk().do("go to body round 3", "next").scene()
    garment = replace(scene.plan, open=ROW)
    sight = Sight(scene=replace(scene, course=course_of(garment)), session=Desk().conductor.session)
    page = describe_sight(sight, here=True, room=40, speaking=False)
    assert (page["section"], page["round"], page["step"]) == ("Body", NOT_READ, [ROW.words])
    assert page["progress"] == []


def test_signs_that_move_a_cursor_never_reach_a_page() -> None:
    """Nor do they mean anything there."""
    desk = Desk(plan(("a\x1b[2Jb", ["co4", "k4"]), title="t\u2028u"))
    page = shown(desk)
    assert page["title"] == "t u"
    assert "\x1b" not in json.dumps(page)
