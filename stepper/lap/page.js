// The page: shows what the sitting sends, and turns touches into what is asked. All text is set as text.
import { Live } from "./live.js";
import { drawRibbon, drawSquares, drawYoke, inkOn, measureSquares } from "./draw.js";

const BOUNCE_MS = 250;       // two touches of one field closer together than this are one
const LONGEST_NUMBER = 4;
const SMALLEST_PX = 18;      // the step is never smaller; the page is scrolled instead
const SURE_MS = 8000;
const CUES = [["redo", "Do it again after all"], ["again", "Say it again, slower"], ["where", "Where am I"],
  ["how many", "How many stitches"], ["how far", "How far to go"], ["spacing", "Where the changes are"], ["marker", "I am at the next marker"]];

const $ = id => document.getElementById(id);
let sight = null, yoke = null, yokeOf = -1, said = "", figures = sessionStorage.getItem("figures") || "", sure = 0;
const last = {};

function make(tag, text, more = {}) {
  const made = Object.assign(document.createElement(tag), more);
  made.textContent = text;
  return made;
}

const live = new Live({
  sight: show,
  state: showState,
  would: showMeaning,
  outcome: (touch, outcome) => {
    if (outcome !== "taken") { tell("It had moved on meanwhile; that touch is not counted."); return; }
    if (touch.ask === "note") { $("note").value = ""; sessionStorage.removeItem("note"); fold(); }
    if (["count", "part", "ten", "choose"].includes(touch.ask)) { setFigures(""); if (touch.ask !== "ten") fold(); }
  },
  over: (sentence, ended) => { said = sentence; document.body.dataset.over = ended ? "yes" : ""; showState(); },
});

// What is shown

function show(next) {
  const before = sight;
  sight = next;
  document.title = `${next.round || next.section} · ${next.title}`;
  put("title", next.title);
  put("section", next.section);
  put("round", next.round);
  put("where", next.where.join(" · "));
  put("facts", next.facts.join(" · "));
  put("badge", next.count.word).className = `badge ${next.count.badge}`;
  put("detail", next.count.detail);
  showSenses(next);
  showQuestion(next);
  list($("told"), [...(next.heard ? [make("p", next.heard, { className: "heard" })] : []), ...next.told.map(line => make("p", line))]);
  showFields(next);
  list($("facts-ahead"), [...next.ahead, ...next.progress.map(([name, share, left]) => [name, `${Math.floor(share * 100)} %${left ? `, ${left}` : ""}`])]
    .map(([name, value]) => { const fact = document.createElement("div"); fact.append(make("dt", name), make("dd", value)); return fact; }));
  showYarns(next);
  if (before && before.view !== next.view && next.view === "yoke") unfold("yoke", true);
  if (before && before.view !== next.view && next.view === "chart") $("chart").scrollIntoView({ block: "end" });
  showStep(next, before);
  draw();
  if (figures) live.foresee(Number(figures));
}

function put(id, text) {
  const place = $(id);
  if (place.textContent !== text) place.textContent = text;
  return place;
}

/** Put elements in a place, unless the same are there, so that nothing is read out twice. */
function list(place, elements) {
  const text = elements.map(each => each.outerHTML).join("");
  if (place.dataset.has === text) return;
  place.dataset.has = text;
  place.replaceChildren(...elements);
}

function showStep(next, before) {
  const lines = [...next.before.map(line => ["before badge asks", line]), ...next.step.map((line, at) => [at ? "then" : "", line]), ...next.minded.map(line => ["minded", line])];
  list($("step"), lines.map(([name, line]) => make("p", line, { className: name })));
  if (before && (before.place[0] !== next.place[0] || before.place[1] !== next.place[1])) {
    $("step").classList.remove("new");
    void $("step").offsetWidth;
    $("step").classList.add("new");
  }
}

function showSenses(next) {
  const senses = [next.ears, next.mouth].filter(each => each.says).map(each => {
    const item = document.createElement("li");
    item.append(make("span", each.says, { className: each.badge === "none" ? "" : `badge ${each.badge}` }));
    if (each.why) item.append(`: ${each.why}`);
    return item;
  });
  if (next.film) senses.push(make("li", "Film on: say the address word first"));
  list($("senses"), senses);
}

function showQuestion({ question, told }) {
  $("question").hidden = !question;
  if (!question) return;
  put("asked", question.title);
  put("asks", told.join(" ").includes(question.says) ? "" : question.says);
  const text = JSON.stringify(question);
  if ($("choices").dataset.has === text) return;
  $("choices").dataset.has = text;
  $("choices").replaceChildren(...question.choices.map(choice => {
    const item = document.createElement("li"), button = make("button", choice.says, { type: "button" });
    button.addEventListener("click", () => ask(choice.ask, { value: choice.value, text: choice.text }));
    item.append(button);
    return item;
  }));
}

