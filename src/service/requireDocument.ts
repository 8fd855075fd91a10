const NAMES = {
  'spec-sheet': ['a spec sheet', 'parseSpecSheet'],
  'machine-log': ['a machine log', 'parseMachineLog'],
  toolbox: ['a toolbox', 'parseToolbox'],
  stock: ['a stock', 'parseStock'],
} as const

/** Throws, naming the argument, where it is no document of a kind. */
export function requireDocument(document: unknown, argument: string, kind: keyof typeof NAMES): void {
  const found = typeof document === 'object' && document !== null && 'kind' in document
  if (found && document.kind === kind) return
  const [what, parse] = NAMES[kind]
  throw new TypeError(`${argument} must be ${what}, as ${parse} gives it`)
}
