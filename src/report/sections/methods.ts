import type { Analysis } from "../../analysis/analyse.ts";
import type { Words } from "../../wording/words.ts";
import { details, list, paragraph } from "../blocks.ts";
import type { Details } from "../document.ts";

/** A paragraph on methods for a paper, with the sources it cites. */
export function methodsSection(
  analysis: Analysis,
  { methods }: Words,
  version: string,
): Details | null {
  const { text, references } = methods.paragraph(analysis, version);
  return details(
    "methods",
    methods.heading,
    paragraph(text),
    paragraph([{ kind: "strong", text: methods.references }]),
    list(references),
  );
}
