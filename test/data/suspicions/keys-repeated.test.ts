import { describe, expect, it } from "vitest";
import { keysRepeated } from "../../../src/data/suspicions/keys-repeated.ts";

const asked = (text: string) => keysRepeated(text).map(({ facts }) => facts);

describe("keys that stand twice in one object", () => {
  it("are counted, the first with its line", () => {
    expect(asked('[{"a": 1,\n"a": 2},\n{"b": 1, "b": 2}]')).toEqual([
      { keys: 2, first: "a", line: 2 },
    ]);
  });

  it("are the same key however it is escaped", () => {
    expect(asked('{"a": 1, "\\u0061": 2}')).toEqual([{ keys: 1, first: "a", line: 1 }]);
  });

  it("are not found in values, nor in objects beside or within one another", () => {
    expect(
      asked('[{"a": "a", "b": ["a", "a"]}, {"a": {"a": 1}, "b": "x\\": {\\"a\\": 1"}]'),
    ).toEqual([]);
  });

  it("are told apart by what stands before a closing mark, however much", () => {
    expect(asked('{"a\\\\": 1, "a\\\\\\"": 2, "a": 3, "a\\\\": 4}')).toEqual([
      { keys: 1, first: "a\\", line: 1 },
    ]);
  });

  it("are looked for past strings of any length", () => {
    const long = JSON.stringify('x"\\\n'.repeat(3_000_000));
    expect(asked(`{"a": ${long}, "a": ${long}}`)).toEqual([{ keys: 1, first: "a", line: 1 }]);
  });
});
