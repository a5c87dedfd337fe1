import { justOver } from "../data/numbers.ts";
import { smallestMass } from "../data/smallest-mass.ts";
import type { MassUnit } from "../data/types.ts";
import type { ProblemKey } from "../errors/problems.ts";
import type { Rule, Term } from "./cells-sql.ts";
import { allOf, anyOf, never, not } from "./dialect.ts";
import { type MassSource, massCell, massName, massRules } from "./mass-columns.ts";

interface NetMass {
  readonly unit: MassUnit;
  /** The column that has it. */
  readonly net: string;
  readonly steps: readonly (readonly Term[])[];
  readonly rules: readonly Rule[];
}

/** Net mass of a row from the columns of one unit, where no other unit's are filled in; null where they do not tell it. */
export function netMass(unit: MassUnit, weights: readonly MassSource[], counts: string): NetMass {
  const own = weights.filter((one) => one.unit === unit);
  const [net, gross, tare] = (["net", "gross", "tare"] as const).map((kind) =>
    own.find((one) => one.kind === kind),
  );
  const left = `left_${unit}`;
  const found = `found_${unit}`;
  const both = allOf([filled(gross), filled(tare)]);
  const right = anyOf([
    not(both),
    not(filled(net)),
    `abs(${figureOf(net)} - ${left}) <= (${[net, gross, tare].map(roundingOf).join(" + ")}) * ${justOver}e0`,
  ]);
  const above = anyOf([filled(net), not(both), `${figureOf(gross)} >= ${figureOf(tare)}`]);
  const enough = anyOf([`${found} >= ${smallestMass}`, allOf([not(counts), `${found} = 0`])]);
  const readable = allOf([
    ...weights.filter((one) => one.unit !== unit).map((one) => not(filled(one))),
    ...own.map(isReadable),
  ]);
  const tooLittle = [above, right, `${found} IS NOT NULL`, not(enough)];
  const rules: readonly (readonly [ProblemKey, string, readonly string[]])[] = [
    ...absences(unit, weights, { net, gross, tare }),
    ["gross-below-tare", gross?.header ?? "", [not(above)]],
    ["net-disagrees", net?.header ?? "", [not(right)]],
    ["net-not-above-0", net?.header ?? "", [filled(net), ...tooLittle]],
    ["net-not-above-0", gross?.header ?? "", [not(filled(net)), filled(gross), ...tooLittle]],
  ];
  return {
    unit,
    net: found,
    steps: [
      own.map((one) => ({ name: placesOf(one), sql: decimalsOf(one) })),
      [{ name: left, sql: difference(gross, tare) }],
      [{ name: found, sql: `CASE WHEN ${filled(net)} THEN ${figureOf(net)} ELSE ${left} END` }],
    ],
    rules: rules
      .map(([problem, header, when]) => ({ problem, header, when: allOf([readable, ...when]) }))
      .filter(({ when }) => when !== never),
  };
}

type Maybe = MassSource | undefined;

function filled(one: Maybe): string {
  return one === undefined ? never : `${massCell(one)} IS NOT NULL`;
}

function figureOf(one: Maybe): string {
  return one === undefined ? "CAST(NULL AS DOUBLE PRECISION)" : massName(one);
}

/** One that cannot be read has been refused, and nothing more is said of the row's mass. */
function isReadable(one: MassSource): string {
  const { minimum, maximum } = massRules(one);
  return `${massCell(one)} IS NULL OR ${massName(one)} BETWEEN ${minimum} AND ${maximum}`;
}

/** Gross without tare, or tare without gross, and no net; a file without the column was refused for its header. */
function absences(
  unit: MassUnit,
  weights: readonly MassSource[],
  { net, gross, tare }: Readonly<Record<"net" | "gross" | "tare", Maybe>>,
): readonly (readonly [ProblemKey, string, readonly string[]])[] {
  const kinds = new Set(weights.map(({ kind }) => kind));
  const absent = (kind: "gross" | "tare", one: Maybe, other: Maybe) =>
    kinds.has(kind) || kinds.has("net")
      ? ([
          [
            `${kind}-missing`,
            one?.header ?? `${kind}_${unit}`,
            [not(filled(net)), not(filled(one)), filled(other)],
          ],
        ] as const)
      : [];
  return [...absent("gross", gross, tare), ...absent("tare", tare, gross)];
}

/** As on paper: 6.31 less 0.42 is 5.89, not 5.889999999999999. */
function difference(gross: Maybe, tare: Maybe): string {
  if (gross === undefined || tare === undefined) return figureOf(undefined);
  const places = `greatest(${placesOf(gross)}, ${placesOf(tare)})`;
  const exact = `${massName(gross)} - ${massName(tare)}`;
  return `CASE WHEN ${places} <= 15 THEN round((${exact}) * power(10e0, ${places})) / power(10e0, ${places}) ELSE ${exact} END`;
}

const placesOf = (one: MassSource) => `${massName(one)}_places`;

/** Half a unit in the last decimal written. */
function roundingOf(one: Maybe): string {
  return one === undefined ? "0" : `0.5e0 * power(10e0, -${placesOf(one)})`;
}

/** Decimals written: digits behind the mark, less what an exponent takes off. */
function decimalsOf(one: MassSource): string {
  const cell = massCell(one);
  const decimals = (text: string) =>
    `CASE WHEN strpos(${text}, '.') > 0 THEN length(${text}) - strpos(${text}, '.') ELSE 0 END`;
  const digits = `replace(split_part(coalesce(${cell}, ''), 'e', 1), ',', '.')`;
  const exponent = `CASE WHEN ${massName(one)} IS NOT NULL AND strpos(${cell}, 'e') > 0 THEN CAST(split_part(${cell}, 'e', 2) AS INTEGER) ELSE 0 END`;
  return `CASE WHEN ${massName(one)}_plain THEN ${decimals(cell)} ELSE least(100, greatest(0, ${decimals(digits)} - ${exponent})) END`;
}
