import {
  type AcrossFillsCautionFacts,
  acrossFillsSeverities,
} from "./caution-facts/across-fills.ts";
import { type DriftCautionFacts, driftSeverities } from "./caution-facts/drift.ts";
import { type FieldCautionFacts, fieldSeverities } from "./caution-facts/field.ts";
import { type FileCautionFacts, fileSeverities } from "./caution-facts/file.ts";
import { type OneFillCautionFacts, oneFillSeverities } from "./caution-facts/one-fill.ts";
import { type OutlierCautionFacts, outlierSeverities } from "./caution-facts/outliers.ts";
import { type PlanningCautionFacts, planningSeverities } from "./caution-facts/planning.ts";
import { type ProductCautionFacts, productSeverities } from "./caution-facts/products.ts";
import type { Severity } from "./severity.ts";

export type { Severity } from "./severity.ts";

/**
 * A typed finding that goes with a result instead of a silent assumption. The code and the facts are for
 * machines; the sentence is made from them by the wording layer, so it can be had in any language.
 */
export type Caution = { readonly [C in CautionCode]: CautionOf<C> }[CautionCode];

export interface CautionOf<C extends CautionCode> {
  readonly code: C;
  readonly severity: Severity;
  readonly where: Where;
  readonly facts: CautionFacts[C];
}

/** Where a finding applies; null means "all of them". */
export interface Where {
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: number | null;
  readonly catches: readonly number[];
}

export type CautionCode = keyof CautionFacts;

/** Facts each caution carries. Masses in kg, fractions as fractions. */
export interface CautionFacts
  extends FileCautionFacts,
    OneFillCautionFacts,
    AcrossFillsCautionFacts,
    DriftCautionFacts,
    PlanningCautionFacts,
    OutlierCautionFacts,
    FieldCautionFacts,
    ProductCautionFacts {}

const severities: Readonly<Record<CautionCode, Severity>> = {
  ...fileSeverities,
  ...oneFillSeverities,
  ...acrossFillsSeverities,
  ...driftSeverities,
  ...planningSeverities,
  ...outlierSeverities,
  ...fieldSeverities,
  ...productSeverities,
};

export const nowhere: Where = { bin: null, product: null, fill: null, catches: [] };

export function caution<C extends CautionCode>(
  code: C,
  where: Partial<Where>,
  facts: CautionFacts[C],
): Caution {
  const finding: CautionOf<C> = {
    code,
    severity: severities[code],
    where: { ...nowhere, ...where },
    facts,
  };
  // The mapped union is the same set of shapes as CautionOf<C> over all C; the compiler cannot see that for a generic C.
  return finding as unknown as Caution;
}
