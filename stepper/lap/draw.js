// What is drawn: the round as a row of knit stitches, the chart as squares, the yoke as rings.

const css = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();
const NO_COLOUR = "#a0a0a0";
const PALE = 0.42;           // how much of its colour a stitch to come has

function luminance(colour) {
  const part = at => { const c = parseInt(colour.slice(at, at + 2), 16) / 255; return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; };
  return 0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5);
}

/** Black or white, whichever reads better: WCAG 2, "contrast ratio". */
export function inkOn(colour) {
  const light = luminance(colour);
  return 1.05 / (light + 0.05) > (light + 0.05) / 0.05 ? "#ffffff" : "#000000";
}

/** Get a canvas ready for drawing in CSS pixels. */
function prepare(canvas, wide, high) {
  const fine = Math.min(3, devicePixelRatio || 1);
  canvas.width = Math.round(wide * fine);
  canvas.height = Math.round(high * fine);
  canvas.style.height = `${high}px`;
  const pen = canvas.getContext("2d");
  pen.setTransform(fine, 0, 0, fine, 0, 0);
  pen.clearRect(0, 0, wide, high);
  return pen;
}

const colourOf = (yarns, number) => (yarns[number] && yarns[number].colour) || NO_COLOUR;

/** The round as knit stitches, right to left as they are worked: those done in full colour, those to come pale. */
export function drawRibbon(canvas, sight) {
  const wide = canvas.clientWidth, high = Math.max(16, canvas.clientHeight);
  const pen = prepare(canvas, wide, high);
  const many = Math.max(1, Math.floor(wide / (high * 0.8))), step = wide / many;
  const turned = Boolean(sight.strip && sight.strip.turned);
  const hand = sight.hand.length ? sight.hand : [0];
  const done = Math.floor(sight.worked * many + 1e-9);
  const edge = css("--edge"), ink = css("--ink");
  pen.lineWidth = 1;
  pen.strokeStyle = edge;
  for (let at = 0; at < many; at++) {
    const x = turned ? at * step : wide - (at + 1) * step;
    pen.fillStyle = colourOf(sight.yarns, hand[at % hand.length]);
    for (const side of [-1, 1]) {
      pen.beginPath();
      pen.ellipse(x + step * (0.5 + side * 0.23), high * 0.5, step * 0.14, high * 0.42, side * 0.34, 0, 2 * Math.PI);
      pen.globalAlpha = at < done ? 1 : PALE * 0.6;
      pen.fill();
      pen.globalAlpha = 1;
      pen.stroke();
    }
    if (at === done) { pen.fillStyle = ink; pen.fillRect(turned ? x : x + step - 3, 0, 3, high); }
  }
  pen.fillStyle = ink;
  for (const mark of sight.marks) {
    pen.beginPath();
    pen.arc(turned ? mark * wide : wide - mark * wide, 4, 4, 0, 2 * Math.PI);
    pen.fill();
  }
  canvas.setAttribute("aria-label", `${Math.floor(sight.worked * 100)} % of the round is worked.`);
}

const LABEL = 40;
/** How wide a square is, and for how many there is room. */
export function measureSquares(canvas) {
  const room = Math.max(1, canvas.clientWidth - LABEL);
  const size = Math.max(14, Math.min(40, Math.floor(room / 32)));
  return { size, room: Math.max(4, Math.floor(room / size)) };
}

/** The rounds there is room for around the one in hand. */
function nearest(rows, size) {
  const most = Math.max(3, Math.floor(innerHeight * 0.13 / size)), here = rows.findIndex(row => row.here);
  const first = Math.max(0, Math.min(here - Math.floor(most / 2), rows.length - most));
  return rows.slice(first, first + most);
}

