import { ENTRIES } from '../../tsup.config.js'

/** `exports` of package.json, made from the list of entries. */
export function packageExports(): Readonly<Record<string, unknown>> {
  const entries = ENTRIES.map((entry) => {
    const key = entry === 'index' ? '.' : `./${entry.replace(/\/index$/, '')}`
    const file = `./dist/${entry}`
    return [
      key,
      {
        import: { types: `${file}.d.ts`, default: `${file}.js` },
        require: { types: `${file}.d.cts`, default: `${file}.cjs` },
      },
    ]
  })
  return {
    ...Object.fromEntries(entries),
    './schemas/v1/*': './schemas/v1/*',
    './package.json': './package.json',
  }
}
