import { describe, expect, expectTypeOf, it } from "vitest";
import { OptionError } from "../../src/errors/errors.ts";
import {
  count,
  each,
  fraction,
  known,
  listed,
  modelRules,
  notNegative,
  type OptionsOf,
  oneOf,
  option,
  orNull,
  parts,
  positive,
  positiveOrNull,
  type Rule,
  resolve,
  text,
} from "../../src/results/options.ts";

const rules = {
  share: option(0.9, fraction),
  law: option("constant", oneOf("constant", "squared")),
  speed: option(
    null,
    orNull(parts<{ from: number; to: number }>({ from: positive, to: positive })),
  ),
};

describe("resolve", () => {
  it("fills in what is not given, in the order of the table", () => {
    expect(resolve(rules, {})).toEqual({ share: 0.9, law: "constant", speed: null });
    const resolved = resolve(rules, { speed: { from: 6, to: 8 }, share: 0.5 });
    expect(resolved).toEqual({ share: 0.5, law: "constant", speed: { from: 6, to: 8 } });
    expect(Object.keys(resolved)).toEqual(["share", "law", "speed"]);
  });

  it.each([
    [{ shear: 0.9 }, "shear", "not an option", "one of share, law, speed"],
    [{ share: 95 }, "share", 95, "a fraction above 0 and below 1, such as 0.95"],
    [{ share: undefined }, "share", undefined, "a fraction above 0 and below 1, such as 0.95"],
    [{ law: "cubed" }, "law", "cubed", "constant or squared"],
    [{ speed: { from: 1 } }, "speed.to", undefined, "a finite number above zero"],
    [{ speed: 5 }, "speed.from", undefined, "a finite number above zero"],
  ])("refuses %j by name", (given, name, received, allowed) => {
    const { message } = new OptionError(name, received, allowed);
    const refused = expect.objectContaining({ option: name, received, allowed, message });
    expect(() => resolve(rules, given as object)).toThrow(refused);
  });

  it("names an option inside an option by both", () => {
    expect(() => resolve(rules, { share: 95 }, "prices.")).toThrow('"prices.share"');
  });

  it("gives every option the type of its rule", () => {
    expectTypeOf<OptionsOf<typeof rules>>().toEqualTypeOf<{
      readonly share: number;
      readonly law: "constant" | "squared";
      readonly speed: { from: number; to: number } | null;
    }>();
    // @ts-expect-error a default that the rule does not take
    option("cubed", oneOf("constant", "squared"));
  });

  it("refuses a default that the rule does not take: an option without one must be given", () => {
    const never: Rule<readonly string[]> = (name, value) => {
      if (value.length === 0) throw new OptionError(name, "empty", "one or more names");
    };
    expect(() => resolve({ names: option([], never) }, {})).toThrow('"names"');
    expect(resolve({ names: option([], never) }, { names: ["a"] })).toEqual({ names: ["a"] });
  });
});

describe("a rule", () => {
  it.each<[string, Rule<never>, readonly unknown[], readonly unknown[]]>([
    ["fraction", fraction, [0.01, 0.99], [0, 1, 95, Number.NaN, "0.95", null]],
    ["positive", positive, [1e-9, 5], [0, -1, Number.POSITIVE_INFINITY, "5", null]],
    ["positiveOrNull", positiveOrNull, [null, 5], [0, undefined]],
    ["notNegative", notNegative, [0, 5], [-1, Number.NaN, null]],
    ["count(2)", count(2), [2, 8], [1, 2.5, "2"]],
    ["oneOf", oneOf("a", "b"), ["a", "b"], ["c", null]],
    ["listed", listed(["a", "b"]), ["a", "b"], ["c", null]],
    ["text", text, ["", "day"], [null, 5]],
    ["orNull(text)", orNull(text), [null, "day"], [undefined, 5]],
    ["each(positive)", each(positive), [[], [1, 2]], [[1, 0], null, "12"]],
  ])("%s takes what is meant and refuses the rest", (_, rule, good, bad) => {
    for (const value of good) expect(() => rule("it", value as never)).not.toThrow();
    for (const value of bad) expect(() => rule("it", value as never)).toThrow(OptionError);
  });

  it("tells a short choice as one or the other, a listed one as a list", () => {
    expect(() => oneOf("a", "b", "c")("it", "d" as never)).toThrow("it must be a or b or c.");
    expect(() => listed(["a", "b"])("it", "d" as never)).toThrow("it must be one of a, b.");
  });
});

describe("known", () => {
  it("leaves out what nobody knows, and keeps zero, false and empty texts", () => {
    expect(known({ a: null, b: undefined, c: 0, d: false, e: "" })).toEqual({
      c: 0,
      d: false,
      e: "",
    });
    expect(known(null)).toEqual({});
  });
});

describe("what every question is asked with", () => {
  it("has a default of each", () => {
    expect(resolve(modelRules, {})).toEqual({
      level: 0.95,
      tolerance: 0.05,
      scaleDivisionKg: null,
    });
  });
});
