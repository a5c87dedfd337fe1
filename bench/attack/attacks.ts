import type { Attack } from "./attack.ts";
import { faults } from "./faults.ts";
import { numerics } from "./numerics.ts";
import { bentSetups, bentTables, vastTexts } from "./texts.ts";
import { bentWorkbooks, cutWorkbooks, flippedWorkbooks, vastWorkbooks } from "./workbooks.ts";

/** Every attack, in the order of the page. One more is a module and a line. */
export const attacks: readonly Attack[] = [
  cutWorkbooks,
  flippedWorkbooks,
  bentWorkbooks,
  vastWorkbooks,
  bentTables,
  vastTexts,
  bentSetups,
  numerics,
  faults,
];
