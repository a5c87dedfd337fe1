import fc from "fast-check";
import Papa from "papaparse";
import { expect, it } from "vitest";
import { papaparseOfTexts } from "./papaparse-of-texts.ts";

it("reads and writes texts as the whole package does", () => {
  const code = papaparseOfTexts();
  const module: { exports: Partial<typeof Papa> } = { exports: {} };
  new Function("module", "exports", code)(module, module.exports);
  const { parse, unparse } = module.exports as typeof Papa;
  const cell = fc.string({ unit: fc.constantFrom("a", "1", ",", ";", '"', "\n", " ", "ä") });
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 1 }), { minLength: 1 }),
      cell,
      (data, text) => {
        const whole = Papa.unparse(data, { newline: "\n" });
        expect(unparse(data, { newline: "\n" })).toBe(whole);
        for (const one of [whole, text])
          expect(parse(one, { delimiter: ",", newline: "\n" })).toEqual(
            Papa.parse(one, { delimiter: ",", newline: "\n" }),
          );
      },
    ),
  );
  expect(code.length).toBeLessThan(30_000);
});
