import { readFile } from "node:fs/promises";
import { basename, dirname } from "node:path";
import { decodeText } from "../data/decode.ts";
import { isRecord, parseJson } from "../data/json.ts";
import { dataError } from "../errors/data-error.ts";

import { readSetupFile } from "../node.ts";
import type { Given } from "../page/given.ts";
import { pageFile } from "../page/page-file.ts";
import type { UnitSystem } from "../wording/format.ts";
import { wordsFor } from "../wording/languages.ts";
import { type ExitCode, exitCodes } from "./exit-codes.ts";
import { inputsOf, type LibraryFlags, libraryFor } from "./input.ts";
import type { Io } from "./io.ts";
import { type ReplaceFlags, replaceOf, writeSaying } from "./output-flags.ts";
import { pageRuntime } from "./page-runtime.ts";

export interface PageFlags extends ReplaceFlags, LibraryFlags {
  readonly setup?: string;
  readonly out: string;
  readonly units: UnitSystem;
  readonly language: string;
}

/** `evencatch page`: one HTML file that answers at the drill, without a network. */
export async function pageCommand(flags: PageFlags, io: Io): Promise<ExitCode> {
  const words = await wordsFor(flags.language, flags.units);
  const setup = await givenSetup(flags.setup);
  const { library, libraryFrom } = await libraryFor(flags, setup?.setup ?? null);
  const given: Given = {
    units: flags.units,
    setup,
    ...(library === undefined ? {} : { library: { library, libraryFrom: libraryFrom ?? null } }),
  };
  const html = pageFile({
    language: flags.language,
    title: words.page.title,
    noScript: words.page.noScript,
    script: await pageRuntime(flags.language),
    given,
  });
  await writeSaying(
    {
      command: "page",
      folder: dirname(flags.out),
      files: { [basename(flags.out)]: html },
      inputs: inputsOf(flags, setup?.setup ?? null),
      replace: replaceOf(flags),
      standAlone: true,
    },
    words,
    io,
  );
  io.out(flags.out);
  return exitCodes.fine;
}

/** The setup as it is checked, and the content of its file, which goes with the catches that leave the page. */
async function givenSetup(path: string | undefined): Promise<Given["setup"]> {
  if (path === undefined) return null;
  const setup = await readSetupFile(path);
  const name = basename(path);
  const text = decodeText({ name, bytes: await readFile(path) }, "setup");
  if (!text.ok) throw dataError(name, text.issues);
  const file = parseJson(name, text.value);
  return file.ok && isRecord(file.value) ? { setup, file: file.value } : null;
}
