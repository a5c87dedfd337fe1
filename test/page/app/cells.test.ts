import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { checkText } from "../../../src/data/read-text.ts";
import type { Catch, CatchLog } from "../../../src/data/types.ts";
import { cellsOf, csvOf } from "../../../src/page/app/cells.ts";
import { demo } from "../../support/command.ts";

function read(text: string): CatchLog {
  const found = checkText({ name: "catches.csv", text });
  if (!found.ok) throw new Error(found.issues.map((issue) => issue.text).join("\n"));
  return found.value;
}

function andBack(log: CatchLog): CatchLog {
  const rows = log.catches.map((row, i) => ({ id: `${i}`, cells: cellsOf(row, log.massUnit) }));
  return read(csvOf(rows));
}

const withoutRow = ({ row: _, ...rest }: Catch) => rest;

describe("a file that is read in and saved again", () => {
  it.each(["season/catches.csv", "first-morning/catches.csv", "product-trial/catches.csv"])(
    "holds the same catches: %s",
    (path) => {
      const log = read(readFileSync(demo(path), "utf8"));
      const back = andBack(log);
      expect(back.catches.map(withoutRow)).toEqual(log.catches.map(withoutRow));
      expect(back.massUnit).toBe(log.massUnit);
    },
  );

  it("keeps its unit, and to the last bit its masses", () => {
    const log = read(
      [
        "bin,product,fill,catch,turns,gross_lb,tare_lb,field",
        "front,oats,1,1,20,14.01,0.93,north",
        "front,oats,1,2,20,14.29,0.93,north",
        'front,oats,1,3,20.5,14.3,0.93,"a, ""b"""',
      ].join("\n"),
    );
    const back = andBack(log);
    expect(back.massUnit).toBe("lb");
    expect(back.catches.map(withoutRow)).toEqual(log.catches.map(withoutRow));
  });

  it("keeps a net mass that is not the difference of the others", () => {
    const text =
      "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg\n1,oats,1,1,20,5.9,6.31,0.42";
    expect(andBack(read(text)).catches[0]?.netKg).toBe(5.9);
  });
});

describe("digits", () => {
  it("leave as they were typed", () => {
    const cells = { bin: "1", product: "oats", fill: "1", catch: "1", turns: "20", net_kg: "6.30" };
    expect(csvOf([{ id: "a", cells }])).toBe(
      "bin,product,fill,catch,turns,net_kg\n1,oats,1,1,20,6.30\n",
    );
  });
});
