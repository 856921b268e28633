'use client';
import { useRouter } from 'next/navigation';
import { useEffect, useRef, useState } from 'react';
import { Button } from './button.tsx';
import { Problem } from './problem.tsx';
import { ProgressLine } from './progress-line.tsx';
import { Tray } from './tray.tsx';

type Heard = { share?: number; doing?: string; first?: boolean; done?: boolean; failed?: string };
type Stand = { share: number; doing: string; failed: string | null };

/**
 * Asks for the season to be worked out and shows how far it is; the page is read again with the first thousand seasons and
 * once more with all of them. Without scripts the button does the same and comes back with the whole.
 */
export function SeasonRun({ action, early }: { action: string; early: boolean }) {
  const router = useRouter();
  const begun = useRef(false);
  const [stand, setStand] = useState<Stand>({ share: 0, doing: 'Beginning', failed: null });
  useEffect(() => {
    if (begun.current) return;
    begun.current = true;
    follow(action, (heard) => {
      if (heard.failed) return setStand((s) => ({ ...s, failed: heard.failed ?? null }));
      if (heard.share !== undefined) setStand({ share: heard.share, doing: heard.doing ?? '', failed: null });
      if (heard.first || heard.done) router.refresh();
    });
  }, [action, router]);
  return (
    <Tray title={early ? 'The first thousand seasons are in' : 'Working it out'}>
      {stand.failed ? <Problem title="The season could not be worked out">{stand.failed}</Problem> : null}
      {stand.failed ? null : (
        <div role="status">
          <ProgressLine
            label={stand.doing}
            share={stand.share}
            text={`${Math.round(stand.share * 10)} parts in 10 done`}
          />
        </div>
      )}
      <noscript>
        <p>Working it out takes a few seconds.</p>
      </noscript>
      {stand.share === 0 || stand.failed ? (
        <form method="post" action={action}>
          <Button type="submit">{stand.failed ? 'Work it out again' : 'Work it out'}</Button>
        </form>
      ) : null}
    </Tray>
  );
}

async function follow(action: string, hear: (heard: Heard) => void): Promise<void> {
  try {
    const answer = await fetch(action, { method: 'POST', headers: { accept: 'application/x-ndjson' } });
    if (!answer.ok || !answer.body) throw new Error(`the house answered ${answer.status}`);
    const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
    let rest = '';
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      const lines = (rest + value).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) if (line) hear(JSON.parse(line) as Heard);
    }
  } catch (error) {
    hear({ failed: error instanceof Error ? error.message : String(error) });
  }
}
