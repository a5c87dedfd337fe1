import type { Drift } from "../../questions/drift.ts";
import type { DriftWords } from "../english/drift.ts";
import type { Format } from "../format.ts";
import { fillsWords } from "./counted.ts";

/** Words on the charts of fills in order of time, in German. */
export function germanDriftCharts(format: Format): Pick<DriftWords, "chart" | "scoreChart"> {
  return {
    chart: {
      title: ({ bin }) => `Füllungen in zeitlicher Folge, Tank ${bin}`,
      description: (result) => describe(result, format),
      fill: "Füllung",
      date: "Datum",
      delivery: (unit) => `Austrag (${unit})`,
      catches: "Proben",
      tolerance: "Toleranz",
      level: "Niveau",
      trend: "Trend",
      apart: "fiel heraus",
      differs: "fällt heraus",
      gap: ({ afterFill, beforeFill, missingFills, days }) => {
        if (missingFills === 1) return `${afterFill + 1} fehlt`;
        if (missingFills > 1) return `${afterFill + 1}–${beforeFill - 1} fehlen`;
        return `${format.count(Math.round(days ?? 0))} Tage`;
      },
    },
    scoreChart: {
      title: ({ bin }) => `Regelkarten mit Gedächtnis, Tank ${bin}`,
      description: ({ scoreCharts }) =>
        `Zwei Regelkarten der Normalwerte von ${fillsWords(scoreCharts.points.length)}, jede Füllung gegen die davor: ein exponentiell gewichtetes Mittel mit seinen Grenzen und zwei kumulierte Summen mit den Entscheidungslinien bei ${format.plain(scoreCharts.cusum.decision)}. Sie sind für das Auge; das Urteil nutzt sie nicht.`,
      ewma: "EWMA der Normalwerte",
      cusum: "CUSUM der Normalwerte",
      limits: "Grenzen",
      decision: "Entscheidungslinie",
      fill: "Füllung",
      score: "Normalwert",
      above: "darüber",
      below: "darunter",
      caption:
        "Ein Normalwert sagt, wie weit eine Füllung von denen davor liegt, in Einheiten der Standardnormalverteilung. Eine Linie jenseits ihrer Grenzen lenkt den Blick auf eine Füllung; das Urteil nutzt sie nicht.",
    },
  };
}

function describe(result: Drift, format: Format): string {
  const { stretches, differs, stoodApart, trending } = result;
  const levels = stretches.map(
    ({ from, to, mean }) =>
      ` ${from === to ? `Füllung ${from}` : `Füllungen ${from} bis ${to}`}: im Mittel ${format.value(mean, "delivery")}.`,
  );
  const rise =
    trending === null
      ? ""
      : ` Die Gerade ändert sich um ${format.signedPercent(trending.perFill.value)} je Füllung.`;
  const odd = [
    ...stoodApart.map(({ fill }) => String(fill)),
    ...(differs === null ? [] : [String(differs.fill)]),
  ];
  const marked = odd.length === 0 ? "" : ` Herausgehoben: Füllung ${format.list(odd)}.`;
  return `Austrag von ${fillsWords(result.input.fills)} in zeitlicher Folge, jede mit ihrem Vertrauensbereich, das Niveau jedes Abschnitts und die Toleranzlinien um das geltende.${levels.join("")}${rise}${marked}`;
}
