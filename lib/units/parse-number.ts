/**
 * Numbers as people write them at a scale or in a recipe: `2 1/2`, `2½`, `2-1/2`, `2.5`, `2,5`.
 * What can be read two ways (`1-2`, `1,250`) is refused with the reason, never guessed.
 */
export type ParsedNumber = { ok: true; value: number } | { ok: false; reason: string };

const VULGAR: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

export function parseNumber(raw: string): ParsedNumber {
  let text = raw.trim().replace(/\u00a0/g, ' ');
  if (text === '') return { ok: false, reason: 'a number is missing' };
  text = text.replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, (c) => ` ${VULGAR[c]}`).trim();
  if (/^-/.test(text)) return { ok: false, reason: `"${raw}" is below zero` };
  const mixed = /^(\d+)(?:\s+|-)(\d+)\/(\d+)$/.exec(text);
  if (mixed) return fractionOf(Number(mixed[1]), Number(mixed[2]), Number(mixed[3]), raw);
  const plain = /^(\d+)\/(\d+)$/.exec(text);
  if (plain) return fractionOf(0, Number(plain[1]), Number(plain[2]), raw);
  if (/^\d+-\d+$/.test(text))
    return { ok: false, reason: `"${raw}" can be read two ways: a range, or ${text.replace('-', ' ')}` };
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    return {
      ok: false,
      reason: `"${raw}" can be read two ways: ${text.replace(',', '')} or ${text.replace(',', '.')}`,
    };
  }
  const decimal = text.replace(',', '.');
  if (!/^\d*\.?\d+$|^\d+\.$/.test(decimal)) return { ok: false, reason: `"${raw}" is not a number` };
  return { ok: true, value: Number(decimal) };
}

function fractionOf(whole: number, top: number, bottom: number, raw: string): ParsedNumber {
  if (bottom === 0) return { ok: false, reason: `"${raw}" divides by zero` };
  return { ok: true, value: whole + top / bottom };
}
