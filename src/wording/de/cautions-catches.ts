import type { cautionsCatches as english } from "../en/cautions-catches.ts";
import { mishaps } from "./mishaps.ts";
import { remarks } from "./remarks.ts";

const differ: typeof english.twoDisagree = (f) =>
  `Diese beiden Proben unterscheiden sich um ${f.apart}`;
const withoutIt: typeof english.nothingChanged = (f) =>
  `ohne ${f.both ? "beide" : "sie"} beträgt der Austrag ${f.without} (${f.change})`;
const byChance = (f: { readonly expected: string }) =>
  `unter so vielen Füllungen zeigen ${f.expected} eine aus Zufall`;
const beyondDoubt = (f: { readonly p: string }) =>
  `unter allen Proben der Aufzeichnung außer Zweifel (${f.p})`;

/** Sentences of cautions about catches that are not to be believed as they stand. */
export const cautionsCatches: typeof english = {
  mishaps: mishaps.names,
  remarks,
  // one catch
  stands: (f) => `Diese Probe liegt ${f.off} neben dem, was die anderen erwarten lassen (${f.p}).`,
  standsAsOneInTwenty: (f) =>
    `Diese Probe liegt ${f.off} neben dem, was die anderen erwarten lassen (${f.p}); etwa eine von zwanzig einwandfreien Füllungen zeigt so eine, mehr, wo Ausreißer häufiger sind als bei normalverteilten Fehlern.`,
  stoodAmongAll: (f) =>
    `Diese Probe lag ${f.off} neben dem, was die anderen ihrer Füllung erwarten lassen (${f.p} unter allen Proben der Aufzeichnung).`,
  stoodAlone: (f) =>
    `Diese Probe lag ${f.off} daneben, aber nur, wenn man ihre Füllung allein betrachtet (${f.p}); ${byChance(f)}.`,
  fits: (mishaps) => `Es würde passen: ${mishaps}.`,
  noMishapFits: "Kein Missgeschick, das wir kennen, passt dazu.",
  nothingChanged: (f) => `Geändert oder weggelassen wurde nichts; ${withoutIt(f)}.`,
  lookAtIt:
    "Sehen Sie sie sich an, bevor Sie den Antrieb einstellen, und drehen Sie neu ab; oder lassen Sie sie mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde.",
  moreCatchesShow: "Weitere Proben dieser Füllung zeigen, was stimmt.",
  checked: (f) => `Sie wurde geprüft (${f.checked}) und zählt; ${withoutIt(f)}.`,
  // left out of every figure
  timesFellows: (times) => `das ${times}-Fache dessen, was ihre Nachbarn erwarten lassen`,
  lessThanFellows: (percent) => `${percent} weniger, als ihre Nachbarn erwarten lassen`,
  moreThanFellows: (percent) => `${percent} mehr, als ihre Nachbarn erwarten lassen`,
  catchSetAside: (f) =>
    `Diese Probe wog ${f.weighed}, ${beyondDoubt(f)}, und bleibt aus jeder Zahl über andere Füllungen weg.`,
  fillSetAside: (f) =>
    `Die beiden Proben dieser Füllung unterscheiden sich um ${f.apart}, ${beyondDoubt(f)}. Welche falsch ist, kann niemand sagen; daher bleibt die Füllung aus jeder Zahl über andere Füllungen weg.`,
  withIt: "Mit ihr",
  withSoMany: (catches) => `Mit den ${catches} Proben, die so wegbleiben,`,
  withAllLeftOut: "Mit allem, was so wegbleibt,",
  nextFill: (f) =>
    `${f.withThem} wäre die nächste Füllung auf ${f.withAll} bekannt statt auf ${f.now}.`,
  excludeIt:
    "Lassen Sie sie mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde; dann zählt sie.",
  excludeOne:
    "Lassen Sie eine davon mit einem Grund weg (exclude), oder schreiben Sie in die Spalte checked, was nachgesehen wurde.",
  // catches that disagree
  disagree: (f) =>
    `Die Proben ${f.catches} liegen ${f.apart} auseinander: Eine davon ist falsch; drehen Sie neu ab. Bis dahin wird kein ± genannt.`,
  oneGives: (f) => `Probe ${f.catches} ergibt ${f.value}`,
  twoGive: (f) => `${f.first ? "Die Proben " : ""}${f.catches} ergeben ${f.value}`,
  twoDisagree: (f) =>
    `${differ(f)}, mehr als die Streuung dieses Dosierers zulässt (${f.p}). Welche falsch ist, kann niemand sagen: Nehmen Sie eine dritte. Bis dahin wird kein ± genannt.`,
  twoLieApart: (f) =>
    `${differ(f)}: mehr als Ihre anderen Proben (${f.p}), wie eines von zwanzig einwandfreien Paaren. Nehmen Sie eine dritte.`,
  twoChecked: (f) =>
    `${differ(f)}, mehr als Ihre anderen Proben (${f.p}). Beide wurden geprüft (${f.checked}) und zählen.`,
  twoDisagreedEarlier: (f) =>
    `Die beiden Proben dieser Füllung unterschieden sich um ${f.apart} (${f.p} unter allen Proben der Aufzeichnung); welche falsch war, kann niemand sagen.`,
  twoDisagreeAlone: (f) =>
    `Die beiden Proben dieser Füllung unterschieden sich um ${f.apart} (${f.p}, wenn man die Füllung allein betrachtet); ${byChance(f)}.`,
  // the fill as a whole
  moreThanCanBeTold: (catches) =>
    `Bei dieser Füllung fallen mehr Proben auf, als sich unter ${catches} auseinanderhalten lassen. Trauen Sie der ganzen Füllung nicht: Suchen Sie eine Ursache, wenn alles stillsteht, bevor Sie in den Dosierer greifen, und drehen Sie neu ab.`,
  oneCatch: "Eine Probe lässt sich nicht für sich beurteilen.",
  tooFew: (f) =>
    `${f.catches} Proben und ${f.alone ? "keine frühere Füllung" : "kaum etwas aus früheren Füllungen"} sind zu wenig, um eine davon zu beurteilen; nur ein Fehler über etwa ${f.gross} würde auffallen. Sie liegen ${f.apart} auseinander.`,
};
