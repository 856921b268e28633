import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { PlaceTrays } from '#components/place-trays.tsx';
import { counted } from '#lib/units/format.ts';
import { SUPPLY_ITEMS } from '#lib/usecases/change-place.ts';
import { readPlace } from '#lib/usecases/read-place.ts';
import { placeContext } from '../../place-context.ts';
import { addCrop, bringIn, noteWater } from './actions.ts';

export const metadata: Metadata = { title: 'Place' };

export default async function PlacePage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | undefined>>;
}) {
  const context = await placeContext();
  const [view, typed] = await Promise.all([readPlace(context), searchParams]);
  const { said, refused } = typed;
  const { place } = view;
  const plants = place.crops.reduce((n, c) => n + c.plantings.length, 0);
  return (
    <>
      <AnswerHeading
        answer={`${place.name}: ${counted(place.crops.length, 'crop')}, ${counted(place.kitchens.length, 'kitchen')}`}
        sub={`${plants} trees and rows are on record. Every altitude, pan and store here enters the sums.`}
      />
      <PlaceTrays
        view={view}
        items={SUPPLY_ITEMS.map((s) => ({ item: s.item, label: `${s.label} (${s.asked})` }))}
        actions={{ addCrop, bringIn, noteWater }}
        ids={place.kitchens.map(() => randomUUID())}
        id={randomUUID()}
        typed={typed}
        said={said ?? null}
        refused={refused ?? null}
      />
    </>
  );
}
