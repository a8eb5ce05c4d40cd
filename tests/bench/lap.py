"""What the page takes in real Chromium, with the journal on the disk: time, drops, memory and processor.

    python -m tests.bench.lap times [TOUCHES]
    python -m tests.bench.lap drops [DROPS] [SEED]
    python -m tests.bench.lap open [MINUTES]

`times`: from a touch to the redrawn page, and to the page redrawn on a second device. `drops`: a page that is stepped
while its network breaks at random, before a touch arrives or before its answer does; every touch that was sent has
to be answered in the end, and the journal has to hold as many steps as were answered as taken. `open`: memory and
processor of the program and of Chromium while a page lies open and is stepped once a minute.
"""

from __future__ import annotations

import contextlib
import os
import random
import re
import shutil
import socket
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from stepper.session.events import Advanced
from stepper.sitting.session_journal import read_events
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import ROOT, environment
from tests.lap.browser import Page, chromium
from tests.lap.cable import Cable

NOTING = """
const noted = window.noted = JSON.parse(sessionStorage.getItem("noted") || '{"sent": {}, "outcomes": {}}');
const keep = () => sessionStorage.setItem("noted", JSON.stringify(noted));
window.shown = [];
const Real = WebSocket;
window.WebSocket = class extends Real {
  constructor(...all) {
    super(...all);
    this.addEventListener("message", each => {
      const told = JSON.parse(each.data);
      if (told.touch) { noted.outcomes[`${told.device}/${told.touch}`] = told.outcome; keep(); }
    });
  }
  send(text) {
    const touch = JSON.parse(text);
    if (touch.ask) { noted.sent[`${touch.device}/${touch.number}`] = true; keep(); }
    super.send(text);
  }
};
window.changed = [];
addEventListener("DOMContentLoaded", () => new MutationObserver(() => {
  document.body.offsetHeight;  // laid out
  window.changed.push(performance.timeOrigin + performance.now());
  requestAnimationFrame(() => window.shown.push(performance.timeOrigin + performance.now()));
}).observe(document.querySelector("main"), { childList: true, characterData: true, subtree: true }));
"""
"""Writes down what a page sends and is told, and when its place is redrawn."""


