// heard.js: the recording and its captions, which follow along; words that were misheard are corrected here.
// SPDX-License-Identifier: MIT
import { byId, clock, h, lastUpTo } from "./parts.js";
import { change, state, trouble } from "./main.js";

let player = null;
let rows = []; // one a cue, as far as they are made
let drawn = []; // the cues that they show
let current = -1; // the cue whose buttons Tab reaches; arrow keys lead to the others
let words = []; // one span a word, of the cues that were in sight
let now = -1; // the word being said
let mending = null; // {first, last} while words are being corrected
let until = Infinity; // what is played ends there: a passage, not the rest of the evening
const TAIL_SECONDS = 1.5;
const LEAD_SECONDS = 0.4; // a little before the word, so that its first sound is heard

export function begin(media, pictures) {
  const place = byId("player");
  if (!media) {
    place.replaceChildren(h("p", { class: "quiet" }, "No video or audio was named (--video FILE): the captions follow instead."));
    return;
  }
  player = h(pictures ? "video" : "audio", { controls: true, preload: "metadata", src: media, "aria-label": "The recording" });
  player.addEventListener("timeupdate", follow);
  player.addEventListener("seeked", follow);
  player.addEventListener("pause", () => (until = Infinity)); // pressed again, it goes on
  player.addEventListener("error", () => trouble("The browser cannot play this file; the captions follow instead."));
  place.replaceChildren(player);
}

function mark(word, scroll) {
  if (word === now) return;
  spanOf(now)?.classList.remove("now");
  now = word;
  const span = spanOf(now);
  span?.classList.add("now");
  if (span && !byId("captions").contains(document.activeElement)) reach(Number(span.closest(".cue").dataset.cue));
  if (scroll && !mending) bring(spanOf(now)); // what is being corrected stays in sight
}

// Scrolls the captions and nothing else, as far as they are in the window. Rows that were never seen are of a guessed height, so it looks
// again once they are drawn.
function bring(element, looks = 3) {
  if (!element?.isConnected || !looks) return;
  const cue = (element.closest(".cue") ?? element).getBoundingClientRect();
  const box = byId("captions").getBoundingClientRect();
  const seen = box.bottom > 80 && box.top < innerHeight - 80;
  const [top, bottom] = seen ? [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)] : [box.top, box.bottom];
  if (cue.top >= top && cue.bottom <= bottom) return;
  byId("captions").scrollTop += cue.top - top - (bottom - top) / 3;
  requestAnimationFrame(() => bring(element, looks - 1));
}

function follow() {
  if (!state.words || !player) return;
  if (player.currentTime > until && !player.paused) player.pause();
  mark(lastUpTo(state.words.times, player.currentTime + 0.05), !player.paused);
}

// Shows the words from there on, without playing.
export function showAt(word) {
  bring(spanOf(word));
  mark(word, false);
}

export const time = () => (player ? player.currentTime : now >= 0 ? state.words.times[now] : 0);

// Plays from a second on, with `span` these words only; without a recording its words are shown.
export function play(seconds, span = null) {
  const word = span ? span[0] : lastUpTo(state.words.times, seconds + 0.01);
  byId("captions").querySelectorAll(".spoken").forEach((e) => e.classList.remove("spoken"));
  if (span) for (let i = span[0]; i <= span[1] && i - span[0] < 80; i++) spanOf(i)?.classList.add("spoken");
  bring(spanOf(word));
  mark(word, false);
  if (!player) return;
  until = span ? (state.words.times[span[1] + 1] ?? Infinity) + TAIL_SECONDS : Infinity;
  player.currentTime = Math.max(0, seconds - LEAD_SECONDS);
  player.play().catch(() => {});
}

export function toggle() {
  if (player) player.paused ? player.play().catch(() => {}) : player.pause();
}

// ---- captions

function wordSpan(text, number) {
  const corrected = Array.isArray(text);
  const span = h("span", { class: corrected ? "w corrected" : "w", title: corrected ? `captioned: ${text[1]}` : null }, corrected ? text[0] : text);
  span.dataset.n = number;
  words[number] = span;
  return span;
}

