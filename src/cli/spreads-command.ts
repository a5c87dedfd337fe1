import { basename, dirname } from "node:path";
import { questioning } from "../analysis/questioning.ts";
import { type ClassLeftOut, spreadLibrary } from "../analysis/spread-library.ts";
import { readCatches } from "../data/read-catches.ts";
import type { Setup } from "../data/setup.ts";
import { bytesOf } from "../data/source.ts";
import { copiesAmong } from "../data/spreads/copies.ts";
import { fewestBins, fewestToEstimate } from "../data/spreads/limits.ts";
import type { SpreadLibrary } from "../data/spreads/schema.ts";
import { spreadLibraryText } from "../data/spreads/write.ts";
import { dataError } from "../errors/data-error.ts";
import { type Model, wholeModel } from "../model/model.ts";
import { catchSource, readProductClassesFile } from "../node.ts";
import { version } from "../version.ts";
import { wordsFor } from "../wording/languages.ts";
import type { Words } from "../wording/words.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { type ReadFlags, readOptions, type SetupFlags, setupFor } from "./input.ts";
import type { Io } from "./io.ts";
import { sha256Of } from "./manifest.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";

export interface SpreadsFlags extends ReplaceFlags, ReadFlags, SetupFlags {
  readonly out: string;
  readonly classes?: string;
  readonly sha256?: boolean;
  readonly language: string;
}

/** `evencatch spreads`: how much the meters of logs scatter, in a file that others can borrow from without a row or a name. */
export async function spreadsCommand(
  paths: readonly string[],
  flags: SpreadsFlags,
  io: Io,
): Promise<ExitCode> {
  const words = await wordsFor(flags.language, "metric");
  const classes =
    flags.classes === undefined ? {} : { classes: await readProductClassesFile(flags.classes) };
  const models: Model[] = [];
  const setups: Setup[] = [];
  const sources = await Promise.all(paths.map(catchSource));
  const hashes = sources.map((source) => sha256Of(bytesOf(source)));
  const copies = copiesAmong(paths.map((name, i) => ({ name, sha256: hashes[i] ?? name })));
  if (copies.length > 0) throw dataError(paths.join(", "), copies);
  for (const source of sources) {
    const path = source.name;
    const setup = await setupFor(path, flags, words, io);
    const log = await readCatches(source, readOptions(flags, path, setup));
    if (setup !== null) setups.push(setup);
    models.push(wholeModel(questioning(log, setup, {}).open));
  }
  const { library: made, leftOut } = spreadLibrary(models, {
    ...classes,
    day: new Date().toISOString().slice(0, 10),
    by: `evencatch ${version}`,
    tablesSha256: flags.sha256 ? hashes : null,
    source: paths.join(", "),
  });
  const library = words.spreads.told(made);
  await writeSaying(
    {
      command: "spreads",
      folder: dirname(flags.out),
      files: { [basename(flags.out)]: spreadLibraryText(library) },
      inputs: [
        ...paths,
        ...setups.map(({ source }) => source),
        ...(flags.classes === undefined ? [] : [flags.classes]),
      ],
      replace: replaceOf(flags),
      standAlone: true,
    },
    words,
    io,
  );
  io.out(summary(library, leftOut, { file: flags.out, logs: paths.length }, words));
  return exitCodes.fine;
}

function summary(
  { records, estimates }: SpreadLibrary,
  leftOut: readonly ClassLeftOut[],
  { file, logs }: { readonly file: string; readonly logs: number },
  { spreads: say }: Words,
): string {
  const named = (one: Pick<ClassLeftOut, "productClass" | "meterType">) =>
    JSON.stringify([one.productClass, one.meterType]);
  const told = new Map(records.map((record) => [named(record), record]));
  const constants = estimates?.constants ?? [];
  return [
    say.made({ meters: records.length, logs, file }),
    ...[...told].map(([name, { productClass, meterType }]) =>
      say.class({
        productClass,
        meterType,
        meters: records.filter((record) => named(record) === name).length,
      }),
    ),
    ...leftOut.map((one) => say.leftOut({ ...one, needed: fewestBins })),
    ...constants.flatMap(({ said }) => said ?? []),
    ...(constants.length === 0 ? [say.notEstimated(fewestToEstimate)] : []),
  ].join("\n");
}
