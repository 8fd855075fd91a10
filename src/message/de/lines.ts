import type { Action } from '../../spec/index.js'
import type { LineText, StepParams } from '../catalogue.js'
import {
  stopLimitText,
  writeEdge,
  writeFluid,
  writeLevelConditions,
  writePart,
  writeSeal,
  writeSealObject,
  writeSetting,
  writeShortConditions,
  writeShortPart,
  writeShortSeal,
  writeShortTightening,
  writeStuckWasher,
} from './stepPhrases.js'

type StepList = readonly (StepParams & { readonly do: Action })[]

/** `mit 10-mm-Innensechskant lösen` */
const writeLoosening = ({ drive, socket }: StepParams) =>
  drive === 'hand' ? 'von Hand lösen' : `${socket === undefined ? '' : `mit ${socket} `}lösen`

const writeStuckPlug = (params: StepParams) =>
  params.beforeDraining === true ? ` Geht das nicht: ${writeFluid(params)} nicht ablassen.` : ''

const writeShortStuck = (params: StepParams) =>
  params.beforeDraining === true ? `; geht das nicht: ${writeFluid(params)} nicht ablassen` : ''

/** `Mit 20–25 N·m anziehen: Schlüssel „klein“ auf 22,5 N·m einstellen.` */
function writeTurningIn(turnIn: string, plug: string, params: StepParams) {
  const { torque, turns, gap, drive } = params
  if (torque === undefined && drive === 'hand') return `${turnIn}eindrehen und von Hand festziehen: ${plug}.`
  const fingerTight = `${turnIn}von Hand handfest eindrehen: ${plug}.`
  if (turns !== undefined) return `${fingerTight} Dann ${turns} Umdrehungen weiter anziehen.`
  if (torque === undefined) {
    const state = gap === 'cannot tell' ? 'hier nicht bekannt' : 'hier nicht angegeben'
    return `${fingerTight} Nach Anleitung anziehen. Das Drehmoment ist ${state}: siehe Anleitung.`
  }
  const setting = writeSetting(params)
  return `${fingerTight} Mit ${torque} anziehen${setting === undefined ? '' : `: ${setting}`}.`
}

/**
 * Whether the seal is a washer or ring between plug and case, not sealant or the seal of a cover or filter.
 */
const isSealRing = ({ seal, cover, filter }: StepParams) =>
  cover === undefined && filter === undefined && seal !== 'thread sealant' && seal !== 'liquid gasket'

function writeLevelLine(check: StepParams, topUp: StepParams): string | undefined {
  const { level } = check
  if (level?.method !== 'to level hole' || !level.afterFilling || topUp.stopAt === undefined) return undefined
  const conditions = writeLevelConditions(check)
  return [
    `Ölstand prüfen: ${writePart(check, 'Kontrollöffnung')}. Das Öl muss ${writeEdge(check)}.`,
    conditions.length === 0 ? '' : ` Beim Ablesen: ${conditions.join(', ')}.`,
    ' Wenn zu hoch, Überschuss ablaufen lassen. Wenn zu niedrig, gleiches Öl nachfüllen.',
    ` ${stopLimitText(topUp.stopAt)}`,
  ].join('')
}

/** The gearcases of a leak check: `Hinterachsgetriebe; Nabe (links)`; empty if the heading names the only one. */
function writeLeakPlaces(checks: StepList): string {
  const places = checks.map(({ gearcase, instance, shield }) => {
    const place =
      gearcase !== undefined && instance !== undefined ? `${gearcase} (${instance})` : (gearcase ?? instance)
    const shieldText = shield && `durch Löcher und an Kanten (${shield})`
    return [place, shieldText].filter((text) => text !== undefined).join(', ')
  })
  const namedPlaces = places.filter((place) => place !== '')
  return namedPlaces.length === 0 ? '' : `: ${namedPlaces.join('; ')}`
}

const selectLeakChecks = (steps: StepList) => steps.filter((step) => step.do === 'check for leaks')

