import type { decision as english } from "../en/decision.ts";
import { anotherCatch, numberWords } from "./catches-needed.ts";
import { nouns, withTurns } from "./nouns.ts";
import { questions } from "./questions.ts";

/** What a person at the drill acts on: the one line, how sure it is, and what ends a look. */
export const decision: typeof english = {
  labels: {
    marks: { "look-first": "Erst nachsehen", "catch-more": "Weiter abdrehen", set: "Einstellen" },
    lookFirst: (at) => `Erst nachsehen: ${at}`,
    lookAtCatches: "es wären mehr Proben nötig, und mehr sind für diese Füllung nicht vorgesehen",
    lookForCause: "Suchen Sie die Ursache.",
    ofCatch: (number, finding) => `Probe ${number}: ${finding}`,
    noBand: (value) => `bisher ${value}; wie weit das daneben liegen kann, ist nicht bekannt.`,
    notInTheBin: "Jetzt nicht im Tank",
    notInTheBinSentence:
      "In diesem Tank ist jetzt ein anderes Produkt; einzustellen ist dafür nichts.",
    columns: {
      bin: "Tank",
      product: "Produkt",
      fill: "Füllung",
      catches: "Proben",
      action: "Zu tun",
      known: "Bekannt auf",
    },
    unknown: "nicht bekannt",
  },
  looks: {
    "catch-far-from-fellows": (f) =>
      `Probe ${f.named} der Füllung ${f.fill} ist das ${f.times}fache der anderen`,
    "unit-looks-wrong": (f) => `Massen in ${f.unit} ergeben einen ungewöhnlichen Austrag`,
    "counter-not-reset": () => "die Umdrehungen scheinen von Probe zu Probe weiterzulaufen",
    "bag-not-emptied": () => "die Massen scheinen sich von Probe zu Probe aufzusummieren",
    "net-and-turns-swapped": () => "Nettomassen und Umdrehungen scheinen vertauscht",
    "delivery-far-off": (f) =>
      f.meant === null
        ? `der Austrag ist das ${f.times}-Fache dessen, was man kennt`
        : `die Massen scheinen in ${f.meant} zu stehen (das ${f.times}-Fache dessen, was man kennt)`,
    "name-nearly-another": (f) => `„${f.name}“ und „${f.other}“ sind vielleicht ein Name`,
    "pasted-again": (f) => `${f.catches} Proben ab Füllung ${f.fill} scheinen zweimal eingefügt`,
    "bins-swapped": (f) => `dieser Tank und Tank ${f.other} scheinen vertauscht`,
    "year-looks-wrong": (year) => `Proben tragen das Jahr ${year}`,
    "fill-spans-seasons": (f) => `Proben dieser Füllung liegen ${f.days} Tage auseinander`,
    "share-looks-fraction": (f) => `${f.percent} % der Körner in der Setup-Datei`,
    "exclusion-not-read": (f) =>
      `die Spalte „${f.header}“ wird nicht gelesen und markiert ${f.catches === 1 ? "1 Probe" : `${f.catches} Proben`}`,
    "sheet-hidden": (f) => `das gelesene Blatt „${f.sheet}“ ist ausgeblendet`,
    "catches-on-other-sheets": (others) => `${others} sehen auch nach Proben aus`,
    "rows-hidden": (f) =>
      `${f.rows === 1 ? "1 ausgeblendete Zeile zählt" : `${f.rows} ausgeblendete Zeilen zählen`} mit`,
    "formulas-without-value": (f) => `${f.first} unter „${f.header}“ hat eine Formel ohne Wert`,
    "json-keys-repeated": (f) => `Zeile ${f.line} nennt „${f.first}“ zweimal`,
    "needed-not-computed": (f) => `„${questions[f.question]}“ ließ sich nicht berechnen`,
    "constant-mass": (mass) => `etwa ${mass} scheinen in jeder Probe zu stecken`,
    "outlets-not-whole": () => "die Proben sind nicht vom ganzen Dosierer",
    "suspect-catch": (f) => `Probe ${f.named} liegt ${f.off} daneben`,
    "catches-disagree": (f) => `die Proben ${f.named} liegen ${f.apart} auseinander`,
    "two-disagree": (apart) => `die beiden Proben liegen ${apart} auseinander`,
    "more-than-can-be-told": () => "mehr Proben fallen auf, als sich auseinanderhalten lassen",
    "fill-differs": (off) => `${off} neben den früheren Füllungen`,
    "scatter-beyond-usual": (times) => `diese Proben streuen ${times}-mal so stark wie sonst`,
    "delivery-not-told-from-zero": () => "der Austrag ist nicht von null zu unterscheiden",
    "target-out-of-reach": (f) =>
      `der Antrieb kann ${f.target} nicht ausbringen; er reicht von ${f.reach}`,
    "rate-against-law": (f) =>
      `${f.of === "target" ? "die Sollmenge" : "die nächste Stufe"}, ${f.rate}, verstößt gegen Etikett oder Gesetz`,
    "target-on-limit": () => "die Sollmenge ist die Grenze von Etikett oder Gesetz selbst",
    "no-step-within-tolerance": (off) => `die nächste Stufe des Antriebs liegt ${off} daneben`,
    "field-disagrees": (f) =>
      `auf dem Feld war es ${f.off} ${f.less ? "weniger" : "mehr"}, als die Proben erwarten lassen`,
  },
  catchMore: (f) =>
    f.further === 1 ? `Noch eine Probe ${withTurns(f.turns)}` : nouns.moreCatches(f),
  setDelivery: (delivery) => `${delivery} einstellen`,
  setTurns: (f) => `${f.turns} Umdr./${f.area} einstellen`,
  setRatio: (ratio) => `Übersetzung ${ratio} einstellen`,
  setStep: (step, assumed) => `Stufe ${step} einstellen${assumed ? ", angenommen" : ""}`,
  who: nouns.who,
  within: (f) =>
    `${f.value}, innerhalb Ihrer ${f.stated}${f.itself === null ? "" : ` (errechnet: ${f.itself})`}.`,
  withinDefault: (f) =>
    `${f.value}, innerhalb von ${f.stated}, die angenommen sind${f.itself === null ? "" : ` (errechnet: ${f.itself})`}.`,
  goodTo: (f) => `${f.value}, auf ${f.halfWidth} genau; gewünscht waren ${f.tolerance}.`,
  goodToBeyondDefault: (f) =>
    `${f.value}, auf ${f.halfWidth} genau; das ist weiter als die ${f.tolerance}, die angenommen sind.`,
  goodToBand: (f) => `${f.value}, auf ${f.halfWidth} genau.`,
  soFar: (f) => `bisher ${f.value}, ${f.halfWidth}.`,
  number: (f) => `${numberWords(f)}.`,
  go: (f) => `${anotherCatch(f)}: Sie können losfahren.`,
  ends: (f) => `Damit endet das: ${f.others === null ? "" : `${f.others} oder `}${f.last}.`,
  endings: {
    "more-catches": "weitere Proben dieser Füllung",
    checked: "ein Vermerk in der Spalte checked, dass Sie nachgesehen haben und die Probe stimmt",
    excluded: "die Probe mit Grund weggelassen",
    corrected: "die Datei berichtigt",
    setup: "eine andere Sollmenge oder ein anderer Antrieb in der Setup-Datei",
    "field-check": "eine spätere Feldprüfung, die übereinstimmt",
    answered: "ein Eintrag unter answered in der Setup-Datei",
  },
  answered: (f) => `In der Setup-Datei beantwortet („${f.note}“): ${f.finding}`,
  tolerance: (f) => `Toleranz ${f.tolerance} (${f.from}).`,
  division: (step) =>
    `Teilung der Waage ${step} (aus Ihren Zahlen abgelesen; geben Sie Ihre in der Setup-Datei an).`,
  toleranceFrom: {
    option: "wie verlangt",
    setup: "aus der Setup-Datei",
    default: "angenommen; geben Sie Ihre mit --tolerance oder in der Setup-Datei an",
  },
};
