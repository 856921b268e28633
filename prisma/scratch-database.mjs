// Throw-away databases in memory. `diff` replays every migration into whatever it is given, so it is only ever given
// one of these, never a real database.
import { PrismaLibSql } from '@prisma/adapter-libsql';

/** A factory in the schema engine's sense; every connection is a database of its own. */
export async function scratchDatabase(provider) {
  if (provider === 'sqlite') return new PrismaLibSql({ url: ':memory:' });
  // PGlite is a tool of development only: a household on SQLite never loads it.
  const [{ PGlite }, { PrismaPGlite }] = await Promise.all([
    import('@electric-sql/pglite'),
    import('pglite-prisma-adapter'),
  ]);
  const connect = async () => {
    const server = new PGlite();
    const connection = await new PrismaPGlite(server).connect();
    // The adapter does not wait for its script, so a failing one would go unnoticed.
    connection.executeScript = async (script) => void (await server.exec(script));
    connection.dispose = () => server.close();
    return connection;
  };
  return { provider: 'postgres', adapterName: 'scratch-pglite', connect, connectToShadowDb: connect };
}
