"""Ask how many files it takes to add something: add one of each kind to a copy, try it, and count.

    python -m tests.bench.additions

Each addition is made in a copy of the tree in a temporary folder, as DEVELOPERS.md says under "To add"; then the
program there is asked for it, and what it says is printed with the files that were touched. Nothing is kept. An
addition whose anchor has gone from the code is told as such: then this file has to follow the code.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).parents[2]

_RECORD = "@dataclass(frozen=True, slots=True, kw_only=True)\n"
_KNIT = """
from tests.plan.test_compile import plan_of
from tests.project.samples import project
made = plan_of(project({work!r}, sizes="one", size="one"))
"""
_ASK = """
from tests.plans import final_increase
from tests.playbook import opened, transcript
print(transcript(opened(final_increase()), {said!r}))
"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Addition:
    """Something added, and what shows that it is there."""

    what: str
    edits: Mapping[str, Sequence[tuple[str, str]]]
    """By file: what stands there, and what is put in its place; nothing stands in a new file."""
    trial: str
    """Python that uses it and prints what comes of it."""


_LAMP = "lamp on"
"""What the journal's page says of it."""


def _lamp(*, family: str = "Keeps", lit: bool = False) -> dict[str, Sequence[tuple[str, str]]]:
    """Return the edits for a cue with an event.

    Args:
        family: The class below which the cue stands: which row of the rules it has.
        lit: Whether the event fills a field of its own in the state.
    """
    applied = (
        "\n    def applied(self, knitting: Knitting) -> Knitting:\n"
        '        """Return the knitting by lamplight."""\n        return replace(knitting, lit=True)\n'
    )
    edits: dict[str, Sequence[tuple[str, str]]] = {
        "stepper/session/cues.py": [
            (
                f"{_RECORD}class ForgetReminders(Keeps)",
                f'{_RECORD}class LampOn({family}):\n    """Keep that the lamp is on."""\n\n\n'
                f"{_RECORD}class ForgetReminders(Keeps)",
            )
        ],
        "stepper/session/keeping.py": [
            ("ForgetReminders, Lifeline,", "ForgetReminders, LampOn, Lifeline,"),
            ("    LifelineLaid,\n", "    LampLit,\n    LifelineLaid,\n"),
            (
                "\ndef forget(",
                '\ndef light(plan: Plan, state: State, cue: LampOn) -> Decision:\n    """Keep it."""\n'
                "    return (LampLit(at=cue.at),)\n\n\ndef forget(",
            ),
            ("        ForgetReminders: forget,", "        LampOn: light,\n        ForgetReminders: forget,"),
        ],
        "stepper/language/understanding/vocabulary.py": [
            (
                "    Wording(\n        cue=cues.HowLong,",
                '    Wording(cue=cues.LampOn, says="keeps that the lamp is on", spoken=("the lamp is on",)),\n'
                "    Wording(\n        cue=cues.HowLong,",
            )
        ],
        "stepper/session/events.py": [
            (
                f"{_RECORD}class RemindersForgotten",
                f'{_RECORD}class LampLit(Event):\n    """The lamp was lit."""\n{applied if lit else ""}\n\n'
                f"{_RECORD}class RemindersForgotten",
            )
        ],
        "stepper/language/event_words.py": [
            (
                "        events.RemindersForgotten: EventWords(",
                f'        events.LampLit: EventWords(name="the lamp", journal=lambda event, plan: "{_LAMP}", '
                'told=lambda event, plan: "The lamp is on."),\n        events.RemindersForgotten: EventWords(',
            )
        ],
    }
    if lit:
        edits["stepper/session/state.py"] = [("    uncounted: int = 0\n", "    lit: bool = False\n    uncounted: int = 0\n")]
    return edits


_ASK_LAMP = _ASK.format(said="> the lamp is on\n> undo that")
_LIT = """
from dataclasses import replace
from stepper.session.cues import LampOn, Undo
from stepper.session.machine import Session
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase
plan = final_increase()
for index in (4, len(plan.rounds)):
    session = Session(plan, State(seq=1, knitting=Knitting(place=Position(index=index))))
    for cue in (LampOn, Undo):
        considered = session.consider(cue(at="2025-03-03T20:15:00+01:00"))
        session.adopt(considered)
        print("round", index, cue.__name__, "lit" if session.state.knitting.lit else "dark", [
            getattr(each, "sentence", "") for each in considered.effects if hasattr(each, "sentence")])
"""

