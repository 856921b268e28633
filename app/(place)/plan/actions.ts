'use server';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { planAsked, planHref } from '#lib/usecases/plan-asked.ts';
import { chooseProposal } from '#lib/usecases/propose-plan.ts';
import { placeContext } from '../../place-context.ts';

/** "Go by this plan": one tap. */
export async function choose(data: FormData): Promise<void> {
  const context = await placeContext();
  const query = new URLSearchParams(String(data.get('query') ?? ''));
  const { asked } = planAsked({
    hours: query.get('hours') ?? '',
    keep: query.getAll('keep'),
    without: query.getAll('without'),
  });
  const which = data.get('which') === 'found' ? 'found' : 'by-hand';
  const done = await chooseProposal(context, asked, { hash: String(data.get('hash') ?? ''), which });
  revalidatePath('/', 'layout');
  const back = planHref(asked);
  const word = 'refused' in done ? { refused: done.refused } : { said: done.said };
  redirect(`${back}${back.includes('?') ? '&' : '?'}${new URLSearchParams(word)}`);
}
