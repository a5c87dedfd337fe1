import { describe, expect, it } from "vitest";
import {
  commandOf,
  type ProgramName,
  printedBy,
  programs,
} from "../../../notebooks/support/programs.ts";

const two: Readonly<Record<ProgramName, readonly [code: string, failing: string]>> = {
  R: ["cat(1 + 1, '\\n')", "stop('the bag was empty')"],
  pandas: ["print(1 + 1)", "raise ValueError('the bag was empty')"],
};

describe.each(Object.keys(programs) as ProgramName[])("code in %s", (name) => {
  const [code, failing] = two[name];

  it("prints, and says where it fails", ({ skip }) => {
    if (commandOf(name) === null) {
      const reason = `${programs[name].needs} is not on this machine`;
      if (process.env.CI) throw new Error(reason);
      skip(reason);
    }
    expect(printedBy(name, code)).toBe("2");
    expect(() => printedBy(name, failing)).toThrow("the bag was empty");
  });
});

it("code is skipped, and says so, where its language is missing", () => {
  expect(printedBy("R", "cat(2)", null)).toBe("Skipped: R with jsonlite is not on this machine.");
});

it("a command that is not there is told from code that fails", () => {
  expect(() => printedBy("R", "cat(2)", "no-such-command")).toThrow("no-such-command");
});
