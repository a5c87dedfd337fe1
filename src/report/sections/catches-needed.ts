import type { Action } from "../../analysis/decision.ts";
import { catchesNeededChart } from "../../charts/catches-needed.ts";
import { chanceToReachChart } from "../../charts/chance-to-reach.ts";
import type { CatchesNeeded } from "../../questions/catches-needed.ts";
import type { Cost } from "../../questions/cost.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/**
 * How many catches are enough: the sentence, what each catch buys and costs, the rule for one at a time, and the plans.
 *
 * @param cost    of the same bin and product, for the picture; null: none
 * @param action  decided for the same fill, under which the sentence stands
 */
export function catchesNeededSection(
  result: CatchesNeeded,
  words: Words,
  id: string,
  cost: Cost | null = null,
  action?: Action,
): readonly Block[] {
  const say = words.catchesNeeded;
  return blocks(
    paragraph(say.sentence(result, action), "lead"),
    knownPoints(result) < fewestDrawn ? null : chart(id, catchesNeededChart(result, words, cost)),
    chart(`${id}-chance`, chanceToReachChart(result, words)),
    list([
      say.buys(result),
      result.decides === "tolerance" ? say.worth(result, action) : null,
      say.skip(result, action),
      say.rule(result),
      say.scale(result),
      say.step(result),
      say.limits(result),
      say.time(result),
      say.trial(result),
      say.basis(result),
    ]),
    details(
      `${id}-detail`,
      say.detail,
      curveTable(result, words, id),
      choiceTable(result, words, id),
      splitTable(result, words, id),
    ),
  );
}

/** One point alone shows nothing of what a further catch buys. */
const fewestDrawn = 2;

function knownPoints({ curve }: CatchesNeeded): number {
  return curve.points.filter(({ halfWidth }) => halfWidth !== null).length;
}

function curveTable(result: CatchesNeeded, words: Words, id: string) {
  const { format, catchesNeeded } = words;
  const say = catchesNeeded.curve;
  const known = (value: number | null, show: (value: number) => string) =>
    value === null ? catchesNeeded.unknown : show(value);
  return table({
    id: `${id}-curve`,
    caption: say.caption,
    rows: knownPoints(result) === 0 ? [] : result.curve.points,
    columns: [
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      { heading: say.further, align: "end", cell: ({ further }) => format.count(further) },
      {
        heading: say.halfWidth,
        align: "end",
        cell: ({ halfWidth }) => known(halfWidth, format.plusMinus),
      },
      {
        heading: say.assured(result.options.assurance),
        align: "end",
        cell: ({ halfWidthAssured }) => known(halfWidthAssured, format.plusMinus),
      },
      {
        heading: say.chance,
        align: "end",
        cell: ({ chance }) => known(chance, format.chance),
      },
      {
        heading: say.chanceOff,
        align: "end",
        cell: ({ chanceOffTolerance, leastChance }) =>
          known(chanceOffTolerance, (value) => words.skipping.chanceOf(value, leastChance)),
      },
      { heading: say.basis, cell: ({ basis }) => say.bases[basis] },
    ],
  });
}

function choiceTable({ turnsPlan }: CatchesNeeded, { format, catchesNeeded }: Words, id: string) {
  const say = catchesNeeded.choices;
  return table({
    id: `${id}-time`,
    caption: say.caption,
    rows: turnsPlan?.choices ?? [],
    columns: [
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      { heading: say.turns, align: "end", cell: ({ turns }) => format.count(turns) },
      { heading: say.minutes, align: "end", cell: ({ minutes }) => format.plain(minutes) },
      {
        heading: say.halfWidth,
        align: "end",
        cell: ({ halfWidth }) => format.plusMinus(halfWidth),
      },
    ],
  });
}

function splitTable({ trialPlan }: CatchesNeeded, { format, catchesNeeded }: Words, id: string) {
  const say = catchesNeeded.splits;
  return table({
    id: `${id}-trial`,
    caption: say.caption,
    rows: trialPlan?.splits ?? [],
    columns: [
      { heading: say.fills, align: "end", cell: ({ fills }) => format.count(fills) },
      {
        heading: say.catches,
        align: "end",
        cell: ({ catchesPerFill }) => format.count(catchesPerFill),
      },
      {
        heading: say.turns,
        align: "end",
        cell: ({ turnLevels }) => turnLevels.map((turns) => format.plain(turns)).join(", "),
      },
      { heading: say.cost, align: "end", cell: ({ cost }) => format.plain(cost) },
      {
        heading: say.halfWidth,
        align: "end",
        cell: ({ halfWidth }) => format.plusMinus(halfWidth),
      },
      {
        heading: say.detectable,
        align: "end",
        cell: ({ detectable }) => format.percent(detectable),
      },
      {
        heading: say.constant,
        align: "end",
        cell: ({ detectableConstant }) =>
          detectableConstant === null ? catchesNeeded.unknown : format.percent(detectableConstant),
      },
    ],
  });
}
