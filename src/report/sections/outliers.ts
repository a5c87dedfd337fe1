import { influenceChart, residualsChart } from "../../charts/outliers.ts";
import type { CatchJudgement, Outliers } from "../../questions/outliers.ts";
import type { Words } from "../../wording/words.ts";
import type { Block, Row } from "../document.ts";
import { chartBlock } from "./chart-block.ts";
import { paragraph } from "./paragraph.ts";

/** Which catches are not to be believed: the sentence, each suspect with its explanations, the charts and the figures. */
export function outliersSection(result: Outliers, words: Words, id: string): readonly Block[] {
  const say = words.outliers;
  const residuals = residualsChart(result, words);
  const influence = influenceChart(result, words);
  const findings = [...result.suspects.map(say.suspect), ...result.pairs.map(say.pair)];
  const leftOut = result.leftOut.map(say.leftOut);
  const without = result.fills.flatMap((fill) =>
    fill.standingOut.length > 1 ? (say.withoutSuspects(fill) ?? []) : [],
  );
  const items = [...findings, ...without, ...leftOut];
  return [
    { kind: "paragraph", role: "lead", text: say.sentence(result) },
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
    ...(result.suspects.length === 0
      ? []
      : [{ kind: "paragraph", role: "small", text: say.explanationNote } as const]),
    ...(residuals === null ? [] : [chartBlock(`${id}-residuals`, residuals)]),
    {
      kind: "details",
      id: `${id}-outliers-detail`,
      summary: say.detail,
      blocks: [
        ...(influence === null ? [] : [chartBlock(`${id}-influence`, influence)]),
        catchTable(result, words, id),
        { kind: "paragraph", text: say.family(result) },
        { kind: "paragraph", text: say.scatter(result) },
        ...paragraph(say.unlikeScatter(result)),
        { kind: "paragraph", text: say.named(result.today) },
      ],
    },
  ];
}

function catchTable(result: Outliers, words: Words, id: string): Block {
  const say = words.outliers.table;
  const { format } = words;
  const ofToday = result.catches.filter(({ fill }) => fill === result.today.fill);
  const largest = Math.max(...ofToday.map(({ netKg }) => netKg));
  const unit = format.unit("mass", largest);
  return {
    kind: "table",
    id: `${id}-catch-judgements`,
    caption: say.caption(result),
    columns: [
      { heading: say.catch },
      { heading: say.turns, align: "end" },
      { heading: say.net(unit), align: "end" },
      { heading: say.expected(unit), align: "end" },
      { heading: say.residual, align: "end" },
      { heading: say.statistic, align: "end" },
      { heading: say.limit, align: "end" },
      { heading: say.pValue, align: "end" },
      { heading: say.change, align: "end" },
      { heading: say.verdict },
    ],
    rows: ofToday.map((one) => judgementRow(one, result, words, largest)),
  };
}

function judgementRow(
  one: CatchJudgement,
  { influence }: Outliers,
  words: Words,
  largest: number,
): Row {
  const { format } = words;
  const { table, verdicts, standardErrors } = words.outliers;
  const change = influence.find((other) => other.catch === one.catch)?.relativeChange ?? null;
  const orUnknown = (value: number | null, said: (known: number) => string) =>
    value === null ? table.unknown : said(value);
  return {
    ...(one.family === null ? {} : { tone: "problem" as const }),
    cells: [
      format.count(one.catch),
      format.plain(one.turns, 6),
      format.number(one.netKg, "mass", largest),
      orUnknown(one.expectedKg, (kg) => format.number(kg, "mass", largest)),
      orUnknown(one.relativeResidual, (share) => format.signedPercent(share, 1)),
      orUnknown(one.statistic, standardErrors),
      orUnknown(one.inFill?.criticalValue ?? null, (value) => format.plain(value)),
      orUnknown(one.inFill?.pValue ?? null, (value) => format.pNumber(value)),
      orUnknown(change, (share) => format.signedPercent(share, 1)),
      verdicts[one.verdict],
    ],
  };
}
