import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { WeatherForm } from '#components/weather-form.tsx';
import { WeatherTrays } from '#components/weather-trays.tsx';
import { readWeatherPage } from '#lib/usecases/read-weather.ts';
import { placeContext } from '../../../place-context.ts';
import { bringWeather } from './actions.ts';

export const metadata: Metadata = { title: 'Weather' };

export default async function WeatherPage() {
  const view = await readWeatherPage(await placeContext());
  return (
    <>
      <AnswerHeading answer={view.answer} sub={view.sub} />
      <WeatherTrays view={view} />
      <WeatherForm action={bringWeather} id={randomUUID()} />
      <p>
        <a href="/season">Back to the season</a>
      </p>
    </>
  );
}
