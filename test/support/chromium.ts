import { type Browser, chromium } from "playwright-core";

/** Environment variable CHROMIUM, or where Debian puts it. */
export const chromiumPath = process.env.CHROMIUM ?? "/usr/bin/chromium";

const flags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts chromium so that it asks for nothing by itself. */
export function launchChromium(): Promise<Browser> {
  return chromium.launch({ executablePath: chromiumPath, args: flags });
}
