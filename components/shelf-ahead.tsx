'use client';
import { useState } from 'react';
import { longDate, type PlainDate } from '#lib/units/plain-date.ts';
import styles from './shelf-ahead.module.css';
import { type Board, boardsAtWeek, type LineAhead } from './shelf-ahead-layout.ts';
import { ShelfPicture } from './shelf-picture.tsx';

export type ShelfAheadProps = { weeks: readonly PlainDate[]; boards: readonly Board[]; lines: readonly LineAhead[] };

/** The shelves to scale at any week of the year ahead: a slider, and two buttons for those who would rather step. */
export function ShelfAhead({ weeks, boards, lines }: ShelfAheadProps) {
  const [week, setWeek] = useState(0);
  const last = weeks.length - 1;
  const day = weeks[week] as PlainDate;
  const { boards: filled, floor } = boardsAtWeek(boards, lines, week);
  const there = lines.reduce((n, l) => n + (l.half[week] ?? 0), 0);
  const to = (w: number) => setWeek(Math.min(last, Math.max(0, w)));
  return (
    <div>
      <div className={styles.slide}>
        <button type="button" onClick={() => to(week - 4)} aria-label="Four weeks earlier">
          ‹
        </button>
        <label>
          <span className="heard">Week of the year ahead</span>
          <input
            type="range"
            min={0}
            max={last}
            value={week}
            onChange={(e) => to(Number(e.target.value))}
            aria-valuetext={longDate(day)}
          />
        </label>
        <button type="button" onClick={() => to(week + 4)} aria-label="Four weeks later">
          ›
        </button>
      </div>
      <p role="status">
        Week of <b>{longDate(day)}</b>: {there} jars in half of the seasons
        {floor.length > 0 ? `; ${floor.reduce((n, f) => n + f.count, 0)} would stand on the floor` : ''}.
      </p>
      <p className="quiet">Solid: there in half of the seasons or more. Dashed: more in 1 season of 10.</p>
      <ShelfPicture
        shelves={filled}
        columns={4}
        dashed="more in 1 season of 10"
        caption={`Jars by shelf in the week of ${longDate(day)}`}
      />
      {floor.length > 0 ? (
        <p>
          Does not fit: {floor.map((f) => `${f.label} ${f.count}${f.planned ? ' (1 season in 10)' : ''}`).join(', ')}.
        </p>
      ) : null}
    </div>
  );
}
