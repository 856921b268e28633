import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder for the whole run, in which the demo of a day is played once and copied by every test file that asks for it. */
export default function demoFiles(): () => void {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-demos-'));
  process.env.STILLROOM_TEST_DEMOS = folder;
  return () => rmSync(folder, { recursive: true, force: true });
}
