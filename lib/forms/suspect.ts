/** A jar that looks wrong: which one, and the sign that was seen. */
import { z } from 'zod';
import { SPOILAGE_SIGNS, type SpoilageSignId } from '#lib/reference/spoilage-signs.ts';
import { actId, word } from './fields.ts';

const SIGNS = SPOILAGE_SIGNS.map((s) => s.id) as [SpoilageSignId, ...SpoilageSignId[]];

export const suspectForm = z.object({
  id: actId,
  code: word('the jar', 60),
  sign: z.enum(SIGNS, 'say which sign was seen'),
});
