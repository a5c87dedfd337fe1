import { access, mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { createColors } from "picocolors";
import { OptionError } from "../errors/errors.ts";

/** Where a command speaks: answers on stdout, everything else on stderr. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Colours of stdout and stderr; plain when it is no terminal or NO_COLOR is set. */
  readonly outColors: Colors;
  readonly errColors: Colors;
}

type Colors = ReturnType<typeof createColors>;

export function terminalIo(): Io {
  // A reader that has seen enough (`| head`) closes the pipe; that is no fault of anybody's.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });
  const plain = process.env.NO_COLOR !== undefined && process.env.NO_COLOR !== "";
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(`${text}\n`),
    outColors: createColors(process.stdout.isTTY === true && !plain),
    errColors: createColors(process.stderr.isTTY === true && !plain),
  };
}

/** Writes files below a folder, making folders as needed. Everything is computed before the first byte is written. */
export async function writeFiles(
  folder: string,
  files: Readonly<Record<string, string>>,
): Promise<void> {
  for (const [name, text] of Object.entries(files)) {
    const path = join(folder, name);
    try {
      await mkdir(dirname(path), { recursive: true });
      await writeFile(path, text);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw new OptionError("folder", folder, `a folder that can be written to (${why})`);
    }
  }
}

/** Nothing a person wrote into a sheet may be lost. Throws OptionError when one of the files is there. */
export async function refuseOverwriting(folder: string, names: readonly string[]): Promise<void> {
  for (const name of names) {
    const path = join(folder, name);
    const exists = await access(path).then(
      () => true,
      () => false,
    );
    if (exists)
      throw new OptionError("dir", folder, `a folder without ${name}, or --force to overwrite it`);
  }
}
