import { DataTable } from './data-table.tsx';
import { Tray } from './tray.tsx';

export type WeatherTraysProps = {
  view: {
    years: readonly { year: string; sum: string; against: string }[];
    crops: readonly { id: string; label: string; blossom: string; frost: string; heat: string }[];
    countedSays: string;
    helps: readonly string[];
  };
};

/** The year's warmth beside the years before, frost and heat by crop, and what it is worth. */
export function WeatherTrays({ view }: WeatherTraysProps) {
  return (
    <>
      {view.years.length > 0 ? (
        <Tray title="Warmth to this day, year by year">
          <DataTable
            caption="Degree-days by year"
            hideCaption
            columns={[
              { key: 'year', label: 'Year' },
              { key: 'sum', label: 'Degree-days', numeric: true },
              { key: 'against', label: 'Against this year', numeric: true },
            ]}
            rows={view.years.map((y) => ({ id: y.year, cells: { year: y.year, sum: y.sum, against: y.against } }))}
          />
        </Tray>
      ) : null}
      {view.crops.length > 0 ? (
        <Tray title="Frost at blossom, and heat">
          <p>{view.countedSays}</p>
          <DataTable
            caption="Frost and heat by crop"
            hideCaption
            columns={[
              { key: 'crop', label: 'Crop' },
              { key: 'blossom', label: 'Blossom, about' },
              { key: 'frost', label: 'Frost nights', numeric: true },
              { key: 'heat', label: 'Hot days', numeric: true },
            ]}
            rows={view.crops.map((c) => ({
              id: c.id,
              cells: { crop: c.label, blossom: c.blossom, frost: c.frost, heat: c.heat },
            }))}
          />
        </Tray>
      ) : null}
      <Tray title="Does it help the forecast?">
        {view.helps.map((h) => (
          <p key={h}>{h}</p>
        ))}
      </Tray>
    </>
  );
}
