import type { driftCharts as english } from "../en/drift-charts.ts";
import { nouns } from "./nouns.ts";

/** What is said on the charts of fills in order of time. */
export const driftCharts: typeof english = {
  chart: {
    title: (f) => `Füllungen in zeitlicher Folge, Tank ${f.bin}`,
    fill: "Füllung",
    date: "Datum",
    delivery: (unit) => `Austrag (${unit})`,
    catches: "Proben",
  },
  shown: (fills) =>
    `Austrag von ${nouns.fills(fills)} in zeitlicher Folge, jede mit ihrem Vertrauensbereich, das Niveau jedes Abschnitts und die Toleranzlinien um das geltende.`,
  level: (f) => `${nouns.fillsFromTo(f)}: im Mittel ${f.mean}.`,
  slope: (perFill) => `Die Gerade ändert sich um ${perFill} je Füllung.`,
  marked: (fills) => `Herausgehoben: Füllung ${fills}.`,
  oneMissing: (fill) => `${fill} fehlt`,
  missing: (f) => `${f.from}–${f.to} fehlen`,
  pause: (days) => `${days} Tage`,
  scoreChart: {
    title: (f) => `Regelkarten mit Gedächtnis, Tank ${f.bin}`,
    ewma: "EWMA der Normalwerte",
    cusum: "CUSUM der Normalwerte",
    fill: "Füllung",
    score: "Normalwert",
    above: "darüber",
    below: "darunter",
    caption:
      "Ein Normalwert sagt, wie weit eine Füllung von denen davor liegt, in Einheiten der Standardnormalverteilung. Eine Linie jenseits ihrer Grenzen lenkt den Blick auf eine Füllung; das Urteil nutzt sie nicht.",
  },
  noticing: {
    title: (f) => `Wie sicher fiele eine bleibende Verschiebung von Tank ${f.bin} auf?`,
    shift: "Größe der Verschiebung (%)",
    chance: {
      about: "Chance, dass sie auffällt (%)",
      "at least": "Chance, dass sie auffällt, mindestens (%)",
    },
  },
  noticed: (f) =>
    `Eine Verschiebung um ${f.shift}: fällt nach ${nouns.fills(f.fillsSince)} mit einer Chance von ${f.chance} auf`,
  noticingDescription: (f) =>
    `Chance, dass eine bleibende Verschiebung, die mit der nächsten Füllung beginnt, auffällt, nach ihrer Größe und der Zahl der Füllungen, die sie zeigen; davor ${nouns.fills(f.fillsBefore)}, die sich typischerweise um ${f.spread} unterscheiden. ${f.chances}.`,
  scores: (f) =>
    `Zwei Regelkarten der Normalwerte von ${nouns.fills(f.fills)}, jede Füllung gegen die davor: ein exponentiell gewichtetes Mittel mit seinen Grenzen und zwei kumulierte Summen mit den Entscheidungslinien bei ${f.decision}. Sie sind für das Auge; das Urteil nutzt sie nicht.`,
};
