import type { Cells } from "./cells.ts";
import type { BinField, MachineField, Typed } from "./typed.ts";

/** What a person did, so that everything shown follows from the list of it. Nothing of the list is ever changed. */
export type Action =
  | { readonly kind: "log-started" }
  | { readonly kind: "bin-added"; readonly bin: string; readonly product: string }
  | {
      readonly kind: "bin-renamed";
      readonly bin: string;
      readonly product: string;
      readonly to: { readonly bin: string; readonly product: string };
    }
  | { readonly kind: "fill-started"; readonly bin: string; readonly product: string }
  | { readonly kind: "catch-added"; readonly row: string; readonly cells: Cells }
  /** Only the cells that are given change; an empty one is taken away. */
  | { readonly kind: "catch-changed"; readonly row: string; readonly cells: Cells }
  | { readonly kind: "catch-deleted"; readonly row: string }
  | { readonly kind: "file-read"; readonly source: string; readonly rows: readonly Cells[] }
  /** Null takes back what was typed. */
  | { readonly kind: "machine-typed"; readonly field: MachineField; readonly typed: Typed | null }
  | {
      readonly kind: "bin-typed";
      readonly bin: string;
      readonly field: BinField;
      readonly typed: Typed | null;
    }
  | { readonly kind: "safety-read" }
  /** Takes back an event, which may itself be one of these. */
  | { readonly kind: "undone"; readonly event: string };

export interface PageEvent {
  readonly id: string;
  /** The log it belongs to; null: to the device. */
  readonly log: string | null;
  /** ISO 8601 with offset zero. */
  readonly at: string;
  readonly action: Action;
}

/** Events that still count: neither taken back, nor taking back. */
export function standing(events: readonly PageEvent[]): readonly PageEvent[] {
  const undone = new Set<string>();
  // What takes back comes later than what it takes back, so the last word is known first.
  for (const { id, action } of [...events].reverse())
    if (action.kind === "undone" && !undone.has(id)) undone.add(action.event);
  return events.filter(({ id, action }) => action.kind !== "undone" && !undone.has(id));
}

const keptForGood: readonly Action["kind"][] = ["log-started", "safety-read"];

/** The event that undo would take back; null: there is none. */
export function lastToUndo(events: readonly PageEvent[]): PageEvent | null {
  return standing(events).findLast(({ action }) => !keptForGood.includes(action.kind)) ?? null;
}
