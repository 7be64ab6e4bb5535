// page.mjs: the review page in Debian's Chromium, from opening to approving, by mouse and by keyboard alone.
//   node page.mjs PROGRAM TRANSCRIPT VIDEO FOLDER-FOR-SCREENSHOTS
// SPDX-License-Identifier: MIT
import { chromium } from "playwright-core";
import { createRequire } from "node:module";
import { spawn } from "node:child_process";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";

const [, , program, transcript, video, shots] = process.argv;
const axePath = createRequire(import.meta.url).resolve("axe-core");
const FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
  "--disable-sync", "--no-first-run", "--disable-dev-shm-usage", "--mute-audio", "--autoplay-policy=no-user-gesture-required"];
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: FLAGS });
let passed = 0;
let failed = 0;
const problems = [];

function expect(what, fine, more = "") {
  if (fine) passed++;
  else {
    failed++;
    console.log(`FAILED: ${what} ${more}`);
  }
}

// A program of its own for each test, on a copy of the transcript.
async function start(text = null) {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), "dishtake-page-"));
  const file = path.join(folder, path.basename(transcript));
  if (text) fs.writeFileSync(file, text);
  else fs.copyFileSync(transcript, file);
  return run(folder, file);
}

async function run(folder, file) {
  const child = spawn(program, ["review", "--no-open", file, ...(video !== "-" ? ["--video", video] : [])]);
  const address = await new Promise((done, fail) => {
    let out = "";
    child.stdout.on("data", (d) => {
      out += d;
      const found = /http:\S+/.exec(out);
      if (found) done(found[0]);
    });
    child.on("exit", () => fail(new Error(out)));
  });
  const edits = file.replace(/\.[^.]*$/, ".edits.json");
  return { child, folder, file, address, edits: () => (fs.existsSync(edits) ? JSON.parse(fs.readFileSync(edits)).edits : []),
    stop: () => new Promise((done) => { child.removeAllListeners("exit"); child.on("exit", done); child.kill("SIGINT"); }) };
}

async function open(review, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  page.on("pageerror", (e) => problems.push(String(e)));
  page.on("console", (m) => m.type() === "error" && !/status of (4|5)/.test(m.text()) && problems.push(m.text()));
  page.on("dialog", (d) => { problems.push(`dialog: ${d.message()}`); d.dismiss(); });
  page.on("request", (r) => !r.url().startsWith(new URL(review.address).origin) && !r.url().startsWith("data:") && problems.push(`request: ${r.url()}`));
  await page.goto(review.address);
  await page.waitForSelector("body[data-ready]");
  return page;
}

// Not page.waitForFunction, which evaluates a string: the page's policy forbids that, and stays as it is.
const saved = (page) => until(async () => /^Saved\b/.test(await page.textContent("#saved")));
const lines = (page, n) => until(async () => (await page.locator(".line-row").count()) === n);
const count = (review, n) => until(() => review.edits().length === n);

async function until(is) {
  for (let i = 0; i < 100; i++) {
    if (await is()) return true;
    await new Promise((r) => setTimeout(r, 50));
  }
  return false;
}

