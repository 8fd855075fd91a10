import type { Seal, WheelMark } from '../../spec/index.js'
import type { StepParams } from '../catalogue.js'
import { quote, withDe } from './words.js'

export const WHEEL_WORDS: Readonly<Record<WheelMark, string>> = {
  'mark down': 'abajo',
  'mark level': 'a la altura del cubo',
  'mark up': 'arriba',
}

/** `marca arriba`, for a short form. */
export const WHEEL_MARKS: Readonly<Record<WheelMark, string>> = {
  'mark down': 'marca abajo',
  'mark level': 'marca a la altura del cubo',
  'mark up': 'marca arriba',
}

/**
 * `“fill plug” (left) de “front differential”`: names of the sheet are quoted, since their gender is unknown. `fallback`,
 * with its article, if the step names no part.
 */
export function writePart({ part, instance, gearcase }: StepParams, fallback: string): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  const gearcaseText = gearcase === undefined ? '' : ` de ${quote(gearcase)}`
  return `${part === undefined ? fallback : quote(part)}${instanceText}${gearcaseText}`
}

/** Joined to “de”: `del tapón de llenado`, `de “fill plug”`. */
export const writeOfPart = (params: StepParams, fallback: string) => withDe(writePart(params, fallback))

/** `el orificio de “fill plug”`: oil goes in where the plug was. */
export const writeHole = (params: StepParams) =>
  params.part === undefined
    ? writePart(params, 'la abertura de llenado')
    : `el orificio ${writeOfPart(params, '')}`

/** `fill plug (left)`; `fallback` if the step names no part. */
export function writeShortPart({ part, instance }: StepParams, fallback: string): string {
  return instance === undefined ? (part ?? fallback) : `${part ?? fallback} (${instance})`
}

export const writeFluid = ({ fluid }: StepParams) => (fluid === 'grease' ? 'la grasa' : 'el aceite')

/** A washer can stick to the plug or the case; common practice, no source. */
export const writeStuckWasher = ({ seal }: StepParams) =>
  seal === 'crush washer' || seal === 'bonded seal'
    ? ' Si está pegada al tapón o a la caja, rasparla. No rayar la cara.'
    : ''

type SealForms = Readonly<Record<'definite' | 'old' | 'oldShort' | 'new' | 'newShort', string>>

const makeFeminine = (name: string): SealForms => ({
  definite: `la ${name}`,
  old: `la ${name} vieja`,
  oldShort: `${name} vieja`,
  new: `una ${name} nueva`,
  newShort: `${name} nueva`,
})

const SEAL_FORMS: Readonly<Record<Seal['kind'], SealForms>> = {
  'crush washer': makeFeminine('arandela de sellado'),
  'bonded seal': makeFeminine('arandela metal-caucho'),
  gasket: makeFeminine('junta plana'),
  'liquid gasket': makeFeminine('junta líquida'),
  'o-ring': makeFeminine('junta tórica'),
  'thread sealant': {
    definite: 'el sellador de roscas',
    old: 'el sellador de roscas viejo',
    oldShort: 'sellador de roscas viejo',
    new: 'sellador de roscas nuevo',
    newShort: 'sellador de roscas nuevo',
  },
  none: makeFeminine('junta'),
  'not stated': makeFeminine('junta'),
}

/** The seal with its article and adjective: `una junta tórica nueva`. */
export const writeSeal = ({ seal = 'none' }: StepParams, form: keyof SealForms) => SEAL_FORMS[seal][form]

/** `unknown`: the sentence about a torque that is not known here. */
export const unknownTorqueText = ({ gap }: StepParams) =>
  gap === 'cannot tell'
    ? 'El par no se sabe aquí: ver el manual.'
    : 'El par no se indica aquí: ver el manual.'

