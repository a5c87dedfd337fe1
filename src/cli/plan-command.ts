import { basename } from "node:path";
import { questioning } from "../analysis/questioning.ts";
import { spreadsForTrial } from "../analysis/trial-spreads.ts";
import { rowsToCsv } from "../data/write-csv.ts";
import { wholeModel } from "../model/model.ts";
import { readCatchesFile } from "../node.ts";
import { trialPlanOptions } from "../questions/trial-plan/options.ts";
import type { FoundSpreads } from "../questions/trial-plan/result.ts";
import { type TrialPlan, trialPlan } from "../questions/trial-plan.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import { safetyStrip } from "../report/sections/safety-strip.ts";
import { trialPlanSection } from "../report/sections/trial-plan.ts";
import { catchSheetFiles, catchSheetOfPlan } from "../report/sheets.ts";
import { known } from "../results/options.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { trialGiven } from "./flags.ts";
import { type ReadFlags, readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";
import { plainBlocks } from "./plain-blocks.ts";
import { setupOfPlan } from "./setup-of-plan.ts";

/** Flags that set no option of the plan. */
export interface PlanFlags extends ReplaceFlags, ReadFlags, SetupFlags {
  readonly from?: string;
  readonly out?: string;
  readonly units: UnitSystem;
  readonly language: string;
  readonly json?: boolean;
}

/**
 * `evencatch plan`: a randomised, blocked catch sheet for a trial, and what it can be expected to find. The setup written
 * beside the sheet says that its catches are a trial, and how it was planned to be judged.
 */
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
  const found = await foundIn(flags, products, words, io);
  const options = trialPlanOptions({
    products,
    // The sheet is in blocks, and so is the comparison of what is caught by it, unless that is not wanted.
    analysis: "blocks",
    ...restingOn(found),
    ...trialGiven(flags),
  });
  const design = trialPlan(options);
  if (flags.out !== undefined) {
    const files = {
      "sheet.csv": rowsToCsv(design.rows),
      "setup.json": setupOfPlan(options),
      ...catchSheetFiles(catchSheetOfPlan(design), words),
    };
    const replace = replaceOf(flags);
    const inputs = flags.from === undefined ? [] : [flags.from];
    await writeSaying({ command: "plan", folder: flags.out, files, inputs, replace }, words, io);
  }
  io.out(flags.json ? JSON.stringify(design, null, 2) : inWords(design, words));
  if (flags.out !== undefined) io.err(words.command.sheet(`${flags.out}/sheet.csv`));
  return exitCodes.fine;
}

/** What the log asked for says of spread and scatter; null: none was. */
async function foundIn(
  flags: PlanFlags,
  products: readonly string[],
  words: Words,
  io: Io,
): Promise<FoundSpreads | null> {
  const { from } = flags;
  if (from === undefined) return null;
  const setup = await setupFor(from, flags, words, io);
  const log = await readCatchesFile(from, readOptions(flags, from, setup));
  const { open, options } = questioning(log, setup, {});
  return spreadsForTrial(
    wholeModel(open),
    products,
    options.comparison.blocks ?? null,
    basename(from),
  );
}

function restingOn(found: FoundSpreads | null) {
  if (found === null) return {};
  const { fillSpread, catchScatter } = found;
  return {
    found,
    ...known({
      fillSpread: fillSpread?.value,
      catchScatter:
        catchScatter === null
          ? null
          : { relative: catchScatter.relative, turns: catchScatter.turns },
    }),
  };
}

function inWords(design: TrialPlan, words: Words): string {
  const cautions = design.cautions.map((found) => `- ${cautionSentence(found, words)}`);
  return [
    ...plainBlocks([safetyStrip(words), ...trialPlanSection(design, words, "plan")]),
    ...cautions,
  ].join("\n");
}
