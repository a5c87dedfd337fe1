import type { Analysis, MeterAnswers } from "../../analysis/analyse.ts";
import type { Words } from "../../wording/words.ts";
import { blocks, list, paragraph, section } from "../blocks.ts";
import type { Entry, ReportDocument, Section } from "../document.ts";
import { decisionLines } from "../sections/decision.ts";
import { safetyStrip } from "../sections/safety-strip.ts";
import { slugs } from "../slug.ts";

/**
 * One page for the cab: for each bin what to set, how sure that is, the rate that comes out, what was odd; and when to
 * catch again. Says what the report says of the same catches, in the same words.
 *
 * @param title  of the setup; null: none
 */
export function cabSheetDocument(
  analysis: Analysis,
  title: string | null,
  words: Words,
): ReportDocument {
  const say = words.sheets.cab;
  const inTheBins = analysis.meters.filter(({ decision }) => decision !== null);
  const ids = slugs(inTheBins.map(({ bin }) => bin));
  return {
    title: say.title,
    ...(title === null ? {} : { subtitle: title }),
    language: words.format.language,
    words: words.frame,
    meta: say.fields.map(toFillIn),
    blocks: blocks(
      safetyStrip(words),
      ...inTheBins.map((answers) =>
        binSection(answers, analysis, words, `bin-${ids.get(answers.bin)}`),
      ),
      section("catch-again", say.again.heading, list(say.again.items)),
      section("notes", say.notes, { kind: "definitions", entries: [] }),
    ),
  };
}

function binSection(answers: MeterAnswers, analysis: Analysis, words: Words, id: string): Section {
  const { action, sure, why, doNotSkip } = decisionLines(answers, analysis, words);
  const { bin, product } = answers;
  return section(
    id,
    words.report.bin(bin, product),
    paragraph([{ kind: "strong", text: action }], "lead"),
    paragraph(sure),
    paragraph(rateWords(answers, words)),
    list([...why, doNotSkip]),
    { kind: "definitions", entries: words.sheets.cab.ofBin.map(toFillIn) },
  );
}

/** Only where the drive is to be set: beside anything else it would be taken for a setting. */
function rateWords({ decision, setting }: MeterAnswers, words: Words): string | null {
  if (decision?.action !== "set" || setting === null || setting.target === null) return null;
  return words.setting.sentence(setting);
}

const toFillIn = (term: string): Entry => ({ term, description: "" });