async function axe(page, what) {
  await page.evaluate(fs.readFileSync(axePath, "utf8")); // through the debugger, so the page's own policy stays as it is
  const result = await page.evaluate(() => axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
  const said = result.violations.map((v) => `${v.id}: ${v.help}: ${v.nodes.slice(0, 3).map((n) => n.html.slice(0, 160) + " " + (n.any[0]?.message ?? "")).join(" | ")}`);
  expect(`axe: ${what}`, !said.length, `\n  ${said.join("\n  ")}`);
}

async function fits(page, what) {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(`nothing to scroll sideways: ${what}`, wide <= 0, `(${wide} px)`);
}

const shot = (page, name, full = false) => page.screenshot({ path: path.join(shots, `${name}.png`), fullPage: full });

// ---- the whole path by mouse

async function byMouse() {
  const begin = Date.now();
  const review = await start();
  const page = await open(review);
  console.log(`figure: from the command to a usable page ${Date.now() - begin} ms`);
  await axe(page, "first sight");
  await fits(page, "first sight");
  await shot(page, "first-sight");
  await page.click("#loose .main");
  await page.waitForSelector("#sheet form");
  await axe(page, "a form is open");
  await shot(page, "mending");
  await page.keyboard.press("Escape");
  // An amount, typed as a cook types it.
  const line = page.locator(".line-row").first();
  const id = await line.getAttribute("id");
  await line.locator(".value").click();
  await page.fill('#sheet form [name="amount"]', "1½-2");
  await page.fill('#sheet form [name="unit"]', "cup");
  await page.click('#sheet form .main');
  await saved(page);
  expect("the amount is saved", review.edits().some((e) => e.field === "amount" && e.value.min === "1 1/2" && e.value.max === "2"));
  expect("it shows whose it is", await page.locator(`#${id} .v.yours`).first().isVisible());
  if (video !== "-") expect("the recording stands at that second", (await page.evaluate(() => document.querySelector("video").currentTime)) > 0);
  // What is no amount is told, and the form stays.
  await page.locator(`#${id} .value`).click();
  await page.fill('#sheet form [name="amount"]', "a bit");
  await page.click("#sheet form .main");
  expect("what is unclear is said", /no amount/.test(await page.textContent("#sheet form .wrong")) && (await page.evaluate(() => document.activeElement.name)) === "amount");
  await page.fill('#sheet form [name="amount"]', "2");
  await page.click("#sheet form .main");
  await saved(page);
  // What was typed is saved before another form opens; what is none stays where it is.
  let k = review.edits().length;
  await page.locator(`#${id} .value`).click();
  await page.fill('#sheet form [name="prep"]', "sifted");
  await page.locator(".line-row .value").nth(2).click();
  expect("typed and left: saved", (await count(review, k + 1)) && review.edits().at(-1).value[0] === "sifted");
  expect("and the other form is open", await until(async () => (await page.locator("#sheet form").count()) === 1 && !(await page.locator(`#${id} form`).count())));
  await page.fill('#sheet form [name="amount"]', "lots");
  await page.locator(`#${id} .value`).click();
  expect("what is unclear keeps its form", /no amount/.test(await page.textContent("#sheet form .wrong")) && (await page.inputValue('#sheet form [name="amount"]')) === "lots");
  await shot(page, "unclear");
  await page.keyboard.press("Escape");
  // A step.
  await page.locator(".step-row .value").first().click();
  await page.fill('#sheet form [name="text"]', "Warm the pan.");
  await page.fill('#sheet form [name="durations"]', "10-12 min");
  await page.fill('#sheet form [name="temperatures"]', "180 C");
  await page.click("#sheet form .main");
  await until(() => review.edits().some((e) => e.field === "temperatures"));
  expect("a step's times are saved", review.edits().some((e) => e.field === "durations" && e.value[0].max === 720));
  // Lines are added, moved, joined, removed.
  const before = await page.locator(".line-row").count();
  await page.click("text=Add a line");
  await page.fill('#sheet form [name="food"]', "bay leaf");
  await page.fill('#sheet form [name="amount"]', "2");
  await page.click("#sheet form .main");
  expect("a line is added", await lines(page, before + 1));
  await page.locator(".line-row").last().locator(".value").click();
  await page.click("text=Move up");
  await until(() => review.edits().at(-1).kind === "line-move");
  await page.locator(".line-row", { hasText: "bay leaf" }).locator(".value").click();
  await page.click("text=Remove this line");
  expect("a line is removed", await lines(page, before));
  // A border, by hand.
  const handle = page.locator(".handle.end");
  await handle.scrollIntoViewIfNeeded();
  const box = await handle.boundingBox();
  let n = review.edits().length;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x - 40, box.y + box.height / 2, { steps: 5 });
  await page.mouse.up();
  expect("a border moves by hand", (await count(review, n + 1)) && review.edits().at(-1).kind === "dish-border", JSON.stringify(review.edits().at(-1)));
  await page.click("#undo");
  expect("and back", await count(review, n + 2));
  // A misheard word, everywhere.
  n = review.edits().length;
  await page.locator(".mend-words").nth(2).click();
  await page.fill('#mend-words [name="reading"]', "saffron");
  await axe(page, "words are being corrected");
  await shot(page, "correcting-a-word");
  await page.click("text=Correct everywhere");
  expect("a word is corrected", (await count(review, n + 1)) && review.edits().at(-1).everywhere === true);
  await page.waitForSelector(".w.corrected");
  await page.click("#undo");
  await count(review, n + 2);
  // Loose ends: answered, with a reason.
  n = review.edits().length;
  await page.fill("#reason", "shown on the screen");
  await page.click("text=This is mistaken");
  expect("a loose end is answered", (await count(review, n + 1)) && review.edits().at(-1).reason === "shown on the screen");
  // The card, approval, publishing.
  await page.click("text=See it as it will be printed");
  expect("the card is shown", await until(async () => (await page.textContent("#card")).length > 50));
  await axe(page, "the printed card");
  const asSaid = await page.textContent("#card");
  await page.selectOption('[data-at="units"]', "metric");
  expect("the card in metric units", await until(async () => (await page.textContent("#card")) !== asSaid));
  await page.selectOption('[data-at="times"]', "2");
  expect("the card doubled", await until(async () => !(await page.locator("#trouble").isVisible()) && (await page.locator('[data-at="times"]').inputValue()) === "2"));
  n = review.edits().length;
  await page.locator('[data-at="approve"]').click();
  expect("it is approved", (await count(review, n + 1)) && review.edits().at(-1).value === true);
  await page.waitForSelector(".piece.approved");
  await shot(page, "approved", true);
  await page.click("#changes");
  await axe(page, "all changes");
  // Undo all the way, over a restart.
  await page.context().close();
  await review.stop();
  const again = await run(review.folder, review.file);
  const later = await open(again);
  const first = await later.textContent(".title");
  let undone = 0;
  while (await later.locator("#undo").isEnabled()) {
    const m = again.edits().length;
    await later.click("#undo");
    if (!(await count(again, m + 1))) break;
    // The page says so once it has drawn it: up to then it takes no other, and the button is as it was.
    if (!(await until(async () => /^Saved\. Undone/.test(await later.textContent("#saved"))))) break;
    undone++;
  }
  expect("undo reaches the start over a restart", undone > 5 && !(await later.locator(".v.yours").filter({ hasNotText: "changed by you" }).count()), `(${undone} ${first})`);
  await later.context().close();
  await again.stop();
}

