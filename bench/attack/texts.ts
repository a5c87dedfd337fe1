import { goodHeader, goodRows } from "../../test/support/hostile-files.ts";
import { type Attack, below, oneOf } from "./attack.ts";
import { readingOf, setupOf } from "./reading.ts";

const good = [goodHeader, ...goodRows(6)].map((row) => row.join(",")).join("\n");
const bits = [
  "",
  '"',
  '""',
  ",",
  ";",
  "\t",
  "\r",
  "\n",
  "\u0000",
  "\ufeff",
  "\ud800",
  "'",
  "=",
  "1e999",
  "-0",
  "NaN",
  "#N/A",
  "5,89",
  "1.234,5",
  "__proto__",
  "<b>",
  "\u202e",
  "\u001b[2J",
  "2026-02-30",
  "x".repeat(2_000),
] as const;

export const bentTables: Attack = {
  name: "tables with other letters",
  about: "a good CSV with pieces put in and taken out",
  run: async function* (random, effort) {
    for (let i = 0; i < effort; i++) {
      let text = good;
      for (let change = 0; change <= below(random, 4); change++) {
        const at = below(random, text.length);
        text = text.slice(0, at) + oneOf(random, bits) + text.slice(at + below(random, 4));
      }
      // A figure that is changed is another figure: only how it is answered is looked at.
      yield { name: `bent ${i}`, outcome: await readingOf({ name: "catches.csv", text }, null) };
    }
  },
};

export const vastTexts: Attack = {
  name: "texts of any size",
  about: "blank lines, columns, cells, entries, names and bad rows by the hundred thousand",
  run: async function* () {
    const header = goodHeader.join(",");
    const many = (count: number, one: (index: number) => string) =>
      Array.from({ length: count }, (_, index) => one(index)).join("");
    const files: readonly (readonly [string, string, string])[] = [
      ["10 MB of blank lines", "c.csv", header + "\n".repeat(10_000_000)],
      ["20,000 columns", "c.csv", `${header}${",".repeat(20_000)}\nrear,oats,1,1,20,5.89`],
      ["30 million cells", "c.csv", `${header}\n${`${",".repeat(300_000)}\n`.repeat(100)}`],
      ["a line of 2 MB", "c.csv", "x".repeat(2_000_000)],
      ["100,000 bad rows", "c.csv", `${header}\n${many(100_000, (i) => `x${i},,q,q,q,q\n`)}`],
      ["100,000 rows too wide", "c.csv", `${header}\n${"1,2,3,4,5,6,7\n".repeat(100_000)}`],
      ["1,000 names in JSON", "c.json", `[${many(1_000, (i) => `{"n${i}":1},`)}{}]`],
      ["JSON a million brackets deep", "c.json", "[".repeat(1_000_000)],
      ["100,000 field checks", "setup.json", `{"field_checks":[${"{},".repeat(100_000)}{}]}`],
      [
        "100,000 steps",
        "setup.json",
        `{"bins":[{"bin":"1","drive":{"kind":"ground-wheel","steps":[${"1,".repeat(100_000)}1]}}]}`,
      ],
      ["100,000 unknown keys", "setup.json", `{${many(100_000, (i) => `"k${i}":1,`)}"x":1}`],
      ["a title of 6 MB", "setup.json", `{"title":"${"x".repeat(6_000_000)}"}`],
    ];
    for (const [name, file, text] of files)
      yield {
        name,
        outcome: await (file === "setup.json"
          ? setupOf(text)
          : readingOf({ name: file, text }, null)),
      };
  },
};

export const bentSetups: Attack = {
  name: "setups with other values",
  about: "fields of a setup with values of any kind",
  run: async function* (random, effort) {
    const keys = [
      "title",
      "tolerance_percent",
      "scale",
      "cart",
      "bins",
      "money",
      "field_checks",
      "answered",
      "library",
      "__proto__",
      "tolerence",
    ] as const;
    const values = [
      "1",
      "-1",
      "1e308",
      "null",
      "true",
      '""',
      '"x"',
      "[]",
      "{}",
      "[[]]",
      '[{"bin":"1"}]',
      '{"division":{"value":10,"unit":"g"}}',
      `${"[".repeat(500)}${"]".repeat(500)}`,
    ] as const;
    for (let i = 0; i < effort; i++) {
      const fields = Array.from(
        { length: 1 + below(random, 4) },
        () => `"${oneOf(random, keys)}":${oneOf(random, values)}`,
      );
      yield { name: `bent ${i}`, outcome: await setupOf(`{${fields.join(",")}}`) };
    }
  },
};