/** German texts for steps done together; the longest that fits is used. */
export const lineTexts: readonly LineText[] = [
  {
    actions: ['park on level ground', 'stop the engine'],
    full: () =>
      'Maschine auf waagerechtem, festem Boden abstellen. Anbaugeräte absenken, Feststellbremse anziehen, Motor abstellen und Schlüssel abziehen. Warten, bis sich nichts mehr dreht.',
    short: () => 'Waagerecht abstellen; Anbaugeräte ab, Bremse fest, Motor aus, Schlüssel ab',
  },
  {
    actions: ['raise the machine', 'set on stands'],
    full: ({ jack }, standsStep) =>
      [
        `Maschine${jack === undefined ? '' : ` mit dem Wagenheber (${jack})`} anheben und auf tragfähige Unterstellböcke setzen`,
        standsStep.part === undefined ? '. ' : ` (${standsStep.part}). `,
        jack === undefined ? 'Ansatzpunkt in der Anleitung suchen: hier nicht angegeben. ' : '',
        'Nicht unter dem Wagenheber arbeiten. Sicherstellen, dass die Maschine fest auf den Böcken steht.',
      ].join(''),
    short: ({ jack }, { part }) =>
      `Wagenheber${jack === undefined ? ' (Ansatzpunkt: siehe Anleitung)' : `: ${jack}`}; Böcke${part === undefined ? '' : `: ${part}`}`,
  },
  {
    actions: ['lower the machine', 'clear away'],
    full: (_lowerStep, { how }) =>
      [
        'Sicherstellen, dass keine Person und kein Werkzeug unter der Maschine ist.',
        'Von den Böcken anheben, Böcke herausnehmen und langsam auf den Boden absenken.',
        'Auffangwanne, Werkzeug und Keile wegräumen.',
        ...(how === undefined ? [] : [`Für die Arbeit Gesichertes lösen: ${how}.`]),
        'Sicherstellen, dass niemand nahe der Maschine ist.',
      ].join(' '),
    short: (_lowerStep, { how }) =>
      `Unten alles frei; von den Böcken, absenken; Wanne, Werkzeug, Keile und Personen weg${how === undefined ? '' : `; lösen: ${how}`}`,
  },
  {
    actions: ['clean around', 'crack loose', 'nip by hand'],
    full: (cleanStep, crackStep) =>
      `${writePart(cleanStep, 'Öffnung')}: Umgebung reinigen, ${writeLoosening(crackStep)} und von Hand wieder eindrehen.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'Öffnung')}: reinigen, lösen, von Hand beidrehen${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['clean around', 'crack loose'],
    full: (cleanStep, crackStep) =>
      `${writePart(cleanStep, 'Öffnung')}: Umgebung reinigen und ${writeLoosening(crackStep)}.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'Öffnung')}: reinigen, lösen${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['place the pan', 'clean around', 'crack loose', 'take out'],
    full: (panStep, _cleanStep, crackStep) =>
      `Auffangwanne unterstellen: ${writePart(panStep, 'Ablassschraube')}. Umgebung reinigen, ${writeLoosening(crackStep)} und herausdrehen.`,
    short: (panStep) =>
      `Wanne unterstellen; ${writeShortPart(panStep, 'Ablassöffnung')}: reinigen, lösen, heraus`,
  },
  {
    actions: ['clean around', 'crack loose', 'take out'],
    full: (cleanStep, crackStep) =>
      `${writePart(cleanStep, 'Öffnung')}: Umgebung reinigen, ${writeLoosening(crackStep)} und herausdrehen.${writeStuckPlug(crackStep)}`,
    short: (cleanStep, crackStep) =>
      `${writeShortPart(cleanStep, 'Öffnung')}: reinigen, lösen, heraus${writeShortStuck(crackStep)}`,
  },
  {
    actions: ['take out', 'let drain'],
    full: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `${writePart(outStep, 'Einfüllschraube')} herausdrehen, damit Luft eintritt. Öl ablaufen lassen, bis es nur noch tropft${wait === undefined ? '' : `, mindestens ${wait}`}.`,
    short: (outStep, { wait, fluid }) =>
      outStep.isOther !== true || fluid === 'grease'
        ? undefined
        : `${writeShortPart(outStep, 'Einfüllschraube')} heraus, für Luft; ablaufen, bis es nur tropft${wait === undefined ? '' : ` (mindestens ${wait})`}`,
  },
  {
    actions: ['inspect the oil', 'inspect the magnet', 'clean the magnet'],
    full: ({ fluid }, magnetStep) =>
      fluid === 'grease'
        ? undefined
        : `Altes Öl bei gutem Licht prüfen, ebenso den Magneten: ${writePart(magnetStep, 'Schraube')}. Bei Spänen, Plättchen oder Bruchstücken: Halt, Gehäuse schließen. Nicht befüllen. Maschine als außer Betrieb kennzeichnen. Bei einer ersten Wartung nur grauer Abrieb oder etwas Glitzern: weiterarbeiten. Magnet sauber wischen. Wenn das Öl milchig ist: Halt, Eintrittsstelle des Wassers suchen. Gehäuse, das milchiges Öl enthielt, vor dem Befüllen spülen. Dazu Öl nach Anleitung einfüllen. Maschine kurz laufen lassen. Abkühlen lassen. Öl ablassen.`,
    short: ({ fluid }) =>
      fluid === 'grease'
        ? undefined
        : 'Öl und Magnet: bei Spänen oder Bruchstücken Halt, schließen, kennzeichnen; wenn milchig, Wassereintritt suchen und spülen; Magnet abwischen',
  },
  {
    actions: ['take off old seal', 'wipe the seal face'],
    full: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `${writeSealObject('Alt', sealStep)} entfernen: am Gehäuse keinen Rest lassen.${writeStuckWasher(sealStep)} Sitz sauber wischen, ebenso: ${writePart(faceStep, 'Schraube')}.`
        : undefined,
    short: (sealStep, faceStep) =>
      isSealRing(sealStep)
        ? `${writeShortSeal('Alt', sealStep)} ab, kein Rest am Gehäuse; ${writeShortPart(faceStep, 'Schraube')} und Sitz abwischen`
        : undefined,
  },
  {
    actions: ['wipe the seal face', 'inspect the seal'],
    full: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `${writePart(faceStep, 'Schraube')} und Sitz sauber wischen. ${writeSeal(sealStep)} auf Schnitte und flache Stellen prüfen. Bei Befund ersetzen.`
        : undefined,
    short: (faceStep, sealStep) =>
      isSealRing(sealStep)
        ? `${writeShortPart(faceStep, 'Schraube')} und Sitz abwischen, ${writeSeal(sealStep)} prüfen`
        : undefined,
  },
  {
    actions: ['fit new seal', 'fit', 'tighten'],
    full: (sealStep, plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? writeTurningIn(
            `${writeSealObject('Neu', sealStep)} einsetzen und Schraube `,
            writePart(plugStep, 'Schraube'),
            tightenStep,
          )
        : undefined,
    short: (sealStep, _plugStep, tightenStep) =>
      isSealRing(sealStep)
        ? `${writeShortSeal('Neu', sealStep)}; ${writeShortTightening(tightenStep, writeShortPart(tightenStep, 'Schraube'))}`
        : undefined,
  },
  {
    actions: ['fit', 'tighten'],
    full: (plugStep, tightenStep) =>
      writeTurningIn('Schraube ', writePart(plugStep, 'Schraube'), tightenStep),
    short: (_plugStep, tightenStep) =>
      writeShortTightening(tightenStep, writeShortPart(tightenStep, 'Schraube')),
  },
  {
    actions: ['measure the oil', 'pour the oil', 'wait for the hose'],
    full: ({ volume, oil, totalVolume }, pourStep, { wait, fluid, usualWait }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : [
            `${volume} ${oil ?? 'vorgeschriebenes Öl'} in einem sauberen Messbecher abmessen und langsam durch die Öffnung eingießen: ${writePart(pourStep, 'Einfüllöffnung')}.`,
            `Warten, bis nichts mehr aus dem Schlauch tropft${wait === undefined ? '' : `: etwa ${wait} ab Beginn des Eingießens`}.`,
            ...(wait === undefined && usualWait !== undefined ? [usualWait] : []),
          ].join(' '),
    short: ({ volume, oil, totalVolume }, pourStep, { fluid }) =>
      volume === undefined || totalVolume !== undefined || fluid === 'grease'
        ? undefined
        : `${oil ?? 'Vorgeschriebenes Öl'} abmessen und eingießen: ${writeShortPart(pourStep, 'Einfüllöffnung')}; Schlauch leer, wenn nichts mehr tropft`,
  },
  {
    actions: ['check the level', 'top up'],
    full: writeLevelLine,
    short: (check, { stopAt }) =>
      stopAt === undefined
        ? undefined
        : `Ölstand: ${writeShortPart(check, 'Kontrollöffnung')}${writeShortConditions(check)}${check.below === undefined ? '' : `, ${check.below} unter der Kante`}; wenn zu niedrig, nachfüllen; am Höchstwert Halt`,
  },
  {
    actions: ['wipe down', 'check for leaks'],
    anyOrder: true,
    full: (...steps) =>
      [
        steps.some((step) => step.do === 'wipe down') ? 'Verschüttetes Öl vollständig abwischen. ' : '',
        `Jede geöffnete Schraube und Fuge auf Öl prüfen${writeLeakPlaces(selectLeakChecks(steps))}.`,
        ' Schwitzt eine Stelle, Dichtung ersetzen. Nicht über den Wert der Anleitung anziehen.',
      ].join(''),
    short: (...steps) =>
      `${steps.some((step) => step.do === 'wipe down') ? 'Abwischen; Dichtheit prüfen' : 'Dichtheit prüfen'}${writeLeakPlaces(selectLeakChecks(steps))}; wenn es schwitzt, neue Dichtung, nicht nachziehen`,
  },
]
