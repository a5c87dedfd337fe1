import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

/** Pixels of the picture for one of the drawing: sharp in print at the width of a column. */
const zoom = 2;

/**
 * The picture of a drawing. Its letters come with it, so that a machine without fonts draws them too and every
 * machine draws the same.
 */
export async function chartPng(svg: string): Promise<Uint8Array> {
  const { Resvg } = await import("@resvg/resvg-js");
  const picture = new Resvg(svg, {
    fitTo: { mode: "zoom", value: zoom },
    font: {
      fontFiles: fontFiles(),
      loadSystemFonts: false,
      defaultFontFamily: family,
      sansSerifFamily: family,
    },
  });
  return picture.render().asPng();
}

const family = "DejaVu Sans";

/** Laid beside the bundled command when the package is built; in a clone, where the package of fonts is. */
function fontFiles(): string[] {
  const { resolve } = createRequire(import.meta.url);
  return ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((name) => {
    const built = fileURLToPath(new URL(`../fonts/${name}`, import.meta.url));
    return existsSync(built) ? built : resolve(`dejavu-fonts-ttf/ttf/${name}`);
  });
}
