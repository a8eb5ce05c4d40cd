"""The colours of the page, drawn from the garment: its ground, and the yarn that stands out. No I/O.

The first yarn of the file is the ground of the page, as it is of the fabric, paled for daylight and deepened
for lamplight; the most colourful one is that of the field to touch. Whatever the yarns, text has a contrast
of at least 4.5:1 and what is touched 3:1 with what it lies on. Source: WCAG 2.2, SC 1.4.3, 1.4.11.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import fields
from typing import Final

from stepper.craft.colours.colour import Lab, Rgb, contrast, lab, rgb_from_hex, rgb_of_lab
from stepper.records import dataclass
from stepper.screen.drawing.style import Badge, Depth, best_ink, paint_badge
from stepper.screen.yarns import Yarns

_LINEN: Final = rgb_from_hex("#c9b79c")
_MOSS: Final = rgb_from_hex("#3f6b57")
# For a garment whose yarns have no colours: unbleached linen, and moss.
TEXT_CONTRAST: Final = 4.5
TOUCH_CONTRAST: Final = 3.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Palette:
    """The colours of a page."""

    ground: Rgb
    """What all lies on."""
    ink: Rgb
    """The step and all that matters. Contrast with the ground: 7:1 and up."""
    soft: Rgb
    """What is said beside it. Contrast with the ground: 4.5:1 and up."""
    edge: Rgb
    """Lines around what is touched. Contrast with the ground: 3:1 and up."""
    step: Rgb
    """The field to step. Contrast with the ground: 3:1 and up."""
    step_ink: Rgb
    """The words on it."""


def palette_of(yarns: Yarns, *, dark: bool) -> Palette:
    """Choose the colours of a page.

    Args:
        yarns: Those of the garment.
        dark: Whether it is to be read in lamplight.
    """
    colours = [yarn.colour for yarn in yarns.by_key.values() if yarn.colour is not None]
    hue = lab(colours[0] if colours else _LINEN)
    ground = _tinted(hue, 9.0 if dark else 95.0, 0.30)
    step = _apart(lab(max(colours, key=_chroma) if colours else _MOSS), ground, dark=dark)
    return Palette(
        ground=ground,
        ink=_tinted(hue, 96.0 if dark else 12.0, 0.15),
        soft=_tinted(hue, 76.0 if dark else 36.0, 0.30),
        edge=_tinted(hue, 60.0 if dark else 50.0, 0.40),
        step=step,
        step_ink=best_ink(step),
    )


def write_garment_css(yarns: Yarns) -> str:
    """Write the colours as the properties of a style sheet, for daylight and for lamplight."""
    light, dark = palette_of(yarns, dark=False), palette_of(yarns, dark=True)
    badges = "".join(_badges())
    return (
        f":root{{color-scheme:light dark;{_properties(light)}{badges}}}\n"
        f"@media (prefers-color-scheme:dark){{:root{{{_properties(dark)}}}}}\n"
    )


def draw_icon(yarns: Yarns) -> str:
    """Draw the page's icon as SVG: one knit stitch, in the colours of the page."""
    palette = palette_of(yarns, dark=False)
    leg = "M{0} 12 C{0} 30 {1} 34 32 56 C{2} 44 {2} 30 {0} 12Z"
    legs = "".join(f'<path d="{leg.format(*at)}"/>' for at in ((8, 20, 28), (56, 44, 36)))
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">'
        f'<rect width="64" height="64" rx="14" fill="{palette.ground.hex}"/>'
        f'<g fill="{palette.step.hex}">{legs}</g></svg>'
    )


def _properties(palette: Palette) -> str:
    return "".join(
        f"--{each.name.replace('_', '-')}:{getattr(palette, each.name).hex};" for each in fields(palette)
    )


def _badges() -> Iterator[str]:
    for badge in Badge:
        paint = paint_badge(badge, Depth.TRUE)
        assert paint.ground is not None
        assert paint.ink is not None
        yield f"--{badge.value}:{paint.ground.hex};--{badge.value}-ink:{paint.ink.hex};"


def _chroma(colour: Rgb) -> float:
    found = lab(colour)
    return math.hypot(found.a, found.b)


def _tinted(hue: Lab, lightness: float, share: float) -> Rgb:
    """Return a colour of a hue at a lightness, with a share of its chroma, or less if the screen has none."""
    while True:
        found = rgb_of_lab(Lab(lightness, hue.a * share, hue.b * share))
        if found is not None:
            return found
        share = share / 2 if share > 0.02 else 0.0


def _apart(hue: Lab, ground: Rgb, *, dark: bool) -> Rgb:
    """Return a yarn's colour, moved in lightness until it stands out from the ground."""
    lightness = max(48.0, min(hue.lightness, 70.0)) if dark else min(hue.lightness, 45.0)
    while True:
        found = _tinted(hue, lightness, 1.0)
        if contrast(found, ground) >= TOUCH_CONTRAST and contrast(found, best_ink(found)) >= TEXT_CONTRAST:
            return found
        lightness += 1.0 if dark else -1.0
