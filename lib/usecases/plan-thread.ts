/** The thread in which better plans are looked for, so that the pages stay quick meanwhile. */
import { parentPort } from 'node:worker_threads';
import type { PlanProgress } from '#lib/plan/solve-options.ts';
import { type SearchInput, searchPlan } from './plan-search.ts';
import type { FoundPlan } from './propose-plan.ts';
import { answer } from './thread-talk.ts';

if (parentPort) answer<SearchInput, PlanProgress, FoundPlan>(parentPort, searchPlan);
