import { spawn } from 'node:child_process';
import { childEnvironment, onWindows, projectFolder } from './environment.mjs';

/**
 * Runs a program to its end.
 * @param {string} program path or name
 * @param {string[]} args
 * @param {{ env?: object, quiet?: boolean, timeoutMs?: number }} [options] quiet: the output is only collected
 * @returns {Promise<{ code: number, output: string }>} code 124 when it took too long, 127 when it could not be started
 */
export function runProgram(program, args, { env = {}, quiet = false, timeoutMs } = {}) {
  return new Promise((resolve) => {
    const output = [];
    const child = spawn(program, args, {
      cwd: projectFolder,
      env: childEnvironment(env),
      stdio: quiet ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'],
      // npm is a .cmd file on Windows, which only a shell starts.
      shell: onWindows && /\.cmd$/.test(program),
    });
    let late = false;
    const timer =
      timeoutMs &&
      setTimeout(() => {
        late = true;
        child.kill('SIGKILL');
      }, timeoutMs);
    child.stdout?.on('data', (chunk) => output.push(chunk));
    child.stderr?.on('data', (chunk) => output.push(chunk));
    const end = (code) => {
      clearTimeout(timer);
      resolve({ code: late ? 124 : code, output: Buffer.concat(output).toString() });
    };
    child.on('error', (error) => {
      output.push(Buffer.from(error.message));
      end(127);
    });
    child.on('close', (code) => end(code ?? 1));
  });
}

/** Runs a JavaScript file with this Node. */
export const runNode = (args, options) => runProgram(process.execPath, args, options);
