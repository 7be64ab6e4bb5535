// nlp.mjs: general language libraries doing a part of the job: node nlp.mjs wink|wink-lexicon|compromise FILE.srt GRAMMAR
// They look for amounts of foods, times and temperatures, as they are meant to be used, and print how many they found; "lexicon"
// looks for every food and action of the grammar too.
// SPDX-License-Identifier: MIT
import fs from "node:fs";

const [, , library, file, grammar] = process.argv;
const text = fs.readFileSync(file, "utf8").split(/\n\n+/).map((cue) => cue.split("\n").slice(2).join(" ")).join(" ");
const UNITS = ["cup", "cups", "tablespoon", "tablespoons", "teaspoon", "teaspoons", "pound", "pounds", "ounce", "ounces", "gram", "grams",
  "clove", "cloves", "can", "cans", "pinch", "slice", "slices"];
const TIMES = ["minute", "minutes", "hour", "hours", "second", "seconds"];

// The entries of a lexicon file: what stands before the first tab or "=", of letters and blanks.
const entries = (name) => fs.readFileSync(`${grammar}/${name}`, "utf8").split("\n").map((line) => line.split(/[\t=]/)[0].trim())
  .filter((entry) => /^[a-z]+( [a-z]+)*$/.test(entry));

async function wink() {
  const { default: winkNLP } = await import("wink-nlp");
  const { default: model } = await import("wink-eng-lite-web-model");
  const nlp = winkNLP(model);
  const patterns = [
    ...UNITS.map((unit) => ({ name: "amount", patterns: [`CARDINAL ${unit} [|ADP] NOUN`, `DET ${unit} [|ADP] NOUN`] })),
    ...TIMES.map((unit) => ({ name: "time", patterns: [`CARDINAL ${unit}`] })),
    { name: "temperature", patterns: ["CARDINAL degrees"] },
  ];
  if (library === "wink-lexicon")
    for (const name of ["foods.lex", "actions.lex"]) patterns.push({ name: name.split(".")[0], patterns: [...new Set(entries(name))] });
  nlp.learnCustomEntities(patterns);
  return nlp.readDoc(text).customEntities().length();
}

async function compromise() {
  const { default: nlp } = await import("compromise");
  const doc = nlp(text);
  const net = nlp.buildNet([{ match: `#Value+ (${UNITS.join("|")}) of? #Noun` }, { match: `(a|an) (${UNITS.join("|")}) of? #Noun` },
    { match: `#Value+ (${TIMES.join("|")})` }, { match: "#Value+ degrees" }]);
  return doc.match(net).length;
}

console.log(await (library === "compromise" ? compromise() : wink()));
