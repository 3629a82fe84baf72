/** The suites of the test command, in the order they are started. A new suite is one more row here. */
export interface Suite {
  readonly name: string
  readonly command: readonly [string, ...string[]]
  readonly env?: Readonly<Record<string, string>>
  /** In a release run, on top of `env`. */
  readonly releaseEnv?: Readonly<Record<string, string>>
  /** Cores it keeps busy, waiting apart; suites run side by side while their sum is one more than the machine has. */
  readonly cores: 1 | 2
  /** Suites whose product it uses; it is not run when one of them fails. */
  readonly after?: readonly string[]
  /** `exit`: one check, passed by exit code 0. `file`: as many as it reports in COUNTS_FILE. */
  readonly counts: 'exit' | 'file'
  /** `fast` runs in every command, `full` in npm test, `release` only in npm run test:release. */
  readonly part: 'fast' | 'full' | 'release'
  readonly browser?: true
  /** Minutes after which it is ended and has failed; a release run multiplies them. */
  readonly limit: number
}

const node = (file: string): [string, ...string[]] => ['node', 'tests/run/run-ts.mjs', file]

/** Every branch of the core is taken by some test, or the run fails and lists the files with the lines left out. */
const CORE_COVERAGE = [
  '--coverage.enabled',
  '--coverage.include=src/core/**/*.ts',
  '--coverage.thresholds.branches=100',
  '--coverage.reporter=text',
  '--coverage.skipFull',
  '--coverage.reportsDirectory=test-results/coverage',
]

export const PLAN: readonly Suite[] = [
  {
    name: 'build',
    command: ['vite', 'build'],
    env: { NODE_ENV: 'production' },
    cores: 1,
    counts: 'exit',
    part: 'fast',
    limit: 1,
  },
  {
    name: 'format',
    command: ['biome', 'format', '--config-path=.config', '.'],
    cores: 1,
    counts: 'exit',
    part: 'fast',
    limit: 1,
  },
  {
    name: 'types',
    command: ['tsc', '--noEmit'],
    // One test reads the build's own manifest by its type.
    after: ['build'],
    cores: 1,
    counts: 'exit',
    part: 'fast',
    limit: 2,
  },
  { name: 'core types', command: ['tsc', '-p', 'src/core'], cores: 1, counts: 'exit', part: 'fast', limit: 2 },
  {
    name: 'lint',
    command: ['oxlint', '-c', '.config/oxlint.json', '--type-aware', 'src', 'tests', 'vite.config.ts', '.config'],
    cores: 1,
    counts: 'exit',
    part: 'fast',
    limit: 2,
  },
  { name: 'unused', command: ['knip', '-c', '.config/knip.jsonc'], cores: 1, counts: 'exit', part: 'fast', limit: 2 },
  {
    name: 'budget',
    command: node('tests/run/budget.ts'),
    cores: 1,
    after: ['build'],
    counts: 'file',
    part: 'fast',
    limit: 1,
  },
  {
    name: 'vitest',
    command: ['vitest', 'run', '--reporter=default', '--reporter=./tests/run/vitest-counts.ts', ...CORE_COVERAGE],
    releaseEnv: {
      FC_SEED: 'random',
      SHEET_RUNS: '5000',
      BACKUP_RUNS: '5000',
      MERGE_RUNS: '50000',
      DAMAGE_RUNS: '100000',
      FAULT_PAIRS: '3000',
      VIEW_RUNS: '2000',
      SCALE_RUNS: '20000',
      STOCK_OPERATIONS: '10000',
      YEAR_SETS: '200',
    },
    cores: 2,
    counts: 'file',
    part: 'fast',
    limit: 8,
  },
  {
    name: 'power cut',
    command: node('tests/durability/power-cut.ts'),
    env: { CUTS: '10' },
    releaseEnv: { CUTS: '300' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'kill',
    command: node('tests/durability/kill.ts'),
    env: { KILLS: '10' },
    releaseEnv: { KILLS: '300' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'torn log',
    command: node('tests/durability/torn-log.ts'),
    env: { TEARS: '3' },
    releaseEnv: { TEARS: '60' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'browser',
    command: ['playwright', 'test', '-c', 'tests/browser'],
    releaseEnv: { HOSTILE_STRINGS: '2000' },
    cores: 2,
    after: ['build'],
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 20,
  },
  {
    name: 'full disk',
    command: node('tests/durability/full-disk.ts'),
    env: { FULL_ROUNDS: '1' },
    releaseEnv: { FULL_ROUNDS: '15' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'tabs',
    command: node('tests/durability/tabs.ts'),
    env: { SCHEDULES: '10' },
    releaseEnv: { SCHEDULES: '500' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'damage at rest',
    command: node('tests/durability/damage-at-rest.ts'),
    env: { DAMAGES: '4' },
    releaseEnv: { DAMAGES: '80' },
    cores: 1,
    counts: 'file',
    part: 'full',
    browser: true,
    limit: 6,
  },
  {
    name: 'large book',
    command: node('tests/durability/large-book.ts'),
    cores: 2,
    counts: 'file',
    part: 'release',
    browser: true,
    limit: 180,
  },
  {
    name: 'migrate',
    command: node('tests/durability/migrate.ts'),
    cores: 1,
    counts: 'file',
    part: 'release',
    browser: true,
    limit: 10,
  },
  {
    name: 'bench',
    command: node('tests/bench/main.ts'),
    cores: 2,
    counts: 'file',
    part: 'release',
    limit: 10,
  },
]
