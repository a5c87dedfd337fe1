import { describe, expect, it } from "vitest";
import {
  parseAmount,
  parseAmounts,
  parseCatchKey,
  parseChance,
  parseChartFormats,
  parsePercent,
} from "../../src/cli/arguments.ts";
import { command, demo } from "../support/command.ts";
import { english } from "../support/words.ts";

const morning = demo("first-morning/catches.csv");
const say = english().usage.needed;

/** What an argument that must be refused says; the test fails when it is read. */
function refused(read: (text: string, needed: typeof say) => unknown, text: string): string {
  try {
    return `read as ${JSON.stringify(read(text, say))}`;
  } catch (error) {
    return (error as Error).message;
  }
}

describe("the formats of charts", () => {
  it.each([
    ["svg", ["svg"]],
    ["png", ["png"]],
    ["png, SVG", ["svg", "png"]],
    ["svg,svg", ["svg"]],
  ])("reads %j as %j", (text, formats) => {
    expect(parseChartFormats(text, say)).toEqual(formats);
  });

  it.each(["pdf", "svg,pdf", "", "svg,", "svg png"])(
    "refuses %j and names what there is",
    (text) => {
      expect(refused(parseChartFormats, text)).toBe(
        "It must be one or more of svg, png, with a comma between.",
      );
    },
  );
});

describe("a percentage of the command line", () => {
  it.each([
    ["3", 0.03],
    ["3%", 0.03],
    [" 3 % ", 0.03],
    ["3,5", 0.035],
    ["3.5%", 0.035],
    ["0.5%", 0.005],
    ["0,5%", 0.005],
    ["1", 0.01],
    ["12", 0.12],
  ])("reads %j as %d", (text, share) => {
    expect(parsePercent(text, say)).toBeCloseTo(share, 15);
  });

  it.each([
    ["0.03", "It may be 0.03 percent or 3 percent: write 0.03% or 3%."],
    ["0,5", "It may be 0.5 percent or 50 percent: write 0.5% or 50%."],
    ["1.500", "It can be read in two ways: write 1.5000 or 1500."],
    ["0", "above 0 %"],
    ["-3%", "above 0 %"],
    ["100", "below 100 %"],
    ["300%", "below 100 %"],
    ["many", 'such as "3%"'],
    ["3%%", 'such as "3%"'],
    ["", 'such as "3%"'],
    ["3,5,1", 'such as "3%"'],
  ])("refuses %j and says how to write it", (text, message) => {
    expect(refused(parsePercent, text)).toContain(message);
  });

  it.each([
    ["enough", "--tolerance"],
    ["report", "--tolerance"],
    ["report", "--margin"],
    ["plan", "--spread"],
    ["plan", "--difference"],
    ["plan", "--margin"],
  ])("is what %s takes for %s", async (name, option) => {
    const rest = name === "plan" ? ["wheat", "pea"] : [morning];
    const { code, err } = await command(name, ...rest, option, "0.03");
    expect(code).toBe(2);
    expect(err).toContain("write 0.03% or 3%");
  });

  it("means the same with and without its sign", async () => {
    const answers = ["3", "3%"].map((tolerance) =>
      command("enough", morning, "--json", "--tolerance", tolerance),
    );
    const [bare, signed] = await Promise.all(answers);
    expect(bare?.code).toBe(0);
    expect(JSON.parse(bare?.out ?? "").answers[0].catchesNeeded.options.tolerance).toBe(0.03);
    expect(bare?.out).toBe(signed?.out);
  });
});

describe("a chance of the command line", () => {
  it.each([
    ["95", 0.95],
    ["95%", 0.95],
    ["0.95", 0.95],
    ["0,95", 0.95],
    ["99.9", 0.999],
    ["0.5%", 0.005],
  ])("reads %j as %d", (text, share) => {
    expect(parseChance(text, say)).toBeCloseTo(share, 15);
  });

  it.each(["0", "100", "-5", "sure", "95.000"])("refuses %j", (text) => {
    expect(refused(parseChance, text)).not.toContain("read as");
  });

  it("is what level and assurance take, as their help says", async () => {
    for (const level of ["95", "95%", "0.95"])
      expect((await command("enough", "--level", level, "--assurance", "0.8")).code).toBe(0);
    const { out } = await command("enough", "--help");
    expect(out).toContain("95%, 95 or 0.95");
    expect(out).toContain("80%, 80 or 0.8");
  });
});

describe("a number of the command line", () => {
  it("is read as a number of a file is", () => {
    expect(["20", "20.4", "2e1"].map((text) => parseAmount(text, say))).toEqual([20, 20.4, 20]);
    expect(parseAmounts("20,40.5", say)).toEqual([20, 40.5]);
  });

  it.each([
    ["20,40", "one number, with a decimal point and without a comma, such as 20.40."],
    ["1,000", "one number, with a decimal point and without a comma, such as 1.0000 or 1000."],
    ["1,2,3", "one number, with a decimal point and without a comma."],
    ["1.000", "It can be read in two ways: write 1.0000 or 1000."],
    ["0x10", "a number above zero"],
    ["-4", "a number above zero"],
    ["Infinity", "a number above zero"],
  ])("is refused as %j", (text, message) => {
    expect(refused(parseAmount, text)).toContain(message);
  });

  it.each(["20,40", "1,000"])("is one where one is needed: %s turns are none", async (turns) => {
    const { code, err } = await command("enough", morning, "--turns", turns);
    expect(code).toBe(2);
    expect(err).toContain("--turns");
    expect(err).toContain("without a comma");
  });

  it("names a catch by bin, fill and catch", () => {
    expect(parseCatchKey("my:bin:4:2", say)).toEqual([{ bin: "my:bin", fill: 4, catch: 2 }]);
    expect(refused(parseCatchKey, "4")).toContain('such as "3:4:2"');
  });
});
