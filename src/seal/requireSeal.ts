import { requireObject, requireOneOf } from '../base/index.js'

const KINDS: readonly unknown[] = [
  'crush washer',
  'bonded seal',
  'o-ring',
  'thread sealant',
  'gasket',
  'liquid gasket',
  'none',
  'not stated',
]

/** Throws TypeError if an argument is not a seal of a sheet. */
export function requireSeal(name: string, seal: unknown): void {
  requireObject(name, seal)
  const { kind } = seal as { kind?: unknown }
  requireOneOf(`${name}.kind`, kind, KINDS)
}
