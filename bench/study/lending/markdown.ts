import { table } from "../support/markdown.ts";
import type { Cell, Claim, Row, Section } from "./claims.ts";

/** A section as a table: what was found, what is claimed of it, and whether it is met. */
export function sectionTable({ rows }: Section): string[] {
  const columns = rows[0]?.cells.map(({ at }) => at) ?? [];
  const hasClaims = rows.some(({ cells }) => cells.some(({ claim }) => claim !== null));
  return table(
    ["", ...columns, ...(hasClaims ? ["claim", "verdict"] : [])],
    rows.map((row) => [
      row.situation,
      ...row.cells.map(cellWords),
      ...(hasClaims ? [claimWords(row), verdictWords(row)] : []),
    ]),
  );
}

function cellWords(cell: Cell): string {
  const { found, halfWidth, verdict } = cell;
  if (found === null) return "–";
  const figure = figureWords(cell, found);
  const marked = verdict === "missed" ? `**${figure}**` : figure;
  return halfWidth === null ? marked : `${marked} ± ${(100 * halfWidth).toPrecision(2)} %`;
}

function figureWords({ of }: Cell, found: number): string {
  switch (of) {
    case "coverage":
      return short(found, 3);
    case "share":
      return `${(100 * found).toFixed(1)} %`;
    case "ratio of widths":
      return `× ${short(found, 2)}`;
  }
}

function short(value: number, decimals: number): string {
  return value.toFixed(decimals).replace(/^0\./, ".");
}

function claimWords({ cells }: Row): string {
  const words = cells.flatMap(({ claim, of }) =>
    claim === null ? [] : limits(claim, of === "coverage" ? 3 : 2),
  );
  return [...new Set(words)].join(", ");
}

function limits({ atLeast, atMost }: Claim, decimals: number): string {
  const said = (value: number) => short(value, decimals).replace(/(\.\d+?)0+$/, "$1");
  if (atLeast === null) return atMost === null ? "" : `≤ ${said(atMost)}`;
  return atMost === null ? `≥ ${said(atLeast)}` : `${said(atLeast)}–${said(atMost)}`;
}

function verdictWords({ cells }: Row): string {
  const missed = cells.filter(({ verdict }) => verdict === "missed");
  if (missed.length > 0) return `**missed** (${missed.map(({ at }) => at).join(", ")})`;
  const near = cells.filter(({ verdict }) => verdict === "within the tolerance");
  if (near.length > 0) return `within the tolerance (${near.map(({ at }) => at).join(", ")})`;
  return cells.some(({ verdict }) => verdict !== null) ? "met" : "";
}
