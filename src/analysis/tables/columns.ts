import { columnByName, keyColumns, recordedColumns } from "../../data/column-kinds.ts";
import type { CatchColumn } from "../../data/columns.ts";

/** What a column of a tidy table holds, and what it is called beside other programs. */
export interface TableColumn {
  /** "fill" is the name of a fill: its number, or number/season where the log holds several seasons. */
  readonly type: "string" | "number" | "integer" | "boolean" | "fill";
  /** Null: it has none. `inColumnUnit`: the one that the column `unit` of the same row names. */
  readonly unit: string | null;
  /** Its name in R's package broom; left out: it has none there, and keeps its own. */
  readonly broom?: string;
}

/** Unit of figures whose row says in its column `unit` what it is. */
export const inColumnUnit = "see unit";

const text = { type: "string", unit: null } as const;
const whole = { type: "integer", unit: null } as const;
const yesOrNo = { type: "boolean", unit: null } as const;
const fillName = { type: "fill", unit: null } as const;
const plain = { type: "number", unit: null } as const;
const figure = <U extends string>(unit: U) => ({ type: "number", unit }) as const;
const share = figure("fraction");
const inUnit = figure(inColumnUnit);
const kgPerTurn = figure("kg/turn");
const called = <C extends TableColumn, B extends string>(column: C, broom: B) =>
  ({ ...column, broom }) as const;

/**
 * Every column of the tidy tables that is no column of a file of catches: type and unit here and nowhere else, and in the words
 * of each language what it means. A name means the same in every table that has it.
 */
