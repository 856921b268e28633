import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { FruitElsewhereForm } from '#components/fruit-elsewhere-form.tsx';
import { fruitsToReceive } from '#lib/usecases/receive-fruit.ts';
import { placeContext } from '../../../place-context.ts';
import { bringIn } from './actions.ts';

export const metadata: Metadata = { title: 'Fruit from elsewhere' };

export default async function FruitElsewherePage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const [context, typed] = await Promise.all([placeContext(), searchParams]);
  const { said, lotId, code } = typed;
  return (
    <>
      <AnswerHeading
        answer={code ? `${code} came in` : 'Fruit from elsewhere'}
        sub="Bought or given. It becomes a receipt lot; every jar made of it traces back to whom it came from."
      />
      <FruitElsewhereForm
        action={bringIn}
        id={randomUUID()}
        fruits={fruitsToReceive()}
        typed={typed}
        today={context.today}
        refused={typed.refused ?? null}
        done={said && lotId && code ? { said, lotId, code } : null}
      />
      <p>
        <a href="/harvest">Back to the harvest</a>
      </p>
    </>
  );
}
