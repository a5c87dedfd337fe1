import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { readCatches } from "../../src/data/read-catches.ts";
import { checkCatchesTogether, readCatchesTogether } from "../../src/data/read-together.ts";
import { csv, logOf, problemsOf } from "../support/catch-files.ts";
import { wordsBy } from "../support/words.ts";

const head = "bin,product,fill,catch,turns,net_kg";
const file = (name: string, ...lines: readonly string[]) => ({ name, text: lines.join("\n") });
const north = file("north.csv", head, "1,oats,1,1,20,6.30", "1,oats,1,2,20,6.36");
const south = file("south.csv", "", head.replace("kg", "g"), "2,peas,1,1,20,8100");

describe("several files of catches", () => {
  it("are one log, whose rows are counted through them", async () => {
    const log = await readCatchesTogether([north, south]);
    expect(log.catches.map(({ row, bin, netKg }) => [row, bin, netKg])).toEqual([
      [2, "1", 6.3],
      [3, "1", 6.36],
      [4, "2", 8.1],
    ]);
    expect(log.written?.map(({ row, net }) => [row, net])).toEqual([
      [2, "6.30"],
      [3, "6.36"],
      [4, "8100"],
    ]);
    const told = log.cautions.find(({ code }) => code === "files-read-together");
    expect(told?.facts).toEqual({ files: ["north.csv", "south.csv"], firstRows: [2, 4] });
  });

  it("are refused where every catch of every one is left out, and read where one counts", async () => {
    const marked = `${head},Weglassen,Grund`;
    const one = file("one.csv", marked, "1,oats,1,1,20,6.30,ja,Sack", "1,oats,1,2,20,6.36,ja,Sack");
    const other = file("other.csv", marked, "1,oats,2,1,20,6.30,ja,Wind");
    const check = await checkCatchesTogether([one, other]);
    const issues = check.ok ? [] : check.issues;
    expect(issues.map(({ source, row, column }) => [source, row, column])).toEqual([
      ["one.csv", 2, "Weglassen"],
      ["one.csv", 3, "Weglassen"],
      ["other.csv", 2, "Weglassen"],
    ]);
    expect(new Set(issues.map(({ problem }) => problem))).toEqual(new Set(["all-excluded"]));
    expect((await checkCatchesTogether([one, south])).ok).toBe(true);
  });

  it("answer as one file with the same rows does", async () => {
    const together = await readCatchesTogether([
      north,
      file("more.csv", head, "1,oats,1,3,20,6.33"),
    ]);
    const one = await logOf(
      csv(head, "1,oats,1,1,20,6.30", "1,oats,1,2,20,6.36", "1,oats,1,3,20,6.33"),
    );
    expect(together.catches).toEqual(one.catches);
    expect(analyse(together).meters[0]?.delivery.estimate).toEqual(
      analyse(one).meters[0]?.delivery.estimate,
    );
  });

  it("tell machines and seasons apart by keys, the same for all or by the name of each", async () => {
    const twin = { ...north, name: "twin.csv" };
    const byName = await readCatchesTogether([north, twin], {
      keys: (name) => ({ machine: name.replace(".csv", ""), season: "2026" }),
    });
    expect(byName.catches.map((row) => [row.machine, row.season, row.catch])).toEqual([
      ["north", "2026", 1],
      ["north", "2026", 2],
      ["twin", "2026", 1],
      ["twin", "2026", 2],
    ]);
    expect(analyse(byName).meters.map(({ delivery }) => delivery.bin)).toEqual([
      "1/north",
      "1/twin",
    ]);
    const all = await readCatchesTogether([north, south], { keys: { farm: "Hill" } });
    expect(all.catches.map(({ farm }) => farm)).toEqual(["Hill", "Hill", "Hill"]);
  });

  it("need a machine in each where one names it", async () => {
    const named = file("named.csv", `${head},machine`, "2,peas,1,1,20,8.1,east");
    const check = await checkCatchesTogether([north, named]);
    expect(check.ok ? [] : check.issues.map(({ problem, source }) => [problem, source])).toEqual([
      ["key-missing", "north.csv"],
      ["key-missing", "north.csv"],
    ]);
  });

  it("of one is that file", async () => {
    expect(await readCatchesTogether([south])).toEqual(await readCatches(south));
  });

  it("are refused with what is wrong in each and between them, where it lies", async () => {
    const twin = file("twin.csv", "", "", head, "1,oats,1,2,20,6.4");
    const check = await checkCatchesTogether([north, twin]);
    const issues = check.ok ? [] : check.issues;
    expect(issues.map(({ text }) => text)).toEqual([
      "twin.csv, row 4, column catch: found a catch that stands in north.csv too; needed each catch once. Two machines, or two seasons? If the file is named by it, say so, such as `--key season=file`. Otherwise leave one of them out, or give its catches numbers of their own.",
    ]);
    for (const issue of issues)
      expect(wordsBy.de.problems.text(issue)).toContain("die auch in north.csv steht");
    const broken = file("broken.csv", head, "1,oats,2,1,0,6.4");
    await expect(readCatchesTogether([broken, twin])).rejects.toThrow("broken.csv, row 2");
  });
});

