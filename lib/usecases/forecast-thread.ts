/** The thread in which a season is simulated, so that the pages stay quick meanwhile. */
import { parentPort } from 'node:worker_threads';
import { type ForecastProgress, runForecast } from './forecast-run.ts';
import type { ForecastSummary } from './forecast-summary.ts';
import type { ForecastInput } from './season-scenario.ts';
import { answer } from './thread-talk.ts';

if (parentPort) answer<ForecastInput, ForecastProgress, ForecastSummary>(parentPort, runForecast);
