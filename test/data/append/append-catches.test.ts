import { describe, expect, it } from "vitest";
import { appendCatches } from "../../../src/data/append/append-catches.ts";
import type { Belonging } from "../../../src/data/append/belonging.ts";
import type { NewCatch } from "../../../src/data/append/mass-cells.ts";

const day = { takenAt: "2026-05-02" };
const weighed = (turns: string, mass: string, unit: "kg" | "g" | null = null): NewCatch => ({
  turns,
  mass,
  unit,
});

const kg = (turns: number, net: number) => ({ turns, net, tare: null, unit: "kg" });

function append(
  lines: readonly string[],
  catches: readonly NewCatch[],
  to: Partial<Belonging> = {},
  end = "\n",
) {
  const bytes = new TextEncoder().encode(lines.join(end));
  const done = appendCatches("log.csv", bytes, catches, { ...day, ...to });
  if (!done.ok) return done.issues.map(({ problem, row }) => `${problem} ${row}`);
  return done.value.ok
    ? { added: done.value.added, rows: done.value.rows }
    : { missing: done.value.missing };
}

const added = (...given: Parameters<typeof append>) => {
  const done = append(...given);
  return "added" in done ? done.added : done;
};

const head = "bin;product;fill;catch;turns;net_kg";
const one = [head, "1;oats;1;1;20;6,3", "1;oats;1;2;20;6,4", ""];

