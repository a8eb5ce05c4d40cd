"""The page beside the terminal: in one process with a quiet terminal, and as it is started."""

from __future__ import annotations

import asyncio
import contextlib
import os
import re
import signal
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from stepper.session.events import Advanced
from stepper.sitting.page_beside import ENDED
from stepper.sitting.session_journal import read_events
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import environment, garment
from tests.lap.kit import LapSitting, shown
from tests.waiting import PATIENCE_S, least_of

pytestmark = pytest.mark.skipif(os.name != "posix", reason="processes are ended by signals here")


@contextlib.contextmanager
def started(path: Path, *words: str) -> Iterator[tuple[subprocess.Popen[str], str]]:
    """Start a sitting with a page, line by line; return the process and the page's address."""
    process = subprocess.Popen(
        [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--mute", "--deaf", "--page", *words],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env=environment(),
    )
    try:
        assert process.stderr is not None
        told = ""
        while "On this computer: " not in told:
            line = process.stderr.readline()
            assert line, told
            told += line
        yield process, re.findall(r"On this computer: (\S+)", told)[0]
    finally:
        process.kill()
        process.wait()
        for each in (process.stdin, process.stdout, process.stderr):
            if each is not None:
                each.close()


def test_a_step_of_the_page_is_in_the_journal_and_on_the_terminal(tmp_path: Path) -> None:
    """The same sitting as it is started, to its end by touch; killed after an answer, nothing answered is lost."""
    path = garment(tmp_path)

    async def knit(url: str) -> None:
        async with shown(url) as tablet:
            assert tablet.sight["title"] == "Cuff"
            assert await tablet.touch("next") == "taken"
            assert await tablet.touch("next") == "taken"

    with started(path) as (process, url):
        asyncio.run(knit(url))
        process.send_signal(signal.SIGKILL)
        process.wait(PATIENCE_S)
    with Journal.read_only(journal_path(path)) as journal:
        assert sum(isinstance(event, Advanced) for _, event in read_events(journal)) == 2

    async def stop(url: str) -> None:
        async with shown(url) as tablet:
            assert tablet.sight["round"] == "Round 3 of 17"
            assert await tablet.touch("enough") == "taken"

    with started(path) as (process, again):
        assert again.split("/")[3] != url.split("/")[3]
        asyncio.run(stop(again))
        assert process.wait(PATIENCE_S) == 0
        assert process.stdout is not None
        lines = process.stdout.read().splitlines()
    assert lines[-1].startswith("Done so far: Cuff, round 2 of 17.")


def test_a_step_of_the_terminal_is_on_the_page(tmp_path: Path) -> None:
    """Typed there, seen here; and the end of the input is the end of the page."""

    async def watch(process: subprocess.Popen[str], url: str) -> None:
        async with shown(url) as tablet:
            assert process.stdin is not None
            process.stdin.write("next step\n")
            process.stdin.flush()
            await tablet.see(lambda sight: sight["round"] == "Round 2 of 17")
            assert tablet.sight["heard"] == 'Typed "next step": done'
            process.stdin.close()
            assert (await tablet.hear("over"))["over"].startswith("This sitting is over.")

    with started(garment(tmp_path)) as (process, url):
        asyncio.run(watch(process, url))
        assert process.wait(PATIENCE_S) == 0


def test_a_port_that_is_taken_is_told_before_anything_is_opened(tmp_path: Path) -> None:
    """In one sentence, with what to do; no journal is begun."""
    path = garment(tmp_path)
    with LapSitting() as holding:
        port = holding.url.split("/")[2].split(":")[1]
        words = [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--page", "--port", port]
        ended = subprocess.run(words, capture_output=True, text=True, env=environment(), input="", timeout=60)
    assert ended.returncode == 4
    assert ended.stderr == f"Port {port} is taken by another program; name another with --port.\n"
    assert not journal_path(path).exists()


def test_the_server_is_loaded_only_if_it_is_asked_for(tmp_path: Path) -> None:
    """A sitting without a page starts as quickly as before, and needs none of its packages."""
    code = (
        "import sys; from stepper.commands.main import main; main(sys.argv[1:]); "
        "print([each for each in sys.modules if each.split('.')[0] in ('aiohttp', 'segno') or '.lap' in each])"
    )
    words = [sys.executable, "-c", code, "knit", str(garment(tmp_path)), "--plain", "--mute", "--deaf"]
    ended = subprocess.run(words, capture_output=True, text=True, env=environment(), input="", timeout=60, check=True)
    assert ended.stdout.splitlines()[-1] == "[]"


def test_what_is_told_of_ears_and_voice_is_on_the_page() -> None:
    """They may fail in the middle of an evening; the page says so by itself, and goes on."""

    async def scene(sitting: LapSitting) -> None:
        async with shown(sitting.url) as tablet:
            assert tablet.sight["ears"]["why"] == "closed by --deaf"
            sitting.beside.report_ears(False, "Nothing is heard, since the microphone is gone; go on by keys.")
            await tablet.see(lambda sight: sight["ears"]["why"] == "the microphone is gone")
            sitting.beside.report_ears(True, "Listening.")
            await tablet.see(lambda sight: sight["ears"]["says"] == "Listening")
            sitting.beside.report_voice("There is no voice, since it has stopped; go on by eye.")
            await tablet.see(lambda sight: sight["mouth"]["why"] == "it has stopped")
            sitting.beside.hear("next step", 0.9)
            await tablet.see(lambda sight: sight["heard"] == 'Heard "next step": done')
            sitting.conductor.offer_words("film on")
            await tablet.see(lambda sight: sight["film"])

    with LapSitting() as sitting:
        asyncio.run(scene(sitting))
        assert sitting.terminal.heard == ["next step"]
        assert len(sitting.terminal.reports) == 3


def test_a_page_that_is_asked_for_is_turned_to_on_every_device() -> None:
    """"Yoke from above" turns the screen and the pages."""

    async def scene(sitting: LapSitting) -> None:
        async with shown(sitting.url) as tablet:
            sitting.conductor.offer_words("yoke from above")
            await tablet.see(lambda sight: sight["view"] == "yoke")
            assert tablet.sight["heard"].endswith(": shown")
            sitting.conductor.offer_words("next step")
            await tablet.hear("sight")

    with LapSitting() as sitting:
        asyncio.run(scene(sitting))


def test_a_program_that_ends_by_a_fault_says_so_on_the_page() -> None:
    """What was answered is kept; a page that only went dead would leave her wondering."""

    async def scene(sitting: LapSitting) -> None:
        async with shown(sitting.url) as tablet:
            leaving = asyncio.to_thread(sitting.beside.__exit__, None, None, None)
            told, _ = await asyncio.gather(tablet.hear("over"), leaving)
            assert told["over"] == ENDED

    with LapSitting() as sitting:
        asyncio.run(scene(sitting))

        def again_s() -> float:
            began = time.monotonic()
            sitting.beside.__exit__(None, None, None)  # a second time, it does nothing
            return time.monotonic() - began

        assert least_of(again_s, 1) < 1
