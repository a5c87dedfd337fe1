import type { Caution, CautionCode, CautionOf, Severity } from "../../results/caution.ts";
import type { Words } from "../../wording/words.ts";
import type { CautionItem, CautionList } from "../document.ts";

const order: readonly Severity[] = ["serious", "doubt", "note"];

/** Cautions as sentences, the gravest first; the same finding from two answers is said once. */
export function cautionList(cautions: readonly Caution[], words: Words): CautionList {
  const sorted = [...cautions].sort(
    (a, b) => order.indexOf(a.severity) - order.indexOf(b.severity),
  );
  const items = sorted.map((one) => cautionItem(one, words));
  const seen = new Set<string>();
  return {
    kind: "cautions",
    items: items.filter(({ where, text }) => {
      const key = `${where} ${text}`;
      return seen.has(key) ? false : seen.add(key);
    }),
  };
}

function cautionItem(found: Caution, words: Words): CautionItem {
  return {
    severity: found.severity,
    where: whereWords(found, words),
    text: cautionSentence(found, words),
  };
}

/** A caution as a sentence in the language of the words. */
export function cautionSentence<C extends CautionCode>(
  found: CautionOf<C>,
  words: Pick<Words, "cautions">,
): string {
  return words.cautions[found.code](found.facts, found.where);
}

function whereWords({ where }: Caution, { report }: Words): string {
  const say = report.where;
  return [
    where.bin === null ? null : say.bin(where.bin),
    where.fill === null ? null : say.fill(where.fill),
    where.catches.length === 0 ? null : say.catches(where.catches),
  ]
    .filter((part) => part !== null)
    .join(", ");
}
