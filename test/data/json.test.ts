import { describe, expect, it, vi } from "vitest";
import type { CatchSource } from "../../src/data/source.ts";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";

function json(value: unknown): CatchSource {
  return { name: "catches.json", text: typeof value === "string" ? value : JSON.stringify(value) };
}

const one = { bin: "1", product: "wheat", fill: 1, catch: 1, turns: 20, net_kg: 5.89 };

describe("catches in JSON", () => {
  it("are those of the same table in CSV, but for the number of the row", async () => {
    const log = await logOf(json([{ ...one, taken_at: "2026-04-12", lot: 7 }]));
    const text = await logOf(
      csv("bin,product,fill,catch,turns,net_kg,taken_at,lot", "1,wheat,1,1,20,5.89,2026-04-12,7"),
    );
    expect(log.catches).toEqual(text.catches.map((row) => ({ ...row, row: 1 })));
  });

  it("are made text once", async () => {
    const decoded = vi.spyOn(TextDecoder.prototype, "decode");
    await logOf({ name: "catches.json", bytes: new TextEncoder().encode(JSON.stringify([one])) });
    expect(decoded).toHaveBeenCalledTimes(1);
    decoded.mockRestore();
  });

  it("may stand under the key catches", async () => {
    expect((await logOf(json({ catches: [one] }))).catches).toHaveLength(1);
  });

  it("may spell names in any case", async () => {
    const log = await logOf(
      json([
        { Bin: 1, Product: "wheat", Fill: 1, Catch: 1, Turns: "20", netKg: "5,89", meterRpm: 30 },
      ]),
    );
    expect(log.catches[0]).toMatchObject({ netKg: 5.89, meterRpm: 30 });
  });

  it("may leave fields out, or write them as null", async () => {
    const log = await logOf(
      json([
        { ...one, note: "dry", checked: "weighed again" },
        { ...one, catch: 2, outlet: null, exclude: false },
      ]),
    );
    expect(log.catches.map(({ note }) => note)).toEqual(["dry", null]);
    expect(log.catches.map(({ checked }) => checked)).toEqual(["weighed again", null]);
  });

  it("keep every digit of a number", async () => {
    const netKg = 5.890000000000001;
    expect((await logOf(json([{ ...one, net_kg: netKg }]))).catches[0]?.netKg).toBe(netKg);
  });
});

describe("JSON that is refused", () => {
  it("says where it breaks off", async () => {
    const text = `[\n  {"bin": "1", "product": "wheat"}\n  {"bin": "1"}\n]`;
    const [found = ""] = await problemsOf(json(text));
    expect(found).toContain("needed valid JSON. Look there for a comma");
    expect(found).toMatch(/^catches.json, line 3: found a slip in the JSON near /);
  });

  it("says so when it ends too early", async () => {
    expect(await problemsOf(json('[{"bin": "1"'))).toMatchInlineSnapshot(`
      [
        "catches.json, line 1: found a slip in the JSON near "[{"bin": "1""; needed valid JSON. Look there for a comma, quotation mark or bracket that is missing or one too many; JSON has no comments.",
      ]
    `);
  });

  it("asks for a list", async () => {
    expect(await problemsOf(json({ rows: [one] }))).toMatchInlineSnapshot(`
      [
        "catches.json: found no list of catches; needed a list [{"bin": "1", …}, …], or an object with such a list as "catches". Write one object for each catch, with the same names as the fields of a sheet.",
      ]
    `);
    expect(await problemsOf(json("12"))).toHaveLength(1);
  });

  it("asks for objects in it, and single values in them, and reads the rest", async () => {
    expect(
      await problemsOf(json([7, { ...one, turns: [20] }, { ...one, turns: -1 }])),
    ).toMatchInlineSnapshot(`
      [
        "catches.json, entry 1: found something else than an object; needed an object with the names of the columns, {"bin": "1", …}. Write one object for each catch, or delete the entry.",
        "catches.json, entry 2, field turns: found a list or an object; needed a text, a number, true, false or null. Give each figure a field of its own.",
        "catches.json, entry 3, field turns: found "-1"; needed a number from 0.001 to 1000000, in turns. Correct the figure, or delete the entry.",
      ]
    `);
  });

  it("refuses numbers too large for a number", async () => {
    expect(
      await problemsOf(json(JSON.stringify([one]).replace("5.89", "1e999"))),
    ).toMatchInlineSnapshot(`
      [
        "catches.json, entry 1, field net_kg: found "Infinity"; needed a number from 0 to 1000000, in kg. Write the figure itself, or delete the entry if it is not known.",
      ]
    `);
  });

  it("takes a point in a text for the decimal mark, as in its numbers", async () => {
    const log = await logOf(json([{ ...one, net_kg: "5.890" }]));
    expect(log.catches[0]?.netKg).toBe(5.89);
  });

  it("says which names are needed when it knows none", async () => {
    expect(await problemsOf(json([{ hopper: 1 }]))).toMatchInlineSnapshot(`
      [
        "catches.json: found "hopper"; needed fields named bin, product, fill, catch, turns and net_kg (or gross_kg and tare_kg; g, lb and oz also). Use these names in each entry.",
      ]
    `);
  });

  it("refuses two spellings of one name", async () => {
    expect(await problemsOf(json([{ ...one, Turns: 20 }]))).toMatchInlineSnapshot(`
      [
        "catches.json, field Turns: found "Turns" beside "turns", which is the same name; needed each name once. Delete one of the two fields, or give it another name.",
      ]
    `);
  });

  it("does not break on lists in lists without end", async () => {
    const deep = `[{"bin": ${"[".repeat(100_000)}${"]".repeat(100_000)}}]`;
    expect(await problemsOf(json(deep))).toHaveLength(1);
  });

  it("refuses a few entries with many names among very many", async () => {
    const names = Array.from({ length: 420 }, (_, i) => [`mine ${i}`, i]);
    const entries = [Object.fromEntries(names), ...Array.from({ length: 60_000 }, () => ({}))];
    expect(await problemsOf(json(entries))).toEqual([
      expect.stringMatching(/found 25200420 cells; needed at most 25000000 cells/),
    ]);
  });

  it("refuses more entries than a table may have rows, before it looks into any", async () => {
    const entries = (count: number) => `[${"0,".repeat(count - 1)}0]`;
    expect(await problemsOf(json(entries(2_000_001)))).toEqual([
      expect.stringMatching(/^catches.json: found 2000001 entries; needed at most 2000000 entries/),
    ]);
    const [first] = await problemsOf(json(entries(2_000_000)));
    expect(first).toContain("catches.json, entry 1: found something else than an object");
  });

  it("names as many problems as are named of any file", async () => {
    const entries = Array.from({ length: 5_000 }, () => ({ turns: [] }));
    const found = await problemsOf(json(entries));
    expect(found.filter((text) => text.includes("a list or an object"))).toHaveLength(1_000);
    expect(found.at(-1)).toContain("4000 more rows after so many problems");
    const fields = Object.fromEntries(entries.map((_, i) => [`mine ${i}`, []]));
    expect(await problemsOf(json([fields]))).toHaveLength(1_000);
  });
});
