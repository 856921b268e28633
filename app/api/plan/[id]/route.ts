import { jobReport, stopSearch } from '#lib/usecases/plan-jobs.ts';
import { currentContext } from '../../../place-context.ts';

type Asked = { params: Promise<{ id: string }> };

/** How far a search is. */
export async function GET(_: Request, { params }: Asked): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'no place is open' }, { status: 409 });
  return Response.json(jobReport(context.place.id, (await params).id), { headers: { 'cache-control': 'no-store' } });
}

/** Stops a search; the best so far is kept. */
export async function DELETE(_: Request, { params }: Asked): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'no place is open' }, { status: 409 });
  return Response.json({ stopped: stopSearch(context.place.id, (await params).id) });
}
