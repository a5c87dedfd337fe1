import type { PlainRow } from "../../data/write-csv.ts";
import { type Caution, isAbout } from "../../results/caution.ts";
import type { Analysis } from "../analyse.ts";

/** A finding as a sentence of some language. */
export type SayFinding = (found: Caution) => string;

/**
 * Every finding of an analysis, outliers among them: one row a finding, and where it names catches one row a catch of it, all
 * with the same number in `finding`. Facts as JSON, masses in kg, fractions as fractions.
 *
 * @param say  the finding's sentence; null: the table has none
 */
export function flagTable(
  { cautions, meters, products }: Analysis,
  say: SayFinding | null,
): readonly PlainRow[] {
  const found: readonly Found[] = [
    ...cautions.map((caution) => ({ caution, in: "file", answered: null })),
    ...meters.flatMap((answers) =>
      answers.cautions.map((caution) => ({
        caution,
        in: "bin",
        answered: isAbout(caution, { ...answers, fill: answers.delivery.fill })
          ? (answers.answered.find(({ code }) => code === caution.code)?.note ?? null)
          : null,
      })),
    ),
    ...[products?.comparison, products?.explaining].flatMap(
      (answer) =>
        answer?.cautions.map((caution) => ({ caution, in: "products", answered: null })) ?? [],
    ),
  ];
  return found.flatMap((one, i) => flagRows(one, i + 1, say));
}

interface Found {
  readonly caution: Caution;
  readonly in: string;
  readonly answered: string | null;
}

function flagRows(
  { caution, in: foundIn, answered }: Found,
  finding: number,
  say: SayFinding | null,
): readonly PlainRow[] {
  const { code, severity, asks, where, facts } = caution;
  const catches = where.catches.length === 0 ? [null] : where.catches;
  return catches.map((number) => ({
    finding,
    bin: where.bin,
    product: where.product,
    fill: where.fill,
    catch: number,
    found_in: foundIn,
    code,
    severity,
    asks,
    answered,
    facts: JSON.stringify(facts),
    ...(say === null ? {} : { sentence: say(caution) }),
  }));
}
