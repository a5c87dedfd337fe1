import type { driftDetail as english } from "../en/drift-detail.ts";
import { nouns } from "./nouns.ts";

/** What is said of what stands behind the verdict on a meter's fills, and what else can be said of them. */
export const driftDetail: typeof english = {
  level: (f) =>
    `${nouns.fillsFromTo(f)}: ${f.mean} im Mittel über ${nouns.fills(f.fills)}${f.inForce ? ", das geltende Niveau" : ""}${f.foundWith === null ? "" : `; gefunden mit Füllung ${f.foundWith}`}${f.proof === null ? "" : `, Beleg ${f.proof.evidence} (Grenze ${f.proof.limit})`}.`,
  odds: (evidence) => `${evidence} zu 1`,
  overwhelming: "mehr als eine Million zu 1",
  apart: (f) =>
    `Füllung ${f.fill} fiel heraus (${f.difference}) und steckt in keinem Mittel und keinem Unterschied.`,
  explanation:
    "Zur Erklärung dieselben Füllungen, einmal am Ende betrachtet. Nichts davon ändert das Urteil, das nach jeder Füllung gefragt wird:",
  trend: (f) =>
    `Trend: Steigung ${f.slope} je Füllung, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.p}, neben der Verschiebung ${f.adjusted} (Holm).`,
  shift: (f) =>
    `Verschiebung: am wahrscheinlichsten bei Füllung ${f.since}, ${f.size}, größtes |t| über alle Teilungen ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.p}, neben dem Trend ${f.adjusted} (Holm). Der Vertrauensbereich nutzt den kritischen Wert dieses Tests, weil die Stelle gesucht wurde.`,
  ranks: (f) =>
    `Mann-Kendall: Wert ${f.score}, ${f.p} (${f.method}). Theil-Sen-Steigung ${f.slope} je Füllung.`,
  rankMethods: { exact: "exakt", normal: "Normalnäherung" },
  individuals: (f) =>
    `Einzelwertkarte: Eingriffsgrenzen ${f.limits} (Mittel ± 2,66 mittlere gleitende Spannweiten); ${f.outside === null ? "keine Füllung außerhalb" : `außerhalb: Füllung ${f.outside}`}. Bei wenigen Füllungen findet diese Karte selten eine Verschiebung.`,
  scopes: {
    "this fill": "In dieser Füllung",
    "within fills": "Innerhalb der Füllungen",
    "between fills": "Von Füllung zu Füllung",
  },
  byCatch: (f) =>
    `${f.where}: Austrag ${f.change} von Probe zu Probe, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.adjusted}${f.byHolm ? " (Holm)" : ""}.`,
  byBinLevel: (f) =>
    `${f.where}: Austrag ${f.change} vom leeren zum vollen Tank, t = ${f.statistic} ${nouns.onDegrees(f.df)}, ${f.adjusted}${f.byHolm ? " (Holm)" : ""}.`,
};
