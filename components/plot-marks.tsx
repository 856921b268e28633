import { linePath } from './plot-scale.ts';

type Span = { from: number; to: number };

/** A weighing on a plot. */
export const PlotDot = ({ fill, ring }: { fill: string; ring: string }) => (
  <i
    style={{
      display: 'block',
      width: 14,
      height: 14,
      borderRadius: '50%',
      background: fill,
      border: `2.5px solid ${ring}`,
    }}
  />
);

/** The level to reach, across the whole plot. */
export const TargetLine = ({ at, x, y }: { at: number; x: Span; y: Span }) => (
  <path
    d={linePath(
      [
        { x: x.from, y: at },
        { x: x.to, y: at },
      ],
      x,
      y,
    )}
    stroke="var(--ink)"
    strokeWidth={2}
    strokeDasharray="7 5"
    fill="none"
  />
);

/** What the level is, standing on its line. */
export const TargetWord = ({ children }: { children: string }) => (
  <b style={{ background: 'var(--enamel)', padding: '0 .25rem' }}>{children}</b>
);
