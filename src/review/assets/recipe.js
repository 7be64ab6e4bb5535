// recipe.js: the recipe as it is being written; every value says where it comes from, plays its second, and opens to be changed.
// SPDX-License-Identifier: MIT
import { byId, clock, h, number, redraw } from "./parts.js";
import { change, choose, currentDish, show, state, trouble } from "./main.js";
import * as forms from "./forms.js";
import * as heard from "./heard.js";
import * as loose from "./loose.js";
import * as strip from "./strip.js";
import * as talk from "./talk.js";

// Where a value comes from: a sign, a word for it, and a line under it; never a colour alone.
const SIGNS = { heard: ["", "heard"], reckoned: ["≈", "worked out"], missing: ["?", "not heard"], yours: ["✎", "changed by you"] };

function mark(from, text) {
  const [sign, word] = SIGNS[from];
  return h("span", { class: `v ${from}` }, sign && h("span", { class: "sign", "aria-hidden": "true" }, sign), text, from !== "heard" && h("span", { class: "hidden" }, ` (${word})`));
}

const openForm = () => byId("sheet").querySelector("form");
const typed = (form) => JSON.stringify([...form.elements].filter((e) => e.name).map((e) => (e.type === "checkbox" ? e.checked : e.value)));

// Whether a form is open in which something was changed.
export const isTyped = () => Boolean(state.open && openForm() && typed(openForm()) !== openForm().dataset.was);

// Before something else is shown: what was typed is saved, not lost. False when it cannot be, and the form stays.
export const leave = async () => !isTyped() || openForm().save();

// What is open: {what: "line", id} and so on.
export async function openAt(what, id) {
  if (!(await leave())) return;
  state.open = { what, id };
  if (byId("sheet").dataset.dish === state.dish) draw();
  else show();
  const form = openForm();
  if (!form) return;
  form.dataset.was = typed(form);
  form.querySelector("[data-first]")?.focus();
  form.scrollIntoView({ block: "nearest" });
}

// The form again, as it was typed, after it could not be saved.
export function reopen(what, old) {
  state.open = what;
  if (old.isConnected) return;
  draw();
  const form = openForm();
  if (!form) return;
  form.dataset.was = typed(form);
  for (const e of old.elements) {
    const now = e.name && form.elements[e.name];
    if (now) now[e.type === "checkbox" ? "checked" : "value"] = e.type === "checkbox" ? e.checked : e.value;
  }
}

const isOpen = (what, id) => state.open?.what === what && state.open.id === id;

// Closes the form; `settle` draws the page, where a change has not done so, and puts the focus back on what was open.
export function close(settle = true) {
  if (state.open) state.last = state.open;
  state.open = null;
  if (!settle) return;
  if (byId("sheet").dataset.open) draw();
  const back = state.last && byId("sheet").querySelector(`[data-at="${CSS.escape(`${state.last.what}-${state.last.id}`)}"]`);
  (back ?? byId("sheet")).focus({ preventScroll: true });
}

// A value was pressed: it plays, and its form opens or closes.
async function press(what, id, at, words, open) {
  heard.play(at, words);
  if (!open) openAt(what, id);
  else if (await leave()) close();
}

const time = (seconds, words, what) =>
  h("button", { type: "button", class: "time", "data-at": `play-${what}`, "aria-label": `Play ${clock(seconds)}`, onclick: () => heard.play(seconds, words) }, clock(seconds));

const edited = (item, ...fields) => item.edited.includes("new") || fields.some((f) => item.edited.includes(f));

function amountPart(line) {
  if (edited(line, "amount", "to_taste")) return mark("yours", line.amount_text || (line.to_taste ? "to taste" : "no amount"));
  if (line.amount_from === "vague") return mark("missing", line.amount_text ? `${line.amount_text}: how much?` : "some: how much?");
  if (line.amount_from === "no-unit") return mark("missing", `${line.amount_text} of what?`);
  if (line.amount_from === "to-taste") return mark("heard", "to taste");
  return line.amount_text ? mark("heard", line.amount_text) : mark("missing", "amount not heard");
}

