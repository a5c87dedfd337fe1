import { max } from "simple-statistics";
import { fieldCheckChart } from "../../charts/field-check.ts";
import type { CheckedField, FieldCheck } from "../../questions/field-check.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** What the field used: the sentence, each check beside what was expected, and what they say together. */
export function fieldCheckSection(result: FieldCheck, words: Words, id: string): readonly Block[] {
  const say = words.fieldCheck;
  const items = result.checks.map((check, place) =>
    [say.used(check, place), say.predicted(check), say.agreement(check)]
      .filter((text) => text !== null)
      .join(" "),
  );
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, fieldCheckChart(result, words)),
    list(items),
    paragraph(say.correction(result)),
    details(`${id}-detail`, say.detail, checkTable(result, words, id)),
  );
}

function checkTable(result: FieldCheck, words: Words, id: string) {
  const { format } = words;
  const say = words.fieldCheck.table;
  const largest = max(result.checks.map(({ usedKg }) => usedKg));
  const rateUnit = format.unit("rate", 1);
  const runningFactors = runningBy(result);
  const signed = (value: number | undefined) =>
    value === undefined ? say.unknown : format.signedPercent(value, 1);
  const rate = (value: number | null | undefined) =>
    value == null ? say.unknown : format.number(value, "rate", value);
  return table({
    id: `${id}-figures`,
    caption: say.caption,
    rows: result.checks,
    columns: [
      { heading: say.check, cell: (check, place) => words.fieldCheck.named(check, place) },
      {
        heading: say.used(format.unit("mass", largest)),
        align: "end",
        cell: ({ usedKg }) => format.number(usedKg, "mass", largest),
      },
      {
        heading: say.area(format.unit("area", 1)),
        align: "end",
        cell: ({ areaHectares }) => format.number(areaHectares, "area", areaHectares),
      },
      { heading: say.rate(rateUnit), align: "end", cell: (check) => rate(check.rate.value) },
      {
        heading: say.intended(rateUnit),
        align: "end",
        cell: ({ intendedKgPerHa }) => rate(intendedKgPerHa),
      },
      { heading: say.error, align: "end", cell: ({ rateError }) => signed(rateError?.value) },
      {
        heading: say.predicted(rateUnit),
        align: "end",
        cell: ({ predicted }) => rate(predicted?.rate.value),
      },
      { heading: say.bias, align: "end", cell: ({ bias }) => signed(bias?.value) },
      {
        heading: say.normalisedError,
        align: "end",
        cell: ({ agreement }) =>
          agreement === null ? say.unknown : format.fixed(agreement.normalisedError, 2),
      },
      {
        heading: say.running,
        align: "end",
        cell: (check) => {
          const factor = runningFactors.get(check);
          return factor === undefined ? say.unknown : format.percent(factor, 1);
        },
      },
    ],
  });
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
