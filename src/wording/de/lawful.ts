import type { lawful as english } from "../en/lawful.ts";

/** What is said of rates that label or law sets. */
export const lawful: typeof english = {
  atLeast: (rate) => `mindestens ${rate}`,
  atMost: (rate) => `höchstens ${rate}`,
  both: (f) => `mindestens ${f.lowest}, höchstens ${f.highest}`,
  tooLittle: (chance) => `die Wahrscheinlichkeit für zu wenig beträgt ${chance}`,
  tooMuch: (chance) => `die Wahrscheinlichkeit für zu viel beträgt ${chance}`,
  either: (f) => `die Wahrscheinlichkeit für zu wenig beträgt ${f.little}, für zu viel ${f.much}`,
  doNotSkip: (limits) => `Drehen Sie jede Füllung ab: Etikett oder Gesetz verlangen ${limits}.`,
  onceSet: (chance) => `Nach diesen Proben eingestellt: ${chance}.`,
  onceSetUnknown:
    "Wie leicht die Menge nach dem Einstellen dagegen verstößt, lässt sich nicht sagen.",
  unknownLimits: "Mengen, deren Masse sich ohne die Angaben zum Saatgut nicht rechnen lässt",
};
