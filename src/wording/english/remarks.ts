import type { CatchRemark } from "../../results/catch-remark.ts";

/** "Written beside it: “bag slipped”; operator A; lot 7." with a space before it; nothing where nothing was written. */
export function remarkWords(remark: CatchRemark, beside = "it"): string {
  const { note, operator, extra } = remark;
  const parts = [
    ...(note === null ? [] : [`“${note}”`]),
    ...(operator === null ? [] : [`operator ${operator}`]),
    ...Object.entries(extra)
      .filter(([, text]) => text.trim() !== "")
      .map(([header, text]) => `${header} ${text}`),
  ];
  return parts.length === 0 ? "" : ` Written beside ${beside}: ${parts.join("; ")}.`;
}

/** The same for several catches, each by its number. */
export function remarksWords(remarks: readonly CatchRemark[]): string {
  return remarks.map((one) => remarkWords(one, `catch ${one.catch}`)).join("");
}
