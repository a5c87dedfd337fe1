import { setting } from "../de/setting.ts";
import { uncertaintyBudget } from "../de/uncertainty-budget.ts";
import type { englishFieldCautions } from "../english/cautions-field.ts";
import type { Format } from "../format.ts";

const missingForSettingWords: Readonly<Record<string, string>> = setting.missing;
const leftOutWords: Readonly<Record<string, string>> = uncertaintyBudget.leftOut;

type FieldCautions = ReturnType<typeof englishFieldCautions>;

/** Cautions about the way from delivery to the drive, to the field, and to the outlets, in German. */
export function germanFieldCautions(format: Format): FieldCautions {
  return {
    ...aboutSetting(format),
    ...aboutSpeed(format),
    ...aboutBudget(format),
    ...aboutFieldCheck(format),
    ...aboutOutlets(format),
  };
}

function aboutSetting(format: Format) {
  const speeds = (lower: number, upper: number) =>
    `${lower === upper ? format.plain(lower) : format.range(format.plain(lower), format.plain(upper))} U/min`;
  return {
    "setting-needs": ({ missing }) =>
      `Nicht angegeben, und was es braucht, fehlt daher: ${format.list(missing.map((name) => missingForSettingWords[name] ?? name))}.`,
    "delivery-not-told-from-zero": () =>
      "Die Proben sind so wenige oder streuen so stark, dass sich kein Austrag bis hinab zu null ausschließen lässt; die Einstellung hat daher keine obere Grenze. Nehmen Sie mehr Proben, bevor Sie den Antrieb einstellen.",
    "skid-not-given": () =>
      "Der Schlupf des Antriebsrads ist nicht angegeben und zählt als null. Ein Rad, das auf 3 % des Weges rutscht, bringt 3 % weniger aus, als eingestellt ist: Messen Sie seinen Weg bei der Arbeit, beladen, Schare im Boden.",
    "target-out-of-reach": ({ targetKgPerHa, lowestKgPerHa, highestKgPerHa }) =>
      lowestKgPerHa <= highestKgPerHa
        ? `Die Sollmenge von ${format.value(targetKgPerHa, "rate")} liegt außerhalb dessen, was dieser Antrieb mit diesem Austrag ausbringen kann: ${format.range(format.value(lowestKgPerHa, "rate"), format.value(highestKgPerHa, "rate"))}. Es bräuchte eine andere Dosierwalze oder eine andere Arbeitsgeschwindigkeit.`
        : "Keine Menge lässt sich bei jeder Arbeitsgeschwindigkeit halten: Die Drehzahlen des Antriebs liegen für so verschiedene Geschwindigkeiten zu nahe beieinander.",
    "no-step-within-tolerance": ({ rateError, tolerance }) =>
      `Auch die nächstgelegene Stufe liegt um ${format.signedPercent(rateError)} daneben, mehr als die Toleranz von ${format.plusMinus(tolerance)}.`,
    "drive-set-off": ({ rateError, tolerance }) =>
      `So wie der Antrieb jetzt steht, bringt er ${format.percent(Math.abs(rateError))} ${rateError < 0 ? "weniger" : "mehr"} als die Sollmenge aus, außerhalb der Toleranz von ${format.plusMinus(tolerance)}. Stellen Sie ihn neu ein.`,
    "meter-speed-not-recorded": ({ lower, upper }) =>
      `Mit dieser Einstellung dreht der Dosierer mit ${speeds(lower, upper)}. Wie schnell er bei den Proben gedreht wurde, ist nicht notiert (Spalte meter_rpm); ob der Austrag dort gilt, ist daher nicht bekannt.`,
    "setting-outside-caught-speeds": ({ lower, upper, caughtLower, caughtUpper }) =>
      `Mit dieser Einstellung dreht der Dosierer mit ${speeds(lower, upper)}, die Proben wurden aber mit ${speeds(caughtLower, caughtUpper)} gedreht. Ob der Austrag bei der Einstellung gilt, wurde nicht gesehen: Drehen Sie näher daran neu ab.`,
  } satisfies Partial<FieldCautions>;
}

