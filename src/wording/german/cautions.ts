import { cautionsPlanning } from "../de/cautions-planning.ts";
import { cautionsProducts } from "../de/cautions-products.ts";
import { questions } from "../de/questions.ts";
import type { CautionWords } from "../english/cautions.ts";
import type { Format } from "../format.ts";
import { cautionsPlanningSayings } from "../sayings/cautions-planning.ts";
import { cautionsProductsSayings } from "../sayings/cautions-products.ts";
import { germanCatchCautions } from "./cautions-catches.ts";
import { germanDriftCautions } from "./cautions-drift.ts";
import { germanFieldCautions } from "./cautions-field.ts";
import { degrees, fillsWords } from "./counted.ts";

/** One sentence or two for every caution, in German: what was found, what it means, what to do. */
export function germanCautions(format: Format): CautionWords {
  return {
    ...aboutTheFile(format),
    ...aboutOneFill(format),
    ...aboutFills(format),
    ...cautionsPlanningSayings(format, cautionsPlanning),
    ...germanDriftCautions(format),
    ...germanCatchCautions(format),
    ...cautionsProductsSayings(format, cautionsProducts),
    ...germanFieldCautions(format),
  };
}

function aboutTheFile(format: Format) {
  return {
    "catch-far-from-fellows": ({ timesMedian }) =>
      `Diese Probe ergibt je Umdrehung das ${format.plain(timesMedian)}-Fache der anderen. Suchen Sie nach verrutschtem Komma, anderer Einheit oder verzählten Umdrehungen. Geändert wurde nichts.`,
    "unit-looks-wrong": ({ unit, medianKgPerTurn }) =>
      `In ${unit} gelesen, beträgt der Austrag ${format.value(medianKgPerTurn, "delivery")}, was ungewöhnlich ist. Prüfen Sie, ob die Massen wirklich in ${unit} notiert sind.`,
    "newest-fill-left-out": ({ leftOutFill }, { fill }) =>
      `Alle Proben der Füllung ${leftOutFill} sind weggelassen, über sie ist also nichts bekannt; die Zahlen hier gelten für Füllung ${fill}.`,
    "not-computed": ({ question, reason }) =>
      `„${questions[question]}“ ließ sich nicht berechnen (${reason}). Alles andere schon. Das ist ein Fehler des Programms: Bitte melden Sie ihn mit der Datei.`,
    "needed-not-computed": ({ question, reason }) =>
      `„${questions[question]}“ ließ sich nicht berechnen (${reason}) und wird gebraucht, um zu sagen, was einzustellen ist. Das ist ein Fehler des Programms: Bitte melden Sie ihn mit der Datei.`,
    "turns-all-equal": ({ turns, tareShare }) =>
      `Alle Proben haben ${format.plain(turns)} Umdrehungen; eine Tara, die in jeder Probe steckt, ist so nicht zu sehen${tareShare === null ? "" : `, sie würde den Austrag um ${format.percent(tareShare)} zu hoch machen`}. Drehen Sie einmal je Saison mit zwei Stufen von Umdrehungen ab, die längere doppelt so lang wie die kürzere.`,
    "setup-name-not-caught": ({ what, name, instead }, { bin }) =>
      what === "bin"
        ? `Zum Tank „${name}“ der Einstellungen gibt es keine Proben; ist „${instead}“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.`
        : `Zum Produkt „${name}“ der Einstellungen gibt es im Tank ${bin} keine Proben; ist „${instead}“ gemeint? Wenn ja, schreiben Sie den Namen wie bei den Proben.`,
  } satisfies Partial<CautionWords>;
}

