/** Are the chances stated about skipping calibration the ones that happen? Writes reports/skipping-study. */
import { mean, quantile } from "simple-statistics";
import { type SeasonOutcome, simulateRows, simulateSeasons } from "./skipping/simulate.ts";
import { writeStudy } from "./support/write-study.ts";

const seed = 20_261_126;
const limit = 0.05;
const classEdges = [0, 0.05, 0.15, 0.3, 0.5, 1.0001];
const seasons = 60_000;
const seasonsOfBound = 20_000;
const seasonsOfRows = 1_000;

const calibration = [3, 6, 10].map((fills) => {
  const plan = { fills, spreadFrom: 0.01, spreadTo: 0.06, limit };
  const outcomes = simulateSeasons(plan, seasons, seed + fills);
  return { fills, overall: summary(outcomes), classes: byStatedChance(outcomes) };
});
const bounds = [3, 5, 8].flatMap((fills) =>
  [0.02, 0.04].map((spread) => {
    const plan = { fills, spreadFrom: spread, spreadTo: spread, limit };
    const outcomes = simulateSeasons(plan, seasonsOfBound, seed + 100 * fills);
    return {
      fills,
      spread,
      holds: mean(outcomes.map(({ bound, happened }) => (bound >= happened ? 1 : 0))),
      medianBound: quantile(
        outcomes.map(({ bound }) => bound),
        0.5,
      ),
      trueChance: mean(outcomes.map(({ happened }) => happened)),
    };
  }),
);
const rows = [3, 6, 10].flatMap((fills) =>
  [2, 5].map((inRow) => {
    const plan = { fills, spreadFrom: 0.01, spreadTo: 0.06, limit };
    const outcomes = simulateRows(plan, inRow, seasonsOfRows, seed + 10 * fills + inRow);
    return {
      fills,
      inRow,
      stated: mean(outcomes.map(({ stated }) => stated)),
      happened: mean(outcomes.map(({ happened }) => happened)),
    };
  }),
);

writeStudy("skipping-study", { seed, limit, calibration, bounds, rows }, [
  "# Skipping calibration: are the stated chances the ones that happen?",
  "",
  "Simulated seasons: fills of three catches (catch scatter 1.5 %), the drive then left at the mean of fills. Stated: the",
  "chance of a rate error beyond ± 5 % at the next fill by Student's t. Happened: the same chance for someone who knows the",
  `true mean and spread. Seed ${seed}.`,
  "",
  `## Chance at the next fill, fill-to-fill spread log-uniform from 1 to 6 %, ${seasons} seasons`,
  "",
  "| fills | overall | stated below .05 | .05–.15 | .15–.30 | .30–.50 | above .50 |",
  "|---|---|---|---|---|---|---|",
  ...calibration.map(
    ({ fills, overall, classes }) =>
      `| ${fills} | ${arrow(overall)} | ${classes.map((one) => arrow(one)).join(" | ")} |`,
  ),
  "",
  "The statement is cautious: what happens is rarer than what is said, except for the smallest stated chances after three",
  "fills. That is why every chance is printed with its bound.",
  "",
  `## The bound at 90 % confidence, ${seasonsOfBound} seasons`,
  "",
  "| fills | spread | bound holds | median bound | true chance, mean |",
  "|---|---|---|---|---|",
  ...bounds.map(
    ({ fills, spread, holds, medianBound, trueChance }) =>
      `| ${fills} | ${spread * 100} % | ${holds.toFixed(3)} | ${medianBound.toFixed(2)} | ${trueChance.toFixed(3)} |`,
  ),
  "",
  `## Chance that any of several fills in a row is beyond ± 5 %, ${seasonsOfRows} seasons`,
  "",
  "| fills in the log | fills in a row | stated → happened |",
  "|---|---|---|",
  ...rows.map(({ fills, inRow, ...one }) => `| ${fills} | ${inRow} | ${arrow(one)} |`),
]);

function summary(outcomes: readonly SeasonOutcome[]) {
  return {
    seasons: outcomes.length,
    stated: mean(outcomes.map(({ stated }) => stated)),
    happened: mean(outcomes.map(({ happened }) => happened)),
  };
}

function byStatedChance(outcomes: readonly SeasonOutcome[]) {
  return classEdges.slice(1).map((upper, i) => {
    const lower = classEdges[i] ?? 0;
    return summary(outcomes.filter(({ stated }) => stated >= lower && stated < upper));
  });
}

function arrow({ stated, happened }: { stated: number; happened: number }): string {
  return `${stated.toFixed(2)} → ${happened.toFixed(2)}`;
}
