import { tokens } from "../../report/html/styles/tokens.ts";
import { answer } from "./answer.ts";
import { layout } from "./layout.ts";
import { paper } from "./paper.ts";
import { parts } from "./parts.ts";

/** All styles of the page, in the colours of the report. */
export const styleSheet = [tokens, layout, answer, parts, paper].join("\n");
