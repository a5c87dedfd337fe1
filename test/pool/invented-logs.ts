import type { RandomStream } from "../../src/numeric/random.ts";

const headers =
  "farm,machine,season,bin,product,fill,catch,outlet,turns,gross_kg,tare_kg,division_kg,taken_at,exclude,reason,moisture_pct";

/**
 * A log of two farms and two seasons with everything that totals depend on: outlets weighed apart, catches left out, divisions
 * named in some rows, catches spilled before they were weighed, and fills of three equal catches beside others in a container a million times as heavy.
 */
export function inventedPool(farms: readonly string[], random: RandomStream): string {
  const lines = [headers];
  for (const farm of farms)
    for (const machine of ["north", "Südost"])
      for (const season of ["2025", "2026"])
        for (const bin of ["1", "2"])
          for (let fill = 1; fill <= 4; fill++)
            lines.push(...fillLines([farm, machine, season, bin], fill, random));
  return `${lines.join("\n")}\n`;
}

function fillLines(place: readonly string[], fill: number, random: RandomStream): string[] {
  const kind = random.integer(0, 3);
  const product = place[3] === "1" ? "wheat" : "starter fertiliser";
  const tare = kind === 1 ? 99_000 : 0.42;
  const level = 0.3 * (1 + 0.02 * random.normal());
  const caught = [1, 2, 3, 4].flatMap((number) => {
    const turns = number % 2 === 0 ? 20 : 30.5;
    const net = kind < 2 ? 0.3 * turns : level * turns * (1 + 0.01 * random.normal());
    const gross = (tare + net).toFixed(3);
    const division = random.uniform() < 0.5 ? "0.01" : "";
    const left = kind === 2 && number === 1 ? "yes,bag slipped" : "no,";
    const when = `${place[2]}-03-0${fill}T06:0${number}`;
    const line = (outlet: string, text: string) =>
      [
        ...place,
        product,
        fill,
        number,
        outlet,
        turns,
        text,
        tare,
        division,
        when,
        left,
        "13.5",
      ].join(",");
    return kind === 3 && number > 2
      ? [line("left", gross), line("right", gross)]
      : [line("", gross)];
  });
  // Earlier than the others of its fill, which begins with the first that was weighed.
  const spilled = [...place, product, fill, 5, "", "", "", "", "", `${place[2]}-03-01T05:59`];
  return kind === 2 ? [...caught, `${spilled.join(",")},yes,tray tipped over,`] : caught;
}