function lineRow(line) {
  const details = [...line.state, ...line.prep].join(", ");
  const food = [line.size, line.food, ...line.alternatives.map((a) => `or ${a}`)].filter(Boolean).join(" ");
  const open = isOpen("line", line.id);
  return h("li", { class: "line-row", id: line.id },
    time(line.at, line.words, line.id),
    h("button", { type: "button", class: "value", "data-at": `line-${line.id}`, "aria-expanded": String(open), onclick: () => press("line", line.id, line.at, line.words, open) },
      line.amount_from !== "to-taste" && [amountPart(line), " "], mark(edited(line, "food", "size") ? "yours" : "heard", food),
      details && [", ", mark(edited(line, "prep", "state") ? "yours" : "heard", details)],
      line.amount_from === "to-taste" && [", ", amountPart(line)],
      line.optional && [" ", mark(edited(line, "optional") ? "yours" : "heard", "(optional)")],
      line.role !== "ingredient" && h("small", {}, line.role === "garnish" ? " garnish" : " served beside")),
    open && forms.lineForm(line), isOpen("line-new", line.id) && forms.newLineForm(line.id));
}

// Items under the name of their component, in order.
function grouped(items, row, tag) {
  const parts = [];
  for (const item of items) {
    if (!parts.length || parts.at(-1).group !== item.group) parts.push({ group: item.group, items: [] });
    parts.at(-1).items.push(item);
  }
  let count = 1;
  return parts.map((p) => {
    const start = count;
    count += p.items.length;
    return [p.group && h("h4", {}, p.group), h(tag, { class: "plain", start: tag === "ol" ? start : null }, p.items.map(row))];
  });
}

function stepRow(step) {
  const open = isOpen("step", step.id);
  const times = step.durations.map((d) => mark(edited(step, "durations") ? "yours" : "heard", d.text + (d.each ? ` per ${d.each}` : "")));
  const heat = step.temperatures.map((t) => mark(edited(step, "temperatures") ? "yours" : "heard", t.unit === "G" ? `gas mark ${number(t.value)}` : `${t.value} °${t.unit}${t.fan ? " fan" : ""}`));
  const facts = [...times, ...heat, step.until && mark(edited(step, "until") ? "yours" : "heard", `until ${step.until}`)].filter(Boolean);
  return h("li", { class: "step-row", id: step.id },
    time(step.start, step.words, step.id),
    h("button", { type: "button", class: "value", "data-at": `step-${step.id}`, "aria-expanded": String(open), onclick: () => press("step", step.id, step.start, step.words, open) },
      mark(edited(step, "text") ? "yours" : "reckoned", step.text)),
    facts.length > 0 && h("p", { class: "facts" }, facts.map((f, i) => [i > 0 && " · ", f])),
    open && forms.stepForm(step), isOpen("step-new", step.id) && forms.newStepForm(step.id));
}

function titlePart(dish) {
  const from = edited(dish, "title") ? "yours" : dish.title_said ? "heard" : "reckoned";
  return [h("h2", { class: "title" }, h("button", { type: "button", class: "value", "data-at": `title-${dish.id}`, "aria-expanded": String(isOpen("title", dish.id)), onclick: () => openAt("title", dish.id) }, mark(from, dish.title))),
    isOpen("title", dish.id) && forms.titleForm(dish)];
}

function yieldText(y) {
  const n = y.max === null ? `at least ${number(y.min)}` : y.min === y.max ? number(y.min) : `${number(y.min)} to ${number(y.max)}`;
  return `${n} ${y.of}${y.max === "1" || y.of.endsWith("s") ? "" : "s"}`;
}

const TIMES = [["active", "at work"], ["cook", "cooking"], ["rest", "waiting"], ["total", "in all"]];

