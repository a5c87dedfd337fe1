import { isRecord } from "../json.ts";

/** Keys and places in lists that lead to a value of a setup file. */
export type Path = readonly PropertyKey[];

/** A path as one would write it: bins[0].target_rate.unit. */
export function written(path: Path): string {
  return path
    .map((part, index) =>
      typeof part === "number" ? `[${part}]` : `${index === 0 ? "" : "."}${String(part)}`,
    )
    .join("");
}

/** The same for every entry of a list: bins[].target_rate.unit. */
export function patternOf(path: Path): string {
  return written(path).replace(/\[\d+\]/g, "[]");
}

export function valueAt(root: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => {
    if (Array.isArray(value)) return value[Number(key)];
    return isRecord(value) && Object.hasOwn(value, key) ? value[String(key)] : undefined;
  }, root);
}
