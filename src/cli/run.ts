import { CommanderError } from "commander";
import { DrawingError, EvencatchError, NumericalError } from "../errors/errors.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { program } from "./program.ts";

/** Runs the command with these arguments and says how it went. Never throws. */
export async function run(args: readonly string[], io: Io): Promise<ExitCode> {
  let exitCode: ExitCode = exitCodes.fine;
  try {
    await program(io, (code) => {
      exitCode = code;
    }).parseAsync([...args], { from: "user" });
    return exitCode;
  } catch (error) {
    return report(error, io);
  }
}

/** Errors that good input must not be able to raise. */
function isOurFault(error: EvencatchError): boolean {
  return error instanceof NumericalError || error instanceof DrawingError;
}

function report(error: unknown, io: Io): ExitCode {
  if (error instanceof CommanderError)
    return error.exitCode === 0 ? exitCodes.fine : exitCodes.badInput;
  if (error instanceof EvencatchError && !isOurFault(error)) {
    io.err(io.errColors.red(error.message));
    return exitCodes.badInput;
  }
  io.err(
    io.errColors.red("Something went wrong inside evencatch; this is a fault of the program."),
  );
  io.err(error instanceof Error ? (error.stack ?? error.message) : String(error));
  return exitCodes.internal;
}
