// parts.js: making elements, always by text and never by markup, since captions may hold anything.
// SPDX-License-Identifier: MIT

// h("button", {class: "x", onclick: f, "aria-label": "Play"}, "text", child, ...)
export function h(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else if (name === "value" || name === "checked") element[name] = value;
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  element.append(...children.flat(9).filter((c) => c !== null && c !== undefined && c !== false));
  return element;
}

export function clock(seconds) {
  const s = Math.max(0, Math.floor(seconds));
  const two = (n) => String(n).padStart(2, "0");
  const hours = Math.floor(s / 3600);
  const minutes = Math.floor(s / 60) % 60;
  return hours ? `${hours}:${two(minutes)}:${two(s % 60)}` : `${minutes}:${two(s % 60)}`;
}

// The last of a sorted list that is not above `value`; -1: none.
export function lastUpTo(list, value, of = (x) => x) {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (of(list[middle]) <= value) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

export const byId = (id) => document.getElementById(id);

// Draws a part of the page anew; what had the focus has it again, by its data-at name.
export function redraw(where, ...children) {
  const focused = where.contains(document.activeElement) ? document.activeElement.dataset.at : null;
  where.replaceChildren(...children.flat(9).filter(Boolean));
  if (focused) where.querySelector(`[data-at="${CSS.escape(focused)}"]`)?.focus({ preventScroll: true });
}

// Puts one element in the place of another; the focus inside stays, as with redraw.
export function swap(old, now) {
  const focused = old.contains(document.activeElement) ? document.activeElement.dataset.at : null;
  old.replaceWith(now);
  if (focused) (now.dataset.at === focused ? now : now.querySelector(`[data-at="${CSS.escape(focused)}"]`))?.focus({ preventScroll: true });
}

// "1 1/2" -> "1½", as a cook reads it.
const FRACTIONS = { "1/2": "½", "1/4": "¼", "3/4": "¾", "1/3": "⅓", "2/3": "⅔", "1/8": "⅛", "3/8": "⅜", "5/8": "⅝", "7/8": "⅞" };
export function number(text) {
  const parts = String(text).split(" ");
  const last = parts.at(-1);
  if (!FRACTIONS[last]) return String(text);
  return parts.slice(0, -1).join("") + FRACTIONS[last];
}
