"""What comes into the program besides project files and pages: how each kind is spoilt, and what takes it."""

from __future__ import annotations

import io
import json
import random
import shutil
import struct
import wave
import zipfile
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from itertools import count
from pathlib import Path

from PIL import Image

from stepper.devices.wav_microphone import WavMicrophone
from stepper.ears.archive import unpack
from stepper.language.understanding.understand import list_phrases
from stepper.lap.ledger import Ledger, Outcome
from stepper.lap.touches import CUES, NUMBER_CUES, parse_touch
from stepper.plan.model import Plan
from stepper.project.keys.pictures import Pixels, chart_of_picture
from stepper.project.model import Cell
from stepper.project.problems import Span
from stepper.project.yaml_file.source import read_picture
from stepper.session.machine import Session
from stepper.sitting.conductor import Conductor
from stepper.sitting.ports import ConductorPorts
from stepper.sitting.preferences import Preferences, read_preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.session_journal import EventKeeper
from stepper.sitting.settings_page import EXPLAINED, settings_lines
from stepper.sitting.vocabulary_file import read_vocabulary
from stepper.store.journal import Journal
from stepper.store.reader import open_reader
from stepper.store.records import JournalEntry
from tests.fuzz.spoiling import HOSTILE, HUGE, spoil_bytes, spoil_png, spoil_text

PROJECT = Path(__file__).parents[1] / "fixtures" / "hat.yaml"
_BEGUN = datetime.fromisoformat("2025-03-03T20:00:00+01:00")


@dataclass(kw_only=True)
class Kind:
    """A kind of input."""

    fresh: Callable[[random.Random], bytes]
    """Makes one."""
    take: Callable[[bytes], str]
    """Takes it as the program does; returns what became of it, in a word."""
    close: Callable[[], None] = field(default=lambda: None)


class Sitting:
    """A sitting that never ends: whatever closes it begins the next, on the same journal."""

    CUES_EACH = 400
    """Cues that one garment is given before another is begun."""

    def __init__(self, folder: Path) -> None:
        """Begin the first garment."""
        self._plan: Plan = load_project(PROJECT).plan
        self._folder, self._garments, self._journal = folder, 0, None
        self._now, self.shown = _BEGUN, 0
        self._begin_garment()

    def _begin_garment(self) -> None:
        self.close()
        self._garments += 1
        self._left = self.CUES_EACH
        self._journal = Journal.open(self._folder / f"{self._garments}.journal", title="Hat")
        self._sit(Session(self._plan))

    def _sit(self, session: Session) -> None:
        keeper = EventKeeper(self._journal)
        self._journal.keep_plan("title: Hat\n", "f", self._clock())
        ports = ConductorPorts(keep=keeper, show=self._show, clock=self._clock)
        self.conductor = Conductor(session, ports)
        self.conductor.begin("f")

    def _clock(self) -> str:
        self._now += timedelta(seconds=7)
        return self._now.isoformat()

    def _show(self, line: str) -> None:
        line.encode("utf-8")
        self.shown += 1

    def work_off(self) -> str:
        """Work off what was offered; return whether anything changed."""
        before = self.conductor.session.state.seq
        self.conductor.drain()
        word = "taken" if self.conductor.session.state.seq > before else "answered"
        self._left -= 1
        if self._left <= 0:
            self._begin_garment()
        elif self.conductor.closed:
            self._sit(Session(self._plan, self.conductor.session.state))
        return word

    def close(self) -> None:
        """Let go of the journal."""
        if self._journal is not None:
            self._journal.close()
            shutil.rmtree(self._folder)
            self._folder.mkdir()


def cues(folder: Path) -> Kind:
    """Words typed or heard, put to a session that keeps a journal."""
    sitting, phrases = Sitting(folder), list_phrases()
    words = sorted({word for phrase in phrases for word in phrase.split() if "{" not in word})
    fillings = ("7", "forty six", "0", "9999", "10000", "12 cm", "a", "main", "body", "the left needle", "k2tog", "40, 41 and 42", "½", *HUGE)

    def fresh(chance: random.Random) -> bytes:
        text = chance.choice(phrases if chance.random() < 0.7 else ("next", "next", "yes", "no", "got it", "choose one", "count is 40"))
        while "{" in text:
            head, _, rest = text.partition("{")
            text = head + chance.choice(fillings) + rest.partition("}")[2]
        if chance.random() < 0.5:
            text = spoil_text(text, chance, words)
        return text.encode("utf-8", errors="replace")

    def take(raw: bytes) -> str:
        text = raw.decode("utf-8")
        sitting.conductor.offer_words(text, heard=len(raw) % 5 == 0, score=0.9)
        return sitting.work_off()

    return Kind(fresh=fresh, take=take, close=sitting.close)


