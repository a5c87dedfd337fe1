/** What a sentence is made with, as words already; some of it may be unknown. */
export type Facts<Name extends string, Unknown extends string = never> = Readonly<
  Record<Name, string> & Record<Unknown, string | null>
>;

/** Whole numbers a sentence is made with, where one takes another form of the noun. */
export type Counts<Name extends string> = Readonly<Record<Name, number>>;

/** Numbers that are words already, because they may have decimals, and whether the noun after them is in the singular. */
export type Numbers<Name extends string> = Readonly<
  Record<Name, { readonly words: string; readonly one: boolean }>
>;
