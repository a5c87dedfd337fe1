import { type Claim, claimWords, type Verdict } from "../support/claims.ts";
import { table } from "../support/markdown.ts";
import type { AlarmCell, FoundCell, NextFillCell, StatedPowerCell } from "./decision.ts";
import type { IntervalCell } from "./intervals.ts";
import { type RateCell, type Way, ways } from "./rates.ts";
import type { SettlingCell } from "./settling.ts";
import type { TogetherCell } from "./together.ts";

/** A row's name, what it is held to, and whether it keeps that; null: printed without claim. */
interface Held {
  readonly name: string;
  readonly claim: Claim | null;
  readonly verdict: Verdict | null;
}

type Found = FoundCell & Held;

/** All that the page is made from. */
export interface DriftStudy {
  readonly seasons: number;
  readonly logs: number;
  readonly seed: number;
  readonly alarms: readonly (AlarmCell & Held)[];
  readonly lasting: readonly Found[];
  readonly once: readonly Found[];
  readonly rising: readonly Found[];
  readonly nextFills: readonly (NextFillCell & Held)[];
  readonly stated: readonly StatedPowerCell[];
  readonly explaining: readonly RateCell[];
  readonly intervals: readonly IntervalCell[];
  readonly settling: readonly SettlingCell[];
  readonly together: readonly (TogetherCell & Held)[];
}

const rate = (value: number) => value.toFixed(3).replace(/^0/, "");
const short = (value: number) => value.toFixed(2).replace(/^0/, "");
const percent = (value: number) => `${Number((100 * value).toFixed(1))} %`;

const claimHead = ["claim", ""];
const claimCells = ({ claim, verdict }: Held) => [
  claim === null ? "–" : claimWords(claim),
  verdict ?? "",
];

function alarmLines({ alarms }: DriftStudy): string[] {
  return table(
    ["by this many fills", ...(alarms[0]?.by ?? []).map(({ fills }) => fills), "claim for 12", ""],
    alarms.map((cell) => [
      cell.name,
      ...cell.by.map(({ share }) => rate(share)),
      ...claimCells(cell),
    ]),
  );
}

function changeName({ shift = 0, from, perFill, once, spreadGrows }: Partial<Found>): string {
  if (perFill !== undefined) return `${percent(perFill)} a fill`;
  const where = once === true ? `in fill ${from} only` : `from fill ${from}`;
  return `${percent(shift)} ${where}${spreadGrows === true ? ", spread grows too" : ""}`;
}

function lastingLines({ lasting }: DriftStudy): string[] {
  return table(
    [
      "",
      "",
      "found by fill 12",
      ...claimHead,
      "within three fills",
      "placed within one",
      "size held",
      "named at once",
      "called moved",
      "called trending",
    ],
    lasting.map((cell) => [
      changeName(cell),
      cell.name,
      short(cell.found),
      ...claimCells(cell),
      short(cell.withinThree),
      short(cell.placed),
      short(cell.sizeHeld),
      short(cell.atOnce),
      short(cell.moved),
      short(cell.trending),
    ]),
  );
}

function foundLines(cells: readonly Found[]): string[] {
  return table(
    ["", "", "found by fill 12", "named at once", "called moved", "called trending"],
    cells.map((cell) => [
      changeName(cell),
      cell.name,
      short(cell.found),
      short(cell.atOnce),
      short(cell.moved),
      short(cell.trending),
    ]),
  );
}

function nextFillLines({ nextFills }: DriftStudy): string[] {
  const band = (covered: number, half: number) => `${rate(covered)} ± ${percent(half)}`;
  return table(
    [
      "",
      "by stretches",
      ...claimHead,
      "any finding",
      "by stretches, of those",
      "by itself, all fills as one",
    ],
    nextFills.map((cell) => [
      cell.name,
      band(cell.covered, cell.halfWidth),
      ...claimCells(cell),
      short(cell.alarmed),
      short(cell.coveredOfAlarmed),
      band(cell.allCovered, cell.allHalfWidth),
    ]),
  );
}

function togetherLines({ together }: DriftStudy): string[] {
  return table(
    [
      "",
      "",
      "of a meter",
      "on the day",
      "within three fills",
      "of any meter",
      "if meters were independent",
    ],
    together.map((cell) => [
      cell.shift === undefined ? "steady" : changeName(cell),
      cell.name,
      rate(cell.found),
      rate(cell.onTheDay),
      cell.shift === undefined ? "" : short(cell.withinThree),
      rate(cell.anyOfLog),
      rate(1 - (1 - cell.found) ** cell.bins),
    ]),
  );
}

function statedLines({ stated }: DriftStudy): string[] {
  return table(
    ["", "fills", "spread", "said in", "stated", "happened"],
    stated.map((cell) => [
      cell.library === null ? "by itself" : "2 × 9",
      cell.fills,
      percent(cell.spread),
      short(cell.said),
      short(cell.stated),
      short(cell.happened),
    ]),
  );
}

/** One row a way, one column a season. */
function rateLines({ explaining }: DriftStudy): string[] {
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
    ["", ...explaining.map(head)],
    ways.map((way: Way) => [way, ...explaining.map(({ rates }) => rate(rates[way]))]),
  );
}

