import { InvalidArgumentError } from "commander";
import { allCautions } from "../analysis/all-cautions.ts";
import { analyse, type MeterAnswers } from "../analysis/analyse.ts";
import type { Action } from "../analysis/decision.ts";
import { planBeforeAnyCatch, plansForNextFill } from "../analysis/next-fill.ts";
import { type ScaleDivision, scaleDivisionOf } from "../analysis/scale-division.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { CatchLog } from "../data/types.ts";
import { readCatchesFile, readSetupFile } from "../node.ts";
import type { CatchesNeeded } from "../questions/catches-needed.ts";
import { resultJson } from "../report/json.ts";
import { catchesNeededSection } from "../report/sections/catches-needed.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Caution } from "../results/caution.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { decisionText, groundText } from "./answer-table.ts";
import { type ExitCode, exitCodeOf, exitCodes } from "./exit-codes.ts";
import { analysisGiven, setupGiven } from "./flags.ts";
import { type LibraryFlags, libraryFor, readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { plainBlocks } from "./plain-blocks.ts";
import { isTypedCatch, readTypedCatches } from "./typed-catches.ts";
import { withTypedSetup } from "./typed-setup.ts";

/** Flags that set no option of the analysis. */
export interface EnoughFlags extends SetupFlags, LibraryFlags {
  readonly detail?: boolean;
  readonly minutes?: number;
  readonly trialBudget?: number;
  readonly turns?: number;
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
  catches: readonly string[],
  flags: EnoughFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const { answers, scaleDivision, text, exitCode } =
    catches.length === 0
      ? await plan(flags, words, io)
      : await decisions(await asked(catches, flags, words, io), flags, words, io);
  io.out(flags.json ? resultJson({ kind: "enough", scaleDivision, answers }, words) : text);
  return exitCode;
}

interface Answered {
  readonly scaleDivision: ScaleDivision;
  readonly answers: readonly EnoughAnswer[];
  readonly text: string;
  readonly exitCode: ExitCode;
}

/** Catches and setup that the command was given, and what it read where nobody can look it up. */
interface Asked {
  readonly log: CatchLog;
  readonly setup: Setup | null;
  readonly readAs: readonly string[];
}

async function asked(
  args: readonly string[],
  flags: EnoughFlags,
  words: Words,
  io: Io,
): Promise<Asked> {
  const { needed } = words.usage;
  const file = args.find((argument) => !isTypedCatch(argument));
  const typed = args.find(isTypedCatch);
  if (file !== undefined && typed !== undefined)
    throw new InvalidArgumentError(needed.typedAndFile({ typed, file }));
  const typedSetup = setupGiven(flags);
  if (file === undefined) {
    const unit = flags.units === "us" ? "lb" : "kg";
    const log = await readTypedCatches(args, { turns: flags.turns, unit }, needed);
    const given = typeof flags.setup === "string" ? await readSetupFile(flags.setup) : null;
    const setup = withTypedSetup(given, typedSetup, log.catches);
    return { log, setup, readAs: [words.command.readAs(caughtWords(log, words))] };
  }
  if (args.length > 1) throw new InvalidArgumentError(needed.typedCatch(file));
  const log = await readCatchesFile(file, readOptions(flags));
  const setup = withTypedSetup(await setupFor(file, flags, words, io), typedSetup, log.catches);
  return { log, setup, readAs: [] };
}

/** Who asks for a plan of time or money wants to see it. */
function wantsDetail({ detail, minutes, trialBudget }: EnoughFlags): boolean {
  return detail === true || minutes !== undefined || trialBudget !== undefined;
}

function caughtWords({ catches }: CatchLog, { format }: Words) {
  return catches.map(({ turns, netKg }) => ({
    turns: format.plain(turns),
    mass: format.value(netKg, "mass"),
  }));
}

/** The decisions of a report on the same catches; what stands behind them, where it was asked for. */
async function decisions(
  { log, setup, readAs }: Asked,
  flags: EnoughFlags,
  words: Words,
  io: Io,
): Promise<Answered> {
  if (setup !== null) tell(checkSetupAgainst(setup, log), words, io);
  const options = { ...analysisGiven(flags), ...(await libraryFor(flags, setup)) };
  if (flags.next)
    return planned(
      plansForNextFill(log, setup, options),
      scaleDivisionOf(options.scaleDivisionKg, setup, log),
      words,
    );
  const analysis = analyse(log, setup, options);
  const texts = analysis.meters.map((answers) =>
    [
      decisionText(answers, analysis, words),
      ...(answers.catchesNeeded === null || !wantsDetail(flags)
        ? []
        : [detail(answers.catchesNeeded, words, answers.decision?.action)]),
    ].join("\n"),
  );
  return {
    scaleDivision: analysis.scaleDivision,
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
    text: [...readAs, ...texts, groundText(analysis, words)].join("\n\n"),
    exitCode: exitCodeOf(allCautions(analysis)),
  };
}

function tell(found: readonly Caution[], words: Words, io: Io): void {
  for (const one of found) io.err(cautionSentence(one, words));
}

async function plan(flags: EnoughFlags, words: Words, io: Io): Promise<Answered> {
  const setup = typeof flags.setup === "string" ? await readSetupFile(flags.setup) : null;
  if (setup !== null) tell(setup.cautions, words, io);
  const borrowed = await libraryFor(flags, setup);
  if (borrowed.library !== undefined) io.err(words.command.libraryWaits);
  const given = { ...analysisGiven(flags), ...borrowed };
  return planned(
    [planBeforeAnyCatch(setup, given)],
    scaleDivisionOf(given.scaleDivisionKg, setup, null),
    words,
  );
}

function planned(
  results: readonly CatchesNeeded[],
  scaleDivision: ScaleDivision,
  words: Words,
): Answered {
  const division = words.decision.division(scaleDivision);
  return {
    scaleDivision,
    answers: results.map((result) => ({
      bin: result.bin,
      product: result.product,
      fill: result.fill,
      decision: null,
      noDecision: null,
      answered: [],
      catchesNeeded: result,
    })),
    text: [
      ...results.map((result) => detail(result, words)),
      ...(division === null ? [] : [division]),
    ].join("\n\n"),
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
