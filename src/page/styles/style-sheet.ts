import { tokens } from "../../report/html/styles/tokens.ts";
import { answer } from "./answer.ts";
import { layout } from "./layout.ts";
import { paper } from "./paper.ts";
import { parts } from "./parts.ts";

/** All styles of the page, in the colours of the report, without the room that only their reader needs. */
export const styleSheet = [tokens, layout, answer, parts, paper]
  .join("\n")
  .replace(/\s*([{};,>])\s*/g, "$1")
  .replace(/:\s+/g, ":")
  .replaceAll(";}", "}")
  .trim();
