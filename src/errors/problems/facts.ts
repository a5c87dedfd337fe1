/** Of a problem that its name says all of. */
export type NoFacts = Readonly<Record<string, never>>;
