"""How the page looks, on paper above all. Data only; nothing in it is fetched from anywhere.

A tick box holds the number of its round. It is 6 mm wide on paper, enough for a pencil, and 7 mm on a screen,
enough for a finger. Nothing is conveyed by colour alone.
"""

from __future__ import annotations

from typing import Final

STYLE: Final = """
:root { --ink: #1c1b19; --soft: #55514a; --line: #b9b4a9; --wash: #f4f1ea; }
* { box-sizing: border-box; }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0 auto; padding: 8mm 6mm; max-width: 196mm; color: var(--ink); background: #fff;
  font: 10.5pt/1.4 Georgia, "Times New Roman", "Liberation Serif", serif;
  overflow-wrap: anywhere; hyphens: manual; }
h1 { font-size: 23pt; font-weight: normal; line-height: 1.15; margin: 0 0 2mm; }
h2 { font-size: 14pt; font-weight: normal; margin: 6mm 0 2mm; padding-bottom: 0.6mm;
  border-bottom: 0.3mm solid var(--ink); break-after: avoid; }
h3 { font-size: 11.5pt; margin: 4mm 0 1mm; break-after: avoid; }
h3 small { font-weight: normal; color: var(--soft); }
p { margin: 0 0 1mm; }
.cautions { font-style: italic; margin-top: 2mm; }
.lead { color: var(--soft); font-size: 9.5pt; break-after: avoid; }
ul { margin: 0; padding-left: 5mm; }
table { width: 100%; border-collapse: collapse; margin: 0 0 2mm;
  font-variant-numeric: lining-nums tabular-nums; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { text-align: left; vertical-align: top; padding: 0.7mm 1.6mm;
  border-bottom: 0.2mm solid var(--line); }
th { font-weight: normal; }
thead th { color: var(--soft); font-size: 9pt;
  border-bottom: 0.3mm solid var(--soft); vertical-align: bottom; }
td p:last-child, th p:last-child { margin-bottom: 0; }
.figures td { text-align: right; white-space: nowrap; }
.figures thead th + th { text-align: right; }
.terms { columns: 2; column-gap: 8mm; margin: 0; font-size: 9.5pt; }
.terms div { display: flex; gap: 2mm; break-inside: avoid; padding: 0.3mm 0; }
.terms dt { flex: 0 0 13mm; font-weight: bold; }
.terms dd { margin: 0; }
.rounds th[scope=row] { width: 16mm; white-space: nowrap; }
.rounds td:nth-child(3) { width: 23mm; white-space: nowrap; }
.rounds td:nth-child(n+4), .rounds thead th:nth-child(n+4) { width: 48mm; }
.pair td:nth-child(n+4), .pair thead th:nth-child(n+4) { width: 39.5mm; }
.rounds tbody tr:nth-last-child(-n+2), .figures tbody tr:nth-last-child(-n+2) { break-before: avoid; }
.rounds tr.above > * { border-bottom: 0; break-after: avoid; }
.rounds td.many { padding-top: 0; width: auto; }
.whose { color: var(--soft); font-size: 9pt; margin: 0; }
.blank { display: inline-block; width: 11mm; height: 3mm; align-self: flex-end; margin-left: 1mm;
  border-bottom: 0.2mm solid var(--ink); }
.remark, .altered { font-style: italic; }
.count { display: inline-block; border-left: 0.8mm solid var(--ink); padding-left: 1.2mm; margin-left: 1mm; }
.boxes { display: flex; flex-wrap: wrap; gap: 0.4mm; }
.tick { position: relative; display: block; width: 7mm; height: 7mm; }
.tick input { appearance: none; -webkit-appearance: none; display: block; width: 100%; height: 100%;
  margin: 0; border: 0.25mm solid var(--ink); border-radius: 0.8mm; background: #fff; }
.tick span { position: absolute; inset: 0; display: flex; align-items: center; justify-content: center;
  font: 7pt/1 Helvetica, Arial, "Liberation Sans", sans-serif; color: var(--soft); pointer-events: none; }
.tick input:checked { background: linear-gradient(to top right, transparent 44%, var(--ink) 44%,
  var(--ink) 56%, transparent 56%) #fff; }
.tick input:focus-visible { outline: 0.7mm solid #0b57a8; outline-offset: 0.4mm; }
figure { margin: 0; }
figcaption { color: var(--soft); font-size: 9pt; margin-top: 1mm; }
.gallery { display: flow-root; margin: 0 0 2mm; word-spacing: 5mm; }
.picture { display: inline-block; vertical-align: top; max-width: 100%; margin: 0 0 2mm; word-spacing: 0;
  break-inside: avoid; }
.picture.large { float: left; margin-right: 6mm; max-width: calc(100% - 6mm); }
.picture h3 { margin: 0 0 1mm; font-size: 10.5pt; }
svg { display: block; max-width: 100%; height: auto;
  font-family: Helvetica, Arial, "Liberation Sans", sans-serif; }
svg.schematic { width: 100%; max-height: 92mm; }
svg.yoke { width: 100%; }
svg.swatch { display: inline-block; width: 4mm; height: 4mm; vertical-align: -0.7mm; }
.piece { fill: var(--wash); stroke: var(--ink); stroke-linejoin: round; }
.measure { fill: none; stroke: var(--soft); }
.seam { fill: none; stroke: var(--soft); stroke-dasharray: 6 5; }
.schematic text { fill: var(--ink); stroke: none; }
.grid { fill: none; stroke: #77736b; stroke-width: 0.6; }
.repeat { fill: none; stroke: var(--ink); stroke-width: 2.2; }
.number { fill: var(--soft); font-size: 9px; }
.edge { fill: none; stroke: var(--ink); stroke-width: 0.5; }
.legend { display: flex; flex-wrap: wrap; gap: 0.6mm 4mm; list-style: none; padding: 0; }
@media screen and (max-width: 560px) {
  body { padding: 4mm 3mm; }
  th, td { padding: 1.2mm 1mm; }
  .figures td { white-space: normal; }
  .terms { columns: 1; }
  .rounds, .rounds tbody, .rounds tr, .rounds th, .rounds td { display: block; width: auto !important; }
  .rounds thead { position: absolute; left: -9999px; }
  .rounds th, .rounds td { border: 0; padding: 0.5mm 0; }
  .rounds tr { border-bottom: 0.2mm solid var(--line); padding: 1.5mm 0; }
}
@media print {
  body { max-width: none; padding: 0; font-size: 9.5pt; line-height: 1.3; }
  th, td { padding: 0.45mm 1.2mm; }
  thead th, .lead, figcaption, .terms { font-size: 8.5pt; }
  .terms div { padding: 0; }
  .tick { width: 6mm; height: 5mm; }
}
@page { margin: 13mm 13mm 15mm; }
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
