import { DataTable } from './data-table.tsx';
import { Tray } from './tray.tsx';

export type RowTraysProps = {
  view: {
    years: readonly { year: string; kg: string; each: string; cull: string; jars: string; finished: string }[];
    neighbours: readonly {
      id: string;
      row: string;
      crop: string;
      kg: string;
      each: string;
      against: string;
      here: boolean;
    }[];
    finishedSays: string;
    offYear: string;
  };
};

/** A row by year, beside its neighbours, and what people made of its jars. */
export function RowTrays({ view }: RowTraysProps) {
  return (
    <>
      <Tray title="Year by year">
        {view.offYear ? <p>{view.offYear}</p> : null}
        <DataTable
          caption="Picked, culled and jarred by year"
          hideCaption
          none="Nothing picked here is on record yet: weigh a picking in under its row."
          columns={[
            { key: 'year', label: 'Year' },
            { key: 'kg', label: 'Picked, kg', numeric: true },
            { key: 'each', label: 'kg a plant', numeric: true },
            { key: 'cull', label: 'Culls', numeric: true },
            { key: 'jars', label: 'Jars and packs', numeric: true },
            { key: 'finished', label: 'Finished', numeric: true },
          ]}
          rows={view.years.map((y) => ({ id: y.year, cells: { ...y } }))}
        />
      </Tray>
      <Tray title="Whose jars were finished?">
        <p>{view.finishedSays}</p>
      </Tray>
      {view.neighbours.length > 1 ? (
        <Tray title="Beside its neighbours">
          <DataTable
            caption="Rows of the same crop in the last year picked"
            hideCaption
            columns={[
              { key: 'row', label: 'Row' },
              { key: 'crop', label: 'Crop' },
              { key: 'kg', label: 'Picked, kg', numeric: true },
              { key: 'each', label: 'kg a plant', numeric: true },
              { key: 'against', label: 'Against this one' },
            ]}
            rows={view.neighbours.map((n) => ({
              id: n.id,
              cells: {
                row: n.here ? `${n.row} (this one)` : <a href={`/place/row/${encodeURIComponent(n.row)}`}>{n.row}</a>,
                crop: n.crop,
                kg: n.kg,
                each: n.each,
                against: n.against,
              },
            }))}
          />
        </Tray>
      ) : null}
    </>
  );
}