function intervalLines({ intervals }: DriftStudy): string[] {
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
    intervals.map((cell) => [
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

function settlingLines({ settling }: DriftStudy): string[] {
  return table(
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
  );
}

/** The page, line by line. */
export function driftPage(study: DriftStudy): readonly string[] {
  const { seasons, logs, seed } = study;
  const twoErrors = (p: number) => rate(2 * Math.sqrt((p * (1 - p)) / seasons));
  return [
    "# Has the meter moved? False alarms, power and what is left to plan by",
    "",
    "Simulated seasons of 12 fills: catches of 20 turns and 6 kg, three a fill, catch scatter 1.5 %, fill-to-fill spread 2 %, all normal",
    `and independent unless a table says otherwise; ${seasons} seasons a cell, seed ${seed}. Two standard errors of a rate near .05 are`,
    `± ${twoErrors(0.05)}, near .5 ± ${twoErrors(0.5)}; a claim is missed where it lies further off than that. The decision is asked after every`,
    'fill; a finding is any of "moved", "trending" and "this fill differs".',
    "",
    '"By itself" has the meter\'s own spread only. "2 × 9" has a library beside it: two other meters of nine fills each, from other',
    "seasons, whose spreads are drawn as this meter's own is, about a middle that nobody knows (standard deviation of the logarithm",
    '0.5, so 95 % of meters within a factor 2.7 of it), and told within the levels that each shows by itself. "In its middle" has',
    "the meter's own spread there.",
    "",
    "## 1. Any finding in a season without a change, asked after every fill",
    "",
    ...alarmLines(study),
    "",
    "A steady meter is called something once in 20 seasons of twelve fills, and twice that by the twenty-fourth, whether or not others",
    "lend their spread. Tails, skew, neighbours that are alike, and fills that differ more than those of the meters that lend raise it; a",
    "report says so where it says the figure.",
    "",
    "## 2. A change that lasts",
    "",
    ...lastingLines(study),
    "",
    "Placed and held are of the seasons in which a change of level was found; the size is that of the last change, with its interval.",
    "A change after three fills has little to be measured against, one near the end little time to show. With a lent spread a change is",
    "found more often and above all sooner; most where the meter is in the middle of its library, because a wild library hides more",
    "than a calm one shows: of meters anywhere about the middle, the share claimed of 8 % from fill 4 is not reached. Where the spread",
    "grows with the level a rise is found a little less often.",
    "",
    "## 3. One odd fill",
    "",
    ...foundLines(study.once),
    "",
    "One odd fill is named at once if it stands far out. It is seldom called a move: the next fill settles that.",
    "",
    "## 4. A rise from fill to fill",
    "",
    ...foundLines(study.rising),
    "",
    "A rise is found as often as a step; whether it is called moved or trending depends on chance.",
    "",
    "## 5. The band for the next fill",
    "",
    "Share of seasons whose band (95 %) holds the true delivery of the fill after the last, and its median half-width. The meter's",
    "spread is drawn as those of its library, about 2 %, but in the last three rows.",
    "",
    ...nextFillLines(study),
    "",
    "With the level since the last change and the spread within all stretches the band is up to half as wide where a meter moved, and still",
    "holds about what it says; looking for changes costs a steady meter a point at most. What a finding without reason leaves behind, and a",
    "change of which too little is seen yet, is covered less. So is a meter that creeps or wanders, by either method: while it is called",
    'trending, a report says "catch every fill".',
    "",
    "## 6. What is said to have shown by now",
    "",
    "Mean chance stated on steady seasons that a shift of 5 % about halfway would have shown, and how often such a shift does show. With",
    'a library the chance is stated as if the meter\'s own spread spoke alone, and "at least".',
    "",
    ...statedLines(study),
    "",
    "## 7. Tests that look once, at the end",
    "",
    "They explain and decide nothing; each at 5 %.",
    "",
    ...rateLines(study),
    "",
    "Mann–Kendall cannot reject with four fills. The CUSUM's rate grows with the season, one reason why it is a chart and no verdict.",
    "",
    "## 8. The interval for a shift",
    "",
    "Share of seasons in which the interval (± the critical value of the test) holds the true shift, and the range of places the true one;",
    "in all seasons, and in those in which the shift was found.",
    "",
    ...intervalLines(study),
    "",
    "A t interval at the split that looks best holds the truth too seldom. With the critical value of the test the shift is held at least",
    "as often as stated, but for small shifts: those of one spread are found only when chance makes them look large, and a small shift",
    "two fills from the end of a long season is held least.",
    "",
    "## 9. Settling within a fill",
    "",
    "Slope of the delivery on catch order. First half: nothing settles, so the rate should be .05; second half: 1 % less with every catch.",
    "",
    ...settlingLines(study),
    "",
    "Both keep their rate whatever the turns, but residuals about the fill's delivery hide part of the slope where turns are unequal,",
    "so the line through the catches, weighted by their turns, finds more.",
    "",
    "## 10. Bins of one log",
    "",
    `${logs} logs a row. The bins lend each other their spread, told within the levels that each shows by itself, and are asked after every`,
    "fill of the log as it then stood. Where something changes, it changes in all bins at once.",
    "",
    ...togetherLines(study),
    "",
    "Every meter is asked with its full budget, so a report of several carries more findings without reason, as many as if its meters were",
    "independent; a report says that once. Where all bins change at once, the others lend too much until their own change is found; what",
    "is found of an earlier fill only then is read as a change of level since that fill, not as one of the day.",
  ];
}
