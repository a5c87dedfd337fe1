import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkCatches } from "../../src/data/read-catches.ts";
import { checkSetup } from "../../src/data/read-setup.ts";
import { setupFields } from "../../src/data/setup/json-schema.ts";
import type { CatchSource } from "../../src/data/source.ts";
import { workbook } from "../support/catch-files.ts";
import { english } from "../support/words.ts";

const words = english();

const header =
  "bin,product,fill,catch,turns,net_kg,gross_kg,tare_kg,taken_at,exclude,reason,division_g";

const names = fc.constantFrom("c.csv", "c.tsv", "c.txt", "c.json", "c.xlsx", "c", "c.pdf");
const odd = fc.constantFrom(
  ...[
    "",
    "0",
    "-0",
    "1",
    "20",
    "5.89",
    "5,89",
    "1,234",
    "1e999",
    "1e-320",
    "NaN",
    "yes",
    "x",
    "2026-02-30",
  ],
  ...[
    "2026-04-12",
    '"',
    '""',
    ";",
    "\t",
    "\n",
    "\r",
    "#N/A",
    "__proto__",
    "\u0000",
    "\ud800",
    "999999",
    "0.001",
  ],
);
const cell = fc.oneof(odd, fc.string({ unit: "binary", maxLength: 6 }));
const sheet = fc
  .array(fc.array(cell, { maxLength: 13 }), { maxLength: 6 })
  .map((rows) => [header, ...rows.map((row) => row.join(","))].join("\n"));

/** Rows that are good but for a few cells. */
const likely = (good: string) => fc.oneof({ weight: 30, arbitrary: fc.constant(good) }, cell);
const likelySheet = fc
  .array(fc.tuple(...["1", "wheat", "1", "?", "20", "5.89", "6.31", "0.42"].map(likely)), {
    maxLength: 6,
  })
  .map((rows) =>
    [header, ...rows.map((row, index) => row.join(",").replace("?", `${index + 1}`))].join("\n"),
  );

/** Whatever comes in: no throw, and either a log without a number that is not finite, or issues that say something. */
async function answers(source: CatchSource): Promise<boolean> {
  const check = await checkCatches(source);
  if (check.ok) {
    expect(JSON.parse(JSON.stringify(check.log))).toEqual(check.log);
  } else {
    expect(check.issues.length).toBeGreaterThan(0);
    for (const issue of check.issues) {
      const { text, row } = issue;
      expect(words.problems.text(JSON.parse(JSON.stringify(issue)))).toBe(text);
      expect(text).toMatch(/: found .+; needed .+\. .+[.!]$/s);
      expect(text).not.toMatch(/undefined|\[object|NaN to/);
      expect(row === null || row >= 1).toBe(true);
    }
  }
  return check.ok;
}

describe("checkCatches", () => {
  it("answers any text", async () => {
    await fc.assert(
      fc.asyncProperty(names, fc.string({ unit: "binary" }), async (name, text) => {
        await answers({ name, text });
      }),
      { numRuns: 500 },
    );
  });

  it("answers any bytes", async () => {
    await fc.assert(
      fc.asyncProperty(names, fc.uint8Array({ maxLength: 200 }), async (name, bytes) => {
        await answers({ name, bytes });
      }),
      { numRuns: 500 },
    );
  });

  it("answers any cells under a good header", async () => {
    const outcomes = new Set<boolean>();
    await fc.assert(
      fc.asyncProperty(fc.oneof(sheet, likelySheet), async (text) => {
        outcomes.add(await answers({ name: "c.csv", text }));
      }),
      { numRuns: 1000 },
    );
    expect(outcomes).toEqual(new Set([true, false]));
  });

  it("answers any JSON", async () => {
    const entry = fc.dictionary(fc.constantFrom(...header.split(","), "lot"), fc.jsonValue());
    await fc.assert(
      fc.asyncProperty(fc.oneof(fc.jsonValue(), fc.array(entry)), async (value) => {
        await answers({ name: "c.json", text: JSON.stringify(value) });
      }),
      { numRuns: 500 },
    );
  });

  it("answers a workbook with any bytes changed", async () => {
    const whole = workbook({
      A: [header.split(","), [1, "wheat", 1, 1, 20, 5.89]],
    }).bytes;
    const change = fc.record({
      at: fc.nat(whole.length - 1),
      to: fc.integer({ min: 0, max: 255 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(change, { minLength: 1, maxLength: 8 }), async (changes) => {
        const bytes = whole.slice();
        for (const { at, to } of changes) bytes[at] = to;
        await answers({ name: "c.xlsx", bytes });
      }),
      { numRuns: 150 },
    );
  });
});

describe("checkSetup", () => {
  const keys = setupFields().flatMap(({ path }) => path.replaceAll("[]", "").split("."));
  const known = fc.constantFrom(...keys, "value", "unit", "kind", "__proto__");
  const objectOf = (part: fc.Arbitrary<unknown>) => fc.dictionary(known, part, { maxKeys: 6 });
  const leaf = fc.oneof(
    fc.constantFrom("kg", "m", "motor", "linear", 5, -1, 1e300),
    fc.jsonValue(),
  );
  const inner = fc.oneof(leaf, objectOf(leaf), fc.array(objectOf(leaf), { maxLength: 2 }));
  const setup = objectOf(
    fc.oneof(inner, objectOf(inner), fc.array(objectOf(inner), { maxLength: 2 })),
  );

  it("answers any JSON, in words of its own", () => {
    fc.assert(
      fc.property(fc.oneof(fc.jsonValue(), setup), (value) => {
        const check = checkSetup({ name: "setup.json", text: JSON.stringify(value) });
        const issues = check.ok ? [] : check.issues;
        expect(check.ok).toBe(issues.length === 0);
        for (const issue of issues) {
          const { text } = issue;
          expect(words.problems.text(JSON.parse(JSON.stringify(issue)))).toBe(text);
          expect(text).toMatch(/: found .+; needed .+\. .+\.$/s);
          expect(text).not.toMatch(/Invalid|Unrecognized|Too (?:big|small)|expected/);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
