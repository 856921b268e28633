import type { ReactNode } from 'react';
import styles from './plot-frame.module.css';
import { percentOf, type Span } from './plot-scale.ts';

export type Tick = { at: number; label: string };
export type PlotFrameProps = {
  x: Span;
  y: Span;
  xTicks: readonly Tick[];
  yTicks: readonly Tick[];
  xTitle?: string;
  yTitle?: string;
  /** What a person who cannot see it is told. */
  describe: string;
  /** Paths in a square of 100 by 100, stretched to the room there is. */
  children: ReactNode;
  /** Words and marks laid over the drawing at places of the scales; they keep their size. */
  marks?: readonly { x: number; y: number; place?: 'right' | 'left' | 'over' | 'on'; node: ReactNode }[];
};

/** Axes and ticks around a drawing. Text is text, not drawing: it keeps its size at 320 px and at 200 %. */
export function PlotFrame({ x, y, xTicks, yTicks, xTitle, yTitle, describe, children, marks = [] }: PlotFrameProps) {
  return (
    <div className={styles.plot} role="img" aria-label={describe}>
      {yTitle ? <span className={styles.yTitle}>{yTitle}</span> : null}
      <div className={styles.yTicks}>
        {yTicks.map((t) => (
          <span key={t.at} style={{ bottom: `${percentOf(y, t.at)}%` }}>
            {t.label}
          </span>
        ))}
      </div>
      <div className={styles.room}>
        <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true" className="keeps-colour">
          {yTicks.map((t) => (
            <path key={t.at} d={`M0 ${100 - percentOf(y, t.at)}H100`} className={styles.grid} />
          ))}
          {children}
        </svg>
        {marks.map((m, i) => (
          <span
            key={i}
            className={styles.mark}
            data-place={m.place ?? 'right'}
            style={{ left: `${percentOf(x, m.x)}%`, bottom: `${percentOf(y, m.y)}%` }}
          >
            {m.node}
          </span>
        ))}
      </div>
      <div className={styles.xTicks}>
        {xTicks.map((t) => (
          <span
            key={t.at}
            data-edge={percentOf(x, t.at) < 3 ? 'first' : undefined}
            style={{ left: `${percentOf(x, t.at)}%` }}
          >
            {t.label}
          </span>
        ))}
      </div>
      {xTitle ? <span className={styles.xTitle}>{xTitle}</span> : null}
    </div>
  );
}
