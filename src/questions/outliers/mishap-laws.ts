import { max, min, sampleVariance } from "simple-statistics";
import type { Catch, MassUnit } from "../../data/types.ts";
import type { Mishap } from "../../results/mishap.ts";
import type { PredictingLine } from "../../statistics/predicting-line.ts";
import { mean } from "../../statistics/summary.ts";
import { convert } from "../../units/convert.ts";
import { swappedReadings, writtenReading } from "./written-digits.ts";

/** What is known around a catch that stands out. */
export interface CatchInDoubt {
  readonly row: Catch;
  /** Line through the catches of its fill that do not stand out. */
  readonly line: PredictingLine;
  /** Variance of reading the scale, kg². */
  readonly readingVariance: number;
  /** The catch of the same fill made before it; null for the first. */
  readonly previous: Catch | null;
  /** Every other catch of the meter: their tares and readings. */
  readonly fellows: readonly Catch[];
  readonly massUnit: MassUnit;
}

/** Where the net mass lies if this happened: anywhere between two masses, blurred by catch scatter. */
export interface Place {
  readonly fromKg: number;
  readonly toKg: number;
  readonly standardError: number;
  /** Mass to hold against it: as recorded, or as it would have been before the slip of the pen. */
  readonly comparedKg: number;
  /** Chance of this place within the mishap, times how much the slip stretches the scale. */
  readonly weight: number;
  readonly massKg: number | null;
  readonly turns: number | null;
  readonly factor: number | null;
}

export interface MishapLaw {
  readonly mishap: Mishap;
  /** Odds among mishaps before looking at the mass: how often such a slip is made, and what the tare column says. */
  readonly prior: number;
  readonly places: readonly Place[];
}

/**
 * How often each is made, our judgement and not a measured frequency: simple slips alike, those that need a second slip
 * or another scale less. Only their ratios matter, and those little: a mishap that fits beats one that does not by
 * powers of ten.
 */
const priors: Readonly<Record<Mishap, number>> = {
  "tare-left-in": 0.01,
  "tare-taken-off-twice": 0.005,
  "one-turn-more": 0.01,
  "one-turn-fewer": 0.01,
  "two-turns-more": 0.003,
  "two-turns-fewer": 0.003,
  "bag-not-emptied": 0.01,
  "two-catches-in-one": 0.005,
  "meter-starved": 0.01,
  "other-unit": 0.003,
  "digits-swapped": 0.003,
  "decimal-moved": 0.003,
};

/** Mass of a bag where the file names none, kg: from a light sack to a bucket. */
const unknownTareKg = { from: 0.2, to: 0.6 };
/** A bridged or starved meter still lets out this share. */
const starvedShare = { from: 0.4, to: 0.8 };
const decimalFactors = [10, 0.1, 100, 0.01] as const;

/** Every mishap that could have made this catch, with where it would put the net mass. */
export function mishapLaws(doubt: CatchInDoubt): readonly MishapLaw[] {
  return [...tareLaws(doubt), ...turnLaws(doubt), ...massLaws(doubt), ...penLaws(doubt)];
}

/** Net mass expected after so many turns, and its standard error. */
export function expectation(
  { line, readingVariance }: CatchInDoubt,
  turns: number,
): { readonly kg: number; readonly standardError: number } {
  const scatter = (line.variance ?? 0) * turns * (1 + turns / line.information);
  return {
    kg: line.slope * turns,
    standardError: Math.sqrt(scatter + readingVariance + turns ** 2 * line.knownVariance),
  };
}

function law(mishap: Mishap, places: readonly Place[], evidence = 1): MishapLaw {
  return { mishap, prior: priors[mishap] * evidence, places };
}

function place(
  { row }: CatchInDoubt,
  at: { readonly kg: number; readonly standardError: number },
  facts: Partial<Place>,
): Place {
  return {
    fromKg: at.kg,
    toKg: at.kg,
    standardError: at.standardError,
    comparedKg: row.netKg,
    weight: 1,
    massKg: null,
    turns: null,
    factor: null,
    ...facts,
  };
}

/**
 * A tare that is written down makes a bag left in less likely, not impossible: a second bag, a lid or a bucket on the
 * scale weighs about as much. One slip in four of those without a tare column, a judgement like the odds themselves.
 */
