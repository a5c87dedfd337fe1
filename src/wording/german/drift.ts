import type { SettlingTest } from "../../questions/drift/settling.ts";
import type { DriftStep } from "../../questions/drift/verdict.ts";
import type { Drift } from "../../questions/drift.ts";
import type { Interval } from "../../results/estimate.ts";
import type { DriftWords } from "../english/drift.ts";
import type { Format } from "../format.ts";
import { withDegrees } from "./counted.ts";
import { germanDriftCharts } from "./drift-charts.ts";

/** Everything said about whether a meter has moved over its fills, in German. */
export function germanDrift(format: Format): DriftWords {
  return {
    heading: "Hat sich der Austrag verschoben?",
    sentence: (result) => `Tank ${result.bin} (${result.product}): ${finding(result, format)}`,
    verdicts: {
      "too few fills": "zu wenige Füllungen",
      steady: "stetig",
      "newest differs": "neueste Füllung anders",
      moved: "verschoben",
      trending: "Trend oder langsames Wandern",
    },
    step: (step, result) => steps(result, format)[step],
    next: "Was zu tun ist",
    power: (result) => powerSentence(result, format),
    falseAlarms: (result) => falseAlarmSentence(result, format),
    limits: (result) =>
      `Zweierlei Linien: Die Bänder kommen aus den Füllungen selbst und sagen, was bei diesem Dosierer üblich ist; die Toleranzlinien (± ${rounded(result.options.tolerance, format)} um ${format.value(result.toleranceLines.center, "delivery")}) kommen aus dem, was gewollt ist. Eine Füllung kann üblich sein und doch daneben, oder unüblich und doch gut genug.`,
    tests: (result) => testSentences(result, format),
    byName: (result) => byNameSentences(result, format),
    settling: (result) => settlingSentences(result, format),
    detail: "So wurde geurteilt",
    ...germanDriftCharts(format),
    table: {
      caption: "Füllungen in zeitlicher Folge",
      fill: "Füllung",
      date: "Datum",
      catches: "Proben",
      delivery: (unit) => `Austrag (${unit})`,
      expected: (unit) => `Aus früheren Füllungen erwartet (${unit})`,
      pValue: "p",
      remark: "Bemerkung",
      outside: "außerhalb ihres Bandes",
      notJudged: "vor dem Produktwechsel",
      missing: (count) =>
        count === 1 ? "davor fehlt eine Füllung" : `davor fehlen ${count} Füllungen`,
      pause: (days) => `${format.count(Math.round(days))} Tage nach der vorigen`,
      notKnown: "",
    },
  };
}

function finding(result: Drift, format: Format): string {
  switch (result.verdict) {
    case "too few fills":
      return `Bisher ${fillWords(result.input.fills)}; ob sich der Austrag verschoben hat, lässt sich ab der vierten Füllung sagen.`;
    case "steady":
      return steadySentence(result, format);
    case "newest differs":
      return newestSentence(result, format);
    case "moved":
      return shiftSentence(result, format);
    case "trending":
      return trendSentence(result, format);
  }
}

function steadySentence(result: Drift, format: Format): string {
  const { newest, input } = result;
  const over = `Kein Zeichen, dass sich der Austrag verschoben hat, über ${fillWords(input.fills)}`;
  if (newest === null) return `${over}.`;
  return `${over}; Füllung ${newest.fill} liegt ${distance(newest.difference.value, format)} dem Mittel der früheren, innerhalb ihres Bandes.`;
}

function newestSentence({ newest, options }: Drift, format: Format): string {
  if (newest === null) return "";
  const band = format.interval(newest.interval, "delivery", null);
  return `Der Austrag der Füllung ${newest.fill} liegt ${distance(newest.difference.value, format)} dem Mittel der ${newest.earlierFills} Füllungen davor, außerhalb des Bandes von ${band}, in dem sie erwartet wurde. Das tut eine von ${Math.round(1 / (1 - options.level))} einwandfreien Füllungen; nehmen Sie also neue Proben, bevor etwas verstellt wird.`;
}

function shiftSentence({ shift, options }: Drift, format: Format): string {
  if (shift === null) return "";
  const { fill, takenAt, earliest, latest } = shift.since;
  const on = takenAt === null ? "" : ` (${format.date(takenAt)})`;
  const range = signedRange(shift.relativeSize.interval, format);
  const size =
    range === null ? "" : `, Vertrauensbereich (${format.percent(options.level, 0)}) ${range}`;
  const place =
    earliest === latest
      ? ""
      : ` Begonnen haben kann es mit jeder Füllung von ${earliest} bis ${latest}.`;
  return `Seit Füllung ${fill}${on} ist der Austrag ${change(shift.relativeSize.value, format)}${size}.${place}`;
}

