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

export const rate = (value: number) => value.toFixed(3).replace(/^0/, "");
const short = (value: number) => value.toFixed(2).replace(/^0/, "");
const percent = (value: number) => `${Number((100 * value).toFixed(1))} %`;

const claimHead = ["claim", ""];
const claimCells = ({ claim, verdict }: Held) => [
  claim === null ? "–" : claimWords(claim),
  verdict ?? "",
];

export function alarmLines({ alarms }: DriftStudy): string[] {
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

export function lastingLines({ lasting }: DriftStudy): string[] {
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

export function foundLines(cells: readonly Found[]): string[] {
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

export function nextFillLines({ nextFills }: DriftStudy): string[] {
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

export function togetherLines({ together }: DriftStudy): string[] {
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

export function statedLines({ stated }: DriftStudy): string[] {
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
export function rateLines({ explaining }: DriftStudy): string[] {
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

export function intervalLines({ intervals }: DriftStudy): string[] {
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

export function settlingLines({ settling }: DriftStudy): string[] {
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
