import { halfWidthNow, type Scatter } from "../../../src/model/known-width.ts";
import { stopsAt } from "../../../src/model/next-catch.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";
import { defaults } from "../../../src/results/defaults.ts";
import { noPrior, type SpreadPrior } from "../../../src/statistics/spread-prior.ts";
import {
  addVotes,
  noVotes,
  priorOfVote,
  voteAmongOthers,
  voteOfOthers,
  voteOfOwnGroups,
  votesTogether,
} from "../../../src/statistics/spread-votes.ts";
import { mean as meanOf } from "../../../src/statistics/summary.ts";
import type { Ground, StudiedRule } from "./rules.ts";

/** Scatter of one catch and the tolerance aimed at, both relative. */
export interface StoppingCell {
  /**
   * What of: the fill that is caught, about which its meter and the others are drawn; or the middle of the meters, about which
   * they all are, so that the coverage is that over meters.
   */
  readonly of: "the fill" | "the middle";
  readonly scatter: number;
  readonly tolerance: number;
}

export interface StoppingOutcome extends StoppingCell {
  readonly rule: string;
  /** Share of fills whose stated interval holds the true delivery. */
  readonly coverage: number;
  readonly meanCatches: number;
}

const level = 0.95;
const { betweenMeters, betweenFills } = defaults;
/** Of every fill that lends. */
const lendingCatches = 3;

/** Runs a stopping rule on many simulated fills. */
export function simulateStopping(
  rule: StudiedRule,
  cell: StoppingCell,
  replicates: number,
  seed: number,
): StoppingOutcome {
  const stream = randomStream(seed);
  const widths = new Map<number, number>();
  let held = 0;
  let catches = 0;
  for (let i = 0; i < replicates; i++) {
    const fill = oneFill(rule, cell, stream, widths);
    if (Math.abs(fill.error) <= fill.stated) held++;
    catches += fill.catches;
  }
  return {
    rule: rule.name,
    ...cell,
    coverage: held / replicates,
    meanCatches: catches / replicates,
  };
}

/** Catches of one fill, taken until the rule says stop; errors are relative to the true delivery, catches as of one turn. */
function oneFill(
  rule: StudiedRule,
  cell: StoppingCell,
  stream: RandomStream,
  widths: Map<number, number>,
) {
  const { tolerance } = cell;
  const aim = {
    level,
    phi: rule.phi,
    tolerance,
    assurance: defaults.assurance,
    settingError: 0,
    fewestCatches: rule.fewest,
    mostCatches: rule.mostCatches,
  };
  const truth = truthOf(rule.ground, cell, stream);
  const { nu0, s0Squared } = priorOf(rule.ground, truth, stream);
  let [catches, mean, squares] = [0, 0, nu0 * s0Squared];
  for (;;) {
    const error = truth.ofFill * stream.normal();
    catches++;
    const step = error - mean;
    mean += step / catches;
    squares += step * (error - mean);
    const nu = nu0 + catches - 1;
    if (nu === 0) continue;
    const halfWidth = widthFor(catches, { q: squares / nu, nu, own: nu0 === 0 }, widths);
    if (stopsAt(catches, halfWidth, nu, aim) !== null) {
      const stated =
        rule.stated === "half-width" ? halfWidth : Math.max(rule.phi * halfWidth, tolerance);
      return { catches, error: mean, stated };
    }
  }
}

/** The one width; without a reading of the scale it is in proportion to the scatter, so one of each kind is enough. */
function widthFor(catches: number, scatter: Scatter, widths: Map<number, number>): number {
  let ofOne = widths.get(catches);
  if (ofOne === undefined) {
    const state = { catches, turns: catches, divisionInTurns: 0, scatter: { ...scatter, q: 1 } };
    ofOne = halfWidthNow(state, { level, phi: 1 }) ?? 0;
    widths.set(catches, ofOne);
  }
  return ofOne * Math.sqrt(scatter.q);
}

/** What catches truly scatter by. */
interface Truth {
  readonly ofFill: number;
  readonly ofMeter: number;
  /** Of the middle of the meters. */
  readonly middle: number;
}

/** Nobody is centred on the fill that is caught, unless the meter is said to be so many times as wild as the middle. */
function truthOf(
  { timesAsWild }: Ground,
  { of, scatter }: StoppingCell,
  stream: RandomStream,
): Truth {
  const ofMeters = timesAsWild ?? Math.exp(betweenMeters * stream.normal());
  const ofFills = Math.exp(betweenFills * stream.normal());
  const middle = of === "the middle" ? scatter : scatter / ofFills / ofMeters;
  return { ofFill: middle * ofMeters * ofFills, ofMeter: middle * ofMeters, middle };
}

/** What others say before the first catch. */
function priorOf(
  { otherBins, earlierFills }: Ground,
  { ofMeter, middle }: Truth,
  stream: RandomStream,
): SpreadPrior {
  if (otherBins + earlierFills === 0) return noPrior;
  const about = (center: number, heterogeneity: number) =>
    center * Math.exp(heterogeneity * stream.normal());
  const df = lendingCatches - 1;
  const seen = (truth: number) => (truth ** 2 * stream.chiSquared(df)) / df;
  const others = voteOfOthers(
    Array.from({ length: otherBins }, () => {
      const variance = seen(about(about(middle, betweenMeters), betweenFills));
      return voteAmongOthers({ variance, df }, betweenMeters);
    }).reduce(addVotes, noVotes),
    betweenMeters,
  );
  const variances = Array.from({ length: earlierFills }, () => seen(about(ofMeter, betweenFills)));
  const own =
    earlierFills === 0
      ? null
      : voteOfOwnGroups(
          { variance: meanOf(variances), df: earlierFills * df },
          earlierFills,
          betweenFills,
        );
  const vote = votesTogether([own, others].filter((one) => one !== null));
  return vote === null ? noPrior : priorOfVote(vote);
}
