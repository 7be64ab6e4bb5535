// strip.js: the dishes along the recording. A border is moved by hand, by arrow keys, or by the buttons below.
// SPDX-License-Identifier: MIT
import { byId, clock, h, lastUpTo, redraw } from "./parts.js";
import { change, choose, currentDish, state } from "./main.js";
import * as heard from "./heard.js";

const WAIT_MS = 500; // after the last arrow key, before the border is moved
let waiting = null;

const sentenceStart = (i) => state.words.times[state.words.sentences[i]];
const sentenceOf = (word) => lastUpTo(state.words.sentences, word);
const percent = (seconds) => `${Math.min(100, Math.max(0, (seconds / Math.max(1, state.page.length)) * 100))}%`;

// The word that a border is at: the first or the last one of the dish.
const borderWord = (dish, edge) => (edge === "start" ? dish.words[0] : dish.words[1]);

function move(dish, edge, sentence) {
  const i = Math.min(state.words.sentences.length - 1, Math.max(0, sentence));
  const word = state.words.sentences[i];
  return change({ kind: "dish-border", on: dish.id, field: edge, to: [word, word] });
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
  handle.dataset.sentence = sentence;
}

function onArrow(event, handle, dish, edge) {
  const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 }[event.key];
  if (!by) return;
  event.preventDefault();
  const to = Math.min(state.words.sentences.length - 1, Math.max(0, Number(handle.dataset.sentence) + by));
  showHandle(handle, to, edge);
  clearTimeout(waiting);
  waiting = setTimeout(() => move(dish, edge, to), WAIT_MS);
}

function onDrag(event, handle, dish, edge) {
  event.preventDefault();
  handle.focus();
  handle.setPointerCapture(event.pointerId);
  const line = handle.parentElement.getBoundingClientRect();
  const from = Number(handle.dataset.sentence);
  const drag = (e) => {
    const seconds = ((e.clientX - line.left) / line.width) * state.page.length;
    const word = lastUpTo(state.words.times, Math.max(0, seconds));
    showHandle(handle, Math.max(0, sentenceOf(Math.max(0, word))), edge);
  };
  const stop = (e) => {
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

function open(dish) {
  const count = state.page.findings.filter((f) => f.dish === dish.id && f.answer === "open").length;
  return count ? `${count} loose ${count === 1 ? "end" : "ends"}` : "no loose ends";
}

function block(dish, span, number) {
  const chosen = dish.id === currentDish()?.id;
  const piece = h("div", { class: `piece${chosen ? " chosen" : ""}${dish.approved ? " approved" : ""}`, "aria-hidden": "true", onclick: () => choose(dish.id) }, String(number));
  piece.style.left = percent(span.start);
  piece.style.width = percent(span.end - span.start);
  return piece;
}

function tab(dish, i) {
  const chosen = dish.id === currentDish()?.id;
  return h("li", {}, h("button", {
    type: "button", "data-at": `dish-${dish.id}`, class: "tab", "aria-current": chosen ? "true" : null,
    onclick: () => { choose(dish.id); heard.play(dish.start); },
  }, h("b", {}, `${i + 1}. ${dish.title}`), h("small", {}, `${clock(dish.start)} to ${clock(dish.end)}, ${dish.approved ? "approved ✓" : open(dish)}`)));
}

export function draw() {
  const dish = currentDish();
  const top = byId("strip").querySelector(".tabs")?.scrollTop;
  const line = h("div", { class: "line" }, state.page.dishes.map((d, i) => d.spans.map((s) => block(d, s, i + 1))),
    dish && [handleOf(dish, "start"), handleOf(dish, "end")]);
  redraw(byId("strip"), h("h2", {}, "Running order"), line,
    h("ol", { class: "tabs" }, state.page.dishes.map(tab)),
    !dish && h("p", {}, "No dish was heard in this recording."));
  if (top) byId("strip").querySelector(".tabs").scrollTop = top;
}
