import { blocks } from "./styles/blocks.ts";
import { cards } from "./styles/cards.ts";
import { charts } from "./styles/charts.ts";
import { page } from "./styles/page.ts";
import { print } from "./styles/print.ts";
import { tokens } from "./styles/tokens.ts";

/** The one style sheet of every report; print comes last because it overrides. */
export const styleSheet: string = [tokens, page, cards, blocks, charts, print].join("");
