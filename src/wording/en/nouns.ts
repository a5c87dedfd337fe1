import type { Change, Counts, Facts, Numbered, Numbers } from "./facts.ts";

/** Catches still to take, of so many turns each. */
type Planned = Counts<"further"> & Numbers<"turns">;

/** The fill with which something began; season null: it began none. */
export type Beginning = Counts<"since"> & Facts<never, "season">;

const catches = (count: number) => (count === 1 ? "1 catch" : `${count} catches`);
const degrees = ({ words, one }: Numbered) => `${words} ${one ? "degree" : "degrees"} of freedom`;

/** Counted nouns and the like, shared by all templates. */
export const nouns = {
  catches,
  who: (f: Facts<"bin" | "product"> & Counts<"fill">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}`,
  catchesOfTurns: ({ further, turns }: Planned) => `${catches(further)} of ${turns.words} turns`,
  moreCatches: ({ further, turns }: Planned) =>
    `${further} more ${further === 1 ? "catch" : "catches"} of ${turns.words} turns`,
  /** After "since": the fill with which something began, and the season where it began that too. */
  beginning: ({ since, season }: Beginning) =>
    season === null ? `fill ${since}` : `season ${season} (fill ${since})`,
  fills: (count: number) => (count === 1 ? "1 fill" : `${count} fills`),
  /** At the start of a sentence. */
  fillsFromTo: ({ from, to }: Counts<"from" | "to">) =>
    from === to ? `Fill ${from}` : `Fills ${from} to ${to}`,
  /** What a fill is compared with: after "than", in German in the genitive. */
  earlierFills: (count: number) =>
    count === 1 ? "the earlier fill of its level" : `the ${count} earlier fills of its level`,
  /** Of a delivery. */
  change: ({ percent, less }: Change) => `${percent} ${less ? "less" : "more"}`,
  /** The number is words already: it may have decimals. */
  degrees,
  onDegrees: (df: Numbered) => `on ${degrees(df)}`,
  /** A recorded variable as it is called on paper; a column of the file keeps the name it has there. */
  variable: (name: string) => name,
  variableAtStart: (name: string) => name.charAt(0).toUpperCase() + name.slice(1),
};
