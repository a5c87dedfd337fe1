/**
 * A Vega-Lite specification as plain data. Deliberately wide: vega-lite's own type is too large to build
 * against piece by piece, so specs are held to its JSON schema by tests instead of by the compiler.
 */
export type ChartSpec = Readonly<Record<string, unknown>>;
