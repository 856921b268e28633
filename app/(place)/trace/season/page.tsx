import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { EmptyState } from '#components/empty-state.tsx';
import { LinkButton } from '#components/link-button.tsx';
import { MassFlow } from '#components/mass-flow.tsx';
import { Tray } from '#components/tray.tsx';
import { readSeasonFlow } from '#lib/usecases/read-mass-flow.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'Mass of a season' };

export default async function SeasonMassPage({ searchParams }: { searchParams: Promise<{ year?: string }> }) {
  const [context, { year }] = await Promise.all([placeContext(), searchParams]);
  const mass = await readSeasonFlow(context, /^\d{4}$/.test(year ?? '') ? Number(year) : null);
  const { flow } = mass;
  const into = (id: string) => flow.links.filter((l) => l.to === id).reduce((g, l) => g + l.grams, 0);
  const picked = flow.links.filter((l) => l.from === 'trees').reduce((g, l) => g + l.grams, 0);
  return (
    <>
      <AnswerHeading
        answer={
          flow.links.length === 0
            ? `No mass is on record for ${mass.year}`
            : `${mass.year}: ${wholeKg(picked)} picked, ${wholeKg(into('jars'))} in jars`
        }
        sub="From tree to jar, fresh, dried, compost and vapour, in grams of the ledger."
      />
      <Tray
        title={`The season ${mass.year}`}
        action={
          <LinkButton kind="quiet" href={`/trace/season?year=${mass.year - 1}`}>
            {mass.year - 1}
          </LinkButton>
        }
      >
        {flow.links.length === 0 ? (
          <EmptyState title="Nothing was picked or made in that year." first="Pick, weigh in, and it shows here." />
        ) : (
          <MassFlow title={`Mass of the season ${mass.year}`} flow={flow} />
        )}
      </Tray>
    </>
  );
}

const wholeKg = (g: number): string => `${Math.round(g / 1000).toLocaleString('en-GB')} kg`;
