import * as z from "zod";
import { cautionCodes } from "../results/caution.ts";
import { reportSchemaVersion } from "./json.ts";

// Names may be added within a version, so that every object is open; what is listed stays as it is.
const open = z.looseObject;
const figure = z.number();
const figureOrNull = figure.nullable();
const count = z.int().min(0);
const textOrNull = z.string().nullable();
const chance = figure.min(0).max(1);
const anything = open({});
const anythingOrNull = anything.nullable();

const fillName = z
  .union([z.int().min(1), z.string()])
  .meta({ id: "fillName", description: "Number of a fill; number/season in a log of several" });

const interval = open({
  lower: figureOrNull,
  upper: figureOrNull,
  level: chance,
  about: z.string(),
}).meta({ id: "interval", description: "null: unbounded on that side; about: what it is about" });

const estimate = open({
  value: figure,
  unit: z.string(),
  standardError: figureOrNull,
  df: figureOrNull,
  interval: interval.nullable(),
}).meta({ id: "estimate", description: "A figure in its unit; null where nothing can be known" });

const estimateOrNull = estimate.nullable();

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

const cautions = z.array(caution);

const catchOfFill = open({
  row: z.int(),
  catch: z.int(),
  turns: figure,
  netKg: figure,
});

/** What the answers to all questions about a meter share. */
const answer = <K extends string>(kind: K) => ({
  kind: z.literal(kind),
  bin: z.string(),
  product: z.string(),
  options: anything,
  cautions,
});

const delivery = open({
  ...answer("delivery"),
  fill: fillName,
  takenAt: textOrNull,
  input: open({ catches: count, turns: figure, massKg: figure, earlierFills: count }),
  estimate,
  halfWidth: figureOrNull,
  nextCatch: open({ turns: figure, estimate }),
  points: z.array(catchOfFill),
});

const setting = open({
  ...answer("setting"),
  fill: fillName,
  delivery: estimate,
  target: estimateOrNull,
  turnsPerHectare: estimateOrNull,
  ratio: estimateOrNull,
  meterSpeeds: z.array(open({ speedKmPerH: figure, turnsPerMin: estimate })),
  steps: z.array(open({ name: textOrNull, setting: figure, rate: estimate })),
  missing: z.array(z.string()),
});

const catchesNeeded = open({
  ...answer("catches-needed"),
  fill: fillName.nullable(),
  halfWidth: figureOrNull,
  statedHalfWidth: figureOrNull,
  needed: open({ further: count, turns: figure }).nullable(),
});

const outliers = open({
  ...answer("outliers"),
  catches: z.array(open({ ...catchOfFill.shape, fill: fillName, verdict: z.string() })),
  suspects: z.array(anything),
  pairs: z.array(anything),
});

const drift = open({
  ...answer("drift"),
  verdict: z.string(),
  nextSteps: z.array(z.string()),
  fills: z.array(open({ fill: fillName, takenAt: textOrNull, catches: count, estimate })),
  stretches: z.array(open({ from: fillName, to: fillName, fills: count, mean: figure })),
  moved: anythingOrNull,
  changes: z.array(anything),
  differs: anythingOrNull,
  trending: anythingOrNull,
});

const acrossFills = open({
  ...answer("across-fills"),
  fills: count,
  catches: count,
  mean: estimate,
  nextFill: estimate,
  spread: open({
    standardDeviation: estimateOrNull,
    relative: figureOrNull,
    df: figure,
    source: z.enum(["own", "lent", "none"]),
  }),
  catchScatter: open({
    standardDeviation: estimateOrNull,
    relative: figureOrNull,
    turns: figure,
    df: figure,
  }),
  points: z.array(open({ fill: fillName, catches: count, turns: figure, estimate })),
});

const skipping = open({
  ...answer("skipping"),
  nextFill: estimate,
  today: estimateOrNull,
  chances: z.array(
    open({
      limit: figure,
      heavy: chance,
      light: chance,
      either: chance,
      upperBound: chance,
    }),
  ),
  expected: anythingOrNull,
});

