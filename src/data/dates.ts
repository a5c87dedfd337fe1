const isoDate =
  /^(?<year>\d{4})-(?<month>\d\d)-(?<day>\d\d)(?:[T ](?<hour>\d\d):(?<minute>\d\d)(?::(?<second>\d\d)(?:[.,]\d{1,9})?)?(?:Z|[+-](?<offsetHour>\d\d)(?::?(?<offsetMinute>\d\d))?)?)?$/;

/**
 * An ISO 8601 calendar date, with or without a time of day and an offset from UTC, that exists: 2026-02-30 and 25:00 do
 * not. Returns it as written, with T between date and time; null when it is no such date.
 */
export function readDate(text: string): string | null {
  const parts = isoDate.exec(text)?.groups;
  if (parts === undefined) return null;
  const part = (name: string) => Number(parts[name] ?? 0);
  const exists =
    part("day") >= 1 &&
    part("day") <= daysIn(part("year"), part("month")) &&
    part("hour") <= 23 &&
    part("minute") <= 59 &&
    part("second") <= 59 &&
    part("offsetHour") <= 14 &&
    part("offsetMinute") <= 59;
  return exists ? text.replace(" ", "T") : null;
}

/** 0 for a month that does not exist, so that no day fits into it. */
function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}
