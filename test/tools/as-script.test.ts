import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { asScript } from "./as-script.ts";

const library = { one: 1, two: 2, "a name": 3 };

/** What a module exports that was made a script, and what it asked for. */
async function ran(module: string) {
  const asked: string[] = [];
  const box = { exports: {} as Record<string, unknown> };
  const require = (name: string) => {
    asked.push(name);
    return library;
  };
  const here = { url: "file:///here" };
  runInNewContext(`(function(require,module,here){${asScript(module)}})`)(require, box, here);
  return { asked, exports: box.exports };
}

describe("a module as a script", () => {
  it.each([
    ["names", 'import { one as a, two } from "x"; export { a as sum, two };', { sum: 1, two: 2 }],
    [
      "names that are none",
      'import { "a name" as a } from "x"; export { a as "b c" };',
      { "b c": 3 },
    ],
    ["a whole", 'import * as x from "x"; export { x };', { x: library }],
    [
      "a whole by default",
      'import x, { one } from "x"; export { x, one };',
      { x: library, one: 1 },
    ],
    ["nothing", 'import "x"; const a = 4; export { a };', { a: 4 }],
    [
      "what is said later",
      'export { f }; function f() { return one; } import { one } from "x";',
      { f: expect.any(Function) },
    ],
  ])("imports and exports %s", async (_, module, exports) => {
    const done = await ran(module);
    expect(done.exports).toEqual(exports);
    expect([...new Set(done.asked)]).toEqual(["x"]);
  });

  it("fetches later what it fetched later, and knows its place", async () => {
    const { asked, exports } = await ran(
      'const later = () => import("./y.js"); const place = import.meta.url; export { later, place };',
    );
    expect(asked).toEqual([]);
    expect(exports.place).toBe("file:///here");
    const later = exports.later as () => Promise<unknown>;
    expect(await later()).toBe(library);
    expect(asked).toEqual(["./y.js"]);
  });

  it("leaves alone what only looks like it", async () => {
    const { exports } = await ran(
      "const text = 'import { a } from \"b\"; export { c }; import.meta'; export { text };",
    );
    expect(exports.text).toBe('import { a } from "b"; export { c }; import.meta');
  });
});
