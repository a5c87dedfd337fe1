/**
 * The library against what it was before bins lent each other their spread, on the same seasons: widths, coverage, alarms,
 * power and cost. Writes reports/then-and-now-study.md, .json, .vl.json and .svg. Needs a clone with its history, and the
 * registry once for the packages of then.
 *
 *   npm run study:then-and-now -- --replicates 1000 --seed 1
 */
import { writeFile } from "node:fs/promises";
import { Command } from "commander";
import { readSetup } from "../../src/data/read-setup.ts";
import { renderSvg } from "../../src/report/svg.ts";
import { writeStudy } from "./support/write-study.ts";
import { first, now } from "./then-and-now/library.ts";
import { type MorningOutcome, morning } from "./then-and-now/mornings.ts";
import { thenAndNowChart, thenAndNowPage } from "./then-and-now/page.ts";
import { season } from "./then-and-now/seasons.ts";
import {
  changes,
  ofMornings,
  ofSeasons,
  type Study,
  setupWithPrices,
} from "./then-and-now/study.ts";

const whole = (text: string) => Math.max(1, Math.trunc(Number(text)));
const run = new Command("study:then-and-now")
  .option("--replicates <n>", "seasons, and mornings, a situation", whole, 1000)
  .option("--seed <n>", "random start", whole, 1)
  .parse()
  .opts<{ replicates: number; seed: number }>();

const root = new URL("../../", import.meta.url);
const libraries = [await first(root), now] as const;
const each = <T>(work: (replicate: number) => T): readonly T[] =>
  Array.from({ length: run.replicates }, (_, i) => work(i + 1));

const seasons = libraries.flatMap((library) =>
  changes.map(({ name, change }) => {
    console.log(`${library.name}: ${name}`);
    return ofSeasons(
      library.name,
      name,
      change,
      each((replicate) => season(library, change, replicate, run.seed)),
    );
  }),
);
const prices = readSetup(setupWithPrices);
const mornings = [0, 3].flatMap((earlierFills) =>
  [
    { library: libraries[0], setup: null, rule: "tolerance 3 %" },
    { library: libraries[1], setup: null, rule: "tolerance 3 %" },
    { library: libraries[1], setup: prices, rule: "prices" },
  ].map(({ library, setup, rule }) => {
    console.log(`${library.name}: ${rule}, ${earlierFills} earlier fills`);
    const found: readonly MorningOutcome[] = each((replicate) =>
      morning(library, setup, earlierFills, replicate, run.seed),
    );
    return ofMornings(library.name, rule, earlierFills, found);
  }),
);

const study: Study = { ...run, seasons, mornings };
const chart = thenAndNowChart(study);
const file = (ending: string) => new URL(`reports/then-and-now-study.${ending}`, root);
await writeFile(file("vl.json"), `${JSON.stringify(chart, null, 1)}\n`);
await writeFile(file("svg"), `${await renderSvg(chart, { id: "then-and-now" })}\n`);
writeStudy("then-and-now-study", study, thenAndNowPage(study));
