import type {
  ExpectedContrast,
  FoundSpreads,
  TrialDefault,
  TrialPlanOptions,
} from "../../questions/trial-plan/result.ts";
import type { Counts, Facts, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches, fills } = nouns;

/** What a plan rests on. */
type Chosen = Facts<"difference" | "fillSpread" | "scatter" | "level" | "turnLevels"> &
  Numbers<"turns"> &
  Counts<"fills" | "catchesPerLevel">;

/** What is said of a planned trial. */
export const trialPlan = {
  labels: { heading: "Trial plan" },
  sentence: (
    f: Counts<"products" | "fills" | "catches"> &
      Facts<"turns" | "halfWidth" | "difference" | "power", "reference">,
  ) =>
    `${f.products} products, ${fills(f.fills)} of each, ${catches(f.catches)} and ${f.turns} turns in all: a difference ${f.reference === null ? "between two products" : `from ${f.reference}`} will be known to about ${f.halfWidth} of the delivery, and a true one of ${f.difference} will be found with a chance of ${f.power}.`,
  equivalence: (f: Facts<"margin" | "power">) =>
    `Two products that do not differ at all will be shown equivalent within ${f.margin} with a chance of ${f.power} (one pair, not adjusted for others).`,
  contrasts: {
    blocks: "within blocks",
    fills: "between fills",
  } satisfies Record<TrialPlanOptions["analysis"], string>,
  spreads: {
    common: "one spread for all products",
    separate: "a spread for each",
  } satisfies Record<ExpectedContrast["spread"], string>,
  /** What it rests on, each part by where it comes from. */
  rests: {
    assumed: (parts: string) => `Assumed: ${parts}`,
    fromLog: (f: Facts<"source" | "parts">) => `From ${f.source}: ${f.parts}`,
    fills: (f: Chosen) => `fills of one product spread by ${f.fillSpread}`,
    catches: (f: Chosen) => `catches of ${f.turns.words} turns scatter by ${f.scatter}`,
    also: (parts: readonly string[]) => parts.join(", "),
  },
  /** Of the log that speaks. */
  found: {
    "planned products": (f: Counts<"products" | "fills">) =>
      `There ${f.products === 1 ? "1 of these products speaks" : `${f.products} of these products speak`}, with ${fills(f.fills)}.`,
    "every product": (f: Counts<"products" | "fills">) =>
      `None of these products is in it, so all ${f.products} of it speak, with ${fills(f.fills)}.`,
  } satisfies Record<FoundSpreads["speaking"], unknown>,
  beside: {
    blocks: "What its blocks share is taken out.",
    level: "What days or lots share is in it; blocks will take that out.",
  },
  untold: {
    "too few fills":
      "How much fills spread it does not tell: no product in it has two fills of one level.",
    "within catch scatter":
      "How much fills spread it does not tell: they differ by no more than their catches scatter.",
  } satisfies Record<NonNullable<FoundSpreads["untold"]>, string>,
  assumptions: (
    f: Facts<"rests" | "spreadOfFills" | "level" | "contrasts" | "spread", "reference">,
  ) =>
    `${f.rests}; so deliveries found for fills of one product have a standard deviation of ${f.spreadOfFills}. The contrasts are made ${f.contrasts}, with ${f.spread}, ${f.level} for ${f.reference === null ? "all pairs" : `all comparisons with ${f.reference}`} together; half of such trials know a difference better than that.`,
  defaults: (chosen: string) => `Defaults, to be replaced by figures of your own: ${chosen}.`,
  named: {
    difference: (f: Chosen) => `a difference of ${f.difference} to be found`,
    fillSpread: (f: Chosen) => `a spread between fills of ${f.fillSpread}`,
    catchScatter: (f: Chosen) => `a catch scatter of ${f.scatter} at ${f.turns.words} turns`,
    level: (f: Chosen) => `a confidence of ${f.level}`,
    fills: (f: Chosen) => `${fills(f.fills)} of each product`,
    turnLevels: (f: Chosen) => `catches of ${f.turnLevels} turns`,
    catchesPerLevel: (f: Chosen) => `${catches(f.catchesPerLevel)} of each kind`,
  } satisfies Record<TrialDefault, unknown>,
  order: (seed: number) =>
    `Work in the order of the sheet: within a block every product once in random order, within a fill every kind of catch in random order (seed ${seed}). Finish a block before the next one begins.`,
  withinBlocks: "Compare within blocks when it is caught (blocks: block), as is planned here.",
  alternatives: {
    caption: "Fewer or more fills",
    fills: "Fills of each product",
    catches: "Catches in all",
    halfWidth: "Difference known to",
    spread: "Judged with",
  },
  chanceOfFinding: (difference: string) => `Chance of finding ${difference}`,
  chanceOfShowing: (margin: string) => `Chance of showing ${margin}`,
  sheet: {
    caption: "Catch sheet, in the order of work",
    heading: "The sheet",
    columns: {
      block: "Block",
      product: "Product",
      fill: "Fill",
      catch: "Catch",
      turns: "Turns",
      meter_rpm: "Turns/min",
    },
  },
};
