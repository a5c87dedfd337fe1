import { apparentDivision } from "../../../src/data/apparent-division.ts";
import { makeCatch } from "../../../src/data/make-catch.ts";
import type { Catch, WrittenWeights } from "../../../src/data/types.ts";
import { newestFill } from "../../../src/model/meters.ts";
import { estimateOf, fitModel } from "../../../src/model/model.ts";
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
  /** Share of fills whose interval holds the true delivery. */
  readonly coverage: number;
  /** Share of fills whose catches all weigh alike, and the coverage of those; null: there are none. */
  readonly alike: number;
  readonly coverageOfAlike: number | null;
  /** Share of fills for which the step read is below the division, and above it. */
  readonly below: number;
  readonly above: number;
  /** Mean half-width over that with the division known. */
  readonly width: number;
}

const turns = 20;
const options = { level: 0.95, tolerance: 0.05 };

/** Reads the division from the digits of many simulated fills, and counts how often their interval holds the truth. */
export function simulateDivision(
  cell: DivisionCell,
  replicates: number,
  seed: number,
): DivisionOutcome {
  const stream = randomStream(seed);
  const fills = Array.from({ length: replicates }, () => oneFill(cell, stream));
  const alike = fills.filter(({ isAlike }) => isAlike);
  return {
    ...cell,
    coverage: share(fills, ({ held }) => held) ?? 0,
    alike: alike.length / replicates,
    coverageOfAlike: share(alike, ({ held }) => held),
    below: share(fills, ({ steps }) => steps < 1) ?? 0,
    above: share(fills, ({ steps }) => steps > 1) ?? 0,
    width: fills.reduce((sum, { width }) => sum + width, 0) / replicates,
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

function oneFill(cell: DivisionCell, stream: RandomStream): SimulatedFill {
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
  const found = halfWidthOn(catches, read?.divisionKg ?? null);
  return {
    isAlike: new Set(catches.map(({ netKg }) => netKg.toFixed(6))).size === 1,
    held: Math.abs(found.value - delivery) <= found.halfWidth,
    steps: Math.round((1000 * (read?.divisionKg ?? 0)) / cell.divisionKg) / 1000,
    width: found.halfWidth / halfWidthOn(catches, cell.divisionKg).halfWidth,
  };
}

function halfWidthOn(catches: readonly Catch[], scaleDivisionKg: number | null) {
  const all = { ...options, scaleDivisionKg };
  const [meter] = fitModel(catches, all).meters;
  if (meter === undefined) return { value: 0, halfWidth: 0 };
  const { estimate, halfWidth } = estimateOf(meter, newestFill(meter), all);
  return { value: estimate.value, halfWidth: (halfWidth ?? 0) * estimate.value };
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
