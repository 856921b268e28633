import Link from 'next/link';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { fruitColour, labelColour } from './fruit-colour.ts';
import styles from './plan-board.module.css';
import { blocksOfTrack, boardHours, clock } from './plan-board-layout.ts';

export type PlanBlock = {
  id: string;
  day: PlainDate;
  /** Rows it occupies: burner, pan, canner, person. */
  trackIds: readonly string[];
  /** Minutes after midnight; a finish after midnight is more than 1440. */
  start: number;
  finish: number;
  /** "Damson jam A". */
  label: string;
  foodId: string;
  product?: string;
  href?: string;
};
export type PlanTrack = { id: string; label: string; kind: 'burner' | 'pan' | 'canner' | 'person' };
export type PlanBoardProps = {
  days: readonly PlainDate[];
  tracks: readonly PlanTrack[];
  blocks: readonly PlanBlock[];
};

/**
 * Days by burners, pans, canners and people: who and what is busy when. The list in words is what the phone, the printer and a
 * screen reader get; the drawn board is added where there is room for it.
 */
export function PlanBoard({ days, tracks, blocks }: PlanBoardProps) {
  const label = new Map(tracks.map((t) => [t.id, t.label]));
  return (
    <div className={styles.board}>
      {days.map((day) => {
        const todays = blocks.filter((b) => b.day === day).sort((a, b) => a.start - b.start);
        return (
          <section key={day} className={styles.day} aria-label={shortDate(day)}>
            <h3>{shortDate(day)}</h3>
            {todays.length === 0 ? (
              <p className="quiet">Nothing planned.</p>
            ) : (
              <>
                <ol className={styles.list}>
                  {todays.map((b) => (
                    <li key={b.id}>
                      <span className={styles.when}>
                        {clock(b.start)} to {clock(b.finish)}
                      </span>
                      <span>
                        <i
                          className={`${styles.chip} keeps-colour`}
                          style={{ background: fruitColour(b.foodId, b.product) }}
                        />
                        {b.href ? (
                          <Link href={b.href} prefetch={false}>
                            {b.label}
                          </Link>
                        ) : (
                          <b>{b.label}</b>
                        )}
                        <span className={styles.with}>{b.trackIds.map((t) => label.get(t) ?? t).join(', ')}</span>
                      </span>
                    </li>
                  ))}
                </ol>
                <DayDrawing tracks={tracks} blocks={todays} />
              </>
            )}
          </section>
        );
      })}
    </div>
  );
}

function DayDrawing({ tracks, blocks }: { tracks: readonly PlanTrack[]; blocks: readonly PlanBlock[] }) {
  const { from, to, ticks } = boardHours(blocks);
  const percent = (minute: number) => `${(((minute - from) / (to - from)) * 100).toFixed(2)}%`;
  const used = tracks.filter((t) => blocks.some((b) => b.trackIds.includes(t.id)));
  return (
    <div className={styles.drawing} aria-hidden="true">
      <div className={styles.hours}>
        {ticks.map((m) => (
          <span key={m} style={{ left: percent(m) }}>
            {clock(m)}
          </span>
        ))}
      </div>
      {used.map((t) => (
        <div key={t.id} className={styles.track}>
          <span className={styles.trackName}>{t.label}</span>
          <div className={styles.lane}>
            {ticks.map((m) => (
              <i key={m} className={styles.tick} style={{ left: percent(m) }} />
            ))}
            {blocksOfTrack(blocks, t.id).map((b) => {
              const ground = fruitColour(b.foodId, b.product);
              return (
                <span
                  key={b.id}
                  className={`${styles.block} keeps-colour`}
                  title={`${b.label}, ${clock(b.start)} to ${clock(b.finish)}`}
                  style={{
                    left: percent(b.start),
                    width: `calc(${percent(from + b.finish - b.start)} - 2px)`,
                    background: ground,
                    color: labelColour(ground),
                  }}
                >
                  {b.label}
                </span>
              );
            })}
          </div>
        </div>
      ))}
    </div>
  );
}
