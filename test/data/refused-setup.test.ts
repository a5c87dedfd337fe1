import { describe, expect, it } from "vitest";
import { checkSetup, readSetup } from "../../src/data/read-setup.ts";
import { DataError } from "../../src/errors/errors.ts";

function read(setup: unknown) {
  return readSetup({ name: "setup.json", text: JSON.stringify(setup) });
}

function problems(setup: unknown): string[] {
  const check = checkSetup({ name: "setup.json", text: JSON.stringify(setup) });
  if (check.ok) throw new Error("the setup was not refused");
  return check.issues.map(({ text }) => text);
}

describe("a setup that is refused", () => {
  it("suggests the nearest key for one it does not know", () => {
    expect(
      problems({
        tolerence_percent: 5,
        colour: "red",
        cart: { working_width: { value: 12, units: "m" } },
        bins: [{ bin: "1", drive: { kind: "motor", ratio: 0.8 } }],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at cart.working_width.unit: found nothing; needed one of the units m, ft, in. Write it like this: "working_width": {"value":12,"unit":"m","standard_uncertainty":0.05}.",
        "setup.json, at cart.working_width.units: found the key "units"; needed one of the keys value, unit, standard_uncertainty. Rename it to unit if that is meant, or delete it.",
        "setup.json, at bins[0].drive.ratio: found the key "ratio"; needed only the keys of its kind. Look at kind, or delete the key.",
        "setup.json, at tolerence_percent: found the key "tolerence_percent"; needed one of the keys title, tolerance_percent, confidence_percent, assurance_percent, borrow, assumed_spread_percent, assumed_scatter_percent, library, scale, cart, bins, money, field_checks, trial, answered, $schema. Rename it to tolerance_percent if that is meant, or delete it.",
        "setup.json, at colour: found the key "colour"; needed one of the keys title, tolerance_percent, confidence_percent, assurance_percent, borrow, assumed_spread_percent, assumed_scatter_percent, library, scale, cart, bins, money, field_checks, trial, answered, $schema. Delete the key, or rename it to the one that is meant.",
      ]
    `);
  });

  it("names the units that are allowed", () => {
    expect(
      problems({
        scale: { division: { value: 10, unit: "mg" } },
        bins: [{ bin: "1", target_rate: { value: 3, unit: "stone/ac" } }],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at scale.division.unit: found "mg"; needed one of the units kg, g, t, lb, oz. Write it like this: "division": {"value":10,"unit":"g"}.",
        "setup.json, at bins[0].target_rate.unit: found "stone/ac"; needed one of the units kg/ha, lb/ac, g/m², seeds/m², seeds/ft², seeds/ac, plants/m², plants/ft², plants/ac. Write it like this: "target_rate": {"value":120,"unit":"kg/ha"}.",
      ]
    `);
  });

  it("refuses figures that cannot be", () => {
    expect(
      problems({
        tolerance_percent: 0,
        confidence_percent: "95",
        borrow: "all bins",
        assumed_spread_percent: 0,
        assumed_scatter_percent: 60,
        cart: {
          working_width: { value: -12, unit: "m" },
          speed: { from: { value: 9, unit: "km/h" }, to: { value: 6, unit: "km/h" } },
        },
        money: { value_of_hour: null, area_ha: 1e300 },
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at tolerance_percent: found 0; needed a percentage from 0.2 to 100. Write it like this: "tolerance_percent": 5.",
        "setup.json, at confidence_percent: found the text "95"; needed a percentage from 50 to 99.99. Write it like this: "confidence_percent": 95.",
        "setup.json, at borrow: found "all bins"; needed one of "other bins", "none". Write it like this: "borrow": "none".",
        "setup.json, at assumed_spread_percent: found 0; needed a percentage from 0.1 to 50. Write it like this: "assumed_spread_percent": 3.",
        "setup.json, at assumed_scatter_percent: found 60; needed a percentage from 0.1 to 50. Write it like this: "assumed_scatter_percent": 1.5.",
        "setup.json, at cart.working_width.value: found -12; needed a number above 0. Write it like this: "working_width": {"value":12,"unit":"m","standard_uncertainty":0.05}.",
        "setup.json, at cart.speed: found an object; needed the lower figure under "from" and the higher under "to". Swap the two.",
        "setup.json, at money.value_of_hour: found null; needed a number of 0 or more. Write it like this: "value_of_hour": 90.",
        "setup.json, at money.area_ha: found 1e+300; needed a number above 0. Write it like this: "area_ha": 400.",
      ]
    `);
  });

  it("refuses an uncertainty where nothing is measured, or without its figure", () => {
    expect(
      problems({
        scale: { division: { value: 10, unit: "g", standard_uncertainty: 1 } },
        cart: { slip_standard_uncertainty_percent: 1 },
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at scale.division.standard_uncertainty: found the key "standard_uncertainty"; needed one of the keys value, unit. Delete the key, or rename it to the one that is meant.",
        "setup.json, at cart.slip_standard_uncertainty_percent: found 1; needed slip_percent beside it. Give slip_percent as well, or delete this key.",
      ]
    `);
  });

  it("refuses parts that do not fit together", () => {
    expect(
      problems({
        bins: [
          { bin: "1", assumed: "book value" },
          { bin: "1" },
          { bin: "2", drive: { kind: "ground-wheel", steps: [0.8], step_names: ["low", "high"] } },
        ],
        field_checks: [
          {
            bin: "1",
            filled: { value: 100, unit: "kg" },
            left: { value: 200, unit: "lb" },
            area: { value: 1, unit: "ha" },
          },
          {
            bin: "1",
            filled: { value: 100, unit: "kg" },
            left: { value: 300, unit: "lb" },
            area: { value: 1, unit: "ha" },
          },
        ],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at bins[0].assumed: found "book value"; needed a book_value beside "book value". Give the book_value as well, or assume something else.",
        "setup.json, at bins[2].drive.step_names: found a list; needed as many names as there are steps. Name each step, in the order of the steps.",
        "setup.json, at bins[1].bin: found "1"; needed one entry for each bin, or for each bin and product. Join the two entries, or delete one.",
        "setup.json, at field_checks[1].left: found an object; needed less left than was filled. Compare the two figures and their units; they may be swapped.",
      ]
    `);
  });

  it("refuses a field check with as much left as was filled, of which nothing went out", () => {
    const check = (left: number) => ({
      field_checks: [
        {
          bin: "1",
          filled: { value: 0.1, unit: "t" },
          left: { value: left, unit: "kg" },
          area: { value: 1, unit: "ha" },
        },
      ],
    });
    expect(problems(check(100))).toEqual([
      expect.stringContaining("at field_checks[0].left: found an object; needed less left"),
    ]);
    expect(read(check(99)).fieldChecks?.map(({ leftKg }) => leftKg.value)).toEqual([99]);
  });

  it("refuses entries of the wrong kind", () => {
    expect(
      problems({
        title: "",
        scale: 10,
        bins: { bin: "1" },
        field_checks: [{ bin: true, date: "2026-02-30", fill: 1.5 }],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at title: found nothing; needed a text. Write it like this: "title": "Spring wheat, north farm".",
        "setup.json, at scale: found 10; needed an object in braces. Correct it, or leave it out.",
        "setup.json, at bins: found an object; needed a list in square brackets. Correct it, or leave it out.",
        "setup.json, at field_checks[0].bin: found true; needed a name or a number. Write it like this: "bin": "1".",
        "setup.json, at field_checks[0].fill: found 1.5; needed a whole number from 1. Write it like this: "fill": 1.",
        "setup.json, at field_checks[0].date: found "2026-02-30"; needed a date that exists, year first, such as 2026-04-12. Write it like this: "date": "2026-04-14".",
        "setup.json, at field_checks[0].filled: found nothing; needed an object in braces. Write it like this: "filled": {"value":3000,"unit":"kg","standard_uncertainty":5}.",
        "setup.json, at field_checks[0].left: found nothing; needed an object in braces. Write it like this: "left": {"value":240,"unit":"kg","standard_uncertainty":5}.",
        "setup.json, at field_checks[0].area: found nothing; needed an object in braces. Write it like this: "area": {"value":22.7,"unit":"ha","standard_uncertainty":0.1}.",
      ]
    `);
  });

  it("refuses drives and responses of no known kind", () => {
    expect(
      problems({
        bins: [{ bin: "1", drive: { kind: "belt" }, money: { response: {} }, assumed: "guess" }],
      }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at bins[0].assumed: found "guess"; needed one of "book value", "last fill", "average of fills". Write it like this: "assumed": "last fill".",
        "setup.json, at bins[0].drive.kind: found "belt"; needed an object whose kind is "ground-wheel" or "motor". Write it like this: "kind": "ground-wheel".",
        "setup.json, at bins[0].money.response.kind: found nothing; needed an object whose kind is "linear" or "quadratic". Write it like this: "kind": "linear".",
      ]
    `);
  });

  it("refuses a list, a text and an empty file", () => {
    expect(problems([])).toMatchInlineSnapshot(`
      [
        "setup.json: found a list; needed an object in braces. Correct it, or leave it out.",
      ]
    `);
    expect(problems("setup")).toHaveLength(1);
    const check = checkSetup({ name: "setup.json", text: "" });
    expect(check.ok ? [] : check.issues.map(({ text }) => text)).toMatchInlineSnapshot(`
      [
        "setup.json: found an empty file; needed a setup in braces, {}, which may hold nothing else. Check that the file was saved, and that it is the right one.",
      ]
    `);
  });

  it("refuses a key that objects have of themselves", () => {
    const check = checkSetup({ name: "setup.json", text: '{"__proto__": {"title": "x"}}' });
    expect(check.ok ? [] : check.issues.map(({ column }) => column)).toEqual(["__proto__"]);
  });

  it("tells a number from a text that looks like one", () => {
    expect(problems({ tolerance_percent: "5" })[0]).toContain(
      'found the text "5"; needed a percentage',
    );
  });

  it("suggests a name that only lacks its unit", () => {
    expect(problems({ tolerance: 5 })[0]).toContain(
      "Rename it to tolerance_percent if that is meant",
    );
  });

  it("refuses a file of another kind", () => {
    const check = checkSetup({ name: "setup.csv", text: "{}" });
    expect(check.ok ? [] : check.issues.map(({ text }) => text)).toMatchInlineSnapshot(`
      [
        "setup.csv: found "setup.csv"; needed a setup file that ends in .json. \`evencatch template\` writes an empty one.",
      ]
    `);
  });

  it("throws with all problems from readSetup", () => {
    const act = () => read({ a: 1, b: 2 });
    expect(act).toThrow(DataError);
    expect(act).toThrow(/^setup.json: 2 problems\n/);
  });
});
