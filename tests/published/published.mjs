/* published.mjs FOLDER: everything of a published folder that a browser shows, and its structured data.
 * Outside sources: Chromium (cues of a <track>, layout, print), axe-core (WCAG 2.2), schema.org's vocabulary as
 * TypeScript types (schema-dts) checked by the TypeScript compiler, and the JSON-LD processor jsonld.
 * Prints "N passed, N failed".
 * SPDX-License-Identifier: MIT */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { chromium } from "playwright-core";
import jsonld from "jsonld";
import ts from "typescript";

const folder = process.argv[2], shots = process.argv[3];
const axe = readFileSync("node_modules/axe-core/axe.min.js", "utf8");
let passed = 0, failed = 0;

function check(what, good, more = "") {
  if (good) passed++;
  else { failed++; console.log(`FAILED ${what}`, more); }
}
const read = (name) => readFileSync(join(folder, name), "utf8");

/* A server, since a track is only read from the page's own origin. */
const TYPES = { html: "text/html; charset=utf-8", vtt: "text/vtt; charset=utf-8", jpg: "image/jpeg" };
const server = createServer((request, response) => {
  const name = decodeURIComponent(request.url.slice(1));
  response.setHeader("Content-Type", TYPES[name.split(".").pop()] ?? "text/plain; charset=utf-8");
  const there = existsSync(join(folder, name));
  response.statusCode = there || name === "blank.html" ? 200 : 404;
  response.end(name === "blank.html" ? "<!doctype html><video></video>" : there ? readFileSync(join(folder, name)) : "");
});
await new Promise((done) => server.listen(0, "127.0.0.1", done));
const base = `http://127.0.0.1:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: ["--no-sandbox"] });

async function pages() {
  for (const name of readdirSync(folder).filter((n) => n.endsWith(".html")))
    for (const width of [360, 1280]) for (const colorScheme of ["light", "dark"]) {
      const page = await browser.newPage({ viewport: { width, height: 900 }, colorScheme });
      const outside = [];
      page.on("request", (r) => r.url().startsWith(base) || outside.push(r.url()));
      await page.goto(base + name);
      const where = `${name} at ${width} px, ${colorScheme}`;
      if (shots) await page.screenshot({ path: join(shots, `${name}-${width}-${colorScheme}.png`), fullPage: true });
      check(`${where}: nothing is wider than the window`,
        await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
      check(`${where}: nothing is fetched from elsewhere`, outside.length === 0, outside);
      await page.evaluate(axe);
      const found = await page.evaluate(() => axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }));
      check(`${where}: axe-core`, found.violations.length === 0,
        found.violations.map((v) => `${v.id}: ${v.nodes[0].html}`));
      await page.close();
    }
}

async function print() {
  const page = await browser.newPage();
  for (const name of readdirSync(folder).filter((n) => /^\d.*\.html$/.test(n)))
    for (const format of ["A4", "Letter"]) {
      await page.goto(base + name);
      const steps = await page.locator(".method li").count(), lines = await page.locator(".ingredients li").count();
      const path = join(shots ?? "/tmp", `${name}.${format}.pdf`);
      await page.pdf({ path, format });
      const count = Number(/Pages:\s+(\d+)/.exec(execFileSync("pdfinfo", [path], { encoding: "utf8" }))[1]);
      /* What fits a page was measured: the longer side of a page holds about twice twelve steps or thirty lines. */
      check(`${name} on ${format}: ${count} pages for ${steps} steps and ${lines} lines`,
        steps <= 12 && lines <= 24 ? count === 1 : count <= 2);
    }
  await page.close();
}

/* The cues as a browser's own parser has them. */
async function cues(name, kind) {
  const page = await browser.newPage();
  await page.goto(base + "blank.html");
  const list = await page.evaluate(([source, of]) => new Promise((done, no) => {
    const track = document.createElement("track");
    track.kind = of;
    track.src = source;
    track.onload = () => done([...track.track.cues].map((c) => [c.startTime, c.endTime, c.getCueAsHTML().textContent]));
    track.onerror = () => no(new Error("track"));
    document.querySelector("video").append(track);
    track.track.mode = "hidden";
  }), [base + name, kind]);
  await page.close();
  return list;
}

const seconds = (clock) => Number(clock.replace(",", ".").split(":").reduce((sum, part) => sum * 60 + Number(part), 0).toFixed(3));

async function tracks() {
  const starts = (list) => JSON.stringify(list.map(([start, , text]) => [Math.floor(start), text]));
  const plain = read("chapters.txt").trim().split("\n").map((l) => [seconds(l.split(" ")[0]), 0, l.slice(l.indexOf(" ") + 1)]);
  const chapters = await cues("chapters.vtt", "chapters");
  check("chapters.vtt has the cues of chapters.txt", starts(chapters) === starts(plain), starts(chapters));
  check("chapters follow one another without a gap", chapters.every((c, i) => !i || c[0] === chapters[i - 1][1]));
  const srt = read("captions.srt").trim().replace(/\r/g, "").split(/\n\n+/).map((b) => b.split("\n"))
    .map(([, times, ...lines]) => [...times.split(" --> ").map(seconds), lines.join("\n")]);
  const captions = await cues("captions.vtt", "captions");
  check("captions.vtt has the captions of captions.srt", JSON.stringify(captions) === JSON.stringify(srt),
    [captions.length, srt.length, captions.find((c, i) => JSON.stringify(c) !== JSON.stringify(srt[i]))]);
}

/* Every name must be one of schema.org's, and every value of a type that it takes there. */
function types() {
  const names = readdirSync(folder).filter((n) => n.endsWith(".jsonld"));
  const file = join(process.cwd(), "check.ts");
  const parts = names.map((n, i) => `const recipe${i}: WithContext<Recipe> = ${read(n)};`);
  writeFileSync(file, `import type { Recipe, WithContext } from "schema-dts";\n${parts.join("\n")}\n`);
  const wrong = (source) => {
    writeFileSync(file, source);
    const program = ts.createProgram([file], { strict: true, noEmit: true, skipLibCheck: true, moduleResolution: 2 });
    return ts.getPreEmitDiagnostics(program).map((d) => ts.flattenDiagnosticMessageText(d.messageText, "\n"));
  };
  const source = readFileSync(file, "utf8"), found = wrong(source);
  check(`${names.length} recipes are of schema.org's types`, names.length > 0 && found.length === 0, found.slice(0, 2));
  check("the types refuse a name that is not schema.org's", wrong(source.replace('"recipeIngredient"', '"recipeIngredients"')).length > 0);
}

/* No network: schema.org's context says, for these names, no more than its vocabulary. */
async function expand() {
  const documentLoader = async (url) => ({ documentUrl: url, document: { "@context": { "@vocab": "https://schema.org/" } } });
  for (const name of readdirSync(folder).filter((n) => n.endsWith(".jsonld"))) {
    const data = JSON.parse(read(name));
    const [node] = await jsonld.expand(data, { documentLoader });
    check(`${name} expands to a recipe`, node["@type"][0] === "https://schema.org/Recipe");
    check(`${name} keeps every ingredient`,
      node["https://schema.org/recipeIngredient"].length === data.recipeIngredient.length);
    const quads = await jsonld.toRDF(data, { documentLoader, format: "application/n-quads" });
    check(`${name} as triples has every clip twice`, (quads.match(/schema.org\/Clip>/g) ?? []).length === 2 * data.video.hasPart.length);
  }
}

await pages();
await print();
await tracks();
await browser.close();
server.close();
types();
await expand();
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed ? 1 : 0);
