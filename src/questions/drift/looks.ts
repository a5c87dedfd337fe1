import { deliveriesOf, type Fill } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import type { CautionFacts } from "../../results/caution.ts";
import { againstEarlier } from "./as-they-came.ts";
import { byName } from "./by-name.ts";
import { type Changes, type ChangeTests, changesOf, changeTests } from "./changes.ts";
import { noticingOf } from "./noticing.ts";
import { powerOf } from "./rates.ts";
import type { Drift } from "./result.ts";
import { noScores, scoreCharts } from "./score-charts.ts";
import { splittingColumns } from "./splitting-columns.ts";

type Told = Pick<MeterModel, "history" | "across">;

/** What is looked at beside the model's decision, fill after fill. */
export interface DriftLooks {
  readonly changeTests: (fills: readonly Fill[]) => ChangeTests;
  readonly changesOf: (tests: ChangeTests, fills: readonly Fill[], level: number) => Changes;
  readonly splittingColumns: (
    meter: MeterModel,
    meters: number,
  ) => readonly CautionFacts["column-splits-fills"][];
  readonly powerOf: (meter: Told, shift: number) => Drift["power"];
  readonly noticingOf: (meter: Told) => Drift["noticing"];
  readonly scoreCharts: (fills: readonly Fill[], level: number) => Drift["scoreCharts"];
  readonly byName: (fills: readonly Fill[]) => Drift["byName"];
}

export const looksOverFills: DriftLooks = {
  changeTests,
  changesOf,
  splittingColumns: ({ fills, history }, meters) => splittingColumns(fills, history, meters),
  powerOf,
  noticingOf,
  scoreCharts: (fills, level) => scoreCharts(fills, againstEarlier(deliveriesOf(fills), level)),
  byName,
};

const noChange = { trend: null, shift: null };

/** The same of one fill, which shows nothing of all that. */
export const looksAtOneFill: DriftLooks = {
  changeTests: () => noChange,
  changesOf: () => noChange,
  splittingColumns: () => [],
  powerOf: () => null,
  noticingOf: () => null,
  scoreCharts: () => noScores,
  byName: () => null,
};
