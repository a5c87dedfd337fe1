import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderOf, readLocalDate, timeOf } from "../../../src/data/import/local-dates.ts";

const dateOf = (text: string) => {
  const read = readLocalDate(text, null);
  return read.is === "date" ? read.date : read.is;
};

describe("dates as people write them", () => {
  it.each([
    ["12.4.2026", "2026-04-12"],
    ["12.04.26", "2026-04-12"],
    ["12.04.2026 7:30 Uhr", "2026-04-12T07:30"],
    ["So., 12. April 2026", "2026-04-12"],
    ["3. März 2026", "2026-03-03"],
    ["12 Apr 2026", "2026-04-12"],
    ["April 12, 2026", "2026-04-12"],
    ["13/04/2026", "2026-04-13"],
    ["04/13/2026", "2026-04-13"],
    ["4/4/2026", "2026-04-04"],
    ["2026/04/12", "2026-04-12"],
    ["2026-04-12 07:30", "2026-04-12T07:30"],
    ["03/04/2026", "two-ways"],
    ["3-4-26", "two-ways"],
    ["31.02.2026", "no-date"],
    ["04.13.2026", "no-date"],
    ["12.04.", "no-date"],
    ["7:30 PM", "no-date"],
    ["12.04.2026 25:00", "no-date"],
    ["nach Ostern", "no-date"],
    ["", "no-date"],
  ])("reads %j as %s", (text, date) => {
    expect(dateOf(text)).toBe(date);
  });

  it("have two readings exactly where day and month may change places and differ", () => {
    const part = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(part, part, (one, two) => {
        expect(dateOf(`${one}/${two}/2026`) === "two-ways").toBe(one !== two);
      }),
    );
  });

  it("are ordered by the dates among them that have one reading, unless two of these disagree", () => {
    expect(orderOf(["03/04/2026", "13/04/2026"])).toEqual({ order: "dmy", by: "13/04/2026" });
    expect(orderOf(["03/04/2026", "04/13/2026"])).toEqual({ order: "mdy", by: "04/13/2026" });
    expect(orderOf(["03/04/2026"])).toBeNull();
    expect(orderOf(["13/04/2026", "04/13/2026"])).toBeNull();
  });
});

describe("a date that is year first already", () => {
  it("is as it was written, and nothing is said to be read of it", () => {
    expect(readLocalDate("2026-04-12", null)).toEqual({
      is: "date",
      date: "2026-04-12",
      iso: true,
    });
    expect(readLocalDate("2026-04-12 07:30", "mdy")).toEqual({
      is: "date",
      date: "2026-04-12T07:30",
      iso: true,
    });
    expect(readLocalDate("12.4.2026", null)).toEqual({
      is: "date",
      date: "2026-04-12",
      iso: false,
    });
  });
});

describe("a time of day", () => {
  it.each([
    ["7:05", "T07:05"],
    ["7.40", "T07:40"],
    ["7:30 Uhr", "T07:30"],
    ["06:50:24", "T06:50:24"],
    ["06:00:00", "T06:00"],
    ["7 Uhr", "T07:00"],
    ["0745", "T07:45"],
    ["2 pm", "T14:00"],
    ["2:15 p.m.", "T14:15"],
    ["12 am", "T00:00"],
    ["12:30 pm", "T12:30"],
    ["23:59", "T23:59"],
  ])("%j is read", (text, time) => {
    expect(timeOf(text)).toBe(time);
  });

  it.each(["", "7", "745", "24:00", "7:60", "2575", "13 pm", "0 am", "7:30 nachts", "early"])(
    "%j is none",
    (text) => {
      expect(timeOf(text)).toBeNull();
    },
  );

  it("of the afternoon is read behind its date", () => {
    expect(readLocalDate("12.4.2026 2:15 pm", null)).toMatchObject({ date: "2026-04-12T14:15" });
  });
});
