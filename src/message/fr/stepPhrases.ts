import type { StepParams } from '../catalogue.js'
import { quote } from './words.js'

/** Words for a part that a step does not name: with their article, after `de` and after `à`. */
const NOUNS = {
  bouchon: ['le bouchon', 'du bouchon', 'au bouchon'],
  'bouchon de vidange': ['le bouchon de vidange', 'du bouchon de vidange', 'au bouchon de vidange'],
  'bouchon de remplissage': [
    'le bouchon de remplissage',
    'du bouchon de remplissage',
    'au bouchon de remplissage',
  ],
  couvercle: ['le couvercle', 'du couvercle', 'au couvercle'],
  crépine: ['la crépine', 'de la crépine', 'à la crépine'],
  filetage: ['le filetage propre', 'du filetage propre', 'au filetage propre'],
  filtre: ['le filtre', 'du filtre', 'au filtre'],
  niveau: ['l’orifice de niveau', 'de l’orifice de niveau', 'à l’orifice de niveau'],
  ouverture: ['l’ouverture', 'de l’ouverture', 'à l’ouverture'],
  protection: ['la protection', 'de la protection', 'à la protection'],
  remplissage: ['l’orifice de remplissage', 'de l’orifice de remplissage', 'à l’orifice de remplissage'],
  roue: ['la roue', 'de la roue', 'à la roue'],
  vidange: ['l’orifice de vidange', 'de l’orifice de vidange', 'à l’orifice de vidange'],
} as const
type Noun = keyof typeof NOUNS

export const WHEEL_WORDS = {
  'mark down': 'en bas',
  'mark level': 'à hauteur du moyeu',
  'mark up': 'en haut',
} as const

/** The instance and the gearcase, after the part. */
function writePlace({ instance, gearcase }: StepParams): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  return `${instanceText}${gearcase === undefined ? '' : ` de ${quote(gearcase)}`}`
}

/** `« fill plug » (left) de « front differential »`; a noun of the catalogue if the step names no part. */
export const writePart = (params: StepParams, noun: Noun): string =>
  `${params.part === undefined ? NOUNS[noun][0] : quote(params.part)}${writePlace(params)}`

/** `de « fill plug »`, `du bouchon` */
export const writeOfPart = (params: StepParams, noun: Noun): string =>
  `${params.part === undefined ? NOUNS[noun][1] : `de ${quote(params.part)}`}${writePlace(params)}`

/** `à « fill plug »`, `au bouchon` */
export const writeAtPart = (params: StepParams, noun: Noun): string =>
  `${params.part === undefined ? NOUNS[noun][2] : `à ${quote(params.part)}`}${writePlace(params)}`

/** `l’orifice de « fill plug »`: oil goes in where the plug was. */
export const writeHole = (params: StepParams): string =>
  params.part === undefined ? writePart(params, 'remplissage') : `l’orifice ${writeOfPart(params, 'bouchon')}`

/** `fill plug (left)`; a noun of the catalogue if the step names no part. */
export const writeShortPart = ({ part, instance }: StepParams, noun: Noun): string =>
  `${part ?? NOUNS[noun][0].replace(/^(?:le |la |l’)/, '')}${instance === undefined ? '' : ` (${instance})`}`

/** A washer can stick to the plug or the case; common practice, no source. */
export const writeStuckWasher = ({ seal }: StepParams) =>
  seal === 'crush washer' || seal === 'bonded seal'
    ? ' Si elle colle au bouchon ou au carter, la gratter. Ne pas rayer la face.'
    : ''

/** `l’huile` or `la graisse`, as they stay in. */
export const writeFluid = ({ fluid }: StepParams) => (fluid === 'grease' ? 'la graisse' : 'l’huile')

