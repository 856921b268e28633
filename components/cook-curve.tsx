import { PlotFrame } from './plot-frame.tsx';
import { PlotDot, TargetLine, TargetWord } from './plot-marks.tsx';
import { linePath, type Point, roundTicks } from './plot-scale.ts';

export type CookCurveProps = {
  /** Expected pan weight: minutes of boil, kilograms of what is in the pan. */
  expected: readonly { minute: number; kg: number }[];
  /** Weighings at the stove. */
  readings?: readonly { minute: number; kg: number }[];
  /** Weights reckoned from temperatures, a guide. */
  guides?: readonly { minute: number; kg: number }[];
  /** From the last weighing to the stop, at the rate seen. */
  rest?: readonly { minute: number; kg: number }[];
  /** The weight to stop at, the surest stop. */
  stopKg: number;
  colour: string;
  /** "Stop at 2.14 kg, about 13 minutes of boil." */
  sentence: string;
};

/** The pan's weight over the boil: expected line, weighings as points, and the weight to stop at. */
export function CookCurve({
  expected,
  readings = [],
  guides = [],
  rest = [],
  stopKg,
  colour,
  sentence,
}: CookCurveProps) {
  const all = [...expected, ...readings, ...guides, ...rest];
  const x = { from: 0, to: Math.max(1, ...all.map((p) => p.minute)) * 1.1 };
  const low = Math.min(stopKg, ...all.map((p) => p.kg));
  const high = Math.max(stopKg, ...all.map((p) => p.kg));
  const y = { from: low - (high - low) * 0.2, to: high + (high - low) * 0.1 };
  const points: Point[] = expected.map((p) => ({ x: p.minute, y: p.kg }));
  return (
    <figure>
      <figcaption>{sentence}</figcaption>
      <PlotFrame
        x={x}
        y={y}
        xTicks={roundTicks(x, 5).map((m) => ({ at: m, label: String(m) }))}
        yTicks={roundTicks(y, 4).map((v) => ({ at: v, label: v.toFixed(1) }))}
        xTitle="minutes at a full boil"
        yTitle="kg in the pan"
        describe={`${sentence} ${readings.length} weighings so far.`}
        marks={[
          {
            x: 0,
            y: stopKg,
            place: 'right',
            node: <TargetWord>{`stop at ${stopKg.toFixed(2)} kg`}</TargetWord>,
          },
          ...readings.map((r) => ({
            x: r.minute,
            y: r.kg,
            place: 'on' as const,
            node: <PlotDot fill={colour} ring="var(--ink)" />,
          })),
          ...guides.map((r) => ({
            x: r.minute,
            y: r.kg,
            place: 'on' as const,
            node: <PlotDot fill="var(--enamel)" ring="var(--ink)" />,
          })),
        ]}
      >
        <TargetLine at={stopKg} x={x} y={y} />
        <path d={linePath(points, x, y)} stroke={colour} strokeWidth={5} fill="none" strokeLinecap="round" />
        {rest.length > 1 ? (
          <path
            d={linePath(
              rest.map((p) => ({ x: p.minute, y: p.kg })),
              x,
              y,
            )}
            stroke="var(--ink)"
            strokeWidth={3}
            strokeDasharray="3 6"
            fill="none"
          />
        ) : null}
      </PlotFrame>
    </figure>
  );
}