// A cue is its words as text, which can be searched, until it comes near to sight; then it has a span a word and its buttons.
function cueRow([, , first, speaker, ...texts], i) {
  const row = h("p", { class: "cue" }, h("span", { class: "talk" }, talkOf(speaker), texts.map((t) => (Array.isArray(t) ? t[0] : t)).join("")));
  row.dataset.first = first;
  row.dataset.count = texts.length;
  row.dataset.cue = i;
  return row;
}

const talkOf = (speaker) => (speaker && !/^--?$/.test(speaker) ? h("b", {}, `${speaker}: `) : "");

function fill(row) {
  near.unobserve(row);
  if (row.querySelector("button")) return;
  const [, start, first, speaker, ...texts] = state.words.cues[row.dataset.cue];
  const tabindex = Number(row.dataset.cue) === current ? null : -1;
  row.replaceChildren(h("button", { type: "button", class: "time", tabindex, "data-at": `cue-${first}`, "aria-label": `Play from ${clock(start)}` }, clock(start)),
    h("span", { class: "talk" }, talkOf(speaker), texts.map((text, i) => wordSpan(text, first + i))),
    h("button", { type: "button", class: "small mend-words", tabindex, "data-at": `mend-${first}`, "aria-label": `Correct words at ${clock(start)}` }, "Correct"));
}

const near = new IntersectionObserver((seen) => seen.forEach((s) => s.isIntersecting && fill(s.target)), { root: byId("captions"), rootMargin: "800px" });

function spanOf(word) {
  if (words[word] || word < 0) return words[word];
  const cue = lastUpTo(state.words.cues, word, (c) => c[2]);
  makeRows(cue + 1);
  if (rows[cue]) fill(rows[cue]);
  return words[word];
}

const ROWS_AT_ONCE = 120;

// Rows up to there; what is far down waits, so that the page can be used before.
function makeRows(end) {
  const from = rows.length;
  for (let i = from; i < Math.min(end, drawn.length); i++) rows.push(cueRow(drawn[i], i));
  byId("captions").append(...rows.slice(from));
  for (const row of rows.slice(from)) near.observe(row);
}

function makeTheRest(cues) {
  if (cues !== drawn || rows.length >= drawn.length) return;
  makeRows(rows.length + ROWS_AT_ONCE);
  setTimeout(makeTheRest, 0, cues);
}

// Corrected words leave their numbers and cues as they were, so only the rows that differ are made anew.
function drawChanged(cues) {
  const before = drawn;
  drawn = cues;
  rows.forEach((row, i) => {
    if (JSON.stringify(cues[i]) === JSON.stringify(before[i])) return;
    if (row.contains(byId("mend-words"))) mending = null;
    for (let n = 0; n < Number(row.dataset.count); n++) delete words[Number(row.dataset.first) + n];
    near.unobserve(row);
    rows[i] = cueRow(cues[i], i);
    row.replaceWith(rows[i]);
    near.observe(rows[i]);
  });
  now = -1;
}

export function draw() {
  const cues = state.words.cues;
  if (drawn.length && cues.length === drawn.length) {
    drawChanged(cues);
    setTimeout(makeTheRest, 0, cues);
    return;
  }
  near.disconnect();
  rows = [];
  words = [];
  now = current = -1;
  mending = null;
  drawn = cues;
  byId("captions").replaceChildren();
  makeRows(ROWS_AT_ONCE);
  reach(0);
  setTimeout(makeTheRest, 0, cues);
}

// ---- one caption is reached by Tab, the others from it by arrow keys

function reach(cue) {
  if (cue === current || !rows[cue]) return;
  rows[current]?.querySelectorAll("button").forEach((b) => (b.tabIndex = -1));
  current = cue;
  fill(rows[cue]);
  rows[cue].querySelectorAll(":scope > button").forEach((b) => (b.tabIndex = 0));
}

function onArrow(event) {
  const by = { ArrowUp: -1, ArrowDown: 1, PageUp: -8, PageDown: 8, Home: -drawn.length, End: drawn.length }[event.key];
  const row = event.target.closest(".cue");
  if (!by || !row || event.target.closest("form")) return;
  event.preventDefault();
  const to = Math.min(drawn.length - 1, Math.max(0, Number(row.dataset.cue) + by));
  makeRows(to + 1);
  reach(to);
  rows[to].querySelector(event.target.matches(".time") ? ".time" : ".mend-words").focus();
  bring(rows[to]);
}

