"""How the page looks, on paper above all. Data only; nothing in it is fetched from anywhere.

A tick box is 7 mm across, enough for a pencil or a finger. Nothing is conveyed by colour alone.
"""

from __future__ import annotations

from typing import Final

STYLE: Final = """
:root { --ink: #1c1b19; --soft: #55514a; --line: #b9b4a9; --wash: #f4f1ea; }
* { box-sizing: border-box; }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0 auto; padding: 8mm 6mm; max-width: 190mm; color: var(--ink); background: #fff;
  font: 10.5pt/1.42 Georgia, "Times New Roman", "Liberation Serif", serif;
  overflow-wrap: anywhere; hyphens: manual; }
h1 { font-size: 25pt; font-weight: normal; line-height: 1.15; margin: 0 0 2mm; }
h2 { font-size: 15pt; font-weight: normal; margin: 10mm 0 3mm; padding-bottom: 1mm;
  border-bottom: 0.3mm solid var(--ink); break-after: avoid; }
h3 { font-size: 12pt; margin: 6mm 0 2mm; break-after: avoid; }
h3 small { font-weight: normal; color: var(--soft); }
p { margin: 0 0 1.5mm; }
.cautions { font-style: italic; margin-top: 3mm; }
.lead { color: var(--soft); }
ul { margin: 0; padding-left: 5mm; }
table { width: 100%; border-collapse: collapse; margin: 0 0 3mm;
  font-variant-numeric: lining-nums tabular-nums; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { text-align: left; vertical-align: top; padding: 1.2mm 2mm;
  border-bottom: 0.2mm solid var(--line); }
th { font-weight: normal; }
thead th { color: var(--soft); font-size: 9pt;
  border-bottom: 0.3mm solid var(--soft); vertical-align: bottom; }
td p:last-child, th p:last-child { margin-bottom: 0; }
.figures td { text-align: right; white-space: nowrap; }
.figures thead th + th { text-align: right; }
.rounds th[scope=row] { width: 15mm; white-space: nowrap; }
.rounds td:nth-child(3) { width: 26mm; white-space: nowrap; }
.rounds td:nth-child(4), .rounds thead th:nth-child(4) { width: 54mm; }
.rounds tr.above > * { border-bottom: 0; break-after: avoid; }
.rounds td.many { padding-top: 0; }
.blank { min-width: 24mm; }
.remark, .altered { font-style: italic; }
.count { border-left: 0.8mm solid var(--ink); padding-left: 1.5mm; }
.tick { display: inline-flex; flex-direction: column; align-items: center; width: 8.4mm; font-size: 8pt;
  line-height: 1.1; margin: 0 0 1mm; }
.tick input { appearance: none; -webkit-appearance: none; width: 7mm; height: 7mm; margin: 0 0 0.4mm;
  border: 0.3mm solid var(--ink); border-radius: 0.8mm; background: #fff; }
.tick input:checked { background: linear-gradient(to top right, transparent 44%, var(--ink) 44%,
  var(--ink) 56%, transparent 56%) #fff; }
.tick input:focus-visible { outline: 0.7mm solid #0b57a8; outline-offset: 0.4mm; }
figure { margin: 0 0 5mm; break-inside: avoid; }
figcaption { color: var(--soft); font-size: 9.5pt; margin-top: 1.5mm; }
svg { display: block; max-width: 100%; height: auto;
  font-family: Helvetica, Arial, "Liberation Sans", sans-serif; }
svg.schematic { width: 100%; max-height: 150mm; }
svg.yoke { width: 110mm; margin: 0 auto; }
svg.swatch { display: inline-block; width: 5mm; height: 5mm; vertical-align: -1mm; }
.piece { fill: var(--wash); stroke: var(--ink); stroke-linejoin: round; }
.measure { fill: none; stroke: var(--soft); }
.seam { fill: none; stroke: var(--soft); stroke-dasharray: 6 5; }
.schematic text { fill: var(--ink); stroke: none; }
.grid { fill: none; stroke: #77736b; stroke-width: 0.6; }
.repeat { fill: none; stroke: var(--ink); stroke-width: 2.2; }
.number { fill: var(--soft); font-size: 9px; }
.edge { fill: none; stroke: var(--ink); stroke-width: 0.5; }
.legend { display: flex; flex-wrap: wrap; gap: 1mm 5mm; list-style: none; padding: 0; }
@media screen and (max-width: 560px) {
  body { padding: 4mm 3mm; }
  th, td { padding: 1.2mm 1mm; }
  .figures td { white-space: normal; }
  .rounds, .rounds tbody, .rounds tr, .rounds th, .rounds td { display: block; width: auto !important; }
  .rounds thead { position: absolute; left: -9999px; }
  .rounds th, .rounds td { border: 0; padding: 0.5mm 0; }
  .rounds tr { border-bottom: 0.2mm solid var(--line); padding: 1.5mm 0; }
}
@media print {
  body { max-width: none; padding: 0; }
  h2.fresh { break-before: page; margin-top: 0; }
}
@page { margin: 14mm 13mm 16mm; }
"""
"""The style sheet."""


def footer_rule(title: str) -> str:
    """Return the rule for the footer of every sheet: title, sheet number and number of sheets.

    Args:
        title: The garment's title; whatever it contains, it cannot end the string or the style sheet.
    """
    safe = "".join(sign if sign.isalnum() or sign == " " else f"\\{ord(sign):x} " for sign in title)
    return (
        f'@page {{ @bottom-center {{ content: "{safe} · " counter(page) " / " counter(pages); '
        "font: 8.5pt Georgia, serif; color: #55514a; } }\n"
    )
