import { rowsToCsv } from "../data/write-csv.ts";
import { trialPlanOptions } from "../questions/trial-plan/options.ts";
import { type TrialPlan, trialPlan } from "../questions/trial-plan.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { trialPlanSection } from "../report/sections/trial-plan.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
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
  if (products.length < 2) {
    const got = products.length === 0 ? "none" : `only "${products[0]}"`;
    io.err(
      `A trial needs two or more products to compare, such as: evencatch plan wheat barley. Found ${got}.`,
    );
    return exitCodes.badInput;
  }
  const design = trialPlan(trialPlanOptions({ products, ...trialGiven(flags) }));
  if (flags.out !== undefined) {
    const files = { "sheet.csv": rowsToCsv(design.rows) };
    const replace = replaceOf(flags);
    await writeSaying({ command: "plan", folder: flags.out, files, inputs: [], replace }, io);
  }
  io.out(flags.json ? JSON.stringify(design, null, 2) : await inWords(design, flags));
  if (flags.out !== undefined) io.err(`Sheet: ${flags.out}/sheet.csv`);
  return exitCodes.fine;
}

async function inWords(design: TrialPlan, { language, units }: PlanFlags): Promise<string> {
  const words = await wordsFor(language, units);
  const cautions = design.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [...plainBlocks(trialPlanSection(design, words, "plan")), ...cautions].join("\n");
}
