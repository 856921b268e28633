'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { askedOfQuery, planHref } from '#lib/usecases/plan-asked.ts';
import { chooseProposal, whichPlan } from '#lib/usecases/propose-plan.ts';
import { placeContext } from '../../place-context.ts';

/** "Go by this plan": one tap. */
export async function choose(data: FormData): Promise<void> {
  const context = await placeContext();
  const asked = askedOfQuery(String(data.get('query') ?? ''));
  const which = whichPlan(data.get('which'));
  const done = await chooseProposal(context, asked, { hash: String(data.get('hash') ?? ''), which });
  revalidatePath('/', 'layout');
  const back = planHref(asked);
  const word = 'refused' in done ? { refused: done.refused } : { said: done.said };
  redirect(`${back}${back.includes('?') ? '&' : '?'}${new URLSearchParams(word)}`);
}
