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
      band: "erwartet",
      bandOfNewest: "einmal gefragt",
      tolerance: "Toleranz",
      before: "vorher",
      after: "seither",
      trend: "angepasste Gerade",
      mean: "Mittel früherer Füllungen",
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
        "Ein Normalwert sagt, wie weit eine Füllung von denen davor liegt, in Einheiten der Standardnormalverteilung. Eine Linie jenseits ihrer Grenzen lenkt den Blick auf eine Füllung; ein Urteil geben nur die Tests oben.",
    },
  };
}

function describe(result: Drift, format: Format): string {
  const { verdict, shift, trend, fills, input } = result;
  const drawn = input.fills + input.fillsSetAside;
  const outside = fills.filter(({ asItCame }) => asItCame?.outside).map(({ fill }) => String(fill));
  const found =
    verdict === "moved" && shift !== null
      ? ` Das Mittel springt von ${format.value(shift.before, "delivery")} auf ${format.value(shift.after, "delivery")} bei Füllung ${shift.since.fill}.`
      : verdict === "trending" && trend !== null
        ? ` Eine angepasste Gerade läuft von ${format.value(trend.line.start, "delivery")} nach ${format.value(trend.line.end, "delivery")}.`
        : "";
  const marked =
    outside.length === 0
      ? " Keine Füllung liegt außerhalb ihres Bandes."
      : ` Außerhalb ihres Bandes: Füllung ${format.list(outside)}.`;
  return `Austrag von ${fillsWords(drawn)} in zeitlicher Folge, jede mit ihrem Vertrauensbereich, gegen das aus den Füllungen davor erwartete Band und die Toleranzlinien.${found}${marked}`;
}
