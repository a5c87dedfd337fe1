/**
 * Has the meter moved? False alarms of a season, power, coverage of the interval for a shift, and settling within a fill.
 * Writes reports/drift-study. Option: --seasons N, default 2000.
 */

import { parseArgs } from "node:util";
import { type IntervalCell, intervalTable } from "./drift/intervals.ts";
import { type RateCell, rateTable, type Way, ways } from "./drift/rates.ts";
import { settlingTable } from "./drift/settling.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const { values } = parseArgs({ options: { seasons: { type: "string", default: "2000" } } });
const seasons = Number(values.seasons);
const seed = 20_261_128;

const numbersOfFills = [4, 5, 6, 8, 10, 12];
const steady = rateTable(
  numbersOfFills.map((fills) => ({ fills })),
  seasons,
  seed,
);
const alike = rateTable(
  [
    ...[0.3, 0.6].flatMap((correlation) => [6, 12].map((fills) => ({ fills, correlation }))),
    ...[6, 12].map((fills) => ({ fills, catches: [1, 8] as const, spread: 0.005 })),
  ],
  seasons,
  seed + 1,
);
const shifted = rateTable(
  [0.01, 0.02, 0.04].flatMap((spread) =>
    [6, 8, 12].map((fills) => ({ fills, spread, shift: 0.05 })),
  ),
  seasons,
  seed + 2,
);
const trending = rateTable(
  [6, 8, 12].map((fills) => ({ fills, perFill: 0.01 })),
  seasons,
  seed + 3,
);
const intervals = intervalTable(seasons, seed + 4);
const settling = settlingTable(seasons, seed + 5);

const rate = (value: number) => value.toFixed(3).replace(/^0/, "");
const short = (value: number) => value.toFixed(2).replace(/^0/, "");
const percent = (value: number) => `${Number((100 * value).toFixed(1))} %`;

/** One row a way, one column a season. */
function rateLines(cells: readonly RateCell[], head: (cell: RateCell) => string): string[] {
  const digits = (way: Way) => (cell: RateCell) =>
    enoughFills(way, cell.fills) ? rate(cell.rates[way]) : "–";
  return table(
    ["", ...cells.map(head)],
    ways.map((way) => [way, ...cells.map(digits(way))]),
  );
}

function enoughFills(way: Way, fills: number): boolean {
  if (way.startsWith("verdict") || way === "trend alone") return fills >= 5;
  return way === "shift alone" ? fills >= 6 : true;
}

function intervalLines(cells: readonly IntervalCell[]): string[] {
  return table(
    [
      "fills",
      "before",
      "shift / spread",
      "found",
      "size",
      "size, where found",
      "place",
      "place, where found",
      "t interval, where found",
    ],
    cells.map((cell) => [
      cell.fills,
      cell.before,
      cell.shift,
      short(cell.found),
      rate(cell.size),
      rate(cell.sizeWhereFound),
      rate(cell.place),
      rate(cell.placeWhereFound),
      rate(cell.tSizeWhereFound),
    ]),
  );
}

const twoErrors = (p: number) => rate(2 * Math.sqrt((p * (1 - p)) / seasons));
const askedEvery = steady.map(({ rates }) => rates["verdict, asked after every fill"]);

writeStudy(
  "drift-study",
  { seasons, seed, steady, alike, shifted, trending, intervals, settling },
  [
    "# Has the meter moved? False alarms, power and coverage",
    "",
    "Simulated seasons: catches of 20 turns and 6 kg, three a fill, catch scatter 1.5 %, fill-to-fill spread 2 %, all normal and",
    `independent unless a table says otherwise; ${seasons} seasons a cell, seed ${seed}. Every finding is at 5 %. Two standard errors of a`,
    `rate near .05 are ± ${twoErrors(0.05)}, near .5 ± ${twoErrors(0.5)}. The verdict is Holm's adjustment of trend and shift; "any fill as it came" uses`,
    "5 % divided by the number of fills from the fourth on. The charts and the tests by name do not decide anything.",
    "",
    "## 1. False alarms of a steady season",
    "",
    ...rateLines(steady, ({ fills }) => `${fills} fills`),
    "",
    "The verdict stays below 5 %, because Holm's adjustment allows for two tests that mostly find the same. Whoever asks again",
    `after every fill gets more than one look: ${rate(askedEvery.at(-1) ?? 0)} by the twelfth fill. A report states that figure for its own number of fills.`,
    "Mann–Kendall cannot reject with four fills. The CUSUM's rate grows with the season, one reason why it is a chart and no",
    "verdict.",
    "",
    "## 2. Seasons that are not as assumed",
    "",
    "Neighbouring fills alike (lag-one correlation), and one to eight catches a fill with hardly any spread between fills (0.5 %).",
    "",
    ...rateLines(alike, ({ fills, correlation }) =>
      correlation > 0 ? `${fills} fills, r = ${correlation}` : `${fills} fills, 1–8 catches`,
    ),
    "",
    'A slow wander raises the season tests, which is why a trend is worded "trend or slow wander". The newest fill against its band',
    "is hurt much less. Unequal numbers of catches raise rates a little where fills hardly differ but by their catches.",
    "",
    "## 3. Power: a shift of 5 % halfway",
    "",
    ...rateLines(shifted, ({ fills, spread }) => `${fills} fills, spread ${percent(spread)}`),
    "",
    "What decides is the spread between fills, not the number of catches. A meter with a spread of 4 % hides a shift of 5 % in most",
    "seasons, so a report states the chance that its own meter's shift would have been found.",
    "",
    "## 4. Power: 1 % a fill",
    "",
    ...rateLines(trending, ({ fills }) => `${fills} fills`),
    "",
    "## 5. The interval for a shift",
    "",
    "Share of seasons in which the interval (± the critical value of the test) holds the true shift, and the range of places the true one;",
    "in all seasons, and in those in which the shift was found.",
    "",
    ...intervalLines(intervals),
    "",
    "A t interval at the split that looks best holds the truth too seldom. With the critical value of the test the shift is held at least",
    "as often as stated, but for small shifts: those of one spread are found only when chance makes them look large, and a small shift",
    "two fills from the end of a long season is held least.",
    "",
    "## 6. Settling within a fill",
    "",
    "Slope of the delivery on catch order. First half: nothing settles, so the rate should be .05; second half: 1 % less with every catch.",
    "",
    ...table(
      [
        "fills",
        "turns of the catches",
        "per catch",
        "line through catches",
        "line through residuals",
      ],
      settling.map((cell) => [
        cell.fills,
        cell.turns.join(", "),
        percent(cell.perCatch),
        rate(cell.found),
        cell.foundByResiduals === null ? "–" : rate(cell.foundByResiduals),
      ]),
    ),
    "",
    "Both keep their rate whatever the turns, but residuals about the fill's delivery hide part of the slope where turns are unequal,",
    "so the line through the catches, weighted by their turns, finds more.",
  ],
);
