import { type LogNames, logNames } from "../data/log-names.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { CatchLog } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import { fitModel, type MeterModel, type Model } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";
import { libraryCautions } from "./library-cautions.ts";
import {
  type AnalysisOptions,
  resolveOptions,
  type ToleranceFrom,
  toleranceFrom,
} from "./options.ts";
import { modelChoices, questionOptions } from "./resolved-setup.ts";
import { divisionCautions, type ScaleDivision, scaleDivisionOf } from "./scale-division.ts";

/** What the questions about a meter are asked with. */
export interface Questioning {
  readonly model: Model;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly scaleDivision: ScaleDivision;
  readonly log: CatchLog;
  readonly names: LogNames;
  readonly setup: Setup | null;
}

/** @throws OptionError for an option that is unknown or out of range, or when every catch is left out */
export function questioning(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions>,
): Questioning {
  const options = resolveOptions(given, setup, log);
  const model = fitModel(log.catches, options, modelChoices(options, setup));
  if (model.meters.length === 0)
    throw new OptionError("leave-out", "every catch", "such that at least one catch counts");
  return {
    model,
    options,
    toleranceFrom: toleranceFrom(given, setup),
    scaleDivision: scaleDivisionOf(given.scaleDivisionKg, setup, log),
    log,
    names: logNames(log.catches),
    setup,
  };
}

export function cautionsOfFile({
  log,
  setup,
  scaleDivision,
  options,
  model,
}: Questioning): readonly Caution[] {
  return [
    ...log.cautions,
    ...divisionCautions(scaleDivision),
    ...libraryCautions(options, setup, model),
    ...(setup === null ? [] : checkSetupAgainst(setup, log)),
  ];
}

export function questionsOf(
  meter: MeterModel,
  { options, toleranceFrom: from, setup, log }: Questioning,
) {
  return questionOptions({ options, toleranceFrom: from, setup, massUnit: log.massUnit }, meter);
}
