import { revalidatePath } from 'next/cache';
import { runSeason } from '#lib/usecases/forecast-season.ts';
import { currentContext } from '../../place-context.ts';

/**
 * Works out the season ahead for the records as they stand. A script that asks for lines of JSON hears how far it is;
 * the plain form gets its page back when it is done.
 */
export async function POST(request: Request): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'that place is not here' }, { status: 409 });
  if (!request.headers.get('accept')?.includes('application/x-ndjson')) {
    await runSeason(context, () => undefined);
    revalidatePath('/', 'layout');
    return new Response(null, { status: 303, headers: { location: '/season' } });
  }
  const line = (data: object) => new TextEncoder().encode(`${JSON.stringify(data)}\n`);
  const body = new ReadableStream<Uint8Array>({
    async start(controller) {
      let open = true;
      const say = (data: object) => {
        if (open) controller.enqueue(line(data));
      };
      // A reader who leaves does not stop the run: the next one finds it stored.
      request.signal.addEventListener('abort', () => {
        open = false;
      });
      try {
        await runSeason(context, (p) => say({ share: p.share, doing: p.doing, ...(p.first ? { first: true } : {}) }));
        say({ done: true });
      } catch (error) {
        say({ failed: error instanceof Error ? error.message : String(error) });
      }
      if (open) controller.close();
    },
  });
  return new Response(body, { headers: { 'content-type': 'application/x-ndjson', 'cache-control': 'no-store' } });
}
