"""Colour: how light a yarn is, and how far apart two colours are on the screen.

Colours are sRGB, as in `#1f4d3a`. No I/O.
"""

from __future__ import annotations

from stepper.records import dataclass
from stepper.regex import regex

_HEX = regex(r"#?([0-9a-fA-F]{3}|[0-9a-fA-F]{6})")

_CUBE_ROOT_FROM = (6 / 29) ** 3

# Linear sRGB to CIE XYZ under D65. Source: IEC 61966-2-1:1999.
_XYZ_ROWS = (
    (0.4124, 0.3576, 0.1805),
    (0.2126, 0.7152, 0.0722),
    (0.0193, 0.1192, 0.9505),
)
# The white point given by those rows, so that white comes out with no hue at all.
_WHITE = tuple(sum(row) for row in _XYZ_ROWS)
# CIE XYZ to linear sRGB: the inverse of those rows.
_LIGHT_ROWS = (
    (3.24062548, -1.53720797, -0.49862860),
    (-0.96893071, 1.87575606, 0.04151752),
    (0.05571012, -0.20402105, 1.05699594),
)


@dataclass(frozen=True, slots=True)
class Rgb:
    """A colour of the sRGB screen."""

    red: int
    """Range: 0 to 255."""
    green: int
    """Range: 0 to 255."""
    blue: int
    """Range: 0 to 255."""

    def __post_init__(self) -> None:
        """Refuse values out of range.

        Raises:
            ValueError: A channel is not within 0 to 255.
        """
        for value in (self.red, self.green, self.blue):
            if not 0 <= value <= 255:
                raise ValueError(f"a colour channel must be 0 to 255 (got {value}).")

    @property
    def hex(self) -> str:
        """The colour as `#rrggbb`."""
        return f"#{self.red:02x}{self.green:02x}{self.blue:02x}"


@dataclass(frozen=True, slots=True)
class Lab:
    """A colour in CIE L*a*b* 1976 relative to the screen's own white."""

    lightness: float
    """L*. Range: 0 black to 100 white."""
    a: float
    """Green below 0, red above."""
    b: float
    """Blue below 0, yellow above."""


def rgb_from_hex(text: str) -> Rgb:
    """Read a colour written in hexadecimal.

    Args:
        text: `#rrggbb` or `#rgb`, with or without the `#`, in either case.

    Raises:
        ValueError: It is written in any other way.

    Source: CSS Color Module, hexadecimal notation.
    """
    found = _HEX.fullmatch(text.strip())
    if not found:
        raise ValueError(f'a colour is written like "#1f4d3a" (got "{text}").')
    digits = found[1] if len(found[1]) == 6 else "".join(2 * digit for digit in found[1])
    return Rgb(int(digits[:2], 16), int(digits[2:4], 16), int(digits[4:], 16))


def decode_srgb(channel: float) -> float:
    """Turn a screen value into light.

    Args:
        channel: Screen value. Range: 0 to 1.

    Returns:
        Share of full light. Range: 0 to 1.

    Source: IEC 61966-2-1, as in WCAG 2 "relative luminance" (threshold 0.04045).
    """
    return channel / 12.92 if channel <= 0.04045 else float(((channel + 0.055) / 1.055) ** 2.4)


def encode_srgb(light: float) -> float:
    """Turn light into a screen value: undo `decode_srgb`.

    Args:
        light: Share of full light. Range: 0 to 1.

    Returns:
        Range: 0 to 1.

    Source: IEC 61966-2-1.
    """
    return 12.92 * light if light <= 0.0031308 else float(1.055 * light ** (1 / 2.4) - 0.055)


def decode_channels(colour: Rgb) -> tuple[float, float, float]:
    """Return a colour's three shares of light. Range: 0 to 1 each. Source: IEC 61966-2-1."""
    return decode_srgb(colour.red / 255), decode_srgb(colour.green / 255), decode_srgb(colour.blue / 255)


