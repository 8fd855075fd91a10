import { shown } from '../quantity/shown.js'

const KINDS = [
  'crush washer',
  'bonded seal',
  'o-ring',
  'thread sealant',
  'gasket',
  'liquid gasket',
  'none',
  'not stated',
]

/** Throws TypeError where an argument that must be a seal of a sheet is none. Internal. */
export function requireSeal(name: string, seal: unknown): void {
  requireObject(name, seal)
  const { kind } = seal as { kind?: unknown }
  if (!KINDS.includes(String(kind))) {
    throw new TypeError(`${name}.kind must be one of ${KINDS.join(', ')}, got ${shown(kind)}`)
  }
}

/** Throws TypeError where an argument that must be an object is none. Internal. */
export function requireObject(name: string, value: unknown): void {
  if (typeof value !== 'object' || value === null) {
    throw new TypeError(`${name} must be an object, got ${shown(value)}`)
  }
}
