import { mass } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { Tray } from './tray.tsx';

export type SetAsideListProps = {
  lots: readonly {
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
  }[];
};

/** Set-asides oldest first, with what is known of each. */
export function SetAsideList({ lots }: SetAsideListProps) {
  return (
    <Tray title="Kept from the pan">
      {lots.length === 0 ? (
        <EmptyState
          title="Nothing is set aside yet."
          first="When a batch is filled, its trim can be kept instead of thrown."
        />
      ) : (
        <DataTable
          caption="Set-asides"
          hideCaption
          columns={[
            { key: 'what', label: 'What' },
            { key: 'lot', label: 'Lot' },
            { key: 'left', label: 'Left', numeric: true },
            { key: 'state', label: 'State' },
            { key: 'strength', label: 'Strength' },
            { key: 'where', label: 'Where' },
            { key: 'made', label: 'Made' },
          ]}
          rows={lots.map((l) => ({
            id: l.code,
            cells: {
              what: `${l.label}${l.seedsOut ? ', seeds out' : ''}`,
              lot: <a href={`/trace/${l.code}`}>{l.code}</a>,
              left: l.unit === 'g' ? mass(l.amount) : `${l.amount} packs`,
              state: l.state,
              strength: l.strength,
              where: l.where,
              made: `${shortDate(l.madeOn)} ${l.madeOn.slice(0, 4)}`,
            },
          }))}
        />
      )}
    </Tray>
  );
}