def luminance(colour: Rgb) -> float:
    """Return the relative luminance. Range: 0 black to 1 white.

    Source: WCAG 2, "relative luminance": 0.2126 R + 0.7152 G + 0.0722 B.
    """
    red, green, blue = decode_channels(colour)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: Rgb, other: Rgb) -> float:
    """Return the contrast ratio of two colours. Range: 1 to 21; never rounded.

    WCAG's limits (4.5 for text, 3 for graphics) are meant for screens. For yarn they are only a convention.

    Source: WCAG 2, "contrast ratio": (L1 + 0.05) / (L2 + 0.05).
    """
    darker, lighter = sorted((luminance(one), luminance(other)))
    return (lighter + 0.05) / (darker + 0.05)


def lightness(relative_luminance: float) -> float:
    """Return CIE L*: how light it looks to the eye.

    Args:
        relative_luminance: Y / Yn. Range: 0 and up, 1 is white.

    Returns:
        L*. Range: 0 to 100 for luminance up to 1.

    Raises:
        ValueError: The luminance is below 0.

    Source: ISO/CIE 11664-4; CIE e-ILV 17-23-076, exact constants.
    """
    if not relative_luminance >= 0:
        raise ValueError(f"luminance must be 0 or more (got {relative_luminance}).")
    return 116 * _root(relative_luminance) - 16


def grey(colour: Rgb) -> Rgb:
    """Return the grey of the same luminance, as a black-and-white photograph shows it.

    Source: luminance as WCAG 2, encoded by IEC 61966-2-1.
    """
    level = round(255 * encode_srgb(luminance(colour)))
    return Rgb(level, level, level)


def lab(colour: Rgb) -> Lab:
    """Return CIE L*a*b* 1976 of a screen colour.

    Source: ISO/CIE 11664-4; IEC 61966-2-1 for the matrix, whose rounding moves L* by up to 0.01.
    """
    light = decode_channels(colour)
    x, y, z = (
        _root(sum(share * part for share, part in zip(row, light, strict=True)) / white)
        for row, white in zip(_XYZ_ROWS, _WHITE, strict=True)
    )
    return Lab(116 * y - 16, 500 * (x - y), 200 * (y - z))


def rgb_of_lab(colour: Lab) -> Rgb | None:
    """Return the screen colour of a CIE L*a*b* colour; None if the screen cannot show it.

    Source: the inverse of `lab`.
    """
    middle = (colour.lightness + 16) / 116
    shares = (middle + colour.a / 500, middle, middle - colour.b / 200)
    x, y, z = (white * _cube(share) for share, white in zip(shares, _WHITE, strict=True))
    light = [row[0] * x + row[1] * y + row[2] * z for row in _LIGHT_ROWS]
    # Up to half a step out of the screen's range still rounds to a colour it has.
    if any(not -0.0002 <= channel <= 1.005 for channel in light):
        return None
    red, green, blue = (round(255 * min(1.0, max(0.0, encode_srgb(max(0.0, channel))))) for channel in light)
    return Rgb(red, green, blue)


def change_lightness(colour: Rgb, wanted: float) -> Rgb:
    """Return the colour of the same hue at another lightness, as saturated as the screen can show it.

    Args:
        colour: The colour to start from.
        wanted: L*. Range: 0 to 100.

    Source: hue and chroma of CIE L*a*b*; if the screen has no such colour, less chroma of the same hue.
    """
    own = lab(colour)
    weak, strong = 0.0, 1.0
    found = rgb_of_lab(Lab(wanted, own.a, own.b))
    if found is not None:
        return found
    found = rgb_of_lab(Lab(wanted, 0, 0))
    assert found is not None  # the screen has every grey
    for _ in range(12):  # a 4,000th of the chroma is finer than a step of the screen
        middle = (weak + strong) / 2
        tried = rgb_of_lab(Lab(wanted, own.a * middle, own.b * middle))
        if tried is None:
            strong = middle
        else:
            weak, found = middle, tried
    return found


def _cube(share: float) -> float:
    return share**3 if share > 6 / 29 else (share - 4 / 29) * 108 / 841


def _root(share: float) -> float:
    return float(share ** (1 / 3)) if share > _CUBE_ROOT_FROM else share * 841 / 108 + 4 / 29
