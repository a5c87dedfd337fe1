import { afterAll } from "vitest";
import { WebR } from "webr";

let session: Promise<WebR> | null = null;

/**
 * Runs R code, by default the statistics that come with R, and gives its last value as numbers. R starts with the first
 * call of a test file (about a second, nothing is fetched) and ends with the file.
 *
 * @param code R code; what it assigns is forgotten afterwards
 * @param data variables the code may use; Infinity stays Inf
 * @throws Error with R's message when the code fails
 */
export async function evalR(
  code: string,
  data: Readonly<Record<string, number | readonly number[]>> = {},
): Promise<number[]> {
  session ??= startR();
  const webR = await session;
  const env = Object.fromEntries(
    Object.entries(data).map(([name, value]) => [name, [value].flat()]),
  );
  return webR.evalRRaw(`local({ as.numeric({ ${code} }) })`, "number[]", { env });
}

async function startR(): Promise<WebR> {
  const webR = new WebR({ interactive: false });
  await webR.init();
  return webR;
}

afterAll(async () => {
  const webR = await session;
  session = null;
  webR?.close();
});
