import { PlotFrame } from './plot-frame.tsx';
import { bandPath, roundTicks } from './plot-scale.ts';

export type SetChartProps = {
  /** Where a pectin gel is firm, by the page's own figures: soluble solids in °Bx, acidity as pH. */
  zone: { solids: readonly [number, number]; ph: readonly [number, number] };
  point: { solids: number; ph: number; label: string };
  /** Says what the point means and what would move it into the zone. */
  sentence: string;
  /** Source of the zone. */
  source: string;
};

/** Solids against acidity with this batch as a point. A picture of the gel only: it says nothing about processing. */
export function SetChart({ zone, point, sentence, source }: SetChartProps) {
  const x = {
    from: Math.min(50, zone.solids[0] - 5, point.solids - 3),
    to: Math.max(75, zone.solids[1] + 5, point.solids + 3),
  };
  const y = {
    from: Math.min(2.4, zone.ph[0] - 0.2, point.ph - 0.2),
    to: Math.max(4.2, zone.ph[1] + 0.2, point.ph + 0.2),
  };
  const far = point.solids > (x.from + x.to) / 2;
  return (
    <figure>
      <figcaption>{sentence}</figcaption>
      <PlotFrame
        x={x}
        y={y}
        xTicks={roundTicks(x, 5).map((v) => ({ at: v, label: `${v}°` }))}
        yTicks={roundTicks(y, 4).map((v) => ({ at: v, label: v.toFixed(1) }))}
        xTitle="soluble solids, °Bx"
        yTitle="pH (lower is sharper)"
        describe={sentence}
        marks={[
          {
            x: zone.solids[0],
            y: zone.ph[0],
            place: 'right',
            node: <span style={{ position: 'relative', top: '-0.875rem' }}>firm set</span>,
          },
          {
            x: point.solids,
            y: point.ph,
            place: 'on',
            node: (
              <i
                style={{
                  display: 'block',
                  width: 16,
                  height: 16,
                  borderRadius: '50%',
                  background: 'var(--ink)',
                  border: '3px solid var(--enamel)',
                }}
              />
            ),
          },
          { x: point.solids, y: point.ph, place: far ? 'left' : 'right', node: <b>&nbsp;{point.label}&nbsp;</b> },
        ]}
      >
        <path
          d={bandPath(
            [
              { x: zone.solids[0], low: zone.ph[0], high: zone.ph[1] },
              { x: zone.solids[1], low: zone.ph[0], high: zone.ph[1] },
            ],
            x,
            y,
          )}
          fill="var(--well)"
          stroke="var(--edge)"
          strokeWidth={1.5}
          strokeDasharray="5 4"
        />
      </PlotFrame>
      <p className="quiet">Source of the zone: {source}</p>
    </figure>
  );
}
