import { describe, expect, it } from "vitest";
import { command, demo } from "../support/command.ts";

const season = [demo("season/catches.csv"), "--setup", demo("season/setup.json")];

describe("evencatch enough", () => {
  it("says for each bin whether today's catches are enough", async () => {
    const { code, out } = await command("enough", ...season, "--tolerance", "2%");
    expect(code).toBe(0);
    for (const bin of ["front", "middle", "rear"]) expect(out).toContain(`Bin ${bin} (`);
    expect(out).toContain("tolerance of ±");
  });

  it("says how many more it takes when they are not", async () => {
    const { out } = await command("enough", demo("first-morning/catches.csv"), "--tolerance", "1%");
    expect(out).toMatch(/more catch|not likely enough/);
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

  it("prints its answers for machines", async () => {
    const { out } = await command("enough", ...season, "--json", "--next");
    const answers = JSON.parse(out);
    expect(answers).toHaveLength(3);
    expect(answers[0]).toMatchObject({ kind: "catches-needed", fill: null });
  });

  it("refuses a number that is none", async () => {
    const { code, err } = await command("enough", "--minutes", "soon");
    expect(code).toBe(2);
    expect(err).toContain("above zero");
  });
});
