import { nouns } from "../en/nouns.ts";
import type { Format } from "../format.ts";
import { numbered } from "../sayings/numbered.ts";

export const { catches: catchWords, fills: fillWords, earlierFills: earlierFillWords } = nouns;

export const degrees = (df: number, format: Format) => nouns.degrees(numbered(df, format));
