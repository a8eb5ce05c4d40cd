"""How each stitch is made, in words for paper and for the ear.

Source: Craft Yarn Council, knitting abbreviations, and common practice; from memory.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from stepper.craft.stitches import stitch
from stepper.regex import regex

_HOW: Final[Mapping[str, str]] = MappingProxyType(
    {
        "k": "knit",
        "p": "purl",
        "sl": "slip as if to purl, unless the line says otherwise",
        "k1b": "knit into the stitch below the next one",
        "m1": "make one: lift the strand between the needles and knit it twisted",
        "m1l": "make one left: lift the strand from front to back, knit it through the back loop",
        "m1r": "make one right: lift the strand from back to front, knit it through the front loop",
        "m1p": "make one: lift the strand between the needles and purl it twisted",
        "m1lp": "make one left purlwise: lift the strand from front to back, purl it through the back loop",
        "m1rp": "make one right purlwise: lift the strand from back to front, purl it through the front loop",
        "kfb": "knit into front and back of one stitch",
        "pfb": "purl into front and back of one stitch",
        "kfbf": "knit into front, back and front of one stitch",
        "kyok": "knit, yarn over, knit, all into one stitch",
        "yo": "yarn over: bring the yarn over the needle for a new stitch with a hole below it",
        "yo2": "yarn over twice",
        "rli": "right lifted increase: knit into the right leg of the stitch below the next one",
        "lli": "left lifted increase: knit into the left leg of the stitch two below the last one",
        "k2tog": "knit two together; leans right",
        "p2tog": "purl two together",
        "ssk": "slip two one by one as if to knit, knit them together through the back loops; leans left",
        "ssp": "slip two one by one as if to knit, return them, purl them together through the back loops",
        "skp": "slip one as if to knit, knit one, pass the slipped one over; leans left",
        "k3tog": "knit three together; leans right",
        "sssk": "slip three one by one as if to knit, knit them together through the back loops; leans left",
        "sk2p": "slip one as if to knit, knit two together, pass the slipped one over; leans left",
        "s2kp": "slip two together as if to knit, knit one, pass both slipped ones over; stands upright",
        "pm": "place a marker",
        "sm": "slip the marker",
        "rm": "remove the marker",
        "w&t": "wrap and turn: slip the next stitch as if to purl, bring the yarn to the other side, slip "
        "the stitch back, turn",
        "ds": "double stitch: slip as if to purl, pull the yarn up over the needle until both legs show",
    }
)
# How a stitch is made, if its name does not say so.

_CABLE: Final = regex(r"^(\d+)/(\d+) (r|l)(p?)c$")
_UK_CABLE: Final = regex(r"^c(\d+)(f|b)$")


def explain_stitch(code: str) -> str:
    """Say how a stitch is made."""
    known = _HOW.get(code) or _explain_cable(code)
    return known or stitch(code).said.replace(" one ", " ").removesuffix(" one")


def _explain_cable(code: str) -> str:
    match = _CABLE.match(code)
    if match is not None:
        front, behind, lean, purled = match.groups()
        other = f"{'p' if purled else 'k'}{behind}"
        if lean == "r":
            how = f"{behind} to a cable needle behind, k{front}, {other} from it"
            return f"{front} over {behind} right cross: {how}"
        how = f"{front} to a cable needle in front, {other}, k{front} from it"
        return f"{front} over {behind} left cross: {how}"
    match = _UK_CABLE.match(code)
    if match is not None and int(match.group(1)) % 2 == 0:
        half = int(match.group(1)) // 2
        where = "in front" if match.group(2) == "f" else "behind"
        return f"cable: {half} to a cable needle {where}, k{half}, k{half} from it"
    return ""


def how_made(code: str) -> str:
    """Say how a stitch is made and nothing of its name; empty where the name says it.

    "Make one left" says not how, "knit two together" does, and only which way it leans is left to say.
    """
    known = explain_stitch(code)
    name = stitch(code).said.replace(",", "")
    said, sign, how = known.partition(": ")
    if sign:
        return how
    said, sign, how = known.partition("; ")
    if said.removesuffix(" one") == name.removesuffix(" one"):
        return how if sign else ""
    return "" if name.split()[0] in said and len(said) <= len(name) + len(" the ") else known
