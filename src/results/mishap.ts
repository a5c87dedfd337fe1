/** What can happen at a catch that makes its figure wrong without anything being wrong with the meter. */
export type Mishap =
  | "tare-left-in"
  | "tare-taken-off-twice"
  | "one-turn-more"
  | "one-turn-fewer"
  | "two-turns-more"
  | "two-turns-fewer"
  | "bag-not-emptied"
  | "two-catches-in-one"
  | "meter-starved"
  | "other-unit"
  | "digits-swapped"
  | "decimal-moved";
