import type { delivery as english } from "../en/delivery.ts";
import { lenders, likeWhom } from "./lenders.ts";
import { nouns, withTurns } from "./nouns.ts";

const { catches, degrees } = nouns;

/** What is said of the delivery of one fill. */
export const delivery: typeof english = {
  disagree: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.value} aus ${catches(f.catches)}, die einander widersprechen: Eine davon ist falsch; wie weit der Wert daneben liegt, lässt sich daher nicht sagen. Drehen Sie neu ab.`,
  errorUnknown: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.value} aus ${catches(f.catches)}; wie weit das daneben liegen kann, lässt sich aus ${f.catches === 1 ? "einer Probe" : "diesen Proben"} nicht sagen.`,
  goodTo: (f) =>
    `Tank ${f.bin} (${f.product}), Füllung ${f.fill}: ${f.value} aus ${catches(f.catches)}; der Austrag dieser Füllung liegt mit ${f.level} Sicherheit bei ${f.range}, die Angabe ist also auf ${f.error} genau.`,
  hull: (f) =>
    `Mit ${f.count === 1 ? "der auffälligen Probe" : "den auffälligen Proben"} ${f.catches} liegt der Austrag dieser Füllung bei ${f.with}, ohne bei ${f.without}. Es bleibt beim Wert aus allen Proben, und ± reicht bis zum ferneren Ende von beiden.`,
  scatterUnknown: "Die Streuung der Proben ist nicht bekannt: Eine Probe allein zeigt keine.",
  scatterHidden:
    "Wie stark die Proben streuen, ist nicht bekannt: Sie stimmen überein, die Waage verdeckt es also.",
  scatterLent: (f) =>
    `Streuung der Proben: ${f.relative} bei einer Probe ${withTurns(f.turns)}, aus ${f.catches === 1 ? "" : `den ${catches(f.catches)} dieser Füllung, `}${lenders(f)} (${degrees(f.df)}).`,
  twoLines: (f) =>
    `${f.byItself === null ? "Für sich allein sagt dieser Tank noch nichts über den Fehler." : `Für sich allein ${f.byItself}.`} Wenn dieser Tank streut wie ${f.assumed ? "der typische Wert im Setup" : likeWhom(f)}: ${f.lent}.`,
  ifTypical: (f) =>
    `Für sich allein ${f.byItself}. Wenn Proben in ${f.turns} Umdrehungen um ${f.typical} streuen wie bei vielen Dosierern: ${f.halfWidth}. Das ist angenommen, nicht gemessen, und entscheidet nichts.`,
  scatterOwn: (f) =>
    `Streuung der Proben: ${f.relative} bei einer Probe ${withTurns(f.turns)}, allein aus den ${catches(f.catches)} dieser Füllung.`,
};
