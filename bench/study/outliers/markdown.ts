import { table } from "../support/markdown.ts";
import type { EarlyFillCell } from "./early-fill.ts";
import type { ExplanationCell } from "./explanations.ts";
import type {
  FillAlarmCell,
  LogAlarmCell,
  OtherErrorCell,
  UnlikeAlarmCell,
} from "./false-alarms.ts";
import { type HistoryCell, waysOfScreening } from "./history.ts";
import type { PowerCell } from "./power.ts";
import type { SecondLookCell } from "./second-look.ts";
import type { DisagreementCell, TodayCell } from "./today.ts";

export function historyLines(cells: readonly HistoryCell[]): string[] {
  const groups = distinct(cells, ({ fills, catches, contamination }) =>
    [fills, catches, contamination].join(),
  );
  return table(
    ["fills × catches", "bad", ...waysOfScreening],
    groups.map(({ fills, catches, contamination }) => [
      `${fills} × ${catches}`,
      percent(contamination),
      ...cells
        .filter(
          (one) =>
            one.fills === fills && one.catches === catches && one.contamination === contamination,
        )
        .map((one) => `${rate(one.falseAlarm)} / ${rate(one.hit, 2)}`),
    ]),
  );
}

export function fillAlarmLines(cells: readonly FillAlarmCell[]): string[] {
  const histories = [...new Set(cells.map(({ earlierFills }) => earlierFills))].sort(
    (a, b) => a - b,
  );
  return table(
    [
      "catches",
      ...histories.map((fills) => (fills === 1 ? "1 earlier fill" : `${fills} earlier fills`)),
    ],
    [...new Set(cells.map(({ catches }) => catches))].map((catches) => [
      catches,
      ...histories.map((fills) => {
        const found = cells.find((one) => one.catches === catches && one.earlierFills === fills);
        return found === undefined ? "not judged" : rate(found.falseAlarm);
      }),
    ]),
  );
}

export function unlikeAlarmLines(cells: readonly UnlikeAlarmCell[]): string[] {
  const spreads = [...new Set(cells.map(({ sdOfLog }) => sdOfLog))];
  return table(
    ["catches", "earlier fills", ...spreads.map((sd) => `sd of log scatter ${sd}`)],
    distinct(cells, ({ catches, earlierFills }) => [catches, earlierFills].join()).map((group) => [
      group.catches,
      group.earlierFills,
      ...cells
        .filter((one) => one.catches === group.catches && one.earlierFills === group.earlierFills)
        .map(({ falseAlarm }) => rate(falseAlarm)),
    ]),
  );
}

export function secondLookLines(cells: readonly SecondLookCell[]): string[] {
  const shares = [...new Set(cells.map(({ share }) => share))];
  return table(
    ["catches", "lent df", ...shares.map((share) => `share ${share}`)],
    distinct(cells, ({ catches, lentDf }) => [catches, lentDf].join()).map((group) => [
      group.catches,
      group.lentDf,
      ...cells
        .filter((one) => one.catches === group.catches && one.lentDf === group.lentDf)
        .map((one) => `${rate(one.falseAlarm)} / ${rate(one.one, 2)} / ${rate(one.two, 2)}`),
    ]),
  );
}

export function logAlarmLines(cells: readonly LogAlarmCell[]): string[] {
  return table(
    [
      "fills × catches",
      "every fill by itself",
      "stand out only in their fill, mean",
      "log as family",
      "catches set aside, mean",
    ],
    cells.map((one) => [
      `${one.fills} × ${one.catches}`,
      rate(one.everyFillByItself, 2),
      one.meanOnlyInFill.toFixed(2),
      rate(one.logAsFamily),
      rate(one.meanSetAside),
    ]),
  );
}

export function otherErrorLines(cells: readonly OtherErrorCell[]): string[] {
  return table(
    ["errors", "fills × catches", "log as family", "catches set aside, mean"],
    cells.map((one) => [
      one.errors,
      `${one.fills} × ${one.catches}`,
      rate(one.logAsFamily),
      rate(one.meanSetAside),
    ]),
  );
}

