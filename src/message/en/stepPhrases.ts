import type { StepParams } from '../catalogue.js'
import { cardWords } from './card.js'

export const WHEEL_WORDS = {
  'mark down': 'at the bottom',
  'mark level': 'level with the hub',
  'mark up': 'at the top',
}

/** `the fill plug (left) of the front differential`; `fallback` if the step names no part. */
export function writePart({ part, instance, gearcase }: StepParams, fallback: string): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  const gearcaseText = gearcase === undefined ? '' : ` of the ${gearcase}`
  return `the ${part ?? fallback}${instanceText}${gearcaseText}`
}

/** `the hole of the fill plug`: oil goes in where the plug was. */
export const writeHole = (params: StepParams) =>
  params.part === undefined ? writePart(params, 'fill opening') : `the hole of ${writePart(params, '')}`

/** `fill plug (left)`; `fallback` if the step names no part. */
export function writeShortPart({ part, instance }: StepParams, fallback: string): string {
  return instance === undefined ? (part ?? fallback) : `${part ?? fallback} (${instance})`
}

/** A washer can stick to the plug or the case; common practice, no source. */
export const writeStuckWasher = ({ seal }: StepParams) =>
  seal === 'crush washer' || seal === 'bonded seal'
    ? ' If it sticks to the plug or the case, scrape it off. Do not scratch the face.'
    : ''

export const writeSeal = ({ seal = 'none' }: StepParams) =>
  seal === 'none' || seal === 'not stated' ? 'seal' : cardWords.seals[seal]

export function writeTightening(params: StepParams, what: string): string {
  const { torque, turns, setting, wrench, gap, hasStages, drive } = params
  // A hand cap and a clip need no torque: common practice, no source.
  if (torque === undefined && drive === 'clip') return 'Push each clip in until it locks.'
  if (torque === undefined && drive === 'hand') return `Tighten ${what} by hand.`
  if (turns !== undefined) return `Tighten ${what} ${turns} turns past finger tight.`
  if (torque !== undefined) {
    const set =
      setting === undefined
        ? ''
        : `Set ${wrench === undefined ? 'the wrench' : `the ${wrench}`} to ${setting}${hasStages === true ? ' for the last stage' : ''}. `
    return `${set}Tighten ${what} to ${torque}.`
  }
  if (gap === 'cannot tell') {
    return `Tighten ${what} as the manual says for this variant. The torque is not known here: see the manual.`
  }
  return `Tighten ${what} as the manual says. The torque is not stated here: see the manual.`
}

/** The figure is in the margin. */
export function writeShortTightening(params: StepParams, what: string): string {
  const { torque, turns, gap, drive } = params
  if (torque === undefined && drive !== undefined)
    return drive === 'clip' ? 'Clips in' : `${what} tight by hand`
  if (torque === undefined && turns === undefined)
    return `Tighten ${what}: ${gap === 'cannot tell' ? 'torque not known' : 'see the manual'}`
  return `Tighten ${what}`
}

const ATTITUDES = {
  'level on its wheels': 'the machine level on its wheels',
  'level on stands': 'the machine level on its stands',
  'not stated': undefined,
}

/** The conditions for reading the level. */
export function writeLevelConditions({ level, levelTemperature, minutes }: StepParams): readonly string[] {
  return [
    level && ATTITUDES[level.attitude],
    levelTemperature && `the oil at ${levelTemperature}`,
    level?.engine === 'running' ? 'the engine on' : minutes && `${minutes} after the stop`,
  ].filter((condition) => condition !== undefined)
}

/** `, level on its wheels, oil at 40–50 °C` */
export const writeShortConditions = ({ level, levelTemperature, minutes }: StepParams) =>
  [
    level === undefined || level.attitude === 'not stated' ? undefined : level.attitude,
    levelTemperature && `oil at ${levelTemperature}`,
    level?.engine === 'running' ? 'engine on' : minutes && `${minutes} after the stop`,
  ]
    .filter((condition) => condition !== undefined)
    .map((condition) => `, ${condition}`)
    .join('')

