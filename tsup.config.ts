import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { type ManualChunksOption, type Plugin, rollup } from 'rollup'
import { minify } from 'terser'
import { defineConfig, type Options } from 'tsup'
import { listLanguages } from './test/support/languageEntry.js'

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
  ...listLanguages('src/message').map((language) => `v1/message/${language}`),
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

/** Rooms whose start counts are one file each, since each further file costs a start 3 %. */
const SINGLE_FILES = ['calendar', 'fill', 'interval', 'oil', 'quantity', 'seal', 'thread', 'torque'].map(
  (room) => `v1/${room}`,
)

const files = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, `src/${name}.ts`]))

/** The root is divided into chunks by room, so that who imports one function bundles nothing of the others. */
const CHUNKS = Object.fromEntries(
  [...SINGLE_FILES, 'service/planVisit', 'quantity/convertExactly'].map((name) => [
    `chunks/${name}`,
    `src/${name}.ts`,
  ]),
)

/** Modules that share chunks: the other public entries, the commands on documents and what they have in common. */
const SHARING = [
  ...ENTRIES.filter((name) => !SINGLE_FILES.includes(name)),
  ...['readOptions', 'loadCatalogue', 'loadWords', 'cleanLine', 'saveFile'].map((name) => `cli/${name}`),
  // The page to try it (docs/page) shows the lines of `plan`.
  'card/summariseVisit',
  // A test compares these sums with those of the whole decimal.js.
  'service/kitSums',
  ...readdirSync('src/cli/commands').map((file) => `cli/commands/${file.replace(/\.ts$/, '')}`),
]

/** Packages of which we bundle what we use: zod alone, imported from outside, doubles the start of a process. */
export const BUNDLED: readonly string[] = ['zod', 'convert-units', 'decimal.js', 'yaml', 'csv-parse', 'diff']

/** Their licences ask to be passed on with the code. */
function writeLicences(): void {
  const texts = BUNDLED.map((name) => {
    const folder = `node_modules/${name}`
    const file = readdirSync(folder).find((one) => /^licen[cs]e/i.test(one))
    if (file === undefined) throw new Error(`No licence in ${folder}`)
    return `# ${name}\n\n${readFileSync(`${folder}/${file}`, 'utf8').trim()}\n`
  })
  writeFileSync('dist/LICENCES.md', texts.join('\n'))
}

/** The methods of a Decimal that sums need. Its trigonometry, logarithms and roots are the other half of it. */
const DECIMAL_METHODS =
  'absoluteValue comparedTo isFinite isNaN isZero isNegative minus plus times toNumber toString valueOf'
const DECIMAL_STATICS = ['clone', 'config', 'isDecimal', 'set']

/** decimal.js without the methods that nothing here calls: a bundler cannot drop methods of a prototype. */
function pruneDecimal(text: string): string {
  const kept = new Set<string>()
  const methods = text.replace(/^P\.(\w+) = (?:P\.\w+ = )?function \([\s\S]*?^};?$/gm, (method, name) => {
    if (!DECIMAL_METHODS.split(' ').includes(name)) return ''
    kept.add(name)
    return method
  })
  if (kept.size !== DECIMAL_METHODS.split(' ').length)
    throw new Error(`decimal.js is written in another way; found only ${[...kept].join(', ')}`)
  return methods.replace(/^ {2}Decimal\.(\w+) = \1;.*$/gm, (line, name) =>
    DECIMAL_STATICS.includes(name) ? line : '',
  )
}

/**
 * CommonJS requires the ES modules, as every Node that we support can: one copy of the code in a process, and half the package.
 * Its types point at those of the ES modules, for compilers that do not know that.
 */
async function writeCommonJs(): Promise<void> {
  for (const entry of ENTRIES) {
    const name = `./${entry.slice(entry.lastIndexOf('/') + 1)}.js`
    const built = SINGLE_FILES.includes(entry) ? `chunks/${entry}` : entry
    const values = Object.keys(await import(new URL(`dist/${built}.js`, `file://${process.cwd()}/`).href))
    const from = `from '${name}' with { 'resolution-mode': 'import' }`
    const types = values.map((value) => `export declare const ${value}: typeof module.${value}\n`).join('')
    writeFileSync(`dist/${entry}.cjs`, `module.exports = require('${name}')\n`)
    writeFileSync(`dist/${entry}.d.cts`, `import type * as module ${from}\nexport type * ${from}\n${types}`)
  }
}

const PURE = '/* @__PURE__ */ '

interface Node {
  readonly type?: string
  readonly start: number
  readonly end: number
}

/** What a module runs when it is loaded: all nodes below this one, without the bodies of functions. */
function findLoaded(node: unknown): readonly Node[] {
  if (typeof node !== 'object' || node === null) return []
  const found = node as Node
  return found.type?.includes('Function') ? [] : [found, ...Object.values(node).flatMap(findLoaded)]
}