function showFields(next) {
  const asleep = next.asleep;
  put("next", asleep ? "Listen again" : next.round ? "Next step" : "Finished");
  $("back").hidden = asleep;
  $("undo").disabled = !next.undo;
  put("send", next.number.ask === "count" ? "Send the count" : next.number.ask === "ten" ? "Add to the count" : "Send the number");
  $("cues").replaceChildren(...[...CUES, asleep ? ["listen", "Open the ears"] : ["wait", "Close the ears"]].map(([name, words]) => {
    const button = make("button", words, { type: "button" });
    button.addEventListener("click", () => ask(name));
    return button;
  }));
}

function showYarns(next) {
  list($("yarns"), next.yarns.map((yarn, at) => {
    const item = make("li", `${yarn.sign}  ${yarn.name}${next.hand.includes(at) ? ", in hand" : ""}`, { className: next.hand.includes(at) ? "hand" : "" });
    if (yarn.colour) { item.style.background = yarn.colour; item.style.color = inkOn(yarn.colour); }
    return item;
  }));
}

function showState() {
  const state = document.body.dataset.over === "yes" ? "over" : live.open ? "open" : "lost";
  document.body.dataset.state = state;
  if (live.pending) document.body.dataset.pending = "yes";
  else delete document.body.dataset.pending;
  if (state === "open") said = "";
  put("lost", said || (state === "lost" && (sight || live.failures) ? "No connection to the computer. Touches are not counted until it is back." : ""));
}

/** Tell something of the page's own, beside what the sitting told. */
function tell(sentence) {
  delete $("told").dataset.has;
  $("told").replaceChildren(make("p", sentence));
}

function showMeaning(meant) {
  if (String(meant.number) !== figures) return;
  put("would", meant.says);
}

// What is drawn and how large

/** Make the step as large as its place allows. */
function fit() {
  const place = $("now"), step = $("step");
  place.style.minHeight = "";
  let least = SMALLEST_PX, most = Math.max(least, Math.min(place.clientHeight, place.clientWidth / 3));
  const fits = size => {
    step.style.fontSize = `${size}px`;
    const high = [...step.children].reduce((sum, each) => sum + each.getBoundingClientRect().height, 0) + (step.children.length - 1) * size * 0.12;
    return high <= place.clientHeight && [...step.children].every(each => each.scrollWidth <= place.clientWidth + 1) && wholeWords(size);
  };
  if (!fits(least)) { place.style.minHeight = `${step.scrollHeight + 8}px`; return; }
  while (most - least > 1) {
    const middle = (least + most) / 2;
    if (fits(middle)) least = middle; else most = middle;
  }
  step.style.fontSize = `${Math.floor(least)}px`;
}

const ruler = document.createElement("canvas").getContext("2d");
/** Whether every word of the step goes on one line at a size, so that none is broken. */
function wholeWords(size) {
  const style = getComputedStyle($("step"));
  ruler.font = `${style.fontWeight} ${size}px ${style.fontFamily}`;
  const wide = $("now").clientWidth - size * 0.6;
  return sight.step.every(line => line.split(" ").every(word => ruler.measureText(word).width <= wide));
}

function draw() {
  if (!sight) return;
  fit();
  drawRibbon($("ribbon"), sight);
  drawSquares($("squares"), sight);
  live.fit(measureSquares($("squares")).room);
  $("above").hidden = !sight.yoke;
  if (sight.yoke && !$("yoke").hidden) drawRings();
}

async function drawRings() {
  if (yokeOf !== sight.edition) {
    const wanted = sight.edition;
    const answer = await fetch("yoke.json");
    if (!answer.ok) return;
    yoke = await answer.json();
    yokeOf = wanted;
  }
  if (yoke) drawYoke($("rings"), yoke, sight);
}

let due = 0;
new ResizeObserver(() => { cancelAnimationFrame(due); due = requestAnimationFrame(draw); }).observe(document.documentElement);
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", draw);

// What is touched

function ask(name, more = {}) {
  const now = performance.now(), bounced = last.name === name && now - last.at < BOUNCE_MS;
  last.name = name;
  last.at = now;
  if (bounced) return false;
  if (!live.open) { tell("No connection to the computer; that touch is not counted."); return false; }
  return live.ask(name, sight, more);
}

