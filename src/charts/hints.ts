/** A field of a mark's data that is words already, and what a person calls it. */
export interface Hint {
  readonly field: string;
  readonly title: string;
}

/**
 * What a mark says of itself to a pointer, and the same to who cannot see it: figures rounded as the words round them,
 * where vega would write every digit.
 */
export function hints(fields: readonly Hint[]): object {
  const parts = fields.map(
    ({ field, title }) => `${JSON.stringify(`${title}: `)} + datum.${field}`,
  );
  return {
    tooltip: fields.map(({ field, title }) => ({ field, title, type: "nominal" })),
    description: { value: { expr: parts.join(' + "; " + ') } },
  };
}

/** The same of a mark whose field is a sentence by itself. */
export function sentenceHint(field: string): object {
  return { tooltip: { field, type: "nominal" }, description: { field, type: "nominal" } };
}
