import styles from './batch-card.module.css';
import type { BatchCardProps } from './batch-shown.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { Tray } from './tray.tsx';

/** The meter's reading with its two buffers: in the open where jars wait for it, folded away where nothing asks for it. */
export function BatchPh(props: BatchCardProps) {
  const { ph } = props.view;
  if (!ph.wanted && !ph.tooHigh)
    return (
      <Tray>
        <details>
          <summary>Log a pH reading</summary>
          <PhForm {...props} />
        </details>
      </Tray>
    );
  return (
    <Tray title="pH of the cooled product">
      {ph.tooHigh ? (
        <Caution title="On hold, not for shelf: it read above the limit. To the freezer, or to the fridge. A lower reading of another jar does not lift this; the highest decides." />
      ) : (
        <Caution title="On hold until a calibrated meter has read it: at 4.6 or below the hold ends, above it the jars are not for the shelf." />
      )}
      <PhForm {...props} />
    </Tray>
  );
}

function PhForm({ view, actions, ids }: BatchCardProps) {
  return (
    <>
      <p className={styles.how}>
        About 24 hours after filling{view.ph.hours === null ? '' : ` (now ${view.ph.hours.toFixed(0)} h)`}, at room
        temperature. Blend the jar if it has pieces. Read both buffers first: more than 0.1 off, and the reading is
        void.
      </p>
      <form action={actions.readPh} className={styles.meter}>
        <input type="hidden" name="id" value={ids[2]} />
        <input type="hidden" name="code" value={view.code} />
        <Field name="lowRead" label="Buffer 4.01 reads" inputMode="decimal" required />
        <Field
          as="select"
          name="highNominal"
          label="Upper buffer"
          options={[
            { value: '7.00', label: 'pH 7.00' },
            { value: '6.86', label: 'pH 6.86' },
          ]}
        />
        <Field name="highRead" label="Upper buffer reads" inputMode="decimal" required />
        <Field name="pH" label="The product reads" unit="pH" inputMode="decimal" required />
        <Field name="jar" label="Which jar" hint="Its number, or “the partial jar”" maxLength={60} />
        <Button size="large">Log the pH</Button>
      </form>
    </>
  );
}

/** Readings that count, newest last. Void ones stand in the log only. */
export function PhReadings({ readings }: { readings: BatchCardProps['view']['ph']['readings'] }) {
  return (
    <DataTable
      caption="pH log"
      columns={[
        { key: 'at', label: 'Read' },
        { key: 'pH', label: 'pH', numeric: true },
        { key: 'buffers', label: 'Buffers' },
        { key: 'jar', label: 'Jar' },
      ]}
      rows={readings.map((r) => ({
        id: r.at + r.pH,
        cells: {
          at: <time dateTime={r.at}>{r.read}</time>,
          pH: r.pH.toFixed(2),
          buffers: r.buffers ?? 'not noted',
          jar: r.jar ?? 'not named',
        },
      }))}
    />
  );
}
