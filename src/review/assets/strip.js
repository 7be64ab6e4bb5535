// strip.js: the dishes along the recording. A border is moved by hand, by arrow keys, or by the buttons below.
// SPDX-License-Identifier: MIT
import { byId, clock, h, lastUpTo, swap } from "./parts.js";
import { change, choose, currentDish, state, trouble } from "./main.js";
import * as heard from "./heard.js";
import * as recipe from "./recipe.js";

const WAIT_MS = 500; // after the last arrow key, before the border is moved
let waiting = null;

const sentenceStart = (i) => state.words.times[state.words.sentences[i]];
const sentenceOf = (word) => lastUpTo(state.words.sentences, word);
const percent = (seconds) => `${Math.min(100, Math.max(0, (seconds / Math.max(1, state.page.length)) * 100))}%`;

// The word that a border is at: the first or the last one of the dish.
const borderWord = (dish, edge) => (edge === "start" ? dish.words[0] : dish.words[1]);

async function move(dish, edge, sentence) {
  const i = Math.min(state.words.sentences.length - 1, Math.max(0, sentence));
  const word = state.words.sentences[i];
  shown.line = ""; // a handle stands where it was moved to, which may not be where it may stay
  const done = await change({ kind: "dish-border", on: dish.id, field: edge, to: [word, word] });
  if (!done) draw();
  return done;
}

export const nudge = (dish, edge, by) => move(dish, edge, sentenceOf(borderWord(dish, edge)) + by);

export function moveHere(dish, edge) {
  const word = lastUpTo(state.words.times, heard.time() + 0.01);
  return move(dish, edge, sentenceOf(Math.max(0, word)));
}

function showHandle(handle, sentence, edge) {
  const next = Math.min(sentence + (edge === "end" ? 1 : 0), state.words.sentences.length - 1);
  const seconds = edge === "end" && sentence === state.words.sentences.length - 1 ? state.page.length : sentenceStart(next);
  handle.style.left = percent(seconds);
  handle.setAttribute("aria-valuenow", sentence);
  handle.setAttribute("aria-valuetext", clock(seconds));
  handle.dataset.clock = clock(seconds);
  handle.dataset.sentence = sentence;
}

function onArrow(event, handle, dish, edge) {
  const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 }[event.key];
  if (!by) return;
  event.preventDefault();
  const to = Math.min(state.words.sentences.length - 1, Math.max(0, Number(handle.dataset.sentence) + by));
  showHandle(handle, to, edge);
  heard.showAt(state.words.sentences[to]);
  clearTimeout(waiting);
  waiting = setTimeout(() => move(dish, edge, to), WAIT_MS);
}

function onDrag(event, handle, dish, edge) {
  event.preventDefault();
  handle.focus();
  handle.classList.add("held");
  handle.setPointerCapture(event.pointerId);
  const line = handle.parentElement.getBoundingClientRect();
  const from = Number(handle.dataset.sentence);
  const drag = (e) => {
    const seconds = ((e.clientX - line.left) / line.width) * state.page.length;
    const word = lastUpTo(state.words.times, Math.max(0, seconds));
    const to = Math.max(0, sentenceOf(Math.max(0, word)));
    showHandle(handle, to, edge);
    heard.showAt(state.words.sentences[to]);
  };
  const stop = (e) => {
    handle.classList.remove("held");
    handle.removeEventListener("pointermove", drag);
    handle.removeEventListener("pointerup", stop);
    handle.removeEventListener("pointercancel", stop);
    if (e.type === "pointerup" && Number(handle.dataset.sentence) !== from) move(dish, edge, Number(handle.dataset.sentence));
    else showHandle(handle, from, edge);
  };
  handle.addEventListener("pointermove", drag);
  handle.addEventListener("pointerup", stop);
  handle.addEventListener("pointercancel", stop);
}

function handleOf(dish, edge) {
  const handle = h("div", {
    class: `handle ${edge}`, role: "slider", tabindex: 0, "data-at": `${edge}-${dish.id}`, "aria-orientation": "horizontal",
    "aria-label": edge === "start" ? `${dish.title} begins` : `${dish.title} ends`,
    "aria-valuemin": 0, "aria-valuemax": state.words.sentences.length - 1,
  });
  handle.addEventListener("keydown", (e) => onArrow(e, handle, dish, edge));
  handle.addEventListener("pointerdown", (e) => onDrag(e, handle, dish, edge));
  showHandle(handle, sentenceOf(borderWord(dish, edge)), edge);
  return handle;
}

const ends = (count) => (count ? `${count} loose ${count === 1 ? "end" : "ends"}` : "no loose ends");

async function pick(dish) {
  if (!(await recipe.leave())) return;
  choose(dish.id);
  heard.play(dish.start);
}

