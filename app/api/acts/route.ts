import { revalidatePath } from 'next/cache';
import { contextOf } from '#lib/usecases/open-places.ts';
import { takeActs } from '#lib/usecases/take-acts.ts';

/** Acts from a device, singly or a queue of them; each is answered saved, known or refused, in order. */
export async function POST(request: Request): Promise<Response> {
  const context = await contextOf(new URL(request.url).searchParams.get('place') ?? undefined, new Date());
  if (!context) return Response.json({ error: 'that place is not here' }, { status: 409 });
  const body: unknown = await request.json().catch(() => null);
  const answers = await takeActs(context, body);
  if (!answers) return Response.json({ error: 'that was not a list of acts' }, { status: 400 });
  revalidatePath('/', 'layout');
  return Response.json({ answers });
}
