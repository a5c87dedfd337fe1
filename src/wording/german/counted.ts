import { withDegrees as afterMit, nouns, withTurns as turnsAfterMit } from "../de/nouns.ts";
import type { Format } from "../format.ts";
import { numbered } from "../sayings/numbered.ts";

export const { catches: catchesWords, fills: fillsWords, earlierFills: earlierFillsWords } = nouns;

export const degrees = (df: number, format: Format) => nouns.degrees(numbered(df, format));

export const withDegrees = (df: number, format: Format) => afterMit(numbered(df, format));

export const withTurns = (turns: number, format: Format) => turnsAfterMit(numbered(turns, format));
