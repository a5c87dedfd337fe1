import type { skipping as english } from "../en/skipping.ts";
import { nouns } from "./nouns.ts";

const { fills } = nouns;

type Row = Parameters<(typeof english)["inARowByEstimate"]>[0];

/** In the dative, as after "bei". */
const inARow = ({ most, openEnded }: Row) => {
  const counted = most === 1 ? fills(most) : `${most} Füllungen`;
  return openEnded ? `${counted} und mehr` : most === 1 ? counted : `bis zu ${counted}`;
};

/** What is said of leaving the drive alone. */
export const skipping: typeof english = {
  labels: {
    heading: "Was es riskiert, nicht abzudrehen",
    noPermission:
      "Für gebeiztes Saatgut, Impfmittel, Granulate und Nährstoffe gelten Mengen nach Etikett oder Gesetz: Eine Chance, daneben zu liegen, ist keine Erlaubnis dazu.",
    assumptions:
      "Das nimmt die nächste Füllung als eine weitere gleicher Art: gleiches Produkt, kein Trend, nichts am Dosierer verändert. Wo sich zeitlich nahe Füllungen ähneln, ist die erste Füllung nach dem Abdrehen besser als hier gesagt, und spätere sind schlechter.",
    chances: {
      caption: "Chance eines Mengenfehlers bei der nächsten Füllung",
      limit: "Abweichung über",
      heavy: "Zu viel",
      light: "Zu wenig",
      either: "In beide Richtungen",
      bound: "Höchstens (90 %)",
    },
    risk: {
      caption: "Füllungen in Folge ohne Probe",
      fills: "Füllungen",
      any: "Chance, dass eine weiter als die Toleranz daneben liegt",
      bound: "Höchstens (90 %)",
      expected: "Erwartete Füllungen daneben",
    },
    detail: "Chancen in Zahlen",
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
    `Tank ${f.bin} (${f.product}), Antrieb belassen bei ${f.leftAt}: Der Mengenfehler der nächsten Füllung wird bei ${f.band} erwartet (Vorhersagebereich, ${f.level}); eine Chance oder Kosten lassen sich noch nicht angeben.`,
  error: (f) =>
    `Tank ${f.bin} (${f.product}), Antrieb belassen bei ${f.leftAt}: Der Mengenfehler der nächsten Füllung wird bei ${f.band} erwartet (Vorhersagebereich, ${f.level}).`,
  chance: (f) =>
    `Die Chance auf mehr als ${f.limit} beträgt höchstens ${f.atMost} (mit 90 % Sicherheit; geschätzt ${f.chance}); im Mittel liegt die Menge um ${f.onAverage} daneben.`,
  today: (f) =>
    `Wäre der Antrieb bei Füllung ${f.fill} bei ${f.assumed} geblieben, hätte der Mengenfehler ${f.error}${f.band === null ? "" : ` (${f.band})`} betragen.`,
  share: (f) => `${f.content} der Füllungen liegen bei ${f.band}, mit ${f.level} Sicherheit.`,
  noneInARow: (f) =>
    `Nicht einmal eine Füllung kann ohne Abdrehen bleiben, wenn die Chance, dass eine davon mehr als ${f.tolerance} daneben liegt, höchstens ${f.acceptedRisk} betragen soll: Drehen Sie jede Füllung ab.`,
  noneByBound: (f) =>
    `Nach der Obergrenze des Risikos kann nicht einmal eine Füllung ohne Abdrehen bleiben, wenn die Chance, dass eine davon mehr als ${f.tolerance} daneben liegt, höchstens ${f.acceptedRisk} betragen soll: Drehen Sie jede Füllung ab.`,
  inARow: (f) =>
    `Bei ${inARow(f)} in Folge ohne Abdrehen beträgt die Chance, dass eine davon mehr als ${f.tolerance} daneben liegt, nach der Obergrenze des Risikos höchstens ${f.acceptedRisk}.`,
  inARowByEstimate: (f) => `Nach der Schätzung allein wäre das bei ${inARow(f)} so.`,
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
    today: "diese Füllung, nach ihren Proben",
    intended: "wie gewollt",
  },
  chartDescription: (f) =>
    `Dichte des Mengenfehlers, wenn der Antrieb belassen wird bei ${f.leftAt}. Chance auf mehr als ${f.chances}.`,
  chartTolerance: (tolerance) => `Toleranz ${tolerance}`,
};
