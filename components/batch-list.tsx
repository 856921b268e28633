import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { LinkButton } from './link-button.tsx';
import { Tray } from './tray.tsx';

type Card = { code: string; label: string; state: string; day: string };
export type BatchListProps = { going: readonly Card[]; done: readonly Card[] };

const NEXT: Record<string, string> = {
  cooking: 'on the stove',
  filled: 'filled: to the canner',
  cooling: 'cooling: seals to be checked',
};
const COLUMNS = [
  { key: 'code', label: 'Batch' },
  { key: 'what', label: 'What' },
  { key: 'day', label: 'Day' },
  { key: 'state', label: 'State' },
];

/** Batches on the go first, then the last thirty that are done. */
export function BatchList({ going, done }: BatchListProps) {
  const rows = (cards: readonly Card[]) =>
    cards.map((b) => ({
      id: b.code,
      cells: {
        code: <a href={`/batches/${b.code}`}>{b.code}</a>,
        what: b.label,
        day: b.day,
        state: NEXT[b.state] ?? 'in jars',
      },
    }));
  return (
    <>
      <Tray title="On the go" action={<LinkButton href="/batches/new">Start a batch</LinkButton>}>
        {going.length === 0 ? (
          <EmptyState
            title="Nothing is on the stove or cooling."
            first="Start a batch from fruit that was weighed in, or take one from the plan."
          />
        ) : (
          <DataTable caption="Batches on the go" hideCaption columns={COLUMNS} rows={rows(going)} />
        )}
      </Tray>
      <Tray title="Lately made">
        <DataTable
          caption="The last batches made"
          hideCaption
          none="No batch has been made yet."
          columns={COLUMNS}
          rows={rows(done)}
        />
      </Tray>
    </>
  );
}
