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
    "known-name": (f) => `one of ${f.names.join(", ")}`,
  },
  text: (f) => `Option "${f.option}" is ${f.received}; it must be ${f.allowed}.`,
  unknown: (f) => `Option "${f.option}" is ${f.received}; it must be ${f.allowed}.`,
};