const uncertaintyBudget = open({
  ...answer("uncertainty-budget"),
  fill: fillName,
  lines: z.array(open({ source: z.string(), value: figure, contribution: figure, share: figure })),
  total: open({ combined: figure, expanded: figure, coverageFactor: figure }).nullable(),
});

const repeatability = open({
  ...answer("repeatability"),
  fill: fillName,
  input: open({ catches: count, turns: figure, earlierFills: count }),
});

const cost = open({
  ...answer("cost"),
  setToKgPerTurn: figure,
  missing: z.array(z.string()),
  points: z.array(anything),
  cheapest: anythingOrNull,
});

const decision = open({
  action: z.enum(["look-first", "catch-more", "set"]),
  catches: open({ further: count, turns: figure }).nullable(),
  setting: open({
    quantity: z.string(),
    value: figure,
    unit: z.string(),
    name: textOrNull,
  }).nullable(),
  reasons: z.array(z.enum(cautionCodes)),
  also: z.array(z.enum(cautionCodes)),
});

const meter = open({
  bin: z.string(),
  farm: z.string().optional(),
  machine: z.string().optional(),
  product: z.string(),
  decision: decision.nullable(),
  noDecision: textOrNull,
  answered: z.array(open({ code: z.enum(cautionCodes), note: z.string() })),
  delivery,
  setting: setting.nullable(),
  catchesNeeded: catchesNeeded.nullable(),
  outliers: outliers.nullable(),
  drift: drift.nullable(),
  acrossFills: acrossFills.nullable(),
  skipping: skipping.nullable(),
  cost: cost.nullable(),
  repeatability: repeatability.nullable(),
  uncertaintyBudget: uncertaintyBudget.nullable(),
  fieldCheck: open({ ...answer("field-check"), checks: z.array(anything) }).nullable(),
  speedLinearity: open(answer("speed-linearity")).nullable(),
  outlets: open({ ...answer("outlets"), outlets: z.array(anything) }).nullable(),
  cautions,
}).meta({ id: "meter", description: "Every answer about one bin and product" });

const products = open({
  comparison: open({
    kind: z.literal("product-comparison"),
    products: z.array(open({ product: z.string(), fills: count, catches: count, estimate })),
    contrasts: z.array(open({ first: z.string(), second: z.string(), verdict: z.string() })),
    cautions,
  }),
  explaining: open({
    kind: z.literal("explaining-variables"),
    variables: z.array(anything),
    cautions,
  }),
});

const input = open({
  name: z.string().regex(/^[^/\\]+$/),
  sheet: textOrNull,
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
}).meta({ id: "input", description: "A file by its name, without its folder, and its SHA-256" });

const report = open({
  schemaVersion: z.literal(reportSchemaVersion),
  evencatch: z.string().meta({ description: "Version of the program" }),
  title: textOrNull,
  setup: textOrNull,
  inputs: open({
    catches: z.array(input),
    setup: input.nullable(),
    library: input.nullable(),
  }).nullable(),
  kind: z.literal("analysis"),
  source: z.string(),
  options: open({
    level: chance,
    tolerance: chance,
    scaleDivisionKg: figureOrNull,
    varianceLaw: z.string(),
  }),
  toleranceFrom: z.enum(["option", "setup", "default"]),
  scaleDivision: anything,
  input: open({
    catches: count,
    fills: count,
    period: open({ first: z.string(), last: z.string() }).nullable(),
    leftOut: z.array(anything),
  }),
  meters: z.array(meter),
  fleet: anything.optional(),
  products: products.nullable(),
  falseAlarms: anythingOrNull,
  cautions,
}).meta({
  title: "report.json",
  description:
    "An analysis of a file of catches. Masses in kg, fractions as fractions, null where nothing can be known. Names may be added within a schemaVersion; those listed here stay.",
});

/**
 * What report.json holds, as JSON Schema (draft 2020-12), for programs that read it. It lists what they may rely on within a
 * `schemaVersion`; everything else that stands there may change.
 */
export function reportJsonSchema(): Readonly<Record<string, unknown>> {
  return z.toJSONSchema(report, { io: "input" });
}
