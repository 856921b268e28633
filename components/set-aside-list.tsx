import { mass } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { LinkButton } from './link-button.tsx';
import { Tray } from './tray.tsx';

type Row = {
  code: string;
  label: string;
  amount: number;
  unit: string;
  madeOn: PlainDate;
  bestBefore: PlainDate | null;
  where: string;
  state: string;
  strength: string;
  seedsOut: boolean;
  next: string;
};
export type SetAsideListProps = { lots: readonly Row[] };

const GOING: readonly (readonly [state: string, title: string])[] = [
  ['fresh', 'Fresh: today'],
  ['drying', 'On the trays'],
  ['conditioning', 'In the conditioning jar'],
  ['working', 'Turning to vinegar'],
];

const amountOf = (l: Row): string => (l.unit === 'g' ? mass(l.amount) : `${l.amount} packs`);
const linkOf = (l: Row) => <a href={`/set-asides/${l.code}`}>{l.code}</a>;

/** What has to be done first; then what is ready, oldest first. */
export function SetAsideList({ lots }: SetAsideListProps) {
  const ready = lots.filter((l) => !GOING.some(([state]) => state === l.state));
  return (
    <>
      {GOING.map(([state, title]) => {
        const here = lots.filter((l) => l.state === state);
        return here.length === 0 ? null : (
          <Tray key={state} title={title}>
            <DataTable
              caption={title}
              hideCaption
              columns={[
                { key: 'what', label: 'What' },
                { key: 'lot', label: 'Lot' },
                { key: 'left', label: 'Weight', numeric: true },
                { key: 'next', label: 'Now' },
              ]}
              rows={here.map((l) => ({
                id: l.code,
                cells: { what: l.label, lot: linkOf(l), left: amountOf(l), next: l.next },
              }))}
            />
          </Tray>
        );
      })}
      <Tray title="Ready to use">
        {ready.length === 0 ? (
          <EmptyState
            title="Nothing is ready yet."
            first="When a batch is filled, its trim can be kept instead of thrown; a pressing leaves pomace."
          />
        ) : (
          <DataTable
            caption="Set-asides that are ready"
            hideCaption
            columns={[
              { key: 'what', label: 'What' },
              { key: 'lot', label: 'Lot' },
              { key: 'left', label: 'Left', numeric: true },
              { key: 'strength', label: 'Strength' },
              { key: 'where', label: 'Where' },
              { key: 'until', label: 'Best before' },
            ]}
            rows={ready.map((l) => ({
              id: l.code,
              cells: {
                what: `${l.label}${l.seedsOut ? ', seeds out' : ''}`,
                lot: linkOf(l),
                left: amountOf(l),
                strength: l.strength,
                where: l.where,
                until: l.bestBefore ? `${shortDate(l.bestBefore)} ${l.bestBefore.slice(0, 4)}` : 'not said',
              },
            }))}
          />
        )}
      </Tray>
      <Tray title="Set more aside">
        <p>
          <LinkButton href="/set-asides/press">Press fruit</LinkButton>{' '}
          <LinkButton href="/set-asides/dry">Fruit, herbs, zest to dry</LinkButton>{' '}
          <LinkButton href="/set-asides/blend">Blend a tea</LinkButton>
        </p>
      </Tray>
      <p>
        <a href="/set-asides/season">What the year’s trim became</a>
      </p>
    </>
  );
}
