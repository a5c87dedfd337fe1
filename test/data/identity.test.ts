import { expect, it } from "vitest";
import { binKey, fillKey, meterKey } from "../../src/data/identity.ts";

it("tells apart what differs, even where names run into one another", () => {
  const meters = [
    { bin: "1", product: "2 wheat" },
    { bin: "1 2", product: "wheat" },
    { bin: "12", product: "wheat" },
    { bin: "1", product: "2wheat" },
  ];
  expect(new Set(meters.map(meterKey)).size).toBe(meters.length);
  expect(fillKey({ bin: "1", fill: 11 })).not.toBe(fillKey({ bin: "11", fill: 1 }));
  expect(binKey({ bin: "1" })).not.toBe(binKey({ bin: "2" }));
});

it("is the same for rows of one meter, whatever else they hold", () => {
  const one = { bin: "front", product: "oats", fill: 1 };
  const [later, other] = [
    { ...one, fill: 2 },
    { ...one, product: "rye" },
  ];
  expect(meterKey(one)).toBe(meterKey(later));
  expect(fillKey(one)).toBe(fillKey(other));
});
