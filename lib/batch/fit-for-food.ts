/**
 * Cull and ground-fall fruit never becomes food: patulin of mould-touched apples is not destroyed by heat (Oregon State
 * Extension on patulin), and fruit that lay on the ground carries what lay there. It stays out of preserves, juice,
 * set-asides and sale alike; compost and hens remain.
 */
import type { FruitUsed } from './fruit-used.ts';

export type FoodFitness = { ok: true } | { ok: false; reason: string };

export function fitForFood(fruit: readonly Pick<FruitUsed, 'grade' | 'groundFall'>[]): FoodFitness {
  if (fruit.some((f) => f.grade === 'cull')) {
    return {
      ok: false,
      reason: 'Cull fruit (mould, rot, worm) is not cooked, pressed or dried. Compost it or give it to the hens.',
    };
  }
  if (fruit.some((f) => f.groundFall)) {
    return {
      ok: false,
      reason:
        'Fruit picked up from the ground is not cooked, pressed or dried: heat does not remove patulin. Compost it or give it to the hens.',
    };
  }
  return { ok: true };
}
