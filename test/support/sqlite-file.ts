import { dirname } from 'node:path';
import { databaseAddress } from '#lib/store/database/env.ts';
import { type Db, openDatabase } from '#lib/store/database/open-database.ts';
import { deploy } from '#prisma/deploy.mjs';

/** Makes an empty, migrated database in a file. */
export const makeFile = async (path: string): Promise<void> => void (await deploy(`file:${path}`));

/** Another client on a database file; whoever opens it disconnects it. */
export const openFile = (path: string): Db => openDatabase(databaseAddress(`file:${path}`, dirname(path)));
