"""The page in a real browser: layout on A4 and Letter, black and white, accessibility by axe-core.

Skipped, with the reason, where Chromium or the package that drives it is missing.
"""

from __future__ import annotations

import io
import os
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from stepper.commands.plan import write_page_file
from stepper.sitting.project_file import load_project

CHROMIUM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
sync_api = pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
axe_api = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe-core is not installed")
pytestmark = pytest.mark.skipif(CHROMIUM is None, reason="Chromium is not installed")

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))
IDS = [path.stem for path in SAMPLES]
PULLOVER = Path(__file__).parents[3] / "sample_projects" / "pullover.yaml"
MM = 96 / 25.4
"""A millimetre on the screen, by CSS. Unit: px."""
SHEETS = {"A4": 210 - 26, "Letter": 215.9 - 26}
"""Width between the page's own margins of 13 mm. Source: ISO 216; ANSI/ASME Y14.1. Unit: mm."""


@pytest.fixture(scope="module")
def browser() -> Iterator[Any]:
    """Start Chromium once, with nothing that talks to the network."""
    quiet = ["--no-sandbox", "--disable-gpu", "--no-first-run", "--disable-background-networking"]
    quiet += ["--disable-component-update", "--disable-sync"]
    environment = {key: value for key, value in os.environ.items() if key != "DISPLAY"}
    with sync_api.sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=CHROMIUM, args=quiet, env=environment)
        yield started
        started.close()


