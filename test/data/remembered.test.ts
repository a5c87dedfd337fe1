import { expect, it, vi } from "vitest";
import { keptText, remembered, rememberedCell } from "../../src/data/remembered.ts";

it("answers a text that returns without asking again", () => {
  const answer = vi.fn((text: string) => text.length);
  const length = remembered(answer);
  expect(["20", "0.42", "20", "0.42", ""].map(length)).toEqual([2, 4, 2, 4, 0]);
  expect(answer).toHaveBeenCalledTimes(3);
});

it("forgets where everything is new, so that a long column of notes takes no memory", () => {
  const answer = vi.fn((text: string) => text);
  const kept = remembered(answer);
  for (let i = 0; i < 50_000; i++) expect(kept(`note ${i}`)).toBe(`note ${i}`);
  kept("note 0");
  expect(answer).toHaveBeenCalledTimes(50_001);
});

it("asks once of a cell that neighbours and later rows repeat, and every time of one that is no text", () => {
  const answer = vi.fn((cell: unknown) => typeof cell);
  const kind = rememberedCell(answer);
  expect(["oats", "oats", "rye", "oats", 5, 5, null].map(kind)).toEqual([
    ...["string", "string", "string", "string"],
    ...["number", "number", "object"],
  ]);
  expect(answer).toHaveBeenCalledTimes(5);
});

it("keeps a text as it is", () => {
  for (const text of ["", "a", "2026-03-10T06:04", " spaced "]) expect(keptText(text)).toBe(text);
});
