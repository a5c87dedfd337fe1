import { InvalidArgumentError } from "commander";
import { massUnits } from "../data/column-kinds.ts";
import { readCatches } from "../data/read-catches.ts";
import type { CatchLog, MassUnit } from "../data/types.ts";
import { convert, findUnit } from "../units/convert.ts";
import type { Needed } from "./arguments.ts";

/** A catch as somebody types it behind the command: the mass, with its turns before a colon and its unit after it. */
const typed = /^(?:(\d+(?:[.,]\d+)*):)?(\d+(?:[.,]\d+)*)\s*([a-z]+)?$/i;

/** Whether an argument is a catch and not the name of a file; a file that is called like a number is reached as ./6.3. */
export function isTypedCatch(argument: string): boolean {
  return typed.test(argument.trim());
}

/** What goes for all typed catches unless one says otherwise. */
export interface TypedDefaults {
  /** Undefined: each must say its own. */
  readonly turns: number | undefined;
  readonly unit: MassUnit;
}

/**
 * Catches typed behind the command, by the reader that reads files: as a sheet of turns and masses.
 *
 * @param catches  such as "6.3", "20:6.3", "20:14lb"
 * @throws         InvalidArgumentError for what is no catch; DataError for a value that no catch can have
 */
export function readTypedCatches(
  catches: readonly string[],
  defaults: TypedDefaults,
  say: Needed,
): Promise<CatchLog> {
  const rows = catches.map((argument) => partsOf(argument, defaults, say));
  // One column has one unit; where units are mixed, all are told in kg.
  const units = new Set(rows.map(({ unit }) => unit));
  const [unit = defaults.unit] = units.size === 1 ? units : (["kg"] as const);
  const lines = rows.map((row) => [row.turns, row.unit === unit ? row.mass : inKg(row)].join(";"));
  return readCatches({ name: "typed.csv", text: [`turns;net_${unit}`, ...lines].join("\n") });
}

/** A catch as it was typed. */
interface Parts {
  readonly turns: string;
  readonly mass: string;
  readonly unit: MassUnit;
}

/** @throws InvalidArgumentError for what is no catch */
export function partsOf(argument: string, { turns, unit }: TypedDefaults, say: Needed): Parts {
  const [, own, mass, suffix] = typed.exec(argument.trim()) ?? [];
  if (mass === undefined) throw new InvalidArgumentError(say.typedCatch(argument));
  const count = own ?? turns?.toString();
  if (count === undefined) throw new InvalidArgumentError(say.typedTurns(argument));
  return { turns: count, mass, unit: suffix === undefined ? unit : unitOf(suffix, argument, say) };
}

function unitOf(suffix: string, argument: string, say: Needed): MassUnit {
  const found = findUnit(suffix, "mass");
  const unit = massUnits.find((one) => one === found);
  if (unit === undefined) throw new InvalidArgumentError(say.typedCatch(argument));
  return unit;
}

function inKg({ mass, unit }: Parts): string {
  return String(convert(Number(mass.replace(",", ".")), unit, "kg"));
}
