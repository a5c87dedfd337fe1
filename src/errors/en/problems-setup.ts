import type { Phrases } from "../issue-text.ts";
import type { SetupProblems, SetupValue } from "../problems/setup.ts";

const unquoted = {
  list: () => "a list",
  object: () => "an object",
  quoted: (value: string) => `the text "${value}"`,
  bare: (value: string) => value,
};
const found = (f: SetupValue) => (f.shape === null ? null : unquoted[f.shape](f.value));

const likeThis = (f: SetupValue) =>
  f.example === null ? "Correct it, or leave it out." : `Write it like this: ${f.example}.`;

const quoted = (names: readonly string[]) => names.map((name) => `"${name}"`);

/** What is said of a value of a setup. */
export const setupProblems: Phrases<SetupProblems> = {
  "setup-object": { found, expected: "an object in braces", remedy: likeThis },
  "setup-list": { found, expected: "a list in square brackets", remedy: likeThis },
  "setup-text": { found, expected: "a text", remedy: likeThis },
  "setup-name": { found, expected: "a name or a number", remedy: likeThis },
  "setup-above-0": { found, expected: "a number above 0", remedy: likeThis },
  "setup-at-least-0": { found, expected: "a number of 0 or more", remedy: likeThis },
  "setup-percentage": {
    found,
    expected: (f) => `a percentage from ${f.low} to ${f.high}`,
    remedy: likeThis,
  },
  "setup-between": {
    found,
    expected: (f) => `a number from ${f.low} to ${f.high}`,
    remedy: likeThis,
  },
  "setup-whole-from-1": { found, expected: "a whole number from 1", remedy: likeThis },
  "setup-whole-up-to": {
    found,
    expected: (f) => `a whole number up to ${f.most}`,
    remedy: likeThis,
  },
  "setup-date": { found, expected: "a date", remedy: likeThis },
  "setup-no-such-date": {
    found,
    expected: "a date that exists, year first, such as 2026-04-12",
    remedy: likeThis,
  },
  "setup-one-of": {
    found,
    expected: (f) => `one of ${quoted(f.values).join(", ")}`,
    remedy: likeThis,
  },
  "setup-unit": {
    found,
    expected: (f) => `one of the units ${f.units.join(", ")}`,
    remedy: likeThis,
  },
  "setup-kind": {
    found,
    expected: (f) => `an object whose kind is ${quoted(f.kinds).join(" or ")}`,
    remedy: likeThis,
  },
  "setup-finding": {
    found,
    expected: "the code of a finding, such as field-disagrees",
    remedy: likeThis,
  },
  "setup-version": {
    found,
    expected: (f) => `version ${f.newest} of the format`,
    remedy: "Update evencatch if the file is newer, or have it written anew.",
  },
  "setup-span-reversed": {
    found,
    expected: 'the lower figure under "from" and the higher under "to"',
    remedy: "Swap the two.",
  },
  "setup-no-step": { found, expected: "at least one step", remedy: likeThis },
  "setup-step-names": {
    found,
    expected: "as many names as there are steps",
    remedy: "Name each step, in the order of the steps.",
  },
  "setup-step-unknown": {
    found,
    expected: "one of the steps, by its name in step_names or by its ratio in steps",
    remedy: "Name the step at which the catches were made, or list it among the steps.",
  },
  "setup-bin-twice": {
    found,
    expected: "one entry for each bin, or for each bin and product",
    remedy: "Join the two entries, or delete one.",
  },
  "setup-bin-open": {
    found,
    expected: "one entry that counts, where two hold for the same bin",
    remedy:
      "One names the product and the other machine or farm: add an entry that names all of them, or name the same in both.",
  },
  "setup-no-book-value": {
    found,
    expected: 'a book_value beside "book value"',
    remedy: "Give the book_value as well, or assume something else.",
  },
  "setup-rates-reversed": {
    found,
    expected: "no more than highest_rate",
    remedy: "Give the lower of the two rates of label or law as lowest_rate.",
  },
  "setup-figure-missing": {
    found,
    expected: (f) => `${f.key} beside it`,
    remedy: (f) => `Give ${f.key} as well, or delete this key.`,
  },
  "setup-bushel": {
    found,
    expected: "bu/ac together with the mass of a bushel, and neither without the other",
    remedy: 'Write it like this: "value": 2, "unit": "bu/ac", "bushel": {"value":60,"unit":"lb"}.',
  },
  "setup-rows-shut": {
    found,
    expected: "fewer rows shut than the drill has, and rows beside them",
    remedy: "Give the rows of the drill as rows, and how many of them are shut as rows_shut.",
  },
  "setup-more-left-than-filled": {
    found,
    expected: "less left than was filled",
    remedy: "Compare the two figures and their units; they may be swapped.",
  },
  "setup-key-unknown": {
    found: (f) => `the key "${f.key}"`,
    expected: (f) => `one of the keys ${f.known.join(", ")}`,
    remedy: (f) =>
      f.near === null
        ? "Delete the key, or rename it to the one that is meant."
        : `Rename it to ${f.near} if that is meant, or delete it.`,
  },
  "setup-key-twice": {
    found: (f) => `both ${f.old} and ${f.now}`,
    expected: (f) => `one of them, as ${f.old} is the old name of ${f.now}`,
    remedy: (f) => `Keep what is right under ${f.now}, and delete ${f.old}.`,
  },
  "setup-key-of-other-kind": {
    found: (f) => `the key "${f.key}"`,
    expected: "only the keys of its kind",
    remedy: "Look at kind, or delete the key.",
  },
};
