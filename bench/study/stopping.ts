/** Does the interval of a fill whose catches stop at the tolerance still hold the truth? Writes reports/stopping-study. */

import { studiedRules } from "./stopping/rules.ts";
import { type StoppingOutcome, simulateStopping } from "./stopping/simulate.ts";
import { writeStudy } from "./support/write-study.ts";

const replicates = 20_000;
const seed = 20_261_125;
const scatters = [0.01, 0.015, 0.02, 0.03];
const tolerances = [0.01, 0.015, 0.02, 0.03];

const cells = scatters.flatMap((scatter) =>
  tolerances.map((tolerance) => ({ scatter, tolerance })),
);
const outcomes = studiedRules.flatMap((rule, r) =>
  cells.map((cell, c) => simulateStopping(rule, cell, replicates, seed + 1000 * r + c)),
);
const summary = studiedRules.map((rule) => {
  const ofRule = outcomes.filter((outcome) => outcome.rule === rule.name);
  return {
    rule: rule.name,
    stated: rule.stated,
    worst: Math.min(...ofRule.map(({ coverage }) => coverage)),
    mean: average(ofRule.map(({ coverage }) => coverage)),
    meanCatches: average(ofRule.map(({ meanCatches }) => meanCatches)),
  };
});

writeStudy("stopping-study", { replicates, seed, summary, outcomes }, [
  "# Stopping when the tolerance is reached: coverage",
  "",
  "Catches of one fill are taken one at a time until the half-width of the 95 % interval is within the tolerance. Stopping",
  "on the width favours fills whose catches happen to agree, so the half-width itself is too good. In use it is stated as",
  "the larger of half-width and tolerance, with a fewest and a most number of catches: then the worst cell covers",
  `${worstInUse(8).toFixed(3)} with at most 8 catches, and ${worstInUse(12).toFixed(3)} with at most 12.`,
  "",
  `Simulated: normal catches, ${replicates} fills a cell, catch scatter and tolerance 1, 1.5, 2 and 3 % in all 16 pairs, seed ${seed}.`,
  "Monte Carlo error of a coverage near 0.95: ± 0.003 (two standard errors).",
  "",
  "| rule | stated | worst cell | mean of cells | catches, mean |",
  "|---|---|---|---|---|",
  ...summary.map(
    ({ rule, stated, worst, mean, meanCatches }) =>
      `| ${rule} | ${stated} | ${worst.toFixed(3)} | ${mean.toFixed(3)} | ${meanCatches.toFixed(1)} |`,
  ),
  "",
  "Every cell of the rules in use (catch scatter down, tolerance across):",
  ...studiedRules
    .filter(({ stated }) => stated !== "half-width")
    .flatMap(({ name }) => ["", `**${name}**`, "", ...cellTable(name)]),
]);

/** The worst cell of the rules that end at so many catches. */
function worstInUse(mostCatches: number): number {
  const names = studiedRules
    .filter((rule) => rule.mostCatches === mostCatches)
    .map(({ name }) => name);
  return Math.min(...summary.filter(({ rule }) => names.includes(rule)).map(({ worst }) => worst));
}

function cellTable(rule: string): string[] {
  return [
    `| scatter | ${tolerances.map((tolerance) => percent(tolerance)).join(" | ")} |`,
    `|---|${tolerances.map(() => "---|").join("")}`,
    ...scatters.map(
      (scatter) =>
        `| ${percent(scatter)} | ${tolerances.map((tolerance) => cellWords(rule, scatter, tolerance)).join(" | ")} |`,
    ),
  ];
}

function cellWords(rule: string, scatter: number, tolerance: number): string {
  const found = outcomes.find(
    (one: StoppingOutcome) =>
      one.rule === rule && one.scatter === scatter && one.tolerance === tolerance,
  );
  return found === undefined
    ? ""
    : `${found.coverage.toFixed(3)} (${found.meanCatches.toFixed(1)} catches)`;
}

function percent(fraction: number): string {
  return `${fraction * 100} %`;
}

function average(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
