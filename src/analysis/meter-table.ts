import type { Setup } from "../data/setup.ts";
import type { CatchLog } from "../data/types.ts";
import { catchesNeededInBrief } from "../questions/catches-needed.ts";
import { deliveryInBrief } from "../questions/delivery/in-brief.ts";
import { deliveryWithoutError } from "../questions/delivery/without-error.ts";
import { driftInBrief } from "../questions/drift.ts";
import { outliersInBrief } from "../questions/outliers.ts";
import { repeatabilityInBrief } from "../questions/repeatability.ts";
import type { Caution, CautionCode } from "../results/caution.ts";
import type { Estimate } from "../results/estimate.ts";
import type { FillName } from "../results/fill-name.ts";
import { known } from "../results/options.ts";
import { decidedInBrief, type NoDecision } from "./decided-bin.ts";
import type { Decision } from "./decision.ts";
import type { DecisiveGround, DecisiveQuestions } from "./decisive-answers.ts";
import { withSetup } from "./in-full.ts";
import type { AnalysisOptions, ToleranceFrom } from "./options.ts";
import { cautionsOfFile, questioning } from "./questioning.ts";

/** One meter in a line: what is in the bin, how well its delivery is known, and what to do. */
export interface MeterRow {
  /** As the catches name it; bin/machine or bin/farm where the log holds several. */
  readonly bin: string;
  /** Left out where the log names none. */
  readonly farm?: string;
  /** Left out where the log names none. */
  readonly machine?: string;
  readonly product: string;
  /** The fill in the bin now. */
  readonly fill: FillName;
  readonly takenAt: string | null;
  /** Of this fill, and fills of this meter. */
  readonly catches: number;
  readonly fills: number;
  readonly delivery: Estimate<"kg/turn">;
  /** Of its interval, as a fraction; null: unknown. */
  readonly halfWidth: number | null;
  /** As the full analysis decides; null where `noDecision` says why. */
  readonly decision: Pick<Decision, "action" | "catches" | "setting" | "reasons"> | null;
  readonly noDecision: NoDecision | null;
  /** Findings about the meter, each once. */
  readonly findings: readonly CautionCode[];
}

/** What to do about every meter of a log. */
export interface MeterTable {
  readonly kind: "meter-table";
  readonly source: string;
  readonly options: AnalysisOptions;
  readonly toleranceFrom: ToleranceFrom;
  readonly input: { readonly catches: number; readonly fills: number; readonly meters: number };
  readonly meters: readonly MeterRow[];
  /** About the file as a whole. */
  readonly cautions: readonly Caution[];
}

const inBrief: DecisiveQuestions<DecisiveGround> = {
  ...withSetup,
  delivery: deliveryInBrief,
  deliveryWithoutError,
  outliers: outliersInBrief,
  catchesNeeded: catchesNeededInBrief,
  repeatability: repeatabilityInBrief,
  drift: driftInBrief,
};

/**
 * Which meters of a long log need a look, and which can be set? Delivery, interval and decision of every meter, the same as
 * `analyse` has them, without what is drawn or told beside them: for logs of thousands of meters.
 *
 * @param log      catches as read
 * @param setup    as read; null: none
 * @param options  as of `analyse`
 * @returns        a row for each bin and product, in the order of the log
 * @throws         OptionError as `analyse` does
 */
export function meterTable(
  log: CatchLog,
  setup: Setup | null = null,
  options: Partial<AnalysisOptions> = {},
): MeterTable {
  const about = questioning(log, setup, options);
  const { meters, modelOf } = about.open;
  return {
    kind: "meter-table",
    source: log.source,
    options: about.options,
    toleranceFrom: about.toleranceFrom,
    input: {
      catches: log.catches.length,
      fills: meters.reduce((count, { fills }) => count + fills.length, 0),
      meters: meters.length,
    },
    meters: meters.map((_, place) => {
      const meter = modelOf(place);
      const { decision, noDecision, delivery, cautions } = decidedInBrief(meter, about, inBrief);
      const { farm, machine } = meter.place;
      return {
        bin: meter.bin,
        ...known({ farm, machine }),
        product: meter.product,
        fill: delivery.fill,
        takenAt: delivery.takenAt,
        catches: delivery.input.catches,
        fills: meter.fills.length,
        delivery: delivery.estimate,
        halfWidth: delivery.halfWidth,
        decision: decision === null ? null : inALine(decision),
        noDecision,
        findings: [...new Set(cautions.map(({ code }) => code))],
      };
    }),
    cautions: cautionsOfFile(about),
  };
}

function inALine({ action, catches, setting, reasons }: Decision): MeterRow["decision"] {
  return { action, catches, setting, reasons };
}
