"""How long is what is said? Renders every sentence that whole garments can produce and times it. Passes no judgement.

    python -m tests.bench.spoken_lengths [--folder FOLDER] [--every N] [--longest N] [--rate WPM] [--natural] [GARMENT ...]

Each garment (a file by name in `sample_projects/`, or in the folder given; all of it by default) is knitted at the
prompt from the first round to the last; at every Nth round each thing that only asks is asked. What is said is cut
at its full stops, rendered by eSpeak NG at the program's own rate (or another, or by the natural voice), and timed without the
silence around it. A step is timed as a whole too: a stop before it, or the step with what is told beside it, whatever full stops
stand in it.
"""

from __future__ import annotations

import argparse
import re
import statistics
from collections.abc import Iterator
from pathlib import Path

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.language.stretches import part_long_sentences
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.natural_worker import NaturalLibrary
from stepper.mouth.settings import SpeechSettings
from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.machine import Session
from stepper.session.questions.topics import HelpWith, Topic
from tests.fixtures import plan_in_size

ROOT = Path(__file__).parents[2]
AT = "2025-03-03T20:15:00+01:00"
BOUND_S = 8.0
ASKING: tuple[cues.Cue, ...] = (
    *(cues.About(at=AT, topic=topic) for topic in Topic),
    *(cues.Help(at=AT, about=about) for about in HelpWith),
    *(kind(at=AT) for kind in (cues.Again, cues.Where, cues.Spacing, cues.HowMany, cues.HowFar, cues.HowLong, cues.Why)),
)


def lines_of(plan: Plan, every: int) -> Iterator[tuple[str, str]]:
    """Knit a garment and yield everything that is told, with the name of what it answers."""
    session = Session(plan)
    considered = session.consider_opening(AT, "x")
    round_ = -1
    while True:
        session.adopt(considered)
        for effect in considered.effects:
            yield type(effect).__name__, tell_effect(effect, session.plan)
        place = session.state.place
        if place.index >= len(session.plan.rounds):
            break
        if place.index != round_ and place.index % every == 0:
            round_ = place.index
            for cue in ASKING:
                for effect in session.consider(cue).effects:
                    name = cue.topic.value if isinstance(cue, cues.About) else type(cue).__name__
                    yield f"{type(effect).__name__} ({name})", tell_effect(effect, session.plan)
        considered = session.consider(cues.Next(at=AT))


def main() -> None:
    """Print lengths by kind, and the longest sentences."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("garments", nargs="*")
    parser.add_argument("--folder", default="sample_projects")
    parser.add_argument("--every", type=int, default=10)
    parser.add_argument("--longest", type=int, default=15)
    parser.add_argument("--rate", type=int, default=SpeechSettings().rate_wpm, help="words a minute")
    parser.add_argument("--natural", action="store_true", help="render by the natural voice")
    options = parser.parse_args()
    folder = ROOT / options.folder
    names = options.garments or sorted(path.stem for path in folder.glob("*.yaml"))
    voice = NaturalLibrary(voice="", volume=1.0) if options.natural else EspeakVoice(SpeechSettings())
    rate = options.rate
    known, kinds, steps = {}, {}, {}
    for name in names:
        for kind, line in lines_of(plan_in_size(folder / f"{name}.yaml"), options.every):
            for sentence in re.split(r"(?<=[.?!]) ", part_long_sentences(spell_out(line), rate)) if line else ():
                if sentence not in known:
                    known[sentence] = len(voice.speech(sentence, rate)) / 2 / voice.rate_hz
                kinds.setdefault(kind, {})[sentence] = known[sentence]
            if line and kind == "TellStep" and line not in steps:
                steps[line] = len(voice.speech(part_long_sentences(spell_out(line), rate), rate)) / 2 / voice.rate_hz
    if isinstance(voice, EspeakVoice):
        voice.close()
    print(f"{'what is said':44} {'kinds':>6} {'p50 s':>6} {'p95 s':>6} {'max s':>6} {'words':>6}")
    for kind, said in sorted(kinds.items(), key=lambda each: -max(each[1].values())):
        seconds = sorted(said.values())
        p95 = seconds[min(len(seconds) - 1, round(0.95 * len(seconds)))]
        words = max(len(each.split()) for each in said)
        print(f"{kind[:44]:44} {len(said):6} {statistics.median(seconds):6.1f} {p95:6.1f} {seconds[-1]:6.1f} {words:6}")
    above = {each: length for each, length in known.items() if length > BOUND_S}
    print(f"\nsentences {len(known)}; above {BOUND_S:g} s: {len(above)} ({len(above) / len(known):.1%})")
    ordered = sorted(known.values())
    print(f"median {statistics.median(ordered):.1f} s, p95 {ordered[round(0.95 * (len(ordered) - 1))]:.1f} s")
    whole = sorted(steps.values())
    print(
        f"steps told at one cue, whole: {len(whole)}; median {statistics.median(whole):.1f} s, p95 "
        f"{whole[round(0.95 * (len(whole) - 1))]:.1f} s, longest {whole[-1]:.1f} s; above {BOUND_S:g} s: "
        f"{sum(each > BOUND_S for each in whole)}"
    )
    longest = sorted({**above, **{line: length for line, length in steps.items() if length > BOUND_S}}.items(), key=lambda each: -each[1])
    for sentence, length in longest[: options.longest]:
        print(f"{length:5.1f} s  {sentence}")


if __name__ == "__main__":
    main()
