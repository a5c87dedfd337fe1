/** What an interval makes a statement about. Two intervals about different things are never interchangeable. */
export type About =
  | "this fill's delivery"
  | "next catch"
  | "mean over fills"
  | "next fill"
  | "new product"
  | "proportion of fills"
  | "constant mass in every catch"
  | "catch scatter"
  | "fill-to-fill spread"
  | "rate error today"
  | "rate error at the next fill"
  | "difference"
  | "ratio"
  | "shift"
  | "trend"
  | "setting"
  | "rate error in the field"
  | "outlet to outlet"
  | "rate"
  | "coefficient"
  | "cost"
  | "area";

export interface Interval {
  /** null: unbounded on this side. */
  readonly lower: number | null;
  readonly upper: number | null;
  /** Confidence level as a fraction, 0.95 for 95 %. */
  readonly level: number;
  readonly about: About;
}

export type Unit =
  | "kg/turn"
  | "kg"
  | "kg/√turn"
  | "kg/ha"
  | "seeds/m²"
  | "turns/ha"
  | "turns/min"
  | "ratio"
  | "fraction"
  | "fraction/fill"
  | "fraction/catch"
  | "fraction/(turns/min)"
  | "kg/turn/fill"
  | "ha"
  | "money/ha"
  | "money"
  | "kg/m³"
  | "m³/turn";

/** A number with its doubt. What cannot be known is null, and a caution says why. */
export interface Estimate<U extends Unit = Unit> {
  readonly value: number;
  readonly unit: U;
  readonly standardError: number | null;
  /** Degrees of freedom behind the standard error. */
  readonly df: number | null;
  readonly interval: Interval | null;
}
