// `npm run bench [name …]`: runs every test/bench/*.bench.ts, or those whose name is given. Each exports `run()`.
import { mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const here = new URL('.', import.meta.url).pathname
const asked = process.argv.slice(2)
const names = readdirSync(here)
  .filter((file) => file.endsWith('.bench.ts'))
  .map((file) => file.slice(0, -'.bench.ts'.length))
  .filter((name) => asked.length === 0 || asked.includes(name))
if (names.length === 0) throw new Error(`No benchmark of that name: ${asked.join(', ')}`)

const folder = mkdtempSync(join(process.cwd(), 'node_modules', '.bench-'))
try {
  for (const name of names) {
    const outfile = join(folder, `${name}.mjs`)
    await build({
      entryPoints: [join(here, `${name}.bench.ts`)],
      outfile,
      bundle: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
      logLevel: 'warning',
    })
    console.log(`\n# ${name}`)
    const { default: run } = await import(pathToFileURL(outfile).href)
    await run()
  }
} finally {
  rmSync(folder, { recursive: true })
}
