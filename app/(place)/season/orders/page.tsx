import type { Metadata } from 'next';
import { AnswerHeading } from '#components/answer-heading.tsx';
import { SeasonOrders } from '#components/season-orders.tsx';
import { readOrderAsk } from '#lib/forms/order-ask.ts';
import { ordersAnswer, readOrders } from '#lib/usecases/season-orders.ts';
import { placeContext } from '../../../place-context.ts';

export const metadata: Metadata = { title: 'What to order' };

export default async function OrdersPage({
  searchParams,
}: {
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const context = await placeContext();
  const query = await searchParams;
  const { ask, problems } = readOrderAsk(
    query,
    context.place.jarKinds.map((k) => k.code),
  );
  const view = await readOrders(context, ask);
  const { answer, sub } = ordersAnswer(view);
  const asked = new URLSearchParams(
    Object.entries(query).filter((e): e is [string, string] => typeof e[1] === 'string'),
  ).toString();
  return (
    <>
      <AnswerHeading answer={answer} sub={sub} />
      <SeasonOrders view={view} problems={problems} csv={`/api/orders${asked ? `?${asked}` : ''}`} />
    </>
  );
}
