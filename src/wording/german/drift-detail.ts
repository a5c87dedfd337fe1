import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import type { DriftWords } from "../english/drift.ts";
import type { Format } from "../format.ts";
import { fillsWords, withDegrees } from "./counted.ts";

/** What stands behind the verdict on a meter's fills, and what else can be said of them, in German. */
export function germanDriftDetail(
  format: Format,
): Pick<DriftWords, "levels" | "explanation" | "tests" | "byName" | "settling"> {
  return {
    levels: (result) => levelSentences(result, format),
    explanation:
      "Zur Erklärung dieselben Füllungen, einmal am Ende betrachtet. Nichts davon ändert das Urteil, das nach jeder Füllung gefragt wird:",
    tests: (result) => testSentences(result, format),
    byName: (result) => byNameSentences(result, format),
    settling: (result) => settlingSentences(result, format),
  };
}

function levelSentences(
  { stretches, changes, stoodApart }: Drift,
  format: Format,
): readonly string[] {
  const levels = stretches.map(({ from, to, fills, mean }, i) => {
    const name = from === to ? `Füllung ${from}` : `Füllungen ${from} bis ${to}`;
    const change = changes.find(({ since }) => since.fill === from);
    const found = change === undefined ? "" : `; gefunden mit Füllung ${change.foundWith}`;
    const evidence =
      change === undefined || change.evidence === null || change.limit === null
        ? ""
        : `, Beleg ${odds(change.evidence, format)} (Grenze ${format.plain(change.limit)} zu 1)`;
    return `${name}: ${format.value(mean, "delivery")} im Mittel über ${fillsWords(fills)}${i === stretches.length - 1 ? ", das geltende Niveau" : ""}${found}${evidence}.`;
  });
  const odd = stoodApart.map(
    ({ fill, difference }) =>
      `Füllung ${fill} fiel heraus (${format.signedPercent(difference)}) und steckt in keinem Mittel und keinem Unterschied.`,
  );
  return [...(levels.length > 1 ? levels : []), ...odd];
}

const overwhelming = 1e6;

function odds(evidence: number, format: Format): string {
  return evidence > overwhelming ? "mehr als eine Million zu 1" : `${format.plain(evidence)} zu 1`;
}

function testSentences({ trend, shift }: Drift, format: Format): readonly string[] {
  return [
    ...(trend === null
      ? []
      : [
          `Trend: Steigung ${format.signedPercent(trend.relativePerFill.value)} je Füllung, t = ${format.plain(trend.statistic)} ${withDegrees(trend.df, format)}, ${format.pValue(trend.pValue)}, neben der Verschiebung ${format.pValue(trend.adjustedPValue)} (Holm).`,
        ]),
    ...(shift === null
      ? []
      : [
          `Verschiebung: am wahrscheinlichsten bei Füllung ${shift.since.fill}, ${format.signedPercent(shift.relativeSize.value)}, größtes |t| über alle Teilungen ${format.plain(Math.abs(shift.statistic))} ${withDegrees(shift.df, format)}, ${format.pValue(shift.pValue)}, neben dem Trend ${format.pValue(shift.adjustedPValue)} (Holm). Der Vertrauensbereich nutzt den kritischen Wert dieses Tests, weil die Stelle gesucht wurde.`,
        ]),
  ];
}

function byNameSentences({ byName }: Drift, format: Format): readonly string[] {
  if (byName === null) return [];
  const { mannKendall, theilSenPerFill, individuals } = byName;
  const { lower, upper, center, outside } = individuals;
  const limits = { lower, upper, level: 0, about: "next fill" } satisfies Interval;
  return [
    `Mann-Kendall: Wert ${format.count(mannKendall.score)}, ${format.pValue(mannKendall.pValue)} (${mannKendall.method === "exact" ? "exakt" : "Normalnäherung"}). Theil-Sen-Steigung ${format.signedPercent(theilSenPerFill / center)} je Füllung.`,
    `Einzelwertkarte: Eingriffsgrenzen ${format.interval(limits, "delivery", null)} (Mittel ± ${format.plain(2.66)} mittlere gleitende Spannweiten); ${outside.length === 0 ? "keine Füllung außerhalb" : `außerhalb: Füllung ${format.list(outside.map(String))}`}. Bei wenigen Füllungen findet diese Karte selten eine Verschiebung.`,
  ];
}

function settlingSentences({ settling }: Drift, format: Format): readonly string[] {
  return settling.map((test) => {
    const estimate = test.perCatch ?? test.emptyToFull;
    const size = estimate === null ? "" : ` ${format.signedPercent(estimate.value)}`;
    const unit = test.perCatch === null ? "vom leeren zum vollen Tank" : "von Probe zu Probe";
    return `${settlingHeads[test.scope]}: Austrag${size} ${unit}, t = ${format.plain(test.statistic)} ${withDegrees(test.df, format)}, ${format.pValue(test.adjustedPValue)}${test.adjustedPValue === test.pValue ? "" : " (Holm)"}.`;
  });
}

const settlingHeads: Record<SettlingTest["scope"], string> = {
  "this fill": "In dieser Füllung",
  "within fills": "Innerhalb der Füllungen",
  "between fills": "Von Füllung zu Füllung",
};