export function writeTightening(params: StepParams, what: string): string {
  const { torque, turns, setting, wrench, gap, hasStages, drive } = params
  // A hand cap and a clip need no torque: common practice, no source.
  if (torque === undefined && drive === 'clip') return 'Enfoncer chaque clip jusqu’au verrouillage.'
  if (torque === undefined && drive === 'hand') return `Serrer ${what} à la main.`
  if (turns !== undefined) return `Serrer ${what} de ${turns} tours après serrage à la main.`
  if (torque !== undefined) {
    const set =
      setting === undefined
        ? ''
        : `Régler ${writeWrench(wrench)} à ${setting}${hasStages === true ? ' pour le dernier palier' : ''}. `
    return `${set}Serrer ${what} à ${torque}.`
  }
  if (gap === 'cannot tell')
    return `Serrer ${what} selon le manuel pour cette variante. Le couple n’est pas connu ici : voir le manuel.`
  return `Serrer ${what} selon le manuel. Le couple n’est pas indiqué ici : voir le manuel.`
}

/** `la clé « small click wrench »` */
export const writeWrench = (wrench: string | undefined) =>
  wrench === undefined ? 'la clé' : `la clé ${quote(wrench)}`

/** The figure is in the margin. */
export function writeShortTightening(params: StepParams, what: string): string {
  const { torque, turns, gap, drive } = params
  if (torque === undefined && drive !== undefined)
    return drive === 'clip' ? 'Clips enfoncés' : `${what} : serrer à la main`
  if (torque === undefined && turns === undefined)
    return `${what} : serrer, ${gap === 'cannot tell' ? 'couple non connu' : 'voir le manuel'}`
  return `${what} : serrer`
}

const ATTITUDES = {
  'level on its wheels': 'machine de niveau sur ses roues',
  'level on stands': 'machine de niveau sur ses chandelles',
  'not stated': undefined,
} as const

/** The conditions for reading the level. */
export function writeLevelConditions({ level, levelTemperature, minutes }: StepParams): readonly string[] {
  return [
    level && ATTITUDES[level.attitude],
    levelTemperature && `huile à ${levelTemperature}`,
    level?.engine === 'running' ? 'moteur en marche' : minutes && `${minutes} après l’arrêt`,
  ].filter((condition) => condition !== undefined)
}

const SHORT_ATTITUDES = {
  'level on its wheels': 'de niveau sur ses roues',
  'level on stands': 'de niveau sur chandelles',
  'not stated': undefined,
} as const

/** `, de niveau sur ses roues, huile à 40–50 °C` */
export const writeShortConditions = (params: StepParams) =>
  [
    params.level && SHORT_ATTITUDES[params.level.attitude],
    ...writeLevelConditions({
      ...params,
      ...(params.level && { level: { ...params.level, attitude: 'not stated' } }),
    }),
  ]
    .filter((condition) => condition !== undefined)
    .map((condition) => `, ${condition}`)
    .join('')

/** The required oil level. Lower edge and middle: common practice, no source. */
export function writeLevel(params: StepParams): string {
  const { level, below } = params
  const atOpening = writeAtPart(params, 'niveau')
  if (level === undefined) return `Contrôler le niveau d’huile ${atOpening}.`
  const conditions = writeLevelConditions(params)
  const asManualText = `Contrôler le niveau d’huile ${atOpening} selon le manuel.`
  const wiped = `Jauge : essuyer ${writePart(params, 'niveau')}.`
  const instruction = {
    'by quantity': asManualText,
    'not stated': asManualText,
    'to level hole': `Contrôler le niveau d’huile ${atOpening}. L’huile doit être ${below === undefined ? 'au' : `à ${below} sous le`} bord inférieur de l’orifice.`,
    dipstick:
      level.reading === 'screwed in'
        ? `${wiped} Visser à fond. Ressortir. Lire l’huile entre les repères.`
        : `${wiped} Poser sur le filetage, sans visser. Lire l’huile entre les repères.`,
    'sight glass': `Lire le niveau d’huile ${atOpening}. Le niveau doit être entre les repères. Sur un voyant sans repères, il doit être au milieu.`,
  }[level.method]
  return [
    instruction,
    conditions.length === 0 ? '' : ` Conditions de lecture : ${conditions.join(', ')}.`,
    ` ${writeHighLevel(level)}`,
  ].join('')
}

