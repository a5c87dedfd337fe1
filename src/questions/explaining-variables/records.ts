import { extent } from "simple-statistics";
import type { Catch } from "../../data/types.ts";
import { OptionError } from "../../errors/errors.ts";
import type { Fill } from "../../model/meters.ts";
import type { ProductGroup } from "../../model/product-groups.ts";
import { isDust } from "../../numeric/rounding-dust.ts";
import { mean } from "../../statistics/summary.ts";
import type { Variable } from "./result.ts";

/** How a variable is read from a catch; null: not recorded. */
export interface VariableReader {
  readonly name: string;
  readonly unit: Variable["unit"];
  readonly ofCatch: (row: Catch) => number | null;
}

export const densityName = "bulk density";

const density: VariableReader = {
  name: densityName,
  unit: "kg/m³",
  ofCatch: (row) => row.bulkDensityKgPerM3,
};

const knownReaders: readonly VariableReader[] = [
  density,
  { name: "moisture", unit: "%", ofCatch: (row) => row.moisturePercent },
  { name: "meter speed", unit: "turns/min", ofCatch: (row) => row.meterRpm },
];

/** Headers that are taken for thousand-kernel weight without being named. */
const kernelWeight = /^(tkw|tgw|tsw)(_g)?$/i;

/**
 * Readers for the variables asked for, or for those that the file records.
 *
 * @throws OptionError when a name is neither a known variable nor a column of numbers in the file
 */
export function readersFor(
  groups: readonly ProductGroup[],
  asked: readonly string[] | null,
): readonly VariableReader[] {
  const catches = groups.flatMap(({ fills }) => fills.flatMap(({ fill }) => fill.catches));
  const headers = [...new Set(catches.flatMap(({ extra }) => Object.keys(extra)))];
  if (asked === null) {
    const columns = headers.filter((header) => kernelWeight.test(header)).map(columnReader);
    return [...knownReaders, ...columns].filter(({ ofCatch }) =>
      catches.some((row) => ofCatch(row) !== null),
    );
  }
  return asked.map((name) => {
    const known = knownReaders.find((reader) => reader.name === name);
    if (known !== undefined) return known;
    const numeric = catches.some((row) => columnReader(name).ofCatch(row) !== null);
    if (headers.includes(name) && numeric) return columnReader(name);
    const names = [...knownReaders.map((reader) => reader.name), ...headers];
    throw new OptionError("variables", name, `one of ${names.join(", ")}, holding numbers`);
  });
}

function columnReader(header: string): VariableReader {
  return {
    name: header,
    unit: null,
    ofCatch: ({ extra }) => {
      const text = extra[header]?.trim() ?? "";
      const value = Number(text);
      return text !== "" && Number.isFinite(value) ? value : null;
    },
  };
}

/** Mean of what the catches of a fill record; null when none does. */
export function ofFill(fill: Fill, { ofCatch }: VariableReader): number | null {
  const values = fill.catches.flatMap((row) => ofCatch(row) ?? []);
  return values.length === 0 ? null : mean(values);
}

/** Mean over fills of what each records; null when none does. */
export function ofProduct({ fills }: ProductGroup, reader: VariableReader): number | null {
  const values = fills.flatMap(({ fill }) => ofFill(fill, reader) ?? []);
  return values.length === 0 ? null : mean(values);
}

/** Bulk density of a fill, kg/m³; null when not recorded. */
export function densityOf(fill: Fill): number | null {
  return ofFill(fill, density);
}

export function describeVariable(
  groups: readonly ProductGroup[],
  reader: VariableReader,
): Variable | null {
  const fills = groups.flatMap((group) => group.fills.map(({ fill }) => fill));
  const values = fills.flatMap(({ catches }) =>
    catches.flatMap((row) => reader.ofCatch(row) ?? []),
  );
  if (values.length === 0) return null;
  const [lowest, highest] = extent([...values]);
  return {
    name: reader.name,
    unit: reader.unit,
    fills: fills.filter((fill) => ofFill(fill, reader) !== null).length,
    lowest,
    highest,
    varies: {
      withinFills: fills.some(({ catches }) =>
        vary(catches.flatMap((row) => reader.ofCatch(row) ?? [])),
      ),
      withinProducts: groups.some((group) =>
        vary(group.fills.flatMap(({ fill }) => ofFill(fill, reader) ?? [])),
      ),
      betweenProducts: vary(groups.flatMap((group) => ofProduct(group, reader) ?? [])),
    },
  };
}

function vary(values: readonly number[]): boolean {
  if (values.length === 0) return false;
  const [lowest, highest] = extent([...values]);
  return !isDust(highest - lowest, Math.max(Math.abs(lowest), Math.abs(highest)));
}
