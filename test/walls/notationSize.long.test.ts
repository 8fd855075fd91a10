import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { expect, it } from 'vitest'

const ROOT = new URL('../../', import.meta.url).pathname

/**
 * What the short notation adds to `parseSpecSheet`, in kB of gzip. The goal is 9. A fifth of it are explanations and
 * corrections of mistakes, a tenth the spellings of units. The names that the minifier gives change it by 0.03 when other
 * rooms change.
 */
const CEILING = 10.1

/** The bundle of `parseSpecSheet` from the sources, with empty modules for these files. */
async function bundle(empty: RegExp): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: `export { parseSpecSheet } from './src/v1/spec.js'`, resolveDir: ROOT, loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    logLevel: 'error',
    plugins: [
      {
        name: 'empty modules',
        setup: ({ onLoad }) =>
          onLoad({ filter: empty }, ({ path }) => ({
            contents: `export const ${/(\w+)\.ts$/.exec(path)?.[1]} = undefined`,
          })),
      },
    ],
  })
  return outputFiles[0]?.text ?? ''
}

const toKilobytes = (text: string): number => gzipSync(text, { level: 9 }).length / 1000

it('the short notation stays below its ceiling', async () => {
  const withNotation = await bundle(/^$/)
  const without = await bundle(/\/notation\/(expandShort|\w+NotationTable)\.ts$/)
  // One text of each: what is measured is there, and is gone.
  expect(withNotation).toContain('whichever')
  expect(without).not.toContain('whichever')
  expect(without).toContain('crush washer')
  const added = toKilobytes(withNotation) - toKilobytes(without)
  console.log(`short notation: ${added.toFixed(2)} kB gzip of ${CEILING}, goal 9`)
  expect(added).toBeLessThanOrEqual(CEILING)
})
