import { describe, expect, it } from "vitest";
import { nearlySameNames } from "../../../src/data/suspicions/nearly-same-names.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aCatch } from "../../support/catches.ts";

interface Named {
  readonly bin?: string;
  readonly product?: string;
  readonly machine?: string;
  readonly fill?: number;
  readonly catch?: number;
  readonly takenAt?: string;
}

const asked = (...rows: readonly Named[]) => askedOf(rows);
const askedOf = (rows: readonly Named[]) =>
  nearlySameNames(
    countedLog(
      rows.map((row) => aCatch({ turns: 20, netKg: 6, ...row })),
      "kg",
      [],
    ),
  );

describe("two names nearly the same", () => {
  it("are asked about for both, the one with fewer fills first", () => {
    const found = asked(
      { bin: "frnt", fill: 6 },
      ...[1, 2, 3, 4, 5].map((fill) => ({ bin: "front", fill })),
    );
    expect(found.map(({ where }) => where.bin)).toEqual(["frnt", "front"]);
    expect(found[0]?.facts).toEqual({
      what: "bin",
      name: "frnt",
      fills: 1,
      other: "front",
      otherFills: 5,
      differBy: "letter",
      signs: [],
    });
  });

  it("are two where both stand in one fill or on one day", () => {
    expect(asked({ bin: "front" }, { bin: "frnt" })).toEqual([]);
    const day = "2026-04-01";
    const later = { takenAt: `${day}T08:00` };
    const at = { takenAt: `${day}T06:00` };
    expect(asked({ bin: "front", ...at }, { bin: "frnt", fill: 2, ...later })).toEqual([]);
    expect(
      asked({ product: "oats", ...at }, { bin: "2", product: "oots", fill: 2, ...later }),
    ).toEqual([]);
  });

  it("are two where both were used on one day in fills of their own, whatever else was caught then", () => {
    const takenAt = "2026-04-01";
    const rows = [
      { bin: "front", fill: 2, catch: 1, takenAt },
      { bin: "frnt", fill: 1, catch: 1, takenAt },
      { bin: "frnt", fill: 2, catch: 2, takenAt },
    ];
    expect(asked(...rows)).toEqual([]);
    expect(asked(...rows.toReversed())).toEqual([]);
  });

  it("are looked for among many in time that grows with their rows", () => {
    const rows = Array.from({ length: 120_000 }, (_, i) => ({
      bin: `${i % 2 ? "0" : ""}${1 + (i >> 1)}`,
    }));
    expect(askedOf(rows)).toHaveLength(120_000);
  });

  it("are one where a row fills the gap in the other's fill, on the same day too", () => {
    const takenAt = "2026-04-01";
    const [one, two, three] = [1, 2, 3].map((number) => ({ takenAt, catch: number }));
    expect(
      asked({ bin: "front", ...one }, { bin: "frnt", ...two }, { bin: "front", ...three }),
    ).toHaveLength(2);
  });

  it("are looked for among machines, and never among names of one letter less than a word", () => {
    expect(
      asked({ machine: "north", fill: 1 }, { machine: "nroth", fill: 2 }).map(
        ({ facts }) => "what" in facts && facts.what,
      ),
    ).toEqual(["machine", "machine"]);
    expect(asked({ bin: "A1" }, { bin: "A2", fill: 2 })).toEqual([]);
  });
});
