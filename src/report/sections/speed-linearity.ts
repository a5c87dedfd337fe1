import { speedLinearityChart } from "../../charts/speed-linearity.ts";
import type { SpeedLinearity } from "../../questions/speed-linearity.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, paragraph } from "../blocks.ts";
import type { Block } from "../document.ts";

/** Whether delivery changes with meter speed: the sentence, the catches against speed, and the tests. */
export function speedLinearitySection(
  result: SpeedLinearity,
  words: Words,
  id: string,
): readonly Block[] {
  const say = words.speedLinearity;
  const lead = paragraph(say.sentence(result), "lead");
  const drawn = chart(id, speedLinearityChart(result, words));
  if (drawn === null) return blocks(lead);
  return blocks(
    lead,
    drawn,
    paragraph(say.within(result)),
    details(
      `${id}-detail`,
      say.detail,
      paragraph(say.slope(result)),
      paragraph(say.curvature(result)),
      paragraph(say.lackOfFit(result)),
      paragraph(say.passedOver(result)),
    ),
  );
}
