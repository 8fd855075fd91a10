import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'

// Not import.meta.url: run.mjs bundles this into node_modules, which a worktree may share.
export const SRC = `${process.cwd()}/src/`

export interface Import {
  readonly from: string
  readonly to: string
  readonly typeOnly: boolean
}

export const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.replaceAll('\\', '/'))

/** `import`, `export … from` and dynamic imports; a clause whose every name is `type` counts as type only. */
function readImports(file: string): readonly Import[] {
  const text = readFileSync(join(SRC, file), 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/^\s*\/\/.*$/gm, '')
  const found = [...text.matchAll(/^(?:import|export)\s+(type\s+)?([^'";]*?)\s*from\s+'([^']+)'/gm)].map(
    ([, type, names = '', to = '']): Import => ({
      from: file,
      to,
      typeOnly:
        type !== undefined ||
        (/^\{[^}]*\}$/s.test(names) &&
          names
            .slice(1, -1)
            .split(',')
            .map((name) => name.trim())
            .filter((name) => name !== '')
            .every((name) => name.startsWith('type '))),
    }),
  )
  const packageNames = [...text.matchAll(/(?:^import\s+|import\()'([^']+)'/gm)].map(
    ([, to = '']): Import => ({ from: file, to, typeOnly: false }),
  )
  return [...found, ...packageNames]
}

export const imports = files.flatMap(readImports)
export const moduleOf = (file: string): string => (file.includes('/') ? (file.split('/')[0] ?? '') : file)
export const target = ({ from, to }: Import): string | undefined =>
  to.startsWith('.') ? relative(SRC, join(SRC, dirname(from), to)).replace(/\.js$/, '.ts') : undefined

/** From low to high; modules on the same level do not import each other. */
export const LEVELS: readonly (readonly string[])[] = [
  ['base'],
  ['calendar', 'quantity'],
  ['thread'],
  ['spec'],
  ['schema'],
  ['interval', 'torque', 'oil', 'fill', 'seal'],
  ['procedure', 'exchange'],
  ['rules'],
  ['record'],
  ['service'],
  ['message'],
  ['card'],
  ['v1', 'cli'],
  ['index.ts'],
]
