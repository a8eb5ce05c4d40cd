"""Say which dependency lacks a wheel where, and whether each part of the program can be installed there.

    pip install packaging && nice -n 15 python -m tests.bench.wheels [--python 3.14] [--platform Windows]

Asks pip, for every version of Python on every system, which versions it would take of wheels alone; nothing is built or
installed. Everything is asked for as if it had no marker, and then each part of the program with the markers as they
stand and with all that it needs in turn. What a package needs is read from one of its wheels, fetched once. Prints as
it goes; a call of pip that takes longer than two minutes counts as no answer. Libraries of the C language other than
glibc cannot be told apart by a marker.
"""

from __future__ import annotations

import argparse
import json
import re
import subprocess
import sys
import tempfile
import time
import tomllib
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet
from packaging.utils import canonicalize_name
from packaging.version import InvalidVersion, Version

PROJECT = Path(__file__).parents[2] / "pyproject.toml"
PATIENCE_S = 120
GLIBC = ("_2_34", "_2_31", "_2_28", "_2_27", "_2_26", "_2_24", "_2_17", "2014", "_2_12", "2010", "_2_5", "1")
MUSL = ("1_2", "1_1")


@dataclass(frozen=True)
class Platform:
    """A system by pip's tags and by what its markers are."""

    name: str
    tags: tuple[str, ...]
    marks: dict[str, str]


def _platform(name: str, system: str, machine: str, tags: tuple[str, ...]) -> Platform:
    os_name, called = {"linux": ("posix", "Linux"), "darwin": ("posix", "Darwin"), "win32": ("nt", "Windows")}[system]
    marks = {"sys_platform": system, "platform_machine": machine, "os_name": os_name, "platform_system": called}
    return Platform(name, tags, marks)


PLATFORMS = (
    _platform("Linux", "linux", "x86_64", (*(f"manylinux{each}_x86_64" for each in GLIBC), "linux_x86_64")),
    _platform("Linux on Arm", "linux", "aarch64", (*(f"manylinux{each}_aarch64" for each in GLIBC), "linux_aarch64")),
    _platform("Linux with musl", "linux", "x86_64", tuple(f"musllinux_{each}_x86_64" for each in MUSL)),
    _platform("macOS", "darwin", "arm64", ("macosx_14_0_arm64",)),
    _platform("macOS on Intel", "darwin", "x86_64", ("macosx_13_0_x86_64",)),
    _platform("Windows", "win32", "AMD64", ("win_amd64",)),
    _platform("Windows on Arm", "win32", "ARM64", ("win_arm64",)),
)
PYTHONS = ("3.11", "3.12", "3.13", "3.14")
EXTRAS = ("", "ears", "natural", "vosk", "page")
Place = tuple[Platform, str]


@dataclass
class Registry:
    """What pip says of packages, each question asked once."""

    folder: Path
    versions: dict[tuple[str, str, str], list[Version]] = field(default_factory=dict)
    needs: dict[str, list[str]] = field(default_factory=dict)
    anywhere: dict[str, list[Version]] = field(default_factory=dict)
    unanswered: set[str] = field(default_factory=set)

    def wheel_for(self, wanted: Requirement, place: Place) -> Version | None:
        """Return the version that pip would take, or None where there is no wheel."""
        name, (platform, python) = canonicalize_name(wanted.name), place
        found = self.anywhere.get(name)
        if found is None:
            asked = (name, platform.name, python)
            if asked not in self.versions:
                said = _pip("index", "versions", name, *_target(place))
                if said is None:
                    self.unanswered.add(f"{name} on {platform.name}, {python}")
                listed = re.search(r"Available versions: (.*)", said or "")
                self.versions[asked] = list(_versions(listed[1] if listed else ""))
            found = self.versions[asked]
        return max(wanted.specifier.filter(found), default=None)

    def needs_of(self, wanted: Requirement, version: Version, place: Place) -> list[str]:
        """Return what a package needs in turn, each with its marker."""
        name = canonicalize_name(wanted.name)
        if name not in self.needs:
            report = self.folder / f"{name}.json"
            target = (*_target(place), "--target", str(self.folder / "nothing"))
            _pip("install", "--dry-run", "--quiet", "--no-deps", "--ignore-installed", *target, f"--report={report}", f"{name}=={version}")
            if not report.exists():
                self.unanswered.add(f"what {name} {version} needs")
                return []
            (told,) = json.loads(report.read_text(encoding="utf-8"))["install"]
            data = told["metadata"]
            self.needs[name] = data.get("requires_dist", [])
            pure = told["download_info"]["url"].endswith("-none-any.whl")
            if pure and all(SpecifierSet(data.get("requires_python") or "").contains(f"{each}.0") for each in PYTHONS):
                self.anywhere[name] = [version]
        return self.needs[name]


