import { extent } from "simple-statistics";
import { at } from "../errors/at.ts";
import type { MeterModel, Model } from "../model/model.ts";
import { benjaminiHochberg } from "../statistics/false-discovery.ts";
import { median } from "../statistics/summary.ts";
import {
  groupOf,
  type Leveled,
  leveledDeliveries,
  metersForLevel,
  turnsInForce,
} from "./fleet/deliveries.ts";
import { factorsOf, metersForFactor } from "./fleet/factors.ts";
import { funnelOf } from "./fleet/funnel.ts";
import type { FleetComparison, FleetMeter, FleetTest, Funnel, Side } from "./fleet/result.ts";
import { catchesAgainstOthers, fillsAgainstOthers, type Spreading } from "./fleet/spreads.ts";

export type { FleetComparison, FleetMeter };

/** From so many meters on they are answered as a fleet: below, each has room for a chapter of its own. */
const fewestOfFleet = 10;

/** Share of what is found that may be false, on average. */
const falseDiscoveries = 0.05;

/** A meter against the others, each question as yet by itself. */
interface Standing {
  readonly meter: MeterModel;
  readonly delivery: Leveled | null;
  readonly scatter: Spreading | null;
  readonly spread: Spreading | null;
}

/**
 * Which meters of a fleet are unlike the others: in what they deliver of a product, in how much their catches scatter, and in how
 * much their fills differ?
 *
 * Delivery: logarithm against the random-effects level of the other meters with the product, externally studentized. Scatter
 * and spread: variances against those of the other meters, whose logarithms differ as far as they do. All p-values of all meters together are adjusted by
 * Benjamini and Hochberg, so that on average at most 5 % of the meters found are found by chance. Beside it limits over the
 * total turns, and what operators, scales and machines make of the delivery.
 *
 * @returns null below 10 meters
 * Null when fields say so: a product in fewer than 4 meters has no level
 * Assumes  meters of one product whose levels, and meters whose spreads, differ near-normally on the scale of logarithms
 * Source   Benjamini & Hochberg 1995; Cook & Weisberg 1982; Spiegelhalter 2005; Higgins, Thompson & Spiegelhalter 2009
 */
export function fleet(model: Model): FleetComparison | null {
  const { meters, options } = model;
  if (meters.length < fewestOfFleet) return null;
  const { level } = options;
  const turns = median(meters.map(({ turnsPerCatch }) => turnsPerCatch));
  const leveled = leveledDeliveries(meters, options);
  const scatters = catchesAgainstOthers(meters, level, turns);
  const spreads = fillsAgainstOthers(meters, level);
  const standings = meters.map(
    (meter): Standing => ({
      meter,
      delivery: leveled.get(meter) ?? null,
      scatter: scatters.get(meter) ?? null,
      spread: spreads.get(meter) ?? null,
    }),
  );
  const testOf = testsOf(standings);
  const judged = standings.map((standing) => judgedMeter(standing, testOf));
  return {
    kind: "fleet",
    options: { level, falseDiscoveries, metersForLevel, metersForFactor, turns },
    meters: judged,
    tests: testOf.size,
    funnel: funnelAbout(standings, judged),
    factors: factorsOf(meters, level),
  };
}

type Found = Leveled | Spreading;

/** Every test of the fleet with its p-value among all of them. */
function testsOf(standings: readonly Standing[]): ReadonlyMap<Found, FleetTest> {
  const all = standings
    .flatMap(({ delivery, scatter, spread }): readonly (Found | null)[] => [
      delivery,
      scatter,
      spread,
    ])
    .filter((one) => one !== null);
  const adjusted = benjaminiHochberg(all.map(({ pValue }) => pValue));
  return new Map(
    all.map((one, i) => {
      const p = at(adjusted, i);
      const unlike = p <= falseDiscoveries ? sideOf(one) : null;
      return [one, { pValue: one.pValue, adjusted: p, unlike }];
    }),
  );
}

function sideOf(found: Found): Side {
  const more = "more" in found ? found.more : found.deviation > 0;
  return more ? "more" : "less";
}

function judgedMeter(
  { meter, delivery, scatter, spread }: Standing,
  testOf: ReadonlyMap<Found, FleetTest>,
): FleetMeter {
  const spreading = (found: Spreading | null) => {
    const test = found === null ? undefined : testOf.get(found);
    if (found === null || test === undefined) return null;
    const { relative, df, interval, typical, meters } = found;
    return { relative, df, interval, typical, meters, ...test };
  };
  const test = delivery === null ? undefined : testOf.get(delivery);
  return {
    bin: meter.bin,
    product: meter.product,
    fills: meter.across.fills,
    turns: turnsInForce(meter),
    delivery:
      delivery === null || test === undefined
        ? null
        : {
            level: delivery.level,
            ratio: delivery.ratio,
            statistic: delivery.statistic,
            df: delivery.df,
            ...test,
          },
    scatter: spreading(scatter),
    spread: spreading(spread),
  };
}

/** Of the meters that are like each other: those found unlike would widen what they are held against. */
function funnelAbout(standings: readonly Standing[], judged: readonly FleetMeter[]): Funnel | null {
  const leveled = standings.flatMap(({ meter, delivery }, i) =>
    delivery === null
      ? []
      : [
          {
            group: { ...groupOf(meter), estimate: delivery.deviation },
            like: at(judged, i).delivery?.unlike === null,
          },
        ],
  );
  if (leveled.length === 0) return null;
  const [fewest, most] = extent(leveled.map(({ group }) => group.information));
  return funnelOf(
    leveled.flatMap(({ group, like }) => (like ? [group] : [])),
    { fewest, most },
  );
}
