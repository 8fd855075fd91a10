import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { type BuildOptions, build, type Plugin } from 'esbuild'
import { type JsonSchema, trimSchema } from './trimSchema.js'

const SOURCES = 'docs/page'
/** Files that are served as they are. */
const STATIC_FILES = ['index.html', 'question.html', 'style.css', 'icon.svg']

/** The machines to start from, with the day of the examples. */
const EXAMPLES = ['tind-4', 'bud-3', 'kvist-2'] as const
const EXAMPLE_DAY = '2023-10-06'

/** Each text of the page, and the schema that explains it. */
const SCHEMAS = { sheet: 'spec-sheet', log: 'machine-log', toolbox: 'toolbox' } as const

/**
 * The page runs the built package: what it imports from the entries of `src/` comes from `dist/`. Texts are read by the
 * files of the command line, which take the modules of the library from its entries too.
 */
const packedLibrary: Plugin = {
  name: 'the packed library',
  setup: ({ onResolve }) => {
    const root = process.cwd()
    const toDist = (file: string) => ({ path: join(root, 'dist', `${file}.js`), sideEffects: false })
    onResolve({ filter: /\/src\/(v1\/.*|card\/summariseVisit)\.js$/ }, ({ path }) =>
      toDist(path.replace(/^.*\/src\/(.*)\.js$/, '$1')),
    )
    onResolve({ filter: /^\.\.\/(schema|spec)\/index\.js$/ }, () => toDist('v1/spec'))
    onResolve({ filter: /^yaml$/ }, () => ({ path: join(root, 'node_modules/yaml/browser/index.js') }))
  },
}

/** Modules made of files that are no code. */
const madeModules: Plugin = {
  name: 'made modules',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^virtual:/ }, ({ path }) => ({ path, namespace: 'made' }))
    onLoad({ filter: /./, namespace: 'made' }, ({ path }) => ({
      contents: MADE[path]?.() ?? '',
      resolveDir: process.cwd(),
    }))
  },
}

function writeExamples(): string {
  const examples = EXAMPLES.map((folder) => {
    const read = (name: string): string => readFileSync(`examples/${folder}/${name}.yaml`, 'utf8')
    const texts = { sheet: read('sheet'), log: read('log'), toolbox: read('toolbox') }
    return { folder, today: EXAMPLE_DAY, ambient: 6, texts }
  })
  return `export const examples = ${JSON.stringify(examples)}`
}

function writeHelp(): string {
  const help = Object.entries(SCHEMAS).map(([name, kind]) => {
    const schema = JSON.parse(readFileSync(`schemas/v1/${kind}.json`, 'utf8')) as JsonSchema
    return [name, trimSchema(schema)]
  })
  // A text is parsed faster than an object literal.
  return `export const help = JSON.parse(${JSON.stringify(JSON.stringify(Object.fromEntries(help)))})`
}

/** English is in each page; each other language of the package is loaded when it is chosen, with the page's own words. */
function writeLanguages(page: keyof typeof TEXTS_OF_PAGE): string {
  const tags = readdirSync('dist/v1/message')
    .filter((file) => file.endsWith('.js') && file !== 'en.js')
    .map((file) => file.slice(0, -'.js'.length))
  const { name, suffix, labels } = TEXTS_OF_PAGE[page]
  const entries = tags.map(
    (tag) =>
      `${JSON.stringify(tag)}: () => Promise.all([import('./dist/v1/message/${tag}.js'), import('./${SOURCES}/labels/${tag}.ts')]).then(([texts, words]) => ({ ${name}: texts[${JSON.stringify(tag + suffix)}], labels: words.${labels} }))`,
  )
  return `export const languages = {${entries.join(',')}}`
}

/** What each page takes from a language of the package, and from its own words. */
const TEXTS_OF_PAGE = {
  index: { name: 'catalogue', suffix: '', labels: 'pageLabels' },
  question: { name: 'messages', suffix: 'Calculations', labels: 'questionLabels' },
} as const

const MADE: { readonly [path: string]: () => string } = {
  'virtual:examples': writeExamples,
  'virtual:help': writeHelp,
  'virtual:languages': () => writeLanguages('index'),
  'virtual:question-languages': () => writeLanguages('question'),
}

/** Builds the two pages into a folder that any file server can serve. */
export async function buildPage(folder: string): Promise<void> {
  if (!existsSync('dist/index.js')) throw new Error('no dist/: run npm run build first')
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  for (const file of STATIC_FILES) cpSync(join(SOURCES, file), join(folder, file))
  cpSync('dist/LICENCES.md', join(folder, 'licences.md'))
  const options: BuildOptions = {
    outdir: folder,
    bundle: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    minify: true,
    legalComments: 'none',
    logLevel: 'warning',
    plugins: [madeModules, packedLibrary],
  }
  await build({ ...options, entryPoints: [join(SOURCES, 'index.ts')], splitting: true })
  // Built alone: a file for both pages would have all that the other one uses.
  await build({ ...options, entryPoints: [join(SOURCES, 'question.ts')], splitting: true })
}
