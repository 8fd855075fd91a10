import type { Action } from '../../spec/index.js'
import type { LineText, StepParams } from '../catalogue.js'
import {
  stopLimitText,
  writeAtPart,
  writeFluid,
  writeHole,
  writeLevelConditions,
  writeOfPart,
  writePart,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
  writeWrench,
} from './stepPhrases.js'
import { STOP_AT_WATER } from './steps.js'
import { quote, writeNewSeal, writeOldSeal, writeTheSeal } from './words.js'

type StepList = readonly (StepParams & { readonly do: Action })[]

/** `débloquer avec « douille 10 mm »` */
const writeLoosening = ({ drive, socket }: StepParams) =>
  drive === 'hand' ? 'dévisser' : `débloquer${socket === undefined ? '' : ` avec ${quote(socket)}`}`

const writeStuckPlug = (params: StepParams) =>
  params.beforeDraining === true ? ` En cas de blocage, laisser ${writeFluid(params)} en place.` : ''

const writeShortStuck = (params: StepParams) =>
  params.beforeDraining === true ? ` ; si bloqué, laisser ${writeFluid(params)}` : ''

/** `Visser « plug » à la main jusqu’en butée. Serrer à 20–25 N·m : régler la clé « small click wrench » à 22,5 N·m.` */
function writeTurningIn(
  turnIn: string,
  { torque, turns, setting, wrench, gap, hasStages, drive }: StepParams,
) {
  if (torque === undefined && drive === 'hand') return `${turnIn} et serrer à la main.`
  const fingerTight = `${turnIn} à la main jusqu’en butée.`
  if (turns !== undefined) return `${fingerTight} Serrer ensuite de ${turns} tours.`
  if (torque === undefined) {
    const state = gap === 'cannot tell' ? 'n’est pas connu ici' : 'n’est pas indiqué ici'
    return `${fingerTight} Serrer selon le manuel. Le couple ${state} : voir le manuel.`
  }
  const set =
    setting &&
    `régler ${writeWrench(wrench)} à ${setting}${hasStages === true ? ' pour le dernier palier' : ''}`
  return `${fingerTight} Serrer à ${torque}${set === undefined ? '' : ` : ${set}`}.`
}

/**
 * Whether the seal is a washer or ring between plug and case, not sealant or the seal of a cover or filter.
 */
const isSealRing = ({ seal, cover, filter }: StepParams) =>
  cover === undefined && filter === undefined && seal !== 'thread sealant' && seal !== 'liquid gasket'

function writeLevelLine(check: StepParams, topUp: StepParams): string | undefined {
  const { level, below } = check
  if (level?.method !== 'to level hole' || !level.afterFilling || topUp.stopAt === undefined) return undefined
  const conditions = writeLevelConditions(check)
  const edgeText = `${below === undefined ? 'au' : `à ${below} sous le`} bord inférieur de l’orifice`
  return [
    `Contrôler le niveau d’huile ${writeAtPart(check, 'niveau')} : il doit être ${edgeText}`,
    conditions.length === 0 ? '.' : ` (${conditions.join(', ')}).`,
    ' Si le niveau est haut, laisser couler l’excédent. S’il est bas, faire l’appoint avec la même huile.',
    ` ${stopLimitText(topUp.stopAt)}`,
  ].join('')
}

/** The gearcases of a leak check: `rear gearcase; hub (left)`; empty if the heading names the only one. */
function writeLeakPlaces(checks: StepList): string {
  const places = checks.map(({ gearcase, instance, shield }) => {
    const place =
      gearcase !== undefined && instance !== undefined ? `${gearcase} (${instance})` : (gearcase ?? instance)
    const shieldText = shield && `par les trous et le long des bords de ${quote(shield)}`
    return [place, shieldText].filter((text) => text !== undefined).join(', ')
  })
  const namedPlaces = places.filter((place) => place !== '')
  return namedPlaces.length === 0 ? '' : ` : ${namedPlaces.join(' ; ')}`
}

const selectLeakChecks = (steps: StepList) => steps.filter((step) => step.do === 'check for leaks')

