import { rowsToCsv } from "../data/write-csv.ts";
import { trialPlanOptions } from "../questions/trial-plan/options.ts";
import { type TrialPlan, trialPlan } from "../questions/trial-plan.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { safetyStrip } from "../report/sections/safety-strip.ts";
import { trialPlanSection } from "../report/sections/trial-plan.ts";
import { catchSheetFiles, catchSheetOfPlan } from "../report/sheets.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { trialGiven } from "./flags.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";
import { plainBlocks } from "./plain-blocks.ts";

/** Flags that set no option of the plan. */
export interface PlanFlags extends ReplaceFlags {
  readonly out?: string;
  readonly units: UnitSystem;
  readonly language: string;
  readonly json?: boolean;
}

/** `evencatch plan`: a randomised, blocked catch sheet for a trial, and what it can be expected to find. */
export async function planCommand(
  products: readonly string[],
  flags: PlanFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  if (products.length < 2) {
    io.err(words.command.tooFewProducts(products[0] ?? null));
    return exitCodes.badInput;
  }
  const design = trialPlan(trialPlanOptions({ products, ...trialGiven(flags) }));
  if (flags.out !== undefined) {
    const files = {
      "sheet.csv": rowsToCsv(design.rows, { inert: false }),
      ...catchSheetFiles(catchSheetOfPlan(design), words),
    };
    const replace = replaceOf(flags);
    await writeSaying(
      { command: "plan", folder: flags.out, files, inputs: [], replace },
      words,
      io,
    );
  }
  io.out(flags.json ? JSON.stringify(design, null, 2) : inWords(design, words));
  if (flags.out !== undefined) io.err(words.command.sheet(`${flags.out}/sheet.csv`));
  return exitCodes.fine;
}

function inWords(design: TrialPlan, words: Words): string {
  const cautions = design.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [
    ...plainBlocks([safetyStrip(words), ...trialPlanSection(design, words, "plan")]),
    ...cautions,
  ].join("\n");
}
