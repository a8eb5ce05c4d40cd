"""Write the pictures of README and guide from the program itself.

Run: python -m tests.bench.pictures [FOLDER]. Writes screen.svg, yoke.svg and sheet.png, into docs/ if no folder is
named; the last needs Chromium and pdftoppm, and is left as it is without them.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from dataclasses import replace
from pathlib import Path

from PIL import Image

from stepper.commands.plan import write_page_file
from stepper.plan.yoke import yoke_of
from stepper.report.sheet.looks import assign_looks
from stepper.report.sheet.yoke_rings import draw_yoke_rings
from stepper.screen.answer_lines import describe_result
from stepper.screen.device_status import DeviceStatus, EarsState, HeardWords, MouthState
from stepper.screen.drawing.picture import write_svg
from stepper.screen.drawing.style import Terminal
from stepper.screen.view import draw_screen
from stepper.sitting.full_screen import list_screen_yarns
from stepper.sitting.project_file import LoadedProject, load_project
from tests.screen.scenes import Desk

ROOT = Path(__file__).resolve().parents[2]
SAMPLE = ROOT / "sample_projects" / "pullover.yaml"
SHEETS = (1, 4)
"""Which sheets of the paper are shown."""
LISTENING = DeviceStatus(
    ears=EarsState.LISTENING, why_no_ears="", mouth=MouthState.QUIET, why_no_mouth=""
)


def screen(loaded: LoadedProject) -> str:
    """Show a round of the lattice with ears on, after a cue that was heard."""
    desk = Desk(loaded.plan).do("go to yoke round 32", "by repeat", "next step", "next step")
    did = describe_result(desk.lines, "next step", desk.conductor.session, changed=True)
    ears_on = replace(LISTENING, heard=HeardWords(text="next step", did=did))
    scene = replace(desk.scene(devices=ears_on), yarns=list_screen_yarns(loaded))
    rows = draw_screen(scene, Terminal(columns=80, rows=24))
    return write_svg(rows, 80, title="The screen in the middle of a chart round, ears on")


def yoke(loaded: LoadedProject) -> str:
    """Draw the yoke from above, as on the sheet; alone it needs the colour of its edges."""
    found = yoke_of(loaded.plan.rounds)
    assert found is not None
    drawn = draw_yoke_rings(found, assign_looks(loaded.project, loaded.plan.yarns), loaded.plan.title)
    return drawn.replace("<g ", '<style>.edge{fill:none;stroke:#888;stroke-width:.4}</style><g ', 1).replace(
        "<svg ", '<svg xmlns="http://www.w3.org/2000/svg" width="360" height="360" ', 1
    )


def sheet(loaded: LoadedProject, target: Path) -> None:
    """Print the sheet and show two of its pages beside each other."""
    browser = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
    if browser is None or shutil.which("pdftoppm") is None:
        print(f"{target.name} is left as it is: Chromium or pdftoppm is missing.")
        return
    with tempfile.TemporaryDirectory() as folder:
        page, pdf = Path(folder, "sheet.html"), Path(folder, "sheet.pdf")
        write_page_file(loaded, page)
        options = ["--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer"]
        subprocess.run(
            [browser, *options, f"--print-to-pdf={pdf}", page.as_uri()], check=True, capture_output=True
        )
        subprocess.run(["pdftoppm", "-r", "72", "-png", pdf, Path(folder, "at")], check=True)
        shown = [Image.open(next(Path(folder).glob(f"at-*{number}.png"))) for number in SHEETS]
        wide, high = shown[0].size
        both = Image.new("RGB", (2 * wide + 12, high), "#777777")
        for at, each in enumerate(shown):
            both.paste(each, (at * (wide + 12), 0))
        both.quantize(32).save(target, optimize=True)


def main() -> None:
    """Write all pictures."""
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "docs"
    loaded = load_project(SAMPLE)
    (folder / "screen.svg").write_text(screen(loaded), encoding="utf-8")
    (folder / "yoke.svg").write_text(yoke(loaded), encoding="utf-8")
    sheet(loaded, folder / "sheet.png")
    for path in sorted(folder.glob("*.*g")):
        print(f"{path.name}: {path.stat().st_size / 1000:.0f} kB")


if __name__ == "__main__":
    main()
