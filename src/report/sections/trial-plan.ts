import type { SheetRow } from "../../questions/trial-plan/result.ts";
import type { TrialPlan } from "../../questions/trial-plan.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, type ColumnOf, details, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** A planned trial: what it can be expected to show, what more fills would, and the sheet to work by. */
export function trialPlanSection(result: TrialPlan, words: Words, id: string): readonly Block[] {
  const say = words.trialPlan;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    paragraph(say.equivalence(result)),
    alternativeTable(result, words, id),
    paragraph(say.assumptions(result), "small"),
    paragraph(say.found(result), "small"),
    paragraph(say.defaults(result), "small"),
    paragraph(say.order(result)),
    details(`${id}-sheet-detail`, say.sheet.heading, sheetTable(result, words, id)),
  );
}

function alternativeTable({ alternatives, options }: TrialPlan, words: Words, id: string) {
  const { format, trialPlan } = words;
  const say = trialPlan.alternatives;
  const { difference, equivalenceMargin: margin } = options;
  const judgedAlike = new Set(alternatives.map(({ spread }) => spread)).size === 1;
  return table({
    id: `${id}-alternatives`,
    caption: say.caption,
    rows: alternatives,
    columns: [
      { heading: say.fills, align: "end", cell: ({ fills }) => format.count(fills) },
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      {
        heading: say.halfWidth,
        align: "end",
        cell: ({ halfWidth }) => format.plusMinus(halfWidth),
      },
      {
        heading: say.power(difference),
        align: "end",
        cell: ({ power }) => format.chance(power),
      },
      margin === null
        ? null
        : {
            heading: say.equivalence(margin),
            align: "end",
            cell: ({ equivalencePower }) =>
              equivalencePower === null ? "" : format.chance(equivalencePower),
          },
      judgedAlike ? null : { heading: say.spread, cell: ({ spread }) => trialPlan.spreads[spread] },
    ],
  });
}

function sheetTable({ rows, options }: TrialPlan, words: Words, id: string) {
  const say = words.trialPlan.sheet;
  const names = Object.keys(say.columns) as (keyof typeof say.columns)[];
  const shown = names.filter((name) => name !== "meter_rpm" || options.meterSpeeds.length > 0);
  return table({
    id: `${id}-sheet`,
    caption: say.caption,
    rows,
    rowHeaders: false,
    columns: shown.map(
      (name): ColumnOf<SheetRow> => ({
        heading: say.columns[name],
        align: name === "product" ? "start" : "end",
        cell: (row) => say.cell(row[name]),
      }),
    ),
  });
}
