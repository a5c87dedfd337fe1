import { copyFile, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { randomStream } from "../../src/numeric/random.ts";
import { command, demo, filesIn, fileWith, inFolder } from "../support/command.ts";
import { inventedFills } from "../support/simulated-fills.ts";

const morning = demo("first-morning/catches.csv");

/** A folder with the catches of one morning and, beside them, a setup with this text. */
function withSetup<T>(setup: string, work: (catches: string, folder: string) => Promise<T>) {
  return inFolder(async (folder) => {
    const catches = join(folder, "catches.csv");
    await copyFile(morning, catches);
    await fileWith(folder, "setup.json", setup);
    return work(catches, folder);
  });
}

const said = (folder: string) =>
  `Setup: ${join(folder, "setup.json")}, found beside the catches (--no-setup leaves it out)`;

describe("a setup.json beside the catches", () => {
  it("is used and named by every command that reads catches", async () => {
    await withSetup('{"tolerance_percent": 4}', async (catches, folder) => {
      const report = await command("report", catches, "--json", "--out", join(folder, "out"));
      expect(report.err).toContain(said(folder));
      expect(JSON.parse(report.out).options.tolerance).toBe(0.04);
      const markdown = await readFile(join(folder, "out", "report.md"), "utf8");
      expect(markdown).toContain("**Setup:** setup.json, SHA-256");

      const enough = await command("enough", catches, "--json");
      expect(enough.err).toBe(said(folder));
      expect(JSON.parse(enough.out).answers[0].catchesNeeded.options.tolerance).toBe(0.04);

      const check = await command("check", catches);
      expect([check.code, check.err]).toEqual([0, said(folder)]);
    });
  });

  it("is left alone when told to, and when another is given", async () => {
    await withSetup('{"tolerance_percent": 4}', async (catches, folder) => {
      const other = await fileWith(folder, "other.json", '{"tolerance_percent": 2}');
      for (const [flags, tolerance] of [
        [["--no-setup"], 0.05],
        [["--setup", other], 0.02],
      ] as const) {
        const { out, err } = await command("enough", catches, "--json", ...flags);
        expect(err).toBe("");
        expect(JSON.parse(out).answers[0].catchesNeeded.options.tolerance).toBe(tolerance);
      }
    });
  });

  it("is refused like any when it is broken, and nothing is written", async () => {
    await withSetup('{"tolerance": 4}', async (catches, folder) => {
      for (const name of ["report", "enough", "check"]) {
        const flags = name === "report" ? ["--out", join(folder, "out")] : [];
        const { code, err } = await command(name, catches, ...flags);
        expect(code).toBe(2);
        expect(err).toContain(said(folder));
        expect(err).toContain("tolerance_percent");
        expect((await command(name, catches, "--no-setup", ...flags)).code).toBe(0);
      }
    });
  });

  it("is refused in the language asked for", async () => {
    await withSetup('{"tolerance": 4}', async (catches, folder) => {
      const setup = join(folder, "setup.json");
      for (const name of ["report", "enough", "check"]) {
        const { code, err } = await command(name, catches, "--language", "de");
        expect(code).toBe(2);
        expect(err).toContain(`${setup}: 1 Problem\n${setup}, bei tolerance: gefunden`);
        expect(err).toContain("Ändern Sie ihn in tolerance_percent, wenn das gemeint ist");
      }
    });
  });

  it("is an input: nothing is written over it", async () => {
    await withSetup("{}", async (catches, folder) => {
      const { code, err } = await command("template", folder);
      expect(code).toBe(2);
      expect(err).toContain("setup.json");
      expect(await filesIn(folder)).toEqual(["catches.csv", "setup.json"]);
      expect((await command("check", catches)).code).toBe(0);
    });
  });

  it("may name its schema, and asks about names that are nearly those of the catches", async () => {
    const setup = { $schema: "setup.schema.json", bins: [{ bin: "1", product: "barly" }] };
    await withSetup(JSON.stringify(setup), async (catches, folder) => {
      const question =
        'Product "barly" of the setup has no catches in bin 1; did you mean "barley"?';
      expect((await command("enough", catches)).err).toContain(question);
      await command("report", catches, "--out", join(folder, "out"));
      expect(await readFile(join(folder, "out", "report.html"), "utf8")).toContain("did you mean");
    });
  });
});

describe("a file of catches without a setup beside it", () => {
  it("is read as it is, even when it is called as a setup is", async () => {
    await inFolder(async (folder) => {
      const row = { bin: "1", product: "pea", fill: 1, turns: 20 };
      const rows = [6, 6.1].map((net, i) => ({ ...row, catch: i + 1, net_kg: net }));
      const path = await fileWith(folder, "setup.json", JSON.stringify(rows));
      const { code, err } = await command("enough", path);
      expect([code, err]).toEqual([0, ""]);
    });
  });
});

describe("areas", () => {
  const perHectare = 400;
  const stream = randomStream(3);
  const bins = Array.from({ length: 8 }, (_, i) => `B${i + 1}`);
  const log = bins
    .flatMap((bin) =>
      inventedFills({ fills: 3, catches: 3, spread: 0.02, scatter: 0.01, bin }, stream),
    )
    .map((one) => [one.bin, one.product, one.fill, one.catch, one.turns / perHectare, one.netKg])
    .map((row) => row.join())
    .join("\n");
  it.each([
    ["report", "--out", "out"],
    ["enough"],
    ["check"],
    ["sheet", "--out", "sheets"],
    ["spreads", "--out", "spreads.json"],
  ])("are turns by the setup in %s", async (name, ...args) => {
    await inFolder(async (folder) => {
      const path = await fileWith(
        folder,
        "log.csv",
        `bin,product,fill,catch,area_ha,net_kg\n${log}`,
      );
      await fileWith(
        folder,
        "setup.json",
        JSON.stringify({ bins: bins.map((bin) => ({ bin, turns_per_hectare: perHectare })) }),
      );
      const given = args.map((one) => (one.startsWith("--") ? one : join(folder, one)));
      const { code, err } = await command(name, path, ...given);
      expect([code, err]).toEqual([0, expect.not.stringContaining("area")]);
    });
  });
});
