import { dataError } from "../../errors/data-error.ts";
import type { DataIssue } from "../../errors/data-issue.ts";
import { spreadsCode } from "../../errors/problems/setup.ts";
import { decodeText } from "../decode.ts";
import { dataIssue } from "../issues.ts";
import { parseJson } from "../json.ts";
import { setupIssues } from "../setup/issues.ts";
import { type CatchSource, formatOf } from "../source.ts";
import { type SpreadLibrary, spreadsGuide, spreadsSchema } from "./schema.ts";

export type SpreadLibraryCheck =
  | { readonly ok: true; readonly library: SpreadLibrary }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/**
 * The spreads of other meters in a .json file, as `evencatch spreads` writes it: the option `library` of an analysis.
 *
 * @param source  name and content of the file
 * @throws        DataError with every problem found
 */
export function readSpreadLibrary(source: CatchSource): SpreadLibrary {
  const check = checkSpreadLibrary(source);
  if (!check.ok) throw dataError(source.name, check.issues);
  return check.library;
}

/** The twin of readSpreadLibrary that returns the problems instead of throwing them; each names its path as its column. */
export function checkSpreadLibrary(source: CatchSource): SpreadLibraryCheck {
  const { name } = source;
  if (formatOf(name) !== "json")
    return {
      ok: false,
      issues: [
        dataIssue(
          { source: name, rowKind: "line" },
          { problem: "spreads-not-json", facts: {} },
          name,
        ),
      ],
    };
  const text = decodeText(source, "spreads");
  if (!text.ok) return text;
  const parsed = parseJson(name, text.value);
  if (!parsed.ok) return parsed;
  const checked = spreadsSchema.safeParse(parsed.value);
  if (checked.success) {
    const { made, records, estimates } = checked.data;
    return { ok: true, library: { made, records, estimates } };
  }
  // Of another kind of file, or of another version, nothing else can be said.
  const { issues } = checked.error;
  const atDoor = issues.filter(({ path }) => path[0] === "kind" || path[0] === "version");
  const given = { given: parsed.value, inFile: asItIs, guide: spreadsGuide };
  const found = setupIssues(atDoor.length > 0 ? atDoor : issues, given, name);
  return { ok: false, issues: found.map((issue) => ({ ...issue, code: spreadsCode })) };
}

function asItIs<P>(path: P): P {
  return path;
}