// ---- the same by keyboard alone

async function tabTo(page, selector, most = 400) {
  for (let i = 0; i < most; i++) {
    if (await page.evaluate((s) => document.activeElement?.matches(s), selector)) return true;
    await page.keyboard.press("Tab");
  }
  return false;
}

async function byKeyboard() {
  const review = await start();
  const page = await open(review);
  await page.keyboard.press("n");
  await page.keyboard.press("n");
  expect("n walks to the next loose end", /Loose end 3/.test(await page.textContent("#loose-title")), await page.textContent("#loose-title"));
  await page.keyboard.press("p");
  expect("p walks back", /Loose end 2/.test(await page.textContent("#loose-title")));
  await page.keyboard.press("m");
  await page.waitForSelector("#sheet form");
  expect("m opens the place with the focus in it", await page.evaluate(() => document.activeElement?.closest("#sheet form") !== null));
  await page.keyboard.press("Escape");
  expect("Escape closes it", (await page.locator("#sheet form").count()) === 0);
  expect("the focus is where it was opened", await page.evaluate(() => document.activeElement?.closest("#sheet") !== null));
  // A title, all by Tab, Enter and letters.
  await page.focus(".skip");
  expect("the title is reached by Tab", await tabTo(page, ".title .value"));
  await page.keyboard.press("Enter");
  await page.keyboard.press("Control+A");
  await page.keyboard.type("Onion soup of the harbour");
  await page.keyboard.press("Enter");
  expect("the title is saved", (await count(review, 1)) && review.edits()[0].value === "Onion soup of the harbour", JSON.stringify(review.edits()));
  // A border by arrow keys.
  await page.evaluate(() => document.getElementById("undo").focus());
  expect("a border is reached by Tab", await tabTo(page, ".handle.end"));
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  expect("a border moves by keys", (await count(review, 2)) && review.edits()[1].kind === "dish-border");
  expect("the focus stays on it", await until(() => page.evaluate(() => document.activeElement?.matches(".handle.end"))));
  expect("and tells the second", /^\d+:\d\d$/.test(await page.getAttribute(".handle.end", "data-clock")));
  await shot(page, "border");
  // Other dishes by a letter; the captions are one stop of Tab, and arrow keys lead on.
  await page.evaluate(() => document.activeElement.blur());
  await page.locator(".tab").nth(1).press("Enter");
  const chosen = await page.textContent("[aria-current]");
  await page.keyboard.press("s");
  expect("s goes to the dish before", await until(async () => (await page.textContent("[aria-current]")) !== chosen));
  await page.keyboard.press("d");
  expect("d goes to the next one", await until(async () => (await page.textContent("[aria-current]")) === chosen));
  expect("captions are reached by Tab", await tabTo(page, ".cue .time"));
  const firstCue = await page.evaluate(() => document.activeElement.dataset.at);
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  expect("arrow keys lead on", await page.evaluate((first) => document.activeElement.matches(".time") && document.activeElement.dataset.at !== first, firstCue));
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  expect("and Tab leads out", await page.evaluate(() => document.activeElement.closest("#loose") !== null));
  // The letters can be turned off.
  await page.click("#show-keys");
  await page.uncheck("#keys");
  await page.evaluate(() => document.activeElement.blur());
  const title = await page.textContent("#loose-title");
  await page.keyboard.press("n");
  expect("letter keys can be turned off", (await page.textContent("#loose-title")) === title);
  // Approve by keyboard.
  expect("approval is reached by Tab", await tabTo(page, '[data-at="approve"]'));
  await page.keyboard.press("Enter");
  expect("approved by keyboard", (await count(review, 3)) && review.edits()[2].value === true);
  // Publishing waits for what is unsafe; answered with a reason, it goes.
  expect("publishing is reached by Tab", await tabTo(page, '[data-at="publish"]'));
  await page.keyboard.press("Enter");
  expect("what is unsafe holds it", await until(async () => /unsafe as heard/.test(await page.textContent("#trouble"))));
  await shot(page, "held");
  await page.keyboard.press("Escape");
  expect("and leads to it", (await page.evaluate(() => document.activeElement.id)) === "loose-title" && /Stop/.test(await page.textContent("#loose .level")));
  expect("Escape closes what was told", await until(async () => !(await page.locator("#trouble").isVisible())));
  for (let i = 0; i < 3 && /Stop/.test(await page.textContent("#loose .level")); i++) {
    const n = review.edits().length;
    await tabTo(page, "#reason");
    await page.keyboard.type("I boiled it, off camera");
    await tabTo(page, '[data-at="loose-It stays as it is"]');
    await page.keyboard.press("Enter");
    expect("answered by keyboard", await count(review, n + 1));
  }
  await tabTo(page, '[data-at="publish"]');
  await page.keyboard.press("Enter");
  expect("published by keyboard", await until(async () => /Published in/.test(await page.textContent("#published"))), await page.textContent("#trouble"));
  expect("the folder is there", fs.readdirSync(review.file.replace(/\.[^.]*$/, "-published")).some((f) => /\.html$/.test(f)));
  await axe(page, "published");
  await shot(page, "published");
  await page.click("#changes");
  await page.evaluate(() => scrollTo(0, 0));
  await shot(page, "all-changes");
  await page.context().close();
  await review.stop();
}

