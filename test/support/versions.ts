/** Files of a report in its first and in its second version: one goes, one comes, the others change. */
export function filesOfVersion(version: string): Readonly<Record<string, string>> {
  const text = (name: string) => `${name} of version ${version}\n`.repeat(50);
  const names = [
    "report.html",
    "charts/a.svg",
    version === "1" ? "charts/old.svg" : "deep/er/new.svg",
  ];
  return Object.fromEntries(names.map((name) => [name, text(name)]));
}