/** `what` has its article or quotes. */
export function writeTightening(params: StepParams, what: string): string {
  const { torque, turns, setting, wrench, gap, hasStages, drive } = params
  // A hand cap and a clip need no torque: common practice, no source.
  if (torque === undefined && drive === 'clip') return 'Meter cada clip hasta que encaje.'
  if (torque === undefined && drive === 'hand') return `Apretar ${what} a mano.`
  if (turns !== undefined) return `Apretar ${what} por vueltas. Vueltas después del apriete a mano: ${turns}.`
  if (torque !== undefined) {
    const set =
      setting === undefined
        ? ''
        : `Ajustar ${wrench === undefined ? 'la llave' : quote(wrench)} a ${setting}${hasStages === true ? ' para la última etapa' : ''}. `
    return `${set}Apretar ${what} con un par de ${torque}.`
  }
  const rule = gap === 'cannot tell' ? 'como dice el manual para esta variante' : 'como dice el manual'
  return `Apretar ${what} ${rule}. ${unknownTorqueText(params)}`
}

/** The figure is in the margin. */
export function writeShortTightening(params: StepParams, what: string): string {
  const { torque, turns, gap, drive } = params
  if (torque === undefined && drive !== undefined)
    return drive === 'clip' ? 'Meter los clips' : `${what}: apretar a mano`
  if (torque === undefined && turns === undefined)
    return `${what}: apretar (${gap === 'cannot tell' ? 'par desconocido' : 'ver el manual'})`
  return `${what}: apretar`
}

type Attitude = NonNullable<StepParams['level']>['attitude']

const ATTITUDES: Readonly<Record<Attitude, string | undefined>> = {
  'level on its wheels': 'la máquina nivelada sobre sus ruedas',
  'level on stands': 'la máquina nivelada sobre los caballetes',
  'not stated': undefined,
}

const SHORT_ATTITUDES: Readonly<Record<Attitude, string | undefined>> = {
  'level on its wheels': 'nivelada sobre sus ruedas',
  'level on stands': 'nivelada sobre caballetes',
  'not stated': undefined,
}

/** The conditions for reading the level. */
export function writeLevelConditions({ level, levelTemperature, minutes }: StepParams): readonly string[] {
  return [
    level && ATTITUDES[level.attitude],
    levelTemperature && `el aceite a ${levelTemperature}`,
    level?.engine === 'running' ? 'el motor en marcha' : minutes && `${minutes} después de parar`,
  ].filter((condition) => condition !== undefined)
}

/** `, nivelada sobre sus ruedas, aceite a 40–50 °C` */
export const writeShortConditions = ({ level, levelTemperature, minutes }: StepParams) =>
  [
    level && SHORT_ATTITUDES[level.attitude],
    levelTemperature && `aceite a ${levelTemperature}`,
    level?.engine === 'running' ? 'motor en marcha' : minutes && `${minutes} tras parar`,
  ]
    .filter((condition) => condition !== undefined)
    .map((condition) => `, ${condition}`)
    .join('')

/** The required oil level. Lower edge and middle: common practice, no source. */
export function writeLevel(params: StepParams): string {
  const { level, below } = params
  const checkText = `Comprobar el nivel de aceite en ${writePart(params, 'la abertura de nivel')}`
  if (level === undefined) return `${checkText}.`
  const conditions = writeLevelConditions(params)
  const instruction = {
    'by quantity': `${checkText} como dice el manual.`,
    'not stated': `${checkText} como dice el manual.`,
    'to level hole': `${checkText}. El aceite debe estar ${writeEdge(below)}.`,
    dipstick:
      level.reading === 'screwed in'
        ? `Limpiar ${writePart(params, 'la varilla de nivel')}. Enroscar del todo. Sacar. Leer el aceite entre las marcas.`
        : `Limpiar ${writePart(params, 'la varilla de nivel')}. Apoyar en su rosca. No enroscar. Leer el aceite entre las marcas.`,
    'sight glass': `Leer el nivel de aceite en ${writePart(params, 'la mirilla')}. El nivel debe estar entre las marcas. En una mirilla sin marcas, debe estar en el centro.`,
  }[level.method]
  return [
    instruction,
    conditions.length === 0 ? '' : ` Leer con ${conditions.join(', ')}.`,
    ` ${writeHighLevel(level)}`,
  ].join('')
}

/** `0–5 mm por debajo del borde inferior del orificio` */
export const writeEdge = (below: string | undefined) =>
  below === undefined
    ? 'en el borde inferior del orificio'
    : `${below} por debajo del borde inferior del orificio`

