import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { OutletsOptions } from "./options.ts";

export type { OutletsOptions };

/** One outlet's catches taken together. */
export interface Outlet {
  readonly outlet: string;
  readonly catches: number;
  readonly turns: number;
  readonly massKg: number;
  /** Σm/Σt. */
  readonly deliveryKgPerTurn: number;
  /** Delivery ÷ centre of the band − 1. */
  readonly relative: number;
  readonly insideBand: boolean;
}

/** How evenly the outlets of one bin deliver, in one fill. Not catch scatter: that is how one outlet's catches repeat. */
export interface Outlets {
  readonly kind: "outlets";
  readonly bin: string;
  readonly product: string;
  /** Newest fill in which two or more outlets were caught. */
  readonly fill: FillName;
  readonly options: OutletsOptions;
  readonly input: { readonly outlets: number; readonly catches: number };
  /** In the order in which they were caught. */
  readonly outlets: readonly Outlet[];
  readonly meanKgPerTurn: number;
  /** Standard deviation ÷ mean of the outlets' deliveries, Vangel's interval; about "outlet to outlet". */
  readonly coefficientOfVariation: Estimate<"fraction">;
  readonly band: {
    readonly about: "target" | "mean of outlets";
    readonly centreKgPerTurn: number;
    readonly lowerKgPerTurn: number;
    readonly upperKgPerTurn: number;
  };
  /** How repeated catches of one outlet differ, relative, for a catch of the usual turns; null: each was caught once. */
  readonly catchScatter: {
    readonly relative: number;
    readonly turns: number;
    readonly df: number;
  } | null;
  readonly cautions: readonly Caution[];
}
