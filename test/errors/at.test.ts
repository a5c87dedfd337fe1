import { expect, it } from "vitest";
import { at, lastOf } from "../../src/errors/at.ts";
import { NumericalError } from "../../src/errors/errors.ts";

it("gives what is there, null among it", () => {
  expect(at([3, null], 0)).toBe(3);
  expect(at([3, null], 1)).toBeNull();
  expect(at(Float64Array.of(0, 2), 0)).toBe(0);
});

it.each([2, -1, 0.5, Number.NaN])("names place %s, where nothing is", (place) => {
  expect(() => at([3, 4], place)).toThrow(NumericalError);
  expect(() => at([3, 4], place)).toThrow(`no value at place ${place} of 2`);
});

it("gives the last, and names the place before the first where there is none", () => {
  expect(lastOf([3, 4])).toBe(4);
  expect(lastOf(Float64Array.of(7))).toBe(7);
  expect(() => lastOf([])).toThrow("no value at place -1 of 0");
});
