import type { ReEstimate, SpreadLibrary, SpreadRecord } from "../../src/data/spreads/schema.ts";

/** A meter of a library, with figures of no meter in particular. */
export const aSpreadRecord: SpreadRecord = {
  productClass: "cereals",
  meterType: null,
  spread: { variance: 0.0004, df: 4 },
  scatter: { variance: 0.0045, df: 10 },
  fills: 5,
  catches: 15,
};

/** A declared constant that logs bear out. */
export const aReEstimate: ReEstimate = {
  name: "between_meters_spread",
  declared: 0.5,
  estimate: 0.41,
  from: 0.3,
  to: 0.55,
  sources: 34,
  differs: false,
  said: null,
};

/** A small library with everything that one may hold. */
export const aSpreadLibrary: SpreadLibrary = {
  made: {
    by: "evencatch 1.0.0",
    day: "2026-04-12",
    how: "by hand",
    catches: 90,
    fills: 30,
    meters: 6,
    metersLeftOut: 1,
    fewestBins: 5,
    tablesSha256: ["9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"],
  },
  records: [
    aSpreadRecord,
    { ...aSpreadRecord, productClass: null, meterType: "fluted roller", spread: null },
    { ...aSpreadRecord, scatter: null },
  ],
  estimates: {
    level: 0.95,
    constants: [{ ...aReEstimate, said: "The declared 0.5 fits." }],
  },
};
