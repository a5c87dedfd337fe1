import type { MassUnit } from "../data/types.ts";
import { factors } from "../units/factors.ts";
import { figureColumn, type ReadColumn, type Rule, type Term, unless } from "./cells-sql.ts";
import { allOf, anyOf, type Dialect, not } from "./dialect.ts";
import { type MassSource, massCell, massName, massRules } from "./mass-columns.ts";
import { netMass } from "./net-mass-sql.ts";

/** The masses of a row: the columns read one by one, then the net mass and the division in kg, and what may be wrong. */
export interface ReadMasses {
  readonly columns: readonly ReadColumn[];
  /** Whether nothing was weighed: each of the weights is blank. */
  readonly isBlank: string;
  /** What net is worked out from, each step from the ones before. */
  readonly steps: readonly (readonly Term[])[];
  readonly netKg: string;
  readonly divisionKg: string;
  readonly rules: readonly Rule[];
}

/**
 * As `readMass` and `readDivision` read them.
 *
 * @param counts  condition that the catch is not left out
 * @param missed  condition that it was spilled or missed, and need have no mass
 */
export function readMasses(
  sources: readonly MassSource[],
  { counts, missed }: { readonly counts: string; readonly missed: string },
  to: Dialect,
): ReadMasses {
  const weights = sources.filter(({ kind }) => kind !== "division");
  const divisions = sources.filter(({ kind }) => kind === "division");
  const units = [...new Set(weights.map(({ unit }) => unit))];
  const nets = units.map((unit) => netMass(unit, weights, counts));
  const isBlankRow = allOf(weights.map(isBlank));
  const first = weights.find(({ kind }) => kind === "net") ?? weights[0];
  return {
    columns: [weights, divisions].flatMap((alike) =>
      alike.map((one) => massColumn(one, alike, to)),
    ),
    isBlank: isBlankRow,
    steps: [0, 1, 2].map((step) => nets.flatMap(({ steps }) => steps[step] ?? [])),
    netKg: firstKnown(nets.map(({ net, unit }) => inKg(net, unit))),
    divisionKg: firstKnown(divisions.map((one) => inKg(massName(one), one.unit))),
    rules: [
      ...(first === undefined
        ? []
        : [
            {
              problem: "mass-missing",
              header: first.header,
              when: allOf([isBlankRow, not(missed)]),
            } as const,
          ]),
      ...nets.flatMap(({ rules }) => rules),
      ...inTwoUnits("masses-in-two-units", weights),
      ...unless(missed, inTwoUnits("divisions-in-two-units", divisions)),
    ],
  };
}

/** In two units no figure counts, and none is looked at. */
function massColumn(one: MassSource, alike: readonly MassSource[], to: Dialect): ReadColumn {
  const column = figureColumn(massName(one), massRules(one), one, to);
  const others = alike.filter(({ unit }) => unit !== one.unit).map(isBlank);
  return {
    ...column,
    rules: column.rules.map((rule) => ({ ...rule, when: allOf([...others, rule.when]) })),
  };
}

const isBlank = (one: MassSource) => `${massCell(one)} IS NULL`;

function firstKnown(values: readonly string[]): string {
  return values.length === 0 ? "CAST(NULL AS DOUBLE PRECISION)" : `coalesce(${values.join(", ")})`;
}

/** The same operations in the same order as `convert`, so that the last digit is the same too. */
function inKg(value: string, unit: MassUnit): string {
  const { numerator, denominator } = factors.mass[unit];
  return unit === "kg" ? value : `${value} * ${numerator}e0 / ${denominator}e0`;
}

function inTwoUnits(
  problem: "masses-in-two-units" | "divisions-in-two-units",
  sources: readonly MassSource[],
): readonly Rule[] {
  const units = [...new Set(sources.map(({ unit }) => unit))];
  if (units.length < 2) return [];
  const filled = units.map((unit) => {
    const own = sources.filter((one) => one.unit === unit);
    return `CASE WHEN ${anyOf(own.map((one) => `${massCell(one)} IS NOT NULL`))} THEN 1 ELSE 0 END`;
  });
  // Which of the columns are filled is told when the row is read again.
  const header = sources.map((one) => one.header).join(", ");
  return [{ problem, header, when: `${filled.join(" + ")} > 1` }];
}
