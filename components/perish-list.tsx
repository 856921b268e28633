import Link from 'next/link';
import { BothUnits } from './both-units.tsx';
import { fruitColour } from './fruit-colour.ts';
import styles from './perish-list.module.css';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { StatusMark, type StatusState } from './status-mark.tsx';

export type PerishRow = {
  id: string;
  /** "Damsons, row D3". */
  name: string;
  /** perfect, blemished, soft, cull; or "maturing". */
  grade: string;
  grams: number;
  /** Share of its life left at this grade and place, 0 to 1. */
  shareLeft: number;
  /** The deadline as people say it: "cook by 08:00 Sat". */
  deadline: string;
  /** "11 h left", said beside the bar. */
  left?: string;
  cropId: string;
  href: string;
  /** What placing it would take: "about 7 half-pints of raspberry jam, 1 h of work". */
  takes?: string;
  /** What its time, its jars and its work rest on. */
  figures?: readonly { label: string; figure: Shown }[];
  /** `due` inside the day, `late` past its time, `waiting` while it still ripens. */
  state?: Extract<StatusState, 'due' | 'late' | 'waiting' | 'hold'>;
};

/** Fruit in the order it turns: name and grade, both weights, how much of its life is left, and the deadline. */
export function PerishList({ rows, firstUnit = 'kg' }: { rows: readonly PerishRow[]; firstUnit?: 'kg' | 'lb' }) {
  return (
    <ul className={styles.list}>
      {rows.map((row) => (
        <li key={row.id}>
          <Link href={row.href} prefetch={false} className={styles.row}>
            <span className={styles.name}>
              <b>{row.name}</b>
              <span className={styles.grade}>{row.grade}</span>
            </span>
            <span className={styles.kilos}>
              <BothUnits grams={row.grams} first={firstUnit} />
            </span>
            <span className={styles.bar} aria-hidden="true">
              <i
                className="keeps-colour"
                style={{
                  width: `${Math.round(Math.min(1, Math.max(0, row.shareLeft)) * 100)}%`,
                  background: fruitColour(row.cropId),
                }}
              />
            </span>
            <span className={styles.deadline}>
              {row.state ? <StatusMark state={row.state} word={row.deadline} /> : row.deadline}
              {row.left ? <span className={styles.left}>{row.left}</span> : null}
            </span>
          </Link>
          {row.figures && row.figures.length > 0 ? (
            <details className={styles.takes}>
              <summary>
                {row.takes ?? 'Its clock'}{' '}
                <span className={styles.why}>
                  why<span className="heard"> these figures of {row.name}</span>
                </span>
              </summary>
              {row.figures.map((f) => (
                <ShownFigure key={f.label} {...f} />
              ))}
            </details>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
