import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { BringIn } from '#components/bring-in.tsx';
import { CutFruit } from '#components/cut-fruit.tsx';
import { TrayTable } from '#components/tray-table.tsx';
import { readPress } from '#lib/usecases/press-view.ts';
import { placeContext } from '../../../place-context.ts';
import { cut, herbs, zest } from '../actions.ts';

export const metadata: Metadata = { title: 'For the dryer' };

export default async function DryPage({ searchParams }: { searchParams: Promise<Record<string, string | undefined>> }) {
  const typed = await searchParams;
  const { apples, citrus, ringTrim } = await readPress(await placeContext(), {});
  return (
    <>
      <AnswerHeading
        answer="Fruit, herbs and zest to dry"
        sub="Weighed before and after they are cut: the dryer’s target follows from it."
      />
      <TrayTable columns="equal">
        <CutFruit
          fruit={apples}
          typed={typed}
          cut={cut}
          id={randomUUID()}
          trim={ringTrim}
          refused={typed.refused ?? null}
        />
        <BringIn
          citrus={citrus}
          typed={typed}
          actions={{ herbs, zest }}
          ids={{ herbs: randomUUID(), zest: randomUUID() }}
        />
      </TrayTable>
    </>
  );
}
