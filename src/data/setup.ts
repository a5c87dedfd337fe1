import type { CautionCode } from "../results/caution.ts";

/** A quantity with the standard uncertainty its owner gives it; null: none given. */
export interface Measured {
  readonly value: number;
  readonly standardUncertainty: number | null;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/**
 * What the operator, the cart, the scale and the farm add to the catches. Everything is optional: null switches off what
 * needs it. Units are in the names; percentages of the file are fractions here, except where a name ends in Percent.
 */
export interface Setup {
  /** File name as the user gave it. */
  readonly source: string;
  readonly title: string | null;
  /** Largest rate error that is accepted, 0.05 for 5 %. */
  readonly tolerance: number | null;
  /** Confidence level of the intervals. */
  readonly confidence: number | null;
  /** Chance wanted of reaching the width aimed at. */
  readonly assurance: number | null;
  readonly scale: ScaleSetup;
  readonly cart: CartSetup;
  readonly bins: readonly BinSetup[];
  readonly money: MoneySetup;
  readonly fieldChecks: readonly FieldCheckSetup[];
  /** Findings that were looked into, in the words of the person who did. */
  readonly answered: readonly AnsweredSetup[];
}

export interface AnsweredSetup {
  readonly code: CautionCode;
  readonly bin: string;
  /** null: whichever fill is in the bin. */
  readonly fill: number | null;
  readonly note: string;
}

export interface ScaleSetup {
  /** Step of the display. */
  readonly divisionKg: number | null;
  /** The heaviest catch that scale and bag take. */
  readonly capacityKg: number | null;
  /** Error found with a known mass near the catch mass, relative and signed: shown ÷ known − 1. */
  readonly testedError: number | null;
}

export interface CartSetup {
  readonly workingWidthM: Measured | null;
  readonly speedKmPerH: Span | null;
  /** Travel per turn of the drive wheel, free rolling. */
  readonly wheelCircumferenceM: Measured | null;
  /** 1 − turns made × free travel ÷ distance. */
  readonly skid: Measured | null;
  /** Standard uncertainty of a count of meter turns, in turns. */
  readonly turnCountStandardUncertainty: number | null;
}

export interface BinSetup {
  readonly bin: string;
  /** null: whatever product is in the bin. */
  readonly product: string | null;
  readonly targetRate: TargetRate | null;
  readonly bookValueKgPerTurn: Measured | null;
  /** What the drive is set for without a catch. */
  readonly assumed: "book" | "previous" | "mean" | null;
  readonly turnsPerHectare: number | null;
  readonly drive: DriveSetup | null;
  readonly seed: SeedSetup | null;
  readonly money: BinMoneySetup | null;
}

export type TargetRate =
  | { readonly kind: "mass"; readonly kgPerHectare: number }
  | { readonly kind: "seeds"; readonly seedsPerM2: number }
  | { readonly kind: "plants"; readonly plantsPerM2: number };

export type DriveSetup =
  | {
      readonly kind: "ground-wheel";
      /** Meter turns per wheel turn as set now. */
      readonly ratio: number | null;
      /** Ratios that can be set, in the order given; null: any ratio. */
      readonly steps: readonly number[] | null;
      /** Names of the steps, in the same order. */
      readonly stepNames: readonly string[] | null;
    }
  | { readonly kind: "motor"; readonly meterSpeedTurnsPerMin: Span | null };

export interface SeedSetup {
  readonly thousandKernelMassG: Measured | null;
  readonly germination: Measured | null;
  readonly emergence: Measured | null;
}

export interface BinMoneySetup {
  readonly pricePerKg: number | null;
  readonly response: MoneyResponse | null;
  readonly areaHectares: number | null;
}

/** What a rate error costs a hectare: so much for each percent on either side, or with the square of the percent. */
export type MoneyResponse =
  | {
      readonly kind: "linear";
      readonly heavyCostPerHectarePerPercent: number;
      readonly lightCostPerHectarePerPercent: number;
    }
  | { readonly kind: "quadratic"; readonly curvaturePerHectarePerPercentSquared: number };

export interface MoneySetup {
  readonly currency: string | null;
  readonly valueOfHour: number | null;
  readonly minutesPerCatch: number | null;
  readonly minutesToSetUp: number | null;
  readonly areaHectares: number | null;
  readonly areaPerFillHectares: number | null;
}

/** Product used over an area drilled. */
export interface FieldCheckSetup {
  readonly bin: string;
  readonly product: string | null;
  readonly fill: number | null;
  readonly date: string | null;
  readonly filledKg: Measured;
  readonly leftKg: Measured;
  readonly areaHectares: Measured;
  readonly intendedRateKgPerHectare: number | null;
  readonly assumedDeliveryKgPerTurn: number | null;
}

/** The setup of a bin with a product in it: the entry that names both, else the one for the bin whatever is in it. */
export function binSetup(setup: Setup, bin: string, product: string): BinSetup | null {
  const ofBin = setup.bins.filter((entry) => entry.bin === bin);
  return (
    ofBin.find((entry) => entry.product === product) ??
    ofBin.find((entry) => entry.product === null) ??
    null
  );
}
