import { describe, expect, it } from "vitest";
import type { Mutant } from "../../../bench/mutation/mutants.ts";
import { sampleOf } from "../../../bench/mutation/sample.ts";

const onLine = (file: string, line: number, start: number): Mutant => ({
  file,
  line,
  start,
  end: start,
  put: "",
  change: "",
});
const byPlace = ({ file, start }: Mutant) => `${file} ${start}`;
const fifty = Array.from({ length: 50 }, (_, line) => onLine("a.ts", line, line));
const drawn = (files: readonly (readonly Mutant[])[], count: number, seed: number) =>
  sampleOf(files, count, seed, byPlace).map(byPlace);

describe("a sample of changes", () => {
  it("draws every line before it draws one again, and nothing twice", () => {
    const crowded = Array.from({ length: 50 }, (_, start) => onLine("a.ts", 1, start));
    const files = [crowded, [onLine("b.ts", 1, 0), onLine("b.ts", 2, 1)]];
    const three = sampleOf(files, 3, 1, byPlace);
    expect(three.map(({ file, line }) => `${file}:${line}`).toSorted()).toEqual([
      "a.ts:1",
      "b.ts:1",
      "b.ts:2",
    ]);
    expect(new Set(drawn(files, 1000, 1)).size).toBe(52);
  });

  it("is the same for the same seed, and another for another", () => {
    expect(drawn([fifty], 5, 1)).toEqual(drawn([fifty], 5, 1));
    expect(drawn([fifty], 5, 1)).not.toEqual(drawn([fifty], 5, 2));
  });

  it("stays as it was where code is added, but for what of that code comes in", () => {
    const before = drawn([fifty], 20, 1);
    const more = Array.from({ length: 5 }, (_, line) => onLine("b.ts", line, line));
    const after = drawn([more, fifty], 20, 1);
    const added = after.filter((name) => name.startsWith("b.ts"));
    expect(after.filter((name) => !name.startsWith("b.ts"))).toEqual(
      before.slice(0, before.length - added.length),
    );
  });
});
