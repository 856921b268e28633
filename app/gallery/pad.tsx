'use client';
import { HarvestPad } from '#components/harvest-pad.tsx';
export function Pad(props: any) {
  return <HarvestPad {...props} onRecord={async (act) => { (window as any).act = act; return { ok: true }; }} />;
}