function block(dish, span, number) {
  const chosen = dish.id === currentDish()?.id;
  const piece = h("div", { class: `piece${chosen ? " chosen" : ""}${dish.approved ? " approved" : ""}`, "aria-hidden": "true", title: `${number}. ${dish.title}`, onclick: () => pick(dish) }, h("span", { class: number > 9 ? "wide" : null }, String(number)));
  piece.style.left = percent(span.start);
  piece.style.width = percent(span.end - span.start);
  return piece;
}

function tab(dish, i, open) {
  const chosen = dish.id === currentDish()?.id;
  return h("li", {}, h("button", {
    type: "button", "data-at": `dish-${dish.id}`, class: "tab", "aria-current": chosen ? "true" : null,
    onclick: () => pick(dish),
  }, h("b", {}, `${i + 1}. ${dish.title}`), h("small", {}, `${clock(dish.start)} to ${clock(dish.end)}, ${dish.approved ? "approved ✓" : ends(open)}`)));
}

export async function stepDish(by) {
  const all = state.page.dishes;
  const to = all[all.indexOf(currentDish()) + by];
  if (to && (await recipe.leave())) choose(to.id);
}

// Talk that is no dish yet, from where the recording stands to the next dish or the end.
async function add() {
  const word = Math.max(0, lastUpTo(state.words.times, heard.time() + 0.01));
  const spans = state.page.dishes.flatMap((d) => d.spans.map((s) => s.words));
  if (spans.some(([first, last]) => word >= first && word <= last))
    return trouble("The recording stands inside a dish. Cut that one in two, or go to where none is.");
  const next = Math.min(state.words.times.length, ...spans.map(([first]) => first).filter((first) => first > word));
  if (!(await change({ kind: "dish-add", on: [word, word], to: [next - 1, next - 1], value: "New dish" }))) return false;
  const made = state.page.dishes.find((d) => d.words[0] <= word && d.words[1] >= word);
  if (made) {
    choose(made.id);
    recipe.openAt("title", made.id);
  }
  return true;
}

// ---- drawing: what would look as it did is left as it is

let parts = null;
const shown = { line: "", tabs: [] };

function begin() {
  parts = { line: h("div", { class: "line" }), tabs: h("ol", { class: "tabs" }), none: h("p", {}, "No dish was heard in this recording. Play it to where one begins, and add it from there.") };
  byId("strip").replaceChildren(h("div", { class: "row" }, h("h2", {}, "Running order"),
    h("button", { type: "button", class: "small", "data-at": "dish-add", onclick: add }, "Add a dish from where the recording stands")), parts.none, parts.line, parts.tabs);
}

function drawLine(dishes, dish) {
  const looks = JSON.stringify([state.page.length, state.words.sentences.length, dish?.id, dish?.title, dishes.map((d) => [d.id, d.title, d.spans, d.approved])]);
  if (looks === shown.line) return;
  shown.line = looks;
  const line = h("div", { class: "line" }, dishes.map((d, i) => d.spans.map((s) => block(d, s, i + 1))),
    dish && [handleOf(dish, "start"), handleOf(dish, "end")]);
  swap(parts.line, line);
  parts.line = line;
}

function drawTabs(dishes, dish) {
  const open = new Map();
  for (const f of state.page.findings) if (f.answer === "open") open.set(f.dish, (open.get(f.dish) ?? 0) + 1);
  dishes.forEach((d, i) => {
    const count = open.get(d.id) ?? 0;
    const looks = JSON.stringify([d.id, d.title, d.start, d.end, d.approved, count, d === dish]);
    if (shown.tabs[i] === looks) return;
    shown.tabs[i] = looks;
    const li = tab(d, i, count);
    const old = parts.tabs.children[i];
    if (old) swap(old, li);
    else parts.tabs.append(li);
  });
  shown.tabs.length = dishes.length;
  while (parts.tabs.children.length > dishes.length) parts.tabs.lastChild.remove();
}

// The chosen one is in sight among many; nothing else scrolls.
function bringChosen(chosen) {
  const box = parts.tabs.getBoundingClientRect();
  const at = chosen.getBoundingClientRect();
  if (at.top < box.top || at.bottom > box.bottom) parts.tabs.scrollTop += at.top - box.top - 8;
}

export function draw() {
  const dish = currentDish();
  const { dishes } = state.page;
  if (!parts) begin();
  drawLine(dishes, dish);
  drawTabs(dishes, dish);
  parts.none.hidden = dishes.length > 0;
  parts.tabs.hidden = !dishes.length;
  const id = dish?.id;
  if (id !== shown.chosen) {
    shown.chosen = id;
    const chosen = parts.tabs.querySelector("[aria-current]");
    if (chosen) bringChosen(chosen);
  }
}
