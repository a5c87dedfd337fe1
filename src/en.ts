/** How everything is said in English, for `wordsIn`. */
export * as english from "./wording/en/english.ts";
