import { describe, expect, it } from "vitest";
import { analyse } from "../../../src/analysis/analyse.ts";
import { checkSetup, readSetup } from "../../../src/data/read-setup.ts";
import { setupFields } from "../../../src/data/setup/json-schema.ts";
import { cautionSentence } from "../../../src/report/sections/cautions.ts";
import { csv, logOf } from "../../support/catch-files.ts";
import { wordsBy } from "../../support/words.ts";

function fileOf(setup: unknown) {
  return { name: "setup.json", text: JSON.stringify(setup) };
}

function problems(setup: unknown): readonly string[] {
  const check = checkSetup(fileOf(setup));
  if (check.ok) throw new Error("the setup was not refused");
  return check.issues.map(({ text }) => text);
}

/** The same setup under the names of an earlier version and under those of today. */
const pairs: readonly (readonly [was: unknown, now: unknown])[] = [
  [
    { cart: { skid_percent: 3, skid_standard_uncertainty_percent: 1 } },
    { cart: { slip_percent: 3, slip_standard_uncertainty_percent: 1 } },
  ],
  [
    { cart: { slip_percent: 3, skid_standard_uncertainty_percent: 1 } },
    { cart: { slip_percent: 3, slip_standard_uncertainty_percent: 1 } },
  ],
  [
    { bins: [{ bin: "1", assumed: "book", book_value: { value: 0.3, unit: "kg/turn" } }] },
    { bins: [{ bin: "1", assumed: "book value", book_value: { value: 0.3, unit: "kg/turn" } }] },
  ],
  [{ bins: [{ bin: "1", assumed: "previous" }] }, { bins: [{ bin: "1", assumed: "last fill" }] }],
  [
    { bins: [{ bin: "1", assumed: "mean" }] },
    { bins: [{ bin: "1", assumed: "average of fills" }] },
  ],
  [
    { answered: [{ code: "skid-not-given", bin: "1", note: "measured" }] },
    { answered: [{ code: "slip-not-given", bin: "1", note: "measured" }] },
  ],
];

describe("a setup with names of an earlier version", () => {
  it.each(pairs)("is read from %j as from %j", (was, now) => {
    const { cautions, ...old } = readSetup(fileOf(was));
    const { cautions: none, ...current } = readSetup(fileOf(now));
    expect(old).toEqual(current);
    expect(cautions.map(({ code }) => code)).toContain("old-name");
    expect(none).toEqual([]);
  });

  it("says each old name once, with the new one, as they stand in the file", () => {
    const bins = [
      { bin: "1", assumed: "mean" },
      { bin: "2", assumed: "mean" },
    ];
    const { cautions } = readSetup(fileOf({ cart: { skid_percent: 3 }, bins }));
    expect(cautions).toMatchObject([
      {
        code: "old-name",
        severity: "note",
        facts: { was: "cart.skid_percent", now: "cart.slip_percent" },
      },
      { facts: { was: '"assumed": "mean"', now: '"assumed": "average of fills"' } },
    ]);
  });

  it("is named among the findings of an analysis, in the language of the report", async () => {
    const log = await logOf(csv("bin,product,fill,catch,turns,net_kg", "1,pea,1,1,20,6"));
    const { cautions } = analyse(log, readSetup(fileOf({ cart: { skid_percent: 3 } })));
    const found = cautions.filter(({ code }) => code === "old-name");
    expect(
      (["en", "de"] as const).map((language) =>
        found.map((one) => cautionSentence(one, wordsBy[language])),
      ),
    ).toMatchInlineSnapshot(`
      [
        [
          "In the setup, cart.skid_percent is now called cart.slip_percent. The old name was understood; write the new one from now on.",
        ],
        [
          "In der Setup-Datei heißt cart.skid_percent jetzt cart.slip_percent. Der alte Name wurde noch verstanden; schreiben Sie künftig den neuen.",
        ],
      ]
    `);
  });

  it("is refused where it gives the new name too, and both are named", () => {
    expect(problems({ cart: { skid_percent: 3, slip_percent: 4 } })).toMatchInlineSnapshot(`
      [
        "setup.json, at cart.skid_percent: found both skid_percent and slip_percent; needed one of them, as skid_percent is the old name of slip_percent. Keep what is right under slip_percent, and delete skid_percent.",
      ]
    `);
  });

  it("is refused by the names that stand in it, with the remedy under the new ones", () => {
    expect(
      problems({ cart: { skid_percent: 300, skid_standard_uncertainty_percent: "1" } }),
    ).toMatchInlineSnapshot(`
      [
        "setup.json, at cart.skid_percent: found 300; needed a percentage from -50 to 90. Write it like this: "slip_percent": 3.",
        "setup.json, at cart.skid_standard_uncertainty_percent: found the text "1"; needed a percentage from 0 to 100. Write it like this: "slip_standard_uncertainty_percent": 1.",
      ]
    `);
    expect(problems({ bins: [{ bin: "1", assumed: "book" }] })).toMatchInlineSnapshot(`
      [
        "setup.json, at bins[0].assumed: found "book"; needed a book_value beside "book value". Give the book_value as well, or assume something else.",
      ]
    `);
    expect(problems({ cart: { skid_standard_uncertainty_percent: 1 } })).toMatchInlineSnapshot(`
      [
        "setup.json, at cart.skid_standard_uncertainty_percent: found 1; needed slip_percent beside it. Give slip_percent as well, or delete this key.",
      ]
    `);
  });

  it("is no less refused for holding what is no text where a name changed", () => {
    const [text] = problems({ bins: [{ bin: "1", assumed: { toString: 1 } }] });
    expect(text).toContain("bins[0].assumed: found an object; needed one of");
  });

  it("is offered no old name for a slip of the keyboard", () => {
    const [text] = problems({ cart: { skip_percent: 3 } });
    expect(text).toContain("slip_percent");
    expect(text).not.toContain("skid");
    expect(JSON.stringify(setupFields())).not.toContain("skid");
  });
});
