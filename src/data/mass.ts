import type { Problem } from "../errors/problems.ts";
import { convert } from "../units/convert.ts";
import { columnByName, type MassKind, massKinds, massUnits } from "./column-kinds.ts";
import type { CatchColumn } from "./columns.ts";
import { complain, printedNumber, type RowReading } from "./fields.ts";
import type { MassColumn } from "./headers.ts";
import { type PrintedNumber, paperDifference, roundingOf } from "./numbers.ts";
import { cellText, isBlank } from "./table.ts";
import type { MassUnit, WrittenWeights } from "./types.ts";

/** The masses of one row, and how they were written. */
export interface RowMass {
  readonly written: WrittenWeights;
  readonly netKg: number;
  readonly grossKg: number | null;
  readonly tareKg: number | null;
}

interface Weighed {
  readonly column: MassColumn;
  readonly number: PrintedNumber;
}

/** No scale for catches shows less, in any of the units; below it a mass is a slip. */
export const smallestMass = 1e-6;

/**
 * Net mass of a row: as written, or gross less tare worked out on the written digits. Where all three are written they
 * must agree to within rounding: each may be off by half a unit in its last digit, so net may differ from gross less tare
 * by the sum of the three halves and not by more.
 *
 * @param leftOut  a catch that is left out may have a net mass of zero, such as when nothing came
 */
export function readMass(reading: RowReading, leftOut: boolean): RowMass | null {
  const { row, columns } = reading;
  const filled = columns.mass.filter(
    ({ kind, index }) => kind !== "division" && !isBlank(row.cells[index]),
  );
  const unit = filled[0]?.unit;
  if (unit === undefined) return noMass(reading);
  if (filled.some((column) => column.unit !== unit))
    return twoUnits(reading, filled, "masses-in-two-units");
  const problemsBefore = reading.issues.length;
  const weighed: Partial<Record<MassKind, Weighed>> = {};
  for (const column of filled) {
    const number = printedNumber(reading, column, rulesFor(column));
    if (number !== null) weighed[column.kind] = { column, number };
  }
  if (reading.issues.length > problemsBefore) return null;
  const { gross, tare } = weighed;
  const net = weighed.net ?? netOf(reading, unit, gross, tare);
  if (net === null) return null;
  if (weighed.net !== undefined && !agrees(reading, net, gross, tare)) return null;
  if (net.number.value < smallestMass && !(leftOut && net.number.value === 0)) {
    return noNet(reading, net);
  }
  return {
    written: {
      row: row.number,
      unit,
      gross: writtenAs(reading, gross),
      tare: writtenAs(reading, tare),
      net: writtenAs(reading, weighed.net),
    },
    netKg: inKg(net.number.value, unit),
    grossKg: gross === undefined ? null : inKg(gross.number.value, unit),
    tareKg: tare === undefined ? null : inKg(tare.number.value, unit),
  };
}

function inKg(value: number, unit: MassUnit): number {
  return unit === "kg" ? value : convert(value, unit, "kg");
}

function writtenAs(reading: RowReading, mass: Weighed | undefined): string | null {
  return mass === undefined ? null : textOf(reading, mass).replace(",", ".");
}

/** Step of the scale in kg; it may be in another unit than the masses, as in net_kg and division_g. */
export function readDivision(reading: RowReading): number | null {
  const { row, columns } = reading;
  if (!columns.mass.some(({ kind }) => kind === "division")) return null;
  const filled = columns.mass.filter(
    ({ kind, index }) => kind === "division" && !isBlank(row.cells[index]),
  );
  const [column] = filled;
  if (column === undefined) return null;
  if (filled.length > 1) {
    return twoUnits(reading, filled, "divisions-in-two-units");
  }
  const number = printedNumber(reading, column, columnByName.division_kg);
  return number === null ? null : inKg(number.value, column.unit);
}

/** Every mass that is written must be right, since net may be worked out from it. */
const rulesOf = Object.fromEntries(
  massKinds.map((kind) => [
    kind,
    Object.fromEntries(
      massUnits.map((unit) => [unit, { ...columnByName[`${kind}_kg`], unit, required: true }]),
    ),
  ]),
) as Readonly<Record<MassKind, Readonly<Record<MassUnit, CatchColumn>>>>;

function rulesFor({ kind, unit }: MassColumn): CatchColumn {
  return rulesOf[kind][unit];
}

function netOf(
  reading: RowReading,
  unit: MassUnit,
  gross: Weighed | undefined,
  tare: Weighed | undefined,
): Weighed | null {
  if (gross === undefined || tare === undefined) {
    const absent = gross === undefined ? "gross" : "tare";
    const kinds = reading.columns.mass.map(({ kind }) => kind);
    // A file without the column, and without a net column, has been refused for its header.
    if (!kinds.includes(absent) && !kinds.includes("net")) return null;
    const column = reading.columns.mass.find((mass) => mass.kind === absent && mass.unit === unit);
    return complain(reading, column?.header ?? `${absent}_${unit}`, {
      problem: `${absent}-missing`,
      facts: { unit },
    });
  }
  if (gross.number.value < tare.number.value) {
    const facts = { tare: textOf(reading, tare), unit };
    const problem: Problem = { problem: "gross-below-tare", facts };
    return complain(reading, gross.column.header, problem, textOf(reading, gross));
  }
  return { column: gross.column, number: paperDifference(gross.number, tare.number) };
}

function agrees(
  reading: RowReading,
  net: Weighed,
  gross: Weighed | undefined,
  tare: Weighed | undefined,
): boolean {
  if (gross === undefined || tare === undefined) return true;
  const difference = paperDifference(gross.number, tare.number);
  const rounding = [net, gross, tare].reduce((sum, { number }) => sum + roundingOf(number), 0);
  // A millionth on top, so that a difference of exactly the three halves is not lost to binary arithmetic.
  if (Math.abs(net.number.value - difference.value) <= rounding * 1.000001) return true;
  const facts = {
    worked: difference.value.toFixed(difference.decimals),
    unit: net.column.unit,
    gross: textOf(reading, gross),
    tare: textOf(reading, tare),
    rounding: Number(rounding.toPrecision(2)),
  };
  const problem: Problem = { problem: "net-disagrees", facts };
  complain(reading, net.column.header, problem, textOf(reading, net));
  return false;
}

function noNet(reading: RowReading, net: Weighed): null {
  const written = textOf(reading, net);
  const left = net.column.kind === "gross" ? net.number.value : null;
  const problem: Problem = { problem: "net-not-above-0", facts: { written, left } };
  return complain(reading, net.column.header, problem, written);
}

function noMass(reading: RowReading): null {
  const mass = reading.columns.mass.filter(({ kind }) => kind !== "division");
  const net = mass.find(({ kind }) => kind === "net");
  // Without any mass column the header has been refused already.
  if (mass.length === 0) return null;
  return complain(reading, net?.header ?? mass[0]?.header ?? "net_kg", {
    problem: "mass-missing",
    facts: {},
  });
}

function twoUnits(
  reading: RowReading,
  filled: readonly MassColumn[],
  problem: "masses-in-two-units" | "divisions-in-two-units",
): null {
  const units = [...new Set(filled.map(({ unit }) => unit))];
  const headers = filled.map(({ header }) => header).join(", ");
  return complain(reading, headers, { problem, facts: { units } }, headers);
}

function textOf(reading: RowReading, { column }: Weighed): string {
  return cellText(reading.row.cells[column.index]);
}
