import { cookies } from 'next/headers';
import { redirect } from 'next/navigation';
import type { Context } from '#lib/usecases/context.ts';
import { contextOf } from '#lib/usecases/open-places.ts';

export const PLACE_COOKIE = 'stillroom-place';

/** The context of the place this browser has open, or null when none is chosen. The clock is read here and handed down. */
export async function currentContext(): Promise<Context | null> {
  const chosen = (await cookies()).get(PLACE_COOKIE)?.value;
  return contextOf(chosen, new Date());
}

/** For pages and actions: without a place, the first page asks for one. */
export async function placeContext(): Promise<Context> {
  const context = await currentContext();
  if (!context) redirect('/welcome');
  return context;
}