/** French texts for steps done together; the longest that fits is used. */
export const lineTexts: readonly LineText[] = [
  {
    actions: ['park on level ground', 'stop the engine'],
    full: () =>
      'Garer la machine sur un sol plat et ferme. Abaisser tout outil, serrer le frein de stationnement, arrêter le moteur et retirer la clé. Attendre que plus rien ne tourne.',
    short: () => 'Garer à plat ; outils au sol, frein serré, moteur arrêté, clé retirée',
  },
  {
    actions: ['raise the machine', 'set on stands'],
    full: ({ jack }, standsStep) =>
      [
        `Lever la machine${jack === undefined ? '' : ` au cric (${jack})`} et la poser sur des chandelles prévues pour la charge`,
        standsStep.part === undefined ? '. ' : ` (${standsStep.part}). `,
        jack === undefined ? 'Chercher le point de levage dans le manuel : il n’est pas indiqué ici. ' : '',
        'Ne pas travailler sous un cric. S’assurer que la machine est stable sur les chandelles.',
      ].join(''),
    short: ({ jack }, { part }) =>
      `Cric${jack === undefined ? ' (point : voir le manuel)' : ` : ${jack}`} ; chandelles${part === undefined ? '' : ` : ${part}`}`,
  },
  {
    actions: ['lower the machine', 'clear away'],
    full: (_lowerStep, { how }) =>
      [
        'S’assurer qu’il n’y a ni personne ni outil sous la machine.',
        'La lever des chandelles, les retirer et la descendre lentement au sol.',
        'Retirer le bac, les outils et les cales.',
        ...(how === undefined ? [] : [`Débloquer ce qui était bloqué pour le travail : ${how}.`]),
        'S’assurer que personne n’est près de la machine.',
      ].join(' '),
    short: (_lowerStep, { how }) =>
      `Rien dessous ; retirer les chandelles, descendre ; bac, outils, cales et personnes à l’écart${how === undefined ? '' : ` ; débloquer : ${how}`}`,
  },
  {
    actions: ['clean around', 'crack loose', 'nip by hand'],
    full: (cleanStep, crackStep) =>
      `Nettoyer le pourtour ${writeOfPart(cleanStep, 'ouverture')}, ${writeLoosening(crackStep)} et revisser à la main.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'ouverture')} : nettoyer, débloquer, revisser à la main${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['clean around', 'crack loose'],
    full: (cleanStep, crackStep) =>
      `Nettoyer le pourtour ${writeOfPart(cleanStep, 'ouverture')} et ${writeLoosening(crackStep)}.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'ouverture')} : nettoyer, débloquer${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['place the pan', 'clean around', 'crack loose', 'take out'],
    full: (panStep, _cleanStep, crackStep) =>
      `Mettre le bac de vidange en place. Nettoyer le pourtour ${writeOfPart(panStep, 'bouchon de vidange')}, ${writeLoosening(crackStep)} et déposer.`,
    short: (panStep) => `Bac en place ; ${writeShortPart(panStep, 'vidange')} : nettoyer, débloquer, déposer`,
  },
  {
    actions: ['clean around', 'crack loose', 'take out'],
    full: (cleanStep, crackStep) =>
      `Nettoyer le pourtour ${writeOfPart(cleanStep, 'ouverture')}, ${writeLoosening(crackStep)} et déposer.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'ouverture')} : nettoyer, débloquer, déposer${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['take out', 'let drain'],
    full: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `Déposer ${writePart(outStep, 'bouchon de remplissage')} pour laisser entrer l’air. Laisser couler l’huile jusqu’au goutte-à-goutte${wait === undefined ? '' : `, au moins ${wait}`}.`,
    short: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `${writeShortPart(outStep, 'bouchon de remplissage')} : déposer, pour l’air ; vider jusqu’aux gouttes${wait === undefined ? '' : ` (au moins ${wait})`}`,
  },
  {
    actions: ['inspect the oil', 'inspect the magnet', 'clean the magnet'],
    full: ({ fluid }, magnetStep) =>
      fluid === 'grease'
        ? undefined
        : `Examiner l’ancienne huile sous une bonne lumière, et l’aimant ${writeOfPart(magnetStep, 'bouchon')}. En présence de copeaux, paillettes ou morceaux sur l’un ou dans l’autre, arrêter : refermer le carter. Ne pas remplir. Consigner la machine. S’il n’y a que de la pâte grise, ou quelques paillettes brillantes au premier entretien, continuer. Essuyer l’aimant. ${STOP_AT_WATER}`,
    short: ({ fluid }) =>
      fluid === 'grease'
        ? undefined
        : 'Huile et aimant : si copeaux ou morceaux, arrêter, refermer, consigner ; si laiteuse, chercher l’eau et rincer ; essuyer l’aimant',
  },
  {
    actions: ['take off old seal', 'wipe the seal face'],
    full: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Retirer ${writeOldSeal(sealStep.seal ?? 'none')} : ne rien en laisser sur le carter.${writeStuckWasher(sealStep)} Essuyer ${writePart(faceStep, 'bouchon')} et son siège.`
        : undefined,
    short: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Retirer ${writeOldSeal(sealStep.seal ?? 'none')}, carter sans reste ; ${writeShortPart(faceStep, 'bouchon')} et siège : essuyer`
        : undefined,
  },
  {
    actions: ['wipe the seal face', 'inspect the seal'],
    full: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `Essuyer ${writePart(faceStep, 'bouchon')} et son siège. Contrôler ${writeTheSeal(sealStep.seal ?? 'none')} : coupures et méplats. S’il y en a, remplacer.`
        : undefined,
    short: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `${writeShortPart(faceStep, 'bouchon')} et siège : essuyer ; contrôler ${writeTheSeal(sealStep.seal ?? 'none')}`
        : undefined,
  },
  {
    actions: ['fit new seal', 'fit', 'tighten'],
    full: (sealStep, plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? writeTurningIn(
            `Monter ${writePart(plugStep, 'bouchon')} avec ${writeNewSeal(sealStep.seal ?? 'none')} et visser`,
            tightenStep,
          )
        : undefined,
    short: (sealStep, _plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? `${writeNewSeal(sealStep.seal ?? 'none')} ; ${writeShortTightening(tightenStep, writeShortPart(tightenStep, 'bouchon'))}`
        : undefined,
  },
  {
    actions: ['fit', 'tighten'],
    full: (plugStep, tightenStep) => writeTurningIn(`Visser ${writePart(plugStep, 'bouchon')}`, tightenStep),
    short: (_plugStep, tightenStep) =>
      writeShortTightening(tightenStep, writeShortPart(tightenStep, 'bouchon')),
  },
  {
    actions: ['measure the oil', 'pour the oil', 'wait for the hose'],
    full: ({ volume, oil, totalVolume }, pourStep, { wait, fluid, usualWait }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : [
            `Mesurer ${volume} de ${oil === undefined ? 'la bonne huile' : quote(oil)} dans un récipient gradué propre et verser lentement par ${writeHole(pourStep)}.`,
            `Attendre que rien ne goutte du tuyau${wait === undefined ? '' : ` : environ ${wait} dès le début du versement`}.`,
            ...(wait === undefined && usualWait !== undefined ? [usualWait] : []),
          ].join(' '),
    short: ({ volume, oil, totalVolume }, pourStep, { fluid }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : `Mesurer et verser ${oil ?? 'la bonne huile'} : ${writeShortPart(pourStep, 'remplissage')} ; tuyau vide quand rien ne goutte`,
  },
  {
    actions: ['check the level', 'top up'],
    full: writeLevelLine,
    short: (check, { stopAt }) =>
      stopAt === undefined
        ? undefined
        : `Niveau : ${writeShortPart(check, 'niveau')}${writeShortConditions(check)}${check.below === undefined ? '' : `, ${check.below} sous le bord`} ; si bas, appoint ; au maximum, arrêter`,
  },
  {
    actions: ['wipe down', 'check for leaks'],
    anyOrder: true,
    full: (...steps) =>
      [
        steps.some((step) => step.do === 'wipe down') ? 'Essuyer toute l’huile répandue. ' : '',
        `Chercher de l’huile à chaque bouchon et joint ouvert${writeLeakPlaces(selectLeakChecks(steps))}.`,
        ' En cas de suintement, remplacer le joint. Ne pas serrer au-delà de la valeur du manuel.',
      ].join(''),
    short: (...steps) =>
      `${steps.some((step) => step.do === 'wipe down') ? 'Essuyer ; contrôle des fuites' : 'Contrôle des fuites'}${writeLeakPlaces(selectLeakChecks(steps))} ; si suintement, joint neuf, pas plus de couple`,
  },
]
