import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { Tray } from './tray.tsx';

export type SetReportProps = {
  code: string;
  /** What was said last; null while nobody has. */
  said: string | null;
  action: FormAction;
  id: string;
};

/** How the cold jars set: one question, and it teaches the strength of the powder that was in it. */
export const SetReport = ({ code, said, action, id }: SetReportProps) => (
  <Tray title="Did it set?">
    <p>{said ? `Last noted: ${said}.` : 'Tilt a cold jar, 48 hours after it was filled. Do not shake it before.'}</p>
    <form action={action}>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="code" value={code} />
      <Field
        as="select"
        name="set"
        label="The jars"
        options={[
          { value: '2', label: 'set' },
          { value: '1', label: 'are soft' },
          { value: '0', label: 'run' },
        ]}
      />
      <Button kind="quiet">Note the set</Button>
    </form>
  </Tray>
);
