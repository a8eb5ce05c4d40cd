"""Small legal project files for tests, and hypothesis strategies that make more of them."""

from __future__ import annotations

import textwrap

from hypothesis import strategies as st

HEAD = """\
title: Bramble cowl
sizes: {sizes}
knit: {{size: {size}}}
yarn:
  MC: {{name: oat, colour: "#d8ccb0", skein: {{grams: 50, metres: 120}}, bought: 3}}
  A: {{name: moss, colour: "#4f6b3a"}}
gauge:
  plain: {{needle: 4 mm, stitches: 20, rounds: 28, blocked: {{stitches: 20, rounds: 27}}}}
charts:
  peak:
    key: {{".": MC, a: A}}
    rows: |
      a..a
      .aa.
sections:
  - name: body
    work: |
"""


def project(work: str, *, sizes: str = "S (M, L)", size: str = "M", head: str = HEAD) -> str:
    """Put work lines into a small project file."""
    body = textwrap.indent(textwrap.dedent(work).strip("\n"), "      ")
    return head.format(sizes=sizes, size=size) + body + "\n"


def begun_from_page(work: str, *, sizes: str = "S (M, L)", size: str = "M") -> str:
    """Put work lines into a small project file that says it was written from a page."""
    return "# Written from the text of a printed pattern.\n" + project(work, sizes=sizes, size=size)


@st.composite
def legal_works(draw: st.DrawFn) -> str:
    """Make work lines of a garment in the round that fits, whatever is drawn."""
    count = 4 * draw(st.integers(3, 40))
    lines = [f"Cast on {count} sts.", "Join in the round."]
    for _ in range(draw(st.integers(1, 8))):
        kind = draw(st.sampled_from(["plain", "rib", "more", "fewer", "chart", "length", "interval", "marks"]))
        if kind == "plain":
            lines.append(f"{draw(st.sampled_from(['Knit', 'Purl']))} {draw(st.integers(1, 5))} rounds.")
        elif kind == "rib" and count % 4 == 0:
            lines.append(f"*K2, p2; rep from * to end. Work for {draw(st.integers(1, 5))} cm. {count} sts.")
        elif kind == "more":
            count += draw(st.integers(0, count))
            lines.append(f"Increase evenly to {count} sts.")
        elif kind == "fewer":
            count -= draw(st.integers(0, count // 2 - 3 if count >= 8 else 0))
            lines.append(f"Decrease evenly to {count} sts.")
        elif kind == "chart" and count % 4 == 0:
            lines.append(f"Chart peak, {draw(st.integers(1, 3))} times.")
        elif kind == "length":
            lines.append(f"Knit for {draw(st.integers(1, 9))} cm.")
        elif kind == "interval" and count >= 12:
            times = draw(st.integers(1, (count - 8) // 2 if count < 20 else 4))
            every = draw(st.integers(2, 6))
            lines.append("Dec round: K1, k2tog, k to last 3 sts, ssk, k1.")
            lines.append(f"Work dec round every {every} rounds {times} times.")
            count -= 2 * times
            lines.append(f"Note: {count} are left.")
        elif kind == "marks" and count >= 6:
            lines.append(f"Place marker every {count // 2} sts.")
            lines.append("K to 1 st before marker, k1, sm, k to end.")
            count += 0
    lines.append("Bind off in pattern.")
    return "\n".join(lines)
