/**
 * Wrenlatch Orchard & Nursery: the invented place that is our demo. People and places are made up; cultivar and rootstock
 * names are ordinary pomological names. Every figure here is a demo value, not a published one; jar pitches and heights
 * follow lib/reference/jar-sizes.ts.
 */

export interface DemoCrop {
  code: string;
  foodId: string;
  label: string;
  count: number;
  unit: string;
  gPerUnit: number;
  /** First and last picking day, MM-DD. */
  window: readonly [string, string];
  soldPercent: number;
  eatenPercent: number;
  cullPercent: number;
}

export const WRENLATCH = {
  name: 'Wrenlatch Orchard & Nursery',
  shortName: 'Wrenlatch',
  firstDay: '2025-01-01',
  openingDay: '2025-09-12',
  lastDay: '2026-01-15',
  timeZone: 'Europe/London',
  settings: {
    targetBrix: 65,
    invertedShare: 0,
    panLossG: 0,
    batchWarnCups: 6,
    batchStopCups: 8,
    crushedGPerCup: 235,
    lidMargin: 0.03,
    breakage: 0.02,
    reserve: 0.1,
    jarsBack: { eaten: 1, given: 0.4, sold: 0.15 },
    softCapHours: 24,
    dayEndsAt: '04:00',
  },
  kitchens: [
    { code: 'home', label: 'Home kitchen', altitudeM: 410, main: true },
    { code: 'quay', label: 'Quay community kitchen', altitudeM: 6, main: false },
  ],
  people: [
    { code: 'bryn', label: 'Bryn', role: 'grower', can: ['all'], minutes: [0, 120, 0, 0, 120, 0, 240] },
    { code: 'odda', label: 'Odda', role: 'partner, runs the stove and stall', can: ['all'], minutes: [0, 210, 0, 210, 0, 300, 360] },
    { code: 'gran', label: 'Gran', role: 'elder, paper and large type', can: ['eat', 'give', 'stocktake'], minutes: [0, 0, 0, 0, 0, 0, 0] },
    { code: 'teen', label: 'the teen', role: 'teen, picks and labels', can: ['harvest', 'label', 'eat'], minutes: [0, 0, 0, 0, 0, 0, 0] },
    { code: 'child', label: 'the child', role: 'child, fetches jars', can: ['eat'], minutes: [0, 0, 0, 0, 0, 0, 0] },
  ],
  containers: [
    { code: 'blue-bucket', label: 'Blue bucket', tareG: 620, volumeMl: 10000 },
    { code: 'lug', label: 'Lug', tareG: 950, volumeMl: 25000 },
    { code: 'crate', label: 'Crate', tareG: 1400, volumeMl: 45000 },
    { code: 'picking-bag', label: 'Picking bag', tareG: 1100, volumeMl: 22000 },
    { code: 'punnet-half-pint', label: 'Punnet, half-pint', tareG: 12, volumeMl: 280 },
    { code: 'flat-12-pint', label: 'Flat of 12 pints', tareG: 350, volumeMl: 6600 },
  ],
  burners: [
    { code: 'hob-1', watts: 3500, outdoors: false },
    { code: 'hob-2', watts: 2500, outdoors: false },
    { code: 'hob-3', watts: 2000, outdoors: false },
    { code: 'hob-4', watts: 1200, outdoors: false },
    { code: 'yard-ring', watts: 7000, outdoors: true },
  ],
  pans: [
    { code: 'pan-10', label: '10 L wide pan', ml: 10000, diameterMm: 360, maxFillPercent: 50, evapGPerMin: 45 },
    { code: 'pan-6', label: '6 L pan', ml: 6000, diameterMm: 280, maxFillPercent: 50, evapGPerMin: 28 },
    { code: 'stock-12', label: '12 L stock pot', ml: 12000, diameterMm: null, maxFillPercent: null, evapGPerMin: null },
    { code: 'steam-juicer', label: '8 L steam juicer', ml: 8000, diameterMm: null, maxFillPercent: null, evapGPerMin: null },
  ],
  canners: [
    { code: 'canner-22qt', label: 'Big canner, 22 quart', loads: {Q4: 12, HP: 12, PT: 9, QT: 7}, heatUpS: 2100, reheatS: 720 },
    { code: 'canner-15qt', label: 'Small canner, 15 quart', loads: {Q4: 8, HP: 8, PT: 7, QT: 4}, heatUpS: 1500, reheatS: 600 },
  ],
  dryer: { code: 'dryer', trays: 10, trayCm2: 1400, gPerTray: 700, centiC: 5700 },
  press: { cheeseG: 36_000, juicePercent: 62 },
  rooms: [
    { code: 'stillroom', label: 'Stillroom', kind: 'shelf', bays: 4, shelvesPerBay: 5, widthMm: 900, depthMm: 320, clearMm: 230, maxGPerShelf: 60000, litres: null, crates: null, lowC: 9, highC: 17 },
    { code: 'fruit-store', label: 'Fruit store', kind: 'ambient', bays: null, shelvesPerBay: null, widthMm: null, depthMm: null, clearMm: null, maxGPerShelf: null, litres: null, crates: 24, lowC: 3, highC: 8 },
    { code: 'kitchen-fridge', label: 'Kitchen fridge', kind: 'fridge', bays: null, shelvesPerBay: null, widthMm: null, depthMm: null, clearMm: null, maxGPerShelf: null, litres: 60, crates: null, lowC: 2, highC: 5 },
    { code: 'chest', label: 'Chest freezer', kind: 'freezer', bays: null, shelvesPerBay: null, widthMm: null, depthMm: null, clearMm: null, maxGPerShelf: null, litres: 300, crates: null, lowC: -20, highC: -18 },
    { code: 'kitchen-freezer', label: 'Kitchen freezer', kind: 'freezer', bays: null, shelvesPerBay: null, widthMm: null, depthMm: null, clearMm: null, maxGPerShelf: null, litres: 60, crates: null, lowC: -20, highC: -18 },
    { code: 'dry-cupboard', label: 'Dry cupboard', kind: 'dry', bays: null, shelvesPerBay: null, widthMm: null, depthMm: null, clearMm: null, maxGPerShelf: null, litres: 120, crates: null, lowC: 14, highC: 20 },
  ],
  jarKinds: [
    { code: 'Q4', label: 'quarter-pint', size: 'quarter-pint', fillMl: 118, pitchMm: 73, heightMm: 60, canning: true },
    { code: 'HP', label: 'half-pint', size: 'half-pint', fillMl: 237, pitchMm: 75, heightMm: 97, canning: true },
    { code: 'PT', label: 'pint', size: 'pint', fillMl: 473, pitchMm: 83, heightMm: 130, canning: true },
    { code: 'QT', label: 'quart', size: 'quart', fillMl: 946, pitchMm: 96, heightMm: 178, canning: true },
    { code: 'FZ8', label: '8 oz freezer tub', size: null, fillMl: 237, pitchMm: 85, heightMm: 70, canning: false },
    { code: 'FZ', label: '500 g frozen pack', size: null, fillMl: 700, pitchMm: 140, heightMm: 60, canning: false },
    { code: 'FZK', label: '1 kg frozen pack', size: null, fillMl: 1300, pitchMm: 180, heightMm: 70, canning: false },
    { code: 'DR', label: '100 g dried pack', size: null, fillMl: 400, pitchMm: 110, heightMm: 90, canning: false },
  ],
} as const;

