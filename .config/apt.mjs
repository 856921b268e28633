// Debian's packages, as a last resort and only as root: on a test machine a missing program is installed from there.
import { existsSync } from 'node:fs';
import { runProgram } from './run-program.mjs';

const MINUTE = 60_000;
const WAIT_FOR_LOCK = ['-o', 'DPkg::Lock::Timeout=300'];

export const canInstallFromDebian = () => process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');

/**
 * Installs packages, waiting for another installation that holds the lock.
 * @returns what went wrong, or null
 */
export async function installFromDebian(packages) {
  if (!canInstallFromDebian()) return 'not root on a Debian system';
  const env = { DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (args) =>
    runProgram('apt-get', [...WAIT_FOR_LOCK, ...args], { quiet: true, env, timeoutMs: 10 * MINUTE });
  await patiently(() => apt(['update', '-q']));
  const { code, output } = await patiently(() => apt(['install', '-y', '-q', '--no-install-recommends', ...packages]));
  return code === 0 ? null : output.trim().split('\n').slice(-3).join(' ');
}

/** The list of packages has a lock of its own that apt-get does not wait for. */
async function patiently(attempt) {
  for (let tries = 1; ; tries += 1) {
    const result = await attempt();
    if (result.code === 0 || tries === 30 || !/could not get lock|unable to lock/i.test(result.output)) return result;
    await new Promise((resolve) => setTimeout(resolve, 5000));
  }
}
