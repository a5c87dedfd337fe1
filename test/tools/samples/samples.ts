import type { ComparisonChoices } from "../../../src/analysis/options.ts";
import { provenanceOf } from "../../../src/cli/provenance.ts";
import { analyse, reportFiles, version, wordsFor } from "../../../src/index.ts";
import { catchSource, readCatchesFile, readSetupFile } from "../../../src/node.ts";
import type { Edition } from "../../../src/report/editions/edition.ts";
import { sheetFiles } from "../../../src/report/sheets.ts";

/** A sample report that is kept in reports/, and what it is asked with beyond its setup. */
export interface Sample {
  readonly name: string;
  readonly comparison: ComparisonChoices;
  /** Kept whole, to be looked at; the others by the manifest of their files, which tells a change as surely. */
  readonly whole: boolean;
}

export const samples: readonly Sample[] = [
  { name: "season", comparison: {}, whole: true },
  { name: "first-morning", comparison: {}, whole: false },
  { name: "three-bins", comparison: {}, whole: false },
  {
    name: "product-trial",
    comparison: { blocks: "day", equivalenceMargin: 0.03 },
    whole: false,
  },
  { name: "planned-trial", comparison: {}, whole: false },
];

/** The files of a sample report by name, as the command writes them from the root of the project. */
export async function sampleFiles({ name, comparison }: Sample, edition: Edition = "short") {
  const log = await readCatchesFile(`data-demo/${name}/catches.csv`);
  const setup = await readSetupFile(`data-demo/${name}/setup.json`);
  const meta = {
    title: setup.title,
    setupSource: setup.source,
    version,
    edition,
    inputs: await provenanceOf({
      catches: [await catchSource(log.source)],
      sheet: undefined,
      setup: await catchSource(setup.source),
      library: null,
    }),
  };
  return reportFiles(analyse(log, setup, { comparison }), meta, await wordsFor("en", "metric"));
}

/** The cab sheet and the catch sheet of the demo season by their files' names. */
export async function seasonSheets(): Promise<Readonly<Record<string, string>>> {
  const log = await readCatchesFile("data-demo/season/catches.csv");
  const setup = await readSetupFile("data-demo/season/setup.json");
  return sheetFiles(analyse(log, setup), log, setup.title, await wordsFor("en", "metric"));
}
