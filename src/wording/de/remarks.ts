import type { remarks as english } from "../en/remarks.ts";

/** What the file says about a catch beside its figures. */
export const remarks: typeof english = {
  quoted: (text) => `„${text}“`,
  operator: (name) => `Bediener ${name}`,
  beside: (written) => `Daneben notiert: ${written}.`,
  besideCatch: (f) => `Bei Probe ${f.catch} notiert: ${f.written}.`,
};
