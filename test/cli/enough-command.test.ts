import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { command, demo, fileWith, inFolder } from "../support/command.ts";
import { present } from "../support/reference.ts";

const season = [demo("season/catches.csv"), "--setup", demo("season/setup.json")];

const plain = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, " ");

describe("evencatch enough", () => {
  it("says for each bin whether today's catches are enough", async () => {
    const { code, out } = await command("enough", ...season, "--tolerance", "2%", "--detail");
    expect(code).toBe(0);
    for (const bin of ["1", "2", "3"]) expect(out).toContain(`Bin ${bin} (`);
    expect(out).toContain("tolerance of ±");
  });

  it("gives for each bin the decision of the report, then what stands behind the number", async () => {
    const { out } = await command("enough", ...season);
    await inFolder(async (folder) => {
      const report = await command("report", ...season, "--out", folder);
      for (const bin of ["1", "2", "3"]) {
        const line = report.out.split("\n").find((one) => one.startsWith(`Bin ${bin} (`));
        expect(out).toContain(`${line}\n`);
      }
      const tolerance = report.out.trimEnd().split("\n").at(-1);
      expect(out.trimEnd().endsWith(present(tolerance))).toBe(true);
    });
  });

  it("calls a step of the drive assumed where another one was caught", async () => {
    await inFolder(async (folder) => {
      const rows = [6.36, 6.48, 6.4, 6.41, 6.38, 6.42].map((net) => `20,${net}`);
      const catches = await fileWith(folder, "catches.csv", ["turns,net_kg", ...rows].join("\n"));
      const steps = { steps: [0.5, 0.7, 0.9], step_names: ["low", "middle", "high"] };
      const asked = async (caught: string) => {
        const drive = { kind: "ground-wheel", ...steps, caught_step: caught };
        const cart = {
          working_width: { value: 9, unit: "m" },
          wheel_circumference: { value: 2.2, unit: "m" },
        };
        const bins = [{ bin: "1", target_rate: { value: 118, unit: "kg/ha" }, drive }];
        const setup = JSON.stringify({ tolerance_percent: 8, cart, bins });
        const file = await fileWith(folder, "setup.json", setup);
        return plain((await command("enough", catches, "--setup", file)).out).split("\n")[0];
      };
      // 0.3204 kg/turn × ratio ÷ (2.2 m × 9 m) × 10,000 m²/ha: 113 kg/ha at 0.7, the nearest to 118.
      expect(await asked("middle")).toMatch(/: Set step middle \(0\.7\)$/);
      expect(await asked("low")).toMatch(/: Set step middle \(0\.7\), assumed$/);
    });
  });

  it("says how many more it takes when they are not enough, or that no number is likely to do", async () => {
    const catches = demo("first-morning/catches.csv");
    const ask = async (tolerance: string) =>
      plain((await command("enough", catches, "--tolerance", tolerance)).out);
    expect(await ask("3%")).toMatch(/: \d more catches of \d+ turns\n/);
    expect(await ask("0.3%")).toContain("is not likely to be reached with 8 catches of at most");
  });

  it("names the division it read from the weights, as report does, in every form of the question", async () => {
    await inFolder(async (folder) => {
      const rows = ["13.45", "13.20", "13.60"].map((net, i) => `1,pea,1,${i + 1},20,${net}`);
      const text = ["bin,product,fill,catch,turns,net_lb", ...rows].join("\n");
      const catches = await fileWith(folder, "catches.csv", text);
      const said = "Scale division 0.05 lb (read from your figures; give your own in the setup).";
      const report = await command("report", catches, "--units", "us", "--out", `${folder}/out`);
      const asked = await command("enough", catches, "--units", "us");
      const next = await command("enough", catches, "--units", "us", "--next");
      for (const { out } of [report, asked, next]) expect(plain(out)).toContain(said);
      const markdown = await readFile(join(folder, "out", "report.md"), "utf8");
      expect(plain(markdown)).toContain("0.05 lb (read from your figures)");
      expect(plain(markdown)).toContain("Your weights end in steps of 0.05 lb");
      const german = await command("enough", catches, "--language", "de");
      expect(plain(german.out)).toContain(
        "Teilung der Waage 0,05 lb (aus Ihren Zahlen abgelesen; geben Sie Ihre in der Setup-Datei an).",
      );

      const json = async (...flags: string[]) =>
        JSON.parse((await command("enough", catches, "--json", ...flags)).out);
      const { scaleDivision } = JSON.parse(
        await readFile(join(folder, "out", "report.json"), "utf8"),
      );
      expect(scaleDivision).toMatchObject({ from: "figures", read: { step: 0.05, unit: "lb" } });
      for (const answer of [await json(), await json("--next")]) {
        expect(answer.scaleDivision).toEqual(scaleDivision);
        expect(answer.answers[0].catchesNeeded.options.scaleDivisionKg).toBe(
          scaleDivision.read.divisionKg,
        );
      }
      const planned = JSON.parse((await command("enough", "--json")).out);
      expect(planned.scaleDivision).toEqual({ from: "unknown", read: null });
    });
  });

  it("names who gave the tolerance", async () => {
    const catches = demo("first-morning/catches.csv");
    const last = async (...flags: string[]) =>
      plain((await command("enough", catches, ...flags)).out)
        .trimEnd()
        .split("\n")
        .at(-1);
    expect(await last("--tolerance", "2%")).toBe("Tolerance ± 2.0 % (as asked for).");
    expect(await last()).toBe("Tolerance ± 3.0 % (from the setup).");
    await inFolder(async (folder) => {
      const alone = await fileWith(
        folder,
        "catches.csv",
        "bin,product,fill,catch,turns,net_kg\n1,pea,1,1,20,6\n",
      );
      const { out } = await command("enough", alone);
      expect(plain(out)).toContain(
        "Tolerance ± 5.0 % (assumed; give your own with --tolerance or in the setup).",
      );
    });
  });

  it("names old names of a setup before any catch too", async () => {
    await inFolder(async (folder) => {
      const setup = join(folder, "setup.json");
      await writeFile(setup, JSON.stringify({ cart: { skid_percent: 3 } }));
      const { code, err } = await command("enough", "--setup", setup);
      expect(code).toBe(0);
      expect(err).toContain("cart.skid_percent is now called cart.slip_percent");
    });
  });

  it("plans before any catch, and says that its scatter is assumed", async () => {
    const { code, out } = await command("enough", "--tolerance", "3%");
    expect(code).toBe(0);
    expect(out).toContain("Before any catch");
    expect(out).toContain("assumed");
  });

  it("spends minutes and a trial's budget", async () => {
    const { out } = await command("enough", ...season, "--minutes", "10", "--trial-budget", "200");
    expect(out).toContain("In 10 minutes");
    expect(out).toContain("For a trial the budget goes furthest");
  });

  it("prints its answers for machines, a sentence beside every finding", async () => {
    const { out } = await command("enough", ...season, "--json");
    const { kind, answers } = JSON.parse(out);
    expect(kind).toBe("enough");
    expect(answers).toHaveLength(3);
    for (const { bin, product, fill, decision, noDecision, answered, catchesNeeded } of answers) {
      expect(catchesNeeded).toMatchObject({ kind: "catches-needed", bin, product, fill });
      expect(["look-first", "catch-more", "set"]).toContain(decision.action);
      expect(noDecision).toBeNull();
      expect(answered).toEqual([]);
      for (const { code, text } of catchesNeeded.cautions) {
        expect(code).not.toBe("");
        expect(text).toMatch(/\.$/);
      }
    }
  });

  it("plans the fill still to come, of which nothing is decided", async () => {
    const { out } = await command("enough", ...season, "--json", "--next");
    const { answers } = JSON.parse(out);
    expect(answers).toHaveLength(3);
    for (const { fill, decision, catchesNeeded } of answers) {
      expect([fill, decision]).toEqual([null, null]);
      expect(catchesNeeded).toMatchObject({ kind: "catches-needed", fill: null });
      expect(catchesNeeded.curve.points[0].basis).toBe("earlier fills");
    }
    const text = plain((await command("enough", ...season, "--next")).out);
    expect(text).toContain("the next fill: ");
    expect(text).not.toContain("Look first");
  });

  it("plans the next fill from those since the meter was opened, as the report's next fill", async () => {
    const masses = [6.1, 6.12, 6.15, 7.4, 7.38, 7.45];
    const rows = masses.flatMap((kg, i) =>
      [0, 0.02, -0.02].map((off, j) => `1,pea,${i + 1},${j + 1},20,${(kg + off).toFixed(2)}`),
    );
    const setup = { bins: [{ bin: "1", product: "pea", starts_afresh: 6 }] };
    await inFolder(async (folder) => {
      const [path, own] = [join(folder, "log.csv"), join(folder, "own.json")];
      await writeFile(path, `bin,product,fill,catch,turns,net_kg\n${rows.join("\n")}\n`);
      await writeFile(own, JSON.stringify(setup));
      const next = await command("enough", path, "--setup", own, "--json", "--next");
      const { answers } = JSON.parse(next.out);
      await command("report", path, "--setup", own, "--out", join(folder, "out"));
      const report = JSON.parse(await readFile(join(folder, "out/report.json"), "utf8"));
      const { nextFill } = report.meters[0].acrossFills;
      expect(answers[0].catchesNeeded.curve.points[0].halfWidth).toBeCloseTo(
        nextFill.interval.upper / nextFill.value - 1,
        12,
      );
    });
  });

  it("refuses a number that is none", async () => {
    const { code, err } = await command("enough", "--minutes", "soon");
    expect(code).toBe(2);
    expect(err).toContain("above zero");
  });
});
