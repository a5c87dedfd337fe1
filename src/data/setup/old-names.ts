import type { DataIssue } from "../../errors/data-issue.ts";
import { type Caution, caution } from "../../results/caution.ts";
import { dataIssue } from "../issues.ts";
import { isRecord } from "../json.ts";
import { type Path, patternOf, written } from "./path.ts";

/** What keys of earlier setups are called now, by their place in the file. */
const keysNow: ReadonlyMap<string, string> = new Map([
  ["cart.skid_percent", "slip_percent"],
  ["cart.skid_standard_uncertainty_percent", "slip_standard_uncertainty_percent"],
]);

/** What values are called now, behind the place of their key. */
const valuesNow: ReadonlyMap<string, string> = new Map([
  ["bins[].assumed: book", "book value"],
  ["bins[].assumed: previous", "last fill"],
  ["bins[].assumed: mean", "average of fills"],
  ["answered[].code: skid-not-given", "slip-not-given"],
]);

/** A setup file under the names of today. */
export interface Renamed {
  readonly setup: unknown;
  /** A note (old-name) on each old name in use. */
  readonly cautions: readonly Caution[];
  /** Old and new name of one key side by side. */
  readonly issues: readonly DataIssue[];
  /** Where the file has what is at a path of the renamed setup. */
  readonly inFile: (path: Path) => Path;
}

/** Reads old names as the new ones: a setup that could be used still can, and its owner is told what to write. */
export function withoutOldNames(setup: unknown, source: string): Renamed {
  const old: OldName[] = [];
  const current = changedIn(setup, (entry, at) => {
    const here = oldIn(entry, at);
    old.push(...here);
    return withNewNames(entry, here);
  });
  const once = new Map(old.map(({ was, now }) => [was, now]));
  const [twice, alone] = [old.filter(({ both }) => both), old.filter(({ both }) => !both)];
  const paths = new Map(
    alone.map(({ at, key, nowKey }) => [written([...at, nowKey]), [...at, key]]),
  );
  return {
    setup: current,
    cautions: [...once].map(([was, now]) => caution("old-name", {}, { was, now })),
    issues: twice.map((name) => givenTwice(name, source)),
    inFile: (path) => paths.get(written(path)) ?? path,
  };
}

type Entry = Readonly<Record<string, unknown>>;

/** A key of an entry that has another name now, itself or its value. */
interface OldName {
  readonly at: Path;
  readonly key: string;
  readonly nowKey: string;
  readonly nowValue: unknown;
  /** As one writes them. */
  readonly was: string;
  readonly now: string;
  /** The key is there under its new name too. */
  readonly both: boolean;
}

function oldIn(entry: Entry, at: Path): readonly OldName[] {
  return Object.entries(entry).flatMap(([key, value]): OldName | readonly [] => {
    const was = patternOf([...at, key]);
    const nowKey = keysNow.get(was);
    if (nowKey !== undefined) {
      const [now, both] = [patternOf([...at, nowKey]), Object.hasOwn(entry, nowKey)];
      return { at, key, nowKey, nowValue: value, was, now, both };
    }
    const nowValue = typeof value === "string" ? valuesNow.get(`${was}: ${value}`) : undefined;
    if (nowValue === undefined) return [];
    const line = (text: unknown) => `"${key}": "${text}"`;
    return { at, key, nowKey: key, nowValue, was: line(value), now: line(nowValue), both: false };
  });
}

/** Where both names are given the new one counts, so that the rest of the file can be checked. */
function withNewNames(entry: Entry, old: readonly OldName[]): Entry {
  const kept = Object.entries(entry).filter(([key]) => !old.some((name) => name.key === key));
  return Object.fromEntries([
    ...old.map(({ nowKey, nowValue }) => [nowKey, nowValue] as const),
    ...kept,
  ]);
}

function givenTwice({ at, key, nowKey }: OldName, source: string): DataIssue {
  return dataIssue(
    { source, rowKind: "line", column: written([...at, key]) },
    { problem: "setup-key-twice", facts: { old: key, now: nowKey } },
    key,
  );
}

/** A setup with each entry changed: the objects at its top, and those in the lists there. */
function changedIn(setup: unknown, change: (entry: Entry, at: Path) => Entry): unknown {
  if (!isRecord(setup)) return setup;
  const changed = (held: unknown, at: Path) => (isRecord(held) ? change(held, at) : held);
  return Object.fromEntries(
    Object.entries(setup).map(([key, held]) => [
      key,
      Array.isArray(held)
        ? held.map((entry: unknown, index) => changed(entry, [key, index]))
        : changed(held, [key]),
    ]),
  );
}
