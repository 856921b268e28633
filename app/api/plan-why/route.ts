import { askedOfQuery } from '#lib/usecases/plan-asked.ts';
import { askWhy } from '#lib/usecases/plan-why.ts';
import { currentContext } from '../../place-context.ts';

/** What a plan with a recipe would be worth: `query` as in the plan's address, `recipe` its id. Answers after some seconds. */
export async function POST(request: Request): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'no place is open' }, { status: 409 });
  const form = await request.formData().catch(() => new FormData());
  const answer = await askWhy(context, askedOfQuery(String(form.get('query') ?? '')), String(form.get('recipe') ?? ''));
  return 'refused' in answer ? Response.json({ error: answer.refused }, { status: 404 }) : Response.json(answer);
}
