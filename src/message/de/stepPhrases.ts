import type { Cover, Seal, WheelMark } from '../../spec/index.js'
import type { StepParams } from '../catalogue.js'
import { cardWords } from './card.js'

// Names come from the sheet in any language: no article or inflected adjective stands in front of them.

export const WHEEL_WORDS: Readonly<Record<WheelMark, string>> = {
  'mark down': 'unten',
  'mark level': 'auf Höhe der Nabe',
  'mark up': 'oben',
}

/** The order of bolts; empty if the manual gives none. */
export const BOLT_ORDERS: Readonly<Record<Cover['bolts']['pattern'], string>> = {
  crosswise: 'über Kreuz',
  'from the middle outwards': 'von der Mitte nach außen',
  'in turn': 'der Reihe nach',
  'not stated': '',
}

/** `Öl`, or `Fett` for a gearcase filled with grease. */
export const writeFluid = ({ fluid }: StepParams): string => (fluid === 'grease' ? 'Fett' : 'Öl')

/** `Einfüllschraube (Vorderachsgetriebe, links)`; `fallback` if the step names no part. */
export function writePart({ part, instance, gearcase }: StepParams, fallback: string): string {
  const places = [gearcase, instance].filter((place) => place !== undefined)
  return `${part ?? fallback}${places.length === 0 ? '' : ` (${places.join(', ')})`}`
}

/** `Einfüllschraube (links)`; `fallback` if the step names no part. */
export const writeShortPart = ({ part, instance }: StepParams, fallback: string): string =>
  instance === undefined ? (part ?? fallback) : `${part ?? fallback} (${instance})`

/** A washer can stick to the plug or the case; common practice, no source. */
export const writeStuckWasher = ({ seal }: StepParams): string =>
  seal === 'crush washer' || seal === 'bonded seal'
    ? ' Klebt er an der Schraube oder am Gehäuse: abschaben. Fläche nicht zerkratzen.'
    : ''

type SealKind = Exclude<Seal['kind'], 'none' | 'not stated'>
type Gender = 'masculine' | 'feminine' | 'neuter'
const SEAL_GENDERS: Readonly<Record<SealKind, Gender>> = {
  'crush washer': 'masculine',
  'bonded seal': 'masculine',
  'o-ring': 'masculine',
  gasket: 'feminine',
  'liquid gasket': 'feminine',
  'thread sealant': 'neuter',
}
/** The endings of an adjective without an article: as the subject, and as the object of a step. */
const ENDINGS: Readonly<Record<Gender, readonly [string, string]>> = {
  masculine: ['er', 'en'],
  feminine: ['e', 'e'],
  neuter: ['es', 'es'],
}

/** `Dichtring` */
export const writeSeal = ({ seal = 'none' }: StepParams): string =>
  seal === 'none' || seal === 'not stated' ? 'Dichtung' : cardWords.seals[seal]

const writeSealWith = (adjective: 'Alt' | 'Neu', params: StepParams, place: 0 | 1): string => {
  const { seal = 'none' } = params
  const gender = seal === 'none' || seal === 'not stated' ? 'feminine' : SEAL_GENDERS[seal]
  return `${adjective}${ENDINGS[gender][place]} ${writeSeal(params)}`
}

/** `Neuer Dichtring`, for a few words. */
export const writeShortSeal = (adjective: 'Alt' | 'Neu', params: StepParams): string =>
  writeSealWith(adjective, params, 0)

/** `Neuen Dichtring`, as the object of a step. */
export const writeSealObject = (adjective: 'Alt' | 'Neu', params: StepParams): string =>
  writeSealWith(adjective, params, 1)

/** `Schlüssel „1/4-Zoll“ auf 22,5 N·m einstellen`; undefined without a setting. */
export const writeSetting = ({ setting, wrench, hasStages }: StepParams): string | undefined =>
  setting &&
  `${wrench === undefined ? 'Drehmomentschlüssel' : `Schlüssel „${wrench}“`}${hasStages === true ? ' für die letzte Stufe' : ''} auf ${setting} einstellen`

