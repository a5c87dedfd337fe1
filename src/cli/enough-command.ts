import { allCautions } from "../analysis/all-cautions.ts";
import { analyse, type MeterAnswers } from "../analysis/analyse.ts";
import type { Action } from "../analysis/decision.ts";
import { planBeforeAnyCatch, plansForNextFill } from "../analysis/next-fill.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import { readCatchesFile, readSetupFile } from "../node.ts";
import type { CatchesNeeded } from "../questions/catches-needed.ts";
import { resultJson } from "../report/json.ts";
import { catchesNeededSection } from "../report/sections/catches-needed.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Caution } from "../results/caution.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { decisionText, toleranceText } from "./answer-table.ts";
import { type ExitCode, exitCodeOf, exitCodes } from "./exit-codes.ts";
import { analysisGiven } from "./flags.ts";
import { readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { plainBlocks } from "./plain-blocks.ts";

/** Flags that set no option of the analysis. */
export interface EnoughFlags extends SetupFlags {
  readonly next?: boolean;
  readonly sheet?: string;
  readonly units: UnitSystem;
  readonly language: string;
  readonly json?: boolean;
}

/** What `enough --json` prints of one bin and product. */
interface EnoughAnswer
  extends Pick<MeterAnswers, "decision" | "noDecision" | "answered" | "catchesNeeded"> {
  /** null: planned before any catch. */
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: number | null;
}

/** `evencatch enough`: whether today's catches are enough, or how many to plan when there are none yet. */
export async function enoughCommand(
  path: string | undefined,
  flags: EnoughFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const { answers, text, exitCode } =
    path === undefined ? await plan(flags, words, io) : await decisions(path, flags, words, io);
  io.out(flags.json ? resultJson({ kind: "enough", answers }, words) : text);
  return exitCode;
}

interface Answered {
  readonly answers: readonly EnoughAnswer[];
  readonly text: string;
  readonly exitCode: ExitCode;
}

/** The decisions of a report on the same file, and what stands behind the number of catches. */
async function decisions(
  path: string,
  flags: EnoughFlags,
  words: Words,
  io: Io,
): Promise<Answered> {
  const log = await readCatchesFile(path, readOptions(flags));
  const setup = await setupFor(path, flags, words, io);
  if (setup !== null) tell(checkSetupAgainst(setup, log), words, io);
  const options = analysisGiven(flags);
  if (flags.next) return planned(plansForNextFill(log, setup, options), words);
  const analysis = analyse(log, setup, options);
  const texts = analysis.meters.map((answers) =>
    [
      decisionText(answers, analysis, words),
      ...[words.delivery.twoLines(answers.delivery)].filter((line) => line !== null),
      ...(answers.catchesNeeded === null
        ? []
        : [detail(answers.catchesNeeded, words, answers.decision?.action)]),
    ].join("\n"),
  );
  return {
    answers: analysis.meters.map(
      ({ bin, product, delivery, decision, noDecision, answered, catchesNeeded: needed }) => ({
        bin,
        product,
        fill: delivery.fill,
        decision,
        noDecision,
        answered,
        catchesNeeded: needed,
      }),
    ),
    text: [...texts, toleranceText(analysis, words)].join("\n\n"),
    exitCode: exitCodeOf(allCautions(analysis)),
  };
}

function tell(found: readonly Caution[], words: Words, io: Io): void {
  for (const one of found) io.err(cautionSentence(one, words));
}

async function plan(flags: EnoughFlags, words: Words, io: Io): Promise<Answered> {
  const setup = typeof flags.setup === "string" ? await readSetupFile(flags.setup) : null;
  if (setup !== null) tell(setup.cautions, words, io);
  return planned([planBeforeAnyCatch(setup, analysisGiven(flags))], words);
}

function planned(results: readonly CatchesNeeded[], words: Words): Answered {
  return {
    answers: results.map((result) => ({
      bin: result.bin,
      product: result.product,
      fill: result.fill,
      decision: null,
      noDecision: null,
      answered: [],
      catchesNeeded: result,
    })),
    text: results.map((result) => detail(result, words)).join("\n\n"),
    exitCode: exitCodes.fine,
  };
}

function detail(result: CatchesNeeded, words: Words, action?: Action): string {
  const cautions = result.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [
    ...plainBlocks(catchesNeededSection(result, words, "enough", null, action)),
    ...cautions,
  ].join("\n");
}
