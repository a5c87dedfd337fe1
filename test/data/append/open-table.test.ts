import { describe, expect, it } from "vitest";
import { openTable } from "../../../src/data/append/open-table.ts";

const open = (text: string) => openTable("log.csv", new TextEncoder().encode(text));
const problemsOf = (text: string) => {
  const opened = open(text);
  return opened.ok ? [] : opened.issues.map(({ problem, row }) => [problem, row]);
};
const header = "bin,product,fill,catch,turns,net_kg";

describe("a table that is to be added to", () => {
  it("is told with its marks and ends of lines", () => {
    const opened = open(
      "Tank;Produkt;Füllung;Probe;Umdrehungen;netto_kg\r\n1;Weizen;1;1;20;6,36\r\n",
    );
    expect(opened).toMatchObject({
      ok: true,
      value: { separator: ";", lineEnd: "\r\n", mark: ",", table: { headerRow: 1 } },
    });
    expect(open(`${header}\n`)).toMatchObject({
      ok: true,
      value: { separator: ",", lineEnd: "\n", mark: ".", table: { rows: [] } },
    });
  });

  it("is refused for what reading it would refuse, line by line", () => {
    expect(problemsOf(`${header}\n1,wheat,1,1,twenty,6.3`)).toEqual([["not-a-number", 2]]);
    expect(problemsOf(`${header},turns\n`)).toEqual([["column-repeated", 1]]);
    expect(problemsOf(`${header}\n${"x".repeat(2_000_000)}\n`)).toEqual([["line-too-long", 2]]);
  });

  it("is refused in UTF-16, in which it would be written otherwise", () => {
    const opened = openTable("log.csv", Uint8Array.from([0xff, 0xfe, 0x62, 0]));
    expect(opened).toMatchObject({ ok: false, issues: [{ problem: "not-utf8" }] });
  });
});
