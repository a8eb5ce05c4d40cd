"""The page's address as a QR code, for the terminal and for a page."""

from __future__ import annotations

import io

import segno

_WHITE_ON_BLACK, _PLAIN = "\x1b[97;40m", "\x1b[0m"
# ECMA-48 and its bright colours: the blocks are the light squares, so that no camera sees it inverted.


def draw_in_terminal(url: str) -> str:
    """Draw an address as rows of half blocks, dark on light whatever the colours of the terminal."""
    drawn = io.StringIO()
    segno.make(url, error="m", micro=False).terminal(drawn, border=2, compact=True)
    return "\n".join(f"{_WHITE_ON_BLACK}{line}{_PLAIN}" for line in drawn.getvalue().splitlines())


def draw_svg(url: str) -> bytes:
    """Draw an address as an SVG file, black on white, with the quiet zone that ISO/IEC 18004 asks for."""
    drawn = io.BytesIO()
    code, title = segno.make(url, error="m", micro=False), "The address of this page"
    code.save(drawn, kind="svg", border=4, dark="#000", light="#fff", omitsize=True, title=title)
    return drawn.getvalue()
