import { createColors } from "picocolors";
import { limits } from "../data/limits.ts";
import { exitCodes } from "./exit-codes.ts";

/** Where a command speaks: answers on stdout, everything else on stderr. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Standard input, which breaks off above what is read of any file; left out: nobody feeds it. */
  readonly stdin?: () => Promise<Uint8Array>;
  /** Colours of stdout and stderr; plain when it is no terminal or NO_COLOR is set. */
  readonly outColors: Colors;
  readonly errColors: Colors;
}

type Colors = ReturnType<typeof createColors>;

export function terminalIo(): Io {
  // A reader that has seen enough (`| head`) closes the pipe; that is no fault of anybody's.
  for (const stream of [process.stdout, process.stderr])
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code === "EPIPE") return;
      // A full disk behind `> file`: what was to be said there cannot be, and must not end as if it had been.
      process.exitCode = exitCodes.badInput;
      if (stream === process.stdout) process.stderr.write(`${error.message}\n`);
      process.once("exit", () => {
        process.exitCode = exitCodes.badInput;
      });
    });
  const plain = process.env.NO_COLOR !== undefined && process.env.NO_COLOR !== "";
  return {
    out: (text) => process.stdout.write(`${text}\n`),
    err: (text) => process.stderr.write(`${text}\n`),
    stdin: () => bounded(process.stdin, limits.bytes.csv),
    outColors: createColors(process.stdout.isTTY === true && !plain),
    errColors: createColors(process.stderr.isTTY === true && !plain),
  };
}

/** All that comes, but no more than one chunk above the most: a stream need not end. */
async function bounded(stream: NodeJS.ReadStream, most: number): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const bytes = Buffer.from(chunk);
    chunks.push(bytes);
    size += bytes.length;
    if (size > most) break;
  }
  return new Uint8Array(Buffer.concat(chunks));
}
