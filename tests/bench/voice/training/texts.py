"""What is said to train on: cues, counts, lengths and the like, their words in any order, and talk, much of it with a
cue's own words."""

from __future__ import annotations

import random
import re
from collections.abc import Sequence
from functools import cache
from pathlib import Path

from stepper.sitting.recogniser_wordings import list_lengths
from stepper.language.numbers import digits_words, words
from stepper.language.understanding.vocabulary import VOCABULARY
from tests.bench.voice.material import CLOSED, FRAMES

FRONTS = (*["stepper"] * 6, "computer", "workbench", "okay stepper", "lighthouse", "hey stepper", "partner", "basket")
_NUMBER_WORDS = {word for number in range(100) for word in words(number).replace("-", " ").split()}
WORDS = sorted(
    {word for cue in CLOSED for word in cue.split()}
    | _NUMBER_WORDS
    | {"stepper", "hundred", "and", "count", "is", "stitches", "stitch"}
)
_OBJECTS = (
    "the castle;your brother;London;the attic;the new road;the office;the market;that restaurant;my cousin;"
    "the stadium;the harbour;her uncle;the station;a stranger;the neighbours"
).split(";")
_HARD = (
    "They go back to {o} each winter.;You should go back there.;The next step is to ask {o}.;Step back from {o}.;"
    "Every step counts, said {o}.;Say again what {o} said.;I wonder where we are.;Where am I supposed to sleep?;"
    "Stop listening to {o}.;She stopped listening to {o}.;What can I say about {o}?;Move on, there is nothing to see.;"
    "Carry on without {o}.;There are {n} people at {o}.;I paid {n} pounds for {o}.;My count of {o} was wrong.;"
    "The count is a friend of {o}.;I counted {n} stars.;Good night, {o}.;All done at {o}.;Hold on to {o}.;"
    "Go on without {o}.;The film about {o} is over.;Turn the film off.;Take that back to {o}.;How far is {o}?;"
    "How much is left for {o}?;Round and round the castle.;That is enough for {o}.;Read it to {o}.;"
    "A bit slower, said {o}.;Wait for me near {o}.;Open the door to {o}.;Close your eyes.;That was wrong of {o}.;"
    "Do that again and you are fired.;Help {o}, please.;The pepper is next to {o}.;Step by step we reached {o}.;"
    "She slept near {o}.;The stepmother of {o} is here.;Stop there, please.;He kept her at {o}.;"
    "The computer at {o} is old.;Stitch the coat of {o}.;I have {n} stamps from {o}.;At the marker we turn to {o}.;"
    "It measures {n} feet.;What was that noise from {o}?;Once more unto {o}."
).split(";")
_YARNS = "chalk;pine;ember;cream;navy;heather grey;main colour;blue;charcoal;sand".split(";")
_PLACES = "yoke;body;left sleeve;right sleeve;neckband;final increase;cuff;hem;heel;thumb".split(";")
_OPEN = tuple(phrase for row in VOCABULARY for phrase in row.spoken if "{" in phrase)
_SHORT_ANSWERS = (
    "yes;no;up;down;left;right;on;off;stop;go;forward;backward;follow;learn;marvin;sheila;yes please;no thanks"
).split(";")
_ANEW = 0.55
_DIGITS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_FORTUNES = Path("/usr/share/games/fortunes")


def draw(source: random.Random, anew: Sequence[str] = ()) -> tuple[str, str]:
    """Draw a text, and of which kind it is: cue, count, slots, measure, salad, answer, hard or plain.

    Args:
        source: Where chance comes from.
        anew: Wordings that what was made earlier does not say yet; more than half of the texts are of them.
    """
    if anew and source.random() < _ANEW:
        phrase = source.choice(anew)
        return _behind(source, _filled(source, phrase), 0.45), "slots" if "{" in phrase else "cue"
    kinds = ("cue", "count", "slots", "measure", "salad", "answer", "hard", "plain")
    kind = source.choices(kinds, (33, 22, 8, 9, 7, 2, 7, 12))[0]
    if kind == "slots":
        return _behind(source, _filled(source, source.choice(_OPEN)), 0.4), kind
    if kind == "answer":
        return _behind(source, source.choice(_SHORT_ANSWERS), 0.5), kind
    if kind == "measure":
        return _behind(source, measure(source), 0.4), kind
    if kind == "cue":
        return _behind(source, source.choice(CLOSED), 0.45), kind
    if kind == "count":
        spoken = number(source)
        text = spoken if source.random() < 0.15 else source.choice(FRAMES).replace("{number}", spoken)
        return _behind(source, text, 0.35), kind
    if kind == "salad":
        return " ".join(source.choice(WORDS) for _ in range(source.randint(1, 5))), kind
    if kind == "hard":
        return source.choice(_HARD).format(o=source.choice(_OBJECTS), n=number(source)), kind
    return source.choice(sentences()), kind


