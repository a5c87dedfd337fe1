import type { Numbered } from "../en/facts.ts";
import type { nouns as english } from "../en/nouns.ts";

const variables = new Map([
  ["bulk density", "Schüttgewicht"],
  ["moisture", "Feuchte"],
  ["meter speed", "Drehzahl des Dosierers"],
]);

const variable = (name: string) => variables.get(name) ?? name;

/** Counted nouns and the like, shared by all templates. */
export const nouns: typeof english = {
  catches: (count) => (count === 1 ? "1 Probe" : `${count} Proben`),
  fills: (count) => (count === 1 ? "1 Füllung" : `${count} Füllungen`),
  degrees: ({ words, one }) => `${words} ${one ? "Freiheitsgrad" : "Freiheitsgrade"}`,
  onDegrees: ({ words, one }) => `mit ${words} ${one ? "Freiheitsgrad" : "Freiheitsgraden"}`,
  variable,
  variableAtStart: variable,
};

/** A catch "mit 20 Umdrehungen". */
export const withTurns = ({ words, one }: Numbered) =>
  `mit ${words} ${one ? "Umdrehung" : "Umdrehungen"}`;
