import {
  type AcrossFillsCautionFacts,
  acrossFillsStandings,
} from "./caution-facts/across-fills.ts";
import { type DriftCautionFacts, driftStandings } from "./caution-facts/drift.ts";
import { type FieldCautionFacts, fieldStandings } from "./caution-facts/field.ts";
import { type FileCautionFacts, fileStandings } from "./caution-facts/file.ts";
import { type OneFillCautionFacts, oneFillStandings } from "./caution-facts/one-fill.ts";
import { type OutlierCautionFacts, outlierStandings } from "./caution-facts/outliers.ts";
import { type PlanningCautionFacts, planningStandings } from "./caution-facts/planning.ts";
import { type ProductCautionFacts, productStandings } from "./caution-facts/products.ts";
import { type SuspectedCautionFacts, suspectedStandings } from "./caution-facts/suspected.ts";
import type { FillName } from "./fill-name.ts";
import type { Ask, Ending, Severity, Standing } from "./severity.ts";

export type { Ask, Ending, Severity, Standing } from "./severity.ts";

/**
 * A typed finding that goes with a result instead of a silent assumption. The code and the facts are for
 * machines; the sentence is made from them by the wording layer, so it can be had in any language.
 */
export type Caution = { readonly [C in CautionCode]: CautionOf<C> }[CautionCode];

export interface CautionOf<C extends CautionCode> {
  readonly code: C;
  readonly severity: Severity;
  /** What it asks of the person at the drill. */
  readonly asks: Ask;
  readonly where: Where;
  readonly facts: CautionFacts[C];
}

/** Where a finding applies; null means "all of them". */
export interface Where {
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: FillName | null;
  readonly catches: readonly number[];
}

export type CautionCode = keyof CautionFacts;

/** Facts each caution carries. Masses in kg, fractions as fractions. */
export interface CautionFacts
  extends FileCautionFacts,
    SuspectedCautionFacts,
    OneFillCautionFacts,
    AcrossFillsCautionFacts,
    DriftCautionFacts,
    PlanningCautionFacts,
    OutlierCautionFacts,
    FieldCautionFacts,
    ProductCautionFacts {}

const standings = {
  ...fileStandings,
  ...suspectedStandings,
  ...oneFillStandings,
  ...acrossFillsStandings,
  ...driftStandings,
  ...planningStandings,
  ...outlierStandings,
  ...fieldStandings,
  ...productStandings,
} as const satisfies Readonly<Record<CautionCode, Standing>>;

type Standings = typeof standings;

/** Codes of findings that ask to look before anything is set. */
export type LookFirstCode = {
  readonly [C in CautionCode]: Standings[C]["asks"] extends "look-first" ? C : never;
}[CautionCode];

/** Every code there is. */
export const cautionCodes = Object.keys(standings) as readonly CautionCode[];

/** How findings of a code stand: one row a code, so that none can be forgotten. */
export function standingOf(code: CautionCode): Standing {
  return standings[code];
}

/** What ends a finding that asks to look first; empty for the others. */
export function endingsOf(code: CautionCode): readonly Ending[] {
  const standing = standingOf(code);
  return standing.asks === "look-first" ? standing.endedBy : [];
}

/** Whether a finding is about this fill of this bin and product, alone or among others. */
export function isAbout(
  { where }: Pick<Caution, "where">,
  {
    bin,
    product,
    fill,
  }: { readonly bin: string; readonly product: string; readonly fill: FillName },
): boolean {
  return (
    (where.bin === null || where.bin === bin) &&
    (where.product === null || where.product === product) &&
    (where.fill === null || where.fill === fill)
  );
}

export function caution<C extends CautionCode>(
  code: C,
  { bin = null, product = null, fill = null, catches = [] }: Partial<Where>,
  facts: CautionFacts[C],
): Caution {
  const finding: CautionOf<C> = {
    code,
    severity: standings[code].severity,
    asks: standings[code].asks,
    where: { bin, product, fill, catches },
    facts,
  };
  // The mapped union is the same set of shapes as CautionOf<C> over all C; the compiler cannot see that for a generic C.
  return finding as unknown as Caution;
}
