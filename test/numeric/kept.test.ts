import { expect, it, vi } from "vitest";
import { kept, keptOfTwo } from "../../src/numeric/kept.ts";

it("answers a number that returns without asking again", () => {
  const answer = vi.fn((x: number) => x ** 2);
  const square = kept(answer);
  expect([3, 2.5, 3, 0, 0].map(square)).toEqual([9, 6.25, 9, 0, 0]);
  expect(answer).toHaveBeenCalledTimes(3);
});

it("forgets where everything is new", () => {
  const answer = vi.fn((x: number) => x);
  const same = kept(answer);
  for (let i = 0; i < 10_000; i++) expect(same(i)).toBe(i);
  same(0);
  expect(answer).toHaveBeenCalledTimes(10_001);
});

it("tells the two numbers of a pair apart", () => {
  const answer = vi.fn((x: number, y: number) => 10 * x + y);
  const joined = keptOfTwo(answer);
  expect([joined(1, 2), joined(2, 1), joined(1, 2), joined(1, 1)]).toEqual([12, 21, 12, 11]);
  expect(answer).toHaveBeenCalledTimes(3);
  for (let y = 0; y < 5000; y++) expect(joined(1, y)).toBe(10 + y);
});

it("passes on what an answer throws, and keeps nothing of it", () => {
  const refusing = kept((x) => {
    if (x < 0) throw new RangeError("below 0");
    return x;
  });
  expect(() => refusing(-1)).toThrow("below 0");
  expect(() => refusing(-1)).toThrow("below 0");
  expect(refusing(1)).toBe(1);
});
