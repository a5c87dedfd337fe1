const isoDate =
  /^(\d{4})-(\d\d)-(\d\d)(?:[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,]\d{1,9})?)?(?:Z|[+-](\d\d)(?::?(\d\d))?)?)?$/;

/** Places of the parts in what the pattern finds. */
const part = {
  year: 1,
  month: 2,
  day: 3,
  hour: 4,
  minute: 5,
  second: 6,
  offsetHour: 7,
  offsetMinute: 8,
} as const;

/**
 * An ISO 8601 calendar date, with or without a time of day and an offset from UTC, that exists: 2026-02-30 and 25:00 do
 * not. Returns it as written, with T between date and time; null when it is no such date.
 */
export function readDate(text: string): string | null {
  const parts = isoDate.exec(text);
  if (parts === null) return null;
  const exists =
    partOf(parts, part.day) >= 1 &&
    partOf(parts, part.day) <= daysIn(partOf(parts, part.year), partOf(parts, part.month)) &&
    partOf(parts, part.hour) <= 23 &&
    partOf(parts, part.minute) <= 59 &&
    partOf(parts, part.second) <= 59 &&
    partOf(parts, part.offsetHour) <= 14 &&
    partOf(parts, part.offsetMinute) <= 59;
  return exists ? text.replace(" ", "T") : null;
}

/** 0 for a month that does not exist, so that no day fits into it. */
function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}

function partOf(parts: RegExpExecArray, place: number): number {
  return Number(parts[place] ?? 0);
}
