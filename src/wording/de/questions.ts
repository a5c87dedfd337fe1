import type { Question } from "../../results/question.ts";

/** Names of the answers, in German, where one could not be computed. */
export const questions: Readonly<Record<Question, string>> = {
  delivery: "Austrag je Umdrehung",
  outliers: "Proben, denen man nicht trauen sollte",
  catchesNeeded: "Genug Proben?",
  setting: "Was einzustellen ist",
  drift: "Hat sich der Austrag verschoben?",
  fieldCheck: "Feldprüfung",
  repeatability: "Wie gut wiederholen sich die Proben?",
  uncertaintyBudget: "Woraus die Unsicherheit besteht",
  speedLinearity: "Drehzahl des Dosierers",
  outlets: "Auslässe",
  acrossFills: "Über die Füllungen",
  skipping: "Was man riskiert, ohne abzudrehen",
  cost: "Was es kostet",
};
