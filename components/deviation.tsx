import styles from './batch-card.module.css';
import type { BatchCardProps } from './batch-shown.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { Tray } from './tray.tsx';

/** What goes wrong at a canner, in the words of the log. */
export const DEVIATIONS: readonly string[] = [
  'the time was cut short',
  'minutes of another altitude',
  'it left the boil',
  'lids not covered by the water',
  'the acid was left out',
  'another jar or size than tested',
];

/** Found out afterwards that the process was not as printed; folded away, for most batches never ask for it. */
export function Deviation({ view, actions, ids }: BatchCardProps) {
  const canned = view.jars.some((j) => j.kind === 'jars' && j.onHand > 0);
  if (!view.sheet || !canned || (view.state !== 'cooling' && view.state !== 'jarred')) return null;
  return (
    <Tray>
      <details>
        <summary>Something was different in the canner</summary>
        <p className={styles.how}>
          A sealed lid does not prove the process. Found within 2 hours the jars may be processed again in full; within
          24 they go to the cold; later they go out. Jars that have left stand in the{' '}
          <a href={`/recall?code=${encodeURIComponent(view.code)}`}>recall list</a>.
        </p>
        <form action={actions.deviate} className={styles.line}>
          <input type="hidden" name="id" value={ids[4]} />
          <input type="hidden" name="code" value={view.code} />
          <Field as="select" name="what" label="What?" options={DEVIATIONS.map((d) => ({ value: d, label: d }))} />
          <Button kind="refuse" size="large">
            Put the batch on hold
          </Button>
        </form>
      </details>
    </Tray>
  );
}
