import { repeatabilityChart } from "../../charts/repeatability.ts";
import type { Repeatability } from "../../questions/repeatability.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";

/** How repeatable the catches are: the sentence, the fills' scatter, and what the scale makes of it. */
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
  ];
}
