import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { link, mkdir, readdir, readFile, rename, symlink, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { manifestName } from "../../src/cli/manifest.ts";
import { OutputError, writeOutput } from "../../src/cli/output.ts";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";
import { english } from "../support/words.ts";

const morning = demo("first-morning/catches.csv");
const { command: say } = english();
const text = (...path: string[]) => readFile(join(...path), "utf8");

interface Asked {
  readonly inputs?: readonly string[];
  readonly replace?: boolean;
  readonly command?: "report" | "template";
}

function write(folder: string, files: Readonly<Record<string, string>>, asked: Asked = {}) {
  const output = {
    command: "report",
    folder,
    files,
    inputs: [],
    replace: false,
    ...asked,
  } as const;
  return writeOutput(output, say);
}

/** What a run that must be refused says; the test fails when it is not. */
async function refusal(run: Promise<unknown>): Promise<string> {
  const error = await run.then(
    () => null,
    (thrown: unknown) => thrown,
  );
  expect(error).toBeInstanceOf(OutputError);
  return (error as Error).message;
}

describe("writing into a folder", () => {
  it("makes the folder, and closes with a manifest of relative names and SHA-256 of the bytes", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "new", "folder");
      await write(folder, { "charts/b.json": "b\n", "a.md": "ä\n" });
      const manifest = await text(folder, manifestName);
      const sha256 = (bytes: string) => createHash("sha256").update(bytes, "utf8").digest("hex");
      expect(JSON.parse(manifest).files).toEqual({
        "a.md": { command: "report", sha256: sha256("ä\n") },
        "charts/b.json": { command: "report", sha256: sha256("b\n") },
      });
      expect(manifest).not.toContain(root);
      await write(join(root, "again"), { "a.md": "ä\n", "charts/b.json": "b\n" });
      expect(await text(root, "again", manifestName)).toBe(manifest);
      expect(await filesIn(folder)).toEqual(["a.md", "charts", "charts/b.json", manifestName]);
    });
  });

  it("writes over its own files, and removes those it does not write again", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "a.md": "1", "charts/b.json": "1", "c.md": "1" });
      expect(await write(folder, { "a.md": "2" })).toEqual([]);
      expect(await filesIn(folder)).toEqual(["a.md", manifestName]);
      expect(await text(folder, "a.md")).toBe("2");
    });
  });

  it("keeps and names files of the last time that were changed since", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "a.md": "1", "b.md": "1" });
      await fileWith(folder, "b.md", "mine now");
      expect(await write(folder, { "a.md": "2" })).toEqual(["b.md"]);
      expect(await text(folder, "b.md")).toBe("mine now");
      // Named once: from now on it is the user's.
      expect(await write(folder, { "a.md": "3" })).toEqual([]);
    });
  });

  it("refuses to write over what it did not write, and over what was changed, unless told to", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "a.md": "1" });
      await fileWith(folder, "a.md", "edited");
      await fileWith(folder, "b.md", "mine");
      const files = { "a.md": "2", "b.md": "2", "c.md": "2" };
      const message = await refusal(write(folder, files));
      expect(message).toContain(`${folder}: nothing was written.`);
      expect(message).toContain(
        "Changed since evencatch wrote them: a.md. To go on, give another folder, or --replace",
      );
      expect(message).toContain("Not in a manifest of evencatch's");
      expect(message).toContain("--replace");
      expect([await text(folder, "a.md"), await text(folder, "b.md")]).toEqual(["edited", "mine"]);
      expect(await filesIn(folder)).toEqual(["a.md", "b.md", manifestName]);
      await write(folder, files, { replace: true });
      expect(await text(folder, "b.md")).toBe("2");
    });
  });

  it("takes a file that already says the same for its own, as in a clone without a manifest", async () => {
    await inFolder(async (folder) => {
      await fileWith(folder, "a.md", "1");
      await write(folder, { "a.md": "1" });
      await write(folder, { "a.md": "2" });
      expect(await text(folder, "a.md")).toBe("2");
    });
  });

  it("never writes over a file that is read, by whatever way it is reached", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "out");
      await mkdir(folder);
      const input = await fileWith(folder, "report.json", "[]");
      await symlink(folder, join(root, "way"));
      await symlink(input, join(root, "alias.json"));
      await link(input, join(root, "twin.json"));
      for (const way of [
        input,
        join(root, "way/report.json"),
        join(root, "alias.json"),
        join(root, "twin.json"),
      ])
        for (const replace of [false, true]) {
          const message = await refusal(
            write(folder, { "report.json": "{}" }, { inputs: [way], replace }),
          );
          expect(message).toContain("Read by this command and never written over: report.json.");
        }
      expect(await text(input)).toBe("[]");
    });
  });

  it("never removes a file that is read, though it wrote it once", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "a.md": "1", "b.md": "1" });
      await write(folder, { "a.md": "2" }, { inputs: [join(folder, "b.md")] });
      expect(await text(folder, "b.md")).toBe("1");
    });
  });

  it("never writes through a link, of a file or of a folder", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "out");
      const elsewhere = join(root, "elsewhere");
      await mkdir(folder);
      await mkdir(elsewhere);
      await fileWith(elsewhere, "a.md", "theirs");
      await symlink(join(elsewhere, "a.md"), join(folder, "a.md"));
      await symlink(elsewhere, join(folder, "charts"));
      await symlink(join(elsewhere, "not-there"), join(folder, "b.md"));
      for (const name of ["a.md", "charts/c.json", "b.md"]) {
        const message = await refusal(write(folder, { [name]: "x" }, { replace: true }));
        expect(message).toContain(`Links to somewhere else: ${name.split("/")[0]}.`);
      }
      expect(await text(elsewhere, "a.md")).toBe("theirs");
      expect(await filesIn(elsewhere)).toEqual(["a.md"]);
    });
  });

  it("writes into a folder that is reached by a link", async () => {
    await inFolder(async (root) => {
      await mkdir(join(root, "real"));
      await symlink(join(root, "real"), join(root, "way"));
      await write(join(root, "way"), { "a.md": "1" });
      expect(await text(root, "real", "a.md")).toBe("1");
    });
  });

  it("refuses a folder in the place of a file, and a file in the place of a folder", async () => {
    await inFolder(async (folder) => {
      await mkdir(join(folder, "report.md"));
      await fileWith(folder, "charts", "");
      const files = { "report.md": "", "charts/a.json": "" };
      const message = await refusal(write(folder, files, { replace: true }));
      expect(message).toContain("In the way, and no files: report.md.");
      expect(message).toContain("In the way, and no folders: charts.");
      const taken = await fileWith(folder, "taken", "");
      expect(await refusal(write(taken, { "a.md": "" }))).toContain(
        "a folder that can be written to",
      );
    });
  });

  it("leaves old files whole and nothing unfinished when a file cannot be written", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "a.md": "1", "b.md": "1" });
      const tooLong = `charts/${"n".repeat(300)}.json`;
      await refusal(
        write(folder, { "a.md": "2", "c.md": "2", "deep/er/d.md": "2", [tooLong]: "" }),
      );
      expect(await text(folder, "a.md")).toBe("1");
      expect(await filesIn(folder)).toEqual(["a.md", "b.md", manifestName]);
    });
  });

  it("takes what is unfinished along when a signal ends it", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "out");
      await write(folder, { "a.md": "old" });
      const source = (path: string) =>
        JSON.stringify(new URL(`../../src/${path}`, import.meta.url).pathname);
      const script = `import { writeOutput } from ${source("cli/output.ts")};
        import { command as say } from ${source("wording/en/command.ts")};
        const files = { "a.md": "new" };
        for (let i = 0; i < 50000; i++) files["many/" + i] = "x".repeat(1000);
        await writeOutput({ command: "report", folder: ${JSON.stringify(folder)}, files, inputs: [], replace: false }, say);`;
      const child = spawn(process.execPath, [
        "--import",
        "tsx",
        "--input-type=module",
        "-e",
        script,
      ]);
      const ended = new Promise<NodeJS.Signals | null>((resolve) =>
        child.on("exit", (_, signal) => resolve(signal)),
      );
      const begun = async () =>
        (await readdir(join(folder, "many")).catch(() => [])).some((name) => name.endsWith(".tmp"));
      while (child.exitCode === null && !(await begun()))
        await new Promise((resolve) => setTimeout(resolve, 5));
      child.kill("SIGTERM");
      expect(await ended).toBe("SIGTERM");
      expect(await text(folder, "a.md")).toBe("old");
      expect((await filesIn(folder)).filter((name) => name.endsWith(".tmp"))).toEqual([]);
    });
  });

  it("leaves the files of another command alone, and remembers them", async () => {
    await inFolder(async (folder) => {
      await write(folder, { "columns.md": "what", "sheet.csv": "" }, { command: "template" });
      await write(folder, { "report.md": "1" });
      await write(folder, { "report.md": "2" });
      expect(await text(folder, "columns.md")).toBe("what");
      await write(folder, { "columns.md": "new" }, { command: "template" });
      expect(await filesIn(folder)).toEqual(["columns.md", manifestName, "report.md"].sort());
    });
  });

  it("believes no manifest that points outside, or is none", async () => {
    await inFolder(async (root) => {
      const folder = join(root, "out");
      await mkdir(folder);
      const outside = await fileWith(root, "precious", "1");
      const sha256 = createHash("sha256").update("1").digest("hex");
      const entry = { command: "report", sha256 };
      const files = { "../precious": entry, [outside]: entry, "a/../../precious": entry };
      await fileWith(folder, manifestName, JSON.stringify({ kind: "evencatch-manifest", files }));
      await write(folder, { "a.md": "1" });
      expect(await text(outside)).toBe("1");
      await fileWith(folder, manifestName, "notes of my own");
      expect(await refusal(write(folder, { "a.md": "1" }))).toContain(
        `: ${manifestName}. To go on`,
      );
    });
  });
});

