/** "About how much do you see hanging?": an estimate by eye of what is still on the plants. */
import { z } from 'zod';
import { actId, number, word } from './fields.ts';

export const sightForm = z.object({
  id: actId,
  cropId: word('the crop'),
  kg: number({ what: 'what you see hanging, in kg', min: 0.1, max: 20_000 }),
});
export type SightForm = z.infer<typeof sightForm>;