def draw_short(source: random.Random) -> tuple[str, str]:
    """Draw what is short and easily mistaken: an address word alone, single words, digits one by one, numbers of which
    another differs in one sound, counts behind the address word.

    Args:
        source: Where chance comes from.
    """
    way = source.choices(("address", "word", "digits", "alike", "count"), (14, 20, 24, 20, 22))[0]
    if way == "address":
        return source.choice(FRONTS), way
    if way == "word":
        word = source.choice((*list_single_words(), *_DIGITS, *_DIGITS))
        return _behind(source, word, 0.6), "answer"
    if way == "digits":
        said = [source.choice(_DIGITS) for _ in range(source.randint(2, 4))]
        return _behind(source, source.choice((" ", ", ", " ... ")).join(said), 0.5), "count"
    if way == "alike":
        value = source.choice((*range(13, 20), *range(20, 100, 10), *range(13, 100)))
        value += source.choice((0, 0, 100 * source.randint(1, 9)))
        spoken = words(value) if source.random() < 0.7 else words(value).replace("hundred ", "hundred and ")
        frame = "{number}" if source.random() < 0.3 else source.choice(FRAMES)
        return _behind(source, frame.replace("{number}", spoken), 0.5), "count"
    return f"stepper, {source.choice(FRAMES).replace('{number}', number(source))}", "count"


def list_single_words() -> tuple[str, ...]:
    """Return the words that are a cue, or an answer, on their own."""
    return ("yes", "no", "stop", "go", "forward", "backward", "left", "right")


def number(source: random.Random) -> str:
    """Draw a number as it may be said: as a cardinal, with "and", or digit by digit."""
    ranges = (range(20), range(20, 100), range(100, 1000, 100), range(100, 1000))
    value = source.choice(source.choices(ranges, (20, 30, 5, 45))[0])
    spoken = words(value)
    if value > 100 and value % 100 and source.random() < 0.4:
        return spoken.replace(" hundred ", " hundred and ")
    return digits_words(value) if value > 9 and source.random() < 0.25 else spoken


def _filled(source: random.Random, phrase: str) -> str:
    """Put something into every slot of a wording."""
    fills = {
        "length": lambda: source.choice(list(list_lengths())), "yarn": lambda: source.choice(_YARNS),
        "weight": lambda: f"{words(source.randrange(1, 300))} grams", "place": lambda: source.choice(_PLACES),
        "text": lambda: source.choice(sentences()).rstrip(".!?;:"), "tens": lambda: words(source.randrange(1, 21)),
        "numbers": lambda: " ".join(number(source) for _ in range(source.randint(2, 4))),
    }  # fmt: skip
    return re.sub(r"\{(\w+)\}", lambda slot: fills.get(slot[1], lambda: number(source))(), phrase)


def measure(source: random.Random) -> str:
    """Draw a length, a weight, a place, a tally or a remark."""
    name, place, value = source.choice(_YARNS), source.choice(_PLACES), words(source.randrange(1, 200))
    length = source.choice(list(list_lengths()))
    unit = source.choice(("", " centimetres", " centimetres", " inches"))
    before = source.choice(("it measures", "measures", "piece measures", "length is"))
    weight = source.choice((f"{name} weighs {value} grams", f"weight of {name} is {value} grams"))
    where = source.choice((f"go to round {value} of {place}", f"go to {place} round {value}", f"go to {place}"))
    tally = f"plus {words(source.randrange(1, 21))}"
    remark = f"{source.choice(('make', 'take'))} a note {source.choice(sentences()).rstrip('.!?;:')}"
    return source.choices((f"{before} {length}{unit}", weight, where, tally, remark), (45, 20, 15, 8, 12))[0]


@cache
def sentences() -> list[str]:
    """Give short sentences out of the files of fortune."""
    found = set()
    for file in sorted(_FORTUNES.glob("*.u8")):
        for saying in file.read_text(encoding="utf-8", errors="ignore").split("\n%\n"):
            plain = re.sub(r"\s+", " ", re.split(r"\n\s*--", saying)[0])
            for sentence in re.split(r"(?<=[.!?;:])\s+", plain):
                is_speech = re.fullmatch(r"[A-Za-z ,.'!?;:\-]{13,59}", sentence.strip())
                if is_speech and not re.search(r"[A-Z]{2}", sentence):
                    found.add(sentence.strip())
    return sorted(found)


def _behind(source: random.Random, text: str, share: float) -> str:
    return f"{source.choice(FRONTS)}, {text}" if source.random() < share else text


if __name__ == "__main__":
    for _ in range(30):
        print(*draw(random.Random()), sep="  --  ")
