import { newestFillLeftOut } from "../analysis/newest-fill-left-out.ts";
import { questioning } from "../analysis/questioning.ts";
import { divisionCautions, scaleDivisionOf } from "../analysis/scale-division.ts";
import type { CatchCheck } from "../data/read-catches.ts";
import { checkCatchesTogether } from "../data/read-together.ts";
import type { Setup } from "../data/setup.ts";
import { checkSetupAgainst } from "../data/setup-against.ts";
import { suspicionsBeside } from "../data/suspicions.ts";
import type { CatchLog } from "../data/types.ts";
import { checkCatchesFile } from "../node.ts";
import { cautionSentence } from "../report/sections/cautions.ts";
import type { Caution } from "../results/caution.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import {
  type ReadFlags,
  readOptions,
  type SetupFlags,
  setupFor,
  togetherOptions,
} from "./input.ts";
import type { Io } from "./io.ts";
import { sourcesOf, standardInput } from "./sources.ts";

export interface CheckFlags extends ReadFlags, SetupFlags {
  readonly language: string;
  readonly json?: boolean;
}

/** `evencatch check`: every problem of a file, or what is in it. Writes nothing. */
export async function checkCommand(path: string, flags: CheckFlags, io: Io): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const { problems } = words;
  const setup = await setupFor(path, flags, words, io);
  const check = await checked(path, flags, { setup, words, io });
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
    io.out(`${log.source}: ${problems.none(log.catches.length)}`);
    for (const text of texts) io.out(`${io.outColors.yellow(problems.lookAt)} ${text}`);
  }
  return exitCodes.fine;
}

/** A file that cannot be opened is one of its problems; standard input always can. */
async function checked(
  path: string,
  flags: CheckFlags,
  { setup, words, io }: { readonly setup: Setup | null; readonly words: Words; readonly io: Io },
): Promise<CatchCheck> {
  if (path !== standardInput) return checkCatchesFile(path, readOptions(flags, path, setup));
  const options = togetherOptions(flags, [path], words, setup);
  return checkCatchesTogether(await sourcesOf([path], io), options);
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
