import { importExample, sourceOf } from './runExample.js'

/** One call that an example of the documentation makes. */
export interface Call {
  readonly name: string
  readonly args: readonly unknown[]
}

/** What an example called of the package, with the arguments: good calls, to be spoiled one leaf at a time. */
export async function captureCalls(code: string): Promise<readonly Call[]> {
  const { __calls } = (await importExample(
    `const __calls = globalThis.__calls = []\nconst console = { log() {} }\n${code}\nexport { __calls }`,
    {
      name: 'watched entries',
      setup(context) {
        context.onResolve({ filter: /^drivetrain-service/ }, ({ path }) => ({ path, namespace: 'watched' }))
        context.onLoad({ filter: /./, namespace: 'watched' }, async ({ path }) => {
          const source = sourceOf(path) ?? path
          return { contents: watch(source, Object.keys(await import(source))), resolveDir: '/' }
        })
      },
    },
  )) as { __calls: readonly Call[] }
  return __calls
}

function watch(source: string, names: readonly string[]): string {
  return `import * as room from ${JSON.stringify(source)}
const watched = (name, it) =>
  typeof it !== 'function' || /^class/.test(String(it)) ? it : (...args) => {
    globalThis.__calls.push({ name, args })
    return it(...args)
  }
export const { ${names.join(', ')} } = Object.fromEntries(
  Object.entries(room).map(([name, it]) => [name, watched(name, it)]),
)`
}
