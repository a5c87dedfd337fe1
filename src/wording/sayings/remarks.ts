import type { CatchRemark } from "../../results/catch-remark.ts";
import type { remarks as templates } from "../en/remarks.ts";

/** "Written beside it: “bag slipped”; operator A; lot 7."; null: nothing was. */
export function remarkWords(remark: CatchRemark, say: typeof templates): string | null {
  const written = writtenOf(remark, say);
  return written === "" ? null : say.beside(written);
}

/** The same for several catches, each by its number. */
export function remarksWords(
  remarks: readonly CatchRemark[],
  say: typeof templates,
): readonly string[] {
  return remarks.flatMap((one) => {
    const written = writtenOf(one, say);
    return written === "" ? [] : [say.besideCatch({ catch: one.catch, written })];
  });
}

function writtenOf({ note, operator, extra }: CatchRemark, say: typeof templates): string {
  const ownColumns = Object.entries(extra).filter(([, text]) => text.trim() !== "");
  return [
    ...(note === null ? [] : [say.quoted(note)]),
    ...(operator === null ? [] : [say.operator(operator)]),
    ...ownColumns.map(([header, text]) => `${header} ${text}`),
  ].join("; ");
}
