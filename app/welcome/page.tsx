import type { Metadata } from 'next';
import { Welcome } from '#components/welcome.tsx';
import { places } from '#lib/usecases/open-places.ts';
import { openChosen, startDemo, startOwn } from './actions.ts';

export const metadata: Metadata = { title: 'Welcome' };
export const dynamic = 'force-dynamic';

export default async function WelcomePage({
  searchParams,
}: {
  searchParams: Promise<{ problem?: string; name?: string; altitude?: string }>;
}) {
  const { problem, name, altitude } = await searchParams;
  return (
    <Welcome
      places={await places()}
      startDemo={startDemo}
      startOwn={startOwn}
      openChosen={openChosen}
      problem={problem ?? null}
      typed={{ name: name ?? '', altitude: altitude ?? '' }}
    />
  );
}