function aboutSpeed(format: Format) {
  return {
    "one-meter-speed": ({ turnsPerMin }) =>
      `Jede Probe wurde mit ${format.plain(turnsPerMin)} U/min gedreht; über andere Drehzahlen lässt sich nichts sagen.`,
    "speeds-too-alike": ({ lower, upper }) =>
      `Die Drehzahlen der Proben, ${format.range(format.plain(lower), format.plain(upper))} U/min, sind zu ähnlich, um zu zeigen, was die Drehzahl bewirkt.`,
    "speed-never-varied-within-a-fill": () =>
      "Die Drehzahl änderte sich nur von Füllung zu Füllung; was die Drehzahl bewirkt hat und was die Füllungen, lässt sich nicht auseinanderhalten. Drehen Sie eine Füllung mit zwei Drehzahlen ab.",
    "too-few-for-speed": ({ catches, needed }) =>
      `${catches} Proben aus Füllungen mit mehreren Drehzahlen sind zu wenige, um zu sagen, was die Drehzahl bewirkt; es braucht ${needed}.`,
    "speed-catches-agree": ({ catches }) =>
      `Die ${catches} Proben bei verschiedenen Drehzahlen stimmen genau überein; die Waage verdeckt ihre Streuung, und der Einfluss der Drehzahl lässt sich nicht beurteilen.`,
    "speed-changes-delivery": ({ change, lower, upper, pValue }) =>
      `Der Austrag ändert sich mit der Drehzahl des Dosierers: ${format.signedPercent(change)} von den langsamsten zu den schnellsten Proben (${format.range(format.signedPercent(lower), format.signedPercent(upper))}, ${format.pValue(pValue)}). Drehen Sie mit der Drehzahl der Arbeit ab.`,
    "speed-not-straight": ({ by, pValue }) =>
      by === "curvature"
        ? `Der Austrag krümmt sich mit der Drehzahl (${format.pValue(pValue)}); eine Gerade und der damit errechnete Bereich der Drehzahlen passen nicht.`
        : `Der Austrag folgt über der Drehzahl nicht einer Geraden (${format.pValue(pValue)}): Er krümmt sich, oder die Füllungen antworten verschieden auf die Drehzahl. Der mit der Geraden errechnete Bereich der Drehzahlen passt nicht.`,
    "speed-goes-with-turns": ({ correlation }) =>
      `${correlation < 0 ? "Lange Proben wurden langsam gedreht" : "Lange Proben wurden schnell gedreht"} (Korrelation ${format.plain(correlation, 2)}); eine Wirkung der Drehzahl lässt sich daher nicht von einer Masse unterscheiden, die in jeder Probe gleich ist. Drehen Sie lange und kurze Proben mit beiden Drehzahlen.`,
  } satisfies Partial<FieldCautions>;
}

function aboutBudget(format: Format) {
  return {
    "budget-leaves-out": ({ sources }) =>
      `Nicht im Budget, weil nichts Angegebenes sagt, wie unsicher es ist: ${format.list(sources.map((name) => leftOutWords[name] ?? name))}. Die wirkliche Unsicherheit ist größer.`,
    "budget-unknown": () =>
      "Ohne Streuung der Proben gibt es kein Unsicherheitsbudget; es kommt mit weiteren Proben.",
    "budget-not-confirmed": ({ difference }) =>
      `Werden die Quellen zufällig gezogen, liegen die Grenzen bis zu ${format.percent(difference)} der Menge neben denen des Budgets. Nehmen Sie die gezogenen.`,
    "scale-error-not-corrected": ({ testedError }) =>
      `Eine bekannte Masse zeigte, dass die Waage um ${format.signedPercent(testedError)} falsch geht. Das wurde von keiner Probe abgezogen; das Budget zählt es als Unsicherheit dieser Größe.`,
  } satisfies Partial<FieldCautions>;
}