function trendSentence({ trend, options, input }: Drift, format: Format): string {
  if (trend === null) return "";
  const { value, interval } = trend.relativePerFill;
  const range = signedRange(interval, format);
  const size =
    range === null ? "" : ` (Vertrauensbereich, ${format.percent(options.level, 0)}: ${range})`;
  return `Der Austrag ${value < 0 ? "fällt" : "steigt"} von Füllung zu Füllung um ${format.percent(Math.abs(value))}${size}, über ${fillWords(input.fills)}: ein Trend oder ein langsames Wandern, was so wenige Füllungen nicht unterscheiden können.`;
}

function steps(result: Drift, format: Format): Record<DriftStep, string> {
  const { shift, newest } = result;
  const after =
    shift === null ? "" : ` Seither beträgt er ${format.value(shift.after, "delivery")}.`;
  return {
    "collect fills":
      "Führen Sie die Aufzeichnung fort: Jede Füllung zählt, auch mit einer oder zwei Proben.",
    "carry on": "Machen Sie weiter wie bisher.",
    "catch again":
      result.verdict === "trending"
        ? "Drehen Sie jede Füllung ab und stellen Sie den Antrieb nach ihren eigenen Proben ein; ein Mittel früherer Füllungen ist überholt."
        : `Nehmen Sie in dieser Füllung${newest === null ? "" : ` ${newest.fill}`} neue Proben. Passen sie zu den ersten, stellen Sie den Antrieb danach ein.`,
    recalibrate: `Planen Sie nicht mehr mit der ganzen Saison.${after} Für die Füllung im Tank zählen ihre eigenen Proben.`,
    inspect:
      "Suchen Sie die Ursache: Verschleiß, Anbackungen oder Feuchte am Dosierer, eine veränderte Einstellung, eine andere Partie des Produkts, Schlupf im Antrieb.",
  };
}

function powerSentence({ power, options }: Drift, format: Format): string | null {
  if (power === null) return null;
  const { chance, range, shift, relativeSpread } = power;
  return `Eine Verschiebung um ${rounded(shift, format)} auf halbem Weg wäre in etwa ${format.percent(chance, 0)} solcher Saisons gefunden worden, bei einem Unterschied von ${format.percent(relativeSpread)} zwischen den Füllungen dieses Dosierers; da dieser nur grob bekannt ist, können es auch ${format.range(format.percent(range.lower, 0), format.percent(range.upper, 0))} sein (Vertrauensbereich des Unterschieds, ${rounded(options.level, format)}).`;
}

function falseAlarmSentence({ falseAlarms, input }: Drift, format: Format): string | null {
  const { season, seasonAskedEveryFill, newestFill, eachFill } = falseAlarms;
  if (eachFill === null) return null;
  const newest = `Die neueste Füllung allein liegt in ${rounded(newestFill, format)} der Fälle ohne Grund außerhalb ihres Bandes; die gezeichneten Bänder sind so weit (je ${format.percent(1 - eachFill, 1)}), dass alle Füllungen einer stetigen Saison in ${rounded(1 - season, format)} der Saisons darin bleiben.`;
  if (seasonAskedEveryFill === null) return newest;
  return `Falscher Alarm: Von einem stetigen Dosierer heißt es in höchstens ${rounded(season, format)} der Saisons mit ${fillWords(input.fills)}, er habe sich verschoben oder folge einem Trend, wenn man einmal am Ende fragt; fragt man nach jeder Füllung, in etwa ${format.percent(seasonAskedEveryFill, 0)}. ${newest}`;
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

/** A percentage that somebody chose, without digits that nobody gave it: 5 %, 2,5 %. */
function rounded(fraction: number, format: Format): string {
  const isWhole = Math.abs(100 * fraction - Math.round(100 * fraction)) < 1e-9;
  return format.percent(fraction, isWhole ? 0 : 1);
}

/** "5,2 % niedriger". */
function change(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "niedriger" : "höher"}`;
}

/** "1,3 % unter". */
function distance(relative: number, format: Format): string {
  return `${format.percent(Math.abs(relative))} ${relative < 0 ? "unter" : "über"}`;
}

function signedRange(interval: Interval | null, format: Format): string | null {
  if (interval?.lower == null || interval.upper === null) return null;
  return format.range(format.signedPercent(interval.lower), format.signedPercent(interval.upper));
}

function fillWords(fills: number): string {
  return fills === 1 ? "eine Füllung" : `${fills} Füllungen`;
}
