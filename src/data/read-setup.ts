import { dataError } from "../errors/data-error.ts";
import type { DataIssue } from "../errors/data-issue.ts";
import { decodeText } from "./decode.ts";
import { dataIssue } from "./issues.ts";
import { parseJson } from "./json.ts";
import { setupIssues } from "./setup/issues.ts";
import { setupGuide } from "./setup/json-schema.ts";
import { withoutOldNames } from "./setup/old-names.ts";
import { setupSchema } from "./setup/schema.ts";
import { setupTooLarge, tooLongLists } from "./setup/too-long.ts";
import type { Setup } from "./setup.ts";
import { type CatchSource, formatOf } from "./source.ts";
import { keysRepeated } from "./suspicions/keys-repeated.ts";

export type SetupSource = CatchSource;

export type SetupCheck =
  | { readonly ok: true; readonly setup: Setup }
  | { readonly ok: false; readonly issues: readonly DataIssue[] };

/**
 * The setup in a .json file: targets, drives, scale, money, field checks.
 *
 * @param source  name and content of the file
 * @returns       the setup in kg, m, ha and fractions, null where the file says nothing
 * @throws        DataError with every problem found
 * @example       readSetup({ name: "setup.json", text: '{ "tolerance_percent": 3 }' }).tolerance // -> 0.03
 */
export function readSetup(source: SetupSource): Setup {
  const check = checkSetup(source);
  if (!check.ok) throw dataError(source.name, check.issues);
  return check.setup;
}

/**
 * Can this setup be used?  The twin of readSetup that returns the problems instead of throwing them; each names the path
 * in the file, such as bins[0].target_rate.unit, as its column. Names of earlier versions are read as the new ones, and
 * the setup's cautions say so.
 */
export function checkSetup(source: SetupSource): SetupCheck {
  if (formatOf(source.name) !== "json") return { ok: false, issues: [notJsonFile(source.name)] };
  const place = { source: source.name, rowKind: "line" } as const;
  const size = "bytes" in source ? source.bytes.length : source.text.length;
  const tooLarge = setupTooLarge(place, size);
  if (tooLarge !== null) return { ok: false, issues: [tooLarge] };
  const text = decodeText(source, "setup");
  if (!text.ok) return text;
  const parsed = parseJson(source.name, text.value);
  if (!parsed.ok) return parsed;
  const tooLong = tooLongLists(place, parsed.value);
  if (tooLong.length > 0) return { ok: false, issues: tooLong };
  const { setup, cautions, issues, inFile } = withoutOldNames(parsed.value, source.name);
  const checked = setupSchema.safeParse(setup);
  if (checked.success && issues.length === 0)
    return {
      ok: true,
      setup: {
        source: source.name,
        ...checked.data,
        cautions: [...cautions, ...keysRepeated(text.value)],
      },
    };
  const wrong = checked.error?.issues ?? [];
  return {
    ok: false,
    issues: [
      ...issues,
      ...setupIssues(wrong, { given: parsed.value, inFile, guide: setupGuide }, source.name),
    ],
  };
}

function notJsonFile(name: string): DataIssue {
  return dataIssue(
    { source: name, rowKind: "line" },
    { problem: "setup-not-json", facts: {} },
    name,
  );
}