describe("catches added to a file", () => {
  it("go on with the newest fill of its one bin, with its separator, mark and line ends", () => {
    expect(append(one, [weighed("20", "6.35"), weighed("40.5", "12,7")])).toEqual({
      added: "1;oats;1;3;20;6,35\n1;oats;1;4;40,5;12,7\n",
      rows: [
        {
          where: { bin: "1", product: "oats", fill: 1, catch: 3 },
          spilled: null,
          caught: kg(20, 6.35),
        },
        {
          where: { bin: "1", product: "oats", fill: 1, catch: 4 },
          spilled: null,
          caught: kg(40.5, 12.7),
        },
      ],
    });
    expect(added(one, [weighed("20", "6.35")], {}, "\r\n")).toBe("1;oats;1;3;20;6,35\r\n");
    expect(added(one, [weighed("20", "6.35")], {}, "\r")).toBe("1;oats;1;3;20;6,35\r");
  });

  it("begin on a line of their own where the file does not end one", () => {
    expect(added(one.slice(0, 2), [weighed("20", "6.35")])).toBe("\n1;oats;1;2;20;6,35\n");
  });

  it("are numbered behind the highest catch of the fill, whatever the order of its rows", () => {
    const rows = [head, "1;oats;1;7;20;6,3", "1;oats;1;2;20;6,4", ""];
    expect(added(rows, [weighed("20", "6.35")])).toBe("1;oats;1;8;20;6,35\n");
  });

  it("begin a new filling when it is told, behind the highest, and go on with any by its number", () => {
    const rows = [head, "1;oats;3;1;20;6,3", "1;oats;2;1;20;6,4", ""];
    expect(added(rows, [weighed("20", "6.35")], { fill: "next" })).toBe("1;oats;4;1;20;6,35\n");
    expect(added(rows, [weighed("20", "6.35")])).toBe("1;oats;2;2;20;6,35\n");
    expect(added(rows, [weighed("20", "6.35")], { fill: 3 })).toBe("1;oats;3;2;20;6,35\n");
    expect(added(rows, [weighed("20", "8.1")], { fill: "next", product: "peas" })).toBe(
      "1;peas;4;1;20;8,1\n",
    );
  });

  it("are asked for a bin where there are several, and for the product of a new one", () => {
    const rows = [head, "1;oats;1;1;20;6,3", "2;peas;1;1;20;8", ""];
    expect(append(rows, [weighed("20", "6.3")])).toEqual({
      missing: { is: "bin", names: ["1", "2"] },
    });
    expect(added(rows, [weighed("20", "8.1")], { bin: "2" })).toBe("2;peas;1;2;20;8,1\n");
    expect(append(rows, [weighed("20", "8.1")], { bin: "3" })).toEqual({
      missing: { is: "product", bin: "3", held: null },
    });
    expect(added(rows, [weighed("20", "8.1")], { bin: "3", product: "rye" })).toBe(
      "3;rye;1;1;20;8,1\n",
    );
    // Another product in a fill that holds oats.
    expect(append(rows, [weighed("20", "8.1")], { bin: "1", product: "rye" })).toEqual({
      missing: { is: "product", bin: "1", held: "oats" },
    });
  });

  it("take units and marks as they were typed where they are those of the file, else converted", () => {
    expect(added(one, [weighed("20", "6350", "g")])).toBe("1;oats;1;3;20;6,35\n");
    expect(added(one, [weighed("20", "6.3500", "kg")])).toBe("1;oats;1;3;20;6,3500\n");
    const grams = ["bin,product,fill,catch,turns,net_g", "1,oats,1,1,20,6300", ""];
    expect(added(grams, [weighed("20", "6.35", "kg")])).toBe("1,oats,1,2,20,6350\n");
  });

  it("that could be thousands keep the mark that was typed, for the reader to ask about", () => {
    const whole = [head, "1;oats;1;1;20;6", ""];
    expect(append(whole, [weighed("20", "6,350")])).toEqual(["decimal-ambiguous 3"]);
    expect(append(one, [weighed("20", "6.350")])).toEqual(["decimal-ambiguous 4"]);
    expect(added(one, [weighed("20", "6,350")])).toBe("1;oats;1;3;20;6,350\n");
  });

  it("are weighed with their container where the file has gross and tare", () => {
    const rows = ["bin;product;fill;catch;turns;gross_kg;tare_kg", "1;oats;1;1;20;6,7;0,4", ""];
    expect(append(rows, [weighed("20", "6.8")])).toEqual({ missing: { is: "tare" } });
    expect(added(rows, [weighed("20", "6.8")], { tare: "0.42" })).toBe("1;oats;1;2;20;6,8;0,42\n");
    const both = [`${head};gross_kg;tare_kg`, "1;oats;1;1;20;6,3;6,7;0,4", ""];
    expect(added(both, [weighed("20", "6.4")])).toBe("1;oats;1;2;20;6,4;;\n");
    expect(added(both, [weighed("20", "6.8")], { tare: "0.4" })).toBe("1;oats;1;2;20;;6,8;0,4\n");
  });

  it("go under the unit that the newest row was weighed in", () => {
    const rows = [`${head};net_g`, "1;oats;1;1;20;6,3;", "1;oats;1;2;20;;6400", ""];
    expect(added(rows, [weighed("20", "6500")])).toBe("1;oats;1;3;20;;6500\n");
    expect(added(rows.slice(0, 2).concat(""), [weighed("20", "6.5")])).toBe("1;oats;1;2;20;6,5;\n");
  });

  it("that were spilled are left out with their reason, if the file has columns for it", () => {
    const rows = [`${head};exclude;reason`, "1;oats;1;1;20;6,3;;", ""];
    const spilled: NewCatch = { turns: null, spilled: "bag tore" };
    expect(append(rows, [spilled, weighed("20", "6.4"), { turns: "20", spilled: "wind" }])).toEqual(
      {
        added: "1;oats;1;2;;;yes;bag tore\n1;oats;1;3;20;6,4;;\n1;oats;1;4;20;;yes;wind\n",
        rows: [
          {
            where: { bin: "1", product: "oats", fill: 1, catch: 2 },
            spilled: "bag tore",
            caught: null,
          },
          {
            where: { bin: "1", product: "oats", fill: 1, catch: 3 },
            spilled: null,
            caught: kg(20, 6.4),
          },
          {
            where: { bin: "1", product: "oats", fill: 1, catch: 4 },
            spilled: "wind",
            caught: null,
          },
        ],
      },
    );
    expect(append(one, [spilled])).toEqual({ missing: { is: "spilled" } });
    const half = [`${head};exclude`, "1;oats;1;1;20;6,3;", ""];
    expect(append(half, [spilled])).toEqual({ missing: { is: "spilled" } });
  });

  it("that are the newest ones once more are asked about, but one alone may be a true repeat", () => {
    const again = [weighed("20", "6.30"), weighed("20", "6.4")];
    expect(append(one, again)).toEqual({ missing: { is: "again", catches: 2 } });
    expect(added(one, again, { again: true })).toBe("1;oats;1;3;20;6,30\n1;oats;1;4;20;6,4\n");
    expect(added(one, [weighed("20", "6.4")])).toBe("1;oats;1;3;20;6,4\n");
    expect(added(one, [weighed("20", "6.4"), weighed("20", "6.3")])).toContain("1;oats;1;4");
    // More than the fill has.
    expect(added(one, [weighed("20", "6.3"), ...again])).toContain("1;oats;1;5");
  });

  it("carry the day and other columns where the file has them, and name a column it has not", () => {
    const rows = [
      `${head};Datum;taken_at;operator;Shed`,
      "1;oats;1;1;20;6,3;;2026-05-01;AB;Nord",
      "",
    ];
    const told = { set: { operator: "CD", shed: "Süd" } };
    expect(added(rows, [weighed("20", "6.4")], told)).toBe(
      "1;oats;1;2;20;6,4;;2026-05-02;CD;Süd\n",
    );
    expect(append(one, [weighed("20", "6.4")], { set: { operator: "CD" } })).toEqual({
      missing: { is: "column", name: "operator" },
    });
  });

  it("are numbered outlet by outlet", () => {
    const rows = [
      `${head};outlet`,
      "1;oats;1;1;20;3,1;a",
      "1;oats;1;1;20;3,2;b",
      "1;oats;1;2;20;3,1;a",
      "",
    ];
    const to = (outlet: string) => added(rows, [weighed("20", "3.3")], { set: { outlet } });
    expect([to("a"), to("b")]).toEqual(["1;oats;1;3;20;3,3;a\n", "1;oats;1;2;20;3,3;b\n"]);
  });

  it("have formulas in what was typed guarded", () => {
    const rows = [`${head};note`, "1;oats;1;1;20;6,3;", ""];
    expect(added(rows, [weighed("20", "6.4")], { set: { note: "=1+1" } })).toBe(
      "1;oats;1;2;20;6,4;'=1+1\n",
    );
  });

  it("of a file that names no bins are turns and masses alone, and belong nowhere else", () => {
    const plain = ["turns;net_kg", "20;6,3", ""];
    expect(append(plain, [weighed("20", "6.4")])).toEqual({
      added: "20;6,4\n",
      rows: [{ where: null, spilled: null, caught: kg(20, 6.4) }],
    });
    for (const to of [{ bin: "1" }, { product: "oats" }, { fill: 2 }])
      expect(append(plain, [weighed("20", "6.4")], to)).toEqual({
        missing: { is: "column", name: "bin" },
      });
  });

  it("may be the first below a header", () => {
    expect(added([head], [weighed("20", "6.4")], { bin: "1", product: "oats" })).toBe(
      "\n1;oats;1;1;20;6.4\n",
    );
    expect(append([head], [weighed("20", "6.4")])).toEqual({ missing: { is: "bin", names: [] } });
    expect(append(["bin;product;fill;catch;turns"], [weighed("20", "6.4")])).toEqual([
      "mass-column-missing 1",
    ]);
  });

  it("are refused with the file where it, or the whole with them, is wrong", () => {
    expect(append([head, "1;oats;1;1;x;6,3", ""], [weighed("20", "6.4")])).toEqual([
      "not-a-number 2",
    ]);
    expect(append(one, [weighed("twenty", "6.4")])).toEqual(["not-a-number 4"]);
    const text = "bin,product,fill,catch,turns,net_kg\n1,oats,1,1,20,6.3\n";
    const codes = [...text].map((letter) => letter.charCodeAt(0));
    for (const wide of [
      [0xff, 0xfe, ...codes.flatMap((code) => [code, 0])],
      [0xfe, 0xff, ...codes.flatMap((code) => [0, code])],
    ]) {
      const done = appendCatches("a.csv", Uint8Array.from(wide), [weighed("20", "6.4")], day);
      expect(done.ok ? [] : done.issues.map(({ problem }) => problem)).toEqual(["not-utf8"]);
    }
  });
});

