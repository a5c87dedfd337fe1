import type { OptionTemplates } from "../option-text.ts";

/** What is said of an option that cannot be what it is. */
export const optionProblems: OptionTemplates = {
  needs: {
    fraction: () => "a fraction above 0 and below 1, such as 0.95",
    positive: () => "a finite number above zero",
    "positive-or-null": () => "a finite number above zero, or null when unknown",
    "not-negative": () => "a finite number of zero or more",
    between: (f) => `a number from ${f.low} to ${f.high}`,
    count: (f) => `a whole number of at least ${f.least}`,
    text: () => "a text",
    list: () => "a list",
    "one-of": (f) => f.choices.join(" or "),
    listed: (f) => `one of ${f.choices.join(", ")}`,
    "bin-in": (f) => `a bin that is in ${f.source}`,
    "catch-in": (f) => `a bin:fill:catch that is in ${f.source}`,
    "one-catch": (f) => oneCatch[f.by](f.names),
    reason: () => "some words saying why",
    name: () => "a name",
    "no-column-beside": (f) => `left out, since the file has a column ${f.column}`,
    "sheet-of-workbook": () => "left out unless the file is an .xlsx workbook",
    "some-catch-counts": () => "such that at least one catch counts",
    "as-measured": () => '"as measured" where a fill delivered nothing',
    "different-names": () => "two or more different names",
    "some-numbers": () => "one or more numbers",
    "level-with-margin": () => "above 0.5 with an equivalence margin",
    "few-rows": (f) => `few enough for ${f.most} rows`,
    "known-name": (f) => `one of ${f.names.join(", ")}`,
  },
  text: (f) => `Option "${f.option}" is ${f.received}; it must be ${f.allowed}.`,
  unknown: (f) => `Option "${f.option}" is ${f.received}; it must be ${f.allowed}.`,
};

const oneCatch: Readonly<Record<"bin" | "fill" | "product", (names: readonly string[]) => string>> =
  {
    bin: (names) =>
      `one catch; this one exists ${names.map((name) => `in bin ${name}`).join(" and ")}, so name the bin so`,
    fill: (names) =>
      `one catch; this one exists ${names.map((name) => `in fill ${name}`).join(" and ")}, so name the fill so`,
    product: (names) =>
      `one catch; this one exists with ${names.join(" and ")}, so name the product`,
  };
