import { buffer } from "node:stream/consumers";
import { createColors } from "picocolors";

/** Where a command speaks: answers on stdout, everything else on stderr. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** All of standard input; left out: nobody feeds it. */
  readonly stdin?: () => Promise<Uint8Array>;
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
    stdin: async () => new Uint8Array(await buffer(process.stdin)),
    outColors: createColors(process.stdout.isTTY === true && !plain),
    errColors: createColors(process.stderr.isTTY === true && !plain),
  };
}
