import type { Estimate, Interval } from "../../results/estimate.ts";
import type { NestedTest } from "../../statistics/nested-test.ts";

/** On which side of the others a meter is found. */
export type Side = "more" | "less";

/** A test of one meter among all that were made. */
export interface FleetTest {
  /** Two-sided. */
  readonly pValue: number;
  /** The same adjusted over all tests of the fleet, of whatever kind, by Benjamini and Hochberg. */
  readonly adjusted: number;
  /** Null: the meter is like the others, as far as these catches can tell. */
  readonly unlike: Side | null;
}

/** What a meter delivers against its product's level, which the other meters with the product say. */
export interface AgainstLevel extends FleetTest {
  /** Random-effects level of the other meters with the product, kg/turn. */
  readonly level: number;
  /** Delivery ÷ level; its interval is that of the mean over fills, or of the fill where there is one. */
  readonly ratio: Estimate<"ratio">;
  /** Deleted t of ln(delivery ÷ level). */
  readonly statistic: number;
  readonly df: number;
}

/** A spread of a meter against those of the others. */
export interface AgainstSpreads extends FleetTest {
  /** By its own catches alone: relative standard deviation. */
  readonly relative: number;
  readonly df: number;
  readonly interval: Interval | null;
  /** Middle of what the others say. */
  readonly typical: number;
  /** Other meters that say it. */
  readonly meters: number;
}

/** One bin and product among the others. */
export interface FleetMeter {
  readonly bin: string;
  readonly product: string;
  /** Of the level in force. */
  readonly fills: number;
  readonly turns: number;
  /** Null: too few other meters hold the product, or nothing says how they differ. */
  readonly delivery: AgainstLevel | null;
  /** Catches of one fill. Null: too few other meters tell, or its own catches do not. */
  readonly scatter: AgainstSpreads | null;
  /** Fills of one level. Null likewise. */
  readonly spread: AgainstSpreads | null;
}

/** Where meters like the others would lie, by the turns caught. */
export interface FunnelPoint {
  readonly turns: number;
  /** Ends of the two bands, delivery ÷ level. */
  readonly lower95: number;
  readonly upper95: number;
  readonly lower998: number;
  readonly upper998: number;
}

/** Limits over the total turns of a meter: exp(± z·√(τ² + σ²/turns)) of the meters that are like each other. */
export interface Funnel {
  /** τ: how far meters of one product lie apart, relative. */
  readonly betweenMeters: number;
  /** σ: what one turn leaves open, relative; fills and catches together. */
  readonly perTurn: number;
  readonly points: readonly FunnelPoint[];
}

/** What catches may have recorded beside their meter. */
export const fleetFactors = ["operator", "scale", "machine"] as const;

export type FleetFactor = (typeof fleetFactors)[number];

/** What one operator, scale or machine makes of the delivery. */
export interface FactorLevel {
  readonly label: string;
  readonly meters: number;
  readonly fills: number;
  /** Delivery ÷ the middle of all of them, everything else equal. */
  readonly ratio: Estimate<"ratio">;
}

/** Operators, scales or machines against each other. */
export interface ComparedFactor {
  readonly factor: FleetFactor;
  /** "meters": on the same meter, fill by fill; "products": between meters with the same product. */
  readonly within: "meters" | "products";
  readonly meters: number;
  readonly levels: readonly FactorLevel[];
  readonly test: NestedTest;
  /** p over all factors compared, by Holm. */
  readonly adjusted: number;
  readonly differ: boolean;
}

/** Why operators, scales or machines could not be compared. */
export type WhyNotCompared = "not recorded" | "one only" | "too few meters" | "never side by side";

export interface UncomparedFactor {
  readonly factor: FleetFactor;
  readonly why: WhyNotCompared;
}

/** What all meters of a log say of each one. */
export interface FleetComparison {
  readonly kind: "fleet";
  readonly options: {
    readonly level: number;
    /** Share of the meters found unlike the others that may be false, on average. */
    readonly falseDiscoveries: number;
    /** Fewest meters with one product that have a level. */
    readonly metersForLevel: number;
    /** Fewest meters with an operator, scale or machine that is compared. */
    readonly metersForFactor: number;
    /** Turns of the catch that `scatter` is about. */
    readonly turns: number;
  };
  /** In the order of the file. */
  readonly meters: readonly FleetMeter[];
  /** Tests that the false discoveries are controlled over. */
  readonly tests: number;
  /** Null: no product has a level, or fills of one meter do not differ. */
  readonly funnel: Funnel | null;
  readonly factors: {
    readonly compared: readonly ComparedFactor[];
    readonly uncompared: readonly UncomparedFactor[];
  };
}