function aboutOneFill(format: Format) {
  return {
    "one-catch": () => "Eine Probe gibt einen Wert, aber keine Vorstellung von seinem Fehler.",
    "one-catch-lent": ({ df }) =>
      `Nur eine Probe; wie stark sie streut, ist aus anderen Füllungen bekannt (${degrees(df, format)}).`,
    "two-catches": ({ widthFactor }) =>
      `Zwei Proben können nicht sagen, welche falsch ist, und ihr eigener Vertrauensbereich reicht ${format.plain(widthFactor)} Standardfehler nach jeder Seite; eine dritte sagt weit mehr.`,
    "few-degrees-of-freedom": ({ df }) =>
      `Die Streuung der Proben ist nur wenig belegt (${degrees(df, format)}); der Vertrauensbereich ist mit Absicht weit, jede weitere Probe macht ihn enger.`,
    "zero-scatter": ({ divisionKg }) =>
      `Die Proben stimmen bis auf die Teilung der Waage von ${format.value(divisionKg, "mass")} überein: Die Waage, nicht der Dosierer, bestimmt dieses Band.`,
    "zero-scatter-unscaled": () =>
      "Die Proben stimmen genau überein; das heißt, dass die Waage grob ist, nicht dass der Dosierer vollkommen ist. Geben Sie die Teilung der Waage in der Setup-Datei an, oder nehmen Sie längere Proben: Dann lässt sich ein Band angeben.",
    "scale-division-unknown": () =>
      "Die Teilung der Waage ist nicht angegeben; der Fehler beim Ablesen fehlt daher. Geben Sie sie in den Einstellungen an (scale, division).",
    "scale-limits-result": ({ share }) =>
      `Das Ablesen der Waage macht ${format.percent(share, 0)} der Varianz aus. Hier helfen mehr Umdrehungen je Probe oder eine feinere Waage; mehr Proben helfen nicht.`,
    "constant-mass": ({ constantKg, lowerKg, upperKg, interceptSlopeKgPerTurn, pValue }) =>
      `Etwa ${format.value(constantKg, "mass")} scheinen in jeder Probe zu stecken, gleich wie viele Umdrehungen (${lowerKg === null || upperKg === null ? "" : `${format.range(format.value(lowerKg, "mass"), format.value(upperKg, "mass"))}, `}${format.pValue(pValue)}), so wie wenn die Tara des Sacks nicht abgezogen oder der Dosierer nicht vorgefüllt wurde. Prüfen Sie die Tara; bis dahin ist ${format.value(interceptSlopeKgPerTurn, "delivery")}, die Steigung ohne diese Masse, der sicherere Austrag.`,
    "constant-mass-suspected": ({ constantKg, interceptSlopeKgPerTurn, pValue }) =>
      `Etwa ${format.value(constantKg, "mass")} könnten in jeder Probe stecken, gleich wie viele Umdrehungen (${format.pValue(pValue)}); einer von zwanzig einwandfreien Tanks sieht so aus. Prüfen Sie die Tara bei der nächsten Probe; ohne diese Masse beträgt der Austrag ${format.value(interceptSlopeKgPerTurn, "delivery")}.`,
    "lack-of-fit": ({ pValue }) =>
      `Die Mittel bei den Stufen von Umdrehungen liegen nicht auf einer Geraden durch null (${format.pValue(pValue)}): Suchen Sie nach verzählten Umdrehungen bei einer Stufe oder nach einer gleichbleibenden Masse.`,
    "heteroscedastic-error-used": ({ ratio }) =>
      `Lange und kurze Proben streuen nicht im Verhältnis; daher gilt der größere Standardfehler (das ${format.plain(ratio)}-Fache des üblichen).`,
    "scale-looks-coarser": ({ stepKg, divisionKg }) =>
      `Diese Ablesungen gehen in Schritten von ${format.value(stepKg, "mass")}, in den Einstellungen steht aber eine Teilung von ${format.value(divisionKg, "mass")}. War es eine andere Waage, geben Sie ihre Teilung in einer Spalte division_kg an; bis dahin ist der Vertrauensbereich hier zu eng.`,
    "scatter-differs": ({ pValue, fellBack }) =>
      `Die Proben streuen von Füllung zu Füllung verschieden (${format.pValue(pValue)})${fellBack ? "; diese Füllung beruht daher auf ihren eigenen Proben" : "; der gemeinsame Wert passt vielleicht nicht zu dieser Füllung"}. Suchen Sie nach einer Füllung mit einer unsauberen Probe oder einer anderen Waage.`,
    "weighting-by-name": ({ usualKgPerTurn }) =>
      `Eine andere Gewichtung war gewünscht; die übliche (Summe der Massen durch Summe der Umdrehungen) ergibt ${format.value(usualKgPerTurn, "delivery")}.`,
    "outlets-in-catches": ({ outlets, addedUp }) =>
      addedUp
        ? `${outlets} Ausläufe wurden einzeln gewogen; ihre Massen sind zusammengezählt, das ist also der Austrag dieser Ausläufe zusammen. Der des Dosierers ist es nur, wenn er keine anderen speist.`
        : `Diese Proben stammen aus ${outlets === 1 ? "einem Auslauf" : `${outlets} Ausläufen, die nicht alle in jeder Probe sind`}: Das ist nicht der Austrag des ganzen Dosierers.`,
  } satisfies Partial<CautionWords>;
}

