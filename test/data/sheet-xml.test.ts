import { expect, it } from "vitest";
import { calmSheet } from "../../src/data/sheet-xml.ts";

const calm = (text: string) => calmSheet(new TextEncoder().encode(text));
const textOf = (text: string) => new TextDecoder().decode(calm(text)?.content);

it("counts cells and drops links and extents of formulas over ranges", () => {
  expect(calm('<row><c r="A1"/><x:c/></row>')?.cells).toBe(2);
  expect(textOf('<f t="array" ref="A1:Z9">1</f><hyperlink ref="A1:Z9"/>')).toBe(
    '<f ref="A1:Z9">1</f>',
  );
});

it("refuses shared formulas longer than any program writes, or too many letters written out, and no other formulas", () => {
  const formula = (kind: string, letters: number) => `<f ${kind}>${"1".repeat(letters)}</f>`;
  expect(calm(formula('t="shared" si="0"', 9_000))).toBeNull();
  expect(calm(formula('t="shared" si="0"', 8_000).repeat(7_000))).toBeNull();
  expect(calm(`${formula('t="shared" si="0"', 80)}${formula("", 9_000)}`)).not.toBeNull();
});

it("takes no longer for a tag that never ends, whatever it repeats", () => {
  for (const repeated of ["shared", "<f ", " t ", " "])
    expect(calm(`<f shared "array" ${repeated.repeat(500_000)}`)).not.toBeNull();
});
