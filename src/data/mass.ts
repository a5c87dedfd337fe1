import type { Problem } from "../errors/problems.ts";
import { convert } from "../units/convert.ts";
import { columnByName, type MassKind, massKinds, massUnits } from "./column-kinds.ts";
import type { CatchColumn } from "./columns.ts";
import {
  complain,
  type FieldReader,
  figureField,
  type RowReading,
  type WrittenNumber,
} from "./fields.ts";
import type { MassColumn } from "./headers.ts";
import { justOver, type PrintedNumber, paperDifference, roundingOf } from "./numbers.ts";
import { smallestMass } from "./smallest-mass.ts";
import { isBlank } from "./table.ts";
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
  readonly written: string;
}

/** A column of masses with what reads it. */
interface MassField {
  readonly column: MassColumn;
  readonly read: FieldReader<WrittenNumber>;
}

/**
 * Net mass of a row: as written, or gross less tare worked out on the written digits. Where all three are written they
 * must agree to within rounding: each may be off by half a unit in its last digit, so net may differ from gross less tare
 * by the sum of the three halves and not by more.
 *
 * @returns reads the row in hand; a catch that is left out may have a net mass of zero, such as when nothing came
 */
export function massField(reading: RowReading): (leftOut: boolean) => RowMass | null {
  const fields = reading.columns.mass
    .filter(({ kind }) => kind !== "division")
    .map((column) => ({ column, read: figureField(reading, column, rulesFor(column)) }));
  return (leftOut) => readMass(reading, fields, leftOut);
}

function readMass(
  reading: RowReading,
  fields: readonly MassField[],
  leftOut: boolean,
): RowMass | null {
  const { row } = reading;
  const filled = fields.filter(({ column }) => !isBlank(row.cells[column.index]));
  const unit = filled[0]?.column.unit;
  if (unit === undefined) return noMass(reading);
  if (filled.some(({ column }) => column.unit !== unit))
    return twoUnits(reading, filled, "masses-in-two-units");
  const problemsBefore = reading.issues.length;
  let [gross, tare, told]: (Weighed | undefined)[] = [];
  for (const { column, read } of filled) {
    const number = read();
    if (number === null) continue;
    const weighed = { column, number, written: number.written };
    if (column.kind === "gross") gross = weighed;
    else if (column.kind === "tare") tare = weighed;
    else told = weighed;
  }
  if (reading.issues.length > problemsBefore) return null;
  const net = told ?? netOf(reading, unit, gross, tare);
  if (net === null) return null;
  if (told !== undefined && !agrees(reading, net, gross, tare)) return null;
  if (net.number.value < smallestMass && !(leftOut && net.number.value === 0)) {
    return noNet(reading, net);
  }
  return {
    written: {
      row: reading.row.number,
      unit,
      gross: writtenAs(gross),
      tare: writtenAs(tare),
      net: writtenAs(told),
    },
    netKg: inKg(net.number.value, unit),
    grossKg: gross === undefined ? null : inKg(gross.number.value, unit),
    tareKg: tare === undefined ? null : inKg(tare.number.value, unit),
  };
}

function inKg(value: number, unit: MassUnit): number {
  return unit === "kg" ? value : convert(value, unit, "kg");
}

function writtenAs(mass: Weighed | undefined): string | null {
  if (mass === undefined) return null;
  return mass.written.includes(",") ? mass.written.replace(",", ".") : mass.written;
}

/** Step of the scale in kg; it may be in another unit than the masses, as in net_kg and division_g. */
export function divisionField(reading: RowReading): FieldReader<number> {
  const fields = reading.columns.mass
    .filter(({ kind }) => kind === "division")
    .map((column) => ({ column, read: figureField(reading, column, columnByName.division_kg) }));
  if (fields.length === 0) return () => null;
  return () => {
    const filled = fields.filter(({ column }) => !isBlank(reading.row.cells[column.index]));
    const [first] = filled;
    if (first === undefined) return null;
    if (filled.length > 1) return twoUnits(reading, filled, "divisions-in-two-units");
    const number = first.read();
    return number === null ? null : inKg(number.value, first.column.unit);
  };
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
    const facts = { tare: tare.written, unit };
    const problem: Problem = { problem: "gross-below-tare", facts };
    return complain(reading, gross.column.header, problem, gross.written);
  }
  const number = paperDifference(gross.number, tare.number);
  return { column: gross.column, number, written: gross.written };
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
  if (Math.abs(net.number.value - difference.value) <= rounding * justOver) return true;
  const facts = {
    worked: difference.value.toFixed(difference.decimals),
    unit: net.column.unit,
    gross: gross.written,
    tare: tare.written,
    rounding: Number(rounding.toPrecision(2)),
  };
  const problem: Problem = { problem: "net-disagrees", facts };
  complain(reading, net.column.header, problem, net.written);
  return false;
}

function noNet(reading: RowReading, net: Weighed): null {
  const written = net.written;
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
  filled: readonly MassField[],
  problem: "masses-in-two-units" | "divisions-in-two-units",
): null {
  const units = [...new Set(filled.map(({ column }) => column.unit))];
  const headers = filled.map(({ column }) => column.header).join(", ");
  return complain(reading, headers, { problem, facts: { units } }, headers);
}
