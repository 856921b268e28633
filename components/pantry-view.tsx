import { bothMasses, counted } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { fruitColour } from './fruit-colour.ts';
import { LinkButton } from './link-button.tsx';
import { PantryLines, type PantryLinesProps } from './pantry-lines.tsx';
import { Problem } from './problem.tsx';
import { ShelfPicture } from './shelf-picture.tsx';
import { StatusMark } from './status-mark.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type PantryViewProps = {
  view: {
    shelves: readonly {
      address: string;
      widthMm: number;
      depthMm: number;
      clearMm: number;
      jars: readonly {
        line: string;
        slug: string;
        foodId: string;
        kind: { pitchMm: number; heightMm: number };
        count: number;
      }[];
    }[];
    floor: readonly { line: string; slug: string; count: number }[];
    lines: PantryLinesProps['lines'];
    cold: readonly {
      room: string;
      line: string;
      slug: string;
      count: number;
      unit: string;
      bestBefore: PlainDate | null;
      grams: number | null;
    }[];
  };
  take: FormAction;
  bringBack: FormAction;
  /** Jars that may come back empty. */
  glass: readonly { code: string; label: string }[];
  /** Freezers and fridges that stand still now. */
  stopped: readonly { id: string; room: string; left: string }[];
  backId: string;
  ids: readonly string[];
  said: string | null;
  refused: string | null;
};

/** The shelves as they stand, the lines with their ways out, and what is kept cold or dry. */
export function PantryView({ view, take, bringBack, glass, stopped, backId, ids, said, refused }: PantryViewProps) {
  const shelves = view.shelves.map((s) => ({
    ...s,
    jars: s.jars.map((j) => ({
      line: j.slug,
      label: j.line,
      foodColour: fruitColour(j.foodId),
      jarKind: j.kind,
      count: j.count,
      href: `/pantry/${j.slug}`,
    })),
  }));
  return (
    <>
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      {stopped.map((o) => (
        <p key={o.id}>
          <a href={`/outage/${o.id}`}>
            <StatusMark state="late" word={`${o.room} stands still: ${o.left}`} />
          </a>
        </p>
      ))}
      {shelves.length > 0 ? (
        <Tray title="The shelves">
          <ShelfPicture shelves={shelves} columns={4} />
        </Tray>
      ) : null}
      <Tray title="Take one">
        <ButtonRow>
          <LinkButton kind="quiet" href="/stall">
            Stall: what is in it?
          </LinkButton>
          <LinkButton kind="quiet" href="/labels">
            Labels
          </LinkButton>
          <LinkButton kind="quiet" href="/stock-take">
            Stock-take
          </LinkButton>
          <LinkButton kind="quiet" href="/recall">
            Recall
          </LinkButton>
          <LinkButton kind="quiet" href="/suspect">
            A jar looks wrong
          </LinkButton>
          <LinkButton kind="quiet" href="/outage">
            A freezer has stopped
          </LinkButton>
          <LinkButton kind="quiet" href="/print/wall">
            Wall sheet
          </LinkButton>
        </ButtonRow>
        <PantryLines lines={view.lines} takeOne={take} ids={ids} />
      </Tray>
      <TrayTable columns="equal">
        <Tray title="Asked for by name">
          <form action="/pantry">
            <Field name="line" label="Which line?" hint="Damson jam, fig conserve" required />
            <Button kind="quiet">Find it</Button>
          </form>
        </Tray>
        <Tray title="Empty jars brought back">
          <form action={bringBack}>
            <input type="hidden" name="id" value={backId} />
            <Field
              as="select"
              name="jar"
              label="Jars"
              options={glass.map((g) => ({ value: g.code, label: g.label }))}
            />
            <Field name="count" label="How many came back?" inputMode="numeric" defaultValue="1" required />
            <Button kind="quiet">Back to the empties</Button>
          </form>
        </Tray>
      </TrayTable>
      <Tray title="Cold and dry">
        <DataTable
          caption="What is kept in the fridge, the freezers and the dry cupboard"
          hideCaption
          none="Nothing is kept cold or dry yet."
          columns={[
            { key: 'what', label: 'What' },
            { key: 'where', label: 'Where' },
            { key: 'until', label: 'Best before' },
            { key: 'left', label: 'Left', numeric: true },
          ]}
          rows={view.cold.map((c, i) => ({
            id: `${c.slug}-${i}`,
            cells: {
              what: c.line,
              where: c.room,
              until: c.bestBefore ? `${shortDate(c.bestBefore)} ${c.bestBefore.slice(0, 4)}` : 'not given',
              left: c.grams === null ? counted(c.count, c.unit) : bothMasses(c.grams),
            },
          }))}
        />
      </Tray>
    </>
  );
}
