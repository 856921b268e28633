import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { StoveView } from '#components/stove-view.tsx';
import { readStove } from '#lib/usecases/stove.ts';
import { boils, fill, process, read, setTest, stop } from '../../../../(place)/batches/actions.ts';
import { placeContext } from '../../../../place-context.ts';

export const metadata: Metadata = { title: 'At the stove' };

export default async function StovePage({
  params,
  searchParams,
}: {
  params: Promise<{ code: string }>;
  searchParams: Promise<{ said?: string; refused?: string }>;
}) {
  const context = await placeContext();
  const [{ code }, { said, refused }] = await Promise.all([params, searchParams]);
  const view = await readStove(context, decodeURIComponent(code));
  if (!view) notFound();
  return (
    <StoveView
      view={view}
      actions={{ boils, setTest, stop, read, fill, process }}
      ids={Array.from({ length: 5 }, () => randomUUID())}
      renderedAt={Date.now()}
      {...(said ? { said } : {})}
      {...(refused ? { refused } : {})}
    />
  );
}
