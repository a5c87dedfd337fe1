import { repeatabilityChart } from "../../charts/repeatability.ts";
import type { Repeatability } from "../../questions/repeatability.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** How repeatable the catches are: the sentence with its advice, the fills' scatter, and what each remedy would take. */
export function repeatabilitySection(
  result: Repeatability,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.repeatability;
  const fillsWithScatter = result.fills.filter(({ scatter }) => scatter !== null).length;
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(fillsWithScatter > 1
      ? [chartBlock(`${id}-repeatability`, repeatabilityChart(result, words))]
      : []),
    {
      kind: "list",
      items: [say.comparison(result), say.twoCatches(result), say.scale(result)].flatMap(
        (text) => text ?? [],
      ),
    },
    remedyTable(result, words, id),
  ];
}

function remedyTable(result: Repeatability, words: Words, id: string): Block {
  const { format, repeatability } = words;
  const say = repeatability.remedies;
  const { remedies, input, scale } = result;
  // Both in the unit of the scale as it is, so that they can be compared at a glance.
  const size = scale.divisionKg ?? remedies.divisionKg ?? 0;
  const mass = (kg: number | null) =>
    kg === null
      ? say.unknown
      : `${format.plain(format.convert(kg, "mass", size))} ${format.unit("mass", size)}`;
  const needed = (text: string | null) =>
    text ?? (result.halfWidth === null ? say.unknown : say.not);
  const count = (value: number | null) => (value === null ? null : format.count(value));
  return {
    kind: "table",
    id: `${id}-remedies`,
    caption: say.caption,
    columns: [
      { heading: say.remedy },
      { heading: say.now, align: "end" },
      { heading: say.needed, align: "end" },
    ],
    rows: [
      { cells: [say.catches, format.count(input.catches), needed(count(remedies.catches))] },
      { cells: [say.turns, format.plain(input.turns), needed(count(remedies.turnsPerCatch))] },
      {
        cells: [
          say.division,
          mass(scale.divisionKg),
          needed(remedies.divisionKg === null ? null : mass(remedies.divisionKg)),
        ],
      },
    ],
  };
}
