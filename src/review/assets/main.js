// main.js: what is shown, and what becomes of a change. The other files draw.
// SPDX-License-Identifier: MIT
import * as talk from "./talk.js";
import { byId, h, redraw } from "./parts.js";
import * as heard from "./heard.js";
import * as strip from "./strip.js";
import * as recipe from "./recipe.js";
import * as loose from "./loose.js";

const LOOK_AGAIN_MS = 1500;
const TRIES = 6;

// What the program said last, and what the cook looks at. `open` is the line or step whose form is open.
export const state = { revision: "", page: null, words: null, dish: null, open: null, finding: -1, busy: false };

const saved = (text) => (byId("saved").textContent = text);

export function trouble(text) {
  byId("trouble").hidden = !text;
  byId("trouble").textContent = text || "";
}

export const dishOf = (id) => state.page.dishes.find((d) => d.id === id);
export const currentDish = () => dishOf(state.dish) ?? state.page.dishes[0] ?? null;

const LOG_WORDS = { applied: "in place", undone: "undone", unplaced: "finds no place", unknown: "of a later version" };

function logLine(e) {
  const what = [e.kind.replace("-", " "), e.field, e.said && `“${e.said.slice(0, 60)}”`, e.value && `→ ${e.value.slice(0, 80)}`];
  return h("li", { class: `log-${e.state}` }, `${e.number}. ${what.filter(Boolean).join(" ")}: ${LOG_WORDS[e.state]}`,
    e.state === "unplaced" && ` (${e.why || "its words are gone"}; it is kept)`);
}

function drawLog() {
  const edits = state.page.edits;
  const homeless = edits.filter((e) => e.state === "unplaced" || e.state === "unknown").length;
  byId("changes").textContent = homeless ? `All changes (${homeless} without a place)` : "All changes";
  redraw(byId("log"), h("h2", {}, "All changes"), edits.length ? h("ol", { class: "plain", tabindex: 0, "aria-label": "Changes, the last one first" },
    edits.map(logLine).reverse()) : h("p", {}, "Nothing has been changed yet."));
}

function draw() {
  const p = state.page;
  if (!currentDish()) state.dish = null;
  else state.dish = currentDish().id;
  byId("file").textContent = p.file.split("/").at(-1);
  document.title = `${p.file.split("/").at(-1)} – dishtake`;
  byId("undo").disabled = !p.undo;
  byId("redo").disabled = !p.redo;
  drawLog();
  strip.draw();
  loose.draw();
  recipe.draw();
}

async function take(answer, wordsToo = null) {
  const words = JSON.stringify(answer.page.edits.filter((e) => /word|undo|redo/.test(e.kind)));
  if (state.revision && state.revision !== answer.revision) state.card = null; // it shows what was
  state.revision = answer.revision;
  state.page = answer.page;
  if (words !== state.wordEdits || !state.words) {
    state.words = (await (wordsToo ?? talk.words())).page;
    state.wordEdits = words;
    heard.draw();
  }
  draw();
}

export async function look() {
  await take(await talk.recipes());
}

export function show() {
  draw();
}

// Sends one change; when another page was faster, looks and sends it again. True when it is on the disk.
export async function change(edit) {
  const named = { ...edit, key: talk.newName() };
  saved("Saving …");
  trouble("");
  state.busy = true;
  try {
    for (let i = 0; i < TRIES; i++) {
      try {
        await take(await talk.edit(state.revision, named));
        saved("Saved");
        return true;
      } catch (error) {
        if (error.status !== 409) throw error;
        await look();
      }
    }
    throw new Error("another page keeps changing it");
  } catch (error) {
    saved("Not saved");
    trouble(error.status ? `Not saved: ${error.message}.` :
      `Not saved: ${error.message}. Is dishtake still running? Your earlier changes are on the disk.`);
    return false;
  } finally {
    state.busy = false;
  }
}

// Several changes of one form, one after the other.
export async function changeAll(edits) {
  for (const e of edits) if (!(await change(e))) return false;
  return true;
}

async function lookForNews() {
  if (state.busy || document.hidden) return;
  try {
    const { revision } = await talk.news();
    if (revision === state.revision || state.busy) return;
    await look();
    saved("Brought up to date: another page made a change");
    trouble("");
  } catch (error) {
    trouble(error.status ? `${error.message}.` : "dishtake is not running any more; what was saved is on the disk.");
  }
}

export function choose(dish) {
  state.dish = dish;
  state.open = null;
  draw();
}

const LETTERS = {
  n: () => loose.step(1), p: () => loose.step(-1), m: () => loose.mend(), u: () => byId("undo").click(),
  r: () => byId("redo").click(), k: () => heard.toggle(),
};

function onKey(event) {
  const typing = event.target.closest?.("input, textarea, select");
  if (event.key === "Escape" && state.open) {
    recipe.close();
    return;
  }
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !typing) {
    event.preventDefault();
    byId(event.shiftKey ? "redo" : "undo").click();
    return;
  }
  if (typing || event.ctrlKey || event.metaKey || event.altKey || !byId("keys").checked || !state.page) return;
  const act = LETTERS[event.key];
  if (!act) return;
  event.preventDefault();
  act();
}

async function begin() {
  byId("keys").checked = localStorage.getItem("letter-keys") !== "off";
  byId("keys").addEventListener("change", (e) => localStorage.setItem("letter-keys", e.target.checked ? "on" : "off"));
  byId("undo").addEventListener("click", () => change({ kind: "undo" }));
  byId("redo").addEventListener("click", () => change({ kind: "redo" }));
  byId("changes").addEventListener("click", (e) => {
    byId("log").hidden = !byId("log").hidden;
    e.currentTarget.setAttribute("aria-expanded", String(!byId("log").hidden));
  });
  document.addEventListener("keydown", onKey);
  try {
    const wordsToo = talk.words();
    const answer = await talk.recipes();
    heard.begin(answer.media, answer.pictures);
    await take(answer, wordsToo);
    saved(answer.page.edits.length ? "Saved" : "Nothing changed yet");
    document.body.dataset.ready = "yes";
    setInterval(lookForNews, LOOK_AGAIN_MS);
  } catch (error) {
    saved("Not open");
    trouble(error.message);
  }
}

begin();
