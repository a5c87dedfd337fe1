import type { cautionsTogether as english } from "../en/cautions-together.ts";

/** What is told of several files that were read as one; at the drill none are. */
export const cautionsTogether: typeof english = {
  "files-read-together": (f) =>
    `Die Proben stammen aus ${f.files.length} Dateien, und die Zeilen sind durch alle hindurch gezählt: ${f.files.map((file, i) => `${file} ab Zeile ${f.firstRows[i]}`).join(", ")}.`,
};
