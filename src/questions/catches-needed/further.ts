import {
  chiSquaredLowerTail,
  chiSquaredQuantile,
} from "../../numeric/distributions/chi-squared.ts";
import { fLowerTail, fQuantile } from "../../numeric/distributions/f.ts";
import { studentTQuantile } from "../../numeric/distributions/student-t.ts";
import type { CatchesNeededOptions, FurtherCatches, Knowledge, Recommendation } from "./result.ts";
import { fewestCatches } from "./stopping.ts";

type Aim = Pick<
  CatchesNeededOptions,
  "level" | "tolerance" | "assurance" | "mostCatches" | "fewestOwn" | "fewestPooled"
>;

const mostSearched = 60;
const furtherShown = 8;

/** What 0, 1, 2, … further catches buy, up to the most that will be taken and at least a few. */
export function furtherCatches(basis: Knowledge, aim: Aim): readonly FurtherCatches[] {
  const count = Math.max(furtherShown, aim.mostCatches - basis.catches);
  return Array.from({ length: count + 1 }, (_, further) => projected(basis, aim, further));
}

/** Fewest further catches that reach the tolerance with the assurance wanted; null: none. */
export function recommend(basis: Knowledge, aim: Aim): Recommendation | null {
  const least = Math.max(0, fewestCatches(basis.scatter, aim) - basis.catches);
  const most = Math.min(mostSearched, aim.mostCatches - basis.catches);
  for (let further = least; further <= most; further++) {
    const { chance } = projected(basis, aim, further);
    if (chance !== null && chance >= aim.assurance)
      return { further, turns: basis.turnsPerCatch, chance };
  }
  return null;
}

/**
 * The half-width after `further` more catches. What is in hand, ν·s², stays; the catches to come add a sum of squares
 * with one degree of freedom each (none for the first catch of a fill), which relative to s² is an F variable.
 */
export function projected(basis: Knowledge, aim: Aim, further: number): FurtherCatches {
  const catches = basis.catches + further;
  const added = further - (basis.catches === 0 ? 1 : 0);
  const unknown = { further, catches, halfWidth: null, halfWidthAssured: null, chance: null };
  if (catches === 0) return unknown;
  if (basis.scatter === "assumed")
    return catches < 2 ? unknown : { further, catches, ...byAssumption(basis, aim, catches) };
  return { further, catches, ...byEvidence(basis, aim, catches, added) };
}

function byAssumption(basis: Knowledge, aim: Aim, catches: number) {
  const df = catches - 1;
  const { width, roomFor } = intervalAfter(basis, aim, catches, df);
  const ofQuantile = (quantile: number) => width((basis.variancePerTurn * quantile) / df);
  return {
    halfWidth: width(basis.variancePerTurn),
    halfWidthAssured: ofQuantile(chiSquaredQuantile(aim.assurance, df)),
    chance: chiSquaredLowerTail((roomFor(aim.tolerance) / basis.variancePerTurn) * df, df),
  };
}

function byEvidence(basis: Knowledge, aim: Aim, catches: number, added: number) {
  const { variancePerTurn: now, df } = basis;
  const { width, roomFor } = intervalAfter(basis, aim, catches, df + added);
  const halfWidth = width(now);
  if (added <= 0 || now === 0)
    return { halfWidth, halfWidthAssured: halfWidth, chance: halfWidth <= aim.tolerance ? 1 : 0 };
  const after = (ratio: number) => (now * (df + added * ratio)) / (df + added);
  const mostRatio = ((roomFor(aim.tolerance) / now) * (df + added) - df) / added;
  return {
    halfWidth,
    halfWidthAssured: width(after(fQuantile(aim.assurance, added, df))),
    chance: mostRatio <= 0 ? 0 : fLowerTail(mostRatio, added, df),
  };
}

/** The half-width as a function of the variance of a one-turn catch, and the variance a half-width leaves room for. */
function intervalAfter(basis: Knowledge, aim: Aim, catches: number, df: number) {
  const turns = basis.turns + (catches - basis.catches) * basis.turnsPerCatch;
  const t = studentTQuantile((1 + aim.level) / 2, df);
  const reading = ((basis.divisionInTurns ?? 0) * catches) ** 2 / 6 / turns ** 2;
  return {
    width: (variance: number) => t * Math.sqrt(variance / turns + reading),
    roomFor: (halfWidth: number) => Math.max(0, ((halfWidth / t) ** 2 - reading) * turns),
  };
}
