import { max } from "simple-statistics";
import { influenceChart, influencesShown, residualsChart } from "../../charts/outliers.ts";
import type { Outliers } from "../../questions/outliers.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, chart, details, list, paragraph, table } from "../blocks.ts";
import type { Block } from "../document.ts";

/** Which catches are not to be believed: the sentence, each suspect with its explanations, the charts and the figures. */
export function outliersSection(result: Outliers, words: Words, id: string): readonly Block[] {
  const say = words.outliers;
  const without = result.fills
    .filter(({ standingOut }) => standingOut.length > 1)
    .map((fill) => say.withoutSuspects(fill));
  return blocks(
    paragraph(say.sentence(result), "lead"),
    list([
      ...result.suspects.map(say.suspect),
      ...result.pairs.map(say.pair),
      ...without,
      ...result.leftOut.map(say.leftOut),
    ]),
    result.suspects.length === 0 ? null : paragraph(say.explanationNote, "small"),
    chart(`${id}-residuals`, residualsChart(result, words)),
    details(
      `${id}-detail`,
      say.detail,
      chart(`${id}-influence`, influenceChart(result, words)),
      catchTable(result, words, id),
      paragraph(say.family(result)),
      paragraph(say.scatter(result)),
      paragraph(say.unlikeScatter(result)),
      paragraph(say.named(result.today)),
    ),
  );
}

function catchTable(result: Outliers, words: Words, id: string) {
  const { format } = words;
  const { table: say, verdicts, standardErrors } = words.outliers;
  const ofToday = result.catches.filter(({ fill }) => fill === result.today.fill);
  const changes = new Map(result.influence.map((one) => [one.catch, one.relativeChange] as const));
  const remark = influencesShown(result, words);
  const largest = max(ofToday.map(({ netKg }) => netKg));
  const unit = format.unit("mass", largest);
  const orUnknown = (value: number | null | undefined, said: (known: number) => string) =>
    value == null ? say.unknown : said(value);
  const mass = (kg: number) => format.number(kg, "mass", largest);
  const signed = (share: number) => format.signedPercent(share, 1);
  return table({
    id: `${id}-catches`,
    caption: remark === null ? say.caption(result) : `${say.caption(result)} ${remark}`,
    rows: ofToday
      .map((one) => ({ ...one, change: changes.get(one.catch) }))
      .filter(({ change, family }) => remark === null || change !== undefined || family !== null),
    tone: ({ family }) => (family === null ? null : "problem"),
    columns: [
      { heading: say.catch, cell: (one) => format.count(one.catch) },
      { heading: say.turns, align: "end", cell: ({ turns }) => format.plain(turns, 6) },
      { heading: say.net(unit), align: "end", cell: ({ netKg }) => mass(netKg) },
      {
        heading: say.expected(unit),
        align: "end",
        cell: ({ expectedKg }) => orUnknown(expectedKg, mass),
      },
      {
        heading: say.residual,
        align: "end",
        cell: ({ relativeResidual }) => orUnknown(relativeResidual, signed),
      },
      {
        heading: say.statistic,
        align: "end",
        cell: ({ statistic }) => orUnknown(statistic, standardErrors),
      },
      {
        heading: say.limit,
        align: "end",
        cell: ({ inFill }) => orUnknown(inFill?.criticalValue, (value) => format.fixed(value, 2)),
      },
      {
        heading: say.pValue,
        align: "end",
        cell: ({ inFill }) => orUnknown(inFill?.pValue, format.pNumber),
      },
      { heading: say.change, align: "end", cell: ({ change }) => orUnknown(change, signed) },
      { heading: say.verdict, cell: ({ verdict }) => verdicts[verdict] },
    ],
  });
}
