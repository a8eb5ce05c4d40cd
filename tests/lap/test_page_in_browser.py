"""The page in a real browser, on a phone, a tablet and a television.

Skipped, with the reason, where Chromium or the package that drives it is missing.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

import pytest

from stepper.session.cues import Next
from tests.lap.browser import CHROMIUM, SIZES, TABLET_PX_PER_MM, Page, chromium
from tests.lap.cable import Cable
from tests.lap.kit import LapSitting
from tests.plans import plan

pytest.importorskip("playwright.sync_api", reason="playwright is not installed")
axe_api = pytest.importorskip("axe_playwright_python.sync_playwright", reason="axe-core is not installed")
pytestmark = pytest.mark.skipif(CHROMIUM is None, reason="Chromium is not installed")

BOUNCE_MS = 260
"""Two touches of one field closer together than this are one. Unit: ms."""


@pytest.fixture(scope="module")
def browser() -> Iterator[Any]:
    """Chromium, started once."""
    with chromium() as started:
        yield started


@pytest.fixture
def sitting() -> Iterator[LapSitting]:
    """A sitting with its page."""
    with LapSitting() as opened:
        yield opened


class Desk:
    """Pages that are closed at the end, each of which had no fault and asked nobody else for anything."""

    def __init__(self, browser: Any, sitting: LapSitting) -> None:
        self.browser, self.sitting, self.pages = browser, sitting, list[Page]()

    def open(self, size: str = "phone", url: str = "", **more: Any) -> Page:
        """Open the page on a device."""
        page = Page(self.browser, url or self.sitting.url, size, **more)
        self.pages.append(page)
        return page


@pytest.fixture
def desk(browser: Any, sitting: LapSitting) -> Iterator[Desk]:
    """Open pages of a sitting."""
    made = Desk(browser, sitting)
    yield made
    for page in made.pages:
        page.close()
        assert [each for each in page.faults if "WebSocket" not in each and "ERR_" not in each] == []
        assert {each.split("/")[2].split(":")[0] for each in page.asked} == {"127.0.0.1"}


def step(page: Page, sitting: LapSitting) -> None:
    """Touch the large field, and wait until the page shows the step after it."""
    before = sitting.state.place
    page.tab.wait_for_timeout(BOUNCE_MS)
    page.touch("next")
    sitting.wait(lambda: sitting.state.place != before)
    page.wait(f"() => document.title.includes('{_round(sitting)}')")


def _round(sitting: LapSitting) -> str:
    index, rounds = sitting.state.place.index, sitting.conductor.session.plan.rounds
    return f"{rounds[index].number} of {rounds[index].of}" if index < len(rounds) else "Finished"


def test_a_section_is_knitted_and_a_count_asked_for_is_given(desk: Desk, sitting: LapSitting) -> None:
    """Step by step on a phone; each is in the journal and at the terminal, and the count says what it would mean
    before it is sent."""
    phone = desk.open()
    assert phone.text("round") == "Round 1 of 3"
    assert phone.text("step") == "Cast on sixty."
    step(phone, sitting)
    assert phone.text("badge") == "count now"
    phone.touch("to-count")
    for figure in "60":
        phone.touch_words(figure)
    phone.see("would", "60, as it should be.")
    assert sitting.state.knitting.verified is None
    phone.touch("send")
    phone.see("badge", "count stands")
    phone.tab.locator("#counting").wait_for(state="hidden")  # the answer to the touch follows what is shown
    while sitting.state.place.index < 3:
        step(phone, sitting)
    assert phone.text("section").startswith("Yoke")
    assert "Change to 3.75 mm needles." in phone.text("step")
    assert sitting.steps == 3
    phone.tab.wait_for_timeout(BOUNCE_MS)
    phone.touch("back")
    phone.see("round", "Round 3 of 3")


def test_a_fault_is_found_and_a_remedy_taken(desk: Desk, sitting: LapSitting) -> None:
    """What is asked is answered by touch, the ways to mend are a list, and taking one is kept."""
    sitting.say("go to yoke round 2")
    tablet = desk.open("tablet")
    tablet.touch("to-count")
    for figure in "59":
        tablet.touch_words(figure)
    tablet.see("would", "59: 1 fewer than 60.")
    tablet.touch("send")
    tablet.see("asked", "1 too few")
    tablet.touch_words("No loop")
    tablet.see("told", "up to and including the third repeat: 12 expected.")
    tablet.touch("to-count")
    for figure in "11":
        tablet.touch_words(figure)
        tablet.tab.wait_for_timeout(BOUNCE_MS)
    tablet.see("send", "Send the number")
    tablet.touch("send")
    tablet.see("told", "up to and including the first repeat: 4 expected.")
    ways = tablet.tab.locator("#choices button").all_text_contents()
    rip = "Rip 3 rounds back to the beginning of neckband round 2, about 10 minutes."
    assert ways == ["4, as expected", "What probably went wrong", rip]
    tablet.touch_words(rip)
    tablet.wait("() => document.getElementById('question').hidden")
    assert sitting.state.knitting.fault is None
    assert type(sitting.events[-1]).__name__ == "Remedied"


def test_a_network_that_is_lost_is_shown_and_caught_up_with(desk: Desk, sitting: LapSitting) -> None:
    """Meanwhile touches are not counted, and she is told so; then it shows where the knitting stands by itself."""
    with Cable(sitting.url) as cable:
        phone = desk.open(url=cable.url)
        cable.cut()
        phone.see("lost", "No connection to the computer.")
        phone.touch("next")
        phone.see("told", "not counted")
        sitting.say("next step", "next step")
        cable.mend()
        phone.see("round", "Round 3 of 3")
        phone.wait("() => !document.getElementById('lost').textContent")
        assert sitting.steps == 2
        step(phone, sitting)
    assert sitting.steps == 3


def test_a_step_whose_answer_was_lost_is_made_once(desk: Desk, sitting: LapSitting) -> None:
    """The touch got through, the answer did not: it is sent again under its number, and is answered, not repeated."""
    with Cable(sitting.url) as cable:
        phone = desk.open(url=cable.url)
        cable.swallow()
        phone.touch("next")
        sitting.wait(lambda: sitting.steps == 1)
        cable.cut()
        cable.mend()
        phone.see("round", "Round 2 of 3")
        phone.wait("() => !document.body.dataset.pending")
        phone.tab.wait_for_timeout(100)
    assert sitting.steps == 1


def test_a_page_opened_anew_in_mid_count_loses_nothing(desk: Desk, sitting: LapSitting) -> None:
    """The figures typed are still there, and so is a note half written; nothing was sent."""
    sitting.say("next step")
    phone = desk.open()
    phone.touch("to-note")
    phone.tab.locator("#note").fill("the left edge is")
    phone.touch("to-count")
    phone.touch_words("6")
    phone.tab.reload()
    phone.see("figures", "6")
    assert phone.tab.locator("#counting").is_visible()
    assert phone.tab.locator("#note").input_value() == "the left edge is"
    phone.touch_words("0")
    phone.see("would", "60, as it should be.")
    phone.touch("send")
    phone.see("badge", "count stands")
    phone.touch("to-note")
    phone.touch("keep")
    phone.see("told", "Noted")
    phone.wait("() => document.getElementById('note').value === ''")  # the answer follows what is shown


def test_two_devices_and_the_terminal_show_the_same(desk: Desk, sitting: LapSitting) -> None:
    """Whoever steps, all see it; a bounce of the finger is one touch."""
    phone, tablet = desk.open(), desk.open("tablet on its side")
    phone.tab.evaluate("() => { performance.now = () => 1000 }")  # both at one moment, however long the machine takes
    phone.touch("next")
    phone.touch("next")
    for each in (phone, tablet):
        each.see("round", "Round 2 of 3")
    sitting.conductor.offer(Next())
    for each in (phone, tablet):
        each.see("round", "Round 3 of 3")
    assert sitting.steps == 2


def test_a_pedal_of_the_device_and_its_keys_step(desk: Desk, sitting: LapSitting) -> None:
    """The keys of the terminal mean the same here; a key held down is one step."""
    page = desk.open("television, scaled")
    page.tab.keyboard.press("PageDown")
    page.see("round", "Round 2 of 3")
    page.tab.keyboard.press("6")
    page.tab.keyboard.press("0")
    page.see("would", "60, as it should be.")
    page.tab.keyboard.press("Escape")
    assert page.tab.locator("#counting").is_hidden()
    page.tab.keyboard.press("PageUp")
    page.see("round", "Round 1 of 3")
    assert sitting.state.place.index == 0


def test_the_ears_are_closed_and_opened_by_touch(desk: Desk, sitting: LapSitting) -> None:
    """While they are closed every other touch would be refused, so the large field opens them."""
    phone = desk.open()
    phone.touch("to-more")
    phone.touch_words("Close the ears")
    phone.see("next", "Listen again")
    phone.touch("next")
    phone.see("next", "Next step")
    assert not sitting.state.asleep
    assert sitting.steps == 0


def test_stopping_for_tonight_takes_two_touches(desk: Desk, sitting: LapSitting) -> None:
    """A cat on the tablet ends no evening; the page says that it is over and gives up."""
    sitting.say("next step")
    phone = desk.open()
    phone.touch("to-more")
    phone.touch("stop")
    phone.see("stop", "Touch again")
    assert not sitting.conductor.closed
    phone.touch("stop")
    phone.see("told", "Done so far")
    sitting.__exit__(None, None, None)
    phone.see("lost", "This sitting is over.")


# How it looks


OVERFLOWING = """() => {
  const wide = document.documentElement.clientWidth, out = [];
  if (document.documentElement.scrollWidth > wide) out.push("the page itself");
  for (const each of document.body.querySelectorAll("*")) {
    const box = each.getBoundingClientRect();
    if (box.width && (box.right > wide + 1 || box.left < -1)) out.push(each.tagName + "#" + each.id);
  }
  return out;
}"""
SMALL = """() => [...document.querySelectorAll("button, input, textarea")].filter(each => {
  const box = each.getBoundingClientRect();
  return box.width && (box.width < 48 || box.height < 48);
}).map(each => each.id || each.textContent)"""
COVERED = """() => {
  const step = document.getElementById("now").getBoundingClientRect();
  const text = document.getElementById("step").lastElementChild.getBoundingClientRect();
  const field = document.getElementById("next").getBoundingClientRect();
  const field_seen = field.bottom <= innerHeight + 1 && field.top >= 0;
  return [text.bottom <= step.bottom + 1, field_seen];
}"""


@pytest.mark.parametrize("size", [each for each in SIZES if "scaled" not in each])
def test_everything_fits_from_a_small_phone_to_a_television(desk: Desk, sitting: LapSitting, size: str) -> None:
    """Nothing is cut off or scrolled sideways, what is touched is 48 px at least, the step and its field are in sight.
    Sources: WCAG 2.2, SC 1.4.10 (320 px) and 2.5.8; 48 px is the usual advice for fingers, from memory."""
    sitting.say("go to yoke round 4", "by repeat")
    page = desk.open(size)
    for opened in ("", "to-count", "to-note", "to-more"):
        if opened:
            page.touch(opened)
        assert page.tab.evaluate(OVERFLOWING) == []
        assert page.tab.evaluate(SMALL) == []
        whole, within_reach = page.tab.evaluate(COVERED)
        assert whole, opened
        assert within_reach or (opened and "side" in size), opened


UNSEEN = """() => [...document.querySelectorAll("#choices button")].slice(0, 2).filter(each => {
  const box = each.getBoundingClientRect(), field = document.getElementById("fields").getBoundingClientRect();
  return box.top < 0 || box.bottom > innerHeight || (box.bottom > field.top && box.top < field.bottom);
}).map(each => each.textContent)"""


@pytest.mark.parametrize("size", ["phone", "tablet", "tablet on its side"])
def test_what_can_be_answered_is_in_sight_while_something_is_asked(desk: Desk, sitting: LapSitting, size: str) -> None:
    """Below the chart the answers lay out of sight, and all that was seen to do was the next step."""
    sitting.say("go to yoke round 2", "count is 59")
    page = desk.open(size)
    page.see("choices", "No loop")
    assert page.tab.evaluate(UNSEEN) == []
    sitting.say("no loop")
    page.see("choices", "as expected")
    assert page.tab.evaluate(UNSEEN) == []


@pytest.mark.parametrize("words", ["", "go to yoke round 3"])
@pytest.mark.parametrize("size", ["tablet", "tablet on its side"])
def test_the_step_is_read_at_two_metres(desk: Desk, sitting: LapSitting, size: str, words: str) -> None:
    """Capitals of a whole round's step are at least 16 minutes of arc high on a tablet two metres away.

    Source: ISO 9241-303, character height: 16' at least, 20' to 22' preferred; from memory.
    """
    if words:
        sitting.say(words)
    page = desk.open(size)
    high = page.tab.evaluate(
        """() => { const pen = document.createElement("canvas").getContext("2d");
        const style = getComputedStyle(document.querySelector("#step p:not(.before)"));
        pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
        return pen.measureText("H").actualBoundingBoxAscent; }"""
    )
    arc = math.degrees(math.atan(high / TABLET_PX_PER_MM / 2000)) * 60
    assert arc >= 16, (words, high)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing(desk: Desk, sitting: LapSitting, scheme: str) -> None:
    """All rules of axe-core, contrast and the size of what is touched among them: with a question open, in the larger
    panels, and with the network lost."""
    rules = {"rules": {"target-size": {"enabled": True}}, "resultTypes": ["violations"]}
    sitting.say("go to yoke round 2", "count is 59", "no loop")
    with Cable(sitting.url) as cable:
        page = desk.open("tablet", url=cable.url, color_scheme=scheme)
        for opened in (("to-count",), ("to-more", "above"), ("lost",)):
            for each in opened:
                if each == "lost":
                    cable.cut()
                    page.see("lost", "No connection")
                else:
                    page.touch(each)
            found = axe_api.Axe().run(page.tab, options=rules).response
            assert [(each["id"], each["nodes"][0]["html"]) for each in found["violations"]] == [], opened
            assert len(found["passes"]) > 15  # it did look


def test_a_screen_reader_can_knit_with_it(desk: Desk, sitting: LapSitting) -> None:
    """Headings, names and order say what is there without a picture; what changes is read out, once."""
    sitting.say("go to yoke round 4")
    page = desk.open()
    tree = page.tab.locator("body").aria_snapshot()
    order = ["heading \"Ridgeway yoke\"", "Round 4 of 6", "The step in hand", "Stitch 0 of 70", "Back", "Next step"]
    places = [tree.index(each) for each in order]
    assert places == sorted(places), tree
    assert "Chart: round 4 of 6 with the rounds around it" in tree
    page.tab.evaluate(
        """() => { window.read = []; for (const each of document.querySelectorAll("[aria-live], [role=status]"))
        new MutationObserver(() => window.read.push(each.id)).observe(each, { childList: true, subtree: true, characterData: true }) }"""
    )
    step(page, sitting)
    page.tab.wait_for_timeout(100)
    read = page.tab.evaluate("window.read")
    assert sorted(set(read)) == sorted(read)
    assert "step" in read


def test_the_chart_and_the_yoke_are_drawn_in_the_yarns_colours(desk: Desk, sitting: LapSitting) -> None:
    """Yoke round 4 of the garment begins, from the chart's right edge: a chalk stitch, four of pine, two of chalk,
    three of ember."""
    sitting.say("go to yoke round 4")
    page = desk.open("tablet")
    read_rows = (
        """async () => { const draw = await import(new URL("draw.js", location.href));
        const canvas = document.getElementById("squares"), { size } = draw.measureSquares(canvas);
        const pen = canvas.getContext("2d"), high = canvas.clientHeight;
        const at = (x, y) => "#" + [...pen.getImageData(x, y, 1, 1).data.slice(0, 3)].map(c => c.toString(16).padStart(2, "0")).join("");
        const right = canvas.clientWidth - 40, rows = [];
        for (let y = 3; y < high; y += 1) {
          const row = [0, 1, 4, 5, 7].map(n => at(right - n * size - 3, y));
          rows.push(row.join());
        }
        return rows; }"""
    )
    # The first sight has few squares, since the page has not yet said for how many it has room.
    sitting.wait(lambda: "#ece6d8,#1f4d3a,#1f4d3a,#ece6d8,#c4512d" in page.tab.evaluate(read_rows))
    page.touch("to-more")
    page.touch("above")
    page.wait("() => (document.getElementById('rings').getAttribute('aria-label') || '').includes('rounds are worked')")
    middle = page.tab.evaluate(
        """() => { const canvas = document.getElementById("rings"), pen = canvas.getContext("2d");
        const found = new Set(), data = pen.getImageData(0, 0, canvas.width, canvas.height).data;
        for (let at = 0; at < data.length; at += 4) if (data[at + 3] === 255)
          found.add("#" + [data[at], data[at + 1], data[at + 2]].map(c => c.toString(16).padStart(2, "0")).join(""));
        return [...found]; }"""
    )
    assert "#ece6d8" in middle


def test_motion_is_left_out_where_it_is_not_wanted(desk: Desk, sitting: LapSitting) -> None:
    """Source: WCAG 2.2, SC 2.3.3; the media feature prefers-reduced-motion."""
    animated = "() => getComputedStyle(document.getElementById('step')).animationName"
    for motion, name in (("reduce", "none"), ("no-preference", "rise")):
        page = desk.open(reduced_motion=motion)
        page.tab.evaluate("() => document.getElementById('step').classList.add('new')")
        assert page.tab.evaluate(animated) == name


def test_a_name_with_script_in_it_is_shown_as_it_is_written(browser: Any) -> None:
    """Titles, sections, labels and yarns come from a file somebody else may have written."""
    evil = '<img src=x onerror="document.title=\'caught\'"><script>document.title="caught"</script>'
    made = plan((evil, [("co4", {"label": evil, "remarks": (evil,)}), ("k4", {})]), title=evil)
    with LapSitting(made) as sitting:
        page = Page(browser, sitting.url)
        page.touch("to-note")
        page.tab.locator("#note").fill(evil)
        page.touch("keep")
        page.see("told", "<script>")
        assert "<img" in page.text("title")
        assert "<img" in page.text("section")
        assert page.tab.locator("main img").count() == 1  # the code's own
        assert page.tab.locator("script").count() == 1
        page.tab.wait_for_timeout(50)
        assert "caught" not in page.tab.title().replace('"caught"', "").replace("'caught'", "")
        assert page.faults == []
        page.close()


def test_a_script_put_into_the_page_does_not_run(desk: Desk, sitting: LapSitting) -> None:
    """The content policy stands behind the rule that all text is set as text."""
    page = desk.open()
    page.tab.evaluate(
        """() => { const script = document.createElement("script"); script.textContent = "window.caught = true";
        document.body.append(script);
        const image = document.createElement("img"); image.src = "http://evil.example/x.png"; document.body.append(image); }"""
    )
    page.wait_for_faults("Content Security Policy", 2)
    assert page.tab.evaluate("window.caught") is None
    page.faults.clear()
    page.asked = [each for each in page.asked if "evil" not in each]


def test_it_says_why_a_screen_may_go_dark_and_whose_microphone_listens(desk: Desk, sitting: LapSitting) -> None:
    """On this computer the browser may keep it awake; what was heard is shown here and not elsewhere."""
    page = desk.open()
    page.see("awake", "creen")
    page.see("microphone", "The computer listens and speaks; this page shows what it heard.")
