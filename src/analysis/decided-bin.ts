import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { newestFill } from "../model/meters.ts";
import type { MeterModel } from "../model/model.ts";
import type { Delivery } from "../questions/delivery.ts";
import type { Caution } from "../results/caution.ts";
import { known } from "../results/options.ts";
import { type Asking, askingFor } from "./asking.ts";
import { type AnsweredFinding, answeredFindings, type Decision, decide } from "./decision.ts";
import {
  type DecisiveAnswers,
  type DecisiveGround,
  type DecisiveOptions,
  type DecisiveQuestions,
  decisiveAnswers,
  type Found,
} from "./decisive-answers.ts";
import { inFull } from "./in-full.ts";
import type { AnalysisOptions, ToleranceFrom } from "./options.ts";
import { cautionsOfFile, meterModelOf, type Questioning, questioning } from "./questioning.ts";
import type { ScaleDivision } from "./scale-division.ts";

/** Why a meter has no decision. */
export type NoDecision = "another product is in the bin";

/** What to do about one bin and product, with the answers it is decided by. Null: could not be computed. */
export interface DecidedBin extends DecisiveAnswers {
  /** As the catches name it; bin/machine or bin/farm where the log holds several. */
  readonly bin: string;
  /** Left out where the log names none. */
  readonly farm?: string;
  /** Left out where the log names none. */
  readonly machine?: string;
  readonly product: string;
  /** What to do now; null where `noDecision` says why. */
  readonly decision: Decision | null;
  readonly noDecision: NoDecision | null;
  /** Findings that the setup answers, with the notes given there. */
  readonly answered: readonly AnsweredFinding[];
  readonly cautions: readonly Caution[];
}

/** What the decisions of a log are made with, and said with beside their answers. */
export interface DecisionGrounds {
  readonly toleranceFrom: ToleranceFrom;
  /** About the file as a whole; each bin carries its own. */
  readonly cautions: readonly Caution[];
  readonly about: Questioning;
}

/**
 * Reads a log for decisions on its bins one by one, as `analyse` decides them, asking no more than that takes: where an
 * answer is wanted while a finger is still on the key.
 *
 * @param log    catches as read
 * @param setup  as read; null: none
 * @param given  options that count before the setup, as `analyse` takes them; default: none
 * @throws       OptionError as `analyse` does
 */
export function decisionGrounds(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions> = {},
): DecisionGrounds {
  const about = questioning(log, setup, given);
  return { toleranceFrom: about.toleranceFrom, cautions: cautionsOfFile(about), about };
}

/** What to do about one bin and product, and why; null where none of its catches counts. */
export function decidedBin(
  { about }: DecisionGrounds,
  wanted: Pick<DecidedBin, "bin" | "product">,
): DecidedBin | null {
  const meter = meterModelOf(about, wanted);
  return meter === null ? null : decidedAlone(meter, about, inFull);
}

/** The decisions on every bin of a log, and what they are said with. */
export interface DecidedLog {
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly scaleDivision: ScaleDivision;
  readonly meters: readonly DecidedBin[];
  /** About the file as a whole; each bin carries its own. */
  readonly cautions: readonly Caution[];
}

/**
 * What to do about every bin and product of a log, as `analyse` decides it, asking no more than that takes.
 *
 * @param log    catches as read
 * @param setup  as read; null: none
 * @param given  options over it, as for `analyse`
 * @throws       OptionError as `analyse` does
 */
export function decidedLog(
  log: CatchLog,
  setup: Setup | null,
  given: Partial<AnalysisOptions>,
): DecidedLog {
  const about = questioning(log, setup, given);
  const { meters, modelOf } = about.open;
  return {
    options: about.options,
    toleranceFrom: about.toleranceFrom,
    scaleDivision: about.scaleDivision,
    meters: meters.map((_, i) => decidedAlone(modelOf(i), about, inFull)),
    cautions: cautionsOfFile(about),
  };
}

/** What to do about a meter, asking no more than that takes. */
export function decidedAlone<O extends DecisiveOptions>(
  meter: MeterModel,
  about: Questioning,
  questions: DecisiveQuestions<DecisiveAnswers, O>,
): DecidedBin {
  return decidedWith(meter, about, questions, () => ({}));
}

/** Answers about a meter by their names; each may carry findings. */
type Answers<K extends string> = { readonly [Name in K]: Found };

/**
 * A bin decided on, with the answers to further questions, whose findings count as well.
 *
 * @param further  asks them
 */
export function decidedWith<
  O extends DecisiveOptions,
  Further extends Answers<Extract<keyof Further, string>>,
>(
  meter: MeterModel,
  about: Questioning,
  questions: DecisiveQuestions<DecisiveAnswers, O>,
  further: (asking: Asking, meter: MeterModel, today: Delivery, about: Questioning) => Further,
): DecidedBin & Further {
  const asking = askingFor(meter);
  const { decisive, isIn, leftOut } = decisiveAnswers(asking, meter, about, questions);
  const others = further(asking, meter, decisive.delivery, about);
  const cautions = [
    ...leftOut,
    ...cautionsIn(decisive),
    ...cautionsIn(others),
    ...asking.failures(),
  ];
  return {
    ...decidedBy(meter, about, decisive, { isIn, cautions }),
    ...decisive,
    ...others,
    cautions,
  };
}

/** The decision alone, from the same questions asked in brief. */
export function decidedInBrief<A extends DecisiveGround>(
  meter: MeterModel,
  about: Questioning,
  questions: DecisiveQuestions<A>,
) {
  const asking = askingFor(meter);
  const { decisive, isIn, leftOut } = decisiveAnswers(asking, meter, about, questions);
  const cautions = [...leftOut, ...cautionsIn(decisive), ...asking.failures()];
  return {
    ...decidedBy(meter, about, decisive, { isIn, cautions }),
    delivery: decisive.delivery,
    cautions,
  };
}

/** What to do, by the answers and all their findings. */
function decidedBy(
  meter: MeterModel,
  { index, setup }: Questioning,
  { delivery: today, catchesNeeded: needed, setting: toSet }: DecisiveGround,
  { isIn, cautions }: { readonly isIn: boolean; readonly cautions: readonly Caution[] },
): Omit<DecidedBin, keyof DecisiveAnswers | "cautions"> {
  const { bin, place, product } = meter;
  const { farm, machine } = place;
  const ground = {
    delivery: today,
    catchesNeeded: needed,
    setting: toSet,
    about: { place: { farm, machine, bin: place.bin, product }, newest: newestFill(meter) },
    findings: [...index.fileFindings(meter), ...cautions],
    setup,
  };
  return {
    bin,
    ...known({ farm, machine }),
    product,
    decision: isIn ? decide(ground) : null,
    noDecision: isIn ? null : "another product is in the bin",
    answered: answeredFindings(ground),
  };
}

function cautionsIn(answers: object): readonly Caution[] {
  const all: readonly Found[] = Object.values(answers);
  return all.flatMap((answer) => answer?.cautions ?? []);
}
