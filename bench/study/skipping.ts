/** Are the chances stated about skipping calibration the ones that happen? Writes reports/skipping-study. */
import { mean, quantile } from "simple-statistics";
import {
  type SeasonOutcome,
  simulateBounds,
  simulateRanges,
  simulateRows,
  simulateSeasons,
} from "./skipping/simulate.ts";
import { writeStudy } from "./support/write-study.ts";

const seed = 20_261_126;
const limit = 0.05;
const classEdges = [0, 0.05, 0.15, 0.3, 0.5, 1.0001];
const seasons = 60_000;
const tolerance = 0.03;
const seasonsOfBound = 4_000;
const seasonsOfRange = 1_000;
const settings = ["mean of fills", 0.03, 0.05, -0.08] as const;
const seasonsOfRows = 1_000;

const calibration = [3, 6, 10].map((fills) => {
  const plan = { fills, spreadFrom: 0.01, spreadTo: 0.06, limit };
  const outcomes = simulateSeasons(plan, seasons, seed + fills);
  return { fills, overall: summary(outcomes), classes: byStatedChance(outcomes) };
});
const bounds = settings.flatMap((offCentre) =>
  [3, 5, 9].flatMap((fills) =>
    [0.01, 0.02, 0.04].map((spread) => {
      const plan = { fills, spread, offCentre, limit: tolerance };
      const chances = simulateBounds(plan, seasonsOfBound, seed + 100 * fills);
      const losses = simulateRanges(plan, seasonsOfRange, seed + 100 * fills);
      return {
        offCentre,
        fills,
        spread,
        trueChance: mean(chances.map(({ happened }) => happened)),
        medianBound: quantile(
          chances.map(({ bound }) => bound),
          0.5,
        ),
        boundHolds: mean(chances.map(({ bound, happened }) => (bound >= happened ? 1 : 0))),
        rangeHolds: mean(
          losses.map(({ lower, upper, happened }) =>
            lower <= happened && happened <= upper ? 1 : 0,
          ),
        ),
      };
    }),
  ),
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

writeStudy("skipping-study", { seed, limit, tolerance, calibration, bounds, rows }, [
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
  "For a drive at the mean of fills the statement is cautious: what happens is rarer than what is said, except for the",
  "smallest stated chances after three fills. For a drive set off centre (a book value) that is not so: there a spread",
  "thought too wide makes the stated chance too small. Every chance is printed with a bound that allows for both.",
  "",
  `## The bound of the chance and the range of the loss, ${seasonsOfBound} and ${seasonsOfRange} seasons`,
  "",
  "The drive left at the mean of fills, or at a book value that fills differ from by so much on average; chance of a rate",
  "error beyond ± 3 %. The bound is to hold at 90 %, the range of the loss a hectare at 80 %. What happened is that of true",
  "deliveries; the spread of the fills holds their catch scatter too, 0.9 % here.",
  "",
  "| off centre | fills | spread | true chance, mean | median bound | bound holds | range of the loss holds |",
  "|---|---|---|---|---|---|---|",
  ...bounds.map(
    ({ offCentre, fills, spread, trueChance, medianBound, boundHolds, rangeHolds }) =>
      `| ${offCentre === "mean of fills" ? offCentre : `${offCentre * 100} %`} | ${fills} | ${spread * 100} % | ${trueChance.toFixed(3)} | ${medianBound.toFixed(2)} | ${boundHolds.toFixed(3)} | ${rangeHolds.toFixed(3)} |`,
  ),
  "",
  "Where the true spread is well above the catch scatter, the bound holds as often as it says or more, and the range of the",
  "loss in 76 % of seasons or more. Where it is no larger (1 %), both can fall short with many fills: the scatter of the",
  "catches hides how surely a drive off centre is off, and makes the loss of a drive on centre look larger than it is.",
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
