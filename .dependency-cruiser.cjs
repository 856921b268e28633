// The arrows between the rooms: each room of lib/ looks only at the ones named in its row. DEVELOPERS.md draws the picture.
const LADDER = {
  units: [],
  reference: ['units'],
  science: ['units', 'reference'],
  batch: ['units', 'reference', 'science'],
  ledger: ['units'],
  plan: ['units', 'reference', 'science', 'batch', 'ledger'],
  forecast: ['units', 'reference', 'science', 'batch', 'ledger'],
  labels: ['units', 'reference', 'batch', 'ledger'],
  forms: ['units', 'reference'],
  demo: ['units', 'reference', 'science', 'batch', 'ledger'],
  store: ['units', 'reference', 'batch', 'ledger', 'plan'],
  usecases: [
    'units',
    'reference',
    'science',
    'batch',
    'ledger',
    'plan',
    'forecast',
    'labels',
    'forms',
    'demo',
    'store',
  ],
};
const PURE = 'units|reference|science|batch|ledger|plan|forecast|labels|demo';
const PACKAGES = [
  'npm',
  'npm-dev',
  'npm-optional',
  'npm-peer',
  'npm-no-pkg',
  'npm-unknown',
  'core',
  'unknown',
  'undetermined',
];

const error = (name, from, to) => ({ name, severity: 'error', from, to });

module.exports = {
  forbidden: [
    ...Object.entries(LADDER).map(([room, below]) =>
      error(
        `ladder-${room}`,
        { path: `^lib/${room}/` },
        { path: '^lib/', pathNot: `^lib/(${[room, ...below].join('|')})/` },
      ),
    ),
    error('no-room-outside-the-ladder', { pathNot: `^lib/(${Object.keys(LADDER).join('|')})/`, path: '^lib/' }, {}),
    error('no-circular', {}, { circular: true }),
    error('every-import-is-there', {}, { couldNotResolve: true }),
    error('lib-knows-no-screen', { path: '^lib/' }, { path: '^(app|components|test|e2e)/' }),
    error('lib-is-free-of-the-framework', { path: '^lib/' }, { path: '(^|/)(next|react|react-dom)(/|$)' }),
    error(
      'pure-rooms-import-no-package',
      { path: `^lib/(${PURE})/`, pathNot: '^lib/(plan/solver|forecast/random)\\.ts$' },
      { dependencyTypes: PACKAGES },
    ),
    error(
      'prisma-only-in-store',
      { pathNot: '^(lib/store|prisma|test/support|test/store-database|\\.config)/|^e2e/server\\.mjs$' },
      { path: '(@prisma/|(^|/)prisma/|generated/prisma)' },
    ),
    error('screens-reach-data-through-usecases', { path: '^(app|components)/' }, { path: '^lib/store/' }),
    error(
      'components-are-handed-their-data',
      { path: '^components/' },
      { path: '^(app|lib)/', pathNot: '^lib/(units|labels|forms)/' },
    ),
    error(
      'components-take-form-types-only',
      { path: '^components/' },
      { path: '^lib/forms/', dependencyTypesNot: ['type-only'] },
    ),
    error(
      'pages-do-not-compute',
      { path: '^app/' },
      { path: '^lib/(science|batch|plan|forecast|ledger|reference|demo)/', dependencyTypesNot: ['type-only'] },
    ),
    error('production-does-not-import-tests', { path: '^(app|lib|components|prisma)/' }, { path: '^(test|e2e)/' }),
    error('browser-tests-look-from-outside', { path: '^e2e/' }, { path: '^(app|components|lib/(store|usecases))/' }),
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: ['node_modules', 'prisma/generated'] },
    exclude: { path: ['^prisma/generated/.*/internal', '^\\.next/', '\\.css$', '\\.svg$'] },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
