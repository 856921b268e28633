import { mass } from '#lib/units/format.ts';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { MassFlow, type MassFlowProps } from './mass-flow.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type SetAsideSeasonProps = {
  flow: MassFlowProps['flow'];
  cameOffG: number;
  keptG: number;
  fromCompostG: number;
  pectin: { typ: number; low: number; high: number } | null;
  used: readonly { code: string; label: string; usedG: number; strength: string; figure: Shown | null }[];
};

/** The year's trim as ribbons, and what it stood in for. */
export function SetAsideSeasonView({ flow, cameOffG, keptG, fromCompostG, pectin, used }: SetAsideSeasonProps) {
  if (flow.links.length === 0)
    return (
      <Tray title="From the bowl to the batch">
        <EmptyState
          title="Nothing came off any fruit yet."
          first="When a batch is filled, its trim is on record, kept or not."
        />
      </Tray>
    );
  return (
    <>
      <Tray title="From the bowl to the batch">
        <MassFlow title="Set-asides of the year, from what came off to what it became" flow={flow} />
      </Tray>
      <TrayTable columns="equal">
        <Tray title="Kept from the compost">
          <p>
            {mass(cameOffG)} of trim came off, {mass(keptG)} of it was kept
            {keptG > fromCompostG ? `; ${mass(keptG - fromCompostG)} of that went to the compost after all` : ''}.
          </p>
          <p className="quiet">Weighed fresh. Rings and other fruit cut on purpose are no trim.</p>
        </Tray>
        <Tray title="Bought pectin not needed">
          {pectin ? (
            <p>
              {mass(pectin.typ)} of grade 150 ({mass(pectin.low)} to {mass(pectin.high)}).
            </p>
          ) : (
            <p>No powder or tested stock went into a batch.</p>
          )}
          {used.length > 0 ? (
            <DataTable
              caption="What went into batches"
              columns={[
                { key: 'lot', label: 'Lot' },
                { key: 'used', label: 'Used', numeric: true },
                { key: 'strength', label: 'Strength' },
                { key: 'pectin', label: 'Stands in for' },
              ]}
              rows={used.map((u) => ({
                id: u.code,
                cells: {
                  lot: <a href={`/set-asides/${u.code}`}>{u.code}</a>,
                  used: mass(u.usedG),
                  strength: u.strength,
                  pectin: u.figure ? <ShownFigure figure={u.figure} label="" /> : 'not counted',
                },
              }))}
            />
          ) : null}
        </Tray>
      </TrayTable>
    </>
  );
}
