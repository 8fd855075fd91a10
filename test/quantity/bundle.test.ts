import { gzipSync } from 'node:zlib'
import { build } from 'esbuild'
import { describe, expect, it } from 'vitest'

async function bundle(contents: string): Promise<{ readonly text: string; readonly kB: number }> {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    minify: true,
    write: false,
    platform: 'neutral',
    mainFields: ['module', 'main'],
    format: 'esm',
  })
  const text = outputFiles[0]?.text ?? ''
  return { text, kB: gzipSync(text, { level: 9 }).length / 1000 }
}

describe('what a caller’s bundle holds', () => {
  it('the whole module is at most 20 kB gzip, convert-units among it, and neither decimal.js nor the code lists', async () => {
    const { text, kB } = await bundle(`export * from './src/quantity/index.js'`)
    console.log(`quantity: ${kB.toFixed(1)} kB gzip`)
    expect(kB).toBeLessThanOrEqual(20)
    expect(text).toContain('Unable to convert units')
    expect(text).not.toContain('DecimalError')
    expect(text).not.toContain('[gal_us]')
  })

  it('convert alone brings no names for reading, and comparing brings no convert-units', async () => {
    const convert = await bundle(`export { convert } from './src/quantity/index.js'`)
    expect(convert.text).not.toContain('poundfeet')
    expect(convert.kB).toBeLessThanOrEqual(7)
    const compare = await bundle(`export { compareQuantities } from './src/quantity/index.js'`)
    expect(compare.text).not.toContain('Unable to convert units')
    expect(compare.kB).toBeLessThanOrEqual(3)
  })

  it('the code lists stand alone', async () => {
    const { text, kB } = await bundle(`export * from './src/quantity/unitCodes/index.js'`)
    expect(text).toContain('[gal_us]')
    expect(text).not.toContain('Unable to convert units')
    expect(kB).toBeLessThanOrEqual(4)
  })
})
