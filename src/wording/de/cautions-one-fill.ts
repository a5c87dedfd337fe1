import type { cautionsOneFill as english } from "../en/cautions-one-fill.ts";
import { lenders } from "./lenders.ts";
import { nouns } from "./nouns.ts";

const { degrees } = nouns;

/** Cautions about the catches of one fill. */
export const cautionsOneFill: typeof english = {
  "one-catch": () => "Eine Probe gibt einen Wert, aber keine Vorstellung von seinem Fehler.",
  "one-catch-lent": (f) =>
    `Nur eine Probe; wie stark sie streut, ist von ${lenders(f)} bekannt (${degrees(f.df)}).`,
  "two-catches": (standardErrors) =>
    `Zwei Proben können nicht sagen, welche falsch ist, und ihr eigener Vertrauensbereich reicht ${standardErrors} Standardfehler nach jeder Seite; eine dritte sagt weit mehr.`,
  "few-degrees-of-freedom": (f) =>
    `Die Streuung der Proben ist nur wenig belegt (${degrees(f.df)}); der Vertrauensbereich ist mit Absicht weit, jede weitere Probe macht ihn enger.`,
  "zero-scatter": (division) =>
    `Die Proben stimmen bis auf die Teilung der Waage von ${division} überein: Die Waage, nicht der Dosierer, bestimmt dieses Band.`,
  "zero-scatter-unscaled": () =>
    "Die Proben stimmen genau überein; das heißt, dass die Waage grob ist, nicht dass der Dosierer vollkommen ist. Geben Sie die Teilung der Waage in der Setup-Datei an, oder nehmen Sie längere Proben: Dann lässt sich ein Band angeben.",
  "scale-division-unknown": () =>
    "Die Teilung der Waage ist nicht bekannt; der Fehler beim Ablesen fehlt daher. Geben Sie sie in den Einstellungen an (scale, division).",
  "scale-limits-result": (share) =>
    `Das Ablesen der Waage macht ${share} der Varianz aus. Hier helfen mehr Umdrehungen je Probe oder eine feinere Waage; mehr Proben helfen nicht.`,
  "constant-mass": (f) =>
    `Etwa ${f.mass} scheinen in jeder Probe zu stecken, gleich wie viele Umdrehungen (${f.range === null ? "" : `${f.range}, `}${f.p}), so wie wenn die Tara des Sacks nicht abgezogen oder der Dosierer nicht vorgefüllt wurde. Prüfen Sie die Tara; bis dahin ist ${f.without}, die Steigung ohne diese Masse, der sicherere Austrag.`,
  "constant-mass-suspected": (f) =>
    `Etwa ${f.mass} könnten in jeder Probe stecken, gleich wie viele Umdrehungen (${f.p}); einer von zwanzig einwandfreien Tanks sieht so aus. Prüfen Sie die Tara bei der nächsten Probe; ohne diese Masse beträgt der Austrag ${f.without}.`,
  "lack-of-fit": (p) =>
    `Die Mittel bei den Stufen von Umdrehungen liegen nicht auf einer Geraden durch null (${p}): Suchen Sie nach verzählten Umdrehungen bei einer Stufe oder nach einer gleichbleibenden Masse.`,
  "heteroscedastic-error-used": (times) =>
    `Lange und kurze Proben streuen nicht im Verhältnis; daher gilt der größere Standardfehler (das ${times}-Fache des üblichen).`,
  "scale-looks-coarser": (f) =>
    `Diese Ablesungen gehen in Schritten von ${f.step}, als Teilung der Waage gelten aber ${f.division}. War es eine andere Waage, geben Sie ihre Teilung in einer Spalte division_kg an; bis dahin ist der Vertrauensbereich hier zu eng.`,
  "scatter-differs": (p) =>
    `Die Proben streuen von Füllung zu Füllung verschieden (${p}), mehr als das, was Füllungen einander leihen, zulässt. Suchen Sie nach einer Füllung mit einer nachlässigen Probe oder einer anderen Waage.`,
  "catches-wilder-than-bins": (p) =>
    `Die Proben dieses Tanks streuen mehr als die der Dosierer, die ihm leihen (${p}). Sehen Sie auf die Angabe für sich allein: Die geliehene kann hier zu eng sein.`,
  "catches-calmer-than-bins": (p) =>
    `Die Proben dieses Tanks streuen weniger als die der Dosierer, die ihm leihen (${p}): Die Angabe für sich allein passt hier vielleicht besser.`,
  "outlets-in-catches": (f) =>
    `${f.outlets} Ausläufe wurden einzeln gewogen; ihre Massen sind zusammengezählt, das ist also der Austrag dieser Ausläufe zusammen. Der des Dosierers ist es nur, wenn er keine anderen speist.`,
  "outlets-not-whole": (f) =>
    `Diese Proben stammen aus ${f.outlets === 1 ? "einem Auslauf; speist der Dosierer noch andere, so ist das" : `${f.outlets} Ausläufen, die nicht alle in jeder Probe sind; das ist`} nicht der Austrag des ganzen Dosierers. Geben Sie allen Ausläufen einer Probe dieselbe Probennummer, oder fangen Sie sie zusammen auf.`,
  "weighting-by-name": (usual) =>
    `Eine andere Gewichtung war gewünscht; die übliche (Summe der Massen durch Summe der Umdrehungen) ergibt ${usual}.`,
};
