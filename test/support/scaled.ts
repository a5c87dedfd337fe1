import type { Catch } from "../../src/data/types.ts";

/** Powers of kilograms and of turns in a figure; null: nothing is claimed of it. */
export type Dimension = readonly [mass: number, turns: number] | null;

/** The same catches on a scale that shows `mass` times as much, by a counter that counts `turns` times as much. */
export function scaledCatches(catches: readonly Catch[], mass: number, turns: number): Catch[] {
  const kg = (value: number | null) => (value === null ? null : value * mass);
  return catches.map((row) => ({
    ...row,
    turns: row.turns * turns,
    netKg: row.netKg * mass,
    grossKg: kg(row.grossKg),
    tareKg: kg(row.tareKg),
    divisionKg: kg(row.divisionKg),
  }));
}

const byUnit: ReadonlyMap<unknown, Dimension> = new Map<unknown, Dimension>([
  ["kg/turn", [1, -1]],
  ["kg", [1, 0]],
  ["kg/turn/fill", [1, -1]],
  ["m³/turn", [1, -1]],
  ["kg/ha", [1, -1]],
  ["turns/ha", [-1, 1]],
  ["turns/min", [-1, 1]],
  ["fraction", [0, 0]],
  ["fraction/catch", [0, 0]],
  ["fraction/fill", [0, 0]],
  ["ratio", [0, 0]],
]);

const ofEstimate: ReadonlySet<string> = new Set(["value", "standardError", "lower", "upper"]);

/**
 * Figures of an answer that do not grow as their units say when catches are scaled: of an estimate by its unit, of others by
 * their names, else none at all.
 *
 * @param by       what the catches of `scaled` were scaled by: mass, then turns
 * @param named    dimension of a figure by its path; undefined: by unit and name
 */
export function notScaled(
  answer: unknown,
  scaled: unknown,
  by: readonly [mass: number, turns: number],
  named: (path: string) => Dimension | undefined = () => undefined,
): readonly string[] {
  const wrong: string[] = [];
  const walk = (one: unknown, other: unknown, path: string, unit: unknown) => {
    if (named(path) === null) return;
    if (typeof one === "number" && typeof other === "number") {
      const key = path.split(".").at(-1) ?? "";
      const dimension = named(path) ??
        (ofEstimate.has(key) ? byUnit.get(unit) : byName(key)) ?? [0, 0];
      const factor = by[0] ** dimension[0] * by[1] ** dimension[1];
      const near = Math.abs(other - one * factor) <= 1e-7 * Math.max(Math.abs(other), 1e-12);
      if (!near) wrong.push(`${path}: ${one} → ${other}`);
      return;
    }
    if (typeof one === "object" && one !== null && typeof other === "object" && other !== null) {
      const own: unknown = "unit" in one ? one.unit : unit;
      const [ours, theirs] = [Object.entries(one), new Map(Object.entries(other))];
      if (ours.length !== theirs.size)
        wrong.push(`${path}: ${ours.length} or ${theirs.size} parts`);
      for (const [key, value] of ours)
        walk(value, theirs.get(key), path === "" ? key : `${path}.${key}`, own);
      return;
    }
    if (one !== other) wrong.push(`${path}: ${String(one)} → ${String(other)}`);
  };
  walk(answer, scaled, "", null);
  return wrong;
}

function byName(key: string): Dimension | undefined {
  if (/kgPerTurn$/i.test(key)) return [1, -1];
  if (/kg$/i.test(key)) return [1, 0];
  if (/kgPerHa(?:ectare)?$/i.test(key)) return [1, -1];
  if (/^turns?$|Turns$|^turnsPerCatch$/.test(key)) return [0, 1];
  return undefined;
}
