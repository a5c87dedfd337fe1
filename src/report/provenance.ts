import type { Analysis } from "../analysis/analyse.ts";
import type { AnalysisOptions } from "../analysis/options.ts";
import type { Words } from "../wording/words.ts";
import { details } from "./blocks.ts";
import type { Details, Entry } from "./document.ts";

/** A file that a report was made from. */
export interface ReportInput {
  /** Without its folder: where it lies on somebody's machine is nobody else's business. */
  readonly name: string;
  /** Sheet that was read; null: the file is no workbook. */
  readonly sheet: string | null;
  /** Of its bytes, in hexadecimal. */
  readonly sha256: string;
}

/** Every file that a report was made from. */
export interface ReportInputs {
  readonly catches: readonly ReportInput[];
  /** Null: there was none. */
  readonly setup: ReportInput | null;
  /** Library of spreads; null: there was none. */
  readonly library: ReportInput | null;
}

/** The last part of a path, whichever system it is of. */
export function baseName(path: string): string {
  return path.slice(Math.max(path.lastIndexOf("/"), path.lastIndexOf("\\")) + 1);
}

/** From which files, with which options and by which version a report was made, folded away near its end. */
export function provenance(
  { options }: Analysis,
  { inputs = null, version }: { readonly inputs?: ReportInputs | null; readonly version: string },
  { report: { provenance: say } }: Words,
): Details | null {
  const files: readonly Entry[] =
    inputs === null
      ? []
      : [
          ...inputs.catches.map((one) => ({ term: say.catches, description: say.file(one) })),
          ...[
            { term: say.setup, file: inputs.setup },
            { term: say.library, file: inputs.library },
          ].flatMap(({ term, file }) =>
            file === null ? [] : { term, description: say.file(file) },
          ),
        ];
  return details("provenance", say.heading, {
    kind: "definitions",
    entries: [
      ...files,
      { term: say.options, description: [{ kind: "code", text: optionsAsResolved(options) }] },
      { term: say.version, description: `evencatch ${version}` },
    ],
  });
}

/** Options under the names that programs give them, unrounded, as report.json has them; records of a library by their number. */
function optionsAsResolved({ library, ...options }: AnalysisOptions): string {
  return Object.entries({ ...options, library: library.length })
    .map(([name, value]) => `${name} ${typeof value === "object" ? JSON.stringify(value) : value}`)
    .join("; ");
}
