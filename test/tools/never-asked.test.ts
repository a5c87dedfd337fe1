import { describe, expect, it } from "vitest";
import { withoutNeverAsked } from "./never-asked.ts";

const words = (object: string) => `// src/wording/en/one.ts\nvar say = ${object};\n`;
const rest = (code: string) => `// src/page/app/two.ts\n${code}\n`;

function leftOf(object: string, code: string) {
  return withoutNeverAsked(words(object) + rest(code)).left;
}

describe("what is never asked for", () => {
  it("is cut out, with the commas that part it", () => {
    const { code, left } = withoutNeverAsked(
      words('{ a: 1, b: (f) => [f, 2], "c-d": 3, e: 4, }') + rest("show(say.a, say.e);"),
    );
    expect(left).toEqual(["b", "c-d"]);
    expect(code).toBe(`${words("{ a: 1, e: 4, }")}${rest("show(say.a, say.e);")}`);
  });

  it("may be all there is", () => {
    const { code } = withoutNeverAsked(words("{ a: 1, b: 2 }"));
    expect(code).toBe(words("{ }"));
  });

  it("is nothing that is read by a member, a text, a pattern, or a name from pieces", () => {
    expect(leftOf('{ a: 1, "b": 2 }', "show(say.a, say[`b`]);")).toEqual([]);
    expect(leftOf("{ a: 1, b: 2 }", 'for (const name of ["a", "b"]) show(say[name]);')).toEqual([]);
    expect(leftOf("{ a: 1, b: 2 }", "const { a, ...others } = say; show(a);")).toEqual(["b"]);
    expect(leftOf('{ "a-1": 1, "a-2": 2, b: 3 }', `show(say[\`a-\${n}\`]);`)).toEqual(["b"]);
  });

  it("is what only something never asked for asks for", () => {
    expect(leftOf("{ a: 1, b: (f) => f.say.c, c: (f) => f.say.b }", "show(say.a);")).toEqual([
      "b",
      "c",
    ]);
    expect(leftOf("{ a: { b: 1 }, b: 2 }", "show(say.b);")).toEqual(["a"]);
  });

  it("is what a function asks for that only something never asked for calls", () => {
    const shared = "var like = (f) => f.a;\n";
    const asked = (by: string) => leftOf(`{ a: 1, b: like, c: 2 };\n${shared}var one = {}`, by);
    expect(asked("show(say.c);")).toEqual(["a", "b"]);
    expect(asked("show(say.b);")).toEqual(["c"]);
  });

  it("is looked for among words alone", () => {
    const result = rest("save({ a: 1, b: 2 });");
    expect(withoutNeverAsked(result)).toEqual({ code: result, left: [] });
    expect(leftOf("{ a: 1 }", "save({ a: 2 });")).toEqual([]);
  });
});
