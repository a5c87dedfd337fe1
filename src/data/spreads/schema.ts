import * as z from "zod";
import { entryOf, needed, neededEntry, optional, optionalEntry } from "../setup/field.ts";
import { guideTo } from "../setup/guide.ts";
import { messageOf } from "../setup/needs.ts";
import {
  atLeast0,
  boundedBetween,
  date,
  list,
  oneOf,
  text,
  textError,
  wholeFrom1,
} from "../setup/values.ts";
import { leastDf, leastVariance, mostDf, mostVariance } from "./limits.ts";

/** A variance relative to the square of the delivery, with its degrees of freedom. */
export interface SpreadFigure {
  readonly variance: number;
  readonly df: number;
}

/** What one meter, whose name nobody tells, says of how much it scatters. */
export interface SpreadRecord {
  /** Class of its product; null: none is told. */
  readonly productClass: string | null;
  readonly meterType: string | null;
  /** Of its fills, within levels; null: it cannot tell. */
  readonly spread: SpreadFigure | null;
  /** Of a one-turn catch, in turns; null: it cannot tell. */
  readonly scatter: SpreadFigure | null;
  readonly fills: number;
  readonly catches: number;
}

/** What is declared, with what a pooled log says of it. */
export const estimatedConstants = [
  "between_meters_spread",
  "between_meters_scatter",
  "between_fills_scatter",
  "typical_spread",
  "typical_scatter",
] as const;

export type EstimatedConstant = (typeof estimatedConstants)[number];

/** A declared constant as a pooled log has it. */
export interface ReEstimate {
  readonly name: EstimatedConstant;
  readonly declared: number;
  readonly estimate: number;
  readonly from: number;
  readonly to: number;
  /** Meters it rests on; fills, for what differs between fills. */
  readonly sources: number;
  /** The declared figure lies outside the interval. */
  readonly differs: boolean;
  /** The same in a sentence; null: none was written. */
  readonly said: string | null;
}

/** What a library of spreads was made from, and by what. */
export interface SpreadProvenance {
  readonly by: string;
  /** Day it was made, year first. */
  readonly day: string;
  readonly how: string;
  readonly catches: number;
  readonly fills: number;
  readonly meters: number;
  /** Meters of classes with too few bins, which are not among the records. */
  readonly metersLeftOut: number;
  readonly fewestBins: number;
  /** SHA-256 of each pooled table; null: not told. */
  readonly tablesSha256: readonly string[] | null;
}

/** Spreads of meters that nobody names, for others to borrow. */
export interface SpreadLibrary {
  readonly made: SpreadProvenance;
  readonly records: readonly SpreadRecord[];
  /** null: too few meters. */
  readonly estimates: {
    readonly level: number;
    readonly constants: readonly ReEstimate[];
  } | null;
}

export const spreadsKind = "evencatch-spreads";
export const spreadsVersion = 1;

const turnsUnit = "turns";
const noUnit = "1";

const figure = entryOf<SpreadFigure>({
  variance: needed(
    "variance",
    boundedBetween(leastVariance, mostVariance),
    "Variance relative to the square of the delivery; must be given",
    0.0004,
  ),
  df: needed("df", boundedBetween(leastDf, mostDf), "Its degrees of freedom; must be given", 8),
});

const record = entryOf<SpreadRecord>({
  productClass: optional("product_class", text, "Class of the meter's product", "cereals"),
  meterType: optional("meter_type", text, "Type of the meter", "fluted roller"),
  spread: optionalEntry("spread", figure),
  scatter: optionalEntry("scatter", figure),
  fills: needed("fills", wholeFrom1, "Fills of the meter; must be given", 5),
  catches: needed("catches", wholeFrom1, "Catches of the meter; must be given", 15),
});

const yesOrNo = z
  .boolean({ error: messageOf({ problem: "setup-one-of", facts: { values: ["true", "false"] } }) })
  .meta({ title: "true or false" });

const constant = entryOf<ReEstimate>({
  name: needed("name", oneOf(...estimatedConstants), "Which constant", "between_meters_spread"),
  declared: needed("declared", atLeast0, "What is declared", 0.5),
  estimate: needed("estimate", atLeast0, "What the pooled log says", 0.41),
  from: needed("from", atLeast0, "Lower end of its interval", 0.3),
  to: needed("to", atLeast0, "Upper end of its interval", 0.55),
  sources: needed("sources", wholeFrom1, "Meters, or fills, that it rests on", 34),
  differs: needed("differs", yesOrNo, "Whether the declared figure lies outside", false),
  said: optional("said", text, "The same in a sentence", "The declared 0.5 fits."),
});

const sha256Error = messageOf({ problem: "setup-text", facts: {} });

const made = entryOf<SpreadProvenance>({
  by: needed("by", text, "Program that made it", "evencatch 1.0.0"),
  day: needed("day", date, "Day it was made, year first", "2026-04-12"),
  how: needed("how", text, "How it was made", "variances of each meter, pooled over its fills"),
  catches: needed("catches", wholeFrom1, "Catches it was made from", 480),
  fills: needed("fills", wholeFrom1, "Fills it was made from", 120),
  meters: needed("meters", wholeFrom1, "Meters it was made from", 30),
  metersLeftOut: needed("meters_left_out", atLeast0, "Meters of classes with too few bins", 2),
  fewestBins: needed("fewest_bins", wholeFrom1, "Bins that a class needs", 5),
  tablesSha256: optional(
    "tables_sha256",
    list(z.string({ error: sha256Error }).regex(/^[0-9a-f]{64}$/, { error: sha256Error })),
    "SHA-256 of each table it was made from",
    ["9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"],
  ),
});

const units = entryOf<{ readonly spread: string; readonly scatter: string }>({
  spread: needed("spread", oneOf(noUnit), "Unit of the variances of fills", noUnit),
  scatter: needed("scatter", oneOf(turnsUnit), "Unit of the variances of catches", turnsUnit),
});

const versionError = messageOf({
  problem: "setup-version",
  facts: { newest: spreadsVersion },
});

/** What a file of spreads may hold. The one place where its fields are listed. @internal */
export const spreadsSchema = entryOf<
  Pick<SpreadLibrary, "made" | "records" | "estimates"> & { readonly units: unknown }
>(
  {
    made: neededEntry("made", made),
    units: neededEntry("units", units),
    records: neededEntry("records", list(record)),
    estimates: optionalEntry(
      "estimates",
      entryOf<NonNullable<SpreadLibrary["estimates"]>>({
        level: needed(
          "confidence",
          boundedBetween(0.5, 0.9999),
          "Confidence level of the intervals",
          0.95,
        ),
        constants: neededEntry("constants", list(constant)),
      }),
    ),
  },
  {
    unread: [
      needed("kind", oneOf(spreadsKind), "What the file is; must be given", spreadsKind),
      needed(
        "version",
        z.literal(spreadsVersion, { error: versionError }).meta({ title: "number" }),
        "Version of the format; must be given",
        spreadsVersion,
      ),
      optional("about", z.string({ error: textError }).meta({ title: "text" }), "Not read", "…"),
      optional("$schema", z.string({ error: textError }).meta({ title: "text" }), "Not read", "…"),
    ],
  },
);

/** The keys of the format, for who writes it. */
export const spreadUnits = { spread: noUnit, scatter: turnsUnit } as const;

/** What the schema says of such files. @internal */
export const spreadsGuide = guideTo(spreadsSchema);

/** What a library of spreads may hold, as JSON Schema (draft 2020-12). */
export function spreadLibraryJsonSchema(): Readonly<Record<string, unknown>> {
  return spreadsGuide.json();
}
