/**
 * What bins lend each other of their spread, against what happens: coverage and width of the bands for today's fill, the next
 * fill and the mean over fills, with other bins and without. Writes reports/lending-study.md, .json, .vl.json and .svg.
 *
 *   npm run study:lending -- --replicates 4000 --seed 1
 */
import { writeFile } from "node:fs/promises";
import { Command } from "commander";
import { renderSvg } from "../../src/report/svg.ts";
import { lendingChart } from "./lending/chart.ts";
import { claimed, type Section } from "./lending/claims.ts";
import { badCatches, compared, comparisonSection, wholeLogSection } from "./lending/comparison.ts";
import { meanSections } from "./lending/mean-sections.ts";
import { nextFillSections } from "./lending/next-fill-sections.ts";
import { lendingPage } from "./lending/page.ts";
import { todaySections } from "./lending/today-sections.ts";
import { writeStudy } from "./support/write-study.ts";

const whole = (text: string) => Math.max(1, Math.trunc(Number(text)));
const run = new Command("study:lending")
  .description("Bands with what other bins lend, by simulation.")
  .option("--replicates <n>", "logs a situation", whole, 4000)
  .option("--seed <n>", "seed of the random numbers", whole, 1)
  .parse()
  .opts<{ replicates: number; seed: number }>();

const situations = compared(run);
const sections: readonly Section[] = [
  ...todaySections(run),
  ...nextFillSections(run),
  ...meanSections(run),
  comparisonSection(situations),
  wholeLogSection([...situations, ...badCatches(run)]),
];
const missed = claimed(sections).filter(({ cell }) => cell.verdict === "missed");
for (const { place, cell } of missed) console.error(`Missed: ${place}: ${cell.found}`);

const chart = lendingChart(situations);
const file = (ending: string) => new URL(`../../reports/lending-study.${ending}`, import.meta.url);
await writeFile(file("vl.json"), `${JSON.stringify(chart, null, 1)}\n`);
await writeFile(file("svg"), `${await renderSvg(chart, { id: "lending" })}\n`);
writeStudy("lending-study", { ...run, sections }, lendingPage(run, sections));
process.exitCode = missed.length > 0 ? 1 : 0;
