import type { skipping as english } from "../en/skipping.ts";
import { nouns } from "./nouns.ts";

const { fills } = nouns;

/** In the dative, as after "bei". */
const inARow = (count: number, andMore: boolean) => {
  if (andMore) return `${count} Füllungen und mehr`;
  if (count === 0) return "keiner Füllung";
  return count === 1 ? "einer einzigen Füllung" : `bis zu ${fills(count)}`;
};

/** What is said of leaving the drive alone. */
export const skipping: typeof english = {
  labels: {
    heading: "Was es riskiert, nicht abzudrehen",
    noPermission:
      "Für gebeiztes Saatgut, Impfmittel, Granulate und Nährstoffe gelten Mengen nach Etikett oder Gesetz: Eine Wahrscheinlichkeit, daneben zu liegen, ist keine Erlaubnis dazu.",
    chances: {
      caption: "Wahrscheinlichkeit eines Mengenfehlers bei der nächsten Füllung",
      limit: "Abweichung über",
      heavy: "Zu viel",
      light: "Zu wenig",
      either: "In beide Richtungen",
      bound: "Höchstens (90 %, unabhängige Füllungen)",
    },
    risk: {
      caption: "Füllungen in Folge ohne Probe",
      fills: "Füllungen",
      any: "Wahrscheinlichkeit, dass eine weiter als die Toleranz daneben liegt",
      bound: "Höchstens (90 %, unabhängige Füllungen)",
      expected: "Erwartete Füllungen daneben",
    },
    detail: "Wahrscheinlichkeiten in Zahlen",
  },
  assumptions:
    "Das nimmt die nächste Füllung als eine weitere gleicher Art: gleiches Produkt, kein Trend, nichts am Dosierer verändert. Wo sich zeitlich nahe Füllungen ähneln, ist die erste Füllung nach dem Abdrehen besser als hier gesagt, und spätere sind schlechter.",
  bases: {
    "as measured":
      "Wahrscheinlichkeiten und mittlerer Fehler zählen die Streuung der Proben als Streuung der Füllungen mit; sie sind daher eher zu groß.",
    "without catch scatter":
      "Die Wahrscheinlichkeiten zählen die Streuung der Proben als Streuung der Füllungen mit; der mittlere Fehler lässt sie weg, nicht aber, wie unsicher das Mittel ist.",
  },
  /** In the dative, as after "bei". */
  assumed: {
    "book value": "dem Tabellenwert",
    "last fill": "dem Wert der vorigen Füllung",
    "average of fills": "dem Mittel der Füllungen",
  },
  valueOfFill: (fill) => `dem Wert der Füllung ${fill}`,
  errorUnknown: (f) =>
    `Tank ${f.bin} (${f.product}), Antrieb belassen bei ${f.leftAt}: Wie weit die nächste Füllung daneben läge, lässt sich aus diesen Füllungen nicht sagen.`,
  errorOnly: (f) =>
    `Tank ${f.bin} (${f.product}), Antrieb belassen bei ${f.leftAt}: Der Mengenfehler der nächsten Füllung wird bei ${f.band} erwartet (Vorhersagebereich, ${f.level}); eine Wahrscheinlichkeit oder Kosten lassen sich noch nicht angeben.`,
  error: (f) =>
    `Tank ${f.bin} (${f.product}), Antrieb belassen bei ${f.leftAt}: Der Mengenfehler der nächsten Füllung wird bei ${f.band} erwartet (Vorhersagebereich, ${f.level}).`,
  chance: (f) =>
    `Die Wahrscheinlichkeit für mehr als ${f.limit} beträgt höchstens ${f.atMost} (mit 90 % Sicherheit, für unabhängige Füllungen), gerechnet ${f.chance}.`,
  chanceTooSmall: (f) =>
    `Die Wahrscheinlichkeit für mehr als ${f.limit} beträgt höchstens ${f.atMost} (mit 90 % Sicherheit, für unabhängige Füllungen); eine unter ${f.least} ist aus so wenigen Füllungen nicht zu erkennen.`,
  leastChance: (least) => `${least}, weniger ist nicht zu erkennen`,
  leastChanceOnly: (least) =>
    `Eine Wahrscheinlichkeit unter ${least} wird hier nicht genannt: Dazu braucht es mindestens sechs Füllungen auf einem Niveau.`,
  onAverage: (error) => `Im Mittel liegt die Menge um ${error} daneben.`,
  onAverageWithout: (f) =>
    `Im Mittel liegt die Menge um ${f.error} daneben, wenn die Streuung der Proben nicht als Unterschied der Füllungen zählt; zählt sie mit, um ${f.counted}.`,
  boundsOfAlikeFills: (holds) =>
    `Die 90-%-Grenzen gelten für unabhängige Füllungen: Wo sich benachbarte Füllungen ähneln (Korrelation 0,5), trafen sie in Simulationen nur in ${holds} der Fälle zu.`,
  today: (f) =>
    `Wäre der Antrieb bei Füllung ${f.fill} bei ${f.assumed} geblieben, hätte der Mengenfehler ${f.error}${f.band === null ? "" : ` (${f.band})`} betragen.`,
  share: (f) => `${f.content} der Füllungen liegen bei ${f.band}, mit ${f.level} Sicherheit.`,
  tooFewToSkip: (tolerance) =>
    `So wenige Füllungen sagen nicht, ob eine Füllung ohne Abdrehen innerhalb von ${tolerance} bleibt: Drehen Sie jede Füllung ab.`,
  noneInARow: (f) =>
    `Schon eine einzige Füllung ohne Abdrehen liegt mit einer Wahrscheinlichkeit von über ${f.acceptedRisk} mehr als ${f.tolerance} daneben: Drehen Sie jede Füllung ab.`,
  inARow: (f) =>
    `Nicht abgedreht in Folge: Die Wahrscheinlichkeit, dass eine Füllung mehr als ${f.tolerance} daneben liegt, bleibt innerhalb von ${f.acceptedRisk} an der Obergrenze des Risikos (90 %, unabhängige Füllungen) bei ${inARow(f.byBound, f.openEnded && f.most === null)}${f.most === null ? "" : `, gerechnet bei ${inARow(f.most, f.openEnded)}`}.`,
  law: (f) =>
    `Drehen Sie jede Füllung ab: Ohne Abdrehen verstößt die nächste mit einer Wahrscheinlichkeit von höchstens ${f.atMost} gegen Etikett oder Gesetz (${f.limits}; 90 % Sicherheit, unabhängige Füllungen), gerechnet ${f.chance}.`,
  lawUnknown: (limits) =>
    `Drehen Sie jede Füllung ab: Wie leicht die nächste ohne Abdrehen gegen Etikett oder Gesetz verstößt (${limits}), lässt sich nicht sagen.`,
  practice: (f) =>
    `In der Praxis heißt es, nicht abzudrehen koste ${f.figure} Fehler; eine Quelle dafür wurde nicht gefunden${f.isChecked ? "" : ", und diese Füllungen können es nicht prüfen"}.`,
  compared: {
    smaller: (end) => `Das Band dieses Dosierers endet bei ${end}: kleiner.`,
    alike: (end) => `Das Band dieses Dosierers endet bei ${end}: etwa wie gesagt.`,
    larger: (end) => `Das Band dieses Dosierers reicht bis ${end}: größer.`,
  },
  chart: {
    title: (f) => `Mengenfehler der nächsten Füllung, wenn nicht abgedreht wird, Tank ${f.bin}`,
    error: "Mengenfehler (%; über null: mehr als gewollt)",
  },
  chartDescription: (f) =>
    `Dichte des Mengenfehlers, wenn der Antrieb belassen wird bei ${f.leftAt}. Wahrscheinlichkeit für mehr als ${f.chances}.`,
};
