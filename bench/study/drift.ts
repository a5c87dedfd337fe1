/**
 * Has the meter moved? False alarms and power of the decision after every fill, the next fill's band after changes of
 * level, what is stated of the power, and the tests that explain. Writes reports/drift-study. Option: --seasons N, default
 * 10,000.
 */

import { parseArgs } from "node:util";
import {
  type AlarmCell,
  alarmTable,
  type FoundCell,
  foundTable,
  type NextFillCell,
  nextFillTable,
  statedPowerTable,
} from "./drift/decision.ts";
import { type IntervalCell, intervalTable } from "./drift/intervals.ts";
import { type RateCell, rateTable, type Way, ways } from "./drift/rates.ts";
import type { SeasonPlan } from "./drift/season.ts";
import { settlingTable } from "./drift/settling.ts";
import { table } from "./support/markdown.ts";
import { writeStudy } from "./support/write-study.ts";

const { values } = parseArgs({ options: { seasons: { type: "string", default: "10000" } } });
const seasons = Number(values.seasons);
const seed = 20_261_128;

const rate = (value: number) => value.toFixed(3).replace(/^0/, "");
const short = (value: number) => value.toFixed(2).replace(/^0/, "");
const percent = (value: number) => `${Number((100 * value).toFixed(1))} %`;
const twoErrors = (p: number) => rate(2 * Math.sqrt((p * (1 - p)) / seasons));

type Named = readonly [name: string, plan: Partial<SeasonPlan>];

const steadyPlans: readonly Named[] = [
  ["normal, independent", {}],
  ["1 to 8 catches a fill, spread 1 %", { catches: [1, 8], spread: 0.01 }],
  ["heavy tails (t on 4 degrees of freedom)", { law: "heavy tails" }],
  ["skewed (exponential)", { law: "skewed" }],
  ["neighbours alike, correlation 0.3", { correlation: 0.3 }],
  ["neighbours alike, correlation 0.6", { correlation: 0.6 }],
];
const plansOf = (named: readonly Named[]) => named.map(([, plan]) => plan);
const alarms = alarmTable(plansOf(steadyPlans), [4, 6, 9, 12, 18, 24], seasons, seed);

const shiftsAt = (shift: number, fills: readonly number[], more: Partial<SeasonPlan> = {}) =>
  fills.map((from) => ({ shift, from, ...more }));
const lasting = foundTable(
  [...shiftsAt(0.05, [4, 7, 10]), ...shiftsAt(0.08, [3, 4, 7]), ...shiftsAt(0.12, [4])],
  seasons,
  seed + 100,
);
const growing = foundTable(
  [...shiftsAt(0.05, [7], { spreadGrows: true }), ...shiftsAt(0.08, [4], { spreadGrows: true })],
  seasons,
  seed + 200,
);
const once = foundTable(
  [...shiftsAt(0.08, [7], { once: true }), ...shiftsAt(0.12, [4, 7, 10], { once: true })],
  seasons,
  seed + 300,
);
const rising = foundTable([{ perFill: 0.01 }, { perFill: 0.005 }], seasons, seed + 400);

const nextPlans: readonly Named[] = [
  ["steady", {}],
  ["5 % from fill 4", { shift: 0.05, from: 4 }],
  ["5 % from fill 7", { shift: 0.05, from: 7 }],
  ["8 % from fill 4", { shift: 0.08, from: 4 }],
  ["8 % from fill 7", { shift: 0.08, from: 7 }],
  ["5 % from fill 7, known by the eighth", { fills: 8, shift: 0.05, from: 7 }],
  ["12 % in fill 7 only", { shift: 0.12, from: 7, once: true }],
  ["0.5 % a fill", { perFill: 0.005 }],
  ["neighbours alike, correlation 0.6", { correlation: 0.6 }],
  ["skewed (exponential)", { law: "skewed" }],
];
const nextFills = nextFillTable(plansOf(nextPlans), seasons, seed + 500);

const stated = statedPowerTable(
  [6, 9, 12].flatMap((fills) => [0.01, 0.02].map((spread) => ({ fills, spread, shift: 0.05 }))),
  seasons,
  seed + 600,
);

const explaining = rateTable(
  [
    ...[6, 12].map((fills) => ({ fills })),
    ...[6, 12].map((fills) => ({ fills, correlation: 0.6 })),
    ...[8, 12].map((fills) => ({ fills, shift: 0.05 })),
    ...[8, 12].map((fills) => ({ fills, perFill: 0.01 })),
  ],
  seasons,
  seed + 700,
);
const intervals = intervalTable(seasons, seed + 800);
const settling = settlingTable(seasons, seed + 900);

function alarmLines(): string[] {
  const by = (cell: AlarmCell) => cell.by.map(({ share }) => rate(share));
  return table(
    ["by this many fills", ...(alarms[0]?.by ?? []).map(({ fills }) => fills)],
    alarms.map((cell, i) => [steadyPlans[i]?.[0] ?? "", ...by(cell)]),
  );
}

function changeName({ shift = 0, from, perFill, once, spreadGrows }: FoundCell): string {
  if (perFill !== undefined) return `${percent(perFill)} a fill`;
  const where = once === true ? `in fill ${from} only` : `from fill ${from}`;
  return `${percent(shift)} ${where}${spreadGrows === true ? ", spread grows too" : ""}`;
}

