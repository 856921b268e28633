/** The thread in which one recipe is asked about. */
import { parentPort } from 'node:worker_threads';
import { solveWhy, type WhyInput, type WhySolved } from './plan-why-solve.ts';
import { answer } from './thread-talk.ts';

if (parentPort) answer<WhyInput, never, WhySolved>(parentPort, solveWhy);
