import type { FieldCheckSetup } from "../../data/setup.ts";

/** What the area that took product has more or less than the area of the field, as shares of the field. */
export interface AreaTaken {
  /** Rows shut ÷ rows × share of the field drilled with them shut. */
  readonly shut: number;
  /** Drilled twice: headlands, wedges and passes that overlap. */
  readonly overlap: number;
  /** 1 − shut + overlap. */
  readonly factor: number;
}

/**
 * How much of the field took product: rows that are shut for tramlines take none, what is drilled twice takes it twice.
 *
 * @returns null where neither is given: then the field's area counts as it stands
 * Assumes  the meter turns the slower the more rows are shut; where it does not, their product goes to the other rows, and
 *          nothing is to be given. First principles: area = Σ over rows of width × length
 */
export function areaTaken({
  rows,
  rowsShut,
  tramlineShare,
  overlap,
}: FieldCheckSetup): AreaTaken | null {
  if (rowsShut == null && overlap == null) return null;
  const shut = rowsShut == null || rows == null ? 0 : (rowsShut / rows) * (tramlineShare ?? 1);
  const twice = overlap ?? 0;
  return { shut, overlap: twice, factor: 1 - shut + twice };
}
