import { consistencyChart } from "../../charts/consistency.ts";
import { repeatabilityChart } from "../../charts/repeatability.ts";
import type { Repeatability } from "../../questions/repeatability.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, list, paragraph } from "../blocks.ts";
import type { Block } from "../document.ts";

/** How repeatable the catches are: the sentence, the fills' scatter, and what the scale makes of it. */
export function repeatabilitySection(
  result: Repeatability,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.repeatability;
  const fillsWithScatter = result.fills.filter(({ scatter }) => scatter !== null).length;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    fillsWithScatter > 1 ? chart(id, repeatabilityChart(result, words)) : null,
    chart(`${id}-fills`, consistencyChart(result, "fills", words)),
    chart(`${id}-operators`, consistencyChart(result, "operators", words)),
    list([say.comparison(result), say.twoCatches(result), say.scale(result)]),
  );
}
