/** What recipes packed by weight share: pack, keeping, trim, and how their publication is named. */
import type { SourceId } from '../sources.ts';
import { FRUIT_KEEPS, PACK_WORK, type Publication, type RecipeDraft } from './recipe-draft.ts';

export type PackOwn = Pick<RecipeDraft, 'id' | 'title' | 'fruits' | 'finish' | 'process'> & Partial<RecipeDraft>;
export const PACK = {
  ceiling: { by: 'nothing' },
  work: PACK_WORK,
  keeps: FRUIT_KEEPS,
  grades: ['perfect', 'blemished'],
} as const;

export const read = (source: SourceId): Publication => ({ sources: [source], status: 'verified' });
export const remembered = (source: SourceId): Publication => ({ sources: [source], status: 'memory' });
export const byWeight = (crop: string) => ({ by: 'weight table', crop }) as const;

export const APPLES = ['apple-cooking', 'apple-dessert'];
export const APPLE_TRIM = { material: 'apple-peel-core', share: 0.22, use: 'pectin', seedsOutFirst: true } as const;
export const STONES = { material: 'stones', share: 0.06, use: 'compost', seedsOutFirst: false } as const;
