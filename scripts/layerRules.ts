/** The engine's rooms, lowest first: a room imports from itself and from rooms before it. */
export const engineRooms: readonly string[] = [
  'model',
  'quantities',
  'wording',
  'numerics',
  'laws',
  'catalogue',
  'network',
  'families',
  'packing',
  'assessment',
  'doubt',
  'planning',
  'lineup',
  'learning',
  'elimination',
  'claims',
  'reckonings',
];

/** For each package, the packages that it may import from, or the one folder of a package. */
export const packageLayers: Readonly<Record<string, readonly string[]>> = {
  engine: [],
  job: ['engine'],
  store: ['engine', 'job'],
  drawing: ['engine', 'job'],
  plots: ['engine', 'job', 'drawing'],
  writeup: ['engine', 'job', 'drawing', 'plots'],
  workflows: ['engine', 'job', 'store', 'drawing', 'writeup'],
  server: ['engine', 'job', 'store', 'drawing', 'writeup', 'workflows'],
  cli: ['engine', 'job', 'store', 'drawing', 'writeup', 'workflows', 'server'],
  // What records are is in the contract; records themselves are reached over the API alone.
  web: ['engine', 'job', 'store/contract', 'drawing', 'plots', 'writeup', 'workflows'],
};

/** Where a source file belongs. Files outside `packages/` belong to no package and may import any of them. */
export interface Place {
  readonly packageName: string | undefined;
  /** The engine's room; undefined in other packages. */
  readonly room: string | undefined;
  /** Whether it is a test, or stands in a `testing` folder, which serves tests alone. */
  readonly isTest: boolean;
}

/** The package and room of a path from the project's root. */
export function placeOf(path: string): Place {
  const [top, packageName, room, ...rest] = path.split('/');
  const isTest = path.endsWith('.test.ts') || path.includes('/testing/');
  if (top !== 'packages') return { packageName: undefined, room: undefined, isTest };
  const inRoom = packageName === 'engine' && rest.length > 0;
  return { packageName, room: inRoom ? room : undefined, isTest };
}
