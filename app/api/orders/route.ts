import { readOrderAsk } from '#lib/forms/order-ask.ts';
import { ordersCsv } from '#lib/usecases/orders-csv.ts';
import { readOrders } from '#lib/usecases/season-orders.ts';
import { currentContext } from '../../place-context.ts';

/** The order of the page with the same question in its address, as a CSV file. */
export async function GET(request: Request): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'that place is not here' }, { status: 409 });
  const query = Object.fromEntries(new URL(request.url).searchParams);
  const { ask, problems } = readOrderAsk(
    query,
    context.place.jarKinds.map((k) => k.code),
  );
  if (problems.length > 0) return Response.json({ error: problems.join('; ') }, { status: 400 });
  const view = await readOrders(context, ask);
  return new Response(ordersCsv(view), {
    headers: {
      'content-type': 'text/csv; charset=utf-8',
      'content-disposition': `attachment; filename="order-${view.today}.csv"`,
      'cache-control': 'no-store',
    },
  });
}
