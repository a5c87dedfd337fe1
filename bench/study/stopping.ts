/** Does the interval of a fill whose catches stop at the tolerance still hold the truth? Writes reports/stopping-study. */

import { mean } from "../../src/statistics/summary.ts";
import { mostCatches, type StudiedRule, studiedRules } from "./stopping/rules.ts";
import { type StoppingOutcome, simulateStopping } from "./stopping/simulate.ts";
import { claimWords, verdictOn } from "./support/claims.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const replicates = 20_000;
const seed = 20_261_129;
const tolerance = 0.02;
/** Scatter of a catch over the tolerance: without a reading of the scale nothing else matters. */
const ratios = [0.25, 0.5, 0.7, 1, 1.4, 1.7, 2, 2.4, 2.8, 4];
const kinds = ["the fill", "the middle"] as const;

const outcomes = studiedRules.flatMap((rule, r) =>
  kinds.flatMap((of, k) =>
    ratios.map((ratio, c) => {
      const cell = { of, scatter: ratio * tolerance, tolerance };
      return simulateStopping(rule, cell, replicates, seed + 100 * r + 20 * k + c);
    }),
  ),
);
const summary = studiedRules.map((rule) => {
  const claimed = cellsOf(rule, claimedOf(rule));
  const worst = worstOf(claimed);
  return {
    rule: rule.name,
    fewest: rule.fewest,
    phi: rule.phi,
    stated: rule.stated,
    worst: worstOf(cellsOf(rule, "the middle")),
    worstOfOneScatter: worstOf(cellsOf(rule, "the fill")),
    mean: mean(claimed.map(({ coverage }) => coverage)),
    meanCatches: mean(claimed.map(({ meanCatches }) => meanCatches)),
    claim: rule.claim,
    verdict: rule.claim === null ? null : verdictOn(worst, { from: rule.claim }, replicates),
  };
});
for (const { rule, verdict } of summary) if (verdict === "missed") console.log(`Missed: ${rule}`);

writeStudy("stopping-study", { replicates, seed, tolerance, summary, outcomes }, [
  "# Stopping when the tolerance is reached: coverage",
  "",
  "Catches of one fill are taken one at a time until the half-width of the 95 % interval, times a factor φ, is within the tolerance.",
  "Stopping on the width favours fills whose catches happen to agree, so the half-width itself is too good. In use it is stated as the",
  `larger of φ · half-width and tolerance, with a fewest number of catches and at most ${mostCatches}; number and factor depend on who`,
  "speaks for the scatter beside the fill's own catches.",
  "",
  `Simulated: normal catches, ${replicates} fills a cell, seed ${seed} by \`npm run study:stopping\`. Other bins have one fill of three catches each, earlier fills three`,
  "catches each; meters scatter within a factor 2.7 of their middle, fills of a meter within 1.5 (95 %). The scale reads to the last",
  `digit, so only scatter over tolerance matters: ${ratios[0]} to ${ratios.at(-1)}, of the middle of the meters (coverage over meters, which is what`,
  "lenders can promise) or of the fill that is caught (coverage of fills that all scatter so much, the middle being anywhere about",
  "them). Nobody is centred on the fill. The claim is about the first, and without lenders, where nothing is drawn, about the second.",
  "Monte Carlo error of a coverage near 0.95: ± 0.003 (two standard errors), which a claim allows for.",
  "",
  ...table(
    [
      "rule",
      "φ",
      "stated",
      "worst cell over meters",
      "worst cell of one scatter",
      "claim",
      "",
      "mean of cells",
      "catches, mean",
    ],
    summary.map((one) => [
      one.rule,
      one.phi,
      one.stated,
      one.worst.toFixed(3),
      one.worstOfOneScatter.toFixed(3),
      one.claim === null ? "–" : claimWords({ from: one.claim }),
      one.verdict ?? "",
      one.mean.toFixed(3),
      one.meanCatches.toFixed(1),
    ]),
  ),
  "",
  "A meter far wilder than the bins that lend is told too early that its catches are enough, and no factor mends that: a report says",
  "of it that it scatters more than the other bins, and shows the figure by itself.",
  "",
  "Coverage of every cell that the claim is about, and the mean number of catches, by scatter over tolerance:",
  "",
  ...table(
    ["rule", ...ratios],
    studiedRules
      .filter(({ stated }) => stated !== "half-width")
      .map((rule) => [rule.name, ...cellsOf(rule, claimedOf(rule)).map(cellWords)]),
  ),
]);

function claimedOf({ ground }: StudiedRule): StoppingOutcome["of"] {
  return ground.otherBins + ground.earlierFills === 0 ? "the fill" : "the middle";
}

function cellsOf({ name }: StudiedRule, kind: StoppingOutcome["of"]): readonly StoppingOutcome[] {
  return outcomes.filter(({ rule, of }) => rule === name && of === kind);
}

function worstOf(cells: readonly StoppingOutcome[]): number {
  return Math.min(...cells.map(({ coverage }) => coverage));
}

function cellWords({ coverage, meanCatches }: StoppingOutcome): string {
  return `${coverage.toFixed(3)} (${meanCatches.toFixed(1)})`;
}