// ---- sizes, light and dark, zoom

async function looks() {
  const review = await start();
  for (const colorScheme of ["light", "dark"])
    for (const width of [1280, 360]) {
      const page = await open(review, { colorScheme, viewport: { width, height: width === 360 ? 740 : 900 } });
      await fits(page, `${width} ${colorScheme}`);
      await axe(page, `${width} ${colorScheme}`);
      await shot(page, `${width}-${colorScheme}`, width === 360);
      await page.locator(".line-row .value").first().click();
      await fits(page, `${width} ${colorScheme}, a form`);
      await axe(page, `${width} ${colorScheme}, a form`);
      if (width === 360) await shot(page, `${width}-${colorScheme}-form`);
      await page.context().close();
    }
  // 200 % zoom of a 1280 px window is 640 px of it, at twice the size.
  const page = await open(review, { viewport: { width: 640, height: 450 }, deviceScaleFactor: 2 });
  await fits(page, "200 %");
  await axe(page, "200 %");
  await shot(page, "zoom-200");
  await page.context().close();
  await review.stop();
}

// ---- two tabs; text that wants to be code

async function twoTabs() {
  const review = await start();
  const one = await open(review);
  const two = await open(review);
  await one.locator(".title .value").click();
  await one.fill('#sheet form [name="title"]', "From the first tab");
  await one.click("#sheet form .main");
  await saved(one);
  expect("the second tab sees it", await until(async () => /From the first tab/.test(await two.textContent(".title"))));
  // Both at once: neither change is lost.
  for (const [page, food] of [[one, "juniper"], [two, "caraway"]]) {
    await page.click("text=Add a line");
    await page.fill('#sheet form [name="food"]', food);
  }
  await Promise.all([one.click("#sheet form .main"), two.click("#sheet form .main")]);
  expect("both lines are saved", await until(() => ["juniper", "caraway"].every((f) => review.edits().some((e) => e.value?.food === f))));
  for (let i = 0; i < 5; i++) {
    const begin = Date.now();
    await one.evaluate(() => document.getElementById("undo").click());
    await saved(one);
    if (i === 4) console.log(`figure: a change saved and drawn in ${Date.now() - begin} ms`);
  }
  await one.context().close();
  await two.context().close();
  await review.stop();
}

