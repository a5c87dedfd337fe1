import { apparentDivision } from "../../../src/data/apparent-division.ts";
import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch, WrittenWeights } from "../../../src/data/types.ts";
import { estimateFill } from "../../../src/model/fill-estimate.ts";
import { nothingLent } from "../../../src/model/lent-scatter.ts";
import { metersOf } from "../../../src/model/meters.ts";
import { type RandomStream, randomStream } from "../../../src/numeric/random.ts";

/**
 * How weights come to paper: gross and tare, each read; the net that a tared scale shows; or the gross less a tare that is
 * known to the gram.
 */
export type Habit = "gross and tare" | "net shown" | "net worked out";

/** Fills of one kind on a scale whose division nobody states. */
export interface DivisionCell {
  readonly habit: Habit;
  /** Catches of the fill. */
  readonly catches: number;
  readonly divisionKg: number;
  readonly unit: "kg" | "g";
  /** Standard deviation of a catch over the division. */
  readonly scatterInDivisions: number;
}

export interface DivisionOutcome extends DivisionCell {
  /** Share of fills that get an interval, and how many of those hold the true delivery; null: there are none. */
  readonly told: number;
  readonly coverage: number | null;
  /** Share of the intervals whose catches all weigh alike, and the coverage of those. */
  readonly alike: number;
  readonly coverageOfAlike: number | null;
  /** Share of the intervals for which the step read is below the division, and above it. */
  readonly below: number;
  readonly above: number;
  /** Mean of their half-widths over those with the division known; null: there are none. */
  readonly width: number | null;
}

const turns = 20;
const level = 0.95;

/** Reads the division from the digits of many simulated fills, and counts how often their interval holds the truth. */
export function simulateDivision(
  cell: DivisionCell,
  replicates: number,
  seed: number,
): DivisionOutcome {
  const stream = randomStream(seed);
  const fills = Array.from({ length: replicates }, () => oneFill(cell, stream)).filter(
    (fill) => fill !== null,
  );
  const alike = fills.filter(({ isAlike }) => isAlike);
  return {
    ...cell,
    told: fills.length / replicates,
    coverage: share(fills, ({ held }) => held),
    alike: share(fills, ({ isAlike }) => isAlike) ?? 0,
    coverageOfAlike: share(alike, ({ held }) => held),
    below: share(fills, ({ steps }) => steps < 1) ?? 0,
    above: share(fills, ({ steps }) => steps > 1) ?? 0,
    width:
      fills.length === 0 ? null : fills.reduce((sum, { width }) => sum + width, 0) / fills.length,
  };
}

interface SimulatedFill {
  readonly isAlike: boolean;
  readonly held: boolean;
  /** Step read, in divisions. */
  readonly steps: number;
  /** Half-width over that with the division known. */
  readonly width: number;
}

function share(
  fills: readonly SimulatedFill[],
  holds: (fill: SimulatedFill) => boolean,
): number | null {
  return fills.length === 0 ? null : fills.filter(holds).length / fills.length;
}

/** Null: no interval can be given. */
function oneFill(cell: DivisionCell, stream: RandomStream): SimulatedFill | null {
  const delivery = 0.25 + 0.1 * stream.uniform();
  const bagKg = Math.round(1000 * (0.3 + 0.3 * stream.uniform())) / 1000;
  const weighed = Array.from({ length: cell.catches }, (_, i) => {
    const scatter = cell.scatterInDivisions * cell.divisionKg * stream.normal();
    return weighing(
      delivery * turns + scatter,
      bagKg + 0.02 * stream.uniform(),
      bagKg,
      i + 1,
      cell,
    );
  });
  const catches = weighed.map(({ caught }) => caught);
  const read = apparentDivision({ catches, written: weighed.map(({ written }) => written) });
  const found = estimateOn(catches, read?.divisionKg ?? null);
  const known = estimateOn(catches, cell.divisionKg);
  if (found === null || known === null) return null;
  return {
    isAlike: new Set(catches.map(({ netKg }) => netKg.toFixed(6))).size === 1,
    held: Math.abs(found.value - delivery) <= found.half,
    steps: Math.round((1000 * (read?.divisionKg ?? 0)) / cell.divisionKg) / 1000,
    width: found.half / known.half,
  };
}

function estimateOn(catches: readonly Catch[], scaleDivisionKg: number | null) {
  const fill = metersOf(catches)[0]?.fills[0];
  if (fill === undefined) return null;
  const { value, interval } = estimateFill(fill, nothingLent, {
    level,
    scaleDivisionKg,
  }).estimate;
  return interval?.upper == null ? null : { value, half: interval.upper - value };
}

/** One catch, and what was written of it; each catch has its own bag, but a known tare is that of one bag. */
function weighing(
  massKg: number,
  ownBagKg: number,
  knownBagKg: number,
  number: number,
  { habit, divisionKg, unit }: DivisionCell,
): { readonly caught: Catch; readonly written: WrittenWeights } {
  const shown = (kg: number) => Math.round(kg / divisionKg) * divisionKg;
  const places = Math.max(0, -Math.floor(Math.log10(divisionKg) + 1e-9));
  const text = (kg: number, decimals: number) =>
    unit === "g" ? (1000 * kg).toFixed(0) : kg.toFixed(decimals);
  const bagKg = habit === "net worked out" ? knownBagKg : ownBagKg;
  const [gross, tare] =
    habit === "net shown" ? [shown(massKg), 0] : [shown(massKg + bagKg), shown(bagKg)];
  const isWorkedOut = habit === "net worked out";
  const netKg = isWorkedOut ? gross - knownBagKg : gross - tare;
  const isGross = habit === "gross and tare";
  return {
    caught: {
      ...makeCatch({ bin: "1", product: "wheat", fill: 1, catch: number, turns, netKg }),
      row: number,
    },
    written: {
      row: number,
      unit,
      gross: isGross ? text(gross, places) : null,
      tare: isGross ? text(tare, places) : null,
      net: isGross ? null : text(netKg, isWorkedOut ? 3 : places),
    },
  };
}
