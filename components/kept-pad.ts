/** The shed screen's digits on the device, so that a reload or a flat battery loses nothing. Storage that is shut or spoilt is passed over. */
import { emptyPad, type PadRow, type PadState } from './harvest-pad-state.ts';
import type { PadContainer } from './harvest-weights.ts';

const STORE = 'stillroom.harvest-pad';

export function keepPad(pad: PadState): void {
  try {
    localStorage.setItem(STORE, JSON.stringify(pad));
  } catch {
    // A full or forbidden store: the digits stay on the screen.
  }
}

/** What was typed before, with rows and containers that no longer exist left out; null when there is nothing. */
export function keptPad(rows: readonly PadRow[], containers: readonly PadContainer[]): PadState | null {
  const first = containers[0]?.id ?? '';
  try {
    const text = localStorage.getItem(STORE);
    if (!text) return null;
    const pad: PadState = { ...emptyPad(first), ...JSON.parse(text) };
    const known = (id: string) => containers.some((c) => c.id === id);
    return {
      ...pad,
      rowId: rows.some((r) => r.id === pad.rowId) ? pad.rowId : null,
      containerId: known(pad.containerId) ? pad.containerId : first,
      readings: pad.readings.filter((r) => known(r.containerId)),
    };
  } catch {
    return null;
  }
}
