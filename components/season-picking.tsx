import type { PlainDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import type { FormAction } from './form-action.ts';
import { colouredFoods } from './fruit-colour.ts';
import { HarvestCurve } from './harvest-curve.tsx';
import styles from './season-picking.module.css';
import { SightForm } from './sight-form.tsx';

export type SeasonPickingProps = {
  /** Where an estimate by eye is sent, and an id for each row's. */
  see: { action: FormAction; ids: Readonly<Record<string, string>> };
  rows: readonly {
    id: string;
    label: string;
    code: string;
    foodId: string;
    soon: boolean;
    pickedKg: string;
    comingKg: string;
    middle: string;
    sentence: string;
    because: string;
    restsOn: string;
    picked: readonly { day: PlainDate; kg: number }[];
    coming: readonly { day: PlainDate; p10: number; p25: number; p50: number; p75: number; p90: number }[];
  }[];
};

/** Curves drawn at once; the others of the season open beneath them. */
const DRAWN = 6;
const COLOURED = new Set(colouredFoods());

/** Crops being picked as curves, the others as a table. */
export function SeasonPicking({ rows, see }: SeasonPickingProps) {
  const soon = rows.filter((r) => r.soon);
  const later = rows.filter((r) => !r.soon);
  return (
    <>
      <Curves rows={soon.slice(0, DRAWN)} see={see} />
      {soon.length > DRAWN ? (
        <details className={styles.more}>
          <summary>{soon.length - DRAWN} more being picked or about to be</summary>
          <Curves rows={soon.slice(DRAWN)} see={see} />
        </details>
      ) : null}
      {soon.length === 0 && later[0] ? (
        <p>
          No crop is being picked. Next is {later[0].label.toLowerCase()}: half ripe by {later[0].middle},{' '}
          {later[0].comingKg} in 8 seasons in 10.
        </p>
      ) : null}
      {later.length > 0 ? (
        <details className={styles.more}>
          <summary>
            {later.length} {soon.length > 0 ? 'later ' : ''}
            {later.length === 1 ? 'crop' : 'crops'}, what {later.length === 1 ? 'it' : 'they'} may bring
          </summary>
          <Later rows={later} />
        </details>
      ) : null}
    </>
  );
}

function Later({ rows }: Pick<SeasonPickingProps, 'rows'>) {
  return (
    <DataTable
      caption="Later crops"
      hideCaption
      columns={[
        { key: 'crop', label: 'Crop' },
        { key: 'coming', label: 'To come, 8 seasons in 10' },
        { key: 'middle', label: 'Half ripe by' },
        { key: 'why', label: 'Rests on' },
      ]}
      rows={rows.map((r) => ({
        id: r.id,
        cells: { crop: r.label, coming: r.comingKg, middle: r.middle, why: r.restsOn },
      }))}
    />
  );
}

function Curves({ rows, see }: SeasonPickingProps) {
  if (rows.length === 0) return null;
  return (
    <div className={styles.curves}>
      {rows.map((r) => (
        <div key={r.id}>
          <HarvestCurve
            cropId={COLOURED.has(r.code) ? r.code : r.foodId}
            cropLabel={r.label}
            picked={r.picked}
            coming={r.coming}
            sentence={r.sentence}
          />
          <details className={styles.more}>
            <summary>Why so much</summary>
            <p>{r.because}</p>
          </details>
          <SightForm action={see.action} id={see.ids[r.id] ?? ''} cropId={r.id} label={r.label} />
        </div>
      ))}
    </div>
  );
}
