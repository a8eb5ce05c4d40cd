"""Small pieces of HTML and SVG as text, with everything that comes from a file escaped. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from typing import Final

from stepper.craft.figures import format_number
from stepper.regex import regex

Attribute = str | float | None

_NO_XML: Final = regex("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")
"""A character that a document of XML, as every drawing is, may not hold. Source: XML 1.0, section 2.2."""


def text(words: str) -> str:
    r"""Escape text for use between tags or in an attribute; what XML cannot hold is shown as `\u001b`."""
    return escape(_NO_XML.sub(lambda found: f"\\u{ord(found[0]):04x}", words), quote=True)


def tag(name: str, inner: str | Iterable[str] = "", **attributes: Attribute) -> str:
    """Write an element.

    Args:
        name: The element's name.
        inner: Its content, already markup.
        attributes: Escaped here; any that is None is left out. An underscore stands for a hyphen, or is
            dropped at the end of a name (`class_`).
    """
    held = inner if isinstance(inner, str) else "".join(inner)
    shown = "".join(
        f' {key.rstrip("_").replace("_", "-")}="{_value(value)}"'
        for key, value in attributes.items()
        if value is not None
    )
    return f"<{name}{shown}>{held}</{name}>"


def _value(value: str | float) -> str:
    return text(value) if isinstance(value, str) else format_number(value)


def table(
    head: Iterable[str], rows: Iterable[Iterable[str]], *, named: str, class_: str | None = None
) -> str:
    """Write a table whose first column names its rows.

    Args:
        head: Titles of the columns, as markup.
        rows: Cells, as markup.
        named: Id of the heading that names it.
        class_: Its class in the style sheet.
    """
    top = tag("thead", tag("tr", (tag("th", each, scope="col") for each in head)))
    body = "".join(
        tag("tr", [tag("th", first, scope="row"), *(tag("td", each) for each in rest)])
        for first, *rest in rows
    )
    return tag("table", [top, tag("tbody", body)], aria_labelledby=named, class_=class_)


def figure(drawing: str, caption: str, class_: str | None = None) -> str:
    """Write a drawing with a caption, both given as markup."""
    return tag("figure", [drawing, tag("figcaption", caption)], class_=class_)


def svg(
    width: float,
    height: float,
    inner: Iterable[str],
    *,
    title: str,
    alone: bool = False,
    class_: str | None = None,
    style: str | None = None,
    **attributes: Attribute,
) -> str:
    """Write a drawing.

    Args:
        width: In the drawing's own unit.
        height: The same.
        inner: Its content, as markup.
        title: What it shows, for those who cannot see it.
        alone: Whether it is a file of its own, with size and typeface; otherwise these come from the page.
        class_: Its class in the page's style sheet.
        style: The same.
        attributes: Further attributes, as for `tag`.
    """
    return tag(
        "svg",
        [tag("title", text(title)), *inner, "\n" if alone else ""],
        style=style,
        xmlns="http://www.w3.org/2000/svg" if alone else None,
        viewBox=f"0 0 {format_number(width)} {format_number(height)}",
        width=width if alone else None,
        height=height if alone else None,
        role="img",
        aria_label=title,
        class_=class_,
        font_family="Helvetica, Arial, sans-serif" if alone else None,
        **attributes,
    ) + ("\n" if alone else "")
