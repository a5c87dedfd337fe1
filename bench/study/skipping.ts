/** Are the chances stated about skipping calibration the ones that happen? Writes reports/skipping-study. */
import { mean, quantile } from "simple-statistics";
import { overTrue, simulateExpected } from "./skipping/expected-error.ts";
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
const seasonsOfBound = 2_000;
const seasonsOfRange = 500;
const seasonsOfError = 2_000;
const settings = ["mean of fills", 0.03, 0.05, -0.08] as const;
const seasonsOfRows = 1_000;

const calibration = [3, 4, 5, 6, 10].map((fills) => {
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
const alike = [3, 6, 9].flatMap((fills) =>
  [0.02, 0.03, 0.04].map((spread) => {
    const plan = { fills, spread, offCentre: "mean of fills", limit, likeness: 0.5 } as const;
    const outcomes = simulateBounds(plan, seasonsOfBound, seed + 1000 * fills);
    const boundHolds = mean(outcomes.map(({ bound, happened }) => (bound >= happened ? 1 : 0)));
    return { fills, spread, boundHolds };
  }),
);
const meters = {
  calm: { spreadFrom: 0.005, spreadTo: 0.005 },
  ordinary: { spreadFrom: 0.02, spreadTo: 0.02 },
  mixed: { spreadFrom: 0.005, spreadTo: 0.06 },
};
const expectedErrors = Object.entries(meters).flatMap(([meter, spreads]) =>
  [3, 6, 9].map((fills) => {
    const plan = { fills, ...spreads, limit: tolerance };
    const all = simulateExpected(plan, seasonsOfError, seed + 10_000 * fills);
    const mostlyScatter = all.filter((one) => one.mostlyScatter);
    const ratios = (of: typeof all) => ({
      asMeasured: overTrue(of, "asMeasured"),
      byItself: overTrue(of, "byItself"),
      stated: overTrue(of, "stated"),
    });
    return {
      meter,
      fills,
      mostlyScatter: mostlyScatter.length / all.length,
      ofAll: ratios(all),
      ofThese: ratios(mostlyScatter),
      chanceReckoned: mean(all.map((one) => one.chanceReckoned)),
      chanceStated: mean(all.map((one) => one.chanceStated)),
      chanceHappened: mean(all.map((one) => one.chanceHappened)),
    };
  }),
);
const leastRange = Math.min(...bounds.map(({ rangeHolds }) => rangeHolds));
const figures = { seed, limit, tolerance, calibration, bounds, alike, expectedErrors, rows };

writeStudy("skipping-study", figures, [
  "# Skipping calibration: are the stated chances the ones that happen?",
  "",
  "Simulated seasons: fills of three catches (catch scatter 1.5 %), the drive then left at the mean of fills. Stated: the",
  "chance of a rate error beyond ± 5 % at the next fill by Student's t. Happened: the same chance for someone who knows the",
  `true mean and spread. Seed ${seed} by \`npm run study:skipping\`.`,
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
  "The chances here are those reckoned. For a drive at the mean of fills they are cautious: what happens is rarer than what",
  "is said, except for the smallest after three fills. From three to five fills none below .05 is stated, therefore. For a",
  "drive set off centre (a book value) it is not so: there a spread thought too wide makes the chance too small. Every chance",
  "is printed with a bound that allows for both.",
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
  "The bound counts catch scatter as spread of fills. Where the true spread is well above it, the bound holds as often as it",
  "says or more; where it is no larger (1 %), it can fall short with many fills: the scatter of the catches hides how surely",
  `a drive off centre is off. The range of the loss leaves catch scatter out and holds in ${inPercent(leastRange)} of seasons or more.`,
  "",
  `## The same bound where neighbouring fills are alike (correlation .5), ${seasonsOfBound} seasons`,
  "",
  "The drive left at the mean of fills, rate errors beyond ± 5 %. The bound takes fills for independent.",
  "",
  "| fills | spread | bound holds |",
  "|---|---|---|",
  ...alike.map(
    ({ fills, spread, boundHolds }) =>
      `| ${fills} | ${spread * 100} % | ${boundHolds.toFixed(3)} |`,
  ),
  "",
  `## The mean absolute error, stated ÷ true, ${seasonsOfError} seasons`,
  "",
  "The drive left at the mean of fills. A calm meter (fills spread by 0.5 %), an ordinary one (2 %), and mixed meters",
  "(log-uniform from 0.5 to 6 %); catch scatter adds 0.9 % to the spread of fills. Before: by the spread as measured. Now: the",
  "mean over all that the component without catch scatter may be. The chance of more than ± 3 % counts catch scatter in both;",
  "from three to five fills none below .05 is stated.",
  "",
  "| meter | fills | mean error ÷ true, before → now | chance reckoned → stated | happened |",
  "|---|---|---|---|---|",
  ...expectedErrors.map(
    (one) =>
      `| ${one.meter} | ${one.fills} | ${ratio(one.ofAll.asMeasured)} → ${ratio(one.ofAll.stated)} | ${one.chanceReckoned.toFixed(3)} → ${one.chanceStated.toFixed(3)} | ${one.chanceHappened.toFixed(3)} |`,
  ),
  "",
  "Only the seasons in which catch scatter is more than half of the variance found between fills, by the spread as measured,",
  "by the component estimated by itself (s² − s_c², not below zero, with the uncertainty of the mean), and as stated:",
  "",
  "| meter | fills | of all seasons | as measured | component by itself | stated |",
  "|---|---|---|---|---|---|",
  ...expectedErrors.map(
    ({ meter, fills, mostlyScatter, ofThese }) =>
      `| ${meter} | ${fills} | ${mostlyScatter.toFixed(2)} | ${ratio(ofThese.asMeasured)} | ${ratio(ofThese.byItself)} | ${ratio(ofThese.stated)} |`,
  ),
  "",
  "Such seasons do not tell a calm meter from an ordinary one whose fills happened to agree. What is stated is too large for",
  "the one and too small for the other. Over mixed meters the truth lies above it, near the figure by the spread as measured,",
  "which therefore stands beside it as the cautious one; the component by itself, zero in many of them, is farther off.",
  "",
  `## Chance that any of several fills in a row is beyond ± 5 %, ${seasonsOfRows} seasons`,
  "",
  "| fills in the log | fills in a row | stated → happened |",
  "|---|---|---|",
  ...rows.map(({ fills, inRow, ...one }) => `| ${fills} | ${inRow} | ${arrow(one)} |`),
]);

function inPercent(rate: number): string {
  return `${Math.round(100 * rate)} %`;
}

function ratio(value: number | null): string {
  return value === null ? "–" : value.toFixed(2);
}

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
