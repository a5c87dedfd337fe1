import type { Caution } from "../../../results/caution.ts";
import type { BinAnswer } from "../answer.ts";
import type { PageRow } from "../cells.ts";

/** What was found of one catch of the fill. */
export function findingsAt({ answers, bin }: BinAnswer, { cells }: PageRow): readonly Caution[] {
  const number = Number(cells.catch);
  return (answers?.cautions ?? []).filter(
    ({ where }) => where.fill === bin.fill && where.catches.includes(number),
  );
}
