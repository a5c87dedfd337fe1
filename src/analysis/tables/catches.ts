import { extraCells } from "../../data/catch-values.ts";
import { recordedColumns } from "../../data/column-kinds.ts";
import type { Setup } from "../../data/setup.ts";
import type { Catch, CatchLog } from "../../data/types.ts";
import type { PlainRow } from "../../data/write-csv.ts";
import { fitModel, type MeterModel, type Model } from "../../model/model.ts";
import { type Delivery, delivery } from "../../questions/delivery.ts";
import type { CatchJudgement } from "../../questions/outliers.ts";
import { known } from "../../results/options.ts";
import type { Analysis } from "../analyse.ts";
import { modelChoices } from "../resolved-setup.ts";
import { keyOf } from "./keys.ts";
import { type NamesOption, namedAs } from "./table-names.ts";

/**
 * Every catch of an analysis with what the fit of its fill says of it: one row a catch, in order of bin, product, fill and catch.
 *
 * Fitted mass is delivery × turns, the delivery being that of the fill. Leverage h is the catch's share in it;
 * `standardised_residual` r ÷ (s·√(1 − h)), s from the scatter that the fill's interval rests on; `influence` what leaving the
 * catch out would change the delivery by, as a fraction of it, −h/(1 − h) × relative residual; `cooks_distance` the square of the
 * standardised residual × h/(1 − h); `deleted_residual` and `judgement` what the screening says. A catch that was left
 * out has a fitted mass and a residual, none of these, and the reason in `left_out`; one that the screening set aside
 * likewise, with `set_aside` true.
 *
 * @param log       catches of the analysis
 * @param setup     of the analysis; null: it had none
 * @param options   names: "broom" for those of R's package broom (.fitted, .resid, .std.resid, .hat, .cooksd); default "own"
 * @returns         plain rows: texts, numbers, true, false, null; masses in kg; columns of the person's own as extra.HEADER
 * Source           Cook & Weisberg, Residuals and Influence in Regression, ch. 2–3
 */
export function augment(
  log: CatchLog,
  analysis: Analysis,
  setup: Setup | null = null,
  { names }: NamesOption = {},
): readonly PlainRow[] {
  return namedAs(catchTable(modelOf(log, analysis, setup), analysis), names);
}

/** The model that an analysis rests on. */
export function modelOf(log: CatchLog, { options }: Analysis, setup: Setup | null): Model {
  return fitModel(log.catches, options, modelChoices(options, setup));
}

export function catchTable(model: Model, analysis: Analysis): readonly PlainRow[] {
  return model.meters.flatMap((meter) => {
    const judged = judgementsOf(meter, analysis);
    return meter.screening.findings.flatMap(({ fill: whole }) => {
      const kept = meter.fills.find((fill) => fill.fill === whole.fill);
      const answer = kept === undefined ? null : delivery(meter, analysis.options, kept);
      const points = new Map(answer?.points.map((point) => [point.catch, point]) ?? []);
      const fitted = answer?.estimate.value ?? whole.delivery;
      return [...whole.catches, ...whole.leftOut]
        .sort((a, b) => a.catch - b.catch)
        .map((row) => {
          const point = row.leftOut === null ? points.get(row.catch) : undefined;
          const judgement = judged.get(keyOf(whole.fill, row.catch)) ?? null;
          return {
            ...catchCells(row, fitted),
            ...pointCells(point ?? null, answer),
            deleted_residual: row.leftOut === null ? (judgement?.statistic ?? null) : null,
            judgement: row.leftOut === null ? (judgement?.verdict ?? null) : null,
            ...Object.fromEntries(circumstances.map(({ name, field }) => [name, row[field]])),
            left_out: row.leftOut,
            set_aside: row.leftOut === null && point === undefined,
            ...extraCells(row),
          };
        });
    });
  });
}

function judgementsOf(
  { bin, product }: MeterModel,
  { meters }: Analysis,
): ReadonlyMap<string, CatchJudgement> {
  const answers = meters.find((one) => one.bin === bin && one.product === product);
  const judged = answers?.outliers?.catches ?? [];
  return new Map(judged.map((one) => [keyOf(one.fill, one.catch), one]));
}

/** What else was noted of a catch; when it was taken stands further left, with its place in the file. */
const circumstances = recordedColumns.filter(
  ({ name, inCatchTable }) => inCatchTable && name !== "taken_at",
);

function catchCells(row: Catch, fitted: number): PlainRow {
  const fittedKg = fitted * row.turns;
  return {
    ...known({ farm: row.farm, machine: row.machine, season: row.season }),
    bin: row.bin,
    product: row.product,
    fill: row.fill,
    catch: row.catch,
    row: row.row,
    taken_at: row.takenAt,
    turns: row.turns,
    net_kg: row.netKg,
    delivery_kg_per_turn: row.netKg / row.turns,
    fitted_kg: fittedKg,
    residual_kg: row.netKg - fittedKg,
    relative_residual: row.netKg / fittedKg - 1,
  };
}

/** @param point  null: the catch does not count, being left out or set aside */
function pointCells(point: Delivery["points"][number] | null, answer: Delivery | null): PlainRow {
  const leverage = point?.leverage ?? null;
  // A lone catch decides its fill by itself: what is left over of it, and the fill without it, do not exist.
  const others = leverage === null || leverage >= 1 ? null : 1 - leverage;
  if (point === null || answer === null || leverage === null || others === null)
    return { standardised_residual: null, leverage, influence: null, cooks_distance: null };
  const { model } = answer.variance;
  // The variance of the delivery is s²/Σw·x², and h = w·x²/Σw·x²: so s²/w is x² × that variance over h, by every law.
  const deviation = model === null ? 0 : point.turns * Math.sqrt((model * others) / leverage);
  const standardised = deviation > 0 ? point.residualKg / deviation : null;
  return {
    standardised_residual: standardised,
    leverage,
    influence: (-leverage / others) * point.relativeResidual,
    cooks_distance: standardised === null ? null : (standardised ** 2 * leverage) / others,
  };
}
