/** The places of the program, in the order of a working day. The first five sit in the phone's bottom bar. */
export type NavPlace = { readonly id: string; readonly label: string; readonly href: string; readonly icon: string };

export const NAV_PLACES: readonly NavPlace[] = [
  { id: 'today', label: 'Today', href: '/', icon: 'M4 11 12 4l8 7v9h-6v-6h-4v6H4z' },
  { id: 'harvest', label: 'Harvest', href: '/harvest', icon: 'M4 9h16l-2 11H6zM7 9a5 5 0 0 1 10 0' },
  { id: 'plan', label: 'Plan', href: '/plan', icon: 'M4 6h10M4 12h16M4 18h7' },
  {
    id: 'batches',
    label: 'Batches',
    href: '/batches',
    icon: 'M3 10h18v3a7 7 0 0 1-7 7h-4a7 7 0 0 1-7-7zM8 6V3M12 6V3M16 6V3',
  },
  { id: 'set-asides', label: 'Set-asides', href: '/set-asides', icon: 'M4 12a8 8 0 0 0 16 0zM12 12V4' },
  { id: 'pantry', label: 'Pantry', href: '/pantry', icon: 'M7 8h10v12H7zM8 4h8v4H8z' },
  { id: 'season', label: 'Season', href: '/season', icon: 'M3 18c5 0 5-11 9-11s4 7 9 7' },
  { id: 'trace', label: 'Trace', href: '/trace', icon: 'M5 5h5v5H5zM14 14h5v5h-5zM10 7.5h6v6.5' },
  { id: 'recipes', label: 'Recipes', href: '/recipes', icon: 'M6 4h12v16H6zM9 8h6M9 12h6' },
  {
    id: 'place',
    label: 'Place',
    href: '/place',
    icon: 'M12 21s7-6.5 7-11a7 7 0 0 0-14 0c0 4.5 7 11 7 11zM12 12.500v-5',
  },
];

const PHONE_BAR = ['today', 'harvest', 'plan', 'batches', 'pantry'];
/** What the phone's bottom bar shows, and what stands behind "More". */
export const phonePlaces = (): { bar: NavPlace[]; more: NavPlace[] } => ({
  bar: NAV_PLACES.filter((p) => PHONE_BAR.includes(p.id)),
  more: NAV_PLACES.filter((p) => !PHONE_BAR.includes(p.id)),
});

/** The place an address belongs to (`/batches/25256-DAM-A` is Batches), or null. */
export function placeOfPath(path: string): string | null {
  if (path === '/') return 'today';
  return NAV_PLACES.find((p) => p.href !== '/' && (path === p.href || path.startsWith(`${p.href}/`)))?.id ?? null;
}