export function writeTightening(params: StepParams, what: string): string {
  const { torque, turns, gap, drive } = params
  // A hand cap and a clip need no torque: common practice, no source.
  if (torque === undefined && drive === 'clip') return 'Jeden Clip eindrücken, bis er einrastet.'
  if (torque === undefined && drive === 'hand') return `${what} von Hand festziehen.`
  if (turns !== undefined) return `${what} ${turns} Umdrehungen über handfest anziehen.`
  if (torque !== undefined) {
    const setting = writeSetting(params)
    return `${what} mit ${torque} anziehen${setting === undefined ? '' : `: ${setting}`}.`
  }
  return gap === 'cannot tell'
    ? `${what} so anziehen, wie die Anleitung es für diese Variante vorschreibt. Das Drehmoment ist hier nicht bekannt: siehe Anleitung.`
    : `${what} nach Anleitung anziehen. Das Drehmoment ist hier nicht angegeben: siehe Anleitung.`
}

/** The figure is in the margin. */
export function writeShortTightening(params: StepParams, what: string): string {
  const { torque, turns, gap, drive } = params
  if (torque === undefined && drive !== undefined)
    return drive === 'clip' ? 'Clips eindrücken' : `${what} von Hand festziehen`
  if (torque === undefined && turns === undefined)
    return `${what} anziehen: ${gap === 'cannot tell' ? 'Drehmoment nicht bekannt' : 'siehe Anleitung'}`
  return `${what} anziehen`
}

const ATTITUDES = {
  'level on its wheels': 'waagerecht auf den Rädern',
  'level on stands': 'waagerecht auf Böcken',
  'not stated': undefined,
}

/** The conditions for reading the level. */
export const writeLevelConditions = ({ level, levelTemperature, minutes }: StepParams): readonly string[] =>
  [
    level && ATTITUDES[level.attitude],
    levelTemperature && `Öl bei ${levelTemperature}`,
    level?.engine === 'running' ? 'Motor läuft' : minutes && `${minutes} nach dem Abstellen`,
  ].filter((condition) => condition !== undefined)

/** `, waagerecht auf den Rädern, Öl bei 40–50 °C` */
export const writeShortConditions = (params: StepParams): string =>
  writeLevelConditions(params)
    .map((condition) => `, ${condition}`)
    .join('')

/** Where the oil must be at a level hole. */
export const writeEdge = ({ below }: StepParams): string =>
  below === undefined
    ? 'bis an die Unterkante der Bohrung reichen'
    : `${below} unter der Unterkante der Bohrung stehen`

/** The required oil level. Lower edge and middle: common practice, no source. */
export function writeLevel(params: StepParams): string {
  const { level } = params
  const openingText = writePart(params, 'Kontrollöffnung')
  if (level === undefined) return `Ölstand prüfen: ${openingText}.`
  const conditions = writeLevelConditions(params)
  const asManualText = `Ölstand nach Anleitung prüfen: ${openingText}.`
  const instruction = {
    'by quantity': asManualText,
    'not stated': asManualText,
    'to level hole': `Ölstand prüfen: ${openingText}. Das Öl muss ${writeEdge(params)}.`,
    dipstick:
      level.reading === 'screwed in'
        ? `Peilstab abwischen: ${openingText}. Ganz einschrauben. Herausnehmen. Der Ölstand muss zwischen den Markierungen liegen.`
        : `Peilstab abwischen: ${openingText}. Auf das Gewinde auflegen. Nicht einschrauben. Der Ölstand muss zwischen den Markierungen liegen.`,
    'sight glass': `Ölstand ablesen: ${openingText}. Er muss zwischen den Markierungen liegen. Bei einem Glas ohne Markierungen muss er in der Mitte liegen.`,
  }[level.method]
  return [
    instruction,
    conditions.length === 0 ? '' : ` Beim Ablesen: ${conditions.join(', ')}.`,
    ` ${writeHighLevel(level)}`,
  ].join('')
}

