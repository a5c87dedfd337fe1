import type { Meter } from "../../model/meters.ts";
import {
  type Caution,
  type CautionCode,
  type CautionFacts,
  caution,
} from "../../results/caution.ts";
import type { CheckedField, FieldCheck } from "./result.ts";

/** Everything about field checks that a person should know before relying on them. */
export function fieldCheckCautions(
  { bin, product, checks, correction }: Omit<FieldCheck, "cautions">,
  meter: Meter,
): readonly Caution[] {
  const found = checks.flatMap((check, i) => aboutCheck(check, meter, i === checks.length - 1));
  if (correction?.checks === 1)
    found.push(caution("one-field-check", { bin, product }, { bias: correction.factor.value - 1 }));
  if (correction?.checks === 2) found.push(caution("two-field-checks", { bin, product }, {}));
  return found;
}

function aboutCheck(
  { fill, withoutUncertainty, predicted, agreement, bias }: CheckedField,
  { bin, product, fills }: Meter,
  isLatest: boolean,
): Caution[] {
  const found: Caution[] = [];
  const say = <C extends CautionCode>(code: C, facts: CautionFacts[C]) =>
    found.push(caution(code, { bin, product, fill }, facts));
  if (fill !== null && !fills.some((one) => one.fill === fill))
    say("field-check-fill-unknown", { fill });
  if (predicted === null) say("predicted-rate-unknown", {});
  if (withoutUncertainty.length > 0)
    say("field-check-without-uncertainty", { missing: withoutUncertainty });
  const disagreement =
    agreement === null || agreement.agrees || bias === null
      ? null
      : { normalisedError: agreement.normalisedError, bias: bias.value };
  if (disagreement !== null)
    found.push(
      isLatest
        ? caution("field-disagrees", { bin, product }, disagreement)
        : caution("field-disagreed-before", { bin, product, fill }, disagreement),
    );
  return found;
}
