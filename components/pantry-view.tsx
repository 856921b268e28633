import { bothMasses, counted } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import type { FormAction } from './form-action.ts';
import { fruitColour } from './fruit-colour.ts';
import { PantryLines, type PantryLinesProps } from './pantry-lines.tsx';
import { Problem } from './problem.tsx';
import { ShelfPicture } from './shelf-picture.tsx';
import { Tray } from './tray.tsx';

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
  ids: readonly string[];
  said: string | null;
  refused: string | null;
};

/** The shelves as they stand, the lines with their ways out, and what is kept cold or dry. */
export function PantryView({ view, take, ids, said, refused }: PantryViewProps) {
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
      {shelves.length > 0 ? (
        <Tray title="The shelves">
          <ShelfPicture shelves={shelves} columns={4} />
        </Tray>
      ) : null}
      <Tray title="Take one">
        <PantryLines lines={view.lines} takeOne={take} ids={ids} />
      </Tray>
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