const tareWrittenDown = 0.25;

// A tare column speaks before the mass does. Written as zero where the other catches have one, it was probably
// forgotten, and how probably is 1 against the share of zeros among the others (rule of succession).
function tareLaws(doubt: CatchInDoubt): readonly MishapLaw[] {
  const { row, fellows } = doubt;
  const written = fellows.flatMap(({ tareKg }) => tareKg ?? []);
  const bags = written.filter((kg) => kg > 0);
  const chanceOfZero = (written.length - bags.length + 1) / (written.length + 2);
  const at = expectation(doubt, row.turns);
  const bag = bags.length > 0 ? mean(bags) : null;
  const error = Math.hypot(at.standardError, bags.length > 1 ? Math.sqrt(sampleVariance(bags)) : 0);
  const shifted = (sign: 1 | -1) =>
    bag === null
      ? place(doubt, at, unknownTare(at.kg, row, sign))
      : place(doubt, { kg: at.kg + sign * bag, standardError: error }, { massKg: bag });
  const evidence = row.tareKg === null ? 1 : row.tareKg === 0 ? 1 / chanceOfZero : tareWrittenDown;
  return [
    law("tare-left-in", [shifted(1)], evidence),
    ...(row.tareKg === 0 ? [] : [law("tare-taken-off-twice", [shifted(-1)])]),
  ];
}

function unknownTare(expectedKg: number, row: Catch, sign: 1 | -1): Partial<Place> {
  const ends = [unknownTareKg.from, unknownTareKg.to].map((kg) => expectedKg + sign * kg);
  return {
    fromKg: min(ends),
    toKg: max(ends),
    massKg: sign * (row.netKg - expectedKg),
  };
}

function turnLaws(doubt: CatchInDoubt): readonly MishapLaw[] {
  const slips = [
    ["one-turn-more", 1],
    ["one-turn-fewer", -1],
    ["two-turns-more", 2],
    ["two-turns-fewer", -2],
  ] as const;
  return slips.flatMap(([mishap, by]) => {
    const turns = doubt.row.turns + by;
    return turns > 0 ? [law(mishap, [place(doubt, expectation(doubt, turns), { turns })])] : [];
  });
}

function massLaws(doubt: CatchInDoubt): readonly MishapLaw[] {
  const { row, previous } = doubt;
  const at = expectation(doubt, row.turns);
  const turns = 2 * row.turns;
  const laws = [
    law("two-catches-in-one", [place(doubt, expectation(doubt, turns), { turns })]),
    law("meter-starved", [
      place(doubt, at, {
        fromKg: starvedShare.from * at.kg,
        toKg: starvedShare.to * at.kg,
        factor: row.netKg / at.kg,
      }),
    ]),
  ];
  if (previous === null) return laws;
  const both = { kg: at.kg + previous.netKg, standardError: at.standardError };
  return [law("bag-not-emptied", [place(doubt, both, { massKg: previous.netKg })]), ...laws];
}

function penLaws(doubt: CatchInDoubt): readonly MishapLaw[] {
  const { row, fellows, massUnit } = doubt;
  const at = expectation(doubt, row.turns);
  const poundsPerKg = convert(1, "kg", "lb");
  const reading = writtenReading(row, fellows, massUnit);
  const meant = (kg: number) => row.netKg + kg - reading.kg;
  const swapped = swappedReadings(reading);
  return [
    law(
      "other-unit",
      [poundsPerKg, 1 / poundsPerKg].map((factor) =>
        place(doubt, at, { comparedKg: row.netKg / factor, weight: 1 / 2 / factor, factor }),
      ),
    ),
    ...(swapped.length === 0
      ? []
      : [
          law(
            "digits-swapped",
            swapped.map((massKg) =>
              place(doubt, at, { comparedKg: meant(massKg), weight: 1 / swapped.length, massKg }),
            ),
          ),
        ]),
    law(
      "decimal-moved",
      decimalFactors.map((factor) => {
        const massKg = reading.kg / factor;
        const weight = 1 / decimalFactors.length / factor;
        return place(doubt, at, { comparedKg: meant(massKg), weight, massKg, factor });
      }),
    ),
  ];
}
