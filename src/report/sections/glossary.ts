import type { Words } from "../../wording/words.ts";
import { details, grid } from "../blocks.ts";
import type { Details } from "../document.ts";

/** Words that have one meaning in a report. */
export function glossarySection({ glossary }: Words): Details | null {
  return details("glossary", glossary.heading, {
    kind: "table",
    id: "glossary-table",
    caption: glossary.heading,
    ...grid({
      rows: Object.values(glossary.entries),
      columns: [
        { heading: glossary.term, cell: ([term]) => term },
        { heading: glossary.meaning, cell: ([, meaning]) => meaning },
      ],
    }),
  });
}
