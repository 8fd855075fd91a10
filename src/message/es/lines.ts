import type { Action } from '../../spec/index.js'
import type { LineText, StepParams } from '../catalogue.js'
import {
  stopLimitText,
  unknownTorqueText,
  writeEdge,
  writeFluid,
  writeHole,
  writeLevelConditions,
  writePart,
  writeSeal,
  writeShortConditions,
  writeShortPart,
  writeShortTightening,
  writeStuckWasher,
} from './stepPhrases.js'
import { quote } from './words.js'

type StepList = readonly (StepParams & { readonly do: Action })[]

/** `aflojar con “10 mm hex bit socket”` */
const writeLoosening = ({ drive, socket }: StepParams) =>
  drive === 'hand' ? 'desenroscar a mano' : `aflojar${socket === undefined ? '' : ` con ${quote(socket)}`}`

const writeStuckPlug = (params: StepParams) =>
  params.beforeDraining === true ? ` Si no cede, dejar dentro ${writeFluid(params)}.` : ''

const writeShortStuck = (params: StepParams) =>
  params.beforeDraining === true ? `; si no cede, dejar dentro ${writeFluid(params)}` : ''

/** `Enroscar “drain plug” hasta el apriete a mano. Apretar con un par de 20–25 N·m: ajustar “small wrench” a 22,5 N·m.` */
function writeTurningIn(turnIn: string, params: StepParams) {
  const { torque, turns, setting, wrench, hasStages, drive } = params
  if (torque === undefined && drive === 'hand') return `${turnIn} y apretar a mano.`
  const fingerTight = `${turnIn} hasta el apriete a mano.`
  if (turns !== undefined) return `${fingerTight} Luego, vueltas de apriete: ${turns}.`
  if (torque === undefined) return `${fingerTight} Apretar como dice el manual. ${unknownTorqueText(params)}`
  const set =
    setting &&
    `ajustar ${wrench === undefined ? 'la llave' : quote(wrench)} a ${setting}${hasStages === true ? ' para la última etapa' : ''}`
  return `${fingerTight} Apretar con un par de ${torque}${set === undefined ? '' : `: ${set}`}.`
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
  return [
    `Comprobar el nivel de aceite en ${writePart(check, 'la abertura de nivel')}: debe estar ${writeEdge(below)}`,
    conditions.length === 0 ? '.' : `, con ${conditions.join(', ')}.`,
    ' Si está alto, dejar salir el exceso. Si está bajo, reponer con el mismo aceite.',
    ` ${stopLimitText(topUp.stopAt)}`,
  ].join('')
}

/** The gearcases of a leak check: `rear gearcase; hub (left)`; empty if the heading names the only one. */
function writeLeakPlaces(checks: StepList): string {
  const places = checks.map(({ gearcase, instance, shield }) => {
    const place =
      gearcase !== undefined && instance !== undefined ? `${gearcase} (${instance})` : (gearcase ?? instance)
    const shieldText = shield && `por los agujeros y los bordes de ${quote(shield)}`
    return [place, shieldText].filter((text) => text !== undefined).join(', ')
  })
  const namedPlaces = places.filter((place) => place !== '')
  return namedPlaces.length === 0 ? '' : `: ${namedPlaces.join('; ')}`
}

const selectLeakChecks = (steps: StepList) => steps.filter((step) => step.do === 'check for leaks')

