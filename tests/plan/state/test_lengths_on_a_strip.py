"""A second reckoning of where lengths are measured from: a knitter with the strip of her rows before her and a tape.

She lays the rows down in their order, each with its stitches, its line and its section, and looks for the place that the words
name, row by row. She shares no code with `stepper.plan.state`. That the rows of a length are those from that place on is
arithmetic; that a foot is measured along its sole and an armhole from its first bound-off stitches: common practice. Which rows
belong to a heel, how far a toe is from its cast-on and what is refused, she does as the modules promise, in a way of her own.
It is long because every kind of place has its own words.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from random import Random

import pytest

from stepper.craft.gauge import Gauge
from stepper.plan.drafts import DraftRound
from stepper.plan.model import Group, Item, Run
from stepper.plan.state.foot_places import foot_begun, heel_begun
from stepper.plan.state.held_below import piece_begun, rows_below
from stepper.plan.state.in_hand import SectionInHand
from stepper.plan.state.measuring_places import (
    is_rib,
    like_another,
    measured_from,
    stretch_named,
    without_heel,
    without_held,
)
from stepper.plan.state.needles import Needles
from stepper.project.duration import UntilLength, UntilLike
from stepper.project.instructions import Line
from stepper.project.model import Fabric, Project, Section
from stepper.project.problems import Span
from stepper.project.reader import read_project
from stepper.project.stitchwork import Numbers, PrintedLength
from tests.project.samples import project as sample

HERE = Span(line=1, column=1)
MM = 4.0
"""Height of a row. Unit: mm."""
FABRIC = Fabric(name="own", needle_mm=4.0, gauge=Gauge(stitches=20, rounds=100 / MM), blocked=None)
TURNS = ("turn", "w&t")
TAKES = {"co": 0, "pu": 0, "return": 0, "k2tog": 2, "m1": 0, "pm": 0, **dict.fromkeys(TURNS, 0)}
GIVES = {"bo": 0, "hold": 0, "pm": 0, **dict.fromkeys(TURNS, 0)}


@dataclass
class Row:
    """A row of the strip."""

    stitches: list[tuple[str, int, str]]
    section: str
    line: int
    flat: bool
    divides: bool = False

    @property
    def before(self) -> int:
        """Stitches it takes."""
        return sum(TAKES.get(code, 1) * often for code, often, _ in self.stitches)

    @property
    def after(self) -> int:
        """Stitches it leaves."""
        return sum(GIVES.get(code, 1) * often for code, often, _ in self.stitches)

    @property
    def codes(self) -> list[str]:
        """What it works, in order."""
        return [code for code, _, _ in self.stitches]

    @property
    def worked(self) -> list[tuple[str, int]]:
        """What of it takes stitches."""
        return [(code, often) for code, often, _ in self.stitches if TAKES.get(code, 1)]

    @property
    def tall(self) -> float:
        """What it adds to the length. Unit: mm."""
        along = any(TAKES.get(code, 1) and GIVES.get(code, 1) for code in self.codes)
        return MM if along and "rest" not in self.codes else 0.0

    @property
    def ribbed(self) -> bool:
        """Whether it is knit and purl in turn, five at most."""
        narrow = all(code in ("k", "p") and often <= 5 for code, often in self.worked)
        both = {code for code, _ in self.worked} == {"k", "p"}
        return narrow and both and len(self.worked) > 3 and self.before == self.after

    @property
    def opens(self) -> bool:
        """Whether it opens an armhole."""
        off = bool(self.worked) and self.worked[0][0] == "bo" and self.after > 0
        return off or self.codes.count("hold") >= (2 if self.flat else 1)

    def draft(self) -> DraftRound:
        """Write it as it is kept."""
        items: list[Item] = [Run(*each) for each in self.stitches]
        if self.ribbed and len(items) % 2 == 0 and items[:2] * (len(items) // 2) == items:
            items = [Group(tuple(items[:2]), len(items) // 2)]
        return DraftRound(
            section=self.section, before=self.before, after=self.after, phrase=tuple(items), line=self.line, size=0, flat=self.flat,
            side="RS", needle_mm=4.0, fabric=FABRIC, held={}, markers=(), divide=self.divides,
        )  # fmt: skip


class Strip:
    """The rows, and what the lines say."""

    def __init__(
        self, rows: list[Row], texts: dict[int, str], section: str, start: int, *, apart: int, marked: int
    ) -> None:
        self.rows, self.texts, self.section, self.start, self.apart, self.marked = (
            rows,
            texts,
            section,
            start,
            apart,
            marked,
        )
        self.told: list[str] = []
        self.refused: list[str] = []

    @property
    def piece(self) -> int:
        """The row the piece begins with."""
        begins = [at for at, row in enumerate(self.rows) if row.before == 0]
        return begins[-1] if begins else 0

    def tall(self, rows: list[int]) -> float:
        """Return how long rows are together."""
        return sum(self.rows[at].tall for at in rows)

    def below(self, piece: int) -> list[int]:
        """Return the rows in which the stitches of a piece were worked before they were held by this section."""
        names = (
            [name for code, _, name in self.rows[piece].stitches if code == "return"]
            if piece < len(self.rows)
            else []
        )
        holds = [
            at
            for at in range(self.start, piece)
            if any(code == "hold" and name in names for code, _, name in self.rows[at].stitches)
        ]
        if not holds:
            return []
        begins = [at for at in range(holds[-1] + 1) if self.rows[at].before == 0]
        first = max([self.start, *begins[-1:]])
        return [*self.below(first), *range(first, holds[-1])]

    def shoulder(self, own: list[int]) -> int | None:
        """Return the first of the rows that bind off in steps at the end of a piece, at least one for each side."""
        rows = [self.rows[at] for at in own]
        if [row.after for row in rows].count(0) != 1 or rows[-1].after or [row.before for row in rows].count(0) != 1:
            return None
        begins = {
            at for at, row in enumerate(rows)
            if row.after and [code for code, _ in row.worked][:1] == ["bo"] and [code for code in row.codes if code in ("bo", "co", "hold")] == ["bo"]
        }  # fmt: skip
        at, chain = len(rows) - 1, 0
        while near := begins & {at - 1, at - 2}:
            at, chain = max(near), chain + 1
        return own[at] if chain >= 2 and not begins & set(range(at - 6, at)) else None

    def first_has(self, at: int, *codes: str) -> bool:
        """Return whether a row works one of some stitches."""
        return at < len(self.rows) and bool(set(codes) & set(self.rows[at].codes))

    def named(self, name: str, among: list[int]) -> tuple[int, int] | None:
        """Return the first stretch of rows that a name means, and where it ends."""
        stem = name.lower()
        for more in ("shaping", "shapings", "section", "edge", "border", "band"):
            stem = stem.removesuffix(f" {more}")
        stem = "rib" if stem == "ribbing" else stem.removesuffix("s")

        def bears(row: Row) -> bool:
            words = re.findall(r"\w+", f"{self.texts.get(row.line, '')} {row.section}".lower())
            return any(word.startswith(stem) for word in words) or (stem == "rib" and row.ribbed)

        own = [at for at in among if self.rows[at].before > 0 and bears(self.rows[at])]
        if stem in ("armhole", "underarm", "shoulder", "neck", "raglan"):
            shaped = [at for at in own if self.rows[at].before != self.rows[at].after]
            opening = [at for at in among if self.rows[at].opens]
            own = [at for at in shaped if at in opening] or shaped
            if stem in ("armhole", "underarm"):
                if not own:
                    own = opening
                else:
                    first = own[0]
                    while {first - 1, first - 2} & set(opening):
                        first = min({first - 1, first - 2} & set(opening))
                    own = [*range(first, own[0]), *own]
        if not own:
            return None
        end = own[0]
        while end in own and end in among:
            end += 1
        return own[0], end

    def turned(self) -> list[int]:
        """Return the short rows of the heel or toe turned last."""
        found: list[int] = []
        for at in reversed(range(self.piece, len(self.rows))):
            codes = set(self.rows[at].codes)
            if codes & set(TURNS) or ("rest" in codes and not codes & {"hold", "return", "pu", "co"}):
                if found and found[0] > at + 6:
                    break
                found.insert(0, at)
        waits = {at: [often for code, often, _ in self.rows[at].stitches if code == "rest"] for at in found}
        while len(found) >= 3:
            one, other = self.rows[found[0]], self.rows[found[2]]
            if sum(waits[found[0]]) != sum(waits[found[2]]) or {
                one.before,
                one.after,
                other.before,
                other.after,
            } != {one.before}:
                break
            found.pop(0)
        return found if len(found) >= 2 else []

    def low(self, rows: list[int]) -> float:
        """Return what rows would add that add nothing."""
        return MM * sum(self.rows[at].tall == 0 for at in rows)

    def fold(self, where: str, rows: list[int]) -> tuple[int, float, str]:
        """Return the middle of a heel or toe of short rows."""
        turns = [at for at in rows if set(self.rows[at].codes) & set(TURNS)]
        told = f"measured from the {where}, the middle of its {len(turns)} short rows (line{self.lines(turns or rows)})."
        return rows[-1] + 1, self.low(rows) - self.low(turns) / 2, told

    def lines(self, rows: list[int]) -> str:
        """Write the lines of rows."""
        first, last = self.rows[rows[0]].line, self.rows[rows[-1]].line
        return f" {first}" if first == last else f"s {first}-{last}"

    def heel(self) -> tuple[int, float, str] | None:
        """Return the back of the heel: where it is, what it adds, what is told."""
        rows = self.turned()
        if not rows or rows[0] <= self.piece + 6:
            return None
        if any("pu" in row.codes for row in self.rows[rows[-1] + 1 :]):
            told = f"measured from the back of the heel, with the rows that turn it (line{self.lines(rows)})."
            return rows[0], self.low(rows), told
        return self.fold("back of the heel", rows)

    def foot(self) -> tuple[int, float, str]:
        """Return where the foot begins."""
        heel, rows, section = self.heel(), self.turned(), max(self.start, self.piece)
        if heel is not None:
            return heel
        if rows:
            return self.fold("tip of the toe", rows)
        begun = self.rows[self.piece].after if self.rows else 0
        if 10 * (self.rows[-1].after if self.rows else 0) >= 13 * begun:
            return (
                self.piece,
                0.0,
                "measured from the tip of the toe, where the piece begins." if section > self.piece else "",
            )
        return section, 0.0, "no heel was turned so far: measured from the beginning of this section."

    def opened_below(self, start: str) -> int | None:
        """Return where an armhole was opened before the stitches of the piece went on hold."""
        if start.removesuffix(" shaping") not in ("beg armhole", "beg armholes", "beg underarm"):
            return None
        name, piece = start.removeprefix("beg "), self.piece
        if self.named(name, list(range(piece, len(self.rows)))) is not None:
            return None
        found = self.named(name, self.below(piece))
        return found[0] if found else None

    def origin(self, start: str, of: str, long: float) -> int:
        """Return the row from whose beginning a length is measured: a piece that is to be longer is measured whole."""
        piece, section, here = (
            self.piece,
            max(self.start, self.piece),
            list(range(self.piece, len(self.rows))),
        )
        if start == "piece":
            return piece
        if start == "heel":
            found = self.heel()
            return found[0] if found else piece
        if start == "foot":
            return self.foot()[0]
        if start == "divide":
            apart = [at + 1 for at in here if self.rows[at].divides]
            if not apart and not self.first_has(piece, "return", "pu"):
                self.refused.append("no stitches of this piece were put on hold")
            return apart[-1] if apart else piece
        if start == "marked":
            if self.marked <= piece:
                self.refused.append("no row of this piece was marked")
            return self.marked if self.marked > piece else piece
        if start == "picked up":
            picked = [at + 1 for at in here if "pu" in self.rows[at].codes]
            if not picked:
                self.refused.append("no stitches of this piece were picked up")
            return picked[-1] if picked else piece
        if start.startswith(("beg ", "end ")):
            return self.origin_named(start, here)
        if start == "flap" and self.apart > section:
            self.told.append("measured from the row that set the other stitches aside")
            return self.apart
        if start == "cast-on":
            if self.first_has(piece, "return") and not self.first_has(piece, "co") and not self.below(piece):
                self.refused.append("so this piece has no cast-on edge")
            return piece
        before = self.rows[piece : self.start]
        moved = any({"hold", "return", "pu"} & set(row.codes) for row in before) or self.first_has(
            self.start, "return", "pu"
        )
        reached = sum(row.tall for row in before)
        if start == "section" and not (of and of in self.section.lower()) and not moved and reached:
            if of in ("piece", "work", "it") and long > reached:
                self.told.append(f'measured from the cast-on edge, {reached / 10:.1f} cm before "{self.section}"')
                return piece
            self.told.append(
                f'measured from the beginning of "{self.section}", {reached / 10:.1f} cm behind the cast-on'
            )
        return section

    def origin_named(self, start: str, here: list[int]) -> int:
        """Return the row where a named stretch begins, or the one behind it."""
        which, name = start[:3], start[4:]
        found, below = self.named(name, here), self.opened_below(start)
        if below is not None:
            self.told.append(
                f"measured from the beginning of line {self.rows[below].line}, before the stitches were held"
            )
            return self.piece
        if (
            found is None
            and self.first_has(self.piece, "return")
            and which == "beg"
            and name.startswith(("armhole", "underarm"))
        ):
            self.told.append("measured from where the stitches came back from hold")
            return self.piece
        if found is None:
            self.refused.append(f"no row of this piece so far is of the {name}")
            return self.piece
        at = found[0] if which == "beg" else found[1] - 1
        self.told.append(
            f"measured from the {'beginning' if which == 'beg' else 'end'} of line {self.rows[at].line}"
        )
        return found[0] if which == "beg" else found[1]

    def without_held(self, start: str, of: str, long: float, *, measured: bool) -> float:
        """Return a length without the rows below stitches that came back from hold."""
        rows = self.below(self.piece) if measured else []
        if self.tall(rows) == 0:
            return long
        if start == "cast-on" and not self.first_has(self.piece, "co"):
            self.told.append(f"the {sum(self.rows[at].tall > 0 for at in rows)} rows below the stitches")
            return long - self.tall(rows)
        opened = self.opened_below(start)
        if opened is not None:
            return long - self.tall([at for at in rows if at >= opened])
        if (
            start in ("section", "piece")
            and (of in ("", "piece", "work", "it") or of in self.section.lower())
            and long > self.tall(rows)
        ):
            self.refused.append("nobody can tell whether the rows below them count")
        return long


# --- strips drawn by chance ---------------------------------------------------------------------------

WORDS = (
    "Knit to end",
    "Rib for the cuff",
    "Cuff",
    "Armhole shaping",
    "Shape armholes",
    "Neck: dec",
    "K2, p2 ribbing",
    "Yoke",
    "Back neckband",
    "Straight",
)
PARTS = ("Back", "Front", "Left front", "Sleeve cuff", "Yoke")


def draw_row(chance: Random, count: int, kind: str) -> list[tuple[str, int, str]]:
    """Draw what a row does to its stitches."""
    part = min(chance.randint(1, 5), max(1, count - 1))
    if count < 12:
        kind = "k"
    if kind == "rib":
        wide = chance.choice((1, 2, 2, 5, 6))
        row = [(code, wide, "MC") for _ in range(count // (2 * wide)) for code in ("k", "p")]
        row[4:4] = [("pm", 1, "MC")] * chance.choice((0, 0, 1))
        return [*row, *[("k", count % (2 * wide), "MC")] * (count % (2 * wide) > 0)]
    row = {
        "k": [("k", count, "MC")],
        "bo": [("pm", chance.choice((0, 0, 1)), "MC"), ("bo", part, "MC"), ("k", count - part, "MC")],
        "edge": [("pm", 1, "MC"), ("k", part, "MC"), ("bo", 1, "MC"), ("k", count - part - 1, "MC")],
        "dec": [("k", count - 2, "MC"), ("k2tog", 1, "MC")],
        "inc": [("k", count, "MC"), ("m1", part, "MC")],
        "hold": [("k", 2, "MC"), ("hold", part, "thumb"), ("k", count - 2 - part, "MC")],
        "two": [("hold", part, "thumb"), ("k", count - 2 * part, "MC"), ("hold", part, "neck")],
        "turn": [("k", count - part, "MC"), ("turn", 1, "MC"), ("rest", part, "MC")],
        "turn 3": [("k", count - 3, "MC"), ("w&t", 1, "MC"), ("rest", 3, "MC")],
        "rest": [("rest", part, "MC"), ("k", count - part, "MC")],
        "pu": [("k", count, "MC"), ("pu", part, "MC")],
        "whole": [("bo", count, "MC")],
    }[kind]
    return [each for each in row if each[1]]


def draw_strip(chance: Random, base: Project) -> tuple[Strip, Needles]:
    """Draw the rows of a garment up to now, and the same as the plan keeps them."""
    rows: list[Row] = []
    sections: list[tuple[str, int]] = []
    texts: dict[int, str] = {}
    line = 0
    begin, names = chance.choice(("co", "co", "pu")), ["sleeve"]
    count = 0
    usual = chance.choice(
        (
            "k bo dec rib",
            "k k k bo hold",
            "k turn k hold k",
            "k k k hold two rib bo",
            "k turn turn turn rest",
            "k k turn pu k k",
            "k k k k turn turn pu k",
            "k k inc dec edge whole",
            "k k k k",
        )
    )
    for _ in range(chance.choice((1, 2, 2, 3))):
        sections.append((chance.choice(PARTS), len(rows)))
        for _ in range(chance.choice((1, 2, 4, 6))):
            line += 1
            texts[line] = chance.choice(WORDS)
            for _ in range(chance.choice((1, 1, 2, 4, 5))):
                flat, name = chance.random() < 0.6, sections[-1][0]
                if count == 0 or (chance.random() < 0.08 and rows):
                    count = chance.choice((20, 24, 30))
                    row = Row(
                        [(begin, count, chance.choice(names[-2:]) if begin == "return" else "MC")],
                        name,
                        line,
                        flat,
                    )
                    if begin == "return" and chance.random() < 0.1:
                        row.stitches.append(("co", 2, "MC"))
                    begin = chance.choice(("co", "return", "return", "pu"))
                else:
                    kind = chance.choice(usual.split())
                    row = Row(
                        draw_row(chance, count, kind),
                        name,
                        line,
                        flat,
                        divides=kind in ("hold", "two") and chance.random() < 0.8,
                    )
                count = row.after
                names += [yarn for code, _, yarn in row.stitches if code == "hold"]
                rows.append(row)
    if chance.random() < 0.2:
        sections.append((chance.choice(PARTS), len(rows)))
    name, start = sections[-1]
    apart, marked = chance.randint(0, len(rows)), chance.randint(0, len(rows))
    return as_kept(Strip(rows, texts, name, start, apart=apart, marked=marked), base)


def draw_back(chance: Random, base: Project) -> tuple[Strip, Needles]:
    """Draw a back that is mostly plain and bound off at once, and a front begun behind it."""
    rows, count = [Row([("co", 30, "MC")], "Back", 1, flat=True)], 30
    if chance.random() < 0.15:
        rows = [replace(rows[0], section="Hem"), Row([("bo", 30, "MC")], "Back", 1, flat=True), *rows]
    length = chance.choice((5, 6, 7, 8, 12))
    shaped = chance.sample(range(length), chance.choice((0, 1, 1)))
    for at in range(length):
        kind = chance.choice(("dec", "bo", "edge", "rib", "inc")) if at in shaped else "k"
        rows.append(Row(draw_row(chance, count, kind), "Back", 2, flat=True))
        count = rows[-1].after
    for _ in range(chance.choice((0, 0, 1, 2, 3))):
        rows += [Row([("k", count, "MC")], "Back", 2, flat=True)] * chance.choice((0, 0, 1, 2))
        rows.append(Row([("bo", 2, "MC"), ("k", count - 2, "MC")], "Back", 2, flat=True))
        count -= 2
    rows.append(
        Row(draw_row(chance, count, chance.choice(("whole", "whole", "whole", "k"))), "Back", 3, flat=True)
    )
    if rows[-1].after == 0 and chance.random() < 0.1:
        rows += [Row([("co", 30, "MC")], "Back", 4, flat=True), Row([("k", 30, "MC")], "Back", 4, flat=True)]
    rows.append(Row([("co", 30, "MC")], "Front", 5, flat=True))
    rows += [Row([("k", 30, "MC")], "Front", 6, flat=True) for _ in range(chance.choice((0, 2, 8)))]
    front = next(at for at, row in enumerate(rows) if row.section == "Front")
    return as_kept(Strip(rows, dict.fromkeys(range(1, 7), "Knit"), "Front", front, apart=0, marked=0), base)


def as_kept(strip: Strip, base: Project) -> tuple[Strip, Needles]:
    """Return a strip, and the same as the plan keeps it."""
    lines = tuple(
        Line(
            label=None,
            numbers=(),
            side="",
            rows=False,
            sentences=(),
            text=text,
            place=Span(line=at, column=1),
        )
        for at, text in strip.texts.items()
    )
    page = replace(base, sections=(Section(name="all", gauge="", yarn="MC", lines=lines, place=HERE),))
    section, count = SectionInHand(name=strip.section, fabric=FABRIC, start=strip.start), strip.rows[-1].after
    needles = Needles(project=page, size=0, fabric=FABRIC, section=section, count=count)
    needles.drafts = [row.draft() for row in strip.rows]
    needles.last.apart, needles.last.marked = strip.apart, strip.marked
    return strip, needles


@pytest.fixture(name="base", scope="module")
def _base() -> Project:
    project = read_project(sample("Cast on 20 sts.\nBind off.")).project
    assert project is not None
    return project


def same(needles: Needles, strip: Strip) -> bool:
    """Return whether both tell and refuse the same, one for one; and forget it."""
    told, refused = [each.message for each in needles.cautions], [each.message for each in needles.findings]
    alike = len(told) == len(strip.told) and len(refused) == len(strip.refused)
    alike = alike and all(
        part in whole for part, whole in zip(strip.told + strip.refused, told + refused, strict=True)
    )
    needles.cautions, needles.findings, strip.told, strip.refused = [], [], [], []
    return alike


STARTS = ("piece", "heel", "foot", "divide", "marked", "picked up", "flap", "cast-on", "section", "beg armhole", "end armhole", "beg armhole shaping",
          "beg underarm", "beg rib", "end ribbing", "end cuff", "beg cuff", "beg neck", "end neckband", "beg yoke", "beg raglan")  # fmt: skip


def test_a_length_begins_where_the_strip_of_rows_has_the_place(base: Project) -> None:
    """Every kind of place, on pieces with armholes, ribs, heels, holds and stitches that came back: the same row, the same words."""
    chance = Random(31)
    seen: set[tuple[str, bool, bool]] = set()
    for number in range(450):
        strip, needles = draw_strip(chance, base)
        assert piece_begun(needles) == strip.piece, number
        assert rows_below(needles, strip.piece) == tuple(strip.below(strip.piece)), number
        assert [is_rib(draft) for draft in needles.drafts] == [row.ribbed for row in strip.rows], number
        heel, foot = heel_begun(needles, strip.piece), foot_begun(needles, strip.piece)
        assert (None if heel is None else (heel.origin, heel.more_mm, heel.told)) == strip.heel(), (
            number,
            strip.rows,
        )
        assert (foot.origin, foot.more_mm, foot.told) == strip.foot(), (number, strip.rows)
        for start in chance.sample(STARTS, 8):
            of, measured = chance.choice(("", "", "piece", "yoke", "hand", "back")), chance.random() < 0.8
            long = chance.choice((20.0, 60.0, 200.0, max(MM, strip.tall(strip.below(strip.piece)))))
            duration = UntilLength(
                length=PrintedLength((long,), HERE, "some"), measured=measured, start=start, blocked=False, of=of
            )
            case = (number, start, of, strip.rows, strip.texts, strip.start)
            origin = strip.origin(start, of, long)
            assert measured_from(duration, needles) == origin, case
            seen.add((start, bool(strip.told), bool(strip.refused)))
            assert same(needles, strip), case
            left = strip.without_held(start, of, long, measured=measured)
            assert without_held(duration, needles).length.of(0) == left, case
            assert same(needles, strip), case
            whole = without_heel(duration, needles).length.of(0)
            if start in ("heel", "foot"):
                found = strip.heel() if start == "heel" else strip.foot()
                strip.told += [found[2]] if found and found[2] else []
                strip.refused += [] if found else ["no heel was turned"]
                assert whole == (long - found[1] if found else long), case
            else:
                assert whole == long, case
            assert same(needles, strip), case
    assert len(seen) > 30


def test_a_stretch_of_rows_is_found_by_its_name(base: Project) -> None:
    """Among any of the rows, not only those of the piece in hand."""
    chance = Random(37)
    found = 0
    for number in range(600):
        strip, needles = draw_strip(chance, base)
        first = chance.randint(0, len(strip.rows) - 1)
        among = range(first, chance.randint(first, len(strip.rows)))
        for name in (
            "armhole",
            "rib",
            "cuffs",
            "neck shaping",
            "yoke section",
            "shoulder",
            "underarm",
            "front",
        ):
            expected = strip.named(name, list(among))
            assert stretch_named(name, needles, among) == expected, (
                number,
                name,
                among,
                strip.rows,
                strip.texts,
            )
            found += expected is not None
    assert found > 500


def test_a_part_as_long_as_another_has_as_many_rows(base: Project) -> None:
    """The rows of the other part up to the place, less those worked; a shoulder that no line names only where all is bound off at once."""
    chance = Random(41)
    outcomes: dict[str, int] = {}
    for number in range(900):
        strip, needles = draw_back(chance, base) if number % 3 == 0 else draw_strip(chance, base)
        piece = strip.piece
        part, upto = (
            chance.choice((*PARTS, "Back", "Back")).lower(),
            chance.choice(("armhole", "shoulder", "shoulders", "neck", "rib")),
        )
        if number % 3 == 0 and chance.random() < 0.8:
            part, upto = "back", "shoulders"
        own = [at for at in range(piece) if strip.rows[at].section.lower() == part]
        fewer = chance.choice((0, 0, 1, 3))
        rounds, why = 0, ""
        if not own:
            why = "no part called"
        else:
            found = strip.named(upto, list(range(own[0], own[-1] + 1)))
            rows = [strip.rows[at] for at in own]
            straight = (
                upto.startswith("shoulder")
                and not any({"hold", "return", "pu"} & set(row.codes) for row in rows)
                and [row.before == 0 for row in rows] == [True, *[False] * (len(rows) - 1)]
                and len(rows) >= 8
                and [code for code, often in rows[-1].worked] == ["bo"]
                and rows[-1].after == 0
                and not any("bo" in [code for code, often in row.worked][1:] for row in rows[:-1])
                and all(row.before == row.after for row in rows[-7:-1])
            )
            step = strip.shoulder(own) if upto.startswith("shoulder") else None
            if found is None and not straight and step is not None:
                found = step, own[-1] + 1
                strip.told.append("is taken to bind off its shoulders")
            if found is None and straight:
                found = own[-1], own[-1] + 1
                strip.told.append("is bound off at once")
            if found is None:
                why = "so nobody can tell how long it is"
            else:
                there = strip.tall(list(range(own[0], found[0])))
                here = strip.tall(list(range(piece, len(strip.rows)))) + strip.tall(strip.below(piece))
                rounds = round((there - here) / MM) - fewer
                if rounds < 1:
                    rounds, why = 0, "as long already"
        strip.refused += [why] if why else []
        case = (number, part, upto, strip.rows, strip.texts)
        outcome = why or (strip.told[-1] if strip.told else "rounds")
        assert like_another(UntilLike(part, upto, HERE, Numbers((fewer,), HERE) if fewer else None), needles) == rounds, case
        if why == "no part called":
            *most, last = dict.fromkeys(row.section for row in strip.rows[:piece]) or ["none"]
            assert (
                needles.findings[0].hint
                == f"The parts so far are {' or '.join([', '.join(most), last] if most else [last])}."
            ), case
        assert same(needles, strip), case
        outcomes[outcome] = outcomes.get(outcome, 0) + 1
    assert set(outcomes) == {
        "no part called",
        "so nobody can tell how long it is",
        "as long already",
        "rounds",
        "is bound off at once",
        "is taken to bind off its shoulders",
    }
