import type { DriveKind, IdentityFact, MachineEventKind, Seal } from '../../spec/index.js'
import { join, nameOf } from '../phrases.js'

/** The meters of a log, with their article and after `de`. */
const METER_NAMES: Readonly<Record<'hours' | 'distance', string>> = {
  hours: 'le compteur horaire',
  distance: 'le compteur kilométrique',
}
export const writeMeter = (meter: string): string => nameOf(METER_NAMES, meter)
export const writeOfMeter = (meter: string): string => writeMeter(meter).replace(/^le /, 'du ')

/** The facts of a machine's identity. */
export const FACT_NAMES: Readonly<Record<IdentityFact, string>> = {
  variant: 'variante',
  modelYear: 'année modèle',
  serial: 'numéro de série',
  market: 'marché',
}

export const writeFactName = (fact: string): string => nameOf(FACT_NAMES, fact)
export const writeFactNames = (facts: readonly string[]): readonly string[] => facts.map(writeFactName)

/** Names from a document and texts to type stand in quotes: no article or adjective has to agree with them. */
export const quote = (text: string): string => `« ${text} »`
export const joinQuoted = (items: readonly string[], word = 'ou'): string => join(items.map(quote), word)

/** Signal words in the sense of ANSI Z535.6; see docs/glossary-fr.md. */
export const SIGNAL_WORDS = {
  danger: 'DANGER',
  warning: 'AVERTISSEMENT',
  caution: 'ATTENTION',
  notice: 'AVIS',
} as const

interface Noun {
  readonly name: string
  readonly plural: string
  readonly gender: 'm' | 'f'
  /** Whether the name begins with a vowel. */
  readonly elides?: true
}

/** Kinds of seals with what their articles need. */
export const SEAL_NOUNS: Readonly<Record<Exclude<Seal['kind'], 'none' | 'not stated'>, Noun>> = {
  'crush washer': { name: 'rondelle à écraser', plural: 'rondelles à écraser', gender: 'f' },
  'bonded seal': { name: 'rondelle métal-caoutchouc', plural: 'rondelles métal-caoutchouc', gender: 'f' },
  'o-ring': { name: 'joint torique', plural: 'joints toriques', gender: 'm' },
  'thread sealant': {
    name: 'pâte d’étanchéité pour filetage',
    plural: 'pâtes d’étanchéité pour filetage',
    gender: 'f',
  },
  gasket: { name: 'joint plat', plural: 'joints plats', gender: 'm' },
  'liquid gasket': { name: 'pâte à joint', plural: 'pâtes à joint', gender: 'f' },
}
const OTHER_SEAL: Noun = { name: 'joint', plural: 'joints', gender: 'm' }

const findSeal = (kind: string): Noun =>
  Object.hasOwn(SEAL_NOUNS, kind) ? SEAL_NOUNS[kind as keyof typeof SEAL_NOUNS] : OTHER_SEAL

/** `la rondelle à écraser` */
export function writeTheSeal(kind: string): string {
  const { name, gender } = findSeal(kind)
  return `${gender === 'f' ? 'la' : 'le'} ${name}`
}

/** `une rondelle à écraser neuve` */
export function writeNewSeal(kind: string): string {
  const { name, gender } = findSeal(kind)
  return gender === 'f' ? `une ${name} neuve` : `un ${name} neuf`
}

/** `ce joint torique` */
export function writeThisSeal(kind: string): string {
  const { name, gender } = findSeal(kind)
  return `${gender === 'f' ? 'cette' : 'ce'} ${name}`
}

/** `l’ancienne rondelle à écraser` */
export function writeOldSeal(kind: string): string {
  const { name, gender } = findSeal(kind)
  return `${gender === 'f' ? 'l’ancienne' : 'l’ancien'} ${name}`
}

/** The form of a tool. */
export const DRIVE_NAMES: Readonly<Record<DriveKind, string>> = {
  'external hex': 'six pans',
  'internal hex': 'six pans creux',
  'internal square': 'carré creux',
  'external square': 'carré',
  'six-lobe': 'six lobes',
  slot: 'fente',
  'cross recess': 'cruciforme',
  clip: 'clips',
  hand: 'à la main',
}

/** Events after which a service is due at once. */
export const EVENT_NAMES: Readonly<Record<MachineEventKind, string>> = {
  submersion: 'immersion',
  rebuild: 'remise à neuf',
  storage: 'remisage',
  contamination: 'pollution de l’huile',
  'seal failure': 'joint défaillant',
  'oil loss': 'perte d’huile',
}
