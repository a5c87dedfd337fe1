import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Action, lastToUndo, type PageEvent, standing } from "../../../src/page/app/events.ts";
import { catchesIn, logOf } from "../../../src/page/app/log.ts";
import { added, eventsOf, mornings } from "../../support/mornings.ts";

const wheat: Action = { kind: "bin-added", bin: "1", product: "wheat" };
const caught = (row: string, kg: string, fill = "1") =>
  added(row, { bin: "1", product: "wheat", fill, turns: "20", net_kg: kg });

/** The events with the last that can be taken back taken back. */
function undone(events: readonly PageEvent[]): readonly PageEvent[] {
  const last = lastToUndo(events);
  return last === null
    ? events
    : [
        ...events,
        {
          id: `u${events.length}`,
          log: "a log",
          at: "",
          action: { kind: "undone", event: last.id },
        },
      ];
}

describe("catches", () => {
  it("have the machine and season of the file that was read before them", () => {
    const read = { machine: "north", season: "2026", bin: "1", product: "wheat", fill: "1" };
    const log = logOf(
      eventsOf([
        {
          kind: "file-read",
          source: "catches.csv",
          rows: [{ ...read, catch: "1", turns: "20", net_kg: "6.3" }],
        },
        caught("a", "6.36"),
      ]),
    );
    expect(log.rows[1]?.cells).toMatchObject({ ...read, catch: "2" });
    expect(logOf(eventsOf([wheat, caught("a", "6.36")])).rows[0]?.cells).not.toHaveProperty(
      "season",
    );
  });

  it("are numbered as they come; one that is deleted leaves its number to nobody", () => {
    const log = logOf(
      eventsOf([
        wheat,
        caught("a", "6.36"),
        caught("b", "6.48"),
        { kind: "catch-deleted", row: "a" },
        caught("c", "6.56"),
      ]),
    );
    expect(log.rows.map(({ cells }) => [cells.catch, cells.net_kg])).toEqual([
      ["2", "6.48"],
      ["3", "6.56"],
    ]);
  });

  it("of a new fill begin at one again, and the fill has the next number", () => {
    const log = logOf(
      eventsOf([wheat, caught("a", "6.36"), { kind: "fill-started", bin: "1", product: "oats" }]),
    );
    expect(log.bins).toEqual([{ bin: "1", product: "oats", fill: 2, typed: {} }]);
    expect(log.bins.flatMap((bin) => catchesIn(log, bin))).toEqual([]);
  });

  it("go with their bin when its names are corrected", () => {
    const log = logOf(
      eventsOf([
        wheat,
        caught("a", "6.36"),
        { kind: "bin-renamed", bin: "1", product: "wheat", to: { bin: "front", product: "rye" } },
      ]),
    );
    expect(log.rows[0]?.cells).toMatchObject({ bin: "front", product: "rye" });
    expect(log.bins.flatMap((bin) => catchesIn(log, bin))).toHaveLength(1);
  });

  it("lose a cell that is emptied", () => {
    const log = logOf(
      eventsOf([
        wheat,
        caught("a", "6.36"),
        { kind: "catch-changed", row: "a", cells: { exclude: "yes", reason: "bag slipped" } },
        { kind: "catch-changed", row: "a", cells: { exclude: "", reason: "" } },
      ]),
    );
    expect(Object.keys(log.rows[0]?.cells ?? {})).not.toContain("exclude");
  });
});

describe("undo", () => {
  it("takes back one thing after the other, until nothing is left but the start", () => {
    fc.assert(
      fc.property(mornings, (actions) => {
        let events = eventsOf([{ kind: "log-started" }, ...actions]);
        for (let i = actions.length - 1; i >= 0; i--) {
          events = undone(events);
          expect(logOf(events)).toEqual(logOf(eventsOf(actions.slice(0, i))));
        }
        expect(lastToUndo(events)).toBeNull();
      }),
      { numRuns: 30, seed: 1 },
    );
  });

  it("can itself be taken back", () => {
    const events = undone(eventsOf([wheat, caught("a", "6.36")]));
    expect(logOf(events).rows).toHaveLength(0);
    const again: PageEvent = {
      id: "again",
      log: "a log",
      at: "",
      action: { kind: "undone", event: events.at(-1)?.id ?? "" },
    };
    expect(logOf([...events, again]).rows).toHaveLength(1);
    expect(standing([...events, again])).toHaveLength(2);
  });
});
