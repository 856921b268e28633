/** Names as a label prints them: the fruit in everyday words, and the name of the food where its composition allows it. */

/** "Cherry, sour" becomes "sour cherries", "Apple (trial row)" "apples", "Tayberry and blackberry" "tayberries and blackberries". */
export const fruitWords = (name: string): string =>
  name
    .split(' and ')
    .map((one) => oneFruit(one))
    .join(' and ');

function oneFruit(name: string): string {
  const [base = '', ...rest] = name.split(/[,(/]/).map((s) => s.trim().toLowerCase());
  const kind = rest[0] === 'sour' || rest[0] === 'bitter' ? `${rest[0]} ` : '';
  return `${kind}${plural(base)}`;
}

const AS_IT_IS = new Set(['rhubarb', 'lemon juice', 'sea buckthorn', 'grapefruit', 'kiwifruit']);

function plural(word: string): string {
  if (AS_IT_IS.has(word) || word.endsWith('s')) return word;
  if (/[^aeiou]y$/.test(word)) return `${word.slice(0, -1)}ies`;
  return /(ch|sh|x|to)$/.test(word) ? `${word}es` : `${word}s`;
}

/** Words that a composition has to earn (21 CFR 150). */
const RESERVED = /\b(jam|jelly|preserve|marmalade|butter)\b/i;

/**
 * The line's own name, without what stands in brackets; where it carries a reserved word that the composition does not
 * allow, that word becomes "fruit spread". `allowed`: names of `batch/label-names`; null when nothing was computed.
 */
export function nameOnLabel(line: string, allowed: readonly string[] | null): string {
  const plain = line.replace(/\s*\([^)]*\)/g, '').trim();
  const word = RESERVED.exec(plain)?.[1]?.toLowerCase();
  if (!word || allowed === null || allowed.some((a) => a.toLowerCase().endsWith(word))) return plain;
  return plain.replace(RESERVED, 'fruit spread');
}