function foundLines(cells: readonly FoundCell[], lastingOnes: boolean): string[] {
  return table(
    [
      "",
      "found by fill 12",
      ...(lastingOnes ? ["within three fills", "placed within one", "size held"] : []),
      "named at once",
      "called moved",
      "called trending",
    ],
    cells.map((cell) => [
      changeName(cell),
      short(cell.found),
      ...(lastingOnes ? [short(cell.withinThree), short(cell.placed), short(cell.sizeHeld)] : []),
      short(cell.atOnce),
      short(cell.moved),
      short(cell.trending),
    ]),
  );
}

function nextFillLines(cells: readonly NextFillCell[]): string[] {
  const band = (covered: number, half: number) => `${rate(covered)} ± ${percent(half)}`;
  return table(
    ["", "all fills as one", "by stretches", "any finding", "by stretches, of those"],
    cells.map((cell, i) => [
      nextPlans[i]?.[0] ?? "",
      band(cell.allCovered, cell.allHalfWidth),
      band(cell.covered, cell.halfWidth),
      short(cell.alarmed),
      short(cell.coveredOfAlarmed),
    ]),
  );
}

/** One row a way, one column a season. */
function rateLines(cells: readonly RateCell[]): string[] {
  const head = ({ fills, correlation, shift, perFill }: RateCell) =>
    [
      `${fills} fills`,
      correlation > 0 ? `r = ${correlation}` : "",
      shift > 0 ? `${percent(shift)} halfway` : "",
      perFill > 0 ? `${percent(perFill)} a fill` : "",
    ]
      .filter((part) => part !== "")
      .join(", ");
  return table(
    ["", ...cells.map(head)],
    ways.map((way: Way) => [way, ...cells.map(({ rates }) => rate(rates[way]))]),
  );
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

writeStudy(
  "drift-study",
  {
    seasons,
    seed,
    alarms,
    lasting,
    growing,
    once,
    rising,
    nextFills,
    stated,
    explaining,
    intervals,
    settling,
  },
  [
    "# Has the meter moved? False alarms, power and what is left to plan by",
    "",
    "Simulated seasons of 12 fills: catches of 20 turns and 6 kg, three a fill, catch scatter 1.5 %, fill-to-fill spread 2 %, all normal",
    `and independent unless a table says otherwise; ${seasons} seasons a cell, seed ${seed}. Two standard errors of a rate near .05 are`,
    `± ${twoErrors(0.05)}, near .5 ± ${twoErrors(0.5)}. The decision is asked after every fill, with the meter's own spread; a finding is any of`,
    '"moved", "trending" and "this fill differs".',
    "",
    "## 1. Any finding in a season without a change, asked after every fill",
    "",
    ...alarmLines(),
    "",
    "A steady meter is called something once in 20 seasons of twelve fills, and twice that by the twenty-fourth. Tails, skew and above all",
    "neighbours that are alike raise it, which a report says where it says the figure.",
    "",
    "## 2. A change that lasts",
    "",
    ...foundLines([...lasting, ...growing], true),
    "",
    "Placed and held are of the seasons in which a change of level was found; the size is that of the last change, with its interval.",
    "A change after three fills has little to be measured against, one near the end little time to show. Where the spread grows with the",
    "level, as it does for the last two rows, a rise is found a little less often.",
    "",
    "## 3. One odd fill",
    "",
    ...foundLines(once, false),
    "",
    "One odd fill is named at once if it stands far out. It is hardly ever called a move: the next fill settles that.",
    "",
    "## 4. A rise from fill to fill",
    "",
    ...foundLines(rising, false),
    "",
    "A rise is found as often as a step; whether it is called moved or trending depends on chance.",
    "",
    "## 5. The band for the next fill",
    "",
    "Share of seasons whose band (95 %) holds the true delivery of the fill after the last, and its median half-width.",
    "",
    ...nextFillLines(nextFills),
    "",
    "With the level since the last change and the spread within all stretches the band is up to half as wide where a meter moved, and still",
    "holds about what it says; looking for changes costs a steady meter a point at most. What a finding without reason leaves behind, and a",
    "change of which too little is seen yet, is covered less. So is a meter that creeps or wanders, by either method: while it is called",
    'trending, a report says "catch every fill".',
    "",
    "## 6. What is said to have shown by now",
    "",
    "Mean chance stated on steady seasons that a shift of 5 % about halfway would have shown, and how often such a shift does show.",
    "",
    ...table(
      ["fills", "spread", "said in", "stated", "happened"],
      stated.map((cell) => [
        cell.fills,
        percent(cell.spread),
        short(cell.said),
        short(cell.stated),
        short(cell.happened),
      ]),
    ),
    "",
    "## 7. Tests that look once, at the end",
    "",
    "They explain and decide nothing; each at 5 %.",
    "",
    ...rateLines(explaining),
    "",
    "Mann–Kendall cannot reject with four fills. The CUSUM's rate grows with the season, one reason why it is a chart and no verdict.",
    "",
    "## 8. The interval for a shift",
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
    "## 9. Settling within a fill",
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
