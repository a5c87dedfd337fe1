import { catchesNeededChart } from "../../charts/catches-needed.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { Cost } from "../../questions/cost.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/**
 * How many catches are enough: the sentence, what each catch buys and costs, the rule for one at a time, and the plans.
 *
 * @param cost  of the same bin and product, for the picture; null: none
 */
export function catchesNeededSection(
  result: CatchesNeeded,
  words: Words,
  id: string,
  cost: Cost | null = null,
): readonly Block[] {
  const say = words.catchesNeeded;
  const items = [
    say.buys(result),
    say.rule(result),
    say.scale(result),
    say.step(result),
    say.limits(result),
    say.time(result),
    say.trial(result),
    say.basis(result),
  ].flatMap((text) => text ?? []);
  const tables = [
    ...curveTable(result, words, id),
    ...choiceTable(result, words, id),
    ...splitTable(result, words, id),
  ];
  const detail: Block = {
    kind: "details",
    id: `${id}-catches-needed-detail`,
    summary: say.detail,
    blocks: tables,
  };
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(knownPoints(result) < fewestDrawn
      ? []
      : [chartBlock(`${id}-catches-needed`, catchesNeededChart(result, words, cost))]),
    { kind: "list", items },
    ...(tables.length === 0 ? [] : [detail]),
  ];
}

/** One point alone shows nothing of what a further catch buys. */
const fewestDrawn = 2;

function knownPoints({ curve }: CatchesNeeded): number {
  return curve.points.filter(({ halfWidth }) => halfWidth !== null).length;
}

function curveTable(result: CatchesNeeded, words: Words, id: string): readonly Block[] {
  if (knownPoints(result) === 0) return [];
  const { format, catchesNeeded } = words;
  const say = catchesNeeded.curve;
  const known = (value: number | null, show: (value: number) => string) =>
    value === null ? catchesNeeded.unknown : show(value);
  const whole = (value: number) => format.percent(value, 0);
  return [
    {
      kind: "table",
      id: `${id}-curve`,
      caption: say.caption,
      columns: [
        { heading: say.catches, align: "end" },
        { heading: say.further, align: "end" },
        { heading: say.halfWidth, align: "end" },
        { heading: say.assured(result.options.assurance), align: "end" },
        { heading: say.chance, align: "end" },
        { heading: say.chanceOff, align: "end" },
        { heading: say.basis },
      ],
      rows: result.curve.points.map((point) => ({
        cells: [
          format.count(point.catches),
          format.count(point.further),
          known(point.halfWidth, format.plusMinus),
          known(point.halfWidthAssured, format.plusMinus),
          known(point.chance, whole),
          known(point.chanceOffTolerance, (value) => format.percent(value)),
          say.bases[point.basis],
        ],
      })),
    },
  ];
}

function choiceTable({ turnsPlan }: CatchesNeeded, words: Words, id: string): readonly Block[] {
  if (turnsPlan === null || turnsPlan.choices.length === 0) return [];
  const { format, catchesNeeded } = words;
  const say = catchesNeeded.choices;
  return [
    {
      kind: "table",
      id: `${id}-time`,
      caption: say.caption,
      columns: [
        { heading: say.catches, align: "end" },
        { heading: say.turns, align: "end" },
        { heading: say.minutes, align: "end" },
        { heading: say.halfWidth, align: "end" },
      ],
      rows: turnsPlan.choices.map(({ catches, turns, minutes, halfWidth }) => ({
        cells: [
          format.count(catches),
          format.count(turns),
          format.plain(minutes),
          format.plusMinus(halfWidth),
        ],
      })),
    },
  ];
}

function splitTable({ trialPlan }: CatchesNeeded, words: Words, id: string): readonly Block[] {
  if (trialPlan === null || trialPlan.splits.length === 0) return [];
  const { format, catchesNeeded } = words;
  const say = catchesNeeded.splits;
  return [
    {
      kind: "table",
      id: `${id}-trial`,
      caption: say.caption,
      columns: [
        { heading: say.fills, align: "end" },
        { heading: say.catches, align: "end" },
        { heading: say.turns, align: "end" },
        { heading: say.cost, align: "end" },
        { heading: say.halfWidth, align: "end" },
        { heading: say.detectable, align: "end" },
        { heading: say.constant, align: "end" },
      ],
      rows: trialPlan.splits.map((split) => ({
        cells: [
          format.count(split.fills),
          format.count(split.catchesPerFill),
          split.turnLevels.map((turns) => format.plain(turns)).join(", "),
          format.plain(split.cost),
          format.plusMinus(split.halfWidth),
          format.percent(split.detectable),
          split.detectableConstant === null
            ? catchesNeeded.unknown
            : format.percent(split.detectableConstant),
        ],
      })),
    },
  ];
}
