import type {
  BudgetSource,
  LeftOut,
  UncertaintyBudget,
} from "../../questions/uncertainty-budget.ts";
import type { InputLaw } from "../../statistics/propagation.ts";
import type { UncertaintyBudgetWords } from "../english/uncertainty-budget.ts";
import type { Format } from "../format.ts";

/** Everything said about how uncertain the applied rate is, and why, in German. */
export function germanUncertaintyBudget(format: Format): UncertaintyBudgetWords {
  const level = ({ options }: UncertaintyBudget) => format.percent(options.level, 0);
  const who = (result: UncertaintyBudget) =>
    `Tank ${result.bin} (${result.product}), Füllung ${result.fill}`;
  const valueFor = ({ options }: UncertaintyBudget) =>
    options.valueFor === "this fill"
      ? "dieser Füllung"
      : "der folgenden Füllungen, wenn der Wert beibehalten wird,";

  return {
    heading: "Wie weit die Menge daneben liegen kann",
    source: (source) => sourceWords[source],
    sentence: (result) => {
      const { total } = result;
      if (total === null)
        return `${who(result)}: Wie weit die Menge daneben liegen kann, lässt sich nicht sagen, solange die Streuung der Proben nicht bekannt ist.`;
      return `${who(result)}: Alles Aufgeführte zusammengenommen ist die Menge ${valueFor(result)} auf ${format.plusMinus(total.expanded)} bekannt (${level(result)}), ${total.withinTolerance ? "innerhalb" : "nicht innerhalb"} der Toleranz von ${format.plusMinus(result.options.tolerance)}.`;
    },
    improve: ({ improveFirst, total }) => {
      if (improveFirst === null || total === null) return null;
      const { source, share, expandedIfHalved } = improveFirst;
      return `Zuerst verbessern: ${sourceWords[source]}, ${format.percent(share, 0)} der Varianz. Halbiert blieben ${format.plusMinus(expandedIfHalved)}. ${remedies[source]}`;
    },
    combined: ({ total }) =>
      total === null
        ? null
        : `Kombinierte Standardunsicherheit ${format.percent(total.combined)} der Menge, ${total.effectiveDf === null ? "gut bekannt" : `effektive Freiheitsgrade ${format.plain(total.effectiveDf)} (Welch-Satterthwaite; Proben und ihre Ablesungen zählen als eine Quelle, mit den Freiheitsgraden der Proben)`}; Erweiterungsfaktor ${format.plain(total.coverageFactor)}.`,
    check: ({ check, total, options }) =>
      check === null || total === null
        ? null
        : `Monte-Carlo-Prüfung: ${format.count(check.draws)} Ziehungen (Startzahl ${check.seed}) legen ${format.percent(options.level, 0)} der Mengen zwischen ${format.signedPercent(check.lower, 2)} und ${format.signedPercent(check.upper, 2)}; das Budget sagt ${format.range(format.signedPercent(-total.expanded, 2), format.signedPercent(total.expanded, 2))}. Die Enden weichen um höchstens ${format.percent(check.difference, 2)} ab, ${check.agrees ? "innerhalb der" : "mehr als die"} ${format.percent(check.limit, 2)}, die eine Stelle der Unsicherheit oder der Zufall der Ziehungen zulässt (GUM, Beiblatt 1).`,
    notHere:
      "Was auf dem Feld im Fahren geschieht und im Stand nicht, steht nicht in diesem Budget; eine Feldprüfung zeigt es.",
    detail: "Das Budget in Zahlen",
    table: {
      caption: "Unsicherheitsbudget der ausgebrachten Menge",
      source: "Quelle",
      law: "Verteilung",
      standardUncertainty: "Standardunsicherheit",
      sensitivity: "Ändert die Menge um",
      df: "Freiheitsgrade",
      contribution: "Beitrag zur Menge",
      share: "Anteil an der Varianz",
      wellKnown: "gut bekannt",
    },
    law: (law) => lawWords[law],
    uncertaintyOf: ({ standardUncertainty, unit }) => {
      switch (unit) {
        case "kg/turn":
          return format.value(standardUncertainty, "delivery", standardUncertainty);
        case "m":
          return `${format.plain(format.convert(standardUncertainty, "length", 1), 2)} ${format.unit("length", 1)}`;
        case "turns":
          return `${format.plain(standardUncertainty, 2)} U`;
        case "fraction":
          return format.percent(standardUncertainty);
      }
    },
    sensitivityOf: ({ sensitivity, unit }) => {
      switch (unit) {
        case "kg/turn": {
          const perGram = sensitivity / format.convert(1, "delivery", 0.01);
          return `${format.signedPercent(perGram, 2)} je ${format.unit("delivery", 0.01)}`;
        }
        case "m": {
          const perLength = sensitivity / format.convert(1, "length", 1);
          return `${format.signedPercent(perLength, 1)} je ${format.unit("length", 1)}`;
        }
        case "turns":
          return `${format.signedPercent(sensitivity, 1)} je Umdrehung`;
        case "fraction":
          return `${format.signedPercent(sensitivity / 100, 2)} je Prozent`;
      }
    },
    chart: {
      title: (result) => `Was die Menge unsicher macht, Tank ${result.bin}`,
      description: ({ lines }) =>
        `Anteil jeder Quelle an der Varianz der ausgebrachten Menge: ${lines
          .map(({ source, share }) => `${sourceWords[source]} ${format.percent(share, 0)}`)
          .join("; ")}.`,
      share: "Anteil an der Varianz (%)",
      label: ({ share, contribution }) =>
        `${format.percent(share, 0)} (${format.plusMinus(contribution)} der Menge)`,
    },
  };
}

