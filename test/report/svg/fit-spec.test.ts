import { describe, expect, test } from "vitest";
import { canRefit, fitSpec } from "../../../src/report/svg/fit-spec.ts";

describe("fitSpec", () => {
  test("gives a spec of one view another width, ground and no title", () => {
    const spec = { title: "T", width: 720, mark: "bar", background: "#ffffff" };
    expect(fitSpec(spec, { width: 300, title: false })).toEqual({
      width: 300,
      mark: "bar",
      background: "transparent",
    });
    expect(fitSpec(spec, { background: "#000000" })).toEqual({ ...spec, background: "#000000" });
  });

  test("leaves the width of several views alone", () => {
    const spec = { width: 720, hconcat: [] };
    expect(canRefit(spec)).toBe(false);
    expect(fitSpec(spec, { width: 300 })).toMatchObject({ width: 720 });
  });

  test("leaves a width by steps alone", () => {
    expect(canRefit({ width: { step: 20 } })).toBe(false);
  });
});
