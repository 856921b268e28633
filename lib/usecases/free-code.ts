/** A code of a name for addresses and ids: "10 L wide pan" → "10-l-wide-pan", at most `longest` letters, numbered when it is taken. */
export function freeCode(
  name: string,
  { taken, longest, otherwise }: { taken: ReadonlySet<string>; longest: number; otherwise: string },
): string {
  const plain =
    name
      .normalize('NFKD')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '')
      .slice(0, longest) || otherwise;
  for (let n = 1; ; n += 1) {
    const code = n === 1 ? plain : `${plain}-${n}`;
    if (!taken.has(code)) return code;
  }
}
