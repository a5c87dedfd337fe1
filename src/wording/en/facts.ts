/** What a sentence is made with, as words already; some of it may be unknown. */
export type Facts<Name extends string, Unknown extends string = never> = Readonly<
  Record<Name, string> & Record<Unknown, string | null>
>;

/** Whole numbers a sentence is made with, where one takes another form of the noun. */
export type Counts<Name extends string> = Readonly<Record<Name, number>>;

/** A number that is words already, because it may have decimals, and whether the noun after it is in the singular. */
export interface Numbered {
  readonly words: string;
  readonly one: boolean;
}

export type Numbers<Name extends string> = Readonly<Record<Name, Numbered>>;
