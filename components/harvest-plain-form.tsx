import type { PlainDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { GRADES, type PadRow } from './harvest-pad-state.ts';
import type { PadContainer } from './harvest-weights.ts';

export type HarvestPlainFormProps = {
  rows: readonly PadRow[];
  containers: readonly PadContainer[];
  day: PlainDate;
  action?: FormAction | undefined;
  plainId?: string | undefined;
};

/**
 * The shed screen without a script: one bucket a time. Fields: `day, row, gross, unit, container, containerCount`, one weight for
 * each grade but the best (`grade-blemished`, `grade-soft`, `grade-cull`; the rest is perfect), `groundFall`.
 */
export function HarvestPlainForm({ rows, containers, day, action, plainId }: HarvestPlainFormProps) {
  const rowChoices = rows.map((r) => ({ value: r.id, label: `${r.cropLabel}, ${r.label}` }));
  return (
    <form action={action}>
      <input type="hidden" name="day" value={day} />
      <input type="hidden" name="id" value={plainId ?? ''} />
      <Field as="select" name="row" label="Row" options={rowChoices} required />
      <Field name="gross" label="What the scale says" inputMode="decimal" required />
      <Field
        as="select"
        name="unit"
        label="In"
        options={[
          { value: 'kg', label: 'kg' },
          { value: 'lb', label: 'lb' },
        ]}
      />
      <Field
        as="select"
        name="container"
        label="Weighed in"
        options={containers.map((c) => ({ value: c.id, label: c.label }))}
      />
      <Field name="containerCount" label="How many of them" inputMode="numeric" defaultValue="1" />
      {GRADES.slice(1).map((g) => (
        <Field key={g} name={`grade-${g}`} label={`Of it, ${g}`} inputMode="decimal" />
      ))}
      <p>
        <label style={{ display: 'flex', alignItems: 'center', gap: '0.75rem', minHeight: 'var(--target)' }}>
          <input type="checkbox" name="groundFall" value="true" style={{ width: '1.75rem', height: '1.75rem' }} />{' '}
          Picked up from the ground
        </label>
      </p>
      <Button size="large" block>
        Record
      </Button>
    </form>
  );
}
