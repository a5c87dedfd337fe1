import * as z from "zod";
import { cautionCodes } from "../../results/caution.ts";

// Names may be added within a version, so that every object is open; what is listed stays as it is.
export const open = z.looseObject;
export const figure = z.number();
export const figureOrNull = figure.nullable();
export const count = z.int().min(0);
export const textOrNull = z.string().nullable();
export const chance = figure.min(0).max(1);
export const anything = open({});
export const anythingOrNull = anything.nullable();

export const fillName = z
  .union([z.int().min(1), z.string()])
  .meta({ id: "fillName", description: "Number of a fill; number/season in a log of several" });

const interval = open({
  lower: figureOrNull,
  upper: figureOrNull,
  level: chance,
  about: z.string(),
}).meta({ id: "interval", description: "null: unbounded on that side; about: what it is about" });

export const estimate = open({
  value: figure,
  unit: z.string(),
  standardError: figureOrNull,
  df: figureOrNull,
  interval: interval.nullable(),
}).meta({ id: "estimate", description: "A figure in its unit; null where nothing can be known" });

export const estimateOrNull = estimate.nullable();

const caution = open({
  code: z.enum(cautionCodes),
  severity: z.enum(["note", "doubt", "serious"]),
  asks: z.enum(["look-first", "catch-more", "to-know"]),
  where: open({
    bin: textOrNull,
    product: textOrNull,
    fill: fillName.nullable(),
    catches: z.array(z.int()),
  }),
  facts: anything,
  text: z.string(),
}).meta({ id: "caution", description: "A finding; text is its sentence in the report's language" });

export const cautions = z.array(caution);

export const catchOfFill = open({
  row: z.int(),
  catch: z.int(),
  turns: figure,
  netKg: figure,
});

/** What the answers to all questions about a meter share. */
export const answer = <K extends string>(kind: K) => ({
  kind: z.literal(kind),
  bin: z.string(),
  product: z.string(),
  options: anything,
  cautions,
});
