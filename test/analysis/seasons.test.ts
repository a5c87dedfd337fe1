import { describe, expect, it } from "vitest";
import { analyse } from "../../src/analysis/analyse.ts";
import { readSetup } from "../../src/data/read-setup.ts";
import { catchSheetOfLog } from "../../src/report/sheets/catch-sheet.ts";
import { aCatch } from "../support/catches.ts";
import { fieldCheckOf, motorFor } from "../support/decision-states.ts";
import { present } from "../support/reference.ts";
import { english } from "../support/words.ts";

const masses = [6.46, 6.48, 6.44, 6.46, 6.48, 6.46, 6.44, 6.48];

const caught = (machine: string | null, season: string | null, fill = 1) =>
  masses.map((netKg, i) =>
    aCatch({ row: i + 2, machine, season, fill, catch: i + 1, turns: 20, netKg }),
  );
const logWith = (catches: ReturnType<typeof caught>) =>
  ({ source: "catches.csv", massUnit: "kg", catches, cautions: [] }) as const;
const setupOf = (setup: object) => readSetup({ name: "setup.json", text: JSON.stringify(setup) });

const seasons = logWith([...caught(null, "2025"), ...caught(null, "2026")]);
const machines = logWith([...caught("north", null), ...caught("south", null)]);

describe("a setup beside several seasons", () => {
  const answeredBy = (answer: object) => {
    const setup = setupOf({
      bins: [motorFor(160)],
      field_checks: [{ ...fieldCheckOf(0.875, "2026-04-12"), season: "2026" }],
      answered: [{ code: "field-disagrees", bin: "1", note: "measured again", ...answer }],
    });
    return present(analyse(seasons, setup).meters[0]).answered.map(({ code }) => code);
  };

  it("ends a finding of a fill by its season, and by no number that two fills have", () => {
    expect(answeredBy({})).toEqual(["field-disagrees"]);
    expect(answeredBy({ fill: 1, season: "2026" })).toEqual(["field-disagrees"]);
    expect(answeredBy({ fill: 1, season: "2025" })).toEqual([]);
    expect(answeredBy({ fill: 1 })).toEqual([]);
  });

  it("holds a field check against the fill of its season, or against any", () => {
    const deliveryOf = (given: object) => {
      const setup = setupOf({
        bins: [motorFor(160)],
        field_checks: [{ ...fieldCheckOf(1, "2026-04-12"), ...given }],
      });
      const answer = present(analyse(seasons, setup).meters[0]?.fieldCheck);
      return answer.checks[0]?.predicted?.deliveryOf;
    };
    expect(deliveryOf({ fill: 1, season: "2026" })).toBe("this fill");
    expect(deliveryOf({ fill: 1 })).toBe("any fill");
  });
});

describe("a setup beside several machines", () => {
  const targets = (bins: readonly object[]) =>
    analyse(machines, setupOf({ bins })).meters.map(
      ({ setting }) => setting?.target?.value ?? null,
    );

  it("holds for the bin of every machine, or of the one it names", () => {
    expect(targets([motorFor(160)])).toEqual([160, 160]);
    expect(targets([{ ...motorFor(160), machine: "south" }])).toEqual([null, 160]);
    expect(targets([motorFor(160), { ...motorFor(120), machine: "south" }])).toEqual([160, 120]);
  });
});

describe("the sheet for further catches", () => {
  it("is typed back under the machine and season that it is about, in the newest fill", () => {
    const few = [
      ...caught("north", "2026", 1).slice(0, 1),
      ...caught("north", "2025", 7).slice(0, 1),
    ];
    const log = logWith(few);
    const sheet = catchSheetOfLog(analyse(log), log, null, english());
    expect(sheet.columns.slice(0, 5)).toEqual(["machine", "season", "bin", "product", "fill"]);
    expect(sheet.rows[0]).toMatchObject({
      machine: "north",
      season: "2026",
      bin: "1",
      fill: 1,
      catch: 2,
    });
  });

  it("has the columns it always had where the log names neither", () => {
    const log = logWith(caught(null, null));
    expect(catchSheetOfLog(analyse(log), log, null, english()).columns[0]).toBe("bin");
  });
});
