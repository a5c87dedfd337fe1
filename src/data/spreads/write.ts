import {
  type ReEstimate,
  type SpreadFigure,
  type SpreadLibrary,
  type SpreadRecord,
  spreadsKind,
  spreadsVersion,
  spreadUnits,
} from "./schema.ts";

const about =
  "How much the catches and fills of meters scatter, for others to borrow. No name of a bin, farm or person, no date of a catch and no row of a log is in it.";

/** A library of spreads as the text of its file; reading it gives the library back. */
export function spreadLibraryText({ made, records, estimates }: SpreadLibrary): string {
  const file = {
    kind: spreadsKind,
    version: spreadsVersion,
    about,
    made: {
      by: made.by,
      day: made.day,
      how: made.how,
      catches: made.catches,
      fills: made.fills,
      meters: made.meters,
      meters_left_out: made.metersLeftOut,
      fewest_bins: made.fewestBins,
      ...given("tables_sha256", made.tablesSha256),
    },
    units: spreadUnits,
    records: records.map(recordOf),
    ...given(
      "estimates",
      estimates === null
        ? null
        : { confidence: estimates.level, constants: estimates.constants.map(constantOf) },
    ),
  };
  return `${JSON.stringify(file, null, 1)}\n`;
}

function recordOf({ productClass, meterType, spread, scatter, fills, catches }: SpreadRecord) {
  return {
    ...given("product_class", productClass),
    ...given("meter_type", meterType),
    ...given("spread", figureOf(spread)),
    ...given("scatter", figureOf(scatter)),
    fills,
    catches,
  };
}

function figureOf(figure: SpreadFigure | null) {
  return figure === null ? null : { variance: figure.variance, df: figure.df };
}

function constantOf({ said, ...constant }: ReEstimate) {
  return { ...constant, ...given("said", said) };
}

/** What is not known is left out. */
function given(key: string, value: unknown): Readonly<Record<string, unknown>> {
  return value === null ? {} : { [key]: value };
}
