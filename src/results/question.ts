/**
 * The questions of one bin and product, in the order of a report. A question has this one name everywhere: of its answer,
 * its words, its section and, with hyphens, of its files.
 *
 * What to set rests on the answers that are needed: one that could not be computed asks to look first. Of one that is
 * wanted it is only told.
 */
export const questions = [
  { name: "delivery", answer: "needed" },
  { name: "setting", answer: "needed" },
  { name: "catchesNeeded", answer: "needed" },
  { name: "outliers", answer: "needed" },
  { name: "drift", answer: "needed" },
  { name: "acrossFills", answer: "wanted" },
  { name: "skipping", answer: "wanted" },
  { name: "cost", answer: "wanted" },
  { name: "repeatability", answer: "wanted" },
  { name: "uncertaintyBudget", answer: "wanted" },
  { name: "fieldCheck", answer: "needed" },
  { name: "speedLinearity", answer: "wanted" },
  { name: "outlets", answer: "wanted" },
] as const;

/** A question about one bin and product, by the name of its answer in `MeterAnswers`. */
export type Question = (typeof questions)[number]["name"];
