import styles from './harvest-pad.module.css';
import type { PadState, PadTap } from './harvest-pad-state.ts';

export type HarvestKeypadProps = { pad: PadState; tap: (t: PadTap) => void };

const KEYS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0'];

/** Number pad of our own: 3 x 4 digits, the backspace two keys tall, the unit key, and the next bucket. */
export function HarvestKeypad({ pad, tap }: HarvestKeypadProps) {
  const other = pad.unit === 'kg' ? 'lb' : 'kg';
  return (
    <fieldset className={styles.keypad}>
      <legend className="heard">Number pad</legend>
      {KEYS.map((key) => (
        <button
          key={key}
          type="button"
          className={styles.key}
          data-key={key}
          aria-label={key === '.' ? 'decimal point' : key}
          onClick={() => tap({ do: 'digit', key })}
        >
          {key}
        </button>
      ))}
      <button type="button" className={`${styles.key} ${styles.rubout}`} onClick={() => tap({ do: 'backspace' })}>
        <svg viewBox="0 0 32 24" aria-hidden="true">
          <path d="M11 3h18v18H11L2 12zM15 8l8 8M23 8l-8 8" />
        </svg>
        <span className={styles.keyWord}>back</span>
      </button>
      <button
        type="button"
        className={`${styles.key} ${styles.unitKey}`}
        aria-label={`The number is in ${pad.unit}; read it in ${other}`}
        onClick={() => tap({ do: 'unit' })}
      >
        <b>{pad.unit}</b>
        <span className={styles.keyWord}>not {other}</span>
      </button>
      <button
        type="button"
        className={`${styles.key} ${styles.next}`}
        onClick={() => tap({ do: 'next-bucket' })}
        disabled={pad.draft === '' && pad.focus === 'gross'}
      >
        Next bucket
      </button>
    </fieldset>
  );
}
