import { expect, it } from "vitest";
import { binKey, fillKey, meterKey } from "../../src/data/identity.ts";

const unnamed = { farm: null, machine: null, season: null };

it("tells apart what differs, even where names run into one another", () => {
  const meters = [
    { ...unnamed, bin: "1", product: "2 wheat" },
    { ...unnamed, bin: "1 2", product: "wheat" },
    { ...unnamed, bin: "12", product: "wheat" },
    { ...unnamed, bin: "1", product: "2wheat" },
    { ...unnamed, machine: "1", bin: "1", product: "2wheat" },
    { ...unnamed, farm: "1", bin: "1", product: "2wheat" },
  ];
  expect(new Set(meters.map(meterKey)).size).toBe(meters.length);
  const one = { ...unnamed, bin: "1", fill: 11 };
  for (const other of [
    { ...one, bin: "11", fill: 1 },
    { ...one, machine: "north" },
    { ...one, farm: "north" },
    { ...one, season: "2026" },
  ])
    expect(fillKey(one)).not.toBe(fillKey(other));
  expect(binKey(one)).not.toBe(binKey({ ...one, bin: "2" }));
  expect(binKey(one)).not.toBe(binKey({ ...one, machine: "null" }));
});

it("is the same for rows of one meter, whatever else they hold", () => {
  const one = { ...unnamed, bin: "front", product: "oats", fill: 1 };
  const [later, other] = [
    { ...one, season: "2026", fill: 2 },
    { ...one, product: "rye" },
  ];
  expect(meterKey(one)).toBe(meterKey(later));
  expect(fillKey(one)).toBe(fillKey(other));
});
