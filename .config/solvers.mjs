// Two other solvers for the plan's exported model: on the PATH, or from Debian's packages where that can be done.
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installFromDebian } from './apt.mjs';

const SOLVERS = [
  { program: 'glpsol', package: 'glpk-utils' },
  { program: 'cbc', package: 'coinor-cbc' },
];
const isHere = ({ program }) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)));

/**
 * Installs what is missing of the two.
 * @param {(text: string) => void} say told before something is fetched
 * @returns {Promise<string>} which there are, and for which the tests are skipped
 */
export async function findSolvers(say) {
  const missing = SOLVERS.filter((solver) => !isHere(solver));
  if (missing.length > 0) {
    const packages = missing.map((solver) => solver.package);
    say(
      `Not here: ${missing.map((solver) => solver.program).join(', ')}. Trying apt-get install ${packages.join(' ')} …`,
    );
    const problem = await installFromDebian(packages);
    if (problem) say(`  ${problem}`);
  }
  const words = SOLVERS.map(
    (solver) => `${solver.program} ${isHere(solver) ? 'is here' : 'is not to be had: its tests are skipped'}`,
  );
  return `${words.join(', ')}.`;
}
