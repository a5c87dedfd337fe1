import type { TurnsSet } from "../../model/drive.ts";
import type { WorkedOut } from "../../model/worked-out.ts";
import type { Caution } from "../../results/caution.ts";
import type { Estimate } from "../../results/estimate.ts";
import type { AreaTaken } from "./area-taken.ts";
import type { FieldCheckOptions } from "./options.ts";

export type { AreaTaken, FieldCheckOptions };

/** What the catches let expect of the field. */
export interface PredictedRate {
  readonly rate: WorkedOut<"kg/ha">;
  /** How the turns a hectare are known: the drive was set for an assumed delivery, or as it stands now. */
  readonly basis: "assumed delivery" | TurnsSet["from"];
  /** Whose delivery: of the fill that was drilled, or of any fill of the meter. */
  readonly deliveryOf: "this fill" | "any fill";
  readonly delivery: Estimate<"kg/turn">;
}

/** Do the field and the catches agree? */
export interface Agreement {
  /** E_n = (field − predicted)/√(U_field² + U_predicted²). */
  readonly normalisedError: number;
  /** |E_n| <= 1. */
  readonly agrees: boolean;
  /** Of a difference this large by chance, as the largest of all field checks of the log (Bonferroni). */
  readonly pValue: number;
  readonly expandedField: number;
  readonly expandedPredicted: number;
}

/** One field check beside what was intended and what the catches let expect. */
export interface CheckedField {
  readonly date: string | null;
  readonly fill: number | null;
  readonly usedKg: number;
  /** That took product. */
  readonly areaHectares: number;
  /** What it has more or less than the field's area; null: nothing of it was given, and the field's area counts. */
  readonly taken: AreaTaken | null;
  /** Used ÷ area; interval about "rate", null where an uncertainty is not given. */
  readonly rate: WorkedOut<"kg/ha">;
  /** Figures whose uncertainty is not given. */
  readonly withoutUncertainty: readonly ("filled" | "left" | "area")[];
  readonly intendedKgPerHa: number | null;
  /** Rate ÷ intended − 1, about "rate error in the field"; null without an intended rate. */
  readonly rateError: Estimate<"fraction"> | null;
  /** null: nothing says how the drive was set. */
  readonly predicted: PredictedRate | null;
  /** Rate ÷ predicted − 1: what a moving field does that a standing drill does not, and any error of mass or area. */
  readonly bias: Estimate<"fraction"> | null;
  /** Whether the rate found lies in the interval predicted, its own uncertainty apart; null: no such interval. */
  readonly withinPrediction: boolean | null;
  /** null where either uncertainty is unknown. */
  readonly agreement: Agreement | null;
  /** Inverse-variance mean of rate and predicted rate; null unless they agree. */
  readonly best: WorkedOut<"kg/ha"> | null;
  /** What the meter delivered per turn in the field; null without a predicted rate. */
  readonly fieldDeliveryKgPerTurn: number | null;
}

/** What field checks say together: the share of the stationary delivery that reaches the field. */
export interface FieldCorrection {
  readonly checks: number;
  /** Mean of field ÷ predicted over checks, t on checks − 1; about "ratio"; no interval with one check. */
  readonly factor: Estimate<"ratio">;
  /** The same after each check in turn. */
  readonly running: readonly { readonly checks: number; readonly factor: Estimate<"ratio"> }[];
}

/** Field checks of one bin and product. */
export interface FieldCheck {
  readonly kind: "field-check";
  readonly bin: string;
  readonly product: string;
  readonly options: FieldCheckOptions;
  readonly checks: readonly CheckedField[];
  /** null: no check can be compared with a predicted rate. */
  readonly correction: FieldCorrection | null;
  readonly cautions: readonly Caution[];
}
