import { keyColumns } from "../../data/column-kinds.ts";
import { type Cells, changed, type PageRow } from "./cells.ts";
import { type Action, type PageEvent, standing } from "./events.ts";
import type { BinTyped, MachineTyped, Typed } from "./typed.ts";

/** A bin as it stands: what is in it, and which filling that is. */
export interface PageBin {
  readonly bin: string;
  readonly product: string;
  readonly fill: number;
  readonly typed: BinTyped;
}

/** Everything a log says; it follows from its events and from nothing else. */
export interface PageLog {
  readonly bins: readonly PageBin[];
  readonly rows: readonly PageRow[];
  readonly machine: MachineTyped;
}

const empty: PageLog = { bins: [], rows: [], machine: {} };

/** The log that events make, in their order. */
export function logOf(events: readonly PageEvent[]): PageLog {
  return standing(events).reduce((log, { id, action }) => after(log, action, id), empty);
}

function after(log: PageLog, action: Action, id: string): PageLog {
  switch (action.kind) {
    case "bin-added":
      return withBin(log, action.bin, action.product, nextFill(log, action.bin));
    case "fill-started":
      return withBin(log, action.bin, action.product, nextFill(log, action.bin));
    case "bin-renamed":
      return renamed(log, action);
    case "catch-added":
      return { ...log, rows: [...log.rows, numbered(log, action.row, action.cells)] };
    case "catch-changed":
      return {
        ...log,
        rows: log.rows.map((row) =>
          row.id === action.row ? { ...row, cells: changed(row.cells, action.cells) } : row,
        ),
      };
    case "catch-deleted":
      return { ...log, rows: log.rows.filter((row) => row.id !== action.row) };
    case "file-read":
      return withFile(log, action.rows, id);
    case "machine-typed":
      return { ...log, machine: typedInto(log.machine, action.field, action.typed) };
    case "bin-typed":
      return {
        ...log,
        bins: log.bins.map((one) =>
          one.bin === action.bin
            ? { ...one, typed: typedInto(one.typed, action.field, action.typed) }
            : one,
        ),
      };
    default:
      return log;
  }
}

/** Fills of a bin are numbered through, whatever was in it: so their order can be told where nothing is dated. */
function nextFill({ rows }: PageLog, bin: string): number {
  const ofBin = rows.filter(({ cells }) => cells.bin === bin);
  return ofBin.reduce((most, { cells }) => Math.max(most, fillOf(cells)), 0) + 1;
}

function fillOf(cells: Cells): number {
  return Number(cells.fill ?? 0);
}

function withBin(log: PageLog, bin: string, product: string, fill: number): PageLog {
  const old = log.bins.find((one) => one.bin === bin);
  return old === undefined
    ? { ...log, bins: [...log.bins, { bin, product, fill, typed: {} }] }
    : {
        ...log,
        bins: log.bins.map((one) => (one === old ? { ...one, product, fill } : one)),
      };
}

function renamed(
  log: PageLog,
  { bin, product, to }: Extract<Action, { kind: "bin-renamed" }>,
): PageLog {
  return {
    ...log,
    bins: log.bins.map((one) => (one.bin === bin ? { ...one, ...to } : one)),
    rows: log.rows.map((row) => {
      if (row.cells.bin !== bin) return row;
      const is = row.cells.product === product;
      return {
        ...row,
        cells: { ...row.cells, bin: to.bin, ...(is ? { product: to.product } : {}) },
      };
    }),
  };
}

/** A catch gets its number when it is taken: one that is deleted later leaves a gap, and no other changes its name. */
function numbered({ rows }: PageLog, id: string, cells: Cells): PageRow {
  const fellows = rows.filter(
    ({ cells: other }) => other.bin === cells.bin && other.fill === cells.fill,
  );
  const most = fellows.reduce((so, { cells: other }) => Math.max(so, Number(other.catch)), 0);
  return { id, cells: { ...keysIn(rows), ...cells, catch: String(most + 1) } };
}

/** Farm, machine and season of the rows so far: a file that names them names them in every row. */
function keysIn([row]: readonly PageRow[]): Cells {
  return Object.fromEntries(
    keyColumns.flatMap((name) => {
      const text = row?.cells[name];
      return text === undefined ? [] : [[name, text]];
    }),
  );
}

/** A file is read into a log without catches, so that nobody has to be told which of two fills 3 is meant. */
function withFile(log: PageLog, rows: readonly Cells[], id: string): PageLog {
  const read = rows.map((cells, i) => ({ id: `${id}.${i}`, cells }));
  const others = log.bins.filter((one) => rows.every(({ bin }) => bin !== one.bin));
  return { ...log, rows: [...log.rows, ...read], bins: [...binsOf(rows, log.bins), ...others] };
}

/** Bins that a file names, each with the product and number of its last fill. */
function binsOf(rows: readonly Cells[], known: readonly PageBin[]): readonly PageBin[] {
  const names = [...new Set(rows.map(({ bin = "" }) => bin))];
  return names.map((name) => {
    const ofBin = rows.filter(({ bin }) => bin === name);
    const fill = ofBin.reduce((most, cells) => Math.max(most, fillOf(cells)), 0);
    const last = ofBin.findLast((cells) => fillOf(cells) === fill);
    const typed = known.find(({ bin }) => bin === name)?.typed ?? {};
    return { bin: name, product: last?.product ?? "", fill, typed };
  });
}

function typedInto<T extends Readonly<Record<string, Typed | undefined>>>(
  old: T,
  field: keyof T & string,
  typed: Typed | null,
): T {
  const { [field]: _, ...others } = old;
  // The same fields but for one, which may be left out as all of them may.
  return (typed === null ? others : { ...others, [field]: typed }) as T;
}

/** The catches of the fill that is in a bin now, in their order. */
export function catchesIn({ rows }: PageLog, { bin, product, fill }: PageBin): readonly PageRow[] {
  return rows.filter(
    ({ cells }) => cells.bin === bin && cells.product === product && fillOf(cells) === fill,
  );
}
