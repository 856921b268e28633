import { counted } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { LinkButton } from './link-button.tsx';
import { Tray } from './tray.tsx';

type Card = { code: string; label: string; state: string; day: PlainDate };
type Done = Card & { left: readonly { count: number; unit: string }[] };
export type BatchListProps = { going: readonly Card[]; done: readonly Done[] };

const NEXT: Record<string, string> = {
  cooking: 'on the stove',
  filled: 'filled: to the canner',
  cooling: 'cooling: seals to be checked',
};
const COLUMNS = [
  { key: 'code', label: 'Batch' },
  { key: 'what', label: 'What' },
  { key: 'day', label: 'Day' },
];
const cellsOf = (b: Card) => ({
  code: <a href={`/batches/${b.code}`}>{b.code}</a>,
  what: b.label,
  day: `${shortDate(b.day)} ${b.day.slice(0, 4)}`,
});

/** Batches on the go first, then the last thirty that are done. */
export function BatchList({ going, done }: BatchListProps) {
  return (
    <>
      <Tray title="On the go" action={<LinkButton href="/batches/new">Start a batch</LinkButton>}>
        {going.length === 0 ? (
          <EmptyState
            title="Nothing is on the stove or cooling."
            first="Start a batch from fruit that was weighed in, or take one from the plan."
          />
        ) : (
          <DataTable
            caption="Batches on the go"
            hideCaption
            columns={[...COLUMNS, { key: 'state', label: 'State' }]}
            rows={going.map((b) => ({ id: b.code, cells: { ...cellsOf(b), state: NEXT[b.state] ?? b.state } }))}
          />
        )}
      </Tray>
      <Tray title="Lately made">
        <DataTable
          caption="The last batches made"
          hideCaption
          none="No batch has been made yet."
          columns={[...COLUMNS, { key: 'left', label: 'Left of it', numeric: true }]}
          rows={done.map((b) => ({
            id: b.code,
            cells: { ...cellsOf(b), left: b.left.map((l) => counted(l.count, l.unit)).join(', ') || 'none' },
          }))}
        />
      </Tray>
    </>
  );
}
