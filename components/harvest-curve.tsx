import { daysBetween, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { fruitColour } from './fruit-colour.ts';
import { PlotFrame } from './plot-frame.tsx';
import { bandPath, linePath, roundTicks } from './plot-scale.ts';

export type HarvestCurveProps = {
  cropId: string;
  cropLabel: string;
  /** Kilograms picked so far, day by day, added up. */
  picked: readonly { day: PlainDate; kg: number }[];
  /** What may still come, added up, in five quantiles; begins at the last picking. */
  coming: readonly { day: PlainDate; p10: number; p25: number; p50: number; p75: number; p90: number }[];
  /** "Plums: 17 kg picked, about half. Another 18 kg or so; 8 times in 10 between 10 and 26." */
  sentence: string;
};

/** Picked so far as a solid line, running into the bands of what may still come. */
export function HarvestCurve({ cropId, cropLabel, picked, coming, sentence }: HarvestCurveProps) {
  const days = [...picked.map((p) => p.day), ...coming.map((c) => c.day)].sort();
  const first = days[0];
  const last = days.at(-1);
  if (!first || !last) return <p>{sentence}</p>;
  const at = (day: PlainDate) => daysBetween(first, day);
  const x = { from: 0, to: Math.max(1, at(last)) };
  const y = { from: 0, to: Math.max(1, ...picked.map((p) => p.kg), ...coming.map((c) => c.p90)) * 1.05 };
  const colour = fruitColour(cropId);
  const band = (low: 'p10' | 'p25', high: 'p75' | 'p90') =>
    bandPath(
      coming.map((c) => ({ x: at(c.day), low: c[low], high: c[high] })),
      x,
      y,
    );
  const weeks = Math.ceil(x.to / 7);
  const step = 7 * Math.max(1, Math.ceil(weeks / 6));
  const dayTicks = Array.from({ length: Math.floor(x.to / step) + 1 }, (_, i) => i * step);
  const dayAt = (n: number) => days.find((d) => at(d) >= n) ?? last;
  return (
    <figure>
      <figcaption>{sentence}</figcaption>
      <PlotFrame
        x={x}
        y={y}
        xTicks={dayTicks.map((n) => ({ at: n, label: shortDate(dayAt(n)).slice(4) }))}
        yTicks={roundTicks(y, 4).map((v) => ({ at: v, label: `${v} kg` }))}
        describe={`${cropLabel}, kilograms picked and still to come. ${sentence}`}
      >
        <path d={band('p10', 'p90')} fill={colour} fillOpacity={0.28} />
        <path d={band('p25', 'p75')} fill={colour} fillOpacity={0.5} />
        <path
          d={linePath(
            coming.map((c) => ({ x: at(c.day), y: c.p50 })),
            x,
            y,
          )}
          fill="none"
          stroke="var(--ink)"
          strokeWidth={1.5}
          strokeDasharray="5 4"
        />
        <path
          d={linePath(
            picked.map((p) => ({ x: at(p.day), y: p.kg })),
            x,
            y,
          )}
          fill="none"
          stroke={colour}
          strokeWidth={4}
          strokeLinejoin="round"
        />
      </PlotFrame>
      <p className="quiet">Solid: picked. Dark: 5 seasons in 10. Light: 8 seasons in 10.</p>
    </figure>
  );
}
