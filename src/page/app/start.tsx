import { render } from "preact";
import type { PageLanguage } from "../../wording/words.ts";
import { type Given, givenId } from "../given.ts";
import { followAddress } from "./route.ts";
import { startSession } from "./session.ts";
import { Page } from "./views/page.tsx";

/** Starts the page in the language it carries. */
export function start(language: PageLanguage): void {
  const root = document.getElementById("page");
  if (root === null) return;
  const text = document.getElementById(givenId)?.textContent;
  const given: Given = text ? JSON.parse(text) : { units: "metric", setup: null };
  const session = startSession(language, given);
  followAddress();
  render(<Page session={session} />, root);
}
