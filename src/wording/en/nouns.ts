import type { Counts, Facts, Numbers } from "./facts.ts";

/** Catches still to take, of so many turns each. */
type Planned = Counts<"further"> & Numbers<"turns">;

const catches = (count: number) => (count === 1 ? "1 catch" : `${count} catches`);

/** Counted nouns and the like, shared by all templates. */
export const nouns = {
  catches,
  who: (f: Facts<"bin" | "product"> & Counts<"fill">) =>
    `Bin ${f.bin} (${f.product}), fill ${f.fill}`,
  fills: (count: number) => (count === 1 ? "1 fill" : `${count} fills`),
  /** What a fill is compared with: after "than", in German in the genitive. */
  earlierFills: (count: number) =>
    count === 1 ? "the earlier fill of its level" : `the ${count} earlier fills of its level`,
  catchesOfTurns: ({ further, turns }: Planned) => `${catches(further)} of ${turns.words} turns`,
  moreCatches: ({ further, turns }: Planned) =>
    `${further} more ${further === 1 ? "catch" : "catches"} of ${turns.words} turns`,
  /** The number is words already: it may have decimals. */
  degrees: ({ words, one }: { readonly words: string; readonly one: boolean }) =>
    `${words} ${one ? "degree" : "degrees"} of freedom`,
  /** A recorded variable as it is called on paper; a column of the file keeps the name it has there. */
  variable: (name: string) => name,
  variableAtStart: (name: string) => name.charAt(0).toUpperCase() + name.slice(1),
};