function aboutFills(format: Format) {
  return {
    "one-fill": ({ borrowedFrom }) =>
      borrowedFrom > 0
        ? "Eine Füllung sagt von sich aus nichts über die nächste."
        : "Eine Füllung sagt nichts über die nächste: Der Mengenfehler, wenn nicht abgedreht wird, ist nicht bekannt.",
    "two-fills": ({ bandInDifferences }) =>
      `Nur zwei Füllungen: Das Band für die nächste ist ± das ${format.plain(bandInDifferences, 2)}-Fache des Unterschieds zwischen beiden. Eine dritte Füllung macht es enger als alles andere.`,
    "few-fills": ({ fills }) =>
      `${fillsWords(fills)} sagen wenig darüber, wie sehr sich Füllungen unterscheiden; die Bereiche sind mit Absicht weit.`,
    "spread-at-boundary": ({ upperKgPerTurn }) =>
      `Die Füllungen unterscheiden sich nicht mehr, als die Streuung der Proben erklärt. Das heißt „nicht zu unterscheiden“, nicht „kein Unterschied“${upperKgPerTurn === null ? "" : `: Er kann bis zu ${format.value(upperKgPerTurn, "delivery")} betragen`}.`,
    "spread-borrowed": ({ fills, df }) =>
      `Wie sehr sich Füllungen unterscheiden, ist aus ${fillsWords(fills)} der anderen Tanks geliehen, im Verhältnis zum Austrag (${degrees(df, format)}). Das ist ein Ersatz, bis dieser Tank eigene Füllungen hat.`,
    "fills-are-not-catches": ({ timesTooNarrow }) =>
      `Jede Probe als eigene Füllung zu zählen, würde den Vertrauensbereich ${format.plain(timesTooNarrow, 2)}-mal enger machen, und falsch: Solche Bereiche treffen in 57–87 % der Fälle zu, wo sie 95 % sagen.`,
    "fills-since-change": ({ sinceFill, fills, spreadFills }) =>
      `Was über die nächste Füllung, über das Auslassen und über die Kosten gesagt wird, beruht auf ${fills === 1 ? `Füllung ${sinceFill} allein` : `den ${fills} Füllungen seit Füllung ${sinceFill}`}, dem geltenden Niveau${spreadFills > fills ? `; wie sehr sich Füllungen unterscheiden, sagen ${spreadFills} Füllungen, jede gegen ihr eigenes Niveau` : ""}.`,
    "first-catch-tells-less": ({ skipHalfWidth, firstHalfWidth }) =>
      `Eine Probe (${format.plusMinus(firstHalfWidth)}) sagt weniger als die früheren Füllungen (${format.plusMinus(skipHalfWidth)}): Nehmen Sie zwei oder drei, oder keine.`,
  } satisfies Partial<CautionWords>;
}
