import { UNIT_FACTORS, type Unit } from './unit.js'

/**
 * Whether a text is a unit id of this library, for code that reads documents. To read other spellings
 * (`ft-lb`, `½ qt`), use {@link parseQuantity}.
 */
export function isUnit(text: unknown): text is Unit {
  return typeof text === 'string' && Object.hasOwn(UNIT_FACTORS, text)
}
