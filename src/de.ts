/** How everything is said in German, for `wordsIn`. */
export * as german from "./wording/de/german.ts";