byId("captions").addEventListener("keydown", onArrow);
byId("captions").addEventListener("focusin", (e) => e.target.closest(".cue") && reach(Number(e.target.closest(".cue").dataset.cue)));

function onClick(event) {
  const row = event.target.closest(".cue");
  if (!row || event.target.closest("form")) return;
  const first = Number(row.dataset.first);
  if (event.target.closest(".mend-words")) openForm(row, first, first);
  else if (event.target.closest(".time")) play(state.words.times[first]);
  else if (event.target.dataset.n) {
    const n = Number(event.target.dataset.n);
    play(state.words.times[n], [n, n]);
    if (event.detail === 2) openForm(row, n, n);
  }
}

byId("captions").addEventListener("click", onClick);

// ---- correcting words

function closeForm() {
  const form = byId("mend-words");
  const row = form?.closest(".cue");
  form?.remove();
  mending = null;
  row?.querySelector(".mend-words")?.focus();
}

const bare = (text) => text.replace(/[^\p{L}\p{N}'’%°½¼¾⅓⅔⅛/.-]+$/u, "").replace(/[.-]+$/, "");

function chosenText() {
  let text = "";
  for (let i = mending.first; i <= mending.last; i++) text += words[i].textContent;
  return bare(text.trim());
}

// The first press chooses a word, the next one the words up to there.
function press(n, form) {
  const one = mending.first === mending.last && n > mending.first && n - mending.first < 12;
  if (one) mending.last = n;
  else mending.first = mending.last = n;
  form.querySelectorAll(".pick").forEach((b) => {
    const i = Number(b.dataset.n);
    b.setAttribute("aria-pressed", String(i >= mending.first && i <= mending.last));
  });
  form.elements.reading.value = chosenText();
}

async function send(event, everywhere) {
  event.preventDefault();
  const value = byId("mend-words").elements.reading.value.trim();
  if (!value) return trouble("Write the words as they were said.");
  const { cue } = byId("mend-words").closest(".cue").dataset;
  if (!(await change({ kind: "word", on: [mending.first, mending.last], value, everywhere }))) return false;
  closeForm(); // the words were what they are now already: the row is as it was
  fill(rows[cue]);
  return rows[cue].querySelector(".mend-words").focus();
}

// Words that may be misheard, with what they were read as.
export function correct([first, last], readings) {
  play(state.words.times[first], [first, last]);
  const row = rows[lastUpTo(state.words.cues, first, (cue) => cue[2])];
  openForm(row, Number(row.dataset.first), first, last, readings);
}

function openForm(row, first, chosen, last = chosen, readings = []) {
  closeForm();
  mending = { first: chosen, last: Math.min(last, first + Number(row.dataset.count) - 1) };
  const picks = Array.from({ length: Number(row.dataset.count) }, (_, i) => {
    const n = first + i;
    const button = h("button", { type: "button", class: "pick", "aria-pressed": String(n >= chosen && n <= mending.last) }, bare(words[n].textContent) || "…");
    button.dataset.n = n;
    return button;
  });
  const form = h("form", { id: "mend-words", class: "form", onsubmit: (e) => send(e, false) },
    h("fieldset", {}, h("legend", {}, "Which words are wrong? Press the first, then the last."), picks),
    h("label", {}, "They were said as ", h("input", { name: "reading", autocomplete: "off", required: true, value: readings.length === 1 ? readings[0] : chosenText() })),
    readings.length > 1 && h("div", { class: "row" }, "It was ", readings.map((text) => h("button", { type: "button", onclick: () => (form.elements.reading.value = text) }, text))),
    h("div", { class: "row" }, h("button", { class: "main" }, "Correct here"),
      h("button", { type: "button", onclick: (e) => send(e, true) }, "Correct everywhere"),
      h("button", { type: "button", onclick: closeForm }, "Leave it as it was")));
  form.addEventListener("click", (e) => e.target.dataset.n && press(Number(e.target.dataset.n), form));
  form.addEventListener("keydown", (e) => e.key === "Escape" && closeForm());
  row.append(form);
  form.scrollIntoView({ block: "nearest" });
  (readings.length === 1 ? form.elements.reading : form.querySelector('[aria-pressed="true"]') ?? form.elements.reading).focus();
}