_PROGRAM_VOICE = '''"""A voice that is a program of the system, asked for each line. No worker: what hangs is ended."""

from __future__ import annotations

import io
import shutil
import subprocess
import wave
from collections.abc import Iterable

from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings


class ProgramVoice:
    """Make speech with a program that writes a WAV file."""

    def __init__(self, settings: SpeechSettings) -> None:
        """Find the program.

        Raises:
            NoVoiceError: It is not installed.
        """
        self._program = shutil.which("espeak-ng")
        if self._program is None:
            raise NoVoiceError("the program espeak-ng is not installed")
        self.rate_hz = 22050
        self.voice_is_known = not settings.voice

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text."""
        asked = [self._program, "--stdout", "-s", str(words_per_minute), text]
        made = subprocess.run(asked, capture_output=True, timeout=10, check=False)
        with wave.open(io.BytesIO(made.stdout)) as sound:
            return sound.readframes(len(made.stdout) // 2)

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        """Do nothing: no line is prepared."""

    def close(self) -> None:
        """Do nothing: nothing is kept open."""
'''

ADDITIONS = (
    Addition(
        what="a stitch",
        edits={
            "stepper/craft/stitches.py": [
                ('    _inc("m1", 0,', '    _dec("k6tog", 6, "knit six together"),\n    _inc("m1", 0,')
            ]
        },
        trial=_KNIT.format(work="Cast on 12 sts. Join in the round.\n*K6tog; rep from * to end. 2 sts.")
        + "print(made.rounds[1].after, 'stitches after', made.rounds[1].instruction)",
    ),
    Addition(
        what="a needle size",
        edits={
            "stepper/craft/needles.py": [
                (
                    '    NeedleSize(us="50", mm=25.0),',
                    '    NeedleSize(us="50", mm=25.0),\n    NeedleSize(us="70", mm=35.0),',
                )
            ]
        },
        trial=_KNIT.format(work="Cast on 12 sts. Join in the round.\nChange to US 70 needles.\nKnit 2 rnds.")
        + "print([round_.needle_mm for round_ in made.rounds], 'mm')",
    ),
    Addition(
        what="a system of needle sizes",
        edits={
            "stepper/craft/needles.py": [
                (
                    'BARE_SIZE: Final',
                    'JP_SIZE: Final = r"jp\\s*(?:size\\s*)?#?\\s*\\d{1,2}"\n'
                    '"""Regular expression for a Japanese size: "JP 6"."""\nBARE_SIZE: Final',
                ),
                ("(?:{SIZE}|{UK_SIZE}|", "(?:{SIZE}|{UK_SIZE}|{JP_SIZE}|"),
                (
                    "\ndef needle_from_uk(",
                    '\ndef needle_from_jp(text: str) -> float | None:\n    """Return the diameter of a Japanese size. Unit: mm."""\n'
                    "    match = re.search(JP_SIZE, text, re.I)\n"
                    "    return 2.1 + 0.3 * int(re.findall(r\"\\d+\", match.group())[-1]) if match else None\n\n\ndef needle_from_uk(",
                ),
            ],
            "stepper/project/wording.lark": [
                ("(?:size|us|uk|no|", "(?:size|us|uk|jp|no|"),
                (r"us\b|uk\b|no\b|", r"us\b|uk\b|jp\b|no\b|"),
            ],
            "stepper/project/lengths.py": [
                ("NeedleSize, needle_from_uk", "NeedleSize, needle_from_jp, needle_from_uk"),
                ("    british = needle_from_uk(text)", "    british = needle_from_uk(text) or needle_from_jp(text)"),
            ],
        },
        trial=_KNIT.format(work="Cast on 12 sts. Join in the round.\nChange to JP 6 needles.\nKnit 2 rnds.")
        + "print([round(round_.needle_mm, 2) for round_ in made.rounds], 'mm')",
    ),
    Addition(
        what="a sign of a chart",
        edits={},
        trial="from tests.project.samples import HEAD\n"
        + _KNIT.replace('size="one"', 'size="one", head=HEAD.replace("a: A}}", "a: A, z: p}}").replace("a..a", "z..z")').format(
            work="Cast on 12 sts. Join in the round.\nChart peak."
        )
        + "print([run.stitch for run in made.rounds[2].runs][:4])",
    ),
    Addition(
        what="a cue that only asks",
        edits={
            "stepper/session/cues.py": [
                (
                    f"{_RECORD}class HowLong(Asks)",
                    f'{_RECORD}class WhichSize(Asks):\n    """Say which size is knitted."""\n\n\n{_RECORD}class HowLong(Asks)',
                )
            ],
            "stepper/session/answers.py": [
                (
                    "def _how_long(",
                    f'{_RECORD}class TellSize(Effect):\n    """Say the size."""\n\n    size: str\n\n\n'
                    "def _which_size(plan: Plan, state: State, cue: cues.WhichSize) -> Iterator[Effect]:\n"
                    "    yield TellSize(size=plan.rounds[0].size)\n\n\ndef _how_long(",
                ),
                (
                    "        cues.HowLong: _how_long,",
                    "        cues.HowLong: _how_long,\n        cues.WhichSize: _which_size,",
                ),
            ],
            "stepper/language/effect_words.py": [
                (
                    "        answers.TellTimeKnitted: _time_knitted,",
                    "        answers.TellTimeKnitted: _time_knitted,\n"
                    '        answers.TellSize: lambda effect, plan: f"You knit size {effect.size}.",',
                )
            ],
            "stepper/language/understanding/vocabulary.py": [
                (
                    "    Wording(\n        cue=cues.HowLong,",
                    '    Wording(cue=cues.WhichSize, says="says the size", spoken=("which size is this",)),\n'
                    "    Wording(\n        cue=cues.HowLong,",
                )
            ],
        },
        trial=_ASK.format(said="> which size is this"),
    ),
    Addition(what="a cue with an event that is only kept", edits=_lamp(), trial=_ASK_LAMP),
    Addition(
        what="a cue with an event and a field of the state", edits=_lamp(lit=True), trial=_ASK_LAMP + _LIT
    ),
    Addition(
        what="the same, refused when no round is left",
        edits=_lamp(family="KeepsAhead", lit=True),
        trial=_ASK_LAMP + _LIT,
    ),
    Addition(
        what="a sentence at the end of a section",
        edits={
            "stepper/session/due/round_reached.py": [
                (
                    "    yield from inquiry.tell_mends(after)\n    yield from tell_reminders(before, after)",
                    "    if place.index < len(plan.rounds) and plan.rounds[place.index].number == 1:\n"
                    "        yield TellSectionDone(section=plan.rounds[event.origin.index].section)\n"
                    "    yield from inquiry.tell_mends(after)\n    yield from tell_reminders(before, after)",
                ),
                (
                    "def tell_second(",
                    f'{_RECORD}class TellSectionDone(Effect):\n    """Say it."""\n\n    section: str\n\n\ndef tell_second(',
                ),
            ],
            "stepper/language/effect_words.py": [
                (
                    "        answers.TellTimeKnitted: _time_knitted,",
                    "        answers.TellTimeKnitted: _time_knitted,\n"
                    '        round_reached.TellSectionDone: lambda effect, plan: f"The {effect.section} is done.",',
                )
            ],
        },
        trial=_ASK.format(said="> next\n> next"),
    ),
    Addition(
        what="a remedy",
        edits={
            "stepper/session/fault/ways.py": [
                ('    RIP = "rip"', '    REST = "rest"\n    """Look again tomorrow."""\n    RIP = "rip"'),
            ],
            "stepper/session/fault/remedies.py": [
                (
                    "    return [cost_remedy(RemedyKind.RECOUNT,",
                    "    rest = cost_remedy(RemedyKind.REST, 1, now)\n    return [rest, cost_remedy(RemedyKind.RECOUNT,",
                )
            ],
            "stepper/language/remedy_words.py": [
                (
                    "        case RemedyKind.RECOUNT:\n",
                    '        case RemedyKind.REST:\n            return "look again tomorrow"\n'
                    "        case RemedyKind.RECOUNT:\n",
                ),
                (
                    '            return ", to be counted again"\n',
                    '            return ", to be counted again"\n        case RemedyKind.REST:\n            return ", left"\n',
                ),
                ("        case RemedyKind.LOOK | RemedyKind.RECOUNT", "        case RemedyKind.REST | RemedyKind.LOOK | RemedyKind.RECOUNT"),
            ],
        },
        trial=_ASK.format(said="> next\n> next\n> count is 224\n> no loop\n> what can i do\n> take remedy 1"),
    ),
    Addition(
        what="a voice",
        edits={
            "stepper/mouth/program_voice.py": [("", _PROGRAM_VOICE)],
            "stepper/mouth/settings.py": [('"pyttsx3", "none"]', '"pyttsx3", "program", "none"]')],
            "stepper/mouth/open_speaker.py": [
                (
                    "from stepper.mouth.settings import Engine",
                    "from stepper.mouth.program_voice import ProgramVoice\nfrom stepper.mouth.settings import Engine",
                ),
                ('    "espeak": "eSpeak NG",', '    "espeak": "eSpeak NG",\n    "program": "the program of the system",'),
                ("    voice: EspeakVoice | NaturalVoice,", "    voice: EspeakVoice | NaturalVoice | ProgramVoice,"),
                (
                    '        case "espeak":\n',
                    '        case "program":\n            return _played(ProgramVoice(settings), settings, tell, played, '
                    'cut_into_pieces)\n        case "espeak":\n',
                ),
            ],
        },
        trial="""
from stepper.mouth.open_speaker import open_speaker
from stepper.mouth.program_voice import ProgramVoice
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.settings_page import EXPLAINED
mine = SpeechSettings(engine="program")
voice = ProgramVoice(mine)
print(round(len(voice.speech("Knit two, purl two.", 150)) / 2 / voice.rate_hz, 1), "s of speech; engine:", EXPLAINED["voice.engine"])
speaker, remark = open_speaker(mine)
print(type(speaker).__name__, remark or "")
if speaker is not None:
    speaker.close()
""",
    ),
    Addition(
        what="a column of a report",
        edits={
            "stepper/report/yarn.py": [
                ("    likely_g: float | None = None\n", "    likely_g: float | None = None\n    half_g: float | None = None\n"),
                (
                    "        likely_g=skein.grams_of(likely),\n",
                    "        likely_g=skein.grams_of(likely),\n        half_g=skein.grams_of(likely) / 2,\n",
                ),
            ],
            "stepper/report/yarn_lines.py": [
                (
                    'else f"{_grams(quantity.likely_g)}"',
                    'else f"{_grams(quantity.likely_g)} (half: {_grams(quantity.half_g or 0)})"',
                )
            ],
        },
        trial="import subprocess, sys\n"
        "out = subprocess.run([sys.executable, '-m', 'stepper', 'yarn', 'sample_projects/hat.yaml'],"
        " capture_output=True, text=True)\n"
        "print([line for line in (out.stdout + out.stderr).splitlines() if 'half' in line][:1])",
    ),
)
"""One of each kind. A voice of a library takes its extra in `pyproject.toml` as well."""


