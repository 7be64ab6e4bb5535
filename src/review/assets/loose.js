// loose.js: loose ends: what should be mended, decided or known before a recipe is published, one after the other.
// SPDX-License-Identifier: MIT
import { byId, clock, h, redraw } from "./parts.js";
import { change, dishOf, show, state, trouble } from "./main.js";
import * as heard from "./heard.js";
import * as recipe from "./recipe.js";

const LEVELS = { stop: ["▲", "Stop: unsafe as heard"], fix: ["✚", "To mend"], ask: ["?", "To decide"], note: ["·", "Good to know"] };

const open = () => state.page.findings.map((f, i) => ({ ...f, i })).filter((f) => f.answer === "open");

function current() {
  const all = open();
  if (!all.length) return null;
  return all.find((f) => f.i === state.finding) ?? all.find((f) => f.i > state.finding) ?? all[0];
}

// Where the page begins: the dish of the first loose end.
export const firstDish = () => current()?.dish ?? null;

// A dish was chosen: its own loose ends are next.
export function goTo(dish) {
  const own = open().find((f) => f.dish === dish);
  if (own && current()?.dish !== dish) state.finding = own.i;
}

// Opens nothing; shows the loose end and plays what was said.
async function go(finding) {
  if (!finding || !(await recipe.leave())) return;
  state.finding = finding.i;
  if (finding.dish) state.dish = finding.dish;
  heard.play(finding.at, finding.words);
  recipe.close(false);
  show();
  const title = byId("loose-title");
  title?.focus({ preventScroll: true });
  byId("loose").scrollIntoView({ block: "nearest" });
}

// What is unsafe as heard holds the publishing.
export const goToStop = () => go(open().find((f) => f.level === "stop"));

export function step(by) {
  const all = open();
  const at = all.findIndex((f) => f.i === current()?.i);
  go(all[(at + by + all.length) % all.length]);
}

// Opens the form of what the loose end is about.
export async function mend() {
  const f = current();
  if (!f || !(await recipe.leave())) return;
  state.finding = f.i;
  if (f.dish) state.dish = f.dish;
  if (f.kind === "misheard" && f.words) {
    show();
    heard.correct(f.words, f.read_as);
    return;
  }
  heard.play(f.at, f.words);
  if (f.kind === "no-yield") recipe.openAt("yield", f.dish);
  else if (f.line && f.kind !== "no-time" && f.kind !== "no-temperature") recipe.openAt("line", f.line);
  else if (f.step) recipe.openAt("step", f.step);
  else if (f.dish) recipe.openAt("title", f.dish);
}

async function answer(f, value) {
  const reason = byId("reason").value.trim();
  if (f.level === "stop" && !reason) {
    trouble("This is about safety: write a reason first.");
    byId("reason").setAttribute("aria-invalid", "true");
    byId("reason").focus();
    return;
  }
  state.finding = f.i;
  if (await change({ kind: "finding", finding: f.i, value, reason: reason || null })) byId("loose-title")?.focus({ preventScroll: true });
}

// What is about safety needs a reason to be closed, not to be opened.
async function reopen(f) {
  state.finding = f.i;
  if (await change({ kind: "finding", finding: f.i, value: "open" })) byId("loose-title")?.focus({ preventScroll: true });
}

function one(f, all) {
  const [sign, word] = LEVELS[f.level];
  const button = (text, act, more = {}) => h("button", { type: "button", "data-at": `loose-${text}`, onclick: act, ...more }, text);
  return [h("h2", { id: "loose-title", tabindex: -1 }, `Loose end ${all.findIndex((x) => x.i === f.i) + 1} of ${all.length}`),
    h("p", { class: `level ${f.level}` }, h("span", { "aria-hidden": "true" }, `${sign} `), h("b", {}, word), f.dish && ` – ${f.dish === state.dish ? "" : "in another dish: "}${dishOf(f.dish)?.title ?? ""}`),
    h("p", { class: "why" }, f.why), f.said && h("p", { class: "said" }, "Said: ", h("q", {}, f.said)),
    f.suggest && h("p", {}, f.suggest), f.source && h("p", { class: "quiet" }, f.source),
    h("label", { class: "reason" }, "Reason ", h("input", { id: "reason", "data-at": "reason", autocomplete: "off", maxlength: 500 }), h("small", {}, f.level === "stop" ? " needed" : " if you like")),
    h("div", { class: "row" }, button("Mend it", mend, { class: "main" }), button(`▶ ${clock(f.at)}`, () => heard.play(f.at, f.words), { "aria-label": `Play ${clock(f.at)}` }),
      button("It stays as it is", () => answer(f, "accepted")), button("This is mistaken", () => answer(f, "dismissed")),
      button("Previous", () => step(-1)), button("Next", () => step(1)))];
}

const ANSWERS = { accepted: "stays as it is", dismissed: "mistaken" };

function answered() {
  const done = state.page.findings.map((f, i) => ({ ...f, i })).filter((f) => f.answer !== "open");
  if (!done.length) return null;
  return h("details", { open: state.answeredOpen, ontoggle: (e) => (state.answeredOpen = e.target.open) }, h("summary", {}, `${done.length} answered`), h("ul", { class: "plain" }, done.map((f) =>
    h("li", {}, `${f.why} You said: ${ANSWERS[f.answer]}${f.reason ? `, “${f.reason}”` : ""}. `,
      h("button", { type: "button", class: "small", onclick: () => reopen(f), "aria-label": `Open again: ${f.why}` }, "Open again")))));
}

export function draw() {
  const all = open();
  const f = current();
  const typed = byId("reason")?.value ?? "";
  const keep = f && byId("loose").dataset.finding === `${f.kind} ${f.why}`;
  byId("loose").dataset.finding = f ? `${f.kind} ${f.why}` : "";
  redraw(byId("loose"), f ? one(f, all) : [h("h2", { id: "loose-title", tabindex: -1 }, "No loose ends"),
    h("p", {}, "Nothing is left to mend that could be heard. What was not said cannot be found: watch once more before you publish.")], answered());
  if (f && keep) byId("reason").value = typed;
}
