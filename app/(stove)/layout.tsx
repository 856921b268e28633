import type { ReactNode } from 'react';
import { placeContext } from '../place-context.ts';

/** At the stove there is the pan and nothing beside it: no navigation to hit with a knuckle. */
export default async function StoveLayout({ children }: { children: ReactNode }) {
  await placeContext();
  return <main data-mode="stove">{children}</main>;
}
