"""Bytes and texts spoilt at random, as damage, a slip of the hand or ill will spoils them. Seeded."""

from __future__ import annotations

import random
import struct
import zlib
from collections.abc import Sequence

HUGE = (
    *("inf", "-inf", "nan", "1e308", "-1e400", "0", "-0", "-1", "1e-320", "9" * 400, "9" * 5000, "0x7fffffffffffffff", "2147483648"),
    *("true", '""', "[]", "{}", "1979-05-27", "null", "½", "٣", "1_000"),
)
HOSTILE = (
    *("\x1b[2J", "\x1b]0;owned\x07", "\x9b31m", "\x00", "\r", "\u202e", "\u2028", "\ud7ff", "\ufeff", "\u200b", "İ", "ß", "🧶"),
    *("<script>alert(1)</script>", "<img src=x onerror=a()>", "{number}", "{", "}", "%s%n", "../../etc/passwd", "\\", '"""', "'", "#", "[[[[", "x" * 3000),
)
_EDGES = (0, 1, 0x7F, 0x80, 0xFF, 0x7FFF, 0x8000, 0xFFFF, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFF)


def spoil_text(text: str, chance: random.Random, words: Sequence[str] = ()) -> str:
    """Return a text with one to four slips in it.

    Args:
        text: What is spoilt.
        chance: Where luck comes from.
        words: What may be put in besides what is huge or hostile.
    """
    for _ in range(chance.choice((1, 1, 2, 4))):
        at = chance.randrange(len(text) + 1)
        kind = chance.randrange(9)
        if kind == 0:
            text = text[:at] + chance.choice(HOSTILE) + text[at:]
        elif kind == 1:
            text = text[:at] + text[at + chance.randrange(1, 12) :]
        elif kind == 2:
            text = text[:at] + chr(chance.choice((chance.randrange(0x20), chance.randrange(0x7F), chance.randrange(0x3000)))) + text[at + 1 :]
        elif kind == 3 and words:
            text = _one_word_exchanged(text, chance, chance.choice(words))
        elif kind == 4:
            text = _one_word_exchanged(text, chance, chance.choice(HUGE))
        elif kind == 5:
            rows = text.split("\n")
            rows.insert(chance.randrange(len(rows) + 1), chance.choice(rows))
            text = "\n".join(rows)
        elif kind == 6:
            to = min(len(text), at + chance.randrange(1, 40))
            text = text[:at] + text[at:to] * chance.choice((2, 3, 30)) + text[to:]
        elif kind == 7:
            text = text[:at] + chance.choice("[]{}()\"'=.,:#\n") * chance.choice((1, 1, 2, 600)) + text[at:]
        else:
            text = _one_word_exchanged(text, chance, chance.choice(HOSTILE))
    return text[:60_000]


def _one_word_exchanged(text: str, chance: random.Random, word: str) -> str:
    parts = text.split(" ")
    parts[chance.randrange(len(parts))] = word
    return " ".join(parts)


def spoil_bytes(raw: bytes, chance: random.Random, most: int = 200_000) -> bytes:
    """Return bytes with one to five damages: bits, runs, cuts, repeats, and numbers at the edge of what fits."""
    data = bytearray(raw)
    for _ in range(chance.choice((1, 1, 2, 3, 5))):
        at = chance.randrange(len(data) + 1) if chance.random() < 0.5 else chance.randrange(min(len(data), 80) + 1)
        kind = chance.randrange(8)
        if kind == 0 and at < len(data):
            data[at] ^= 1 << chance.randrange(8)
        elif kind == 1:
            data[at : at + 1] = chance.randbytes(1)
        elif kind == 2:
            form = chance.choice(("<H", ">H", "<I", ">I"))
            value = chance.choice(_EDGES) & (0xFFFF if form[1] == "H" else 0xFFFFFFFF)
            data[at : at + struct.calcsize(form)] = struct.pack(form, value)
        elif kind == 3:
            del data[at : at + chance.choice((1, 4, 40, 4000))]
        elif kind == 4:
            del data[at:]
        elif kind == 5:
            size = chance.randrange(1, 60)
            data[at:at] = data[at : at + size] * chance.choice((1, 2, 20))
        elif kind == 6:
            data[at:at] = chance.randbytes(chance.choice((1, 4, 200)))
        else:
            other = chance.randrange(len(data) + 1)
            data[at : at + 8] = data[other : other + 8]
    return bytes(data[:most])


def spoil_png(raw: bytes, chance: random.Random) -> bytes:
    """Spoil chunks of a PNG picture and put their checksums right again, so that more than the checksum is read.

    Source: the PNG specification, 5.3: length, type, data, CRC-32 over type and data.
    """
    chunks, at = [], 8
    while at + 12 <= len(raw):
        (size,) = struct.unpack(">I", raw[at : at + 4])
        chunks.append((raw[at + 4 : at + 8], raw[at + 8 : at + 8 + size]))
        at += 12 + size
    kind = chance.randrange(5)
    number = chance.randrange(len(chunks))
    name, data = chunks[number]
    if kind == 0:
        del chunks[number]
    elif kind == 1:
        chunks.insert(chance.randrange(len(chunks) + 1), (name, data))
    elif kind == 2:
        chunks.insert(1, (chance.choice((b"tEXt", b"zTXt", b"iTXt", b"iCCP", b"eXIf", b"acTL", b"fdAT", b"tRNS", b"PLTE", b"gAMA")), chance.randbytes(chance.randrange(60))))
    elif kind == 3 and name == b"IHDR":
        sizes = struct.pack(">II", chance.choice((1, 2, 500, 2000, 4000, 65_535, 2**31 - 1)), chance.choice((1, 2, 500, 1000, 65_535)))
        chunks[number] = name, sizes + (data[8:] if chance.random() < 0.5 else bytes(chance.choice((0, 1, 2, 3, 4, 6, 8, 16)) for _ in range(5)))
    else:
        chunks[number] = name, spoil_bytes(data, chance)
    return raw[:8] + b"".join(
        struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data)) for name, data in chunks
    )
