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
  readonly verified: {
    readonly best_reachable_when_data_are_IEEE_doubles?: Readonly<Record<string, string | number>>;
  };
}

export function certifiedSet(name: string): CertifiedSet {
  const file = new URL(`../reference/strd/${name}.json`, import.meta.url);
  return JSON.parse(readFileSync(file, "utf8"));
}

/** A certified number; `part` names a coefficient where there are several. */
export function certified(set: CertifiedSet, key: string, part?: string): number {
  const found = set.certified[key];
  const value = Number(typeof found === "object" && part !== undefined ? found[part] : found);
  if (Number.isNaN(value)) throw new Error(`${set.name} has no certified number ${key} ${part}.`);
  return value;
}

/** What exact arithmetic gives from the data as doubles hold them: the most that any program can reach. */
export function bestReachable(set: CertifiedSet, key: string): number {
  const value = Number(set.verified.best_reachable_when_data_are_IEEE_doubles?.[key]);
  if (Number.isNaN(value)) throw new Error(`${set.name} has no best reachable ${key}.`);
  return value;
}
