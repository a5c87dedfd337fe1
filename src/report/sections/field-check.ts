import { fieldCheckChart } from "../../charts/field-check.ts";
import type { CheckedField, FieldCheck } from "../../questions/field-check.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Table } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** What the field used: the sentence, each check beside what was expected, and what they say together. */
export function fieldCheckSection(result: FieldCheck, words: Words, id: string): readonly Block[] {
  const say = words.fieldCheck;
  const correction = say.correction(result);
  const items = result.checks.map((check, place) =>
    [say.used(check, place), say.predicted(check), say.agreement(check)]
      .filter((text) => text !== null)
      .join(" "),
  );
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    chartBlock(`${id}-field-checks`, fieldCheckChart(result, words)),
    { kind: "list", items },
    ...(correction === null ? [] : [{ kind: "paragraph", text: correction } as const]),
    {
      kind: "details",
      id: `${id}-field-checks-detail`,
      summary: say.detail,
      blocks: [checkTable(result, words, id)],
    },
  ];
}

function checkTable(result: FieldCheck, words: Words, id: string): Table {
  const { format } = words;
  const say = words.fieldCheck.table;
  const largest = Math.max(...result.checks.map(({ usedKg }) => usedKg));
  const runningFactors = runningBy(result);
  const percent = (value: number | null) =>
    value === null ? say.unknown : format.percent(value, 1);
  const signed = (value: number | undefined) =>
    value === undefined ? say.unknown : format.signedPercent(value, 1);
  const rate = (value: number | null | undefined) =>
    value == null ? say.unknown : format.number(value, "rate", value);
  return {
    kind: "table",
    id: `${id}-field-check-figures`,
    caption: say.caption,
    columns: [
      { heading: say.check },
      { heading: say.used(format.unit("mass", largest)), align: "end" },
      { heading: say.area(format.unit("area", 1)), align: "end" },
      { heading: say.rate(format.unit("rate", 1)), align: "end" },
      { heading: say.intended(format.unit("rate", 1)), align: "end" },
      { heading: say.error, align: "end" },
      { heading: say.predicted(format.unit("rate", 1)), align: "end" },
      { heading: say.bias, align: "end" },
      { heading: say.normalisedError, align: "end" },
      { heading: say.running, align: "end" },
    ],
    rows: result.checks.map((check, place) => ({
      cells: [
        words.fieldCheck.named(check, place),
        format.number(check.usedKg, "mass", largest),
        format.number(check.areaHectares, "area", check.areaHectares),
        rate(check.rate.value),
        rate(check.intendedKgPerHa),
        signed(check.rateError?.value),
        rate(check.predicted?.rate.value),
        signed(check.bias?.value),
        check.agreement === null ? say.unknown : format.plain(check.agreement.normalisedError, 2),
        percent(runningFactors.get(check) ?? null),
      ],
    })),
  };
}

/** The running correction after each check that has one. */
function runningBy({ checks, correction }: FieldCheck): ReadonlyMap<CheckedField, number> {
  const compared = checks.filter(({ bias }) => bias !== null);
  return new Map(
    compared.flatMap((check, i) => {
      const factor = correction?.running[i]?.factor.value;
      return factor === undefined ? [] : [[check, factor] as const];
    }),
  );
}
