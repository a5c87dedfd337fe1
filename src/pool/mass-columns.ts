import { columnByName, type MassKind } from "../data/column-kinds.ts";
import type { CatchColumn } from "../data/columns.ts";
import type { MassUnit } from "../data/types.ts";
import type { SourceColumn } from "./cells-sql.ts";

/** A column of masses in one unit. */
export interface MassSource extends SourceColumn {
  readonly kind: MassKind;
  readonly unit: MassUnit;
}

type OneMass = Pick<MassSource, "kind" | "unit">;

export const massName = ({ kind, unit }: OneMass) => `${kind}_${unit}`;
export const massCell = (one: OneMass) => `${massName(one)}_text`;

/** Every mass that is written must be right, since net may be worked out from it; blank cells are looked at together. */
export function massRules({ kind, unit }: OneMass): CatchColumn {
  return { ...columnByName[`${kind}_kg`], unit, required: false };
}
