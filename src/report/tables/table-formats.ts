/** Formats of tidy tables; one that a data package can describe comes before those it cannot. */
export const tableFormats = ["csv", "json", "xlsx", "md", "tex"] as const;
export type TableFormat = (typeof tableFormats)[number];

/** What is written unless a format is named: every text, but no workbook. */
export const usualTableFormats: readonly TableFormat[] = ["csv", "json", "md", "tex"];