/** The chart around the step, read from its right edge as charts are. */
export function drawSquares(canvas, sight) {
  const strip = sight.strip, { size } = measureSquares(canvas);
  const wide = canvas.clientWidth;
  if (!strip) { prepare(canvas, wide, 1); canvas.setAttribute("aria-label", "No round is in hand."); return; }
  const foot = Math.round(size * 0.6), rows = nearest(strip.rows, size), here = rows.findIndex(row => row.here);
  const pen = prepare(canvas, wide, rows.length * size + foot);
  const right = wide - LABEL;
  pen.textAlign = "center";
  pen.textBaseline = "middle";
  rows.forEach((row, number) => {
    const top = number * size + (number > here ? foot : 0);
    let at = 0;
    for (const [yarn, sign, many] of row.runs) {
      const colour = colourOf(sight.yarns, yarn);
      const letter = sign || (yarn > 0 ? sight.yarns[yarn].sign : "");
      for (let each = 0; each < many; each++, at++) {
        const x = right - (at + 1) * size;
        pen.globalAlpha = row.here || number > here ? 1 : PALE;
        pen.fillStyle = colour;
        pen.fillRect(x, top, size - 1, size - 1);
        if (letter && size >= 12) {
          pen.fillStyle = inkOn(colour);
          pen.font = `${row.here ? 700 : 400} ${Math.round(size * 0.62)}px sans-serif`;
          pen.fillText(letter, x + size / 2, top + size / 2);
        }
      }
    }
    pen.globalAlpha = 1;
    pen.fillStyle = css(row.here ? "--ink" : "--soft");
    pen.font = `${row.here ? 700 : 400} ${Math.min(16, size)}px sans-serif`;
    pen.fillText(`${row.number}${row.here ? " ◂" : ""}`, right + LABEL / 2, top + size / 2);
  });
  const top = here * size, first = strip.step[0] - strip.first, end = Math.min(strip.step[1] - strip.first, strip.wide);
  pen.strokeStyle = css("--ink");
  pen.lineWidth = 2;
  pen.strokeRect(right - strip.wide * size - 1, top - 1, strip.wide * size + 1, size + 1);
  pen.fillStyle = css("--ink");
  if (end > Math.max(0, first)) pen.fillRect(right - end * size, top + size + 2, (end - Math.max(0, first)) * size - 1, Math.max(4, foot * 0.45));
  for (const mark of strip.markers) pen.fillRect(right - (mark - strip.first) * size - 1, top - 3, 3, size + foot);
  const name = sight.round.toLowerCase();
  canvas.setAttribute("aria-label",
    `Chart: ${name} with the rounds around it; stitches ${strip.step[0] + 1} to ${strip.step[1]} are the step in hand.`);
}

/** The yoke as it would lie on a table: neck inside, centre back at the top, worked clockwise. */
export function drawYoke(canvas, yoke, sight) {
  const size = canvas.clientWidth, middle = size / 2, outer = middle - 2;
  const pen = prepare(canvas, size, size);
  const many = yoke.rings.length, thick = outer * (1 - yoke.inner) / many;
  const { ring: now, stitch } = sight.yoke;
  yoke.rings.forEach((runs, ring) => {
    const near = outer * yoke.inner + ring * thick, far = near + thick + 0.4;
    const total = runs.reduce((sum, run) => sum + run[1], 0);
    let at = 0;
    const arc = (from, to, yarn, done) => {
      if (to <= from) return;
      const a = from / total * 2 * Math.PI - Math.PI / 2, b = to / total * 2 * Math.PI - Math.PI / 2;
      pen.globalAlpha = done ? 1 : PALE;
      pen.fillStyle = colourOf(sight.yarns, yarn);
      pen.beginPath();
      pen.arc(middle, middle, far, a, b);
      pen.arc(middle, middle, near, b, a, true);
      pen.fill();
    };
    for (const [yarn, length] of runs) {
      const cut = ring < now ? at + length : ring > now ? at : Math.min(at + length, Math.max(at, stitch));
      arc(at, cut, yarn, true);
      arc(cut, at + length, yarn, false);
      at += length;
    }
  });
  pen.globalAlpha = 1;
  if (now >= 0 && now < many) {
    pen.strokeStyle = css("--ink");
    pen.lineWidth = 2;
    pen.beginPath();
    pen.arc(middle, middle, outer * yoke.inner + (now + 0.5) * thick, 0, 2 * Math.PI);
    pen.stroke();
  }
  const done = Math.max(0, Math.min(many, now));
  canvas.setAttribute("aria-label", `The yoke from above: ${done} of ${many} rounds are worked.`);
}
