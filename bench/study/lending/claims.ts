import { type Bands, coverage, errorOfShare, medianHalfWidth } from "./outcomes.ts";

/** What is promised of a figure. */
export interface Claim {
  readonly atLeast: number | null;
  readonly atMost: number | null;
}

/** So far beside its claim a figure may be found: 4,000 logs leave two standard errors of .007 at .95. */
export const tolerance = 0.012;

export type Verdict = "met" | "within the tolerance" | "missed";

/** One figure of the study. */
export interface Cell {
  /** The column it stands in. */
  readonly at: string;
  readonly of: "coverage" | "share" | "ratio of widths";
  /** Null: there is no such band. */
  readonly found: number | null;
  /** Two standard errors; null: not worked out. */
  readonly error: number | null;
  /** Median, relative; null: not told. */
  readonly halfWidth: number | null;
  readonly claim: Claim | null;
  /** Null where nothing is claimed. */
  readonly verdict: Verdict | null;
}

export interface Row {
  readonly situation: string;
  readonly cells: readonly Cell[];
}

export interface Section {
  readonly name: string;
  readonly rows: readonly Row[];
}

/** How much is simulated. */
export interface Run {
  readonly replicates: number;
  readonly seed: number;
}

export function verdictOf(found: number, { atLeast, atMost }: Claim): Verdict {
  const beside = Math.max((atLeast ?? found) - found, found - (atMost ?? found));
  return beside <= 0 ? "met" : beside <= tolerance ? "within the tolerance" : "missed";
}

/** How often bands hold the truth, with their median half-width. */
export function coverageCell(at: string, bands: Bands, claim: Claim | null = null): Cell {
  const found = coverage(bands);
  const error =
    found === null ? null : errorOfShare(found, bands.filter((band) => band !== null).length);
  return { ...cell(at, "coverage", found, claim), error, halfWidth: medianHalfWidth(bands) };
}

export function shareCell(at: string, found: number, of: number): Cell {
  return { ...cell(at, "share", found, null), error: errorOfShare(found, of) };
}

export function ratioCell(at: string, found: number | null, claim: Claim | null = null): Cell {
  return cell(at, "ratio of widths", found, claim);
}

function cell(at: string, of: Cell["of"], found: number | null, claim: Claim | null): Cell {
  // A claim about a band that is never given is not kept.
  const verdict = claim === null ? null : found === null ? "missed" : verdictOf(found, claim);
  return { at, of, found, error: null, halfWidth: null, claim, verdict };
}

/** Every figure with a claim, and where it stands. */
export function claimed(
  sections: readonly Section[],
): readonly { readonly place: string; readonly cell: Cell }[] {
  return sections.flatMap(({ name, rows }) =>
    rows.flatMap(({ situation, cells }) =>
      cells
        .filter(({ claim }) => claim !== null)
        .map((one) => ({ place: `${name}, ${situation}, ${one.at}`, cell: one })),
    ),
  );
}