function factsPart(dish) {
  const from = edited(dish, "yield") ? "yours" : dish.yield ? "heard" : "missing";
  return [h("p", { class: "facts" }, "Makes ",
    h("button", { type: "button", class: "value", "data-at": `yield-${dish.id}`, onclick: () => openAt("yield", dish.id) }, mark(from, dish.yield ? yieldText(dish.yield) : "how many was not heard")),
    TIMES.filter(([key]) => dish[key]).map(([key, word]) => [" · ", h("span", { title: dish[key].from }, mark("reckoned", dish[key].text), ` ${word}`)])),
    isOpen("yield", dish.id) && forms.yieldForm(dish)];
}

function bordersPart(dish) {
  const next = state.page.dishes[state.page.dishes.indexOf(dish) + 1];
  const button = (text, act, more = {}) => h("button", { type: "button", "data-at": `border-${text}`, onclick: act, ...more }, text);
  const edge = (name, word, at) => h("div", { class: "row" }, h("span", {}, `${word} ${clock(at)}`),
    button(`${word} a sentence earlier`, () => strip.nudge(dish, name, -1)), button(`${word} a sentence later`, () => strip.nudge(dish, name, 1)),
    button(`${word} where the recording stands`, () => strip.moveHere(dish, name)));
  const cut = () => {
    const word = state.words.times.findLastIndex((t) => t <= heard.time() + 0.01);
    return change({ kind: "dish-cut", on: dish.id, to: [Math.max(0, word), Math.max(0, word)] });
  };
  return h("details", { class: "borders", open: state.bordersOpen, ontoggle: (e) => (state.bordersOpen = e.target.open) }, h("summary", {}, "Where this dish begins and ends"),
    edge("start", "Begins", dish.start), edge("end", "Ends", dish.end),
    h("div", { class: "row" }, button("Cut in two where the recording stands", cut),
      button("Join with the next dish", () => change({ kind: "dish-join", on: dish.id, to: next.id }), { disabled: !next }),
      button("This is no dish", () => change({ kind: "dish-remove", on: dish.id }), { class: "remove" })));
}

const OPEN_WORDS = { stop: "unsafe as heard", fix: "to mend", ask: "to decide" };

function approvePart(dish) {
  const open = state.page.findings.filter((f) => f.dish === dish.id && f.answer === "open");
  const stops = open.filter((f) => f.level === "stop").length;
  const counts = Object.entries(OPEN_WORDS).map(([level, word]) => [open.filter((f) => f.level === level).length, word]).filter(([n]) => n);
  const waiting = state.page.dishes.filter((d) => !d.approved);
  const next = waiting.find((d) => d.start > dish.start && d !== dish) ?? waiting.find((d) => d !== dish);
  return h("div", { class: "approve" },
    h("p", {}, dish.approved ? "✓ You have approved this recipe. A change takes the approval back." :
      counts.length ? `Still open: ${counts.map(([n, word]) => `${n} ${word}`).join(", ")}.` : open.length ? "Only notes are left." : "Nothing is left open."),
    h("div", { class: "row" },
      h("button", { type: "button", class: dish.approved ? null : "main", "data-at": "approve", onclick: () => change({ kind: "dish-set", on: dish.id, field: "approved", value: !dish.approved }) },
        dish.approved ? "Take the approval back" : stops ? "Approve all the same" : "Approve this recipe"),
      dish.approved && next && h("button", { type: "button", class: "main", "data-at": "next-dish", onclick: () => goOn(next) }, `Go on to ${next.title}`),
      h("button", { type: "button", "data-at": "card", "aria-expanded": String(Boolean(state.card)), onclick: showCard }, state.card ? "Hide the printed card" : "See it as it will be printed")),
    state.card && h("div", { class: "row" },
      h("label", {}, "Units ", h("select", { "data-at": "units", onchange: (e) => { state.units = e.target.value; fetchCard(); } },
        [["", "as said"], ["us", "US"], ["metric", "metric"], ["both", "both"]].map(([v, t]) => h("option", { value: v, selected: v === (state.units ?? "") }, t)))),
      h("label", {}, "How much ", h("select", { "data-at": "times", onchange: (e) => { state.times = e.target.value; fetchCard(); } },
        [["", "as said"], ["1/2", "half"], ["2", "double"], ["3", "three times"], ["4", "four times"]].map(([v, t]) => h("option", { value: v, selected: v === (state.times ?? "") }, t))))),
    h("pre", { id: "card", tabindex: 0, role: "region", "aria-label": "The printed card", hidden: !state.card }, state.card ?? ""),
    h("div", { class: "row" },
      h("button", { type: "button", "data-at": "publish", class: waiting.length ? null : "main", onclick: publish }, "Publish everything"),
      h("span", { class: "quiet" }, waiting.length ? `${waiting.length} of ${state.page.dishes.length} ${state.page.dishes.length === 1 ? "recipe is" : "recipes are"} not approved yet; all are written.` : "Every recipe is approved.")),
    h("p", { id: "published", role: "status" }, state.published ?? ""));
}

