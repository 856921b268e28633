import { counted } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type RecallShown = {
  code: string;
  label: string;
  batches: readonly { code: string; line: string; day: string; jars: number }[];
  jars: readonly { code: string; line: string; where: string; placed: boolean }[];
  sums: readonly { what: string; count: number }[];
  places: readonly { where: string; count: number; placed: boolean }[];
  total: number;
  made: number;
  placedPercent: number;
  byWeight: readonly { code: string; label: string; left: string }[];
  free: number;
  held: readonly string[];
};

export type RecallViewProps = {
  view: RecallShown;
  hold: FormAction;
  drill: FormAction;
  ids: readonly [string, string];
};

/** Every jar a lot went into, and where each of them is; the hold on what is still here. */
export function RecallView({ view, hold, drill, ids }: RecallViewProps) {
  return (
    <>
      <TrayTable columns="equal">
        <Tray title="Where they are">
          <p>
            <b>{view.sums.map((s) => `${s.count} ${s.what}`).join(', ')}.</b>
          </p>
          <DataTable
            caption="Places: here, given, sold and gone"
            hideCaption
            none="It went into no jar."
            columns={[
              { key: 'where', label: 'Where' },
              { key: 'count', label: 'Jars', numeric: true },
            ]}
            rows={view.places.map((p) => ({ id: p.where, cells: { where: p.where, count: p.count } }))}
          />
          <p className="quiet">
            {view.total} counted one by one, {view.made} filled.
          </p>
        </Tray>
        <Tray title="Hold">
          <p>
            {view.free > 0
              ? `${counted(view.free, 'lot')} with something left may still leave.`
              : 'Nothing of it may leave: all that is here is on hold.'}
          </p>
          {view.free > 0 ? (
            <form action={hold}>
              <input type="hidden" name="id" value={ids[0]} />
              <input type="hidden" name="code" value={view.code} />
              <Field name="why" label="Why" defaultValue={`recall of ${view.code}`} required maxLength={120} />
              <Button kind="refuse">Hold them all</Button>
            </form>
          ) : null}
          <ButtonRow>
            <LinkButton kind="quiet" href={`/print/recall?code=${encodeURIComponent(view.code)}`}>
              Recall list
            </LinkButton>
            <form action={drill}>
              <input type="hidden" name="id" value={ids[1]} />
              <input type="hidden" name="code" value={view.code} />
              <Button kind="quiet">It was a drill: write it down</Button>
            </form>
          </ButtonRow>
          {view.byWeight.length > 0 ? (
            <DataTable
              caption="Also here, by weight"
              columns={[
                { key: 'what', label: 'What' },
                { key: 'lot', label: 'Lot' },
                { key: 'left', label: 'Left', numeric: true },
              ]}
              rows={view.byWeight.map((w) => ({
                id: w.code,
                cells: { what: w.label, lot: <a href={`/trace/${w.code}`}>{w.code}</a>, left: w.left },
              }))}
            />
          ) : null}
        </Tray>
      </TrayTable>
      <details>
        <summary>Batches: {view.batches.length}</summary>
        <DataTable
          caption="Batches it went into"
          hideCaption
          none="It went into no batch."
          columns={[
            { key: 'code', label: 'Batch' },
            { key: 'line', label: 'What' },
            { key: 'day', label: 'Made' },
            { key: 'jars', label: 'Jars or packs', numeric: true },
          ]}
          rows={view.batches.map((b) => ({
            id: b.code,
            cells: {
              code: <a href={`/batches/${b.code}`}>{b.code}</a>,
              line: b.line,
              day: `${shortDate(b.day as PlainDate)} ${b.day.slice(0, 4)}`,
              jars: b.jars,
            },
          }))}
        />
      </details>
      <details>
        <summary>Jar by jar: {view.total}</summary>
        <JarByJar view={view} />
      </details>
    </>
  );
}

export const JarByJar = ({ view }: { view: RecallShown }) => (
  <DataTable
    caption={`Every jar ${view.code} went into`}
    hideCaption
    columns={[
      { key: 'jar', label: 'Jar' },
      { key: 'line', label: 'What' },
      { key: 'where', label: 'Where' },
    ]}
    rows={view.jars.map((j) => ({ id: j.code, cells: { jar: j.code, line: j.line, where: j.where } }))}
  />
);

export type RecallStartProps = {
  typed: string;
  drills: readonly { day: string; code: string; total: number; placedPercent: number }[];
};

/** Which lot is doubted, and the drills so far. */
export function RecallStart({ typed, drills }: RecallStartProps) {
  return (
    <>
      <Tray title="Which lot is doubted?">
        <form action="/recall">
          <Field
            name="code"
            label="Lot, receipt or jar"
            hint="R-25180-SUG-1, a fruit lot, a batch or one jar of it"
            defaultValue={typed}
            required
            size="large"
          />
          <Button>Draw the circle</Button>
        </form>
      </Tray>
      <Tray title="Drills">
        <DataTable
          caption="Practice runs, the newest first"
          hideCaption
          none="No drill is written down yet. Once a year is common practice."
          columns={[
            { key: 'day', label: 'Day' },
            { key: 'code', label: 'Lot' },
            { key: 'total', label: 'Jars', numeric: true },
            { key: 'placed', label: 'Placed', numeric: true },
          ]}
          rows={drills.map((d, i) => ({
            id: `${d.day}-${i}`,
            cells: { day: d.day, code: d.code, total: d.total, placed: `${d.placedPercent} %` },
          }))}
        />
      </Tray>
    </>
  );
}
