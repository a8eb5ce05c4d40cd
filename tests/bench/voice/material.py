"""What is said, by whom, and the clips of it: made once, kept in a folder.

    python -m tests.bench.voice.material FOLDER [--styles FOLDER] [--family NAME]

Each voice says a lot of its own, drawn with its name as the seed: cues without an address word, cues with
one, counts from 0 to 999 in their frames, lines as people talk over a film, of which every third holds a
cue's own words, and short lines of a quick dialogue, of which every second is or holds an answer ("Yes." "Three of
them."). Then, twice each, the wordings that count behind the address word or as an answer alone, with the word and
without, and lines of a film that hold them.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import random
from dataclasses import dataclass
from pathlib import Path

import numpy as np

from stepper.language.numbers import digits_words, words
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session import cues
from tests.bench.voice.voices import Voice, installed, say

ADDRESSES = ("stepper", "computer", "workbench", "okay stepper", "lighthouse", "marigold")
FRAMES = next(row.spoken for row in VOCABULARY if row.cue is cues.Count)
CLOSED = tuple(
    phrase for row in VOCABULARY for phrase in row.spoken if "{" not in phrase and len(phrase.split()) > 1
)
CALLED = tuple(phrase for row in VOCABULARY for phrase in row.called)


@dataclass(frozen=True, slots=True, kw_only=True)
class Clip:
    """One stretch of speech."""

    voice: Voice
    kind: str
    """cue, count, addressed cue, addressed count, talk, short talk, called, addressed called or called talk."""
    address: str
    said: str
    """The cue without its address word; what was said, for talk."""
    number: int | None
    sound: Path


def texts(voice: Voice) -> list[tuple[str, str, str, int | None]]:
    """Draw what a voice says: kind, address word, text, number."""
    source = random.Random(voice.label)
    slow = voice.family in ("kokoro", "festival")
    rows: list[tuple[str, str, str, int | None]] = []
    rows += [("cue", "", each, None) for each in source.sample(CLOSED, 26 if slow else 40)]
    for _ in range(16 if slow else 40):
        text, number = _count(source)
        rows.append(("count", "", text, number))
    for address in ADDRESSES:
        rows += [("addressed cue", address, each, None) for each in source.sample(CLOSED, 5 if slow else 12)]
    for _ in range(4 if slow else 12):
        text, number = _count(source)
        rows.append(("addressed count", "stepper", text, number))
    rows += [("talk", "", each, None) for each in source.sample(TALK, 12 if slow else 40)]
    rows += [("short talk", "", each, None) for each in source.sample(SHORT_TALK, 12 if slow else 30)]
    rows += [("called", "", each, None) for each in CALLED * 2]
    rows += [("addressed called", "stepper", each, None) for each in CALLED * 2]
    rows += [("called talk", "", each, None) for each in CALLED_TALK]
    return rows


def _count(source: random.Random) -> tuple[str, int]:
    number = source.choice((source.randrange(100), source.randrange(100, 1000), source.randrange(100, 1000)))
    spoken = words(number)
    way = source.random()
    if number > 100 and number % 100 and way < 0.35:
        hundred, rest = spoken.split(" hundred ")
        spoken = f"{hundred} hundred and {rest}"
    elif number > 9 and way > 0.85:
        spoken = digits_words(number)
    return source.choice(FRAMES).replace("{number}", spoken), number


def clips(folder: Path, held_out: bool | None = None) -> list[Clip]:
    """Read the clips that were made."""
    rows = []
    for index in sorted(folder.glob("*.json")):
        for row in json.loads(index.read_text()):
            voice = Voice(**row["voice"])
            if held_out is None or voice.held_out == held_out:
                rows.append(Clip(**(row | {"voice": voice, "sound": folder / row["sound"]})))
    return rows


def make(folder: Path, voice: Voice, styles: Path | None) -> int:
    """Let one voice say its lot; what is there already is kept."""
    folder.mkdir(parents=True, exist_ok=True)
    speeds = random.Random(f"speed {voice.label}")
    rows = []
    slug = voice.label.replace(" ", "_")
    for kind, address, text, number in texts(voice):
        whole = f"{address}, {text}" if address else text
        speed = round(speeds.uniform(0.85, 1.15), 2)
        name = hashlib.sha256(f"{voice.label} {whole} {speed}".encode()).hexdigest()[:16] + ".pcm"
        path = folder / name
        if not path.exists():
            path.write_bytes(say(voice, whole, speed, styles).tobytes())
        rows.append(
            {
                "voice": {"family": voice.family, "name": voice.name, "held_out": voice.held_out},
                "kind": kind, "address": address, "said": text, "number": number, "sound": name,
            }
        )  # fmt: skip
        if len(rows) % 20 == 0:
            (folder / f"{slug}.json").write_text(json.dumps(rows, indent=0))
    (folder / f"{slug}.json").write_text(json.dumps(rows, indent=0))
    return len(rows)


def read(clip: Clip) -> np.ndarray:
    """Read the sound of a clip."""
    return np.frombuffer(clip.sound.read_bytes(), np.int16)


_OBJECTS = "the kitchen;your sister;Paris;the garage;the old bridge;school;the library;that hotel;my brother;the museum"
_HARD = (
    "We go back to {o} every summer.;I want to go back home with my friends.;She will never go back there again.;"
    "What is the next step after that?;The next step in the plan is {o}.;You can say that again and again.;"
    "Please say it again to {o}.;Nobody knows where I am tonight.;I asked where we are going.;"
    "Where are we going with {o}?;They stop listening when he talks.;What can I say to {o}?;Carry on with it as before.;"
    "You have to move on from {o}.;Undo that button on your coat.;I have two hundred reasons to be angry.;"
    "There were {n} people in {o}.;I paid {n} dollars for {o}.;My count is never right, said the man.;"
    "What happened at {o} last night?;Good night, sleep well, see you tomorrow.;That is enough of that, young man.;"
    "It came out of nowhere near {o}.;How many of them are there at {o}?;I counted {n} of them myself.;"
    "Wait for me at {o}, please.;All done here, let us leave.;Take that back right now, you liar.;"
    "How far is it to go from {o}?;The computer in {o} is broken.;The workbench stands near {o}."
).split(";")
_PLAIN = (
    "He said he would be here by noon.;Put the lamp on the table next to {o}.;I never liked {o} very much.;"
    "The train to {o} was late again yesterday.;Do you remember the summer we met?;Nobody told me about the letter.;"
    "She opened the door and looked outside.;We should talk about {o} some other time.;It is raining in {o} again.;"
    "You promised me you would stay.;There is something strange about {o}.;My father worked at {o} for years.;"
    "I think somebody followed us from {o}.;Let us have dinner before it gets cold.;Why did you leave {o} so early?;"
    "The doctor will see you now.;Turn left after {o} and keep driving.;Someone has taken the keys to {o}.;"
    "I can hardly hear you over the music.;Her brother lives somewhere behind {o}.;Everything was closed except {o}.;"
    "Have you ever been to {o} in winter?;The police found nothing at {o}.;It will cost more than we have.;"
    "Please sit down and listen to me.;He bought {n} boxes of apples for {o}.;I dreamt about {o} last night.;"
    "Nothing ever happens in this town.;We painted the walls of {o} yellow.;Call me when you arrive at {o}."
).split(";")

SHORT_TALK = (
    "Yes.;Yes, of course.;Oh yes?;Yes, he did.;No.;No, no.;No, not yet.;Oh no.;No idea.;One.;Two.;Three of them.;Four.;"
    "Five, perhaps.;Six o'clock.;Seven.;At eight.;Nine.;Ten minutes.;Twenty.;Thirty five.;Two hundred.;Forty two, I think.;"
    "Not me.;Why not?;I know.;Do you?;For you.;Too late.;Who is there?;Come in.;Sit down.;What now?;Where to?;Really?;"
    "Thank you.;You are early.;I see.;Give it to me.;It is nothing.;Never.;Are you sure?;Good.;After you.;Let me see.;"
    "He won.;And the others?;Nobody.;Tomorrow.;With whom?;Just a moment.;Is that all?;Look at this.;Since when?"
).split(";")

CALLED_TALK = (
    "Wait a minute.;Wait a minute, I know that man.;Just wait a minute, will you?;I don't know.;I don't know what you mean.;"
    "Perhaps, I don't know, at the station.;I do not know the way.;Whose is it? I do not know.;Not now.;"
    "Not now, the children are asleep.;Then, and not now.;Stop asking.;Stop asking me that.;He will not stop asking for money.;"
    "Rip back the paper and look inside.;I did that round of the park twice.;That is the wrong yarn, she said."
).split(";")


def _talk() -> list[str]:
    source = random.Random(7)
    objects = _OBJECTS.split(";")
    lines = set()
    for sentence in (*_HARD, *_PLAIN):
        for _ in range(5 if sentence in _PLAIN else 3):
            lines.add(sentence.format(o=source.choice(objects), n=words(source.randrange(2, 999))))
    return sorted(lines)


TALK = _talk()


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--styles", type=Path)
    parser.add_argument("--family")
    args = parser.parse_args()
    for voice in installed(args.styles):
        if args.family in (None, voice.family):
            print(voice.label, make(args.folder, voice, args.styles), flush=True)


if __name__ == "__main__":
    main()
