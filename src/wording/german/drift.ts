import type { DriftPower } from "../../questions/drift/rates.ts";
import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import { driftCharts } from "../de/drift-charts.ts";
import { driftDetail } from "../de/drift-detail.ts";
import type { DriftWords } from "../english/drift.ts";
import type { Format } from "../format.ts";
import { driftChartsSayings } from "../sayings/drift-charts.ts";
import { driftDetailSayings } from "../sayings/drift-detail.ts";
import { catchesWords, earlierFillsWords, fillsWords } from "./counted.ts";

/** Everything said about whether a meter has moved over its fills, in German. */
export function germanDrift(format: Format): DriftWords {
  return {
    heading: "Hat sich der Austrag verschoben?",
    sentence: (result) => `Tank ${result.bin} (${result.product}): ${finding(result, format)}`,
    verdicts: {
      "not asked": "nicht gefragt",
      "too few fills": "zu wenige Füllungen",
      steady: "bisher stetig",
      "fill differs": "neueste Füllung anders",
      "fill differs, confirmed": "neueste Füllung anders, bestätigt",
      "stood apart": "stetig bis auf eine Füllung",
      moved: "verschoben",
      trending: "Trend oder langsames Wandern",
    },
    step: (step, result) => steps(result, format)[step],
    next: "Was zu tun ist",
    falseAlarms: (result) => falseAlarmSentence(result, format),
    limits: (result) =>
      `Die gezeichneten Niveaus kommen aus den Füllungen selbst und sagen, was bei diesem Dosierer üblich ist; die Toleranzlinien (± ${rounded(result.options.tolerance, format)} um ${format.value(result.toleranceLines.center, "delivery")}) kommen aus dem, was gewollt ist. Eine Füllung kann üblich sein und doch daneben, oder unüblich und doch gut genug.`,
    detail: "So wurde geurteilt",
    ...driftDetailSayings(format, driftDetail),
    ...driftChartsSayings(format, driftCharts),
    table: {
      caption: "Füllungen in zeitlicher Folge, und was bei jeder entschieden wurde",
      fill: "Füllung",
      date: "Datum",
      catches: "Proben",
      delivery: (unit) => `Austrag (${unit})`,
      pValue: "p gegen ihr Niveau",
      evidence: "Beleg für eine bleibende Verschiebung (Grenze)",
      remark: "Bemerkung",
      outcomes: {
        "too few": null,
        steady: null,
        differs: "fällt heraus",
        moved: "Verschiebung gefunden",
        trending: "Trend",
      },
      apart: "fiel heraus, zählt nicht mit",
      begins: {
        log: null,
        moved: "neues Niveau ab hier",
        setup: "beginnt neu, nach den Angaben",
        unsettled: "fiel heraus, nie geklärt",
      },
      missing: (count) =>
        count === 1 ? "davor fehlt eine Füllung" : `davor fehlen ${count} Füllungen`,
      pause: (days) => `${format.count(Math.round(days))} Tage nach der vorigen`,
    },
  };
}

function finding(result: Drift, format: Format): string {
  switch (result.verdict) {
    case "not asked":
      return "Ob sich der Austrag verschoben hat, wurde bei diesen Füllungen nicht gefragt.";
    case "too few fills":
      return `Bisher ${fillsWords(result.input.fillsInForce)}${afresh(result)}; ob sich der Austrag verschoben hat, lässt sich ab der vierten Füllung sagen.`;
    case "steady":
      return steadySentence(result, format);
    case "fill differs":
    case "fill differs, confirmed":
      return differsSentence(result, format);
    case "stood apart":
      return apartSentence(result, format);
    case "moved":
      return movedSentence(result, format);
    case "trending":
      return trendSentence(result, format);
  }
}

function afresh({ stretches }: Drift): string {
  const inForce = stretches.at(-1);
  return inForce?.begins === "setup" ? ` seit dem Neubeginn mit Füllung ${inForce.from}` : "";
}

function steadySentence(result: Drift, format: Format): string {
  const { input, changes, stretches } = result;
  const [change, inForce] = [changes.at(-1), stretches.at(-1)];
  const over = `Bisher stetig, über ${fillsWords(input.fillsInForce)}${afresh(result)}`;
  if (inForce?.begins === "moved" && change !== undefined)
    return `${over} seit Füllung ${change.since.fill}, mit der sich der Austrag um ${format.signedPercent(change.size.value)} verschoben hatte.`;
  return `${over}.${powerSentence(result, format)}`;
}

function powerSentence({ power }: Drift, format: Format): string {
  if (power === null) return "";
  return ` Eine bleibende Verschiebung um ${rounded(power.shift, format)} seit Füllung ${power.sinceFill} hätte sich bis jetzt in ${logs(power)} gezeigt.`;
}

const tenths = 10;

/** "etwa 6 von 10 solchen Aufzeichnungen": Genauer kennt eine solche Aussicht niemand. */
function logs({ chance, bound }: DriftPower): string {
  const [round, word] = {
    about: [Math.round, "etwa"] as const,
    "at least": [Math.floor, "mindestens"] as const,
    "at most": [Math.ceil, "höchstens"] as const,
  }[bound];
  const count = round(tenths * chance);
  if (count === 0) return "kaum einer solchen Aufzeichnung";
  return count === tenths
    ? "fast jeder solchen Aufzeichnung"
    : `${word} ${count} von ${tenths} solchen Aufzeichnungen`;
}