/** Trees: row, first and last position, crop, cultivar, rootstock, year planted, block. */
export const TREES: readonly (readonly [string, number, number, string, string, string, number, string])[] = [
  ['A1', 1, 6, 'apple-early', 'Gravenstein', 'MM106', 2009, 'Home'],
  ['A2', 1, 8, 'apple-dessert', 'Liberty', 'M26', 2013, 'Home'],
  ['A3', 1, 6, 'apple-keeper', 'Belle de Boskoop', 'MM106', 2009, 'Home'],
  ['A3', 7, 11, 'apple-russet', 'Golden Russet', 'MM106', 2011, 'Home'],
  ['A4', 1, 10, 'apple-trial', 'mixed trial', 'various', 2018, 'Home'],
  ['B1', 1, 8, 'apple-cider-sharp', 'Kingston Black', 'MM106', 2012, 'Low'],
  ['B2', 1, 3, 'crabapple', 'Dolgo', 'seedling', 2012, 'Low'],
  ['C1', 1, 4, 'pear-early', 'Orcas', 'OHxF 97', 2010, 'Pear'],
  ['C1', 5, 6, 'pear-asian', 'Shinseiki', 'OHxF 97', 2015, 'Pear'],
  ['C2', 1, 6, 'pear-mid', 'Conference', 'Quince A', 2014, 'Pear'],
  ['C2', 7, 10, 'pear-late', 'Doyenne du Comice', 'Quince A', 2014, 'Pear'],
  ['C3', 1, 3, 'quince', 'Smyrna', 'own root', 2012, 'Pear'],
  ['C3', 4, 4, 'medlar', 'Nottingham', 'Quince A', 2016, 'Pear'],
  ['D1', 1, 4, 'cherry-sour', 'Montmorency', 'Colt', 2014, 'Stone'],
  ['D1', 5, 6, 'cherry-sweet', 'Kordia', 'Colt', 2014, 'Stone'],
  ['D2', 1, 2, 'mirabelle', 'Mirabelle de Nancy', 'St Julien A', 2015, 'Stone'],
  ['D2', 3, 5, 'plum-early', 'Opal', 'St Julien A', 2013, 'Stone'],
  ['D3', 1, 4, 'plum-prune', 'Italian', 'St Julien A', 2011, 'Stone'],
  ['D3', 5, 7, 'damson', 'Shropshire Prune', 'St Julien A', 2011, 'Stone'],
  ['W1', 1, 1, 'fig', 'Desert King', 'own root', 2017, 'Wall'],
];