def touched(addition: Addition, folder: Path) -> tuple[int, str]:
    """Make an addition in a copy and try it: return how many files it took, and what came of it."""
    for name in ("stepper", "tests", "sample_projects", "models"):
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__", "*.onnx"))
    for name, pairs in addition.edits.items():
        path = folder / name
        text = path.read_text(encoding="utf-8") if path.exists() else ""
        for before, after in pairs:
            if before not in text:
                return len(addition.edits), f"NOT MADE: {name} no longer has {before.strip()!r}"
            text = text.replace(before, after, 1)
        path.write_text(text, encoding="utf-8")
    tried = subprocess.run(
        [sys.executable, "-c", addition.trial],
        cwd=folder,
        env={**os.environ, "PYTHONPATH": str(folder)},
        capture_output=True,
        text=True,
        check=False,
    )
    return len(addition.edits), tried.stdout.strip() or f"NOT THERE: {tried.stderr.strip()[-400:]}"


def main() -> int:
    """Print each addition, the files it takes, and what the program makes of it.

    Returns:
        Exit code: 1 if one could not be made or is not there.
    """
    failed = 0
    for addition in ADDITIONS:
        with tempfile.TemporaryDirectory(prefix="additions-") as folder:
            files, told = touched(addition, Path(folder))
        failed += told.startswith("NOT")
        print(f"{addition.what}: {files} files: {', '.join(addition.edits) or 'none'}")
        print("\n".join(f"    {line}" for line in told.splitlines()), flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