@contextlib.contextmanager
def started() -> Iterator[tuple[subprocess.Popen[str], str, Path]]:
    """Start a sitting with a page on a garment of its own."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "pullover.yaml"
        shutil.copy(ROOT / "sample_projects" / "pullover.yaml", path)
        with socket.create_server(("127.0.0.1", 0)) as free:  # of as many figures as the cable's own port
            port = str(free.getsockname()[1])
        process = subprocess.Popen(
            [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--mute", "--deaf", "--port", port],
            stdin=subprocess.PIPE,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.PIPE,
            text=True,
            env=environment(),
        )
        assert process.stderr is not None
        told = ""
        while "On this computer: " not in told:
            told += process.stderr.readline()
        try:
            yield process, re.findall(r"On this computer: (\S+)", told)[0], path
        finally:
            process.kill()
            process.wait()


class Noting(Page):
    """A page that writes down what it sends and is told."""

    def __init__(self, browser: Any, url: str, size: str) -> None:
        class Prepared:
            def new_context(self, **more: Any) -> Any:
                """Make a context whose pages write down."""
                context = browser.new_context(**more)
                context.add_init_script(NOTING)
                return context

        super().__init__(Prepared(), url, size)


def times(touches: int) -> None:
    """Measure from a touch to the redrawn page, here and on a second device."""
    with started() as (_, url, _), chromium() as browser:
        tablet, phone = Noting(browser, url, "tablet"), Noting(browser, url, "phone")
        here, there = [], []
        for _ in range(touches):
            for each in (tablet, phone):
                each.tab.evaluate("() => { shown.length = changed.length = 0 }")
            tablet.tab.wait_for_timeout(300)
            began = tablet.tab.evaluate(
                """() => { const at = performance.timeOrigin + performance.now();
                document.getElementById("next").click(); return at; }"""
            )
            tablet.tab.wait_for_timeout(500)
            # A window behind another is given no frames to draw, so there it is the time of its new layout.
            for each, found, which in ((tablet, here, "shown"), (phone, there, "changed")):
                found.append(each.tab.evaluate(f"() => {which}[0]") - began)
    for name, found in (("touch to redrawn page", here), ("to the second device", there)):
        ordered = sorted(found)
        print(
            f"{name}: median {statistics.median(found):.0f} ms, 95 % {ordered[int(len(ordered) * 0.95)]:.0f} ms, "
            f"most {ordered[-1]:.0f} ms ({len(found)} touches)"
        )


def steps_in(path: Path) -> int:
    """Count the steps in a journal."""
    with Journal.read_only(journal_path(path)) as journal:
        return sum(isinstance(event, Advanced) for _, event in read_events(journal))


def drops(many: int, seed: int) -> None:
    """Break the network at random while a page is stepped."""
    chance = random.Random(seed)
    with started() as (_, url, path), chromium() as browser, Cable(url) as cable:
        page = Noting(browser, cable.url, "phone")
        for _ in range(many):
            for _ in range(chance.randint(0, 2)):
                page.tab.wait_for_timeout(260)
                page.tab.evaluate("() => document.getElementById('next').click()")
            if chance.random() < 0.5:
                page.tab.wait_for_timeout(260)
                cable.swallow()
                page.tab.evaluate("() => document.getElementById('next').click()")
                page.tab.wait_for_timeout(chance.choice((0, 1, 3, 10, 40, 200)))
            cable.cut()
            page.tab.evaluate("() => document.getElementById('next').click()")
            page.tab.wait_for_timeout(chance.choice((0, 20, 100, 400, 1200)))
            cable.mend()
            if chance.random() < 0.1:
                page.tab.reload()
            if chance.random() < 0.8:
                page.wait("() => document.body.dataset.state === 'open'")
        page.wait("() => document.body.dataset.state === 'open' && !document.body.dataset.pending")
        page.tab.wait_for_timeout(500)
        sent, outcomes = page.tab.evaluate("() => [Object.keys(noted.sent), noted.outcomes]")
        taken = sum(each == "taken" for each in outcomes.values())
        passed = sum(each == "passed" for each in outcomes.values())
        print(
            f"{many} drops (seed {seed}): {len(sent)} touches sent, {taken} taken, {passed} passed over, "
            f"{len(set(sent) - set(outcomes))} unanswered; {steps_in(path)} steps in the journal; "
            f"the page shows {page.text('section')}, {page.text('round')}"
        )
        assert set(sent) == set(outcomes)
        assert taken == steps_in(path)


def family(root: int) -> list[int]:
    """List a process and all that come from it."""
    parents: dict[int, list[int]] = {}
    for stat in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(OSError):
            fields = stat.read_text().rpartition(")")[2].split()
            parents.setdefault(int(fields[1]), []).append(int(stat.parent.name))
    found = [root]
    for each in found:
        found += parents.get(each, [])
    return found


def weigh(processes: list[int]) -> tuple[float, float]:
    """Return the memory that processes hold, shared parts counted once (MiB), and their processor time (s)."""
    kept, spent = 0, 0
    for each in processes:
        with contextlib.suppress(OSError):
            rollup = Path(f"/proc/{each}/smaps_rollup").read_text()
            kept += int(re.findall(r"^Pss:\s+(\d+)", rollup, re.M)[0])
            fields = Path(f"/proc/{each}/stat").read_text().rpartition(")")[2].split()
            spent += int(fields[11]) + int(fields[12])
    return kept / 1024, spent / os.sysconf("SC_CLK_TCK")


def stay_open(minutes: float) -> None:
    """Let a page lie open, stepped once a minute, and weigh the program and Chromium."""
    with started() as (process, url, _), chromium() as browser:
        tablet = Noting(browser, url, "tablet")
        mine = family(os.getpid())
        others = [each for each in mine if each not in (os.getpid(), process.pid)]
        tablet.tab.wait_for_timeout(3000)
        began, first = time.monotonic(), None
        while True:
            passed = (time.monotonic() - began) / 60
            program, window = weigh([process.pid]), weigh(others)
            heap = tablet.tab.evaluate("() => performance.memory.usedJSHeapSize / 2 ** 20")
            first = first or (program[1], window[1])
            print(
                f"{passed:5.1f} min: program {program[0]:.0f} MiB, {program[1] - first[0]:.2f} s of processor; "
                f"Chromium {window[0]:.0f} MiB, {window[1] - first[1]:.2f} s; scripts {heap:.1f} MiB",
                flush=True,
            )
            if passed >= minutes:
                return
            tablet.tab.wait_for_timeout(60_000)
            tablet.tab.evaluate("() => document.getElementById('next').click()")


if __name__ == "__main__":
    what, *rest = sys.argv[1:]
    if what == "times":
        times(int(rest[0]) if rest else 60)
    elif what == "drops":
        drops(int(rest[0]) if rest else 100, int(rest[1]) if len(rest) > 1 else 23)
    else:
        stay_open(float(rest[0]) if rest else 60.0)
