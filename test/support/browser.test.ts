import { expect } from "vitest";
import { browserTest, noFindings } from "./browser.ts";

const page = (head: string, body = ""): string =>
  `<!doctype html><html lang="en"><head><title>t</title>${head}</head><body>${body}</body></html>`;

const policy = `<meta http-equiv="Content-Security-Policy" content="default-src 'none'">`;

browserTest("the browser harness finds nothing in a page that does nothing", async (open) => {
  expect((await open(page(policy, "<p>words</p>"))).findings).toEqual(noFindings);
});

browserTest("the browser harness records messages and errors of scripts", async (open) => {
  const { findings } = await open(
    page("<script>console.warn('hm'); throw new Error('oh')</script>"),
  );
  expect(findings.consoleMessages).toContain("hm");
  expect(findings.pageErrors).toEqual(["oh"]);
});

browserTest("the browser harness records what a policy blocks", async (open) => {
  const { findings } = await open(
    page(policy, '<p style="color: red">words</p><script>1</script>'),
  );
  const blocked = findings.policyViolations.map((violation) => violation.split(" ")[0]);
  expect(blocked.toSorted()).toEqual(["script-src-elem", "style-src-attr"]);
});

browserTest("the browser harness records and cuts every request", async (open) => {
  const picture = '<img alt="" src="https://example.org/a.png">';
  const { findings } = await open(page("", picture));
  expect(findings.requests).toEqual(["https://example.org/a.png"]);
});
