/** A recall: which lot, and why. */
import { z } from 'zod';
import { actId, word } from './fields.ts';

export const holdForm = z.object({ id: actId, code: word('the lot', 60), why: word('the reason', 120) });
export const drillForm = z.object({ id: actId, code: word('the lot', 60) });
