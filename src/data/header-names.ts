import {
  columnByName,
  type MassKind,
  massKinds,
  massUnits,
  type PlainColumn,
  plainColumns,
} from "./column-kinds.ts";
import type { MassUnit } from "./types.ts";

/** A header of a file, as it is written and as it is compared. */
export interface Header {
  readonly text: string;
  readonly spelling: string;
}

export type Meaning =
  | { readonly plain: PlainColumn }
  | { readonly kind: MassKind; readonly unit: MassUnit };

/** Every header that is known, under the name by which it is asked for. */
export const knownHeaders: readonly (Header & { readonly meaning: Meaning })[] = [
  ...plainColumns.map((plain) => known(plain, { plain })),
  ...massKinds.flatMap((kind) => massUnits.map((unit) => known(`${kind}_${unit}`, { kind, unit }))),
];

function known(text: string, meaning: Meaning) {
  return { ...spelled(text), meaning };
}

/** What a header means, by its spelling. */
export const meanings: ReadonlyMap<string, Meaning> = new Map([
  ...plainColumns.flatMap((plain) =>
    columnByName[plain].alsoCalled.map((name): [string, Meaning] => [
      spelled(name).spelling,
      { plain },
    ]),
  ),
  ...knownHeaders.map(({ spelling, meaning }): [string, Meaning] => [spelling, meaning]),
  ...massKinds.map((kind): [string, Meaning] => [`${kind}lbs`, { kind, unit: "lb" }]),
]);

/** How many of these headers are known: tells the right separator of a CSV from the wrong ones. */
export function countKnown(headers: readonly string[]): number {
  return headers.filter((text) => meanings.has(spelled(text).spelling)).length;
}

/** Net (KG), net_kg and netKg are all "netkg"; Moisture % is "moisturepct"; m³ is "m3". */
export function spelled(text: string): Header {
  const spelling = text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/%|percent/g, "pct")
    .replace(/[^\p{L}\p{N}]/gu, "");
  return { text, spelling };
}
