import type { Session } from "../session.ts";
import { now } from "./entry.tsx";

/** The sheet for the cab; it is there on paper only. */
export function Sheet({ session }: { readonly session: Session }) {
  const words = session.words.value;
  const { page } = words;
  const { columns } = page.sheet;
  return (
    <div class="sheet">
      <h1>{page.sheetOf(now())}</h1>
      <ul>
        {page.safety.lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <table>
        <thead>
          <tr>
            {[columns.bin, columns.set, page.figures.error, columns.why, columns.space].map(
              (heading) => (
                <th key={heading} scope="col">
                  {heading}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {session.all.value.map(({ answer, lines }) => {
            const { bin, answers } = answer;
            return (
              <tr key={bin.bin}>
                <th scope="row">
                  {bin.bin}
                  <br />
                  <small>{page.fill(bin.product, bin.fill)}</small>
                </th>
                <td>
                  <strong>{lines?.action ?? page.noCatches}</strong>
                </td>
                <td>
                  {answers === null
                    ? ""
                    : (words.delivery.plusMinus(answers.delivery) ?? page.unknown)}
                </td>
                <td>
                  {[lines?.sure, lines?.why[0], lines?.doNotSkip]
                    .filter((line) => line != null)
                    .join(" ")}
                </td>
                <td class="space" />
              </tr>
            );
          })}
        </tbody>
      </table>
      <p>{page.sheet.again}</p>
      <p>{page.safety.deferral}</p>
    </div>
  );
}
