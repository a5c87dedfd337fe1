import { InvalidArgumentError } from "commander";
import { type AddedRow, type Appended, appendCatches } from "../data/append/append-catches.ts";
import type { Belonging } from "../data/append/belonging.ts";
import type { Missing } from "../data/append/missing.ts";
import type { GivenKeys } from "../data/given-keys.ts";
import { dataIssue } from "../data/issues.ts";
import { formatOf } from "../data/source.ts";
import { dataError } from "../errors/data-error.ts";
import { catchSource } from "../node.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import type { Io } from "./io.ts";
import { changeLocked, LockedError } from "./locked-file.ts";
import { newCatches } from "./new-catches.ts";
import { OutputError } from "./output.ts";

export interface AddFlags {
  readonly bin?: string;
  readonly product?: string;
  readonly fill?: number;
  readonly newFill?: boolean;
  readonly turns?: number;
  readonly tare?: string;
  readonly set?: Readonly<Record<string, string>>;
  readonly key?: GivenKeys;
  readonly again?: boolean;
  readonly language: string;
}

/** `evencatch add`: more catches at the end of a file, whole or not at all, whoever else adds some at the same time. */
export async function addCommand(
  path: string,
  typed: readonly string[],
  flags: AddFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const { needed } = words.usage;
  const catches = newCatches(typed, flags.turns, needed);
  await catchSource(path);
  if (formatOf(path) !== "csv")
    throw dataError(path, [
      dataIssue({ source: path, rowKind: "row" }, { problem: "not-appendable", facts: {} }),
    ]);
  const added = await appended(path, words, (bytes) =>
    appendCatches(path, bytes, catches, belonging(flags)),
  );
  if (!added.ok) throw new InvalidArgumentError(missingText(added.missing, words));
  io.out(added.rows.map((row) => words.command.added(saidOf(row, words))).join("\n"));
  return exitCodes.fine;
}

/** So many digits as no scale of a catch shows; a unit that was converted has more. */
const digits = 6;

function saidOf({ where, spilled, caught }: AddedRow, { format }: Words) {
  if (caught === null) return { where, spilled, caught };
  const { turns, net, tare, unit } = caught;
  const mass = (value: number) => `${format.plain(value, digits)} ${unit}`;
  return {
    where,
    spilled,
    caught: {
      turns: format.plain(turns, digits),
      net: mass(net),
      tare: tare === null ? null : mass(tare),
    },
  };
}

/** @throws DataError where file and catches are not in order together; OutputError where the file cannot be changed */
async function appended(
  path: string,
  { command: say }: Words,
  append: (bytes: Uint8Array) => ReturnType<typeof appendCatches>,
): Promise<Appended> {
  try {
    return await changeLocked<Appended>(path, async (bytes) => {
      const done = append(bytes);
      if (!done.ok) throw dataError(path, done.issues);
      if (!done.value.ok) return { bytes: null, result: done.value };
      const more = new TextEncoder().encode(done.value.added);
      return { bytes: new Uint8Array([...bytes, ...more]), result: done.value };
    });
  } catch (error) {
    if (error instanceof LockedError)
      throw new OutputError(say.locked({ file: path, lock: error.lock }));
    if (error instanceof Error && "syscall" in error)
      throw new OutputError(say.cannotAdd({ file: path, why: error.message }));
    throw error;
  }
}

function belonging({ bin, product, fill, newFill, tare, set, key, again }: AddFlags): Belonging {
  const asked = newFill === true ? ("next" as const) : fill;
  return {
    ...(bin === undefined ? {} : { bin }),
    ...(product === undefined ? {} : { product }),
    ...(asked === undefined ? {} : { fill: asked }),
    ...(tare === undefined ? {} : { tare }),
    set: { ...set, ...key },
    takenAt: today(),
    again: again === true,
  };
}

/** The day where the person is. */
function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function missingText(missing: Missing, { usage: { needed } }: Words): string {
  switch (missing.is) {
    case "bin":
      return needed.addBin(missing.names);
    case "product":
      return missing.held === null
        ? needed.addProduct(missing.bin)
        : needed.addNewFill({ bin: missing.bin, held: missing.held });
    case "tare":
      return needed.addTare;
    case "column":
      return needed.addColumn(missing.name);
    case "key":
      return needed.addKey({ key: missing.name, names: missing.names });
    case "spilled":
      return needed.addSpilled;
    case "again":
      return needed.addAgain(missing.catches);
  }
}
