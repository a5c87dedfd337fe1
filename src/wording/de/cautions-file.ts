import type { cautionsFile as english } from "../en/cautions-file.ts";
import { questions } from "./questions.ts";

const keys = { machine: "die Maschine", farm: "den Betrieb", season: "die Saison" };

/** Cautions about what file and setup give away. */
export const cautionsFile: typeof english = {
  labels: {
    libraryLendsNothing: (file) =>
      `${file === null ? "Die Bibliothek anderer Dosierer" : `Die Bibliothek ${file}`} leiht hier nichts: In zwei oder mehr Ihrer eigenen Tanks ist dasselbe Produkt, und nur diese werden gefragt.`,
    binNotCaught: (f) =>
      `Zum Tank „${f.name}“ der Einstellungen gibt es keine Proben; ist „${f.instead}“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.`,
    question: (name) => `„${questions[name]}“`,
    weightsAlike: (step) =>
      `Ihre Gewichte sind alle gleich und zeigen daher keine Schritte; als Teilung der Waage gelten hier ${step}, der gröbste Schritt, der zu ihnen passt. Ist sie eine andere, geben Sie sie in den Einstellungen an (scale, division).`,
  },
  "catch-far-from-fellows": (times) =>
    `Diese Probe ergibt je Umdrehung das ${times}-Fache der anderen. Suchen Sie nach verrutschtem Komma, anderer Einheit oder verzählten Umdrehungen. Geändert wurde nichts.`,
  "unit-looks-wrong": (f) =>
    `In ${f.unit} gelesen, wiegt eine Probe ${f.mass} und beträgt der Austrag ${f.delivery}, was ungewöhnlich ist. Prüfen Sie, ob die Massen wirklich in ${f.unit} notiert sind.`,
  "newest-fill-left-out": (f) =>
    `Alle Proben der Füllung ${f.leftOutFill} sind weggelassen, über sie ist also nichts bekannt; die Zahlen hier gelten für Füllung ${f.fill}.`,
  "not-computed": (f) =>
    `„${questions[f.question]}“ ließ sich nicht berechnen (${f.reason}). Alles andere schon. Das ist ein Fehler des Programms: Bitte melden Sie ihn mit der Datei.`,
  "needed-not-computed": (f) =>
    `„${questions[f.question]}“ ließ sich nicht berechnen (${f.reason}) und wird gebraucht, um zu sagen, was einzustellen ist. Das ist ein Fehler des Programms: Bitte melden Sie ihn mit der Datei.`,
  "catch-without-mass": (f) =>
    `Diese Probe ist weggelassen und hat keine Masse (${f.reason}). Sie steht in der Datei und zählt nicht.`,
  "files-read-together": (f) =>
    `Die Proben stammen aus ${f.files.length} Dateien, und die Zeilen sind durch alle hindurch gezählt: ${f.files.map((file, i) => `${file} ab Zeile ${f.firstRows[i]}`).join(", ")}.`,
  "turns-from-area": (f) =>
    `Die Umdrehungen von ${f.catches} Proben sind nicht gezählt, sondern aus der Fläche errechnet, für die die Proben stehen, mit ${f.turns} U/${f.area}${f.assumed ? "; dieser Wert ist angenommen: Der Schlupf des Rads ist nicht angegeben, oder abgedreht wurde in einer anderen Stufe als der, von der er bekannt ist" : ""}.`,
  "one-bin-taken": (f) =>
    `Die Proben nennen weder Tank noch Produkt noch Füllung; ${f.catches === 1 ? "die Probe gilt" : "alle gelten"} als erste Füllung eines Tanks.`,
  "turns-all-equal": (f) =>
    `Alle Proben haben ${f.turns} Umdrehungen; eine Tara, die in jeder Probe steckt, ist so nicht zu sehen${f.tare === null ? "" : `, sie würde den Austrag um ${f.tare} zu hoch machen`}. Drehen Sie einmal je Saison mit zwei Stufen von Umdrehungen ab, die längere doppelt so lang wie die kürzere.`,
  "division-read-from-digits": (step) =>
    `Ihre Gewichte gehen in Schritten von ${step}; das gilt hier als Teilung der Waage. Ist sie eine andere, geben Sie sie in den Einstellungen an (scale, division).`,
  "needs-rows": (asked) =>
    `Aus Summen nicht beantwortet: ${asked}. Dafür braucht es die einzelnen Proben; ob eine von ihnen auffällt, sagen Summen nicht.`,
  "library-lends": (f) =>
    `${f.file === null ? "Eine Bibliothek anderer Dosierer" : `Die Bibliothek ${f.file}`} leiht, wie sehr sich Füllungen unterscheiden (${f.spreads} Dosierer) und wie stark Proben streuen (${f.scatters} Dosierer), so wie andere Tanks es tun; was ein Tank austrägt, sagen nur seine eigenen Proben. Dass 95 von 100 Dosierern innerhalb des Faktors ${f.factor} um die Mitte liegen, ist angenommen, nicht gemessen.`,
  "library-not-read": (f) =>
    `In den Einstellungen steht die Bibliothek der Streuungen ${f.name}; sie wurde nicht gelesen, also wird nichts aus ihr geliehen. Geben Sie ihre Einträge als Option library an.`,
  "setup-name-not-caught": (f) =>
    `Zum Produkt „${f.name}“ der Einstellungen gibt es im Tank ${f.bin} keine Proben; ist „${f.instead}“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.`,
  "setup-key-not-caught": (f) =>
    `Die Einstellungen nennen zum Tank ${f.bin} ${keys[f.key]} „${f.name}“, aber keine Probe nennt diesen Namen; der Eintrag zählt daher nicht${f.instead === null ? ". Nennen Sie ihn bei den Proben, oder lassen Sie ihn in den Einstellungen weg." : `. Ist „${f.instead}“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.`}`,
  "setup-season-missing": (f) =>
    `Die Einstellungen nennen Füllung ${f.number} im Tank ${f.bin}, und die Proben stammen aus mehreren Saisons: Geben Sie dort die Saison an (season). Bis dahin gilt der Eintrag für keine davon.`,
  "old-name": (f) =>
    `In der Setup-Datei heißt ${f.was} jetzt ${f.now}. Der alte Name wurde noch verstanden; schreiben Sie künftig den neuen.`,
};
