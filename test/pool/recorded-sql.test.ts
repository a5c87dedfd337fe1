import { expect, it } from "vitest";
import { readDate } from "../../src/data/dates.ts";
import { existingDate } from "../../src/pool/recorded-sql.ts";

const form = new RegExp(`^(?:${existingDate})$`);
const two = (value: number) => String(value).padStart(2, "0");

it("takes the dates that the reader takes, of every day there may be in four hundred years' kinds of year", () => {
  for (const year of ["0000", "1900", "2000", "2023", "2024", "2100", "9996"])
    for (let month = 0; month <= 13; month++)
      for (let day = 0; day <= 32; day++) {
        const date = `${year}-${two(month)}-${two(day)}`;
        expect(form.test(date), date).toBe(readDate(date) !== null);
      }
});

it("takes the times that the reader takes", () => {
  const times = [
    "T07:30",
    " 07:30",
    "T24:00",
    "T7:30",
    "T07:60",
    "T07:30:59",
    "T07:30:60",
    "T07:30:59.123456789",
  ];
  const more = [
    "T07:30:59,5",
    "T07:30:59.",
    "T07:30:59.1234567890",
    "t07:30",
    "  07:30",
    "T07:30.5",
    "Z",
    "+02:00",
  ];
  const offsets = [
    "",
    "Z",
    "+02",
    "-0200",
    "+02:00",
    "+14:59",
    "+15:00",
    "+02:60",
    "+2",
    "z",
    " Z",
  ];
  for (const time of [...times, ...more])
    for (const offset of offsets) {
      const date = `2026-04-12${time}${offset}`;
      expect(form.test(date), date).toBe(readDate(date) !== null);
    }
});
