/** What the file says about a catch beside its figures; null: nothing. */
export interface CatchRemark {
  readonly catch: number;
  readonly note: string | null;
  readonly operator: string | null;
  readonly checked: string | null;
  /** Columns of the person's own, under their headers. */
  readonly extra: Readonly<Record<string, string>>;
}
