import type { ChartSpec } from "../charts/chart-spec.ts";

/** What a specification is headed by: its title, and the remark beneath; null: it has none. */
export function headingOf({ title }: ChartSpec): ChartHeading {
  if (typeof title === "object" && title !== null && "text" in title) {
    const { text, subtitle } = { subtitle: null, ...title };
    return { title: String(text), remark: subtitle === null ? null : String(subtitle) };
  }
  return { title: typeof title === "string" ? title : "", remark: null };
}

interface ChartHeading {
  readonly title: string;
  readonly remark: string | null;
}
