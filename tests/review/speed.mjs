// speed.mjs: how long the page takes, on a long recording: node speed.mjs PROGRAM TRANSCRIPT VIDEO EDITS
// Prints one line of JSON: milliseconds from the command to a usable page, of each edit (median, worst) in the page and of
// it in the program's own processor time, and the program's memory at its highest, in MB.
// SPDX-License-Identifier: MIT
import { chromium } from "playwright-core";
import { spawn } from "node:child_process";
import fs from "node:fs";

const [, , program, transcript, video, edits] = process.argv;
const FLAGS = ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update",
  "--disable-sync", "--no-first-run", "--disable-dev-shm-usage", "--mute-audio", "--autoplay-policy=no-user-gesture-required"];
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium", args: FLAGS });
const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
const page = await context.newPage();
await page.goto("about:blank");

const TICK_MS = 10; // sysconf(_SC_CLK_TCK) is 100 on Linux
const processor = (pid) => {
  const fields = fs.readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1].split(" ");
  return (Number(fields[11]) + Number(fields[12])) * TICK_MS;
};
const memory = (pid) => Number(/VmHWM:\s+(\d+)/.exec(fs.readFileSync(`/proc/${pid}/status`, "utf8"))[1]) / 1024;

const begin = performance.now();
const child = spawn(program, ["review", "--no-open", transcript, "--video", video]);
const address = await new Promise((done) => {
  let out = "";
  child.stdout.on("data", (d) => (out += d) && /http:\S+/.test(out) && done(/http:\S+/.exec(out)[0]));
});
const listening = performance.now() - begin;
await page.goto(address);
await page.waitForSelector("body[data-ready]", { timeout: 200000 });
const usable = performance.now() - begin;
const opened = processor(child.pid);

// One edit as the cook makes it: the form filled in, Save pressed, until the new amount stands there. Two frames later it is painted.
const one = (amount) => page.evaluate(async (amount) => {
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const row = document.querySelector(".line-row");
  row.querySelector(".value").click();
  while (!document.querySelector("#sheet form")) await frame();
  const form = document.querySelector("#sheet form");
  form.elements.amount.value = amount;
  const begin = performance.now();
  form.requestSubmit();
  while (!/^Saved\b/.test(document.getElementById("saved").textContent) || document.querySelector("#sheet form")
    || !document.querySelector(".line-row .v.yours")?.textContent.includes(amount)) await frame();
  await frame();
  return performance.now() - begin;
}, String(amount));

await one(100);
const before = processor(child.pid);
const times = [];
for (let i = 0; i < Number(edits); i++) times.push(await one(101 + i));
const cost = (processor(child.pid) - before) / Number(edits);
times.sort((a, b) => a - b);
const answered = (await page.evaluate(() => performance.getEntriesByType("resource").filter((r) => r.name.endsWith("/api/edit")).map((r) => r.duration))).sort((a, b) => a - b);

// A misheard word, corrected where it stands: from then on all of it is understood anew.
const word = (n) => page.evaluate(async (n) => {
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  document.querySelectorAll(".mend-words")[n].click();
  const form = document.getElementById("mend-words");
  form.elements.reading.value = "parsley";
  const row = form.closest(".cue").dataset.first;
  const begin = performance.now();
  form.requestSubmit();
  while (!/^Saved\b/.test(document.getElementById("saved").textContent) || !document.querySelector(`.cue[data-first="${row}"] .corrected`)) await frame();
  await frame();
  return performance.now() - begin;
}, n);
const worded = [];
for (let n = 0; n < 3; n++) worded.push(await word(n));
worded.sort((a, b) => a - b);

// The video is played at both of its ends, by ranges.
const played = await page.evaluate(async () => {
  const v = document.querySelector("video");
  v.currentTime = 60;
  await new Promise((done) => { v.onseeked = done; v.onerror = done; setTimeout(done, 10000); });
  return v.error ? v.error.message : v.currentTime;
});
const media = await page.evaluate(() => document.querySelector("video").src);
const asked = await page.evaluate(async (media) => {
  const sums = [];
  for (const range of ["bytes=0-99", "bytes=4294960000-4294967295", "bytes=2147483600-2155372207", "bytes=-100"]) {
    const r = await fetch(media, { headers: { Range: range } });
    sums.push([r.status, (await r.arrayBuffer()).byteLength]);
  }
  return sums;
}, media);
const dishes = await page.evaluate(() => document.querySelectorAll("#strip .tabs li").length);
const heap = await page.evaluate(() => performance.memory?.usedJSHeapSize / 1048576);
console.log(JSON.stringify({ dishes, listening, usable, opened, least: times[0], median: times[times.length >> 1], worst: times.at(-1), answered: answered[answered.length >> 1], cost, word: worded[1], played, asked,
  memory: memory(child.pid), heap }));
child.kill("SIGINT");
await browser.close();
