import * as z from "zod";
import { cautionCodes } from "../../results/caution.ts";
import { reportSchemaVersion } from "../json.ts";
import {
  acrossFills,
  catchesNeeded,
  cost,
  delivery,
  drift,
  outliers,
  repeatability,
  setting,
  skipping,
  uncertaintyBudget,
} from "./answers.ts";
import {
  answer,
  anything,
  anythingOrNull,
  cautions,
  chance,
  count,
  estimate,
  figure,
  figureOrNull,
  open,
  textOrNull,
} from "./parts.ts";

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
