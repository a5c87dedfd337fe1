import { speedLinearityChart } from "../../charts/speed-linearity.ts";
import type { SpeedLinearity } from "../../questions/speed-linearity.ts";
import type { Words } from "../../wording/words.ts";
import type { Block } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/** Whether delivery changes with meter speed: the sentence, the catches against speed, and the tests. */
export function speedLinearitySection(
  result: SpeedLinearity,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.speedLinearity;
  const chart = speedLinearityChart(result, words);
  const lead: Block = { kind: "paragraph", role: "lead", text: say.sentence(result) };
  if (chart === null) return [lead];
  return [
    lead,
    chartBlock(`${id}-speed`, chart),
    ...paragraph(say.within(result)),
    {
      kind: "details",
      id: `${id}-speed-detail`,
      summary: say.detail,
      blocks: [
        ...paragraph(say.slope(result)),
        ...paragraph(say.curvature(result)),
        ...paragraph(say.lackOfFit(result)),
        ...paragraph(say.passedOver(result)),
      ],
    },
  ];
}
