import { InvalidArgumentError } from "commander";
import { allCautions } from "../analysis/all-cautions.ts";
import { type DecidedBin, decidedLog } from "../analysis/decided-bin.ts";
import { planBeforeAnyCatch, plansForNextFill } from "../analysis/next-fill.ts";
import { type ScaleDivision, scaleDivisionOf } from "../analysis/scale-division.ts";
import { readCatchesTogether } from "../data/read-together.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import type { CatchLog } from "../data/types.ts";
import { readSetupFile } from "../node.ts";
import type { CatchesNeeded } from "../questions/catches-needed.ts";
import { resultJson } from "../report/json.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Caution } from "../results/caution.ts";
import type { FillName } from "../results/fill-name.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { decisionText, groundText } from "./decision-text.ts";
import { type ExitCode, exitCodeOf, exitCodes } from "./exit-codes.ts";
import { setupGiven } from "./flags.ts";
import { type LogFlags, optionsFor, setupFor, togetherOptions } from "./input.ts";
import type { Io } from "./io.ts";
import { sourcesOf } from "./sources.ts";
import { isTypedCatch, readTypedCatches } from "./typed-catches.ts";
import type { TypedSetup } from "./typed-setup.ts";

/** Flags that set no option of the analysis. */
export interface EnoughFlags extends LogFlags {
  readonly detail?: boolean;
  readonly minutes?: number;
  readonly trialBudget?: number;
  readonly turns?: number;
  readonly next?: boolean;
  readonly units: UnitSystem;
  readonly language: string;
  readonly json?: boolean;
}

/** What `enough --json` prints of one bin and product. */
interface EnoughAnswer
  extends Pick<DecidedBin, "decision" | "noDecision" | "answered" | "catchesNeeded"> {
  /** null: planned before any catch. */
  readonly bin: string | null;
  readonly product: string | null;
  readonly fill: FillName | null;
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
    const setup = await withTyped(given, typedSetup, log);
    return { log, setup, readAs: [words.command.readAs(caughtWords(log, words))] };
  }
  const sources = await sourcesOf(args, io);
  const given = await setupFor(args, flags, words, io);
  const options = togetherOptions(flags, args, words, given);
  const log = await readCatchesTogether(sources, options);
  return { log, setup: await withTyped(given, typedSetup, log), readAs: [] };
}

/** Most setups are given in a file or not at all, and need none of what reads typed ones. */
async function withTyped(
  file: Setup | null,
  typed: TypedSetup,
  { catches }: CatchLog,
): Promise<Setup | null> {
  if (Object.keys(typed).length === 0) return file;
  const { withTypedSetup } = await import("./typed-setup.ts");
  return withTypedSetup(file, typed, catches);
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
  const options = await optionsFor(flags, setup);
  if (flags.next)
    return planned(
      plansForNextFill(log, setup, options),
      scaleDivisionOf(options.scaleDivisionKg, setup, log),
      words,
    );
  const analysis = showsEveryFinding(flags, setup)
    ? (await import("../analysis/analyse.ts")).analyse(log, setup, options)
    : decidedLog(log, setup, options);
  const detail = wantsDetail(flags) ? await detailText() : null;
  const texts = analysis.meters.map((answers) =>
    [
      decisionText(answers, analysis, words),
      ...(answers.catchesNeeded === null || detail === null
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

/** Questions that decide nothing are asked where what they found is told: in JSON, and beside what the setup answers. */
function showsEveryFinding({ json }: EnoughFlags, setup: Setup | null): boolean {
  return json === true || (setup !== null && setup.answered.length > 0);
}

/** What only a terminal's tables and the sentences of a plan need. */
async function detailText() {
  const { catchesNeededText } = await import("./catches-needed-text.ts");
  return catchesNeededText;
}

function tell(found: readonly Caution[], words: Words, io: Io): void {
  for (const one of found) io.err(cautionSentence(one, words));
}

async function plan(flags: EnoughFlags, words: Words, io: Io): Promise<Answered> {
  const setup = typeof flags.setup === "string" ? await readSetupFile(flags.setup) : null;
  if (setup !== null) tell(setup.cautions, words, io);
  const given = await optionsFor(flags, setup);
  if (given.library !== undefined) io.err(words.command.libraryWaits);
  return planned(
    [planBeforeAnyCatch(setup, given)],
    scaleDivisionOf(given.scaleDivisionKg, setup, null),
    words,
  );
}

async function planned(
  results: readonly CatchesNeeded[],
  scaleDivision: ScaleDivision,
  words: Words,
): Promise<Answered> {
  const detail = await detailText();
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
