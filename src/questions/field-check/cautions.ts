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

/** Chance of a false disagreement among all field checks of the log that is small enough to stop a person for. */
const seriously = 0.01;

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
  if (agreement !== null && !agreement.agrees && bias !== null) {
    const { normalisedError, pValue } = agreement;
    const facts = { normalisedError, bias: bias.value, pValue };
    const serious = pValue <= seriously ? "field-disagrees" : "field-differs";
    found.push(
      isLatest
        ? caution(serious, { bin, product }, facts)
        : caution("field-disagreed-before", { bin, product, fill }, facts),
    );
  }
  return found;
}
