import { defineConfig } from 'tsup'

/** The public entries, one file each; `npm run generate` writes `exports` of package.json from this list. */
export const ENTRIES: readonly string[] = [
  'index',
  'v1/index',
  'v1/calendar',
  'v1/card',
  'v1/fill',
  'v1/interval',
  'v1/interval/fleet',
  'v1/interval/meters',
  'v1/message',
  'v1/message/en',
  'v1/oil',
  'v1/procedure',
  'v1/quantity',
  'v1/quantity/codes',
  'v1/rules',
  'v1/seal',
  'v1/service',
  'v1/spec',
  'v1/thread',
  'v1/torque',
]

const files = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, `src/${name}.ts`]))

export default defineConfig({
  // kitSums apart: the one file with decimal.js is a chunk of its own, which planVisit does not load.
  entry: files([...ENTRIES, 'cli/main', 'service/kitSums']),
  dts: { entry: files(ENTRIES) },
  format: ['esm', 'cjs'],
  target: 'node20',
  platform: 'node',
  removeNodeProtocol: false,
  treeshake: true,
  splitting: true,
  sourcemap: true,
  clean: true,
  silent: true,
})
