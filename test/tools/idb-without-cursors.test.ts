import { expect, it } from "vitest";
import { idbWithoutCursors } from "./idb-without-cursors.ts";

it("opens and wraps as the whole package does, and asks for no loops", async () => {
  const code = idbWithoutCursors();
  const rest = await import(`data:text/javascript,${encodeURIComponent(code)}`);
  expect(Object.keys(rest).toSorted()).toEqual(Object.keys(await import("idb")).toSorted());
  expect(code.match(/isIteratorProp\(/g)).toHaveLength(1);
});
