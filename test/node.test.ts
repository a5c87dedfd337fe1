import { execFileSync } from "node:child_process";
import { mkdtemp, rm, truncate, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DataError } from "../src/errors/errors.ts";
import { checkCatchesFile, checkSetupFile, readCatchesFile, readSetupFile } from "../src/node.ts";
import { workbook } from "./support/catch-files.ts";

const text = "bin,product,fill,catch,turns,net_kg\n1,wheat,1,1,20,5.89\n";
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "evencatch-"));
});

afterAll(async () => {
  await rm(folder, { recursive: true });
});

async function file(name: string, content: string | Uint8Array): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, content);
  return path;
}

/** Messages, with the folder of this run left out. */
async function problemsOf(path: string): Promise<string[]> {
  const check = await checkCatchesFile(path);
  if (check.ok) throw new Error("the file was not refused");
  return check.issues.map((issue) => issue.text.replaceAll(folder, "FOLDER"));
}

describe("a file on disk", () => {
  it("is read whatever its format", async () => {
    const csv = await readCatchesFile(await file("catches.csv", text));
    const sheet = workbook({
      A: text
        .trim()
        .split("\n")
        .map((line) => line.split(",")),
    });
    const xlsx = await readCatchesFile(await file("catches.xlsx", sheet.bytes), { sheet: "A" });
    expect(xlsx.catches).toEqual(csv.catches);
    expect(csv.source).toBe(join(folder, "catches.csv"));
  });

  it("may be a setup", async () => {
    const setup = await readSetupFile(await file("setup.json", '{"title": "North"}'));
    expect(setup.title).toBe("North");
  });
});

describe("a path that cannot be read", () => {
  it("to a file that does not exist names the folder that was looked in", async () => {
    expect(await problemsOf(join(folder, "catchs.csv"))).toMatchInlineSnapshot(`
      [
        "FOLDER/catchs.csv: found no file of that name in FOLDER; needed a file that exists. Check the spelling and the ending, and that the folder is the right one.",
      ]
    `);
    await writeFile(join(folder, "plain.csv"), text);
    expect(await problemsOf(join(folder, "plain.csv", "catches.csv"))).toHaveLength(1);
  });

  it("to a folder says so", async () => {
    expect(await problemsOf(folder)).toMatchInlineSnapshot(`
      [
        "FOLDER: found a folder; needed a file that can be read. Give the name of the file in it.",
      ]
    `);
  });

  it("to a kind of file that is not known says so", async () => {
    expect(await problemsOf(await file("catches.doc", text))).toMatchInlineSnapshot(`
      [
        "FOLDER/catches.doc: found the ending ".doc"; needed a file that ends in .csv, .tsv, .txt, .xlsx or .json. Save the table as .xlsx or CSV from the program that made it, and give that file; renaming alone does not change the kind.",
      ]
    `);
  });

  it("to a pipe does not wait for it", async () => {
    const pipe = join(folder, "pipe.csv");
    execFileSync("mkfifo", [pipe]);
    expect(await problemsOf(pipe)).toMatchInlineSnapshot(`
      [
        "FOLDER/pipe.csv: found a device or a pipe; needed a file that can be read. Save the table to a file and give its name.",
      ]
    `);
  });

  it("with a name no system takes is answered too", async () => {
    const [found = ""] = await problemsOf(`${"x".repeat(5000)}.csv`);
    expect(found).toContain("a file that cannot be opened (ENAMETOOLONG)");
    expect(await problemsOf("a\u0000b.csv")).toHaveLength(1);
  });

  // The superuser may open everything.
  it.skipIf(process.getuid?.() === 0)("that may not be opened says so", async () => {
    const path = await file("locked.csv", text);
    execFileSync("chmod", ["000", path]);
    expect(await problemsOf(path)).toEqual([
      "FOLDER/locked.csv: found a file that may not be opened; needed a file that can be read. Ask for permission to read it, or copy it to a folder of your own.",
    ]);
  });

  it("throws a DataError from the readers", async () => {
    await expect(readCatchesFile(join(folder, "no.csv"))).rejects.toThrow(DataError);
    await expect(readSetupFile(join(folder, "no.json"))).rejects.toThrow(DataError);
    const check = await checkSetupFile(join(folder, "no.json"));
    expect(check.ok ? [] : check.issues.map(({ code }) => code)).toEqual(["file-not-found"]);
  });
});

describe("a file that is far too large", () => {
  it("in one line is refused without being read", async () => {
    const path = await file("line.csv", "1".repeat(2_000_000));
    // Node refuses to read a file of more than 2 GiB at once.
    await truncate(path, 3_000_000_000);
    expect(await problemsOf(path)).toMatchInlineSnapshot(`
      [
        "FOLDER/line.csv, line 1: found a line of more than 1000000 characters; needed lines that each hold one catch. Check that it is the file of catches, saved as CSV with a line break after each row.",
      ]
    `);
  });

  it("in many lines is refused with its size", async () => {
    const path = await file("many.csv", text.repeat(30_000));
    await truncate(path, 200_000_000);
    expect(await problemsOf(path)).toMatchInlineSnapshot(`
      [
        "FOLDER/many.csv: found a file of 200 MB; needed at most 100 MB for this kind of file. Check that it is the file of catches; if it is, split it by season or by bin.",
      ]
    `);
  });

  it("as a workbook is refused with its size", async () => {
    const path = await file("large.xlsx", "PK");
    await truncate(path, 30_000_000);
    expect(await problemsOf(path)).toMatchInlineSnapshot(`
      [
        "FOLDER/large.xlsx: found a file of 30 MB; needed at most 20 MB for this kind of file. Check that it is the file of catches; if it is, split it by season or by bin.",
      ]
    `);
  });
});
