import { resolveOptions } from "../analysis/options.ts";
import { planningOptions } from "../analysis/planning-options.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import { fitModel, type MeterModel } from "../model/model.ts";
import { readCatchesFile, readSetupFile } from "../node.ts";
import { catchesNeededOptions } from "../questions/catches-needed/options.ts";
import type { CatchesNeededOptions } from "../questions/catches-needed/result.ts";
import { type CatchesNeeded, catchesNeeded } from "../questions/catches-needed.ts";
import { catchesNeededSection } from "../report/sections/catches-needed.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { plainBlocks } from "./plain-blocks.ts";

export interface EnoughFlags extends SetupFlags {
  readonly level?: number;
  readonly tolerance?: number;
  readonly assurance?: number;
  readonly turns?: number;
  readonly next?: boolean;
  readonly minutes?: number;
  readonly minutesPerCatch: number;
  readonly turnsPerMinute: number;
  readonly longestTurns: number;
  readonly trialBudget?: number;
  readonly costPerFill: number;
  readonly costPerCatch: number;
  readonly costPerTurn: number;
  readonly sheet?: string;
  readonly units: UnitSystem;
  readonly language: string;
  readonly json?: boolean;
}

/** `evencatch enough`: whether today's catches are enough, or how many to plan when there are none yet. */
export async function enoughCommand(
  path: string | undefined,
  flags: EnoughFlags,
  io: Io,
): Promise<ExitCode> {
  const words = wordsFor(flags.language, flags.units);
  const results = path === undefined ? [await plan(flags)] : await answers(path, flags, words, io);
  io.out(
    flags.json
      ? JSON.stringify(results, null, 2)
      : results.map((result) => inWords(result, words)).join("\n\n"),
  );
  return exitCodes.fine;
}

async function answers(
  path: string,
  flags: EnoughFlags,
  words: Words,
  io: Io,
): Promise<CatchesNeeded[]> {
  const log = await readCatchesFile(path, readOptions(flags));
  const setup = await setupFor(path, flags, io);
  if (setup !== null)
    for (const found of checkSetupAgainst(setup, log)) io.err(cautionSentence(found, words));
  const model = fitModel(log.catches, modelOptions(flags, setup));
  return model.meters.map((meter: MeterModel) => {
    const { catchesNeeded: fromSetup } = planningOptions(meter, model.options, setup);
    return catchesNeeded(meter, { ...fromSetup, ...chosen(flags) });
  });
}

async function plan(flags: EnoughFlags): Promise<CatchesNeeded> {
  const setup = typeof flags.setup === "string" ? await readSetupFile(flags.setup) : null;
  return catchesNeeded(null, catchesNeededOptions(modelOptions(flags, setup), chosen(flags)));
}

function modelOptions(flags: EnoughFlags, setup: Parameters<typeof resolveOptions>[1]) {
  const { level, tolerance, scaleDivisionKg } = resolveOptions(
    {
      ...(flags.level === undefined ? {} : { level: flags.level }),
      ...(flags.tolerance === undefined ? {} : { tolerance: flags.tolerance }),
    },
    setup,
  );
  return { level, tolerance, scaleDivisionKg };
}

function chosen(flags: EnoughFlags): Partial<Omit<CatchesNeededOptions, "level" | "tolerance">> {
  return {
    ...(flags.assurance === undefined ? {} : { assurance: flags.assurance }),
    ...(flags.turns === undefined ? {} : { turnsPerCatch: flags.turns }),
    ...(flags.next ? { fill: "next" as const } : {}),
    ...(flags.minutes === undefined
      ? {}
      : {
          time: {
            minutes: flags.minutes,
            minutesPerCatch: flags.minutesPerCatch,
            turnsPerMinute: flags.turnsPerMinute,
            longestTurns: flags.longestTurns,
            proportionalScatter: 0,
          },
        }),
    ...(flags.trialBudget === undefined
      ? {}
      : {
          trial: {
            budget: flags.trialBudget,
            perFill: flags.costPerFill,
            perCatch: flags.costPerCatch,
            perTurn: flags.costPerTurn,
            perExtraLevel: 0,
          },
        }),
  };
}

function inWords(result: CatchesNeeded, words: Words): string {
  const cautions = result.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [...plainBlocks(catchesNeededSection(result, words, "enough")), ...cautions].join("\n");
}
