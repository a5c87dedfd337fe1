import { allCautions } from "../analysis/all-cautions.ts";
import type { Analysis, MeterAnswers } from "../analysis/analyse.ts";
import { catchTable, modelOf } from "../analysis/tables/catches.ts";
import { estimateCells } from "../analysis/tables/cells.ts";
import { tidy } from "../analysis/tables/estimates.ts";
import { effectTable } from "../analysis/tables/explaining.ts";
import { fileKeysOf } from "../analysis/tables/keys.ts";
import { contrastTable, productTable } from "../analysis/tables/products.ts";
import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { columnsOf, type PlainRow } from "../data/write-csv.ts";
import type { Words } from "../wording/words.ts";
import { cautionSentence } from "./sections/cautions.ts";
import { decisionLines } from "./sections/decision.ts";

/** The answers of an analysis as plain tables by name, for programs that think in data frames. */
export interface AnswerTables {
  /** One row a bin and product: what to do now, in words and in parts, and what it rests on. */
  readonly decision: readonly PlainRow[];
  /** One row a bin and product: what the fill in the bin delivers. */
  readonly delivery: readonly PlainRow[];
  /** One row a fill: what it delivers. */
  readonly fills: readonly PlainRow[];
  /** One row a number of catches: how well the fill in the bin is known after so many. */
  readonly next_catches: readonly PlainRow[];
  /** One row a bin, product and limit: the chance of a rate error beyond it where the next fill is not caught. */
  readonly skipping: readonly PlainRow[];
  /** One row a finding, as code, gravity and sentence. */
  readonly findings: readonly PlainRow[];
  /** As in `tidyTables`; those of products are empty where products were not compared. */
  readonly estimates: readonly PlainRow[];
  readonly catches: readonly PlainRow[];
  readonly products: readonly PlainRow[];
  readonly contrasts: readonly PlainRow[];
  readonly effects: readonly PlainRow[];
}

/**
 * The answers of an analysis as plain tables: texts, numbers with every digit, true, false and null. Masses in kg,
 * deliveries in kg/turn, half-widths, chances and limits as fractions. Every row of a table has the same columns.
 *
 * @param log       catches of the analysis
 * @param analysis  of these catches
 * @param words     language and units of the sentences; numbers in columns stay in kg
 * @param setup     of the analysis; null: it had none
 * @example
 * const log = await readCatches({ name: "catches.csv", text: "turns,net_kg\n20,6.36\n20,6.48\n20,6.56" });
 * const tables = answerTables(log, analyse(log), await wordsFor("en", "metric"));
 * tables.delivery[0]?.value // -> 0.3233
 */
export function answerTables(
  log: CatchLog,
  analysis: Analysis,
  words: Words,
  setup: Setup | null = null,
): AnswerTables {
  const { meters, products: compared } = analysis;
  const model = modelOf(log, analysis, setup);
  const withFileKeys = fileKeysOf(model);
  const keyed = (rows: readonly PlainRow[]) => rectangular(rows.map(withFileKeys));
  const estimates = tidy(analysis);
  return {
    decision: keyed(meters.map((answers) => decisionRow(answers, analysis, words))),
    delivery: keyed(meters.map(deliveryRow)),
    fills: keyed(fillRows(estimates)),
    next_catches: keyed(meters.flatMap(nextCatchRows)),
    skipping: keyed(meters.flatMap(skippingRows)),
    findings: keyed(findingRows(analysis, words)),
    estimates: keyed(estimates),
    catches: rectangular(catchTable(model, analysis)),
    products: compared === null ? [] : keyed(productTable(compared.comparison)),
    contrasts: compared === null ? [] : keyed(contrastTable(compared.comparison)),
    effects: compared === null ? [] : keyed(effectTable(compared.explaining)),
  };
}

function decisionRow(answers: MeterAnswers, analysis: Analysis, words: Words): PlainRow {
  const { decision, delivery, catchesNeeded } = answers;
  const lines = decisionLines(answers, analysis, words);
  return {
    bin: answers.bin,
    product: answers.product,
    fill: delivery.fill,
    action: decision?.action ?? null,
    tone: lines.tone,
    to_do: lines.action,
    how_sure: lines.sure,
    why: lines.why.length === 0 ? null : lines.why.join(" "),
    further_catches: decision?.catches?.further ?? null,
    further_turns: decision?.catches?.turns ?? null,
    reaches: decision?.catches?.reaches ?? null,
    chance: decision?.catches?.chance ?? null,
    set_quantity: decision?.setting?.quantity ?? null,
    set_value: decision?.setting?.value ?? null,
    set_unit: decision?.setting?.unit ?? null,
    set_name: decision?.setting?.name ?? null,
    stated_half_width: catchesNeeded?.statedHalfWidth ?? null,
    tolerance: delivery.options.tolerance,
    tolerance_from: analysis.toleranceFrom,
    reasons: decision === null ? null : decision.reasons.join(" "),
    also: decision === null ? null : decision.also.join(" "),
  };
}

function deliveryRow(answers: MeterAnswers): PlainRow {
  const { delivery } = answers;
  return {
    bin: answers.bin,
    product: answers.product,
    fill: delivery.fill,
    ...estimateCells(delivery.estimate),
    level: delivery.options.level,
    half_width: delivery.halfWidth,
    catches: delivery.input.catches,
    turns: delivery.input.turns,
    mass_kg: delivery.input.massKg,
    earlier_fills: delivery.input.earlierFills,
    standard_error_from: delivery.standardErrorFrom,
  };
}

function fillRows(estimates: readonly PlainRow[]): readonly PlainRow[] {
  return estimates
    .filter(({ about }) => about === "this fill's delivery")
    .map(({ quantity: _, about: __, ...row }) => row);
}

function nextCatchRows(answers: MeterAnswers): readonly PlainRow[] {
  const { curve, fill } = answers.catchesNeeded ?? {};
  return (curve?.points ?? []).map((point) => ({
    bin: answers.bin,
    product: answers.product,
    fill: fill ?? null,
    turns_per_catch: curve?.turnsPerCatch ?? null,
    catches: point.catches,
    further: point.further,
    basis: point.basis,
    half_width: point.halfWidth,
    half_width_assured: point.halfWidthAssured,
    chance: point.chance,
    chance_off_tolerance: point.chanceOffTolerance,
  }));
}

function skippingRows(answers: MeterAnswers): readonly PlainRow[] {
  return (answers.skipping?.chances ?? []).map(({ limit, heavy, light, either, upperBound }) => ({
    bin: answers.bin,
    product: answers.product,
    limit,
    heavy,
    light,
    either,
    upper_bound: upperBound,
    least_chance: answers.skipping?.leastChance ?? null,
  }));
}

/** The same finding from two answers is told once. */
function findingRows(analysis: Analysis, words: Words): readonly PlainRow[] {
  const rows = allCautions(analysis).map((found): PlainRow => {
    const { bin, product, fill, catches } = found.where;
    return {
      bin,
      product,
      fill,
      catches: catches.length === 0 ? null : catches.join(" "),
      code: found.code,
      severity: found.severity,
      asks: found.asks,
      sentence: cautionSentence(found, words),
    };
  });
  return [...new Map(rows.map((row) => [JSON.stringify(row), row])).values()];
}

/** A column that some row has stands in all: data frames have no holes. */
function rectangular(rows: readonly PlainRow[]): readonly PlainRow[] {
  const columns = columnsOf(rows);
  return rows.map((row) => Object.fromEntries(columns.map((name) => [name, row[name] ?? null])));
}
