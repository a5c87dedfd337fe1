import { mkdir, readFile, symlink, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { journalName } from "../../src/cli/journal.ts";
import { manifestName } from "../../src/cli/manifest.ts";
import { filesIn, inFolder } from "../support/command.ts";
import { bundledWriter, changesOf, runWithFault, standing } from "../support/faults.ts";
import { filesOfVersion } from "../support/versions.ts";

let writer = "";
let done = () => {};
const held = new Promise<void>((resolve) => {
  done = resolve;
});
let gone: Promise<void>;

beforeAll(async () => {
  await new Promise<void>((ready) => {
    gone = inFolder(async (folder) => {
      writer = await bundledWriter(folder);
      ready();
      await held;
    });
  });
});

afterAll(async () => {
  done();
  await gone;
});

const quiet = "none:0";
const write = (folder: string, version: string, fault = quiet) =>
  runWithFault(writer, [folder, version], fault);

/** Everything of the second version and nothing else. */
async function holdsSecond(folder: string) {
  const files = (await filesIn(folder)).filter((name) => /\.\w+$/.test(name));
  expect(files).toEqual([...Object.keys(filesOfVersion("2")), manifestName].sort());
  expect(await standing(folder)).toBe("2");
}

async function changes(): Promise<number> {
  return inFolder(async (folder) => {
    await write(folder, "1");
    return changesOf(writer, [folder, "2"]);
  });
}

describe("a run that is cut off", () => {
  it("leaves the old report whole or the new one, wherever it is killed, and the next run goes on", async () => {
    const count = await changes();
    expect(count).toBeGreaterThan(12);
    const stood = new Set<string | null>();
    for (let at = 1; at <= count; at++) {
      await inFolder(async (folder) => {
        await write(folder, "1");
        await writeFile(join(folder, "mine.txt"), "mine");
        const { signal } = await write(folder, "2", `kill:${at}`);
        expect(signal).toBe("SIGKILL");
        const what = await standing(folder);
        expect(what, `killed at change ${at}`).not.toBeNull();
        stood.add(what);
        expect(await readFile(join(folder, "mine.txt"), "utf8")).toBe("mine");
        const { code, err } = await write(folder, "2");
        expect({ at, code, err }).toEqual({ at, code: 0, err: "" });
        const files = await filesIn(folder);
        expect(files.filter((name) => /\.tmp$|unfinished|old\.svg/.test(name))).toEqual([]);
        expect(await standing(folder)).toBe("2");
      });
    }
    expect(stood).toEqual(new Set(["1", "2"]));
  });

  it.each(["ENOSPC", "EACCES"])(
    "says so and loses nothing where the system refuses with %s",
    async (kind) => {
      const count = await changes();
      for (let at = 1; at <= count; at += 2) {
        await inFolder(async (folder) => {
          await write(folder, "1");
          const { code, err } = await write(folder, "2", `${kind}:${at}`);
          const what = await standing(folder);
          expect(what, `failed at change ${at}`).not.toBeNull();
          if (code !== 0) {
            expect(code).toBe(2);
            expect(err).toContain(folder);
            expect(err).not.toMatch(/^\s+at /m);
            if (what === "1" && !err.includes("The next run"))
              expect((await filesIn(folder)).filter((name) => /\.tmp$/.test(name))).toEqual([]);
          }
          await write(folder, "2");
          await holdsSecond(folder);
        });
      }
    },
  );

  it("takes nothing back and leaves nothing over where it is interrupted from the keyboard", async () => {
    const count = await changes();
    for (let at = 2; at <= count; at += 3) {
      await inFolder(async (folder) => {
        await write(folder, "1");
        await write(folder, "2", `SIGINT:${at}`);
        const files = await filesIn(folder);
        expect(files.filter((name) => /\.tmp$/.test(name))).toEqual([]);
        expect(await standing(folder), `interrupted at ${at}`).not.toBeNull();
      });
    }
  });
});

describe("a folder with a journal", () => {
  it("is left alone while another run may be writing into it", async () => {
    await inFolder(async (folder) => {
      await write(folder, "1");
      const running = { process: process.pid, host: (await import("node:os")).hostname() };
      const journal = { ending: ".ab.tmp", moves: {}, writing: ["report.html"], outdated: {} };
      const text = JSON.stringify({ kind: "evencatch-unfinished", ...running, ...journal });
      await writeFile(join(folder, journalName), text);
      await writeFile(join(folder, "report.html.ab.tmp"), "half");
      const { code, err } = await write(folder, "2");
      expect(code).toBe(2);
      expect(err).toContain("another run is writing into this folder");
      expect(err).toContain(`delete ${journalName}`);
      expect(await readFile(join(folder, "report.html.ab.tmp"), "utf8")).toBe("half");
      expect(await standing(folder)).toBe("1");
      // A run that is no more is no reason to wait.
      await writeFile(join(folder, journalName), text.replace(String(process.pid), "999999999"));
      expect((await write(folder, "2")).code).toBe(0);
      await holdsSecond(folder);
    });
  });

  it("ends with one whole report where two runs write at once", async () => {
    await inFolder(async (folder) => {
      const both = await Promise.all([write(folder, "1"), write(folder, "2")]);
      expect(both.filter(({ code }) => code === 0).length).toBeGreaterThan(0);
      for (const { code, err } of both) if (code !== 0) expect(err).toContain("another run");
      expect(["1", "2"]).toContain(await standing(folder));
      expect((await filesIn(folder)).filter((name) => /tmp|unfinished/.test(name))).toEqual([]);
    });
  });

  it("is not led out of by a journal that names files elsewhere, nor by a link in its place", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "out");
      await mkdir(folder);
      const outside = join(root, "outside.txt");
      await writeFile(`${outside}.ab.tmp`, "new");
      await writeFile(outside, "old");
      const journal = { process: 999999999, host: "nowhere", ending: ".ab.tmp", moves: {} };
      const text = JSON.stringify({
        kind: "evencatch-unfinished",
        ...journal,
        host: (await import("node:os")).hostname(),
        writing: ["../outside.txt", `${outside}`],
        outdated: { "../outside.txt": "x" },
      });
      await writeFile(join(folder, journalName), text);
      expect((await write(folder, "1")).code).toBe(0);
      expect(await readFile(`${outside}.ab.tmp`, "utf8")).toBe("new");
      expect(await readFile(outside, "utf8")).toBe("old");
      await symlink(outside, join(folder, journalName));
      expect((await write(folder, "2")).code).toBe(2);
      expect(await readFile(outside, "utf8")).toBe("old");
    });
  });
});
