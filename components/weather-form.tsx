'use client';
import { useActionState, useId } from 'react';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';
import styles from './weather-form.module.css';

export type WeatherState = {
  said: string | null;
  doubtful: readonly string[];
  refused: readonly string[];
  text: string;
  unit: 'C' | 'F';
};
export type WeatherFormProps = {
  action: (before: WeatherState, data: FormData) => Promise<WeatherState>;
  id: string;
};

const UNITS = [
  { value: 'C', label: '°C' },
  { value: 'F', label: '°F' },
];
const NOTHING: WeatherState = { said: null, doubtful: [], refused: [], text: '', unit: 'C' };

/** Daily weather pasted or as a file; what cannot be is named line by line and the text stays. */
export function WeatherForm({ action, id }: WeatherFormProps) {
  const [state, send] = useActionState(action, NOTHING);
  const file = useId();
  return (
    <Tray title="Bring in daily weather">
      {state.refused.length > 0 ? (
        <Problem title="Nothing was taken">
          {state.refused.map((r) => (
            <span key={r} className={styles.line}>
              {r}
            </span>
          ))}
        </Problem>
      ) : null}
      {state.said ? <p role="status">{state.said}</p> : null}
      {state.doubtful.length > 0 ? (
        <details open>
          <summary>Taken, but look again ({state.doubtful.length})</summary>
          <ul>
            {state.doubtful.map((d) => (
              <li key={d}>{d}</li>
            ))}
          </ul>
        </details>
      ) : null}
      <form action={send} className={styles.form} key={`${state.text.length} ${state.refused.length} ${state.said}`}>
        <input type="hidden" name="id" value={id} />
        <Field as="select" name="unit" label="Temperatures in" options={UNITS} defaultValue={state.unit} />
        <Field
          as="textarea"
          name="text"
          label="Paste the table"
          hint="One day a line: date, lowest, highest, rain. 2025-04-12,-1.5,11,0. A first line of names is read."
          defaultValue={state.text}
        />
        <div>
          <label htmlFor={file}>Or a CSV file</label>
          <input id={file} type="file" name="file" accept=".csv,.txt,text/csv,text/plain" className={styles.file} />
        </div>
        <Button>Take it in</Button>
      </form>
    </Tray>
  );
}