describe("catches of several machines and seasons", () => {
  const keyed = `machine;season;${head}`;
  const rows = [
    keyed,
    "Nord;2026;1;oats;2;1;20;6,3",
    "Nord;2025;1;oats;1;1;20;6,4",
    "Süd;2026;2;peas;1;1;20;8",
    "",
  ];

  it("go on with the newest season of the machine that has the bin", () => {
    expect(added(rows, [weighed("20", "6.5")], { bin: "1" })).toBe("Nord;2026;1;oats;2;2;20;6,5\n");
    expect(added(rows, [weighed("20", "8.1")], { bin: "2" })).toBe("Süd;2026;2;peas;1;2;20;8,1\n");
    expect(added(rows, [weighed("20", "6.5")], { bin: "1", set: { season: "2025" } })).toBe(
      "Nord;2025;1;oats;1;2;20;6,5\n",
    );
  });

  it("are asked for the machine where several have the bin, or there is no bin yet", () => {
    const both = [...rows.slice(0, 4), "Süd;2026;1;oats;1;1;20;6,6", ""];
    expect(append(both, [weighed("20", "6.5")], { bin: "1" })).toEqual({
      missing: { is: "key", name: "machine", names: ["Nord", "Süd"] },
    });
    expect(added(both, [weighed("20", "6.5")], { bin: "1", set: { machine: "Süd" } })).toBe(
      "Süd;2026;1;oats;1;2;20;6,5\n",
    );
    expect(append(rows, [weighed("20", "6.5")], { bin: "9" })).toMatchObject({
      missing: { is: "key", name: "machine" },
    });
  });

  it.each<[string, string, boolean]>([
    ["2026", "2026-05-02", false],
    ["2025", "2026-05-02", true],
    ["2025/26", "2026-05-02", false],
    ["2025/26", "2025-09-20", false],
    ["2025/26", "2027-05-02", true],
    ["2025/2026", "2026-05-02", false],
    ["2025–26", "2026-05-02", false],
    ["autumn 2025", "2026-05-02", true],
    ["autumn", "2026-05-02", false],
    ["2025-04-12", "2026-05-02", true],
  ])("in season %s on %s: to be told %s", (season, takenAt, open) => {
    const log = [keyed, `Nord;${season};1;oats;1;1;20;6,3`, ""];
    const done = append(log, [weighed("20", "6.5")], { takenAt });
    if (open) expect(done).toEqual({ missing: { is: "key", name: "season", names: [season] } });
    else expect(done).toMatchObject({ added: `Nord;${season};1;oats;1;2;20;6,5\n` });
  });
});
