import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { PantryView } from '#components/pantry-view.tsx';
import { counted } from '#lib/units/format.ts';
import { outagesNow } from '#lib/usecases/read-outage.ts';
import { lineSlug, readPantry } from '#lib/usecases/read-pantry.ts';
import { placeContext } from '../../place-context.ts';
import { bringBack, take } from './actions.ts';

export const metadata: Metadata = { title: 'Pantry' };

export default async function PantryPage({
  searchParams,
}: {
  searchParams: Promise<{ said?: string; refused?: string; line?: string }>;
}) {
  const context = await placeContext();
  const [view, stopped, { said, refused, line }] = await Promise.all([
    readPantry(context),
    outagesNow(context),
    searchParams,
  ]);
  if (line) redirect(`/pantry/${lineSlug(line)}`);
  const answer =
    view.jars === 0
      ? 'No jar on the shelf yet'
      : `${counted(view.jars, 'jar')}, and room for ${view.roomFor} more half-pints`;
  const sub =
    view.floor.length > 0
      ? `${view.floor.reduce((n, f) => n + f.count, 0)} jars stand on the floor: no shelf was free when they came in, or none was chosen.`
      : 'Drawn to scale from what stands there.';
  return (
    <>
      <AnswerHeading answer={answer} sub={sub} />
      <PantryView
        view={view}
        take={take}
        bringBack={bringBack}
        glass={context.place.jarKinds.filter((k) => k.canning)}
        stopped={stopped}
        backId={randomUUID()}
        ids={view.lines.map(() => randomUUID())}
        said={said ?? null}
        refused={refused ?? null}
      />
    </>
  );
}
