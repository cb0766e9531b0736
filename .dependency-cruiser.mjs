const sciences =
  '^shared/(agreement|estimating|ordering|making|assemblage|bartering|curriculum|reading|glossary|safety|day|returns|drawing)/';

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    {
      name: 'no-circle',
      severity: 'error',
      comment: 'Two files that need each other are one file, or hide a third.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'shared-stands-alone',
      severity: 'error',
      comment: 'Pass it in as an argument, or move the code to src/.',
      from: { path: '^shared/' },
      to: { path: ['^src/', 'node_modules/(astro|preact|nanostores|@preact|@astrojs|@nanostores)/'] },
    },
    {
      name: 'shared-has-no-machine',
      severity: 'error',
      comment: 'Read files in src/loaders.',
      from: { path: '^shared/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'kinds-are-strangers',
      severity: 'error',
      comment: 'Lift what both need into a science.',
      from: { path: '^shared/activities/([^/]+)/' },
      to: { path: '^shared/activities/[^/]+/', pathNot: '^shared/activities/$1/' },
    },
    {
      name: 'only-the-registry-knows-kinds',
      severity: 'error',
      comment: 'Go through shared/activities/index.ts, scorers.ts or papers.ts.',
      from: { path: '^(shared|src)/', pathNot: '^shared/activities/' },
      to: { path: '^shared/activities/[^/]+/' },
    },
    {
      name: 'sciences-below-kinds',
      severity: 'error',
      comment: 'Hand the science plain data; of the library it may know the names of the bands.',
      from: { path: sciences },
      to: { path: '^shared/(activities|compile|packs|lesson|library)/', pathNot: '^shared/library/bands' },
    },
    {
      name: 'making-asks-estimating-by-its-index',
      severity: 'error',
      comment: 'A science uses another through its index.ts only.',
      from: { path: '^shared/making/' },
      to: { path: '^shared/estimating/', pathNot: '^shared/estimating/index[.]ts$' },
    },
    {
      name: 'chance-is-the-floor',
      severity: 'error',
      comment: 'chance imports nothing.',
      from: { path: '^shared/chance/' },
      to: { path: '^shared/', pathNot: '^shared/chance/' },
    },
    {
      name: 'words-are-plain',
      severity: 'error',
      comment: 'Words take plain values (and the name of a band) and give sentences.',
      from: { path: '^shared/words/' },
      to: { path: '^shared/', pathNot: '^shared/(words/|units|library/bands|lesson/problem)' },
    },
    {
      name: 'stores-below-islands',
      severity: 'error',
      comment: 'A store knows no screen.',
      from: { path: '^src/stores/' },
      to: { path: '^src/', pathNot: '^src/stores/' },
    },
    {
      name: 'islands-have-no-machine',
      severity: 'error',
      comment: 'Data comes as props, made by a page.',
      from: { path: '^src/(islands|player)/' },
      to: { path: '^src/(loaders|pages|command|packs)/' },
    },
    {
      name: 'islands-no-node',
      severity: 'error',
      comment: 'An island runs in a browser.',
      from: { path: '^src/(islands|stores|player|bench)/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'loaders-below-screens',
      severity: 'error',
      comment: 'A loader reads files and nothing else.',
      from: { path: '^src/loaders/' },
      to: { path: '^src/(islands|stores|pages|components)/' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.js', '.mjs'] },
  },
};
