/** The thread in which a season is simulated, so that the pages stay quick meanwhile. */
import { parentPort } from 'node:worker_threads';
import { type ForecastProgress, runForecast } from './forecast-run.ts';
import type { ForecastSummary } from './forecast-summary.ts';
import { pastLooks } from './season-past.ts';
import type { ForecastInput } from './season-scenario.ts';
import type { SeasonSnapshot } from './season-snapshot.ts';
import { answer } from './thread-talk.ts';

export interface SeasonWork {
  input: ForecastInput;
  /** What earlier days are looked back on from. */
  snapshot: SeasonSnapshot;
}

if (parentPort)
  answer<SeasonWork, ForecastProgress, ForecastSummary>(parentPort, ({ input, snapshot }, report) =>
    runForecast(input, report, undefined, () => pastLooks(snapshot)),
  );
