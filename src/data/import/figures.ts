import { type CellUnit, unitIn } from "./units-in-text.ts";

/** A number of a cell as text that the reader of numbers takes, and the unit that stood behind it. */
export interface CellFigure {
  readonly number: string;
  readonly unit: CellUnit | null;
  /** Marks between thousands were taken out. */
  readonly thousands: boolean;
}

const space = "[ \\u00a0\\u202f]";
/** Each of these is one number and no other: its marks cannot stand for anything else. */
const grouped = [
  {
    form: new RegExp(`^[+-]?\\d{1,3}(?:[${space.slice(1, -1)}'’]\\d{3})+(?:[.,]\\d+)?$`),
    mark: /[ \u00a0\u202f'’]/g,
  },
  { form: /^[+-]?\d{1,3}(?:\.\d{3})+,\d+$/, mark: /\./g },
  { form: /^[+-]?\d{1,3}(?:,\d{3})+\.\d+$/, mark: /,/g },
  { form: /^[+-]?\d{1,3}(?:\.\d{3}){2,}$/, mark: /\./g },
  { form: /^[+-]?\d{1,3}(?:,\d{3}){2,}$/, mark: /,/g },
];
const withUnit =
  /^(?<number>[+\-\u2212]?[\d.,][\d.,'’ \u00a0\u202f]*?)\s*(?<unit>[^\d\s.,+'’-].*)?$/u;

/** The number in a cell, freed of its unit and of marks between thousands; null when it is no number and a unit. */
export function figureIn(text: string): CellFigure | null {
  const { number, unit: unitText } = withUnit.exec(text.trim())?.groups ?? {};
  if (number === undefined) return null;
  const unit = unitText === undefined ? null : unitIn(unitText);
  if (unitText !== undefined && unit === null) return null;
  const group = grouped.find(({ form }) => form.test(number));
  if (group === undefined && /[.,].*[.,]/.test(number)) return null;
  return {
    number: group === undefined ? number : number.replace(group.mark, ""),
    unit,
    thousands: group !== undefined,
  };
}

/** A number whose mark is known, with a decimal point; a mark of the other kind parts thousands. */
export function withPoint(number: string, mark: "comma" | "point"): string {
  const [decimal, group] = mark === "comma" ? [",", "."] : [".", ","];
  return number.replaceAll(group, "").replace(decimal, ".");
}