// ---- a recording in which no dish was heard, and then one

async function noDish() {
  const review = await start("[0:00] Good evening, everybody.\n[0:05] It rained all day here.\n[0:10] The cat sat on the wall.\n[0:15] See you next week.\n");
  for (const width of [360, 1280]) {
    const page = await open(review, { viewport: { width, height: 740 } });
    expect("it says so", /No dish was heard/.test(await page.textContent("#strip")));
    await fits(page, `no dish, ${width}`);
    await axe(page, `no dish, ${width}`);
    await shot(page, `no-dish-${width}`);
    if (width === 1280) {
      await page.click('[data-at="dish-add"]');
      await page.waitForSelector("#sheet form");
      expect("its title is asked for", await page.evaluate(() => document.activeElement.name) === "title");
      await page.keyboard.press("Control+A");
      await page.keyboard.type("Rain soup");
      await page.keyboard.press("Enter");
      expect("a dish is made where none was heard", (await count(review, 2)) && (await until(async () => /Rain soup/.test(await page.textContent(".title")))));
      await axe(page, "a dish without lines");
      await shot(page, "new-dish");
    }
    await page.context().close();
  }
  await review.stop();
}

const CODE = ["<script>alert(1)</script>", "<img src=x onerror=alert(1)>", "\"><svg onload=alert(1)>", "javascript:alert(1)", "{{7*7}}", "</title><b>x", "'; alert(1); '", "<iframe src=//evil.test>"];

