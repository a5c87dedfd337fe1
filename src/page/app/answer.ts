import {
  type DecidedBin,
  type DecisionGrounds,
  decidedBin,
  decisionGrounds,
} from "../../analysis/decided-bin.ts";
import { planBeforeAnyCatch, plansForNextFill } from "../../analysis/next-fill.ts";
import { meterModelOf, questionsOf } from "../../analysis/questioning.ts";
import { checkEntered, checkTyped } from "../../data/read-text.ts";
import type { Setup } from "../../data/setup.ts";
import type { CatchLog } from "../../data/types.ts";
import type { DataIssue } from "../../errors/data-issue.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import { type Cost, cost } from "../../questions/cost.ts";
import type { Given } from "../given.ts";
import { type Cells, csvOf, type PageRow } from "./cells.ts";
import { catchesIn, type PageBin, type PageLog } from "./log.ts";

/** The answer about one bin; everything in it is an answer of the library. */
export interface BinAnswer {
  readonly bin: PageBin;
  /** Catches of the fill that is in the bin. */
  readonly catches: readonly PageRow[];
  /** Null before the first catch of the fill, or where every catch of the bin is left out. */
  readonly answers: DecidedBin | null;
  /** What the fill is likely to need, before its first catch. */
  readonly plan: CatchesNeeded | null;
}

export interface PageAnswers {
  /** The answer about a bin of the log, worked out when it is asked for first, so that the bin in sight need not wait. */
  readonly of: (bin: PageBin) => BinAnswer;
  /** Null before the first catch that counts. */
  readonly grounds: DecisionGrounds | null;
  /** Why the catches cannot be read; empty as a rule, since each was checked when it came. */
  readonly issues: readonly DataIssue[];
}

/** The name of the file of catches, under which they are read too. */
export const fileName = "catches.csv";

/** The catches as the reader reads the file that they leave in. */
export function readRows(rows: readonly PageRow[]) {
  return checkTyped({ name: fileName, text: csvOf(rows) });
}

/** One catch by itself, refused in the words for a field; it gets its number when it is taken. */
export function checkEntry(cells: Cells) {
  return checkEntered({ ...cells, catch: "1" }, "catch");
}

/**
 * The answers about the bins of the log, from the file of catches that the log would leave as.
 *
 * @param setup    as typed and given; null: none
 * @param library  meters that lend; undefined: none
 */
export function answersOf(
  log: PageLog,
  setup: Setup | null,
  library: Given["library"] = undefined,
): PageAnswers {
  const read = log.rows.length === 0 ? null : readRows(log.rows);
  const file =
    read?.ok && read.value.catches.some(({ leftOut }) => leftOut === null) ? read.value : null;
  const grounds = file === null ? null : decisionGrounds(file, setup, library);
  const known = new Map<PageBin, BinAnswer>();
  return {
    grounds,
    issues: read === null || read.ok ? [] : read.issues,
    of: (bin) => {
      const answer = known.get(bin) ?? answerOf(bin, log, { file, grounds, setup, library });
      known.set(bin, answer);
      return answer;
    },
  };
}

function answerOf(
  bin: PageBin,
  log: PageLog,
  about: {
    readonly file: CatchLog | null;
    readonly grounds: DecisionGrounds | null;
    readonly setup: Setup | null;
    readonly library: Given["library"];
  },
): BinAnswer {
  const catches = catchesIn(log, bin);
  const { grounds } = about;
  const answers = catches.length === 0 || grounds === null ? null : decidedBin(grounds, bin);
  return { bin, catches, answers, plan: answers === null ? planOf(bin, about) : null };
}

function planOf(
  { bin, product }: PageBin,
  {
    file,
    setup,
    library,
  }: {
    readonly file: CatchLog | null;
    readonly setup: Setup | null;
    readonly library: Given["library"];
  },
): CatchesNeeded {
  const plans = file === null ? [] : plansForNextFill(file, setup, library);
  return (
    plans.find((plan) => plan.bin === bin && plan.product === product) ??
    planBeforeAnyCatch(setup, library)
  );
}

/**
 * What catches cost and save in a bin, for after the answer is on the screen: it takes longer, and none of its findings can
 * ask for a look or a catch.
 */
export function costOf({ bin, product }: PageBin, { grounds }: PageAnswers): Cost | null {
  const about = grounds?.about;
  const meter = about === undefined ? null : meterModelOf(about, { bin, product });
  if (about === undefined || meter === null) return null;
  return cost(meter, questionsOf(meter, about).cost);
}
