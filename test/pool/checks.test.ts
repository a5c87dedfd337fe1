import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { DataIssue } from "../../src/errors/data-issue.ts";
import { DataError } from "../../src/errors/errors.ts";
import { checkCatchesFile } from "../../src/node.ts";
import { randomStream } from "../../src/numeric/random.ts";
import { poolTotals } from "../../src/pool.ts";
import { brokenLog, layouts } from "./broken-logs.ts";

let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evencatch-test-"));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

async function problemsOf(patterns: string | readonly string[]): Promise<readonly DataIssue[]> {
  try {
    for await (const _ of poolTotals(patterns, { memory: "500MB", threads: 1 }));
    return [];
  } catch (error) {
    if (error instanceof DataError) return error.issues;
    throw error;
  }
}

async function written(name: string, text: string): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, text);
  return path;
}

/** Equal problems once: the first, and how many more rows have it. */
function counted(issues: readonly DataIssue[]) {
  const groups = new Map<string, DataIssue[]>();
  for (const issue of issues) {
    const key = JSON.stringify([
      issue.problem,
      issue.problem === "decimal-ambiguous" ? null : issue.column,
    ]);
    groups.set(key, [...(groups.get(key) ?? []), issue]);
  }
  return groups;
}

describe("every problem that the in-memory reader finds", () => {
  for (const [name, layout] of Object.entries(layouts)) {
    for (const slipped of [0, 1, 3, 40]) {
      it(`is found in SQL, in the same words: ${name}, ${slipped} slips`, async () => {
        for (let seed = 1; seed <= 3; seed++) {
          const random = randomStream(seed, slipped);
          const path = await written(
            `${name}-${slipped}-${seed}.csv`,
            brokenLog(layout, 60, slipped, random),
          );
          const check = await checkCatchesFile(path);
          const expected = counted(check.ok ? [] : check.issues);
          const found = counted(await problemsOf(path));
          // After a figure in doubt the reader looks no further in its row; the database does.
          const doubt = [...expected.keys()].some((key) => key.includes("decimal-ambiguous"));
          expect([...found.keys()]).toEqual(expect.arrayContaining([...expected.keys()]));
          if (!doubt) expect(found.size).toBe(expected.size);
          for (const [key, [first, ...others]] of expected) {
            const [one] = found.get(key) ?? [];
            const rows = new Set([first, ...others].map((issue) => issue?.row)).size;
            if (doubt && !key.includes("decimal-ambiguous")) continue;
            expect({
              ...one,
              alike: undefined,
              text: one?.text.slice(0, first?.text.length),
            }).toEqual({
              ...first,
              alike: undefined,
            });
            if (!doubt) expect(1 + (one?.alike ?? 0), key).toBe(rows);
          }
        }
      });
    }
  }
});

describe("a file that only the in-memory reader can read, or none", () => {
  const header = "bin,product,fill,catch,turns,net_kg";
  const good = "1,wheat,1,1,20,5.89";
  const utf16 = (text: string) => Buffer.from(`\ufeff${text}`, "utf16le");

  it.each([
    [
      "ending.xlsx",
      good,
      'the ending ".xlsx"; needed a file that ends in .csv, .tsv, .txt or .parquet',
    ],
    ["noending", good, "a name without an ending"],
    ["utf16.csv", utf16(`${header}\n${good}\n`), "text in UTF-16; needed text in UTF-8"],
    ["old.csv", `${header}\r${good}\r`, "lines that end in a carriage return alone"],
    ["mixed.csv", `${header}\r\n${good}\n`, "lines that end in two different ways"],
    [
      "short.csv",
      `${header}\n1,wheat,1,1,20\n`,
      "line 2: found 5 cells; needed 6, one for each column",
    ],
    [
      "wide.csv",
      `${header}\n${good}\n1,wheat,1,2,20,5,89\n`,
      "line 3: found 7 cells; needed at most 6",
    ],
    [
      "quote.csv",
      `${header}\n${good}\n1,"wheat"x,1,2,20,5.89\n`,
      "a quotation mark that is not closed",
    ],
    [
      "latin.csv",
      Buffer.concat([Buffer.from(`${header}\n1,`), Buffer.from([0xfc, 0x0a])]),
      "letters that are not UTF-8",
    ],
    ["nothing.csv", "", "an empty file"],
    ["alone.csv", `${header}\n\n`, "a header and nothing below it"],
    ["other.csv", "a,b\n1,2\n", "needed columns named bin, product, fill, catch, turns"],
    ["lost.parquet", null, "no file of that name"],
    ["text.parquet", good, "what is no Parquet file"],
    ["folder.csv/", null, "a folder"],
  ])("%s is refused by name", async (name, content, said) => {
    const path = join(folder, name);
    if (content !== null) await writeFile(path, content);
    else if (name.endsWith("/")) await mkdir(path);
    const [issue] = await problemsOf(path);
    expect(issue?.text).toContain(said);
    expect(issue?.source).toBe(path);
  });
});

describe("a log of which nothing counts", () => {
  const header = "bin,product,fill,catch,turns,net_kg,exclude,reason";
  const spilled = (fill: number, rows: number) =>
    Array.from({ length: rows }, (_, i) => `1,wheat,${fill},${i + 1},20,,yes,tray tipped over`);

  it("is refused in the words of the in-memory reader, each file once", async () => {
    const one = await written("spilled.csv", [header, "", ...spilled(1, 3), ""].join("\n"));
    const other = await written("spilled-too.csv", [header, ...spilled(2, 1), ""].join("\n"));
    const read = await checkCatchesFile(one);
    const alone = read.ok ? [] : read.issues;
    expect(alone.map(({ problem, row, column }) => [problem, row, column])).toEqual(
      [3, 4, 5].map((row) => ["mass-missing", row, "net_kg"]),
    );
    const [first, second, ...more] = await problemsOf([one, other]);
    expect(first).toMatchObject({ ...alone[0], alike: 2, text: first?.text });
    expect(first?.text).toContain(alone[0]?.text);
    expect(second).toMatchObject({ source: other, row: 2, problem: "mass-missing" });
    expect(more).toEqual([]);
  });

  it("is refused likewise where every catch that was weighed is left out", async () => {
    const excluded = ["1,wheat,2,1,20,5.89,yes,spilt", "1,wheat,2,2,20,5.91,yes,spilt"];
    const path = await written("excluded.csv", [header, ...spilled(1, 1), ...excluded].join("\n"));
    const read = await checkCatchesFile(path);
    const alone = read.ok ? [] : read.issues;
    expect(alone.map(({ problem, row, column }) => [problem, row, column])).toEqual(
      [3, 4].map((row) => ["all-excluded", row, "exclude"]),
    );
    const [first, ...more] = await problemsOf(path);
    expect(first).toMatchObject({ ...alone[0], alike: 1, text: first?.text });
    expect(more).toEqual([]);
  });

  it("is none beside a file with a catch that counts", async () => {
    const one = await written("spilled-here.csv", [header, ...spilled(1, 2), ""].join("\n"));
    const counted = "1,wheat,2,1,20,5.89,,";
    const other = await written("counted.csv", [header, counted, ""].join("\n"));
    expect(await problemsOf([one, other])).toEqual([]);
  });
});
