import type { MeterModel } from "../model/model.ts";
import { requireModelOptions } from "../results/options.ts";
import { fieldCheckCautions } from "./field-check/cautions.ts";
import { checkedField } from "./field-check/checked.ts";
import { fieldCorrection } from "./field-check/correction.ts";
import type { FieldCheck, FieldCheckOptions } from "./field-check/result.ts";

export type {
  Agreement,
  AreaTaken,
  CheckedField,
  FieldCheck,
  FieldCheckOptions,
  FieldCorrection,
  PredictedRate,
} from "./field-check/result.ts";

/**
 * What did the field use, was it the rate intended, and does it agree with what the catches let expect?
 *
 * Rate = (filled − left)/(area · (1 − rows shut ÷ rows · share with tramlines + share drilled twice)), uncertainty by first order of the GUM. Rate error = rate ÷ intended − 1. Against the
 * predicted rate (delivery × turns per hectare): normalised error E_n with both expanded uncertainties, agreement where
 * |E_n| <= 1, and then the inverse-variance mean of both. Several checks: mean of field ÷ predicted, t on checks − 1.
 *
 * @param meter   one bin × product of a fitted model
 * @param options checks of this bin and product in order of time, and how the drive is set
 * @returns       null when there are no checks: nothing was asked. kg/ha, and fractions, above zero where the field got more
 * Null when      an uncertainty of mass or area is not given: what rests on it (caution field-check-without-uncertainty);
 *                nothing says how the drive was set: the predicted rate (predicted-rate-unknown)
 * Assumes        filled, left and area found independently. What a moving field does that a standing drill does not is the
 *                bias found here, a term of its own, never part of catch scatter
 * Source         JCGM 100:2008 (GUM) 5.1.2; ISO/IEC 17043 and ISO 13528 (E_n)
 */
export function fieldCheck(meter: MeterModel, options: FieldCheckOptions): FieldCheck | null {
  requireModelOptions(options);
  if (options.checks.length === 0) return null;
  const checks = options.checks.map((check) => checkedField(check, meter, options));
  const result = {
    kind: "field-check",
    bin: meter.bin,
    product: meter.product,
    options,
    checks,
    correction: fieldCorrection(checks, options.level),
  } as const;
  return { ...result, cautions: fieldCheckCautions(result, meter) };
}
