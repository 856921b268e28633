import { kilograms, poundsText } from '#lib/units/format.ts';
import styles from './harvest-pad.module.css';
import { allReadings, type PadState, type PadTap } from './harvest-pad-state.ts';

export type HarvestReadoutProps = { pad: PadState; net: number; bucketNet: number | null; tap: (t: PadTap) => void };

/** What is being typed, and what it comes to without the containers, in both units and in large type. */
export function HarvestReadout({ pad, net, bucketNet, tap }: HarvestReadoutProps) {
  const onGrade = pad.focus === 'gross' ? null : pad.focus;
  const text = onGrade ? (pad.gradeTexts[onGrade]?.text ?? '') : pad.draft;
  const bucket = pad.readings.length + 1;
  const count = allReadings(pad).length;
  return (
    <div className={styles.readout}>
      <div className={styles.typed}>
        <span className={styles.what}>
          {onGrade ? `Of it, ${onGrade}` : `Scale says${bucket > 1 ? `, bucket ${bucket}` : ''}`}
        </span>
        {onGrade ? (
          <button type="button" className={styles.back} onClick={() => tap({ do: 'focus', on: 'gross' })}>
            back to the scale
          </button>
        ) : null}
        <output className={styles.digits} aria-live="off">
          {text || '0'}
          <span className={styles.unit}> {pad.unit}</span>
        </output>
      </div>
      <div className={styles.net} aria-live="polite">
        <span className={styles.what}>
          Fruit alone{count > 1 ? `, ${count} buckets` : ''}
          {count > 1 && bucketNet !== null && bucketNet > 0 ? `; this one ${kilograms(bucketNet)}` : ''}
        </span>
        {net < 0 ? (
          <b className={styles.refused}>lighter than its empty container</b>
        ) : (
          <span className={styles.masses}>
            <b>{pad.unit === 'kg' ? kilograms(net) : poundsText(net)}</b>
            <b className={styles.second}>{pad.unit === 'kg' ? poundsText(net) : kilograms(net)}</b>
          </span>
        )}
      </div>
    </div>
  );
}
