import type { CatchLog } from "../../data/types.ts";
import { ofOneFill } from "../../model/history/one-fill.ts";
import type { HistoryReading } from "../../model/history/result.ts";
import { overFills } from "../../model/history.ts";
import type { Meter } from "../../model/meters.ts";
import type { MeterModel } from "../../model/model.ts";
import { catchesNeeded } from "../../questions/catches-needed.ts";
import { deliveryWithoutError } from "../../questions/delivery/without-error.ts";
import { delivery } from "../../questions/delivery.ts";
import { driftOfOneFill } from "../../questions/drift/one-fill.ts";
import { type Drift, type DriftOptions, drift } from "../../questions/drift.ts";
import { outliers } from "../../questions/outliers.ts";
import { repeatability } from "../../questions/repeatability.ts";
import { settingOfNothing } from "../../questions/setting/nothing-told.ts";
import { type DecidedBin, decidedAlone } from "../decided-bin.ts";
import type { DecisiveAnswers, DecisiveOptions, DecisiveQuestions } from "../decisive-answers.ts";
import type { AnalysisOptions } from "../options.ts";
import { questioningBy } from "../questioning.ts";
import { plainOptions, plannedBy } from "../resolved-setup.ts";

/** How several fills of a bin are read one after the other, and whether the meter has moved over them. */
export interface History {
  readonly reading: HistoryReading;
  readonly drift: (
    meter: MeterModel,
    options: DriftOptions,
    meters: readonly Meter[],
    asked: number,
  ) => Drift;
}

/** Reads as many fills as there are; by itself, since a page about the fill in the bin has no use for it. */
export const history: History = { reading: overFills, drift };

/** Reads the fill in the bin alone, and refuses more. */
export const oneFill: History = { reading: ofOneFill, drift: driftOfOneFill };

/** The decisions of `analyse` on every bin of a log that no setup goes with. */
export function decidedWithoutSetup(
  log: CatchLog,
  given: Partial<AnalysisOptions>,
  { reading, drift: moved }: History,
): readonly DecidedBin[] {
  const about = questioningBy({ log, setup: null, given }, reading, []);
  const options = {
    ...plainOptions({ options: about.options, massUnit: log.massUnit }),
    catchesNeeded: plannedBy(about),
  };
  const questions: DecisiveQuestions<DecisiveAnswers, DecisiveOptions> = {
    optionsOf: () => options,
    delivery,
    deliveryWithoutError,
    outliers,
    catchesNeeded,
    repeatability,
    setting: (meter, today, asked) => settingOfNothing(meter, today, asked.repeatability),
    fieldCheck: () => null,
    drift: moved,
  };
  return about.open.meters.map((_, i) => decidedAlone(about.open.modelOf(i), about, questions));
}
