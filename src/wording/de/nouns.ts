import type { Numbered } from "../en/facts.ts";
import type { nouns as english } from "../en/nouns.ts";

const variables = new Map([
  ["bulk density", "Schüttgewicht"],
  ["moisture", "Feuchte"],
  ["meter speed", "Drehzahl des Dosierers"],
]);

const variable = (name: string) => variables.get(name) ?? name;

/** "mit 2 Umdrehungen". */
export const withTurns = ({ words, one }: Numbered) =>
  `mit ${words} ${one ? "Umdrehung" : "Umdrehungen"}`;

const catches = (count: number) => (count === 1 ? "1 Probe" : `${count} Proben`);

/** Counted nouns and the like, shared by all templates. */
export const nouns: typeof english = {
  catches,
  who: (f) => `Tank ${f.bin} (${f.product}), Füllung ${f.fill}`,
  beginning: ({ since, season }) =>
    season === null ? `Füllung ${since}` : `der Saison ${season} (Füllung ${since})`,
  fills: (count) => (count === 1 ? "1 Füllung" : `${count} Füllungen`),
  earlierFills: (count) =>
    count === 1
      ? "der früheren Füllung ihres Niveaus"
      : `der ${count} früheren Füllungen ihres Niveaus`,
  catchesOfTurns: ({ further, turns }) => `${catches(further)} ${withTurns(turns)}`,
  moreCatches: ({ further, turns }) =>
    `${further} weitere ${further === 1 ? "Probe" : "Proben"} ${withTurns(turns)}`,
  fillsFromTo: ({ from, to }) => (from === to ? `Füllung ${from}` : `Füllungen ${from} bis ${to}`),
  change: ({ percent, less }) => `${percent} ${less ? "niedriger" : "höher"}`,
  degrees: ({ words, one }) => `${words} ${one ? "Freiheitsgrad" : "Freiheitsgrade"}`,
  onDegrees: ({ words, one }) => `mit ${words} ${one ? "Freiheitsgrad" : "Freiheitsgraden"}`,
  variable,
  variableAtStart: variable,
};
