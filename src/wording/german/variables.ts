const names: Readonly<Record<string, string>> = {
  "bulk density": "Schüttgewicht",
  moisture: "Feuchte",
  "meter speed": "Drehzahl des Dosierers",
};

/** A recorded variable in German; a column of the file keeps the name it has there. */
export function variableWords(name: string): string {
  return names[name] ?? name;
}
