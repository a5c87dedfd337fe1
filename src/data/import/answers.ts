import { OptionError } from "../../errors/errors.ts";
import { massKinds } from "../column-kinds.ts";
import { catchColumns } from "../columns.ts";
import { meanings, spelled } from "../header-names.ts";
import type { MassUnit } from "../types.ts";
import { dateOrders, type ImportOptions } from "./result.ts";

/** A column that an answer names: by its name in the clean table, or a mass in its unit. */
export interface Target {
  /** The name of a mass is its kind. */
  readonly name: string;
  readonly unit: MassUnit | null;
}

/** The answers of somebody, checked and ready to be looked up. */
export interface Answers {
  /** By the spelling of a header; null: the column is left out. */
  readonly map: ReadonlyMap<string, Target | null>;
  /** A mass by its kind, with its unit. */
  readonly set: ReadonlyMap<string, string>;
  readonly fillDown: ReadonlySet<string>;
  readonly options: ImportOptions;
}

const known = ["map", "set", "dates", "decimal", "sheets", "fillDown", "aside"];

/** @throws OptionError for an answer that names no column, or an option nobody knows */
export function answersOf(options: ImportOptions): Answers {
  const unknown = Object.keys(options).find((name) => !known.includes(name));
  if (unknown !== undefined)
    throw new OptionError(unknown, "given", { need: "known-name", facts: { names: known } });
  if (options.dates !== undefined && !dateOrders.includes(options.dates))
    throw new OptionError("dates", options.dates, {
      need: "listed",
      facts: { choices: dateOrders },
    });
  if (options.decimal !== undefined && !["comma", "point"].includes(options.decimal))
    throw new OptionError("decimal", options.decimal, {
      need: "one-of",
      facts: { choices: ["comma", "point"] },
    });
  const map = Object.entries(options.map ?? {}).map(
    ([header, column]) =>
      [spelled(header).spelling, column.trim() === "-" ? null : targetIn("map", column)] as const,
  );
  const set = Object.entries(options.set ?? {}).map(([column, value]) => {
    const { name, unit } = targetIn("set", column);
    return [name, unit === null ? value.trim() : `${value.trim()} ${unit}`] as const;
  });
  const fillDown = (options.fillDown ?? []).map((column) => targetIn("fillDown", column).name);
  return { map: new Map(map), set: new Map(set), fillDown: new Set(fillDown), options };
}

export function cleanName({ name, unit }: Target): string {
  return unit === null ? name : `${name}_${unit}`;
}

function targetIn(option: string, column: string): Target {
  const { spelling } = spelled(column);
  const meaning = meanings.get(spelling);
  if (meaning !== undefined)
    return "plain" in meaning
      ? { name: meaning.plain, unit: null }
      : { name: meaning.kind, unit: meaning.unit };
  const kind = massKinds.find((one) => one === spelling);
  if (kind !== undefined) return { name: kind, unit: null };
  const choices = catchColumns.map(({ name }) => name);
  throw new OptionError(option, column, { need: "listed", facts: { choices } });
}
