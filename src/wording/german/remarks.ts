import type { CatchRemark } from "../../results/catch-remark.ts";

/** "Daneben notiert: „Sack verrutscht“; Bediener A; Los 7." with a space before it; nothing where nothing was written. */
export function remarkWords(remark: CatchRemark, beside = "Daneben"): string {
  const { note, operator, extra } = remark;
  const parts = [
    ...(note === null ? [] : [`„${note}“`]),
    ...(operator === null ? [] : [`Bediener ${operator}`]),
    ...Object.entries(extra)
      .filter(([, text]) => text.trim() !== "")
      .map(([header, text]) => `${header} ${text}`),
  ];
  return parts.length === 0 ? "" : ` ${beside} notiert: ${parts.join("; ")}.`;
}

/** The same for several catches, each by its number. */
export function remarksWords(remarks: readonly CatchRemark[]): string {
  return remarks.map((one) => remarkWords(one, `Bei Probe ${one.catch}`)).join("");
}
