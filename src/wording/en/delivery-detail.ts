import type { Delivery } from "../../questions/delivery.ts";
import type { VarianceLaw } from "../../statistics/through-origin.ts";
import type { Counts, Facts, Numbered, Numbers } from "./facts.ts";
import { nouns } from "./nouns.ts";

const { catches, onDegrees } = nouns;

type OfFill = Facts<"bin"> & Counts<"fill">;
/** Without a level no bands are drawn. */
type Drawn = Facts<"value", "level"> & Counts<"catches">;

const bands = ({ level }: Drawn) =>
  level === null
    ? ""
    : `; the inner band is its ${level} interval, the outer one where one more catch is expected`;

/** What is said in a report of what stands behind the delivery of one fill. */
export const deliveryDetail = {
  labels: {
    heading: "Delivery per turn",
    laws: {
      proportional: "scatter in proportion to turns (ratio of sums)",
      constant: "constant scatter (ordinary least squares)",
      squared: "scatter in proportion to turns squared (mean of ratios)",
    } satisfies Record<VarianceLaw, string>,
    table: {
      caption: (f: Counts<"fill">) => `Catches of fill ${f.fill}`,
      row: "Row",
      catch: "Catch",
      turns: "Turns",
      net: (unit: string) => `Net (${unit})`,
      fitted: (unit: string) => `Fitted (${unit})`,
      residual: "Off by",
      leverage: "Leverage",
    },
    weightingsCaption:
      "The same catches under other weightings (own scatter, before the scale's division)",
    weighting: "Weighting",
    unknown: "not known",
    standardError: "Standard error",
    robustError: "HC3 standard error",
    detail: "How this was computed",
  },
  nextCatch: (f: Numbers<"turns"> & Facts<"range" | "level">) =>
    `Another catch of ${f.turns.words} turns should weigh ${f.range} (${f.level} of such catches would).`,
  constantMassUntested:
    "Whether the same mass is in every catch (a tare left in, a lost part-turn) cannot be told: that takes at least four catches, the longest with twice the turns of the shortest.",
  constantMass: (f: Facts<"value" | "p", "range">) =>
    `Mass that is the same in every catch: ${f.value} (${f.range ?? "no interval"}), ${f.p}.`,
  wouldBeSeen: (mass: string) =>
    `A constant of ${mass} would have been seen with a chance of 80 %.`,
  tareSeen: (f: Facts<"tare" | "chance">) =>
    `A bag of ${f.tare} left in every catch would have been seen with a chance of ${f.chance}.`,
  lineUntested:
    "Whether mass follows turns in a straight line cannot be tested: that takes two turn levels, one of them repeated.",
  lackOfFit: (f: Counts<"levels" | "dfLackOfFit" | "dfPureError"> & Facts<"statistic" | "p">) =>
    `Straight line through zero against the means at ${f.levels} turn levels: F = ${f.statistic} on ${f.dfLackOfFit} and ${f.dfPureError} df, ${f.p}.`,
  chart: {
    title: (f: OfFill) => `Net mass against turns, bin ${f.bin}, fill ${f.fill}`,
    perTurnTitle: (f: OfFill) => `What each catch delivered per turn, bin ${f.bin}, fill ${f.fill}`,
    turns: "Meter turns",
    mass: (unit: string) => `Net mass (${unit})`,
    perTurn: (unit: string) => `Delivery (${unit})`,
  },
  chartDescription: (f: Drawn) =>
    `${catches(f.catches)}: net mass against meter turns, with the line through zero at ${f.value}${bands(f)}.`,
  perTurnDescription: (f: Drawn) =>
    `${catches(f.catches)}: net mass divided by turns, against turns, with the fill's delivery at ${f.value}${bands(f)}.`,
  chartCatch: (f: Counts<"catch"> & Facts<"mass" | "turns" | "off">) =>
    `Catch ${f.catch}: ${f.mass} in ${f.turns} turns, ${f.off}`,
  standardErrorFrom: {
    model: "this fill's own scatter, taken in proportion to turns",
    robust:
      "this fill's own scatter, by the larger standard error that does not trust proportion (HC3)",
    "lent scatter": "this fill's own scatter together with what other fills and other bins lend",
    none: "nothing: one catch stands alone",
  } satisfies Record<Delivery["standardErrorFrom"], string>,
  basis: (f: Facts<"standardErrorFrom"> & { readonly hasDivision: boolean }) =>
    `Sum of net mass over sum of turns. The standard error rests on ${f.standardErrorFrom}; reading the scale is ${f.hasDivision ? "added to it" : "left out, because no division is known"}.`,
  studentT: (df: Numbered) => `Student's t ${onDegrees(df)}.`,
};
