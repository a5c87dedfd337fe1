import { createHash } from "node:crypto";
import { describe, expect, test } from "vitest";
import { OptionError } from "../../../src/errors/errors.ts";
import { checkedScript, contentSecurityPolicy } from "../../../src/report/html/policy.ts";

const digest = (text: string) => createHash("sha256").update(text, "utf8").digest("base64");

describe("contentSecurityPolicy", () => {
  test("allows one style sheet and nothing else", () => {
    expect(contentSecurityPolicy("p {}", null)).toBe(
      `default-src 'none'; style-src 'sha256-${digest("p {}")}'; script-src 'none'; base-uri 'none'; form-action 'none'`,
    );
  });

  test("hashes the script as UTF-8", () => {
    expect(contentSecurityPolicy("", "say('é – 字')")).toContain(
      `script-src 'sha256-${digest("say('é – 字')")}'`,
    );
  });
});

describe("checkedScript", () => {
  test.each(["</script>", "</SCRIPT ", "<!-- ", "a\r\nb", "a\0b"])("refuses %j", (text) => {
    expect(() => checkedScript(`let a = 1; ${text}`)).toThrow(OptionError);
  });

  test("gives back what a page can carry", () => {
    expect(checkedScript("1 < 2 && '<\\/script>'")).toBe("1 < 2 && '<\\/script>'");
  });
});
