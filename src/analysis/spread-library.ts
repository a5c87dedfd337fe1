import { max } from "simple-statistics";
import { dataIssue } from "../data/issues.ts";
import { type ProductClasses, sameName } from "../data/spreads/classes.ts";
import { fewestBins, leastVariance } from "../data/spreads/limits.ts";
import type { SpreadFigure, SpreadLibrary, SpreadRecord } from "../data/spreads/schema.ts";
import { tidyText } from "../data/table.ts";
import { at } from "../errors/at.ts";
import { dataError } from "../errors/data-error.ts";
import type { DataError } from "../errors/errors.ts";
import type { MeterRecord } from "../model/lenders.ts";
import type { MeterModel, Model } from "../model/model.ts";
import type { EstimatedVariance } from "../statistics/spread-votes.ts";
import { constantsFrom } from "./spread-estimates.ts";

/** How a library is made of logs. */
export interface SpreadLibraryChoices {
  /** Day it is made, year first. */
  readonly day: string;
  /** Program and version that make it. */
  readonly by: string;
  /** Class of each product; default: what a column product_class of the catches says, else none. */
  readonly classes?: ProductClasses;
  /** SHA-256 of each table; default: not told. */
  readonly tablesSha256?: readonly string[] | null;
  /** Confidence level of what is estimated anew, default 0.95. */
  readonly level?: number;
  /** Name under which errors speak of the logs. */
  readonly source?: string;
}

/** A class of products and type of meter with too few bins to be told. */
export interface ClassLeftOut {
  readonly productClass: string | null;
  readonly meterType: string | null;
  readonly bins: number;
}

export interface MadeSpreadLibrary {
  readonly library: SpreadLibrary;
  readonly leftOut: readonly ClassLeftOut[];
}

const how =
  "variances of each meter relative to its delivery: of its catches pooled over its fills, and of its fills within levels";

/**
 * What the meters of logs can tell others of how much they scatter, without the name of any: one record a meter, in order of
 * its figures and not of the logs, six digits each. Told are class of the product and type of the meter, where a table
 * of classes or the columns product_class and meter_type give them. A class and type of fewer than 5 bins (`fewestBins`)
 * is left out, so that nobody's meter is told by itself; a bin with several products is one bin, and a bin of another log another
 * one, so that the seasons of one farm belong in one log.
 *
 * @param models  one a log
 * @returns       the library, with constants estimated anew from 30 meters, and what was left out of it
 * @throws        DataError (too-few-meters) where no class has enough bins
 */
export function spreadLibrary(
  models: readonly Model[],
  choices: SpreadLibraryChoices,
): MadeSpreadLibrary {
  const { day, by, tablesSha256 = null, level = 0.95, classes = new Map() } = choices;
  const meters = models.flatMap((model, log) =>
    model.meters.map((meter) => ({ bin: `${log}:${meter.bin}`, record: recordOf(meter, classes) })),
  );
  const telling = meters.filter(({ record }) => record.spread !== null || record.scatter !== null);
  const names = [...new Set(telling.map(({ record }) => cellOf(record)))];
  const cells = names.map((name) => {
    const members = telling.filter(({ record }) => cellOf(record) === name);
    return { members, bins: new Set(members.map(({ bin }) => bin)).size };
  });
  const told = cells.filter(({ bins }) => bins >= fewestBins);
  if (told.length === 0)
    throw tooFew(choices.source ?? "", max([0, ...cells.map(({ bins }) => bins)]));
  const records = told.flatMap(({ members }) => members.map(({ record }) => record));
  const fills = models.flatMap((model) => model.meters.flatMap((meter) => meter.fills));
  return {
    library: {
      made: {
        by,
        day,
        how,
        catches: fills.reduce((count, { catches }) => count + catches.length, 0),
        fills: fills.length,
        meters: meters.length,
        metersLeftOut: meters.length - records.length,
        fewestBins,
        tablesSha256: tablesSha256 === null ? null : tablesSha256.toSorted(),
      },
      records: records.toSorted(byFigures),
      estimates: constantsFrom(models, level),
    },
    leftOut: cells
      .filter(({ bins }) => bins < fewestBins)
      .map(({ members, bins }) => {
        const { productClass, meterType } = at(members, 0).record;
        return { productClass, meterType, bins };
      }),
  };
}

/** The records of a library as the option `library` of an analysis takes them; the class of a product stands for its name. */
export function libraryRecords({ records }: SpreadLibrary): readonly MeterRecord[] {
  return records.map(({ productClass, spread, scatter }) => ({
    product: productClass,
    spread,
    scatter,
  }));
}

function recordOf({ product, record, fills }: MeterModel, classes: ProductClasses): SpreadRecord {
  return {
    productClass: classes.get(sameName(product)) ?? columnOf(fills, "product_class"),
    meterType: columnOf(fills, "meter_type"),
    spread: told(record.spread),
    scatter: told(record.scatter),
    fills: fills.length,
    catches: fills.reduce((count, { catches }) => count + catches.length, 0),
  };
}

/** What the first catch that fills in a column of the person's own says there; null: none does. */
function columnOf(fills: MeterModel["fills"], name: string): string | null {
  for (const { weighings } of fills)
    for (const { extra } of weighings)
      for (const [header, text] of Object.entries(extra))
        if (sameName(header) === name && tidyText(text) !== "") return tidyText(text);
  return null;
}

/** Digits that a variance is told with: far more than it is known to. */
const toldDigits = 6;

function told(estimated: EstimatedVariance | null): SpreadFigure | null {
  if (estimated === null || estimated.variance < leastVariance) return null;
  return { variance: Number(estimated.variance.toPrecision(toldDigits)), df: estimated.df };
}

function cellOf({ productClass, meterType }: SpreadRecord): string {
  return JSON.stringify([productClass, meterType]);
}

/** An order that tells nothing of where a meter stood. */
function byFigures(a: SpreadRecord, b: SpreadRecord): number {
  const [first, second] = [cellOf(a), cellOf(b)];
  if (first !== second) return first < second ? -1 : 1;
  const size = ({ spread, scatter }: SpreadRecord) => scatter?.variance ?? spread?.variance ?? 0;
  return size(a) - size(b);
}

function tooFew(source: string, bins: number): DataError {
  const issue = dataIssue(
    { source, rowKind: "row" },
    { problem: "spreads-too-few", facts: { bins, least: fewestBins } },
  );
  return dataError(source, [issue]);
}