/**
 * Common practice, no source: if the level rises by itself, water or oil from a neighbouring gearcase has
 * come in.
 */
function writeHighLevel({ method, afterFilling }: NonNullable<StepParams['level']>): string {
  const action = method === 'to level hole' ? 'Überschuss ablaufen lassen' : 'Überschuss entnehmen'
  if (afterFilling) return `Wenn zu hoch: ${action}.`
  return `Wenn zu hoch und nicht überfüllt: Halt, Wasser oder Öl eines anderen Getriebes kann eingedrungen sein. Wenn überfüllt: ${action}.`
}

export function writeTopUp(params: StepParams): string {
  const { level, part, stopAt } = params
  if (level?.afterFilling !== true) {
    const openingText = part === undefined ? '' : ` durch: ${writePart(params, 'Einfüllöffnung')}`
    return `Wenn der Ölstand zu niedrig ist, gleiches Öl nachfüllen${openingText}. War er zu niedrig: undichte Stelle suchen.`
  }
  if (stopAt === undefined) return 'Wenn der Ölstand zu niedrig ist, gleiches Öl nachfüllen.'
  return `Wenn der Ölstand zu niedrig ist, gleiches Öl nachfüllen. ${stopLimitText(stopAt)}`
}

/** The warning for a refill that differs from the stated quantity. */
export function stopLimitText(stopAt: string): string {
  return `Wenn mehr als ${stopAt} eingefüllt wurden, Arbeit abbrechen. Wenn viel weniger als angegeben hineinging, sicherstellen: Maschine waagerecht, Gehäuse ganz entleert.`
}

/** Common practice, no source: if a cover is loosened on all sides at once, all the oil comes out. */
export function takeOffCoverText(params: StepParams): string {
  const cover = writePart(params, 'Deckel')
  if (params.cover?.carriesBearings === true)
    return `Nur nach der Betriebsanleitung der Maschine abnehmen: ${cover}; trägt Lager. Ausgleichscheiben in ihrer Reihenfolge aufbewahren. Gesicht vom Öl fernhalten.`
  const position = params.cover?.position ?? 'not stated'
  const remainingBoltsText = {
    upright: 'Oben zwei lose Schrauben eingedreht lassen.',
    bottom: 'Die Schrauben einer Seite gelöst eingedreht lassen.',
    'not stated':
      'Oben zwei lose Schrauben eingedreht lassen; bei einer Bodenwanne die Schrauben einer Seite.',
  }[position]
  return `Alle Schrauben lösen: ${cover}. ${remainingBoltsText} Die übrigen herausdrehen. Dichtung ${position === 'bottom' ? 'auf der offenen Seite' : 'unten'} aufbrechen. Gesicht vom Öl fernhalten. Wenn ${params.fluid === 'grease' ? 'kein Fett mehr ausläuft' : 'das Öl nur noch tropft'}, Deckel abnehmen.`
}

export function writeCoverTightening(params: StepParams): string {
  const { cover, torque, hasStages } = params
  const bolts = `Schrauben (${writePart(params, 'Deckel')})`
  if (cover?.carriesBearings === true)
    return `${writeTightening(params, bolts)} Nur nach der Betriebsanleitung der Maschine vorgehen: Die Ausgleichscheiben stellen die Lager ein.`
  const order = BOLT_ORDERS[cover?.pattern ?? 'not stated']
  const snugText =
    torque === undefined || hasStages === true ? '' : 'Alle Schrauben eindrehen, bis sie anliegen. '
  const boltsText = order === '' || torque === undefined ? bolts : `${bolts} ${order}`
  const unknownOrderText =
    cover !== undefined && order === '' ? ' Die Reihenfolge ist hier nicht angegeben: siehe Anleitung.' : ''
  return `${snugText}${writeTightening(params, boltsText)}${unknownOrderText}`
}
