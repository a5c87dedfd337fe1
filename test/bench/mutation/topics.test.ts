import { describe, expect, it } from "vitest";
import { topics } from "../../../bench/mutation/topics.ts";

const { files, testsOf } = topics();

describe("tests of a topic", () => {
  it("begin with the one of the module's own name", () => {
    expect(testsOf("src/statistics/mann-kendall.ts")[0]).toBe(
      "test/statistics/mann-kendall.test.ts",
    );
  });

  it("are those of the layers alone: no sample report, page or command", () => {
    const all = new Set(files.flatMap(testsOf));
    expect(all.size).toBeGreaterThan(100);
    for (const test of all)
      expect(test).toMatch(/^test\/(numeric|statistics|model|questions|data|analysis)\//);
  });
});
