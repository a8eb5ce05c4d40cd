"""What a page shows, from the scene that the full screen is drawn from: the same words, as data. No I/O."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from stepper.language.phrasing import in_yarn, said_items
from stepper.language.places import list_marks, sentence_case
from stepper.lap.asked import find_question, say_what_number_does
from stepper.lap.ports import Sight
from stepper.lap.squares import describe_strip, list_yarns, yarn_numbers
from stepper.plan.model import Round
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.screen.ahead import list_facts, list_progress, say_duration
from stepper.screen.count_badge import count_expected, judge_count
from stepper.screen.device_status import DeviceStatus, EarsState, MouthState
from stepper.screen.rows import clean
from stepper.screen.scene import Scene
from stepper.screen.strip import part_in_hand, place_within
from stepper.screen.yoke_page import rings_of
from stepper.session.counting.count_timing import pace_of


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
    question = find_question(plan, state)
    counted = judge_count(plan, state)
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
        "heard": _heard(scene.devices) if here else "",
        "ears": _ears(scene.devices),
        "mouth": _mouth(scene.devices, speaking=speaking),
        "asleep": state.asleep,
        "film": sight.film,
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
        done = f"Every round is done: {len(rounds)} of {len(rounds)}. The garment is finished."
        nothing = dict.fromkeys(("before", "minded", "where", "facts", "hand", "marks"), ())
        return {**nothing, "section": "Finished", "round": "", "step": [done], "worked": 1}
    round_ = rounds[index]
    part = part_in_hand(scene.course, scene.state)
    assert part is not None
    begins, minded = part.start == 0, catches_of(round_)
    yarn = in_yarn(round_, scene.plan) if begins else ""
    clauses = f"{yarn}{said_items(part.items, round_, scene.plan)}".split("; then ")
    stitch, total = scene.state.place.stitch, scene.course.stitches_in(index)
    inside = place_within(scene.course, scene.state)
    numbers = yarn_numbers(scene.course, scene.yarns)
    remarks = [each for each in round_.remarks if each not in minded] if begins else []
    return {
        "section": clean(", ".join([sentence_case(round_.section), *list_marks(round_)])),
        "round": f"{'Row' if round_.flat else 'Round'} {round_.number} of {round_.of}",
        "before": [clean(f"{sentence_case(each.rstrip('.'))}.") for each in remarks],
        "step": [clean(line) for line in _sentences(clauses)],
        "minded": [clean(f"{each.rstrip('.')}.") for each in minded],
        "where": [f"Stitch {stitch} of {total}", *([sentence_case(inside)] if inside else [])],
        "facts": _facts(scene, round_),
        "hand": [numbers[key] for key in scene.course.yarns[index]],
        "worked": stitch / total if total else 0,
        "marks": [mark / total for mark in round_.markers if 0 < mark < total],
    }


def _sentences(clauses: list[str]) -> list[str]:
    """Write the clauses of a step one to a line."""
    last = len(clauses) - 1
    return [
        f"{'then ' + each if number else sentence_case(each)}{'.' if number == last else ';'}"
        for number, each in enumerate(clauses)
    ]


def _facts(scene: Scene, round_: Round) -> list[str]:
    """Say the stitches now and at the end, the needle, and the time for the round."""
    now, end = count_expected(scene.plan, scene.state)
    counts = f"{now} sts throughout" if now == end else f"{now} sts now, {end} at the end"
    needle = [] if round_.needle_mm is None else [f"{round_.needle_mm:g} mm needle"]
    pace = pace_of(scene.state)
    left = scene.course.stitches_in(round_.index) - scene.state.place.stitch
    time = say_duration(pace.seconds_for(left)) + ("" if pace.measured else " at a usual pace")
    return [counts, *needle, time]


def _yoke(scene: Scene) -> dict[str, Any] | None:
    """Say how far the yoke is worked; None if there is none. Its rings are sent when they are asked for."""
    rings = rings_of(scene.course)
    if rings is None:
        return None
    place = scene.state.place
    return {"ring": place.index - rings.first, "stitch": place.stitch}


def _heard(devices: DeviceStatus) -> str:
    if devices.heard is None:
        return ""
    verb = "Heard" if devices.heard.by_ear else "Typed"
    return f'{verb} "{clean(devices.heard.text)}": {clean(devices.heard.did)}'


def _ears(devices: DeviceStatus) -> dict[str, str]:
    if devices.ears is EarsState.NONE:
        return {"badge": "none", "says": "No ears", "why": clean(devices.why_no_ears)}
    if devices.ears is EarsState.CLOSED:
        return {"badge": "asks", "says": "Not listening", "why": ""}
    return {"badge": "stands", "says": "Listening", "why": ""}


def _mouth(devices: DeviceStatus, *, speaking: bool) -> dict[str, str]:
    if devices.mouth is MouthState.NONE:
        return {"badge": "none", "says": "No voice", "why": clean(devices.why_no_mouth)}
    if speaking:
        return {"badge": "calm", "says": "Speaking", "why": ""}
    return {"badge": "none", "says": "Voice on", "why": ""}
