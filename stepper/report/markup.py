"""Small pieces of HTML and SVG as text, everything that comes from a file escaped. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape

Attributes = str | float | None


def text(words: str) -> str:
    """Escape words to stand between tags or in an attribute."""
    return escape(words, quote=True)


def tag(name: str, inner: str | Iterable[str] = "", **attributes: Attributes) -> str:
    """Write an element.

    Args:
        name: Of the element.
        inner: What it holds, as markup already.
        attributes: Escaped here. One that is nothing is left out; an underscore stands for a hyphen, at the
            end of a name for nothing (`class_`).
    """
    held = inner if isinstance(inner, str) else "".join(inner)
    shown = "".join(
        f' {key.rstrip("_").replace("_", "-")}="{text(number(value))}"'
        for key, value in attributes.items()
        if value is not None
    )
    return f"<{name}{shown}>{held}</{name}>"


def number(value: str | float) -> str:
    """Write a number as short as two places after the point allow; words stay as they are."""
    if isinstance(value, str):
        return value
    short = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if short == "-0" else short


def table(
    head: Iterable[str], rows: Iterable[Iterable[str]], *, named: str, class_: str | None = None
) -> str:
    """Write a table whose first column names its rows.

    Args:
        head: Titles of the columns, as markup.
        rows: Cells, as markup.
        named: Id of the heading it belongs to.
        class_: For its looks.
    """
    top = tag("thead", tag("tr", (tag("th", each, scope="col") for each in head)))
    body = "".join(
        tag("tr", [tag("th", first, scope="row"), *(tag("td", each) for each in rest)])
        for first, *rest in rows
    )
    return tag("table", [top, tag("tbody", body)], aria_labelledby=named, class_=class_)


def figure(drawing: str, caption: str, class_: str | None = None) -> str:
    """Write a drawing with words under it, as markup both."""
    return tag("figure", [drawing, tag("figcaption", caption)], class_=class_)


def svg(wide: float, high: float, inner: Iterable[str], *, title: str, class_: str | None = None) -> str:
    """Write a drawing.

    Args:
        wide: Unit: its own.
        high: The same.
        inner: What it holds.
        title: What it shows, for those who do not see it.
        class_: For its looks.
    """
    return tag(
        "svg",
        [tag("title", text(title)), *inner],
        viewBox=f"0 0 {number(wide)} {number(high)}",
        role="img",
        aria_label=title,
        class_=class_,
    )