function aboutFieldCheck(format: Format) {
  const figures: Readonly<Record<string, string>> = {
    filled: "eingefüllte Masse",
    left: "Restmasse",
    area: "Fläche",
  };
  return {
    "field-check-without-uncertainty": ({ missing }) =>
      `Bei einer Feldprüfung fehlt die Unsicherheit (${format.list(missing.map((name) => figures[name] ?? name))}); ob sie mit den Proben übereinstimmt, lässt sich nicht beurteilen. Geben Sie standard_uncertainty neben der Zahl an.`,
    "predicted-rate-unknown": () =>
      "Nichts sagt, wie der Antrieb bei einer Feldprüfung eingestellt war; die Proben sagen daher keine Menge dafür vorher. Geben Sie assumed_delivery bei der Prüfung oder turns_per_hectare beim Tank an.",
    "field-check-fill-unknown": ({ fill }) =>
      `Eine Feldprüfung nennt Füllung ${fill}, die keine gültige Probe hat; dafür steht, was irgendeine Füllung dieses Tanks austrägt.`,
    "field-disagreed-before": ({ bias }) =>
      `Eine frühere Feldprüfung dieses Tanks lag um ${format.signedPercent(bias)} daneben; es zählt die letzte.`,
    "field-disagrees": ({ normalisedError, bias }) =>
      `Feld und Proben weichen um mehr voneinander ab als ihre Unsicherheiten (normierte Abweichung ${format.plain(normalisedError, 2)}): Das Feld bekam ${format.percent(Math.abs(bias))} ${bias < 0 ? "weniger" : "mehr"}, als die Proben erwarten lassen. Suchen Sie nach Schlupf, Überlappung oder falscher Fläche, nach Resten im Tank, oder nach einem Dosierer, der im Fahren anders austrägt.`,
    "field-differs": ({ normalisedError, bias, pValue }) =>
      `Das Feld bekam ${format.percent(Math.abs(bias))} ${bias < 0 ? "weniger" : "mehr"}, als die Proben erwarten lassen, etwas mehr, als ihre Unsicherheiten erklären (normierte Abweichung ${format.plain(normalisedError, 2)}; ${format.pValue(pValue)} unter allen Feldprüfungen). Machen Sie eine weitere Feldprüfung, bevor Sie eine Ursache suchen.`,
    "one-field-check": ({ bias }) =>
      `Eine Feldprüfung (${format.signedPercent(bias)} gegenüber den Proben) kann einen bleibenden Unterschied nicht vom Zufall unterscheiden. Machen Sie eine zweite, bevor Sie danach korrigieren.`,
    "two-field-checks": () =>
      "Zwei Feldprüfungen ergeben eine Korrektur mit sehr weitem Vertrauensbereich. Eine dritte sagt viel mehr.",
  } satisfies Partial<FieldCautions>;
}

function aboutOutlets(format: Format) {
  return {
    "few-outlets": ({ outlets }) =>
      `${outlets} Ausläufe sagen wenig darüber, wie gleichmäßig alle austragen; der Vertrauensbereich ist mit Absicht weit.`,
    "outlet-grades-from-memory": () =>
      "Die Noten sind die, mit denen Prüfstellen der Prärie die Ausläufe pneumatischer Drillmaschinen bewerten, aus dem Gedächtnis. Sie vergleichen Ausläufe untereinander und sagen nichts über die Streuung der Proben.",
    "outlets-caught-once": () =>
      "Jeder Auslauf wurde einmal aufgefangen; ein Teil der Unterschiede ist daher Streuung der Proben. Fangen Sie einige zweimal auf, um zu sehen, wie viel.",
    "outlets-agree-exactly": ({ outlets }) =>
      `Die ${outlets} Ausläufe stimmen genau überein. Das sagt, dass die Waage grob ist, nicht, dass sie vollkommen gleichmäßig sind.`,
    "outlets-outside-band": ({ outlets, band }) =>
      `Außerhalb von ${format.plusMinus(band)}: ${outlets.length === 1 ? "Auslauf" : "Ausläufe"} ${format.list(outlets)}. Suchen Sie einen verstopften, verschlissenen oder falsch eingestellten.`,
  } satisfies Partial<FieldCautions>;
}
