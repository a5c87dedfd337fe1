import { expect, it } from "vitest";
import { present } from "../../../notebooks/support/present.ts";

it("an answer that was computed is taken as it is, zero and nothing-found too", () => {
  expect([present(0), present(""), present(false)]).toEqual([0, "", false]);
});

it("an answer that could not be computed stops the cell and points to the findings", () => {
  expect(() => present(null)).toThrow("findings beside it say why");
  expect(() => present(undefined)).toThrow(RangeError);
});
