import { CommanderError, InvalidArgumentError } from "commander";
import {
  DataError,
  DrawingError,
  EvencatchError,
  NumericalError,
  OptionError,
} from "../errors/errors.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { withWholeValues } from "./bare-tables.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { languageIn } from "./flags.ts";
import { inertIo } from "./inert.ts";
import { type Io, terminalIo } from "./io.ts";
import { program } from "./program.ts";

/** Runs the command with these arguments and says how it went. Never throws. */
export async function run(args: readonly string[], bare: Io): Promise<ExitCode> {
  const io = inertIo(bare);
  let exitCode: ExitCode = exitCodes.fine;
  const words = await wordsFor(languageIn(args), "metric");
  try {
    await program(io, words, (code) => {
      exitCode = code;
    }).parseAsync([...withWholeValues(args)], { from: "user" });
    return exitCode;
  } catch (error) {
    return report(error, words, io);
  }
}

/** The same, speaking to the terminal. */
export function runInTerminal(args: readonly string[]): Promise<ExitCode> {
  return run(args, terminalIo());
}

/** Errors that good input must not be able to raise. */
function isOurFault(error: EvencatchError): boolean {
  return error instanceof NumericalError || error instanceof DrawingError;
}

function saidOf(error: EvencatchError, { problems }: Words): string {
  if (error instanceof DataError) return problems.ofFile(error.source, error.issues);
  return error instanceof OptionError ? problems.option(error) : error.message;
}

function report(error: unknown, words: Words, io: Io): ExitCode {
  // What commander refuses it has said itself; what a command refuses of its arguments it has not.
  if (error instanceof InvalidArgumentError) {
    io.err(io.errColors.red(error.message));
    return exitCodes.badInput;
  }
  if (error instanceof CommanderError)
    return error.exitCode === 0 ? exitCodes.fine : exitCodes.badInput;
  if (error instanceof EvencatchError && !isOurFault(error)) {
    io.err(io.errColors.red(saidOf(error, words)));
    return exitCodes.badInput;
  }
  io.err(io.errColors.red(words.command.ownFault));
  io.err(error instanceof Error ? (error.stack ?? error.message) : String(error));
  return exitCodes.internal;
}
