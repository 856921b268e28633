import { PrismaLibSql } from '@prisma/adapter-libsql';

type Config = ConstructorParameters<typeof PrismaLibSql>[0];

/** Milliseconds a statement waits for another process that is writing. */
const BUSY_TIMEOUT = 5000;

/**
 * One connection for everything. The stock adapter opens a new one after each transaction and leaves the old one's file
 * handles to the garbage collector; here the adapter's own lock keeps other statements out of a running transaction.
 */
export class Sqlite extends PrismaLibSql {
  override createClient(config: Config) {
    const client = super.createClient({ timeout: BUSY_TIMEOUT, ...config });
    const run = async (sql: string): Promise<void> => void (await client.execute(sql));
    const commit = async (): Promise<void> => {
      try {
        await run('COMMIT');
      } catch (error) {
        // A commit refused (disk full, say) leaves the transaction open, and with it the only connection.
        await run('ROLLBACK').catch(() => undefined);
        throw error;
      }
    };
    client.transaction = (async () => {
      await run('BEGIN IMMEDIATE');
      return { execute: client.execute.bind(client), commit, rollback: () => run('ROLLBACK') };
    }) as unknown as typeof client.transaction;
    return client;
  }

  override async connect() {
    const connection = await super.connect();
    // FULL: acts are few and each one counts; NORMAL may lose the last commits when the power goes.
    await connection.executeScript('PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA foreign_keys = ON;');
    return connection;
  }
}
