import { calendarText } from '#lib/labels/calendar.ts';
import { dueList } from '#lib/usecases/due-list.ts';
import { contextOf } from '#lib/usecases/open-places.ts';
import { currentContext } from '../../place-context.ts';

/** What is due, as a calendar that can be subscribed to; `place` names it where no cookie does. */
export async function GET(request: Request): Promise<Response> {
  const address = new URL(request.url);
  const named = address.searchParams.get('place');
  const context = named ? await contextOf(named, new Date()) : await currentContext();
  if (!context) return Response.json({ error: 'that place is not here' }, { status: 409 });
  const due = await dueList(context);
  const text = calendarText(
    `${context.place.name}: due`,
    due.map(({ href, ...d }) => ({ ...d, url: new URL(href, address.origin).href })),
    context.enteredAt,
  );
  return new Response(text, {
    headers: { 'content-type': 'text/calendar; charset=utf-8', 'cache-control': 'no-store' },
  });
}