/**
 * Common practice, no source: if the level rises by itself, water or oil from a neighbouring gearcase has
 * come in.
 */
function writeHighLevel({ method, afterFilling }: NonNullable<StepParams['level']>): string {
  const action = method === 'to level hole' ? 'laisser couler l’excédent' : 'retirer l’excédent'
  if (afterFilling) return `Si le niveau est haut, ${action}.`
  return `Si le niveau est haut sans excès de remplissage, arrêter : de l’eau ou l’huile d’un autre carter a pu entrer. En cas d’excès de remplissage, ${action}.`
}

export function writeTopUp(params: StepParams): string {
  const { level, part, stopAt } = params
  if (level?.afterFilling !== true) {
    const through = part === undefined ? '' : ` par ${writePart(params, 'remplissage')}`
    return `Si le niveau est bas, faire l’appoint${through}. Prendre la même huile. Si le niveau était bas, chercher une fuite.`
  }
  if (stopAt === undefined) return 'Si le niveau est bas, faire l’appoint avec la même huile.'
  return `Si le niveau est bas, faire l’appoint avec la même huile. ${stopLimitText(stopAt)}`
}

/** The warning for a refill that differs from the stated quantity. */
export function stopLimitText(stopAt: string): string {
  return `S’il en entre plus de ${stopAt}, arrêter le travail. S’il en entre bien moins que la quantité indiquée, s’assurer que la machine est de niveau et que le carter était vidé.`
}

/** Common practice, no source: if a cover is loosened on all sides at once, all the oil comes out. */
export function takeOffCoverText(params: StepParams): string {
  const cover = writePart(params, 'couvercle')
  if (params.cover?.carriesBearings === true)
    return `Déposer ${cover} uniquement selon le manuel de la machine : des roulements y sont montés. Garder les cales de réglage dans l’ordre. Tenir le visage à l’écart de l’huile.`
  const position = params.cover?.position ?? 'not stated'
  const remainingBoltsText = {
    upright: 'Laisser deux vis desserrées en haut.',
    bottom: 'Laisser les vis d’un côté, desserrées.',
    'not stated': 'Laisser deux vis desserrées en haut ; sur un carter inférieur, laisser celles d’un côté.',
  }[position]
  return `Desserrer toutes les vis ${writeOfPart(params, 'couvercle')}. ${remainingBoltsText} Déposer les autres. Décoller le joint ${position === 'bottom' ? 'du côté libre' : 'en bas'}. Tenir le visage à l’écart de l’huile. Quand ${params.fluid === 'grease' ? 'la graisse ne coule plus' : 'l’huile ne fait plus que goutter'}, déposer ${cover}.`
}

export const BOLT_ORDERS = {
  'from the middle outwards': 'du milieu vers l’extérieur',
  crosswise: 'en croix',
  'in turn': 'l’une après l’autre',
  'not stated': '',
} as const

export function writeCoverTightening(params: StepParams): string {
  const { cover, torque, hasStages } = params
  const bolts = `les vis ${writeOfPart(params, 'couvercle')}`
  if (cover?.carriesBearings === true)
    return `${writeTightening(params, bolts)} Suivre uniquement le manuel de la machine : les cales règlent les roulements.`
  const order = BOLT_ORDERS[cover?.pattern ?? 'not stated']
  const snugText =
    torque === undefined || hasStages === true
      ? ''
      : `Visser toutes les vis ${writeOfPart(params, 'couvercle')} jusqu’au contact. `
  const boltsText = order === '' || torque === undefined ? bolts : `${bolts} ${order}`
  const unknownOrderText =
    cover !== undefined && order === '' ? ' L’ordre n’est pas indiqué ici : voir le manuel.' : ''
  return `${snugText}${writeTightening(params, boltsText)}${unknownOrderText}`
}
