/**
 * Names under the board: as long as the room beneath their jars allows, never touching each other, never cut at the ends.
 * A name that would be shorter than three letters is left to the list beside the picture.
 */
export type LabelSlot = { readonly text: string; readonly from: number; readonly width: number };
export type PlacedLabel = { readonly text: string; readonly x: number; readonly width: number };

/** Mean width of a letter in parts of the type size; on the generous side for Source Sans 3, so that text stays inside. */
const LETTER = 0.56;
const WORDS_THAT_SAY_LITTLE = new Set(['in', 'of', 'the', 'and', 'light', 'canned', 'frozen', 'dried']);

export const textWidth = (text: string, size: number): number => text.length * LETTER * size;

/** The longest of: the whole name, the name without small words, its first word, that word cut with a point. Null when nothing fits. */
export function shortenLabel(text: string, room: number, size: number): string | null {
  const words = text.split(' ');
  const telling = words.filter((w) => !WORDS_THAT_SAY_LITTLE.has(w.toLowerCase().replace(/,$/, '')));
  const first = (telling[0] ?? words[0] ?? '').replace(/,$/, '');
  for (const candidate of [text, telling.join(' '), telling.slice(0, 2).join(' '), first]) {
    if (candidate && textWidth(candidate, size) <= room) return candidate;
  }
  const letters = Math.floor(room / (LETTER * size)) - 1;
  return letters >= 3 ? `${first.slice(0, letters)}.` : null;
}

/** Labels centred under their slots, `gap` apart; slots must be given from left to right. */
export function placeLabels(slots: readonly LabelSlot[], size: number, gap: number): PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  for (const slot of slots) {
    const text = shortenLabel(slot.text, slot.width - gap, size);
    if (text === null) continue;
    const width = textWidth(text, size);
    placed.push({ text, x: slot.from + slot.width / 2 - width / 2, width });
  }
  return placed;
}
