/** What does it cost to stop catching when another catch no longer pays? Writes reports/money-study. */
import { nothing, twoOtherBins } from "./money/lent.ts";
import { type JobOutcome, rules, simulateMoney } from "./money/simulate.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const replicates = 4_000;
const seed = 20_261_129;
const areas = [5, 15, 40, 120];
const perPercents = [0.2, 0.6, 1.5, 3];
const jobs = areas.flatMap((hectares) =>
  perPercents.map((perPercent) => ({ hectares, perPercent })),
);

const situations = [twoOtherBins, nothing].flatMap((lent, l) =>
  [0, 3, 6].map((fills) => {
    const outcomes = simulateMoney(fills, lent, jobs, replicates, seed + 100 * l + fills);
    return {
      lent: lent.name,
      fills,
      rules: rules.map(({ name }) => summaryOf(outcomes, name)),
      outcomes,
    };
  }),
);
const worst = (rule: string, lent: string) =>
  situations
    .filter((one) => one.lent === lent)
    .flatMap((one) => one.rules.filter(({ name }) => name === rule))
    .map(({ above }) => above);

writeStudy("money-study", { replicates, seed, areas, perPercents, situations }, [
  "# Catching until it stops paying: what it costs",
  "",
  "Mean cost of a fill, the error of its rate and its catches together, above that of somebody who knows the true scatter of",
  "catches and spread of fills and picks the cheapest number of catches, or none from the third fill on. Stopped by money: at",
  "the first catch after which another costs more than it is expected to save, and none where leaving the fill at the mean of",
  "the earlier ones costs least. Stopped by the tolerance: as soon as the 95 % half-width is within ± 3 %, and none from six",
  "fills on where the chance of more is at most 5 %.",
  "",
  `Money stays within ${percent(Math.max(...worst("money", twoOtherBins.name)))} of that with two other bins to lend their scatter, and within ${percent(Math.max(...worst("money", nothing.name)))} with nothing lent; a fixed`,
  `tolerance costs ${percent(Math.min(...worst("tolerance 3 %", twoOtherBins.name)))} more or worse.`,
  "",
  `Simulated: ${replicates} meters a situation, catches of 20 turns that scatter by 1.5 % and fills that differ by 2 % in the middle of`,
  "meters (95 % of meters within a factor of 2.7 either way, the other bins likewise), three catches of each earlier fill, normal",
  `errors, a scale without steps; a catch costs 4, setting up 8; areas of ${areas.join(", ")} ha, a percent of rate error costs`,
  `${perPercents.join(", ")} a hectare either way; at most 8 catches; seed ${seed} by \`npm run study:money\`. Coverage: of the half-width as it stood when the`,
  "catches ended, averaged over the jobs.",
  "",
  ...table(
    [
      "lent",
      "earlier fills",
      "rule",
      "cost above",
      "small and cheap",
      "large and dear",
      "catches",
      "left uncaught",
      "coverage",
    ],
    situations.flatMap(({ lent, fills, rules: all }) =>
      all.map((one) => [
        lent,
        fills,
        one.name,
        percent(one.above),
        percent(one.smallCheap),
        percent(one.largeDear),
        one.meanCatches.toFixed(1),
        percent(one.skipped),
        one.coverage.toFixed(3),
      ]),
    ),
  ),
  "",
  `Small and cheap: ${areas[0]} ha at ${perPercents[0]}; large and dear: ${areas.at(-1)} ha at ${perPercents.at(-1)}.`,
]);

/** Over all jobs together: the sum of their costs against the sum of the least. */
function summaryOf(outcomes: readonly JobOutcome[], name: string) {
  const own = outcomes.filter(({ rule }) => rule === name);
  const least = total(own.map(({ meanCost, above }) => meanCost / (1 + above)));
  const covered = own.flatMap(({ coverage }) => coverage ?? []);
  return {
    name,
    above: total(own.map(({ meanCost }) => meanCost)) / least - 1,
    smallCheap: own[0]?.above ?? 0,
    largeDear: own.at(-1)?.above ?? 0,
    meanCatches: total(own.map(({ meanCatches }) => meanCatches)) / own.length,
    skipped: total(own.map(({ skipped }) => skipped)) / own.length,
    coverage: total(covered) / covered.length,
  };
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