def _versions(listed: str) -> Iterator[Version]:
    for each in listed.split(", "):
        with suppress(InvalidVersion):
            yield Version(each)


def _pip(*words: str) -> str | None:
    command = [sys.executable, "-m", "pip", *words, "--disable-pip-version-check", "--no-input"]
    try:
        return subprocess.run(command, capture_output=True, text=True, check=False, timeout=PATIENCE_S).stdout
    except subprocess.TimeoutExpired:
        return None


def _target(place: Place) -> list[str]:
    platform, python = place
    return ["--only-binary=:all:", "--implementation=cp", f"--python-version={python}", *(f"--platform={tag}" for tag in platform.tags)]


def _holds(wanted: Requirement, extras: set[str], place: Place) -> bool:
    platform, python = place
    marks = {**platform.marks, "python_version": python, "python_full_version": f"{python}.0", "implementation_name": "cpython",
             "platform_python_implementation": "CPython", "implementation_version": f"{python}.0", "platform_release": "", "platform_version": ""}
    return wanted.marker is None or any(wanted.marker.evaluate({**marks, "extra": extra}) for extra in (extras or {""}))


def missing(registry: Registry, requirements: list[str], place: Place) -> list[str]:
    """Return what has no wheel of all that some requirements need in a place."""
    waiting = [(Requirement(each), set[str]()) for each in requirements]
    seen, lacks = set[tuple[str, str]](), []
    while waiting:
        wanted, extras = waiting.pop()
        if not _holds(wanted, extras, place):
            continue
        name = canonicalize_name(wanted.name)
        for extra in ("", *wanted.extras):
            if (name, extra) in seen:
                continue
            seen.add((name, extra))
            version = registry.wheel_for(wanted, place)
            if version is None:
                lacks.append(f"{name}{wanted.specifier}")
                continue
            waiting += [(Requirement(each), {extra}) for each in registry.needs_of(wanted, version, place)]
    return sorted(set(lacks))


def main() -> int:
    """Print what lacks a wheel where; 1 if a part cannot be installed somewhere with the markers as they are."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").split("\n", 1)[0])
    parser.add_argument("--python", choices=PYTHONS, action="append")
    parser.add_argument("--platform", choices=[each.name for each in PLATFORMS], action="append")
    given = parser.parse_args()
    project = tomllib.loads(PROJECT.read_text(encoding="utf-8"))["project"]
    parts = {"": project["dependencies"], **{name: project["optional-dependencies"][name] for name in EXTRAS[1:]}}
    bare = {Requirement(each).name: Requirement(each) for of in parts.values() for each in of}
    begun, failed = time.monotonic(), 0
    with tempfile.TemporaryDirectory() as folder, ThreadPoolExecutor(4) as pool:
        registry = Registry(Path(folder))
        for platform in PLATFORMS:
            for python in PYTHONS:
                if python not in (given.python or PYTHONS) or platform.name not in (given.platform or (platform.name,)):
                    continue
                place = platform, python
                found = dict(zip(bare, pool.map(lambda wanted, place=place: registry.wheel_for(wanted, place), bare.values()), strict=True))
                without = [f"{name}{bare[name].specifier}" for name, version in found.items() if version is None]
                print(f"{platform.name}, {python} ({time.monotonic() - begun:.0f} s): no wheel, whatever the markers say: {', '.join(without) or 'of nothing'}", flush=True)
                for extra, requirements in parts.items():
                    lacks = missing(registry, [*parts[""], *(requirements if extra else [])], place)
                    failed += bool(lacks)
                    print(f"    {f'[{extra}]' if extra else 'stepper':<10} {'installs' if not lacks else 'lacks ' + ', '.join(lacks)}", flush=True)
    print(f"{failed} cannot be installed; {len(registry.unanswered)} questions without an answer", *sorted(registry.unanswered), sep="\n  ")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
