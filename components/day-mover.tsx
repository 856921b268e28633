import { addDays, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import styles from './day-mover.module.css';
import type { FormAction } from './form-action.ts';

export type DayMoverProps = {
  today: PlainDate;
  /** Days worth visiting: `{ day: '2025-09-12', label: 'Damsons come in' }`. */
  quickDays: readonly { day: PlainDate; label: string }[];
  /** Receives one field, `day` (YYYY-MM-DD). */
  action: FormAction;
  firstDay?: PlainDate;
  lastDay?: PlainDate;
  /** Said above the list; by default that the demonstration can be seen on another day. */
  note?: string;
};

/** Moves the day of the demonstration: the next day, a day of the list, or any day. Plain forms, no script needed. */
export function DayMover({ today, quickDays, action, firstDay, lastDay, note }: DayMoverProps) {
  return (
    <div className={styles.mover}>
      <p className={styles.note}>{note ?? 'See this place on another day. Nothing is changed by looking.'}</p>
      <form action={action}>
        <Button name="day" value={addDays(today, 1)} block>
          Next day: {shortDate(addDays(today, 1))}
        </Button>
        <ul className={styles.days}>
          {quickDays.map(({ day, label }) => (
            <li key={day}>
              <button type="submit" name="day" value={day} className={styles.day} aria-pressed={day === today}>
                <b>
                  {shortDate(day)} {day.slice(0, 4)}
                </b>
                <span>{label}</span>
              </button>
            </li>
          ))}
        </ul>
      </form>
      <form action={action} className={styles.any}>
        <label htmlFor="day-mover-day">Another day</label>
        <input
          id="day-mover-day"
          type="date"
          name="day"
          defaultValue={today}
          key={today}
          min={firstDay}
          max={lastDay}
          required
        />
        <label htmlFor="day-mover-time">at</label>
        <input id="day-mover-time" type="time" name="time" defaultValue="07:30" required />
        <Button kind="quiet">Go to it</Button>
      </form>
    </div>
  );
}
