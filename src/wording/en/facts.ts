import type { FillName } from "../../results/fill-name.ts";

/** What a sentence is made with, as words already; some of it may be unknown. */
export type Facts<Name extends string, Unknown extends string = never> = Readonly<
  Record<Name, string> & Record<Unknown, string | null>
>;

/** Facts that are the name of a fill. */
type FillFact = "fill" | "since" | "sinceFill" | "from" | "to" | "backWith";

/** Whole numbers a sentence is made with, where one takes another form of the noun; fills by their names. */
export type Counts<Name extends string> = {
  readonly [N in Name]: N extends FillFact ? FillName : number;
};

/** A number that is words already, because it may have decimals, and whether the noun after it is in the singular. */
export interface Numbered {
  readonly words: string;
  readonly one: boolean;
}

export type Numbers<Name extends string> = Readonly<Record<Name, Numbered>>;

/** How far something lies from something else, and to which side. */
export interface Change {
  readonly percent: string;
  readonly less: boolean;
}
