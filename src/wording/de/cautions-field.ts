import type { cautionsField as english } from "../en/cautions-field.ts";
import { lawful } from "./lawful.ts";
import { setting } from "./setting.ts";
import { leftOut } from "./uncertainty-sources.ts";

type Off = Pick<Parameters<(typeof english)["drive-set-off"]>[0], "off" | "less">;

const lessOrMore = (f: Off) => `${f.off} ${f.less ? "weniger" : "mehr"}`;

/** Cautions about the way from delivery to the drive, to the field, and to the outlets. */
export const cautionsField: typeof english = {
  labels: {
    lawful,
    setting: setting.missing,
    leftOut,
    figures: { filled: "eingefüllte Masse", left: "Restmasse", area: "Fläche" },
    noRateHeld:
      "Keine Menge lässt sich bei jeder Arbeitsgeschwindigkeit halten: Die Drehzahlen des Antriebs liegen für so verschiedene Geschwindigkeiten zu nahe beieinander.",
    bends: (p) =>
      `Der Austrag krümmt sich mit der Drehzahl (${p}); eine Gerade und der damit errechnete Bereich der Drehzahlen passen nicht.`,
  },
  // setting
  "setting-needs": (missing) => `Nicht angegeben, und was es braucht, fehlt daher: ${missing}.`,
  "delivery-not-told-from-zero": () =>
    "Die Proben sind so wenige oder streuen so stark, dass sich kein Austrag bis hinab zu null ausschließen lässt; die Einstellung hat daher keine obere Grenze. Nehmen Sie mehr Proben, bevor Sie den Antrieb einstellen.",
  "slip-not-given": () =>
    "Der Schlupf des Antriebsrads ist nicht angegeben und zählt als null. Ein Rad, das auf 3 % des Weges rutscht, bringt 3 % weniger aus, als eingestellt ist: Messen Sie seinen Weg bei der Arbeit, beladen, Schare im Boden, und niemand geht neben der fahrenden Maschine.",
  "target-out-of-reach": (f) =>
    `Mit diesem Austrag kann der Antrieb ${f.target} nicht ausbringen; er reicht von ${f.reach}. Nötig wäre eine andere Dosierwalze, bei Stillstand eingesetzt, oder eine andere ${f.drive === "motor" ? "Arbeitsgeschwindigkeit" : "Übersetzung"}.`,
  "rate-against-law": (f) =>
    f.of === "target"
      ? `Die Sollmenge von ${f.rate} verstößt gegen Etikett oder Gesetz: ${f.limits}. Nehmen Sie eine Sollmenge, die das einhält.`
      : `Die nächstgelegene Stufe bringt ${f.rate} aus und verstößt gegen Etikett oder Gesetz: ${f.limits}. Nehmen Sie eine Sollmenge, deren Stufe das einhält.`,
  "target-on-limit": (f) =>
    `Die Sollmenge von ${f.rate} ist die Grenze selbst (${f.limits}): ${f.chance}, und keine Zahl von Proben ändert das. Rücken Sie die Sollmenge weiter nach innen.`,
  "rate-may-break-law": (f) =>
    `Nach diesen Proben eingestellt, kann die Menge gegen Etikett oder Gesetz verstoßen (${f.limits}): ${f.chance}; ${f.borne} wären hinnehmbar. Drehen Sie weiter ab, oder rücken Sie die Sollmenge weiter nach innen.`,
  "no-step-within-tolerance": (f) =>
    `Auch die nächstgelegene Stufe liegt um ${f.error} daneben, mehr als die Toleranz von ${f.tolerance}.`,
  "step-not-caught": (f) =>
    `Die Stufe ${f.step} wurde nicht abgedreht: Was sie ausbringt, ist nach der Stufe ${f.caught} und dem Verhältnis der beiden angenommen; Fehler dieses Verhältnisses und der anderen Drehzahl enthält der Bereich nicht. Drehen Sie in der Stufe ${f.step} einmal ab.`,
  "drive-set-off": (f) =>
    `So wie der Antrieb jetzt steht, bringt er ${lessOrMore(f)} als die Sollmenge aus, außerhalb der Toleranz von ${f.tolerance}. Stellen Sie ihn neu ein.`,
  "meter-speed-not-recorded": (speeds) =>
    `Mit dieser Einstellung dreht der Dosierer mit ${speeds} U/min. Wie schnell er bei den Proben gedreht wurde, ist nicht notiert (Spalte meter_rpm); ob der Austrag dort gilt, ist daher nicht bekannt.`,
  "setting-outside-caught-speeds": (f) =>
    `Mit dieser Einstellung dreht der Dosierer mit ${f.set} U/min, die Proben wurden aber mit ${f.caught} U/min gedreht. Ob der Austrag bei der Einstellung gilt, wurde nicht gesehen: Drehen Sie näher daran neu ab.`,
  // speed linearity
  "one-meter-speed": (speed) =>
    `Jede Probe wurde mit ${speed} U/min gedreht; über andere Drehzahlen lässt sich nichts sagen.`,
  "speeds-too-alike": (speeds) =>
    `Die Drehzahlen der Proben, ${speeds} U/min, sind zu ähnlich, um zu zeigen, was die Drehzahl bewirkt.`,
  "speed-never-varied-within-a-fill": () =>
    "Die Drehzahl änderte sich nur von Füllung zu Füllung; was die Drehzahl bewirkt hat und was die Füllungen, lässt sich nicht auseinanderhalten. Drehen Sie eine Füllung mit zwei Drehzahlen ab.",
  "too-few-for-speed": (f) =>
    `${f.catches} Proben aus Füllungen mit mehreren Drehzahlen sind zu wenige, um zu sagen, was die Drehzahl bewirkt; es braucht ${f.needed}.`,
  "speed-catches-agree": (f) =>
    `Die ${f.catches} Proben bei verschiedenen Drehzahlen stimmen genau überein; die Waage verdeckt ihre Streuung, und der Einfluss der Drehzahl lässt sich nicht beurteilen.`,
  "speed-changes-delivery": (f) =>
    `Der Austrag ändert sich mit der Drehzahl des Dosierers: ${f.change} von den langsamsten zu den schnellsten Proben (${f.range}, ${f.p}). Drehen Sie mit der Drehzahl der Arbeit ab.`,
  "speed-not-straight": (p) =>
    `Der Austrag folgt über der Drehzahl nicht einer Geraden (${p}): Er krümmt sich, oder die Füllungen antworten verschieden auf die Drehzahl. Der mit der Geraden errechnete Bereich der Drehzahlen passt nicht.`,
  "speed-goes-with-turns": (f) =>
    `Lange Proben wurden ${f.slowly ? "langsam" : "schnell"} gedreht (Korrelation ${f.correlation}); eine Wirkung der Drehzahl lässt sich daher nicht von einer Masse unterscheiden, die in jeder Probe gleich ist. Drehen Sie lange und kurze Proben mit beiden Drehzahlen.`,
  // uncertainty budget
  "budget-leaves-out": (sources) =>
    `Nicht im Budget, weil nichts Angegebenes sagt, wie unsicher es ist: ${sources}. Die wirkliche Unsicherheit ist größer.`,
  "budget-unknown": () =>
    "Ohne Streuung der Proben gibt es kein Unsicherheitsbudget; es kommt mit weiteren Proben.",
  "budget-not-confirmed": (difference) =>
    `Werden die Quellen zufällig gezogen, liegen die Grenzen bis zu ${difference} der Menge neben denen des Budgets. Nehmen Sie die gezogenen.`,
  "scale-error-not-corrected": (error) =>
    `Eine bekannte Masse zeigte, dass die Waage um ${error} falsch geht. Das wurde von keiner Probe abgezogen; das Budget zählt es als Unsicherheit dieser Größe.`,
  // field check
  "field-check-without-uncertainty": (figures) =>
    `Bei einer Feldprüfung fehlt die Unsicherheit (${figures}); ob sie mit den Proben übereinstimmt, lässt sich nicht beurteilen. Geben Sie standard_uncertainty neben der Zahl an.`,
  "predicted-rate-unknown": () =>
    "Nichts sagt, wie der Antrieb bei einer Feldprüfung eingestellt war; die Proben sagen daher keine Menge dafür vorher. Geben Sie assumed_delivery bei der Prüfung oder turns_per_hectare beim Tank an.",
  "field-check-fill-unknown": (f) =>
    `Eine Feldprüfung nennt Füllung ${f.fill}, die keine gültige Probe hat; dafür steht, was irgendeine Füllung dieses Tanks austrägt.`,
  "field-disagrees": (f) =>
    `Feld und Proben weichen um mehr voneinander ab als ihre Unsicherheiten (normierte Abweichung ${f.error}): Das Feld bekam ${lessOrMore(f)}, als die Proben erwarten lassen. Suchen Sie nach Schlupf, Überlappung oder falscher Fläche, nach Resten im Tank (von außen gesehen: Produkt kann Brücken bilden und nachgeben und wird nie von innen gelöst), oder nach einem Dosierer, der im Fahren anders austrägt.`,
  "field-differs": (f) =>
    `Das Feld bekam ${lessOrMore(f)}, als die Proben erwarten lassen, etwas mehr, als ihre Unsicherheiten erklären (normierte Abweichung ${f.error}; ${f.p} unter allen Feldprüfungen). Prüfen Sie noch einmal im Feld, bevor Sie eine Ursache suchen.`,
  "field-disagreed-before": (bias) =>
    `Eine frühere Feldprüfung dieses Tanks lag um ${bias} daneben; es zählt die letzte.`,
  "one-field-check": (bias) =>
    `Eine Feldprüfung (${bias} gegenüber den Proben) kann einen bleibenden Unterschied nicht vom Zufall unterscheiden. Machen Sie eine zweite, bevor Sie danach korrigieren.`,
  "two-field-checks": () =>
    "Zwei Feldprüfungen ergeben eine Korrektur mit sehr weitem Vertrauensbereich. Eine dritte sagt viel mehr.",
  // outlets
  "few-outlets": (f) =>
    `${f.outlets} Ausläufe sagen wenig darüber, wie gleichmäßig alle austragen; der Vertrauensbereich ist mit Absicht weit.`,
  "outlets-caught-once": () =>
    "Jeder Auslauf wurde einmal aufgefangen; ein Teil der Unterschiede ist daher Streuung der Proben. Fangen Sie einige zweimal auf, um zu sehen, wie viel; Säcke an- und abhängen, wenn alles stillsteht.",
  "outlets-agree-exactly": (f) =>
    `Die ${f.outlets} Ausläufe stimmen genau überein. Das sagt, dass die Waage grob ist, nicht, dass sie vollkommen gleichmäßig sind.`,
  "outlets-outside-band": (f) =>
    `Außerhalb von ${f.band}: ${f.outlets === 1 ? "Auslauf" : "Ausläufe"} ${f.names}. Suchen Sie bei abgestelltem Motor und wenn alles stillsteht, denn dort kommen die Hände an bewegte Teile, einen verstopften, verschlissenen oder falsch eingestellten.`,
};
