import { createServer } from 'node:net';

/** True when nothing listens on this port of this host yet. */
function isFree(port, host) {
  return new Promise((resolve) => {
    const server = createServer().once('error', () => resolve(false));
    server.listen(port, host, () => server.close(() => resolve(true)));
  });
}

/**
 * The wanted port, or the next free one above it (at most 50 further).
 * @throws Error when all of them are taken
 */
export async function freePort(wanted, host) {
  for (let port = wanted; port <= Math.min(wanted + 50, 65_535); port += 1) {
    if (await isFree(port, host)) return port;
  }
  throw new Error(`No free port between ${wanted} and ${wanted + 50} on ${host}: set PORT to another number.`);
}
