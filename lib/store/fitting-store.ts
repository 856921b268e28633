/** Rows of what a place is fitted with, kept and taken away one at a time. */
import type { Tx } from './database/open-database.ts';
import type { Canner, Container, JarKind, Kitchen, Pan, Person, StoreRoom } from './place.ts';

/** One fitting with all its columns; what stands in a kitchen names that kitchen's id. */
export type Fitting =
  | { kind: 'kitchen'; row: Pick<Kitchen, 'code' | 'label' | 'altitudeM' | 'main'> }
  | { kind: 'burner'; kitchenId: string; row: Kitchen['burners'][number] }
  | { kind: 'pan'; kitchenId: string; row: Pan }
  | { kind: 'canner'; kitchenId: string; row: Canner }
  | { kind: 'dryer'; kitchenId: string; row: Kitchen['dryers'][number] }
  | { kind: 'store'; row: Omit<StoreRoom, 'id'> }
  | { kind: 'container'; row: Omit<Container, 'id'> }
  | { kind: 'jar'; row: Omit<JarKind, 'id'> }
  | { kind: 'person'; row: Omit<Person, 'id'> };

/** Writes a fitting: a new one, or new figures for the one of that code. */
export async function saveFitting(tx: Tx, placeId: string, f: Fitting): Promise<void> {
  const { code } = f.row;
  const here = { placeId_code: { placeId, code } };
  const create = <R extends object>(what: string, row: R) => ({ ...row, placeId, id: `${placeId}:${what}:${code}` });
  const stand = <R extends object>(kitchenId: string, row: R) => ({
    ...row,
    kitchenId,
    id: `${kitchenId}:${f.kind}:${code}`,
  });
  const there = (kitchenId: string) => ({ kitchenId_code: { kitchenId, code } });
  switch (f.kind) {
    case 'kitchen':
      if (f.row.main) await tx.kitchen.updateMany({ where: { placeId }, data: { main: false } });
      await tx.kitchen.upsert({ where: here, create: create('kitchen', f.row), update: f.row });
      return;
    case 'burner':
      await tx.burner.upsert({ where: there(f.kitchenId), create: stand(f.kitchenId, f.row), update: f.row });
      return;
    case 'pan':
      await tx.pan.upsert({ where: there(f.kitchenId), create: stand(f.kitchenId, f.row), update: f.row });
      return;
    case 'canner':
      await tx.canner.upsert({ where: there(f.kitchenId), create: stand(f.kitchenId, f.row), update: f.row });
      return;
    case 'dryer':
      await tx.dryer.upsert({ where: there(f.kitchenId), create: stand(f.kitchenId, f.row), update: f.row });
      return;
    case 'store':
      await tx.storeRoom.upsert({ where: here, create: create('room', f.row), update: f.row });
      return;
    case 'container':
      await tx.container.upsert({ where: here, create: create('container', f.row), update: f.row });
      return;
    case 'jar':
      await tx.jarKind.upsert({ where: here, create: create('jar', f.row), update: f.row });
      return;
    case 'person':
      await tx.person.upsert({ where: here, create: create('person', f.row), update: f.row });
  }
}

/** Takes a fitting away. What records hang on must be asked of `heldBy` first. */
export async function removeFitting(
  tx: Tx,
  placeId: string,
  { kind, kitchenId, code }: { kind: Fitting['kind']; kitchenId: string | null; code: string },
): Promise<void> {
  const here = { where: { placeId, code } };
  const there = { where: { kitchenId: kitchenId ?? '', code } };
  switch (kind) {
    case 'kitchen': {
      const inIt = { where: { kitchenId: `${kitchenId}` } };
      await tx.burner.deleteMany(inIt);
      await tx.pan.deleteMany(inIt);
      await tx.canner.deleteMany(inIt);
      await tx.dryer.deleteMany(inIt);
      await tx.kitchen.deleteMany(here);
      return;
    }
    case 'burner':
      await tx.burner.deleteMany(there);
      return;
    case 'pan':
      await tx.pan.deleteMany(there);
      return;
    case 'canner':
      await tx.canner.deleteMany(there);
      return;
    case 'dryer':
      await tx.dryer.deleteMany(there);
      return;
    case 'store':
      await tx.storeRoom.deleteMany(here);
      return;
    case 'container':
      await tx.container.deleteMany(here);
      return;
    case 'jar':
      await tx.jarKind.deleteMany(here);
      return;
    case 'person':
      await tx.person.deleteMany(here);
  }
}

/** How many records hang on a kitchen (batches), a store (lots ever put there) or a kind of jar (lots in it); 0 for the rest. */
export async function heldBy(tx: Tx, placeId: string, kind: Fitting['kind'], code: string): Promise<number> {
  if (kind === 'kitchen') return tx.batch.count({ where: { placeId, kitchen: { code } } });
  if (kind === 'store') return tx.lot.count({ where: { placeId, room: { code } } });
  if (kind === 'jar') return tx.lot.count({ where: { placeId, item: code } });
  return 0;
}
