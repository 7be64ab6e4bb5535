// forms.js: a value being changed in its place, with what was said beside it.
// SPDX-License-Identifier: MIT
import { clock, h } from "./parts.js";
import { changeAll, currentDish, state } from "./main.js";
import * as heard from "./heard.js";
import { close, leave, openAt, reopen } from "./recipe.js";

const NUMBER = String.raw`(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)`;
const GLYPHS = { "½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8" };
const plain = (text) => text.replace(/[½¼¾⅓⅔⅛⅜⅝⅞]/g, (g) => ` ${GLYPHS[g]}`).replace(/[–—]/g, "-").replace(/,(\d)/g, ".$1").trim().replace(/\s+/g, " ");

// What was typed is none of what may stand there; `field` is where.
export class Unclear extends Error {
  constructor(message, field) {
    super(message);
    this.field = field;
  }
}

// "about 1 1/2-2" -> {min, max, approx}; "" -> null.
export function readAmount(text, unit) {
  const t = plain(text);
  if (!t) return null;
  const found = new RegExp(`^(about )?(at least )?(${NUMBER})(?: ?(?:-|to) ?(${NUMBER}))?$`).exec(t);
  if (!found) throw new Unclear(`“${text}” is no amount; write 2, 1 1/2, 2-3, about 2 or at least 2`, "amount");
  return { min: found[3], max: found[2] ? null : found[4] ?? found[3], unit: unit.trim(), approx: Boolean(found[1]) };
}

export function writeAmount(a) {
  if (!a) return "";
  const range = a.max === null ? `at least ${a.min}` : a.max === a.min ? a.min : `${a.min}-${a.max}`;
  return a.approx ? `about ${range}` : range;
}

const SECONDS = { s: 1, sec: 1, second: 1, m: 60, min: 60, minute: 60, h: 3600, hr: 3600, hour: 3600, d: 86400, day: 86400 };
const unitOf = (word) => SECONDS[word] ?? SECONDS[word.replace(/s$/, "")];

function readTime(text) {
  const t = plain(text);
  const found = new RegExp(`^(about )?(at least )?(${NUMBER})(?: ?(?:-|to) ?(${NUMBER}))? ?([a-z]+)(?: (\\d+) ?([a-z]+))?(?: (?:per|each|a) ([a-z ]+))?$`, "i").exec(t);
  const unit = found && unitOf(found[5].toLowerCase());
  if (!unit) throw new Unclear(`“${text}” is no time; write 20 min, 10-12 min or 1 h 30 min`, "durations");
  const value = (n) => n.split(" ").reduce((sum, part) => sum + part.split("/").reduce((a, b) => a / b), 0);
  const more = found[6] ? Number(found[6]) * (unitOf(found[7].toLowerCase()) ?? 0) : 0;
  const min = value(found[3]) * unit + more;
  return { min, max: found[2] ? null : (found[4] ? value(found[4]) * unit : value(found[3]) * unit) + more, approx: Boolean(found[1]), each: found[8] ?? null };
}

function oneTime(d) {
  const unit = d.min >= 7200 && d.min % 3600 === 0 ? [3600, "h"] : d.min < 60 || d.min % 60 ? [1, "s"] : [60, "min"];
  const n = (s) => String(Math.round((s / unit[0]) * 100) / 100);
  const range = d.max === null ? `at least ${n(d.min)}` : d.max === d.min ? n(d.min) : `${n(d.min)}-${n(d.max)}`;
  return `${d.approx ? "about " : ""}${range} ${unit[1]}${d.each ? ` per ${d.each}` : ""}`;
}

const list = (text) => text.split(";").map((t) => t.trim()).filter(Boolean);

function readDurations(text, old) {
  return list(text).map((t, i) => ({ ...readTime(t), of: old[i]?.of || null }));
}

function readTemperatures(text, old) {
  return list(text).map((t, i) => {
    const found = /^(?:gas mark (\d+(?:\/\d+)?)|(\d+(?:\.\d+)?) ?°? ?([FC]))( fan)?$/i.exec(plain(t));
    if (!found) throw new Unclear(`“${t}” is no temperature; write 350 F, 180 C, 160 C fan or gas mark 4`, "temperatures");
    return { value: found[1] ?? found[2], unit: found[1] ? "G" : found[3].toUpperCase(), fan: Boolean(found[4]), of: old[i]?.of || null };
  });
}

const oneTemperature = (t) => (t.unit === "G" ? `gas mark ${t.value}` : `${t.value} ${t.unit}${t.fan ? " fan" : ""}`);

const same = (a, b) => JSON.stringify(a) === JSON.stringify(b);
const commas = (text) => text.split(",").map((t) => t.trim()).filter(Boolean);

// ---- making a form

const field = (label, control, hint) => h("label", {}, h("span", {}, label), control, hint && h("small", {}, hint));
const input = (name, value, more = {}) => h("input", { name, value: value ?? "", autocomplete: "off", ...more });
const button = (text, act, more = {}) => h("button", { type: "button", onclick: act, ...more }, text);