describe("evencatch report, writing", () => {
  const header = "bin,product,fill,catch,turns,net_kg\n";
  const row = { bin: "1", product: "pea", fill: 1, turns: 20, net_kg: 6 };

  it("keeps its hands off catches that are called as its own files are", async () => {
    await inFolder(async (folder) => {
      const json = JSON.stringify([
        { ...row, catch: 1 },
        { ...row, catch: 2, net_kg: 6.1 },
      ]);
      const catches = await fileWith(folder, "report.json", json);
      for (const more of [[], ["--replace"]]) {
        const { code, err, out } = await command("report", catches, "--out", folder, ...more);
        expect(code).toBe(2);
        expect(out).toBe("");
        expect(err).toContain("Read by this command and never written over: report.json.");
      }
      expect(await text(catches)).toBe(json);
      expect(await filesIn(folder)).toEqual(["report.json"]);
    });
  });

  it("keeps its hands off catches and setups below the folder it writes into", async () => {
    await inFolder(async (folder) => {
      await mkdir(join(folder, "tables"));
      const rows = `${header}1,pea,1,1,20,6\n1,pea,1,2,20,6.1\n`;
      const catches = await fileWith(folder, "tables/catches.csv", rows);
      const first = await command("report", catches, "--tables", "--out", folder, "--replace");
      expect(first.code).toBe(2);
      expect(first.err).toContain(
        "Read by this command and never written over: tables/catches.csv.",
      );
      const setup = await fileWith(folder, "tables/estimates.json", "{}");
      const elsewhere = join(dirname(folder), `${folder.split("/").pop()}.csv`);
      await rename(catches, elsewhere);
      try {
        const flags = ["--setup", setup, "--tables", "--out", folder, "--replace"];
        const second = await command("report", elsewhere, ...flags);
        expect(second.code).toBe(2);
        expect(second.err).toContain(
          "Read by this command and never written over: tables/estimates.json.",
        );
      } finally {
        await rename(elsewhere, catches);
      }
    });
  });

  it("works twice in a row, and clears away what it does not write any more", async () => {
    await inFolder(async (folder) => {
      const out = join(folder, "report");
      expect((await command("report", morning, "--tables", "--out", out)).code).toBe(0);
      expect(await filesIn(out)).toContain("tables/catches.csv");
      await writeFile(join(out, "tables", "catches.md"), "my own words");
      const again = await command("report", morning, "--out", out);
      expect(again.code).toBe(0);
      expect(again.err).toContain("kept tables/catches.md");
      expect((await filesIn(out)).filter((name) => name.startsWith("tables"))).toEqual([
        "tables",
        "tables/catches.md",
      ]);
    });
  });
});
