import { grossRange } from "../../model/doubted-estimate.ts";
import { type Caution, caution } from "../../results/caution.ts";
import type { DisagreeingPair, Influence, Outliers, Suspect } from "./result.ts";

/** What the findings are made from. */
export interface OutliersFound
  extends Pick<
    Outliers,
    "bin" | "product" | "suspects" | "pairs" | "disagree" | "nextFill" | "falseAlarms"
  > {
  readonly today: Omit<Outliers["today"], "named" | "withoutSuspects">;
  /** What leaving out both suspects of today would do that nobody has checked; null: there are not two. */
  readonly withoutBoth: Influence | null;
  /** Fills that were looked at, and catches of them that are set aside. */
  readonly fillsJudged: number;
  readonly setAside: number;
}

type Found = OutliersFound;

/** What a person should know about suspect catches before relying on a figure that rests on them. */
export function outliersCautions(found: Found): readonly Caution[] {
  const { suspects, pairs, today } = found;
  return [
    ...suspects.map((one) =>
      one.fill === today.fill ? aboutToday(one, found) : aboutEarlier(one, found),
    ),
    ...pairs.flatMap((pair) =>
      pair.fill === today.fill ? pairOfToday(pair, found) : pairOfEarlier(pair, found),
    ),
    ...aboutFill(found),
  ];
}

// Above the stricter rate a catch that stands out is told and another one asked for, but the drive need not wait for it,
// unless it lies so far off that no more catches are needed to see that something is wrong.
function aboutToday(one: Suspect, found: Found): Caution {
  const pValue = one.inFill?.pValue ?? 1;
  const { checked } = one.remark;
  const both = checked === null ? found.withoutBoth : null;
  const { without, relativeChange } = both ?? one.influence;
  const isGross = found.today.outsideDf === 0 && Math.abs(one.relativeResidual ?? 0) > grossRange;
  const code =
    checked !== null
      ? "suspect-checked"
      : isGross || pValue <= found.falseAlarms.lookFirst
        ? "suspect-catch"
        : "catch-stands-out";
  return caution(code, whereOf(one, found), {
    relativeResidual: one.relativeResidual ?? 0,
    pValue,
    mishaps: mishapsOf(one),
    both: both !== null,
    withoutKgPerTurn: without.value,
    relativeChange,
    remark: one.remark,
  });
}

/** An earlier fill is in the field: what stood out there is history, and asks for nothing. */
function aboutEarlier(one: Suspect, found: Found): Caution {
  const where = whereOf(one, found);
  const { remark, inFill, inLog, verdict } = one;
  const relativeResidual = one.relativeResidual ?? 0;
  if (verdict === "set aside")
    return caution("catch-set-aside", where, {
      timesFellows: 1 + relativeResidual,
      pValue: inLog?.pValue ?? 1,
      mishaps: mishapsOf(one),
      setAside: found.setAside,
      nextFill: found.nextFill.halfWidth,
      nextFillWithAll: found.nextFill.withAll,
      remark,
    });
  if (verdict === "stands out")
    return caution("suspect-in-earlier-fill", where, {
      relativeResidual,
      pValue: inLog?.pValue ?? 1,
      mishaps: mishapsOf(one),
      remark,
    });
  return caution("suspect-only-in-fill", where, {
    relativeResidual,
    pValue: inFill?.pValue ?? 1,
    expectedByChance: byChance(found),
    remark,
  });
}

function pairOfToday(pair: DisagreeingPair, found: Found): readonly Caution[] {
  // Catches that lie this far apart disagree whatever is lent; the delivery says so.
  if (found.disagree?.by === "range") return [];
  const { relativeDifference, inFill, remarks } = pair;
  const code = remarks.every(({ checked }) => checked !== null)
    ? "two-checked"
    : inFill.pValue < found.falseAlarms.lookFirst
      ? "two-disagree"
      : "two-lie-apart";
  return [
    caution(code, whereOf(pair, found), { relativeDifference, pValue: inFill.pValue, remarks }),
  ];
}

function pairOfEarlier(pair: DisagreeingPair, found: Found): readonly Caution[] {
  const where = whereOf(pair, found);
  const { relativeDifference, inFill, inLog, remarks, family, setAside } = pair;
  const inWholeLog = { relativeDifference, pValue: inLog.pValue, remarks };
  if (setAside) {
    const { halfWidth, withAll } = found.nextFill;
    const bands = { nextFill: halfWidth, nextFillWithAll: withAll };
    return [caution("fill-set-aside", where, { ...inWholeLog, ...bands })];
  }
  if (family === "whole log") return [caution("two-disagreed-earlier", where, inWholeLog)];
  const inItsFill = { relativeDifference, pValue: inFill.pValue, remarks };
  const expectedByChance = byChance(found);
  return [caution("two-disagree-in-fill-only", where, { ...inItsFill, expectedByChance })];
}

/** Of the newest fill only: what an earlier one can no longer tell holds nobody up. */
function aboutFill({ bin, product, today, disagree }: Found): readonly Caution[] {
  const { fill, status, catches, standingOut, relativeRange, outsideDf } = today;
  if (today.moreThanCanBeTold)
    return [
      caution("more-than-can-be-told", { bin, product, fill, catches: standingOut }, { catches }),
    ];
  return status === "too few to judge" && disagree === null
    ? [
        caution(
          "too-few-to-judge",
          { bin, product, fill },
          { catches, relativeRange, grossRange, outsideDf },
        ),
      ]
    : [];
}

function whereOf(
  one: Suspect | DisagreeingPair,
  { bin, product }: Found,
): Pick<Caution["where"], "bin" | "product" | "fill" | "catches"> {
  const catches = "catches" in one ? one.catches : [one.catch];
  return { bin, product, fill: one.fill, catches };
}

function mishapsOf({ explanations }: Suspect) {
  return explanations.map(({ mishap }) => mishap);
}

function byChance({ fillsJudged, falseAlarms }: Found): number {
  return fillsJudged * falseAlarms.told;
}