function differsSentence({ differs }: Drift, format: Format): string {
  if (differs === null) return "";
  const { fill, difference, earlierFills, catches, pValue, limit, confirmed } = differs;
  const size = `Der Austrag der Füllung ${fill} ist ${change(difference.value, format)} als der ${earlierFillsWords(earlierFills)}`;
  return confirmed
    ? `${size}, bestätigt durch ${catchesWords(catches)}.`
    : `${size}: Sie fällt heraus (${format.pValue(pValue)}). Das tut eine von ${Math.round(1 / limit)} einwandfreien Füllungen.`;
}

function apartSentence(result: Drift, format: Format): string {
  const odd = result.stoodApart.at(-1);
  if (odd === undefined) return "";
  const { fill, difference, backWith } = odd;
  return `Füllung ${fill} war der Ausreißer (Austrag ${change(difference, format)}); Füllung ${backWith} liegt wieder wie früher. Füllung ${fill} zählt weder im Mittel noch im Unterschied der Füllungen.${powerSentence(result, format)}`;
}

function movedSentence({ moved, options }: Drift, format: Format): string {
  if (moved === null) return "";
  const { since, size } = moved;
  const on = since.takenAt === null ? "" : ` (${format.date(since.takenAt)})`;
  const range = signedRange(size.interval, format);
  const interval =
    range === null ? "" : `, Vertrauensbereich (${format.percent(options.level, 0)}) ${range}`;
  return `Seit Füllung ${since.fill}${on} ist der Austrag etwa ${change(size.value, format)}${interval}.`;
}

function trendSentence({ trending, options }: Drift, format: Format): string {
  if (trending === null) return "";
  const { value, interval } = trending.perFill;
  const range = signedRange(interval, format);
  const size =
    range === null ? "" : `, Vertrauensbereich (${format.percent(options.level, 0)}) ${range}`;
  return `Jede Füllung gibt ${value < 0 ? "weniger" : "mehr"} als die vorige, etwa ${format.percent(Math.abs(value))} je Füllung über ${fillsWords(trending.fills)}${size}: ein Trend oder ein langsames Wandern. Frühere Füllungen sagen nichts mehr über die nächste.`;
}

function steps({ moved, differs }: Drift, format: Format): Record<DriftStep, string> {
  const level =
    moved === null
      ? ""
      : ` Seit Füllung ${moved.since.fill} beträgt der Austrag im Mittel ${format.value(moved.after, "delivery")}.`;
  const confirm =
    differs === null
      ? ""
      : ` Mit insgesamt ${catchesWords(differs.catchesToConfirm)} oder mehr, von denen keine zweifelhaft ist, gilt die Füllung, wie sie ist.`;
  return {
    "collect fills":
      "Führen Sie die Aufzeichnung fort: Jede Füllung zählt, auch mit einer oder zwei Proben.",
    "carry on": "Machen Sie weiter wie bisher.",
    "catch again": `Nehmen Sie in dieser Füllung neue Proben, bevor etwas verstellt wird.${confirm}`,
    "catch every fill":
      "Drehen Sie jede Füllung ab und stellen Sie den Antrieb nach ihren eigenen Proben ein.",
    "set by this fill": `Es gilt der heutige Wert.${level}`,
    "look for the cause":
      "Suchen Sie die Ursache: Verschleiß, Anbackungen oder Feuchte am Dosierer, eine veränderte Einstellung, eine andere Partie des Produkts, Schlupf im Antrieb.",
  };
}

function falseAlarmSentence({ falseAlarms, verdict, power }: Drift, format: Format): string | null {
  if (verdict === "not asked") return null;
  const { fills, season, alike } = falseAlarms;
  const basis =
    power === null
      ? ""
      : ` Was sich bis jetzt gezeigt hätte, ist mit einem typischen Unterschied von ${format.percent(power.relativeSpread)} zwischen den Füllungen dieses Dosierers gerechnet.`;
  return `Nach jeder Füllung gefragt, heißt ein stetiger Dosierer in einer von ${Math.round(1 / season)} Saisons mit ${fills} Füllungen verschoben oder anders; öfter, wenn die Füllungen von selbst langsam wandern (in einer von ${Math.round(1 / alike.season)} bei einer Ähnlichkeit von ${format.plain(alike.correlation)} von Füllung zu Füllung).${basis}`;
}

/** A percentage that somebody chose, without digits that nobody gave it: 5 %, 2,5 %. */
function rounded(fraction: number, format: Format): string {
  const isWhole = Math.abs(100 * fraction - Math.round(100 * fraction)) < 1e-9;
  return format.percent(fraction, isWhole ? 0 : 1);
}

/** "5,2 % niedriger". */
function change(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "niedriger" : "höher"}`;
}

function signedRange(interval: Interval | null, format: Format): string | null {
  if (interval?.lower == null || interval.upper === null) return null;
  return format.range(format.signedPercent(interval.lower), format.signedPercent(interval.upper));
}
