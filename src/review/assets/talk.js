// talk.js: requests to the program on this machine. The secret stands behind the '#' of the address, which no browser sends.
// SPDX-License-Identifier: MIT

const PLACE = "dishtake-key";

function takeKey() {
  const key = location.hash.slice(1);
  if (/^[0-9a-f]{32}$/.test(key)) {
    sessionStorage.setItem(PLACE, key);
    history.replaceState(null, "", "/");
  }
  return sessionStorage.getItem(PLACE);
}

const key = takeKey();

export class Refused extends Error {
  constructor(status, message) {
    super(message);
    this.status = status;
  }
}

async function ask(target, options = {}) {
  if (!key) throw new Refused(403, "This page needs the whole address that dishtake printed, with the part after #.");
  const headers = { "Dishtake-Key": key, ...options.headers };
  const response = await fetch(target, { ...options, headers, cache: "no-store", credentials: "omit" });
  const answer = await response.json();
  if (!response.ok) throw new Refused(response.status, answer.error);
  return answer;
}

const post = (target, body) =>
  ask(target, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });

export const recipes = () => ask("/api/recipes");
export const words = () => ask("/api/words");
export const news = () => ask("/api/news");
export const edit = (revision, change) => post("/api/edit", { revision, edit: change });
export const card = (wanted) => post("/api/card", wanted);
export const publish = (wanted) => post("/api/publish", wanted);

// What the page begins with is asked for before its other files are here.
export const opening = { words: words(), recipes: recipes() };
for (const asked of Object.values(opening)) asked.catch(() => {}); // main.js, which waits for them, tells

// A name for a change, so that one whose answer was lost is not made twice.
export function newName() {
  return [...crypto.getRandomValues(new Uint8Array(8))].map((b) => b.toString(16).padStart(2, "0")).join("");
}