/** The required oil level. Lower edge and middle: common practice, no source. */
export function writeLevel(params: StepParams): string {
  const { level, below } = params
  const openingText = writePart(params, 'level opening')
  if (level === undefined) return `Check the oil level at ${openingText}.`
  const conditions = writeLevelConditions(params)
  const asManualText = `Check the oil level at ${openingText} as the manual says.`
  const instruction = {
    'by quantity': asManualText,
    'not stated': asManualText,
    'to level hole': `Check the oil level at ${openingText}. The oil must be ${below === undefined ? 'at' : `${below} below`} the lower edge of the hole.`,
    dipstick:
      level.reading === 'screwed in'
        ? `Wipe ${openingText} clean. Screw it in fully. Take it out. Read the oil between its marks.`
        : `Wipe ${openingText} clean. Rest it on its thread. Do not screw it in. Read the oil between its marks.`,
    'sight glass': `Read the oil level at ${openingText}. The level must be between the marks. On a glass without marks, it must be at the middle.`,
  }[level.method]
  return [
    instruction,
    conditions.length === 0 ? '' : ` Read it with ${conditions.join(', ')}.`,
    ` ${writeHighLevel(level)}`,
  ].join('')
}

/**
 * Common practice, no source: if the level rises by itself, water or oil from a neighbouring gearcase has
 * come in.
 */
function writeHighLevel({ method, afterFilling }: NonNullable<StepParams['level']>): string {
  const action = method === 'to level hole' ? 'let the excess run out' : 'take the excess out'
  if (afterFilling) return `If it is high, ${action}.`
  return `If it is high and was not overfilled, stop: water or the oil of another gearcase may be in it. If it was overfilled, ${action}.`
}

export function writeTopUp(params: StepParams): string {
  const { level, part, stopAt } = params
  if (level?.afterFilling !== true) {
    const openingText = part === undefined ? '' : ` through ${writePart(params, 'fill opening')}`
    return `If the level is low, top up${openingText}. Take the same oil. If the level was low, look for a leak.`
  }
  if (stopAt === undefined) return 'If the level is low, top up with the same oil.'
  return `If the level is low, top up with the same oil. ${stopLimitText(stopAt)}`
}

/** The warning for a refill that differs from the stated quantity. */
export function stopLimitText(stopAt: string): string {
  return `If more than ${stopAt} has gone in, stop the work. If much less went in than stated, make sure that the machine is level and the case was fully drained.`
}

/** Common practice, no source: if a cover is loosened on all sides at once, all the oil comes out. */
export function takeOffCoverText(params: StepParams): string {
  const cover = writePart(params, 'cover')
  if (params.cover?.carriesBearings === true)
    return `Take off ${cover} only by the machine's manual: it carries bearings. Keep its shims in order. Keep your face clear of the oil.`
  const position = params.cover?.position ?? 'not stated'
  const remainingBoltsText = {
    upright: 'Leave two loose bolts in at the top.',
    bottom: 'Leave the bolts of one side in, loosened.',
    'not stated': 'Leave two loose bolts in at the top; on a bottom pan, leave those of one side.',
  }[position]
  return `Slacken all bolts of ${cover}. ${remainingBoltsText} Take out the others. Break the seal ${position === 'bottom' ? 'on the open side' : 'at the bottom'}. Keep your face clear of the oil. When ${params.fluid === 'grease' ? 'no more grease runs out' : 'the oil only drips'}, take off ${cover}.`
}

export function writeCoverTightening(params: StepParams): string {
  const { cover, torque, hasStages } = params
  const bolts = `the bolts of ${writePart(params, 'cover')}`
  if (cover?.carriesBearings === true)
    return `${writeTightening(params, bolts)} Follow only the machine's manual: the shims set the bearings.`
  const pattern = cover?.pattern ?? 'not stated'
  const order = {
    'from the middle outwards': 'from the middle outwards',
    crosswise: 'crosswise',
    'in turn': 'one after the other',
    'not stated': '',
  }[pattern]
  const snugText =
    torque === undefined || hasStages === true
      ? ''
      : `Turn all bolts of ${writePart(params, 'cover')} in until they are snug. `
  const boltsText = order === '' || torque === undefined ? bolts : `${bolts} ${order}`
  const unknownOrderText =
    cover !== undefined && order === '' ? ' The order is not stated here: see the manual.' : ''
  return `${snugText}${writeTightening(params, boltsText)}${unknownOrderText}`
}