async function textIsNoCode() {
  const talk = `[0:00] Today we're making a tomato soup. ${CODE.join(" ")}\n[0:10] Add two cups of tomatoes. Chop one onion and add it to the pot.\n[0:20] Simmer for ten minutes. That's our tomato soup.\n`;
  const review = await start(talk);
  const page = await open(review);
  for (const text of CODE) {
    await page.locator(".title .value").click();
    await page.fill('#sheet form [name="title"]', text);
    await page.click("#sheet form .main");
    expect(`shown as text: ${text}`, await until(async () => (await page.textContent(".title .value")).includes(text)));
  }
  expect("no element is made of text", (await page.locator("#captions script, #captions img, #captions iframe, #sheet svg, #sheet img").count()) === 0);
  await page.context().close();
  await review.stop();
}

// ---- a misheard word is mended in its caption, where the reading stands ready

async function misheard() {
  const review = await start("[0:00] Today we're making a tomato soup. Heat two tablespoons of oil in a pot.\n[0:08] Add a teaspoon of come in seeds and one chopped onion.\n[0:15] Add three cups of tomatoes and simmer for twenty minutes. That's our tomato soup.\n");
  const page = await open(review);
  for (let i = 0; i < 9 && !/was read as/.test(await page.textContent("#loose")); i++) {
    await page.keyboard.press("n");
    await page.waitForTimeout(100);
  }
  await page.keyboard.press("m");
  await page.waitForSelector("#mend-words");
  expect("its words are chosen", (await page.locator('.pick[aria-pressed="true"]').allTextContents()).join(" ") === "come in seeds");
  expect("and the reading stands there", /cumin/.test(await page.inputValue('#mend-words [name="reading"]')));
  await axe(page, "a misheard word");
  await page.keyboard.press("Enter");
  expect("Enter corrects it", (await count(review, 1)) && review.edits()[0].kind === "word");
  await page.waitForSelector(".w.corrected");
  expect("and the loose end is gone", !/was read as/.test(await page.textContent("#loose")));
  await page.context().close();
  await review.stop();
}

// ---- captions far down are text, and become words with buttons as they come near

async function farCaptions() {
  const clock = (i) => `[${Math.floor(i / 60)}:${String(i % 60).padStart(2, "0")}]`;
  const chat = Array.from({ length: 280 }, (_, i) => `${clock(i)} And number ${i} of what I say while it rests.\n`).join("");
  const review = await start(`${chat}[4:41] Today we're making a tomato soup. Add two cups of tomatoes.\n[4:45] Simmer for ten minutes. That's our tomato soup.\n`);
  for (const width of [1280, 360]) {
    const page = await open(review, { viewport: { width, height: 740 } });
    const rows = page.locator(".cue");
    expect("every caption is there to be searched", (await until(async () => (await rows.count()) === 282)) && /Simmer for ten minutes/.test(await rows.last().textContent()));
    expect("those far down are no words yet", (await page.locator(".w").count()) < 1500 && (await rows.last().locator(".w, button").count()) === 0);
    await page.locator(".line-row .time").first().click();
    expect("playing a line shows its words", await until(async () => /two cups of tomatoes/.test((await page.locator(".w.spoken").allTextContents()).join(""))));
    expect(`in sight at ${width}`, await until(() => page.evaluate(() => {
      const [word, box] = [document.querySelector(".w.spoken"), document.getElementById("captions")].map((e) => e.getBoundingClientRect());
      return word.top >= box.top && word.bottom <= box.bottom;
    })));
    await page.evaluate(() => document.querySelector("video")?.pause()); // while it plays, the captions follow it
    await rows.nth(150).scrollIntoViewIfNeeded();
    expect("what is scrolled to has its buttons", await until(async () => (await rows.nth(150).locator(".mend-words").count()) === 1));
    await shot(page, `far-captions-${width}`);
    await page.context().close();
  }
  await review.stop();
}

for (const part of [byMouse, byKeyboard, looks, twoTabs, noDish, misheard, farCaptions, textIsNoCode]) {
  try {
    await part();
  } catch (error) {
    failed++;
    console.log(`FAILED: ${part.name}: ${error.stack}`);
  }
}
expect("no error, dialog or request to anybody else", !problems.length, problems.slice(0, 5).join("\n"));
await browser.close();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);
