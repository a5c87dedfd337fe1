import { type LogNames, logNames } from "../data/log-names.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import { suspicionsBeside } from "../data/suspicions.ts";
import type { CatchLog } from "../data/types.ts";
import { OptionError } from "../errors/errors.ts";
import type { HistoryReading } from "../model/history/result.ts";
import { overFills } from "../model/history.ts";
import { type LogIndex, logIndex } from "../model/log-index.ts";
import { type MeterModel, type OpenLog, openLog } from "../model/model.ts";
import type { Caution } from "../results/caution.ts";
import { libraryCautions } from "./library-cautions.ts";
import { type AnalysisOptions, optionsWith, type ToleranceFrom, toleranceFrom } from "./options.ts";
import { modelChoices, questionOptions } from "./resolved-setup.ts";
import { divisionCautions, type ScaleDivision, scaleDivisionOf } from "./scale-division.ts";

/** What the questions about a meter are asked with. */
export interface Questioning {
  /** The meters, each with its model yet to be made. */
  readonly open: OpenLog;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly scaleDivision: ScaleDivision;
  readonly log: CatchLog;
  readonly names: LogNames;
  readonly index: LogIndex;
  readonly setup: Setup | null;
  /** What is suspected of the setup beside the catches. */
  readonly besideSetup: readonly Caution[];
}

/** What is asked about: catches, and what is known besides. */
export interface AskedLog {
  readonly log: CatchLog;
  readonly setup: Setup | null;
  /** Options that count before the setup. */
  readonly given: Partial<AnalysisOptions>;
}

/** @throws OptionError for an option that is unknown or out of range, or when every catch is left out */
export function questioning(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions>,
): Questioning {
  return questioningBy({ log, setup, given }, overFills, suspicionsBeside(setup, log));
}

/**
 * The same with what is not needed of every log given in.
 *
 * @param reading      how the fills of a meter are read one after the other
 * @param besideSetup  what is suspected of the setup beside the catches
 */
export function questioningBy(
  { log, setup, given }: AskedLog,
  reading: HistoryReading,
  besideSetup: readonly Caution[],
): Questioning {
  const scaleDivision = scaleDivisionOf(given.scaleDivisionKg, setup, log);
  const options = optionsWith(given, setup, scaleDivision);
  const open = openLog(log.catches, reading, options, modelChoices(options, setup));
  if (open.meters.length === 0)
    throw new OptionError("leave-out", "every catch", { need: "some-catch-counts", facts: {} });
  const names = logNames(log.catches);
  return {
    open,
    options,
    toleranceFrom: toleranceFrom(given, setup),
    scaleDivision,
    log,
    names,
    index: logIndex(
      { ...log, cautions: [...log.cautions, ...besideSetup, ...(setup?.cautions ?? [])] },
      open.meters,
    ),
    besideSetup,
    setup,
  };
}

/** The model of one bin and product; null where none of its catches counts. */
export function meterModelOf(
  { open }: Questioning,
  wanted: Pick<MeterModel, "bin" | "product">,
): MeterModel | null {
  const place = open.meters.findIndex(
    ({ bin, product }) => bin === wanted.bin && product === wanted.product,
  );
  return place === -1 ? null : open.modelOf(place);
}

export function cautionsOfFile({
  log,
  setup,
  scaleDivision,
  options,
  open,
  besideSetup,
}: Questioning): readonly Caution[] {
  return [
    ...log.cautions,
    ...divisionCautions(scaleDivision),
    ...libraryCautions(options, setup, open.among),
    ...besideSetup,
    ...(setup === null ? [] : checkSetupAgainst(setup, log)),
  ];
}

type Asked = ReturnType<typeof questionOptions>;

/** Without a setup nothing is asked of one meter that is not asked of all. */
const withoutSetup = new WeakMap<Questioning, Asked>();

export function questionsOf(meter: MeterModel, about: Questioning): Asked {
  const known = withoutSetup.get(about);
  if (known !== undefined) return known;
  const { options, toleranceFrom: from, setup, log } = about;
  const asked = questionOptions(
    { options, toleranceFrom: from, setup, massUnit: log.massUnit },
    meter,
  );
  if (setup === null) withoutSetup.set(about, asked);
  return asked;
}
