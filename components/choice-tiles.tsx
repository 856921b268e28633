import styles from './choice-tiles.module.css';

export type ChoiceTilesProps = {
  name: string;
  legend: string;
  options: readonly { value: string; label: string; hint?: string }[];
  defaultValue?: string;
  required?: boolean;
};

/** One of a few, as large tiles over plain radio buttons: works by knuckle, by keyboard and without a script. */
export function ChoiceTiles({ name, legend, options, defaultValue, required = false }: ChoiceTilesProps) {
  return (
    <fieldset className={styles.tiles}>
      <legend>{legend}</legend>
      {options.map((o) => (
        <label key={o.value} className={styles.tile}>
          <input
            type="radio"
            name={name}
            value={o.value}
            defaultChecked={o.value === defaultValue}
            required={required}
          />
          <span>
            <b>{o.label}</b>
            {o.hint ? <span className={styles.hint}>{o.hint}</span> : null}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
