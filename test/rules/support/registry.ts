import { readdirSync, readFileSync } from 'node:fs'

export const REGISTRY_FILE = 'src/rules/allRules.ts'

/** The order in which rules run, module by module; findings at one place follow it. */
const RULE_MODULES: readonly string[] = [
  ...['spec', 'thread', 'quantity', 'torque', 'seal', 'oil', 'fill', 'interval'],
  ...['log', 'toolbox', 'stock', 'record'],
]

/** It runs last, after the waivers, so it is not in the list. */
const LAST_RULE = 'spec/waiver-without-finding'

/** The codes of all rules, from their files, in the order in which they run. */
export function ruleCodes(): readonly string[] {
  const listed = RULE_MODULES.flatMap((module) =>
    readdirSync(`src/rules/${module}`)
      .map((file) => `${module}/${file.slice(0, -'.ts'.length)}`)
      .sort(),
  )
  return [...listed.filter((code) => code !== LAST_RULE), LAST_RULE]
}

/** The codes of the rules that shapes check, and their comments. */
export const SHAPE_RULES_FILE = 'src/spec/codes.ts'

export function shapeRuleCodes(): readonly string[] {
  const source = readFileSync(SHAPE_RULES_FILE, 'utf8')
  const list = /interface ShapeRuleCodes \{\n([\s\S]*?)\n\}/.exec(source)?.[1] ?? ''
  return [...list.matchAll(/^ {2}'([^']+)':/gm)].map(([, code = '']) => code)
}

/** The registry: every rule except the last, each imported under a name made from its code. */
export function writeRegistry(): string {
  const rules = ruleCodes()
    .filter((code) => code !== LAST_RULE)
    .map((code) => ({ code, name: code.replaceAll(/[/-]([a-z])/g, (_all, letter) => letter.toUpperCase()) }))
  const imports = [...rules]
    .sort((rule, other) => (rule.code < other.code ? -1 : 1))
    .map(({ code, name }) => `import { rule as ${name} } from './${code}.js'`)
  const at = imports.findIndex((line) => line.includes("'./s"))
  return [
    '// Generated from the files of the rules by `npm run generate`.',
    ...imports.slice(0, at),
    "import type { AnyRule } from './rule.js'",
    ...imports.slice(at),
    '',
    '/** The rules of `checkDocuments` by topic, without the one on unused waivers, which runs last. */',
    '// biome-ignore format: generated, one module a line',
    'export const allRules: readonly AnyRule[] = [',
    ...RULE_MODULES.map((module) => {
      const names = rules.filter(({ code }) => code.startsWith(`${module}/`)).map(({ name }) => name)
      return `  ${names.join(', ')},`
    }),
    ']',
    '',
  ].join('\n')
}
