/** Who lends a fill its scatter, or a meter its spread. */
export interface LentBy {
  /** Other fills of the same meter. */
  readonly fills: number;
  /** Other meters. */
  readonly meters: number;
  /** Those of a library among them; left out: none. */
  readonly library?: number;
  /** True where a typical figure was taken for granted. */
  readonly assumed: boolean;
}
