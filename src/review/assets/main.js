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
const FIELDS = { prep: "preparation", to_taste: "“to taste”", optional: "“optional”", group: "component", role: "part", text: "words", durations: "times",
  yield: "how much it makes", approved: "approval", beside: "“meanwhile”" };
const KINDS = { "dish-add": "a new dish", "dish-remove": "a dish taken out", "dish-cut": "a dish cut in two", "dish-join": "two dishes joined", "dish-border": "a border moved",
  "line-add": "a line added", "line-remove": "a line taken out", "line-move": "a line moved", "line-join": "two lines joined", "step-add": "a step added",
  "step-remove": "a step taken out", "step-move": "a step moved", "step-join": "two steps joined", finding: "a loose end answered" };

// What a change was, for a reader: "amount of “paprika”".
function told(e) {
  const quote = (text) => `“${text.length > 60 ? `${text.slice(0, 60)}…` : text}”`;
  if (e.of) return `${e.kind === "undo" ? "undone" : "done again"}: change ${e.of}`;
  if (e.kind === "word") return `${quote(e.said ?? "")} read as ${quote(e.value ?? "")}`;
  const what = KINDS[e.kind] ?? FIELDS[e.field] ?? e.field ?? e.kind.replace("-", " ");
  return `${what}${e.said && !e.kind.startsWith("dish") ? ` (${quote(e.said)})` : ""}${e.value ? `: ${quote(e.value)}` : ""}`;
}

function logLine(e) {
  return h("li", { class: `log-${e.state}` }, `${e.number}. ${told(e)}${e.of ? "" : ` – ${LOG_WORDS[e.state]}`}`,
    e.state === "unplaced" && ` (${e.why || "its words are gone"}; it is kept)`);
}

function drawLog() {
  const edits = state.page.edits;
  const homeless = edits.filter((e) => e.state === "unplaced" || e.state === "unknown").length;
  byId("changes").textContent = homeless ? `All changes (${homeless} without a place)` : "All changes";
  if (!byId("log").hidden) redraw(byId("log"), h("h2", {}, "All changes"), edits.length ? h("ol", { class: "plain", tabindex: 0, "aria-label": "Changes, the last one first" },
    edits.map(logLine).reverse()) : h("p", {}, "Nothing has been changed yet."));
}

function draw() {
  const p = state.page;
  state.dish = currentDish()?.id ?? null;
  byId("file").textContent = p.file.split("/").at(-1);
  document.title = `${p.file.split("/").at(-1)} – dishtake`;
  byId("undo").disabled = !p.undo;
  byId("redo").disabled = !p.redo;
  drawLog();
  strip.draw();
  loose.draw();
  recipe.draw();
}

// An answer to a change tells what stood there before by its place alone; such a part is the same object then.
function whole(page) {
  for (const list of ["edits", "dishes", "findings"]) page[list] = page[list].map((part) => (typeof part === "number" ? state.page[list][part] : part));
  return page;
}

async function take(answer, wordsToo = null) {
  const page = whole(answer.page);
  const words = JSON.stringify(page.edits.filter((e) => /word|undo|redo/.test(e.kind)));
  if (state.revision && state.revision !== answer.revision) state.card = state.published = null; // they show what was
  const first = !state.page;
  state.revision = answer.revision;
  state.page = page;
  if (words !== state.wordEdits || !state.words) {
    state.words = (await (wordsToo ?? talk.words())).page;
    state.wordEdits = words;
    heard.draw();
  }
  if (first) state.dish = loose.firstDish();
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

// Undo or redo: shows the dish where it happened, and tells what it was.
async function turn(kind) {
  const n = state.page[kind];
  if (!n || state.busy) return;
  const before = state.page.edits[n - 1];
  if (!(await change({ kind }))) return;
  const dish = before.dish ?? state.page.edits[n - 1]?.dish;
  if (dish && dish !== state.dish && dishOf(dish)) choose(dish);
  saved(`Saved. ${kind === "undo" ? "Undone" : "Done again"}: ${told(before)}`);
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
  loose.goTo(dish);
  draw();
}

const LETTERS = {
  n: () => loose.step(1), p: () => loose.step(-1), m: () => loose.mend(), u: () => turn("undo"),
  r: () => turn("redo"), k: () => heard.toggle(), d: () => strip.stepDish(1), s: () => strip.stepDish(-1),
};

function onKey(event) {
  const typing = event.target.closest?.("input, textarea, select");
  if (event.key === "Escape") trouble("");
  if (event.key === "Escape" && state.open) {
    recipe.close();
    return;
  }
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !typing) {
    event.preventDefault();
    turn(event.shiftKey ? "redo" : "undo");
    return;
  }
  if (typing || event.ctrlKey || event.metaKey || event.altKey || !byId("keys").checked || !state.page) return;
  const act = LETTERS[event.key];
  if (!act) return;
  event.preventDefault();
  act();
}

// A button that shows a part of the page, and hides it again.
function discloses(button, part, drawn = () => {}) {
  byId(button).addEventListener("click", () => {
    byId(part).hidden = !byId(part).hidden;
    byId(button).setAttribute("aria-expanded", String(!byId(part).hidden));
    if (state.page) drawn();
  });
}

async function begin() {
  byId("keys").checked = localStorage.getItem("letter-keys") !== "off";
  byId("keys").addEventListener("change", (e) => localStorage.setItem("letter-keys", e.target.checked ? "on" : "off"));
  byId("undo").addEventListener("click", () => turn("undo"));
  byId("redo").addEventListener("click", () => turn("redo"));
  byId("trouble").addEventListener("click", () => trouble(""));
  discloses("changes", "log", drawLog);
  discloses("show-keys", "key-list");
  addEventListener("beforeunload", (e) => recipe.isTyped() && e.preventDefault());
  document.addEventListener("keydown", onKey);
  try {
    const answer = await talk.opening.recipes;
    heard.begin(answer.media, answer.pictures);
    await take(answer, talk.opening.words);
    saved(answer.page.edits.length ? "Saved" : "Nothing changed yet");
    document.body.dataset.ready = "yes";
    setInterval(lookForNews, LOOK_AGAIN_MS);
  } catch (error) {
    saved("Not open");
    trouble(error.message);
  }
}

begin();
