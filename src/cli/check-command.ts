import { newestFillLeftOut } from "../analysis/newest-fill-left-out.ts";
import { questioning } from "../analysis/questioning.ts";
import { divisionCautions, scaleDivisionOf } from "../analysis/scale-division.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import { suspicionsBeside } from "../data/suspicions.ts";
import type { CatchLog } from "../data/types.ts";
import { checkCatchesFile } from "../node.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Caution } from "../results/caution.ts";
import { wordsFor } from "../wording/languages.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { type ReadFlags, readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";

export interface CheckFlags extends ReadFlags, SetupFlags {
  readonly language: string;
  readonly json?: boolean;
}

/** `evencatch check`: every problem of a file, or what is in it. Writes nothing. */
export async function checkCommand(path: string, flags: CheckFlags, io: Io): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const { problems } = words;
  const setup = await setupFor(path, flags, words, io);
  const check = await checkCatchesFile(path, readOptions(flags, path, setup));
  if (!check.ok) {
    const issues = check.issues.map((issue) => ({ ...issue, text: problems.text(issue) }));
    if (flags.json) io.out(JSON.stringify({ ok: false, issues }, null, 2));
    else for (const text of problems.grouped(check.issues)) io.err(text);
    return exitCodes.badInput;
  }
  const { log } = check;
  const found = checkFindings(log, setup);
  const texts = found.map((one) => cautionSentence(one, words));
  if (flags.json) {
    const cautions = found.map((one, i) => ({ ...one, text: texts[i] }));
    io.out(JSON.stringify({ ok: true, catches: log.catches.length, cautions }, null, 2));
  } else {
    io.out(`${path}: ${problems.none(log.catches.length)}`);
    for (const text of texts) io.out(`${io.outColors.yellow(problems.lookAt)} ${text}`);
  }
  return exitCodes.fine;
}

/** What is worth a word about a file that can be used, as a report has it. */
export function checkFindings(log: CatchLog, setup: Setup | null): readonly Caution[] {
  return [
    ...log.cautions,
    ...divisionCautions(scaleDivisionOf(null, setup, log)),
    ...suspicionsBeside(setup, log),
    ...newestFillsLeftOut(log, setup),
    ...(setup === null ? [] : checkSetupAgainst(setup, log)),
  ];
}

/** Without a catch that counts there is nothing to be in the bin. */
function newestFillsLeftOut(log: CatchLog, setup: Setup | null): readonly Caution[] {
  if (log.catches.every(({ leftOut }) => leftOut !== null)) return [];
  const { open, index } = questioning(log, setup, {});
  return open.meters.flatMap((meter) => newestFillLeftOut(meter, index.leftOutSince(meter)));
}
