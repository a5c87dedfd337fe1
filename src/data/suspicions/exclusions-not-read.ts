import { caution } from "../../results/caution.ts";
import { spelled } from "../header-names.ts";
import type { Catch } from "../types.ts";
import type { Suspicion } from "./suspect.ts";

/** What people call a column that says a catch does not count, as headers are compared; `exclude` alone is read. */
const saying: ReadonlySet<string> = new Set(
  [
    "leave out, leaveout, left out, omit, omitted, ignore, ignored, skip, skipped, drop, dropped, discard, discarded",
    "excluded, exclusion, reject, rejected, invalid, outlier, remove, removed, do not use, not used",
    "auslassen, ausgelassen, weglassen, weggelassen, ignorieren, ignoriert, ausschließen, ausgeschlossen, ausschluss",
    "streichen, gestrichen, ungültig, verworfen, verwerfen, nicht verwenden, nicht werten, ausreißer",
  ].flatMap((names) => names.split(", ").map((name) => spelled(name).spelling)),
);

/** Answers that leave the catch in. */
const no = /^(?:|no|n|false|0|nein|falsch|-)$/i;

/** Marks in a column that only its owner knows, whose name says that the catch does not count: it counts all the same. */
export const exclusionsNotRead: Suspicion = ({ meters, catches: [first] }) => {
  const headers = Object.keys(first?.extra ?? {}).filter((header) =>
    saying.has(spelled(header).spelling),
  );
  return headers.flatMap((header) =>
    meters.flatMap(({ catches, where }) => {
      const marked = catches.filter((row) => isMarked(row, header)).length;
      return marked === 0 ? [] : caution("exclusion-not-read", where, { header, catches: marked });
    }),
  );
};

function isMarked({ extra }: Catch, header: string): boolean {
  return !no.test((extra[header] ?? "").trim());
}
