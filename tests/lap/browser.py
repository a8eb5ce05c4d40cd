"""Real Chromium for the tests of the page: started once for a module, one context for each device."""

from __future__ import annotations

import os
import shutil
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from tests.waiting import PATIENCE_S

CHROMIUM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
SIZES = {
    "small phone": (320, 568, 2),
    "phone": (390, 844, 2),
    "phone on its side": (844, 390, 2),
    "tablet": (810, 1080, 1),
    "tablet on its side": (1080, 810, 1),
    "television": (3840, 2160, 1),
    "television, scaled": (1920, 1080, 2),
}
"""Width, height and pixels to a CSS pixel of devices. Unit: CSS px."""
TABLET_PX_PER_MM = 264 / 25.4 / 2
"""CSS pixels to a millimetre on a tablet of 10 inches: 264 pixels to an inch, two to a CSS pixel. Source: the
data sheet of a common one, from memory."""


@contextmanager
def chromium() -> Iterator[Any]:
    """Start Chromium, with nothing that talks to the network."""
    from playwright import sync_api

    quiet = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"]
    quiet += ["--disable-component-update", "--disable-sync"]
    environment = {key: value for key, value in os.environ.items() if key != "DISPLAY"}
    with sync_api.sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=CHROMIUM, args=quiet, env=environment)
        yield started
        started.close()


class Page:
    """The page on one device."""

    def __init__(self, browser: Any, url: str, size: str = "phone", **more: Any) -> None:
        """Open it, and wait until a step is shown.

        Args:
            browser: Chromium.
            url: The page's address.
            size: Of the device.
            more: Of the context: colour scheme, reduced motion.
        """
        wide, high, fine = SIZES[size]
        self.context = browser.new_context(
            viewport={"width": wide, "height": high}, device_scale_factor=fine, has_touch=True, **more
        )
        self.context.set_default_timeout(1000 * PATIENCE_S)
        self.tab = self.context.new_page()
        self.faults: list[str] = []
        self.asked: list[str] = []
        self.tab.on("pageerror", lambda fault: self.faults.append(str(fault)))
        self.tab.on("console", lambda told: self.faults.append(told.text) if told.type == "error" else None)
        self.tab.on("request", lambda wish: self.asked.append(wish.url))
        self.tab.goto(url)
        self.see("step", "")

    def close(self) -> None:
        """Close it."""
        self.context.close()

    def text(self, name: str) -> str:
        """What an element says."""
        return str(self.tab.evaluate("name => document.getElementById(name).textContent", name))

    def see(self, name: str, words: str) -> None:
        """Wait until an element says something, and these words among it."""
        self.tab.wait_for_function(
            "([name, words]) => { const text = document.getElementById(name).textContent;"
            " return text && text.includes(words) }",
            arg=[name, words],
            timeout=1000 * PATIENCE_S,
        )

    def touch(self, name: str) -> None:
        """Touch an element."""
        self._be_answered()
        self.tab.locator(f"#{name}").tap()

    def touch_words(self, words: str) -> None:
        """Touch the field with these words on it."""
        self._be_answered()
        self.tab.get_by_role("button", name=words, exact=True).tap()

    def _be_answered(self) -> None:
        """Wait until the touch before has been answered: what it did is shown a moment sooner, and one touch is on its
        way at a time."""
        self.wait("() => !document.body.dataset.pending || document.body.dataset.state !== 'open'")

    def wait_for_faults(self, words: str, many: int) -> None:
        """Wait until the browser has complained that often in these words."""
        ends_at = time.monotonic() + PATIENCE_S
        while sum(words in each for each in self.faults) < many:
            assert time.monotonic() < ends_at, self.faults
            self.tab.wait_for_timeout(20)

    def wait(self, script: str) -> None:
        """Wait until something is so on the page."""
        self.tab.wait_for_function(script, timeout=1000 * PATIENCE_S)
