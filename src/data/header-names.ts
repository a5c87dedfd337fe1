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

/** What a header means, by its spelling: of the listed name, or of the one a sheet kept in German has. */
export const meanings: ReadonlyMap<string, Meaning> = new Map([
  ...knownHeaders.flatMap(({ meaning }) =>
    germanSpellings(meaning).map((spelling): [string, Meaning] => [spelling, meaning]),
  ),
  ...knownHeaders.map(({ spelling, meaning }): [string, Meaning] => [spelling, meaning]),
  ...massKinds.map((kind): [string, Meaning] => [`${kind}lbs`, { kind, unit: "lb" }]),
]);

/** With its umlauts, and as a keyboard without them writes it. */
function germanSpellings(meaning: Meaning): readonly string[] {
  const german =
    "plain" in meaning
      ? columnByName[meaning.plain].german
      : columnByName[`${meaning.kind}_kg`].german?.replace(/kg$/, meaning.unit);
  if (german === null || german === undefined) return [];
  const { spelling } = spelled(german);
  return [spelling, spelling.replaceAll("ä", "ae").replaceAll("ö", "oe").replaceAll("ü", "ue")];
}

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
