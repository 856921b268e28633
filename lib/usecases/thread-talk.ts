/**
 * How a page's process and a worker thread talk: one input posted, progress as it comes, one answer or one error.
 * A thread is started at the call site (`new Worker(new URL('./x-thread.ts', import.meta.url))`), which the bundler needs
 * to see; where the source runs unbundled (tests, scripts) there is nothing to start a thread from, and the caller runs
 * the same function in place.
 */
import type { MessagePort, Worker } from 'node:worker_threads';

type FromThread<P, O> = { progress: P } | { done: O } | { failed: string };

/** Posts the input and waits for the answer; an abort ends the thread after it had a moment to give its best so far. */
export function converse<I, P, O>(
  worker: Worker,
  input: I,
  onProgress: (p: P) => void,
  signal?: AbortSignal,
): Promise<O> {
  return new Promise<O>((resolve, reject) => {
    const end = (finish: () => void) => {
      void worker.terminate();
      finish();
    };
    worker.on('message', (m: FromThread<P, O>) => {
      if ('progress' in m) onProgress(m.progress);
      else if ('done' in m) end(() => resolve(m.done));
      else end(() => reject(new Error(m.failed)));
    });
    worker.on('error', (error) => end(() => reject(error)));
    worker.on('exit', (code) => reject(new Error(`the thread ended with code ${code} before it answered`)));
    signal?.addEventListener('abort', () => setTimeout(() => end(() => reject(new Error('stopped'))), 4000).unref(), {
      once: true,
    });
    worker.postMessage(input);
  });
}

/** The thread's side: takes one input, reports, answers once. */
export function answer<I, P, O>(port: MessagePort, work: (input: I, progress: (p: P) => void) => Promise<O> | O): void {
  port.once('message', async (input: I) => {
    const send = (m: FromThread<P, O>) => port.postMessage(m);
    try {
      send({ done: await work(input, (p) => send({ progress: p })) });
    } catch (error) {
      send({ failed: error instanceof Error ? error.message : String(error) });
    }
  });
}