/** Soft-fruit rows: the row, not the plant, is the unit of record. */
export const ROWS: readonly (readonly [string, string, number, string])[] = [
  ['E1', 'strawberry', 120, 'plant'],
  ['E2', 'raspberry-red', 30, 'metre of row'],
  ['E3', 'currant-black', 14, 'bush'],
  ['E4', 'currant-red', 8, 'bush'],
  ['E4b', 'gooseberry', 8, 'bush'],
  ['E5', 'blueberry', 16, 'bush'],
  ['E6', 'loganberry', 10, 'plant'],
  ['H1', 'elderberry-european', 4, 'bush'],
  ['R1', 'rhubarb', 12, 'crown'],
];

export const DEMO_CROPS: readonly DemoCrop[] = [
  { code: 'rhubarb', foodId: 'rhubarb', label: 'Rhubarb', count: 12, unit: 'crown', gPerUnit: 3000, window: ['04-15', '06-20'], soldPercent: 30, eatenPercent: 10, cullPercent: 5 },
  { code: 'strawberry', foodId: 'strawberry', label: 'Strawberry', count: 120, unit: 'plant', gPerUnit: 300, window: ['06-08', '07-05'], soldPercent: 45, eatenPercent: 25, cullPercent: 7 },
  { code: 'gooseberry', foodId: 'gooseberry', label: 'Gooseberry', count: 8, unit: 'bush', gPerUnit: 3500, window: ['06-25', '07-15'], soldPercent: 60, eatenPercent: 5, cullPercent: 5 },
  { code: 'currant-red', foodId: 'currant-red', label: 'Redcurrant', count: 8, unit: 'bush', gPerUnit: 4000, window: ['07-01', '07-20'], soldPercent: 50, eatenPercent: 5, cullPercent: 8 },
  { code: 'currant-black', foodId: 'currant-black', label: 'Blackcurrant', count: 14, unit: 'bush', gPerUnit: 4500, window: ['07-05', '07-25'], soldPercent: 20, eatenPercent: 3, cullPercent: 5 },
  { code: 'raspberry-red', foodId: 'raspberry-red', label: 'Raspberry', count: 30, unit: 'metre of row', gPerUnit: 2000, window: ['07-01', '08-10'], soldPercent: 30, eatenPercent: 12, cullPercent: 8 },
  { code: 'blueberry', foodId: 'blueberry', label: 'Blueberry', count: 16, unit: 'bush', gPerUnit: 3000, window: ['07-15', '08-31'], soldPercent: 60, eatenPercent: 20, cullPercent: 5 },
  { code: 'loganberry', foodId: 'loganberry', label: 'Tayberry and trailing blackberry', count: 10, unit: 'plant', gPerUnit: 6000, window: ['07-15', '09-05'], soldPercent: 65, eatenPercent: 10, cullPercent: 8 },
  { code: 'cherry-sweet', foodId: 'cherry-sweet', label: 'Sweet cherry', count: 2, unit: 'tree', gPerUnit: 18000, window: ['06-28', '07-12'], soldPercent: 40, eatenPercent: 25, cullPercent: 20 },
  { code: 'cherry-sour', foodId: 'cherry-sour', label: 'Sour cherry', count: 4, unit: 'tree', gPerUnit: 14000, window: ['07-08', '07-25'], soldPercent: 40, eatenPercent: 3, cullPercent: 12 },
  { code: 'mirabelle', foodId: 'mirabelle', label: 'Mirabelle plum', count: 2, unit: 'tree', gPerUnit: 18000, window: ['08-08', '08-20'], soldPercent: 50, eatenPercent: 10, cullPercent: 8 },
  { code: 'plum-early', foodId: 'plum-european', label: 'Early plum', count: 3, unit: 'tree', gPerUnit: 20000, window: ['08-05', '08-22'], soldPercent: 40, eatenPercent: 10, cullPercent: 10 },
  { code: 'plum-prune', foodId: 'plum-european', label: 'Prune plum', count: 4, unit: 'tree', gPerUnit: 22000, window: ['09-01', '09-22'], soldPercent: 40, eatenPercent: 6, cullPercent: 10 },
  { code: 'damson', foodId: 'damson', label: 'Damson', count: 3, unit: 'tree', gPerUnit: 20000, window: ['09-05', '09-25'], soldPercent: 65, eatenPercent: 0, cullPercent: 8 },
  { code: 'fig', foodId: 'fig', label: 'Fig', count: 1, unit: 'tree', gPerUnit: 12000, window: ['07-25', '08-20'], soldPercent: 30, eatenPercent: 40, cullPercent: 15 },
  { code: 'elderberry-european', foodId: 'elderberry-european', label: 'Elderberry', count: 4, unit: 'bush', gPerUnit: 6000, window: ['08-20', '09-12'], soldPercent: 60, eatenPercent: 0, cullPercent: 35 },
  { code: 'crabapple', foodId: 'crabapple', label: 'Crabapple', count: 3, unit: 'tree', gPerUnit: 30000, window: ['08-25', '09-12'], soldPercent: 45, eatenPercent: 0, cullPercent: 20 },
  { code: 'apple-early', foodId: 'apple-cooking', label: 'Apple (early cooking)', count: 6, unit: 'tree', gPerUnit: 45000, window: ['08-20', '09-10'], soldPercent: 45, eatenPercent: 10, cullPercent: 12 },
  { code: 'pear-early', foodId: 'pear', label: 'Pear (early)', count: 4, unit: 'tree', gPerUnit: 40000, window: ['09-01', '09-12'], soldPercent: 65, eatenPercent: 8, cullPercent: 12 },
  { code: 'pear-mid', foodId: 'pear', label: 'Pear (mid)', count: 6, unit: 'tree', gPerUnit: 25000, window: ['09-18', '09-30'], soldPercent: 55, eatenPercent: 12, cullPercent: 8 },
  { code: 'pear-late', foodId: 'pear', label: 'Pear (late)', count: 4, unit: 'tree', gPerUnit: 25000, window: ['10-01', '10-10'], soldPercent: 60, eatenPercent: 25, cullPercent: 8 },
  { code: 'pear-asian', foodId: 'pear-asian', label: 'Asian pear', count: 2, unit: 'tree', gPerUnit: 25000, window: ['09-05', '09-20'], soldPercent: 60, eatenPercent: 25, cullPercent: 10 },
  { code: 'apple-dessert', foodId: 'apple-dessert', label: 'Apple (dessert)', count: 8, unit: 'tree', gPerUnit: 35000, window: ['09-25', '10-10'], soldPercent: 60, eatenPercent: 15, cullPercent: 8 },
  { code: 'apple-keeper', foodId: 'apple-cooking', label: 'Apple (keeping cooker)', count: 6, unit: 'tree', gPerUnit: 50000, window: ['10-05', '10-20'], soldPercent: 40, eatenPercent: 15, cullPercent: 8 },
  { code: 'apple-cider-sharp', foodId: 'apple-cider-sweet', label: 'Apple (cider)', count: 8, unit: 'tree', gPerUnit: 38000, window: ['10-10', '10-25'], soldPercent: 0, eatenPercent: 0, cullPercent: 10 },
  { code: 'apple-russet', foodId: 'apple-dessert', label: 'Apple (russet)', count: 5, unit: 'tree', gPerUnit: 40000, window: ['10-15', '10-30'], soldPercent: 55, eatenPercent: 25, cullPercent: 6 },
  { code: 'apple-trial', foodId: 'apple-dessert', label: 'Apple (trial row, mixed)', count: 10, unit: 'tree', gPerUnit: 15000, window: ['09-15', '10-30'], soldPercent: 15, eatenPercent: 10, cullPercent: 20 },
  { code: 'quince', foodId: 'quince', label: 'Quince', count: 3, unit: 'tree', gPerUnit: 28000, window: ['10-10', '10-25'], soldPercent: 70, eatenPercent: 0, cullPercent: 10 },
  { code: 'medlar', foodId: 'medlar', label: 'Medlar', count: 1, unit: 'tree', gPerUnit: 20000, window: ['11-01', '11-15'], soldPercent: 50, eatenPercent: 0, cullPercent: 25 },
];
