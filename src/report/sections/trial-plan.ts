import type { TrialPlan } from "../../questions/trial-plan.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Column } from "../document.ts";

/** A planned trial: what it can be expected to show, what more fills would, and the sheet to work by. */
export function trialPlanSection(result: TrialPlan, words: Words, id: string): readonly Block[] {
  const say = words.trialPlan;
  const equivalence = say.equivalence(result);
  const defaults = say.defaults(result);
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(equivalence === null ? [] : [{ kind: "paragraph", text: equivalence } as const]),
    alternatives(result, words, id),
    { kind: "paragraph", role: "small", text: say.assumptions(result) },
    ...(defaults === null ? [] : [{ kind: "paragraph", role: "small", text: defaults } as const]),
    { kind: "paragraph", text: say.order(result) },
    sheet(result, words, id),
  ];
}

function alternatives({ alternatives: rows, options }: TrialPlan, words: Words, id: string): Block {
  const { format, trialPlan } = words;
  const say = trialPlan.alternatives;
  const margin = options.equivalenceMargin;
  const end = (heading: string): Column => ({ heading, align: "end" });
  return {
    kind: "table",
    id: `${id}-alternatives`,
    caption: say.caption,
    columns: [
      end(say.fills),
      end(say.catches),
      end(say.halfWidth),
      end(say.power(options.difference)),
      ...(margin === null ? [] : [end(say.equivalence(margin))]),
    ],
    rows: rows.map(({ fills, catches, halfWidth, power, equivalencePower }) => ({
      cells: [
        format.count(fills),
        format.count(catches),
        format.plusMinus(halfWidth),
        format.percent(power, 0),
        ...(equivalencePower === null ? [] : [format.percent(equivalencePower, 0)]),
      ],
    })),
  };
}

function sheet({ rows, options }: TrialPlan, words: Words, id: string): Block {
  const say = words.trialPlan.sheet;
  const names = Object.keys(say.columns) as (keyof typeof say.columns)[];
  const shown = names.filter((name) => name !== "meter_rpm" || options.meterSpeeds.length > 0);
  return {
    kind: "details",
    id: `${id}-sheet-detail`,
    summary: say.heading,
    blocks: [
      {
        kind: "table",
        id: `${id}-sheet`,
        caption: say.caption,
        columns: shown.map((name) =>
          name === "product"
            ? { heading: say.columns[name] }
            : { heading: say.columns[name], align: "end" as const },
        ),
        rows: rows.map((row) => ({ cells: shown.map((name) => say.cell(row[name])) })),
        rowHeaders: false,
      },
    ],
  };
}
