import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { PartOf } from './part-of.tsx';
import styles from './set-aside-card.module.css';
import { Tick } from './tick.tsx';

export type DryingWays = {
  dryings: readonly { way: string; title: string; hours: string; gets: string; never: boolean }[];
  room: { celsius: number; humidityPct: number };
};
export type DryItProps = {
  view: DryingWays & {
    code: string;
    material: { seeds: boolean; rind: boolean } | null;
    seedsOut: boolean;
    traysAsked: number;
    dryerC: number;
  };
  dry: FormAction;
  id: string | undefined;
};

/** Each way of drying with its hours, the room's air to ask about, and the form that lays it to dry. */
export function DryIt({ view: v, dry, id }: DryItProps) {
  return (
    <>
      <DataTable
        caption="Ways of drying"
        hideCaption
        columns={[
          { key: 'way', label: 'Way' },
          { key: 'hours', label: 'Takes' },
          { key: 'gets', label: 'Water left' },
        ]}
        rows={v.dryings.map((d) => ({ id: d.way, cells: { way: d.title, hours: d.hours, gets: d.gets } }))}
      />
      <details>
        <summary>Another room’s air</summary>
        <form className={styles.form}>
          <Field
            name="roomC"
            label="Room"
            unit="°C"
            inputMode="decimal"
            defaultValue={String(v.room.celsius)}
            required
          />
          <Field
            name="humidity"
            label="Humidity"
            unit="%"
            inputMode="decimal"
            defaultValue={String(v.room.humidityPct)}
            required
          />
          <Button kind="quiet">Work it out</Button>
        </form>
      </details>
      <details>
        <summary>Where the hours come from</summary>
        <p>
          Four cases of five. Dryer: printed hours of household dryers. Oven: twice those. Windowsill: apple slices by
          13 published runs, carried far beyond their 40 to 50 °C; all else by how thirsty the air is. Hung: a week or
          more, as printed. What air leaves in food: isotherms, ±3 points.
        </p>
      </details>
      <form action={dry} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <input type="hidden" name="code" value={v.code} />
        <input type="hidden" name="roomC" value={v.room.celsius} />
        <input type="hidden" name="humidityPct" value={v.room.humidityPct} />
        <Field
          as="select"
          name="way"
          label="Dried in"
          options={v.dryings.map((d) => ({ value: d.way, label: d.title }))}
        />
        <PartOf />
        <Field name="trays" label="Trays" inputMode="numeric" required defaultValue={String(v.traysAsked)} />
        <Field
          name="centiC"
          label="Dryer or oven set to"
          unit="°C"
          inputMode="decimal"
          required
          defaultValue={String(v.dryerC)}
        />
        {v.material?.seeds ? <Tick name="seedsOut" label="The seeds are out" on={v.seedsOut} /> : null}
        {v.material?.rind ? <Tick name="waxed" label="The rind was waxed or treated" /> : null}
        <Button>Lay it to dry</Button>
      </form>
    </>
  );
}
