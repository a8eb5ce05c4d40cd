"""How many ordinary sentences are read in a dress drawn by chance: lists, lengths, counts and endings of their own.

Run: python -m tests.bench.dresses [NUMBER]
Prints for each sentence how many of NUMBER dresses (200) are read, and some that are not. The frames are ours.
"""

from __future__ import annotations

import sys

from stepper.project.reading.wording import reads
from tests.project.rewording.dresses import FRAMES, by_chance


def main() -> None:
    """Print the shares."""
    number = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    read, tried = 0, 0
    for name, frame in FRAMES.items():
        lines = by_chance(frame, number, f"bench {name}")
        unread = [line for line in lines if not reads(line)]
        read, tried = read + len(lines) - len(unread), tried + len(lines)
        print(f"{name:12} {len(lines) - len(unread):4} of {len(lines):4}")
        for line in unread[:5]:
            print("    not read:", line)
    print(f"all          {read:4} of {tried:4}  {read / tried:.3f}")


if __name__ == "__main__":
    main()
