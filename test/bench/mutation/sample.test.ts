import { describe, expect, it } from "vitest";
import type { Mutant } from "../../../bench/mutation/mutants.ts";
import { sampleOf } from "../../../bench/mutation/sample.ts";
import { randomStream } from "../../../src/numeric/random.ts";

const onLine = (file: string, line: number, start: number): Mutant => ({
  file,
  line,
  start,
  end: start,
  put: "",
  change: "",
});

describe("a sample of changes", () => {
  it("draws every line before it draws one again, and nothing twice", () => {
    const crowded = Array.from({ length: 50 }, (_, start) => onLine("a.ts", 1, start));
    const files = [crowded, [onLine("b.ts", 1, 0), onLine("b.ts", 2, 1)]];
    const three = sampleOf(files, 3, randomStream(1));
    expect(three.map(({ file, line }) => `${file}:${line}`).toSorted()).toEqual([
      "a.ts:1",
      "b.ts:1",
      "b.ts:2",
    ]);
    const all = sampleOf(files, 1000, randomStream(1));
    expect(new Set(all).size).toBe(52);
  });

  it("is the same for the same seed, and another for another", () => {
    const lines = Array.from({ length: 50 }, (_, line) => onLine("a.ts", line, line));
    const drawn = (seed: number) =>
      sampleOf([lines], 5, randomStream(seed)).map(({ line }) => line);
    expect(drawn(1)).toEqual(drawn(1));
    expect(drawn(1)).not.toEqual(drawn(2));
  });
});
