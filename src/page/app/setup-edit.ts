import type { Setup } from "../../data/setup.ts";
import { convert } from "../../units/convert.ts";
import type { ConvertibleUnit } from "../../units/factors.ts";

/** The content of a setup file, key by key. */
export type SetupFile = Readonly<Record<string, unknown>>;

/** A change that something typed makes, in the setup and in the file that says the same. */
export interface Edit {
  readonly setup: (setup: Setup) => Setup;
  readonly file: (file: SetupFile) => SetupFile;
}

export function put(file: SetupFile, [key, inner]: readonly string[], value: unknown): SetupFile {
  if (key === undefined) return file;
  const before = file[key];
  return {
    ...file,
    [key]: inner === undefined ? value : { ...(isObject(before) ? before : {}), [inner]: value },
  };
}

export function isObject(value: unknown): value is SetupFile {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Into the entries of one level: money of a bin holds more than what is typed here. */
export function merged(old: SetupFile, change: SetupFile): SetupFile {
  const deep = Object.entries(change).map(([key, value]) => {
    const before = old[key];
    return [
      key,
      key === "money" && isObject(before) && isObject(value) ? { ...before, ...value } : value,
    ];
  });
  return { ...old, ...Object.fromEntries(deep) };
}

/** More digits than anybody types, and fewer than binary arithmetic adds. */
const digits = 12;

export function withoutDust(value: number): number {
  return Number(value.toPrecision(digits));
}

export function inBase(value: number, unit: string, base: "kg" | "m" | "ha" | "kg/ha"): number {
  // Units of fields are of the dimension of their base; convert still checks at run time.
  return convert<ConvertibleUnit>(value, unit as ConvertibleUnit, base as ConvertibleUnit);
}
