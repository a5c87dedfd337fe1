import { catchKeys } from "./read-sql.ts";

const keys = catchKeys.join(", ");
const sameKeys = (one: string, other: string) =>
  catchKeys.map((key) => `${one}.${key} = ${other}.${key}`).join(" AND ");

/** What is known of a fill beside its scatter. */
const sums =
  "taken_at, catches, turns, mass_kg, divisions_kg, without_division, fewest_turns, most_turns";

/**
 * Catches as they count, outlets of one catch added up as `metersOf` does: where a catch was weighed at several outlets and at
 * no other time. One that is left out keeps its time alone, since a fill began with it all the same; one that has no mass is none.
 *
 * @param withOutlets  false where no row names an outlet
 * @param place        column with the order of the rows; null: they have none
 */
export function weighingsSql(from: string, withOutlets: boolean, place: string | null): string {
  const order = place === null ? "" : `, ${place}`;
  const counted = (name: string) => `CASE WHEN counts THEN ${name} END AS ${name}`;
  const single = `SELECT ${keys}, ${["turns", "net_kg", "division_kg"].map(counted).join(", ")}, taken_at${order}\nFROM ${from} WHERE net_kg IS NOT NULL`;
  if (!withOutlets) return single;
  const earliest = place === null ? "" : `, min(${place}) AS ${place}`;
  return `WITH weighed AS (
  SELECT ${keys}, "catch", outlet, turns, net_kg, division_kg, taken_at${order},
    count(*) OVER same = count(outlet) OVER same AS apart
  FROM ${from} WHERE counts
  WINDOW same AS (PARTITION BY ${keys}, "catch", turns))
SELECT ${keys}, turns, sum(net_kg) AS net_kg,
  CASE WHEN count(*) = count(division_kg) THEN sum(division_kg) END AS division_kg, min(taken_at) AS taken_at${earliest}
FROM weighed
GROUP BY ${keys}, "catch", turns, CASE WHEN apart THEN NULL ELSE coalesce(outlet, '') END
UNION ALL
${single} AND NOT counts`;
}

/** First pass: the sums of each fill, from which its delivery follows. A fill of which no catch counts is none. */
export function sumsSql(from: string, place: string | null): string {
  const order = place === null ? "" : `, min(${place}) AS ${place}`;
  return `SELECT ${keys}, min(taken_at) AS taken_at, CAST(count(turns) AS INTEGER) AS catches, sum(turns) AS turns, sum(net_kg) AS mass_kg,
  coalesce(sum(division_kg), 0) AS divisions_kg, CAST(count(turns) - count(division_kg) AS INTEGER) AS without_division,
  min(turns) AS fewest_turns, max(turns) AS most_turns${order}
FROM ${from}
GROUP BY ${keys}
HAVING count(turns) > 0`;
}

/**
 * Second pass: squared distances from the fill's own delivery. From Σm²/t less (Σm)²/Σt in one pass every digit is lost where
 * catches agree closely: three equal catches would seem to scatter.
 */
export function scatterSql(from: string, fills: string): string {
  const distance = "(c.net_kg - f.mass_kg / f.turns * c.turns)";
  const own = catchKeys.map((key) => `c.${key}`).join(", ");
  return `SELECT ${own}, sum(${distance} * ${distance} / c.turns) AS scatter_sum
FROM ${from} AS c JOIN ${fills} AS f ON ${sameKeys("c", "f")}
GROUP BY ${own}`;
}

/** The totals of every fill. */
export function recordsSql(fills: string, scatter: string): string {
  const of = (names: string) =>
    names
      .split(", ")
      .map((name) => `f.${name}`)
      .join(", ");
  return `SELECT ${of(keys)}, ${of(sums)}, s.scatter_sum
FROM ${fills} AS f JOIN ${scatter} AS s ON ${sameKeys("f", "s")}`;
}
