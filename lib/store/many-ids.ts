/** A database takes so many parameters in one question and no more; long lists of ids are asked for in parts. */
const PART = 400;

export async function inParts<T>(ids: readonly string[], ask: (part: string[]) => Promise<T[]>): Promise<T[]> {
  const unique = [...new Set(ids)];
  const found: T[] = [];
  for (let i = 0; i < unique.length; i += PART) found.push(...(await ask(unique.slice(i, i + PART))));
  return found;
}
