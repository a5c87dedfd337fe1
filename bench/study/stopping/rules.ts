import { stoppingRule } from "../../../src/questions/catches-needed/knowledge.ts";
import {
  catchesNeededRules,
  type StoppingRule,
} from "../../../src/questions/catches-needed/options.ts";
import { resolve } from "../../../src/results/options.ts";

/** Who speaks for the scatter of a fill beside its own catches. */
export interface Ground {
  /** Other bins, each with three catches of one fill. */
  readonly otherBins: number;
  /** Fills of the same bin before it, each with three catches. */
  readonly earlierFills: number;
  /** How many times as much as the middle of its kind the meter scatters; null: it is one of them, drawn like them. */
  readonly timesAsWild: number | null;
}

/** A rule for taking catches one at a time, and what is stated when it stops. */
export interface StudiedRule extends StoppingRule {
  readonly name: string;
  readonly ground: Ground;
  readonly mostCatches: number;
  readonly stated: "half-width" | "max(φ · half-width, tolerance)";
  /** Coverage that the worst cell is held to; null: printed without claim. */
  readonly claim: number | null;
}

const defaults = resolve(catchesNeededRules, {});
export const { mostCatches } = defaults;
/** No limit worth the name. */
const unlimited = 200;
const claim = 0.945;

/** The rule in use by default where so many bins and fills lend. */
export function ruleInUse({ otherBins, earlierFills }: Ground): StoppingRule {
  const lends = otherBins + earlierFills > 0;
  const lentBy = lends ? { fills: earlierFills, meters: otherBins, assumed: false } : null;
  return stoppingRule({ lentBy }, defaults);
}

export const alone: Ground = { otherBins: 0, earlierFills: 0, timesAsWild: null };
const withBins = (otherBins: number, earlierFills = 0): Ground => ({
  ...alone,
  otherBins,
  earlierFills,
});
const grounds = [
  alone,
  ...[1, 2].map((bins) => withBins(bins)),
  ...[1, 3, 6].map((fills) => withBins(0, fills)),
  ...[1, 3, 6].map((fills) => withBins(2, fills)),
];

/** The bare rule and the ones without a factor, for comparison; the ones in use; and those where the lenders mislead. */
export const studiedRules: readonly StudiedRule[] = [
  bare(alone, 2),
  bare(alone, 3),
  bare(withBins(2), 2),
  bare(withBins(0, 3), 1),
  withoutFactor(alone),
  withoutFactor(withBins(2)),
  { ...withoutFactor(withBins(0, 1)), name: "1 earlier fill, no factor, from 1", fewest: 1 },
  ...grounds.map((ground) => used(ground, claim)),
  ...[2, 3].map((timesAsWild) => used({ ...withBins(2), timesAsWild }, null)),
  used({ ...withBins(2, 3), timesAsWild: 2 }, null),
];

function bare(ground: Ground, fewest: number): StudiedRule {
  return {
    name: `${nameOf(ground)}, no factor, from ${fewest}, no limit`,
    ground,
    fewest,
    phi: 1,
    mostCatches: unlimited,
    stated: "half-width",
    claim: null,
  };
}

function withoutFactor(ground: Ground): StudiedRule {
  const rule = used(ground, null);
  return { ...rule, name: `${nameOf(ground)}, no factor, from ${rule.fewest}`, phi: 1 };
}

function used(ground: Ground, held: StudiedRule["claim"]): StudiedRule {
  const rule = ruleInUse(ground);
  return {
    name: `${nameOf(ground)}, from ${rule.fewest}`,
    ground,
    ...rule,
    mostCatches,
    stated: "max(φ · half-width, tolerance)",
    claim: held,
  };
}

function nameOf({ otherBins, earlierFills, timesAsWild }: Ground): string {
  const lenders = [
    ...(earlierFills > 0
      ? [`${earlierFills} earlier ${earlierFills === 1 ? "fill" : "fills"}`]
      : []),
    ...(otherBins > 0 ? [`${otherBins} other ${otherBins === 1 ? "bin" : "bins"}`] : []),
  ].join(" and ");
  const who = lenders === "" ? "own scatter" : lenders;
  return timesAsWild === null ? who : `${who}, ${timesAsWild} times as wild as other bins`;
}
