import type { Span } from "../../data/setup.ts";
import type { TurnsSet } from "../../model/drive.ts";
import type { ChanceOutsideLaw, LawfulRates } from "../../model/lawful-rates.ts";
import type { MissingForMass } from "../../model/rate-as-mass.ts";
import type { WorkedOut } from "../../model/worked-out.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { FillName } from "../../results/fill-name.ts";
import type { SettingOptions } from "./options.ts";

export type { SettingOptions };

/** A figure the setting needs that is not given. */
export type MissingForSetting =
  | "target rate"
  | MissingForMass
  | "working width"
  | "drive"
  | "wheel travel"
  | "working speed"
  | "meter speeds";

/** Meter speed that the target needs at one working speed. */
export interface MeterSpeedNeeded {
  readonly speedKmPerH: number;
  readonly turnsPerMin: WorkedOut<"turns/min">;
}

/** What the drive can do, worked out with the delivery's value. */
export interface Reach {
  /** Rates in kg/ha that can be drilled, a motor's at every working speed; null: nothing given limits them. */
  readonly rates: {
    readonly lower: number;
    readonly upper: number;
    /** True: `lower` is above `upper`, so no rate can be held at every working speed. */
    readonly empty: boolean;
  } | null;
  /** Speeds over ground at which a motor can keep up the target; null for a ground wheel, or without a target. */
  readonly speedsKmPerH: { readonly lower: number; readonly upper: number } | null;
}

/** What one setting of the drive puts out. */
export interface RateAtSetting {
  /** Name of the step; null: it has none. */
  readonly name: string | null;
  readonly setting: number;
  readonly rate: WorkedOut<"kg/ha">;
  /** Against the target as a figure; null without one. */
  readonly rateError: Estimate<"fraction"> | null;
}

/** What a step of a gearbox puts out. */
export interface StepRate extends RateAtSetting {
  /** True: the catches were made at another step only, and its rate goes with the ratio of the two. */
  readonly assumed: boolean;
}

/** Where the drive stands now. */
export interface SetNow extends TurnsSet {
  readonly rate: WorkedOut<"kg/ha">;
  /** About "rate error today"; null without a target. */
  readonly rateError: Estimate<"fraction"> | null;
}

/** Steps beside the ratio needed, as places in `steps`; null: there is none on that side. */
export interface NearestSteps {
  readonly nearest: number;
  readonly below: number | null;
  readonly above: number | null;
}

/** What label or law sets, and how likely the rate breaks it once the drive is set as said. */
export interface LawfulSetting extends LawfulRates {
  /** The rate that comes out then; null: without a target nothing is set. */
  readonly rate: WorkedOut<"kg/ha"> | null;
  /** True: of the nearest step, false: of the setting needed. */
  readonly ofStep: boolean;
  /** Null where no rate comes out, or its error is not known. */
  readonly chance: ChanceOutsideLaw;
}

/** What to set the drive to for the target rate, for one fill. */
export interface Setting {
  readonly kind: "setting";
  readonly bin: string;
  readonly product: string;
  readonly fill: FillName;
  readonly options: SettingOptions;
  /** Delivery per turn it rests on. */
  readonly delivery: Estimate<"kg/turn">;
  /** Rate wanted; with an interval where it comes from seed figures that have an uncertainty. */
  readonly target: WorkedOut<"kg/ha"> | null;
  /** Meter turns per hectare needed; interval about "setting". */
  readonly turnsPerHectare: WorkedOut<"turns/ha"> | null;
  /** Meter turns per wheel turn needed; null for a motor. */
  readonly ratio: WorkedOut<"ratio"> | null;
  /** At the lowest and the highest working speed; one entry where they are equal, none where not known. */
  readonly meterSpeeds: readonly MeterSpeedNeeded[];
  readonly reach: Reach | null;
  /** In the order given; empty where no steps are listed. Settings are ratios. */
  readonly steps: readonly StepRate[];
  /** Place in `steps` of the only one at which the meter was caught; null: not told. */
  readonly caughtStep: number | null;
  readonly nearest: NearestSteps | null;
  /** The setting needed, and a little up and down from it. */
  readonly around: {
    readonly of: "ratio" | "turns/ha";
    readonly rows: readonly RateAtSetting[];
  } | null;
  readonly now: SetNow | null;
  /** Null: label or law sets no rate. */
  readonly lawful: LawfulSetting | null;
  /** Lowest and highest meter speed of the fill's catches; null: not recorded. */
  readonly caughtTurnsPerMin: Span | null;
  readonly missing: readonly MissingForSetting[];
  readonly cautions: readonly Caution[];
}
