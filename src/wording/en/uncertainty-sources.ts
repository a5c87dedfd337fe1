import type { BudgetSource, LeftOut } from "../../questions/uncertainty-budget.ts";

/** What the uncertainty of a rate comes from. */
export const sources: Readonly<Record<BudgetSource, string>> = {
  "catch scatter": "catch scatter",
  "reading gross": "reading the scale, gross",
  "reading tare": "reading the scale, tare",
  "scale error": "tested error of the scale",
  "turn count": "counting turns",
  "fill to fill": "difference between fills",
  drift: "drift from fill to fill",
  "working width": "working width and overlap",
  "wheel travel": "wheel travel per turn",
  slip: "slip of the drive wheel",
};

/** What may be left out of it, because nothing says how uncertain it is. */
export const leftOut = {
  ...sources,
  drive: "the drive (not given)",
  "speed measure": "the drive's own measure of speed",
} satisfies Record<LeftOut, string>;