/** Spanish texts for steps done together; the longest that fits is used. */
export const lineTexts: readonly LineText[] = [
  {
    actions: ['park on level ground', 'stop the engine'],
    full: () =>
      'Estacionar la máquina en suelo llano y firme. Bajar los implementos, poner el freno de estacionamiento, parar el motor y sacar la llave de contacto. Esperar a que nada gire.',
    short: () => 'Estacionar en llano; implementos abajo, freno puesto, motor parado, llave fuera',
  },
  {
    actions: ['raise the machine', 'set on stands'],
    full: ({ jack }, standsStep) =>
      [
        `Elevar la máquina${jack === undefined ? '' : ` con el gato (${jack})`} y ponerla sobre caballetes de carga suficiente`,
        standsStep.part === undefined ? '. ' : ` (${standsStep.part}). `,
        jack === undefined ? 'Buscar en el manual el punto de apoyo del gato: no se indica aquí. ' : '',
        'No trabajar bajo un gato. Comprobar que está firme sobre los caballetes.',
      ].join(''),
    short: ({ jack }, { part }) =>
      `Gato${jack === undefined ? ' (punto de apoyo: ver el manual)' : `: ${jack}`}; caballetes${part === undefined ? '' : `: ${part}`}`,
  },
  {
    actions: ['lower the machine', 'clear away'],
    full: (_lowerStep, { how }) =>
      [
        'Comprobar que no hay personas ni herramientas bajo la máquina.',
        'Levantarla de los caballetes, retirarlos y bajarla despacio hasta el suelo.',
        'Retirar la bandeja de drenaje, las herramientas y los calzos.',
        ...(how === undefined ? [] : [`Soltar lo que se aseguró para el trabajo: ${how}.`]),
        'Comprobar que nadie está cerca de la máquina.',
      ].join(' '),
    short: (_lowerStep, { how }) =>
      `Despejar debajo; levantar de los caballetes y bajar; fuera bandeja, herramientas, calzos y personas${how === undefined ? '' : `; soltar: ${how}`}`,
  },
  {
    actions: ['clean around', 'crack loose', 'nip by hand'],
    full: (cleanStep, crackStep) =>
      `Limpiar alrededor de ${writePart(cleanStep, 'la abertura')}, ${writeLoosening(crackStep)} y volver a enroscar a mano.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'abertura')}: limpiar, aflojar, enroscar a mano${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['clean around', 'crack loose'],
    full: (cleanStep, crackStep) =>
      `Limpiar alrededor de ${writePart(cleanStep, 'la abertura')} y ${writeLoosening(crackStep)}.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'abertura')}: limpiar, aflojar${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['place the pan', 'clean around', 'crack loose', 'take out'],
    full: (panStep, _cleanStep, crackStep) =>
      `Poner la bandeja de drenaje en su sitio. Limpiar alrededor de ${writePart(panStep, 'la abertura de drenaje')}, ${writeLoosening(crackStep)} y retirar.`,
    short: (panStep) =>
      `Bandeja en su sitio; ${writeShortPart(panStep, 'abertura de drenaje')}: limpiar, aflojar, retirar`,
  },
  {
    actions: ['clean around', 'crack loose', 'take out'],
    full: (cleanStep, crackStep) =>
      `Limpiar alrededor de ${writePart(cleanStep, 'la abertura')}, ${writeLoosening(crackStep)} y retirar.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'abertura')}: limpiar, aflojar, retirar${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['take out', 'let drain'],
    full: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `Retirar ${writePart(outStep, 'el tapón de llenado')} para que entre aire. Dejar drenar el aceite hasta que solo gotee${wait === undefined ? '' : `, al menos ${wait}`}.`,
    short: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `${writeShortPart(outStep, 'tapón de llenado')}: retirar, por el aire; drenar hasta que solo gotee${wait === undefined ? '' : ` (al menos ${wait})`}`,
  },
  {
    actions: ['inspect the oil', 'inspect the magnet', 'clean the magnet'],
    full: ({ fluid }, magnetStep) =>
      fluid === 'grease'
        ? undefined
        : `Inspeccionar con buena luz el aceite viejo, y el imán de ${writePart(magnetStep, 'su tapón')}. Si hay virutas, escamas o trozos, parar: cerrar la caja. No llenar. Señalizar la máquina como fuera de servicio. Si en un primer servicio solo hay pasta gris o algo de brillo metálico, seguir. Limpiar el imán. Si el aceite está lechoso, parar: buscar por dónde entró el agua. Enjuagar la caja que tuvo aceite lechoso antes de llenarla. Llenarla con el aceite del manual. Poner la máquina en marcha un momento. Dejar enfriar. Drenar el aceite.`,
    short: ({ fluid }) =>
      fluid === 'grease'
        ? undefined
        : 'Aceite e imán: con virutas o trozos, parar, cerrar, fuera de servicio; si está lechoso, buscar el agua y enjuagar; limpiar el imán',
  },
  {
    actions: ['take off old seal', 'wipe the seal face'],
    full: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Quitar ${writeSeal(sealStep, 'old')}: no dejar restos en la caja.${writeStuckWasher(sealStep)} Limpiar ${writePart(faceStep, 'el tapón')} y su asiento.`
        : undefined,
    short: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `Quitar ${writeSeal(sealStep, 'oldShort')}, sin restos en la caja; limpiar ${writeShortPart(faceStep, 'tapón')} y asiento`
        : undefined,
  },
  {
    actions: ['wipe the seal face', 'inspect the seal'],
    full: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `Limpiar ${writePart(faceStep, 'el tapón')} y su asiento. Buscar cortes y aplastamientos en ${writeSeal(sealStep, 'definite')}. Si hay alguno, cambiarla.`
        : undefined,
    short: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `Limpiar ${writeShortPart(faceStep, 'tapón')} y asiento, inspeccionar ${writeSeal(sealStep, 'definite')}`
        : undefined,
  },
  {
    actions: ['fit new seal', 'fit', 'tighten'],
    full: (sealStep, plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? writeTurningIn(
            `Montar ${writePart(plugStep, 'el tapón')} con ${writeSeal(sealStep, 'new')} y enroscar`,
            tightenStep,
          )
        : undefined,
    short: (sealStep, _plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? `${writeSeal(sealStep, 'newShort')}; ${writeShortTightening(tightenStep, writeShortPart(tightenStep, 'tapón'))}`
        : undefined,
  },
  {
    actions: ['fit', 'tighten'],
    full: (plugStep, tightenStep) =>
      writeTurningIn(`Enroscar ${writePart(plugStep, 'el tapón')}`, tightenStep),
    short: (_plugStep, tightenStep) =>
      writeShortTightening(tightenStep, writeShortPart(tightenStep, 'tapón')),
  },
  {
    actions: ['measure the oil', 'pour the oil', 'wait for the hose'],
    full: ({ volume, oil, totalVolume }, pourStep, { wait, fluid, usualWait }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : [
            `Medir ${volume} de ${oil ?? 'aceite correcto'} en una jarra limpia y verter despacio por ${writeHole(pourStep)}.`,
            `Esperar a que la manguera no gotee${wait === undefined ? '' : `: cerca de ${wait} desde que se empieza a verter`}.`,
            ...(wait === undefined && usualWait !== undefined ? [usualWait] : []),
          ].join(' '),
    short: ({ volume, oil, totalVolume }, pourStep, { fluid }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : `Medir y verter ${oil ?? 'el aceite correcto'}: ${writeShortPart(pourStep, 'abertura de llenado')}; manguera vacía cuando no gotee`,
  },
  {
    actions: ['check the level', 'top up'],
    full: writeLevelLine,
    short: (check, { stopAt }) =>
      stopAt === undefined
        ? undefined
        : `Nivel: ${writeShortPart(check, 'abertura de nivel')}${writeShortConditions(check)}${check.below === undefined ? '' : `, ${check.below} bajo el borde`}; si está bajo, reponer; al máximo, parar`,
  },
  {
    actions: ['wipe down', 'check for leaks'],
    anyOrder: true,
    full: (...steps) =>
      [
        steps.some((step) => step.do === 'wipe down') ? 'Limpiar todo el aceite derramado. ' : '',
        `Buscar aceite en cada tapón y unión que se abrió${writeLeakPlaces(selectLeakChecks(steps))}.`,
        ' Si rezuma, cambiar la junta. No apretar más allá del valor del manual.',
      ].join(''),
    short: (...steps) =>
      `${steps.some((step) => step.do === 'wipe down') ? 'Limpiar; buscar fugas' : 'Buscar fugas'}${writeLeakPlaces(selectLeakChecks(steps))}; si rezuma, junta nueva, no más par`,
  },
]
