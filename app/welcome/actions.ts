'use server';
import { cookies } from 'next/headers';
import { redirect } from 'next/navigation';
import { ownPlace } from '#lib/forms/own-place.ts';
import { parseForm } from '#lib/forms/parse-form.ts';
import { DEMO_OPENING_DAY, DEMO_PLACE, openDemo } from '#lib/usecases/open-demo.ts';
import { openDatabaseOfProcess, openOwnPlace, places } from '#lib/usecases/open-places.ts';
import { PLACE_COOKIE } from '../place-context.ts';

const remember = async (id: string) =>
  (await cookies()).set(PLACE_COOKIE, id, { httpOnly: true, sameSite: 'lax', maxAge: 400 * 86_400, path: '/' });

export async function startDemo(): Promise<void> {
  const there = (await places()).some((p) => p.id === DEMO_PLACE);
  if (!there) await openDemo(await openDatabaseOfProcess(), DEMO_OPENING_DAY, new Date());
  await remember(DEMO_PLACE);
  redirect('/');
}

export async function startOwn(data: FormData): Promise<void> {
  const parsed = parseForm(ownPlace, data);
  if (!parsed.ok) {
    const problem = Object.values(parsed.state.fields).flat().join('; ');
    redirect(
      `/welcome?${new URLSearchParams({ problem, name: parsed.state.values.name ?? '', altitude: parsed.state.values.altitude ?? '' })}`,
    );
  }
  await openOwnPlace(await openDatabaseOfProcess(), parsed.value);
  await remember(parsed.value.id);
  redirect('/');
}

export async function openChosen(data: FormData): Promise<void> {
  const id = String(data.get('place') ?? '');
  if ((await places()).some((p) => p.id === id)) await remember(id);
  redirect('/');
}
