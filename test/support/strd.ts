import { readFileSync } from "node:fs";

/** A data set of the NIST Statistical Reference Datasets with its certified values, as decimal strings. */
export interface CertifiedSet {
  readonly name: string;
  readonly data: Readonly<{
    y: readonly number[];
    x: readonly number[];
    groups: readonly (readonly number[])[];
  }>;
  readonly certified: Readonly<Record<string, string | number | Readonly<Record<string, string>>>>;
}

const read = (path: string) =>
  JSON.parse(readFileSync(new URL(`../reference/${path}.json`, import.meta.url), "utf8"));

export function certifiedSet(name: string): CertifiedSet {
  return read(`strd/${name}`);
}

/** A certified number; `part` names a coefficient where there are several. */
export function certified(set: CertifiedSet, key: string, part?: string): number {
  const found = set.certified[key];
  const value = Number(typeof found === "object" && part !== undefined ? found[part] : found);
  if (Number.isNaN(value)) throw new Error(`${set.name} has no certified number ${key} ${part}.`);
  return value;
}

/** What exact arithmetic gives from the data as doubles hold them: the most that any program can reach. */
export function bestReachable(name: string, key: string): number {
  const value = Number(read("strd-reachable").reachable[name]?.[key]);
  if (Number.isNaN(value)) throw new Error(`${name} has no best reachable ${key}.`);
  return value;
}
