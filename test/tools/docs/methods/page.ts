import markdownIt from "markdown-it";
import temml from "temml";

const style = `
:root { color-scheme: light dark }
body { font: 16px/1.55 system-ui, sans-serif; margin: 0 auto; max-width: 46rem; padding: 1rem 1.2rem 4rem }
h1, h2 { line-height: 1.2; text-wrap: balance } h2 { margin-top: 2.4em }
table { border-collapse: collapse; display: block; overflow-x: auto } th, td { border-bottom: 1px solid #8884; padding: .3em .8em .3em 0; text-align: left }
math[display="block"] { display: block math; overflow-x: auto; overflow-y: hidden; padding: .3em 0 }
code { font-size: .92em } a { color: inherit }
@media print { body { max-width: none } }
`;

/** The document as one HTML page: no script, nothing fetched, its formulas as MathML. */
export function methodsPage(markdown: string): string {
  const formulas: string[] = [];
  // Formulas are set aside while Markdown is read, whose underscores and stars they would be taken for.
  const keep = (tex: string, displayMode: boolean): string => {
    formulas.push(temml.renderToString(tex.trim(), { displayMode, throwOnError: true }));
    return `\uE000${formulas.length - 1}\uE001`;
  };
  const text = markdown
    .replace(/\$\$(.+?)\$\$/gs, (_, tex: string) => keep(tex, true))
    .replace(/\$(.+?)\$/g, (_, tex: string) => keep(tex, false));
  const body = markdownIt()
    .render(text)
    .replace(/\uE000(\d+)\uE001/g, (_, at: string) => formulas[Number(at)] ?? "");
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Methods</title>
<style>${style}</style>
</head>
<body>
${body}</body>
</html>
`;
}
