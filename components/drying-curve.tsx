import { PlotFrame } from './plot-frame.tsx';
import { PlotDot, TargetLine, TargetWord } from './plot-marks.tsx';
import { bandPath, linePath, roundTicks } from './plot-scale.ts';

export type DryingCurveProps = {
  startG: number;
  targetG: number;
  weighings: readonly { hours: number; grams: number }[];
  /** Hours from the start at which a tenth, half, nine tenths of the outcomes are done; null where that cannot be said. */
  end: { p10: number; p50: number; p90: number } | null;
  sentence: string;
};

/** Weight on the trays by the hour: the weighings, the weight to reach, and when that is expected. */
export function DryingCurve({ startG, targetG, weighings, end, sentence }: DryingCurveProps) {
  const points = [{ hours: 0, grams: startG }, ...weighings];
  const x = { from: 0, to: Math.max(1, end?.p90 ?? 0, ...points.map((p) => p.hours)) * 1.08 };
  const y = { from: 0, to: (startG / 1000) * 1.08 };
  const kg = targetG / 1000;
  const last = points.at(-1) ?? { hours: 0, grams: startG };
  return (
    <figure>
      <figcaption>{sentence}</figcaption>
      <PlotFrame
        x={x}
        y={y}
        xTicks={roundTicks(x, 5).map((h) => ({ at: h, label: String(h) }))}
        yTicks={roundTicks(y, 4).map((v) => ({ at: v, label: v.toFixed(1) }))}
        xTitle="hours on the trays"
        yTitle="kg"
        describe={`${sentence} Weighed ${points.map((p) => `${(p.grams / 1000).toFixed(2)} kg at ${p.hours.toFixed(1)} h`).join(', ')}.`}
        marks={[
          {
            x: 0,
            y: kg,
            place: 'right',
            node: <TargetWord>{`dry at ${kg.toFixed(2)} kg`}</TargetWord>,
          },
          ...points.map((p) => ({
            x: p.hours,
            y: p.grams / 1000,
            place: 'on' as const,
            node: <PlotDot fill="var(--rim)" ring="var(--enamel)" />,
          })),
        ]}
      >
        {end ? (
          <path
            d={bandPath(
              [
                { x: end.p10, low: 0, high: y.to },
                { x: end.p90, low: 0, high: y.to },
              ],
              x,
              y,
            )}
            fill="var(--well)"
            stroke="none"
          />
        ) : null}
        <TargetLine at={kg} x={x} y={y} />
        <path
          d={linePath(
            [
              ...points.map((p) => ({ x: p.hours, y: p.grams / 1000 })),
              ...(end ? [{ x: Math.max(end.p50, last.hours), y: kg }] : []),
            ],
            x,
            y,
          )}
          stroke="var(--rim)"
          strokeWidth={3}
          strokeDasharray="2 6"
          strokeLinecap="round"
          fill="none"
        />
      </PlotFrame>
    </figure>
  );
}
