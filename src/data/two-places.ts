import type { DataIssue } from "../errors/data-issue.ts";
import type { ImportProblems } from "../errors/problems/import.ts";
import { dataIssue, standingFor } from "./issues.ts";

/** How it can be said that files or sheets are of different machines or seasons. */
export type ToldBy = ImportProblems["catch-in-two-places"]["by"];

/** A catch that stands in two files or sheets, as the same problem for all that do: the whole file may be there twice. */
export function inTwoPlaces(issue: DataIssue, by: ToldBy): DataIssue {
  const { problem, firstSource, source, rowKind, row, column, alike = 0 } = issue;
  if (problem !== "catch-repeated" || firstSource === undefined) return issue;
  const place = {
    source,
    rowKind,
    ...(row === null ? {} : { row }),
    ...(column === null ? {} : { column }),
  };
  const facts = { first: firstSource, by };
  return standingFor(dataIssue(place, { problem: "catch-in-two-places", facts }), alike);
}