const step = () => ask(sight && sight.asleep ? "listen" : "next");
$("next").addEventListener("click", step);
$("back").addEventListener("click", () => ask("back"));
$("undo").addEventListener("click", () => ask("undo"));

const PANELS = { counting: "to-count", noting: "to-note", more: "to-more" };
const SHOWN = { yoke: "above", "let-in": "code" };

/** Close what is open beside the step. */
function fold() {
  for (const [panel, button] of Object.entries(PANELS)) {
    $(panel).hidden = true;
    $(button).setAttribute("aria-expanded", "false");
  }
  draw();
}

function unfold(panel, open) {
  const button = $({ ...PANELS, ...SHOWN }[panel]);
  if (panel in PANELS) fold();
  $(panel).hidden = !open;
  button.setAttribute("aria-expanded", String(open));
  draw();
}

for (const [panel, button] of Object.entries({ ...PANELS, ...SHOWN })) {
  $(button).addEventListener("click", () => {
    unfold(panel, $(panel).hidden);
    if (!$(panel).hidden) $(panel).scrollIntoView({ block: "nearest" });
    if (panel === "noting" && !$(panel).hidden) $("note").focus();
  });
}

function setFigures(next) {
  figures = next.replace(/^0+(?=\d)/, "").slice(-LONGEST_NUMBER);
  sessionStorage.setItem("figures", figures);
  put("figures", figures || "–");
  if (figures) live.foresee(Number(figures));
  else put("would", "");
}

for (const key of ["1", "2", "3", "4", "5", "6", "7", "8", "9", "Clear", "0", "⌫"]) {
  const button = make("button", key, { type: "button" });
  if (key === "⌫") button.setAttribute("aria-label", "Take the last figure away");
  button.addEventListener("click", () => setFigures(key === "Clear" ? "" : key === "⌫" ? figures.slice(0, -1) : figures + key));
  $("pad").append(button);
}
$("send").addEventListener("click", () => { if (figures && sight) ask(sight.number.ask, { value: Number(figures) }); });

$("note").value = sessionStorage.getItem("note") || "";
$("note").addEventListener("input", () => sessionStorage.setItem("note", $("note").value));
$("keep").addEventListener("click", () => { if ($("note").value.trim()) ask("note", { text: $("note").value }); });

function sayWords() {
  const text = $("words").value.trim();
  if (text && ask("words", { text })) $("words").value = "";
}
$("say").addEventListener("click", sayWords);
$("words").addEventListener("keydown", event => { if (event.key === "Enter") sayWords(); });

$("stop").addEventListener("click", () => {
  if (sure) { clearTimeout(sure); sure = 0; put("stop", "Stop for tonight"); ask("enough"); return; }
  put("stop", "Touch again to stop for tonight");
  sure = setTimeout(() => { sure = 0; put("stop", "Stop for tonight"); }, SURE_MS);
});

// A pedal or a keyboard joined to this device: the keys of the terminal.
document.addEventListener("keydown", event => {
  const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
  if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
  const key = event.key;
  if (key === "PageDown" || (!typing && key === "ArrowRight")) step();
  else if (key === "PageUp" || (!typing && key === "ArrowLeft")) ask("back");
  else if (key === "Escape") fold();
  else if (event.target === document.body && (key === " " || key === "Enter")) step();
  else if (!typing && /^[0-9]$/.test(key)) { unfold("counting", true); setFigures(figures + key); }
  else return;
  event.preventDefault();
});

// What the browser allows

async function stayAwake() {
  if (!("wakeLock" in navigator) || document.hidden) return false;
  try { await navigator.wakeLock.request("screen"); return true; } catch { return false; }
}

async function begin() {
  const here = ["127.0.0.1", "localhost"].includes(location.hostname);
  put("microphone", here ? "The computer listens and speaks; this page shows what it heard."
    : "The computer listens and speaks. This device's microphone is not used: browsers ask for a certificate for that, and a home network has none.");
  const awake = await stayAwake();
  put("awake", awake ? "The screen stays awake while this page is open."
    : isSecureContext ? "This browser may let the screen go dark."
      : "This device's screen may go dark: a browser keeps it awake only over a connection with a certificate, which a home network has none of. Set it to stay on.");
  document.addEventListener("visibilitychange", stayAwake);
  const where = await (await fetch("where.json")).json();
  if (where.url) { $("code").hidden = false; $("qr").src = "code.svg"; put("url", where.url); }
}

setFigures(figures);
if (figures) unfold("counting", true);
showState();
begin();
