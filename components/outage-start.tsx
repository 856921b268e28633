import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { ChoiceTiles } from './choice-tiles.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type OutageStartProps = {
  rooms: readonly { code: string; label: string; kind: string }[];
  /** Today first. */
  days: readonly PlainDate[];
  now: string;
  open: readonly { id: string; room: string; left: string; until: string | null }[];
  typed: Readonly<Record<string, string | undefined>>;
  action: FormAction;
  id: string;
};

/** Which one has stopped, and when. */
export function OutageStart({ rooms, days, now, open, typed, action, id }: OutageStartProps) {
  const chosen = typed.room ?? (rooms.length === 1 ? rooms[0]?.code : undefined);
  return (
    <>
      {typed.refused ? <Problem title="Not written down">{typed.refused}</Problem> : null}
      <TrayTable columns="equal">
        <Tray title="Which one, and when?">
          {rooms.length === 0 ? (
            <EmptyState
              title="No freezer and no fridge is on record."
              first="With its litres, the program knows how full it is."
              action={<LinkButton href="/place/store/new?as=freezer">Enter a freezer</LinkButton>}
            />
          ) : (
            <form action={action}>
              <input type="hidden" name="id" value={id} />
              <ChoiceTiles
                name="room"
                legend="Which one has stopped?"
                options={rooms.map((r) => ({ value: r.code, label: r.label }))}
                {...(chosen ? { defaultValue: chosen } : {})}
                required
              />
              <Field
                name="failedTime"
                label="It failed about"
                hint="02:10. Empty where nobody knows."
                {...(typed.failedTime ? { defaultValue: typed.failedTime } : {})}
              />
              <Field
                as="select"
                name="failedDay"
                label="On"
                options={days.map((d, i) => ({ value: d, label: `${i === 0 ? 'today, ' : ''}${shortDate(d)}` }))}
                defaultValue={typed.failedDay ?? (days[0] as string)}
              />
              <Field name="foundTime" label="Found today at" defaultValue={typed.foundTime ?? now} required />
              <Button kind="refuse" size="large">
                It has stopped
              </Button>
            </form>
          )}
        </Tray>
        <Tray title="Standing still now">
          {open.length === 0 ? (
            <p className="quiet">None.</p>
          ) : (
            <ul>
              {open.map((o) => (
                <li key={o.id}>
                  <a href={`/outage/${o.id}`}>{o.room}</a>: {o.left} undecided
                  {o.until ? `, until about ${o.until}` : ''}
                </li>
              ))}
            </ul>
          )}
        </Tray>
      </TrayTable>
    </>
  );
}
