/**
 * One colour per food or crop, from the fruit's own flesh or skin (whichever is seen in the jar). Chosen by eye for this program;
 * no published colour table is meant. Colours carry quantity by length or count as well, never meaning alone.
 */
const FRUIT_COLOURS: Readonly<Record<string, string>> = {
  'apple-dessert': '#b9a24a',
  'apple-cooking': '#a3ab4f',
  'apple-cider-sweet': '#a8742c',
  crabapple: '#c4473a',
  pear: '#c3b26b',
  'pear-asian': '#b8935a',
  quince: '#d9a441',
  'japonica-quince': '#cdb53a',
  medlar: '#7d5637',
  apricot: '#d98a2b',
  'peach-yellow': '#e0934f',
  'peach-white': '#d9a08c',
  nectarine: '#d4713a',
  'plum-european': '#6e2a3c',
  'plum-japanese': '#a83248',
  damson: '#43264f',
  greengage: '#8f9c3e',
  mirabelle: '#dba62c',
  'cherry-sweet': '#6b1526',
  'cherry-sour': '#b01c2e',
  'cornelian-cherry': '#a31a1f',
  blackberry: '#3a1730',
  loganberry: '#8a1f45',
  'raspberry-red': '#c22f55',
  'raspberry-black': '#3d2040',
  strawberry: '#c0262f',
  blueberry: '#3f4a80',
  cranberry: '#a4203a',
  gooseberry: '#8a9a4a',
  'currant-red': '#c5202b',
  'currant-black': '#2f1b33',
  'elderberry-european': '#35203f',
  'elderberry-american': '#482a52',
  'mulberry-black': '#40192b',
  'mulberry-white': '#a98a96',
  saskatoon: '#4d3462',
  aronia: '#2b1a2d',
  'sea-buckthorn': '#e48a1c',
  rowan: '#d2551f',
  rosehip: '#cc3d1e',
  hawthorn: '#8f2a2b',
  sloe: '#2f3556',
  'grape-slipskin': '#46305e',
  'grape-vinifera': '#7c8a3c',
  fig: '#7a3b52',
  'persimmon-japanese': '#dd6f23',
  'persimmon-american': '#c9671f',
  pomegranate: '#9e1b3c',
  kiwifruit: '#7d9436',
  kiwiberry: '#6b8a3a',
  rhubarb: '#c0677a',
  'lemon-juice': '#d8bf3a',
  'lemon-whole': '#d9b92b',
  'orange-sweet': '#e0831f',
  'orange-seville': '#cf6a17',
  grapefruit: '#d9726a',
  mandarin: '#e57a1c',
  kumquat: '#db8a17',
  pineapple: '#d9b13c',
  guava: '#d4707a',
  feijoa: '#6f8a5a',
  loquat: '#dba04a',
  jujube: '#7a3f22',
  'ground-cherry': '#d99d2e',
  melon: '#dc9a5c',
  watermelon: '#cf4450',
  tomato: '#bf3420',
  // Crops that share a food with another crop of the same place keep a shade of their own.
  'plum-early': '#8a2f4a',
  'plum-prune': '#4f2c55',
  'pear-early': '#b5a948',
  'pear-mid': '#c3b26b',
  'pear-late': '#cbb98a',
  'apple-early': '#93a548',
  'apple-keeper': '#a89a45',
  'apple-russet': '#a27d45',
  'apple-trial': '#b08a5c',
  'apple-cider-sharp': '#96612a',
  // Fruit and materials of the drying and set-aside tables.
  lime: '#7f9a35',
  'mandarin-clementine': '#e57a1c',
  pummelo: '#c9b25c',
  'grape-muscadine': '#553047',
  'prickly-pear': '#a8245e',
  'apple-peel-core': '#b8894f',
  'apple-pomace': '#9c7645',
  'citrus-rind': '#d1801f',
  'herb-leaf': '#5f7a48',
  leather: '#8a3f3a',
};

/** Grey-blue of what has no fruit of its own (sugar, water, vapour, an unknown id). */
export const NO_FRUIT = '#7a8194';

/** Every food and crop id that has a colour. */
export const colouredFoods = (): string[] => Object.keys(FRUIT_COLOURS);

type Rgb = readonly [number, number, number];
const rgb = (hex: string): Rgb => [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16)) as unknown as Rgb;
const hex = (c: readonly number[]): string =>
  `#${c
    .map((v) =>
      Math.round(Math.min(255, Math.max(0, v)))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
const mix = (a: string, b: string, share: number): string => {
  const [from, to] = [rgb(a), rgb(b)];
  return hex(from.map((v, i) => v + ((to[i] as number) - v) * share));
};

/** How far a product's look moves from the fresh fruit, and towards what. */
const PRODUCT_TINTS: Readonly<Record<string, readonly [towards: string, share: number]>> = {
  jam: ['#1c0a10', 0.08],
  conserve: ['#1c0a10', 0.12],
  marmalade: ['#7a3a05', 0.1],
  jelly: ['#ffffff', 0.1],
  butter: ['#4a2410', 0.6],
  paste: ['#3a1410', 0.3],
  'fruit-in-syrup': ['#fff6dc', 0.22],
  compote: ['#fff6dc', 0.18],
  sauce: ['#f1e2b4', 0.35],
  juice: ['#f3dfa0', 0.25],
  'freezer-jam': ['#ffffff', 0.06],
  frozen: ['#dfe8f5', 0.25],
  dried: ['#5a3a1c', 0.35],
  leather: ['#4a1c14', 0.25],
};

/** Colour of a fruit, or of a product made of it; grey-blue for an unknown id. */
export function fruitColour(id: string, product?: string): string {
  const base = FRUIT_COLOURS[id] ?? NO_FRUIT;
  const tint = product ? PRODUCT_TINTS[product] : undefined;
  return tint ? mix(base, tint[0], tint[1]) : base;
}

/** Relative luminance, 0 to 1 (WCAG 2.2, definition of relative luminance). */
function luminance(colour: string): number {
  const [r, g, b] = rgb(colour).map((v) => {
    const s = v / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  }) as unknown as Rgb;
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio of two colours written `#rrggbb`, 1 to 21 (WCAG 2.2). */
export function contrastRatio(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** White or black, whichever reads better: never under 4.58 to 1, the square root of 21. */
export const labelColour = (ground: string): string =>
  contrastRatio(ground, '#ffffff') >= contrastRatio(ground, '#000000') ? '#ffffff' : '#000000';
