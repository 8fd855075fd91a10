// Bundles one TypeScript script with esbuild and runs it: `node test/support/run.mjs script.ts [arguments]`.
import { mkdtempSync, rmSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const [script] = process.argv.splice(2, 1)
if (script === undefined) throw new Error('Which script? node test/support/run.mjs script.ts')
const folder = mkdtempSync(join(process.cwd(), 'node_modules', '.run-'))
try {
  const outfile = join(folder, 'script.mjs')
  await build({
    entryPoints: [resolve(script)],
    outfile,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    logLevel: 'warning',
  })
  await import(pathToFileURL(outfile).href)
} finally {
  rmSync(folder, { recursive: true })
}