export const ownColumns = {
  row: whole,
  quantity: text,
  about: called(text, "term"),
  value: called(inUnit, "estimate"),
  unit: text,
  standard_error: called(inUnit, "std.error"),
  df: called(plain, "df"),
  lower: called(inUnit, "conf.low"),
  upper: called(inUnit, "conf.high"),
  level: called(share, "conf.level"),
  statistic: called(plain, "statistic"),
  p: called(plain, "p.value"),
  p_adjusted: called(plain, "adj.p.value"),
  p_unadjusted: called(plain, "p.value"),
  method: text,

  fills: whole,
  catches: called(whole, "nobs"),
  half_width: share,
  action: text,
  further_catches: whole,
  turns_per_catch: figure("turns"),
  verdict: text,
  moved_since: fillName,
  level_since: fillName,
  catch_scatter: share,
  catch_scatter_lower: share,
  catch_scatter_upper: share,
  catch_scatter_turns: figure("turns"),
  fill_spread: share,
  fill_spread_lower: share,
  fill_spread_upper: share,
  ratio_to_product: figure("ratio"),
  p_delivery: plain,
  p_scatter: plain,
  p_spread: plain,
  attention: text,

  delivery_kg_per_turn: kgPerTurn,
  fitted_kg: called(figure("kg"), ".fitted"),
  residual_kg: called(figure("kg"), ".resid"),
  relative_residual: share,
  standardised_residual: called(plain, ".std.resid"),
  leverage: called(share, ".hat"),
  influence: share,
  cooks_distance: called(plain, ".cooksd"),
  deleted_residual: plain,
  judgement: text,
  left_out: text,
  set_aside: yesOrNo,

  place_in_time: whole,
  stands: text,
  stretch: whole,
  screening: text,
  relative_range: share,
  standing_out: whole,
  catches_left_out: whole,
  catches_set_aside: whole,

  finding: whole,
  found_in: text,
  code: text,
  severity: text,
  asks: text,
  answered: text,
  facts: text,
  sentence: text,

  component: text,
  standard_deviation: inUnit,
  variance: inUnit,
  relative: share,
  intraclass_correlation: share,
  spread_from: text,
  meters_lending: whole,

  outcome: text,
  settled: text,
  evidence: figure("to 1"),
  evidence_limit: figure("to 1"),
  score: plain,
  ewma: plain,
  ewma_lower: plain,
  ewma_upper: plain,
  cusum_lower: plain,
  cusum_upper: plain,
  cusum_signal: text,
  from_fill: fillName,
  to_fill: fillName,
  begins: text,
  mean_kg_per_turn: kgPerTurn,
  test: called(text, "term"),
  decides: yesOrNo,
  since_fill: fillName,
  fills_before: whole,
  fills_since: whole,

  left_at_kg_per_turn: kgPerTurn,
  expected_heavy: share,
  expected_light: share,
  expected_absolute: share,
  expected_absolute_bound: share,
  least_chance: share,
  tolerance: share,
  accepted_risk: share,
  most_fills: whole,
  most_fills_by_bound: whole,
  lawful_lowest_kg_ha: figure("kg/ha"),
  lawful_highest_kg_ha: figure("kg/ha"),
  chance_unlawful: share,
  chance_unlawful_bound: share,
  share_of_fills: share,
  share_lower: share,
  share_upper: share,
  limit: share,
  chance_heavy: share,
  chance_light: share,
  chance_either: share,
  chance_bound: share,
  fills_in_a_row: whole,
  chance_any: share,
  fills_expected_off: figure("fills"),

  speed_km_h: figure("km/h"),
  kind: text,
  step: text,
  setting: figure("see setting_unit"),
  setting_unit: text,
  nearest: yesOrNo,
  rate_error: share,
  rate_error_lower: share,
  rate_error_upper: share,

  source: called(text, "term"),
  standard_uncertainty: inUnit,
  law: text,
  sensitivity: figure("fraction per unit"),
  contribution: share,
  variance_share: share,
  combined: share,
  coverage_factor: plain,
  expanded: share,
  within_tolerance: yesOrNo,
  improve_first: text,
  drawn_lower: share,
  drawn_upper: share,
  drawn_agrees: yesOrNo,

  bins: text,
  catch_cv: share,
  catch_cv_lower: share,
  catch_cv_upper: share,
  catch_cv_turns: figure("turns"),
  block: text,
  first: text,
  second: text,
  n_first: whole,
  n_second: whole,
  difference_kg_per_turn: called(kgPerTurn, "estimate"),
  difference_lower: called(kgPerTurn, "conf.low"),
  difference_upper: called(kgPerTurn, "conf.high"),
  ratio: figure("ratio"),
  ratio_lower: figure("ratio"),
  ratio_upper: figure("ratio"),
  ratio_shape: text,
  equivalence_lower: figure("ratio"),
  equivalence_upper: figure("ratio"),
  equivalence_level: share,
  p_equivalence: plain,
  margin: share,
  paired_ratio_lower: figure("ratio"),
  paired_ratio_upper: figure("ratio"),
  paired_df: plain,
  paired_p_adjusted: plain,
  paired_verdict: text,
  scale: text,
  difference_found: yesOrNo,
  df_denominator: plain,

  variable: called(text, "term"),
  variable_unit: text,
  lowest: plain,
  highest: plain,
  varies_within_fills: yesOrNo,
  varies_within_products: yesOrNo,
  varies_between_products: yesOrNo,
  between: text,
  together_with: text,
  points: called(whole, "nobs"),
  elasticity: plain,
  variables: text,
  residual_sd_kg_per_turn: called(kgPerTurn, "sigma"),
  r_squared: called(share, "r.squared"),
  volume_m3_per_turn: figure("m³/turn"),
  products: whole,
  share_explained: share,
  by: text,
  extrapolates: yesOrNo,
} as const satisfies Readonly<Record<string, TableColumn>>;

/** A column of the tidy tables that a file of catches does not have. */
export type OwnColumn = keyof typeof ownColumns;

/** Columns of a file of catches that the table of catches shows, and that other tables share. */
export const sharedColumns: readonly CatchColumn[] = [
  ...keyColumns.map((name) => columnByName[name]),
  ...(["bin", "product", "fill", "catch", "turns", "net_kg"] as const).map(
    (name) => columnByName[name],
  ),
  ...recordedColumns.filter(({ inCatchTable }) => inCatchTable),
];