export function earlyFillLines(cells: readonly EarlyFillCell[]): string[] {
  return table(
    [
      "catches",
      "shift",
      "bag not emptied",
      "shift found",
      "with every catch",
      "set aside, mean",
      "next fill ±",
      "with every catch",
      "next fill held",
    ],
    cells.map((one) => [
      one.tails === "normal" ? one.catches : `${one.catches}, heavy tails`,
      percent(one.shift),
      one.bad ? "yes" : "no",
      rate(one.found),
      rate(one.foundWithAll),
      rate(one.setAside),
      percent(one.nextFill),
      percent(one.nextFillWithAll),
      rate(one.nextFillHeld),
    ]),
  );
}

export function todayLines(cells: readonly TodayCell[]): string[] {
  return table(
    [
      "earlier fills × catches",
      "today",
      "bad in history",
      "bad today",
      "held",
      "±",
      "flagged",
      "held when flagged",
      "had it been with",
      "without",
      "no ±",
    ],
    cells.map((one) => [
      `${one.earlierFills} × ${one.catches}`,
      one.tails === "normal" ? one.today : `${one.today}, heavy tails`,
      percent(one.contamination),
      one.badToday ? "one tare" : "none",
      rate(one.held),
      percent(one.halfWidth),
      rate(one.flagged),
      orDash(one.heldWhenFlagged),
      orDash(one.heldWith),
      orDash(one.heldWithout),
      rate(one.disagreeing),
    ]),
  );
}

export function disagreementLines(cells: readonly DisagreementCell[]): string[] {
  return table(
    ["catch scatter", "catches", "disagree"],
    cells.map((one) => [percent(one.scatter), one.catches, rate(one.disagreeing, 4)]),
  );
}

export function falseFlagLines(cells: readonly ExplanationCell[]): string[] {
  return table(
    [
      "columns",
      "scatter",
      "errors",
      "flagged",
      "no explanation",
      "times better, median",
      "above a thousand",
    ],
    cells.map((one) => [
      one.columns,
      percent(one.scatter),
      one.tails === "normal" ? "normal" : "heavy tails",
      rate(one.flagged),
      orDash(one.unexplained),
      roughly(one.medianTimesBetter),
      orDash(one.aboveThousand),
    ]),
  );
}

export function powerLines(cells: readonly PowerCell[]): string[] {
  const single = cells.filter(({ bad }) => bad === 1);
  const mishaps = [...new Set(single.map(({ mishap }) => mishap))];
  return table(
    ["catch scatter", "earlier fills", "catches", ...mishaps],
    distinct(single, (one) => [one.scatter, one.earlierFills, one.catches].join()).map((group) => [
      percent(group.scatter),
      group.earlierFills,
      group.catches,
      ...single
        .filter(
          (one) =>
            one.scatter === group.scatter &&
            one.earlierFills === group.earlierFills &&
            one.catches === group.catches,
        )
        .map(({ hit }) => rate(hit, 2)),
    ]),
  );
}

export function twoBadLines(cells: readonly PowerCell[]): string[] {
  return table(
    ["earlier fills", "catches", "share of two tares found"],
    cells
      .filter(({ bad }) => bad === 2)
      .map((one) => [one.earlierFills, one.catches, rate(one.hit, 2)]),
  );
}

export function explanationLines(cells: readonly ExplanationCell[]): string[] {
  return table(
    [
      "columns",
      "scatter",
      "what happened",
      "flagged",
      "first",
      "named",
      "no explanation",
      "times better, median",
    ],
    cells.map((one) => [
      one.columns,
      percent(one.scatter),
      one.happened ?? "nothing (bad luck)",
      rate(one.flagged, 2),
      orDash(one.first),
      orDash(one.named),
      orDash(one.unexplained),
      roughly(one.medianTimesBetter),
    ]),
  );
}

export function percent(fraction: number): string {
  return `${Number((100 * fraction).toFixed(1))} %`;
}

export function rate(value: number, decimals = 3): string {
  return value.toFixed(decimals).replace(/^0\./, ".");
}

function roughly(value: number | null): string {
  return value === null ? "–" : Number(value.toPrecision(1)).toLocaleString("en");
}

function orDash(value: number | null): string {
  return value === null ? "–" : rate(value, 2);
}

function distinct<T>(items: readonly T[], key: (item: T) => string): readonly T[] {
  return [...new Map(items.map((item) => [key(item), item])).values()];
}