def touches(folder: Path) -> Kind:
    """Messages of a page, as any device in the house may send them."""
    sitting, ledger, number = Sitting(folder), Ledger(), count(1)
    asks = (*CUES, *NUMBER_CUES, "note", "words")
    numbers = (0, 1, 7, 9999, 10_000, -1, 1.5, True, None, "7", 10**400, 1e308, float("inf"), float("nan"), [1], {})

    def fresh(chance: random.Random) -> bytes:
        state = sitting.conductor.session.state
        message = {
            "device": chance.choice(("ab12", "cd34", "\ud800")),
            "number": next(number),
            "ask": chance.choice(asks),
            "seen": state.seq,
            "place": [state.place.index, state.place.stitch],
            "value": chance.randrange(100),
            "text": chance.choice(("tight", "next", "\ud800 half a letter", *HOSTILE)),
            "again": chance.random() < 0.2,
            "age": chance.random() * 20,
        }
        for _ in range(chance.choice((0, 0, 0, 1, 2))):
            message[chance.choice(list(message))] = chance.choice((*numbers, *HOSTILE, asks))
        text = json.dumps(message)
        return (spoil_text(text, chance) if chance.random() < 0.1 else text).encode("utf-8", errors="replace")

    def take(raw: bytes) -> str:
        try:
            message = json.loads(raw.decode("utf-8"))
        except (ValueError, RecursionError):
            return "no JSON"
        touch = parse_touch(message) if isinstance(message, dict) else None
        if touch is None:
            return "malformed"
        json.dumps({"touch": touch.number, "device": touch.device})
        outcome = ledger.enter(touch)
        if outcome is not Outcome.NEW:
            return "passed over"

        def settle(taken: bool) -> None:
            ledger.settle(touch, Outcome.TAKEN if taken else Outcome.PASSED)

        cue = touch.cue
        if cue is None:
            sitting.conductor.offer_words(touch.text, then=settle)
        else:
            sitting.conductor.offer(cue, still=touch.still_meant, then=settle)
        return sitting.work_off()

    return Kind(fresh=fresh, take=take, close=sitting.close)


def settings(folder: Path) -> Kind:
    """Settings files."""
    path = folder / "settings.toml"
    usual = "\n".join(line.replace("# ", "", 1) if line.startswith("# ") and " = " in line else line for line in settings_lines(Preferences()))
    names = [name.partition(".")[2] for name in EXPLAINED]

    def fresh(chance: random.Random) -> bytes:
        if chance.random() < 0.5:
            value = chance.choice((*HUGE, *(f'"{each}"' for each in HOSTILE), "[" * 2000, "{a = " * 400))
            table, _, name = chance.choice(list(EXPLAINED)).partition(".")
            return f"[{table}]\n{name} = {value}\n".encode()
        text = spoil_text(usual, chance, names).encode("utf-8", errors="replace")
        return spoil_bytes(text, chance) if chance.random() < 0.1 else text

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        mine = read_preferences(path)
        assert list(settings_lines(mine))
        return "with remarks" if mine.remarks else "followed"

    return Kind(fresh=fresh, take=take)


def vocabularies(folder: Path) -> Kind:
    """Vocabulary files."""
    path = folder / "vocabulary.toml"
    usual = (
        '[phrases]\n"weiter bitte" = "next step"\n"wo bin ich" = "where am i"\n[counts]\n"es sind {number}" = "count is {number}"\n'
        '[numbers]\n"sechsundvierzig" = 46\n"null" = 0\n"zwölf" = 12\n'
    )
    phrases = [json.dumps(each) for each in list_phrases()]

    def fresh(chance: random.Random) -> bytes:
        text = spoil_text(usual, chance, phrases).encode("utf-8", errors="replace")
        return spoil_bytes(text, chance) if chance.random() < 0.1 else text

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        found = read_vocabulary(path)
        wordings = found.wordings()
        for said in (*found.phrases, *(each.replace("{number}", number) for each in found.counts for number in found.numbers)):
            assert found.english(said) is not None
            assert wordings.english(said)
        return "followed"

    return Kind(fresh=fresh, take=take)


