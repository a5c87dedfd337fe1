import type { nouns as english } from "../en/nouns.ts";

const variables = new Map([
  ["bulk density", "Schüttgewicht"],
  ["moisture", "Feuchte"],
  ["meter speed", "Drehzahl des Dosierers"],
]);

const variable = (name: string) => variables.get(name) ?? name;

type Counted = Parameters<typeof english.degrees>[0];

/** "mit 7,3 Freiheitsgraden". */
export const withDegrees = ({ words, one }: Counted) =>
  `mit ${words} ${one ? "Freiheitsgrad" : "Freiheitsgraden"}`;

/** "mit 2 Umdrehungen". */
export const withTurns = ({ words, one }: Counted) =>
  `mit ${words} ${one ? "Umdrehung" : "Umdrehungen"}`;

const catches = (count: number) => (count === 1 ? "1 Probe" : `${count} Proben`);

/** Counted nouns and the like, shared by all templates. */
export const nouns: typeof english = {
  catches,
  who: (f) => `Tank ${f.bin} (${f.product}), Füllung ${f.fill}`,
  fills: (count) => (count === 1 ? "1 Füllung" : `${count} Füllungen`),
  earlierFills: (count) =>
    count === 1
      ? "der früheren Füllung ihres Niveaus"
      : `der ${count} früheren Füllungen ihres Niveaus`,
  catchesOfTurns: ({ further, turns }) => `${catches(further)} ${withTurns(turns)}`,
  moreCatches: ({ further, turns }) =>
    `${further} weitere ${further === 1 ? "Probe" : "Proben"} ${withTurns(turns)}`,
  degrees: ({ words, one }) => `${words} ${one ? "Freiheitsgrad" : "Freiheitsgrade"}`,
  variable,
  variableAtStart: variable,
};
