import { keyColumns } from "../data/column-kinds.ts";
import type { ProblemKey } from "../errors/problems.ts";
import { catchKeys, fillKeys, isTold } from "./read-sql.ts";

/** Rows that disagree with an earlier one: which file, how many, the first of them, and the one it disagrees with. */
export interface Disagreement {
  readonly problem: ProblemKey;
  /** The column under which it is told. */
  readonly column: "catch" | "product" | "bin" | (typeof keyColumns)[number];
  /** Whether there are any: no row, or rows. Quick, since mostly there are none. */
  readonly any: string;
  /** Per file: file, rows, place, first. */
  readonly where: string;
}

const allKeys = catchKeys.join(", ");

/** What `checkTogether` looks for, of rows in the order of their place. */
export function disagreements(from: string): readonly Disagreement[] {
  return [
    ...keyColumns.map((key) => keyMissing(from, key)),
    twins(from),
    mixedFills(from),
    ...keyColumns.map((key) => twoSpellings(from, key, "key-spelt-twice")),
    twoSpellings(from, "bin", "bin-spelt-twice"),
    twoSpellings(from, "product", "product-spelt-twice"),
  ];
}

function keyMissing(from: string, key: (typeof keyColumns)[number]): Disagreement {
  return {
    problem: "key-missing",
    column: key,
    any: `SELECT 1 FROM ${from} HAVING count(*) FILTER (WHERE ${key} = '') > 0 AND count(*) FILTER (WHERE ${key} <> '') > 0`,
    where: `SELECT file, count(*) AS rows, min(place) AS place, (SELECT min(place) FROM ${from} WHERE ${key} <> '') AS first
FROM ${from} WHERE ${key} = '' AND ${isTold} GROUP BY file ORDER BY place`,
  };
}

function twins(from: string): Disagreement {
  // Numbers that are all different fill as many bits as there are rows: what shows none at once is none.
  const suspect = `SELECT ${allKeys} FROM ${from} WHERE ${isTold} GROUP BY ${allKeys}
HAVING count(*) <> bit_count(bit_or(CAST(1 AS BIGINT) << ("catch" % 62)))`;
  const same = `${allKeys}, "catch", outlet`;
  return {
    problem: "catch-repeated",
    column: "catch",
    any: `SELECT 1 FROM ${from} JOIN (${suspect}) USING (${allKeys}) GROUP BY ${same} HAVING count(*) > 1 LIMIT 1`,
    where: laterOnes(
      `SELECT file, place, min(place) OVER (PARTITION BY ${same}) AS first
FROM ${from} JOIN (${suspect}) USING (${allKeys})`,
      "place > first",
    ),
  };
}

function mixedFills(from: string): Disagreement {
  const suspect = `SELECT ${fillKeys} FROM ${from} WHERE ${isTold} GROUP BY ${fillKeys} HAVING min(lower(product)) <> max(lower(product))`;
  return {
    problem: "two-products-in-fill",
    column: "product",
    any: `${suspect} LIMIT 1`,
    where: laterOnes(
      `SELECT file, place, product, min(place) OVER same AS first, first_value(product) OVER same AS expected
FROM ${from} JOIN (${suspect}) USING (${fillKeys}) WHERE ${isTold} WINDOW same AS (PARTITION BY ${fillKeys} ORDER BY place)`,
      "lower(product) <> lower(expected)",
    ),
  };
}

function twoSpellings(
  from: string,
  name: Disagreement["column"],
  problem: ProblemKey,
): Disagreement {
  const suspect = `SELECT lower(${name}) AS folded FROM (SELECT DISTINCT ${name} FROM ${from} WHERE ${name} <> '' AND ${isTold}) GROUP BY folded HAVING count(*) > 1`;
  return {
    problem,
    column: name,
    any: `${suspect} LIMIT 1`,
    where: laterOnes(
      `SELECT file, place, ${name} AS name, min(place) OVER same AS first, first_value(${name}) OVER same AS expected
FROM ${from} JOIN (${suspect}) ON lower(${name}) = folded WHERE ${isTold} WINDOW same AS (PARTITION BY folded ORDER BY place)`,
      "name <> expected",
    ),
  };
}

function laterOnes(rows: string, isWrong: string): string {
  return `SELECT file, count(*) AS rows, min(place) AS place, arg_min(first, place) AS first
FROM (${rows}) WHERE ${isWrong} GROUP BY file ORDER BY place`;
}
