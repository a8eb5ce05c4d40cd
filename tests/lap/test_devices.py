from __future__ import annotations

import asyncio
import contextlib
import time
from collections.abc import Iterator

import pytest

from stepper.lap.door import HANDFUL
from tests.lap.kit import LapSitting, device, shown
from tests.waiting import PATIENCE_S


@pytest.fixture
def sitting() -> Iterator[LapSitting]:
    """A sitting with its page."""
    with LapSitting() as opened:
        yield opened


def test_a_step_is_on_the_disk_before_it_is_answered_and_shown() -> None:
    """What a page shows must survive the plug being pulled."""

    async def scene(sitting: LapSitting) -> None:
        async with shown(sitting.url) as tablet:
            assert await tablet.touch("next") == "taken"
            answered = time.monotonic()
            assert sitting.kept_at[-1] <= answered
            assert type(sitting.events[-1]).__name__ == "Advanced"
            assert tablet.sight["place"] == [1, 0]  # shown no later than it was answered

    with LapSitting(keep_s=0.05) as sitting:
        asyncio.run(scene(sitting))


def test_both_faces_see_each_step(sitting: LapSitting) -> None:
    """What is done at the terminal is shown on every page, and what a page does is told at the terminal."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet, shown(sitting.url, "phone") as phone:
            sitting.conductor.offer_words("next step")
            for each in (tablet, phone):
                await each.see(lambda sight: sight["place"] == [1, 0])
            told = len(sitting.terminal.lines)
            assert await phone.touch("next") == "taken"
            await tablet.see(lambda sight: sight["place"] == [2, 0])
            assert phone.sight["place"] == [2, 0]
            assert len(sitting.terminal.lines) > told
            assert sitting.terminal.woken == 1

    asyncio.run(scene())


def test_a_touch_sent_again_is_answered_and_not_repeated(sitting: LapSitting) -> None:
    """The answer was lost on the way, not the step."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            assert await tablet.touch("next") == "taken"
            lost = tablet.made("next", place=[0, 0], again=True, age=1.0)
        async with shown(sitting.url) as back:
            await back.send(**lost)
            assert (await back.hear("touch"))["outcome"] == "taken"
        async with shown(sitting.url, "opened anew") as anew:
            await anew.send(**lost)
            assert await anew.hear("touch") == {"touch": 1, "device": "tablet", "outcome": "taken"}

    asyncio.run(scene())
    assert sitting.steps == 1


def test_two_devices_that_mean_the_same_step_make_one() -> None:
    """She touches the tablet, he touches the phone, and both meant the round that is finished."""

    async def scene(sitting: LapSitting) -> None:
        async with shown(sitting.url) as tablet, shown(sitting.url, "phone") as phone:
            outcomes = await asyncio.gather(tablet.touch("next"), phone.touch("next"))
            assert sorted(outcomes) == ["passed", "taken"]

    with LapSitting(keep_s=0.02) as sitting:
        asyncio.run(scene(sitting))
        assert sitting.steps == 1


def test_a_touch_that_comes_too_late_is_passed_over_for_good(sitting: LapSitting) -> None:
    """A phone that wakes after an hour with a touch on its lips: nobody means it any more."""

    async def scene() -> None:
        async with shown(sitting.url, "phone") as phone:
            phone.number = 1
            late = phone.made("next", again=True, age=3600.0)
            await phone.send(**late)
            assert (await phone.hear("touch"))["outcome"] == "passed"
            await phone.send(**{**late, "again": False, "age": 0})
            assert (await phone.hear("touch"))["outcome"] == "passed"
            assert await phone.touch("next") == "taken"

    asyncio.run(scene())
    assert sitting.steps == 1


def test_a_step_from_a_place_that_was_left_is_passed_over(sitting: LapSitting) -> None:
    """The voice was quicker; the finger meant the same round."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            sitting.say("next step")
            assert await tablet.touch("next", place=[0, 0]) == "passed"
            assert await tablet.touch("undo", seen=1) == "passed"
            await tablet.touch("where")
            assert await tablet.touch("undo") == "taken"

    asyncio.run(scene())
    assert sitting.state.place.index == 0


def test_what_a_number_would_mean_is_said_before_it_is_sent(sitting: LapSitting) -> None:
    """A slip of the finger is seen before it starts a search for a fault."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            await tablet.touch("next")
            await tablet.send(would=59)
            meant = (await tablet.hear("would"))["would"]
            assert (meant["number"], meant["ask"]) == (59, "count")
            assert meant["says"].startswith("59: 1 fewer than 60.")
            assert sitting.state.knitting.fault is None
            assert await tablet.touch(meant["ask"], value=59) == "taken"
            await tablet.send(would=True)
            await tablet.send(would=100_000)
            await tablet.send(beat=True)
            await tablet.hear("beat")  # and nothing came of those before it
            assert tablet.sight["question"]["title"] == "1 too few"

    asyncio.run(scene())
    assert sitting.state.knitting.fault is not None