const sourceWords: Readonly<Record<BudgetSource, string>> = {
  "catch scatter": "Streuung der Proben",
  "reading gross": "Ablesen der Waage, brutto",
  "reading tare": "Ablesen der Waage, Tara",
  "scale error": "geprüfter Fehler der Waage",
  "turn count": "Zählen der Umdrehungen",
  "fill to fill": "Unterschied zwischen Füllungen",
  "working width": "Arbeitsbreite und Überlappung",
  "wheel travel": "Weg des Rads je Umdrehung",
  slip: "Schlupf des Antriebsrads",
};

/** What a budget may leave out, as a person names it. */
export const leftOutWords: Readonly<Record<string, string>> = {
  ...sourceWords,
  drive: "der Antrieb (nicht angegeben)",
  "speed measure": "die Geschwindigkeitsmessung des Antriebs",
} satisfies Record<LeftOut, string>;

const remedies: Readonly<Record<BudgetSource, string>> = {
  "catch scatter": "Mehr und längere Proben machen sie kleiner.",
  "reading gross":
    "Mehr Umdrehungen je Probe oder eine feinere Waage machen es kleiner; mehr Proben nicht.",
  "reading tare":
    "Mehr Umdrehungen je Probe oder eine feinere Waage machen es kleiner; mehr Proben nicht.",
  "scale error":
    "Prüfen Sie die Waage mit einer bekannten Masse nahe der einer Probe, und lassen Sie sie justieren.",
  "turn count": "Halten Sie an der Marke an, und drehen Sie mehr Umdrehungen je Probe.",
  "fill to fill": "Drehen Sie jede Füllung ab, statt einen älteren Wert zu behalten.",
  "working width":
    "Messen Sie die Breite zwischen den Fahrten auf dem Feld, Überlappung eingeschlossen.",
  "wheel travel": "Messen Sie den Weg über mehr Umdrehungen, beladen, auf dem Feld.",
  slip: "Zählen Sie die Radumdrehungen über eine gemessene Strecke bei der Arbeit, Schare im Boden.",
};

const lawWords: Readonly<Record<InputLaw, string>> = {
  t: "t-Verteilung",
  normal: "normal",
  rectangular: "rechteckig",
};
