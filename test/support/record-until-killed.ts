/**
 * Records one picking after another on a SQLite file and prints the id of each as soon as it is acknowledged, until it is
 * killed. `record-until-killed.ts <file> <name of this run>`
 */
import { databaseAddress } from '#lib/store/database/env.ts';
import { openDatabase } from '#lib/store/database/open-database.ts';
import { openContext } from '#lib/usecases/context.ts';
import { recordHarvest } from '#lib/usecases/record-harvest.ts';

const [path = '', run = ''] = process.argv.slice(2);
const db = openDatabase(databaseAddress(`file:${path}`, ''));
const context = await openContext(db, 'p', new Date('2025-09-13T08:00:00Z'));
if (!context) throw new Error('there is no place in this database');

for (let i = 1; ; i++) {
  const id = `${run}-${String(i).padStart(4, '0')}`;
  const grades = { perfect: 1000 + i, blemished: 500, soft: 7 };
  const done = await recordHarvest(context, {
    id,
    rowId: 'D3|damson',
    day: '2025-09-13',
    at: null,
    readings: [
      { grossG: 1507 + i + 620, tareG: 620, containerId: 'p:bucket', containerCount: 1, text: '', unit: 'kg' },
    ],
    grades,
    groundFall: false,
    nothing: null,
    person: null,
    device: run,
  });
  if ('refused' in done) throw new Error(done.refused);
  process.stdout.write(`${id}\n`);
}