def recordings(folder: Path) -> Kind:
    """Recordings in the microphone's place."""
    path = folder / "recording.wav"

    def fresh(chance: random.Random) -> bytes:
        channels, width, rate = chance.choice((1, 1, 2, 6)), chance.choice((1, 2, 3, 4)), chance.choice((8_000, 16_000, 44_100, 96_000))
        sound = chance.randbytes(channels * width * chance.randrange(2_000))
        if chance.random() < 0.3:  # of floating point, which the standard library does not write
            form = struct.pack("<HHIIHH", 3, channels, rate, rate * channels * 4, channels * 4, 32)
            data = sound[: len(sound) // 4 * 4]
            raw = b"RIFF" + struct.pack("<I", 36 + len(data)) + b"WAVEfmt \x10\0\0\0" + form + b"data" + struct.pack("<I", len(data)) + data
        else:
            written = io.BytesIO()
            with wave.open(written, "wb") as file:
                file.setnchannels(channels)
                file.setsampwidth(width)
                file.setframerate(rate)
                file.writeframes(sound)
            raw = written.getvalue()
        return spoil_bytes(raw, chance)

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        microphone = WavMicrophone(path)
        try:
            assert {len(block) for block in microphone.blocks()} <= {1280}
        finally:
            microphone.close()
        return "heard"

    return Kind(fresh=fresh, take=take)


def pictures(folder: Path) -> Kind:
    """Pictures of charts."""
    path, made = folder / "chart.png", []
    for mode in ("1", "L", "LA", "P", "RGB", "RGBA", "I;16"):
        for size in ((1, 1), (8, 6), (64, 48)):
            image = Image.new("RGBA", size, (236, 230, 216, 255))
            image.paste((31, 74, 62, 255), (0, 0, size[0] // 2, size[1] // 2))
            written = io.BytesIO()
            (image.convert("L").convert("I;16") if mode == "I;16" else image.convert(mode)).save(written, "PNG", optimize=size[0] == 8)
            made.append(written.getvalue())
    yarns = {"#ece6d8": Cell("k", "A"), "#1f4a3e": Cell("k", "B")}
    place = Span(line=1, column=1)

    def fresh(chance: random.Random) -> bytes:
        raw = chance.choice(made)
        return spoil_bytes(raw, chance) if chance.random() < 0.4 else spoil_png(raw, chance)

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        found = read_picture(path)
        if isinstance(found, Pixels):
            chart, problems = chart_of_picture("peak", found, yarns, place, stitches=None if len(raw) % 3 else 8)
            assert (chart is None) == bool(problems)
            return "a chart" if chart else "told"
        assert found.endswith(".")
        return "refused"

    return Kind(fresh=fresh, take=take)


def archives(folder: Path) -> Kind:
    """Archives of a model."""
    path, target, made = folder / "model.zip", folder / "model", []
    for method in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED, zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA):
        for names in (("am/final.mdl", "conf/model.conf"), ("größe/ß", "a" * 200, "folder/")):
            written = io.BytesIO()
            with zipfile.ZipFile(written, "w", method) as archive:
                for name in names:
                    archive.writestr(name, b"sound of a letter, " * 40)
            made.append(written.getvalue())
    hostile = (b"..", b"/", b"\\", b"C:", b"\0", b"\xff\xfe", b"con", b"\x1b[2J", b"a" * 300, b"\r\n")

    def fresh(chance: random.Random) -> bytes:
        raw = chance.choice(made)
        if chance.random() < 0.3:
            name, other = chance.choice((b"am/final.mdl", b"conf", b"model", b"folder/")), chance.choice(hostile)
            raw = raw.replace(name, (other * len(name))[: len(name)])
        if chance.random() < 0.3:  # the directory behind the files, where most of what is believed stands
            at = raw.index(b"PK\x01\x02")
            return raw[:at] + spoil_bytes(raw[at:], chance)
        return spoil_bytes(raw, chance)

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        target.mkdir()
        try:
            unpack(path, target)
            outside = [each for each in folder.iterdir() if each not in (path, target)]
            assert not outside
        finally:
            shutil.rmtree(target)
        return "unpacked"

    return Kind(fresh=fresh, take=take)


def journals(folder: Path) -> Kind:
    """Journals with damaged bytes, read as `where` and `notes` read them."""
    entries = [JournalEntry(at=_BEGUN.isoformat(), kind="advanced", version=2, body=json.dumps({"n": n})) for n in range(60)]
    with Journal.open(folder / "whole.journal", title="Cuff") as journal:
        journal.keep_plan("title: Cuff\n", "f", _BEGUN.isoformat())
        for entry in entries:
            journal.append([entry])
    whole = (folder / "whole.journal").read_bytes()
    alone = folder / "alone"
    alone.mkdir()
    path = alone / "cuff.journal"

    def take(raw: bytes) -> str:
        path.write_bytes(raw)
        with open_reader(path) as opened:
            found, remarks = [each.body for each in opened.entries()], opened.take_remarks()
        assert found == [each.body for each in entries[: len(found)]], "another state"
        assert remarks or len(found) == len(entries), "fewer in silence"
        assert {each.name for each in alone.iterdir()} == {path.name}, "something is left beside it"
        return "read, told" if remarks else "as it was"

    return Kind(fresh=lambda chance: spoil_bytes(whole, chance, 1 << 20), take=take)


KINDS: dict[str, tuple[Callable[[Path], Kind], int]] = {
    "cues": (cues, 10_000),
    "touches": (touches, 60_000),
    "settings": (settings, 45_000),
    "vocabularies": (vocabularies, 30_000),
    "recordings": (recordings, 15_000),
    "pictures": (pictures, 10_000),
    "archives": (archives, 8_000),
    "journals": (journals, 2_000),
}
"""Each kind with how many of 180,000 inputs are of it: many of what takes little time."""
