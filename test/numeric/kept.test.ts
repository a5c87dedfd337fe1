import { expect, it, vi } from "vitest";
import { kept, keptLast, keptOfTwo, keptWith } from "../../src/numeric/kept.ts";

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

it("answers of a thing once, whatever was asked in between, also where the answer is nothing", () => {
  const answer = vi.fn(({ name }: { name: string | null }) => name);
  const nameOf = keptWith(answer);
  const [one, none] = [{ name: "one" }, { name: null }];
  expect([one, none, one, none].map(nameOf)).toEqual(["one", null, "one", null]);
  expect(answer).toHaveBeenCalledTimes(2);
  expect(nameOf({ name: "one" })).toBe("one");
  expect(answer).toHaveBeenCalledTimes(3);
});

it("keeps what it last answered of a thing, and nothing before", () => {
  const answer = vi.fn(({ size }: { size: number }) => size);
  const sizeOf = keptLast(answer);
  const [one, other] = [{ size: 1 }, { size: 2 }];
  expect([one, one, other, other, one].map(sizeOf)).toEqual([1, 1, 2, 2, 1]);
  expect(answer).toHaveBeenCalledTimes(3);
});
