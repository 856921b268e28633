import { askedOfQuery, planHref } from '#lib/usecases/plan-asked.ts';
import { FIRST_SECONDS, jobReport, startSearch } from '#lib/usecases/plan-jobs.ts';
import { currentContext } from '../../place-context.ts';

/** Starts looking for better plans: `query` as in the page's address, `seconds` to look for. Answers with the search's id. */
export async function POST(request: Request): Promise<Response> {
  const context = await currentContext();
  if (!context) return Response.json({ error: 'no place is open' }, { status: 409 });
  const form = await request.formData().catch(() => new FormData());
  const asked = askedOfQuery(String(form.get('query') ?? ''));
  const job = await startSearch(context, asked, Number(form.get('seconds')) || FIRST_SECONDS);
  // Without a script the form's answer is a page: the plan again, with the search under way.
  if (request.headers.get('accept')?.includes('text/html'))
    return new Response(null, { status: 303, headers: { location: planHref(asked) } });
  return 'refused' in job
    ? Response.json({ error: job.refused }, { status: 409 })
    : Response.json(jobReport(context.place.id, job.id));
}
