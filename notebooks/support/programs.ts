import { spawnSync } from "node:child_process";

/** Languages that a cell may ask beside its own. A cell that does is tagged with the name. */
export type ProgramName = "R" | "pandas";

interface Program {
  /** What to install where it is missing. */
  readonly needs: string;
  /** The first on the path may lack the packages that the system's has. */
  readonly commands: readonly string[];
  /** What stands before code on the command line. */
  readonly flags: readonly string[];
  /** Fails without the packages. */
  readonly probe: string;
}

export const programs: Readonly<Record<ProgramName, Program>> = {
  R: {
    needs: "R with jsonlite",
    commands: ["Rscript"],
    flags: ["--vanilla", "-e"],
    probe: 'stopifnot(requireNamespace("jsonlite", quietly = TRUE))',
  },
  pandas: {
    needs: "python3 with pandas",
    commands: ["python3", "/usr/bin/python3"],
    flags: ["-c"],
    probe: "import pandas",
  },
};

const found = new Map<ProgramName, string | null>();

/** The command of a language with its packages, looked for once; null: not on this machine. */
export function commandOf(name: ProgramName): string | null {
  const known = found.get(name);
  if (known !== undefined) {
    return known;
  }
  const { commands, probe } = programs[name];
  const command = commands.find((one) => started(name, one, probe).status === 0) ?? null;
  found.set(name, command);
  return command;
}

/**
 * What code of another language prints, without the space at its end.
 *
 * @param command  that runs it; null: there is none
 * @returns        a sentence that says what is missing, where there is none
 * @throws         Error with what the language says, where the code fails
 */
export function printedBy(name: ProgramName, code: string, command = commandOf(name)): string {
  if (command === null) {
    return `Skipped: ${programs[name].needs} is not on this machine.`;
  }
  const { status, stdout, stderr, error } = started(name, command, code);
  if (status !== 0) {
    throw new Error(`${command}: ${error?.message ?? stderr.trim()}`);
  }
  return stdout.trimEnd();
}

function started(name: ProgramName, command: string, code: string) {
  // Modules of the notebooks' own folders are not to leave compiled files there.
  const env = { ...process.env, PYTHONDONTWRITEBYTECODE: "1" };
  return spawnSync(command, [...programs[name].flags, code], { encoding: "utf8", env });
}
