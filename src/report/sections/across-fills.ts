import type { MeterAnswers } from "../../analysis/analyse.ts";
import { acrossFillsChart } from "../../charts/across-fills.ts";
import { fanChart } from "../../charts/fan.ts";
import { shortAndLongChart } from "../../charts/short-and-long.ts";
import type { AcrossFills } from "../../questions/across-fills.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";
import { smallestError } from "../smallest-error.ts";

/** The fills of one bin together: the sentence, every fill against the band for the next, and the figures. */
export function acrossFillsSection(
  result: AcrossFills,
  words: Words,
  id: string,
  { delivery, drift }: Pick<MeterAnswers, "delivery" | "drift">,
): readonly Block[] {
  const say = words.acrossFills;
  return blocks(
    paragraph(say.sentence(result), "lead"),
    chart(id, acrossFillsChart(result, words)),
    chart(`${id}-fan`, fanChart(result, words, delivery, drift)),
    chart(`${id}-short-and-long`, shortAndLongChart(result, words)),
    list([
      say.twoLines(result),
      say.spread(result),
      say.scatter(result),
      say.correlation(result),
      say.meanSentence(result),
      say.leftOut(result),
    ]),
    details(
      `${id}-detail`,
      say.fills.caption,
      fillTable(result, words, id),
      paragraph(say.reml(result)),
    ),
  );
}

function fillTable(result: AcrossFills, { format, acrossFills }: Words, id: string) {
  const say = acrossFills.fills;
  const size = result.mean.value;
  const error = smallestError(result.points.map(({ estimate }) => estimate));
  return table({
    id: `${id}-figures`,
    caption: say.caption,
    rows: result.points,
    columns: [
      { heading: say.fill, align: "end", cell: ({ fill }) => format.fill(fill) },
      {
        heading: say.date,
        cell: ({ takenAt }) => (takenAt === null ? "" : format.date(takenAt)),
      },
      { heading: say.catches, align: "end", cell: ({ catches }) => format.count(catches) },
      { heading: say.turns, align: "end", cell: ({ turns }) => format.plain(turns, 6) },
      {
        heading: say.delivery(format.unit("delivery", size)),
        align: "end",
        cell: ({ estimate }) => format.number(estimate.value, "delivery", size, error),
      },
      {
        heading: say.interval,
        align: "end",
        cell: ({ estimate }) => format.estimateInterval(estimate, "delivery", error) ?? say.unknown,
      },
    ],
  });
}
