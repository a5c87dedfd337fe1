import { sum } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import { at } from "../../errors/at.ts";
import { stretchInForce } from "../../model/history.ts";
import type { Fill } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import { groupBy } from "../../numeric/group-by.ts";
import { additiveBlocks, type TreatmentEffect } from "../../statistics/additive-blocks.ts";
import { holm } from "../../statistics/multiplicity.ts";
import { mean } from "../../statistics/summary.ts";
import type { ComparedFactor, FleetComparison, FleetFactor, WhyNotCompared } from "./result.ts";
import { fleetFactors } from "./result.ts";

/** Fewest meters with an operator, scale or machine that is compared. */
export const metersForFactor = 3;

/** Fills of one meter by one operator, scale or machine, as one value: fills are alike, meters are not. */
interface Cell {
  readonly meter: MeterModel;
  readonly label: string;
  readonly fills: number;
  /** Mean of the logarithms of their deliveries. */
  readonly value: number;
}

/**
 * Do operators, scales or machines make a difference to what is delivered? Additive analysis of variance of the logarithms,
 * one value for the fills of one meter under one of them: on the same meters where enough have met two or more of them, else
 * between meters with the same product.
 */
export function factorsOf(
  meters: readonly MeterModel[],
  level: number,
): FleetComparison["factors"] {
  const found = fleetFactors.map((factor) => ({ factor, answer: compared(factor, meters, level) }));
  const answered = found.flatMap(({ answer }) => (typeof answer === "string" ? [] : [answer]));
  const adjusted = holm(answered.map(({ test }) => test.pValue));
  return {
    compared: answered.map((one, i) => ({
      ...one,
      adjusted: at(adjusted, i),
      differ: at(adjusted, i) < 1 - level,
    })),
    uncompared: found.flatMap(({ factor, answer }) =>
      typeof answer === "string" ? [{ factor, why: answer }] : [],
    ),
  };
}

type Compared = Omit<ComparedFactor, "adjusted" | "differ">;

function compared(
  factor: FleetFactor,
  meters: readonly MeterModel[],
  level: number,
): Compared | WhyNotCompared {
  const severalFarms = new Set(meters.map(({ place }) => place.farm)).size > 1;
  const cells = meters.flatMap((meter) =>
    cellsOf(meter, (fill) =>
      factor === "machine" ? machineOf(meter, severalFarms) : labelOf(fill, factor),
    ),
  );
  const labels = new Set(cells.map(({ label }) => label));
  if (labels.size === 0) return "not recorded";
  if (labels.size === 1) return "one only";
  const ofMeters = [...groupBy(cells, ({ meter }) => meter).values()];
  const several = withEnough(ofMeters.filter((own) => own.length > 1).flat());
  const single = withEnough(ofMeters.filter((own) => own.length === 1).flat());
  if (several.length + single.length === 0) return "too few meters";
  const onSame = several.length === 0 ? null : judged(factor, "meters", several, level);
  return (
    onSame ??
    (single.length === 0 ? null : judged(factor, "products", single, level)) ??
    "never side by side"
  );
}

function judged(
  factor: FleetFactor,
  within: ComparedFactor["within"],
  cells: readonly Cell[],
  level: number,
): Compared | null {
  const indexOf = new Map([...new Set(cells.map(({ meter }) => meter))].map((one, i) => [one, i]));
  const found = additiveBlocks(
    cells.map(({ meter, label, value }) => ({
      block: within === "meters" ? String(indexOf.get(meter)) : meter.product,
      treatment: label,
      value,
    })),
    level,
  );
  if (found === null) return null;
  return {
    factor,
    within,
    meters: indexOf.size,
    test: found.test,
    levels: found.effects.map((effect) => {
      const own = cells.filter(({ label }) => label === effect.treatment);
      return {
        label: effect.treatment,
        meters: own.length,
        fills: sum(own.map(({ fills }) => fills)),
        ratio: ratioOf(effect, found.df, level),
      };
    }),
  };
}

function ratioOf(
  { value, standardError, lower, upper }: TreatmentEffect,
  df: number,
  level: number,
) {
  return {
    value: Math.exp(value),
    unit: "ratio",
    standardError: Math.exp(value) * standardError,
    df,
    interval: { lower: Math.exp(lower), upper: Math.exp(upper), level, about: "ratio" },
  } as const;
}

/** Cells of the labels that enough meters have; none where fewer than two labels are left. */
function withEnough(cells: readonly Cell[]): readonly Cell[] {
  const usable = [...groupBy(cells, ({ label }) => label).values()].filter(
    ({ length }) => length >= metersForFactor,
  );
  if (usable.length < 2) return [];
  return usable.flat();
}

function cellsOf(meter: MeterModel, labelFor: (fill: Fill) => string | null): readonly Cell[] {
  const fills = stretchInForce(meter.history).filter(({ delivery }) => delivery > 0);
  const labelled = fills.flatMap((fill) => {
    const label = labelFor(fill);
    return label === null ? [] : [{ fill, label }];
  });
  return [...groupBy(labelled, ({ label }) => label)].map(([label, own]) => ({
    meter,
    label,
    fills: own.length,
    value: mean(own.map(({ fill }) => Math.log(fill.delivery))),
  }));
}

/** Headers under which people write the scale, for which no column of the file is; without capitals. */
const headersOfScale: readonly string[] = ["scale", "waage"];

/** As bins are named: machine 1 of one farm is not machine 1 of the next. */
function machineOf({ place: { machine, farm } }: MeterModel, severalFarms: boolean): string | null {
  const name = (machine ?? "").trim();
  if (name === "") return null;
  return severalFarms && farm !== null ? `${name}/${farm}` : name;
}

/** What is written beside single catches; the machine is the meter's own. */
type Written = Exclude<FleetFactor, "machine">;

/** What a fill's catches say; null where they say nothing or disagree. */
function labelOf({ catches }: Fill, factor: Written): string | null {
  const labels = new Set(catches.map((row) => (written(row, factor) ?? "").trim()));
  const [only = ""] = labels;
  return labels.size === 1 && only !== "" ? only : null;
}

function written(row: Catch, factor: Written): string | null {
  if (factor !== "scale") return row[factor];
  const found = Object.entries(row.extra).find(([header]) =>
    headersOfScale.includes(header.trim().toLowerCase()),
  );
  return found?.[1] ?? null;
}
