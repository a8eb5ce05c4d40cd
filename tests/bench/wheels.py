"""Say which dependency lacks a wheel where, and whether each part of the program can be installed there.

    pip install uv packaging && nice -n 15 python -m tests.bench.wheels

Asks the package registry, through uv, for wheels alone (nothing is built and nothing installed): every dependency of
`pyproject.toml` by itself, as if it had no marker, and then all of an extra together with what they need in turn, with
the markers as they stand. Libraries of the C language other than glibc cannot be told apart by a marker.
"""

from __future__ import annotations

import subprocess
import sys
import tomllib
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from packaging.requirements import Requirement

PROJECT = Path(__file__).parents[2] / "pyproject.toml"
PLATFORMS = {
    "x86_64-manylinux_2_34": "Linux",
    "aarch64-manylinux_2_34": "Linux on Arm",
    "x86_64-unknown-linux-musl": "Linux with musl",
    "aarch64-apple-darwin": "macOS",
    "x86_64-apple-darwin": "macOS on Intel",
    "x86_64-pc-windows-msvc": "Windows",
    "aarch64-pc-windows-msvc": "Windows on Arm",
}
"""Platforms by uv's name. Those of macOS are macOS 13, the oldest that uv assumes."""
PYTHONS = ("3.11", "3.12", "3.13", "3.14")
EXTRAS = ("", "ears", "natural", "enrol", "vosk", "page")


def resolves(requirements: list[str], platform: str, python: str, *, alone: bool) -> str:
    """Return what is missing, in uv's words; empty if all have wheels."""
    command = ["uv", "pip", "compile", "-q", "--no-python-downloads", "--only-binary", ":all:", "--no-header", "--no-annotate"]
    command += ["--python-platform", platform, "--python-version", python, *(["--no-deps"] if alone else []), "-"]
    done = subprocess.run(command, input="\n".join(requirements), capture_output=True, text=True, check=False)
    lines = [line.strip() for line in done.stderr.splitlines() if "cause" in line or "no wheels" in line or "usable" in line]
    return " ".join(lines[:1]) or done.stderr.strip()[-300:] if done.returncode else ""


def main() -> int:
    """Print both tables; 1 if a part cannot be installed somewhere with the markers as they are."""
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]
    parts = {"": project["dependencies"], **{name: project["optional-dependencies"][name] for name in EXTRAS[1:]}}
    bare = {Requirement(each).name: f"{Requirement(each).name}{Requirement(each).specifier}" for of in parts.values() for each in of}
    places = [(platform, python) for platform in PLATFORMS for python in PYTHONS]
    with ThreadPoolExecutor(8) as pool:
        lacks = {
            (name, place): pool.submit(resolves, [wanted], *place, alone=True)
            for name, wanted in bare.items()
            for place in places
        }
        whole = {
            (extra, place): pool.submit(resolves, [*parts[""], *(parts[extra] if extra else [])], *place, alone=False)
            for extra in parts
            for place in places
        }
    print("No wheel, whatever the markers say:")
    for name in bare:
        for platform, called in PLATFORMS.items():
            without = [python for python in PYTHONS if lacks[name, (platform, python)].result()]
            if without:
                print(f"  {bare[name]:<32} {called:<16} {', '.join(without)}")
    print("With the markers:")
    failed = 0
    for extra in parts:
        for platform, called in PLATFORMS.items():
            found = {python: whole[extra, (platform, python)].result() for python in PYTHONS}
            bad = [python for python in PYTHONS if found[python]]
            failed += bool(bad)
            told = "installs" if not bad else f"does not on {', '.join(bad)}: {found[bad[0]]}"
            print(f"  {f'[{extra}]' if extra else 'stepper':<10} {called:<16} {told}")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
