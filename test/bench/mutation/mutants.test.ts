import { describe, expect, it } from "vitest";
import { mutantsOf, mutated } from "../../../bench/mutation/mutants.ts";

const changed = (text: string) => mutantsOf("a.ts", text).map((one) => mutated(text, one));

describe("small changes of code", () => {
  it("move bounds, turn signs and comparisons round, and change figures", () => {
    expect(changed("a < b;")).toEqual(["a <= b;"]);
    expect(changed("-a;")).toEqual(["a;"]);
    expect(changed("a === b;")).toEqual(["a !== b;"]);
    expect(changed("a && !b;")).toEqual(["a || !b;", "a && b;"]);
    expect(changed("f = [0, 2, 400, 0.5, true];")).toEqual([
      "f = [1, 2, 400, 0.5, true];",
      "f = [0, 3, 400, 0.5, true];",
      "f = [0, 2, 600, 0.5, true];",
      "f = [0, 2, 400, 0.75, true];",
      "f = [0, 2, 400, 0.5, false];",
    ]);
  });

  it("never take a branch, take the other one, or leave a call out", () => {
    expect(changed("if (a) throw b;")).toEqual(["if (false) throw b;"]);
    expect(changed("a ? b : c;")).toEqual(["!(a) ? b : c;"]);
    expect(changed("check(a);")).toEqual([";"]);
    expect(changed("a = b.filter(c).some(d);")).toEqual([
      "a = b.some(d);",
      "a = b.filter(c).every(d);",
    ]);
    expect(changed("a = Math.max(b, Math.sqrt(c));")).toEqual([
      "a = Math.min(b, Math.sqrt(c));",
      "a = Math.max(b, (c));",
    ]);
  });

  it("leave types, texts and names of methods that only look the same alone", () => {
    expect(changed('type A = 1 | true; a = "b" + c; a = b.toString().max;')).toEqual([]);
  });

  it("stand in the line where they are made", () => {
    expect(mutantsOf("a.ts", "a;\n\nb < c;").map(({ line }) => line)).toEqual([3]);
  });
});
