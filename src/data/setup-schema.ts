import * as z from "zod";
import { type CautionCode, cautionCodes } from "../results/caution.ts";
import { convert, findUnit, unitsOf } from "../units/convert.ts";
import type { TargetRate } from "./setup.ts";
import {
  above0,
  atLeast0,
  date,
  exact,
  list,
  measured,
  name,
  percentage,
  remedy,
  span,
  strict,
  text,
  wholeFrom1,
} from "./setup-parts.ts";

interface Refusal {
  readonly error: string;
  readonly path: string[];
  readonly params: { readonly remedy: string };
}

/** An uncertainty without its figure would be lost in silence. */
function beside(
  dependent: string,
  wanted: string,
): [(entry: Readonly<Record<string, unknown>>) => boolean, Refusal] {
  return [
    (entry) => entry[dependent] === undefined || entry[wanted] !== undefined,
    {
      error: `${wanted} beside it`,
      path: [dependent],
      params: remedy(`Give ${wanted} as well, or delete this key.`),
    },
  ];
}

/** Two entries for the same bin and product would leave open which of them counts. */
function eachOnce(
  bins: readonly { readonly bin: string; readonly product?: string | undefined }[],
  context: z.RefinementCtx,
): void {
  const seen = new Set<string>();
  bins.forEach(({ bin, product }, index) => {
    const key = JSON.stringify([bin, product]);
    if (seen.has(key)) {
      context.addIssue({
        code: "custom",
        message: "one entry for each bin, or for each bin and product",
        path: [index, "bin"],
        params: remedy("Join the two entries, or delete one."),
      });
    }
    seen.add(key);
  });
}

const scale = strict({
  division: exact("mass", "kg").optional(),
  capacity: exact("mass", "kg").optional(),
  tested_error_percent: percentage(-50, 50).optional(),
});

const cart = strict({
  working_width: measured("length", "m").optional(),
  speed: span("speed", "km/h").optional(),
  wheel_circumference: measured("length", "m").optional(),
  skid_percent: percentage(-50, 90).optional(),
  skid_standard_uncertainty_percent: percentage(0, 100).optional(),
  turn_count_standard_uncertainty: atLeast0.optional(),
}).refine(...beside("skid_standard_uncertainty_percent", "skid_percent"));

const rateUnits = (["rate", "seeds", "plants"] as const).flatMap((dimension) =>
  unitsOf<"rate" | "seeds" | "plants">(dimension),
);
const rateUnit = `one of the units ${rateUnits.join(", ")}`;

const targetRate = strict({ value: above0, unit: z.string({ error: rateUnit }) }).transform(
  ({ value, unit }, context): TargetRate => {
    const rate = findUnit(unit, "rate");
    if (rate !== null) return { kind: "mass", kgPerHectare: convert(value, rate, "kg/ha") };
    const seeds = findUnit(unit, "seeds");
    if (seeds !== null) return { kind: "seeds", seedsPerM2: convert(value, seeds, "seeds/m²") };
    const plants = findUnit(unit, "plants");
    if (plants !== null)
      return { kind: "plants", plantsPerM2: convert(value, plants, "plants/m²") };
    context.addIssue({ code: "custom", message: rateUnit, path: ["unit"] });
    return z.NEVER;
  },
);

const drive = z.discriminatedUnion(
  "kind",
  [
    strict({
      kind: z.literal("ground-wheel"),
      ratio: above0.optional(),
      steps: list(above0).min(1, { error: "at least one step" }).optional(),
      step_names: list(text).optional(),
    }).refine(
      ({ steps, step_names }) => step_names === undefined || step_names.length === steps?.length,
      {
        error: "as many names as there are steps",
        path: ["step_names"],
        params: remedy("Name each step, in the order of the steps."),
      },
    ),
    strict({
      kind: z.literal("motor"),
      meter_speed: span("rotation", "turns/min").optional(),
    }),
  ],
  { error: 'an object whose kind is "ground-wheel" or "motor"' },
);

const seed = strict({
  thousand_kernel_mass_g: above0.optional(),
  thousand_kernel_mass_standard_uncertainty_g: atLeast0.optional(),
  germination_percent: percentage(0.1, 100).optional(),
  germination_standard_uncertainty_percent: percentage(0, 100).optional(),
  emergence_percent: percentage(0.1, 100).optional(),
  emergence_standard_uncertainty_percent: percentage(0, 100).optional(),
})
  .refine(...beside("thousand_kernel_mass_standard_uncertainty_g", "thousand_kernel_mass_g"))
  .refine(...beside("germination_standard_uncertainty_percent", "germination_percent"))
  .refine(...beside("emergence_standard_uncertainty_percent", "emergence_percent"));

const response = z.discriminatedUnion(
  "kind",
  [
    strict({
      kind: z.literal("linear"),
      heavy_cost_per_ha_per_percent: atLeast0,
      light_cost_per_ha_per_percent: atLeast0,
    }),
    strict({
      kind: z.literal("quadratic"),
      curvature_per_ha_per_percent_squared: atLeast0,
    }),
  ],
  { error: 'an object whose kind is "linear" or "quadratic"' },
);

const bin = strict({
  bin: name,
  product: text.optional(),
  target_rate: targetRate.optional(),
  book_value: measured("delivery", "kg/turn").optional(),
  assumed: z
    .enum(["book", "previous", "mean"], { error: 'one of "book", "previous", "mean"' })
    .optional(),
  turns_per_hectare: above0.optional(),
  drive: drive.optional(),
  seed: seed.optional(),
  money: strict({
    price_per_kg: atLeast0.optional(),
    response: response.optional(),
    area_ha: above0.optional(),
  }).optional(),
}).refine(({ assumed, book_value }) => assumed !== "book" || book_value !== undefined, {
  error: 'a book_value beside "book"',
  path: ["assumed"],
  params: remedy("Give the book_value as well, or assume something else."),
});

const fieldCheck = strict({
  bin: name,
  product: text.optional(),
  fill: wholeFrom1.optional(),
  date: date.optional(),
  filled: measured("mass", "kg"),
  left: measured("mass", "kg", atLeast0),
  area: measured("area", "ha"),
  intended_rate: exact("rate", "kg/ha").optional(),
  assumed_delivery: exact("delivery", "kg/turn").optional(),
}).refine(({ filled, left }) => left.value < filled.value, {
  error: "less left than was filled",
  path: ["left"],
  params: remedy("Compare the two figures and their units; they may be swapped."),
});

const answered = strict({
  code: z.enum(cautionCodes as [CautionCode, ...CautionCode[]], {
    error: "the code of a finding, such as field-disagrees",
  }),
  bin: name,
  fill: wholeFrom1.optional(),
  note: text,
});

/** What a setup file may hold. Everything is optional; nothing is allowed that is not listed. */
export const setupSchema = strict({
  $schema: z.string({ error: "a text" }).optional(),
  title: text.optional(),
  tolerance_percent: percentage(0.2, 100).optional(),
  confidence_percent: percentage(50, 99.99).optional(),
  assurance_percent: percentage(50, 99.99).optional(),
  scale: scale.optional(),
  cart: cart.optional(),
  bins: list(bin).superRefine(eachOnce).optional(),
  money: strict({
    currency: text.optional(),
    value_of_hour: atLeast0.optional(),
    minutes_per_catch: above0.optional(),
    minutes_to_set_up: atLeast0.optional(),
    area_ha: above0.optional(),
    area_per_fill_ha: above0.optional(),
  }).optional(),
  field_checks: list(fieldCheck).optional(),
  answered: list(answered).optional(),
});

export type SetupFile = z.output<typeof setupSchema>;
