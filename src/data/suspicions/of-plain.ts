import { nearlySameNames } from "./nearly-same-names.ts";
import { ofFigures } from "./of-figures.ts";
import { countedLog, type Suspecting } from "./suspect.ts";

/** What is suspected of catches of which nothing but turns, masses and names is known. */
export const suspicionsOfPlain: Suspecting = (catches, massUnit, written = []) => {
  const log = countedLog(catches, massUnit, written);
  return [nearlySameNames, ...ofFigures].flatMap((asks) => asks(log));
};
