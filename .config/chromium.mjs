// The browser of the browser tests: the one named, one that is there, or one that can be fetched.
import { existsSync } from 'node:fs';
import { installFromDebian } from './apt.mjs';
import { inProject, onWindows } from './environment.mjs';
import { runNode, runProgram } from './run-program.mjs';

const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/**
 * Path of a Chromium that runs.
 * @param {(text: string) => void} say told before something is fetched
 * @throws Error that lists what was tried and what to do
 */
export async function findChromium(say) {
  const named = process.env.CHROMIUM_PATH?.trim();
  if (named) {
    if (await runs(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}, which does not run. Correct it or unset it.`);
  }
  const there = (await firstThatRuns([await playwrightsOwn(), ...USUAL_PLACES])) ?? (await fetched(say));
  if (there) return there;
  throw new Error(
    'No Chromium was found and none could be fetched. Install Chromium or Chrome with your system, or run `npx playwright install chromium`, or set CHROMIUM_PATH to one; then run npm test again.',
  );
}

async function fetched(say) {
  say('No Chromium here: trying `playwright install chromium` …');
  await runNode([inProject('node_modules', 'playwright', 'cli.js'), 'install', 'chromium'], {
    quiet: true,
    timeoutMs: 300_000,
  });
  const own = await firstThatRuns([await playwrightsOwn()]);
  if (own) return own;
  say('That did not give one that runs: trying apt-get install chromium …');
  const problem = await installFromDebian(['chromium']);
  if (problem) say(`  ${problem}`);
  return firstThatRuns(USUAL_PLACES);
}

async function playwrightsOwn() {
  const { chromium } = await import('playwright');
  return chromium.executablePath();
}

async function firstThatRuns(paths) {
  for (const path of paths) if (await runs(path)) return path;
  return null;
}

async function runs(path) {
  if (!path || !existsSync(path)) return false;
  // Asked for its version, Chrome on Windows opens a window instead.
  if (onWindows) return true;
  return (await runProgram(path, ['--version'], { quiet: true, timeoutMs: 30_000 })).code === 0;
}