def test_notes_and_any_other_words_go_through_the_same_door(sitting: LapSitting) -> None:
    """Dictated by the keyboard of the device or typed: the journal has it."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            assert await tablet.touch("note", text="a soft edge <b>here</b>") == "taken"
            assert await tablet.touch("words", text="go to yoke") == "taken"
            assert tablet.sight["section"].startswith("Yoke")
            assert tablet.sight["heard"].startswith('Typed "go to yoke": done')

    asyncio.run(scene())
    assert "Noted" in [type(each).__name__ for each in sitting.events]


def test_no_more_than_a_handful_of_devices(sitting: LapSitting) -> None:
    """The next one is told so, and comes in once another has left; one that comes back takes its own place."""

    async def scene() -> None:
        open_now = [shown(sitting.url, f"device {number}") for number in range(HANDFUL)]
        devices = [await each.__aenter__() for each in open_now]
        async with device(sitting.url, "one more") as more:
            assert "full" in await more.hear("full")
        async with shown(sitting.url, "device 0") as back:
            assert await back.touch("where") == "taken"
            assert (await devices[0].socket.receive()).type.name in ("CLOSE", "CLOSED", "CLOSING")
        async with shown(sitting.url, "one more") as more:
            assert await more.touch("where") == "taken"
        for each in open_now:
            await each.__aexit__(None, None, None)

    asyncio.run(scene())


@pytest.mark.parametrize("message", ["{", "[1]", "null", "[" * 9000, '"next"'])
def test_what_is_no_message_ends_the_connection_alone(sitting: LapSitting, message: str) -> None:
    """The sitting does not even notice."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            await tablet.socket.send_str(message)
            while not tablet.socket.closed:
                await tablet.socket.receive()
        async with shown(sitting.url) as again:
            assert await again.touch("next") == "taken"

    asyncio.run(scene())


def test_a_malformed_touch_is_answered_as_such(sitting: LapSitting) -> None:
    """So that a page never waits for ever."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            await tablet.send(ask="explode", number=1, device="tablet", place=[0, 0])
            assert await tablet.hear("malformed")

    asyncio.run(scene())


def test_a_flood_of_messages_ends_its_connection_and_nothing_else(sitting: LapSitting) -> None:
    """A key that hangs, or worse: the other device goes on."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet, shown(sitting.url, "flood") as flood:
            with contextlib.suppress(ConnectionError, RuntimeError):
                for _ in range(3000):
                    await flood.send(beat=True)
            while not flood.socket.closed:
                await asyncio.wait_for(flood.socket.receive(), PATIENCE_S)
            waits = []
            for _ in range(5):
                began = time.monotonic()
                assert await tablet.touch("next") == "taken"
                waits.append(time.monotonic() - began)
            assert min(waits) < 2

    asyncio.run(scene())


def test_a_message_that_is_too_large_is_not_read(sitting: LapSitting) -> None:
    """Nothing makes the program take a megabyte for a note."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            await tablet.send(ask="note", text="x" * 1_000_000, number=1, device="tablet", place=[0, 0])
            while not tablet.socket.closed:
                await tablet.socket.receive()

    asyncio.run(scene())
    assert "Noted" not in [type(each).__name__ for each in sitting.events]


def test_the_end_of_the_sitting_is_told_on_every_page(sitting: LapSitting) -> None:
    """A page that only went dead would leave her wondering whether the last step counted."""

    async def scene() -> None:
        async with shown(sitting.url) as tablet:
            assert await tablet.touch("enough") == "taken"
            assert tablet.sight["closed"]
            closing = asyncio.to_thread(sitting.__exit__, None, None, None)
            told, _ = await asyncio.gather(tablet.hear("over"), closing)
            assert told["over"].startswith("This sitting is over.")

    asyncio.run(scene())


def test_a_device_asks_for_as_many_squares_as_it_has_room_for(sitting: LapSitting) -> None:
    """A phone is not sent what it cannot show; nonsense is not taken for a size."""

    async def scene() -> None:
        sitting.say("go to yoke round 4")
        async with shown(sitting.url) as tablet:
            assert tablet.sight["strip"]["wide"] == 40
            for asked, wide in ((12, 12), (9999, 70), ("x", 4), (-5, 4)):
                await tablet.send(room=asked)
                await tablet.hear("sight")
                await tablet.see(lambda sight, wide=wide: sight["strip"]["wide"] == wide)  # type: ignore[misc] # bound now

    asyncio.run(scene())
