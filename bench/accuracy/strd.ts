import { leastSquares } from "../../src/numeric/least-squares.ts";
import { oneWayAnova } from "../../src/statistics/anova.ts";
import { weightedLine } from "../../src/statistics/straight-line.ts";
import { mean, sampleStandardDeviation } from "../../src/statistics/summary.ts";
import { digitsOf, readReference } from "./measure.ts";

/** One certified number and how many of its digits are reached. */
export interface CertifiedRow {
  readonly set: string;
  readonly quantity: string;
  readonly routine: string;
  /** Digits of the certified value that the printed decimals carry; null for an exact value. */
  readonly certifiedDigits: number | null;
  /** Digits of the certified value that exact arithmetic reaches from data stored as doubles. */
  readonly reachableDigits: number;
  readonly reachedDigits: number;
}

interface CertifiedSet {
  readonly data: Readonly<{
    y: readonly number[];
    x: readonly number[];
    groups: readonly (readonly number[])[];
  }>;
  readonly certified: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

type Reachable = Readonly<Record<string, Readonly<Record<string, string>>>>;

/** Results of the library by the key of the certified value they answer to; a dot parts key and coefficient. */
type Results = Readonly<Record<string, number | null | undefined>>;

const univariate = ["PiDigits", "Lottery", "Mavro", "NumAcc1", "NumAcc2", "NumAcc3"];
const anova = ["SiRstv", "SmLs01", "SmLs02", "SmLs03", "SmLs04", "SmLs06", "SmLs07", "SmLs09"];

/** The NIST Statistical Reference Datasets: digits reached beside digits certified. */
export function certifiedRows(): CertifiedRow[] {
  return [
    ...univariate.flatMap((set) => compare(set, "univariate", "summary", univariateResults)),
    ...anova.flatMap((set) => compare(set, "anova", "oneWayAnova", anovaResults)),
    ...compare("Norris", "linear", "weightedLine", lineResults),
    ...compare("Norris", "linear", "leastSquares", withIntercept),
    ...compare("NoInt1", "linear", "leastSquares", throughOrigin),
    ...compare("NoInt2", "linear", "leastSquares", throughOrigin),
  ];
}

function univariateResults({ data }: CertifiedSet): Results {
  return { mean: mean(data.y), sd: sampleStandardDeviation(data.y) };
}

function anovaResults({ data }: CertifiedSet): Results {
  const table = oneWayAnova(data.groups);
  return {
    between_ss: table.betweenSumOfSquares,
    within_ss: table.withinSumOfSquares,
    F: table.statistic,
    residual_sd: root(table.withinMeanSquare),
  };
}

function lineResults({ data }: CertifiedSet): Results {
  const fit = weightedLine(data.x, data.y);
  return {
    "estimate.B0": fit.intercept,
    "estimate.B1": fit.slope,
    "sd_of_estimate.B0": fit.interceptStandardError,
    "sd_of_estimate.B1": fit.slopeStandardError,
    residual_sd: fit.residualStandardDeviation,
  };
}

function withIntercept({ data }: CertifiedSet): Results {
  const fit = leastSquares(
    data.x.map((x) => [1, x]),
    data.y,
  );
  return {
    "estimate.B0": fit.coefficients[0],
    "estimate.B1": fit.coefficients[1],
    "sd_of_estimate.B0": fit.standardErrors?.[0],
    "sd_of_estimate.B1": fit.standardErrors?.[1],
    residual_sd: root(fit.residualSumOfSquares / fit.df),
  };
}

function throughOrigin({ data }: CertifiedSet): Results {
  const fit = leastSquares(
    data.x.map((x) => [x]),
    data.y,
  );
  return {
    "estimate.B1": fit.coefficients[0],
    "sd_of_estimate.B1": fit.standardErrors?.[0],
    residual_sd: root(fit.residualSumOfSquares / fit.df),
  };
}

function compare(
  name: string,
  kind: string,
  routine: string,
  resultsOf: (set: CertifiedSet) => Results,
): CertifiedRow[] {
  const file = `${kind}-${name.toLowerCase()}`;
  const set = readReference<CertifiedSet>(`strd/${file}.json`);
  const { reachable } = readReference<{ reachable: Reachable }>("strd-reachable.json");
  return Object.entries(resultsOf(set)).map(([quantity, value]) => {
    const text = certifiedText(set, quantity);
    const best = Number(reachable[file]?.[quantity]);
    return {
      set: name,
      quantity,
      routine,
      certifiedDigits: significantDigits(text),
      reachableDigits: digitsOf(best, Number(text)),
      reachedDigits: digitsOf(value ?? Number.NaN, Number(text)),
    };
  });
}

function certifiedText({ certified }: CertifiedSet, quantity: string): string {
  const [key = "", part = ""] = quantity.split(".");
  const found = certified[key];
  const text = typeof found === "object" ? found[part] : found;
  if (text === undefined) throw new Error(`No certified value ${quantity}.`);
  return text;
}

/** NIST prints 15 significant digits; whole numbers and short decimals are exact by construction of the data. */
function significantDigits(text: string): number | null {
  const digits = text
    .replace(/[eE].*$/, "")
    .replace(/[^0-9]/g, "")
    .replace(/^0+/, "");
  return digits.length >= 12 ? 15 : null;
}

function root(value: number | null): number | null {
  return value === null ? null : Math.sqrt(value);
}
