"""What a page shows, from the scene that the full screen is drawn from: the same words, as data. No I/O."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from stepper.language.places import list_marks, sentence_case
from stepper.lap.ports import Sight
from stepper.lap.questions import NOT_READ, find_question, say_what_number_does
from stepper.lap.squares import describe_strip, list_yarns, yarn_numbers
from stepper.screen.device_status import DeviceStatus, EarsState, MouthState
from stepper.screen.drawing.rows import clean, text_of
from stepper.screen.pages.ahead import list_facts, list_progress
from stepper.screen.pages.count_badge import judge_count
from stepper.screen.pages.device_signs import SPEAKING_DEAF, describe_heard, plain_reason
from stepper.screen.pages.place_lines import list_counts, list_place
from stepper.screen.pages.step_text import word_step
from stepper.screen.pages.yoke_page import rings_of
from stepper.screen.scene import Scene

_WIDE = 1000
# Columns enough for facts in full words.


def describe_sight(sight: Sight, *, here: bool, room: int, speaking: bool) -> dict[str, Any]:
    """Describe all a page shows.

    Args:
        sight: What there is to show.
        here: Whether the page is on the computer that listens; only there it shows what was heard.
        room: How many squares of the chart it shows beside each other.
        speaking: Whether a line is being said.
    """
    scene = sight.scene
    plan, state = scene.plan, scene.state
    devices = scene.devices.while_speaking() if speaking else scene.devices
    question = find_question(plan, state, scene.asked)
    counted = judge_count(plan, state, scene.asked)
    return {
        "seq": state.seq,
        "place": [state.place.index, state.place.stitch],
        "edition": sight.edition,
        "title": clean(plan.title),
        **_round(scene),
        "count": {"badge": counted.badge.value, "word": counted.word, "detail": clean(counted.detail)},
        "number": asdict(say_what_number_does(plan, state)),
        "question": None if question is None else asdict(question),
        "yarns": list_yarns(scene),
        "strip": describe_strip(scene, room),
        "yoke": _yoke(scene),
        "ahead": [[name.text.strip(), value.text] for name, value in list_facts(scene.course, state)],
        "progress": [
            [sentence_case(name), share, left] for name, share, left in list_progress(scene.course, state)
        ],
        "told": [clean(line) for line in scene.told],
        "heard": describe_heard(scene.devices) if here else "",
        "ears": _ears(devices),
        "mouth": _mouth(devices),
        "asleep": state.asleep,
        "film": scene.devices.film,
        "view": sight.view.value,
        "counting": state.knitting.tens is not None,
        "undo": bool(state.undo),
        "closed": state.closed,
    }


def _round(scene: Scene) -> dict[str, Any]:
    """Describe the round in hand and the step of it, or say that none is left."""
    index = scene.state.place.index
    rounds = scene.course.rounds
    if index >= len(rounds):
        nothing = dict.fromkeys(("before", "minded", "where", "facts", "hand", "marks"), ())
        row = scene.plan.open
        if row is not None:
            section, words = clean(sentence_case(row.section)), clean(row.words)
            return {**nothing, "section": section, "round": NOT_READ, "step": [words], "worked": 0}
        done = f"Every round is done: {len(rounds)} of {len(rounds)}. The garment is finished."
        return {**nothing, "section": "Finished", "round": "", "step": [done], "worked": 1}
    round_, step = rounds[index], word_step(scene)
    stitch, total = scene.state.place.stitch, scene.course.stitches_in(index)
    numbers = yarn_numbers(scene.course, scene.yarns)
    return {
        "section": clean(", ".join([sentence_case(round_.section), *list_marks(round_)])),
        "round": f"{'Row' if round_.flat else 'Round'} {round_.numbered}",
        "before": [clean(f"{each}.") for each in step.first],
        "step": [clean(each) for each in step.clauses],
        "minded": [clean(each) for each in step.minded],
        "where": [text_of(each) for each in list_place(scene)],
        "facts": [text_of(each) for each in list_counts(scene, _WIDE)],
        "hand": [numbers[key] for key in scene.course.yarns[index]],
        "worked": stitch / total if total else 0,
        "marks": [mark / total for mark in round_.markers if 0 < mark < total],
    }


def _yoke(scene: Scene) -> dict[str, Any] | None:
    """Say how far the yoke is worked; None if there is none. Its rings are sent when they are asked for."""
    rings = rings_of(scene.course)
    if rings is None:
        return None
    place = scene.state.place
    return {"ring": place.index - rings.first, "stitch": place.stitch}


def _ears(devices: DeviceStatus) -> dict[str, str]:
    if devices.ears is EarsState.NONE:
        return {"badge": "none", "says": "No ears", "why": plain_reason(devices.why_no_ears)}
    if devices.ears is EarsState.DEAF:
        return {"badge": "calm", "says": sentence_case(SPEAKING_DEAF), "why": ""}
    if devices.ears is EarsState.CLOSED:
        return {"badge": "asks", "says": "Not listening", "why": ""}
    return {"badge": "stands", "says": "Listening", "why": ""}


def _mouth(devices: DeviceStatus) -> dict[str, str]:
    if devices.mouth is MouthState.NONE:
        return {"badge": "none", "says": "No voice", "why": plain_reason(devices.why_no_mouth)}
    if devices.mouth is MouthState.SPEAKING:
        says = "" if devices.ears is EarsState.DEAF else "Speaking"  # the ears' sign says both
        return {"badge": "calm", "says": says, "why": ""}
    return {"badge": "none", "says": "Voice on", "why": ""}
