import type { Counts, Facts } from "./facts.ts";

/** What the file says about a catch beside its figures. */
export const remarks = {
  quoted: (text: string) => `“${text}”`,
  operator: (name: string) => `operator ${name}`,
  beside: (written: string) => `Written beside it: ${written}.`,
  besideCatch: (f: Counts<"catch"> & Facts<"written">) =>
    `Written beside catch ${f.catch}: ${f.written}.`,
};