function goOn(dish) {
  choose(dish.id);
  byId("sheet").scrollIntoView({ block: "start" });
  byId("sheet").focus({ preventScroll: true });
}

async function fetchCard() {
  const wanted = { dish: state.page.dishes.indexOf(currentDish()) + 1 };
  if (state.units) wanted.units = state.units;
  if (state.times) wanted.times = state.times;
  try {
    state.card = (await talk.card(wanted)).card;
    trouble("");
    show();
  } catch (error) {
    trouble(`${error.message}.`);
  }
}

function showCard() {
  if (!state.card) return fetchCard();
  state.card = null;
  return show();
}

async function publish() {
  if (!(await leave())) return;
  byId("published").textContent = "Writing …";
  try {
    state.published = `✓ ${(await talk.publish({})).said ?? "Published"}.`;
    trouble("");
  } catch (error) {
    state.published = null;
    if (error.status === 409) await loose.goToStop();
    trouble(`Not published: ${error.message}.`);
  }
  byId("published").textContent = state.published ?? "";
}

function notesPart(dish) {
  return [dish.cautions.length > 0 && h("section", { "aria-label": "Cautions" }, h("h3", {}, "Cautions"), h("ul", {}, dish.cautions.map((c) => h("li", {}, c.text, " ", h("small", {}, c.source))))),
    dish.allergens.length > 0 && h("p", {}, mark("reckoned", `Contains, by what was heard: ${dish.allergens.map((a) => a.name + (a.check_label ? " (check the label)" : "")).join(", ")}`),
      h("small", {}, " What was not heard may contain more."))];
}

function addButton(kind, items, dish, word) {
  const last = items.at(-1)?.id ?? null;
  return [!items.length && isOpen(`${kind}-new`, dish.id) && (kind === "line" ? forms.newLineForm(null) : forms.newStepForm(null)),
    h("button", { type: "button", class: "small", "data-at": `${kind}-new-${last ?? dish.id}`, onclick: () => openAt(`${kind}-new`, last ?? dish.id) }, `Add a ${word}`)];
}

const key = () => h("p", { class: "key", "aria-label": "Signs" }, mark("heard", "heard"), " ", mark("reckoned", "worked out"), " ", mark("missing", "not heard"), " ", mark("yours", "changed by you"));

export function draw() {
  const dish = currentDish();
  const sheet = byId("sheet");
  // What is being typed is never taken away by another page's change.
  if (state.open && sheet.querySelector("form")?.contains(document.activeElement) && sheet.dataset.open === `${state.open.what} ${state.open.id}`) return;
  sheet.dataset.open = state.open ? `${state.open.what} ${state.open.id}` : "";
  if (sheet.dataset.dish !== dish?.id) state.card = null;
  sheet.dataset.dish = dish?.id ?? "";
  redraw(sheet, dish ? [titlePart(dish), factsPart(dish), key(),
    h("h3", {}, "Ingredients"), grouped(dish.lines, lineRow, "ul"), addButton("line", dish.lines, dish, "line"),
    h("h3", {}, "Method"), grouped(dish.steps, stepRow, "ol"), addButton("step", dish.steps, dish, "step"),
    notesPart(dish), bordersPart(dish), approvePart(dish)] : h("p", {}, "There is no dish to write."));
}
