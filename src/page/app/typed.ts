import type { MassUnit } from "../../data/types.ts";
import type { UnitSystem } from "../../wording/format.ts";

/** A figure as it was typed, with the unit that stood beside the field then; null: the field has none. */
export interface Typed {
  readonly text: string;
  readonly unit: string | null;
}

interface Numeric {
  readonly is: "number";
  readonly low: number;
  readonly high: number;
}

/** Outside these limits no figure of a farm lies; those of a setup file. */
const above0: Numeric = { is: "number", low: 1e-9, high: 1e9 };
const atLeast0: Numeric = { is: "number", low: 0, high: 1e9 };
const percent = (low: number, high: number): Numeric => ({ is: "number", low, high });
const choice = <const V extends string>(...values: readonly V[]) =>
  ({ is: "choice", values }) as const;

/** What can be typed about machine, scale and farm, and what it may be: the limits are those of a setup file. */
export const machineFields = {
  units: choice("metric", "us"),
  mass: choice("kg", "g", "lb", "oz"),
  weighing: choice("net", "gross"),
  keys: choice("big", "device"),
  tolerance: percent(0.2, 100),
  confidence: percent(50, 99.99),
  division: above0,
  capacity: above0,
  drive: choice("none", "motor", "ground-wheel"),
  steps: { is: "numbers" } as const,
  width: above0,
  wheel: above0,
  slip: percent(-50, 90),
  currency: { is: "text" } as const,
  hour: atLeast0,
  minutes: above0,
  setUp: atLeast0,
  season: above0,
  fillArea: above0,
} as const;

export const binFields = { target: above0, tooMuch: atLeast0, tooLittle: atLeast0 } as const;

export type MachineField = keyof typeof machineFields;
export type BinField = keyof typeof binFields;

export type MachineTyped = Readonly<Partial<Record<MachineField, Typed>>>;
export type BinTyped = Readonly<Partial<Record<BinField, Typed>>>;

/** The unit a field would be typed in now; null: it has none. */
export function unitOf(
  field: MachineField | BinField,
  { units, mass }: { readonly units: UnitSystem; readonly mass: MassUnit },
): string | null {
  const us = units === "us";
  switch (field) {
    case "division":
    case "capacity":
      return mass;
    case "width":
    case "wheel":
      return us ? "ft" : "m";
    case "season":
    case "fillArea":
    case "tooMuch":
    case "tooLittle":
      return us ? "ac" : "ha";
    case "target":
      return us ? "lb/ac" : "kg/ha";
    case "tolerance":
    case "confidence":
    case "slip":
      return "%";
    default:
      return null;
  }
}

/** The number in a text with a decimal comma or point; null: there is none. */
export function numberIn(text: string): number | null {
  const plain = text
    .trim()
    .replace(/^\u2212/, "-")
    .replace(",", ".");
  if (!/^[+-]?(\d+\.?\d*|\.\d+)$/.test(plain)) return null;
  return Number(plain) + 0;
}

/** Numbers with spaces or semicolons between them; null: something else is among them. */
export function numbersIn(text: string): readonly number[] | null {
  const parts = text.split(/[;\s]+/).filter((part) => part !== "");
  const found = parts.map(numberIn);
  const good = found.filter((one): one is number => one !== null && isWithin(one, above0));
  return parts.length > 0 && good.length === found.length ? good : null;
}

/** Whether a text may stand in a field. */
export function isAllowed(field: MachineField | BinField, text: string): boolean {
  const rule = { ...machineFields, ...binFields }[field];
  switch (rule.is) {
    case "text":
      return text.trim() !== "";
    case "numbers":
      return numbersIn(text) !== null;
    case "choice":
      return rule.values.some((value) => value === text);
    case "number": {
      const found = numberIn(text);
      return found !== null && isWithin(found, rule);
    }
  }
}

function isWithin(value: number, { low, high }: Numeric): boolean {
  return value >= low && value <= high;
}
