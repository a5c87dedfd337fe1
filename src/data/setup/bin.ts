import * as z from "zod";
import { convert, findUnit, unitsOf } from "../../units/convert.ts";
import { amountOf, type TargetRate } from "../target-rate.ts";
import { type DriveSetup, drive } from "./drive.ts";
import { entryOf, needed, optional, optionalEntry, withUncertainty } from "./field.ts";
import { type BinMoneySetup, binMoney } from "./money.ts";
import { messageOf } from "./needs.ts";
import type { SetupPlace } from "./place.ts";
import { farm, machine, season } from "./place-fields.ts";
import {
  above0,
  atLeast0,
  either,
  exact,
  inUnits,
  type Measured,
  measured,
  name,
  oneOf,
  percentage,
  quantity,
  strict,
  text,
  wholeFrom1,
} from "./values.ts";

const perArea = [...unitsOf("seeds"), ...unitsOf("plants")];
const rateUnit = messageOf({
  problem: "setup-unit",
  facts: { units: [...unitsOf("rate"), ...perArea] },
});

/** A bushel is a volume: only with its mass is it a rate. */
const perBushel = "bu/ac";
const bushelMissing = messageOf({ problem: "setup-bushel", facts: {} });

const targetRate = strict({
  value: above0,
  unit: z.string({ error: rateUnit }),
  bushel: exact("mass", "kg").optional(),
})
  .transform(({ value, unit, bushel }, context): TargetRate => {
    const inBushels = unit.toLowerCase().replace(/\s/g, "") === perBushel;
    if (inBushels !== (bushel !== undefined)) {
      context.addIssue({ code: "custom", message: bushelMissing, path: ["unit"] });
      return z.NEVER;
    }
    if (bushel !== undefined)
      return { kind: "mass", kgPerHectare: (value * bushel) / convert(1, "ac", "ha") };
    const rate = findUnit(unit, "rate");
    if (rate !== null) return { kind: "mass", kgPerHectare: convert(value, rate, "kg/ha") };
    const seeds = findUnit(unit, "seeds");
    if (seeds !== null) return { kind: "seeds", seedsPerM2: convert(value, seeds, "seeds/m²") };
    const plants = findUnit(unit, "plants");
    if (plants !== null)
      return { kind: "plants", plantsPerM2: convert(value, plants, "plants/m²") };
    context.addIssue({ code: "custom", message: rateUnit, path: ["unit"] });
    return z.NEVER;
  })
  .meta({
    title: `${inUnits("rate")}, ${either(perArea)}; ${perBushel} with the mass of a bushel as bushel`,
  });

export interface SeedSetup {
  readonly thousandKernelMassG: Measured | null;
  readonly germination: Measured | null;
  readonly emergence: Measured | null;
}

const seed = entryOf<SeedSetup>({
  thousandKernelMassG: withUncertainty(
    ["thousand_kernel_mass_g", above0, "Mass of a thousand kernels, in grams", 38],
    [
      "thousand_kernel_mass_standard_uncertainty_g",
      atLeast0,
      "Standard uncertainty of it, in grams",
      0.5,
    ],
  ),
  germination: withUncertainty(
    ["germination_percent", percentage(0.1, 100), "Seeds that germinate", 95],
    [
      "germination_standard_uncertainty_percent",
      percentage(0, 100),
      "Standard uncertainty of it, in points of percent",
      1,
    ],
  ),
  emergence: withUncertainty(
    ["emergence_percent", percentage(0.1, 100), "Germinating seeds that emerge", 85],
    [
      "emergence_standard_uncertainty_percent",
      percentage(0, 100),
      "Standard uncertainty of it, in points of percent",
      5,
    ],
  ),
});

export interface BinSetup extends SetupPlace {
  readonly targetRate: TargetRate | null;
  /** The least that label or law lets be put out; null: not given. */
  readonly lowestRate: TargetRate | null;
  /** The most of it. */
  readonly highestRate: TargetRate | null;
  readonly bookValueKgPerTurn: Measured | null;
  /** What the drive is set for without a catch. */
  readonly assumed: "book value" | "last fill" | "average of fills" | null;
  readonly turnsPerHectare: number | null;
  /** Fill before which the meter was opened or changed, so that fills before it are of another level; null: none. */
  readonly startsAfresh: number | null;
  /** Its season. */
  readonly season?: string | null | undefined;
  readonly drive: DriveSetup | null;
  readonly seed: SeedSetup | null;
  readonly money: BinMoneySetup | null;
}

/** Rates of two kinds can be told apart in mass only, which takes the seed: what to set is answered then. */
function inOrder(lowest: TargetRate | null, highest: TargetRate | null): boolean {
  if (lowest === null || highest === null || lowest.kind !== highest.kind) return true;
  return amountOf(lowest) <= amountOf(highest);
}

/** @internal */
export const bin = entryOf<BinSetup>(
  {
    bin: needed("bin", name, "Bin as the catches name it; must be given in each entry", "1"),
    product: optional("product", text, "Product, when the entry is for this product only", "wheat"),
    machine,
    farm,
    targetRate: optional("target_rate", targetRate, "Rate wanted", quantity(120, "kg/ha")),
    lowestRate: optional(
      "lowest_rate",
      targetRate,
      "Lowest rate by label or law, where there is one",
      quantity(100, "kg/ha"),
    ),
    highestRate: optional(
      "highest_rate",
      targetRate,
      "Highest rate by label or law, where there is one",
      quantity(135, "kg/ha"),
    ),
    bookValueKgPerTurn: optional(
      "book_value",
      measured("delivery", "kg/turn"),
      "Delivery assumed when there is no catch",
      quantity(0.4, "kg/turn", 0.01),
    ),
    assumed: optional(
      "assumed",
      oneOf("book value", "last fill", "average of fills"),
      "What the drive is set for without a catch: the book value, the last fill's, or the average of earlier fills",
      "last fill",
    ),
    turnsPerHectare: optional(
      "turns_per_hectare",
      above0,
      "Meter turns per hectare as set now; with the ratio set now, also what other steps are reckoned from where width or wheel travel is not given",
      300,
    ),
    startsAfresh: optional(
      "starts_afresh",
      wholeFrom1,
      "Fill before which the meter was opened, cleaned or changed: fills before it say nothing of its level now",
      6,
    ),
    season,
    drive: optionalEntry("drive", drive),
    seed: optionalEntry("seed", seed),
    money: optionalEntry("money", binMoney),
  },
  {
    rules: [
      {
        holds: ({ assumed, bookValueKgPerTurn }) =>
          assumed !== "book value" || bookValueKgPerTurn !== null,
        at: "assumed",
        need: { problem: "setup-no-book-value", facts: {} },
      },
      {
        holds: ({ lowestRate, highestRate }) => inOrder(lowestRate, highestRate),
        at: "lowest_rate",
        need: { problem: "setup-rates-reversed", facts: {} },
      },
    ],
  },
);
