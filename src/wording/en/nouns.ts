import type { Numbered } from "./facts.ts";

const degrees = ({ words, one }: Numbered) => `${words} ${one ? "degree" : "degrees"} of freedom`;

/** Counted nouns and the like, shared by all templates. */
export const nouns = {
  catches: (count: number) => (count === 1 ? "1 catch" : `${count} catches`),
  fills: (count: number) => (count === 1 ? "1 fill" : `${count} fills`),
  /** The number is words already: it may have decimals. */
  degrees,
  onDegrees: (df: Numbered) => `on ${degrees(df)}`,
  /** A recorded variable as it is called on paper; a column of the file keeps the name it has there. */
  variable: (name: string) => name,
  variableAtStart: (name: string) => name.charAt(0).toUpperCase() + name.slice(1),
};
