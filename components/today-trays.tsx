import { counted, duration, kilograms } from '#lib/units/format.ts';
import { EmptyState } from './empty-state.tsx';
import { LinkButton } from './link-button.tsx';
import { PerishList } from './perish-list.tsx';
import type { Shown } from './shown-figure.tsx';
import { StatusMark } from './status-mark.tsx';
import styles from './today-trays.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type TodayTraysProps = {
  view: {
    turning: readonly {
      id: string;
      name: string;
      row: string | null;
      grade: string;
      grams: number;
      shareLeft: number;
      deadline: string;
      left: string;
      foodId: string;
      lotIds: readonly string[];
      state: 'due' | 'late' | null;
      low: number;
      high: number;
      takes: string | null;
      figures: readonly { label: string; figure: Shown }[];
    }[];
    past: readonly { name: string; grams: number }[];
    pastG: number;
    remains: { kinds: number; grams: number };
    cullG: number;
    due: readonly { href: string; text: string; late: boolean }[];
    feed: string;
    minutesFree: number;
    people: readonly { name: string; minutes: number }[];
    lids: number;
    sugarG: number;
  };
};

const SHOWN = 12;

/** What turns first, what a batch asks for, and what there is to work with tonight. */
export function TodayTrays({ view }: TodayTraysProps) {
  const rows = view.turning.slice(0, SHOWN).map((t) => ({
    id: t.id,
    name: t.row ? `${t.name}, ${t.row.includes(',') ? 'rows' : 'row'} ${t.row}` : t.name,
    grade: t.grade,
    grams: t.grams,
    shareLeft: t.shareLeft,
    deadline: t.deadline,
    left: t.left,
    cropId: t.foodId,
    href: `/batches/new?${new URLSearchParams(t.lotIds.map((id) => ['lot', id]))}`,
    ...(t.state ? { state: t.state } : {}),
    ...(t.takes ? { takes: t.takes } : {}),
    figures: t.figures,
  }));
  return (
    <TrayTable>
      <Tray title="Turning first" action={<LinkButton href="/plan">Plan the next days</LinkButton>}>
        {rows.length === 0 ? (
          <EmptyState
            title="No fruit is waiting."
            first="Weigh in a picking, and its clock starts here."
            action={<LinkButton href="/harvest">Weigh in a picking</LinkButton>}
          />
        ) : (
          <PerishList rows={rows} />
        )}
        {view.turning.length > SHOWN ? (
          <p className={styles.more}>and {view.turning.length - SHOWN} more that keep longer.</p>
        ) : null}
        {view.remains.grams > 0 ? (
          <p className={styles.more}>
            {kilograms(view.remains.grams)} more in small remains of {counted(view.remains.kinds, 'kind')}, under 100 g
            each.
          </p>
        ) : null}
        {view.past.length > 0 ? (
          <details className={styles.past}>
            <summary>
              <StatusMark
                state="late"
                word={`${kilograms(view.pastG)} past its time: look at it, cook or compost it today`}
              />
            </summary>
            <p>{view.past.map((p) => `${p.name} ${kilograms(p.grams)}`).join(' · ')}</p>
          </details>
        ) : null}
        {view.cullG > 0 ? (
          <p className={styles.more}>{kilograms(view.cullG)} of cull waits for the compost or the hens.</p>
        ) : null}
      </Tray>
      <div className={styles.side}>
        <Tray title="Waiting for you">
          {view.due.length === 0 ? (
            <p className={styles.none}>Nothing is on the stove, cooling or due.</p>
          ) : (
            <ul className={styles.due}>
              {view.due.map((d) => (
                <li key={d.text}>
                  <a href={d.href}>{d.late ? <StatusMark state="late" word={d.text} /> : d.text}</a>
                </li>
              ))}
            </ul>
          )}
          <p className={styles.more}>
            <a href={view.feed}>As a calendar to subscribe to</a>
          </p>
        </Tray>
        <Tray title="To work with today">
          <dl className={styles.means}>
            <div>
              <dt>Kitchen time</dt>
              <dd>
                {view.minutesFree > 0 ? duration(view.minutesFree) : 'none set aside'}
                <a className={styles.from} href="/place">
                  {view.people.length > 0
                    ? view.people.map((p) => `${p.name} ${duration(p.minutes)}`).join(', ')
                    : 'Who is there'}
                </a>
              </dd>
            </div>
            <div>
              <dt>Lids, regular</dt>
              <dd>
                {counted(view.lids, 'lid')}
                <a className={styles.from} href="/trace?code=lid">
                  its boxes
                </a>
              </dd>
            </div>
            <div>
              <dt>Sugar</dt>
              <dd>
                {kilograms(view.sugarG)}
                <a className={styles.from} href="/trace?code=sugar">
                  its bags
                </a>
              </dd>
            </div>
          </dl>
        </Tray>
      </div>
    </TrayTable>
  );
}
