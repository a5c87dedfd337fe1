import type {
  DeliveryRegression,
  DensityExplanation,
} from "../../questions/explaining-variables/result.ts";
import { nouns } from "./nouns.ts";

/** What is said of what goes with the delivery per turn. */
export const explainingVariables = {
  labels: {
    heading: "What explains the differences",
    unknown: "not known",
    causes:
      "What goes with the delivery need not cause it: whatever changed together with a variable is in its effect.",
    detail: "Volumes and effects in figures",
  },
  variable: nouns.variable,
  /** One of a unit the file does not name. */
  unit: "unit",
  /** In place of "turns" after "per". */
  turn: "turn",
  densityNotRecorded:
    "No bulk density is recorded, so whether it explains how products differ cannot be told.",
  density: {
    "not all":
      "Bulk density does not explain all of the differences: products differ in volume per turn as well.",
    "no more found":
      "Bulk density explains the differences as far as these fills can tell: no difference in volume per turn was found, which does not prove that there is none.",
    "nothing to explain":
      "No difference in delivery was found, so there is nothing for bulk density to explain.",
    unknown:
      "Whether bulk density explains the differences cannot be tested: at least two products need two fills each.",
  } satisfies Record<DensityExplanation["verdict"], string>,
  shareExplained: (share: string) => `${share} of the variance between products goes with it.`,
  noShareExplained: "Products differ more in volume per turn than in mass per turn.",
  volumes: (list: string) => `Volume per turn differs: ${list}.`,
  volumeDiffers: (f: {
    readonly first: string;
    readonly second: string;
    readonly percent: string;
    readonly less: boolean;
    readonly p: string | null;
  }) =>
    `${f.first} ${f.percent} ${f.less ? "less" : "more"} than ${f.second}${f.p === null ? "" : ` (${f.p})`}`,
  afterDensity: (f: {
    readonly differ: boolean;
    readonly statistic: string;
    readonly df1: number;
    readonly df2: number;
    readonly p: string;
  }) =>
    `With bulk density in a straight line first, products ${f.differ ? "still differ" : "are not found to differ"}: F = ${f.statistic} on ${f.df1} and ${f.df2} degrees of freedom, ${f.p}.`,
  withinFill: (f: {
    readonly change: string;
    readonly unit: string;
    readonly variable: string;
    readonly proof: string | null;
    readonly fills: number;
  }) =>
    `Within a fill, delivery changes by ${f.change} for one ${f.unit} more of ${nouns.variable(f.variable)}${f.proof === null ? "" : ` (${f.proof})`}; one slope from each of ${nouns.fills(f.fills)}.`,
  prediction: (f: {
    readonly density: string;
    readonly value: string;
    readonly products: number;
    readonly level: string;
    readonly interval: string | null;
  }) =>
    `A product of ${f.density} not tried yet should deliver about ${f.value}, if the meter gives it the volume it gives the ${f.products} tried; ${f.interval === null ? "how far off that may be cannot be told from one product" : `${f.level} prediction interval ${f.interval}`}.`,
  straightLine: (value: string) => `A straight line through the products' means says ${value}.`,
  volumeTable: {
    caption: "Volume per turn",
    product: "Product",
    fills: "Fills",
    interval: "Interval",
  },
  densityAxis: (unit: string) => `Bulk density (${unit})`,
  deliveryAxis: (unit: string) => `Delivery (${unit})`,
  volumeAxis: (unit: string) => `Volume (${unit}/turn)`,
  effectTable: {
    caption: "Effects on delivery per turn",
    variable: "Variable",
    between: "Between",
    units: {
      products: "products",
      "fills within products": "fills of a product",
    } satisfies Record<DeliveryRegression["units"], string>,
    perUnit: "Per unit",
    interval: "Interval",
    elasticity: "Percent per percent",
    pValue: "p",
  },
  withOthers: (list: string) => `, with ${list}`,
  effectUnit: (f: { readonly delivery: string; readonly unit: string }) =>
    `${f.delivery} per ${f.unit}`,
  chart: {
    title: "Delivery per turn against bulk density",
    product: "Product",
    fill: "Fill",
  },
  chartDescription: (level: string) =>
    `Every fill by product. The line is delivery in proportion to density, the mean volume per turn of the products; the band is where a product not tried yet is expected (${level}).`,
  chartPrediction: (f: { readonly density: string; readonly interval: string }) =>
    `At ${f.density}: ${f.interval}.`,
};
