import { describe, expect, it } from "vitest";
import { exclusionsNotRead } from "../../../src/data/suspicions/exclusions-not-read.ts";
import { countedLog } from "../../../src/data/suspicions/suspect.ts";
import { aCatch } from "../../support/catches.ts";

const asked = (header: string, ...marks: readonly string[]) =>
  exclusionsNotRead(
    countedLog(
      marks.map((mark, i) =>
        aCatch({ turns: 20, netKg: 6, catch: i + 1, extra: { [header]: mark } }),
      ),
      "kg",
      [],
    ),
  ).map(({ facts }) => facts);

describe("marks in a column that is not read", () => {
  it.each(["leave_out", "Ignore", "auslassen", "Leave out", "ungültig"])("%s", (header) => {
    expect(asked(header, "", "x", "no")).toEqual([{ header, catches: 1 }]);
  });

  it("are none in a column of another name, nor where every answer is no", () => {
    expect(asked("block", "1", "2")).toEqual([]);
    expect(asked("ignore", "", "no", "nein", "0", "FALSE")).toEqual([]);
  });
});