/**
 * Common practice, no source: if the level rises by itself, water or oil from a neighbouring gearcase has
 * come in.
 */
function writeHighLevel({ method, afterFilling }: NonNullable<StepParams['level']>): string {
  const action = method === 'to level hole' ? 'dejar salir el exceso' : 'sacar el exceso'
  if (afterFilling) return `Si está alto, ${action}.`
  return `Si está alto y no se llenó de más, parar: puede haber entrado agua o aceite de otra caja. Si se llenó de más, ${action}.`
}

export function writeTopUp(params: StepParams): string {
  const { level, part, stopAt } = params
  if (level?.afterFilling !== true) {
    const openingText = part === undefined ? '' : ` por ${writePart(params, 'la abertura de llenado')}`
    return `Si el nivel está bajo, reponer aceite${openingText}. Usar el mismo aceite. Si el nivel estaba bajo, buscar una fuga.`
  }
  if (stopAt === undefined) return 'Si el nivel está bajo, reponer con el mismo aceite.'
  return `Si el nivel está bajo, reponer con el mismo aceite. ${stopLimitText(stopAt)}`
}

/** The warning for a refill that differs from the stated quantity. */
export function stopLimitText(stopAt: string): string {
  return `Si ha entrado más de ${stopAt}, parar el trabajo. Si ha entrado mucho menos de lo indicado, comprobar que la máquina está nivelada y que la caja se drenó del todo.`
}

type CoverPosition = NonNullable<NonNullable<StepParams['cover']>['position']>

const REMAINING_BOLTS: Readonly<Record<CoverPosition, string>> = {
  upright: 'Dejar dos tornillos flojos arriba.',
  bottom: 'Dejar puestos, flojos, los tornillos de un lado.',
  'not stated': 'Dejar dos tornillos flojos arriba; en una tapa inferior, los de un lado.',
}

/** Common practice, no source: if a cover is loosened on all sides at once, all the oil comes out. */
export function takeOffCoverText(params: StepParams): string {
  const cover = writePart(params, 'la tapa')
  if (params.cover?.carriesBearings === true)
    return `Quitar ${cover} solo según el manual de la máquina: lleva rodamientos. Mantener el orden de las láminas de ajuste. Apartar la cara del aceite.`
  const { position } = params.cover ?? {}
  const remainingBoltsText =
    position === undefined ? REMAINING_BOLTS['not stated'] : REMAINING_BOLTS[position]
  return `Aflojar todos los tornillos ${writeOfPart(params, 'la tapa')}. ${remainingBoltsText} Quitar los demás. Despegar ${position === 'bottom' ? 'por el lado abierto' : 'por abajo'}. Apartar la cara del aceite. Cuando ${params.fluid === 'grease' ? 'ya no salga grasa' : 'el aceite solo gotee'}, quitar ${cover}.`
}

type BoltPattern = NonNullable<NonNullable<StepParams['cover']>['pattern']>

const BOLT_ORDERS: Readonly<Record<BoltPattern, string>> = {
  'from the middle outwards': 'del centro hacia fuera',
  crosswise: 'en cruz',
  'in turn': 'uno tras otro',
  'not stated': '',
}

/** The order of tightening; empty if it is not stated. */
export const writeBoltOrder = ({ cover }: StepParams) =>
  cover?.pattern === undefined ? '' : BOLT_ORDERS[cover.pattern]

export function writeCoverTightening(params: StepParams): string {
  const { cover, torque, hasStages } = params
  const bolts = `los tornillos ${writeOfPart(params, 'la tapa')}`
  if (cover?.carriesBearings === true)
    return `${writeTightening(params, bolts)} Seguir solo el manual de la máquina: las láminas de ajuste fijan los rodamientos.`
  const order = writeBoltOrder(params)
  const snugText = torque === undefined || hasStages === true ? '' : `Enroscar ${bolts} hasta que asienten. `
  const boltsText = order === '' || torque === undefined ? bolts : `${bolts}, ${order},`
  const unknownOrderText =
    cover !== undefined && order === '' ? ' El orden no se indica aquí: ver el manual.' : ''
  return `${snugText}${writeTightening(params, boltsText)}${unknownOrderText}`
}
