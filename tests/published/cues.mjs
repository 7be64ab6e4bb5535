/* cues.mjs FOLDER: the cues that Chromium reads from each file of the folder, as JSON: {name: [[start, end, text], ...]}.
 * Text is as it would be shown, without tags.
 * SPDX-License-Identifier: MIT */
import { readFileSync, readdirSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { chromium } from "playwright-core";

const folder = process.argv[2];
/* A page of its own origin, since a track is only read from there. */
const server = createServer((request, response) => {
  response.setHeader("Content-Type", "text/html; charset=utf-8");
  response.end("<!doctype html><video></video>");
});
await new Promise((done) => server.listen(0, "127.0.0.1", done));
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ["--no-sandbox"] });
const page = await browser.newPage();
await page.goto(`http://127.0.0.1:${server.address().port}/`);

const cues = (base64) => page.evaluate(async (base64) => {
  const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
  const track = document.createElement("track");
  track.src = URL.createObjectURL(new Blob([bytes], { type: "text/vtt" }));
  const ended = new Promise((done) => { track.onload = () => done(true); track.onerror = () => done(false); });
  document.querySelector("video").replaceChildren(track);
  track.track.mode = "hidden";
  if (!await ended) return null;
  const seconds = (t) => t === Infinity ? -1 : t;
  return [...track.track.cues].map((c) => [seconds(c.startTime), seconds(c.endTime), c.getCueAsHTML().textContent]);
}, base64);

const found = {};
for (const name of readdirSync(folder).sort())
  found[name] = await cues(readFileSync(join(folder, name)).toString("base64"));
await browser.close();
server.close();
console.log(JSON.stringify(found));
