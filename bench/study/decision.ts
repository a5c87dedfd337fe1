/**
 * Does the decision keep its promises? The chances stated beside a number of catches, how often a clean report alarms, and
 * whether every surface speaks with one voice on invented logs. Writes reports/decision-study.
 *
 *   npm run study:decision -- --replicates 2000
 */
import { Command } from "commander";
import { type ChanceOutcome, chanceCells, chanceOutcome } from "./decision/chances.ts";
import { cleanCells, cleanOutcome } from "./decision/clean-reports.ts";
import { inventedLog } from "./one-voice/log.ts";
import { analysisOf, surfacesOf } from "./one-voice/surfaces.ts";
import { disagreements } from "./one-voice/voice.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const whole = (text: string) => Math.max(1, Math.trunc(Number(text)));
const { replicates, seed } = new Command("study:decision")
  .option("--replicates <n>", "mornings a cell, reports a cell, and logs", whole, 2000)
  .option("--seed <n>", "random start", whole, 20_261_128)
  .parse()
  .opts<{ replicates: number; seed: number }>();

/** Of happened − stated, where a chance of 80 % or more is stated. */
const allowedShortfall = 0.03;
/** Below so many mornings with a number named, the share says little. */
const fewestNamed = 100;

const chances = chanceCells.map((cell, i) => chanceOutcome(cell, replicates, seed + i));
const told = chances.filter(({ named }) => named >= fewestNamed);
const overTolerances = [...new Set(chances.map(({ name }) => name))].map((name) =>
  together(chances.filter((one) => one.name === name)),
);
const claimed = overTolerances.filter((one) => one.claimed);
const short = claimed.filter(({ happened, stated }) => happened - stated < -allowedShortfall);
console.log(`Chances: ${claimed.length} situations with a claim, ${short.length} beyond 3 points.`);

const clean = cleanCells.map((cell, i) => cleanOutcome(cell, replicates, seed + 1000 + i));
const alarming = clean.filter(({ claimed, alarmed }) => claimed !== null && alarmed > claimed);
for (const { fills, errors, alarmed } of clean)
  console.log(`Clean reports, ${fills} fills, ${errors}: ${percent(alarmed)} alarm.`);

const voices: { readonly log: number; readonly wrong: readonly string[] }[] = [];
for (let log = 1; log <= replicates; log++) {
  const surfaces = surfacesOf(await analysisOf(inventedLog(log)));
  const wrong = surfaces.flatMap(disagreements);
  if (wrong.length > 0) voices.push({ log, wrong });
}
console.log(`One voice: ${voices.length} of ${replicates} invented logs disagree.`);

writeStudy(
  "decision-study",
  { replicates, seed, chances, overTolerances, clean, disagreeing: voices },
  [
    "# The decision on trial",
    "",
    `Simulated through the public functions: ${replicates} a situation, random start ${seed} by \`npm run study:decision\`. Monte Carlo error of a share near 0.9: ± ${(2 * Math.sqrt((0.9 * 0.1) / replicates)).toFixed(3)} (two standard errors).`,
    "",
    "## Chances stated beside a number of catches",
    "",
    "So many more catches were taken as were named, of the turns named; a number is named only with a chance of 80 % or more.",
    "Meters scatter by 1.5 % at 20 turns, 95 % of them within a factor 2.7 either way; the tolerance is 1, 2, 3 or 5 %.",
    `Over the tolerances, happened − stated is at least −3 points in ${claimed.length - short.length} of ${claimed.length} situations in which that is claimed.`,
    "",
    ...table(
      ["situation", "named", "stated", "happened", "claimed"],
      overTolerances.map((one) => [
        one.name,
        percent(one.share),
        one.stated.toFixed(3),
        one.happened.toFixed(3),
        one.claimed ? "yes" : "no",
      ]),
    ),
    "",
    "By tolerance, without claim. A tolerance below what the meter's catches usually scatter by is the exception: there a number",
    "is named only after catches that happened to agree, and the chance beside it is stated too high.",
    "",
    ...table(
      ["situation", "tolerance", "named", "stated", "happened"],
      told.map((one) => [
        one.name,
        percent(one.tolerance),
        percent(one.named / replicates),
        one.stated.toFixed(3),
        one.happened.toFixed(3),
      ]),
    ),
    "",
    "## Alarms in clean reports",
    "",
    "Three bins, 4 catches of 15 and 30 turns a fill, fill-to-fill spread 3 %, catch scatter 1.5 % at 20 turns; the report after",
    "the last fill. An alarm is a look first, a meter called moved, or a serious finding.",
    "",
    ...table(
      ["fills", "errors", "any alarm", "look first", "moved", "serious", "claimed at most"],
      clean.map((one) => [
        one.fills,
        one.errors,
        percent(one.alarmed),
        percent(one.lookFirst),
        percent(one.moved),
        percent(one.serious),
        one.claimed === null ? "no claim" : percent(one.claimed),
      ]),
    ),
    "",
    "## One voice",
    "",
    `${replicates} invented logs, each asked through terminal, card, section and results in two languages: ${voices.length} disagree.`,
  ],
);
process.exitCode = short.length + alarming.length + voices.length > 0 ? 1 : 0;

/** Cells of one situation as one, each weighing as often as a number was named in it. */
function together(cells: readonly ChanceOutcome[]) {
  const named = cells.reduce((sum, one) => sum + one.named, 0);
  const mean = (of: (one: ChanceOutcome) => number) =>
    cells.reduce((sum, one) => sum + of(one) * one.named, 0) / named;
  return {
    name: cells[0]?.name ?? "",
    claimed: cells.every((one) => one.claimed),
    share: named / (cells.length * replicates),
    stated: mean(({ stated }) => stated),
    happened: mean(({ happened }) => happened),
  };
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
