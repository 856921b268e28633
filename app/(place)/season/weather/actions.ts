'use server';
import { revalidatePath } from 'next/cache';
import type { WeatherState } from '#components/weather-form.tsx';
import { actId } from '#lib/forms/fields.ts';
import { recordWeather } from '#lib/usecases/weather-record.ts';
import { placeContext } from '../../../place-context.ts';

export async function bringWeather(_: WeatherState, data: FormData): Promise<WeatherState> {
  const unit = data.get('unit') === 'F' ? ('F' as const) : ('C' as const);
  const file = data.get('file');
  const text = file instanceof File && file.size > 0 ? await file.text() : String(data.get('text') ?? '');
  const kept = { text, unit, said: null, doubtful: [] };
  const id = actId.safeParse(data.get('id'));
  if (!id.success) return { ...kept, refused: [id.error.issues[0]?.message ?? ''] };
  const told = await recordWeather(await placeContext(), { id: id.data, unit, text });
  if ('refused' in told) return { ...kept, refused: told.refused.split('\n') };
  revalidatePath('/', 'layout');
  return { said: told.done.said, doubtful: told.done.doubtful, refused: [], text: '', unit };
}