describe("a catch that was spilled", () => {
  const columns = `${head},exclude,reason`;

  it("may be all there is in one of several files, but not in all of them", async () => {
    const spilled = file("spilled.csv", columns, "1,oats,1,3,,,yes,bag tore");
    const log = await readCatchesTogether([north, spilled]);
    expect([log.catches.length, log.missed?.map(({ row }) => row)]).toEqual([2, [4]]);
    expect(log.cautions.map(({ code }) => code)).toContain("catch-without-mass");
    const check = await checkCatchesTogether([spilled, { ...spilled, name: "more.csv" }]);
    expect(
      check.ok ? [] : check.issues.map(({ problem, source, row }) => [problem, source, row]),
    ).toEqual([
      ["mass-missing", "spilled.csv", 2],
      ["mass-missing", "more.csv", 2],
    ]);
  });

  it("stands first where its file does: what is there again is a catch of the later file", async () => {
    const spilled = file("spilled.csv", columns, "1,oats,1,1,,,yes,bag tore");
    const weighed = file("weighed.csv", "", head, "1,oats,1,1,20,6.30");
    const check = await checkCatchesTogether([spilled, weighed, north]);
    expect(
      check.ok ? [] : check.issues.map(({ source, row, text }) => [source, row, text]),
    ).toEqual([
      ["weighed.csv", 3, expect.stringContaining("a catch that stands in spilled.csv too")],
      ["north.csv", 2, expect.stringContaining("a catch that stands in spilled.csv too")],
    ]);
  });

  it("may stand in the log without a mass, left out, and is told on every surface", async () => {
    const log = await logOf(csv(columns, "1,oats,1,1,20,6.3,,", "1,oats,1,2,,,yes,bag tore"));
    expect(log.catches).toHaveLength(1);
    expect(log.missed).toEqual([
      {
        row: 3,
        ...{ farm: null, machine: null, season: null },
        ...{ bin: "1", product: "oats", fill: 1, catch: 2, outlet: null },
        reason: "bag tore",
      },
    ]);
    const analysis = analyse(log);
    expect(analysis.cautions.map(({ code }) => code)).toContain("catch-without-mass");
    for (const words of Object.values(wordsBy))
      expect(
        words.cautions["catch-without-mass"](
          { reason: "bag tore" },
          {
            bin: "1",
            product: "oats",
            fill: 1,
            catches: [2],
          },
        ),
      ).toContain("(bag tore)");
  });

  it("is named with its machine and season where the log holds several", async () => {
    const log = await logOf(
      csv(
        `machine,season,${columns}`,
        "north,2025,1,oats,1,1,20,6.3,,",
        "south,2026,1,oats,1,1,20,6.3,,",
        "south,2026,1,oats,1,2,,,yes,bag tore",
      ),
    );
    const told = log.cautions.find(({ code }) => code === "catch-without-mass");
    expect(told?.where).toEqual({ bin: "1/south", product: "oats", fill: "1/2026", catches: [2] });
  });

  it("counts among the numbers of its fill", async () => {
    const rows = ["1,oats,1,1,20,6.3,,", "1,oats,1,1,20,,yes,bag tore"];
    expect(await problemsOf(csv(columns, ...rows))).toEqual([
      expect.stringContaining("row 3, column catch: found catch 1 of bin 1, oats, fill 1 again"),
    ]);
  });

  it("needs yes and a reason, and a log needs a mass", async () => {
    const [missing] = await problemsOf(csv(columns, "1,oats,1,1,20,6.3,,", "1,oats,1,2,20,,,"));
    expect(missing).toContain("needed a net mass, or gross and tare");
    const all = await problemsOf(csv(columns, "1,oats,1,1,20,,yes,bag tore"));
    expect(all[0]).toContain("needed a net mass, or gross and tare");
    const noReason = await problemsOf(csv(columns, "1,oats,1,1,20,6.3,,", "1,oats,1,2,20,,yes,"));
    expect(noReason.join()).toContain("the reason why this catch is left out");
  });
});