function said(item, at) {
  const words = item.said || (item.words && state.words ? heardWords(item.words) : "");
  return h("p", { class: "said" }, words ? ["Said: ", h("q", {}, words), " "] : "Not said: you added it. ",
    button(`▶ ${clock(at)}`, () => heard.play(at, item.words), { class: "small", "aria-label": `Play from ${clock(at)}` }));
}

// The loose ends that this form can tie up.
function looseNotes(of, id) {
  return state.page.findings.filter((f) => f.answer === "open" && f[of] === id).map((f) => h("p", { class: "loose-note" }, f.why, f.suggest && ` ${f.suggest}`));
}

function heardWords([first, last]) {
  let text = "";
  for (const [, , begin, , ...words] of state.words.cues)
    words.forEach((w, i) => { if (begin + i >= first && begin + i <= last) text += Array.isArray(w) ? w[0] : w.endsWith(" ") ? w : `${w} `; });
  return text.replace(/\s+/g, " ").trim();
}

// Says beside the field what is unclear in it; else before the buttons.
function point(form, error) {
  form.querySelector(".wrong")?.remove();
  for (const e of form.elements) e.removeAttribute("aria-invalid");
  if (!error) return;
  const field = form.elements[error.field];
  const said = h("small", { class: "wrong", role: "alert" }, `${error.message}.`);
  if (field) field.after(said);
  else form.querySelector("button.main").parentElement.before(said);
  field?.setAttribute("aria-invalid", "true");
  field?.focus();
}

// Reads the form; says what is unclear; sends what differs. True when all of it is on the disk.
async function save(form, edits) {
  let wanted;
  try {
    wanted = edits(form.elements);
    point(form, null);
  } catch (error) {
    if (!(error instanceof Unclear)) throw error;
    point(form, error);
    return false;
  }
  const was = state.open;
  close(false);
  const done = await changeAll(wanted);
  if (done) close(true);
  else reopen(was, form);
  return done;
}

function form(label, edits, ...children) {
  const made = h("form", { class: "form", "aria-label": label, onsubmit: (e) => { e.preventDefault(); made.save(); } },
    children);
  made.save = () => (made.reportValidity() ? save(made, edits) : false);
  return made;
}

const saveOrLeave = (text = "Save") => row(h("button", { class: "main" }, text), button("Leave it as it was", () => close(true)));

async function act(edits) {
  if (!(await leave())) return;
  const was = state.open;
  close(false);
  if (await changeAll(edits)) close(true);
  else state.open = was;
}

const row = (...children) => h("div", { class: "row" }, ...children);

function around(items, id) {
  const i = items.findIndex((x) => x.id === id);
  return { before: items[i - 1], next: items[i + 1], afterNext: items[i + 2] };
}

// The buttons that lines and steps have in common.
function moves(kind, items, item, word) {
  const { before, next, afterNext } = around(items, item.id);
  const move = (to) => act([{ kind: `${kind}-move`, on: item.id, to: to ?? null }]);
  return row(button("Move up", () => move(before.id), { disabled: !before }),
    button("Move down", () => move(afterNext?.id), { disabled: !next }),
    button(`Join with the ${word} before`, () => act([{ kind: `${kind}-join`, on: before.id, to: item.id }]), { disabled: !before }),
    button(`Remove this ${word}`, () => act([{ kind: `${kind}-remove`, on: item.id }]), { class: "remove" }),
    button(`Add a ${word} below`, () => openAt(`${kind}-new`, item.id)));
}

const setter = (kind, item) => (name, now, before) => (same(now, before) ? [] : [{ kind, on: item.id, field: name, value: now }]);

function lineEdits(e, line) {
  const set = setter("line-set", line);
  const amount = readAmount(e.amount.value, e.unit.value);
  const unitOnly = !amount && e.unit.value.trim();
  if (unitOnly) throw new Unclear("A unit needs an amount before it", "amount");
  if (!e.food.value.trim()) throw new Unclear("A line needs a food", "food");
  return [...set("amount", amount, line.amount && { min: line.amount.min, max: line.amount.max, unit: line.amount.unit, approx: line.amount.approx }),
    ...set("to_taste", e.to_taste.checked && !amount, line.to_taste), ...set("size", e.size.value.trim() || null, line.size || null),
    ...set("food", e.food.value.trim(), line.food), ...set("prep", commas(e.prep.value), line.prep),
    ...set("group", e.group.value.trim() || null, line.group || null), ...set("optional", e.optional.checked, line.optional),
    ...set("role", e.role.value, line.role)];
}

const ROLES = [["ingredient", "an ingredient"], ["garnish", "a garnish"], ["serve-with", "served beside it"]];