@pytest.fixture(scope="module")
def pages(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Write the page of every sample; give their addresses."""
    folder = tmp_path_factory.mktemp("pages")
    addresses = {}
    for path in (*SAMPLES, PULLOVER):
        target = folder / f"{path.stem}.html"
        write_page_file(load_project(path), target)
        addresses[path.stem] = target.as_uri()
    return addresses


@pytest.fixture
def opened(browser: Any, pages: dict[str, str], request: pytest.FixtureRequest) -> Iterator[Any]:
    """Open the page of the sample a test is for, and notice whatever it asks the network for."""
    context = browser.new_context(viewport={"width": 1000, "height": 900})
    page = context.new_page()
    asked: list[str] = []
    page.on("request", lambda wish: asked.append(wish.url))
    page.goto(pages[request.param])
    yield page
    context.close()
    assert asked == [pages[request.param]]


# Whatever is drawn beyond the right edge, in words that name it.
OVERFLOWING = """() => {
  const wide = document.documentElement.clientWidth, out = [];
  if (document.documentElement.scrollWidth > wide) out.push("the page itself");
  for (const each of document.body.querySelectorAll("*")) {
    const box = each.getBoundingClientRect();
    if (box.width && box.left > -5000 && (box.right > wide + 1 || box.left < -1))
      out.push(each.tagName + ": " + each.textContent.slice(0, 40));
  }
  return out;
}"""


@pytest.mark.parametrize("opened", ["cardigan", "shawl", "switchback"], indirect=True)
def test_nothing_is_wider_than_the_sheet(opened: Any) -> None:
    """On A4 and Letter, in print and on the screen, and on a telephone 320 px wide (SC 1.4.10)."""
    for media, wide in [
        ("print", SHEETS["A4"] * MM),
        ("print", SHEETS["Letter"] * MM),
        ("screen", 320),
    ]:
        opened.emulate_media(media=media)
        opened.set_viewport_size({"width": int(wide), "height": 900})
        assert opened.evaluate(OVERFLOWING) == [], (media, wide)


@pytest.mark.parametrize("opened", ["shawl", "switchback"], indirect=True)
def test_axe_finds_nothing(opened: Any) -> None:
    """All rules of axe-core, the best practices and the size of what is touched among them, on a page with rows
    and lace and one with rounds, colours, yoke and sleeves: the other samples hold nothing else."""
    rules = {"rules": {"target-size": {"enabled": True}}, "resultTypes": ["violations"]}
    found = axe_api.Axe().run(opened, options=rules).response
    assert [(each["id"], each["nodes"][0]["html"]) for each in found["violations"]] == []
    assert len(found["passes"]) > 20  # it did look


@pytest.mark.parametrize("opened", IDS, indirect=True)
def test_the_words_in_drawings_do_not_run_into_each_other(opened: Any) -> None:
    """No two lines of a schematic lie over one another, and none is smaller than 6 pt on A4."""
    opened.emulate_media(media="print")
    opened.set_viewport_size({"width": int(SHEETS["A4"] * MM), "height": 900})
    boxes = opened.evaluate(
        """() => [...document.querySelectorAll(".schematic text")].map(each => {
          const box = each.getBoundingClientRect();
          return [box.left, box.top, box.right, box.bottom, each.textContent];
        })"""
    )
    assert boxes
    for place, (left, top, right, bottom, words) in enumerate(boxes):
        assert bottom - top >= 8, words
        for other in boxes[place + 1 :]:
            across = min(right, other[2]) - max(left, other[0])
            down = min(bottom, other[3]) - max(top, other[1])
            # The box of a line holds room above and below the letters.
            assert across <= 1 or down <= 0.3 * (bottom - top), (words, other[4])


@pytest.mark.parametrize("opened", ["switchback"], indirect=True)
def test_charts_can_be_read_in_black_and_white(opened: Any) -> None:
    """In the grey of a screenshot a contrast square shows its letter, and a ground square shows nothing."""
    from PIL import Image

    opened.emulate_media(media="print")
    opened.add_style_tag(content="svg.chart { filter: grayscale(1) }")
    for chart in opened.query_selector_all("svg.chart"):
        grey = np.asarray(Image.open(io.BytesIO(chart.screenshot())).convert("L"), dtype=float)
        wide = float(chart.get_attribute("viewBox").split()[2])
        scale = grey.shape[1] / wide
        lettered = chart.evaluate(
            """each => [...each.querySelectorAll("text[fill]")].map(t => [+t.getAttribute("x"), +t.getAttribute("y")])"""
        )
        squares = chart.evaluate(
            """each => [...each.querySelectorAll("rect[width='14']")].map(r => [+r.getAttribute("x"), +r.getAttribute("y")])"""
        )
        seen = 0
        for x, y in squares:
            inside = grey[
                int((y + 2) * scale) : int((y + 12) * scale), int((x + 2) * scale) : int((x + 12) * scale)
            ]
            apart = inside.max() - inside.min()
            if any(abs(x + 7 - tx) < 0.5 and 0 < ty - y < 14 for tx, ty in lettered):
                assert apart > 60
                seen += 1
            else:
                assert apart < 12
        assert seen == len(lettered) > 0


@pytest.mark.skipif(shutil.which("pdftoppm") is None, reason="poppler-utils is not installed")
@pytest.mark.parametrize("sheet", list(SHEETS))
@pytest.mark.parametrize("opened", ["pullover"], indirect=True)
def test_printed_it_keeps_its_margins_and_loses_nothing(opened: Any, sheet: str, tmp_path: Path) -> None:
    """As PDF, then as a picture: at most eight sheets, few enough to lie beside the needles, the margins white on each,
    none but the last half empty, and the last box there."""
    from PIL import Image

    target = tmp_path / "page.pdf"
    opened.pdf(path=str(target), format=sheet, prefer_css_page_size=False, print_background=True)
    subprocess.run(["pdftoppm", "-gray", "-r", "40", str(target), str(tmp_path / "sheet")], check=True)
    sheets = sorted(tmp_path.glob("sheet-*.pgm"))
    assert 1 < len(sheets) <= 8
    for each in sheets:
        ink = np.asarray(Image.open(each)) < 200
        side = int(11 / 25.4 * 40)
        assert not ink[:, :side].any()
        assert not ink[:, -side:].any()
        assert not ink[: int(12 / 25.4 * 40)].any()
        filled = np.flatnonzero(ink[: -int(17 / 25.4 * 40)].any(axis=1))
        assert filled[-1] > ink.shape[0] * (0 if each == sheets[-1] else 0.5)
    text = subprocess.run(["pdftotext", str(target), "-"], check=True, capture_output=True, text=True).stdout
    assert "Left / right sleeve" in text
    assert f"Quillmere pullover · {len(sheets)} / {len(sheets)}" in text