/** No module here has effects when it is loaded, so a bundler may drop what computes a value that nothing uses. */
const markPure: Plugin = {
  name: 'mark as pure',
  transform(code) {
    const nodes = findLoaded(this.parse(code))
    const typed = (...types: string[]) => nodes.filter(({ type }) => types.includes(type ?? ''))
    const inserts = typed('CallExpression', 'NewExpression').map(({ start }) => ({ at: start, text: PURE }))
    // Bundlers keep a spread and a template with a value: to read the value could have an effect.
    const kept = typed('SpreadElement', 'TemplateLiteral')
    for (const { init } of typed('VariableDeclarator') as unknown as readonly {
      readonly init: Node | null
    }[])
      if (init !== null && kept.some(({ start, end }) => start > init.start && end < init.end))
        inserts.push({ at: init.start, text: `${PURE}(()=>(` }, { at: init.end, text: '))()' })
    inserts.sort((a, b) => a.at - b.at)
    const parts = inserts.map(({ at, text }, place) => code.slice(inserts[place - 1]?.at ?? 0, at) + text)
    return { code: parts.join('') + code.slice(inserts.at(-1)?.at ?? 0), map: null }
  },
}

/**
 * Three chunks for all that `/v1/service` loads: what `/v1/spec` loads too, decimal.js with its sums, whose prototype a
 * bundler cannot drop, and the rest. One chunk for the cards.
 */
const chooseChunk: ManualChunksOption = (id, { getModuleInfo }) => {
  const users = new Set<string>()
  const addUsers = (module: string): void => {
    if (users.has(module)) return
    users.add(module)
    for (const importer of getModuleInfo(module)?.importers ?? []) addUsers(importer)
  }
  addUsers(id)
  const isLoadedBy = (entry: string): boolean => [...users].some((user) => user.endsWith(`/dist/${entry}.js`))
  if (getModuleInfo(id)?.isEntry) return undefined
  if (!isLoadedBy('v1/service')) {
    // Named, since a chunk takes what it imports with it, unless that has a chunk of its own.
    if (isLoadedBy('v1/message')) return 'message'
    return isLoadedBy('v1/card') || isLoadedBy('card/summariseVisit') ? 'card' : undefined
  }
  if (isLoadedBy('v1/spec')) return 'rooms'
  return isLoadedBy('service/kitSums') ? 'sums' : 'service'
}

/** esbuild makes a chunk for each set of entries, some forty. Each file that a start reads costs it 3 %. */
async function mergeChunks(): Promise<void> {
  const build = await rollup({
    input: Object.fromEntries(SHARING.map((name) => [name, `dist/${name}.js`])),
    external: (id) => !/^[./]/.test(id),
    plugins: [markPure],
    treeshake: { moduleSideEffects: false },
  })
  const chunks = readdirSync('dist').filter((file) => /-[A-Z0-9]{8}\.js$/.test(file))
  for (const old of [...chunks, 'chunks']) rmSync(`dist/${old}`, { recursive: true })
  await build.write({
    dir: 'dist',
    compact: true,
    chunkFileNames: 'shared/[name]-[hash].js',
    hoistTransitiveImports: false,
    manualChunks: chooseChunk,
    plugins: [
      { name: 'short names', renderChunk: async (code) => ({ code: await shorten(code), map: null }) },
    ],
  })
}

async function shorten(text: string): Promise<string> {
  const format = { preserve_annotations: true, semicolons: false }
  const { code = '' } = await minify(text, { module: true, compress: false, format })
  return code
}

const SHARED: Options = {
  target: 'node20',
  platform: 'node',
  removeNodeProtocol: false,
  treeshake: true,
  silent: true,
  noExternal: [...BUNDLED],
  esbuildOptions: (options) => {
    options.minifyIdentifiers = true
    options.minifySyntax = true
    // Under `node` yaml offers CommonJS in seventy files.
    options.alias = { yaml: './node_modules/yaml/browser/index.js' }
  },
  plugins: [
    {
      name: 'short names, no white space',
      // esbuild drops the notes on what is pure with the white space, and bundlers need them. A statement stays a line, for stacks.
      renderChunk: async (code, { path }) =>
        path.endsWith('.js') ? { code: await shorten(code) } : undefined,
    },
  ],
  esbuildPlugins: [
    {
      name: 'decimal.js without what is not called',
      setup: ({ onLoad }) =>
        onLoad({ filter: /decimal\.js[\\/]decimal\.m?js$/ }, ({ path }) => ({
          contents: pruneDecimal(readFileSync(path, 'utf8')),
        })),
    },
  ],
}

export default defineConfig([
  { ...SHARED, entry: files(SINGLE_FILES), splitting: false, format: 'esm' },
  // The root is for bundlers, which drop what is not used; commands on documents share its chunks.
  {
    ...SHARED,
    entry: {
      ...files(SHARING),
      ...CHUNKS,
    },
    splitting: true,
    format: 'esm',
    dts: { entry: files(ENTRIES) },
    onSuccess: async () => {
      writeLicences()
      await writeCommonJs()
      await mergeChunks()
    },
  },
  // A start reads two files: the command line, and what answers one question.
  {
    ...SHARED,
    entry: files(['cli/main']),
    splitting: false,
    format: 'esm',
    external: [
      /^\.\/(commands|questions)\//,
      /^\.\/(readOptions|loadCatalogue|loadWords|cleanLine|saveFile)\.js$/,
    ],
  },
  {
    ...SHARED,
    entry: files(['cli/questions/index']),
    splitting: false,
    format: 'esm',
    minify: true,
  },
])