export function lineForm(line) {
  return form(`Change ${line.food}`, (f) => lineEdits(f, line),
    said(line, line.at), looseNotes("line", line.id),
    h("div", { class: "fields" },
      field("Amount", input("amount", writeAmount(line.amount), { class: "short", "data-first": "" }), "2, 1 1/2, 2-3, about 2"),
      field("Unit", input("unit", line.amount?.unit, { class: "short" }), "empty for a count"),
      field("Size", input("size", line.size, { class: "short" })), field("Food", input("food", line.food, { required: true })),
      field("Preparation", input("prep", line.prep.join(", ")), "divided by commas"),
      field("Component", input("group", line.group), "sauce, dough; empty for the dish itself"),
      field("It is", h("select", { name: "role" }, ROLES.map(([v, t]) => h("option", { value: v, selected: v === line.role }, t))))),
    row(h("label", { class: "check" }, h("input", { type: "checkbox", name: "to_taste", checked: line.to_taste }), " to taste"),
      h("label", { class: "check" }, h("input", { type: "checkbox", name: "optional", checked: line.optional }), " optional")),
    line.weight && h("p", { class: "quiet" }, `Worked out: ${Math.round(line.weight.min)}${line.weight.max > line.weight.min ? `–${Math.round(line.weight.max)}` : ""} g. ${line.weight.source}`),
    saveOrLeave(),
    moves("line", currentDish().lines, line, "line"));
}

export function newLineForm(after) {
  const dish = currentDish();
  const value = (e) => {
    const made = { food: e.food.value.trim(), amount: readAmount(e.amount.value, e.unit.value) };
    if (e.prep.value.trim()) made.prep = commas(e.prep.value);
    return [{ kind: "line-add", on: dish.id, to: after, value: made }];
  };
  return form("A new line", value,
    h("div", { class: "fields" }, field("Amount", input("amount", "", { class: "short", "data-first": "" }), "2, 1 1/2, 2-3"), field("Unit", input("unit", "", { class: "short" })),
      field("Food", input("food", "", { required: true })), field("Preparation", input("prep", ""))),
    saveOrLeave("Add this line"));
}

function stepEdits(e, step) {
  const set = setter("step-set", step);
  if (!e.text.value.trim()) throw new Unclear("A step needs its words", "text");
  const times = e.durations.value === step.durations.map(oneTime).join("; ") ? [] : [{ kind: "step-set", on: step.id, field: "durations", value: readDurations(e.durations.value, step.durations) }];
  const heat = e.temperatures.value === step.temperatures.map(oneTemperature).join("; ") ? [] : [{ kind: "step-set", on: step.id, field: "temperatures", value: readTemperatures(e.temperatures.value, step.temperatures) }];
  return [...set("text", e.text.value.trim(), step.text), ...times, ...heat, ...set("until", e.until.value.trim() || null, step.until || null),
    ...set("vessel", e.vessel.value.trim() || null, step.vessel || null), ...set("heat", e.heat.value.trim() || null, step.heat || null),
    ...set("group", e.group.value.trim() || null, step.group || null)];
}

export function stepForm(step) {
  return form("Change this step", (f) => stepEdits(f, step),
    said(step, step.start), looseNotes("step", step.id),
    h("div", { class: "fields" },
      field("As it is written", h("textarea", { name: "text", rows: 3, required: true, "data-first": "", value: step.text })),
      field("Times", input("durations", step.durations.map(oneTime).join("; ")), "20 min; 10-12 min; 1 h 30 min"),
      field("Temperatures", input("temperatures", step.temperatures.map(oneTemperature).join("; ")), "350 F; 180 C fan; gas mark 4"),
      field("Until", input("until", step.until), "a sign that it is done"), field("In", input("vessel", step.vessel)),
      field("Heat", input("heat", step.heat)), field("Component", input("group", step.group))),
    saveOrLeave(),
    moves("step", currentDish().steps, step, "step"));
}

export function newStepForm(after) {
  const dish = currentDish();
  return form("A new step", (f) => [{ kind: "step-add", on: dish.id, to: after, value: { text: f.text.value.trim() } }],
    field("The step", h("textarea", { name: "text", rows: 2, required: true, "data-first": "" })),
    saveOrLeave("Add this step"));
}

export function titleForm(dish) {
  return form("Change the title", (f) => [{ kind: "dish-set", on: dish.id, field: "title", value: f.title.value.trim() }],
    field("Title", input("title", dish.title, { required: true, maxlength: 200, "data-first": "" })),
    saveOrLeave());
}

export function yieldForm(dish) {
  const y = dish.yield;
  const edits = (f) => {
    const n = readAmount(f.amount.value, "");
    if (n && !f.of.value.trim()) throw new Unclear("Write what it makes: serving, loaf, cookie", "of");
    return [{ kind: "dish-set", on: dish.id, field: "yield", value: n && { min: n.min, max: n.max, of: f.of.value.trim() } }];
  };
  return form("Change how much it makes", edits,
    h("div", { class: "fields" }, field("Makes", input("amount", y ? writeAmount({ ...y, approx: false }) : "", { class: "short", "data-first": "" }), "4, 4-6; empty: not heard"),
      field("Of what", input("of", y ? y.of : "serving"), "serving, loaf, cookie")),
    saveOrLeave());
}
