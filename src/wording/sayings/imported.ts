import type {
  Assumed,
  AssumedKind,
  AssumedOf,
  Imported,
  SetAside,
} from "../../data/import/result.ts";
import { rowRanges } from "../../errors/issue-groups.ts";
import type { imported as templates } from "../en/imported.ts";

/** What an import tells of itself. */
export function importedSayings(say: typeof templates) {
  const assumed = (one: Assumed): string => {
    const { rows, count } = one;
    const sentence = sentenceOf(one, say);
    const whole = rows.length === 0;
    return whole ? sentence : `${sentence} ${say.rows({ rows: rowRanges(rows), count })}`;
  };
  return {
    title: say.title,
    headings: say.headings,
    nothing: say.nothing,
    place: say.place,
    assumed,
    setAside: ({ row, why, text }: SetAside): string =>
      say.asideRow({ row, why: say.reasons[why], text }),
    summary: (result: Imported, file: string): string =>
      say.summary({
        catches: result.catches.length,
        assumed: result.assumed.length,
        setAside: result.setAside.length,
        file,
      }),
    notRead: say.notRead,
    listed: say.listed,
    notYet: say.notYet,
  };
}

function sentenceOf<K extends AssumedKind>(
  { kind, facts }: AssumedOf<K>,
  say: typeof templates,
): string {
  return say.assumed[kind](facts);
}
