import { useSignal } from "@preact/signals";
import { min } from "simple-statistics";
import type { CurvePoint } from "../../../model/next-catch-curve.ts";
import type { BinAnswer } from "../answer.ts";
import { type DrawnCurve, drawnCurve, size } from "../curve.ts";
import type { Session } from "../session.ts";

/** What each catch buys; the value under the finger is read out in words. */
export function Curve({
  session,
  answer,
}: {
  readonly session: Session;
  readonly answer: BinAnswer;
}) {
  const words = session.words.value;
  const { page } = words;
  const needed = answer.answers?.catchesNeeded ?? answer.plan;
  const picked = useSignal<number | null>(null);
  const { tolerance = 0, assurance = 0 } = needed?.options ?? {};
  const curve = needed === null ? null : drawnCurve(needed.curve, tolerance);
  if (needed === null || curve === null)
    return (
      <section class="curve">
        <h2>{page.curve.heading}</h2>
        <p class="quiet">{page.curve.none}</p>
      </section>
    );
  const told = needed.curve.points.filter(({ halfWidth }) => halfWidth !== null);
  const usual = told.findIndex(({ further }) => further === 1);
  const place = Math.min(picked.value ?? Math.max(0, usual), told.length - 1);
  const point = told[place];
  const said = point === undefined ? "" : (page.point(point) ?? "");
  const cheapest = session.costOf(answer)?.cheapest?.catches ?? null;
  return (
    <section class="curve">
      <h2>{page.curve.heading}</h2>
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={page.pointsOf(needed.curve)}
        onPointerDown={(event) => {
          picked.value = nearest(event, told, curve);
        }}
        onPointerMove={(event) => {
          if (event.pointerType === "mouse" || event.buttons > 0)
            picked.value = nearest(event, told, curve);
        }}
      >
        <Axes curve={curve} session={session} />
        <Reference curve={curve} name={page.curve.tolerance} />
        {cheapest === null ? null : (
          <Price curve={curve} at={cheapest} name={page.curve.cheapest} />
        )}
        <path class="assured" d={curve.assured} />
        <path class="expected" d={curve.line} />
        {curve.planned.map(({ x, y, point: { catches } }) => (
          <circle key={catches} class="planned" cx={x} cy={y} r="4" />
        ))}
        {curve.made.map(({ x, y, point: { catches } }) => (
          <circle key={catches} class="made" cx={x} cy={y} r="6" />
        ))}
        {point === undefined ? null : (
          <path
            class="picked"
            d={`M${curve.x(point.catches)} ${size.top}V${size.height - size.bottom}`}
          />
        )}
      </svg>
      <p class="key">
        <span class="made">{page.curve.made}</span>
        <span class="expected">{page.curve.planned}</span>
        <span class="assured">{page.assured(assurance)}</span>
      </p>
      <input
        type="range"
        min="0"
        max={told.length - 1}
        step="1"
        value={place}
        aria-label={page.curve.read}
        aria-valuetext={said}
        onInput={(event) => {
          picked.value = Number(event.currentTarget.value);
        }}
      />
      <p class="readout" aria-live="polite">
        {said}
      </p>
    </section>
  );
}

function Axes({ curve, session }: { readonly curve: DrawnCurve; readonly session: Session }) {
  const words = session.words.value;
  const foot = size.height - size.bottom;
  return (
    <g class="axes">
      {curve.yTicks.map(({ y, halfWidth }) => (
        <g key={halfWidth}>
          <path d={`M${size.left} ${y}H${size.width - size.right}`} />
          <text x={size.left - 6} y={y + 4} text-anchor="end">
            {words.format.plain(halfWidth * 100)}
          </text>
        </g>
      ))}
      {curve.xTicks.map(({ x, catches }) => (
        <text key={catches} x={x} y={foot + 16} text-anchor="middle">
          {words.format.count(catches)}
        </text>
      ))}
      <text x={size.width - size.right} y={size.height - 3} text-anchor="end">
        {words.catchesNeeded.catchesOfFill}
      </text>
      <text x="2" y={size.top - 3}>
        ± %
      </text>
    </g>
  );
}

function Reference({ curve, name }: { readonly curve: DrawnCurve; readonly name: string }) {
  return (
    <g class="reference">
      <path d={`M${size.left} ${curve.toleranceY}H${size.width - size.right}`} />
      <text x={size.width - size.right} y={curve.toleranceY - 5} text-anchor="end">
        {name}
      </text>
    </g>
  );
}

function Price({
  curve,
  at,
  name,
}: {
  readonly curve: DrawnCurve;
  readonly at: number;
  readonly name: string;
}) {
  const x = curve.x(at);
  return (
    <g class="price">
      <path d={`M${x} ${size.top + 10}V${size.height - size.bottom}`} />
      <text x={x} y={size.top + 6} text-anchor={at === 0 ? "start" : "middle"}>
        {name}
      </text>
    </g>
  );
}

/** Place of the point that is nearest to the finger, sideways. */
function nearest(
  event: PointerEvent & { readonly currentTarget: SVGSVGElement },
  told: readonly CurvePoint[],
  curve: DrawnCurve,
): number {
  const { left, width } = event.currentTarget.getBoundingClientRect();
  const x = ((event.clientX - left) / width) * size.width;
  const off = told.map(({ catches }) => Math.abs(curve.x(catches) - x));
  return off.indexOf(min(off));
}
