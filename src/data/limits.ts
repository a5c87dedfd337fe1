/**
 * How much of anything is taken on. Each is far above what a farm writes down, and low enough that what lies above it is
 * refused within seconds, in memory a laptop has, and before a library has been given a single byte of it.
 */
export const limits = {
  /**
   * Bytes of a file. A million catches come to about 60 MB of CSV; a workbook is compressed about tenfold and is unpacked in
   * memory, so its limit is lower.
   */
  bytes: { csv: 100_000_000, json: 100_000_000, xlsx: 20_000_000 },
  /** Bytes of a setup: a thousand bins with everything said of them come to less than 2 MB. */
  setupBytes: 5_000_000,
  /** Entries of one list in a setup. Each is held against every fill, so that their number counts twice. */
  setupEntries: 1_000,
  /** Letters of a line. No row of catches is a tenth as long. */
  lineLetters: 1_000_000,
  /** Rows of a table, blank ones too. */
  rows: 2_000_000,
  /** Columns of a table. */
  columns: 500,
  /** Cells of a text table, blank ones too. */
  cells: 25_000_000,
  /** Cells of a sheet; to read one takes a hundred times as long as one of a text. */
  sheetCells: 1_000_000,
  /** Bytes a workbook comes to when it is unpacked. */
  unpackedBytes: 100_000_000,
  /** Pairs of products held against each other; a table of more is read by nobody. */
  pairs: 2_500,
  /** Problems named of one file: whoever mends the first thousand has mended what caused the rest. */
  problems: 1_000,
} as const;
