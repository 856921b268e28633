'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { isPlainDate } from '#lib/units/plain-date.ts';
import { DEMO_MORNING } from '#lib/usecases/context.ts';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY, moveDemoDay } from '#lib/usecases/open-demo.ts';
import { placeContext } from './place-context.ts';

/** Moves the demonstration's day; other places live on the real day. */
export async function moveDay(data: FormData): Promise<void> {
  const context = await placeContext();
  const day = String(data.get('day') ?? '');
  const asked = String(data.get('time') ?? '');
  const time = /^([01]\d|2[0-3]):[0-5]\d$/.test(asked) ? asked : DEMO_MORNING;
  if (context.place.demo && isPlainDate(day) && day >= DEMO_FIRST_DAY && day <= DEMO_LAST_DAY) {
    await moveDemoDay(context.db, context.today, day, new Date(), time);
    revalidatePath('/', 'layout');
  }
  redirect('/');
}
